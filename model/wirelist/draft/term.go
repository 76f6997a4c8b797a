package draft

import (
	"contralay/model"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// Term is a termination on its way.
type Term struct {
	model.Termination
	Index    int
	Titled   bool   // a pin table or a connector column is about it; else only named as an end
	Unsaid   bool   // no list names it: it is called after the file, or by a number
	Numbered bool   // no list names a cavity of it: each wire gets the next number
	Under    string // the heading of the document that its table stands below
	Stud     bool   // a bolt or a point that several wires are taken to
	Place    table.Place
	Pins     []string
	At       map[string]table.Place // where a cavity was first named
	State    map[string]name.State
	Free     map[string]table.Place // cavities that a list says are free, and where
	Counts   []name.Count
}

// Pin enters a cavity of a termination.
func (t *Term) Pin(pin string, s name.State, place table.Place) {
	if _, known := t.At[pin]; !known {
		t.At[pin] = place
		t.Pins = append(t.Pins, pin)
		t.State[pin] = s
	}
	switch s {
	case name.Used:
		t.State[pin] = name.Used
	case name.Spare:
		if t.State[pin] != name.Used {
			t.State[pin] = name.Spare
		}
	default:
		if _, known := t.Free[pin]; !known {
			if t.Free == nil { // most terminations have none
				t.Free = map[string]table.Place{}
			}
			t.Free[pin] = place
		}
	}
}
