package pads

import (
	"slices"
	"strings"
	"unicode"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// AreNames reports whether most cells of a column are short names, a word or two, as pads have them.
func AreNames(rows []table.Row, i int) bool {
	n, of := 0, 0
	for _, r := range rows[:min(len(rows), column.MostLooked)] {
		if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) || shape.IsText(r) {
			continue
		}
		of++
		if cell := strings.TrimSpace(name.WithoutBrackets(r.Cells[i])); len(cell) <= 14 && (len(strings.Fields(cell)) < 2 ||
			isNumberedPad(cell)) {
			n++
		}
	}
	return of > 1 && 4*n >= 3*of
}

// isNumberedPad reports whether a cell is a word for a pad and its number or its name, "GPIO 21", "Pin D4".
func isNumberedPad(cell string) bool {
	w := strings.Fields(cell)
	if len(w) != 2 || !name.IsCavity(w[1]) {
		return false
	}
	lead := table.Fold(w[0])
	return name.IsPinWord(lead) || IsChipWord(lead) || slices.Contains([]string{"gp", "digital", "analog", "analogue", "adc", "pwm", "out",
		"in", "output", "input"}, lead)
}

// AreNumbered reports whether most cells of a column say the number and the name of a cavity each, and no number comes twice.
//
//	Pin gauge | Hub pin
//	1 GND     | hub-gnd (6)
//	2 VCC     | hub-3v3 (1)
func AreNumbered(rows []table.Row, i int) bool {
	n, of := 0, 0
	seen := map[string]bool{}
	for _, r := range rows[:min(len(rows), column.MostLooked)] {
		if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) || shape.IsText(r) || name.StateOf(r.Cells[i]) != name.Used {
			continue
		}
		of++
		if pin, called, _ := NumberedPin(r.Cells[i]); pin != "" && !seen[pin] && called != "" {
			seen[pin] = true
			n++
		}
	}
	return n > 2 && 4*n >= 3*of
}

// ShortNets counts the cells of a column, and those of them that are short names of nets and no end of a wire.
func ShortNets(rows []table.Row, i int) (n, short int) {
	for _, r := range rows[:min(len(rows), column.MostLooked)] {
		if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) || shape.IsText(r) {
			continue
		}
		n++
		bare := strings.TrimSpace(name.WithoutBrackets(r.Cells[i]))
		_, pin, ok := name.SplitEnd(bare)
		if (!strings.Contains(bare, " ") && len(bare) < 9 || len(bare) < 7) && !(ok && name.IsCavity(pin)) {
			short++
		}
	}
	return n, short
}

// StrokeNames reports whether the cells of a column are names of pads, and those with a stroke in them two words of letters:
// "D/C" beside "CLK" and "RESET" is one pad, and no two cavities.
func StrokeNames(rows []table.Row, i int) bool {
	names, strokes := 0, 0
	for _, r := range rows {
		if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) || shape.IsText(r) {
			continue
		}
		a, b, ok := strings.Cut(r.Cells[i], "/")
		switch {
		case !ok && !name.IsCavity(r.Cells[i]):
			names++
		case !ok:
			names--
		case strings.ContainsFunc(a+b, func(r rune) bool { return !unicode.IsLetter(r) }) || len(a) > 4 || len(b) > 4:
			return false
		default:
			strokes++
		}
	}
	return strokes > 0 && names > 1
}
