package lists_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/query/lists"
	"contralay/calc/sheet"
	"contralay/model/unit"
)

// A loom of straight branches without loops, so that each wire is as long as its branches: P1 to J1 1000
// mm, from there 500 to X1, 300 to Y1 and 200 to G1.
var rung = `format = 1
[rules]
lay_ratio = 12.0
loop_mm = 0.0
[[termination]]
id = "P1"
cavities = ["1", "2", "3", "4", "5", "6"]
[[termination]]
id = "X1"
cavities = ["1", "2", "3"]
[[termination]]
id = "Y1"
cavities = ["1", "2"]
[[termination]]
id = "G1"
cavities = ["1"]
[[breakout]]
id = "J1"
[[splice]]
id = "S1"
at = "J1"
[[splice]]
id = "S2"
at = "J1"
toward = "L2"
offset_mm = 100.0
` + wire10 + `
[[unit]]
id = "C1"
wires = ["5", "6"]
build = "pair"
shield = true
drain_from = "shell"
drain_to = "cut"
over_mm = 2.9
` + straight

// The wires: one feed through two splices, a shielded pair, two grounds side by side and one that comes
// back from Y1, a spare, and a wire whose role nobody gave.
var wire10 = func() string {
	var b strings.Builder
	for _, w := range [][5]string{
		{"1", "P1:1", "S1", "20", "power"}, {"2", "S1", "X1:1", "22", "power"}, {"3", "S1", "S2", "22", "power"},
		{"4", "S2", "Y1:1", "22", "power"}, {"5", "P1:2", "X1:2", "22", "signal"}, {"6", "P1:3", "X1:3", "22", "data"},
		{"7", "P1:4", "G1:1", "20", "ground"}, {"8", "P1:4", "G1:1", "20", "ground"}, {"9", "Y1:2", "G1:1", "22", "ground"},
		{"SP1", "P1:5", "", "22", "spare"},
	} {
		fmt.Fprintf(&b, "[[wire]]\nid = %q\nsignal = \"does %s\"\nfrom = %q\nspec = \"AS22759/32\"\nsize = %q\nrole = %q\n",
			w[0], w[0], w[1], w[3], w[4])
		if w[2] != "" {
			fmt.Fprintf(&b, "to = %q\n", w[2])
		} else {
			b.WriteString("capped_at = \"J1\"\n")
		}
	}
	return b.String()
}()

const straight = `[[branch]]
id = "T1"
from = "P1"
to = "J1"
length_mm = 1000.0
make = "straight"
[[branch]]
id = "L1"
from = "J1"
to = "X1"
length_mm = 500.0
make = "straight"
[[branch]]
id = "L2"
from = "J1"
to = "Y1"
length_mm = 300.0
make = "straight"
[[branch]]
id = "L3"
from = "J1"
to = "G1"
length_mm = 200.0
make = "straight"
`

// Each net once, its first end and every other in order, with the wires on the way and the copper: metres by
// hand, times 32.41 and 53.15 ohm per km, which the table of the wire gives 20 and 22 AWG. What is shielded
// twists, so its copper is not worked out here.
func TestNetsByHand(t *testing.T) {
	s := calctest.Built(t, rung)
	var got []string
	for _, n := range lists.Nets(s) {
		line := fmt.Sprintf("%s %s %q", n.From, n.Group, n.Signal)
		for _, to := range n.To {
			line += fmt.Sprintf(" | %s via %s", to.End, strings.Join(to.Via, " "))
			if to.Ohm.Set && !strings.HasPrefix(to.End, "X1:2") && !strings.HasPrefix(to.End, "X1:3") {
				line += " " + unit.Fixed(to.Ohm.V, 5)
			}
		}
		got = append(got, line+" | "+names(s, n.Wires)+" | "+names(s, n.Loops))
	}
	want := []string{
		// 1.0 × 32.41 + 0.5 × 53.15, and 1.0 × 32.41 + (0.1 + 0.2) × 53.15: S2 lies 100 mm along the way to Y1
		`P1:1 power "does 1" | X1:1 via 1 2 0.05899 | Y1:1 via 1 3 4 0.04836 | 1 2 3 4 | `,
		`P1:2 signal and data "does 5" | X1:2 via 5 | 5 | `,
		`P1:3 signal and data "does 6" | X1:3 via 6 | 6 | `,
		// 1.2 × 32.41 = 38.892, and 0.5 × 53.15 more
		`P1:4 ground "does 7" | G1:1 via 7 0.03889 | Y1:2 via 7 9 0.06547 | 7 8 9 | 8`,
		`P1:5 spare "does SP1" | SP1 | `,
		`shell of P1 shield "" | shield of C1 via  |  | `,
	}
	if a, b := strings.Join(got, "\n"), strings.Join(want, "\n"); a != b {
		t.Errorf("got\n%s\nwant\n%s", a, b)
	}
	apart := fmt.Sprint(lists.Isolations(s))
	if apart != "[{power [P1:1]} {ground [P1:4]} {signal and data [P1:2 P1:3]} {spare [P1:5]} {shield [shield of C1]}]" {
		t.Errorf("kept apart: %s", apart)
	}
}

func names(s *sheet.Sheet, wires []int) string {
	var out []string
	for _, k := range wires {
		out = append(out, s.H.Wires[k].ID)
	}
	return strings.Join(out, " ")
}

// How many nets and tests there are is counted from the file alone, by joining the ends of every wire: a
// net of n cavities takes n − 1 tests, one of a single cavity takes one. The demonstration was counted by
// hand as well: 40 nets and 57 tests, and the shield.
func TestEachNetCounted(t *testing.T) {
	for _, name := range calctest.Files("demo", "whole", "feeds", "example", "trunk", "built-up") {
		s := calctest.Laid(t, name)
		root := map[string]string{}
		var find func(string) string
		find = func(e string) string {
			if up, is := root[e]; is && up != e {
				root[e] = find(up)
				return root[e]
			}
			return e
		}
		cavities := map[string]bool{}
		for _, w := range s.H.Wires {
			from, to := w.From.V, w.To.V
			for _, e := range []string{from, to} {
				if strings.Contains(e, ":") {
					cavities[e] = true
				}
			}
			if from != "" && to != "" {
				root[find(from)] = find(to)
			}
		}
		members := map[string][]string{}
		for e := range cavities {
			members[find(e)] = append(members[find(e)], e)
		}
		wantTests := 0
		for _, m := range members {
			wantTests += max(1, len(m)-1)
		}
		nets, tests, wires := 0, 0, map[int]int{}
		for _, n := range lists.Nets(s) {
			met := []string{}
			for _, to := range n.To {
				if cavities[to.End] {
					met = append(met, to.End)
				}
			}
			if !cavities[n.From] {
				continue // a shell, a drain alone
			}
			nets++
			tests += max(1, len(met))
			for _, k := range n.Wires {
				wires[k]++
			}
			got, want := append(met, n.From), members[find(n.From)]
			slices.Sort(got)
			slices.Sort(want)
			if !slices.Equal(got, want) {
				t.Errorf("%s: %s is a net of %v, want %v", name, n.From, got, want)
			}
		}
		if nets != len(members) || tests != wantTests || nets == 0 {
			t.Errorf("%s: %d nets and %d tests, want %d and %d", name, nets, tests, len(members), wantTests)
		}
		if name == "demo" && (nets != 40 || tests != 57) {
			t.Errorf("the demonstration has %d nets and %d tests, want 40 and 57", nets, tests)
		}
		for k := range s.H.Wires {
			if wires[k] != 1 {
				t.Errorf("%s: wire %s is in %d nets", name, s.H.Wires[k].ID, wires[k])
			}
		}
	}
}

// What a hand meter reads at most: the copper, 0.3 ohm of leads and its last digit of 0.1, up to the tenth.
func TestHandOhm(t *testing.T) {
	for _, c := range []struct{ copper, want float64 }{{0, 0.4}, {0.0001, 0.5}, {0.043, 0.5}, {0.1, 0.5}, {0.101, 0.6}, {1.3, 1.7}} {
		if got := float64(lists.HandOhm(unit.Ohm(c.copper))); math.Abs(got-c.want) > 1e-9 {
			t.Errorf("%v ohm of copper: under %v, want %v", c.copper, got, c.want)
		}
	}
}

// Insulation is tested at one voltage, which lies within what its source allows. A loom of one wire has
// nothing to be kept apart.
func TestIsolation(t *testing.T) {
	x := lists.Isolation
	if x.Volts < x.Least || x.Volts > x.Top || x.Megohm != 100 || x.Volts != 500 {
		t.Errorf("%+v", x)
	}
	const one = "[[wire]]\nid = \"1\"\nfrom = \"P1:1\"\nto = \"X1:1\"\nspec = \"AS22759/32\"\nsize = \"22\"\n"
	alone := strings.Replace(rung, wire10, one, 1)
	before, unit, _ := strings.Cut(alone, "[[unit]]")
	_, after, _ := strings.Cut(unit, "[[branch]]")
	if got := lists.Isolations(calctest.Built(t, before+"[[branch]]"+after)); len(got) > 0 {
		t.Errorf("one wire is kept apart from %v", got)
	}
}
