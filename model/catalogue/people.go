package catalogue

import (
	"slices"
	"time"
)

// Who builds, and what is measured with. A shop lists both in its own file; figures do not go by
// them, so that they are in no hash.

// Person is somebody who ticks and signs.
type Person struct {
	ID         string // what is typed and written down: a number, initials
	Name       string
	MayInspect bool // may sign what somebody else has built
}

// Instrument is what a test is read on.
type Instrument struct {
	ID     string
	What   string // "insulation tester"
	Serial string
	Due    string // the day on which its calibration ends, 2026-05-31; "" is not said
}

func (b *builder) person(e *entry) {
	p := Person{ID: e.text("id", true), Name: e.text("name", true)}
	if _, given := e.vals["may_inspect"]; given {
		p.MayInspect = e.flag("may_inspect")
	}
	b.claim(e, "person", "id", p.ID)
	b.c.People = append(b.c.People, p)
}

func (b *builder) instrument(e *entry) {
	i := Instrument{ID: e.text("id", true), What: e.text("what", true), Serial: e.text("serial", false), Due: e.text("due", false)}
	if _, err := time.Parse("2006-01-02", i.Due); i.Due != "" && err != nil {
		e.wrong("due", shown(i.Due)+" is not a day", "a day such as 2026-05-31")
	}
	b.claim(e, "instrument", "id", i.ID)
	b.c.Instruments = append(b.c.Instruments, i)
}

// Person is somebody by id.
func (c *Catalogue) Person(id string) (Person, bool) {
	if k := slices.IndexFunc(c.People, func(p Person) bool { return p.ID == id }); k >= 0 {
		return c.People[k], true
	}
	return Person{}, false
}

// Instrument is one by id.
func (c *Catalogue) Instrument(id string) (Instrument, bool) {
	if k := slices.IndexFunc(c.Instruments, func(i Instrument) bool { return i.ID == id }); k >= 0 {
		return c.Instruments[k], true
	}
	return Instrument{}, false
}

// mergeByID puts the entries of over in the place of those of base with the same id, and the others
// behind them.
func mergeByID[T any](base, over []T, id func(T) string) []T {
	out := slices.Clone(base)
	for _, o := range over {
		if k := slices.IndexFunc(out, func(b T) bool { return id(b) == id(o) }); k >= 0 {
			out[k] = o
			continue
		}
		out = append(out, o)
	}
	return out
}
