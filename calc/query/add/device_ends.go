package add

import (
	"slices"
	"strconv"
	"strings"

	"contralay/model"
	"contralay/model/edit"
	"contralay/model/unit"
)

// ends makes the terminations and hangs them.
func (d *devices) ends() {
	title := d.title()
	for n := range d.ask.Count {
		t := model.Termination{ID: d.h.FreeID(d.prefix()), Name: model.Some(d.nextName(title)), Device: model.Some(d.name)}
		for _, c := range d.kind.Carries {
			if !c.Drain() {
				t.Cavities = append(t.Cavities, c.Cavity)
			}
		}
		if d.kind.Contact != "" {
			t.Contacts = map[string][]string{d.kind.Contact: slices.Clone(t.Cavities)}
		}
		if d.ask.Boot != "" {
			t.Boot, t.Datum = model.Some(d.ask.Boot), model.Some(model.DatumBootLip)
		}
		d.h.Terminations = append(d.h.Terminations, t)
		d.terms, d.names = append(d.terms, t.ID), append(d.names, t.Name.V)
		if d.ask.At != "" {
			length := unit.Millimetre(0)
			if n < len(d.ask.LengthsMM) {
				length = d.ask.LengthsMM[n]
			}
			h, leg, err := edit.AddBranch(d.h, d.ask.At, t.ID, length)
			if err != nil { // At is there and the termination is new
				d.tell(Missing, "from", []string{t.ID}, Taken{}, "%s is not hung: %s", t.ID, err)
				continue
			}
			d.h, d.out.Branches = h, append(d.out.Branches, leg)
		}
	}
	d.out.Terminations = d.terms
	d.tellEnds()
}

func (d *devices) tellEnds() {
	ids, cavities := span(d.terms), d.kind.Cavities
	d.chose("id", d.terms, "%s: the next free ids. Named %s", ids, d.named())
	list := d.h.Terminations[len(d.h.Terminations)-1].Cavities
	d.tell(Chosen, "cavities", d.terms, d.kind.Layout, "%s: %d cavities each, %s. Names and order differ by maker: check the part", ids,
		cavities,
		strings.Join(list, ", "))
	if d.kind.Contact == "" {
		d.tell(Missing, "contacts", d.terms, Taken{}, "%s: contact sizes and seals are not known. Read them off the part", ids)
	}
	if d.ask.At == "" {
		d.tell(Missing, "branch", d.terms, Taken{}, "%s: on no branch yet, so the wires have no way", ids)
		return
	}
	d.chose("branch", d.out.Branches, "%s: legs %s, from %s", ids, span(d.out.Branches), d.ask.At)
	var open []string
	for n, leg := range d.out.Branches {
		if n >= len(d.ask.LengthsMM) || d.ask.LengthsMM[n] == 0 {
			open = append(open, leg)
		}
	}
	if len(open) > 0 {
		d.tell(Missing, "length_mm", open, Taken{}, "%s: not measured yet", span(open))
	}
	for _, id := range append([]string{d.ask.Controller}, values(d.ask.Ends)...) {
		if id == "" || id == d.ask.At {
			continue
		}
		if _, joined := d.s.Index.Between(id, d.ask.At); !joined {
			d.tell(Missing, "branch", []string{id, d.ask.At}, Taken{}, "No branch leads from %s to %s: the wires between them have no way",
				id,
				d.ask.At)
		}
	}
}

// named is the names of the new ends in few words.
func (d *devices) named() string {
	if len(d.names) < 3 {
		return strings.Join(d.names, ", ")
	}
	return span(d.names)
}

// prefix is what the ids of the ends begin with, by the name that was chosen.
func (d *devices) prefix() string {
	if k := slices.Index(d.kind.Names, d.name); k >= 0 && k < len(d.kind.Prefix) && len(d.kind.Prefix) > 1 {
		return d.kind.Prefix[k]
	}
	return d.kind.Prefix[0]
}

// title is the trade word of the name that was chosen: what stands before its first comma, with
// a capital letter.
func (d *devices) title() string {
	word, _, _ := strings.Cut(d.name, ",")
	return capital(word)
}

func capital(word string) string {
	if word == "" {
		return word
	}
	return strings.ToUpper(word[:1]) + word[1:]
}

// nextName is a title with the next free number; without one for a device that is alone.
func (d *devices) nextName(title string) string {
	taken := map[string]bool{}
	for k := range d.h.Terminations {
		taken[d.h.Terminations[k].Name.V] = true
	}
	if d.ask.Count == 1 && !taken[title] && !taken[title+" 1"] {
		return title
	}
	n := 1
	if taken[title] {
		n = 2
	}
	for taken[title+" "+strconv.Itoa(n)] {
		n++
	}
	return title + " " + strconv.Itoa(n)
}
