package join

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// isKindOfPin reports whether the name of a net says what sort of pin a chip has there and nothing more, "GPIO", "Digital I/O". Every
// header of a board has such pins, and no wire runs from the one to the other.
func isKindOfPin(signal string) bool {
	kind := false
	for _, w := range name.Words(table.Fold(signal)) {
		switch w {
		case "gpio", "gpios", "dio", "aio", "io", "adc", "dac", "pwm", "gpi", "gpo":
			kind = true
		case "i", "o", "digital", "analog", "analogue", "pin", "port":
		default:
			return false
		}
	}
	return kind
}

// isVoltage reports whether a folded word is a voltage written round its letter, "3v3".
func isVoltage(w string) bool {
	front, back, ok := strings.Cut(w, "v")
	return ok && front != "" && back != "" && strings.Trim(front+back, "0123456789") == ""
}
