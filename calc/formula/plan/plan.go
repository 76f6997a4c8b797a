package plan

import "contralay/model/unit"

// Size is how many components of one diameter there are. Leaves says how far they
// run: of two components the one that leaves first has the smaller number. It
// counts only where Ask.InOrder is set.
type Size struct {
	D      unit.Millimetre
	N      int
	Leaves int
}

// Centres says which centres the planner may use.
type Centres int

// The kinds of centre; each allows those before it, too.
const (
	EqualCentres   Centres = iota // one; two to five equal
	UnequalCentres                // two or three unequal in contact as well
	BuiltCentres                  // a single taped or sleeved up for 7 or 8 round it as well
)

// Only leaves none but centres of one kind.
type Only int

// What Only leaves.
const (
	AnyCentre   Only = iota // whatever Centres allows
	OnlyUnequal             // two or three that are not of one size
	OnlyBuilt               // a single built up
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

// Held is what the builder holds of one layer.
type Held struct {
	At     int    // which layer; 0 is the centre
	Sizes  []Size // of what is laid, these lie in it, whatever else does
	Locked bool   // nothing else may; its fillers and its fit are as they are

	Fillers   int             // of a locked layer
	FillerMM  unit.Millimetre // 0: its smallest size
	Lay, Bind unit.Millimetre // lay length and binder where they are fixed; else 0
}

// Ask is one planning question.
type Ask struct {
	Sizes   []Size          // any order; equal diameters are added together
	Spares  int             // up to this many spares may be added
	SpareD  unit.Millimetre // of this size, one of Sizes; 0: the commonest, of two the smaller
	InOrder bool            // whatever leaves first has nothing outside it that leaves later
	Held    []Held          // at most one for each layer
	Layers  int             // 0: any; else a plan has this many layers or an even number more or fewer, so that no hand turns
	CentreN int             // 0: any; else so many components lie in the centre
	Round   int             // 0: any; else a plan has so many layers round its centre
	Rules   Rules
	Centres Centres
	Only    Only
	Effort  int // layers the search may try; 0: AtOnce
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
	Proven  bool       // of the first plan: no plan costs less; of the others: no other plan was left out
	Least   unit.Ratio // no plan of the question costs less, as far as is known
	Fillers int        // the rod of five and a built-up centre count one each
	Spares  int
	Over    unit.Millimetre
	Lumpy   int
	Layers  []Layer
	Relaxed Relaxed
}

// BuiltUp is what the centre of a plan is built up to, and what the tape adds to it; 0 where it
// is not built up.
func (p Plan) BuiltUp() (to, by unit.Millimetre) {
	if len(p.Layers) == 0 || p.Layers[0].CentreMM <= 0 || len(p.Layers[0].Sizes) == 0 {
		return 0, 0
	}
	return p.Layers[0].CentreMM, p.Layers[0].CentreMM - p.Layers[0].Sizes[0]
}

// Rods is how many fillers lie in a plan: a centre that is built up takes tape, which Fillers
// counts and which is none.
func (p Plan) Rods() int {
	if to, _ := p.BuiltUp(); to > 0 {
		return p.Fillers - 1
	}
	return p.Fillers
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

// AtOnce is the effort of an answer at once: layers tried on a bed, of which laying one counts laidEffort. What
// an effort finds is the same on every machine. Measured: 40 to 45 ms for 130 of five sizes.
const AtOnce = 340_000
