package draft

import (
	"cmp"
	"slices"

	"contralay/model/wirelist/value"
)

// AreBare reports whether the list says of the wires of one cable no more than that they are its cores: no pair, no twist, no shield, and
// no row that tells the drain of one. What is laid as one is cut and laid otherwise than single wires, and the name of a cable does not say
// so.
func AreBare(wires, drains []*Item, called string) bool {
	return !slices.ContainsFunc(wires, func(it *Item) bool { return !it.isBare() }) &&
		!slices.ContainsFunc(drains, func(d *Item) bool { return d.Cable == called || d.Shield == called })
}

func (it *Item) isBare() bool {
	for _, g := range []value.Gauge{it.Kind, it.Cue, it.Gauge} {
		if g.Twisted || g.Shielded {
			return false
		}
	}
	return it.Plain || it.Bare
}

// KeepCores keeps what the list says of the cable of some wires in their notes, as it is not called twisted; says is what stands in
// the report.
func (im *Importer) KeepCores(all []*Item, says string) {
	for _, it := range all {
		it.Notes = Once(append(it.Notes, cmp.Or(it.CueText, it.Cue.String())))
		it.Cue, it.CueText = value.Gauge{}, ""
	}
	im.SayOf(all, "cores of a cable that the list does not call twisted", says, "kept in the notes, no unit made")
}

// Once is some notes without those that stand among them already.
func Once(notes []string) (all []string) {
	for _, n := range notes {
		if !slices.Contains(all, n) {
			all = append(all, n)
		}
	}
	return all
}
