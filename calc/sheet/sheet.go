package sheet

import (
	"contralay/calc/formula/cover"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// Sheet is everything derived from one harness. Slices stand index by index
// beside those of the harness.
type Sheet struct {
	H        *model.Harness
	Index    *model.Index
	Cat      *catalogue.Catalogue
	Limits   model.Limits
	Wires    []Wire
	Units    []Unit
	Feeds    []Feed
	Splices  []Splice
	Branches []Branch
	Terms    []Term
	Totals   Totals
	Snags    []Snag
	Unrated  bool // no electrical figures at all: see duties

	Reuse      Reuse
	Base       *catalogue.Catalogue // Cat without what was read off parts
	Back       map[int][]int        // return → the wires that name it, in file order
	LaidBy     map[string]Proposal  // Proposals as Build had them; Adopt may put others there since
	SaidTerm   []Snag               // of terminations
	SaidJoin   []Snag               // of splices
	SaidListed []Snag               // of the independent list

	// Proposals are lay-ups worked out beside the sheet, by PlanKey. The map is
	// only read; Adopt makes a new one.
	Proposals map[string]Proposal
}

// Dia is a diameter in mm with its band and how far it can be trusted; 0 is not known.
type Dia struct {
	Nominal, Min, Max unit.Millimetre
	catalogue.Origin
}

// Known reports whether there is a diameter at all.
func (d Dia) Known() bool { return d.Nominal > 0 }

// Wire is what is worked out of a wire of the harness, by its index there: lengths in mm, volts,
// amperes. A wire that is not in the catalogue, or has no way, has the zero value in what hangs
// on that.
type Wire struct {
	Dia      Dia
	Entry    catalogue.Wire // as the catalogue has it; zero where it lacks it
	Known    bool           // the catalogue has the specification and size
	Path     []int          // branches, from its From to its To
	HasPath  bool
	GramPerM unit.GramPerMetre
	Cut      unit.Millimetre      // 0 where there is no path
	Finished unit.Millimetre      // loops in, tails out
	Drop     model.Opt[unit.Volt] // along itself, at its current; unset where a length, a resistance or the current is not known
	Circuit  unit.Volt            // drop with its return, its own where there is none; 0 where Drop is unset

	Heats      unit.Ampere             // what it carries as heat sees it: r.m.s.
	Guard      model.Opt[Guard]        // what protects it
	PulseBurns bool                    // a pulse is more than it bears
	FeedBurns  bool                    // what its device lets through is more than it bears
	Bound      model.Opt[Limit]        // what bounds its current
	BoundAt    int                     // which of LimitsOf that is
	HottestC   model.Opt[unit.Celsius] // of its conductor, anywhere along its way, at the currents entered
	HottestIn  string                  // the branch where that is
	Limits     []Limit
}

// Unit is what is worked out of wires that are made up first and laid as one: lengths in mm. Its
// Loss is 1 where its wires run straight in it.
type Unit struct {
	Dia     Dia
	BareMM  unit.Millimetre
	LayMM   unit.Millimetre
	Loss    unit.Ratio // of its wires against the unit
	Pair    Pair
	Path    []int
	HasPath bool
}

// Member is one thing in a layer, at its place seen from the branch's from end.
type Member struct {
	ID     string // wire or unit id; "filler"
	Kind   Kind
	D      unit.Millimetre
	X, Y   unit.Millimetre // from the axis; seen from the from end, clockwise from the top
	Loss   unit.Ratio      // wire length ÷ bundle length in this branch
	Leaves int             // branches it still runs through beyond to
}

// Kind is what a member is.
type Kind int

// The kinds of member.
const (
	OfWire Kind = iota
	OfUnit
	OfSpare
	OfFiller
)

// Layer is one ring of a branch as it is laid; index 0 is the centre.
type Layer struct {
	Members  []Member // clockwise as they lie, seen from the from end; one in the very middle first
	Fillers  int
	FillerMM unit.Millimetre
	Spares   int
	Takes    int // layer > 0 only
	Room     int // layer > 0 only
	Gap      unit.Ratio
	BedMM    unit.Millimetre
	OverMM   unit.Millimetre
	TapeMM   unit.Millimetre
	BuiltMM  unit.Millimetre // what tape adds to a centre that is built up until the layer round it closes; 0: it is not
	BuiltOf  string          // that tape; "" is not said
	LayMM    unit.Millimetre // 0: straight
	Turns    unit.Ratio
	LayDeg   unit.Degree
	Hand     model.Hand
	Loss     unit.Ratio
	Lift     unit.Ratio
	ProudMM  unit.Millimetre
	Tracer   string          // id of the tracer, which lies first; "" where there is none
	BentMM   unit.Millimetre // how far its wires differ in length in the branch's tightest bend
	FlatMM   unit.Millimetre // and would if they ran straight
	Beside   int             // places where trigger or data lies beside power
	ZigZag   bool            // laid in zig-zag where the order of leaving would not close
	Closes   bool
}

// Branch is what is worked out of a branch: what it is laid as, its diameters in mm, and what
// goes over it. A branch that waits for a proposal, or holds what has no diameter, has no layers
// and 0 for its diameters.
type Branch struct {
	Make       model.Make
	Proposed   bool // the file does not lay it
	Waiting    bool // no proposal has been worked out yet
	Components []string
	As         []model.Layer // what it is laid as: the file's layers, or the proposal's
	Layers     []Layer
	OverMM     unit.Millimetre
	OverMinMM  unit.Millimetre
	OverMaxMM  unit.Millimetre
	TapeMM     unit.Millimetre
	TapeMinMM  unit.Millimetre
	Gram       model.Opt[unit.Gram] // unset where a member's mass is not known
	LaidMM     unit.Millimetre
	Standing   catalogue.Standing
	Buried     int // early leavers with a later one further out
	Bend       Bend
	Sheath     Sheath
	Covers     []Covered         // beside the sheath, inside out
	Outlets    [2]model.Opt[int] // which outlet of the transition it goes into at its from and at its to end; 0 is the trunk's
	Ambient    unit.Celsius
	Warm       Warm
	Learned    Learned        // what the shop has measured of such bundles; zero where it has nothing
	Predicted  Predicted      // the diameters before that
	Key        string         // everything the bundle is computed from
	Rank       map[string]int // branches each component still runs through beyond to
	PlanKey    string
	Said       []Snag // of its lay-up
	SaidOver   []Snag // of what goes over it
}

// Bend is what a branch can be bent to: the least radius inside, in mm, and the rule it comes
// from. The zero value is a branch that is not laid.
type Bend struct {
	MinMM      unit.Millimetre
	Rule       string
	MismatchMM model.Opt[unit.Millimetre] // how far the wires of a layer differ in length in it, at most
}

// Sheath is the tube over a branch, as named or as proposed, with where it starts and stops in mm
// from the datum. The zero value is a branch without one.
type Sheath struct {
	Part          string // "" where none holds or there is no bundle
	Proposed      bool
	Tube          model.Opt[catalogue.Tube] // unset where the catalogue lacks Part
	Verdict       cover.Verdict
	FromMM        unit.Millimetre // from the datum of the from end
	ToMM          unit.Millimetre
	CutMM         unit.Millimetre
	BeneathMM     unit.Millimetre // what covers beneath it add to the diameter, at most
	BeneathMinMM  unit.Millimetre // and over half of its length at least
	PassMM        unit.Millimetre // the largest thing it must pass
	PassAt        string          // where that is
	PassStationMM unit.Millimetre // of a splice, where it is one; else 0
	Gram          unit.Gram
	Others        []Choice // ranked, best first, the one in use among them
	KindAll       bool     // some tube of the kind keeps all three advices
	Pass          Passing
}

// Choice is one tube that could be the sheath, with how it passes and grips, its cut length in
// mm and its mass; both are 0 where they are not known.
type Choice struct {
	Tube    catalogue.Tube
	Verdict cover.Verdict
	CutMM   unit.Millimetre
	Gram    unit.Gram
	Level   cover.Level
}

// Term is what is worked out of a termination: its cavities and how many of them are what.
type Term struct {
	Cavities    []string
	State       map[string]Cavity
	Used        int
	Spare       int
	Reserved    int
	Blank       int
	Contacts    int
	SealPlugs   int
	Stubs       int  // stubs of wire in unwired cavities, in a firewall
	HasContacts bool // contact sizes are known
	Sealed      bool
	Free        []string // neither wired nor reserved
}

// Cavity is what one cavity of a termination holds; the zero value is an empty one.
type Cavity struct {
	Wires []string
	Drain string // unit whose drain ends here; "" none
	Size  string // contact size; "" not known
}

// Totals are the sums of the sheet: counts, mm of wire, grams.
type Totals struct {
	Wires, Units, Spares, Fillers int
	WireMM                        unit.Millimetre      // Σ cut lengths
	Gram                          model.Opt[unit.Gram] // Σ of the branches; unset where one of them is
}
