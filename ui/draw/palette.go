package draw

import (
	"strconv"

	"contralay/model/unit"
)

// Profile is how many colours a terminal shows. The zero value is none.
type Profile uint8

// The profiles, fewest colours first.
const (
	NoColour   Profile = iota
	Colours16          // the colours of the terminal's own scheme, ECMA-48 and the bright eight
	Colours256         // xterm's cube and greys
	TrueColour         // 24 bits
)

// Palette says what the terminal can show. The zero value is plain text.
type Palette struct {
	Colour  bool    // write colour at all
	Profile Profile // how many colours, where colour is written; none given counts as 16
	Dark    bool    // the terminal's own background is dark
	// CellAspect is width ÷ height of a cell; 0 is DefaultCellAspect.
	CellAspect unit.Ratio
}

// NewPalette is the palette of a terminal of this profile and background.
func NewPalette(profile Profile, dark bool) Palette {
	return Palette{Colour: profile > NoColour, Profile: profile, Dark: dark}
}

// Depth is how many colours are written.
func (p Palette) Depth() Profile {
	switch {
	case !p.Colour:
		return NoColour
	case p.Profile == NoColour:
		return Colours16
	}
	return min(p.Profile, TrueColour)
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

// Aspect is width ÷ height of a cell, within what any font has.
func (p Palette) Aspect() float64 { return p.aspect() }

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

// Style is the look of a cell in one number, so that equal looks compare equal: two inks and
// weight, or two colours and weight (see Exact).
type Style uint64

const (
	inkBits = 5
	inkMask = 1<<inkBits - 1
	bold    = Style(1) << (2 * inkBits)

	// Of an exact style: 24 bits each for text and ground, then whether each is given.
	colourBits = 24
	colourMask = 1<<colourBits - 1
	hasText    = Style(1) << (2 * colourBits)
	hasGround  = hasText << 1
	exactBold  = hasText << 2
	exact      = Style(1) << 63
)

// Exact makes a style of two colours; nil is the terminal's own.
func Exact(text, ground *Colour, heavy bool) Style {
	s := exact
	if text != nil {
		s |= hasText | Style(text.R)<<16 | Style(text.G)<<8 | Style(text.B)
	}
	if ground != nil {
		s |= hasGround | (Style(ground.R)<<16|Style(ground.G)<<8|Style(ground.B))<<colourBits
	}
	if heavy {
		s |= exactBold
	}
	return s
}

// Colours are the two colours of an exact style, and whether each is given; neither is of any
// other style.
func (s Style) Colours() (text, ground Colour, isText, isGround bool) {
	if s&exact == 0 {
		return
	}
	of := func(v Style) Colour { return Colour{uint8(v >> 16), uint8(v >> 8), uint8(v)} }
	return of(s & colourMask), of(s >> colourBits & colourMask), s&hasText != 0, s&hasGround != 0
}

// sameGround reports whether a blank looks the same in two styles.
func (s Style) sameGround(o Style) bool {
	if s&exact == 0 && o&exact == 0 {
		return s.Ground() == o.Ground()
	}
	_, a, _, isA := s.Colours()
	_, b, _, isB := o.Colours()
	return s&exact == o&exact && isA == isB && a == b
}

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

// Text is the ink of the text; InkNone where the style is exact.
func (s Style) Text() Ink {
	if s&exact != 0 {
		return InkNone
	}
	return Ink(s & inkMask)
}

// Ground is the ink of the ground; InkNone where the style is exact.
func (s Style) Ground() Ink {
	if s&exact != 0 {
		return InkNone
	}
	return Ink(s >> inkBits & inkMask)
}

// Heavy reports whether the text is bold.
func (s Style) Heavy() bool { return s&exact == 0 && s&bold != 0 || s&exact != 0 && s&exactBold != 0 }

// ClassLetter is the letter that stands for a class where there is no colour: a to h.
func ClassLetter(class int) string { return string(rune('a' + Disc{Class: class}.class())) }

// A pair is the number of a ground and of the text on it: of 16 colours, or of
// xterm's 256.
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

// Black and white of the 256, which no colour scheme changes.
const inkBlack, inkWhite = 16, 231

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

// darkFine is the table of 256 colours and more. The classes keep the hues that they
// have with 16, softened: of middling lightness, so that they are seen as shapes and
// black is read on them.
func darkFine() theme {
	return theme{
		InkLine:      {245, inkBlack},
		InkSelected:  {inkWhite, inkBlack},
		InkFlag:      {160, inkWhite},
		InkClass + 0: {73, inkBlack},  // teal
		InkClass + 1: {68, inkBlack},  // blue
		InkClass + 2: {250, inkBlack}, // silver
		InkClass + 3: {107, inkBlack}, // green
		InkClass + 4: {140, inkBlack}, // violet
		InkClass + 5: {243, inkBlack}, // grey
		InkClass + 6: {117, inkBlack}, // pale blue
		InkClass + 7: {182, inkBlack}, // pale pink
	}
}

func lightFine() theme {
	t := darkFine()
	t[InkLine] = pair{242, inkWhite}
	t[InkSelected] = pair{inkBlack, inkWhite}
	t[InkClass+1] = pair{25, inkWhite}  // blue
	t[InkClass+2] = pair{247, inkBlack} // silver
	t[InkClass+5] = pair{240, inkWhite} // grey
	t[InkClass+6] = pair{175, inkBlack} // pink
	t[InkClass+7] = pair{145, inkBlack} // pale grey blue, the palest last
	return t
}

// theme is the table for this terminal's colours and background.
func (p Palette) theme() theme {
	switch fine := p.Depth() > Colours16; {
	case p.Dark && fine:
		return darkFine()
	case p.Dark:
		return darkTheme()
	case fine:
		return lightFine()
	}
	return lightTheme()
}

// ClassColour is the ground of a class on this terminal.
func (p Palette) ClassColour(class int) Colour {
	t := p.theme()
	return Of(t[InkClass+Ink(Disc{Class: class}.class())].ground)
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
	t, depth := p.theme(), p.Depth()
	dst = append(dst, "\x1b[0"...)
	if s.Heavy() {
		dst = append(dst, ";1"...)
	}
	if s&exact != 0 {
		text, ground, isText, isGround := s.Colours()
		if isText {
			dst = appendExact(dst, depth, onText, text)
		}
		if isGround {
			dst = appendExact(dst, depth, onGround, ground)
		}
		return append(dst, 'm')
	}
	text, ground := s.Text(), s.Ground()
	switch {
	case text == InkOnGround && ground > InkOnGround && ground < inkEnd:
		dst = appendColour(dst, depth, onText, t[ground].text)
	case text > InkOnGround && text < inkEnd:
		dst = appendColour(dst, depth, onText, t[text].ground)
	}
	if ground > InkOnGround && ground < inkEnd {
		dst = appendColour(dst, depth, onGround, t[ground].ground)
	}
	return append(dst, 'm')
}

// What a colour is set on: the first numbers of ECMA-48 8.3.117.
const onText, onGround = 30, 40

// appendColour appends a colour for the text or the ground. Of 16 it is ;30 to ;37 or
// ;90 to ;97, as in ECMA-48 8.3.117 and the aixterm bright colours; of 256 ;38;5;n, of
// all ;38;2;r;g;b, as in ITU-T T.416 13.1.8 with the semicolons of xterm.
func appendColour(dst []byte, depth Profile, base, colour uint8) []byte {
	number := func(n uint8) { dst = strconv.AppendUint(append(dst, ';'), uint64(n), 10) }
	switch {
	case depth == TrueColour:
		r, g, b := RGB(colour)
		number(base + 8)
		number(2)
		number(r)
		number(g)
		number(b)
	case depth == Colours256:
		number(base + 8)
		number(5)
		number(colour)
	case colour < 8:
		number(base + colour)
	default:
		number(base + 60 + colour - 8)
	}
	return dst
}

// appendExact appends a colour of 24 bits, or the nearest that the depth has.
func appendExact(dst []byte, depth Profile, base uint8, c Colour) []byte {
	switch depth {
	case Colours256:
		return appendColour(dst, depth, base, c.of256())
	case Colours16:
		return appendColour(dst, depth, base, c.of16())
	}
	dst = append(append(dst, ';'), '0'+(base+8)/10, '0'+(base+8)%10, ';', '2')
	for _, v := range [3]uint8{c.R, c.G, c.B} {
		dst = strconv.AppendUint(append(dst, ';'), uint64(v), 10)
	}
	return dst
}

// RGB is a colour of xterm's 256 in red, green and blue. The first sixteen belong to
// the terminal's own scheme; here they are those of xterm (XTerm-col.ad, 256colres.h).
func RGB(colour uint8) (r, g, b uint8) {
	if colour < 16 {
		c := [16][3]uint8{
			{0, 0, 0}, {205, 0, 0}, {0, 205, 0}, {205, 205, 0}, {0, 0, 238}, {205, 0, 205}, {0, 205, 205}, {229, 229, 229},
			{127, 127, 127}, {255, 0, 0}, {0, 255, 0}, {255, 255, 0}, {92, 92, 255}, {255, 0, 255}, {0, 255, 255}, {255, 255, 255},
		}[colour]
		return c[0], c[1], c[2]
	}
	if colour >= 232 { // 24 greys
		v := 8 + 10*(colour-232)
		return v, v, v
	}
	side := func(n uint8) uint8 { // a cube of six
		if n == 0 {
			return 0
		}
		return 55 + 40*n
	}
	n := colour - 16
	return side(n / 36), side(n / 6 % 6), side(n % 6)
}

// Paint sets a text in a style, and ends it; without colour it is the text itself.
func (p Palette) Paint(s Style, text string) string {
	begin := p.AppendSGR(nil, s)
	if len(begin) == 0 || text == "" {
		return text
	}
	return string(begin) + text + "\x1b[0m"
}
