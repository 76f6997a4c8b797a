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
	"contralay/model/wirelist/words"
)

// passed reads the cavities of a bulkhead in a list of both ends: each wire goes through one of its cavities, or past it. The column is
// headed by the bulkhead itself, by its designator or by a word for one, or by that word alone where the cells name bulkhead and cavity.
// Of two columns a wire takes both, in their order.
//
//	From (cab) | Firewall | To (engine) | Signal       From  | Via   | To     | Signal
//	Dash 3     | A        | Sender 1    | Oil          ECU:3 | BH1-A | INJ1:1 | Injector 1
//
//	From  | BH1 | To    | Signal
//	PDM:3 | A   | LP1:2 | Lift pump
//	STUD1 | -   | LP1:1 | Ground
func passed(l *look) []shape.Column {
	from, to := l.Holds(l.Cols, name.FieldFrom), l.Holds(l.Cols, name.FieldTo)
	if from < 0 || to < 0 || l.Has(l.Cols, name.FieldVia, name.FieldRun) {
		return nil
	}
	cols, n := slices.Clone(l.Cols), 0
	for i := range l.Cols {
		c, p := &l.Cols[i], &l.Prof[i]
		if c.Given || p.Filled == 0 || i == from || i == to || !isFree(c) {
			continue
		}
		device, ofWord := column.PassageOf(c.Head), words.SaysPassage(c.Head)
		if ofWord && l.wholeEnds(i) {
			cols[i].Field, cols[i].Of, cols[i].InCell = name.FieldVia, "", true
			n++
			continue
		}
		if !ofWord && !name.IsDesignator(device) || !l.isBetween(i, from, to) && !l.isThird(i, device) &&
			(ofWord && saysOnlyThrough(c.Head) || !ofWord && !l.tellsPassage(device)) {
			continue
		}
		if !l.holdsCavities(i) || ofWord && p.Filled < 2 || !ofWord && (l.namesEnd(device) || l.isOfOneEnd(i, device, from, to)) {
			return nil
		}
		cols[i].Field, cols[i].Of = name.FieldVia, device
		n++
	}
	if n == 0 {
		return nil
	}
	return cols
}

// isThird reports whether a column is headed as the pins of a connector, "X30 pin", in a table in which both ends have a connector and a
// cavity in columns of their own, and some wires have nothing there: a wire has two ends, so the third connector is on its way.
func (l *look) isThird(i int, device string) bool {
	return l.EndsInPin(l.Cols[i].Head) && name.IsDesignator(device) && strings.ContainsAny(device, "0123456789") &&
		l.Holds(l.Cols, name.FieldFromPin) >= 0 && l.Holds(l.Cols, name.FieldToPin) >= 0 && l.Prof[i].Unique() && l.Prof[i].Filled > 1 &&
		l.Prof[i].Filled < len(l.Src.Rows)
}

// saysOnlyThrough reports whether a heading is a word for going through and names nothing: its cells are as likely the bulkheads.
func saysOnlyThrough(head string) bool {
	return slices.Contains([]string{"via", "through", "thru"}, strings.TrimSpace(table.Fold(head)))
}

// isBetween reports whether a column stands between those of the two ends.
func (l *look) isBetween(i, from, to int) bool { return i > min(from, to) && i < max(from, to) }

// tellsPassage reports whether a text above the table says of a connector that it is one that wires go through, "Bulkhead: BH1". Of a key
// of several connectors, "X1 = engine / X2 = bulkhead", only the piece that names it says it.
func (l *look) tellsPassage(device string) bool {
	return slices.ContainsFunc(slices.Concat(l.Src.Path, l.Src.Titles), func(r table.Row) bool {
		_, text := r.Filled()
		pieces := []string{text}
		if strings.Count(text, "=") > 1 {
			pieces = strings.FieldsFunc(text, func(r rune) bool { return strings.ContainsRune("/;,|", r) })
		}
		return slices.ContainsFunc(pieces, func(piece string) bool {
			w := name.Words(table.Fold(piece))
			return slices.Contains(w, table.Fold(device)) && slices.ContainsFunc(w, words.IsPassage)
		})
	})
}

// isOfOneEnd reports whether a heading that is built like the designator of a connector is more likely one of two for what both ends
// have: "P1" and "P2" for their pins, "T1" and "T2" for their terminals.
func (l *look) isOfOneEnd(i int, head string, from, to int) bool {
	letters := strings.TrimRight(head, "0123456789")
	for k, c := range l.Cols {
		if k != i && l.Prof[k].Filled > 0 && !l.isBetween(k, from, to) && name.IsDesignator(c.Head) &&
			strings.EqualFold(strings.TrimRight(c.Head, "0123456789"), letters) {
			return true
		}
	}
	return len(letters) == 1 && 2*l.Prof[from].Ends < l.Prof[from].Filled && !l.Has(l.Cols, name.FieldFromPin) && !l.tellsPassage(head)
}

// isFree reports whether a column is not known for anything but cavities of what its heading names.
func isFree(c *shape.Column) bool {
	switch c.Field {
	case name.FieldKeep, name.FieldConnector:
		return true
	case name.FieldPin, name.FieldFromPin, name.FieldToPin: // "Origen | Vía | Destino | Vía": the cavity of each
		return c.Head != "" && (c.Field == name.FieldPin || !saysOnlyThrough(c.Head))
	}
	return false
}

// mostCavities is how many cavities a connector has at most; a larger number is a length (common practice, no source).
const mostCavities = 200

// holdsCavities reports whether a column holds cavities of one connector, none of them twice, and whatever else says that a wire
// goes past it.
func (l *look) holdsCavities(i int) bool {
	seen := map[string]bool{}
	for _, r := range l.Src.Rows {
		if i >= len(r.Cells) || shape.IsText(r) || value.IsNothing(r.Cells[i]) || words.IsDirect(table.Fold(r.Cells[i])) {
			continue
		}
		for _, pin := range name.SplitPins(r.Cells[i]) {
			if n, err := strconv.Atoi(pin); !name.IsCavity(pin) || seen[pin] || err == nil && n > mostCavities {
				return false
			}
			seen[pin] = true
		}
	}
	return len(seen) > 0
}

// wholeEnds reports whether each cell of a column is a connector and a cavity of it.
func (l *look) wholeEnds(i int) bool {
	n := 0
	for _, r := range l.Src.Rows {
		if i >= len(r.Cells) || shape.IsText(r) || value.IsNothing(r.Cells[i]) || words.IsDirect(table.Fold(r.Cells[i])) {
			continue
		}
		connector, pin, ok := name.SplitEnd(r.Cells[i])
		if !ok || !name.IsCavity(pin) || connector == "" || name.IsCavity(r.Cells[i]) && !name.IsDesignator(connector) {
			return false
		}
		n++
	}
	return n > 1
}

// namesEnd reports whether a cell of a from or a to names a connector: its cavities stand in a column of their own.
func (l *look) namesEnd(connector string) bool {
	key := name.Key(connector)
	for i, c := range l.Cols {
		if c.Field != name.FieldFrom && c.Field != name.FieldTo {
			continue
		}
		for _, r := range l.Src.Rows {
			if i >= len(r.Cells) {
				continue
			}
			if of, _, _ := name.SplitEnd(r.Cells[i]); name.Key(of) == key {
				return true
			}
		}
	}
	return false
}
