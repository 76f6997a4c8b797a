package join

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/table"
)

// Nets joins the cavities of pin tables that say no far end: two cavities of two
// connectors with one name are the ends of one wire; as many in one connector as in
// the other are wires side by side; any other number meets on a splice. Cavities of
// one connector alone stay wires with one end.
func Nets(im *draft.Importer) {
	bothWays(im)
	oneWay(im)
	byID(im)
	of := map[string][]*draft.Item{}
	var order []string
	for _, it := range im.Items {
		if it.Net == "" || it.State == name.Spare || it.From.Term == nil || it.To.String() != "" {
			continue
		}
		if of[it.Net] == nil {
			order = append(order, it.Net)
		}
		of[it.Net] = append(of[it.Net], it)
	}
	gone, ends := map[*draft.Item]bool{}, pairsOf(im)
	alike := plugs{im: im}
	var joined []*draft.Item // of two connectors that do not share all names of either, or are devices of one kind
	var apart []*draft.Item  // of one name in two connectors, and not joined
	for _, net := range order {
		by := map[*draft.Term][]*draft.Item{}
		var terms []*draft.Term
		for _, it := range of[net] {
			if by[it.From.Term] == nil {
				terms = append(terms, it.From.Term)
			}
			by[it.From.Term] = append(by[it.From.Term], it)
		}
		if len(terms) < 2 {
			continue
		}
		if isKindOfPin(of[net][0].Signal) || isCommonName(of[net][0].Signal) && (len(terms) > 2 || !ends.meet(terms[0], terms[1])) {
			im.Say(report.Note, "one name in several connectors", of[net][0].Place, fmt.Sprintf("%q in %s", of[net][0].Signal,
				report.Counted(len(terms), "connector", "connectors")), "not joined: many devices have one of that name")
			continue
		}
		if (alike.all(terms) || alike.devices(terms)) && !saysBus(of[net][0].Signal) {
			alike.apart = append(alike.apart, of[net]...)
			continue
		}
		a, b := by[terms[0]], by[terms[1]]
		if len(terms) == 2 && !ends.share(terms[0], terms[1]) || saysWay(of[net][0].Signal) {
			apart = append(apart, of[net]...)
			for _, it := range of[net] {
				far := by[terms[0]]
				if it.From.Term == terms[0] {
					far = b
				}
				it.Notes = append(it.Notes, "one name with "+far[0].From.String())
			}
			continue
		}
		if len(terms) == 2 && len(a) == len(b) {
			differingColours(im, of[net], "the first is kept, the second in the note")
			if len(a) > 1 {
				im.Say(report.Warn, "net with several cavities at both ends", a[0].Place, fmt.Sprintf("%q", a[0].Signal),
					"joined in the order of the lists")
			}
			if ofOneKind(terms) || ends.shared(terms[0], terms[1]) < min(len(ends.nets[terms[0]]), len(ends.nets[terms[1]])) {
				joined = append(joined, of[net]...)
			}
			for k := range a {
				a[k].To = b[k].From
				merge(im, a[k], b[k])
				gone[b[k]] = true
			}
			continue
		}
		differingColours(im, of[net], "each wire keeps its own")
		id := nextSplice(im)
		im.Say(report.Note, "net of more than two cavities", of[net][0].Place, fmt.Sprintf("%q %d", of[net][0].Signal, len(of[net])),
			"its wires meet on a splice")
		for _, it := range of[net] {
			it.To = draft.End{Splice: id}
		}
	}
	im.Items = slices.DeleteFunc(im.Items, func(it *draft.Item) bool { return gone[it] })
	sayNames(im, apart, "a name that two connectors have", "not joined; the other place is in the note")
	im.SayOf(alike.apart, "plugs with the same names in the same cavities", "",
		"not joined: each has wires of its own; say the far ends if it has not")
	sayNames(im, joined, "joined by their names alone", "a wire from the one connector to the other; say its far ends if it is not")
}

// sayNames names the rows of two connectors that have a name in common, once for each sheet.
func sayNames(im *draft.Importer, all []*draft.Item, rule, did string) {
	by := map[table.Place][]table.Row{}
	var order []table.Place
	for _, it := range all {
		at := table.Place{File: it.Place.File, Sheet: it.Place.Sheet}
		if by[at] == nil {
			order = append(order, at)
		}
		by[at] = append(by[at], table.Row{Line: it.Place.Row})
	}
	for _, at := range order {
		slices.SortFunc(by[at], func(a, b table.Row) int { return a.Line - b.Line })
		place := at
		place.Row = by[at][0].Line
		im.Doubt(rule, place, "", did, by[at])
	}
}

// bothWays merges the rows of two pin tables that each name the other's cavity, and two rows
// of one table that tell one wire at each of its ends.
func bothWays(im *draft.Importer) {
	first := map[string]*draft.Item{}
	im.Items = slices.DeleteFunc(im.Items, func(it *draft.Item) bool {
		if it.From.Term == nil || it.To.Term == nil {
			return false
		}
		titled := it.From.Term.Titled && it.To.Term.Titled
		from, to := it.From.String(), it.To.String()
		other := first[to+" "+from]
		if other == nil || other.Place == it.Place || !oneWire(other, it, titled) {
			first[from+" "+to] = it
			return false
		}
		differingColours(im, []*draft.Item{other, it}, "the first is kept, the second in the note")
		merge(im, other, it)
		delete(first, to+" "+from)
		return true
	})
}

// oneWire reports whether two rows that name each other's ends tell of one wire. Two pin tables
// do, unless one table numbers them otherwise; in a list of two ends they must say the same of
// it.
func oneWire(a, b *draft.Item, titled bool) bool {
	if titled {
		return a.OwnID == b.OwnID || a.Block != b.Block || a.OwnID == "" || b.OwnID == ""
	}
	if a.Block != b.Block && (a.OwnID == "" || b.OwnID == "" || a.OwnID == b.OwnID) {
		return !contradicts(a, b) // another table tells it from its other end, and may say less of it
	}
	return a.OwnID == b.OwnID && a.Gauge.Size == b.Gauge.Size && a.Colour.Equal(b.Colour) && a.Signal == b.Signal
}

// oneWay merges the row of a pin table that gives no far end with the one wire that another
// table, or list, says ends in its cavity: the two are one wire, told at each of its ends.
// Where the names of the two differ they may be two nets, and both stay.
func oneWay(im *draft.Importer) {
	ends := map[string][]*draft.Item{} // by their far ends
	for _, it := range im.Items {
		if s := it.To.String(); s != "" && it.To.Term != nil && it.To.Term.Titled {
			ends[s] = append(ends[s], it)
		}
	}
	im.Items = slices.DeleteFunc(im.Items, func(it *draft.Item) bool {
		if it.From.Term == nil || !it.From.Term.Titled || it.To.String() != "" || it.To.Text != "" || it.State == name.Spare {
			return false
		}
		there := ends[it.From.String()]
		if len(there) == 0 || there[0].Block == it.Block {
			return false
		}
		other := there[0]
		if it.Signal != "" && other.Signal != "" && !sameNet(it.Signal, other.Signal) {
			return false
		}
		if other.Signal == "" {
			other.Signal, other.Drain = it.Signal, it.Drain
		} else if it.Signal != "" && table.Fold(it.Signal) != table.Fold(other.Signal) {
			other.Notes = append(other.Notes, "name at "+it.From.String()+": "+it.Signal)
		}
		differingColours(im, []*draft.Item{other, it}, "the first is kept, the second in the note")
		merge(im, other, it)
		return true
	})
}

// sameNet reports whether two names, read without signs, are of one thing: equal, or one with
// every word of the other, as the sensor's own table says "signal" of what the main one calls
// "oil signal".
func sameNet(a, b string) bool {
	if !draft.SameSigns(a, b) {
		return false
	}
	x, y := name.Words(table.Fold(a)), name.Words(table.Fold(b))
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
func byID(im *draft.Importer) {
	of := map[string][]*draft.Item{}
	for _, it := range im.Items {
		if it.OwnID != "" && it.From.Term != nil && it.From.Term.Titled && it.To.String() == "" {
			of[it.OwnID] = append(of[it.OwnID], it)
		}
	}
	for _, id := range slices.Sorted(maps.Keys(of)) {
		all := of[id]
		oneNet := all[0].Net != "" && !slices.ContainsFunc(all, func(it *draft.Item) bool { return it.Net != all[0].Net })
		if len(all) < 3 || !apart(all) || oneNet { // a net joins them below
			continue
		}
		s := nextSplice(im)
		im.Say(report.Warn, "one wire at more than two ends", all[0].Place, id+" "+report.Counted(len(all), "end", "ends"),
			"they meet on a splice, "+s)
		for _, it := range all {
			it.To = draft.End{Splice: s}
		}
		delete(of, id)
	}
	im.Items = slices.DeleteFunc(im.Items, func(b *draft.Item) bool {
		pair := of[b.OwnID]
		if b.OwnID == "" || len(pair) != 2 || pair[1] != b || pair[0].Place == b.Place {
			return false
		}
		a := pair[0]
		if apart := a.Signal != "" && b.Signal != "" && !sameNet(a.Signal, b.Signal); apart && (a.From.Term == b.From.Term ||
			contrary(a.Signal, b.Signal)) {
			im.Say(report.Stop, "one id, two nets", b.Place, fmt.Sprintf("%s %q and, %s, %q", a.OwnID, b.Signal, rowOf(a.Place, b.Place),
				a.Signal), "two wires are made; give one of them another id")
			return false
		}
		differingColours(im, pair, "the first is kept, the second in the note")
		if a.Signal == "" {
			a.Signal, a.Drain = b.Signal, b.Drain
		} else if b.Signal != "" && table.Fold(a.Signal) != table.Fold(b.Signal) {
			im.Say(report.Warn, "two names for one wire", b.Place, fmt.Sprintf("%s %q and %q", a.OwnID, a.Signal, b.Signal),
				"the first is kept, the second in the note")
			a.Notes = append(a.Notes, "name at "+b.From.String()+": "+b.Signal)
		}
		a.To = b.From
		merge(im, a, b)
		return true
	})
}

// contrary reports whether one of two names is of a ground and the other of a supply.
func contrary(a, b string) bool {
	return isGround(a) && isSupply(b) || isSupply(a) && isGround(b)
}

// isGround reports whether a name is of a ground.
func isGround(signal string) bool {
	return slices.ContainsFunc(name.Words(table.Fold(signal)), func(w string) bool {
		switch w {
		case "ground", "gnd", "earth", "masse", "tierra", "massa", "masa", "0v", "return", "chassis":
			return true
		}
		return false
	})
}

// isSupply reports whether a name is of a supply: a voltage above none, or a word for it.
func isSupply(signal string) bool {
	f := table.Fold(signal)
	for _, w := range name.Words(f) {
		volts := strings.TrimSuffix(w, "v")
		switch {
		case w != volts && volts != "" && strings.Trim(volts, "0123456789") == "" && strings.Trim(volts, "0") != "":
			return true
		case w == "supply" || w == "feed" || w == "power" || w == "vcc" || w == "vbat" || w == "batt" || w == "battery" || w == "plus":
			return true
		}
	}
	return strings.Contains(f, " v ") && !strings.HasPrefix(f, "0 v")
}

// apart reports whether no two items are told in one row.
func apart(all []*draft.Item) bool {
	for k, it := range all {
		if slices.ContainsFunc(all[:k], func(o *draft.Item) bool { return o.Place == it.Place }) {
			return false
		}
	}
	return true
}
