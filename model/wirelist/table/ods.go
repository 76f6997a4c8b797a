package table

import (
	"fmt"
	"strings"
)

// ods reads the sheets of an OpenDocument spreadsheet (OASIS OpenDocument 1.2 part 1,
// chapter 9). A formula gives the value that was stored with it.
func (b *book) ods() ([]Table, error) {
	o := odsBook{book: b, struck: map[string]bool{}, hides: map[string]bool{}}
	err := b.walk("content.xml", visitor{start: o.start, end: o.end, text: o.text})
	if err != nil {
		return nil, err
	}
	return o.all, nil
}

// odsBook is where the reading of a content part stands.
type odsBook struct {
	*book
	all    []Table
	inside bool // a sheet
	line   int  // of the row that is read
	rows   int  // how often it repeats
	cells  []string
	col    int
	cols   int // how often the cell repeats
	kind   string
	value  string
	words  strings.Builder
	paras  int
	inCell bool
	in     int // depth of paragraphs
	aside  int // depth of notes on a cell, which are no part of it

	style  string          // of the text properties that are read
	struck map[string]bool // styles of cells that strike the text out
	hides  map[string]bool // styles of sheets that are not shown
	how    look            // of the row
	filled int             // its cells with text
	strike bool            // of the cell
	spans  []merged        // of the sheet
	down   int             // how many rows the cell goes over
}

func (o *odsBook) start(e element) error {
	switch {
	case o.aside > 0 || e.name == "annotation":
		o.aside++
		return nil
	case e.name == "table" && !o.inside:
		if len(o.all) >= o.l.Sheets {
			return o.refuse("", fmt.Sprintf("has more than %d sheets", o.l.Sheets), "fewer")
		}
		o.inside, o.line = true, 0
		o.all = append(o.all, Table{File: o.name, Sheet: marked(e.attr("name")), Hidden: o.hides[e.attr("style-name")], Comma: true})
		o.spans = nil
	case e.name == "style":
		o.style = e.attr("name")
	case e.name == "text-properties" && !o.inside:
		if line := e.attr("text-line-through-style"); line != "" && line != "none" {
			o.struck[o.style] = true
		}
	case e.name == "table-properties" && !o.inside:
		o.hides[o.style] = e.attr("display") == "false"
	case !o.inside:
	case e.name == "table-row":
		o.rows = e.number("number-rows-repeated", 1)
		o.line++
		o.cells, o.col = nil, 0
		hidden := e.attr("visibility")
		o.how, o.filled = look{struck: true, hidden: hidden == "collapse" || hidden == "filter"}, 0
	case e.name == "table-cell" || e.name == "covered-table-cell":
		o.cols = e.number("number-columns-repeated", 1)
		o.kind, o.value = e.attr("value-type"), e.attr("value")
		o.strike, o.down = o.struck[e.attr("style-name")], 1
		if e.number("number-columns-spanned", 1) == 1 {
			o.down = e.number("number-rows-spanned", 1)
		}
		o.words.Reset()
		o.paras, o.inCell = 0, true
	case e.name == "p" && o.inCell:
		if o.paras++; o.paras > 1 {
			o.words.WriteByte(' ')
		}
		o.in++
	case e.name == "s" && o.in > 0, e.name == "tab" && o.in > 0, e.name == "line-break" && o.in > 0:
		o.words.WriteByte(' ') // many blanks are one in the end
	}
	return nil
}

func (o *odsBook) text(s []byte) {
	if o.in > 0 && o.aside == 0 && o.words.Len() <= o.l.CellBytes {
		o.words.Write(s)
	}
}

func (o *odsBook) end(name string) error {
	switch {
	case o.aside > 0:
		o.aside--
	case !o.inside:
	case name == "table":
		o.inside = false
		o.fill(&o.all[len(o.all)-1], o.spans)
	case name == "p" && o.in > 0:
		o.in--
	case name == "table-cell" || name == "covered-table-cell":
		o.inCell = false
		return o.cell()
	case name == "table-row":
		return o.finish()
	}
	return nil
}

// cell enters a cell as often as it repeats; empty ones cost nothing.
func (o *odsBook) cell() error {
	t := &o.all[len(o.all)-1]
	at := Place{o.name, t.Sheet, o.line, ColumnLetter(o.col)}
	if o.cols < 0 || o.cols > 1<<24 {
		return &Error{at, "repeats no number of times", "what a spreadsheet program writes"}
	}
	s := marked(o.words.String())
	if o.words.Len() > o.l.CellBytes {
		return &Error{at, "has too long a text", fmt.Sprintf("up to %d bytes", o.l.CellBytes)}
	}
	// A number is taken as stored; with letters beside it, as a format may put a unit
	// there, as it is shown.
	if o.kind == "float" && o.value != "" && strings.Trim(s, "0123456789.,-+ '") == "" {
		s = plainNumber(o.value)
	}
	if s == "" {
		o.col += o.cols
		return nil
	}
	if o.col+o.cols > o.l.Columns {
		return &Error{at, "is a column too far", fmt.Sprintf("up to %d columns", o.l.Columns)}
	}
	for len(o.cells) < o.col {
		o.cells = append(o.cells, "")
	}
	o.filled++
	o.how.struck = o.how.struck && o.strike
	if o.down > 1 && len(o.spans) < mostMerged {
		o.spans = append(o.spans, merged{o.col, o.line, o.line + o.down - 1})
	}
	for range o.cols {
		o.cells = append(o.cells, s)
	}
	o.col += o.cols
	return nil
}

// finish enters a row as often as it repeats; empty ones cost nothing.
func (o *odsBook) finish() error {
	t := &o.all[len(o.all)-1]
	if o.rows < 0 || o.rows > 1<<24 {
		return &Error{Place{File: o.name, Sheet: t.Sheet, Row: o.line}, "repeats no number of times", "what a spreadsheet program writes"}
	}
	first := o.line
	o.line += max(o.rows-1, 0)
	if len(o.cells) == 0 {
		return nil
	}
	o.how.struck = o.how.struck && o.filled > 0
	for k := range o.rows {
		if err := o.row(t, first+k, o.cells, o.how); err != nil {
			return err
		}
	}
	return nil
}
