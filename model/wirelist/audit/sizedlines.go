package audit

import (
	"strings"

	"contralay/model/wirelist/name"
	titles "contralay/model/wirelist/prose"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// sizedLines names the short lines that are left out and have a size of wire beside a name: each could tell a wire.
//
//	GALLEY PCB
//	1 red to DECK 4
//	2 black to DECK 5
//	GALLEY LAMP 12 ga
func (a *auditor) sizedLines() {
	rows := map[table.Place][]table.Row{}
	whats := map[table.Place][]string{}
	var order []table.Place
	doubted := map[table.Place]bool{}
	for _, f := range a.im.Rep.Findings {
		if f.Did != leftOut {
			doubted[table.Place{File: f.File, Sheet: f.Sheet, Row: f.Row}] = true
		}
	}
	for _, f := range a.im.Rep.Findings {
		at := table.Place{File: f.File, Sheet: f.Sheet, Row: f.Row}
		if f.Did != leftOut || doubted[at] || !(isLeftBelow(f.Rule) && isSizedName(f.What) ||
			f.Rule == "above the table" && titles.TellsCavity(f.What)) {
			continue
		}
		row := table.Row{Line: f.Row}
		if at.Row = 0; rows[at] == nil {
			order = append(order, at)
		}
		rows[at], whats[at] = append(rows[at], row), append(whats[at], f.What)
	}
	for _, at := range order {
		a.doubt("a line with a size of wire that is read as no wire", at, some(whats[at]), "left out; look whether it tells one", rows[at])
	}
}

// leftOut is what the report says was done with a text that tells no wire.
const leftOut = "left out"

// isLeftBelow reports whether a rule is of texts that stand between wires or below them.
func isLeftBelow(rule string) bool {
	return rule == "text of no table" || rule == "below the table" || rule == "remark between the rows"
}

// isSizedName reports whether a text is a size of wire with its unit and a few words, of which one at least is no word that goes with any
// size and no colour, and none is in brackets.
func isSizedName(text string) bool {
	const longest, most = 60, 6 // bytes, and words (no source)
	if len(text) > longest || !strings.ContainsAny(text, "0123456789") || strings.ContainsAny(text, "()[]?!") ||
		strings.HasSuffix(text, ".") || value.SizeWithin(text, value.MarkUnknown) == "" {
		return false
	}
	w := name.Words(table.Fold(text))
	named := false
	for _, one := range w {
		if len(one) < 3 || strings.Trim(one, "0123456789") == "" || words.IsOfAnyWire(one) || strings.HasPrefix(one, "awg") {
			continue
		}
		_, hue := value.ParseColour(one, "")
		named = named || !hue
	}
	return named && len(w) <= most
}
