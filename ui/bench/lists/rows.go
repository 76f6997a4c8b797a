package lists

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"contralay/model/wirelist"
	wirelistname "contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
)

// The rows of one table beside what each becomes.

// perRow is what the harness and the report say of each row of a list.
type perRow struct {
	wires map[table.Place][]int // of the harness
	said  map[table.Place][]report.Finding
	twice map[table.Place]bool // rows that two tables beside one another share
}

// ofTable are the wires of a row; where two tables share it, those whose cavity and name stand in the cells of one.
func (p perRow) ofTable(in *importing, at table.Place, cells []string) []int {
	all := p.wires[at]
	if !p.twice[at] {
		return all
	}
	return slices.DeleteFunc(slices.Clone(all), func(i int) bool {
		w := in.H.Wires[i]
		ends := func(end string) bool {
			_, cavity, _ := strings.Cut(end, ":")
			return cavity != "" && slices.Contains(cells, cavity)
		}
		named := w.Signal.V == "" || slices.Contains(cells, w.Signal.V)
		return !named || !ends(w.From.V) && !ends(w.To.V)
	})
}

// rowsOf looks up what each row of a list became.
func rowsOf(in *importing) perRow {
	p := perRow{wires: map[table.Place][]int{}, said: map[table.Place][]report.Finding{},
		twice: map[table.Place]bool{}}
	seen := map[table.Place]bool{}
	for i := range in.Found {
		for k, r := range in.Found[i].All {
			if isMade(&in.Found[i], k) {
				continue
			}
			at := table.Place{File: in.Found[i].Place.File, Sheet: in.Found[i].Place.Sheet, Row: r.Line}
			seen[at], p.twice[at] = true, seen[at]
		}
	}
	if in.Err != nil {
		return p
	}
	for i := range in.H.Wires {
		for _, at := range in.Rep.Rows[in.H.Wires[i].ID] {
			if at.Column = ""; !slices.Contains(p.wires[at], i) {
				p.wires[at] = append(p.wires[at], i)
			}
		}
	}
	for _, f := range in.Rep.Findings {
		at := f.Place
		at.Column = ""
		p.said[at] = append(p.said[at], f)
	}
	return p
}

// drawn are the rows of the table that was shown last: a list has thousands, and a page is made at every key.
type drawn struct {
	of    *wirelist.Found
	w     int
	ascii bool
	rows  []desk.Row
}

// listRows are the rows of a table, under the meanings of its columns.
func listRows(m *desk.Model, in *importing, f *wirelist.Found, w int) []desk.Row {
	if d := in.drawn; d.of == f && d.w == w && d.ascii == m.Cfg.ASCII {
		return d.rows
	}
	in.drawn = drawn{f, w, m.Cfg.ASCII, makeRows(in, f, w, m.Cfg.ASCII)}
	return in.drawn.rows
}

// makeRows makes the rows of a table.
func makeRows(in *importing, f *wirelist.Found, w int, ascii bool) []desk.Row {
	l := layoutOf(f, w, ascii)
	var meant []string
	for _, c := range f.Reading().Block.Cols {
		meant = append(meant, string(c.Field))
	}
	rows := []desk.Row{{Text: l.line("row", meant, "becomes"), Heads: true}}
	headed := map[int]bool{}
	for _, r := range f.Block.Head {
		headed[r.Line] = true
	}
	for k, r := range f.All {
		if isMade(f, k) {
			headed[r.Line] = false
		}
	}
	above := map[int]bool{}
	for _, r := range f.Block.Titles {
		above[r.Line] = true
	}
	for k, r := range f.All {
		if !isMade(f, k) {
			rows = append(rows, listRow(in, f, r, l, headed[r.Line], above[r.Line]))
		}
	}
	return rows
}

// isMade reports whether a row is headings that the list does not have: the reader writes them above lines that it gives columns, on the
// line of the first one.
func isMade(f *wirelist.Found, k int) bool {
	r := f.All[k]
	return r.First && k+1 < len(f.All) && f.All[k+1].Line == r.Line &&
		slices.ContainsFunc(f.Block.Head, func(h table.Row) bool { return h.Line == r.Line })
}

// listRow is one row of a table: Enter says that it is the headings, . leaves it out.
func listRow(in *importing, f *wirelist.Found, r table.Row, l layout, headed, above bool) desk.Row {
	at := table.Place{File: f.Place.File, Sheet: f.Place.Sheet, Row: r.Line}
	text := shape.RowText(r.Cells)
	left := slices.Contains(f.Said.Rows, text)
	said := in.rows.said[at]
	becomes := becomesOf(in, in.rows.ofTable(in, at, r.Cells))
	switch {
	case left || f.Said.LeftOut:
		becomes = "left out"
	case headed:
		becomes = "headings"
	case above && becomes == "":
		becomes = "above the table"
	case becomes == "" && slices.ContainsFunc(said, func(f report.Finding) bool { return f.Rule == "heading between the rows" }):
		becomes = "a heading"
	case becomes == "":
		becomes = "no wire"
	}
	row := desk.Row{Key: fmt.Sprintf("row %d", r.Line), Mark: markOf(said),
		TextOf: func() string { return l.line(fmt.Sprint(r.Line), doubted(f, r, said), becomes) },
		More: func() string {
			all := []string{fmt.Sprintf("row %d: %s: %s", r.Line, strings.Join(slices.DeleteFunc(slices.Clone(r.Cells),
				func(c string) bool { return c == "" }), " | "), becomes)}
			for _, s := range said {
				all = append(all, strings.TrimSuffix(s.Rule+": "+s.What, ": ")+"; "+s.Did)
			}
			return strings.Join(all, ". ")
		},
		Does: "headings", Enter: func(m *desk.Model) { sayHeading(m, f, r, headed) },
		Drop: func(m *desk.Model) { leaveRow(m, f, text, left) }}
	if headed {
		row.Does = "no headings"
	}
	return row
}

// markOf is the mark of the worst that is said of a row.
func markOf(said []report.Finding) (mark string) {
	for _, s := range said {
		switch s.Level {
		case report.Stop:
			return "!"
		case report.Warn:
			mark = "?"
		}
	}
	return mark
}

// doubted are the cells of a row, those that a warning is about with a mark.
func doubted(f *wirelist.Found, r table.Row, said []report.Finding) []string {
	cells := r.Cells
	for _, s := range said {
		if s.Level == report.Note || s.Column == "" {
			continue
		}
		for i := range cells {
			if shape.At(f.Reading().Block.Cols, i) == s.Column && cells[i] != "" {
				cells = slices.Clone(cells)
				cells[i] = "?" + cells[i]
			}
		}
	}
	return cells
}

// becomesOf says which wires a row becomes.
func becomesOf(in *importing, wires []int) string {
	var all []string
	for _, i := range wires {
		w := in.H.Wires[i]
		says := "wire " + w.ID
		if w.From.V != "" || w.To.V != "" {
			says += "  " + cmp.Or(w.From.V, "open") + " to " + cmp.Or(w.To.V, "open")
		}
		all = append(all, says)
	}
	if len(all) > 1 {
		return words.Plural(len(all), "wire", "wires") + ": " + strings.Join(all, ", ")
	}
	return strings.Join(all, "")
}

// sayHeading takes a row for the headings of its table; said of what is taken for them already, that it is none.
func sayHeading(m *desk.Model, f *wirelist.Found, r table.Row, headed bool) {
	if headed {
		say(m, f, fmt.Sprintf("row %d is no headings", r.Line), func(s *wirelistname.TableSaid) { s.Heading, s.NoHeading = "", true })
		return
	}
	if n, _ := r.Filled(); n < 2 {
		m.Refuse("headings are two cells or more")
		return
	}
	say(m, f, fmt.Sprintf("row %d is the headings", r.Line), func(s *wirelistname.TableSaid) {
		s.Heading, s.NoHeading = shape.RowText(r.Cells), false
	})
}

// leaveRow leaves a row out, or takes it in again.
func leaveRow(m *desk.Model, f *wirelist.Found, text string, left bool) {
	says := "row left out"
	if left {
		says = "row taken in"
	}
	say(m, f, says, func(s *wirelistname.TableSaid) {
		if left {
			s.Rows = slices.DeleteFunc(s.Rows, func(t string) bool { return t == text })
			return
		}
		s.Rows = append(s.Rows, text)
	})
}
