package row

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/sentence"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/signoff"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/titleline"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// Where the name of the connector of a pin table comes from, surest first: a person, the heading of the cavities, the texts
// above the table, the recipe of the whole list, the headings of the document, the sheet, the file, a number.

// naming is the name of a connector, where it comes from, and what speaks against it.
type naming struct {
	name   string
	from   string   // "heading of the column"
	unsaid bool     // nothing in the lists names it
	over   []string // texts that named it too, and were passed over for a surer source
	rivals []string // what else it could be called; a person should look
}

// callConnector weighs what could name the connector of a table.
func callConnector(im *draft.Importer, b *shape.Block, info *name.Title, only bool) naming {
	of, recipe := b.PinsOf(), ""
	said, rivals := sentence.Connector(info.Other, name.BaseName(b.Table.File))
	if im.Opt.Recipe != nil {
		recipe = im.Opt.Recipe.Connector
	}
	switch {
	case b.Said != "":
		return naming{name: b.Said, from: "what was said", over: nonEmpty(of, info.Name)}
	case of != "" && info.Name != "" && b.PinsGuessed():
		return naming{name: of, from: "heading of the column", rivals: []string{info.Name}}
	case of != "" && info.Name != "" && saysWord(info.Name, of) && !name.IsDesignator(of) && !words.SaysPaper(info.Name):
		called, over := titleline.OfHeading(info.Name, of) // "Fuse board FB2" above "Fuse"
		return naming{name: called, from: "text above its pins", over: over}
	case of != "" && of == b.Table.Sheet:
		return naming{name: of, from: "name of the sheet", over: nonEmpty(info.Name)}
	case of != "":
		return naming{name: of, from: "heading of the column", over: nonEmpty(info.Name)}
	case info.Name != "" && words.SheetConnector(b.Table.Sheet, info.Name) != "":
		return naming{name: b.Table.Sheet, from: "name of the sheet", over: []string{info.Name}}
	case info.Name != "" && isElsewhere(im, b, info):
		return naming{name: cmp.Or(info.Within, parent(b, info.Row)) + " " + info.Name, from: "texts above its pins"}
	case info.Name != "":
		rivals := slices.DeleteFunc(slices.Clone(info.Rivals), func(t string) bool { return value.SizeWithin(t, b.Mark) != "" })
		return naming{name: info.Name, from: "text above its pins", rivals: rivals}
	case recipe != "":
		return naming{name: recipe, from: "recipe"}
	case b.Called != "":
		return naming{name: b.Called, from: "heading of the document", rivals: nameable(info.Other)}
	case b.Table.Sheet != "" && only && !words.IsPlainSheet(b.Table.Sheet):
		return naming{name: b.Table.Sheet, from: "name of the sheet", rivals: nameable(info.Other)}
	case only && said != "":
		return naming{name: said, from: "sentence above its pins", rivals: rivals}
	case only:
		return naming{name: name.BaseName(b.Table.File), from: "name of the file", unsaid: true, rivals: nameable(info.Other)}
	}
	n := len(im.Terms) + 1
	for im.Taken(fmt.Sprintf("Connector-%d", n)) {
		n++
	}
	return naming{name: fmt.Sprintf("Connector %d", n), from: "a number", unsaid: true}
}

// saysWord reports whether a title has all words of the heading of a column, and more.
func saysWord(title, heading string) bool {
	all, of := name.Words(table.Fold(title)), name.Words(table.Fold(heading))
	return len(all) > len(of) && !slices.ContainsFunc(of, func(w string) bool { return !slices.Contains(all, w) })
}

// isElsewhere reports whether a connector of the name stands below another heading: two boxes have a socket A each.
func isElsewhere(im *draft.Importer, b *shape.Block, info *name.Title) bool {
	t, under := im.ByKey[name.Key(info.Name)], cmp.Or(info.Within, parent(b, info.Row))
	return t != nil && t.Titled && under != "" && t.Under != "" && t.Under != under
}

// parent is the heading that the heading of a row stands below; "" where the row is none, or the outermost.
func parent(b *shape.Block, row int) string {
	for k, r := range b.Path {
		if k > 0 && r.Line == row {
			_, text := b.Path[k-1].Filled()
			return text
		}
	}
	return ""
}

// nameable are the texts that could name a connector after all: they have a word for one, or a designator.
func nameable(texts []string) (all []string) {
	for _, t := range texts {
		if !name.IsGeneric(t) && (name.SaysConnector(t) || name.SpokenConnector(t) != "") {
			all = append(all, t)
		}
	}
	return all
}

func nonEmpty(texts ...string) (all []string) {
	for _, t := range texts {
		if t != "" {
			all = append(all, t)
		}
	}
	return all
}

// say reports what a person should know of the name: what was passed over, and where it is a guess.
func (c naming) say(im *draft.Importer, b *shape.Block, place table.Place) {
	for _, text := range c.over {
		did := "left out"
		if c.from == "what was said" {
			did = "left out, as the connector is said to be " + c.name
		}
		im.Say(report.Note, "above the table", place, text, did)
	}
	if c.from == "a number" {
		im.Doubt("no heading names the connector", place, "", "called by a number", DataRows(b))
		return
	}
	if len(c.rivals) == 0 {
		return
	}
	im.Doubt("the name of the connector is a guess", place, fmt.Sprintf("%q from the %s; it could be %q", c.name, c.from,
		strings.Join(shortened(c.rivals), "\", \"")), "say what it is called if it is not that", DataRows(b))
}

// shortened are texts for a message.
func shortened(all []string) (out []string) {
	for _, s := range all {
		out = append(out, table.Short(s))
	}
	return out
}

// DataRows are the rows of a block that can become wires.
func DataRows(b *shape.Block) (rows []table.Row) {
	for _, r := range b.Rows {
		if !shape.IsText(r) && !signoff.Is(r) {
			rows = append(rows, r)
		}
	}
	return rows
}
