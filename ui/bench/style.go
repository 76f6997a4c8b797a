package bench

import (
	"contralay/ui/bench/desk"
)

// style is one of the few ways a whole line may look. Only snags are coloured;
// everything else is told by sign, position and weight.
type style int

const (
	styleHead style = iota
	styleRail
	styleHand
	styleStop
	styleWarn
)

// paint sets a line in a style; without colour it is the line itself, so no state
// may hang on it.
func paint(m *desk.Model, s style, text string) string {
	text = plainly(m, text) // before the codes: spelling a line out strips them
	if !m.Cfg.Palette.Colour || text == "" {
		return text
	}
	code := s.code(m.Cfg.Palette.Dark)
	return "\x1b[" + code + "m" + text + "\x1b[0m"
}

// Code is the style in SGR terms (ECMA-48 8.3.117). Red and yellow or blue are told
// apart by those who see no red from green; the mark at the line says the same.
func (s style) code(dark bool) string {
	switch s {
	case styleHand:
		return "1;7"
	case styleStop:
		if dark {
			return "1;91"
		}
		return "1;31"
	case styleWarn:
		if dark {
			return "1;93"
		}
		return "1;34"
	}
	return "1"
}
