package audit

import (
	"slices"
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	title "contralay/model/wirelist/prose"
	"contralay/model/wirelist/signs"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/titleline"
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
	rows := make([][]table.Row, len(inDoubt))
	whats := make([][]string, len(inDoubt))
	for _, r := range t.Rows {
		for _, it := range a.row(t, r).items {
			if it.Place.Row != r.Line {
				continue
			}
			for k, d := range inDoubt {
				what, is := d.is(t, r, it)
				if !is {
					continue
				}
				if rows[k] = append(rows[k], r); what != "" && !slices.Contains(whats[k], what) {
					whats[k] = append(whats[k], what)
				}
			}
		}
	}
	for k, d := range inDoubt {
		a.doubt(d.rule, t.At, some(whats[k]), d.did, rows[k])
	}
}

// inDoubt is what could have been taken for something else, each with what was done: is reports whether it is so of a row, and names
// what the report names.
var inDoubt = []struct {
	rule, did string
	is        func(t *Table, r table.Row, it *draft.Item) (what string, is bool)
}{
	{"a connector whose name reads as none", "kept; say what it is called if it is not that", endAtNone},
	{"an id that reads as a size and a colour", "kept as the id of the wire; say what its column means if it is none", idIsValue},
	{"a name that begins with a colour and a size", "kept as the name of the wire; give the wire what it has of them", nameIsValue},
	{"a cable whose text ends with a colour", "kept as a name; look whether the wire has that colour", cableHasColour},
	{"a cavity called as its connector is", "taken for its cavity; say two ends with a comma if they are two", cavityIsSibling},
	{"a cavity that reads as none", "kept; look whether a cell of its row is in another column", cavityOfWords},
	{"a name that reads as an end", "kept as the name of the wire; look whether the wire starts there", nameIsEnd},
}

// endAtNone reports whether an end of a wire is at a connector whose name is none, or at a cavity in doubt, and names the connector.
//
//	Pins used: 7 of 12
func endAtNone(t *Table, _ table.Row, it *draft.Item) (what string, is bool) {
	for _, e := range []draft.End{it.From, it.To} {
		if e.Term != nil && (readsAsNone(called(e.Term), t) || !e.Term.Titled && isColour(called(e.Term), t) ||
			isReference(e) || strings.HasSuffix(e.Pin, "?")) {
			return called(e.Term), true
		}
	}
	return "", false
}

// idIsValue reports whether the id of a wire is a size and a colour, "22 red".
func idIsValue(t *Table, _ table.Row, it *draft.Item) (what string, is bool) {
	return "", value.IsSizeAndColour(it.OwnID, t.Lang, t.Mark)
}

// nameIsValue reports whether a wire without colour is called by one, "brown 2.5 lamps to chassis".
func nameIsValue(t *Table, _ table.Row, it *draft.Item) (what string, is bool) {
	return "", len(it.Colour) == 0 && beginsWithColour(it.Signal, t.Lang)
}

// cableHasColour reports whether a wire without colour is in a cable whose text has one at its end, "LiYY 2x0.5 wh".
func cableHasColour(t *Table, r table.Row, it *draft.Item) (what string, is bool) {
	return "", len(it.Colour) == 0 && t.saysColour(r)
}

// cavityIsSibling reports whether an end of a wire is at a cavity that is called as its connector is, "E1/E2".
func cavityIsSibling(_ *Table, _ table.Row, it *draft.Item) (what string, is bool) {
	for _, e := range []draft.End{it.From, it.To} {
		if e.Term != nil && isSibling(e.Term.ID, e.Pin) {
			return "", true
		}
	}
	return "", false
}

// nameIsEnd reports whether the name of a wire that has one end, or one for the title of its table, leads to where it starts.
//
//	1 | from the pump
func nameIsEnd(_ *Table, _ table.Row, it *draft.Item) (what string, is bool) {
	return "", leads(it.Signal) && (it.From.String() == "" || it.To.String() == "" || it.From.Term != nil && it.From.Term.Titled)
}

// readsAsNone reports whether the name of a connector is a line of counts, holds a size of wire, is a sentence, refers to another row, or
// is two places.
func readsAsNone(called string, t *Table) bool {
	if !strings.Contains(called, " ") {
		return false // most names
	}
	folded := table.Fold(called)
	blanks := strings.Count(folded, " ")
	return title.IsCountLine(folded) || value.SizeWithin(folded, t.Mark) != "" && !strings.ContainsAny(called, "(") ||
		blanks > 2 && strings.ContainsAny(called[len(called)-1:], ".!?") || blanks > 7 && titleline.BehindThing(called) == "" ||
		words.RefersTo(folded) || holdsRun(name.WithoutBrackets(folded))
}

// isColour reports whether a name that stands in no title is that of a colour alone: "Red -> stop" tells what a lamp shows.
func isColour(called string, t *Table) bool {
	_, is := value.ParseColour(called, t.Lang)
	return is && len(called) > 2 && !value.HasDigit(called)
}

// isReference reports whether an end refers to another row, "see pin 4", of which a connector and its cavity were made.
func isReference(e draft.End) bool {
	switch first := called(e.Term); strings.ToLower(first) {
	case "see", "same as", "same", "wie", "siehe", "voir", "vedi", "zie", "idem", "as", "like":
		return true
	}
	return false
}

// holdsRun reports whether a word between others leads on to where a wire goes: "relay 87 to both lamps" is no one place.
func holdsRun(folded string) bool {
	for _, lead := range []string{" to ", " -> ", " → ", " nach ", " vers ", " hacia ", " verso ", " naar ", " via ", " uber "} {
		if strings.Contains(folded, lead) {
			return true
		}
	}
	return false
}

// leads reports whether the name of a wire begins with a word that leads to where a wire starts, and goes on.
func leads(signal string) bool {
	first, rest, ok := strings.Cut(signal, " ")
	if !ok || len(first) < 3 {
		return false
	}
	first = table.Fold(first)
	return rest != "" && words.ComesFrom(first) && len(name.Words(rest)) > 0
}

// digits are the ten of them.
var digits = signs.Of("0123456789")

// isSibling reports whether a cavity is called as its connector is, with another number: "E1/E2" could be two lamps.
func isSibling(connector, pin string) bool {
	front := digits.TrimRight(connector)
	of, ok := strings.CutPrefix(pin, front)
	return ok && front != "" && front != connector && of != "" && digits.Are(of) && pin != connector
}

// beginsWithColour reports whether the name of a wire is a word for a colour, a number and more: "brown 2.5 lamps to chassis".
func beginsWithColour(signal, lang string) bool {
	all := strings.Fields(signal)
	if len(all) < 3 || len(all[0]) < 3 || !value.HasDigit(all[1][:1]) {
		return false
	}
	_, ok := value.ParseColour(all[0], lang)
	return ok
}

// saysColour reports whether a cell of a column of cables goes on with a colour.
func (t *Table) saysColour(r table.Row) bool {
	for i, c := range t.Cols {
		if (c.Field == name.FieldCable || c.Field == name.FieldWire) && i < len(r.Cells) && endsWithColour(r.Cells[i], t.Lang) {
			return true
		}
	}
	return false
}

// endsWithColour reports whether the text of a cable goes on with the colour of one core, "LiYY 2x0.5 wh".
func endsWithColour(cable, lang string) bool {
	at := strings.LastIndexByte(cable, ' ')
	if at < 0 || value.HasDigit(cable[at:]) {
		return false
	}
	_, ok := value.ParseColour(cable[at+1:], lang)
	return ok && value.HasDigit(cable[:at])
}
