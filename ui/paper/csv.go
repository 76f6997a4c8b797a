package paper

import (
	"bytes"
	"encoding/csv"
	"strings"

	"contralay/model/unit"
	"contralay/model/visible"
	"contralay/ui/paper/list"
)

// SheetHead is the head of the column that says which sheet a list belongs to; an import of
// wire lists knows it.
const SheetHead = "build sheet"

// Marks is how a file of lists is written: what parts its cells, and what marks decimals.
type Marks struct {
	Comma   rune
	Decimal string
}

// RFC4180 is cells parted by commas, and decimal points.
func RFC4180() Marks { return Marks{',', "."} }

// Continental is what a spreadsheet reads where the comma marks decimals: there 60.3 is a text, or a day in March.
func Continental() Marks { return Marks{';', ","} }

// CSV is a table as RFC 4180 has it: commas, CRLF, UTF-8, a head of column names.
func CSV(t list.Table) ([]byte, error) { return CSVWith(t, RFC4180()) }

// CSVWith is a table as a file, with its own marks. A cell of text that a spreadsheet would run as a formula gets an apostrophe
// before it; a number, and a sign alone, are left as they are. A cell is one line, and what would command a terminal stands
// as a sign.
// The last column says which sheet the list belongs to, in every row: so it stays with a row
// that is sorted or copied, and the first line alone is a head.
func CSVWith(t list.Table, marks Marks) ([]byte, error) {
	if t.Filed.Head == nil { // it has no columns of its own for a file
		t.Filed.Head, t.Filed.Rows = t.Head, t.Rows
	}
	var b bytes.Buffer
	w := csv.NewWriter(&b)
	w.UseCRLF, w.Comma = true, marks.Comma
	for n, row := range append([][]string{t.Filed.Head}, t.Filed.Rows...) {
		cells := make([]string, len(row), len(row)+1)
		for k, c := range row {
			if n > 0 && k < len(t.Filed.Figure) && t.Filed.Figure[k] && plain(c) {
				cells[k] = strings.Replace(c, ".", marks.Decimal, 1)
				continue
			}
			cells[k] = Harmless(visible.Note(c))
		}
		switch {
		case t.Sheet == "":
		case n == 0:
			cells = append(cells, SheetHead)
		default:
			cells = append(cells, Harmless(t.Sheet))
		}
		if err := w.Write(cells); err != nil {
			return nil, err
		}
	}
	w.Flush()
	return b.Bytes(), w.Error()
}

// Harmless is a cell that no spreadsheet takes for a formula. A cell that begins with an equals sign, an at sign, or with plus or minus
// and more behind it than a number may be run: it has an apostrophe before it. A number with its sign is a number, and a sign
// alone (a cavity is called + or -) starts nothing: both stay as they are. Line ends inside a cell are those of RFC 4180 after the
// writer is through with them.
func Harmless(cell string) string {
	if cell == "" || !strings.ContainsRune("=+-@\t\r\n", rune(cell[0])) || cell == "-" || cell == "+" || plain(cell) {
		return cell
	}
	return "'" + cell
}

// plain reports whether a cell is a number: digits, a sign before them, a point among them.
func plain(cell string) bool {
	if _, err := unit.ParseNumber(cell); err != nil {
		return false
	}
	return strings.Trim(cell, "+-.0123456789") == ""
}
