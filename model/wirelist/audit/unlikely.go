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
	var rows, ends, siblings, ids, hues, cables []table.Row
	var ofNone []string
	for _, r := range t.Rows {
		for _, it := range a.row(t, r).items {
			if it.Place.Row != r.Line {
				continue
			}
			if len(it.Colour) == 0 && t.saysColour(r) {
				cables = append(cables, r)
			}
			if value.IsSizeAndColour(it.OwnID, t.Lang, t.Mark) {
				ids = append(ids, r)
			}
			if len(it.Colour) == 0 && beginsWithColour(it.Signal, t.Lang) {
				hues = append(hues, r)
			}
			for _, e := range []draft.End{it.From, it.To} {
				if e.Term == nil || !readsAsNone(called(e.Term), t) && !isReference(e) && !strings.HasSuffix(e.Pin, "?") {
					continue
				}
				if rows = append(rows, r); !slices.Contains(ofNone, called(e.Term)) {
					ofNone = append(ofNone, called(e.Term))
				}
			}
			if e := it.To; e.Term != nil && isSibling(e.Term.ID, e.Pin) || it.From.Term != nil && isSibling(it.From.Term.ID, it.From.Pin) {
				siblings = append(siblings, r)
			}
			if leads(it.Signal) && (it.From.String() == "" || it.To.String() == "" || it.From.Term != nil && it.From.Term.Titled) {
				ends = append(ends, r)
			}
		}
	}
	a.doubt("a connector whose name reads as none", t.At, some(ofNone), "kept; say what it is called if it is not that", rows)
	a.doubt("an id that reads as a size and a colour", t.At, "",
		"kept as the id of the wire; say what its column means if it is none", ids)
	a.doubt("a name that begins with a colour and a size", t.At, "",
		"kept as the name of the wire; give the wire what it has of them", hues)
	a.doubt("a cable whose text ends with a colour", t.At, "",
		"kept as a name; look whether the wire has that colour", cables)
	a.doubt("a cavity called as its connector is", t.At, "", "taken for its cavity; say two ends with a comma if they are two", siblings)
	a.doubt("a name that reads as an end", t.At, "", "kept as the name of the wire; look whether the wire starts there", ends)
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
		blanks > 2 && strings.ContainsAny(called[len(called)-1:], ".!?") || blanks > 7 || words.RefersTo(folded) || holdsRun(folded)
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

// isSibling reports whether a cavity is called as its connector is, with another number: "E1/E2" could be two lamps.
func isSibling(connector, pin string) bool {
	front := strings.TrimRight(connector, "0123456789")
	of, ok := strings.CutPrefix(pin, front)
	return ok && front != "" && front != connector && of != "" && strings.Trim(of, "0123456789") == "" && pin != connector
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
