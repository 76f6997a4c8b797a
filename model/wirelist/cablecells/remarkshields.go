package cablecells

import (
	"slices"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/value"
)

// remarkShields keeps a shield in the notes that the remark of each of some wires tells, of no cable, no cores and no twist, where the
// wires do not have a connector to themselves at either end: each may be a core with a shield of its own, and nothing says which go
// together. Where a sensor has no other wires, its screened ones are a cable.
//
//	Old pin | New pin | Function | Comment      From  | To      | Remark
//	B7      | 29      | Crank +  | screened     ECU 3 | CRANK 1 | screened
//	B8      | 30      | Crank -  | screened     ECU 4 | CRANK 2 | screened
func remarkShields(im *draft.Importer, drains []*draft.Item) {
	var all []*draft.Item
	for _, it := range im.Items {
		if c := it.Cue; !it.Remarked || !c.Shielded || it.Gauge.Shielded || c.Twisted || c.Conductors > 0 || c.Spec != "" || c.Size != "" ||
			it.Cable != "" || it.Shield != "" || len(it.With) > 0 || it.Joined || it.From.Term == nil || it.To.Term == nil ||
			slices.ContainsFunc(drains, func(d *draft.Item) bool { return d.Block == it.Block }) {
			continue
		}
		all = append(all, it)
	}
	if len(all) < 2 {
		return // package join says that it is alone
	}
	others := map[*draft.Term]bool{} // connectors with a wire that has no shield
	for _, it := range im.Items {
		if !it.Cue.Shielded {
			others[it.From.Term], others[it.To.Term] = true, true
		}
	}
	all = slices.DeleteFunc(all, func(it *draft.Item) bool { return !others[it.From.Term] || !others[it.To.Term] })
	if len(all) < 2 {
		return
	}
	im.SayOf(all, "a shield beside rows that name no cable", all[0].CueText, "no unit made; kept in the notes")
	for _, it := range all {
		it.Notes = append(it.Notes, it.CueText)
		it.Cue, it.CueText = value.Gauge{}, ""
	}
}
