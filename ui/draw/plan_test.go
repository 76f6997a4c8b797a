package draw_test

import (
	"strings"
	"testing"

	"contralay/ui/draw"
)

// A plan drawn in plain characters, looked at by hand: a trunk across the middle, a leg to the right and
// down, and the names of their ends on no line.
func TestPlanByHand(t *testing.T) {
	p := draw.Plan{Ways: []draw.PlanWay{{Points: [][2]float64{{0, 0}, {20, 0}}, Heavy: true}, {Points: [][2]float64{{10, 0}, {10, -8}}}},
		Names: []draw.PlanName{{Text: "A", X: 0, Y: 0}, {Text: "B", X: 10, Y: -8}}}
	got := strings.Join(p.Draw(21, 5, draw.Palette{}, true).Lines(), "\n")
	want := strings.Join([]string{
		"#####################",
		"A         |          ",
		"          |          ",
		"          |          ",
		"          |B         "}, "\n")
	if got != want {
		t.Errorf("drawn:\n%s\nby hand:\n%s", got, want)
	}
	c := p.Draw(3, 2, draw.Palette{}, true)
	if len(c.NotShown) != 2 || c.W != 3 || c.H != 2 {
		t.Errorf("in no room: %v", c.NotShown)
	}
	if c := (draw.Plan{}).Draw(10, 5, draw.Palette{}, false); strings.TrimSpace(strings.Join(c.Lines(), "")) != "" {
		t.Error("nothing is drawn as something")
	}
}
