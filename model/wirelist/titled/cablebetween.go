package titled

import (
	"slices"
	"strings"

	"contralay/model/wirelist/cableheads"
	"contralay/model/wirelist/cablelines"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/runline"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Above the cores of a cable stands what it runs between, and over their columns each of the two things by its last word, or "from" and
// "to".
//
//	== Cable 1: control box to mast lamp, 4 core screened ==
//	core   | what   | box | lamp
//	red    | supply | 1   | A
//	screen | screen | 5   | cut off

// CableBetween heads the two columns with the things as the title calls them, and gives each core the name of the cable, where it has one.
// Head and rows are as they were where the title above them says no such thing.
func CableBetween(titles []table.Row, head table.Row, rows []table.Row) (table.Row, []table.Row) {
	if len(titles) == 0 || len(head.Cells) < 3 {
		return head, rows
	}
	n, text := titles[len(titles)-1].Filled()
	text = strings.Trim(text, "=-#*_~ ")
	if n != 1 || titles[len(titles)-1].Line+2 < head.Line || len(text) > mostTitle {
		return head, rows
	}
	bare, kind := text, ""
	for _, sign := range []string{", ", " (", "; "} {
		if front, behind, ok := strings.Cut(text, sign); ok && len(front) < len(bare) {
			bare, kind = front, strings.TrimRight(behind, ") ")
		}
	}
	near, far := runline.LeadTitle(bare)
	if _, behind, ok := strings.Cut(near, ": "); ok {
		near = strings.TrimSpace(behind) // "W7: hub to rudder"
	}
	cable := cableIn(bare, near)
	if near == "" || cable == "" {
		return head, rows
	}
	from, to := columnOf(head.Cells, near, far, "from"), columnOf(head.Cells, far, near, "to")
	if from < 0 || to < 0 || from == to || slices.ContainsFunc(head.Cells, func(c string) bool { return table.Fold(c) == "cable" }) {
		return head, rows
	}
	wide := len(head.Cells)
	for _, r := range rows {
		wide = max(wide, len(r.Cells))
	}
	filled := func(cells []string, more ...string) []string {
		return append(append(slices.Clone(cells), make([]string, wide-len(cells))...), more...)
	}
	head.Cells = filled(head.Cells, cableheads.CableHead, cablelines.KindHead)
	head.Cells[from], head.Cells[to] = near+" pin", far+" pin"
	out := slices.Clone(rows)
	for i, r := range rows {
		if shape.IsText(r) {
			continue
		}
		cells := filled(r.Cells, cable, kind)
		for _, k := range []int{from, to} {
			if isLeftOpen(cells[k]) {
				cells[wide+1], cells[k] = value.JoinNonEmpty("; ", cells[wide+1], cells[k]), ""
			}
		}
		out[i].Cells = cells
	}
	return head, out
}

// isLeftOpen reports whether a text in the place of a cavity says that a core, mostly the screen, ends there: "cut off, dont connect".
func isLeftOpen(cell string) bool {
	if !strings.Contains(cell, " ") || name.IsCavities(cell) {
		return false
	}
	first, _, _ := strings.Cut(table.Fold(strings.TrimLeft(cell, "(- ")), " ")
	switch strings.Trim(first, ",.;:)") {
	case "cut", "left", "open", "not", "dont", "don't", "do", "folded", "insulated", "isolated", "taped", "floating", "trimmed", "nicht",
		"offen", "isoliert", "abgeschnitten", "coupe", "isole", "non", "no", "sin", "cortado", "aislado", "tagliato", "isolato", "niet",
		"afgeknipt", "inte", "ikke", "kapad":
		return true
	}
	return false
}

// mostTitle is how long such a title may be, in bytes (no source).
const mostTitle = 100

// cableIn is what a title calls the cable itself, "Cable 1" before the first of its two things; "" where it names none.
func cableIn(text, near string) string {
	front, _, ok := strings.Cut(text, near)
	front = strings.Trim(front, " :-–—.=")
	w := strings.Fields(front)
	const most = 6 // bytes of its number (no source)
	if !ok || len(w) == 0 || len(w) > 2 || len(w[len(w)-1]) > most ||
		!strings.ContainsAny(w[len(w)-1], "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ") {
		return ""
	}
	return strings.Join(w, "-")
}

// columnOf is the column headed by the last words of a thing, which the other does not end with, a word for cavities behind them or none;
// or by the word for its side. −1 where there is none, or two.
func columnOf(heads []string, thing, other, side string) int {
	at := -1
	for i, c := range heads {
		f := table.Fold(strings.TrimSpace(c))
		if w := strings.Fields(f); len(w) > 1 && name.IsPinWord(w[len(w)-1]) {
			f = strings.Join(w[:len(w)-1], " ")
		}
		if f == "" || f != side && (!endsIn(thing, f) || endsIn(other, f)) {
			continue
		}
		if at >= 0 {
			return -1
		}
		at = i
	}
	return at
}

// endsIn reports whether the last words of a thing are these.
func endsIn(thing, words string) bool {
	return strings.HasSuffix(" "+table.Fold(thing), " "+words)
}
