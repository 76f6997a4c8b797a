package draw

import "contralay/model/unit"

// Palette says what the terminal can show. The zero value is plain text.
type Palette struct {
	Colour bool // write colour at all
	Dark   bool // the terminal's own background is dark
	// CellAspect is width ÷ height of a cell; 0 is DefaultCellAspect.
	CellAspect unit.Ratio
}

// DefaultCellAspect is width ÷ height of a terminal cell. Common practice, no
// source: most terminal fonts lie between 0.45 and 0.55.
const DefaultCellAspect unit.Ratio = 0.5

// aspect is the cell aspect within what any font has.
func (p Palette) aspect() float64 {
	a := float64(p.CellAspect)
	if !unit.Finite(a) || a <= 0 {
		a = float64(DefaultCellAspect)
	}
	return min(max(a, 0.2), 2)
}

// Ink is a colour by its meaning.
type Ink uint8

// The inks. Those from InkClass to InkClass+Classes−1 are the classes.
const (
	InkNone     Ink = iota // the terminal's own
	InkOnGround            // text that stands out from the ground it is on
	InkLine                // boundary and outlines
	InkSelected            // ground of the selected label
	InkFlag                // ground of a flagged disc: the only alarm colour
	InkClass
	inkEnd = InkClass + Classes
)

// Style is the look of a cell: two inks and weight in one number, so that equal
// looks compare equal.
type Style uint16

const (
	inkBits = 5
	inkMask = 1<<inkBits - 1
	bold    = Style(1) << (2 * inkBits)
)

// MakeStyle makes a style from the ink of the text, that of the ground and weight.
func MakeStyle(text, ground Ink, heavy bool) Style {
	s := Style(text&inkMask) | Style(ground&inkMask)<<inkBits
	if heavy {
		s |= bold
	}
	return s
}

// ClassStyle is the look of a label of this class, for lists beside the picture.
func ClassStyle(class int) Style {
	return MakeStyle(InkOnGround, InkClass+Ink(Disc{Class: class}.class()), false)
}

// Text is the ink of the text.
func (s Style) Text() Ink { return Ink(s & inkMask) }

// Ground is the ink of the ground.
func (s Style) Ground() Ink { return Ink(s >> inkBits & inkMask) }

// Heavy reports whether the text is bold.
func (s Style) Heavy() bool { return s&bold != 0 }

// ClassLetter is the letter that stands for a class where there is no colour: a to h.
func ClassLetter(class int) string { return string(rune('a' + Disc{Class: class}.class())) }

// A pair is the ANSI number (0 to 15) of a ground and of the text on it.
type pair struct{ ground, text uint8 }

// theme gives each ink its pair. Text on its ground has a contrast of at least
// 4.5 : 1 (WCAG 2.1, 1.4.3) with xterm's standard colours; a test measures it.
// Classes are calm; red is kept for what is flagged. The class that would be the
// terminal's own background is left out, and so is the ground of the selection.
type theme [inkEnd]pair

const (
	black, red, green, blue, magenta, cyan, silver = 0, 1, 2, 4, 5, 6, 7
	grey, brightBlue, pink, brightCyan, fullWhite  = 8, 12, 13, 14, 15
)

func darkTheme() theme {
	return theme{
		InkLine:      {grey, black},
		InkSelected:  {fullWhite, black},
		InkFlag:      {red, fullWhite},
		InkClass + 0: {cyan, black},
		InkClass + 1: {brightBlue, fullWhite},
		InkClass + 2: {silver, black},
		InkClass + 3: {green, black},
		InkClass + 4: {magenta, fullWhite},
		InkClass + 5: {grey, black},
		InkClass + 6: {brightCyan, black},
		InkClass + 7: {pink, black},
	}
}

func lightTheme() theme {
	t := darkTheme()
	t[InkSelected] = pair{black, fullWhite}
	t[InkClass+1] = pair{blue, fullWhite}
	t[InkClass+2] = pair{grey, black}
	t[InkClass+5] = pair{brightBlue, fullWhite}
	t[InkClass+6] = pair{pink, black}
	t[InkClass+7] = pair{silver, black} // the palest last
	return t
}

// theme is the table for this terminal's background.
func (p Palette) theme() theme {
	if p.Dark {
		return darkTheme()
	}
	return lightTheme()
}

// Styler writes the escape sequence of a style.
type Styler interface {
	// AppendSGR appends the sequence that sets exactly this style, or nothing
	// where styles are not written.
	AppendSGR(dst []byte, s Style) []byte
}

// AppendSGR implements Styler. It starts from a reset, so that runs do not
// depend on each other. Without colour it appends nothing: bold and reverse
// video are left out too, as they are by what honours NO_COLOR.
func (p Palette) AppendSGR(dst []byte, s Style) []byte {
	if !p.Colour {
		return dst
	}
	t := p.theme()
	dst = append(dst, "\x1b[0"...)
	if s.Heavy() {
		dst = append(dst, ";1"...)
	}
	text, ground := s.Text(), s.Ground()
	switch {
	case text == InkOnGround && ground > InkOnGround && ground < inkEnd:
		dst = appendColour(dst, 30, t[ground].text)
	case text > InkOnGround && text < inkEnd:
		dst = appendColour(dst, 30, t[text].ground)
	}
	if ground > InkOnGround && ground < inkEnd {
		dst = appendColour(dst, 40, t[ground].ground)
	}
	return append(dst, 'm')
}

// appendColour appends ;30 to ;37 or ;90 to ;97 (base 30), or the same for the
// ground (base 40), as in ECMA-48 8.3.117 and the aixterm bright colours.
func appendColour(dst []byte, base, ansi uint8) []byte {
	n := base + ansi
	if ansi >= 8 {
		n = base + 60 + ansi - 8
	}
	dst = append(dst, ';')
	if n >= 100 {
		dst = append(dst, '1')
		n -= 100
	}
	return append(dst, '0'+n/10, '0'+n%10)
}
