package run

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"contralay/calc/phase/built"
	"contralay/calc/phase/threading"
	"contralay/calc/query/lists"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// The run: a harness built step by step, one instruction at a time.

// StepKind is what is done at a step.
type StepKind int

// The kinds of step.
const (
	CutStep     StepKind = iota // a batch of wires off one reel
	MakeStep                    // a unit
	LayStep                     // one layer of a branch
	BuildUpStep                 // tape round a centre, until the layer round it closes
	JoinStep                    // a splice
	ThreadStep                  // something over the tails
	HoldStep                    // work stops until it is signed
	PinStep                     // contacts of an end
	WindStep                    // a cover that is wound on where it lies
	ShrinkStep                  // a tube, a boot, a transition
	GlueStep                    // a mix of adhesive
	LotStep                     // the label of a reel, before the first wire off it
	WeighStep                   // the finished harness, on the scale
	PullStep                    // samples of a crimp, before the first real one
)

// RunStep is one instruction.
type RunStep struct {
	Key    string // the same as long as what it asks for is: a build remembers it as done
	Kind   StepKind
	Of     string             // branch, termination, breakout, unit, splice or reel
	Layer  int                // of a LayStep or a BuildUpStep
	Bare   bool               // of a LayStep: its layer is built up after it
	Cut    lists.CutRow       // of a CutStep
	Crimp  lists.CrimpRow     // of a PullStep
	Put    threading.Threaded // of a ThreadStep, WindStep or ShrinkStep: the part
	Name   string             // of a HoldStep
	Says   string             // of a HoldStep: what it holds
	Joints []string           // of a GlueStep
	cut    []string           // marks of a CutStep
}

// Hold points, in the order they are met.
const (
	HoldStops  = built.HoldStops // only where the sheet says stop
	HoldBare   = built.HoldBare
	HoldPinned = built.HoldPinned
	HoldFit    = built.HoldFit
	HoldLoaded = built.HoldLoaded
)

// Hold is a point where work stops until somebody has signed.
type Hold struct {
	Key  string
	Name string // in two or three words
	Says string // what passes it
}

// Holds are those of every build, in the order they are met. Common practice, no source.
func Holds() []Hold {
	return []Hold{
		{HoldBare, "ring out bare", "ring out every net of the ring-out sheet before anything covers the wires for good"},
		{HoldPinned, "ring out pinned",
			"ring out every net again with contacts in, and test isolation, before any tube, boot or transition is shrunk"},
		{HoldFit, "trial fit", "check on the car or the mock-up: lengths, clocks, room behind each connector; shrink nothing before that"},
		{HoldLoaded, "loaded drop",
			"switch on all the loads of a feed, one feed after the other, and compare the drop of its circuit with the sheet"},
	}
}

// Marks are what a build remembers of a step that is done: its key, and of a batch that is
// cut each wire, for a batch is another one when a length changes and what is cut is cut.
func (r RunStep) Marks() []string {
	if r.Kind != CutStep {
		return []string{r.Key}
	}
	return r.cut
}

// In reports whether a step is done, by what a build remembers.
func (r RunStep) In(b *model.Build) bool {
	for _, m := range r.Marks() {
		if !b.Did(m) {
			return false
		}
	}
	return true
}

// stopsHold is the hold before a harness that the sheet says stop to; false where it does
// not.
func stopsHold(s *sheet.Sheet) (RunStep, bool) {
	n, first := 0, ""
	for _, g := range sheet.Worst(s.Snags) {
		if g.Level == sheet.Stop {
			if n++; n == 1 {
				first = g.Where + ": " + g.Says
			}
		}
	}
	return RunStep{Key: HoldStops, Kind: HoldStep, Says: fmt.Sprintf("the sheet has %s; the worst: %s", stops(n), first)}, n > 0
}

// stops counts stops in words.
func stops(n int) string {
	if n == 1 {
		return "1 stop"
	}
	return fmt.Sprint(n, " stops")
}

// Run is every step of building a harness, in order: cut by batch, make up units, lay
// branch by branch from the end with the most wires outward, each layer by itself and a centre
// that is built up before the layer round it, a splice inside a run before the layer it lies
// in, the others where their branches meet; ring out bare; thread everything on; contacts;
// ring out with contacts in, while a swapped pin can still be mended; trial fit; shrink;
// glue; weigh; loaded drop, for which it is on the car.
func Run(s *sheet.Sheet) []RunStep {
	var out []RunStep
	if h, stops := stopsHold(s); stops {
		out = append(out, h)
	}
	for _, c := range lists.CutList(s) {
		if reel := c.Spec + " " + c.Size; !slices.ContainsFunc(out, func(r RunStep) bool { return r.Kind == LotStep && r.Of == reel }) {
			out = append(out, RunStep{Key: "lot " + reel, Kind: LotStep, Of: reel})
		}
		step := RunStep{Key: fmt.Sprintf("cut %s %s %s", c.Spec, c.Size, unit.Fixed(c.CutMM, 0)), Kind: CutStep,
			Of: c.Spec + " " + c.Size, Cut: c}
		for _, k := range c.Wires {
			step.cut = append(step.cut, "cut "+s.H.Wires[k].ID)
		}
		out = append(out, step)
	}
	for i := range s.H.Units {
		out = append(out, RunStep{Key: "make " + s.H.Units[i].ID, Kind: MakeStep, Of: s.H.Units[i].ID})
	}
	out = append(out, layAndJoin(s)...)
	holds := Holds()
	hold := func(n int) {
		out = append(out, RunStep{Key: holds[n].Key, Kind: HoldStep, Name: holds[n].Name, Says: holds[n].Says})
	}
	hold(0)
	var pins, shrinks []RunStep
	threaded := threading.Threading(s)
	keys := threading.Keys(threaded)
	for k, t := range threaded {
		key, step := keys[k], RunStep{Of: t.Of, Put: t}
		switch {
		case t.What == sheet.PartContacts:
			pins = append(pins, RunStep{Key: "pin " + t.Of, Kind: PinStep, Of: t.Of})
		case t.GoesOn == model.WoundOn:
			step.Key, step.Kind = "wind "+key, WindStep
			if t.Outside { // once what it lies on is shrunk
				shrinks = append(shrinks, step)
			} else {
				out = append(out, step)
			}
		default:
			step.Key, step.Kind = "thread "+key, ThreadStep
			out = append(out, step)
			if t.GoesOn == model.ShrunkOn {
				step.Key, step.Kind = "shrink "+key, ShrinkStep
				shrinks = append(shrinks, step)
			}
		}
	}
	if len(pins) > 0 {
		out = append(out, pulls(s)...)
	}
	out = append(out, pins...)
	hold(1)
	hold(2)
	out = append(out, inShrinkOrder(shrinks)...)
	for n, m := range threading.Mixes(s) {
		out = append(out, RunStep{Key: fmt.Sprintf("glue %d", n+1), Kind: GlueStep, Of: fmt.Sprint("mix ", n+1), Joints: m.Joints})
	}
	if len(s.H.Wires) > 0 {
		out = append(out, RunStep{Key: built.Weigh, Kind: WeighStep})
	}
	hold(3)
	return out
}

// pulls are the crimps of which samples are pulled.
func pulls(s *sheet.Sheet) []RunStep {
	var out []RunStep
	met := map[string]int{}
	for _, c := range lists.CrimpList(s) {
		of := strings.TrimSpace(fmt.Sprintf("%s %s in size %s %s", c.Spec, c.Size, c.Contact, c.Part))
		if met[of]++; met[of] > 1 {
			of += fmt.Sprintf(" (%d)", met[of])
		}
		out = append(out, RunStep{Key: "pull " + of, Kind: PullStep, Of: of, Crimp: c})
	}
	return out
}

// For is the run of a build: one that was begun before runs asked for lots and tests is not asked, nor
// is one weighed that was signed on the car before runs asked for its mass.
func For(s *sheet.Sheet, b *model.Build) []RunStep {
	weighed := b.EachTest.V && (!b.Did(HoldLoaded) ||
		slices.ContainsFunc(b.Steps, func(t model.Ticked) bool { return t.Key == built.Weigh })) // taken back, it is weighed again
	return slices.DeleteFunc(Run(s), func(r RunStep) bool {
		return !b.EachTest.V && (r.Kind == LotStep || r.Kind == PullStep) || !weighed && r.Kind == WeighStep
	})
}

// inShrinkOrder puts covers before what comes over their ends: then transitions, boots,
// labels, each in the order they were threaded on. Nothing is left out.
func inShrinkOrder(all []RunStep) []RunStep {
	late := map[sheet.PartKind]int{sheet.PartTransition: 1, sheet.PartBoot: 2, sheet.PartLabel: 3}
	slices.SortStableFunc(all, func(a, b RunStep) int { return cmp.Compare(late[a.Put.What], late[b.Put.What]) })
	return all
}

// Ticks is the record of a step that is done now: what each of its marks made, as the sheet
// has it. at is the day and time, by the person; "" where that is not known.
func (r RunStep) Ticks(facts []built.Fact, at, by string) []model.Ticked {
	var out []model.Ticked
	for _, mark := range r.Marks() {
		t := model.Ticked{Key: mark}
		k := slices.IndexFunc(facts, func(f built.Fact) bool { return f.Key == mark })
		if k >= 0 && (facts[k].Kind != built.Hold || len(facts[k].What.Members) > 0) { // most holds make nothing
			t.What = model.Some(facts[k].What)
		}
		if at != "" {
			t.At = model.Some(at)
		}
		if by != "" {
			t.By = model.Some(by)
		}
		out = append(out, t)
	}
	return out
}

// Place is the wire, the layer or the part that a mark of a step is about, as a person says it.
func (r RunStep) Place(facts []built.Fact, mark string) string {
	if r.Kind == HoldStep && r.Name != "" {
		return r.Name
	}
	for _, f := range facts {
		if f.Key == mark {
			return f.At
		}
	}
	return mark
}
