package draw

import (
	"math"
	"regexp"
	"strings"
	"testing"
)

// Source: xterm's default colours (XTerm-col.ad of the xterm distribution).
var xterm = [16][3]float64{
	{0, 0, 0}, {205, 0, 0}, {0, 205, 0}, {205, 205, 0}, {0, 0, 238}, {205, 0, 205}, {0, 205, 205}, {229, 229, 229},
	{127, 127, 127}, {255, 0, 0}, {0, 255, 0}, {255, 255, 0}, {92, 92, 255}, {255, 0, 255}, {0, 255, 255}, {255, 255, 255},
}

// xtermColour is a colour of xterm's 256. Source: 256colres.h of the xterm
// distribution: a cube of six steps, then greys from 8 in steps of 10.
func xtermColour(c uint8) [3]float64 {
	n := int(c)
	if n < 16 {
		return xterm[n]
	}
	if n >= 232 {
		v := float64(8 + 10*(n-232))
		return [3]float64{v, v, v}
	}
	steps := [6]float64{0, 95, 135, 175, 215, 255}
	n -= 16
	return [3]float64{steps[n/36], steps[n/6%6], steps[n%6]}
}

func TestRGB(t *testing.T) {
	for c := range 256 {
		r, g, b := RGB(uint8(c))
		if got := [3]float64{float64(r), float64(g), float64(b)}; got != xtermColour(uint8(c)) {
			t.Errorf("colour %d is %v, want %v", c, got, xtermColour(uint8(c)))
		}
	}
}

// luminance is the relative luminance of WCAG 2.1.
func luminance(c uint8) float64 {
	lin := func(v float64) float64 {
		v /= 255
		if v <= 0.04045 {
			return v / 12.92
		}
		return math.Pow((v+0.055)/1.055, 2.4)
	}
	rgb := xtermColour(c)
	return 0.2126*lin(rgb[0]) + 0.7152*lin(rgb[1]) + 0.0722*lin(rgb[2])
}

// contrast is the contrast ratio of WCAG 2.1, 1 to 21.
func contrast(a, b uint8) float64 {
	la, lb := luminance(a), luminance(b)
	return (max(la, lb) + 0.05) / (min(la, lb) + 0.05)
}

func TestContrastFormula(t *testing.T) {
	if got := contrast(0, 15); math.Abs(got-21) > 1e-9 { // WCAG 2.1: black on white is 21 : 1
		t.Errorf("black on white %.3f", got)
	}
}

func TestPaletteContrast(t *testing.T) {
	for _, tt := range []struct {
		name       string
		th         theme
		background uint8
	}{
		{"dark", darkTheme(), black}, {"light", lightTheme(), fullWhite},
		{"dark, 256", darkFine(), inkBlack}, {"light, 256", lightFine(), inkWhite},
	} {
		t.Run(tt.name, func(t *testing.T) {
			seen := map[uint8]Ink{}
			for ink := InkSelected; ink < inkEnd; ink++ {
				p := tt.th[ink]
				if got := contrast(p.ground, p.text); got < 4.5 { // WCAG 2.1, 1.4.3
					t.Errorf("ink %d: text %d on %d is %.2f : 1", ink, p.text, p.ground, got)
				}
				if was, ok := seen[p.ground]; ok {
					t.Errorf("inks %d and %d share the ground %d", was, ink, p.ground)
				}
				seen[p.ground] = ink
				if p.ground == tt.background {
					t.Errorf("ink %d is the terminal's own background", ink)
				}
				if alarm := alarming(p.ground); alarm != (ink == InkFlag) {
					t.Errorf("ink %d has ground %d: red and yellow are for what is flagged", ink, p.ground)
				}
			}
			// Common practice, no source: a ground is seen as a shape from about 1.9 : 1.
			// Of 16 colours less the alarms one class must stay below; its label is
			// still readable. It is the last, which is used least.
			for i := range Ink(Classes - 1) {
				if got := contrast(tt.th[InkClass+i].ground, tt.background); got < 1.9 {
					t.Errorf("class %d is %.2f : 1 against the background", i, got)
				}
			}
			// WCAG 2.1, 1.4.11: what shows the focus, and lines, 3 : 1 against what is round them.
			for _, ink := range []Ink{InkSelected, InkLine, InkFlag} {
				if got := contrast(tt.th[ink].ground, tt.background); got < 3 {
					t.Errorf("ink %d is %.2f : 1 against the background", ink, got)
				}
			}
		})
	}
}

// alarming reports whether a colour is of the hues kept for what is wrong: red to
// yellow (hue 0 to 60 degrees, CSS Color 3, 4.2.4) and strong.
func alarming(colour uint8) bool {
	c := xtermColour(colour)
	r, g, b := c[0], c[1], c[2]
	return r >= g && g >= b && r-b > 127
}

func TestAppendSGR(t *testing.T) {
	dark, light := Palette{Colour: true, Dark: true}, Palette{Colour: true}
	tests := []struct {
		name string
		p    Palette
		s    Style
		want string
	}{
		{"no colour", Palette{Dark: true}, ClassStyle(0), ""},
		{"reset", dark, 0, "\x1b[0m"},
		{"class 0", dark, ClassStyle(0), "\x1b[0;30;46m"},
		{"a class beyond the last wraps", dark, ClassStyle(8), "\x1b[0;30;46m"},
		{"bright ground", dark, ClassStyle(1), "\x1b[0;97;104m"},
		{"class 1, light", light, ClassStyle(1), "\x1b[0;97;44m"},
		{"selected, heavy", dark, MakeStyle(InkOnGround, InkSelected, true), "\x1b[0;1;30;107m"},
		{"selected, light", light, MakeStyle(InkOnGround, InkSelected, true), "\x1b[0;1;97;40m"},
		{"flagged", dark, MakeStyle(InkOnGround, InkFlag, false), "\x1b[0;97;41m"},
		{"a line", dark, MakeStyle(InkLine, InkNone, false), "\x1b[0;90m"},
		{"half block", dark, MakeStyle(InkClass, InkClass+3, false), "\x1b[0;36;42m"},
		{"no colours", NewPalette(NoColour, true), ClassStyle(0), ""},
		{"16 by profile", NewPalette(Colours16, true), ClassStyle(0), "\x1b[0;30;46m"},
		{"256", NewPalette(Colours256, true), ClassStyle(0), "\x1b[0;38;5;16;48;5;73m"},
		{"true colour", NewPalette(TrueColour, true), ClassStyle(0), "\x1b[0;38;2;0;0;0;48;2;95;175;175m"},
		{"256, half block", NewPalette(Colours256, true), MakeStyle(InkClass, InkClass+3, false), "\x1b[0;38;5;73;48;5;107m"},
		{"256, a line", NewPalette(Colours256, false), MakeStyle(InkLine, InkNone, false), "\x1b[0;38;5;242m"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			if got := string(tt.p.AppendSGR(nil, tt.s)); got != tt.want {
				t.Errorf("got %q, want %q", got, tt.want)
			}
		})
	}
}

// Colours of the profile only, each line ended as it began, and the text is that of Lines.
func TestStyled(t *testing.T) {
	sixteen := regexp.MustCompile("\x1b\\[0(;1)?(;(3|9)[0-7])?(;(4|10)[0-7])?m")
	indexed := regexp.MustCompile("\x1b\\[0(;1)?(;38;5;\\d+)?(;48;5;\\d+)?m")
	all := regexp.MustCompile("\x1b\\[0(;1)?(;38;2;\\d+;\\d+;\\d+)?(;48;2;\\d+;\\d+;\\d+)?m")
	for _, p := range []Palette{
		{Colour: true, Dark: true}, {Colour: true}, NewPalette(Colours256, true), NewPalette(TrueColour, false),
	} {
		sgr := map[Profile]*regexp.Regexp{Colours16: sixteen, Colours256: indexed, TrueColour: all}[p.Depth()]
		c := Picture(states(), 46, 20, p)
		plain := c.Lines()
		for i, l := range c.Styled(p) {
			if got := sgr.ReplaceAllString(l, ""); got != plain[i] {
				t.Errorf("line %d: %q, want %q", i, got, plain[i])
			}
			if strings.Contains(l, "\x1b") && strings.LastIndex(l, "\x1b[0m") != strings.LastIndex(l, "\x1b") {
				t.Errorf("line %d does not end its colour: %q", i, l)
			}
		}
	}
	c := Picture(states(), 46, 20, Palette{})
	for i, l := range c.Styled(Palette{}) {
		if l != c.Lines()[i] {
			t.Errorf("without colour line %d is %q", i, l)
		}
	}
}

// A run of equal cells is written with one sequence.
func TestStyledGroupsRuns(t *testing.T) {
	c := newCanvas(6, 1)
	c.write(1, 0, "abcd", ClassStyle(0))
	want := " \x1b[0;30;46mabcd\x1b[0m "
	if got := c.Styled(Palette{Colour: true, Dark: true})[0]; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
}
