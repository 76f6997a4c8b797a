package schema

import (
	"fmt"
	"strings"

	"contralay/model"
)

// Fault is one thing that is wrong with a file.
type Fault struct {
	Path  string // of the key or the table: ".branch[2].layer[0].of", lists counted from 0
	Where string // the same for a person, table, id and key: `wire "101", key amps`; may be empty
	Says  string // what is wrong, and what is allowed
}

// Read fills h from a decoded file and gives all that is wrong with it. A file of
// another format has that one fault alone.
func Read(raw map[string]any, h *model.Harness) []Fault {
	d := &decoder{at: map[string]bool{}}
	if d.format(raw); len(d.faults) > 0 {
		return d.faults
	}
	readTable(d, whole, h, raw, place{})
	d.check(h)
	return d.faults
}

// problem is what is wrong with a value and what is allowed; "" is nothing.
type problem string

func bad(says, allowed string) problem { return problem(says + "; allowed: " + allowed) }

// decoder gathers what is wrong on the way through a file.
type decoder struct {
	faults []Fault
	at     map[string]bool // paths something was said about
}

func (d *decoder) say(at place, p problem) {
	d.at[at.path] = true
	d.faults = append(d.faults, Fault{at.path, at.where, string(p)})
}

// check adds what the model finds, where the value was read without a complaint.
// Without its ids, or a whole table, a file would only be blamed for what was said
// already.
func (d *decoder) check(h *model.Harness) {
	for at := range d.at {
		if strings.HasSuffix(at, ".id") || strings.Count(at, ".") == 1 {
			return
		}
	}
	for _, f := range h.Check() {
		at := place{fmt.Sprintf(".%s[%d]", f.Table, f.Index), calls(f.Table, f.ID, f.Index)}
		if f.Index < 0 {
			at = place{"." + f.Table, f.Table}
		}
		if f.Sub != "" {
			at = place{fmt.Sprintf("%s.%s[%d]", at.path, f.Sub, f.SubIndex), comma(at.where, calls(f.Sub, "", f.SubIndex))}
		}
		at = at.key(f.Key)
		if d.at[at.path] {
			continue
		}
		d.faults = append(d.faults, Fault{at.path, at.where, string(bad(f.Says, f.Allowed))})
	}
}
