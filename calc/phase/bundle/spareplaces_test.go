package bundle_test

import (
	"fmt"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/phase/bundle"
	"contralay/model"
)

// placesText is three terminations on a breakout: A with five cavities, Y with three, Z with six. Two wires run from A to Z, one from A
// to Y. A branch
// is told from the one end to the other.
func placesText(branches ...string) string {
	text := "format = 1\n[[breakout]]\nid = \"J\"\n"
	for _, t := range []struct {
		id string
		n  int
	}{{"A", 5}, {"Y", 3}, {"Z", 6}} {
		var c []string
		for k := range t.n {
			c = append(c, fmt.Sprintf("%q", fmt.Sprint(k+1)))
		}
		text += fmt.Sprintf("[[termination]]\nid = %q\ncavities = [%s]\n", t.id, strings.Join(c, ", "))
	}
	for k, ends := range [][2]string{{"A:1", "Z:1"}, {"A:2", "Z:2"}, {"A:3", "Y:1"}} {
		text += fmt.Sprintf("[[wire]]\nid = \"w%d\"\nfrom = %q\nto = %q\nspec = \"AS22759/32\"\nsize = \"22\"\n", k+1, ends[0], ends[1])
	}
	for _, b := range branches {
		f := strings.Fields(b)
		text += fmt.Sprintf("[[branch]]\nid = %q\nfrom = %q\nto = %q\nlength_mm = 300.0\n", f[0], f[1], f[2])
	}
	return text
}

// Places for spares, by hand: A has two cavities free, Y two, Z four. So many lead through each branch, no cavity twice, each from the
// end that
// the branch is told from.
func TestSparePlacesByHand(t *testing.T) {
	s := calc.Build(calctest.Parse(t, placesText("T A J", "L J Z", "M J Y")), calctest.Catalogue(t), nil)
	told := func(branch, most int) string {
		var out []string
		for _, p := range bundle.SparePlaces(s, branch, 0, most) {
			out = append(out, fmt.Sprint(p.From, " ", p.To, " ", p.Path, " ", p.Like))
		}
		return strings.Join(out, ", ")
	}
	for _, c := range []struct{ branch, most, want int }{{0, 9, 2}, {1, 9, 4}, {1, 3, 3}, {2, 9, 2}, {1, 0, 0}} {
		used := map[string]bool{}
		got := bundle.SparePlaces(s, c.branch, 0, c.most)
		for _, p := range got {
			if used[p.From] || used[p.To] {
				t.Errorf("branch %d: %s or %s is taken twice", c.branch, p.From, p.To)
			}
			used[p.From], used[p.To] = true, true
		}
		if len(got) != c.want {
			t.Errorf("branch %d, %d at most: %s, want %d", c.branch, c.most, told(c.branch, c.most), c.want)
		}
	}
	// The other way round: told from Z, a spare runs from Z.
	s = calc.Build(calctest.Parse(t, placesText("T A J", "L Z J")), calctest.Catalogue(t), nil)
	for branch, want := range []string{"A:4 Z:3 [0 1] 0, A:5 Z:4 [0 1] 0", "Z:3 A:4 [1 0] 0, Z:4 A:5 [1 0] 0"} {
		if got := told(branch, 9); got != want {
			t.Errorf("branch %d: %s, want %s", branch, got, want)
		}
	}
	// Of the commonest size that has a place; what the shop wants less the spares that lie there.
	h := calctest.Parse(t, placesText("T A J", "L J Z"))
	h.Wires[2].To = model.Some("Z:3")
	s = calc.Build(h, calctest.Catalogue(t), nil)
	if got := bundle.SparesMore(s, 1, 9); len(got) != 2 || got[0].From != "A:4" || got[1].To != "Z:5" {
		t.Errorf("%+v", got)
	}
	if got := bundle.SparesMore(s, 1, 0); got != nil {
		t.Errorf("%+v", got)
	}
	for have, want := range map[int]int{0: 2, 1: 1, 2: 0, 3: 0} {
		for k := range h.Wires {
			h.Wires[k].Role = model.Opt[model.Role]{}
			if k < have {
				h.Wires[k].Role = model.Some(model.RoleSpare)
			}
		}
		s := calc.Build(h, calctest.Catalogue(t), nil)
		s.Limits.SparesWanted = 2
		if got := bundle.SparesFor(s, 1); len(got) != want {
			t.Errorf("%d spares lie there: places for %d more, want %d", have, len(got), want)
		}
	}
}
