package wirelist

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"contralay/model/unit"
)

// judge looks for what in the lists contradicts itself.
func (im *importer) judge() {
	im.cavities()
	im.farEnds()
	for _, t := range im.terms {
		im.inserts(t)
		im.freed(t)
		im.datesOf(t)
		im.counted(t)
	}
}

// cavities finds those that two wires are in.
func (im *importer) cavities() {
	first := map[string]*item{}
	for _, it := range im.items {
		if s := it.from.String(); s != "" && s == it.to.String() {
			im.say(Warn, "both ends in one cavity", it.place, s+" wire "+im.h.Wires[it.wire].ID, "kept")
			continue
		}
		for _, e := range []end{it.from, it.to} {
			s := e.String()
			if s == "" || e.splice != "" {
				continue
			}
			other := first[s]
			switch {
			case other == nil:
				first[s] = it
			case other.place == it.place: // said of the row
			case isGroundStud(e.term.ID), isOtherStud(e.term.ID) && (roleOf(it).V == "ground") == (roleOf(other).V == "ground"):
				// Said of the termination; ground and supply on one bolt is another matter.
			case it.signal != "" && other.signal != "" && fold(it.signal) != fold(other.signal):
				im.say(Stop, "one cavity, two nets", it.place, fmt.Sprintf("%s %q and, %s, %q", s, it.signal, rowOf(other.place, it.place), other.signal), "both kept")
			default:
				im.say(Warn, "two wires in one cavity", it.place, fmt.Sprintf("%s wires %s and %s", s, im.h.Wires[other.wire].ID, im.h.Wires[it.wire].ID), "both kept")
			}
		}
	}
}

// farEnds says which wires end in the list alone.
func (im *importer) farEnds() {
	var open []string
	var at Place
	for _, it := range im.items {
		w := &im.h.Wires[it.wire]
		if w.From.V != "" && w.To.V != "" {
			continue
		}
		if len(open) == 0 {
			at = it.place
		}
		if w.From.V == "" {
			im.say(Warn, "wire without ends", it.place, w.ID, "kept")
			continue
		}
		name := w.From.V
		if it.state == spare {
			name += " (spare)"
		}
		open = append(open, name)
	}
	if len(open) > 0 {
		at.Row = 0
		im.say(Warn, "no far end in the lists", at, counted(len(open), "wire", "wires")+": "+shortList(open), "kept with one end")
	}
}

// inserts finds cavities that an insert does not have.
func (im *importer) inserts(t *term) {
	ins, ok := im.cat.Insert(t.Insert.V)
	if !ok {
		return
	}
	for _, p := range t.pins {
		if !ins.Has(p) {
			im.say(Warn, "cavity that the insert lacks", t.at[p], t.ID+":"+p+", "+ins.ID+" has "+ins.Cavities[0]+" to "+ins.Cavities[len(ins.Cavities)-1], "kept")
		}
	}
}

// freed finds cavities that one place of the lists says are free, and another gives a wire.
func (im *importer) freed(t *term) {
	for _, p := range t.pins {
		if at, ok := t.free[p]; ok && (t.state[p] == used || t.state[p] == spare) {
			im.say(Stop, "free in one place, wired in another", at, t.ID+":"+p, "the wire is kept")
		}
	}
}

// datesOf finds cavities that a spreadsheet took for a date, as it does with "1-2".
func (im *importer) datesOf(t *term) {
	for _, p := range t.pins {
		if len(p) == 10 && p[4] == '-' && p[7] == '-' && strings.Trim(p, "0123456789-") == "" {
			im.say(Warn, "a date where a cavity belongs", t.at[p], t.ID+":"+p, "kept; a spreadsheet makes one of 1-2")
		}
	}
}

// counted holds what stands above a pin table against the table.
func (im *importer) counted(t *term) {
	n := map[string]int{"cavities": len(t.pins)}
	for _, p := range t.pins {
		if t.state[p] == used || t.state[p] == spare {
			n["contacts"]++
		} else {
			n["plugs"]++
		}
	}
	n["wires"] = n["contacts"]
	if ins, ok := im.cat.Insert(t.Insert.V); ok {
		n["cavities"] = ins.Count()
	}
	for _, c := range t.counts {
		if c.n != n[c.of] {
			at := t.place
			at.Row = c.row
			im.say(Warn, "count against the table", at, fmt.Sprintf("%q, the table has %d", c.text, n[c.of]), "the table holds")
		}
	}
}

// total holds a line that sums the list up against its rows, column by column: the
// sum of lengths and currents, the number of rows for any other number.
func (im *importer) total(b *block, r Row) {
	place := Place{File: b.table.File, Sheet: b.table.Sheet, Row: r.Line}
	rows := 0
	for _, row := range b.rows {
		if _, first := row.Filled(); row.Line < r.Line && !isTotal(first) && !isText(row) {
			rows++
		}
	}
	wired := 0
	for k := len(im.items) - 1; k >= 0 && im.items[k].block == im.pages; k-- {
		wired++
	}
	var wrong []string
	for i, cell := range r.Cells {
		if cell == "" || i >= len(b.cols) {
			continue
		}
		switch c := b.cols[i]; c.field {
		case FieldLength:
			u := c.unit
			if u == "" {
				u = im.opt.Unit
			}
			said, ok := ParseLength(cell, u, b.mark)
			if sum, all := b.sum(i, r.Line, func(s string) (float64, bool) {
				mm, ok := ParseLength(s, u, b.mark)
				return float64(mm), ok
			}); ok && all && math.Abs(sum-float64(said)) > 0.5 {
				wrong = append(wrong, fmt.Sprintf("%s %s, the rows have %s", c.head, cell, mmText(unit.Millimetre(sum))))
			}
		case FieldCurrent:
			said, ok := ParseCurrent(cell, c.milli, b.mark)
			if sum, all := b.sum(i, r.Line, func(s string) (float64, bool) {
				a, ok := ParseCurrent(s, c.milli, b.mark)
				return float64(a), ok
			}); ok && all && math.Abs(sum-float64(said)) > 0.01 {
				wrong = append(wrong, fmt.Sprintf("%s %s, the rows have %s", c.head, cell, FormatCurrent(unit.Ampere(math.Round(sum*1000)/1000))))
			}
		default:
			ofWires := false
			for w := range strings.FieldsSeq(fold(cell)) {
				ofWires = ofWires || countWord(w) == "wires"
			}
			for w := range strings.FieldsSeq(cell) {
				if n, err := strconv.Atoi(strings.Trim(w, ":=()")); err == nil && n != wired && (n != rows || ofWires) {
					wrong = append(wrong, fmt.Sprintf("%d, the list has %s and %s", n, counted(rows, "row", "rows"), counted(wired, "wire", "wires")))
				}
			}
		}
	}
	if len(wrong) > 0 {
		im.say(Warn, "total against the rows", place, strings.Join(wrong, ", "), "the rows hold")
	} else {
		im.say(Note, "total", place, "", "left out")
	}
}

// sum adds a column up to a row; all is false where a cell of it is not understood.
func (b *block) sum(col, before int, read func(string) (float64, bool)) (sum float64, all bool) {
	for _, r := range b.rows {
		if r.Line >= before || col >= len(r.Cells) || r.Cells[col] == "" || isNothing(r.Cells[col]) {
			continue
		}
		v, ok := read(r.Cells[col])
		if !ok {
			return 0, false
		}
		sum += v
	}
	return sum, true
}
