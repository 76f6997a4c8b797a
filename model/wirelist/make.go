package wirelist

import (
	"fmt"
	"strings"

	"contralay/model"
	"contralay/model/catalogue"
)

// wires makes the wires of the items, in the order of the lists. A wire without an id
// of its own takes the next number that no other has; of two with one id the second
// takes a number behind it.
func (im *importer) wires() {
	taken := map[string]bool{}
	for _, it := range im.items {
		taken[it.ownID] = true
	}
	next := 1
	seen := map[string]Place{}
	numbered, unnamed := 0, Place{}
	im.h.Wires = make([]model.Wire, 0, len(im.items))
	for _, it := range im.items {
		id := it.ownID
		if id == "" {
			for taken[fmt.Sprint(next)] {
				next++
			}
			id = fmt.Sprint(next)
			taken[id] = true
			if numbered++; numbered == 1 {
				unnamed = it.place
			}
		} else if first, twice := seen[id]; twice {
			n := 2
			for taken[fmt.Sprintf("%s-%d", id, n)] {
				n++
			}
			own := id
			id = fmt.Sprintf("%s-%d", id, n)
			taken[id] = true
			if first == it.place {
				im.say(Note, "one id for the wires of a row", it.place, own+", "+id, "each further one takes a number")
			} else {
				im.say(Warn, "id given twice", it.place, own+" as in "+rowOf(first, it.place)+", now "+id, "the second takes a number")
			}
		}
		seen[id], im.wireIDs[id] = it.place, true
		it.wire = len(im.h.Wires)
		im.h.Wires = append(im.h.Wires, im.wireOf(it, id))
	}
	if numbered > 0 && numbered < len(im.items) {
		im.say(Note, "wires without id", unnamed, fmt.Sprint(numbered), "numbered")
	}
}

// rowOf names a row to somebody who is at another place: with its list where it is of another.
func rowOf(p, from Place) string {
	row := fmt.Sprintf("row %d", p.Row)
	if p.File == from.File && p.Sheet == from.Sheet {
		return row
	}
	return joinNonEmpty(" ", p.File, p.Sheet, row)
}

// wireOf is one wire, its notes not yet.
func (im *importer) wireOf(it *item, id string) model.Wire {
	w := model.Wire{ID: id, Size: it.gauge.Size, Spec: it.gauge.Spec, Amps: it.amps, Role: roleOf(it)}
	if it.signal != "" {
		w.Signal = model.Some(it.signal)
	}
	if s := it.from.String(); s != "" {
		w.From = model.Some(s)
	}
	if s := it.to.String(); s != "" {
		w.To = model.Some(s)
	}
	_, metric := catalogue.MetricArea(w.Size)
	switch {
	case w.Spec != "":
	case metric:
		w.Spec = im.opt.Metric
	default:
		w.Spec = im.opt.Spec
	}
	if code := im.codeOf(it, w.Spec); code != "" {
		w.Colour = model.Some(code)
	}
	if w.Size == "" {
		im.say(Warn, "wire without size", it.place, id, "none set")
	} else if _, known := im.cat.Wire(w.Spec, w.Size); !known {
		im.say(Warn, "wire the catalogue does not have", it.place, w.Spec+" "+w.Size, "kept")
	}
	return w
}

// codeOf is the colour as the file has it: digits for an aerospace specification, as
// its part numbers have them, else letters. What neither has stays a word in the note.
func (im *importer) codeOf(it *item, spec string) string {
	if strings.HasPrefix(spec, "AS22759/") {
		if digits, ok := it.colour.Digits(); ok {
			return digits
		}
	}
	code, ok := it.colour.Letters()
	if !ok && len(it.colour) > 0 {
		it.notes = append(it.notes, "colour: "+it.colour.String())
		im.say(Note, "colour without a code", it.place, it.colour.String(), "kept in the note")
	}
	return code
}

// feeds makes a protective device of each fuse that the rows state: one for each name,
// one for each row that gives only a rating.
func (im *importer) feeds() {
	at := map[string]int{}
	taken := map[string]bool{} // by a name in the list
	for _, it := range im.items {
		taken[it.fuseName] = true
	}
	n := 0
	for _, it := range im.items {
		if !it.fuse.Set && it.fuseName == "" {
			continue
		}
		w := im.h.Wires[it.wire]
		if k, ok := at[it.fuseName]; ok && it.fuseName != "" {
			f := &im.h.Feeds[k]
			f.Wires = append(f.Wires, w.ID)
			if !f.Amps.Set {
				f.Amps = it.fuse
			} else if it.fuse.Set && it.fuse.V != f.Amps.V {
				im.say(Warn, "two ratings for one fuse", it.place, f.ID+" "+FormatCurrent(f.Amps.V)+" and "+FormatCurrent(it.fuse.V), "the first is kept")
			}
			continue
		}
		f := model.Feed{ID: it.fuseName, Amps: it.fuse, Wires: []string{w.ID}, Name: w.Signal}
		for f.ID == "" || it.fuseName == "" && taken[f.ID] {
			n++
			f.ID = fmt.Sprintf("F%d", n)
		}
		at[f.ID] = len(im.h.Feeds)
		im.h.Feeds = append(im.h.Feeds, f)
	}
}

// notes writes what is left as text into the notes of the wires.
func (im *importer) notes() {
	for _, it := range im.items {
		if s := strings.Join(it.notes, "; "); s != "" {
			im.h.Wires[it.wire].Note = model.Some(s)
		}
	}
}
