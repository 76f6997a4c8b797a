package catalogue

import "contralay/model/unit"

// Standing says how far a value can be trusted, best first.
type Standing string

// The four standings. House is measured in this shop, published was read in the
// named document, practice is common practice without a source, memory was
// recalled from the named document and not verified.
const (
	House     Standing = "house"
	Published Standing = "published"
	Practice  Standing = "practice"
	Memory    Standing = "memory"
)

// Rank orders standings: 0 is the best. An unknown word ranks last.
func (s Standing) Rank() int {
	switch s {
	case House:
		return 0
	case Published:
		return 1
	case Practice:
		return 2
	}
	return 3
}

// Weakest returns the weaker of two standings.
func Weakest(a, b Standing) Standing {
	if b.Rank() > a.Rank() {
		return b
	}
	return a
}

// Origin is where an entry comes from.
type Origin struct {
	Source   string
	Standing Standing
}

// Wire is one size of one wire specification.
type Wire struct {
	Spec, Size        string
	OverMM            unit.Millimetre // finished diameter, nominal
	TolMM             unit.Millimetre // ± on OverMM
	ConductorMM       unit.Millimetre // bare conductor, nominal (0: not known)
	Strands           int
	AreaMM2           unit.SquareMM        // copper
	OhmPerKm          unit.OhmPerKilometre // maximum at 20 °C
	GramPerM          unit.GramPerMetre    // 0: computed, see calc/wire
	RatedC            unit.Celsius
	RatedV            unit.Volt
	Insulation        string
	InsulationDensity unit.GramPerCC
	Plating           string
	Origin
}

// Tube is one size of heat-shrink tubing.
type Tube struct {
	ID                       string          // "AS23053/16 9.5"
	Kind                     string          // "AS23053/16"
	ShelfLabel               string          // "3/8 (9.5 / 4.8)"
	SuppliedMM               unit.Millimetre // bore as supplied, minimum
	RecoveredMM              unit.Millimetre // bore after free recovery, maximum
	WallMM                   unit.Millimetre // wall after free recovery, nominal
	WallMinMM, WallMaxMM     unit.Millimetre // 0: not known
	RecoveryC                unit.Celsius    // full recovery
	ServiceMinC, ServiceMaxC unit.Celsius
	LengthChange             unit.Ratio // share it shortens by on recovery at most: 0.10 for −10 %
	Density                  unit.GramPerCC
	Fluids                   string
	Material                 string
	Flexible                 bool
	WallStanding             Standing // of the wall alone; bores stand with the entry
	Origin
}

// Boot is a moulded boot for a connector shell.
type Boot struct {
	ID                                string
	Shape                             string          // straight | 45 | 90
	Shell                             int             // series II shell size
	LipSuppliedMM, LipRecoveredMM     unit.Millimetre // H
	CableSuppliedMM, CableRecoveredMM unit.Millimetre // J
	LengthMM                          unit.Millimetre // recovered
	Origin
}

// Outlet is one leg of a transition.
type Outlet struct{ ExpandedMM, RecoveredMM, PortMM unit.Millimetre }

// Transition is a moulded part that closes a breakout; the trunk is Outlets[0].
type Transition struct {
	ID      string
	Outlets []Outlet
	Origin
}

// Contact is one contact size.
type Contact struct {
	Size                      string
	MaxA                      unit.Ampere
	LargestAWG, SmallestAWG   string          // conductor range
	SealMinMM, SealMaxMM      unit.Millimetre // wire diameter that the grommet seals
	WellMM                    unit.Millimetre
	Pin, Socket, SealPlug     string
	AWGStanding, SealStanding Standing
	Origin
}

// Insert is one arrangement of cavities.
type Insert struct {
	ID            string   // series II name, "18-32"
	Aliases       []string // series I/III name, "19-32"
	Shell         int      // series II shell size
	Contacts      []InsertContacts
	Cavities      []string
	NamesStanding Standing // cavity names; the count stands with the entry
	Origin
}

// InsertContacts is a run of cavities of one contact size.
type InsertContacts struct {
	Size  string
	Count int
}

// Splice is one splice part.
type Splice struct {
	ID             string
	Build          string          // butt | parallel
	OverMM         unit.Millimetre // outside, installed
	LengthMM       unit.Millimetre // sleeve
	CMAMin, CMAMax int             // total circular mils
	Origin
}

// Catalogue is every entry by id. It is made once and only read afterwards.
type Catalogue struct {
	Wires       map[WireKey]Wire
	Tubes       []Tube // in order of kind, then bore
	Boots       map[string]Boot
	Transitions map[string]Transition
	Contacts    map[string]Contact
	Inserts     map[string]Insert // by every alias as well
	Splices     map[string]Splice
}

// WireKey names a wire entry.
type WireKey struct{ Spec, Size string }
