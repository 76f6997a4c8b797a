package bench

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
func (m *Model) paint(s style, text string) string {
	text = m.plain(text) // before the codes: spelling a line out strips them
	if !m.cfg.Palette.Colour || text == "" {
		return text
	}
	code := ""
	switch s {
	case styleHead:
		code = "1"
	case styleRail:
		code = "1"
	case styleHand:
		code = "1;7"
	case styleStop:
		code = "1;31"
		if m.cfg.Palette.Dark {
			code = "1;91"
		}
	case styleWarn:
		code = "1;34"
		if m.cfg.Palette.Dark {
			code = "1;93"
		}
	}
	return "\x1b[" + code + "m" + text + "\x1b[0m"
}
