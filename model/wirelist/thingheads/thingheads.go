// Package thingheads calls the connectors of sections that all head their cavities with one word for things by the titles of the sections.
//
//	### Oil pressure
//	Sensor pin | Signal | ECU pin
//	1          | 5 V    | A12
//
//	### Throttle
//	Sensor pin | Signal | ECU pin
//	1          | 5 V    | B2
//
// It reads no cell. The other cavities, of a unit, keep the name in their heading.
package thingheads

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/plugword"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/titleline"
	"contralay/model/wirelist/words"
)

// Settle takes the titles for the names of the connectors, where two tables or more of one sheet have such a heading, each below a title
// of its own that is short enough to be a name.
func Settle(blocks []*shape.Block) {
	if len(blocks) < 2 {
		return
	}
	of := map[string][]*shape.Block{}
	for _, b := range blocks {
		if k := pins(b); k >= 0 {
			w := table.Fold(b.Cols[k].Head)
			of[w] = append(of[w], b)
		}
	}
	for _, all := range of {
		seen := map[string]bool{}
		for _, b := range all {
			if title := table.Fold(titleOf(b)); title != "" {
				seen[title] = true
			}
		}
		if len(all) < 2 || len(seen) < len(all) {
			continue
		}
		for _, b := range all {
			if c := &b.Cols[pins(b)]; c.Field == name.FieldPin {
				c.Of = "" // a table of one connector asks the title itself
			} else {
				c.Of = titleOf(b)
				b.Titles = b.Titles[:len(b.Titles)-1]
			}
		}
	}
}

// pins is the column of the cavities of one connector that a word for things heads, the only one; −1 where none is.
func pins(b *shape.Block) int {
	at := -1
	for i, c := range b.Cols {
		switch c.Field {
		case name.FieldConnector:
			return -1
		case name.FieldPin, name.FieldFromPin, name.FieldToPin:
			if c.Given || b.Said != "" || c.Of == "" || !isThing(c.Of) && c.Of != titleOf(b) {
				continue
			}
			if at >= 0 || c.Field == name.FieldFromPin && b.Has(name.FieldFrom) || c.Field == name.FieldToPin && b.Has(name.FieldTo) {
				return -1
			}
			at = i
		}
	}
	return at
}

// isThing reports whether a text is a word for any thing, and for none of them: "Sensor", "Plug", "Unit".
func isThing(text string) bool {
	w := name.Words(table.Fold(text))
	return len(w) == 1 && (words.HeadsThings(w) && !name.IsUnit(w[0]) || plugword.Is(w[0]) || w[0] == "unit" || w[0] == "part")
}

// titleOf is the text right above a table, where it is short enough to be a name; "" where it is none.
func titleOf(b *shape.Block) string {
	const most = 5 // words (no source)
	if len(b.Titles) == 0 {
		return ""
	}
	r := b.Titles[len(b.Titles)-1]
	n, text := r.Filled()
	if n != 1 || r.Point || len(strings.Fields(text)) > most || titleline.IsSentence(text) || name.IsGeneric(text) ||
		titleline.SaysHarness(text) {
		return ""
	}
	return text
}
