package model

import (
	"slices"

	"contralay/model/unit"
)

// The kinds of the nouns. Each is the word that stands in a file; the zero value "" is a
// kind that the file does not give. The list beside a kind holds all of it, in the order
// in which it is offered, and is never written to.

// Make is how a branch is made.
type Make string

const (
	MakeLaid     Make = "laid"     // in layers, each turned against the one below
	MakeTwisted  Make = "twisted"  // all together, once
	MakeStraight Make = "straight" // side by side
)

// Makes are all makes.
var Makes = []Make{MakeLaid, MakeTwisted, MakeStraight}

// Hand is the way a layer turns, going away over the top: to the left or to the right.
type Hand string

// A layer that does not turn is straight; a file gives LH or RH alone.
const (
	HandLeft     Hand = "LH"
	HandRight    Hand = "RH"
	HandStraight Hand = "straight"
)

// Hands are the hands that a file may give.
var Hands = []Hand{HandLeft, HandRight}

// Other is the hand of the layer below or above.
func (h Hand) Other() Hand {
	if h == HandRight {
		return HandLeft
	}
	return HandRight
}

// Role is what a wire does.
type Role string

const (
	RolePower  Role = "power"
	RoleGround Role = "ground"
	RoleSignal Role = "signal"
	RoleData   Role = "data"
	RoleSpare  Role = "spare" // laid in for later
)

// Roles are all roles.
var Roles = []Role{RolePower, RoleGround, RoleSignal, RoleData, RoleSpare}

// Shade is the light or the dark of a colour that no code has: light blue.
type Shade string

// The shades.
const (
	ShadeLight Shade = "light"
	ShadeDark  Shade = "dark"
)

// Shades are all shades.
var Shades = []Shade{ShadeLight, ShadeDark}

// Gender is that of the contacts of a connector.
type Gender string

const (
	GenderPin    Gender = "pin"
	GenderSocket Gender = "socket"
)

// Genders are both.
var Genders = []Gender{GenderPin, GenderSocket}

// Mount is how a connector is held.
type Mount string

const (
	MountInline Mount = "inline"
	MountFlange Mount = "flange"
	MountJamNut Mount = "jam nut"
)

// Mounts are all mounts.
var Mounts = []Mount{MountInline, MountFlange, MountJamNut}

// Datum is where the length of a branch starts at a termination.
type Datum string

const (
	DatumBootLip    Datum = "boot lip"
	DatumShellRear  Datum = "shell rear"
	DatumGrommet    Datum = "grommet"
	DatumMatingFace Datum = "mating face"
)

// Data are all datums, from the cable towards the mating face.
var Data = []Datum{DatumBootLip, DatumShellRear, DatumGrommet, DatumMatingFace}

// Closure is how a breakout without a transition is closed.
type Closure string

const (
	ClosureTaped Closure = "taped"
	ClosureOpen  Closure = "open"
)

// Closures are all closures.
var Closures = []Closure{ClosureTaped, ClosureOpen}

// UnitBuild is how many wires a unit is made up of.
type UnitBuild string

const (
	BuildPair   UnitBuild = "pair"
	BuildTriple UnitBuild = "triple"
	BuildQuad   UnitBuild = "quad"
)

// UnitBuilds are all of them, from two wires to four.
var UnitBuilds = []UnitBuild{BuildPair, BuildTriple, BuildQuad}

// Protection is what kind of device protects a feed.
type Protection string

const (
	ProtectionBlade      Protection = "blade"
	ProtectionLargeBlade Protection = "large blade"
	ProtectionElectronic Protection = "electronic"
)

// Protections are all of them.
var Protections = []Protection{ProtectionBlade, ProtectionLargeBlade, ProtectionElectronic}

// Use is what the harness is for, as far as it decides what the sheet may rate.
type Use string

const (
	UseVehicle  Use = "vehicle"
	UseAircraft Use = "aircraft"
)

// Uses are all uses.
var Uses = []Use{UseVehicle, UseAircraft}

// Surrounding is what a branch runs through.
type Surrounding string

const (
	Vibration Surrounding = "vibration"
	Abrasion  Surrounding = "abrasion"
	Oil       Surrounding = "oil"
	Fuel      Surrounding = "fuel"
	Heat      Surrounding = "heat"
	Flexing   Surrounding = "flexing"
)

// Surroundings are all of them.
var Surroundings = []Surrounding{Vibration, Abrasion, Oil, Fuel, Heat, Flexing}

// CoverKind is what goes over a bundle.
type CoverKind string

const (
	CoverTape   CoverKind = "tape"
	CoverBraid  CoverKind = "braid"
	CoverSheath CoverKind = "sheath"
	CoverSleeve CoverKind = "sleeve"
)

// GoesOn is how a part comes to its place.
type GoesOn string

const (
	WoundOn    GoesOn = "wound"    // where it lies: it passes no tails
	ThreadedOn GoesOn = "threaded" // over the tails, and tied where it lies
	ShrunkOn   GoesOn = "shrunk"   // over the tails, and recovered by heat where it lies
)

// CoverTrait is what the program knows of one kind of cover.
type CoverTrait struct {
	Kind   CoverKind
	GoesOn GoesOn // unless its part is a tube of the catalogue, which is always shrunk on

	// ThickMM is what one adds to the radius where neither the file nor a table of the
	// catalogue says so; 0: nothing is known. From memory: measure it.
	ThickMM unit.Millimetre

	Tube  bool // its part is chosen among the tubes of the catalogue
	Under bool // it is added beneath the sheath, not over it
	Again bool // it is added only where there is a sheath already

	Offer string // the row that adds one
}

// CoverTraits are all kinds of cover, in the order in which they are offered. A lapped
// tape and a braid of thin tinned wire add what is from memory.
var CoverTraits = []CoverTrait{
	{Kind: CoverTape, GoesOn: WoundOn, ThickMM: 0.1, Under: true, Offer: "a separator tape, under the sheath"},
	{Kind: CoverBraid, GoesOn: ThreadedOn, ThickMM: 0.3, Under: true, Offer: "a braid, under the sheath"},
	{Kind: CoverSleeve, GoesOn: ShrunkOn, Tube: true, Offer: "a sleeve over it, where it rubs or runs past heat"},
	{Kind: CoverSheath, GoesOn: ShrunkOn, Tube: true, Again: true, Offer: "a second sheath over the first"},
}

// Trait is what is known of a kind; the zero trait of a kind that is in no table.
func (k CoverKind) Trait() CoverTrait {
	if at := slices.IndexFunc(CoverTraits, func(t CoverTrait) bool { return t.Kind == k }); at >= 0 {
		return CoverTraits[at]
	}
	return CoverTrait{Kind: k}
}

// CoverKinds are all kinds of cover.
func CoverKinds() []CoverKind {
	var out []CoverKind
	for _, t := range CoverTraits {
		out = append(out, t.Kind)
	}
	return out
}
