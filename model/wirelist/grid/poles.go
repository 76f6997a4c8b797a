package grid

import (
	"slices"
	"strings"
	"unicode"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/signs"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// poles takes apart a table that has a row for each circuit and a column for each of its poles; the cells are cavities of one
// connector, and what the circuit is taken to has the same poles.
//
//	Stage plug, 10 way
//	Circuit | Live | Neutral | Earth | Tail
//	1       | 1    | 2       | 7     | Socket 1
//	2       | 3    | 4       | 8     | Socket 2
//
// No cavity stands below two poles, as the figures of a table of values would; and no pole stands twice, as the "Pos" behind each of two
// ends does.
func poles(h shape.Headings, rows []table.Row) (made []table.Row, n int) {
	head := rows[0]
	if shape.HasNumber(head) {
		return nil, 0 // most rows are no headings: they are not looked at
	}
	var of []int
	for i, c := range head.Cells {
		if i > 0 && (isPole(c) || value.NamesColour(c)) {
			if isPole(c) && slices.ContainsFunc(of, func(k int) bool { return table.Fold(head.Cells[k]) == table.Fold(c) }) {
				return nil, 0
			}
			of = append(of, i)
		}
	}
	if len(of) < 2 || head.Cells[0] == "" {
		return nil, 0
	}
	for _, r := range rows[1:] {
		if r.First || shape.IsText(r) || len(r.Cells) <= of[0] || r.Cells[0] == "" || h.IsHead(r) {
			break
		}
		n++
	}
	if n < 2 || !eachOnePole(rows[1:n+1], of) {
		return nil, 0
	}
	to := farOfPoles(h, rows[:n+1], of)
	at := head
	at.Cells = []string{"Pin", "Signal"}
	if to > 0 {
		at.Cells = append(at.Cells, "To")
	}
	var other []int
	for i := range head.Cells {
		if i > 0 && i != to && head.Cells[i] != "" && !slices.Contains(of, i) {
			at.Cells, other = append(at.Cells, head.Cells[i]), append(other, i)
		}
	}
	coloured := slices.ContainsFunc(of, func(i int) bool { return value.NamesColour(head.Cells[i]) })
	if coloured {
		at.Cells = append(at.Cells, "Colour")
	}
	made = append(made, at)
	for _, r := range rows[1 : n+1] {
		for _, i := range of {
			cavity := cellOf(r, i)
			if value.IsNothing(cavity) {
				continue
			}
			row := r
			row.Cells = []string{cavity, circuitOf(head.Cells[0], r.Cells[0]) + " " + head.Cells[i]}
			if to > 0 {
				row.Cells = append(row.Cells, farPole(cellOf(r, to), head.Cells[i]))
			}
			for _, k := range other {
				row.Cells = append(row.Cells, cellOf(r, k))
			}
			if coloured {
				row.Cells = append(row.Cells, map[bool]string{true: head.Cells[i]}[value.NamesColour(head.Cells[i])])
			}
			made = append(made, row)
		}
	}
	return made, n + 1
}

// eachOnePole reports whether all cells of some columns are cavities, none of which stands in two of the columns, and half of the
// cavities up to the last are there: what is left out is little.
func eachOnePole(rows []table.Row, of []int) bool {
	at, last := map[string]int{}, 0
	for _, r := range rows {
		for _, i := range of {
			c := cellOf(r, i)
			if value.IsNothing(c) {
				continue
			}
			if k, seen := at[c]; !name.IsCavity(c) || seen && k != i {
				return false
			}
			at[c], last = i, max(last, name.Ordinal(c))
		}
	}
	return len(at) > len(of) && 2*len(at) >= last
}

// farOfPoles is the column that says what each circuit is taken to: one that is headed so, else the one column that nobody knows
// and whose cells each name another device. 0 where there is none.
func farOfPoles(h shape.Headings, rows []table.Row, of []int) (to int) {
	cols, _ := h.Columns(rows[:1], len(rows[0].Cells))
	for i, c := range cols {
		switch {
		case c.Field == name.FieldTo:
			return i
		case i == 0 || slices.Contains(of, i) || c.Head == "" || c.Known() || name.IsRemark(name.Words(table.Fold(c.Head))):
			continue
		}
		seen := map[string]bool{}
		for _, r := range rows[1:] {
			cell := cellOf(r, i)
			if len(strings.Fields(cell)) < 5 && strings.ContainsFunc(cell, unicode.IsLetter) && !value.NamesColour(cell) {
				seen[table.Fold(cell)] = true
			}
		}
		if len(seen) == len(rows)-1 && to == 0 {
			to = i
		}
	}
	return to
}

// farPole is a pole of what a circuit is taken to, "Socket 1:Live"; a cell that names a cavity stays as it is.
func farPole(cell, pole string) string {
	if cell == "" || strings.Contains(cell, ":") || strings.Contains(pole, " ") {
		return cell
	}
	return cell + ":" + pole
}

// circuitOf names a circuit: by its cell, where that is a name, and with the heading before a number.
func circuitOf(head, cell string) string {
	if name.IsCavity(cell) {
		return head + " " + cell
	}
	return cell
}

// cellOf is a cell of a row; "" where the row is shorter.
func cellOf(r table.Row, i int) string {
	if i < len(r.Cells) {
		return r.Cells[i]
	}
	return ""
}

// isPole reports whether a heading is a pole of a circuit. Common practice, no source.
func isPole(head string) bool {
	if len(head) > longestPole {
		return false // as most cells of most rows
	}
	switch roundPoles.Trim(table.Fold(head)) {
	case "live", "line", "hot", "cold", "neutral", "earth", "ground", "gnd", "l", "n", "pe", "l1", "l2", "l3", "screen", "shield", "return",
		"plus", "minus", "positive", "negative", "pos", "neg", "feed", "supply", "signal", "common", "com", "phase", "neutre", "terre",
		"masse", "erde", "null", "nulleiter", "schutzleiter", "aussenleiter", "fase", "neutro", "terra", "tierra", "massa", "fas", "nolla",
		"jord",
		"nol", "aarde", "faza", "zero", "uziemienie", "sig", "pwr", "power", "vcc", "0v", "5v", "12v", "24v":
		return true
	}
	return head == "+" || head == "-" || head == "−" || head == "–"
}

// longestPole is how long the name of a pole is at most.
const longestPole = 14

var roundPoles = signs.Of(" .:,;()[]")
