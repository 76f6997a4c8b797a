package draw

import (
	"strings"

	"github.com/charmbracelet/x/ansi"
)

// Cut shortens a line to at most w cells. Where something is lost the last cell
// is ~ in ASCII and … otherwise. Escape sequences after the cut are kept, so that
// a colour that was begun is ended.
func Cut(s string, w int, ascii bool) string {
	if w <= 0 {
		return ""
	}
	if Width(s) <= w {
		return s
	}
	mark := "…"
	if ascii {
		mark = "~"
	}
	// The library cuts by one measure and counts by another where a sign asks for the
	// form of a picture, so what it cut is measured.
	cut := ansi.Truncate(s, w, mark)
	for k := w - 1; k >= 0 && Width(cut) > w; k-- {
		cut = ansi.Truncate(s, k, mark)
	}
	return cut
}

// Pad fills a line with blanks to w cells; a longer one is left as it is.
func Pad(s string, w int) string { return s + blanks(w-Width(s)) }

// PadLeft fills with blanks on the left, as figures stand in a column.
func PadLeft(s string, w int) string { return blanks(w-Width(s)) + s }

// Centre fills on both sides; an odd blank goes to the right.
func Centre(s string, w int) string {
	free := max(w-Width(s), 0)
	return blanks(free/2) + s + blanks(free-free/2)
}

// Fit makes a line exactly w cells wide.
func Fit(s string, w int, ascii bool) string { return Pad(Cut(s, w, ascii), w) }

// Column is a block of lines with the width it is fitted to; 0 is the width of
// its widest line.
type Column struct {
	Lines []string
	W     int
}

// Columns puts blocks of lines side by side, gap between them, as many lines as
// the longest has. Every column is fitted to its width, so that what stands to
// its right is in line; the last one is not padded.
func Columns(gap string, ascii bool, cols ...Column) []string {
	n := 0
	for i, c := range cols {
		n = max(n, len(c.Lines))
		for _, l := range c.Lines {
			if c.W <= 0 {
				cols[i].W = max(cols[i].W, Width(l))
			}
		}
	}
	out := make([]string, n)
	var b strings.Builder
	for row := range out {
		b.Reset()
		for i, c := range cols {
			line := ""
			if row < len(c.Lines) {
				line = c.Lines[row]
			}
			if i > 0 {
				b.WriteString(gap)
			}
			if i == len(cols)-1 {
				b.WriteString(Cut(line, c.W, ascii))
				continue
			}
			b.WriteString(Fit(line, c.W, ascii))
		}
		out[row] = b.String()
	}
	return out
}

// spelled is how the signs of the trade are written in ASCII, and the signs for control
// characters: ^[ for escape.
var spelled = strings.NewReplacer(append(carets(),
	"Ω", "ohm", "Ω", "ohm", "µm", "um", "μm", "um", "µ", "u", "μ", "u", "°C", "degC", "°", "deg",
	"²", "2", "³", "3", "±", "+/-", "×", "x", "÷", "/", "⌀", "dia ", "Ø", "dia ", "·", "-", "…", "...",
	"–", "-", "—", "-", "−", "-", "≤", "<=", "≥", ">=", "→", "->", "‘", "'", "’", "'", "“", `"`, "”", `"`,
)...)

// carets are the control pictures of Unicode with what they are written as in plain characters.
func carets() []string {
	out := []string{"\u2421", "^?"} // delete
	for c := range ' ' {
		out = append(out, string(0x2400+c), "^"+string(c+'@'))
	}
	return out
}

// Plain writes a line in the bytes 0x20 to 0x7E: units and signs are spelled
// out, tabs and line breaks become blanks, what is left becomes "?". It may
// change the width, so it comes before Cut. Escape sequences do not survive it.
func Plain(s string) string {
	ok := true
	for i := 0; i < len(s); i++ {
		ok = ok && s[i] >= ' ' && s[i] <= '~'
	}
	if ok {
		return s
	}
	return strings.Map(func(r rune) rune {
		switch {
		case r == '\t' || r == '\n' || r == '\r':
			return ' '
		case r < ' ' || r == 0x7F:
			return -1
		case r > '~':
			return '?'
		}
		return r
	}, spelled.Replace(ansi.Strip(s)))
}

// blanks is n blanks, none where n is negative.
func blanks(n int) string { return strings.Repeat(" ", max(n, 0)) }
