package settle

import (
	"slices"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// farPins takes a column right behind the devices that the wires go to for the cavities there, where its heading says that it is of
// places on something, "Lug", "Their pin", and the cavities of the near end have a column of their own before it. The devices may
// stand below a heading that nobody knows.
//
//	Board pad | To      | Their pin | Wire      Board pad | Panel part | Lug | Wire
//	VB        | Display | 1         | red       W1        | J1         | T   | blue
func (l endColumns) farPins() {
	if l.Has(l.Cols, name.FieldFrom, name.FieldFromPin, name.FieldToPin, name.FieldRun, name.FieldVia, name.FieldDevicePin) {
		return
	}
	near := slices.IndexFunc(l.Cols, func(c shape.Column) bool {
		return !c.Given && (c.Field == name.FieldPin || c.Field == name.FieldKeep && l.EndsInPin(c.Head))
	})
	if near < 0 || !l.Prof[near].Unique() || l.Prof[near].Filled < 2 {
		return
	}
	to := l.Holds(l.Cols, name.FieldTo)
	for i := near + 1; i+1 < len(l.Cols); i++ {
		if to >= 0 && to != i || !l.isFarDevice(i) || !l.isFarPin(i, near) {
			continue
		}
		if l.Cols[near].Field == name.FieldKeep {
			l.Cols[near].Field, l.Cols[near].Of = name.FieldPin, shape.DeviceOf(words.WithoutPad(l.Cols[near].Head))
		}
		l.Cols[i].Field, l.Cols[i+1].Field = name.FieldTo, name.FieldToPin
		return
	}
}

// isFarDevice reports whether the cells of a column can be the devices of the far end, one of which has several wires.
func (l endColumns) isFarDevice(i int) bool {
	c, p := &l.Cols[i], &l.Prof[i]
	switch c.Field {
	case name.FieldTo:
		return !c.Given && p.Ends == 0
	case name.FieldKeep, name.FieldConnector:
		w := name.Words(table.Fold(c.Head))
		return !c.Given && len(w) > 0 && p.Distinct < p.Filled && p.Filled > 1 && p.Prose == 0 && !p.Most(p.Numbers) && p.Colours == 0 &&
			p.Sized == 0 && p.States == 0 && !name.IsMeasure(w) &&
			(!name.IsOtherHead(w[len(w)-1]) || l.Designators(i) == p.Filled)
	}
	return false
}

// isFarPin reports whether the column behind one of far devices holds their cavities: its heading says places, and no device has
// one of them twice.
func (l endColumns) isFarPin(i, near int) bool {
	c, p := &l.Cols[i+1], &l.Prof[i+1]
	if c.Given || c.Field != name.FieldKeep && c.Field != name.FieldPin && c.Field != name.FieldContact || !l.saysFarPlace(i) ||
		p.Filled == 0 || !p.Most(l.ShortNames(i+1)) {
		return false
	}
	return column.PairsOnce(l.Src.Rows, i, i+1)
}

// saysFarPlace reports whether the heading behind a column is one word for a place where a wire is landed, with nothing before it
// but a word for the other side or the heading of that column.
func (l endColumns) saysFarPlace(i int) bool {
	w := name.Words(name.WithoutBrackets(table.Fold(l.Cols[i+1].Head)))
	if len(w) == 0 || len(w) > 2 {
		return false
	}
	if len(w) == 2 && !slices.Contains(name.Words(table.Fold(l.Cols[i].Head)), w[0]) {
		if !words.SaysOtherSide(w[0]) {
			return false
		}
	}
	last := w[len(w)-1]
	return words.IsPlace(last) || l.Heads.Words[last].Field == name.FieldPin || name.IsPinWord(last)
}
