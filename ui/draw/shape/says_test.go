package shape

import (
	"fmt"
	"strings"
	"testing"

	"contralay/model/unit"
	"contralay/ui/draw"
)

// What is not written whole is said under the drawing: characters that all numbers share and that
// are left out, names that are shortened, pieces without a number.
func TestWhatIsLeftOutIsSaid(t *testing.T) {
	ring := func(n int, name func(k int) string) draw.Section {
		s := draw.Section{}
		for k := range n {
			at := polar(float64(k)*6.283185/float64(n), 10)
			s.Discs = append(s.Discs, draw.Disc{ID: name(k), X: unit.Millimetre(at.x), Y: unit.Millimetre(at.y), D: 1.2, Numbered: true})
		}
		s.OverMM = 22
		return s
	}
	for _, c := range []struct {
		name string
		s    draw.Section
		w, h int
		says string
	}{
		{"whole", ring(6, func(k int) string { return fmt.Sprint(10 + k) }), 60, 31, ""},
		{"shared", ring(30, func(k int) string { return fmt.Sprint("ENGINE-", 10+k) }), 46, 24, "every number here begins with ENGINE-"},
		{"shared, less room", ring(30, func(k int) string { return fmt.Sprint("W-10", 10+k) }), 26, 15, "numbers begin with W-10"},
		{"longer than any room", ring(30, func(k int) string { return strings.Repeat(string(rune('A'+k)), 9) + fmt.Sprint(10+k) }), 26, 15,
			"last 3 characters only"},
		{"more than there is room for", ring(90, func(k int) string { return fmt.Sprint(k*37, "x", 10+k) }), 26, 15,
			"90 have no number here"},
	} {
		lines := Picture(c.s, c.w, c.h, dark).Lines()
		got := strings.TrimSpace(lines[len(lines)-1])
		if c.says == "" && got != "" || !strings.Contains(got, c.says) {
			t.Errorf("%s: it says %q, want %q", c.name, got, c.says)
		}
		all := strings.Join(lines, "\n")
		if c.name == "shared" && (!strings.Contains(all, "10") || strings.Contains(all[:len(all)-c.w-1], "ENGINE")) {
			t.Errorf("%s:\n%s", c.name, all)
		}
	}
}
