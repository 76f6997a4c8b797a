package plan

import (
	"math"
	"testing"

	"contralay/model/unit"
)

// Only leaves no other centre, though a plan with another costs less: eight of a size lie built up, seven round one; so do
// nine of two sizes with several sizes in the centre. A built-up centre for seven is 1.336 diameters thick (reference, centres).
func TestOnlySomeCentres(t *testing.T) {
	rules := Rules{LayRatio: 12, LiftMax: 0.05, LiftTight: 0.08, GapInner: 0.10, GapOuter: 0.15, LumpyAt: 1.3, FillerWeight: 0.1,
		SpareGain: 0.15}
	built := Make(Ask{Sizes: []Size{{D: 1, N: 8}}, Rules: rules, Centres: BuiltCentres, Only: OnlyBuilt})
	if len(built) == 0 {
		t.Fatal("nothing is built up")
	}
	for _, p := range built {
		if to, _ := p.BuiltUp(); to == 0 {
			t.Errorf("a centre that is not built up: %+v", p.Layers[0])
		}
	}
	if p := built[0]; math.Abs(float64(p.Layers[0].CentreMM)-1.336) > 0.0006 || p.Layers[1].Count() != 7 {
		t.Errorf("built up to %v, %d round it", p.Layers[0].CentreMM, p.Layers[1].Count())
	}
	mixed := Make(Ask{Sizes: []Size{{D: 1, N: 8}, {D: 1.27, N: 4}}, Rules: rules, Centres: UnequalCentres, Only: OnlyUnequal})
	if len(mixed) == 0 {
		t.Fatal("no centre of several sizes")
	}
	for _, p := range mixed {
		if l := p.Layers[0]; len(l.Sizes) < 2 || l.Count() > 3 {
			t.Errorf("the centre holds %v of %v", l.N, l.Sizes)
		}
	}
	// What is locked there lies there, whatever is asked for.
	locked := Make(Ask{Sizes: []Size{{D: 1, N: 7}}, Rules: rules, Centres: BuiltCentres, Only: OnlyBuilt,
		Held: []Held{{At: 0, Sizes: []Size{{D: 1, N: 1}}, Locked: true}}})
	if len(locked) == 0 || locked[0].Layers[0].CentreMM != 0 || locked[0].Over < unit.Millimetre(2.9) {
		t.Errorf("locked: %+v", locked)
	}
}
