package screen

import (
	"image/color"
	"io"
	"strings"
	"testing"
	"time"

	"github.com/charmbracelet/lipgloss"
	"github.com/charmbracelet/x/vt"
	"github.com/muesli/termenv"
)

// What lipgloss paints stands on the terminal as it was painted, at every depth of
// colour: the cells it was painted on, and no other on that line or the next.
func TestColoursOfLipgloss(t *testing.T) {
	for _, tt := range []struct {
		name    string
		profile termenv.Profile
		paints  bool
	}{{"all", termenv.TrueColor, true}, {"256", termenv.ANSI256, true}, {"16", termenv.ANSI, true}, {"none", termenv.Ascii, false}} {
		r := lipgloss.NewRenderer(io.Discard)
		r.SetColorProfile(tt.profile)
		r.SetHasDarkBackground(true)
		hand := r.NewStyle().Bold(true).Background(lipgloss.CompleteColor{TrueColor: "#1d4c59", ANSI256: "23", ANSI: "6"})
		const w, h = 20, 4
		out := &tube{vt: vt.NewEmulator(w, h)}
		s := New(out, w)
		s.Show("plain\n" + hand.Render("in hand") + " after\nplain again")
		time.Sleep(2 * Apart)
		s.Show("plain\nmoved on\n" + hand.Render("in hand"))
		time.Sleep(2 * Apart)
		for y := range h {
			for x := range w {
				painted := out.vt.CellAt(x, y) != nil && out.vt.CellAt(x, y).Style.Bg != color.Color(nil)
				if want := tt.paints && y == 2 && x < len("in hand"); painted != want {
					t.Errorf("%s: cell %d of line %d painted: %v, want %v", tt.name, x, y, painted, want)
				}
			}
		}
		if got := out.shows(); got != "plain\nmoved on\nin hand" {
			t.Errorf("%s shows %q", tt.name, got)
		}
	}
}

// A line that does not end its colour leaves it neither to what is erased behind it nor
// to the line that is written next.
func TestColourEndsWithTheLine(t *testing.T) {
	r := lipgloss.NewRenderer(io.Discard)
	r.SetColorProfile(termenv.ANSI)
	painted := r.NewStyle().Background(lipgloss.Color("4")).Render("ab")
	open := painted[:strings.LastIndexByte(painted, 'b')+1] // the end is cut off
	out := &tube{vt: vt.NewEmulator(10, 2)}
	s := New(out, 10)
	s.Show(open + "\nnext")
	time.Sleep(2 * Apart)
	for y := range 2 {
		for x := range 10 {
			if got, want := out.vt.CellAt(x, y).Style.Bg != nil, y == 0 && x < 2; got != want {
				t.Errorf("cell %d of line %d painted: %v", x, y, got)
			}
		}
	}
}
