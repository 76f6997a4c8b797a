package name

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"contralay/model/wirelist/table"
)

// TableKey names a table of a list such that the next revision of the list has it too: by its sheet, the text above
// it and its headings.
type TableKey struct {
	Sheet string // "" in a text file
	Title string // "" where nothing stands above it
	Heads string // its headings, parted by " | "; "" where it has none
	Nth   int    // which of those that are alike in all this, from 1
}

// String names the table in a sentence.
func (k TableKey) String() string {
	s := k.Heads
	if s == "" {
		s = "without headings"
	}
	if k.Title != "" {
		s = k.Title + ": " + s
	}
	if k.Sheet != "" {
		s = fmt.Sprintf("sheet %q, ", k.Sheet) + s
	}
	if k.Nth > 1 {
		s += fmt.Sprintf(", number %d", k.Nth)
	}
	return s
}

// TableSaid is what a person said about one table of a list.
type TableSaid struct {
	Key       TableKey
	Columns   map[string]Field // by heading, or "#3" for the third column
	Reading   string           // what it is read as; "" for the best
	Connector string           // whose cavities it lists; "" where nobody said
	Heading   string           // the text of the row that is its headings; "" for the one that is found
	NoHeading bool             // no row of it is headings
	LeftOut   bool
	GoesOn    bool     // it is one with the table above it on its sheet
	Rows      []string // the texts of rows that are left out
}

// Nothing reports whether nothing is said.
func (s TableSaid) Nothing() bool {
	return len(s.Columns) == 0 && s.Reading == "" && s.Connector == "" && s.Heading == "" && !s.NoHeading && !s.LeftOut && !s.GoesOn &&
		len(s.Rows) == 0
}

// Clone is a copy that shares nothing.
func (s TableSaid) Clone() TableSaid {
	s.Columns, s.Rows = maps.Clone(s.Columns), slices.Clone(s.Rows)
	return s
}

// Of is the number of the entry that a recipe has about a table; −1 where it has none. alike is how many tables of the list
// have its sheet and headings: where it is the only one, and the only one in the recipe, the text above it may have
// changed, as the date of a revision does.
func (r *Recipe) Of(k TableKey, alike int) int {
	if r == nil {
		return -1
	}
	like, only := 0, -1
	for i, s := range r.Tables {
		if s.Key.same(k) && s.Key.Nth == k.Nth && table.Fold(s.Key.Title) == table.Fold(k.Title) {
			return i
		}
		if s.Key.same(k) {
			like, only = like+1, i
		}
	}
	if like == 1 && alike == 1 && r.Tables[only].Key.Nth == 1 {
		return only
	}
	return -1
}

// ColumnsOf is what the columns of a table mean: as is said about it, else about a table of its sheet with the same
// headings. Connectors that are listed one below another are said once.
func (r *Recipe) ColumnsOf(k TableKey, own int) map[string]Field {
	out := map[string]Field{}
	if r == nil {
		return out
	}
	for _, s := range r.Tables {
		if k.Heads != "" && s.Key.same(k) {
			maps.Copy(out, s.Columns)
		}
	}
	if own >= 0 {
		maps.Copy(out, r.Tables[own].Columns)
	}
	return out
}

// same reports whether two keys have one sheet and the same headings.
func (k TableKey) same(o TableKey) bool {
	return table.Fold(k.Sheet) == table.Fold(o.Sheet) && table.Fold(k.Heads) == table.Fold(o.Heads)
}

// Say is the recipe with something else said about a table; the recipe itself is not changed.
func (r Recipe) Say(k TableKey, alike int, change func(s *TableSaid)) Recipe {
	at := r.Of(k, alike)
	r.Tables = slices.Clone(r.Tables)
	if at < 0 {
		at = len(r.Tables)
		r.Tables = append(r.Tables, TableSaid{Key: k})
	}
	s := r.Tables[at].Clone()
	change(&s)
	if r.Tables[at] = s; s.Nothing() {
		r.Tables = slices.Delete(r.Tables, at, at+1)
	}
	return r
}

// With is the recipe as one table is read with it: what is said about the table stands before what is said about all.
func (r *Recipe) With(s TableSaid) *Recipe {
	if len(s.Columns) == 0 {
		return r
	}
	var out Recipe
	if r != nil {
		out = *r
	}
	out.Columns = maps.Clone(out.Columns)
	if out.Columns == nil {
		out.Columns = map[string]Field{}
	}
	for head, f := range s.Columns {
		for was := range out.Columns {
			if table.Fold(was) == table.Fold(head) {
				delete(out.Columns, was)
			}
		}
		out.Columns[head] = f
	}
	return &out
}

// Passes reports whether a sheet is not read: it is said to be left out, or its workbook does not show it and nobody asked for it.
func (r *Recipe) Passes(t *table.Table) bool {
	return r.LeavesOut(t.Sheet) || t.Hidden && !r.ReadsHidden(t.Sheet)
}

// ReadsHidden reports whether a sheet that its workbook does not show is said to be read.
func (r *Recipe) ReadsHidden(sheet string) bool {
	return r != nil && sheet != "" && slices.Contains(r.Hidden, sheet)
}

// LeavesOut reports whether a sheet is said to be left out.
func (r *Recipe) LeavesOut(sheet string) bool {
	return r != nil && sheet != "" && slices.Contains(r.Sheets, sheet)
}

// encodeTables writes what is said about tables.
func (r *Recipe) encodeTables(b *strings.Builder) {
	for _, s := range r.Tables {
		b.WriteString("\n[[table]]\n")
		for _, kv := range [][2]string{{"sheet", s.Key.Sheet}, {"title", s.Key.Title}, {"headings", s.Key.Heads}, {"read_as", s.Reading},
			{"connector", s.Connector}, {"heading_row", s.Heading}} {
			if kv[1] != "" {
				fmt.Fprintf(b, "%s = %s\n", kv[0], quoteTOML(kv[1]))
			}
		}
		if s.Key.Nth > 1 {
			fmt.Fprintf(b, "number = %d\n", s.Key.Nth)
		}
		if s.NoHeading {
			b.WriteString("no_headings = true\n")
		}
		if s.LeftOut {
			b.WriteString("left_out = true\n")
		}
		if s.GoesOn {
			b.WriteString("goes_on = true\n")
		}
		if len(s.Rows) > 0 {
			fmt.Fprintf(b, "rows_left_out = %s\n", quoteList(s.Rows))
		}
		if len(s.Columns) > 0 {
			b.WriteString("[table.columns]\n")
			for _, head := range slices.Sorted(maps.Keys(s.Columns)) {
				fmt.Fprintf(b, "%s = %s\n", quoteTOML(head), quoteTOML(string(s.Columns[head])))
			}
		}
	}
}
