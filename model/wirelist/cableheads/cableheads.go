// Package cableheads reads the heading of a cable above the table of its cores, "W3: 5 x 0.75 mm², 6.2 m", into columns of that table.
//
// It makes no cable; what the columns say package row reads.
package cableheads

import (
	"slices"
	"strings"

	"contralay/model/wirelist/cablelines"
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// CableHead is the heading of the column that is made for the name of the cable.
const CableHead = "Cable"

// lengthHead is that of its length.
const lengthHead = "Length"

// said is what a heading says of a cable.
type said struct{ name, kind, length string }

// Spread gives the rows below the heading of a cable what it says of all of them: its name, its kind and its length, where the table has no
// columns for them and as many cores as the cable, or fewer.
//
//	## W3: 3 x 0.75 mm², 6.2 m
//
//	Core | Colour | CP pin | JB terminal | Signal
//	1    | Brown  | 1      | 11          | Supply
//	2    | Blue   | 2      | 12          | Return
func Spread(h shape.Headings, titles []table.Row, head table.Row, rows []table.Row, mark value.Mark) (table.Row, []table.Row) {
	of, ok := cableOf(titles, mark)
	if !ok {
		return head, rows
	}
	cols, _ := h.Columns([]table.Row{head}, 0)
	b := shape.Block{Cols: cols}
	cores := slices.ContainsFunc(cols, func(c shape.Column) bool { return column.HeadsCores(c.Head) })
	g, _ := value.ParseGauge(of.kind, value.BareAWG, mark)
	cores = cores || b.Has(name.FieldWire) && countCores(rows) == g.Conductors
	if !cores && !b.Has(name.FieldColour) || b.Has(name.FieldCable, name.FieldGauge, name.FieldSpec) {
		return head, rows
	}
	if g.Conductors > 0 && countCores(rows) > g.Conductors {
		return head, rows
	}
	heads, cells := []string{CableHead, cablelines.KindHead}, []string{of.name, of.kind}
	if of.length != "" && !b.Has(name.FieldLength) {
		heads, cells = append(heads, lengthHead), append(cells, of.length)
	}
	wide := len(head.Cells)
	for _, r := range rows {
		wide = max(wide, len(r.Cells))
	}
	newHead, out := head, slices.Clone(rows)
	newHead.Cells = append(filledTo(head.Cells, wide), heads...)
	for i, r := range rows {
		if shape.IsText(r) {
			continue
		}
		more := slices.Clone(cells)
		if isDrain(r) {
			more[1] = "" // it has not the size of the cores
		}
		out[i].Cells = append(filledTo(r.Cells, wide), more...)
	}
	return newHead, out
}

// Made reports whether columns were made of the heading of a cable.
func Made(cols []shape.Column) bool {
	return slices.ContainsFunc(cols, func(c shape.Column) bool { return c.Head == cablelines.KindHead })
}

// Said is the row of the titles of a table whose cable such columns of it are of.
func Said(b *shape.Block) (of table.Row, ok bool) {
	if !Made(b.Cols) {
		return table.Row{}, false
	}
	for _, r := range slices.Backward(slices.Concat(b.Path, b.Titles)) {
		if _, is := cableOf([]table.Row{r}, b.Mark); is {
			return r, true
		}
	}
	return table.Row{}, false
}

// cableOf is the cable that the heading next to a table names with its kind.
func cableOf(titles []table.Row, mark value.Mark) (of said, ok bool) {
	for _, r := range slices.Backward(titles) {
		if n, text := r.Filled(); n == 1 && !r.Point {
			if of, ok = parse(text, mark); ok {
				return of, true
			}
		}
	}
	return said{}, false
}

// Names reports whether a text is the heading of a cable, with its name and its kind.
func Names(text string) bool {
	_, ok := parse(text, value.MarkUnknown)
	return ok
}

// Head reports whether one of the titles right above a table is the heading of a cable: the table has the cores of that one alone.
func Head(titles []table.Row) bool {
	_, ok := cableOf(titles, value.MarkUnknown)
	return ok
}

// parse reads "W3: 5 x 0.75 mm², 6.2 m", "Cable W4 (3x0.5 shielded, 3.4 m)", "K2 – YSLY 4x0.5", "Coiled cord (6 core, 0.25 mm² each)".
func parse(text string, mark value.Mark) (of said, ok bool) {
	for _, sep := range []string{": ", " - ", " – ", " — ", ", ", "; ", " (", ")", " | ", " / "} {
		text = strings.ReplaceAll(text, sep, "\x00")
	}
	pieces := strings.FieldsFunc(text, func(r rune) bool { return r == 0 })
	for k := range pieces {
		pieces[k] = strings.TrimSpace(pieces[k])
	}
	if len(pieces) == 0 {
		return said{}, false
	}
	if of, ok = spoken(pieces, mark); ok {
		return of, true
	}
	for k, piece := range pieces {
		switch piece = strings.TrimSpace(piece); {
		case k == 0:
			words := strings.Fields(piece)
			called := len(words) > 1 && IsWord(words[0])
			if called && (len(words) == 2 || name.IsDesignator(words[1])) {
				words = words[1:]
			}
			if len(words) > 1 && name.IsDesignator(words[0]) && value.HasDigit(words[0]) {
				of.kind, of.length = unparted(words[1:], called, mark)
				if of.kind == "" {
					return said{}, false
				}
				words = words[:1]
			}
			if len(words) != 1 || !strings.ContainsAny(words[0], "0123456789") {
				return said{}, false
			}
			if of.name = words[0]; value.IsDigit(of.name[0]) {
				of.name = strings.ReplaceAll(piece, " ", "-") // "Cable 7": with a blank it could be a size
			}
		case of.kind == "" && value.CoreSize(piece, mark) != "":
			of.kind = piece
		default:
			if of.length == "" {
				of.length = lengthAtEnd(strings.Fields(piece), mark)
			}
		}
	}
	if of.kind == "" {
		of.kind, _ = kindOf(pieces[1:], mark) // "Cable W7 (3 core, 0.25 mm² each)"
	}
	return of, of.kind != ""
}

// unparted is the kind that some words behind the name of a cable begin with, where blanks alone part what is said of it, and the length
// that they end in: "W5 12 x 1.5 mm² numbered length 4 m". Where no word says that it is a cable, the size
// has its unit: "PDM2 16 x 25 A outputs" is none.
func unparted(words []string, called bool, mark value.Mark) (kind, length string) {
	const most = 4 // words, "12 x 1.5 mm²" (no source)
	for n := min(len(words), most); n > 0; n-- {
		kind = strings.Join(words[:n], " ")
		if f := table.Fold(kind); value.CoreSize(kind, mark) != "" && (called || strings.Contains(f, "mm") || strings.Contains(f, "awg")) {
			return kind, lengthAtEnd(words[n:], mark)
		}
	}
	return "", ""
}

// lengthAtEnd is the length that some words are, or end in behind a word for it; "" where they say none.
func lengthAtEnd(words []string, mark value.Mark) string {
	if piece := strings.Join(words, " "); piece != "" {
		if _, is := value.ParseLength(piece, "", mark); is {
			return piece
		}
	}
	for n := 1; n <= 2 && n < len(words); n++ {
		last := strings.Join(words[len(words)-n:], " ")
		if _, is := value.ParseLength(last, "", mark); is && isLengthWord(words[len(words)-n-1]) {
			return last
		}
	}
	return ""
}

// isLengthWord reports whether a word says that a length follows. From memory, no source.
func isLengthWord(w string) bool {
	switch table.Fold(strings.Trim(w, ".:=")) {
	case "length", "len", "l", "lange", "lg", "longueur", "long", "longitud", "lunghezza", "lengte", "langd", "laengde", "lengde", "pituus",
		"dlugosc", "delka", "comprimento":
		return true
	}
	return false
}

// IsWord reports whether a word says that the name of a cable follows.
func IsWord(w string) bool {
	switch table.Fold(w) {
	case "cable", "kabel", "leitung", "cavo", "kaapeli", "przewod", "kablo", "cabo", "lead", "cord":
		return true
	}
	return false
}

// countCores is how many rows are cores: texts and drains are none.
func countCores(rows []table.Row) (n int) {
	for _, r := range rows {
		if !shape.IsText(r) && !isDrain(r) {
			n++
		}
	}
	return n
}

func isDrain(r table.Row) bool {
	return slices.ContainsFunc(r.Cells, func(c string) bool { return name.IsDrainWord(table.Fold(c)) })
}

// filledTo are cells with empty ones behind them, so many in all.
func filledTo(cells []string, wide int) []string {
	out := make([]string, wide)
	copy(out, cells)
	return out
}
