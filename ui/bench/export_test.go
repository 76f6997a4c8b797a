package bench

import (
	"strings"

	"github.com/charmbracelet/x/ansi"

	"contralay/ui/bench/desk"
	"contralay/ui/cross"
	"contralay/ui/draw"
)

// What the tests reach for.
var (
	Reasons   = reasons
	BounceRow = bounceRow
	Figures   = figures
	KeyList   = keyList
)

// Section is what is drawn while a piece is in hand.
func Section(m *desk.Model, piece string) draw.Section {
	s, _ := discs(m, inHandOf{piece: piece, layer: -1})
	return s
}

// ByHeat colours the section by temperature.
func ByHeat(m *desk.Model) { sectionOf(m).by = cross.ByTemperature }

// Bar is the keys on a screen of its size.
func Bar(m *desk.Model, r *desk.Row) string {
	return keyBar(m, r, desk.Arrange(m.W, m.Height, m.Here().Wide))
}

// Head is the first line, in words.
func Head(m *desk.Model) string {
	h := head(m)
	return strings.Join([]string{h.Number, h.Name, h.Branch, h.Ends, h.Length, h.State}, "  ")
}

// SnagLine is the worst open point in one line.
func SnagLine(m *desk.Model) string {
	return snagLines(m, desk.Arrange(m.W, m.Height, m.Here().Wide), 1)[0]
}

// Drawn is how many sections were drawn.
func Drawn(m *desk.Model) int { return sectionOf(m).drawn }

// ForgetSection lets go of the sections that were drawn.
func ForgetSection(m *desk.Model) { sectionOf(m).kept = nil }

// SectionText is the section of a screen, without its colours.
func SectionText(m *desk.Model) string {
	l := desk.Arrange(m.W, m.Height, m.Here().Wide)
	_, r := m.Hand()
	return ansi.Strip(strings.Join(picture(m, sectionHand(r), l.Right.W, l.Right.H), "\n"))
}
