package sidehead

import (
	"slices"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// named finds the two cells of the first row that name the ends by what they are, "ECU" and "Sensor", where no word says that they are
// ends: below each stand the same headings, a connector and its cavity among them, or the
// cavity of a connector and what is crimped on there, and nothing of the first row stands over the rest of
// either. −1 where there are no two such, or more.
//
//	Signal | ECU             | Sensor          | Colour             | P1             | P2
//	       | Connector | Pin | Connector | Pin |        Wire | Pin | Terminal | Pin | Terminal
func named(group, below table.Row, known map[string]name.Meaning) (first, second int) {
	first, second = -1, -1
	group.Cells = once(group.Cells)
	for i, c := range group.Cells {
		if c == "" || i >= len(below.Cells) || below.Cells[i] == "" {
			continue
		}
		n := length(group, below, i)
		place, cavity, fitted := false, false, 0
		for k := i; k < i+n; k++ {
			switch folded := table.Fold(below.Cells[k]); {
			case field(folded, known) == name.FieldConnector:
				place = true
			case field(folded, known) == name.FieldPin && !IsFitting(folded):
				cavity = true
			case !IsFitting(folded):
				continue
			}
			if fitted == k-i {
				fitted++ // of the first columns below it
			}
		}
		if !place && name.IsDesignator(c) && fitted > 0 { // it is the connector itself
			place = fitted == n || first >= 0 && fitted >= length(group, below, first)
		}
		switch {
		case !place || !cavity:
		case first < 0:
			first = i
		case second >= 0:
			return -1, -1
		default:
			second = i
		}
	}
	if second < 0 || table.Fold(group.Cells[first]) == table.Fold(group.Cells[second]) {
		return -1, -1
	}
	n := length(group, below, first)
	if length(group, below, second) < n {
		n = length(group, below, second)
	}
	for k := range n {
		if table.Fold(below.Cells[first+k]) != table.Fold(below.Cells[second+k]) {
			return -1, -1
		}
	}
	return first, second
}

// Devices are the two cells of a first row of headings that name the ends by what they are; nil where the headings are no two such rows.
func Devices(head []table.Row, known map[string]name.Meaning) []string {
	if len(head) != 2 {
		return nil
	}
	if first, _ := ends(head[0], known); first >= 0 {
		return nil // "From" and "To" name nothing
	}
	first, second := named(head[0], head[1], known)
	if first < 0 {
		return nil
	}
	return []string{head[0].Cells[first], head[0].Cells[second]}
}

// length is how many headings stand below a cell of the first row, up to the next one.
func length(group, below table.Row, at int) (n int) {
	for at+n < len(below.Cells) && below.Cells[at+n] != "" && (n == 0 || at+n >= len(group.Cells) || group.Cells[at+n] == "") {
		n++
	}
	return n
}

// once is the cells of a row, a text that comes again in the next column left out: cells that were joined are often saved so.
func once(cells []string) []string {
	all := slices.Clone(cells)
	for i := len(all) - 1; i > 0; i-- {
		if all[i] == all[i-1] {
			all[i] = ""
		}
	}
	return all
}
