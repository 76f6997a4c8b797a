package over_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/phase/over"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// Shields end within 100 mm of their contacts and their leads are 190 mm long at most, 20
// and 115 where noise matters: NASA-STD-8739.4 § 11.6.
func TestShieldLengths(t *testing.T) {
	for _, c := range []struct {
		strip, drain float64
		kbit         string
		want         []string
	}{
		{100, 190, "", nil}, {101, 191, "", []string{"warn U", "warn U"}}, {20, 115, "kbit_s = 500.0", nil},
		{21, 116, "kbit_s = 500.0", []string{"note U", "note U"}}, {0, 0, "kbit_s = 500.0", nil},
	} {
		s := calctest.Built(t, fmt.Sprintf(`format = 1
[[termination]]
id = "P"
[[termination]]
id = "Q"
[[wire]]
id = "a"
from = "P:1"
to = "Q:1"
spec = "AS22759/32"
size = "22"
[[wire]]
id = "b"
from = "P:2"
to = "Q:2"
spec = "AS22759/32"
size = "22"
[[unit]]
id = "U"
wires = ["a", "b"]
shield = true
drain_from = "P:3"
drain_to = "cut"
strip_mm = %v.0
drain_mm = %v.0
%s
[[branch]]
id = "T"
from = "P"
to = "Q"
length_mm = 300.0
`, c.strip, c.drain, c.kbit))
		if got := calctest.SaidOf(s, "shield.length"); !slices.Equal(got, c.want) {
			t.Errorf("%v and %v %s: %v, want %v", c.strip, c.drain, c.kbit, got, c.want)
		}
		if e := over.ShieldEnds(s); len(e) != 2 || e[0].Sleeve == 0 || e[1].Sleeve != 0 {
			t.Errorf("ends %+v", e)
		}
	}
}

// The folded end of a spare is in a sheath's way: one more wire on the bundle where it lies,
// less between a few that are twisted.
func TestFoldInTheWay(t *testing.T) {
	more := "[[breakout]]\nid = \"J\"\n[[termination]]\nid = \"P\"\n"
	s := calctest.Ringed(t, 1.09, 0.05, 400, []int{1, 6, 12}, more, "")
	bare := s.Branches[0].Sheath.PassMM
	h := *s.H
	h.Branches = append(slices.Clone(h.Branches), model.Branch{ID: "L", From: "J", To: "Q", LengthMM: 100})
	h.Branches[0].To = "J"
	k := len(h.Wires) - 1
	h.Wires = slices.Clone(h.Wires)
	h.Wires[k].To, h.Wires[k].CappedAt, h.Wires[k].Role, h.Wires[k].FoldMM = model.Opt[string]{}, model.Some("J"),
		model.Some(model.RoleSpare),
		model.Some[unit.Millimetre](100)
	n := calc.Build(&h, s.Cat, nil)
	sh := n.Branches[0].Sheath
	if d := float64(sh.PassMM - bare); math.Abs(d-1.09) > 1e-9 || !strings.Contains(sh.PassAt, "folded end of "+h.Wires[k].ID) {
		t.Errorf("it passes %v more, over %s; one wire more is 1.09", d, sh.PassAt)
	}
	two := calctest.Ringed(t, 1.0, 0.05, 400, []int{2}, "", "")
	if got, want := float64(over.StandsOut(two, 0, 1)), 1+2/math.Sqrt(3)-2; math.Abs(got-want) > 1e-6 {
		t.Errorf("a third beside two stands out %v; three alike lie in 2.155, %v more than two", got, want)
	}
}

// A wall that must be tight is passed by a sealed connector that is fixed in it, and by
// nothing else.
func TestTightWall(t *testing.T) {
	for keys, want := range map[string]string{
		"insert = \"18-32\"\nmount = \"jam nut\"\n": "wall.rated", "insert = \"18-32\"\nmount = \"flange\"\n": "wall.rated",
		"insert = \"18-32\"\nmount = \"inline\"\n": "wall.tight", "insert = \"18-32\"\n": "wall.tight",
		"cavities = [\"1\"]\nmount = \"flange\"\n": "wall.tight",
	} {
		for _, tight := range []bool{true, false} {
			s := calctest.Ringed(t, 1.09, 0.05, 400, []int{1, 6}, fmt.Sprintf("[[termination]]\nid = \"P\"\n%stight = %v\n", keys, tight),
				"")
			for rule, level := range map[string]sheet.Level{"wall.tight": sheet.Stop, "wall.rated": sheet.Note} {
				if g, ok := calctest.Snag(s, rule, "P"); ok != (tight && rule == want) || ok && g.Level != level {
					t.Errorf("%q tight %v: %s %v %+v", keys, tight, rule, ok, g)
				}
			}
		}
	}
}
