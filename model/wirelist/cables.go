package wirelist

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"contralay/model"
)

// group is the wires of one cable on their way to a unit.
type group struct {
	items  []*item
	gauge  Gauge
	name   string
	drains []*item // rows that say where its shield is grounded
}

// cables finds which wires are made up together: those with one text in a cable column,
// those that name each other, and neighbours that say the same about a cable. Rows about
// the drain of a shield are no wires.
func (im *importer) cables() {
	drains := im.drains()
	in := map[*item]int{} // number of the group it is in, from 1
	im.byColumn(in)
	im.byName(in)
	im.byNeighbour(in)
	im.shields(in)
	im.drained(drains)
	for _, it := range im.items {
		if it.cable != "" {
			it.notes = append(it.notes, "cable: "+it.cable)
			im.say(Warn, "a cable of one wire", it.place, it.cable, "no unit made; kept in the note")
			continue
		}
		if in[it] > 0 {
			continue
		}
		if isCable(it.cue) {
			says := it.cueText
			if says == "" {
				says = it.cue.String()
			}
			it.notes = append(it.notes, says)
			im.say(Warn, "a cable, and no other wire beside it is part of it", it.place, says, "no unit made; kept in the note")
		} else if it.cueText != "" {
			it.notes = append(it.notes, it.cueText)
		}
	}
}

// cableCells reads the columns about cables of one row: the name of a cable or of a shield,
// a mark that says yes, the wires it pairs with.
func (im *importer) cableCells(b *block, cells []string, it *item) {
	var names, shields []string
	for i, c := range b.cols {
		if c.field != FieldCable || i >= len(cells) || isNothing(cells[i]) {
			continue
		}
		head := loose(c.head)
		if head.Shielded && (head.Twisted || head.Conductors > 0) && strings.ContainsAny(c.head, "/,&") {
			head = Gauge{} // "Twist/Shield": the cell says which
		}
		switch text := cells[i]; yesOrNo(text) {
		case "no":
			continue
		case "yes":
			if isCable(head) {
				it.cue.Twisted, it.cue.Shielded = it.cue.Twisted || head.Twisted, it.cue.Shielded || head.Shielded
				it.cue.Conductors = max(it.cue.Conductors, head.Conductors)
				it.cueText = joinNonEmpty("; ", it.cueText, c.head)
				continue
			}
			names = append(names, text)
		default:
			if isBracket(text) && isCable(head) { // it joins the rows beside
				it.cue.Twisted, it.cue.Shielded = it.cue.Twisted || head.Twisted, it.cue.Shielded || head.Shielded
				it.cue.Conductors = max(it.cue.Conductors, head.Conductors)
				it.cueText = joinNonEmpty("; ", it.cueText, c.head)
				continue
			}
			if ids := partners(text); len(ids) > 0 {
				it.with, it.cueText = append(it.with, ids...), joinNonEmpty("; ", it.cueText, text)
				g := loose(text)
				it.cue.Shielded, it.cue.Twisted = it.cue.Shielded || g.Shielded, it.cue.Twisted || g.Twisted
				continue
			}
			if _, pin, ok := splitEnd(text); ok && strings.Contains(text, ":") && isCavity(pin) && head.Shielded {
				// Where the shield is grounded; the row of its drain would say so, too.
				it.cue.Shielded, it.cueText = true, joinNonEmpty("; ", it.cueText, c.head)
				it.notes = append(it.notes, joinNonEmpty(": ", c.head, text))
				im.say(Note, "shield taken to a cavity", it.place, text, "kept in the note, no drain made")
				continue
			}
			for _, name := range cableNames(text) {
				g := loose(name)
				switch {
				case g.Shielded && !g.Twisted && g.Conductors == 0 && isMark(name), head.Shielded && !isCable(g):
					shields = append(shields, name)
				default:
					names = append(names, name)
					it.kind.Twisted, it.kind.Shielded = it.kind.Twisted || head.Twisted, it.kind.Shielded || head.Shielded
				}
			}
		}
	}
	it.cable, it.shield = strings.Join(names, " "), strings.Join(shields, " ")
	if it.cable != "" { // a mark beside its name says how it is made
		it.kind.Shielded, it.kind.Twisted = it.kind.Shielded || it.cue.Shielded, it.kind.Twisted || it.cue.Twisted
	}
	if it.cable == "" {
		it.cable, it.kind.Shielded = it.shield, it.kind.Shielded || it.shield != ""
	}
}

// isBracket: signs that are drawn beside rows to join them.
func isBracket(text string) bool {
	return strings.Trim(text, "┐┘│├┤┌└─┼╮╯╭╰{}[]()⎫⎬⎭⎧⎨⎩⎤⎦⎡⎣|/<>") == ""
}

func yesOrNo(text string) string {
	switch strings.Trim(fold(text), " .") {
	case "y", "yes", "x", "ja", "j", "oui", "si", "s", "true":
		return "yes"
	case "n", "no", "nein", "non", "false", "none", "keine", "aucun":
		return "no"
	}
	return ""
}

// cableNames parts "TP1, SH1" and "TP1/SH1"; any other text is one name.
func cableNames(text string) []string {
	all := strings.FieldsFunc(text, func(r rune) bool { return strings.ContainsRune(",;/+&", r) })
	for k := range all {
		if all[k] = strings.TrimSpace(all[k]); !isMark(all[k]) {
			return []string{text}
		}
	}
	return all
}

// isMark: letters and a number behind them: "TP1", "SH 3", "Pair-2".
func isMark(name string) bool {
	letters := strings.TrimRight(name, "0123456789")
	return letters != name && len(name)-len(letters) <= 3 && strings.Trim(fold(strings.TrimRight(letters, " -_#.")), "abcdefghijklmnopqrstuvwxyz") == "" && strings.Trim(letters, " -_#.") != ""
}

// byColumn groups the wires with one text in the cable column.
func (im *importer) byColumn(in map[*item]int) {
	of := map[string][]*item{}
	var order []string
	for _, it := range im.items {
		if it.cable == "" {
			continue
		}
		if of[it.cable] == nil {
			order = append(order, it.cable)
		}
		of[it.cable] = append(of[it.cable], it)
	}
	for _, text := range order {
		g, _ := ParseGauge(text, BareAWG, MarkUnknown)
		if isMark(text) {
			g = Gauge{} // its number counts the cables
		}
		more := loose(text)
		g.Shielded, g.Twisted = g.Shielded || more.Shielded, g.Twisted || more.Twisted
		// A word about the kind of cable, not its name: neighbours go together.
		if kind, ok := ParseGauge(text, BareAWG, MarkUnknown); ok && isCable(kind) && !isMark(text) {
			for _, it := range of[text] {
				it.cue, it.cueText, it.cable = g, text, ""
			}
			continue
		}
		if len(of[text]) < 2 {
			continue // said of one wire: cables reports it
		}
		for _, it := range of[text] {
			g.Shielded, g.Twisted = g.Shielded || it.kind.Shielded, g.Twisted || it.kind.Twisted
		}
		im.group(of[text], g, text, in)
		for _, it := range of[text] {
			if in[it] > 0 {
				it.cable = "" // its name is the unit's
			}
		}
	}
}

// shields puts the shields that have a name of their own over the groups: one over each
// group that is all under it. One over several, or over a part, stays in the notes.
func (im *importer) shields(in map[*item]int) {
	under := map[string]map[int]bool{}
	for _, it := range im.items {
		if it.shield != "" {
			if under[it.shield] == nil {
				under[it.shield] = map[int]bool{}
			}
			under[it.shield][in[it]] = true
		}
	}
	said := map[string]bool{}
	for _, it := range im.items {
		if it.shield == "" || it.shield == it.cable {
			continue
		}
		g, whole := in[it], in[it] > 0 && len(under[it.shield]) == 1
		if whole {
			for _, o := range im.groups[g-1].items {
				whole = whole && o.shield == it.shield
			}
		}
		if whole {
			im.groups[g-1].gauge.Shielded = true
			continue
		}
		it.notes = append(it.notes, "shield: "+it.shield)
		if !said[it.shield] {
			said[it.shield] = true
			im.say(Warn, "a shield over more than one unit, or over a part of one", it.place, it.shield, "kept in the notes; no shield made")
		}
	}
}

// byName groups a wire with those that its note names: by their ids, and in a table that
// gives its wires none by their cavities.
func (im *importer) byName(in map[*item]int) {
	if !slices.ContainsFunc(im.items, func(it *item) bool { return len(it.with) > 0 }) {
		return
	}
	byID, byCount := map[string]*item{}, map[string]*item{}
	pins := map[end]*item{}
	for _, it := range im.items {
		if it.ownID != "" && byID[it.ownID] == nil {
			byID[it.ownID] = it
		}
		if it.counted != "" && byCount[it.counted] == nil {
			byCount[it.counted] = it
		}
		pins[end{term: it.from.term, pin: it.from.pin}] = it
	}
	of := func(it *item, id string) *item {
		if o := cmp.Or(byID[id], byCount[id]); o != nil || it.ownID != "" || it.from.term == nil {
			return o
		}
		return pins[end{term: it.from.term, pin: withoutPinWord(id)}]
	}
	for _, it := range im.items {
		if len(it.with) == 0 {
			continue
		}
		if u := in[it]; u > 0 {
			if slices.ContainsFunc(it.with, func(id string) bool { o := of(it, id); return o == nil || in[o] != u }) {
				im.say(Warn, "pairs with a wire that is not in its unit", it.place, it.cueText, "kept in the note")
				it.notes = append(it.notes, it.cueText)
			}
			continue
		}
		group := []*item{it}
		g := it.cue
		for _, id := range it.with {
			other := of(it, id)
			if other == nil || other == it || in[other] > 0 || slices.Contains(group, other) {
				im.say(Warn, "pairs with a wire that is not there or in another unit", it.place, id, "kept in the note")
				it.notes = append(it.notes, it.cueText)
				group, it.cueText = nil, ""
				break
			}
			group = append(group, other)
			g.Shielded, g.Twisted = g.Shielded || other.cue.Shielded, g.Twisted || other.cue.Twisted
		}
		if group != nil {
			im.group(group, g, "", in)
		}
	}
}

// byNeighbour groups rows that follow each other in one table, start at one
// connector and say the same of a cable, as many as the cable has conductors (two
// where it is not said, or three where there are three).
func (im *importer) byNeighbour(in map[*item]int) {
	for i := 0; i < len(im.items); {
		it := im.items[i]
		if in[it] > 0 || !isCable(it.cue) {
			i++
			continue
		}
		run := []*item{it}
		for j := i + 1; j < len(im.items) && im.alike(it, im.items[j]) && in[im.items[j]] == 0; j++ {
			run = append(run, im.items[j])
		}
		n := max(it.cue.Conductors, 2)
		if it.cue.Conductors == 0 && len(run) == 3 {
			n = 3 // a sensor and its ground
		}
		k := 0
		for ; k+n <= len(run); k += n {
			im.group(run[k:k+n], it.cue, "", in)
		}
		i += len(run)
	}
}

func isCable(g Gauge) bool { return g.Conductors > 1 || g.Shielded || g.Twisted }

func (im *importer) alike(a, b *item) bool {
	return isCable(b.cue) && a.block == b.block && a.from.term == b.from.term && a.to.term == b.to.term &&
		a.cue.Conductors == b.cue.Conductors && a.cue.Shielded == b.cue.Shielded && a.cue.Twisted == b.cue.Twisted && a.gauge.Size == b.gauge.Size
}

// group puts two to four wires together.
func (im *importer) group(all []*item, g Gauge, name string, in map[*item]int) {
	if len(all) > 4 {
		im.say(Warn, "a unit of more wires than a quad", all[0].place, joinNonEmpty(" ", name, counted(len(all), "wire", "wires")), "no unit made; kept in the notes")
		for _, it := range all {
			if it.cable != "" {
				it.notes, it.cable = append(it.notes, "cable: "+it.cable), ""
			} else if it.cueText != "" {
				it.notes = append(it.notes, it.cueText)
			}
			it.cue, it.cueText = Gauge{}, ""
		}
		return
	}
	if g.Conductors > 0 && g.Conductors != len(all) {
		im.say(Warn, "conductors of a cable against its rows", all[0].place, fmt.Sprintf("%d and %d", g.Conductors, len(all)), "made of the rows")
	}
	im.groups = append(im.groups, group{items: slices.Clone(all), gauge: g, name: name})
	for _, it := range all {
		in[it] = len(im.groups)
	}
}

// madeUp makes the units of the groups, now that the wires have ids.
func (im *importer) madeUp() {
	builds := map[int]string{2: "pair", 3: "triple", 4: "quad"}
	taken := map[string]int{} // the marks that the lists give their cables
	for _, g := range im.groups {
		taken[withoutKind(g.name)]++
	}
	for _, g := range im.groups {
		u := model.Unit{Build: model.Some(builds[len(g.items)])}
		var signals []string
		for _, it := range g.items {
			u.Wires = append(u.Wires, im.h.Wires[it.wire].ID)
			signals = append(signals, it.signal)
		}
		name := withoutKind(g.name)
		if name == "" {
			name = stem(signals)
		}
		if isDesignator(name) && taken[name] == 1 && !im.wireIDs[name] && !im.spliceIDs[name] {
			u.ID, name = name, ""
		}
		if name != "" {
			u.Name = model.Some(name)
		}
		for u.ID == "" || im.wireIDs[u.ID] || u.ID != withoutKind(g.name) && taken[u.ID] > 0 {
			im.units++
			u.ID = fmt.Sprintf("C%d", im.units)
		}
		kind := u.Build.V
		if g.gauge.Twisted {
			kind = "twisted " + kind
		}
		if g.gauge.Shielded {
			u.Shield = model.Some(true)
			kind = "shielded " + kind
		}
		for _, d := range g.drains {
			im.ground(&u, g, d)
		}
		im.h.Units = append(im.h.Units, u)
		im.kinds = append(im.kinds, kind)
	}
}

// withoutKind takes the words about the kind of a cable out of its name.
func withoutKind(name string) string {
	return strings.Join(slices.DeleteFunc(strings.Fields(name), func(w string) bool {
		var g Gauge
		return g.cable(strings.Trim(fold(w), ",.()"))
	}), " ")
}

// stem is the words that all signals start with, "CRANK" of "CRANK +" and "CRANK -".
func stem(signals []string) string {
	first := strings.Fields(signals[0])
	n := len(first)
	for _, s := range signals[1:] {
		f := strings.Fields(s)
		k := 0
		for k < min(n, len(f)) && strings.EqualFold(f[k], first[k]) {
			k++
		}
		n = k
	}
	return strings.Join(first[:n], " ")
}
