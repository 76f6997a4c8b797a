package plan

import "contralay/model/unit"

// Size is how many components of one diameter there are.
type Size struct {
	D unit.Millimetre
	N int
}

// Centres says which centres the planner may use.
type Centres int

// The kinds of centre; each allows those before it, too.
const (
	EqualCentres   Centres = iota // one; two to five equal
	UnequalCentres                // two or three unequal in contact as well
	BuiltCentres                  // a single taped or sleeved up for 7 or 8 round it as well
)

// Rules are the limits a plan keeps and the weights of its cost.
type Rules struct {
	LayRatio           unit.Ratio
	LiftMax, LiftTight unit.Ratio
	GapInner, GapOuter unit.Ratio
	LumpyAt            unit.Ratio
	FillerWeight       unit.Ratio
	SpareGain          unit.Ratio
}

// Ask is one planning question.
type Ask struct {
	Sizes   []Size // any order; equal diameters are added together
	Spares  int    // up to this many spares of the commonest size may be added
	Rules   Rules
	Centres Centres
	Effort  int // fits the search may try; 0: DefaultEffort
}

// Relaxed says which limits a plan had to leave.
type Relaxed int

// What was given up, in that order.
const (
	Keeps   Relaxed = iota // every limit
	Gaps                   // gap limits, so no filler was added
	GapLift                // gap limits, and lift up to the tight limit
	Nothing                // no limit could be kept
)

// Plan is one lay-up: Layers[0] is the centre.
type Plan struct {
	Cost    unit.Ratio
	Proven  bool // the search left nothing out
	Fillers int  // the rod of five and a built-up centre count one each
	Spares  int
	Over    unit.Millimetre
	Lumpy   int
	Layers  []Layer
	Relaxed Relaxed
}

// Layer is one ring of a plan. N counts per size of Sizes, spares included and
// fillers not.
type Layer struct {
	Sizes    []unit.Millimetre // thin to thick, only those it holds
	N        []int
	Fillers  int
	FillerMM unit.Millimetre
	Spares   int
	Takes    int
	Room     int
	Gap      unit.Ratio
	Over     unit.Millimetre
	Tape     unit.Millimetre
	Proud    unit.Millimetre
	CentreMM unit.Millimetre // a built-up centre: what it is built up to; else 0
}

// Count is how many components the layer holds, fillers not counted.
func (l Layer) Count() int {
	n := 0
	for _, k := range l.N {
		n += k
	}
	return n
}

// DefaultEffort is how many fits are tried before a search settles for what it
// has: about a second of one core.
const DefaultEffort = 8_000_000
