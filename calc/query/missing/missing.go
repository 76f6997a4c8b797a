package missing

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"contralay/calc/sheet"
)

// Rank is what a need keeps from being done.
type Rank int

// The ranks, worst first.
const (
	Builds Rank = iota // without it the harness cannot be built
	Judges             // without it the sheet cannot judge something
	Prints             // only the printed sheet lacks it
)

// Kind is what is missing. It is the same word for each thing that lacks it.
type Kind string

// The kinds, in the order in which they are said.
const (
	Anything  Kind = "anything"    // the harness is empty
	Size      Kind = "size"        // of a wire
	Spec      Kind = "spec"        // of a wire
	Ends      Kind = "ends"        // a wire has none
	End       Kind = "end"         // a wire has one
	Way       Kind = "way"         // no branch leads to a place
	Length    Kind = "length"      // of a branch
	UnitWires Kind = "unit wires"  // which they are
	UnitOver  Kind = "unit OD"     // of a unit that is not made of known wires
	Filler    Kind = "filler size" // of a layer of nothing else
	Unwired   Kind = "wire"        // no wire ends at a termination
	Contacts  Kind = "contacts"    // their size at a termination
	Gender    Kind = "gender"      // of a connector
	Current   Kind = "current"     // of a wire
	Supply    Kind = "supply"      // its voltage
	Device    Kind = "device"      // of a feed, or its rating
	Trip      Kind = "trip"        // how fast the limit of a feed opens a short
	Short     Kind = "short"       // what the supply drives into one
	Cover     Kind = "cover"       // its part or thickness
	Number    Kind = "number"      // and the revision of the harness
	Colour    Kind = "colour"      // of a wire
)

// Thing is what a need is about.
type Thing string

// The things; Harness has no id.
const (
	Harness     Thing = "harness"
	Wire        Thing = "wire"
	Branch      Thing = "branch"
	Termination Thing = "termination"
	Place       Thing = "place" // a termination or a breakout
	Unit        Thing = "unit"
	Feed        Thing = "feed"
)

// Need is what is missing, once for all things that lack it.
type Need struct {
	Kind  Kind
	Rank  Rank
	Says  string   // a plain sentence that names the things
	Of    Thing    // what kind of thing lacks it
	IDs   []string // which, in the order of the file
	Rules []string // of the open points that say the same of each thing; none: nothing else says it
}

// Of is what is still missing, worst first; nothing where the sheet can be built, judged and
// printed as it stands.
func Of(s *sheet.Sheet) []Need {
	if len(s.H.Terminations)+len(s.H.Branches)+len(s.H.Wires) == 0 {
		return []Need{{Kind: Anything, Says: "nothing is here yet: begin with a connector or a device", Of: Harness}}
	}
	var out []Need
	for _, find := range []func(*sheet.Sheet) []Need{wires, ways, lengths, units, fillers, ends, currents, feeds, covers, printed} {
		out = append(out, find(s)...)
	}
	slices.SortStableFunc(out, func(a, b Need) int { return cmp.Compare(a.Rank, b.Rank) })
	return out
}

// one is a need of some things, in a slice; none where there are no things. single has one %s, for
// the one; several %d and %s, for how many and which.
func one(n Need, single, several string) []Need {
	switch len(n.IDs) {
	case 0:
		return nil
	case 1:
		n.Says = fmt.Sprintf(single, n.IDs[0])
	default:
		n.Says = fmt.Sprintf(several, len(n.IDs), few(n.IDs))
	}
	return []Need{n}
}

// room is how many ids a line has room for.
const room = 4

// few names ids as far as a line has room for them.
func few(ids []string) string {
	if len(ids) > room {
		return strings.Join(ids[:room], ", ") + " ..."
	}
	return strings.Join(ids, ", ")
}

// listed is the same within a sentence: "A, B and C", "A, B, C and 3 more".
func listed(ids []string) string {
	switch n := len(ids); {
	case n == 1:
		return ids[0]
	case n > room:
		return strings.Join(ids[:room-1], ", ") + fmt.Sprintf(" and %d more", n-room+1)
	default:
		return strings.Join(ids[:n-1], ", ") + " and " + ids[n-1]
	}
}

// plural is a number of things.
func plural(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%d %s", n, many)
}
