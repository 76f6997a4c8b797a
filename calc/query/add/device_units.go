package add

import (
	"slices"

	"contralay/model"
	"contralay/model/catalogue"
)

// plannedUnit is the rows of a kind that are made up into one unit.
type plannedUnit struct {
	rows     []int
	shielded bool
	drained  bool // it has a drain
	twists   int  // how many pairs and triples its rows make
	loose    bool // some of its rows are twisted with nothing
	ends     map[int]model.Opt[string]
	drain    string // where its drain is joined; "" nowhere
	part     bool   // its wires go to different places: it cannot be made up
	wires    []string
}

// unitsOf is which unit each row of the kind belongs to: that of its shield, else of its pair. It
// is made for each device.
func (d *devices) unitsOf() map[int]*plannedUnit {
	byLetter, out := map[string]*plannedUnit{}, map[int]*plannedUnit{}
	twists := map[string]bool{}
	for r, c := range d.kind.Carries {
		letter := together(c)
		if letter == "" {
			continue
		}
		u := byLetter[letter]
		if u == nil {
			u = &plannedUnit{shielded: c.Shield != "", ends: map[int]model.Opt[string]{}}
			byLetter[letter] = u
		}
		if c.Drain() {
			u.drained = true
			continue
		}
		u.rows, out[r] = append(u.rows, r), u
		switch {
		case c.Pair == "":
			u.loose = true
		case !twists[letter+" "+c.Pair]:
			twists[letter+" "+c.Pair] = true
			u.twists++
		}
	}
	return out
}

// together is the letter that makes rows of a kind one unit; "" for a row by itself.
func together(c catalogue.DeviceCavity) string {
	switch {
	case c.Shield != "":
		return "shield " + c.Shield
	case c.Pair != "":
		return "pair " + c.Pair
	}
	return ""
}

// takeTogether takes the cavities of the wires of a unit and of its drain: neighbours of one
// connector where there are any, or none. Wires that go to different connectors, or are of
// different sizes, take theirs one by one.
func (d *devices) takeTogether(u *plannedUnit) {
	first := d.kind.Carries[u.rows[0]]
	term, given := d.farEnd(first)
	is, alike := d.sizeOf(u.rows[0]), true
	for _, r := range u.rows {
		other, also := d.farEnd(d.kind.Carries[r])
		u.part = u.part || also != given || other != term
		alike = alike && d.sizeOf(r) == is
	}
	switch {
	case u.part || !alike && given:
		for _, r := range u.rows {
			w := d.row(r)
			d.connect(&w, d.kind.Carries[r])
			u.ends[r] = w.From
		}
		return
	case !given:
		return
	}
	id, n := d.s.H.Terminations[term].ID, len(u.rows)
	var got []string
	found := false
	if u.drained && (!d.listed(term) || len(d.free(term, is.spec, is.size)) > n) {
		got, found = d.cavities(term, is.spec, is.size, n+1)
	}
	if !found {
		if got, found = d.cavities(term, is.spec, is.size, n); !found {
			return
		}
	}
	for k, r := range u.rows {
		u.ends[r] = model.Some(id + ":" + got[k])
	}
	if len(got) > n {
		u.drain = id + ":" + got[n]
	}
}

// unit makes the wires of one device up that belong together.
func (d *devices) unit(n int, u *plannedUnit) {
	ids := span(u.wires)
	if u.part {
		d.tell(Missing, "unit", u.wires, Taken{}, "%s belong together, but go to different places: they are not made up into a unit", ids)
		return
	}
	made := model.Unit{ID: d.unitID(), Name: model.Some(d.names[n]), Wires: slices.Clone(u.wires)}
	what := "unit"
	if k := len(u.wires) - 2; k >= 0 && k < len(model.UnitBuilds) {
		made.Build = model.Some(model.UnitBuilds[k])
		what = string(made.Build.V)
	}
	if u.shielded {
		what = "shielded " + what
		made.Shield = model.Some(true)
		if u.drain != "" {
			made.DrainFrom = model.Some(u.drain)
		}
		if u.drained {
			made.DrainTo = model.Some("cut")
		}
	}
	d.h.Units = append(d.h.Units, made)
	d.out.Units = append(d.out.Units, made.ID)
	d.tell(Chosen, "unit", []string{made.ID}, d.kind.Layout, "%s is a %s of %s", made.ID, what, ids)
	if u.twists > 1 || u.twists == 1 && u.loose {
		d.tell(Chosen, "build", []string{made.ID}, Taken{},
			"In the shield of %s not all wires are twisted together. A unit is twisted as a "+
				"whole: it is made as a %s", made.ID, made.Build.V)
	}
	switch {
	case !u.drained:
	case u.drain != "":
		d.tell(Chosen, "drain_from", []string{made.ID}, d.kind.Layout, "The shield of %s is joined at %s and cut at %s", made.ID, u.drain,
			d.terms[n])
	default:
		d.tell(Missing, "drain_from", []string{made.ID}, Taken{},
			"The drain of %s has no cavity at its other end: join it there, or to the shell",
			made.ID)
	}
}
