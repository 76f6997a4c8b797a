package toldpairs

import (
	"slices"
	"strings"

	"contralay/model/wirelist/cable"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// Take gives the wires that a sentence of some tables twists together to each other, as a note of one of them would.
//
//	ID | From   | To      | Signal
//	W8 | ECU B4 | Hub 14  | CAN H
//	W9 | ECU B5 | Hub 15  | CAN L
//	W8 and W9 are one twisted pair.
//
// Each of them must be the one wire that is called so, and none of them be paired by its own row.
func Take(im *draft.Importer, tables []table.Table) {
	var known *wires
	for _, t := range tables {
		for _, r := range t.Rows {
			_, text := r.Filled()
			if !shape.IsText(r) || !cable.Words(text).Twisted {
				continue
			}
			if known == nil {
				known = wiresIn(im.Items)
			}
			for _, s := range sentences(text) {
				all := wiresOf(s, func(called string) bool { return known.find(called) != nil })
				known.pair(im, table.Place{File: t.File, Sheet: t.Sheet, Row: r.Line}, s, all)
			}
		}
	}
}

// sentences parts a text where one ends, and where a semicolon parts two halves.
func sentences(text string) []string {
	return strings.Split(strings.ReplaceAll(text, ". ", "; "), "; ")
}

// wires finds the one wire that is called by an id or a name; nil under what several are called.
type wires struct{ byID, bySignal map[string]*draft.Item }

func wiresIn(all []*draft.Item) *wires {
	w := &wires{map[string]*draft.Item{}, map[string]*draft.Item{}}
	put := func(in map[string]*draft.Item, called string, it *draft.Item) {
		if called == "" {
			return
		}
		o, twice := in[table.Fold(called)]
		if twice && o != it {
			it = nil
		}
		in[table.Fold(called)] = it
	}
	for _, it := range all {
		put(w.byID, it.OwnID, it)
		put(w.byID, it.Counted, it)
		if isName(it.Signal) {
			put(w.bySignal, it.Signal, it)
		}
	}
	return w
}

// isName reports whether a signal is no everyday word that a sentence may hold for itself: it has capitals or a sign behind its first
// letter, "CAN H", "Rx", "Crank+".
func isName(signal string) bool {
	return len(signal) > 1 && strings.IndexFunc(signal[1:], func(r rune) bool {
		return r >= 'A' && r <= 'Z' || r >= '0' && r <= '9' || strings.ContainsRune("+-_", r)
	}) >= 0
}

func (w *wires) find(called string) *draft.Item {
	called = table.Fold(called)
	if it := w.byID[called]; it != nil {
		return it
	}
	return w.bySignal[called]
}

// pair gives the first of some wires the others, where none of them is paired yet.
func (w *wires) pair(im *draft.Importer, at table.Place, says string, called []string) {
	var all []*draft.Item
	for _, c := range called {
		it := w.find(c)
		if it == nil || it.Cable != "" || len(it.With) > 0 || it.Cue.IsCable() || slices.Contains(all, it) {
			return
		}
		all = append(all, it)
	}
	if len(all) < 2 {
		return
	}
	all[0].Cue, all[0].CueText = cable.Words(says), strings.TrimSpace(says)
	all[0].Cue.Conductors = 0 // as many as are named
	all[0].With = called[1:]
	im.Say(report.Note, "wires that a text pairs", at, strings.TrimSpace(says), "made one unit: "+strings.Join(called, ", "))
}
