package wirelist

import (
	"fmt"
	"slices"
	"strings"

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
		if i < len(b.cols) && b.cols[i].field == FieldKeep && !b.cols[i].spared && c != "" {
			it.notes = append(it.notes, joinNonEmpty(": ", b.cols[i].head, c))
		}
	}
	if id := b.cell(cells, FieldWire); !isNothing(id) && (isPlainName(id) || stateOf(id) == used) { // "plug" is no number of a wire
		it.ownID = id
	}
	it.signal = b.cell(cells, FieldSignal)
	for i, c := range cells {
		if i < len(b.cols) && b.cols[i].field == FieldKeep && it.signal == "" && drainWord(fold(c)) {
			it.signal = c // a shield among the numbers of the cores
		}
	}
	if it.signal == "" && it.ownID != "" && drainWord(strings.TrimRight(fold(it.ownID), "0123456789 ")) {
		it.signal, it.ownID = it.ownID, "" // a shield in the column of the wires
	}
	for i, c := range cells {
		if i < len(b.cols) && b.cols[i].running && b.cols[i].field == FieldIgnore {
			it.counted = strings.TrimRight(c, ".)")
		}
	}
	im.values(b, cells, &it, column)
	_, it.drain = drainOf(it.signal)
	im.noteOf(b, cells, &it)
	im.cableCells(b, cells, &it)
	im.stateOf(b, cells, &it)
	for i, c := range cells {
		if i < len(b.cols) && b.cols[i].spared && c != "" {
			it.notes = append(it.notes, joinNonEmpty(": ", b.cols[i].head, c))
		}
	}
	it.notes = append(it.notes, b.beside(cells)...)
	im.rows++

	if !b.has(FieldFrom, FieldTo, FieldFromPin) || owner != nil && !b.has(FieldFrom) {
		im.pinRow(b, cells, it, owner, column)
		return
	}
	if pin, col := b.cellAt(cells, FieldPin); pin != "" && owner == nil {
		it.notes = append(it.notes, "cavity: "+pin)
		im.say(Warn, "cavity of no connector", column(col), pin, "kept in the note")
	}
	froms, fromCol := im.endsOf(b, cells, FieldFrom, FieldFromPin, &it, column)
	tos, toCol := im.endsOf(b, cells, FieldTo, FieldToPin, &it, column)
	col := toCol
	if len(froms) > 1 || col < 0 {
		col = max(fromCol, 0)
	}
	im.between(it, froms, tos, column(col))
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
	if it.shield != "" && it.shield != it.cable {
		all = append(all, it.shield)
	}
	for _, text := range []string{it.signal, it.ownID, it.cable, it.cueText, it.fuseName, joinNonEmpty(":", it.to.text, it.to.pin)} {
		if text != "" && !onlyState(text) && (text != it.signal || !onlyFree(text)) {
			all = append(all, text)
		}
	}
	if len(all) > 0 || where == "" {
		im.say(Note, "text on a cavity without wire", it.place, joinNonEmpty(" ", where, strings.Join(all, "; ")), "left in the list")
	}
}
