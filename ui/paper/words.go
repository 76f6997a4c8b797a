package paper

import (
	"strings"

	"contralay/model"
)

// Colour is a colour code with its words: "96  white/blue"; any other code as it is.
func Colour(code string) string {
	says := model.ColourWords(code)
	if says == code {
		return code
	}
	return code + "  " + says
}

// Size is a wire's size with its unit: "22 AWG", "0.35 mm2".
func Size(w *model.Wire) string { return model.SizeWords(w.Size) }

// capital is a text with its first letter a capital.
func capital(s string) string {
	if s == "" {
		return s
	}
	return strings.ToUpper(s[:1]) + s[1:]
}
