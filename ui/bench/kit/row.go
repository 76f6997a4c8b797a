package kit

// Row is one line of a list to choose from.
type Row struct {
	Text  string
	Mark  string // "!" stop, "?" warning
	Hand  bool   // the keys act on it
	InUse bool   // what the harness has now
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
	return text
}

// Heads draws the heads of columns over rows.
func (t *Theme) Heads(text string, w int) string { return t.Paint(Quiet, t.Fit("   "+text, w)) }
