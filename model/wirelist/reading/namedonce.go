package reading

import (
	"slices"
	"strconv"
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// cablesNamedOnce writes the cable into the rows below the one that names it, where its cores go on: each cable begins with core 1 and
// its rows count on, or each begins with one core and has none twice.
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
	of, first, last, named, filled := "", "", 0, 0, 0
	counts, kinds := true, true
	seen := map[string]bool{} // in the cable in hand
	for k, r := range rows {
		if shape.IsText(r) || core >= len(r.Cells) {
			continue
		}
		text := table.Fold(r.Cells[core])
		n, err := strconv.Atoi(text)
		counts = counts && err == nil
		switch {
		case value.IsDitto(r.Cells[cable]):
		case r.Cells[cable] != "":
			of, seen = r.Cells[cable], map[string]bool{}
			if named++; named == 1 {
				first = text
			}
			counts, kinds = counts && n == 1, kinds && text == first
		default:
			counts, kinds = counts && of != "" && n == last+1, kinds && of != "" && text != "" && !seen[text]
			rows[k].Cells = slices.Clone(r.Cells)
			rows[k].Cells[cable] = of
			filled++
		}
		last, seen[text] = n, true
		if !counts && !kinds {
			return
		}
	}
	if filled == 0 || !counts && (named < 2 || !l.isCoreColumn(core)) {
		return
	}
	l.src.Rows = rows
	l.prof[cable] = column.Of(rows, cable, l.lang, l.mark, l.h.Colours)
}

// isCoreColumn reports whether a heading is of the cores of cables.
func (l *look) isCoreColumn(i int) bool {
	return slices.ContainsFunc(name.Words(table.Fold(l.cols[i].Head)), func(w string) bool {
		switch w {
		case "core", "cores", "conductor", "ader", "adern", "aderfarbe", "conducteur", "brin", "hilo", "conduttore", "anima",
			"zyla", "zila", "johdin", "ledare", "leder":
			return true
		}
		return false
	})
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
	if at < 0 || l.holds(l.cols, name.FieldColour, name.FieldCable) < 0 && !l.letteredPlaces(at) {
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

// letteredPlaces reports whether half of the texts of two columns or more end in a letter or a pole, as places do and the numbers of
// rooms do not.
func (l *look) letteredPlaces(at int) bool {
	n, lettered := 0, 0
	for _, r := range l.src.Rows[:min(len(l.src.Rows), column.MostLooked)] {
		for i := at; i <= at+1 && i < len(r.Cells) && !shape.IsText(r); i++ {
			if r.Cells[i] == "" {
				continue
			}
			n++
			if last := r.Cells[i][strings.LastIndexByte(r.Cells[i], ' ')+1:]; strings.Trim(last, "0123456789") != "" {
				lettered++
			}
		}
	}
	return n > 0 && 2*lettered >= n
}
