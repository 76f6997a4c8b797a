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
// Each of them must be the one wire that is called so, by its id, its name or its cavity, and none of them be paired by its own row.
func Take(im *draft.Importer, tables []table.Table) {
	var known *wires
	for _, t := range tables {
		for _, r := range t.Rows {
			text := textOf(r)
			if text == "" || !cable.Words(text).Twisted {
				continue
			}
			if known == nil {
				known = wiresIn(im.Items)
			}
			at := table.Place{File: t.File, Sheet: t.Sheet, Row: r.Line}
			if known.rows[at] {
				continue
			}
			for _, s := range sentences(text) {
				if !known.pairs(im, at, s) {
					known.pairCavities(im, at, s)
				}
			}
		}
	}
}

// pairs gives the wires of a sentence to each other, by their names, by what these share, or as one of its clauses says: "F8 and F9
// twisted, F10 left free". It reports whether it did.
func (w *wires) pairs(im *draft.Importer, at table.Place, sentence string) bool {
	known := func(called string) bool { return w.find(called) != nil }
	if w.pair(im, at, sentence, wiresOf(sentence, known)) {
		return true
	}
	if all := byStem(sentence, im.Items); all != nil {
		called := calledSo(all)
		return put(im, at, sentence, all, called, called)
	}
	for clause := range strings.SplitSeq(sentence, ", ") {
		if clause != sentence && cable.Words(clause).Twisted && w.pair(im, at, clause, wiresOf(clause, known)) {
			return true
		}
	}
	return false
}

// textOf is what a row says where it is a text; a comma in it may have parted it in cells.
func textOf(r table.Row) string {
	const most = 4 // cells of a sentence (no source)
	n, text := r.Filled()
	switch {
	case shape.IsText(r):
		return text
	case n < 2 || n > most || len(r.Cells) > 0 && !strings.Contains(r.Cells[0], " "):
		return ""
	}
	return strings.TrimRight(strings.Join(r.Cells, ", "), ", ")
}

// sentences parts a text where one ends, and where a semicolon parts two halves.
func sentences(text string) []string {
	return strings.Split(strings.ReplaceAll(text, ". ", "; "), "; ")
}

// wires finds the one wire that is called by an id or a name; nil under what several are called.
type wires struct {
	byID, bySignal map[string]*draft.Item
	rows           map[table.Place]bool // that tell a wire each
	connectors     map[string][]connector
	cavities       map[*draft.Term]cavities
}

func wiresIn(all []*draft.Item) *wires {
	w := &wires{map[string]*draft.Item{}, map[string]*draft.Item{}, map[table.Place]bool{}, connectorsIn(all),
		map[*draft.Term]cavities{}}
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
		w.rows[it.Place] = true
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

// pair gives the first of some wires the others, where none of them is paired yet; it reports whether it did.
func (w *wires) pair(im *draft.Importer, at table.Place, says string, called []string) bool {
	var all []*draft.Item
	for _, c := range called {
		all = append(all, w.find(c))
	}
	return put(im, at, says, all, called, called)
}

// put is pair with the wires that are called so; shown is how the report has them.
func put(im *draft.Importer, at table.Place, says string, all []*draft.Item, called, shown []string) bool {
	if len(all) < 2 {
		return false
	}
	for i, it := range all {
		if it == nil || isPaired(it) || slices.Contains(all[:i], it) {
			return false
		}
	}
	all[0].Cue, all[0].CueText = cable.Words(says), strings.TrimSpace(says)
	all[0].Cue.Conductors = 0 // as many as are named
	all[0].With = called[1:]
	im.Say(report.Note, report.TextPairs, at, strings.TrimSpace(says), "made one unit: "+strings.Join(shown, ", "))
	return true
}

// isPaired reports whether its own row says what a wire is made up with.
func isPaired(it *draft.Item) bool { return it.Cable != "" || len(it.With) > 0 || it.Cue.IsCable() }
