package table

import (
	"fmt"
	"strings"

	"contralay/model/visible"
	"contralay/model/wirelist/columned"
)

// Table is one sheet of a workbook, or the whole of a text file.
type Table struct {
	File    string // as it was given; for messages alone
	Sheet   string // "" in a text file
	Rows    []Row
	Hidden  bool   // a sheet that its workbook does not show
	Comma   bool   // cells are parted by something else than a comma: a comma in a number may be its decimal mark
	Marked  bool   // it is Markdown: every row says whether it is of a table
	Program int    // it is the comments of a program, of which so many lines are left out
	Guess   string // the code page that its letters were read in, where that is a guess; "" where it is none
	Odd     []Odd
	Faces   []columned.Face // the lines that draw the face of a plug: they are no rows
	Letter  []Table         // what the letter holds that this one quotes, a sign less before each line
}

// Odd is a cell, or the name of a sheet, with characters that are left out of it: what commands a
// terminal, turns the text round it or does not show.
type Odd struct {
	Row, Col int    // Row 0 where the sheet's name is meant; Col from 0
	Shown    string // the whole of it, each such character as a sign
}

// Row is one row and where it stands. Rows without any text are left out.
type Row struct {
	Line   int // line of a text file, or row of a sheet, from 1
	Cells  []string
	Level  int        // of a Markdown heading, from 1; 0 for any other row
	Prose  bool       // a line of Markdown outside every table
	Gap    *[2]string // of such a line: its two parts, where a wide gap parts it in two
	Drawn  []string   // of such a line that draws an arrow: its near end, its far end, and what stands in columns behind
	Point  bool       // a point of a list, its dot taken off
	Deep   int        // how far such a point is set in
	Ruled  bool       // a rule line of Markdown stands below it: it is the headings of a table
	First  bool       // an empty line, or a line of no table, stands before it: a table of Markdown begins here
	Apart  bool       // of such a row: the signs of its language say that the table above it has ended
	Made   bool       // headings that the text does not have: its rows are drawn
	Struck bool       // every cell of it is struck out
	Hidden bool       // its workbook does not show it
	Taken  bool       // a text between the rows of which the rows below it say all
	Step   bool       // a text between the rows that tells a step of work
	Sketch bool       // a text that draws something between lines that join pins: no wire is read of it
	Spans  uint8      // the lines of a table on its side that it is made of, its own the first; 0 for any other row
	Raw    string     // its line as it stands in a text that is no list of separated values; "" for any other
}

// Filled is the number of cells with text, and the first of them.
func (r Row) Filled() (n int, first string) {
	for _, c := range r.Cells {
		if c != "" {
			if n == 0 {
				first = c
			}
			n++
		}
	}
	return n, first
}

// Place is a place in a list.
type Place struct {
	File, Sheet string
	Row         int    // 0 where the whole list is meant
	Column      string // its heading, or its letter; "" where the whole row is meant
}

// String renders `FILE, sheet "S", row 4, column Pin`.
func (p Place) String() string {
	var b strings.Builder
	b.WriteString(p.File)
	if p.Sheet != "" {
		fmt.Fprintf(&b, ", sheet %q", p.Sheet)
	}
	if p.Row > 0 {
		fmt.Fprintf(&b, ", row %d", p.Row)
	}
	if p.Column != "" {
		b.WriteString(", column " + p.Column)
	}
	return b.String()
}

// Error is why a list cannot be read at all.
type Error struct {
	Place
	Says    string // what is wrong
	Allowed string // what is allowed; "" where there is nothing to choose from
}

// EmptyError is the error of a list that holds nothing, of which nothing else is wrong.
type EmptyError struct{ Of *Error }

func (e *EmptyError) Error() string { return e.Of.Error() }

func (e *EmptyError) Unwrap() error { return e.Of }

// Error renders "PLACE: SAYS; allowed: ALLOWED", on one line.
func (e *Error) Error() string {
	s := e.Says
	if at := e.Place.String(); at != "" {
		s = at + ": " + s
	}
	if e.Allowed != "" {
		s += "; allowed: " + e.Allowed
	}
	return visible.Line(s)
}

// ColumnLetter names a column as a spreadsheet does: A to Z, AA …; n from 0.
func ColumnLetter(n int) string {
	s := ""
	for n++; n > 0; n = (n - 1) / 26 {
		s = string(rune('A'+(n-1)%26)) + s
	}
	return s
}

// Short cuts a text that would fill the screen.
func Short(s string) string {
	const most = 160
	if r := []rune(s); len(r) > most {
		return string(r[:most]) + "…"
	}
	return s
}

func isDigit(c byte) bool { return c >= '0' && c <= '9' }
