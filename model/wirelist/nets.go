package wirelist

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"contralay/model"
)

// nets joins the cavities of pin tables that say no far end: two cavities of two
// connectors with one name are the ends of one wire; as many in one connector as in
// the other are wires side by side; any other number meets on a splice. Cavities of
// one connector alone stay wires with one end.
func (im *importer) nets() {
	im.bothWays()
	im.oneWay()
	im.byID()
	of := map[string][]*item{}
	var order []string
	for _, it := range im.items {
		if it.net == "" || it.state == spare || it.from.term == nil || it.to.String() != "" {
			continue
		}
		if of[it.net] == nil {
			order = append(order, it.net)
		}
		of[it.net] = append(of[it.net], it)
	}
	gone := map[*item]bool{}
	for _, net := range order {
		by := map[*term][]*item{}
		var terms []*term
		for _, it := range of[net] {
			if by[it.from.term] == nil {
				terms = append(terms, it.from.term)
			}
			by[it.from.term] = append(by[it.from.term], it)
		}
		if len(terms) < 2 {
			continue
		}
		a, b := by[terms[0]], by[terms[1]]
		if len(terms) == 2 && len(a) == len(b) {
			im.colours(of[net], "the first is kept, the second in the note")
			if len(a) > 1 {
				im.say(Warn, "net with several cavities at both ends", a[0].place, fmt.Sprintf("%q", a[0].signal), "joined in the order of the lists")
			}
			for k := range a {
				a[k].to = b[k].from
				im.merge(a[k], b[k])
				gone[b[k]] = true
			}
			continue
		}
		im.colours(of[net], "each wire keeps its own")
		id := im.nextSplice()
		im.say(Note, "net of more than two cavities", of[net][0].place, fmt.Sprintf("%q %d", of[net][0].signal, len(of[net])), "its wires meet on a splice")
		for _, it := range of[net] {
			it.to = end{splice: id}
		}
	}
	im.items = slices.DeleteFunc(im.items, func(it *item) bool { return gone[it] })
}

// bothWays merges the rows of two pin tables that each name the other's cavity, and two rows
// of one table that tell one wire at each of its ends.
func (im *importer) bothWays() {
	first := map[string]*item{}
	im.items = slices.DeleteFunc(im.items, func(it *item) bool {
		if it.from.term == nil || it.to.term == nil {
			return false
		}
		titled := it.from.term.titled && it.to.term.titled
		from, to := it.from.String(), it.to.String()
		other := first[to+" "+from]
		if other == nil || other.place == it.place || !oneWire(other, it, titled) {
			first[from+" "+to] = it
			return false
		}
		im.colours([]*item{other, it}, "the first is kept, the second in the note")
		im.merge(other, it)
		delete(first, to+" "+from)
		return true
	})
}

// oneWire: two rows that name each other's ends tell of one wire. Two pin tables do, unless one
// table numbers them otherwise; in a list of two ends they must say the same of it.
func oneWire(a, b *item, titled bool) bool {
	if titled {
		return a.ownID == b.ownID || a.block != b.block || a.ownID == "" || b.ownID == ""
	}
	return a.ownID == b.ownID && a.gauge.Size == b.gauge.Size && a.colour.Equal(b.colour) && a.signal == b.signal
}

// oneWay merges the row of a pin table that gives no far end with the one wire that another
// table, or list, says ends in its cavity: the two are one wire, told at each of its ends.
// Where the names of the two differ they may be two nets, and both stay.
func (im *importer) oneWay() {
	ends := map[string][]*item{} // by their far ends
	for _, it := range im.items {
		if s := it.to.String(); s != "" && it.to.term != nil && it.to.term.titled {
			ends[s] = append(ends[s], it)
		}
	}
	im.items = slices.DeleteFunc(im.items, func(it *item) bool {
		if it.from.term == nil || !it.from.term.titled || it.to.String() != "" || it.to.text != "" || it.state == spare {
			return false
		}
		there := ends[it.from.String()]
		if len(there) == 0 || there[0].block == it.block {
			return false
		}
		other := there[0]
		if it.signal != "" && other.signal != "" && !sameNet(it.signal, other.signal) {
			return false
		}
		if other.signal == "" {
			other.signal, other.drain = it.signal, it.drain
		} else if it.signal != "" && fold(it.signal) != fold(other.signal) {
			other.notes = append(other.notes, "name at "+it.from.String()+": "+it.signal)
		}
		im.colours([]*item{other, it}, "the first is kept, the second in the note")
		im.merge(other, it)
		return true
	})
}

// sameNet: two names of one thing, read without signs: equal, or one with every word of the
// other, as the sensor's own table says "signal" of what the main one calls "oil signal".
func sameNet(a, b string) bool {
	if strings.Join(plusMinus(a), "") != strings.Join(plusMinus(b), "") {
		return false
	}
	x, y := words(fold(a)), words(fold(b))
	if len(x) > len(y) {
		x, y = y, x
	}
	for _, w := range x {
		if !slices.Contains(y, w) {
			return false
		}
	}
	return len(x) > 0
}

// byID joins two cavities of pin tables that hold the wire of one id: a list with a
// row for each end. More than two, or two of one row, it leaves.
func (im *importer) byID() {
	of := map[string][]*item{}
	for _, it := range im.items {
		if it.ownID != "" && it.from.term != nil && it.from.term.titled && it.to.String() == "" {
			of[it.ownID] = append(of[it.ownID], it)
		}
	}
	for _, id := range slices.Sorted(maps.Keys(of)) {
		all := of[id]
		oneNet := all[0].net != "" && !slices.ContainsFunc(all, func(it *item) bool { return it.net != all[0].net })
		if len(all) < 3 || !apart(all) || oneNet { // a net joins them below
			continue
		}
		s := im.nextSplice()
		im.say(Warn, "one wire at more than two ends", all[0].place, id+" "+counted(len(all), "end", "ends"), "they meet on a splice, "+s)
		for _, it := range all {
			it.to = end{splice: s}
		}
		delete(of, id)
	}
	im.items = slices.DeleteFunc(im.items, func(b *item) bool {
		pair := of[b.ownID]
		if b.ownID == "" || len(pair) != 2 || pair[1] != b || pair[0].place == b.place {
			return false
		}
		a := pair[0]
		im.colours(pair, "the first is kept, the second in the note")
		if a.signal == "" {
			a.signal, a.drain = b.signal, b.drain
		} else if b.signal != "" && fold(a.signal) != fold(b.signal) {
			im.say(Warn, "two names for one wire", b.place, fmt.Sprintf("%s %q and %q", a.ownID, a.signal, b.signal), "the first is kept, the second in the note")
			a.notes = append(a.notes, "name at "+b.from.String()+": "+b.signal)
		}
		a.to = b.from
		im.merge(a, b)
		return true
	})
}

// apart: no two of them are told in one row.
func apart(all []*item) bool {
	for k, it := range all {
		if slices.ContainsFunc(all[:k], func(o *item) bool { return o.place == it.place }) {
			return false
		}
	}
	return true
}

// called is the name of a wire for a message: its signal, else its id, else its ends.
func (it *item) called() string {
	switch {
	case it.signal != "":
		return fmt.Sprintf("%q", it.signal)
	case it.ownID != "":
		return it.ownID
	}
	return joinNonEmpty(" to ", it.from.String(), it.to.String())
}

// merge takes into one item what another says of the same wire. Where both say
// something and not the same, the first holds and the second goes into the note.
func (im *importer) merge(a, b *item) {
	differs := func(what, first, second string) {
		im.say(Warn, "two "+what+"s for one wire", b.place, fmt.Sprintf("%s %s and %s", a.called(), first, second), "the first is kept, the second in the note")
		a.notes = append(a.notes, what+" at "+b.from.String()+": "+second)
	}
	switch {
	case a.gauge.Size == "":
		a.gauge.Size = b.gauge.Size
	case b.gauge.Size != "" && b.gauge.Size != a.gauge.Size:
		differs("size", a.gauge.Size, b.gauge.Size)
	}
	if a.gauge.Spec == "" {
		a.gauge.Spec = b.gauge.Spec
	} else if b.gauge.Spec != "" && a.gauge.Spec != b.gauge.Spec {
		differs("specification", a.gauge.Spec, b.gauge.Spec)
	}
	switch {
	case len(a.colour) == 0:
		a.colour = b.colour
	case len(b.colour) > 0 && !a.colour.Equal(b.colour):
		a.notes = append(a.notes, "colour at "+b.from.String()+": "+b.colour.String())
	}
	if a.ownID == "" {
		a.ownID = b.ownID
	} else if b.ownID != "" && b.ownID != a.ownID {
		differs("id", a.ownID, b.ownID)
	}
	if !a.length.Set {
		a.length = b.length
	} else if b.length.Set && b.length.V != a.length.V {
		differs("length", FormatLength(a.length.V), FormatLength(b.length.V))
	}
	if !a.amps.Set {
		a.amps = b.amps
	} else if b.amps.Set && b.amps.V != a.amps.V {
		differs("current", FormatCurrent(a.amps.V), FormatCurrent(b.amps.V))
	}
	if !a.fuse.Set {
		a.fuse = b.fuse
	} else if b.fuse.Set && b.fuse.V != a.fuse.V {
		differs("fuse", FormatCurrent(a.fuse.V), FormatCurrent(b.fuse.V))
	}
	if a.fuseName == "" {
		a.fuseName = b.fuseName
	}
	if a.cue.Conductors == 0 && !a.cue.Shielded && !a.cue.Twisted {
		a.cue, a.cueText = b.cue, b.cueText
	}
	if a.cable == "" {
		a.cable, a.shield, a.kind = b.cable, b.shield, b.kind
	} else if b.cable != "" && b.cable != a.cable {
		differs("cable", a.cable, b.cable)
	}
	a.with = append(a.with, b.with...)
	for _, n := range b.notes {
		if !slices.Contains(a.notes, n) {
			a.notes = append(a.notes, n)
		}
	}
}

// colours says where the rows of one net do not have one colour.
func (im *importer) colours(all []*item, did string) {
	var first *item
	for _, it := range all {
		switch {
		case len(it.colour) == 0:
		case first == nil:
			first = it
		case !first.colour.Equal(it.colour):
			im.say(Warn, "one net, two colours", it.place, fmt.Sprintf("%s %s %s, %s %s", first.called(), first.from.String(), first.colour, it.from.String(), it.colour),
				did)
			return
		}
	}
}

// roleOf is what a wire is for, where its name leaves no doubt.
func roleOf(it *item) model.Opt[string] {
	if it.state == spare {
		return model.Some("spare")
	}
	w := words(fold(it.signal))
	if len(w) == 0 {
		return model.Opt[string]{}
	}
	last := w[len(w)-1]
	switch {
	case len(w) > 1 && slices.Contains(w[:len(w)-1], "can") && slices.Contains([]string{"h", "l", "hi", "lo", "high", "low"}, last):
		return model.Some("data")
	case len(w) == 1 && (strings.HasPrefix(last, "canh") || strings.HasPrefix(last, "canl")) && len(last) == 4:
		return model.Some("data")
	case slices.Contains([]string{"ground", "gnd", "masse", "earth", "tierra", "massa"}, last):
		return model.Some("ground")
	}
	return model.Opt[string]{}
}
