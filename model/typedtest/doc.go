// Package typedtest holds the published tables of the trade taken a second time from the notes on
// their sources, by another hand and without sight of the catalogue or of the tables in calc: copied
// row by row. What is remembered, the stub splices, the limits of cars' wire, the duty of devices and
// the faces were added to it from the same notes after the first comparison. Only tests import it: they compare
// cell by cell what the program uses with what was typed here.
//
// A table is a file of comma-separated values. Lines at its head tell its source, how the source
// was seen, and from what it was typed:
//
//	# source: AC 43.13-1B CHG 1, Table 11-9, p. 11-23
//	# how: read | second hand | memory
//	# typed from: wire.md 4.1
//
// Typed from names the note of the shop that the table was taken from; the notes are no part of this
// repository. The first row names the columns, the first cell of a row names the row. A cell may end in a mark
// where it differs from its table: r read in the document, q quoted second hand, p practice, m
// memory, c computed. Cells that are read or second hand are published; the others are held here
// so that they can be compared, and are never counted as published.
package typedtest

import (
	"embed"
	"encoding/csv"
	"fmt"
	"slices"
	"strconv"
	"strings"
)

//go:embed data/*.csv
var files embed.FS

// How tells how the source of a cell was seen.
type How byte

// The ways a source can be seen.
const (
	Read       How = 'r'
	SecondHand How = 'q'
	Practice   How = 'p'
	Memory     How = 'm'
	Computed   How = 'c'
)

// Published is true for what was read in a document or in somebody's quotation of one.
func (h How) Published() bool { return h == Read || h == SecondHand }

var hows = map[string]How{"read": Read, "second hand": SecondHand, "practice": Practice, "memory": Memory, "computed": Computed}

// Cell is one cell of a table: what is printed, without its mark.
type Cell struct {
	Text string
	How  How
}

// Number is the cell as a number; false where it is empty or a word.
func (c Cell) Number() (float64, bool) {
	x, err := strconv.ParseFloat(c.Text, 64)
	return x, err == nil
}

// Table is one table, its source and its cells by row and column.
type Table struct {
	Name, Source, From, Note string
	How                      How
	Columns, Rows            []string // without the column and the row of names
	cells                    map[[2]string]Cell
}

// Cell is the cell of a row and a column; false where the table has none or it is empty.
func (t Table) Cell(row, column string) (Cell, bool) {
	c, ok := t.cells[[2]string{row, column}]
	return c, ok
}

// Number is the number of a cell; false where there is none.
func (t Table) Number(row, column string) (float64, bool) {
	c, ok := t.Cell(row, column)
	if !ok {
		return 0, false
	}
	return c.Number()
}

// Published counts the published cells.
func (t Table) Published() (n int) {
	for _, c := range t.cells {
		if c.How.Published() {
			n++
		}
	}
	return n
}

// Names are the names of all tables, in alphabetical order.
func Names() []string {
	all, err := files.ReadDir("data")
	if err != nil {
		panic(err) // it is embedded: it is there
	}
	names := make([]string, len(all))
	for i, f := range all {
		names[i] = strings.TrimSuffix(f.Name(), ".csv")
	}
	return names
}

// Open reads a table by its name.
func Open(name string) (Table, error) {
	b, err := files.ReadFile("data/" + name + ".csv")
	if err != nil {
		return Table{}, fmt.Errorf("typed table %q: %w", name, err)
	}
	return parse(name, string(b))
}

// Must is Open for tests that cannot go on without the table.
func Must(t interface {
	Helper()
	Fatal(args ...any)
}, name string) Table {
	t.Helper()
	table, err := Open(name)
	if err != nil {
		t.Fatal(err)
	}
	return table
}

// parse reads the text of a table and refuses what would be misread: a head that lacks a line, a
// row of another length, a row or a column named twice, a table without cells.
func parse(name, text string) (Table, error) {
	t := Table{Name: name, cells: map[[2]string]Cell{}}
	fail := func(format string, a ...any) (Table, error) {
		return Table{}, fmt.Errorf("typed table %q: "+format, append([]any{name}, a...)...)
	}
	for strings.HasPrefix(text, "#") {
		line, rest, _ := strings.Cut(text, "\n")
		text = rest
		key, value, _ := strings.Cut(strings.TrimPrefix(line, "# "), ": ")
		switch key {
		case "source":
			t.Source = value
		case "typed from":
			t.From = value
		case "note":
			t.Note = value
		case "how":
			t.How = hows[value]
		default:
			return fail("unknown line %q", line)
		}
	}
	if t.Source == "" || t.From == "" || t.How == 0 {
		return fail("source, how and typed from must all be told")
	}
	rows, err := csv.NewReader(strings.NewReader(text)).ReadAll()
	if err != nil {
		return fail("%w", err)
	}
	if len(rows) < 2 || len(rows[0]) < 2 {
		return fail("it has no cells")
	}
	t.Columns = rows[0][1:]
	for _, r := range rows[1:] {
		if slices.Contains(t.Rows, r[0]) {
			return fail("row %q stands twice", r[0])
		}
		t.Rows = append(t.Rows, r[0])
		for i, text := range r[1:] {
			c := Cell{Text: text, How: t.How}
			if v, mark, ok := strings.Cut(text, " "); ok && len(mark) == 1 && strings.Contains("rqpmc", mark) {
				c = Cell{Text: v, How: How(mark[0])}
			}
			if text == "" {
				continue
			}
			key := [2]string{r[0], t.Columns[i]}
			if _, twice := t.cells[key]; twice {
				return fail("column %q stands twice", t.Columns[i])
			}
			t.cells[key] = c
		}
	}
	return t, nil
}
