package reading

import (
	"strconv"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// settle changes what a heading alone says to what the cells below it are. What a person said holds.
func (l *look) settle() {
	for i := range l.cols {
		if c := &l.cols[i]; !c.Given && l.prof[i].filled > 0 {
			l.settleOne(i, c)
		}
	}
	for i := range l.cols {
		if c := &l.cols[i]; !c.Given && l.prof[i].filled > 0 && c.Field == name.FieldKeep {
			l.settleUnknown(i, c)
		}
	}
}

// settleOne looks at a column whose heading is known.
func (l *look) settleOne(i int, c *shape.Column) {
	p := &l.prof[i]
	switch c.Field {
	case name.FieldPin:
		if l.ofContacts(c) && (p.all(p.contacts) && !p.unique() || l.another(i, name.FieldPin) && !p.most(p.cavities)) {
			c.Field = name.FieldKeep
			if p.all(p.contacts) {
				c.Field = name.FieldContact
			}
		}
	case name.FieldGauge:
		if !c.Said && !c.Section && p.all(p.contacts) && l.countsContacts(i) {
			c.Field = name.FieldContact
		}
	case name.FieldWire:
		switch {
		case p.all(p.colours) && !l.another(i, name.FieldColour):
			c.Field = name.FieldColour
		case p.most(p.words) && p.most(p.filled-p.states) && !l.another(i, name.FieldSignal):
			c.Field = name.FieldSignal // names of circuits
		}
	case name.FieldSpec:
		if w := name.Words(table.Fold(c.Head)); (len(w) == 1 && (w[0] == "type" || w[0] == "typ" || w[0] == "tipo")) && !p.most(p.specs) {
			c.Field = name.FieldKeep
		}
	case name.FieldCable:
		if w := name.Words(table.Fold(c.Head)); w[0] == "group" && len(w) == 1 && !l.marks(i) {
			c.Field = name.FieldKeep // a heading of order
		}
	case name.FieldFrom, name.FieldTo:
		if p.all(p.studs) {
			c.Field = name.FieldKeep // what its lug fits, no place
		}
	case name.FieldNumber:
		if l.anotherPin(i) && !l.countsUp(i) && p.unique() && !l.another(i, name.FieldWire) {
			c.Field = name.FieldWire
		}
	case name.FieldConnector:
		if p.most(p.cavities) && p.unique() && p.filled > 1 && !l.anotherPin(i) && !l.another(i, name.FieldFrom) && !l.another(i,
			name.FieldTo) {
			c.Field, c.Of = name.FieldPin, c.Head
		}
	}
}

// settleUnknown looks at a column whose heading nobody knows.
func (l *look) settleUnknown(i int, c *shape.Column) {
	switch p := &l.prof[i]; {
	case p.all(p.colours) && p.filled > 1 && !l.another(i, name.FieldColour):
		c.Field = name.FieldColour
	case p.all(p.units) && p.filled > 1 && !l.another(i, name.FieldGauge) && !isSpent(c.Head):
		c.Field = name.FieldGauge
	}
}

// isSpent reports whether a heading says that its sizes are of something else than the wire of the row.
func isSpent(head string) bool {
	for _, w := range name.Words(table.Fold(head)) {
		switch w {
		case "former", "old", "previous", "was", "max", "min", "contact", "seal", "largest", "smallest", "alternative", "suggested":
			return true
		}
	}
	return false
}

// another reports whether a column other than one is of a field and holds something.
func (l *look) another(i int, f name.Field) bool {
	for k, c := range l.cols {
		if k != i && c.Field == f && l.prof[k].filled > 0 {
			return true
		}
	}
	return false
}

// anotherPin reports whether a column other than one holds cavities by its heading, "Pin" or "ECU pin".
func (l *look) anotherPin(i int) bool {
	for k, c := range l.cols {
		w := name.Words(table.Fold(c.Head))
		if k != i && (c.Field == name.FieldPin || c.Field == name.FieldKeep && len(w) > 1 &&
			l.h.Words[w[len(w)-1]].Field == name.FieldPin) {
			return true
		}
	}
	return false
}

// ofContacts reports whether a heading is of contacts, which have sizes and part numbers.
func (l *look) ofContacts(c *shape.Column) bool {
	for _, w := range name.Words(table.Fold(c.Head)) {
		switch w {
		case "contact", "contacts", "kontakt", "contacto", "contatto", "terminal":
			return true
		}
	}
	return false
}

// marks reports whether the cells of a column are names or kinds of cables: "TP1", "twisted pair".
func (l *look) marks(i int) bool {
	n, is := 0, 0
	for _, r := range l.src.Rows[:min(len(l.src.Rows), mostLooked)] {
		if i >= len(r.Cells) || r.Cells[i] == "" || shape.IsText(r) {
			continue
		}
		n++
		if cell := r.Cells[i]; name.IsMark(cell) || name.CableWords(cell).IsCable() || len(name.Partners(cell)) > 0 ||
			name.IsBracket(cell) {
			is++
		}
	}
	return n > 0 && is == n
}

// countsUp reports whether a column is the numbers of its rows, 1, 2, 3.
func (l *look) countsUp(i int) bool {
	next := 1
	for _, r := range l.src.Rows {
		if i >= len(r.Cells) || r.Cells[i] == "" || shape.IsText(r) {
			continue
		}
		n, err := strconv.Atoi(strings.TrimRight(r.Cells[i], ".)"))
		if err != nil || n != next {
			return false
		}
		next++
	}
	return next > 1
}

// countsContacts reports whether the texts above the block count contacts of the sizes that stand in
// a column, as many as there are or more: "Size 20 sockets x3".
func (l *look) countsContacts(i int) bool {
	said := map[string]int{}
	for _, t := range l.src.Titles {
		_, text := t.Filled()
		if c, ok := name.ReadCount(text); ok && c.Of == "contacts" {
			if s := name.SizeCounted(text); s != "" {
				said[s] += c.N
			}
		}
	}
	if len(said) == 0 {
		return false
	}
	rows := map[string]int{}
	for _, r := range l.src.Rows {
		if i < len(r.Cells) && r.Cells[i] != "" && !shape.IsText(r) {
			rows[strings.TrimLeft(table.Fold(r.Cells[i]), "# ")]++
		}
	}
	for s, n := range rows {
		if said[s] < n {
			return false
		}
	}
	return true
}
