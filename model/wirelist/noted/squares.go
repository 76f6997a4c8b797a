package noted

import (
	"strings"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/value"
)

// The small two of mm² is left out by who writes with his thumbs: "0.75mm" behind the ends of a wire is a cross section, where wire is
// made in it, and no length.
//
//	W1 to B4, up, red, 1.5mm
//	W2 to B5, down, blue, 0.75 mm

// squares writes the two behind such sizes, where all numbers in mm of the lines that tell wires, two or more, have decimals or stand
// beside one that has, and are sections that wire is made in.
func (n *notes) squares() {
	made := map[int]string{}
	decimals, other := false, false
	n.texts(func(i int, text string) bool {
		if !strings.Contains(text, "mm") {
			return true
		}
		if _, to := arrow.In(text); to == 0 && !strings.Contains(text, " to ") {
			return true
		}
		pieces := strings.Split(text, ", ")
		for k, p := range pieces {
			number, ok := strings.CutSuffix(strings.TrimRight(strings.TrimSpace(p), "."), "mm")
			if number = strings.TrimSpace(number); !ok || number == "" || strings.Trim(number, "0123456789.,") != "" {
				continue
			}
			with := number
			if !strings.ContainsAny(number, ".,") {
				with += ".0"
			}
			if !value.IsSection(with) {
				other = true
				continue
			}
			decimals = decimals || with == number
			pieces[k] = number + " mm2"
			made[i] = strings.Join(pieces, ", ")
		}
		return true
	})
	if !decimals || other || len(made) < 2 {
		return
	}
	for i, text := range made {
		n.set(i, text)
	}
}
