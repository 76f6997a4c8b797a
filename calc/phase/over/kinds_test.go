package over_test

import (
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/phase/over"
	"contralay/model"
	"contralay/model/unit"
)

// Where fuel wets it, and in air that is warmer than the usual kind stands, a branch calls for the other kind of tube. What is over its
// rating by the air alone is said once for each specification and each kind of tube.
func TestKindOfTubeAndHotAir(t *testing.T) {
	cat := calctest.Catalogue(t)
	stands := cat.TubesOf(over.DefaultSheath)[0].ServiceMaxC
	for _, c := range []struct {
		name    string
		ambient unit.Celsius
		fuel    bool
		kind    string
	}{
		{"cool", 20, false, over.DefaultSheath}, {"at its limit", stands, false, over.DefaultSheath}, {"above it", stands + 1, false,
			over.FuelSheath},
		{"in fuel", 20, true, over.FuelSheath},
	} {
		h := calctest.Parse(t, calctest.OneSize(7, "22", "length_mm = 300.0\n"))
		h.Branches[0].AmbientC = model.Some(c.ambient)
		if c.fuel {
			h.Branches[0].Environment = []model.Surrounding{model.Fuel}
		}
		s := calc.Complete(h, cat, nil)
		sh := s.Branches[0].Sheath
		if !sh.Proposed || sh.Tube.V.Kind != c.kind {
			t.Errorf("%s: %q of %s is proposed, want %s", c.name, sh.Part, sh.Tube.V.Kind, c.kind)
		}
		if said := len(calctest.SaidOf(s, "fuel")); said != calctest.Once(c.fuel) {
			t.Errorf("%s: fuel is said %d times", c.name, said)
		}
	}
	h := calctest.Parse(t, calctest.OneSize(7, "22", "length_mm = 300.0\n"))
	h.Branches[0].AmbientC = model.Some[unit.Celsius](900)
	h.Wires[3].Spec = "AS22759/16" // another specification beside six of one
	s := calc.Complete(h, cat, nil)
	said := calctest.SaidOf(s, "hot.wire")
	for _, spec := range []string{h.Wires[0].Spec, "AS22759/16"} {
		n := 0
		for _, g := range s.Snags {
			if g.Rule == "hot.wire" && strings.HasPrefix(g.Says, "The air around it is 900 C, and "+spec+" is rated ") {
				n++
			}
		}
		if n != 1 {
			t.Errorf("%s is said %d times: %q", spec, n, said)
		}
	}
	if len(said) != 2 {
		t.Errorf("%q", said)
	}
	if tubes := calctest.SaidOf(s, "hot.sheath"); len(tubes) != 1 {
		t.Errorf("the tube is said to be too hot %d times: %q", len(tubes), tubes)
	}
	h.Branches[0].Covers = []model.Cover{{What: model.CoverSheath, Part: model.Some("AS23053/16 6.4")}, {What: model.CoverSleeve,
		Part: model.Some("AS23053/16 9.5")}}
	if tubes := calctest.SaidOf(calc.Complete(h, cat, nil), "hot.sheath"); len(tubes) != 1 {
		t.Errorf("two tubes of one kind are said to be too hot %d times: %q", len(tubes), tubes)
	}
	cool := calctest.Parse(t, calctest.OneSize(7, "22", "length_mm = 300.0\n"))
	k := calc.Complete(cool, cat, nil)
	cool.Branches[0].AmbientC = model.Some(k.Wires[0].Entry.RatedC)
	if said := calctest.SaidOf(calc.Complete(cool, cat, nil), "hot.wire"); len(said) > 0 {
		t.Errorf("at its rating: %q", said)
	}
}

// What runs through a branch is the same asked of one and of all.
func TestThroughIsWiresOf(t *testing.T) {
	s := calctest.Laid(t, "demo")
	all := over.Through(s)
	for i := range s.Branches {
		of := over.WiresOf(s, i)
		if !slices.Equal(of, all[i]) || len(of) == 0 {
			t.Errorf("branch %d: %v and %v", i, of, all[i])
		}
		for k := range s.Wires {
			if slices.Contains(s.Wires[k].Path, i) != slices.Contains(of, k) {
				t.Errorf("wire %d in branch %d", k, i)
			}
		}
	}
}
