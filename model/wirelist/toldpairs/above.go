package toldpairs

import (
	"slices"
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/table"
)

// pairCavities pairs wires that a sentence calls by their cavities: those of the connector that it names, else of the one right above it.
// Numbers that are as well those of other wires of the list pair none, and what could twist wires and is not read for sure is told.
func (w *wires) pairCavities(im *draft.Importer, at table.Place, says string) {
	words := tokens(says)
	of, rest, named := w.namedConnector(words)
	if of == nil && !named {
		of = im.ConnectorAbove(at)
	}
	if of == nil {
		return
	}
	c, known := w.cavities[of]
	if !known {
		c = cavitiesOf(im.Items, of)
		w.cavities[of] = c
	}
	s := c.twists(rest, named)
	var all []*draft.Item
	var called []string
	for _, pin := range s.pins {
		it := c.find(pin)
		if o := w.find(pin); o != nil && o != it && !s.sure {
			im.Say(report.Warn, "a text that twists wires", at, says,
				pin+" is a cavity of "+of.ID+" and the number of another wire; no unit made")
			return
		}
		all, called = append(all, it), append(called, nearEnd(im, it))
	}
	if len(all) > 1 && !slices.Contains(called, "") && put(im, at, says, all, called, ofConnector(of, s.pins)) {
		return
	}
	if c.couldTwist(rest) {
		im.Say(report.Warn, "a text that twists wires", at, says, "not understood; no unit made")
	}
}

// couldTwist reports whether some words have one for twisting and two wires or more that nothing pairs yet.
func (c cavities) couldTwist(words []string) bool {
	n := 0
	for i, w := range words {
		if denies(words, i) {
			return false
		}
		if c.isOne(words, i) && !isPaired(c.find(w)) {
			n++
		}
	}
	return n > 1 && slices.ContainsFunc(words, isTwist)
}

// connector is one of the list by one of its names, in words.
type connector struct {
	of     *draft.Term
	called []string
}

// connectorsIn finds the connectors of a list by the first word of their names.
func connectorsIn(items []*draft.Item) map[string][]connector {
	all, seen := map[string][]connector{}, map[*draft.Term]bool{}
	for _, it := range items {
		for _, e := range []draft.End{it.From, it.To} {
			if e.Term == nil || seen[e.Term] || e.Term.Unsaid {
				continue
			}
			seen[e.Term] = true
			for _, called := range []string{e.Term.Name.V, name.WithoutBrackets(e.Term.Name.V), e.Term.ID} {
				if c := (connector{e.Term, strings.Fields(table.Fold(called))}); saysItself(called) {
					all[c.called[0]] = append(all[c.called[0]], c)
				}
			}
		}
	}
	return all
}

// namedConnector is the one connector that some words name, and the other words; named without one: they name several.
func (w *wires) namedConnector(words []string) (of *draft.Term, rest []string, named bool) {
	rest = words
	for _, word := range words {
		for _, c := range w.connectors[table.Fold(word)] {
			r, ok := namedIn(words, c.called)
			switch {
			case ok && of != nil && of != c.of:
				return nil, words, true
			case ok && of == nil:
				of, rest, named = c.of, r, true
			}
		}
	}
	return of, rest, named
}

// nearEnd is the near end of a wire as package join finds it; "" where it has none of its own.
func nearEnd(im *draft.Importer, it *draft.Item) string {
	if it == nil || it.From.Term == nil || it.From.Pin == "" {
		return ""
	}
	called := ""
	for key, t := range im.ByKey {
		if t == it.From.Term && !strings.HasPrefix(key, "\x00") && (called == "" || key < called) {
			called = key
		}
	}
	if called == "" {
		return ""
	}
	return called + ":" + it.From.Pin
}

// ofConnector are some cavities with their connector.
func ofConnector(of *draft.Term, pins []string) (all []string) {
	for _, pin := range pins {
		all = append(all, of.ID+":"+pin)
	}
	return all
}
