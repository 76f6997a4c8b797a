package total

import (
	"fmt"
	"strconv"
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/freeword"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/signoff"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/tail"
	"contralay/model/wirelist/value"
)

// Below the wires of a list stands what they come to, in whatever columns there was room.
//
//	Wire | From | To   | mm² | Length          Way | Signal   | Plug | Notes
//	W1   | X1:1 | X2:1 | 1   | 1.2             A   | Pressure | P11  |
//	W2   | X1:2 | X2:2 | 1   | 1.4             B   | spare    |      |
//	     |      |      |     | 2.6 total       Ways used | 1
//	     |      |      | 10 % | 2.9            Ways free | 1
//	Ferrules | 4 pcs

// Say takes a row that sums the list up, or counts what it has of something, and says so; false for a row of any other kind.
func Say(im *draft.Importer, b *shape.Block, i int) bool {
	r := b.Rows[i]
	_, first := r.Filled()
	place := table.Place{File: b.Table.File, Sheet: b.Table.Sheet, Row: r.Line}
	switch used, n, ok := counts(r); {
	case signoff.IsTotal(first), sums(b, r):
		Check(im, b, r)
	case ok && onlySuch(b, i):
		rows, _ := rowsAndWires(im, b, r)
		wired := rowsWithWires(im)
		if has := map[bool]int{true: wired, false: rows - wired}[used]; has != n {
			im.Say(report.Warn, "total against the rows", place,
				fmt.Sprintf("%s, the list has %s and %s", shape.RowText(r.Cells), report.Counted(rows, "row", "rows"),
					report.Counted(wired, "with a wire", "with a wire")), "the rows hold")
			break
		}
		im.Say(report.Note, "total", place, "", "left out")
	case countsPieces(r) && onlySuch(b, i) && b.Has(name.FieldFrom, name.FieldFromPin, name.FieldTo, name.FieldRun):
		im.Say(report.Note, "total", place, shape.RowText(r.Cells), "left out")
	case saysSentences(b, i):
		im.Say(report.Note, "below the table", place, shape.RowText(r.Cells), "left out")
	case sayCounted(im, b, i):
	case saysRemark(b, i):
		im.Say(report.Warn, "a row below the wires that tells none", place, shape.RowText(r.Cells),
			"left out: it has no end as the wires have")
	default:
		return false
	}
	return true
}

// onlySuch reports whether every row from one on sums the list up, counts something, or is about the paper.
func onlySuch(b *shape.Block, i int) bool {
	for _, r := range b.Rows[i:] {
		_, first := r.Filled()
		if _, _, ok := counts(r); !ok && !countsPieces(r) && !signoff.IsTotal(first) && !signoff.Is(r) && !shape.IsText(r) && !sums(b, r) {
			return false
		}
	}
	return i > 0
}

// sums reports whether a row sums the list up.
func sums(b *shape.Block, r table.Row) bool { return holdsSum(b, r) || saysTotal(b, r) }

// holdsSum reports whether a row holds a sum and a word for one or a share that is added, "17.4 | total, buy 20", "+8 % waste | 14342", and
// nothing where a row says the name, an end, the size or the colour of a wire.
func holdsSum(b *shape.Block, r table.Row) bool {
	number, said := false, false
	for i, c := range r.Cells {
		if c == "" {
			continue
		}
		if i < len(b.Cols) {
			switch b.Cols[i].Field {
			case name.FieldLength, name.FieldCurrent, name.FieldKeep, name.FieldNote, name.FieldSpec, name.FieldIgnore:
			case name.FieldColour, name.FieldGauge, name.FieldSignal:
				if !signoff.IsTotal(c) && !isShare(c) {
					return false
				}
			default:
				return false
			}
		}
		_, length := value.ParseLength(c, "mm", b.Mark)
		switch {
		case signoff.IsTotal(c), isShare(c):
			said = true
		case length, strings.Trim(c, "0123456789., ") == "":
			number = true
		default:
			return false
		}
	}
	return number && said
}

// isShare reports whether a text is a share that is added, "+8% waste", "10 % Verschnitt".
func isShare(text string) bool { _, ok := shareOf(text); return ok }

// shareOf is how many of a hundred a text adds.
func shareOf(text string) (share float64, ok bool) {
	number, rest, found := strings.Cut(strings.TrimLeft(text, "+ "), "%")
	share, err := strconv.ParseFloat(strings.Replace(strings.TrimSpace(number), ",", ".", 1), 64)
	return share, found && err == nil && share > 0 && share < 100 && !strings.ContainsAny(rest, "0123456789")
}

// counts reads a row of a text that counts the cavities, contacts or wires that are used or free, and how many they are, "Ways used | 16",
// "Free pins: | 3": used says whether those that are used.
func counts(r table.Row) (used bool, n int, ok bool) {
	filled, first := r.Filled()
	if filled != 2 {
		return false, 0, false
	}
	n, err := strconv.Atoi(behind(r))
	if err != nil {
		return false, 0, false
	}
	counted, said := false, false
	for _, w := range name.Words(table.Fold(strings.TrimRight(first, ": ="))) {
		switch {
		case name.CountWord(w) != "":
			counted = true
		case w == "used", w == "wired", w == "belegt", w == "belegte", w == "utilisees", w == "usadas", w == "usate":
			used, said = true, true
		case freeword.IsSpare(w), freeword.IsBlank(w), w == "free", w == "unused", w == "empty", w == "freie", w == "libres", w == "libre",
			w == "libere":
			said = true
		case w == "total", w == "of", w == "no", w == "number", w == "anzahl", w == "not":
		default:
			return false, 0, false
		}
	}
	return used, n, counted && said
}

// countsPieces reports whether a row is what there is of something and how many pieces, "Ferrule 6-12 | 6 pcs".
func countsPieces(r table.Row) bool {
	filled, _ := r.Filled()
	return filled == 2 && tail.IsPieces(behind(r))
}

// behind is the last cell of a row that says something.
func behind(r table.Row) (last string) {
	for _, c := range r.Cells {
		if c != "" {
			last = c
		}
	}
	return last
}

// rowsAndWires is how many rows the list has above a row, and how many wires.
func rowsAndWires(im *draft.Importer, b *shape.Block, r table.Row) (rows, wired int) {
	for i, row := range b.Rows {
		if row.Line >= r.Line {
			break
		}
		_, first := row.Filled()
		if _, _, counted := counts(row); !counted && !signoff.IsTotal(first) && !shape.IsText(row) && !sums(b, b.Rows[i]) {
			rows++
		}
	}
	for k := len(im.Items) - 1; k >= 0 && im.Items[k].Block == im.Pages; k-- {
		wired++
	}
	return rows, wired
}

// rowsWithWires is how many rows of the list in hand have a wire, one through a bulkhead only once.
func rowsWithWires(im *draft.Importer) int {
	seen := map[table.Place]bool{}
	for k := len(im.Items) - 1; k >= 0 && im.Items[k].Block == im.Pages; k-- {
		seen[im.Items[k].Place] = true
	}
	return len(seen)
}
