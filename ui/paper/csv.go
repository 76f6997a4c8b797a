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

// CSV is a table as RFC 4180 has it: commas, CRLF, UTF-8, a head of column names. A cell of
// text that a spreadsheet would run as a formula gets an apostrophe before it; a plain
// number is left alone. A cell is one line, and what would command a terminal stands as a sign.
// The last column says which sheet the list belongs to, in every row: so it stays with a row
// that is sorted or copied, and the first line alone is a head.
func CSV(t list.Table) ([]byte, error) {
	var b bytes.Buffer
	w := csv.NewWriter(&b)
	w.UseCRLF = true
	for n, row := range append([][]string{t.Head}, t.Rows...) {
		cells := make([]string, len(row), len(row)+1)
		for k, c := range row {
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

// Harmless is a cell that no spreadsheet takes for a formula: text that begins with a sign
// which starts one has an apostrophe before it; a number as it is. Line ends inside a cell
// are those of RFC 4180 after the writer is through with them.
func Harmless(cell string) string {
	if cell == "" || !strings.ContainsRune("=+-@\t\r\n", rune(cell[0])) {
		return cell
	}
	if _, err := unit.ParseNumber(cell); err == nil && strings.Trim(cell, "+-.0123456789") == "" {
		return cell
	}
	return "'" + cell
}
