package draft

import (
	"contralay/model"
	"contralay/model/unit"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Item is one row for one cavity or one wire.
type Item struct {
	Place    table.Place
	Again    []table.Place // the other rows that tell of it
	OwnID    string
	Counted  string // the running number of its row, beside an id of its own
	From, To End
	Net      string // folded signal, where a pin table says no far end
	Signal   string
	Drain    bool // its signal is that of the drain of a shield
	Gauge    value.Gauge
	Colour   value.Colour
	Each     []value.Colour // where the row has several cavities: the colour of each
	Length   model.Opt[unit.Millimetre]
	Amps     model.Opt[unit.Ampere]
	Fuse     model.Opt[unit.Ampere]
	FuseName string
	Notes    []string
	Cue      value.Gauge // what the row says about a cable it is part of
	CueText  string      // where the words stand that said so, if they are in a note
	Remarked bool        // its remark is CueText, and no column for cables
	Aside    string      // in brackets behind its size or its name, read as its note is
	Cable    string      // name of its cable
	Shield   string      // name of its shield, where it has one of its own
	Plain    bool        // the kind of its cable says how many cores it has, and of no twist
	Bare     bool        // its row and its headings name its cable, and say of no pair, twist or shield
	Pair     string      // which pair of its cable it is in, "pair 1"; "" where the list does not say
	Kind     value.Gauge // what the heading of the cable column says of it
	Order    int         // of the items, as the lists have them
	With     []string
	Joined   bool // a bracket beside its row joins it to its neighbour
	State    name.State
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

// String is the end as the harness writes it, "P1:A" or the id of a splice; "" where it is none
// yet.
func (e End) String() string {
	switch {
	case e.Splice != "":
		return e.Splice
	case e.Term == nil || e.Pin == "":
		return ""
	}
	return e.Term.ID + ":" + e.Pin
}

// EndsAt are ends at some places of which nothing but their name is known.
func EndsAt(places []string) (all []End) {
	for _, p := range places {
		all = append(all, End{Text: p})
	}
	return all
}
