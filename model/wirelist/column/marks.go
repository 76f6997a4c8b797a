package column

import (
	"strconv"
	"strings"

	"contralay/model/wirelist/cable"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Marks reports whether the cells of a column are names or kinds of cables: "TP1", "twisted pair".
func Marks(rows []table.Row, i int) bool {
	n, is := 0, 0
	for _, r := range rows[:min(len(rows), MostLooked)] {
		if i >= len(r.Cells) || r.Cells[i] == "" || shape.IsText(r) {
			continue
		}
		n++
		if cell := r.Cells[i]; cable.IsMark(cell) || cable.Words(cell).IsCable() || len(cable.Partners(cell)) > 0 ||
			cable.IsBracket(cell) {
			is++
		}
	}
	return n > 0 && is == n
}

// CountsUp reports whether a column is the numbers of its rows, 1, 2, 3.
func CountsUp(rows []table.Row, i int) bool {
	next := 1
	for _, r := range rows {
		if i >= len(r.Cells) || r.Cells[i] == "" || shape.IsText(r) {
			continue
		}
		n, err := strconv.Atoi(strings.TrimRight(r.Cells[i], ".)"))
		if err != nil || n != next {
			return false
		}
		next++
	}
	return next > 1
}

// MarksCable reports whether a heading names one pair or shield, "TP1", and the cells below it say yes or no of their wires.
func MarksCable(head string, rows []table.Row, i int) bool {
	if mark, _ := cable.MarkHeading(head); mark == "" {
		return false
	}
	yes := 0
	for _, r := range rows[:min(len(rows), MostLooked)] {
		if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) || shape.IsText(r) {
			continue
		}
		switch cable.YesOrNo(r.Cells[i]) {
		case "yes":
			yes++
		case "":
			return false
		}
	}
	return yes > 0
}

// TellPartners reports whether two cells of a column or more name the wires that those of their rows are paired with, and all others
// say that there is none.
//
//	Wire | Type
//	1    | TP with 2
//	2    | TP with 1
//	3    | single
func TellPartners(rows []table.Row, i int) bool {
	n := 0
	for _, r := range rows[:min(len(rows), MostLooked)] {
		if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) || shape.IsText(r) || cable.YesOrNo(r.Cells[i]) == "no" {
			continue
		}
		if p := cable.ReadWith(r.Cells[i]); len(p.Of) == 0 || p.Rest != "" {
			return false
		}
		n++
	}
	return n > 1
}
