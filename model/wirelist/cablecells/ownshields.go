package cablecells

import (
	"slices"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/value"
)

// Settle settles what the cells about cables say before units are made of them. drains are the rows that say where a shield is grounded.
func Settle(im *draft.Importer, drains []*draft.Item) {
	partners(im.Items)
	ownShields(im, drains)
	remarkShields(im, drains)
}

// ownShields keeps a shield in the notes that stands beside the size of a wire and says of no cable, no cores and no twist: it is as
// likely one core with a shield of its own, and two such rows are no pair. Where a row of the table is the drain of a shield, the shield
// is of a cable.
//
//	Pin | Function | Gauge       | Goes to
//	A11 | Crank +  | 22 shielded | Crank sensor
//	A12 | Crank -  | 22 shielded | Crank sensor
func ownShields(im *draft.Importer, drains []*draft.Item) {
	var all []*draft.Item
	for _, it := range im.Items {
		if c := it.Cue; !c.Shielded || !it.Gauge.Shielded || c.Twisted || c.Conductors > 0 || c.Spec != "" ||
			it.Gauge.Size == "" || it.CueText == "" || it.Cable != "" || it.Shield != "" || len(it.With) > 0 ||
			slices.ContainsFunc(drains, func(d *draft.Item) bool { return d.Block == it.Block }) || !saysSize(it.CueText) {
			continue
		}
		all = append(all, it)
	}
	if len(all) < 2 { // package join says that it is alone
		return
	}
	im.SayOf(all, "a shield in the size of a wire", all[0].CueText, "no unit made, as no cable is named; kept in the notes")
	for _, it := range all {
		it.Notes = append(it.Notes, it.CueText)
		it.Cue, it.CueText = value.Gauge{}, ""
	}
}

// saysSize reports whether a text has the size of a wire in it.
func saysSize(text string) bool {
	g, ok := value.ParseGauge(text, value.BareAWG, value.MarkUnknown)
	return ok && g.Size != ""
}
