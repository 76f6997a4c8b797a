package name

import (
	"strings"

	"contralay/model/wirelist/value"
)

// Words parts a heading into words of letters and digits, "#" and marks left out.
func Words(s string) []string {
	s = strings.ReplaceAll(strings.ReplaceAll(s, "²", "2"), "mm^2", "mm2")
	if strings.Trim(s, " .:") == "#" {
		return []string{"#"}
	}
	if s == "p/n" {
		return []string{"p/n"}
	}
	return strings.FieldsFunc(s, func(r rune) bool { return !(r < 0x80 && (value.IsLetter(byte(r)) || value.IsDigit(byte(r)))) })
}
