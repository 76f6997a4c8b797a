package kit

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"github.com/charmbracelet/x/ansi"

	"contralay/ui/draw"
)

// A painted text is the bytes that lipgloss would make.
func TestPaintIsLipgloss(t *testing.T) {
	for name, p := range palettes() {
		th := NewTheme(p, false)
		for l := Text; l < lookEnd; l++ {
			for _, text := range []string{"x", "two words", " blanks ", "線 e\u0301", "▸ 1"} {
				if got, want := th.Paint(l, text), th.Style(l).Render(text); got != want {
					t.Errorf("%s, %s: %q, want %q", name, LookNames()[l], got, want)
				}
			}
		}
	}
	if len(LookNames()) != int(lookEnd) {
		t.Errorf("%d names for %d looks", len(LookNames()), lookEnd)
	}
}

// What is written is what the palette says, whatever the environment says, and each
// terminal gets the colours it has and no others.
func TestThemeKeepsToItsProfile(t *testing.T) {
	t.Setenv("NO_COLOR", "1")
	t.Setenv("TERM", "dumb")
	for name, p := range palettes() {
		th := NewTheme(p, false)
		all := ""
		for l := Text; l < lookEnd; l++ {
			all += th.Paint(l, "x")
		}
		rgb, indexed := strings.Contains(all, "38;2;"), strings.Contains(all, "38;5;")
		any := all != strings.Repeat("x", int(lookEnd))
		if d := p.Depth(); rgb != (d == draw.TrueColour) || indexed != (d == draw.Colours256) || any != (d != draw.NoColour) {
			t.Errorf("%s writes %q", name, all)
		}
	}
}

// Plain characters and colour go together.
func TestPaintInPlainCharacters(t *testing.T) {
	th := NewTheme(draw.NewPalette(draw.Colours256, true), true)
	if got := th.Paint(Stop, "50 µm"); ansi.Strip(got) != "50 um" || got == "50 um" {
		t.Errorf("%q", got)
	}
}

// luminance and contrast are those of WCAG 2.1.
func luminance(c [3]float64) float64 {
	sum := 0.0
	for k, weight := range [3]float64{0.2126, 0.7152, 0.0722} {
		v := c[k] / 255
		if v <= 0.04045 {
			v /= 12.92
		} else {
			v = math.Pow((v+0.055)/1.055, 2.4)
		}
		sum += weight * v
	}
	return sum
}

func contrast(a, b [3]float64) float64 {
	la, lb := luminance(a)+0.05, luminance(b)+0.05
	return max(la, lb) / min(la, lb)
}

// parse reads a colour as the theme gives it: "#rrggbb" or a number of xterm's 256.
func parse(t *testing.T, s string) [3]float64 {
	t.Helper()
	if hex, is := strings.CutPrefix(s, "#"); is {
		v, err := strconv.ParseUint(hex, 16, 32)
		if err != nil || len(hex) != 6 {
			t.Fatalf("%q is no colour", s)
		}
		return [3]float64{float64(v >> 16), float64(v >> 8 & 255), float64(v & 255)}
	}
	v, err := strconv.ParseUint(s, 10, 8)
	if err != nil {
		t.Fatalf("%q is no colour", s)
	}
	r, g, b := draw.RGB(uint8(v))
	return [3]float64{float64(r), float64(g), float64(b)}
}

// Text can be read on the grounds that terminals have: 4.5 : 1 and more by WCAG 2.1,
// 1.4.3; lines 3 : 1 by 1.4.11. Grounds: black and white, and what common colour
// schemes use (common practice, no source).
func TestContrast(t *testing.T) {
	if got := contrast([3]float64{}, [3]float64{255, 255, 255}); math.Abs(got-21) > 1e-9 {
		t.Fatalf("black on white is %.3f, and 21 by WCAG 2.1", got)
	}
	grounds := map[bool][]string{
		true:  {"#000000", "#1e1e1e", "#282c34", "#002b36"},
		false: {"#ffffff", "#f5f5f5", "#fdf6e3"},
	}
	for _, tt := range []struct {
		name  string
		t     tint
		least float64
	}{
		{"accent", accent, 4.5}, {"quiet", quiet, 4.5}, {"bright", bright, 4.5}, {"wrong", wrong, 4.5}, {"amber", amber, 4.5},
		{"good", good, 4.5},
		{"line", line, 3},
	} {
		for dark, all := range grounds {
			c := tt.t.light
			if dark {
				c = tt.t.dark
			}
			for _, ground := range all {
				for _, s := range []string{c.all, c.of256} {
					if got := contrast(parse(t, s), parse(t, ground)); got < tt.least {
						t.Errorf("%s %s on %s is %.2f : 1, wants %.1f", tt.name, s, ground, got, tt.least)
					}
				}
			}
			// The colours of 16 are the scheme's; xterm's are measured on its own ground.
			if c.of16 != "" {
				if got := contrast(parse(t, c.of16), parse(t, all[0])); got < tt.least {
					t.Errorf("%s %s on %s is %.2f : 1, wants %.1f", tt.name, c.of16, all[0], got, tt.least)
				}
			}
		}
	}
	// Text on the grounds that the theme sets itself.
	for name, ground := range map[string]tint{"hand": hand, "typed": typed} {
		for _, c := range [][2]string{
			{bright.dark.all, ground.dark.all}, {bright.dark.of256, ground.dark.of256},
			{bright.light.all, ground.light.all}, {bright.light.of256, ground.light.of256},
		} {
			if got := contrast(parse(t, c[0]), parse(t, c[1])); got < 4.5 {
				t.Errorf("%s: %s on %s is %.2f : 1", name, c[0], c[1], got)
			}
		}
	}
	// Stop and warn are told apart by lightness too, for those who see no red from green:
	// chosen here, 1.3 : 1.
	if got := contrast(parse(t, wrong.dark.all), parse(t, amber.dark.all)); got < 1.3 {
		t.Errorf("stop and warn are %.2f : 1", got)
	}
}

// Only what is wrong is red or yellow.
func TestRedIsKept(t *testing.T) {
	for name, c := range map[string]tint{"accent": accent, "quiet": quiet, "line": line, "bright": bright, "hand": hand, "typed": typed} {
		for _, s := range []string{c.dark.all, c.dark.of256, c.light.all, c.light.of256} {
			if v := parse(t, s); v[0] > v[2]+20 {
				t.Errorf("%s: %s is a colour of warning", name, s)
			}
		}
	}
}

// A row keeps every sign it has, and they are there without colour.
func TestRowSigns(t *testing.T) {
	th := NewTheme(draw.Palette{}, false)
	for _, tt := range []struct {
		row  Row
		want string
	}{
		{Row{Text: "1"}, "   1  "},
		{Row{Text: "1", Hand: true}, " ▸ 1  "},
		{Row{Text: "1", InUse: true}, " ● 1  "},
		{Row{Text: "1", Hand: true, InUse: true}, " ▸●1  "},
		{Row{Text: "1", Mark: "!"}, "!  1  "},
		{Row{Text: "1", Mark: "!", Hand: true, InUse: true}, "!▸●1  "},
	} {
		if got := th.Row(tt.row, 6); got != tt.want {
			t.Errorf("%+v: %q, want %q", tt.row, got, tt.want)
		}
	}
	if got := NewTheme(draw.Palette{}, true).Row(Row{Text: "1", Hand: true, InUse: true}, 6); got != " >=1  " {
		t.Errorf("plain: %q", got)
	}
}
