package wirelist

import (
	"fmt"
	"slices"
	"strings"

	"contralay/model"
)

// cables makes units: of wires with one text in a cable column, of wires that name
// each other, and of neighbours that say the same about a cable.
func (im *importer) cables() {
	in := map[*item]int{} // number of the unit it is in, from 1
	im.byColumn(in)
	im.byName(in)
	im.byNeighbour(in)
	for _, it := range im.items {
		if it.cable != "" && !isNothing(it.cable) {
			it.notes = append(it.notes, "cable: "+it.cable)
		}
		if in[it] > 0 {
			continue
		}
		if it.cue.Conductors > 1 || it.cue.Shielded || it.cue.Twisted {
			says := it.cueText
			if says == "" {
				says = it.cue.String()
				it.notes = append(it.notes, says)
			} else {
				it.notes = append(it.notes, says)
			}
			im.say(Warn, "a cable, and no other wire beside it is part of it", it.place, says, "no unit made; kept in the note")
		} else if it.cueText != "" {
			it.notes = append(it.notes, it.cueText)
		}
	}
}

// byColumn groups the wires with one text in the cable column.
func (im *importer) byColumn(in map[*item]int) {
	of := map[string][]*item{}
	var order []string
	for _, it := range im.items {
		if it.cable == "" || isNothing(it.cable) {
			continue
		}
		if of[it.cable] == nil {
			order = append(order, it.cable)
		}
		of[it.cable] = append(of[it.cable], it)
	}
	for _, text := range order {
		if len(of[text]) < 2 {
			continue // said of one wire: cables reports it
		}
		g, _ := ParseGauge(text, BareAWG, MarkUnknown)
		if more := loose(text); more.Shielded || more.Twisted {
			g.Shielded, g.Twisted = g.Shielded || more.Shielded, g.Twisted || more.Twisted
		}
		// A word about the kind of cable, not its name: neighbours go together.
		if kind, ok := ParseGauge(text, BareAWG, MarkUnknown); ok && isCable(kind) {
			for _, it := range of[text] {
				it.cue, it.cueText, it.cable = g, text, ""
			}
			continue
		}
		im.unit(of[text], g, text, in)
		for _, it := range of[text] {
			if in[it] > 0 {
				it.cable = "" // its name is the unit's
			}
		}
	}
}

// byName groups a wire with those that its note names.
func (im *importer) byName(in map[*item]int) {
	byID := map[string]*item{}
	for _, it := range im.items {
		if it.ownID != "" && byID[it.ownID] == nil {
			byID[it.ownID] = it
		}
	}
	for _, it := range im.items {
		if len(it.with) == 0 {
			continue
		}
		if u := in[it]; u > 0 {
			if slices.ContainsFunc(it.with, func(id string) bool { return byID[id] == nil || in[byID[id]] != u }) {
				im.say(Warn, "pairs with a wire that is not in its unit", it.place, it.cueText, "kept in the note")
				it.notes = append(it.notes, it.cueText)
			}
			continue
		}
		group := []*item{it}
		g := it.cue
		for _, id := range it.with {
			other := byID[id]
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
			im.unit(group, g, "", in)
		}
	}
}

// byNeighbour groups rows that follow each other in one table, start at one
// connector and say the same of a cable, as many as the cable has conductors (two
// where it is not said).
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
		k := 0
		for ; k+n <= len(run); k += n {
			im.unit(run[k:k+n], it.cue, "", in)
		}
		i += len(run)
	}
}

func isCable(g Gauge) bool { return g.Conductors > 1 || g.Shielded || g.Twisted }

func (im *importer) alike(a, b *item) bool {
	return isCable(b.cue) && a.block == b.block && a.from.term == b.from.term && a.to.term == b.to.term &&
		a.cue.Conductors == b.cue.Conductors && a.cue.Shielded == b.cue.Shielded && a.cue.Twisted == b.cue.Twisted && a.gauge.Size == b.gauge.Size
}

// unit makes one unit of two to four wires.
func (im *importer) unit(group []*item, g Gauge, name string, in map[*item]int) {
	builds := map[int]string{2: "pair", 3: "triple", 4: "quad"}
	u := model.Unit{}
	var signals []string
	for _, it := range group {
		u.Wires = append(u.Wires, im.h.Wires[it.wire].ID)
		signals = append(signals, it.signal)
	}
	if b := builds[len(group)]; b != "" {
		u.Build = model.Some(b)
	} else {
		im.say(Warn, "a unit of more wires than a quad", group[0].place, counted(len(group), "wire", "wires"), "no unit made; kept in the notes")
		return
	}
	if g.Conductors > 0 && g.Conductors != len(group) {
		im.say(Warn, "conductors of a cable against its rows", group[0].place, fmt.Sprintf("%d and %d", g.Conductors, len(group)), "made of the rows")
	}
	if name = withoutKind(name); name == "" {
		name = stem(signals)
	}
	if name != "" {
		u.Name = model.Some(name)
	}
	if g.Shielded {
		u.Shield = model.Some(true)
	}
	for _, it := range group {
		in[it] = len(im.h.Units) + 1
	}
	for u.ID == "" || im.wireIDs[u.ID] {
		im.units++
		u.ID = fmt.Sprintf("C%d", im.units)
	}
	im.h.Units = append(im.h.Units, u)
	kind := u.Build.V
	if g.Twisted {
		kind = "twisted " + kind
	}
	if g.Shielded {
		kind = "shielded " + kind
	}
	im.kinds = append(im.kinds, kind)
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
