package pinword

import "strings"

// IsVolts reports whether a cavity is called by a voltage with a decimal comma, "3,3V", "+3,3 V".
func IsVolts(cell string) bool {
	volts, ok := strings.CutSuffix(strings.TrimLeft(cell, "+-"), "V")
	whole, part, comma := strings.Cut(strings.TrimSpace(volts), ",")
	const figures = "0123456789"
	return ok && comma && whole != "" && part != "" && len(whole) < 3 && len(part) < 3 && strings.Trim(whole+part, figures) == ""
}
