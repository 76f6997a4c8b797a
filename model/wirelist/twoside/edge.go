package twoside

import (
	"slices"
	"strconv"
	"strings"

	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// An edge connector has numbers on the one side and letters on the other, and a table of it names each side over what stands there.
//
//	Colour | Parts side | Pin | Pin | Solder side | Colour
//	red    | +5V        | 1   | A   | +5V         | red

// sidesOfOne reports whether the headings of two halves are the same but for one pair, of which neither is known: they are names of
// the sides.
func sidesOfOne(h shape.Headings, head table.Row, left, right []int) bool {
	if len(left) < 3 {
		return false
	}
	differ := 0
	for k := range left {
		a, b := head.Cells[left[k]], head.Cells[right[k]]
		if strings.EqualFold(a, b) {
			continue
		}
		if differ++; h.KnowsOne(table.Row{Cells: []string{a}}) || h.KnowsOne(table.Row{Cells: []string{b}}) {
			return false
		}
	}
	return differ == 1
}

// headOfSides is the headings of both halves: where they name the two sides, what stands below them is the signal.
func headOfSides(head table.Row, halves [][]int) []string {
	cells := pick(head.Cells, halves[0])
	if len(halves) != 2 || len(cells) < 3 {
		return cells
	}
	for k, other := range pick(head.Cells, halves[1]) {
		if !strings.EqualFold(cells[k], other) {
			cells[k] = "Signal (" + cells[k] + ", " + other + ")"
		}
	}
	return cells
}

// numbersAndLetters reports whether one of two columns counts up from 1 and the other goes through the letters from A, those left out
// that connectors leave out: the two sides of an edge connector.
func numbersAndLetters(rows []table.Row, a, b int) bool {
	var of [2][]string
	for _, r := range rows {
		if r.First || shape.IsText(r) {
			break
		}
		for k, i := range []int{a, b} {
			if i < len(r.Cells) && !value.IsNothing(r.Cells[i]) {
				of[k] = append(of[k], strings.TrimSpace(r.Cells[i]))
			}
		}
	}
	if len(of[0]) < 4 || len(of[0]) != len(of[1]) {
		return false
	}
	if _, err := strconv.Atoi(of[0][0]); err != nil {
		of[0], of[1] = of[1], of[0]
	}
	last := 0
	for k := range of[0] {
		if n, err := strconv.Atoi(of[0][k]); err != nil || n != k+1 || len(of[1][k]) != 1 {
			return false
		}
		at := int(of[1][k][0]|0x20-'a') + 1
		if at < 1 || at > 26 || at <= last {
			return false
		}
		for n := last + 1; n < at; n++ {
			if !slices.Contains([]byte("gioq"), byte('a'+n-1)) {
				return false
			}
		}
		last = at
	}
	return true
}
