package kit

import (
	"io"
	"strings"

	"github.com/charmbracelet/lipgloss"
	"github.com/muesli/termenv"

	"contralay/ui/draw"
)

// Look is one of the few ways text may look.
type Look uint8

// The looks of the bench. Those of rows and steps come with a sign or with capitals,
// so that they are told without colour.
const (
	Text      Look = iota // the terminal's own
	Strong                // what is looked for first: the number of the harness, the figure in hand
	Quiet                 // what is read second: words beside keys, heads of columns
	Border                // lines of the frame
	Title                 // title of the pane that takes the keys
	TitleOff              // title of a pane that is only looked at
	StepNow               // the step in hand
	Hand                  // the row in hand
	InUse                 // the row that is in use
	Stop                  // cannot be built
	Warn                  // a limit is passed
	Key                   // a keycap on the bar
	FieldText             // what is typed
	Cursor                // the place in it where the next letter goes
	Better                // a figure that is better than the present one, beside a sign that says so
	Worse                 // one that is worse
	lookEnd
)

// LookNames are the looks in order, for tests and for whoever looks at all of them.
func LookNames() []string {
	return []string{"text", "strong", "quiet", "border", "title", "title off", "step now", "hand", "in use", "stop", "warn", "key",
		"field", "cursor", "better", "worse"}
}

// Signs are the characters that say what colour repeats.
type Signs struct {
	InHand, InUse   string
	Above, Below    string // more lines that way
	Changed         string // before the number of changes
	Between         string // steps
	Up, Down        string // arrows on keycaps
	Left, Right     string
	Backspace       string
	Full, Empty     rune // of a bar of progress
	Folder, Through string
}

// Theme is how the bench looks on one terminal: its colours, signs and frame. It is
// made once and not changed after, so it may be used by several at once.
type Theme struct {
	ASCII   bool
	Palette draw.Palette
	Signs   Signs

	styles [lookEnd]lipgloss.Style
	// What lipgloss writes before and after a text of each look. A text between the
	// two is the same bytes that lipgloss would make (a test holds it) for a fiftieth
	// of the time, and a frame paints a hundred of them.
	begin, end [lookEnd]string
	pieces     pieces
}

// NewTheme makes a theme for what a terminal can show. The renderer is one of our own
// that is told everything: lipgloss's would ask the terminal (see contralay/ui/quiet).
func NewTheme(p draw.Palette, ascii bool) *Theme {
	r := lipgloss.NewRenderer(io.Discard)
	r.SetColorProfile(profile(p.Depth()))
	r.SetHasDarkBackground(p.Dark)
	t := &Theme{ASCII: ascii, Palette: p, Signs: signs(ascii), styles: styles(r, p.Depth())}
	for k, s := range t.styles {
		t.begin[k], t.end[k], _ = strings.Cut(s.Render("x"), "x")
	}
	t.pieces = cut(t)
	return t
}

// profile is a depth in the words of the library.
func profile(d draw.Profile) termenv.Profile {
	switch d {
	case draw.TrueColour:
		return termenv.TrueColor
	case draw.Colours256:
		return termenv.ANSI256
	case draw.Colours16:
		return termenv.ANSI
	}
	return termenv.Ascii
}

func signs(ascii bool) Signs {
	if ascii {
		return Signs{InHand: ">", InUse: "=", Above: "^", Below: "v", Changed: "*", Between: " - ", Up: "^", Down: "v",
			Left: "<", Right: ">", Backspace: "Backspace", Full: '#', Empty: '.', Folder: "/", Through: " > "}
	}
	return Signs{InHand: "▸", InUse: "●", Above: "↑", Below: "↓", Changed: "●", Between: " ─ ", Up: "↑", Down: "↓",
		Left: "←", Right: "→", Backspace: "⌫", Full: '█', Empty: '░', Folder: "/", Through: " › "}
}

// colour is one colour for each kind of terminal. None given is the terminal's own.
type colour struct{ all, of256, of16 string }

func (c colour) lipgloss() lipgloss.CompleteColor {
	return lipgloss.CompleteColor{TrueColor: c.all, ANSI256: c.of256, ANSI: c.of16}
}

// tint is a colour on a dark ground and on a light one.
type tint struct{ dark, light colour }

// The colours of the bench, thought through for a tired person a metre away: one calm
// accent, greys, and two that are kept for what is wrong. Red and amber are told apart
// by those who see no red from green, because amber is far lighter; on a light ground,
// where no amber can be read, the warning is blue. Text has 4.5 : 1 on black, white and
// the usual grounds between (WCAG 2.1, 1.4.3), lines 3 : 1 (1.4.11); a test measures it.
//
// With 16 colours the scheme is the terminal's, and its greys are not to be relied on:
// text that is second is there the terminal's own colour.
var (
	accent = tint{colour{"#7cc7d0", "116", ""}, colour{"#005f6b", "23", ""}}
	quiet  = tint{colour{"#b4bbc2", "250", ""}, colour{"#4a5157", "239", ""}}
	line   = tint{colour{"#7d8b96", "245", "8"}, colour{"#7b858d", "243", "8"}}
	bright = tint{colour{"#ffffff", "231", ""}, colour{"#000000", "16", ""}}
	wrong  = tint{colour{"#ff7b72", "210", "9"}, colour{"#b00020", "124", "1"}}
	amber  = tint{colour{"#ffc15e", "221", "11"}, colour{"#0b4fb3", "25", "4"}}
	good   = tint{colour{"#8fdc8f", "114", "10"}, colour{"#1b6e2a", "22", ""}}
	hand   = tint{colour{"#1d4c59", "23", ""}, colour{"#bfe3e8", "152", ""}}
	typed  = tint{colour{"#33393f", "237", ""}, colour{"#e4e7ea", "254", ""}}
)

// of is the tint as lipgloss takes it.
func (t tint) of() lipgloss.CompleteAdaptiveColor {
	return lipgloss.CompleteAdaptiveColor{Dark: t.dark.lipgloss(), Light: t.light.lipgloss()}
}

// styles are the looks in the words of lipgloss. Without colour nothing is written at
// all, neither weight nor reverse, as by what else honours NO_COLOR.
func styles(r *lipgloss.Renderer, depth draw.Profile) [lookEnd]lipgloss.Style {
	plain := r.NewStyle()
	var s [lookEnd]lipgloss.Style
	s[Text] = plain
	s[Strong] = plain.Bold(true)
	s[Quiet] = plain.Foreground(quiet.of())
	s[Border] = plain.Foreground(line.of())
	s[Title] = plain.Foreground(accent.of()).Bold(true)
	s[TitleOff] = plain.Foreground(quiet.of())
	s[StepNow] = plain.Foreground(accent.of()).Bold(true)
	s[Hand] = plain.Foreground(bright.of()).Background(hand.of()).Bold(true)
	s[InUse] = plain.Foreground(accent.of())
	s[Stop] = plain.Foreground(wrong.of()).Bold(true)
	s[Warn] = plain.Foreground(amber.of()).Bold(true)
	s[Key] = plain.Bold(true)
	s[FieldText] = plain.Foreground(bright.of()).Background(typed.of())
	s[Cursor] = plain.Reverse(true)
	s[Better] = plain.Foreground(good.of())
	s[Worse] = plain.Foreground(amber.of())
	if depth == draw.Colours16 {
		// The terminal's own two colours exchanged: the only pair that is known to be read.
		s[Hand] = plain.Bold(true).Reverse(true)
		s[FieldText] = plain.Bold(true)
	}
	return s
}

// Style is a look for a widget of the library, which paints by itself.
func (t *Theme) Style(l Look) lipgloss.Style { return t.styles[min(l, lookEnd-1)] }

// Paint sets one line of text in a look. Without colour it is the text itself, so no
// meaning may hang on it. In plain characters the text is spelled out.
func (t *Theme) Paint(l Look, text string) string {
	text = t.Plain(text)
	if text == "" || l >= lookEnd {
		return text
	}
	return t.begin[l] + text + t.end[l]
}

// Plain spells a text out where only plain characters are understood.
func (t *Theme) Plain(text string) string {
	if t.ASCII {
		return draw.Spell(text)
	}
	return text
}

// Text is a text that may be somebody else's, fit to show: see draw.Clean and Plain.
func (t *Theme) Text(text string) string { return t.Plain(draw.Clean(text)) }

// Fit makes a line exactly w cells wide; see draw.Line.
func (t *Theme) Fit(text string, w int) string { return draw.Line(text, w, t.ASCII) }
