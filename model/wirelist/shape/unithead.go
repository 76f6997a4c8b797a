package shape

import (
	"slices"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/value"
)

// unitSays reads a heading of a word for a wire, a cable or a way and of the unit of what stands below it: "Cable mm²" holds sizes and
// numbers no cable, "Run m" holds lengths and says no two ends. A letter before mm² is how a cross section is written in formulas.
func (h Headings) unitSays(all []string) (name.Field, bool) {
	n := len(all)
	if n < 2 || n > 3 {
		return "", false
	}
	for _, of := range [][2][]string{{all[:n-1], all[n-1:]}, {all[1:], all[:1]}} {
		rest, unit := of[0], of[1][0]
		if n == 3 && isSquare(all[1]) && all[2] == "mm" { // "Cable sq mm"
			rest, unit = all[:1], "mm2"
		}
		words := slices.DeleteFunc(slices.Clone(rest), func(w string) bool { return w == "size" || w == "in" })
		if len(words) != 1 {
			continue
		}
		switch f := h.Words[words[0]].Field; {
		case unit == "mm2" || unit == "qmm" || unit == "mmq" || unit == "awg" || unit == "swg":
			letter := len(words[0]) == 1 && n == 2 && unit != "awg" && unit != "swg"
			if letter || f == name.FieldWire || f == name.FieldCable || f == name.FieldSpec || f == name.FieldRun {
				return name.FieldGauge, true
			}
		case value.LengthWord(unit) != "" && (f == name.FieldRun || f == name.FieldCable || f == name.FieldWire) && rest[0] == all[0]:
			return name.FieldLength, true
		}
	}
	return "", false
}
