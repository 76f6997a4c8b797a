package side

import (
	"slices"

	"contralay/model"
	"contralay/model/wirelist/value"
)

// Colour is the colour of a wire in words. No code has a shade: an import keeps "light blue" in the note.
func (l *List) Colour(w *model.Wire) string {
	text := l.Noted(w, "colour")
	if w.Colour.V == "" {
		return ColourWords(text)
	}
	if words := shaded(w.Colour.V, text); words != "" {
		return words
	}
	return ColourWords(w.Colour.V)
}

// shaded is what a text says of a colour beyond its code, in words; "" where it is about another colour.
func shaded(code, text string) string {
	c, ok := value.ParseColour(code, "")
	s, read := value.ParseColour(text, "")
	if !ok || !read || !slices.EqualFunc(c, s, func(a, b value.Hue) bool { return a.Of == b.Of }) {
		return ""
	}
	return s.String()
}

// ColourWords is a colour in words, so that "29", "RDWH" and "red/white" are one; what is
// none stays as it is.
func ColourWords(code string) string {
	if c, ok := value.ParseColour(code, ""); ok {
		return c.String()
	}
	return code
}
