package paper

import (
	"strings"

	"contralay/model"
)

// colourNames are the words of the digit code. Source: MIL-STD-681.
var colourNames = [10]string{"black", "brown", "red", "orange", "yellow", "green", "blue", "violet", "grey", "white"}

// Colour is a colour code with its words: the digits of MIL-STD-681, base first, then
// stripes; any other code as it is.
func Colour(code string) string {
	says := ""
	for _, r := range code {
		if r < '0' || r > '9' {
			return code
		}
		if says != "" {
			says += "/"
		}
		says += colourNames[r-'0']
	}
	if says == "" {
		return code
	}
	return code + "  " + says
}

// Size is a wire's size with its unit: "22 AWG", "0.35 mm2".
func Size(w *model.Wire) string {
	if mm2, is := strings.CutSuffix(w.Size, "mm2"); is {
		return mm2 + " mm2"
	}
	return w.Size + " AWG"
}

// capital is a text with its first letter a capital.
func capital(s string) string {
	if s == "" {
		return s
	}
	return strings.ToUpper(s[:1]) + s[1:]
}
