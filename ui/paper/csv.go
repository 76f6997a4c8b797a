package paper

import (
	"bytes"
	"encoding/csv"
	"strings"

	"contralay/model/unit"
)

// CSV is a table as RFC 4180 has it: commas, CRLF, UTF-8, a head of column names. A cell of
// text that a spreadsheet would run as a formula gets an apostrophe before it; a plain
// number is left alone.
func CSV(t Table) ([]byte, error) {
	var b bytes.Buffer
	w := csv.NewWriter(&b)
	w.UseCRLF = true
	for _, row := range append([][]string{t.Head}, t.Rows...) {
		cells := make([]string, len(row))
		for k, c := range row {
			cells[k] = Harmless(c)
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
