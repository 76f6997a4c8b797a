package why

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"contralay/calc"
	"contralay/calc/phase/wires"
	"contralay/calc/query/offer"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// Figure names one figure of a sheet. Which of the fields count depends on What;
// FigureNames lists them.
type Figure struct {
	What string // "layer.over", "tube.slide", "wire.cut" …
	Of   string // id of the branch, wire, unit or termination it is about
	K    int    // layer or option
	Part string // tube, component, or which piece
}

// Measure is what a value of an explanation measures, which says how it is shown.
type Measure int

// The measures.
const (
	Diameter Measure = iota // mm across
	Length                  // mm along
	Mass                    // g
	PerMetre                // g/m
	Volts
	Amperes
	Celsius
	OhmsPerKm
	WattsPerM
	Ohms
	Squares // mm²
	Seconds
	Withstands // A²s
	Times      // a pure number
	Percent    // a share
	Count
)

// Input is one value a figure is made from.
type Input struct {
	Name    string
	Value   float64
	Measure Measure
	From    *Figure // where it is worked out, or nil: given or looked up
	catalogue.Origin
}

// Why is how one figure was made: a formula in words and the inputs it takes.
type Why struct {
	Figure   Figure
	Name     string // "over of layer 2 of T1"
	Value    float64
	Measure  Measure
	Says     string // the formula in words
	In       []Input
	Standing catalogue.Standing // that of its weakest input
	Most     string             // what would change it most; "" where nothing stands out

	make func(in []float64) float64
}

// Made works the formula out on the inputs alone: it gives the figure, or the
// explanation is wrong.
func (w Why) Made() float64 {
	in := make([]float64, len(w.In))
	for k, i := range w.In {
		in[k] = i.Value
	}
	return w.make(in)
}

// Explain says how a figure of the sheet was made; false where the sheet has no
// such figure. It is worked out on demand and leaves the sheet as it is.
func Explain(s *sheet.Sheet, f Figure) (Why, bool) {
	e := Explainer{s, map[Figure]*Why{}}
	w, ok := e.Why(f)
	if !ok {
		return Why{}, false
	}
	w.Most = mostBy(s, f, w)
	return w, true
}

// LookedUp explains a figure that is only looked up.
func LookedUp(name string, v float64, m Measure, from catalogue.Origin) Why {
	return Stated(name, "as the catalogue has it", v, m, from)
}

// Stated explains a figure that says itself where it comes from.
func Stated(name, says string, v float64, m Measure, from catalogue.Origin) Why {
	return Why{Name: name, Value: v, Measure: m, Says: says, In: []Input{known(name, v, m, from)}, Standing: from.Standing, make: first0}
}

// Brief is Explain without Most, which takes a build for each thing it tries.
func Brief(s *sheet.Sheet, f Figure) (Why, bool) {
	return Explainer{s, map[Figure]*Why{}}.Why(f)
}

// Explainer keeps what is explained already: a cut length asks for the same layers
// over and over.
type Explainer struct {
	*sheet.Sheet
	Known map[Figure]*Why
}

// Why explains a figure, or takes the explanation that is known; false where there is none.
func (e Explainer) Why(f Figure) (Why, bool) {
	if w, ok := e.Known[f]; ok {
		if w == nil {
			return Why{}, false
		}
		return *w, true
	}
	e.Known[f] = nil
	how, ok := makers()[f.What]
	if !ok {
		return Why{}, false
	}
	w, ok := how(e, f)
	if !ok || w.make == nil || !unit.Finite(w.Value) {
		return Why{}, false
	}
	w.Figure, w.Standing = f, catalogue.House
	for k := range w.In {
		in := &w.In[k]
		if in.From != nil {
			if sub, ok := e.Why(*in.From); ok {
				in.Origin = catalogue.Origin{Source: "worked out", Standing: sub.Standing}
			} else {
				in.From = nil
			}
		}
		w.Standing = catalogue.Weakest(w.Standing, in.Standing)
	}
	e.Known[f] = &w
	return w, true
}

// makers is how each figure is explained, by its name.
func makers() map[string]func(Explainer, Figure) (Why, bool) {
	return map[string]func(Explainer, Figure) (Why, bool){
		"branch.over": Explainer.branchOver, "branch.floor": Explainer.branchFloor, "loop.length": Explainer.loopOf,
		"loop.room": Explainer.loopOf, "loop.bow": Explainer.loopOf, "loop.turn": Explainer.loopOf, "loop.longest": Explainer.loopOf,
		"cover.over": Explainer.coverOver, "cover.slide": Explainer.coverOver, "cover.cut": Explainer.coverOver,
		"cover.least": Explainer.coverOver, "cover.grip": Explainer.coverOver, "branch.least": Explainer.branchBand,
		"branch.most": Explainer.branchBand,
		"branch.tape": Explainer.branchTape, "branch.tapeleast": Explainer.branchBand, "branch.laid": Explainer.branchLaid,
		"branch.mass": Explainer.branchMass, "branch.bend": Explainer.branchBend, "branch.wire": Explainer.branchWire,
		"branch.room": Explainer.branchRoom, "branch.length": Explainer.branchLength,
		"layer.over": Explainer.layerOver, "layer.stand": Explainer.layerStand, "layer.tape": Explainer.layerTape,
		"layer.proud": Explainer.layerProud, "layer.lay": Explainer.layerLay, "layer.turns": Explainer.layerTurns,
		"layer.takes": Explainer.layerTakes, "layer.room": Explainer.layerRoom, "layer.gap": Explainer.layerGap,
		"layer.bent": Explainer.layerBent, "layer.flat": Explainer.layerBent, "layer.filler": Explainer.layerFiller,
		"component.over": Explainer.componentOver, "component.loss": Explainer.componentLoss, "component.run": Explainer.componentRun,
		"tube.slide": Explainer.tubeSlide, "tube.worst": Explainer.tubeSlide, "tube.grip": Explainer.tubeGrip,
		"tube.over": Explainer.tubeOver, "tube.wall": Explainer.tubeWall, "tube.mass": Explainer.tubeMass, "tube.cut": Explainer.tubeCut,
		"tube.room": Explainer.tubeRoom, "tube.full": Explainer.tubeFull,
		"sheath.pass": Explainer.sheathPass, "sheath.passmost": Explainer.sheathPass, "sheath.from": Explainer.sheathEnd,
		"sheath.to":  Explainer.sheathEnd,
		"boot.least": Explainer.bootCable, "boot.most": Explainer.bootCable,
		"wire.cut": Explainer.wireCut, "wire.finished": Explainer.wireFinished, "wire.drop": Explainer.wireDrop,
		"wire.circuit": Explainer.wireCircuit,
		"wire.bound":   Explainer.wireBound, "wire.limit": Explainer.wireLimit, "wire.hottest": Explainer.wireHottest,
		"branch.hottest": Explainer.branchHottest,
		"conductor.hot":  Explainer.conductorHot, "branch.shell": Explainer.branchShell, "branch.under": Explainer.branchUnder,
		"branch.surface": Explainer.branchSurface,
		"wire.heats":     Explainer.wireHeats, "wire.lost": Explainer.wireLost,
		"feed.load": Explainer.feedLoad, "feed.most": Explainer.feedMost, "feed.opens": Explainer.feedOpens,
		"short.far": Explainer.shortFar, "short.lets": Explainer.shortLets, "short.bears": Explainer.shortBears,
		"unit.ohm": Explainer.unitOhm, "unit.loop": Explainer.unitLoop, "unit.bus": Explainer.unitBus, "unit.stub": Explainer.unitBus,
		"unit.stubs": Explainer.unitBus,
		"reel.need":  Explainer.reelNeed, "wire.takeup": Explainer.wireTakeUp, "wire.flat": Explainer.wireTakeUp,
		"loom.wire": Explainer.loomWire, "loom.mass": Explainer.loomMass,
		"option.over": Explainer.optionOver, "wish.leavers": Explainer.wish, "wish.units": Explainer.wish,
		"wish.apart": Explainer.wishApart,
	}
}

// FigureNames is every What that Explain knows, sorted.
func FigureNames() []string {
	var out []string
	for n := range makers() {
		out = append(out, n)
	}
	slices.Sort(out)
	return out
}

// given is an input that stands in the harness's file.
func given(name string, v float64, m Measure) Input {
	return Input{Name: name, Value: v, Measure: m, Origin: catalogue.Origin{Source: "given in the file", Standing: catalogue.House}}
}

// shop is an input that is a rule: the shop's own where the file gives it.
func shop(name string, v float64, m Measure, own bool) Input {
	if own {
		return Input{Name: name, Value: v, Measure: m, Origin: catalogue.Origin{Source: "rule of this shop", Standing: catalogue.House}}
	}
	return Input{Name: name, Value: v, Measure: m, Origin: catalogue.Origin{Source: "rule, common practice", Standing: catalogue.Practice}}
}

// known is an input out of the catalogue, or otherwise looked up.
func known(name string, v float64, m Measure, from catalogue.Origin) Input {
	return Input{Name: name, Value: v, Measure: m, Origin: from}
}

// exact is an input that geometry or a definition gives.
func exact(name string, v float64, m Measure) Input {
	return Input{Name: name, Value: v, Measure: m, Origin: catalogue.Origin{Source: "geometry", Standing: catalogue.Published}}
}

// from is an input that is a figure of its own.
func (e Explainer) from(name string, f Figure) Input {
	w, ok := e.Why(f)
	if !ok {
		return Input{Name: name, Origin: catalogue.Origin{Source: "not known", Standing: catalogue.Memory}}
	}
	return Input{Name: name, Value: w.Value, Measure: w.Measure, From: &f}
}

// branchAt is a branch by its id.
func (e Explainer) branchAt(id string) (int, *model.Branch, *sheet.Branch, bool) {
	i := slices.IndexFunc(e.H.Branches, func(b model.Branch) bool { return b.ID == id })
	if i < 0 {
		return 0, nil, nil, false
	}
	return i, &e.H.Branches[i], &e.Branches[i], true
}

// layerAt is a layer of a branch as it lies.
func (e Explainer) layerAt(f Figure) (int, *sheet.Branch, *sheet.Layer, bool) {
	i, _, b, ok := e.branchAt(f.Of)
	if !ok || f.K < 0 || f.K >= len(b.Layers) {
		return 0, nil, nil, false
	}
	return i, b, &b.Layers[f.K], true
}

func sum(in []float64) float64 {
	t := 0.0
	for _, v := range in {
		t += v
	}
	return t
}

func first0(in []float64) float64 { return in[0] }

// runsThrough is the branches that can have a say in a figure.
func runsThrough(s *sheet.Sheet, f Figure) map[int]bool {
	runs := map[int]bool{}
	if i, ok := s.X.Branch[f.Of]; ok {
		runs[i] = true
		return runs
	}
	id := cmp.Or(f.Of, f.Part)
	if k, ok := s.X.Wire[id]; ok {
		for _, b := range s.Wires[k].Path {
			runs[b] = true
		}
		return runs
	}
	for i := range s.Branches {
		runs[i] = true
	}
	return runs
}

// lever is an input from outside, made larger.
type lever struct {
	name string
	h    *model.Harness
	cat  *catalogue.Catalogue
}

// thicker makes a size of wire thicker where it was measured, else in the catalogue,
// so that its band stays what it is.
func thicker(s *sheet.Sheet, h *model.Harness, w *model.Wire, d unit.Millimetre) lever {
	name := "the diameter of " + w.Spec + " " + w.Size
	e, ok := s.Cat.Wire(w.Spec, w.Size)
	if _, measured := wires.Reel(s, w.Spec, w.Size); measured || !ok {
		return lever{name, h.SetReel(w.Spec, w.Size, d), s.Cat}
	}
	e.OverMM = d
	return lever{name, h, catalogue.Merge(s.Cat, &catalogue.Catalogue{Wires: map[catalogue.WireKey]catalogue.Wire{e.Key(): e}})}
}

// mostBy tries which input from outside moves a figure most: each is made 1 %
// larger in turn and the sheet built anew.
func mostBy(s *sheet.Sheet, f Figure, was Why) string {
	h := offer.AsLaid(s) // so that nothing is planned anew
	const more = 1.01
	var levers []lever
	runs := runsThrough(s, f)
	seen := map[string]bool{}
	for k := range h.Wires {
		w, d := &h.Wires[k], s.Wires[k].Dia.Nominal
		name := w.Spec + " " + w.Size
		if !slices.ContainsFunc(s.Wires[k].Path, func(b int) bool { return runs[b] }) {
			continue
		}
		if d > 0 && !seen[name] {
			levers = append(levers, thicker(s, h, w, d*more))
		}
		seen[name] = true
	}
	ratio := *h
	ratio.Rules.LayRatio = model.Some(s.Limits.LayRatio * more)
	levers = append(levers, lever{"the lay ratio", &ratio, s.Cat})
	for i := range h.Branches {
		if !runs[i] {
			continue
		}
		l := h.Branches[i].LengthMM * more
		levers = append(levers, lever{"the length of " + h.Branches[i].ID, h.EditBranch(i, func(b *model.Branch) { b.LengthMM = l }),
			s.Cat})
	}
	if f.What == "wire.drop" || f.What == "wire.circuit" || f.What == "wire.hottest" {
		k := s.X.Wire[f.Of]
		levers = append(levers, lever{"its current", h.EditWire(k, func(w *model.Wire) { w.Amps.V *= more }), s.Cat})
	}
	best, by := "", 0.0
	for _, l := range levers {
		t := calc.Build(l.h, l.cat, s)
		e := Explainer{t, map[Figure]*Why{}}
		if w, ok := e.Why(f); ok {
			if d := w.Value - was.Value; math.Abs(d) > math.Abs(by)+1e-12 {
				best, by = l.name, d
			}
		}
	}
	if best == "" || was.Value == 0 {
		return ""
	}
	share := 100 * by / math.Abs(was.Value)
	if math.Abs(share) < 0.05 {
		return ""
	}
	return fmt.Sprintf("%s: 1 %% more of it makes this %s %% %s", best, unit.Fixed(math.Abs(share), 1),
		map[bool]string{true: "more", false: "less"}[by > 0])
}
