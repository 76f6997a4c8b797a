package missing

import (
	"fmt"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/model"
	"contralay/model/unit"
)

// wayText is terminations A to F, breakouts J and K, wires between ends, and branches between places.
func wayText(wires, branches [][2]string) string {
	text := "format = 1\n"
	for _, id := range []string{"A", "B", "C", "D", "E", "F"} {
		text += fmt.Sprintf("[[termination]]\nid = %q\n", id)
	}
	text += "[[breakout]]\nid = \"J\"\n[[breakout]]\nid = \"K\"\n"
	for n, w := range wires {
		text += fmt.Sprintf("[[wire]]\nid = \"%d\"\nfrom = \"%s:%d\"\nto = \"%s:%d\"\nspec = \"AS22759/32\"\nsize = \"22\"\n", n+1, w[0],
			n+1, w[1], n+1)
	}
	for n, b := range branches {
		text += fmt.Sprintf("[[branch]]\nid = \"L%d\"\nfrom = %q\nto = %q\nlength_mm = 100.0\n", n+1, b[0], b[1])
	}
	return text
}

// Where no branch leads, by hand: of each part that hangs together one place; the part that the others are joined to is that with the most
// wire ends, of like ones the largest; and a branch to a place begins in that, at a breakout or at an end without a branch.
func TestWaysByHand(t *testing.T) {
	type pairs = [][2]string
	for _, c := range []struct {
		name            string
		wires, branches pairs
		says, ids       string
		to, starts      string
	}{
		{"all hangs together", pairs{{"A", "B"}}, pairs{{"A", "J"}, {"J", "B"}, {"J", "C"}, {"J", "D"}, {"J", "E"}, {"J", "F"}}, "", "[]",
			"K", "[J]"},
		// A and B with J hold two ends of 1 and one of 2; C and D one of 2: C is joined. E and F lie alone, each a part.
		{"two parts", pairs{{"A", "B"}, {"A", "C"}}, pairs{{"A", "J"}, {"J", "B"}, {"C", "D"}},
			"no branch leads to C, E and F: 1 wire has no way", "[C E F]", "C", "[J]"},
		// The part of C and D holds more ends: the other one is joined to it, at the place where the wire ends.
		{"the other holds more", pairs{{"C", "D"}, {"C", "D"}, {"A", "C"}}, pairs{{"A", "J"}, {"J", "B"}, {"C", "D"}},
			"no branch leads to A, E and F: 1 wire has no way", "[A E F]", "A", "[]"},
		// As many ends in both: the larger part is the rest.
		{"as many ends", pairs{{"A", "C"}}, pairs{{"A", "B"}, {"C", "K"}, {"K", "D"}}, "no branch leads to A, E and F: 1 wire has no way",
			"[A E F]", "A", "[K]"},
		{"two wires without", pairs{{"A", "C"}, {"B", "D"}, {"A", "B"}}, pairs{{"A", "J"}, {"J", "B"}, {"C", "D"}, {"J", "E"}, {"J", "F"}},
			"no branch from J to C: 2 wires have no way", "[C]", "C", "[J]"},
	} {
		s := calc.Build(calctest.Parse(t, wayText(c.wires, c.branches)), calctest.Catalogue(t), nil)
		says, ids := "", []string(nil)
		for _, n := range ways(s) {
			says, ids = says+n.Says, append(ids, n.IDs...)
			if n.Kind != Way || n.Of != Place || n.Rank != Builds {
				t.Errorf("%s: %+v", c.name, n)
			}
		}
		if says != c.says || fmt.Sprint(ids) != c.ids {
			t.Errorf("%s: %q of %v, want %q of %s", c.name, says, ids, c.says, c.ids)
		}
		if got := fmt.Sprint(Starts(s, c.to)); got != c.starts {
			t.Errorf("%s: a branch to %s begins at %s, want %s", c.name, c.to, got, c.starts)
		}
	}
	one := calc.Build(calctest.Parse(t, "format = 1\n[[termination]]\nid = \"A\"\n"), calctest.Catalogue(t), nil)
	if n := ways(one); len(n) != 1 || n[0].Says != "no branch leads from A yet" {
		t.Errorf("%+v", n)
	}
}

// Numbers and names in words.
func TestListedInWords(t *testing.T) {
	ids := []string{"A", "B", "C", "D", "E", "F"}
	for n, want := range map[int][2]string{1: {"A", "A"}, 2: {"A, B", "A and B"}, 4: {"A, B, C, D", "A, B, C and D"}, 5: {"A, B, C, D ...",
		"A, B, C and 2 more"},
		6: {"A, B, C, D ...", "A, B, C and 3 more"}} {
		if got := [2]string{few(ids[:n]), listed(ids[:n])}; got != want {
			t.Errorf("%d: %q, want %q", n, got, want)
		}
	}
	if plural(1, "wire has", "wires have") != "1 wire has" || plural(2, "wire has", "wires have") != "2 wires have" || plural(0, "a",
		"b") != "0 b" {
		t.Error("one and several")
	}
	if one(Need{}, "%s", "%d %s") != nil {
		t.Error("nothing lacks it, and it is said")
	}
}

// A layer of nothing but filler whose size is not given, by hand: the first of its branch.
func TestBareFillerByHand(t *testing.T) {
	layer := func(wires, fillers int, mm unit.Millimetre) model.Layer {
		l := model.Layer{Of: make([]string, wires), Fillers: model.Some(fillers)}
		if mm > 0 {
			l.FillerMM = model.Some(mm)
		}
		return l
	}
	for _, c := range []struct {
		layers []model.Layer
		at     int
		is     bool
	}{
		{nil, 0, false}, {[]model.Layer{layer(1, 0, 0), layer(0, 1, 0)}, 1, true}, {[]model.Layer{layer(0, 1, 0), layer(0, 1, 0)}, 0, true},
		{[]model.Layer{layer(0, 1, 0.5)}, 0, false}, {[]model.Layer{layer(0, 0, 0)}, 0, false}, {[]model.Layer{layer(1, 3, 0)}, 0, false},
	} {
		if at, is := BareFiller(&model.Branch{Layers: c.layers}); at != c.at || is != c.is {
			t.Errorf("%+v: layer %d, %v", c.layers, at, is)
		}
	}
}
