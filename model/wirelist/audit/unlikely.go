package audit

import (
	"slices"
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	title "contralay/model/wirelist/prose"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// unlikely names the rows with an end at a connector whose name reads as none, a line of counts, a size or a sentence, and those whose
// wire has a name that reads as one of its ends: what the list says there could have been taken for something else.
//
//	Pins used: 7 of 12
//	Pin | Signal
//	1   | from the pump
func (a *auditor) unlikely(t *Table) {
	var rows, ends []table.Row
	var called []string
	for _, r := range t.Rows {
		for _, it := range a.row(t, r).items {
			if it.Place.Row != r.Line {
				continue
			}
			for _, e := range []draft.End{it.From, it.To} {
				if e.Term == nil || !e.Term.Name.Set || !readsAsNone(e.Term.Name.V, t) {
					continue
				}
				if rows = append(rows, r); !slices.Contains(called, e.Term.Name.V) {
					called = append(called, e.Term.Name.V)
				}
			}
			if leads(it.Signal) && (it.From.String() == "" || it.To.String() == "" || it.From.Term != nil && it.From.Term.Titled) {
				ends = append(ends, r)
			}
		}
	}
	a.doubt("a connector whose name reads as none", t.At, some(called), "kept; say what it is called if it is not that", rows)
	a.doubt("a name that reads as an end", t.At, "", "kept as the name of the wire; look whether the wire starts there", ends)
}

// readsAsNone reports whether the name of a connector is a line of counts, holds a size of wire, or is a sentence.
func readsAsNone(called string, t *Table) bool {
	all := strings.Fields(called)
	return title.IsCountLine(called) || value.SizeWithin(called, t.Mark) != "" && !strings.ContainsAny(called, "(") ||
		len(all) > 3 && strings.ContainsAny(called[len(called)-1:], ".!?") || len(all) > 8
}

// leads reports whether the name of a wire begins with a word that leads to where a wire starts, and goes on.
func leads(signal string) bool {
	first, rest, _ := strings.Cut(table.Fold(signal), " ")
	return rest != "" && words.ComesFrom(first) && len(name.Words(rest)) > 0
}
