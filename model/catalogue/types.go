package catalogue

import "contralay/model/unit"

// Wire is one size of one wire specification.
type Wire struct {
	Spec, Size        string
	OverMM            unit.Millimetre // finished diameter, nominal
	TolMM             unit.Millimetre // ± on OverMM
	ConductorMM       unit.Millimetre // bare conductor, nominal (0: not known)
	Strands           int
	AreaMM2           unit.SquareMM        // copper
	OhmPerKm          unit.OhmPerKilometre // maximum at 20 °C
	GramPerM          unit.GramPerMetre    // maximum; 0: computed, see calc/formula/wire
	RatedC            unit.Celsius
	RatedV            unit.Volt
	Insulation        string
	InsulationDensity unit.GramPerCC
	Plating           string
	OverStanding      Standing // of OverMM, TolMM, GramPerM
	OhmStanding       Standing // of OhmPerKm
	RatedStanding     Standing // of RatedC
	Origin
}

// Key is what the wire is looked up by.
func (w Wire) Key() WireKey { return WireKey{w.Spec, CanonicalSize(w.Size)} }

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
	LengthStanding           Standing // of LengthChange
	Origin
}

// BootRead says which sizes of a boot were read off the part in hand and stand as house,
// whatever the entry does.
type BootRead struct{ LipRecovered, LipSupplied, CableRecovered, CableSupplied, Length bool }

// ReadOff is where a size comes from that somebody read off the part in hand.
var ReadOff = Origin{Source: "read off the part, given in the file", Standing: House}

// From is where one of a boot's sizes comes from.
func (b Boot) From(read bool) Origin {
	if read {
		return ReadOff
	}
	return b.Origin
}

// Boot is a moulded boot for a connector shell.
type Boot struct {
	ID                                string
	Shape                             string          // straight | 45 | 90
	Shell                             int             // series II shell size
	LipSuppliedMM, LipRecoveredMM     unit.Millimetre // H
	CableSuppliedMM, CableRecoveredMM unit.Millimetre // J
	LengthMM                          unit.Millimetre // recovered
	Read                              BootRead        // what was read off the part
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
	Size                    string
	MaxA                    unit.Ampere     // one contact alone, test current
	LargestAWG, SmallestAWG string          // conductor range
	SealMinMM, SealMaxMM    unit.Millimetre // wire diameter that the grommet seals (0: not known)
	WellMM                  unit.Millimetre // crimp well, depth (0: not known)
	WellBoreMM              unit.Millimetre // crimp well, bore (0: not known)
	Pin, Socket, SealPlug   string          // part numbers, series I and III
	SocketII                string          // socket of series II
	AWGStanding             Standing        // of LargestAWG
	SmallestStanding        Standing        // of SmallestAWG
	SealStanding            Standing
	Origin
}

// Insert is one arrangement of cavities.
type Insert struct {
	ID            string   // series II name, "18-32"; the series I/III name where there is no other
	Aliases       []string // series I/III name, "19-32"
	Shell         int      // series II shell size; 0: a shell without one
	Rating        string   // service rating: M, N, I, II; "" where the chart gives none
	Contacts      []InsertContacts
	Cavities      []string // in order
	NotQualified  []string // series in which it is not military-qualified: "II", "I/III"
	NamesSource   string   // where the names come from, and which cavity has which size
	NamesStanding Standing // cavity names; the count stands with the entry
	Origin
}

// InsertContacts is a run of cavities of one contact size.
type InsertContacts struct {
	Size     string
	Count    int
	Cavities []string // which they are; nil: not known
}

// Splice is one splice part.
type Splice struct {
	ID             string
	Build          string          // butt | parallel
	OverMM         unit.Millimetre // outside, installed
	LengthMM       unit.Millimetre // sleeve
	CMAMin, CMAMax int             // total circular mils
	MaxA           unit.Ampere     // 0: not known, as for every one of the standard's
	Origin
}

// Catalogue is every entry by id. It is made once and only read afterwards.
type Catalogue struct {
	Wires       map[WireKey]Wire // by canonical size
	Tubes       []Tube           // in order of kind, then bore
	Boots       map[string]Boot
	Transitions map[string]Transition
	Contacts    map[string]Contact
	Inserts     map[string]Insert // by every alias as well
	Faces       map[string]Face   // by one name of the arrangement each
	Splices     map[string]Splice
	Devices     []Device          // in the order in which a list offers them
	Sources     map[string]Source // what the values of devices refer to
	People      []Person          // of the shop, in its order
	Instruments []Instrument
	Stock       []Stock      // what the shop orders things as
	Corrections []Correction // in the order they were accepted
}

// WireKey names a wire entry.
type WireKey struct{ Spec, Size string }
