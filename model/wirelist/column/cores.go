package column

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/rising"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// AreSeries reports whether the cells of a column are one name and a number each, no number twice: "W-1", "W-2", "W-3" are ids, and
// no white wires of 1, 2 and 3 AWG; and so "1-red", "2-blue", "3-grey", which count up.
func AreSeries(rows []table.Row, i int) bool {
	if rising.ByOne(rows, i) {
		return true
	}
	front, seen := "", map[string]bool{}
	for _, r := range rows[:min(len(rows), MostLooked)] {
		if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) || shape.IsText(r) {
			continue
		}
		name := strings.TrimRight(r.Cells[i], "0123456789")
		if name == "" || name == r.Cells[i] || front != "" && name != front || seen[r.Cells[i]] {
			return false
		}
		front, seen[r.Cells[i]] = name, true
	}
	return len(seen) > 1
}

// Drains counts the cells of a column that are a word for the drain of a shield.
func Drains(rows []table.Row, i int) (n int) {
	for _, r := range rows[:min(len(rows), MostLooked)] {
		if i < len(r.Cells) && name.IsDrainWord(table.Fold(r.Cells[i])) {
			n++
		}
	}
	return n
}

// AreCoreColours reports whether the cells of a column are colours of cores, of which some have a number or a remark behind:
// "red", "grey 3", "black, heavy".
func AreCoreColours(rows []table.Row, i int, p *Profile, lang string) bool {
	n := 0
	if 3*p.Colours < p.Filled {
		return false
	}
	for _, r := range rows[:min(len(rows), MostLooked)] {
		if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) || shape.IsText(r) {
			continue
		}
		if _, ok := value.ColourAndMore(r.Cells[i], lang); ok {
			n++
		}
	}
	return p.Most(p.Colours + n)
}

// HeadsCores reports whether a heading is of the cores of cables.
func HeadsCores(head string) bool {
	return slices.ContainsFunc(name.Words(table.Fold(head)), func(w string) bool {
		switch w {
		case "core", "cores", "conductor", "ader", "adern", "aderfarbe", "conducteur", "brin", "hilo", "conduttore", "anima",
			"zyla", "zila", "johdin", "ledare", "leder":
			return true
		}
		return false
	})
}

// CoreColour is the cell of a row that says the colour of its core, in a column that has the numbers of the others; "" where none does.
//
//	Pin | Use     | Core
//	1   | live    | 1
//	2   | neutral | 2
//	3   | earth   | green/yellow
func CoreColour(b *shape.Block, cells []string) (cell string, col int) {
	if b.Has(name.FieldColour) {
		return "", 0
	}
	for i, c := range b.Cols {
		if i >= len(cells) || c.Field != name.FieldKeep && c.Field != name.FieldWire || c.Given || !HeadsCores(c.Head) {
			continue
		}
		if _, ok := value.ParseColour(cells[i], b.Lang); ok && strings.Trim(cells[i], "0123456789") != "" {
			return cells[i], i
		}
	}
	return "", 0
}
