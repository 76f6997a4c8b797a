package settle

import (
	"slices"
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// devicePairs takes two columns of cavities, each right behind a column of devices, for the two ends of each wire, whatever words head
// the devices: no device has one of its cavities twice, and on some side a device comes again.
//
//	Sensor | Sensor pin | Signal | Logger | Terminal
//	TC1    | 1          | hot +  | LOG-A  | 3
func (l endColumns) devicePairs() {
	if l.Has(l.Cols, name.FieldFrom, name.FieldTo, name.FieldFromPin, name.FieldToPin, name.FieldRun, name.FieldVia, name.FieldDevicePin) {
		return
	}
	var of []int
	pins, again := 0, false
	for i := range l.Cols {
		if l.Prof[i].Filled == 0 || !l.isPlaceColumn(i) {
			continue
		}
		pins++
		if i > 0 && l.isEndDevice(i-1) && column.PairsOnce(l.Src.Rows, i-1, i) {
			of = append(of, i-1)
			again = again || l.Prof[i-1].Distinct < l.Prof[i-1].Filled
		}
	}
	if len(of) != 2 || pins != 2 || !again {
		return
	}
	for i, c := range l.Cols {
		if c.Field == name.FieldConnector && !slices.Contains(of, i) {
			return // a device, its plug, and the cavity
		}
	}
	l.Cols[of[0]].Field, l.Cols[of[0]+1].Field = name.FieldFrom, name.FieldFromPin
	l.Cols[of[1]].Field, l.Cols[of[1]+1].Field = name.FieldTo, name.FieldToPin
}

// isPlaceColumn reports whether a column holds cavities by the last word of its heading, "Sensor pin", "Terminal".
func (l endColumns) isPlaceColumn(i int) bool {
	c, p := &l.Cols[i], &l.Prof[i]
	w := name.Words(name.WithoutBrackets(table.Fold(c.Head)))
	if c.Given || len(w) == 0 || c.Alias || !p.Most(max(p.Cavities, l.ShortNames(i))) {
		return false
	}
	last := w[len(w)-1]
	switch c.Field {
	case name.FieldPin:
		return c.Of != c.Head || words.IsPlace(last)
	case name.FieldKeep, name.FieldContact:
		return l.Heads.Words[last].Field == name.FieldPin || words.IsPlace(last)
	}
	return false
}

// isEndDevice reports whether the cells of a column can be the devices at one end of wires.
func (l endColumns) isEndDevice(i int) bool {
	c, p := &l.Cols[i], &l.Prof[i]
	w := name.Words(table.Fold(c.Head))
	if c.Given || len(w) == 0 || p.Filled < 2 || p.Prose > 0 || p.Colours > 0 || p.Sized > 0 || p.Most(p.Numbers) || name.IsMeasure(w) {
		return false
	}
	return c.Field == name.FieldConnector || c.Field == name.FieldKeep && !name.IsRemark(w) && !l.isPlaceColumn(i)
}

// joinedHeads takes a column for the cavities of the far end where its heading is that of the far end and a word for a cavity in one
// word: "Ziel", "Zielklemme".
func (l endColumns) joinedHeads() {
	for i := 1; i < len(l.Cols); i++ {
		c, before := &l.Cols[i], &l.Cols[i-1]
		pin, ok := strings.CutPrefix(table.Fold(c.Head), table.Fold(before.Head))
		f := map[name.Field]name.Field{name.FieldFrom: name.FieldFromPin, name.FieldTo: name.FieldToPin}[before.Field]
		if !ok || f == "" || c.Given || c.Field != name.FieldKeep || l.Has(l.Cols, f) || l.Prof[i].Filled == 0 {
			continue
		}
		if pin = strings.TrimSpace(pin); l.Heads.Words[pin].Field == name.FieldPin || name.IsPinWord(pin) {
			c.Field = f
		}
	}
}
