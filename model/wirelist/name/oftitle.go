package name

import (
	"strings"

	"contralay/model/wirelist/table"
)

// ofDesignator takes the words that say what kind of table follows off a title that goes on with the designator of the connector:
// "Pin assignment of X12 winch plug" is "X12 winch plug"; "" where the title is none.
func ofDesignator(text string) string {
	all := strings.Fields(text)
	for i, w := range all[:max(len(all)-1, 0)] {
		next := strings.TrimRight(all[i+1], ",:;")
		if i > 0 && isOf(table.Fold(w)) && IsDesignator(next) && next == strings.ToUpper(next) && !isMeasured(next) {
			return strings.Join(all[i+1:], " ")
		}
		if !IsGeneric(strings.Trim(w, ",:;-")) {
			return ""
		}
	}
	return ""
}

// isMeasured reports whether what looks like a designator is a kind of plug or of board: "USB2", "RJ45", "RS232".
func isMeasured(w string) bool {
	switch strings.TrimRight(w, "0123456789") {
	case "USB", "RJ", "RS", "CAN", "LIN", "I2C", "SPI", "UART", "HDMI", "ETH", "V":
		return true
	}
	return false
}
