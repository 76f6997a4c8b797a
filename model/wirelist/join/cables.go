package join

import (
	"cmp"
	"contralay/model/wirelist/cable"
	"contralay/model/wirelist/cablecells"
	"slices"
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/toldpairs"
	"contralay/model/wirelist/value"
)

// Cables finds which wires are made up together: those with one text in a cable column,
// those that name each other, and neighbours that say the same about a cable. Rows about
// the drain of a shield are no wires.
func Cables(im *draft.Importer) {
	drains := takeDrains(im)
	cablecells.Settle(im, drains)
	in := map[*draft.Item]int{} // number of the group it is in, from 1
	byColumn(im, in, drains)
	byName(im, in)
	byNeighbour(im, in)
	shieldsOver(im, in)
	giveDrains(im, drains)
	for _, it := range im.Items {
		if it.Cable != "" {
			says := it.Cable
			if strings.Contains(it.CueText, it.Cable) {
				says = it.CueText
			}
			it.Notes = append(it.Notes, "cable: "+says)
			im.Say(report.Warn, "a cable of one wire", it.Place, it.Cable, "no unit made; kept in the note")
			continue
		}
		if in[it] > 0 {
			continue
		}
		if it.Cue.IsCable() {
			says := cmp.Or(it.CueText, it.Cue.String())
			it.Notes = append(it.Notes, says)
			im.Say(report.Warn, "a cable, and no other wire beside it is part of it", it.Place, says, "no unit made; kept in the note")
		} else if it.CueText != "" {
			it.Notes = append(it.Notes, it.CueText)
		}
	}
}

// byColumn groups the wires with one text in the cable column.
func byColumn(im *draft.Importer, in map[*draft.Item]int, drains []*draft.Item) {
	of := map[string][]*draft.Item{}
	var order []string
	for _, it := range im.Items {
		if it.Cable == "" {
			continue
		}
		if of[it.Cable] == nil {
			order = append(order, it.Cable)
		}
		of[it.Cable] = append(of[it.Cable], it)
	}
	for _, text := range order {
		g, _ := value.ParseGauge(text, value.BareAWG, value.MarkUnknown)
		if cable.IsMark(text) {
			g = value.Gauge{} // its number counts the cables
		}
		more := cable.Words(text)
		g.Shielded, g.Twisted = g.Shielded || more.Shielded, g.Twisted || more.Twisted
		// A word about the kind of cable, not its name: neighbours go together.
		if kind, ok := value.ParseGauge(text, value.BareAWG, value.MarkUnknown); ok && kind.IsCable() && !cable.IsMark(text) {
			for _, it := range of[text] {
				it.Cue, it.CueText, it.Cable = cable.Twist(text, g), text, ""
				if it.Gauge.Spec == "" {
					it.Gauge.Size = cmp.Or(it.Gauge.Size, kind.Size)
				}
			}
			continue
		}
		if cable.IsOnlySize(text) { // four rows of "25 mm²" are four wires, and no cable of four
			for _, it := range of[text] {
				it.Gauge.Size, it.Cable = cmp.Or(it.Gauge.Size, g.Size), ""
			}
			continue
		}
		if len(of[text]) < 2 {
			continue // said of one wire: cables reports it
		}
		if !g.Twisted && !g.Shielded && draft.AreBare(of[text], drains, text) {
			for _, it := range of[text] {
				it.CueText, it.Cable = "cable: "+it.Cable, ""
			}
			im.KeepCores(of[text], text)
			continue
		}
		for _, it := range of[text] {
			g.Shielded, g.Twisted = g.Shielded || it.Kind.Shielded, g.Twisted || it.Kind.Twisted
		}
		for _, side := range toldpairs.Apart(im, sidesOf(im, of[text], text), text) {
			im.Group(side, g, text, in)
		}
		for _, it := range of[text] {
			if in[it] > 0 {
				it.Cable = "" // its name is the unit's
			}
		}
	}
}

// shieldsOver puts the shields that have a name of their own over the groups: one over each
// group that is all under it. One over several, or over a part, stays in the notes.
func shieldsOver(im *draft.Importer, in map[*draft.Item]int) {
	under := map[string]map[int]bool{}
	for _, it := range im.Items {
		if it.Shield != "" {
			if under[it.Shield] == nil {
				under[it.Shield] = map[int]bool{}
			}
			under[it.Shield][in[it]] = true
		}
	}
	said := map[string]bool{}
	for _, it := range im.Items {
		if it.Shield == "" || it.Shield == it.Cable {
			continue
		}
		g, whole := in[it], in[it] > 0 && len(under[it.Shield]) == 1
		if whole {
			for _, o := range im.Groups[g-1].Items {
				whole = whole && o.Shield == it.Shield
			}
		}
		if whole {
			im.Groups[g-1].Gauge.Shielded = true
			if im.Groups[g-1].Name != it.Shield {
				it.Notes = append(it.Notes, "shield: "+it.Shield)
			}
			continue
		}
		it.Notes = append(it.Notes, "shield: "+it.Shield)
		if !said[it.Shield] {
			said[it.Shield] = true
			im.Say(report.Warn, "a shield over more than one unit, or over a part of one", it.Place, it.Shield,
				"kept in the notes; no shield made")
		}
	}
}

// byName groups a wire with those that its note names: by their ids, in a table that
// gives its wires none by their cavities, and by a name that one wire has.
func byName(im *draft.Importer, in map[*draft.Item]int) {
	if !slices.ContainsFunc(im.Items, func(it *draft.Item) bool { return len(it.With) > 0 }) {
		return
	}
	byID, byCount, bySignal := map[string]*draft.Item{}, map[string]*draft.Item{}, map[string]*draft.Item{}
	pins := map[draft.End]*draft.Item{}
	stretches := stretchesOf(im.Items)
	for _, it := range im.Items {
		if it.OwnID != "" && byID[it.OwnID] == nil {
			byID[it.OwnID] = it
		}
		if it.Counted != "" && byCount[it.Counted] == nil {
			byCount[it.Counted] = it
		}
		pins[draft.End{Term: it.From.Term, Pin: it.From.Pin}] = it
		if key := signalKey(it.Signal); key != "" {
			if o, twice := bySignal[key]; !twice {
				bySignal[key] = it
			} else if o == nil || !slices.Contains(stretches[o], it) {
				bySignal[key] = nil // one name of several wires says none of them
			}
		}
	}
	named := func(it *draft.Item, id string) *draft.Item {
		if o := pins[draft.End{Term: it.From.Term, Pin: id}]; it.OwnID == "" && it.From.Term != nil && o != nil && o != it {
			return o // beside cavities without ids, "with 3" is the cavity, whatever another table numbers
		}
		if o := cmp.Or(byID[id], byCount[id]); o != nil {
			return o
		}
		if connector, pin, ok := name.SplitEnd(id); ok && im.ByKey[name.Key(connector)] != nil {
			if o := pins[draft.End{Term: im.ByKey[name.Key(connector)], Pin: pin}]; o != nil {
				return o
			}
		}
		pin := name.WithoutPinWord(id)
		if o := pins[draft.End{Term: it.From.Term, Pin: pin}]; (it.OwnID == "" || pin != id) && it.From.Term != nil && o != nil {
			return o
		}
		return bySignal[signalKey(id)]
	}
	pieces := piecesOf(im)
	of := func(it *draft.Item, id string) *draft.Item {
		if o := pieces[pieceOf(it, id)]; o != nil {
			return o
		}
		o := named(it, id)
		for _, s := range stretches[o] {
			if besideEachOther(s, it) {
				return s
			}
		}
		return o
	}
	for _, it := range im.Items {
		if len(it.With) == 0 {
			continue
		}
		if u := in[it]; u > 0 {
			if slices.ContainsFunc(it.With, func(id string) bool { o := of(it, id); return o == nil || in[o] != u }) {
				im.Say(report.Warn, "pairs with a wire that is not in its unit", it.Place, it.CueText, "kept in the note")
				it.Notes = append(it.Notes, it.CueText)
			}
			continue
		}
		group := []*draft.Item{it}
		g := it.Cue
		for _, id := range it.With {
			other := of(it, id)
			if other == nil || other == it || in[other] > 0 || slices.Contains(group, other) {
				im.Say(report.Warn, "pairs with a wire that is not there or in another unit", it.Place, id, "kept in the note")
				it.Notes = append(it.Notes, it.CueText)
				group, it.CueText = nil, ""
				break
			}
			group = append(group, other)
			g.Shielded, g.Twisted = g.Shielded || other.Cue.Shielded, g.Twisted || other.Cue.Twisted
		}
		if group != nil {
			im.Group(group, g, "", in)
		}
	}
}

// piece is a wire by its id or its name, and the two devices that it runs between: one that goes through a bulkhead has two pieces, and
// each is made up with that of another wire on its side.
type piece struct {
	called   string
	from, to *draft.Term
}

func pieceOf(it *draft.Item, called string) piece {
	return piece{signalKey(called), it.From.Term, it.To.Term}
}

// piecesOf are the wires that are told in several pieces; nil under what two of them are called.
func piecesOf(im *draft.Importer) map[piece]*draft.Item {
	rows := map[table.Place]int{}
	for _, it := range im.Items {
		rows[it.Place]++
	}
	all := map[piece]*draft.Item{}
	for _, it := range im.Items {
		if rows[it.Place] < 2 || it.To.Term == nil {
			continue
		}
		for _, called := range []string{it.OwnID, it.Signal} {
			if called == "" {
				continue
			}
			_, twice := all[pieceOf(it, called)]
			if all[pieceOf(it, called)] = it; twice {
				all[pieceOf(it, called)] = nil
			}
		}
	}
	return all
}

// signalKey is a name as it is compared: its signs count, "CRANK +" is not "CRANK -".
func signalKey(signal string) string { return strings.Join(strings.Fields(table.Fold(signal)), "") }

// byNeighbour groups rows that follow each other in one table, start at one
// connector and say the same of a cable, as many as the cable has conductors. Where no
// row says how many they are (two, or three where there are three), both ends must be at one device, or the names
// must be of one thing: three shielded wires that stand below each other are no triple.
func byNeighbour(im *draft.Importer, in map[*draft.Item]int) {
	for i := 0; i < len(im.Items); {
		it := im.Items[i]
		if in[it] > 0 || !it.Cue.IsCable() {
			i++
			continue
		}
		run := []*draft.Item{it}
		for j := i + 1; j < len(im.Items) && sameCable(im, it, im.Items[j]) && in[im.Items[j]] == 0; j++ {
			run = append(run, im.Items[j])
		}
		if !it.Cue.Twisted && !it.Cue.Shielded {
			im.KeepCores(run, cmp.Or(run[0].CueText, run[0].Cue.String()))
			i += len(run)
			continue
		}
		n := max(it.Cue.Conductors, 2)
		if it.Cue.Conductors == 0 && len(run) == 3 {
			n = 3 // a sensor and its ground
		}
		if it.Cue.Conductors == 0 && !(it.To.Term != nil && it.From.Term != nil && len(run) == n) && !(it.Cue.Twisted &&
			ofOneThing(run, n)) {
			i += len(run)
			continue
		}
		if it.Cue.Conductors == 0 && !it.Cue.Twisted && n <= len(run) {
			var rows []table.Row
			for _, one := range run {
				rows = append(rows, table.Row{Line: one.Place.Row})
			}
			im.Doubt("a shield beside rows that name no cable", it.Place, it.CueText, "taken as one cable", rows)
		}
		k := 0
		for ; k+n <= len(run); k += n {
			im.Group(run[k:k+n], it.Cue, "", in)
		}
		i += len(run)
	}
}

func sameCable(im *draft.Importer, a, b *draft.Item) bool {
	poles := a.Cue.Twisted && toldpairs.Poles(a.Signal, b.Signal)
	return a.Block == b.Block && a.From.Term == b.From.Term && (a.To.Term == b.To.Term || poles) &&
		b.Cue.IsCable() && a.Cue.Conductors == b.Cue.Conductors && a.Cue.Shielded == b.Cue.Shielded && a.Cue.Twisted == b.Cue.Twisted &&
		a.Gauge.Size == b.Gauge.Size
}

// ofOneThing reports whether the names of each n items of a run are the same but for their ends, "CAN H" and
// "CAN L", "CRANK +" and "CRANK -", or their marks join them.
func ofOneThing(run []*draft.Item, n int) bool {
	for k := 0; k+n <= len(run); k += n {
		var signals []string
		bracket := true
		for _, it := range run[k : k+n] {
			signals = append(signals, it.Signal)
			bracket = bracket && it.Joined
		}
		if stem(signals) == "" && !bracket || !namesDiffer(run[k:k+n]) && !bracket {
			return false
		}
	}
	return len(run) >= n
}

// namesDiffer reports whether no two of some items have one name.
func namesDiffer(all []*draft.Item) bool {
	seen := map[string]bool{}
	for _, it := range all {
		seen[it.Signal] = true
	}
	return len(seen) == len(all)
}
