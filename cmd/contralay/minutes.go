package main

import (
	"fmt"
	"strings"

	"contralay/calc/formula/learn"
	"contralay/calc/query/record"
	"contralay/calc/sheet"
	"contralay/model/catalogue"
	"contralay/ui/hours"
)

// pacesOf is how long each kind of work took by the ticks of some harnesses, and how many pauses were left
// out. What several files hold, a copy and its .bak, counts once.
func pacesOf(sheets []*sheet.Sheet, names []string) (paces []learn.Pace, pauses int) {
	var all []learn.Spell
	seen := map[string]bool{}
	for n, s := range sheets {
		spent, breaks := record.Minutes(s)
		fresh := map[string]bool{}
		for _, m := range spent {
			key := fmt.Sprint(m)
			if fresh[key] = true; !seen[key] {
				all = append(all, m.Spell(called(names[n])))
			}
		}
		known := len(spent) > 0
		for key := range fresh {
			known = known && seen[key]
			seen[key] = true
		}
		if !known {
			pauses += breaks
		}
	}
	return learn.Paces(all, learn.Options{}), pauses
}

// pacesSay is what they teach, beside what the shop has accepted; then, of each harness, how long one more of it
// is expected to take.
func pacesSay(paces []learn.Pace, pauses int, cat *catalogue.Catalogue, sheets []*sheet.Sheet, names []string) string {
	var b strings.Builder
	for _, p := range paces {
		fmt.Fprintln(&b, strings.Join(hours.Lesson(p), "\n"))
		if _, in := cat.Correction(p.Group); in {
			fmt.Fprintln(&b, "  in use: "+hours.InUse(cat, p.Group))
		}
	}
	if len(paces) > 0 || pauses > 0 {
		fmt.Fprintln(&b, hours.Pauses(pauses))
	}
	for n, s := range sheets {
		if h, known := record.Expect(s); known {
			fmt.Fprintf(&b, "%s: %s\n", called(names[n]), hours.Line(h))
		}
	}
	return b.String()
}
