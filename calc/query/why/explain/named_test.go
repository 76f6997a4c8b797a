package explain_test

import (
	"strings"
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/query/why"
	"contralay/calc/query/why/explain"
)

// The warmest place lies on the sheath where there is one, else on the surface.
func TestWarmestPlaceIsNamed(t *testing.T) {
	for more, want := range map[string]string{calctest.CoverText("braid", "  thick_mm = 0.25\n"): "warmest place on the surface of T1",
		calctest.CoverText("sheath", ""): "warmest place of the sheath of T1"} {
		s := calctest.Carrying(t, 20, "", calctest.Repeated(7, "22 1"), [][]int{{0}, {1, 2, 3, 4, 5, 6}}, more)
		w, ok := explain.Brief(s, why.Figure{What: "branch.under", Of: "T1"})
		if !ok || w.Name != want || s.Branches[0].Sheath.Tube.Set != strings.Contains(more, "sheath") {
			t.Errorf("%v %q, want %q", ok, w.Name, want)
		}
	}
}

// What the heat of a bundle lets a wire carry is explained of each of its wires, the first as well as the last.
func TestHeatLimitsOfEachWire(t *testing.T) {
	s := calctest.Carrying(t, 20, "", []string{"22 1", "20 2", "22 3"}, nil, "")
	for k := range s.H.Wires {
		heat := 0
		for n := range 9 {
			w, ok := explain.Brief(s, why.Figure{What: "wire.limit", Of: s.H.Wires[k].ID, K: n})
			if !ok || !strings.HasPrefix(w.Says, "In the steady heat balance of the section") {
				continue
			}
			heat++
			if len(w.In) != 2 || w.In[0].Name != "current that brings it to 150 C" || w.In[1].Name != "margin" {
				t.Errorf("%s: %+v", s.H.Wires[k].ID, w.In)
			}
		}
		if heat != 1 {
			t.Errorf("%s: %d of its limits are by heat", s.H.Wires[k].ID, heat)
		}
	}
}

// Of a short above six times the rating of a fuse the six times count, and it is said; below, the short itself, and it is not. Of 12 V and
// 10 A that is a loop of 0.2 ohms: 30 m of 16 AWG are well above it, 1 m is far below.
func TestShortAboveSixTimes(t *testing.T) {
	for _, length := range []string{"1000.0", "30000.0"} {
		text := "format = 1\n[harness]\nsupply_v = 12.0\nshort_a = 400.0\n[[termination]]\nid = \"A\"\n[[termination]]\nid = \"Z\"\n" +
			"[[wire]]\nid = \"w\"\nfrom = \"A:1\"\nto = \"Z:1\"\nspec = \"AS22759/32\"\nsize = \"16\"\namps = 4.0\n" +
			"[[feed]]\nid = \"F\"\ndevice = \"blade\"\namps = 10.0\nwires = [\"w\"]\n" +
			"[[branch]]\nid = \"T\"\nfrom = \"A\"\nto = \"Z\"\nlength_mm = " + length + "\n"
		w, ok := explain.Brief(calctest.Built(t, text), why.Figure{What: "short.lets", Of: "F", Part: "w"})
		above := strings.Contains(w.Says, ". Above six times its rating a fuse lets no more through than at six times")
		if !ok || above != (length == "1000.0") || above != (w.In[0].Value == 60) {
			t.Errorf("%s mm: %v %q %+v", length, ok, w.Says, w.In)
		}
	}
}

// The impedance of a pair goes by the insulation of its first wire.
func TestImpedanceByTheFirstWire(t *testing.T) {
	s := calctest.Laid(t, "example")
	met := 0
	for i := range s.Units {
		if u := &s.H.Units[i]; s.Units[i].Pair.Known {
			met++
			w, ok := explain.Brief(s, why.Figure{What: "unit.ohm", Of: u.ID})
			if !ok || w.In[0].From == nil || w.In[0].From.Part != u.Wires[0] {
				t.Errorf("%s: %v %+v", u.ID, ok, w.In)
			}
		}
	}
	if met == 0 {
		t.Error("no pair")
	}
}
