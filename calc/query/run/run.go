package run

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/phase/threading"
	"contralay/calc/phase/wires"
	"contralay/calc/query/lists"
	"contralay/calc/sheet"
	"contralay/model/unit"
)

// The run: a harness built step by step, one instruction at a time.

// StepKind is what is done at a step.
type StepKind int

// The kinds of step.
const (
	CutStep    StepKind = iota // a batch of wires off one reel
	MakeStep                   // a unit
	LayStep                    // one layer of a branch
	JoinStep                   // a splice
	ThreadStep                 // something over the tails
	HoldStep                   // work stops until it is signed
	PinStep                    // contacts of an end
	ShrinkStep                 // a tube, a boot, a transition
	GlueStep                   // a mix of adhesive
)

// RunStep is one instruction.
type RunStep struct {
	Key    string // the same as long as what it asks for is: a build remembers it as done
	Kind   StepKind
	Of     string          // branch, termination, breakout, unit, splice or reel
	Layer  int             // of a LayStep
	Cut    lists.CutRow    // of a CutStep
	Part   string          // of a ThreadStep or ShrinkStep
	What   string          // "sheath", "boot" …; of a HoldStep its name
	From   string          // the ends a ThreadStep comes on from
	Says   string          // of a HoldStep: what it holds
	CutMM  unit.Millimetre // of a ThreadStep: how long the piece is cut
	Joints []string        // of a GlueStep
	cut    []string        // marks of a CutStep
}

// Measured reports whether a step ends in a diameter that can be measured.
func (r RunStep) Measured() bool {
	return r.Kind == LayStep || r.Kind == ShrinkStep && r.What == "sheath"
}

// Hold points, in the order they are met.
const (
	HoldStops  = "hold stops" // only where the sheet says stop
	HoldBare   = "hold bare"
	HoldFit    = "hold fit"
	HoldPinned = "hold pinned"
	HoldLoaded = "hold loaded"
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
		{HoldBare, "ring out bare", "every net of the ring-out sheet, before anything goes over it for good"},
		{HoldFit, "trial fit", "on the car or the mock-up: lengths, clocks, room behind each connector; nothing is shrunk yet"},
		{HoldPinned, "ring out pinned", "every net again with contacts in, and isolation, before any adhesive"},
		{HoldLoaded, "loaded drop", "each load on, one after the other: the drop of its circuit against the sheet"},
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
func (r RunStep) In(done []string) bool {
	for _, m := range r.Marks() {
		if !slices.Contains(done, m) {
			return false
		}
	}
	return true
}

// StopsHold is the hold before a harness that the sheet says stop to; false where it does
// not.
func StopsHold(s *sheet.Sheet) (RunStep, bool) {
	n, first := 0, ""
	for _, g := range sheet.Worst(s.Snags) {
		if g.Level == sheet.Stop {
			if n++; n == 1 {
				first = g.Where + " " + g.Says
			}
		}
	}
	return RunStep{Key: HoldStops, Kind: HoldStep, Says: fmt.Sprintf("the sheet says stop %d times; the worst: %s", n, first)}, n > 0
}

// Run is every step of building a harness, in order: cut by batch, make up units, lay
// branch by branch from the end with the most wires outward, each layer by itself, splices
// where their branches meet; ring out bare; thread everything on; contacts; trial fit;
// shrink, ring out with contacts in; glue; loaded drop.
func Run(s *sheet.Sheet) []RunStep {
	var out []RunStep
	if h, stops := StopsHold(s); stops {
		out = append(out, h)
	}
	for _, c := range lists.CutList(s) {
		step := RunStep{Key: fmt.Sprintf("cut %s %s %s", c.Spec, c.Size, unit.Fixed(float64(c.CutMM), 0)), Kind: CutStep,
			Of: c.Spec + " " + c.Size, Cut: c}
		for _, k := range c.Wires {
			step.cut = append(step.cut, "cut "+s.H.Wires[k].ID)
		}
		out = append(out, step)
	}
	for i := range s.H.Units {
		out = append(out, RunStep{Key: "make " + s.H.Units[i].ID, Kind: MakeStep, Of: s.H.Units[i].ID})
	}
	joined := map[string]bool{}
	for _, k := range wires.Walked(s) {
		id := s.H.Branches[k.Branch].ID
		for l := range s.Branches[k.Branch].Layers {
			out = append(out, RunStep{Key: fmt.Sprintf("lay %s %d", id, l), Kind: LayStep, Of: id, Layer: l})
		}
		for i := range s.H.Splices {
			if sp := &s.H.Splices[i]; sp.At == k.To && !joined[sp.ID] {
				joined[sp.ID] = true
				out = append(out, RunStep{Key: "join " + sp.ID, Kind: JoinStep, Of: sp.ID})
			}
		}
	}
	holds := Holds()
	hold := func(n int) {
		out = append(out, RunStep{Key: holds[n].Key, Kind: HoldStep, What: holds[n].Name, Says: holds[n].Says})
	}
	hold(0)
	var pins, shrinks []RunStep
	threaded := map[string]int{}
	for _, t := range threading.Threading(s) {
		key := strings.Join([]string{t.What, t.Of, t.Part}, " ")
		threaded[key]++
		if n := threaded[key]; n > 1 {
			key += fmt.Sprint(" ", n)
		}
		if t.What == "contacts" {
			pins = append(pins, RunStep{Key: "pin " + t.Of, Kind: PinStep, Of: t.Of})
			continue
		}
		step := RunStep{Key: "thread " + key, Kind: ThreadStep, Of: t.Of, Part: t.Part, What: t.What, From: t.From, CutMM: PieceOf(s, t)}
		out = append(out, step)
		step.Key, step.Kind = "shrink "+key, ShrinkStep
		shrinks = append(shrinks, step)
	}
	out = append(out, pins...)
	hold(1)
	out = append(out, inShrinkOrder(shrinks)...)
	hold(2)
	for n, m := range threading.Mixes(s) {
		out = append(out, RunStep{Key: fmt.Sprintf("glue %d", n+1), Kind: GlueStep, Of: fmt.Sprint("mix ", n+1), Joints: m.Joints})
	}
	hold(3)
	return out
}

// PieceOf is how long a threaded tube is cut; 0 where it comes in its length.
func PieceOf(s *sheet.Sheet, t threading.Threaded) unit.Millimetre {
	i, ok := s.X.Branch[t.Of]
	if !ok {
		return 0
	}
	if b := &s.Branches[i]; b.Sheath.Part == t.Part && t.What == "sheath" {
		return b.Sheath.CutMM
	}
	for _, c := range s.Branches[i].Covers {
		if c.What == t.What && c.Part == t.Part {
			return c.CutMM
		}
	}
	return 0
}

// inShrinkOrder puts tubes before what comes over their ends: sheaths and sleeves, then
// transitions, boots, labels, each in the order they were threaded on.
func inShrinkOrder(all []RunStep) []RunStep {
	var out []RunStep
	for _, group := range [][]string{{"sheath", "sleeve"}, {"transition"}, {"boot"}, {"label"}} {
		for _, r := range all {
			for _, what := range group {
				if r.What == what {
					out = append(out, r)
				}
			}
		}
	}
	return out
}
