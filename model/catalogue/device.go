package catalogue

import (
	"strings"
	"unicode"

	"contralay/model/unit"
)

// Device is a kind of device: how many cavities it has, what each of them carries, and what
// must be asked about it. Its values are a place to begin; the part's own sheet goes first.
type Device struct {
	ID       string   // "injector-high"
	Names    []string // "fuel injector, high impedance": one kind may be called several things
	Prefix   []string // what the ids of its ends begin with: one for all names, or one for each
	Group    string   // where a list shows it
	Cavities int
	Contact  string // contact size of its cavities; "" is not known
	Layout   Taken  // how far the number of cavities and what they carry can be trusted
	Ask      string // what must be asked, because such devices differ in it
	Outside  string // why it is outside what the sheet rates; "" where it is not
	Note     string
	Carries  []DeviceCavity // a shield's drain among them
}

// DeviceCavity is what one cavity of a kind of device carries. A value of 0 or "" is not known.
type DeviceCavity struct {
	Cavity string // "" is the drain of a shield, which has none
	What   string // "feed, switched 12 V"
	Role   string // power, ground, signal, data
	Far    string // where the other end of its wire goes: "controller", "feed", "chassis star point"
	Feed   string // wires of one word may share a fuse or an output, and a splice
	Pair   string // cavities of one letter are twisted together
	Shield string // cavities of one letter are in one shield
	Return string // the cavity whose wire brings its current back

	Amps         unit.Ampere // while it is on
	AmpsIs       Taken
	OnS, PeriodS unit.Second // 0: it is always on
	RestA        unit.Ampere // what flows in between
	DutyIs       Taken
	PeakA        unit.Ampere // when it is switched on, starts or is stalled
	PeakS        unit.Second
	PeakIs       Taken
	LimitA       unit.Ampere // what the contact bears, not what flows
	LimitIs      Taken
	Size         string // of the wire to begin with
	SizeIs       Taken
}

// Drain reports whether a row is the drain of a shield.
func (c DeviceCavity) Drain() bool { return c.Cavity == "" }

// Taken is how far one value can be trusted, and where it comes from.
type Taken struct {
	Standing Standing // of a value that was worked out, that of what it was worked from
	Worked   bool     // arithmetic on another value: nobody printed the result
	From     string   // in few words, with the ids of its sources; "" is not said
}

// Source is a document that values refer to by its id.
type Source struct{ ID, Document, Place, How string }

// String is a source as a person reads it.
func (s Source) String() string {
	if s.Place == "" {
		return s.Document
	}
	return s.Document + ": " + s.Place
}

// Device returns a kind of device.
func (c *Catalogue) Device(id string) (Device, bool) {
	for k := range c.Devices {
		if c.Devices[k].ID == id {
			return c.Devices[k], true
		}
	}
	return Device{}, false
}

// DeviceGroups lists the groups of kinds, each once, in their order.
func (c *Catalogue) DeviceGroups() []string {
	var out []string
	seen := map[string]bool{}
	for k := range c.Devices {
		if g := c.Devices[k].Group; !seen[g] {
			seen[g] = true
			out = append(out, g)
		}
	}
	return out
}

// DevicesOf lists the kinds of a group, the commonest first.
func (c *Catalogue) DevicesOf(group string) []Device {
	var out []Device
	for k := range c.Devices {
		if c.Devices[k].Group == group {
			out = append(out, c.Devices[k])
		}
	}
	return out
}

// SourcesIn lists the sources that a text refers to by their ids, in its order, each once.
func (c *Catalogue) SourcesIn(text string) []Source {
	var out []Source
	seen := map[string]bool{}
	for _, word := range strings.FieldsFunc(text, func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) }) {
		if s, ok := c.Sources[word]; ok && !seen[word] {
			seen[word] = true
			out = append(out, s)
		}
	}
	return out
}
