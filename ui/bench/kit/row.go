package kit

import (
	"strings"

	"contralay/ui/draw"
)

// Row is one line of a list to choose from.
type Row struct {
	Text  string
	Mark  string // "!" stop, "?" warning
	Hand  bool   // the keys act on it
	InUse bool   // what the harness has now
	Tints []Tint // parts of the text that have a look of their own, where the row has none; left to right
}

// Tint is a look for a part of a line, in cells.
type Tint struct {
	From, Wide int
	Look       Look
}

// GutterW is the room that signs take before a row, and that heads leave.
const GutterW = 3

// Row draws a row in exactly w cells: the mark of what is wrong with it, the sign that
// it is in hand or in use, then its text. Each sign has a cell of its own, so that none
// hides another; the look repeats the most pressing.
func (t *Theme) Row(r Row, w int) string {
	mark, sign, beside := " ", " ", " "
	if r.Mark != "" {
		mark = r.Mark
	}
	switch {
	case r.Hand && r.InUse:
		sign, beside = t.Signs.InHand, t.Signs.InUse
	case r.Hand:
		sign = t.Signs.InHand
	case r.InUse:
		sign = t.Signs.InUse
	}
	text := t.Fit(mark+sign+beside+r.Text, w)
	switch {
	case r.Hand:
		return t.Paint(Hand, text)
	case r.Mark == "!":
		return t.Paint(Stop, text)
	case r.Mark == "?":
		return t.Paint(Warn, text)
	case r.InUse:
		return t.Paint(InUse, text)
	}
	return t.tinted(text, r.Tints)
}

// tinted paints parts of a row's line. Where a character takes two cells or none, the line stays as it
// is: a look only repeats what a sign says.
func (t *Theme) tinted(line string, tints []Tint) string {
	text := []rune(line)
	if len(tints) == 0 || draw.Width(line) != len(text) {
		return line
	}
	var b strings.Builder
	done := 0
	for _, tint := range tints {
		from := min(max(done, GutterW+tint.From), len(text))
		to := min(from+tint.Wide, len(text))
		b.WriteString(string(text[done:from]))
		b.WriteString(t.Paint(tint.Look, string(text[from:to])))
		done = to
	}
	b.WriteString(string(text[done:]))
	return b.String()
}

// Heads draws the heads of columns over rows.
func (t *Theme) Heads(text string, w int) string { return t.Paint(Quiet, t.Fit("   "+text, w)) }
