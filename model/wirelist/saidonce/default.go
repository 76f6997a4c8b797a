package saidonce

import (
	"cmp"
	"slices"
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Default finds the text of a sheet that says the size or the colour of the wires whose rows say none; it says so itself, and so
// it is theirs.
//
//	All wires 1 mm² black unless noted
//	From   | To    | Noted
//	Pump:1 | Box:4 |
//	Pump:2 | Box:5 | red
func Default(im *draft.Importer, t *table.Table, blocks []*shape.Block, lang string) {
	im.Default, im.Hue = draft.Default{}, draft.Default{}
	mark := blocks[0].Mark
	for _, r := range t.Rows {
		_, text := r.Filled()
		if !shape.IsText(r) || !saysUnlessNoted(text) && !saysOfNoSize(text, mark) || isData(blocks, r.Line) {
			continue
		}
		d := draft.Default{Text: text, Mark: mark, At: table.Place{File: t.File, Sheet: t.Sheet, Row: r.Line}}
		says := ofWires(text)
		all := strings.FieldsFunc(says, func(r rune) bool { return strings.ContainsRune(" ;:()", r) })
		d.Size = value.SizeWithin(says, mark)
		for i, w := range all {
			w = strings.Trim(w, ",.-")
			if c, ok := value.ParseColour(w, lang); ok && len(w) > 2 && strings.Trim(w, "0123456789/,.") != "" && d.Colour == nil {
				d.Colour = c
				if i > 0 {
					d.Colour = shaded(all[i-1], w, lang, c)
				}
			}
			if i > 0 && d.Size == "" && saysSize(all[i-1]) {
				if g, ok := value.ParseGauge(w, value.BareMM2, mark); ok && strings.ContainsAny(w, ".,") {
					d.Size = g.Size
				}
			}
		}
		if d.Size == "" {
			d.Size = value.BareSection(says, mark)
		}
		if d.Size != "" || d.Colour != nil {
			im.Default = d
			return
		}
	}
}

// saysSize reports whether a word of a text is one for the size of a wire, before a number without unit: "sezione 0,75".
func saysSize(w string) bool {
	switch table.Fold(strings.Trim(w, ",.:")) {
	case "section", "sezione", "seccion", "seccao", "querschnitt", "przekroj", "prurez", "doorsnede", "area", "csa":
		return true
	}
	return false
}

// saysUnlessNoted reports whether a text is about what rows do not say themselves, in the words of one of several languages.
func saysUnlessNoted(text string) bool {
	f := " " + strings.Join(name.Words(table.Fold(text)), " ") + " "
	return slices.ContainsFunc([]string{" unless ", " except where ", " if not noted ", " where not ",
		" if not stated ", " otherwise noted ", " wo nicht ",
		" wo nix ", " wo nichts ", " wenn nichts ", " wenn nix ", " falls nichts ", " sofern nichts ", " wenn nicht ",
		" falls nicht ", " soweit nicht ",
		" sofern nicht ", " sauf indication ", " sauf mention ", " sauf si ", " salvo ", " si no se indica ",
		" donde no ", " dove non ", " se non ", " tenzij ", " waar niet ", " om inte ", " om ej ", " jesli nie ",
		" gdzie nie ", " o ile nie ", " pokud neni ", " exceto ", " onde nao ", " except if ", " except when ", " except as ",
		" ausser wo ", " ausser wenn ", " tranne dove ", " tranne se ", " eccetto dove ", " excepto donde ", " behalve waar ", " utom dar ",
		" hvis ikke ", " ellei ", " if not said ", " if not told ", " if not marked ", " if not mentioned ", " if not given ",
		" if not written ",
		" if nothing else ", " if nothing is ", " where nothing ", " when not ", " apart from where ", " sinon ", " sonst ",
		" wenn ich nix ", " wenn ich nichts ", " falls ich nichts ",
		" sofern ich nichts ", " ausser ich ", " si je ne ", " si no digo ", " se non dico ",
		" als ik niet ", " als ik niets ", " om jag inte ", " hvis jeg ikke "},
		func(s string) bool { return strings.Contains(f, s) })
}

// TakeDefault gives a row the size and the colour that a text says of those that say none.
func TakeDefault(im *draft.Importer, b *shape.Block, it *draft.Item, cells []string) {
	takeOf(&im.Default, b, it, cells)
	takeOf(&im.Hue, b, it, cells)
}

// takeOf gives a row what one text says.
func takeOf(d *draft.Default, b *shape.Block, it *draft.Item, cells []string) {
	lang := b.Lang
	if d.Text == "" || it.Drain || it.State != name.Used && it.State != name.Spare {
		return
	}
	took := false
	for _, note := range it.Notes {
		takeNoted(it, note, lang, d.Mark)
	}
	own := slices.ContainsFunc(cells, func(c string) bool { return value.SizeWithin(c, d.Mark) != "" }) // "Lamp, 1 mm²" as the far end
	size, colour := d.Size, d.Colour
	if e, clear := otherOf(d, b, cells); !clear {
		return
	} else if e != nil {
		size, colour = cmp.Or(e.Size, size), e.Colour
		if colour == nil {
			colour = d.Colour
		}
	}
	if d.Except != nil && isExcepted(d.Except, b, cells, map[string]bool{}) {
		size = d.Except.Size
	}
	if size != "" && it.Gauge.Size == "" && it.Gauge.Spec == "" && !own && !slices.ContainsFunc(it.Notes, isUnread("size")) {
		it.Gauge.Size, took = size, true
	}
	if len(colour) > 0 && len(it.Colour) == 0 && !slices.ContainsFunc(it.Notes, isUnread("colour")) {
		it.Colour, took = colour, true
	}
	if took {
		d.Rows++
		if !saysUnlessNoted(d.Text) {
			d.Named = append(d.Named, table.Row{Line: it.Place.Row})
		}
	}
}

// takeNoted gives a row the size and the colour of its note: they are what it has in place of those of the others.
func takeNoted(it *draft.Item, note, lang string, mark value.Mark) {
	if isUnread("size")(note) || isUnread("colour")(note) {
		return
	}
	if _, text, ok := strings.Cut(note, ": "); ok {
		note = text
	}
	if name.IsDesignator(strings.TrimSpace(note)) {
		return // "TP1" is a pair, and no size
	}
	g, ok := value.SizeAndColour(note, value.BareAWG, lang, mark)
	if first, _, cut := strings.Cut(note, ", "); cut && !ok {
		g, ok = value.SizeAndColour(first, value.BareAWG, lang, mark) // "20 AWG red, 5 A breaker"
	}
	note = strings.TrimSuffix(note, " please")
	if c, is := value.ParseColour(note, lang); !ok && is && strings.Trim(note, "0123456789/- ") != "" {
		g.Colour = c
	} else if !ok {
		g.Size = value.SizeWithin(note, mark)
	}
	if it.Gauge.Size == "" && it.Gauge.Spec == "" {
		it.Gauge.Size = g.Size
	}
	if len(it.Colour) == 0 {
		it.Colour = g.Colour
	}
}

// isUnread finds the note of a value that a row does say, in a way that nobody understands.
func isUnread(what string) func(string) bool {
	return func(note string) bool { return strings.HasPrefix(note, what+": ") }
}

// SayDefault says what was taken from the text.
func SayDefault(im *draft.Importer) {
	for _, d := range []draft.Default{im.Default, im.Hue} {
		what := "size"
		if d.Size == "" {
			what = "colour"
		}
		const did = "taken for the rows that say none"
		if len(d.Named) > 0 && saysOfNoSize(d.Text, d.Mark) {
			im.Doubt("what a text says of rows that do not", d.At, strings.TrimSpace(d.Text), did, d.Named)
			im.Rep.Findings[len(im.Rep.Findings)-1].Level = report.Note // it says itself of which rows it speaks
		} else if len(d.Named) > 0 {
			im.Doubt("a "+what+" that a text says of all wires", d.At, strings.TrimSpace(d.Text), did, d.Named)
		} else if d.Rows > 0 {
			im.Say(report.Note, "what a text says of rows that do not", d.At, strings.TrimSpace(d.Text), TakenForRows)
		}
	}
}

// shaded is a colour with the shade that the word before it says, "dark blue".
func shaded(before, w, lang string, colour value.Colour) value.Colour {
	if c, ok := value.ParseColour(before+" "+w, lang); ok && c.Shaded() {
		return c
	}
	return colour
}
