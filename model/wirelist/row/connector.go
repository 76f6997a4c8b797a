package row

import (
	"cmp"
	"strings"

	"contralay/model"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/prose"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/titleline"
	"contralay/model/wirelist/words"
)

// namesConnector reports whether a row of one text between the rows of a pin table starts the next
// connector where it says so, where it begins with a designator, and where the cavities
// begin anew behind it.
func namesConnector(b *shape.Block, text string, i int, t *draft.Term) bool {
	if name.SaysConnector(text) || endsInPlug(text) {
		return true
	}
	for _, r := range b.Rows[i+1:] {
		if shape.IsText(r) {
			continue
		}
		pin := b.Cell(r.Cells, name.FieldPin)
		_, named := t.At[pin]
		return pin != "" && named
	}
	return false
}

// endsInPlug reports whether a short text ends with the word for a connector, alone or with its designator behind, before what stands in
// brackets: "KNOTTER PLUG K1 (4 way)", "Rear lamp plug".
func endsInPlug(text string) bool {
	const most = 5 // words (no source)
	w := strings.Fields(strings.TrimRight(name.WithoutBrackets(text), " :,"))
	if len(w) > 2 && name.IsDesignator(w[len(w)-1]) && strings.ContainsAny(w[len(w)-1], "0123456789") {
		w = w[:len(w)-1]
	}
	return len(w) > 1 && len(w) <= most && !strings.ContainsAny(strings.Join(w, " "), ".,;!?") &&
		name.IsConnectorWord(table.Fold(w[len(w)-1]))
}

// connectorOf makes the termination of a pin table; nil where each row names its own.
func connectorOf(im *draft.Importer, b *shape.Block, titles []table.Row, only bool) *draft.Term {
	titles, others := prose.LastPoint(titles, name.SaysConnector)
	if im.Pages > 1 {
		var behind []table.Row
		titles, behind = prose.WithoutTextsBehind(titles)
		for _, r := range behind {
			at := table.Place{File: b.Table.File, Sheet: b.Table.Sheet, Row: r.Line}
			im.Say(report.Note, "below the table", at, r.Cells[0], "left out")
		}
	}
	info := name.ReadTitle(titles, im.Cat)
	place := table.Place{File: b.Table.File, Sheet: b.Table.Sheet, Row: cmp.Or(info.Row, b.Head)}
	for _, r := range append(others, info.Remarks...) {
		at := table.Place{File: place.File, Sheet: place.Sheet, Row: r.Line}
		im.Say(report.Note, "above the table", at, shape.RowText(r.Cells), "left out")
	}
	if b.Has(name.FieldConnector) {
		for _, text := range nonEmpty(append(info.Other, info.Name)...) {
			im.Say(report.Note, "above the table", place, text, "left out")
		}
		return nil
	}
	if info.Paper == "" && b.PinsOf() != "" && titleline.SaysHarness(info.Name) {
		info.Paper, info.Name = info.Name, "" // the heading of the cavities says whose they are
	}
	if info.Paper != "" && !im.H.Head.Name.Set {
		im.H.Head.Name = model.Some(info.Paper)
		im.Say(report.Note, "heading of the whole list", table.Place{File: place.File, Sheet: place.Sheet}, info.Paper,
			"taken as the name of the harness")
	} else if info.Paper != "" && info.Paper != im.H.Head.Name.V {
		im.Say(report.Note, "above the table", place, info.Paper, "left out")
	}
	if words.AreHeadings(info.Name) {
		info.Name, info.Other = "", append(info.Other, info.Name)
	}
	c := callConnector(im, b, &info, only)
	c.say(im, b, place)
	called := c.name
	if n, first := im.ByKey[name.Key(called)], place; n != nil && n.Titled {
		im.Say(report.Note, "second table of one connector", first, called, "read as one connector")
	}
	known := len(im.Terms)
	t := im.Named(called, place, true)
	t.Spell(titles, called)
	t.Under = cmp.Or(t.Under, info.Within, parent(b, info.Row))
	t.Unsaid = c.unsaid && (t.Unsaid || len(im.Terms) > known)
	if info.Insert != "" && !t.Insert.Set {
		t.Insert = model.Some(info.Insert)
	}
	if info.Unknown != "" {
		info.Other = append(info.Other, "insert "+info.Unknown)
		im.Say(report.Warn, "unknown insert", place, info.Unknown, "its cavities are those of the table")
	}
	if info.Gender != "" && !t.Gender.Set {
		t.Gender = model.Some(model.Gender(info.Gender))
	}
	sentences, device := prose.TakeSentences(titles, info.Other)
	for _, r := range sentences {
		im.Say(report.Note, "above the table", table.Place{File: place.File, Sheet: place.Sheet, Row: r.Line}, r.Cells[0], "left out")
	}
	if len(device) > 0 && !t.Device.Set {
		t.Device = model.Some(strings.Join(device, ", "))
	}
	t.Counts = append(t.Counts, info.Counts...)
	return t
}
