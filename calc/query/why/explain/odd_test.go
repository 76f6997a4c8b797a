package explain_test

import (
	"math"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/formula/plan"
	"contralay/calc/query/why"
	"contralay/calc/query/why/explain"
	"contralay/calc/query/why/shape"
	"contralay/model/catalogue"
)

// odd is a trunk of which much is given: a lay, where its sheath starts and stops, a reel, a shielded unit without a diameter, a splice
// whose part may carry 7 A, no boot at one end and one at the other, a cut step of nought.
const odd = `format = 1
[harness]
supply_v = 13.8
[rules]
cut_step_mm = 0.0
[[reel]]
spec = "AS22759/32"
size = "22"
over_mm = 1.12
[[termination]]
id = "A"
insert = "14-35"
boot = "boot-straight-14"
[[termination]]
id = "B"
[[breakout]]
id = "J"
[[splice]]
id = "S"
at = "J"
part = "own"
[[wire]]
id = "1"
from = "A:1"
to = "S"
spec = "AS22759/32"
size = "22"
amps = 2.0
[[wire]]
id = "2"
from = "S"
to = "B:2"
spec = "AS22759/32"
size = "22"
amps = 2.0
[[wire]]
id = "3"
from = "A:3"
to = "B:3"
spec = "AS22759/32"
size = "22"
[[wire]]
id = "4"
from = "A:4"
to = "B:4"
spec = "AS22759/32"
size = "22"
[[wire]]
id = "5"
from = "A:5"
to = "B:5"
spec = "AS22759/32"
size = "22"
amps = 1.0
[[unit]]
id = "C"
wires = ["3", "4"]
build = "pair"
shield = true
drain_from = "A:6"
drain_to = "cut"
[[branch]]
id = "T"
from = "A"
to = "J"
length_mm = 600.0
  [[branch.layer]]
  of = ["C"]
  [[branch.layer]]
  of = ["1", "5"]
  lay_mm = 70.0
  fillers = 5
  filler_mm = 1.12
  [[branch.cover]]
  what = "sheath"
  part = "AS23053/16 9.5"
  from_mm = 30.0
  to_mm = 500.0
[[branch]]
id = "L"
from = "J"
to = "B"
length_mm = 300.0
make = "twisted"
  [[branch.layer]]
  of = ["C", "2", "5"]
  lay_mm = 55.0
`

// Every figure of that loom comes to its value from its own inputs, and what is given in the file is told as given.
func TestEveryFigureOfAnOddLoom(t *testing.T) {
	own := &catalogue.Catalogue{Splices: map[string]catalogue.Splice{"own": {ID: "own", MaxA: 7, LengthMM: 20, OverMM: 4,
		Origin: catalogue.Origin{Source: "own", Standing: catalogue.House}}}}
	s := calc.Build(calctest.Parse(t, odd), catalogue.Merge(calctest.Catalogue(t), own), nil)
	e := explain.Of(s)
	met := map[string]string{}
	for _, f := range everyFigure(s) {
		w, ok := e.Why(f)
		if !ok {
			t.Errorf("%+v is not explained", f)
			continue
		}
		if got := w.Made(); math.Abs(got-w.Value) > 1e-4*math.Max(1, math.Abs(w.Value)) {
			t.Errorf("%s is %v, its explanation comes to %v from %+v", w.Name, w.Value, got, w.In)
		}
		met[strings.Join([]string{f.What, f.Of, f.Part}, " ")+"#"+string(rune('0'+f.K))] = w.Says
		brief, ok := explain.Brief(s, f)
		if !ok || brief.Value != w.Value || brief.Name != w.Name {
			t.Errorf("%+v in brief is %+v", f, brief)
		}
	}
	for key, want := range map[string]string{
		"layer.lay T #1": "It is set on the layer", "sheath.from T #0": "It is set in the file", "sheath.to T #0": "It is set in the file",
		"layer.lay L #0": "It is set on the layer",
	} {
		if met[key] != want {
			t.Errorf("%s: %q, want %q", key, met[key], want)
		}
	}
	limit := false
	for key, says := range met {
		limit = limit || strings.HasPrefix(key, "wire.limit 1 ") && says == "The catalogue allows this for the splice"
	}
	if !limit {
		t.Error("no limit of wire 1 is that of its splice")
	}
	// A unit of two wires of 1.12 mm, twice that and the braid 0.3 and the jacket 0.2 (design, 6.9, from memory): on each side they
	// stand on the wall as the design has them.
	w, ok := e.Why(why.Figure{What: "component.over", Part: "C"})
	if !ok || len(w.In) < 3 || w.Standing != catalogue.Memory {
		t.Errorf("%+v", w)
	}
}

// The diameter of a lay-up that is only planned, by hand: of one group its own; else the larger of the tape diameter below with twice
// what stands proud, 5.0 + 0.2, and the OD below, 5.1; and twice the thickest of 1.2 and a filler of 1.3: 5.2 + 2.6.
func TestPlannedDiameterIsExplained(t *testing.T) {
	group := plan.Plan{Over: 3.2, Layers: []plan.Layer{{Over: 3.2}}}
	if w, ok := shape.PlanOver(group, "OD so", catalogue.Published); !ok || w.Value != 3.2 || w.Made() != 3.2 ||
		w.Standing != catalogue.Published ||
		w.Name != "OD so" || w.Says != "The pieces lie as close together as they can" {
		t.Errorf("%+v %v", w, ok)
	}
	two := plan.Plan{Over: 7.8, Layers: []plan.Layer{{Over: 5.1, Tape: 5.0}, {Over: 7.8, Proud: 0.1, FillerMM: 1.3, Fillers: 1,
		Sizes: nil}}}
	two.Layers[1].Sizes = append(two.Layers[1].Sizes, 1.2, 2.0)
	two.Layers[1].N = []int{6, 0}
	w, ok := shape.PlanOver(two, "OD so", catalogue.Memory)
	if !ok || math.Abs(w.Made()-7.8) > 1e-9 || len(w.In) != 4 || w.In[3].Value != 1.3 || w.Standing != catalogue.Memory {
		t.Errorf("%+v %v", w, ok)
	}
	two.Layers[0].Over, two.Layers[1].FillerMM = 5.4, 0
	if w, _ := shape.PlanOver(two, "", catalogue.Memory); math.Abs(w.Made()-7.8) > 1e-9 || w.In[3].Value != 1.2 { // 5.4 + 2.4
		t.Errorf("%+v", w)
	}
	if _, ok := shape.PlanOver(plan.Plan{}, "", catalogue.House); ok {
		t.Error("a plan of nothing is explained")
	}
}
