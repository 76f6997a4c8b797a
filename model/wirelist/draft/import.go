package draft

import (
	"fmt"

	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
	wirelistname "contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/value"
)

// Options say what a list does not.
type Options struct {
	Recipe    *wirelistname.Recipe // nil: every column is found by meaning
	Unit      value.LengthUnit     // of lengths that state none; "": they are not read
	Spec      string               // of AWG wires that state none; "": AS22759/32
	Metric    string               // of mm² wires that state none; "": ISO 6722 thin
	Sheets    []string             // of workbooks, by name; nil: all
	Catalogue *catalogue.Catalogue // inserts and sizes; nil: the one that comes with the program
	Name      string               // of the harness
}

// Importer is one import on its way.
type Importer struct {
	Opt   Options
	Cat   *catalogue.Catalogue
	Rep   report.Report
	Terms []*Term
	ByKey map[string]*Term
	Items []*Item

	Groups []Group // of wires that are made up together
	Count  int     // of items made
	Pages  int     // header rows met
	Rows   int     // rows that said something about a cavity or a wire
	H      model.Harness

	WireIDs   map[string]bool // of h, once they are all made
	SpliceIDs map[string]bool // of h
	Units     int             // number of the last C1, C2 …
	Kinds     []string        // of the units, in words
	Splices   int             // number of the last S1, S2 …
	Unknown   int             // branches whose length the lists do not give
}

// Term is a termination on its way.
type Term struct {
	model.Termination
	Index  int
	Titled bool // a pin table or a connector column is about it; else only named as an end
	Stud   bool // a bolt or a point that several wires are taken to
	Place  value.Place
	Pins   []string
	At     map[string]value.Place // where a cavity was first named
	State  map[string]wirelistname.State
	Free   map[string]value.Place // cavities that a list says are free, and where
	Counts []wirelistname.Count
}

// Item is one row for one cavity or one wire.
type Item struct {
	Place    value.Place
	OwnID    string
	Counted  string // the running number of its row, beside an id of its own
	From, To End
	Net      string // folded signal, where a pin table says no far end
	Signal   string
	Drain    bool // its signal is that of the drain of a shield
	Gauge    value.Gauge
	Colour   value.Colour
	Length   model.Opt[unit.Millimetre]
	Amps     model.Opt[unit.Ampere]
	Fuse     model.Opt[unit.Ampere]
	FuseName string
	Notes    []string
	Cue      value.Gauge // what the row says about a cable it is part of
	CueText  string      // where the words stand that said so, if they are in a note
	Cable    string      // name of its cable
	Shield   string      // name of its shield, where it has one of its own
	Kind     value.Gauge // what the heading of the cable column says of it
	Order    int         // of the items, as the lists have them
	With     []string
	State    wirelistname.State
	Wire     int // index into the wires made, −1 before
	Block    int
}

// End is one end of an item: a cavity, a splice, or none.
type End struct {
	Term   *Term
	Pin    string
	Splice string
	Text   string // as the list has it
}

func (e End) String() string {
	switch {
	case e.Splice != "":
		return e.Splice
	case e.Term == nil || e.Pin == "":
		return ""
	}
	return e.Term.ID + ":" + e.Pin
}

// Say enters a finding.
func (im *Importer) Say(level report.Level, rule string, at value.Place, what, did string) {
	im.Rep.Findings = append(im.Rep.Findings, report.Finding{Level: level, Rule: rule, Place: at, What: what, Did: did})
}

// Named finds or makes the termination of a name.
func (im *Importer) Named(name string, place value.Place, titled bool) *Term {
	full := wirelistname.Key(name)
	id := wirelistname.Designator(name)
	short := wirelistname.Key(id)
	t := im.ByKey[full]
	if t == nil && (full == short || titled) {
		// "Bulkhead" of one list is "Bulkhead, engine side" of another.
		if c := im.ByKey[short]; c != nil && (full == short || !c.Titled) {
			t = c
		}
	}
	if t == nil {
		for n := 2; im.Taken(id); n++ {
			id = fmt.Sprintf("%s-%d", wirelistname.Designator(name), n)
		}
		t = &Term{Index: len(im.Terms), Place: place, At: map[string]value.Place{}, State: map[string]wirelistname.State{},
			Free: map[string]value.Place{}}
		t.ID = id
		im.Terms = append(im.Terms, t)
		im.ByKey["\x00"+id] = t
	}
	if full != "" && im.ByKey[full] == nil {
		im.ByKey[full] = t
	}
	if short != "" && im.ByKey[short] == nil {
		im.ByKey[short] = t
	}
	if name != t.ID && (titled || !t.Name.Set) {
		t.Name = model.Some(name)
	}
	if titled && !t.Titled {
		t.Titled, t.Place = true, place
	}
	return t
}

func (im *Importer) Taken(id string) bool { return im.ByKey["\x00"+id] != nil }

// Pin enters a cavity of a termination.
func (t *Term) Pin(pin string, s wirelistname.State, place value.Place) {
	if _, known := t.At[pin]; !known {
		t.At[pin] = place
		t.Pins = append(t.Pins, pin)
		t.State[pin] = s
	}
	switch s {
	case wirelistname.Used:
		t.State[pin] = wirelistname.Used
	case wirelistname.Spare:
		if t.State[pin] != wirelistname.Used {
			t.State[pin] = wirelistname.Spare
		}
	default:
		if _, known := t.Free[pin]; !known {
			t.Free[pin] = place
		}
	}
}
