package name

import (
	"strings"

	"contralay/model/wirelist/prose"
	"contralay/model/wirelist/table"
)

// ofDesignator takes the words that say what kind of table follows off a title that goes on with the designator of the connector:
// "Pin assignment of X12 winch plug" is "X12 winch plug"; "" where the title is none.
func ofDesignator(text string) string {
	all := strings.Fields(text)
	if len(all) > 1 && prose.LeadsConnector(table.Fold(all[0])) && isPlainDesignator(all[1]) {
		return strings.Join(all[1:], " ")
	}
	for i, w := range all[:max(len(all)-1, 0)] {
		if i > 0 && isOf(table.Fold(w)) && isPlainDesignator(all[i+1]) {
			return strings.Join(all[i+1:], " ")
		}
		if !IsGeneric(strings.Trim(w, ",:;-")) {
			return ""
		}
	}
	return ""
}

// isPlainDesignator reports whether a word of a title is a designator in capitals.
func isPlainDesignator(w string) bool {
	w = strings.TrimRight(w, ",:;")
	return IsDesignator(w) && w == strings.ToUpper(w) && !isMeasured(w)
}

// isMeasured reports whether what looks like a designator is a kind of plug or of board: "USB2", "RJ45", "RS232".
func isMeasured(w string) bool {
	switch strings.TrimRight(w, "0123456789") {
	case "USB", "RJ", "RS", "CAN", "LIN", "I2C", "SPI", "UART", "HDMI", "ETH", "V":
		return true
	}
	return false
}
