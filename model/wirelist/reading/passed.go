package reading

import (
	"slices"
	"strconv"
	"strings"

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
	for i := min(from, to) + 1; i < max(from, to); i++ {
		c, p := &l.Cols[i], &l.Prof[i]
		if c.Given || p.Filled == 0 || !isFree(c) {
			continue
		}
		device, ofWord := shape.DeviceOf(c.Head), saysPassage(c.Head)
		if bare := strings.TrimSpace(name.WithoutBrackets(device)); name.IsDesignator(bare) {
			device = bare // "X7 (bulkhead)"
		} else if w := strings.Fields(bare); len(w) == 2 && saysPassage(w[0]) && name.IsDesignator(w[1]) {
			device = w[1] // "Bulkhead X7"
		}
		switch whole := l.wholeEnds(i); {
		case ofWord && whole:
			cols[i].Field, cols[i].Of, cols[i].InCell = name.FieldVia, "", true
		case !ofWord && !name.IsDesignator(device):
			continue
		case !l.holdsCavities(i), ofWord && (p.Filled < 2 || 2*p.Filled < len(l.Src.Rows)), !ofWord && l.namesEnd(device):
			return nil
		default:
			cols[i].Field, cols[i].Of = name.FieldVia, device
		}
		n++
	}
	if n == 0 {
		return nil
	}
	return cols
}

// isFree reports whether a column is not known for anything but cavities of what its heading names.
func isFree(c *shape.Column) bool {
	switch c.Field {
	case name.FieldKeep, name.FieldConnector:
		return true
	case name.FieldPin, name.FieldFromPin, name.FieldToPin:
		return c.Head != ""
	}
	return false
}

// holdsCavities reports whether a column holds cavities of one connector, none of them twice, and whatever else says that a wire
// goes past it.
func (l *look) holdsCavities(i int) bool {
	const most = 200 // cavities of one connector; a larger number is a length (common practice, no source)
	seen := map[string]bool{}
	for _, r := range l.Src.Rows {
		if i >= len(r.Cells) || shape.IsText(r) || value.IsNothing(r.Cells[i]) || words.IsDirect(table.Fold(r.Cells[i])) {
			continue
		}
		for _, pin := range name.SplitPins(r.Cells[i]) {
			if n, err := strconv.Atoi(pin); !name.IsCavity(pin) || seen[pin] || err == nil && n > most {
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

// saysPassage reports whether a heading is of a connector that wires go through.
func saysPassage(head string) bool {
	w := name.Words(name.WithoutBrackets(table.Fold(head)))
	return len(w) > 0 && len(w) < 5 && slices.ContainsFunc(w, words.IsPassage)
}
