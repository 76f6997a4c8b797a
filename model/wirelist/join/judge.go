package join

import (
	"fmt"
	"slices"
	"strings"

	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/endtext"
	"contralay/model/wirelist/farside"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/pads"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/table"
)

// Judge looks for what in the lists contradicts itself.
func Judge(im *draft.Importer) {
	sharedCavities(im)
	openEnds(im)
	for _, t := range im.Terms {
		cavitiesOfInsert(im, t)
		freeAndWired(im, t)
		datesAsCavities(im, t)
		checkCounts(im, t)
	}
}

// sharedCavities finds those that two wires are in.
func sharedCavities(im *draft.Importer) {
	first := map[string]*draft.Item{}
	var through []passage
	for _, it := range im.Items {
		if s := it.From.String(); s != "" && s == it.To.String() {
			im.Say(report.Warn, "both ends in one cavity", it.Place, s+" wire "+im.H.Wires[it.Wire].ID, "kept")
			continue
		}
		for _, e := range []draft.End{it.From, it.To} {
			s := e.String()
			if s == "" || e.Splice != "" {
				continue
			}
			other := first[s]
			switch {
			case other == nil:
				first[s] = it
			case other.Place == it.Place: // said of the row
			case endtext.IsGroundStud(e.Term.ID), endtext.IsOtherStud(e.Term.ID) &&
				(roleOf(it).V == model.RoleGround) == (roleOf(other).V == model.RoleGround):
				// Said of the termination; ground and supply on one bolt is another matter.
			case isLink(it.Signal) || isLink(other.Signal) || it.FuseName != "" && it.FuseName == other.FuseName && e.Pin == it.FuseName:
				sayShared(im, s, other, it)
			case it.Signal != "" && other.Signal != "" && table.Fold(it.Signal) != table.Fold(other.Signal) && !oneTerminal(it, other) &&
				!shareGround(e, it, other) && (contrary(it.Signal, other.Signal) || !farside.GoesOn(it, other, e)):
				im.Say(report.Stop, "one cavity, two nets", it.Place,
					fmt.Sprintf("%s %q and, %s, %q", s, it.Signal, rowOf(other.Place, it.Place), other.Signal), "both kept")
			case other.Block != it.Block && it.Signal != "" && table.Fold(it.Signal) == table.Fold(other.Signal) &&
				farside.GoesOn(it, other, e):
				through = append(through, passage{e, other, it})
			default:
				sayShared(im, s, other, it)
			}
		}
	}
	sayPassages(im, through)
}

// sayShared says that two wires are in one cavity, with the rows of both.
func sayShared(im *draft.Importer, cavity string, a, b *draft.Item) {
	im.Say(report.Warn, "two wires in one cavity", b.Place,
		fmt.Sprintf("%s wires %s and %s", cavity, im.H.Wires[a.Wire].ID, im.H.Wires[b.Wire].ID), "both kept")
	if a.Place.File == b.Place.File && a.Place.Sheet == b.Place.Sheet && a.Place.Row < b.Place.Row {
		im.Rep.Findings[len(im.Rep.Findings)-1].Rows = []int{a.Place.Row, b.Place.Row}
	}
}

// oneTerminal reports whether two wires with two names may well share a terminal: each has both ends, each row
// says what its wire does, "feed to heater", "feed to siren", and neither contradicts the other.
func oneTerminal(a, b *draft.Item) bool {
	if a.To.String() == "" || b.To.String() == "" || contrary(a.Signal, b.Signal) {
		return false
	}
	x, y := name.Words(table.Fold(a.Signal)), name.Words(table.Fold(b.Signal))
	return slices.ContainsFunc(x, func(w string) bool { return len(w) > 2 && slices.Contains(y, w) })
}

// openEnds says which wires end in the list alone.
func openEnds(im *draft.Importer) {
	var open []string
	var at table.Place
	for _, it := range im.Items {
		w := &im.H.Wires[it.Wire]
		if w.From.V != "" && w.To.V != "" {
			continue
		}
		if len(open) == 0 {
			at = it.Place
		}
		if w.From.V == "" {
			im.Say(report.Warn, "wire without ends", it.Place, w.ID, "kept")
			continue
		}
		cavity := w.From.V
		if it.State == name.Spare {
			cavity += " (spare)"
		}
		open = append(open, cavity)
	}
	if len(open) > 0 {
		at.Row = 0
		im.Say(report.Warn, "no far end in the lists", at, report.Counted(len(open), "wire", "wires")+": "+shortList(open),
			"kept with one end")
	}
}

// fromMemory is said of an insert whose cavities have no source.
func fromMemory(ins catalogue.Insert) string {
	if ins.NamesStanding == catalogue.Memory {
		return " (names from memory: check the part)"
	}
	return ""
}

// cavitiesOfInsert finds cavities that an insert does not have.
func cavitiesOfInsert(im *draft.Importer, t *draft.Term) {
	ins, ok := im.Cat.Insert(t.Insert.V)
	if !ok {
		return
	}
	for _, p := range t.Pins {
		if !ins.Has(p) {
			im.Say(report.Warn, "cavity that the insert lacks", t.At[p], t.ID+":"+p+", "+t.Insert.V+" has "+
				catalogue.NamesList(ins.Cavities)+fromMemory(ins), "kept")
		}
	}
}

// freeAndWired finds cavities that one place of the lists says are free, and another gives a wire.
func freeAndWired(im *draft.Importer, t *draft.Term) {
	for _, p := range t.Pins {
		if at, ok := t.Free[p]; ok && (t.State[p] == name.Used || t.State[p] == name.Spare) {
			im.Say(report.Stop, "free in one place, wired in another", at, t.ID+":"+p, "the wire is kept")
		}
	}
}

// datesAsCavities finds cavities that a spreadsheet took for a date, as it does with "1-2".
func datesAsCavities(im *draft.Importer, t *draft.Term) {
	for _, p := range t.Pins {
		if len(p) == 10 && p[4] == '-' && p[7] == '-' && strings.Trim(p, "0123456789-") == "" {
			im.Say(report.Warn, "a date where a cavity belongs", t.At[p], t.ID+":"+p, "kept; a spreadsheet makes one of 1-2")
		}
	}
}

// checkCounts holds what stands above a pin table against the table.
func checkCounts(im *draft.Importer, t *draft.Term) {
	n := map[string]int{"cavities": len(t.Pins)}
	for _, p := range t.Pins {
		if t.State[p] == name.Used || t.State[p] == name.Spare {
			n["contacts"]++
		} else {
			n["plugs"]++
		}
	}
	n["wires"] = n["contacts"]
	if ins, ok := im.Cat.Insert(t.Insert.V); ok {
		n["cavities"] = ins.Count()
	}
	for _, c := range t.Counts {
		pins := c.Of == "contacts" && c.N == n["cavities"] && strings.Contains(strings.ToLower(c.Text), "pin") // those without a wire, too
		if c.N != n[c.Of] && !pins && !(c.Of == "cavities" && 2*c.N == len(t.Pins) && pads.HasTwoSides(t.Pins)) {
			at := t.Place
			at.Row = c.Row
			im.Say(report.Warn, "count against the table", at, fmt.Sprintf("%q, the table has %d", c.Text, n[c.Of]), "the table holds")
		}
	}
}
