package farheads

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/plugword"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// textOf is a row as one text, its cells as if commas had parted them.
func textOf(r table.Row) string {
	if len(r.Cells) == 1 {
		return r.Cells[0]
	}
	var some []string
	for _, c := range r.Cells {
		if c != "" {
			some = append(some, c)
		}
	}
	return strings.Join(some, ", ")
}

// partOf is the name that a row is the heading of.
func partOf(rows []table.Row, i int) (string, bool) {
	if i+1 >= len(rows) || !isHeading(rows, i) {
		return "", false
	}
	return strings.TrimRight(strings.Trim(textOf(rows[i]), "*_ "), ":"), true
}

// isHeading reports whether a row heads the lines below it: a heading of Markdown, or behind an empty line a few words without a sign at
// their end.
func isHeading(rows []table.Row, i int) bool {
	const most = 8 // words (no source)
	r, text := rows[i], textOf(rows[i])
	if r.Level > 0 {
		return true
	}
	apart := i == 0 || r.Line > rows[i-1].Line+1 || rows[i-1].Level > 0
	return !r.Point && apart && text != "" && len(strings.Fields(text)) <= most && !strings.HasSuffix(text, ".") &&
		!strings.Contains(text, ",")
}

// withoutAside parts the brackets behind the name of a part off it: what a cable is like is said of the wires below it, and kept with the
// name of the part, as no other part has the same cable.
func withoutAside(heading string) (part, cable, aside string) {
	open := strings.Index(heading, " (")
	if open < 1 || !strings.HasSuffix(heading, ")") {
		return heading, "", ""
	}
	part, aside = heading[:open], strings.TrimSuffix(heading[open+2:], ")")
	var g value.Gauge
	for _, w := range name.Words(table.Fold(aside)) {
		if g.Cable(w) && (g.Twisted || g.Shielded) {
			return part, part + ": " + aside, ""
		}
	}
	return part, "", aside
}

// addPlugs adds the short names that stand beside the words for a connector in a text, "the main plug M", "bulkhead plug (P)", "P = plug at
// the wall": a line whose end is none of these is none.
func addPlugs(plugs map[string]bool, text string) {
	words := strings.Fields(text)
	for i, w := range words {
		if !saysPlug(strings.Trim(table.Fold(w), ".,;:()\"'*_")) {
			continue
		}
		for k := max(0, i-4); k < min(len(words), i+4); k++ {
			if s := strings.Trim(words[k], ".,;:()[]\"'*_="); isPlugName(s) && (s != "A" || k > 0) && s != "I" { // "A plug at each end"
				plugs[s] = true
			}
		}
	}
}

// saysPlug reports whether a folded word is one for a connector, or ends with one: "hauptstecker", "huvudkontakt".
func saysPlug(w string) bool {
	ends := []string{"stecker", "buchse", "stekker", "kontakt", "plugg", "stik"}
	return plugword.Is(w) || slices.ContainsFunc(ends, func(end string) bool { return len(w) > len(end)+2 && strings.HasSuffix(w, end) })
}

// isPlugName reports whether a word is a capital letter, or two or three and a number behind them or none.
func isPlugName(s string) bool {
	letters := strings.TrimRight(s, "0123456789")
	return letters != "" && len(letters) < 4 && len(s)-len(letters) < 3 && strings.Trim(letters, "ABCDEFGHIJKLMNOPQRSTUVWXYZ") == ""
}
