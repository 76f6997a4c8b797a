package reading

import (
	"slices"
	"strconv"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// cablesNamedOnce writes the cable into the rows below the one that names it, where the numbers of its cores go on: each cable begins
// with core 1, and every row without a cable has the number behind that of the row above.
//
//	Multi | Core | Signal
//	M1    | 1    | live
//	      | 2    | neutral
//	M2    | 1    | live
func (l *look) cablesNamedOnce() {
	cable := l.holds(l.cols, name.FieldCable)
	if cable < 0 || cable+1 >= len(l.cols) || l.prof[cable].Filled >= l.prof[cable+1].Filled || !l.prof[cable].Unique() {
		return
	}
	core, rows := cable+1, slices.Clone(l.src.Rows)
	last, of, filled := 0, "", 0
	for k, r := range rows {
		if shape.IsText(r) || core >= len(r.Cells) {
			continue
		}
		n, err := strconv.Atoi(r.Cells[core])
		if err != nil {
			return
		}
		switch named := r.Cells[cable]; {
		case value.IsDitto(named):
			last = n
			continue
		case named != "":
			if n != 1 {
				return
			}
			of = named
		case of == "" || n != last+1:
			return
		default:
			rows[k].Cells = slices.Clone(r.Cells)
			rows[k].Cells[cable] = of
			filled++
		}
		last = n
	}
	if filled == 0 {
		return
	}
	l.src.Rows = rows
	l.prof[cable] = column.Of(rows, cable, l.lang, l.mark)
}

// endTexts reads two columns beside each other that nobody knows and whose cells are ends in plain words, a device and its place, in a
// table that has values of wires or their cables and says no other end. Nothing but the cells says so, and a person should look.
//
//	Cable | mm2 | Dimmer  | Bar outlet
//	M1    | 2.5 | Dim 1 L | Bar 1 L
//	M1    | 2.5 | Dim 1 N | Bar 1 N
func endTexts(l *look) []shape.Column {
	if len(l.src.Head) == 0 || l.anotherPin(-1) || l.has(l.cols, name.FieldFrom, name.FieldTo, name.FieldFromPin, name.FieldToPin,
		name.FieldRun, name.FieldVia, name.FieldDevicePin) || l.holds(l.cols, name.FieldGauge, name.FieldColour, name.FieldCable) < 0 {
		return nil
	}
	at := column.EndTexts(l.src.Rows, len(l.cols))
	if at < 0 {
		return nil
	}
	cols := slices.Clone(l.cols)
	for k, f := range []name.Field{name.FieldFrom, name.FieldTo} {
		c := &cols[at+k]
		w := name.Words(table.Fold(c.Head))
		if c.Given || len(w) == 0 || c.Field != name.FieldKeep && c.Field != name.FieldConnector || name.IsMeasure(w) || name.IsRemark(w) {
			return nil
		}
		c.Field, c.Guessed = f, true
	}
	return cols
}
