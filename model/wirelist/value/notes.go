package value

import (
	"strings"
)

// PlusMinus keeps what tells the two sides of a pair apart, which words drop.
func PlusMinus(signal string) []string {
	switch s := strings.TrimSpace(signal); {
	case strings.HasSuffix(s, "+"):
		return []string{"+"}
	case strings.HasSuffix(s, "-") || strings.HasSuffix(s, "−"):
		return []string{"-"}
	}
	return nil
}
