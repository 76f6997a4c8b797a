package wirelist

import (
	"fmt"
	"slices"
	"strings"

	"contralay/model"
	"contralay/model/catalogue"
)

// row makes the items of one row: one for each cavity or wire that it names. notes is
// what else is to be kept of it.
func (im *importer) row(b *block, cells, notes []string, owner *term, place Place) {
	it := item{place: place, wire: -1, block: im.pages, notes: notes}
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
	im.values(b, cells, &it, column)
	im.noteOf(b, cells, &it)
	im.cableCells(b, cells, &it)
	im.stateOf(b, cells, &it)
	im.rows++

	if !b.has(FieldFrom, FieldTo, FieldFromPin) || owner != nil && !b.has(FieldFrom) {
		im.pinRow(b, cells, it, owner, column)
		return
	}
	froms, fromCol := im.endsOf(b, cells, FieldFrom, FieldFromPin, &it, column)
	tos, toCol := im.endsOf(b, cells, FieldTo, FieldToPin, &it, column)
	col := toCol
	if len(froms) > 1 || col < 0 {
		col = max(fromCol, 0)
	}
	im.between(it, froms, tos, column(col))
}

// between makes an item for each pair of ends: as many on either side, or one on one of
// them, which then has a wire to each of the others.
func (im *importer) between(it item, froms, tos []end, place Place) {
	m, n := len(froms), len(tos)
	if m > 1 && n > 1 && m != n {
		im.say(Warn, "cavities do not pair", place, endsText(froms)+" to "+endsText(tos), "kept in the note, no ends made")
		it.notes = append(it.notes, "from "+endsText(froms)+" to "+endsText(tos))
		froms, tos, m, n = nil, nil, 0, 0
	}
	if m > 1 || n > 1 {
		did := "a wire for each"
		if m == 1 || n == 1 {
			did = "a wire to each, together in the one cavity"
		}
		im.say(Note, "several cavities in one cell", place, joinNonEmpty(" to ", endsText(froms), endsText(tos)), did)
	}
	for k := range max(m, n, 1) {
		one := it
		one.notes, one.with = slices.Clone(it.notes), slices.Clone(it.with)
		if m > 0 {
			one.from = froms[min(k, m-1)]
		}
		if n > 0 {
			one.to = tos[min(k, n-1)]
		}
		im.count++
		one.order = im.count
		im.items = append(im.items, &one)
	}
}

// endsText names ends as the list does: the connector once.
func endsText(all []end) string {
	s, last := "", ""
	for k, e := range all {
		name := e.text
		if e.term != nil {
			name = e.term.ID
		}
		if k > 0 {
			s += ", "
		}
		if name != last || k == 0 {
			s += name
			if e.pin != "" && name != "" {
				s += ":"
			}
		}
		s, last = s+e.pin, name
	}
	return s
}

// endsOf reads the cell or the two cells of one side: the ends that stand there, each of
// one cavity. The termination is made later, when all lists are read and it shows which
// names are splices.
func (im *importer) endsOf(b *block, cells []string, f, pin Field, it *item, column func(int) Place) ([]end, int) {
	text, col := b.cellAt(cells, f)
	p, pinCol := b.cellAt(cells, pin)
	if col < 0 {
		col = pinCol
	}
	if text == "" && p == "" {
		return nil, col
	}
	if p == "" || text == "" || strings.Contains(text, ":") {
		both, more := splitEnds(joinNonEmpty("", text, map[bool]string{true: p}[text == ""]))
		if more != "" && len(both) > 0 {
			it.notes = append(it.notes, "at "+both[len(both)-1].connector+":"+both[len(both)-1].pin+": "+more)
			im.say(Note, "text behind a cavity", column(max(col, 0)), more, "kept in the note")
		}
		var all []end
		for _, e := range both {
			for _, q := range im.spreadPin(b, e.pin, nil, column(max(col, 0))) {
				all = append(all, end{text: e.connector, pin: q})
			}
		}
		// The cavity may stand in both cells.
		if len(all) > 0 && (p == "" || text == "" || len(all) == 1 && all[0].pin == p) {
			return all, col
		}
	}
	e := end{text: text, pin: p}
	switch {
	case text == "" && pinCol >= 0 && b.cols[pinCol].of != "":
		e.text = b.cols[pinCol].of
	case text == "":
		if c, q, ok := splitEnd(p); ok {
			e.text, e.pin = c, q
		}
	case p == "" && !b.has(pin):
		if c, q, ok := splitEnd(text); ok {
			e.text, e.pin = c, q
		}
	}
	var all []end
	for _, q := range splitPins(e.pin) {
		for _, one := range im.spreadPin(b, q, nil, column(max(pinCol, col, 0))) {
			all = append(all, end{text: e.text, pin: one})
		}
	}
	if all == nil {
		all = []end{e}
	}
	return all, col
}

// spreadPin gives the cavities of a range, where it is one; else the name itself, and a
// warning where it could be a range.
func (im *importer) spreadPin(b *block, pin string, ins *catalogue.Insert, place Place) []string {
	all, sure, ok := spread(pin, ins)
	if ok && (sure || b.ranges) && !slices.ContainsFunc(all, func(p string) bool { return b.named[p] }) {
		return all
	}
	if looksLikeRange(pin) {
		im.say(Warn, "could be a range of cavities", place, pin, "read as the name of one")
	}
	return []string{pin}
}

// pinRow makes an item for each cavity of a row of a pin table.
func (im *importer) pinRow(b *block, cells []string, it item, owner *term, column func(int) Place) {
	cell, col := b.cellAt(cells, FieldPin)
	if cell == "" || owner == nil {
		im.say(Warn, "row without cavity", it.place, tidy(strings.Join(cells, " ")), "left out")
		return
	}
	var ins *catalogue.Insert
	if i, ok := im.cat.Insert(owner.Insert.V); ok {
		ins = &i
	}
	var pins []string
	if ins != nil && ins.Has(cell) {
		pins = []string{cell}
	} else {
		for _, p := range splitPins(cell) {
			pins = append(pins, im.spreadPin(b, p, ins, column(col))...)
		}
	}
	if len(pins) == 0 {
		im.say(Warn, "no cavity", column(col), cell, "row left out")
		return
	}
	free := it.state == blank || it.state == reserved
	switch {
	case len(pins) > 1 && free:
		im.say(Note, "several cavities in one cell", column(col), cell, fmt.Sprintf("taken as %d of them", len(pins)))
	case len(pins) > 1:
		net := fmt.Sprintf("%q", it.signal)
		if it.signal == "" {
			net = "without name"
		}
		im.say(Note, twoOrMore(len(pins))+" cavities of one net", column(col), cell+" "+net, "a wire in each")
	}
	tos, toCol := im.endsOf(b, cells, FieldTo, FieldToPin, &it, column)
	if it.signal != "" && len(tos) == 0 {
		it.net = strings.Join(append(words(fold(it.signal)), plusMinus(it.signal)...), " ")
	}
	var froms []end
	for _, p := range pins {
		owner.pin(p, it.state, it.place)
		if free {
			one := it
			if len(tos) > 0 {
				one.to = tos[0]
			}
			im.restOf(&one, owner.ID+":"+p)
			continue
		}
		froms = append(froms, end{term: owner, pin: p})
	}
	switch {
	case free:
	case len(froms) > 1 && len(tos) < 2: // said above
		for _, from := range froms {
			im.between(it, []end{from}, tos, column(col))
		}
	default:
		im.between(it, froms, tos, column(max(toCol, col)))
	}
}

// twoOrMore is "two" and the numbers beyond.
func twoOrMore(n int) string {
	if n == 2 {
		return "two"
	}
	return fmt.Sprint(n)
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
		if text != "" && !onlyState(text) && (text != it.signal || !onlyFree(text)) {
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
		if g, rest := cutSpec(cell); g.Spec != "" && rest == "" {
			it.gauge = g
		} else if more, ok := ParseGauge(cell, BareAWG, b.mark); ok && more.Spec != "" {
			it.gauge = more
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
		case sizeWithin(cell, b.mark) != "" && it.gauge.Size == "":
			it.gauge.Size = sizeWithin(cell, b.mark)
			keep("more than a size", "size", cell, col)
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
