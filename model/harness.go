package model

import "contralay/model/unit"

// Opt is a value that a file may leave out.
type Opt[T any] struct {
	V   T
	Set bool
}

// Some is a value that is given.
func Some[T any](v T) Opt[T] { return Opt[T]{v, true} }

// Or returns the value, or d where none was given.
func (o Opt[T]) Or(d T) T {
	if o.Set {
		return o.V
	}
	return d
}

// Harness is the whole product: one file.
type Harness struct {
	Head         Head
	Rules        Rules
	Board        Board
	Reels        []Reel
	Parts        []Part
	Terminations []Termination
	Breakouts    []Breakout
	Splices      []Splice
	Wires        []Wire
	Feeds        []Feed
	Units        []Unit
	Branches     []Branch
	Builds       []Build
	Listed       []Listed
}

// Head is the title block.
type Head struct {
	Name, Number, Revision Opt[string]
	SupplyV                Opt[unit.Volt]
	ShortA                 Opt[unit.Ampere] // what the supply drives into a dead short at the devices
	Use                    Opt[Use]
	Units                  Opt[string] // "mm" or "in": what a screen shows, never what a file holds
	ListedFrom             Opt[string] // listed_from: the independent list that [[listed]] was read from
	MockUp                 Opt[string] // who measured the lengths, and what with
	Note                   Opt[string]
}

// Board is what the full-size drawing lies on.
type Board struct {
	WidthMM, HeightMM Opt[unit.Millimetre]
	PegMM             Opt[unit.Millimetre] // diameter of its pegs
	Datum             Opt[string]          // the place that x and y are measured from, a termination or a breakout
}

// Listed is one net of an independent list: cavities that are joined, and to nothing else
// that the list names.
type Listed struct {
	Signal Opt[string]
	Ends   []string // TERMINATION:CAVITY
}

// Reel is wire measured on this job: ten side by side, divided by ten.
type Reel struct {
	Spec, Size string
	OverMM     unit.Millimetre
	ShelfM     Opt[unit.Metre] // how much of it there is
}

// Part is what somebody read off a tube or a boot in hand, in place of what the catalogue
// has of it.
type Part struct {
	ID         string // of the catalogue
	WallMM     Opt[unit.Millimetre]
	LipRecMM   Opt[unit.Millimetre] // bore at the connector, recovered
	LipSupMM   Opt[unit.Millimetre] // and as supplied
	CableRecMM Opt[unit.Millimetre] // bore at the cable, recovered
	CableSupMM Opt[unit.Millimetre] // and as supplied
	LengthMM   Opt[unit.Millimetre] // recovered
	SuppliedMM Opt[unit.Millimetre] // length as supplied, which no maker holds to: for the bill alone
}

// Termination is where wires stop: a connector, a ring terminal, a flying lead.
type Termination struct {
	ID           string
	Name, Device Opt[string]
	Insert       Opt[string] // catalogue arrangement
	Gender       Opt[Gender]
	Key          Opt[string]
	Mount        Opt[Mount]
	Datum        Opt[Datum]
	PartMM       Opt[unit.Millimetre] // from its mating face to the rear of its shell
	Clock        Opt[int]             // hours, seen from the wire side
	Boot         Opt[string]
	BootClock    Opt[int]
	Reserved     []string
	LoopMM       Opt[unit.Millimetre]
	SpaceMM      Opt[unit.Millimetre] // free length behind it, for boot and bend
	LimitC       Opt[unit.Celsius]    // the most the device stands
	Cavities     []string             // own cavities, where it has no catalogue insert
	Contacts     map[string][]string  // contact size → cavities
	SealMM       []unit.Millimetre    // smallest and largest wire the seal takes
	Aliases      map[string][]string  // cavity → what else it is called
	Tight        Opt[bool]            // it stands in a wall that must be tight: a tank, a sealed bulkhead
	Firewall     Opt[bool]            // it stands in one: an unwired cavity takes a stub of wire, too
}

// Breakout is where branches meet.
type Breakout struct {
	ID         string
	Name       Opt[string]
	Transition Opt[string] // catalogue id; "" is none
	Build      Opt[Closure]
	ZoneMM     Opt[unit.Millimetre]
}

// Splice is where one wire becomes several.
type Splice struct {
	ID       string
	At       string      // breakout id
	Toward   Opt[string] // branch id
	OffsetMM Opt[unit.Millimetre]
	Part     Opt[string]
}

// Wire is one insulated conductor.
type Wire struct {
	ID       string
	Signal   Opt[string]
	From, To Opt[string] // TERMINATION:CAVITY, or a splice id; a wire with one end is a snag
	Spec     string
	Size     string
	Colour   Opt[string]
	Shade    Opt[Shade]       // of its base colour; it goes with the colour
	Amps     Opt[unit.Ampere] // while it is on
	OnS      Opt[unit.Second] // how long it is on at a time; not given: always
	PeriodS  Opt[unit.Second] // from one time it comes on to the next
	RestA    Opt[unit.Ampere] // what it carries in between
	Role     Opt[Role]
	Safety   Opt[bool] // life hangs on it: outside what the sheet rates
	Return   Opt[string]
	CappedAt Opt[string]          // a spare with one end: where the other is capped, a breakout or a termination
	FoldMM   Opt[unit.Millimetre] // how much of it is folded back there
	DropV    Opt[unit.Volt]       // measured_drop_v: along this wire, at Amps
	Note     Opt[string]
}

// Feed is a protective device and the wires that come out of it.
type Feed struct {
	ID       string
	Name     Opt[string]
	Device   Opt[Protection]
	Amps     Opt[unit.Ampere] // rating, or the limit it is set to; of each output
	Outputs  Opt[int]         // joined to one load; 1 where none is given
	TripS    Opt[unit.Second] // electronic: how long it takes to open a short
	BeforeMM Opt[unit.Millimetre]
	Wires    []string
}

// Unit is wires made up first and laid as one.
type Unit struct {
	ID        string
	Name      Opt[string]
	Wires     []string
	Build     Opt[UnitBuild]
	Shield    Opt[bool]
	DrainFrom Opt[string]
	DrainTo   Opt[string]
	StripMM   Opt[unit.Millimetre] // how far before the contacts its shield ends
	DrainMM   Opt[unit.Millimetre] // how long the lead is that takes the shield to ground
	OverMM    Opt[unit.Millimetre]
	Kbit      Opt[unit.KilobitPerSec] // kbit_s of the bus it carries
}

// Branch is one run of bundle between terminations and breakouts.
type Branch struct {
	ID          string
	Name        Opt[string]
	From, To    string
	LengthMM    unit.Millimetre   // 0: not measured yet
	ToleranceMM []unit.Millimetre // minus, plus
	BendMM      Opt[unit.Millimetre]
	BendDeg     Opt[unit.Degree]
	LeavesDeg   Opt[unit.Degree] // how the drawing turns into it at its end nearer the datum: + left, seen from above
	Environment []Surrounding
	Supported   Opt[bool]
	AmbientC    Opt[unit.Celsius]
	Make        Opt[Make]
	Outer       Opt[Hand]
	LeaversOut  Opt[bool] // wish: what leaves first lies outermost
	UnitsIn     Opt[bool] // wish: units lie in the centre
	DataApart   Opt[bool] // wish: trigger and data do not lie beside power
	Vias        []Via
	Layers      []Layer
	Covers      []Cover
	AsBuilt     []AsBuilt
	Asides      []Aside
}

// Via is a bend of a branch on the drawing. It turns the branch and leaves its length alone.
type Via struct {
	AtMM     unit.Millimetre      // from its from end to the middle of the bend, along the centre line
	TurnDeg  unit.Degree          // + to the left, seen from above the board and from the from end
	RadiusMM Opt[unit.Millimetre] // of the centre line
}

// Measured reports whether the length of a branch is known: one may be drawn before it is.
func (b *Branch) Measured() bool { return b.LengthMM > 0 }

// Aside is a variant of a branch: one way it could be, set aside to compare with, or to come back
// to. What it leaves out is as the branch has it. Its layers may name what the harness no longer
// holds.
type Aside struct {
	Name   string
	Letter Opt[Letter] // stays with it; AsideLetters gives one to whoever has none
	Make   Opt[Make]
	Outer  Opt[Hand]
	Spec   Opt[string]       // of every wire that runs here
	Sizes  map[string]string // size now → size then, of the wires that run here
	Spares Opt[int]          // how many spare wires run here
	Layers []Layer
	Covers []Cover
}

// Layer is one ring of a branch; the first is the centre.
type Layer struct {
	Of       []string // wire and unit ids: a set
	Fillers  Opt[int]
	FillerMM Opt[unit.Millimetre]
	BindMM   Opt[unit.Millimetre] // what tape or thread adds to the diameter; round the centre it builds it up
	BindPart Opt[string]          // the tape or thread
	LayMM    Opt[unit.Millimetre] // 0: ratio × over
	Pinned   []string
	Locked   Opt[bool]
}

// Cover is one thing over a branch, inside out.
type Cover struct {
	What    CoverKind
	Part    Opt[string]
	FromMM  Opt[unit.Millimetre]
	ToMM    Opt[unit.Millimetre]
	ThickMM Opt[unit.Millimetre] // what it adds to the radius, where no table says so
}

// AsBuilt is what was measured on the board.
type AsBuilt struct {
	Layer  int
	OverMM []unit.Millimetre
}
