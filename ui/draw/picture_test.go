package draw

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"contralay/model/unit"
)

// packing draws a section of discs that do not overlap: a random few of them are
// dropped on a plane and those that hit an earlier one are left out.
func packing(t *rapid.T) Section {
	n := rapid.IntRange(0, 60).Draw(t, "n")
	s := Section{Seen: "seen from J1", SheathMM: unit.Millimetre(rapid.SampledFrom([]float64{0, 0, 14}).Draw(t, "sheath"))}
	for i := range n {
		d := Disc{
			ID:      fmt.Sprintf("id%d", i),
			Label:   name(i, rapid.IntRange(1, 3).Draw(t, "length")),
			X:       unit.Millimetre(rapid.Float64Range(-5, 5).Draw(t, "x")),
			Y:       unit.Millimetre(rapid.Float64Range(-5, 5).Draw(t, "y")),
			D:       unit.Millimetre(rapid.Float64Range(0.6, 3).Draw(t, "d")),
			Kind:    Kind(rapid.IntRange(0, 3).Draw(t, "kind")),
			Class:   rapid.IntRange(-2, 9).Draw(t, "class"),
			Tracer:  rapid.IntRange(0, 5).Draw(t, "tracer") == 0,
			Flagged: rapid.IntRange(0, 5).Draw(t, "flagged") == 0,
		}
		clear := true
		for _, e := range s.Discs {
			clear = clear && dist(d, e) >= float64(d.D+e.D)/2
		}
		if clear {
			s.Discs = append(s.Discs, d)
		}
	}
	s.OverMM = unit.Millimetre(2 * s.reach())
	if k := len(s.Discs); k > 0 {
		sel := rapid.IntRange(0, k-1).Draw(t, "selected")
		s.Discs[sel].Selected = true
		for i := range s.Discs {
			s.Discs[i].Neighbour = i != sel && dist(s.Discs[i], s.Discs[sel]) < 2
		}
	}
	return s
}

// name is a label of its own for each i below 100, of 1 to 3 characters where it can be.
func name(i, length int) string {
	switch {
	case length == 1 && i < 26:
		return string(rune('A' + i))
	case length == 3:
		return fmt.Sprintf("W%02d", i)
	}
	return fmt.Sprintf("%02d", i)
}

// What must always hold: h lines of w cells; every id on the map or listed; no
// label over another; one + or ! for what is listed; in ASCII no other bytes.
func TestPictureHolds(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := packing(t)
		w, h := rapid.IntRange(0, 110).Draw(t, "w"), rapid.IntRange(0, 40).Draw(t, "h")
		p := Palette{Colour: rapid.Bool().Draw(t, "colour"), Dark: rapid.Bool().Draw(t, "dark")}
		c := Picture(s, w, h, p)

		for _, lines := range [][]string{c.Lines(), c.Styled(p)} {
			if len(lines) != h {
				t.Fatalf("%d lines, want %d", len(lines), h)
			}
			for _, l := range lines {
				if Width(l) != w {
					t.Fatalf("line %q is %d cells, want %d", l, Width(l), w)
				}
			}
		}
		for _, l := range c.Lines() {
			if i := strings.IndexFunc(l, func(r rune) bool { return r < ' ' || r > '~' }); i >= 0 {
				t.Fatalf("line %q is not plain at %d", l, i)
			}
		}
		if w < minW || h < minH || len(s.Discs) == 0 {
			if len(c.NotShown) != len(s.Discs) {
				t.Fatalf("no map, but %d of %d listed", len(c.NotShown), len(s.Discs))
			}
			return
		}
		checkLabels(t, s, c, w, h, p)
		if d := cmp.Diff(c, Picture(s, w, h, p)); d != "" {
			t.Fatalf("the same input drew another picture:\n%s", d)
		}
	})
}

// checkLabels finds each disc that is not listed on the map by its text alone:
// prefix and core in one line, the middle within its disc or two cells of its
// centre, a mark or a blank on both sides, and no cell used twice.
func checkLabels(t *rapid.T, s Section, c Canvas, w, h int, p Palette) {
	lines := c.Lines()
	r := s.reach()
	f := newFrame(w, h-1, 0, 0, r, p.aspect())
	used := map[[2]int]string{}
	fillers := 0
	for _, d := range s.Discs {
		if slices.Contains(c.NotShown, d.ID) {
			continue
		}
		if d.Kind == Filler { // these look alike: they are counted
			fillers++
			continue
		}
		text := d.prefix() + d.Label
		x, y := f.at(float64(d.X), float64(d.Y))
		found := false
		for row := cell(y) - 1; row <= cell(y)+1 && !found; row++ {
			if row < 0 || row >= h-1 {
				continue
			}
			line := []rune(lines[row])
			for col := max(cell(x)-6, 1); col+len(text) < w && col <= cell(x)+5 && !found; col++ {
				at := [2]int{col, row}
				if string(line[col:col+len(text)]) != text || used[at] != "" {
					continue
				}
				left, right := line[col-1], line[col+len(text)]
				if isCore(left) || left == '!' || left == '*' || isCore(right) {
					continue
				}
				if d.Selected && left != '[' && right != ']' || d.Neighbour && left != '(' && right != ')' {
					continue
				}
				found = true
				for k := range len(text) {
					used[[2]int{col + k, row}] = d.ID
				}
			}
		}
		if !found {
			t.Fatalf("%s (%s at %.1f, %.1f) is neither on the map nor listed %v:\n%s", d.ID, text, x, y, c.NotShown,
				strings.Join(lines, "\n"))
		}
	}
	if got := strings.Count(strings.Join(lines[:h-1], ""), "o"); got != fillers {
		t.Fatalf("%d fillers on the map, want %d:\n%s", got, fillers, strings.Join(lines, "\n"))
	}
	plus := 0
	for _, l := range lines[:h-1] {
		plus += strings.Count(l, "+")
		plus += strings.Count(l, "!") // a flagged + may be a ! alone
	}
	if len(c.NotShown) > 0 && plus == 0 {
		t.Fatalf("%v listed, but nothing on the map says so", c.NotShown)
	}
}

func isCore(r rune) bool {
	return r >= '0' && r <= '9' || r >= 'a' && r <= 'z' || r >= 'A' && r <= 'Z' || r == '+'
}

// The cursor may pass over every disc: no core moves, none appears or goes.
func TestSelectionMovesNothing(t *testing.T) {
	strip := strings.NewReplacer("[", " ", "]", " ", "(", " ", ")", " ", ".", " ", ":", " ")
	for _, size := range [][2]int{{16, 7}, {34, 16}, {46, 20}, {100, 34}} {
		s := rings(1, 6, 12, 18, 24)
		bare := strip.Replace(strings.Join(Picture(s, size[0], size[1], Palette{}).Lines(), "\n"))
		for sel := range s.Discs {
			z := s
			z.Discs = slices.Clone(s.Discs)
			for i := range z.Discs {
				z.Discs[i].Selected = i == sel
				z.Discs[i].Neighbour = i != sel && dist(z.Discs[i], z.Discs[sel]) < 1.2
			}
			got := strip.Replace(strings.Join(Picture(z, size[0], size[1], Palette{}).Lines(), "\n"))
			if got != bare && size[0] < 100 { // brackets may stand on an outline only where there is one
				t.Fatalf("%v, %s selected: labels moved:\n%s", size, z.Discs[sel].ID, got)
			}
			if !strings.Contains(strings.Join(Picture(z, size[0], size[1], Palette{}).Lines(), "\n"), "[") {
				t.Fatalf("%v, %s selected: not marked", size, z.Discs[sel].ID)
			}
		}
	}
}

func TestPictureOddInput(t *testing.T) {
	nan := unit.Millimetre(math.NaN())
	tests := []struct {
		name string
		s    Section
		says string
		not  []string
	}{
		{"no discs", Section{}, "nothing is laid here yet", nil},
		{"a disc without size", Section{Discs: []Disc{{ID: "a"}}}, "nothing is laid here yet", []string{"a"}},
		{"a disc nowhere", Section{OverMM: 3, Discs: []Disc{{ID: "a", X: nan, D: 1}, {ID: "b", Label: "b", D: 1}}}, " b ", []string{"a"}},
		{"sizes not finite", Section{OverMM: nan, SheathMM: unit.Millimetre(math.Inf(1)), Discs: []Disc{{ID: "b", Label: "b", D: 1}}},
			" b ", nil},
		{"no label: the id", Section{OverMM: 3, Discs: []Disc{{ID: "W7", D: 1}}}, "W7", nil},
		{"wide and control characters", Section{OverMM: 3, Discs: []Disc{{ID: "x", Label: "1\t線", D: 1}}}, " 1? ", nil},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			c := Picture(tt.s, 40, 12, Palette{})
			if got := strings.Join(c.Lines(), "\n"); !strings.Contains(got, tt.says) {
				t.Errorf("no %q in\n%s", tt.says, got)
			}
			if d := cmp.Diff(tt.not, c.NotShown); d != "" {
				t.Errorf("not shown (-want +got):\n%s", d)
			}
		})
	}
}

// A circle of 10 mm must be 10 mm high and wide: cells of 0.5 are twice as tall
// as wide, so the picture has twice as many columns as rows.
func TestAspect(t *testing.T) {
	s := Section{OverMM: 10, Discs: []Disc{{ID: "a", Label: "a", D: 0.1}}}
	for _, a := range []unit.Ratio{0, 0.4, 0.5, 0.6} {
		lines := Picture(s, 80, 16, Palette{CellAspect: a}).Lines()
		top, left, right := -1, 80, -1
		bottom := 0
		for i, l := range lines {
			if k := strings.IndexByte(l, '.'); k >= 0 {
				if top < 0 {
					top = i
				}
				bottom = i
				left, right = min(left, k), max(right, strings.LastIndexByte(l, '.'))
			}
		}
		want := float64(a)
		if a == 0 {
			want = 0.5
		}
		got := float64(bottom-top) / float64(right-left)
		if math.Abs(got-want) > 0.03 { // a cell of 28 columns, rounded once at each side
			t.Errorf("aspect %v: drawn %d rows by %d columns, %.3f", a, bottom-top, right-left, got)
		}
	}
}
