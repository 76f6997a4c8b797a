package wirelist

import (
	"fmt"
	"slices"
	"strings"

	"contralay/model"
)

// row makes the items of one row: one for each cavity or wire that it names.
func (im *importer) row(b *block, cells []string, owner *term, place Place) {
	it := item{place: place, wire: -1, block: im.pages}
	column := func(i int) Place { p := place; p.Column = at(b.cols, i); return p }
	for i, c := range cells {
		if i >= len(b.cols) && c != "" {
			it.notes = append(it.notes, c)
			im.say(Warn, "cell without heading", column(i), c, "kept in the note")
		}
		if i < len(b.cols) && b.cols[i].field == FieldKeep && c != "" {
			it.notes = append(it.notes, joinNonEmpty(": ", b.cols[i].head, c))
		}
	}
	it.ownID = b.cell(cells, FieldWire)
	it.signal = b.cell(cells, FieldSignal)
	it.cable = b.cell(cells, FieldCable)
	im.values(b, cells, &it, column)
	im.noteOf(b, cells, &it)
	im.stateOf(b, cells, &it)
	im.rows++

	if !b.has(FieldFrom, FieldTo, FieldFromPin) || owner != nil && !b.has(FieldFrom) {
		im.pinRow(b, cells, it, owner, column)
		return
	}
	from, fromCol := im.endOf(b, cells, FieldFrom, FieldFromPin)
	to, toCol := im.endOf(b, cells, FieldTo, FieldToPin)
	pinsFrom, pinsTo := orNone(splitPins(from.pin)), orNone(splitPins(to.pin))
	if len(pinsFrom) > 1 && len(pinsTo) > 1 && len(pinsFrom) != len(pinsTo) {
		im.say(Warn, "cavities do not pair", column(max(fromCol, 0)), from.pin+" to "+to.pin, "kept in the note, no ends made")
		it.notes = append(it.notes, "from "+from.text+" to "+to.text)
		from, to, pinsFrom, pinsTo = end{}, end{}, []string{""}, []string{""}
	}
	n := max(len(pinsFrom), len(pinsTo))
	if n > 1 {
		im.say(Note, "several cavities in one cell", column(max(fromCol, toCol, 0)), joinNonEmpty(" to ", from.pin, to.pin), counted(n, "wire", "wires")+" of one net")
	}
	for k := range n {
		one := it
		one.from, one.to = from, to
		one.from.pin, one.to.pin = pinsFrom[min(k, len(pinsFrom)-1)], pinsTo[min(k, len(pinsTo)-1)]
		im.items = append(im.items, &one)
	}
}

func orNone(pins []string) []string {
	if len(pins) == 0 {
		return []string{""}
	}
	return pins
}

// endOf reads the cell or the two cells of one end. The termination is made later,
// when all lists are read and it shows which names are splices.
func (im *importer) endOf(b *block, cells []string, f, pin Field) (end, int) {
	text, col := b.cellAt(cells, f)
	p, pinCol := b.cellAt(cells, pin)
	if col < 0 {
		col = pinCol
	}
	e := end{text: text, pin: p}
	if text == "" && p != "" && pinCol >= 0 && b.cols[pinCol].of != "" {
		e.text = b.cols[pinCol].of
		return e, col
	}
	switch {
	case text == "" && p != "":
		if c, q, ok := splitEnd(p); ok {
			e.text, e.pin = c, q
		}
	case text != "" && p != "":
		if c, q, ok := splitEnd(text); ok && q == p && strings.Contains(text, ":") {
			e.text = c // the cavity stands in both
		}
	case text != "":
		if c, q, ok := splitEnd(text); ok && (!b.has(pin) || strings.Contains(text, ":")) {
			e.text, e.pin = c, q
		}
	}
	return e, col
}

// pinRow makes an item for each cavity of a row of a pin table.
func (im *importer) pinRow(b *block, cells []string, it item, owner *term, column func(int) Place) {
	cell, col := b.cellAt(cells, FieldPin)
	if cell == "" || owner == nil {
		im.say(Warn, "row without cavity", it.place, tidy(strings.Join(cells, " ")), "left out")
		return
	}
	pins := splitPins(cell)
	if owner.Insert.Set {
		if ins, ok := im.cat.Insert(owner.Insert.V); ok && ins.Has(cell) {
			pins = []string{cell}
		}
	}
	if len(pins) == 0 {
		im.say(Warn, "no cavity", column(col), cell, "row left out")
		return
	}
	if looksLikeRange(cell) {
		im.say(Warn, "could be a range of cavities", column(col), cell, "read as the name of one")
	}
	if len(pins) > 1 {
		net := fmt.Sprintf("%q", it.signal)
		if it.signal == "" {
			net = "without name"
		}
		im.say(Note, "two cavities of one net", column(col), cell+" "+net, "a wire in each")
	}
	to, _ := im.endOf(b, cells, FieldTo, FieldToPin)
	for _, p := range pins {
		one := it
		one.from = end{term: owner, pin: p}
		one.to = to
		if one.to.text == "" && it.signal != "" {
			one.net = strings.Join(append(words(fold(it.signal)), plusMinus(it.signal)...), " ")
		}
		owner.pin(p, it.state, it.place)
		if it.state == blank || it.state == reserved {
			im.restOf(&one, owner.ID+":"+p)
			continue
		}
		im.items = append(im.items, &one)
	}
}

// restOf says what a row of a cavity without wire holds besides.
func (im *importer) restOf(it *item, where string) {
	all := slices.Clone(it.notes)
	if it.fuse.Set {
		all = append(all, "fuse "+FormatCurrent(it.fuse.V))
	}
	if it.amps.Set {
		all = append(all, FormatCurrent(it.amps.V))
	}
	for _, text := range []string{it.signal, it.ownID, it.cable, it.cueText, it.fuseName, it.to.text} {
		if text != "" && stateOf(text) == used {
			all = append(all, text)
		}
	}
	if len(all) > 0 || where == "" {
		im.say(Note, "text on a cavity without wire", it.place, joinNonEmpty(" ", where, strings.Join(all, "; ")), "left in the list")
	}
}

// values reads gauge, spec, colour, length, current and fuse.
func (im *importer) values(b *block, cells []string, it *item, column func(int) Place) {
	// keep leaves what is not understood as text.
	keep := func(rule, what, cell string, col int) {
		level := Warn
		if rule == "no "+what {
			level = Note
		}
		if rule == "no colour" || rule == "shade that no code has" {
			level, rule = Note, "colour that no code has"
		}
		it.notes = append(it.notes, what+": "+cell)
		im.say(level, rule, column(col), fmt.Sprintf("%q", cell), "kept in the note")
	}
	if cell := b.cell(cells, FieldSpec); cell != "" {
		if g, ok := parsePart(cell); ok {
			it.gauge = g
		} else {
			it.gauge.Spec = cell
		}
	}
	if cell, col := b.cellAt(cells, FieldGauge); cell != "" && !isNothing(cell) {
		g, ok := ParseGauge(cell, b.cols[col].bare, b.mark)
		switch {
		case ok:
			if it.gauge.Size != "" && g.Size != "" && it.gauge.Size != g.Size {
				keep("size against part number", "size", cell, col)
				break
			}
			if g.Spec == "" {
				g.Spec = it.gauge.Spec
			}
			if g.Size == "" {
				g.Size = it.gauge.Size
			}
			if len(g.Colour) == 0 {
				g.Colour = it.gauge.Colour
			}
			it.gauge = g
		default:
			keep(im.wrongColumn("size", cell, b), "size", cell, col)
		}
	}
	it.colour = it.gauge.Colour
	if cell, col := b.cellAt(cells, FieldColour); cell != "" && !isNothing(cell) {
		c, ok := ParseColour(cell, b.lang)
		if stripe := b.cell(cells, FieldStripe); ok && stripe != "" && !isNothing(stripe) {
			s, good := ParseColour(stripe, b.lang)
			if c, ok = append(c, s...), good && len(c)+len(s) <= mostHues; !ok {
				cell += " / " + stripe
			}
		}
		switch {
		case ok && len(it.colour) > 0 && !it.colour.Equal(c):
			keep("colour against part number", "colour", cell, col)
		case ok:
			it.colour = c
			if c.Shaded() {
				keep("shade that no code has", "colour", cell, col)
			}
		case stateOf(cell) == spare || stateOf(cell) == reserved:
			// A status stands where a colour belongs: stateOf of the row reads it.
		default:
			keep(im.wrongColumn("colour", cell, b), "colour", cell, col)
		}
	} else if cell, col := b.cellAt(cells, FieldStripe); cell != "" && !isNothing(cell) {
		keep("stripe without colour", "stripe", cell, col)
	}
	if cell, col := b.cellAt(cells, FieldLength); cell != "" && !isNothing(cell) {
		u := b.cols[col].unit
		if u == "" {
			u = im.opt.Unit
		}
		if mm, ok := ParseLength(cell, u, b.mark); ok {
			it.length = model.Some(mm)
		} else if _, bare := ParseLength(cell, "mm", b.mark); bare {
			keep("length without unit", "length", cell, col)
		} else {
			keep(im.wrongColumn("length", cell, b), "length", cell, col)
		}
	}
	if cell, col := b.cellAt(cells, FieldCurrent); cell != "" && !isNothing(cell) {
		if a, ok := ParseCurrent(cell, b.cols[col].milli, b.mark); ok {
			it.amps = model.Some(a)
		} else {
			keep(im.wrongColumn("current", cell, b), "current", cell, col)
		}
	}
	if cell, _ := b.cellAt(cells, FieldFuse); cell != "" && !isNothing(cell) && !isNone(cell) {
		im.fuseCell(b, cell, it)
	}
}

// isNothing: a dash that fills an empty cell.
// isNone is a word for none, where a fuse would be named.
func isNone(cell string) bool {
	switch fold(strings.TrimSpace(cell)) {
	case "none", "no", "nil", "n/a", "na", "without", "unfused", "not fused", "keine", "kein", "ohne", "aucun", "sans", "ninguno", "sin", "nessuno", "senza":
		return true
	}
	return false
}

func isNothing(cell string) bool { return strings.Trim(cell, "-–—. ") == "" }

// wrongColumn is the rule for a cell that is no such thing: it may be another.
func (im *importer) wrongColumn(what, cell string, b *block) string {
	if _, ok := ParseGauge(cell, BareAWG, b.mark); ok && what != "size" && strings.Trim(cell, "0123456789.,") != "" {
		return "a size in the column of the " + what
	}
	if _, ok := ParseColour(cell, b.lang); ok && what != "colour" && strings.Trim(cell, "0123456789") != "" {
		return "a colour in the column of the " + what
	}
	if _, ok := ParseLength(cell, "", b.mark); ok && what != "length" {
		return "a length in the column of the " + what
	}
	if _, ok := ParseCurrent(cell, false, b.mark); ok && what != "current" && strings.Trim(cell, "0123456789.,") != "" {
		return "a current in the column of the " + what
	}
	all := scan(fold(cell))
	for i := 1; i < len(all); i++ {
		if all[i-1].kind == '0' && isCount(all, i) && all[i-1].text != "1" {
			return "a cable in a list of single wires"
		}
	}
	return "no " + what
}
