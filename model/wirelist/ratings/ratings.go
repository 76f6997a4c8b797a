// Package ratings takes the rows of a table of fuses for what they say of wires that another table has.
package ratings

import (
	"slices"
	"strings"

	"contralay/model"
	"contralay/model/unit"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// A sheet of the fuses says what each protects and what it is rated; the wires that begin at the fuses stand on another, with the box and
// the place of the fuse as their end.
//
//	Fuse panel PF2            Circuit | From  | To
//	Way | Feeds  | Amps       Fridge  | PF2-1 | FR-1
//	1   | Fridge | 5

// Names takes what a row of such a table says that its fuse feeds for a name, where a wire of another table has it: it is no end.
func Names(im *draft.Importer) {
	signals := map[string]int{} // the block of each name
	for _, it := range im.Items {
		if it.Signal != "" {
			signals[table.Fold(it.Signal)] = it.Block
		}
	}
	for _, it := range im.Items {
		if !isRating(it) || it.Signal != "" || it.To.Text == "" || it.To.Pin != "" {
			continue
		}
		if b, ok := signals[table.Fold(it.To.Text)]; ok && b != it.Block {
			it.Signal, it.To = it.To.Text, draft.End{}
		}
	}
}

// Told puts the rows of such a table behind those of the others, as a table of their own, where each has the place of one wire of theirs:
// they tell of it again. The figures are those of the fuses.
func Told(im *draft.Importer) {
	at := map[string][]*draft.Item{}
	for _, it := range im.Items {
		for _, e := range []draft.End{it.From, it.To} {
			if s := e.String(); s != "" && !isRating(it) {
				at[s] = append(at[s], it)
			}
		}
	}
	var last []*draft.Item
	im.Items = slices.DeleteFunc(im.Items, func(it *draft.Item) bool {
		if !isRating(it) || it.To.String() != "" || it.To.Text != "" {
			return false
		}
		of := at[it.From.String()]
		if len(of) != 1 || of[0].Block == it.Block || of[0].From.String() != it.From.String() {
			return false
		}
		if it.Signal != "" && table.Fold(it.Signal) != table.Fold(of[0].Signal) {
			it.Notes = append(it.Notes, "fuse: "+it.Signal)
			it.Signal = ""
		}
		if it.Signal == "" {
			it.Signal = of[0].Signal
		}
		if it.Amps.Set && !it.Fuse.Set {
			it.Fuse, it.Amps = it.Amps, model.Opt[unit.Ampere]{}
		}
		it.Block = -1 - it.Block
		last = append(last, it)
		return true
	})
	im.Items = append(im.Items, last...)
}

// isRating reports whether a row is one of a box of fuses and says how much its fuse is for, and nothing else of a wire.
func isRating(it *draft.Item) bool {
	return it.State == name.Used && (it.Amps.Set || it.Fuse.Set) && it.From.Term != nil && it.From.Pin != "" &&
		saysFuses(it.From.Term.Name.V) &&
		it.OwnID == "" && it.Gauge.Size == "" && it.Gauge.Spec == "" && len(it.Colour) == 0 && !it.Length.Set && it.Cable == "" &&
		len(it.With) == 0
}

// saysFuses reports whether the name of a box says that it has fuses or breakers. From memory, no source.
func saysFuses(called string) bool {
	f := table.Fold(called)
	return slices.ContainsFunc([]string{"fuse", "breaker", "sicherung", "fusib", "disjoncteur", "zekering", "sikring", "sakring",
		"bezpiecznik", "pojistk", "interruttor"}, func(w string) bool { return strings.Contains(f, w) })
}
