package record

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// one is a block of rows: its rows, what its title says, and its values by their headings.
type one struct {
	rows   []table.Row
	title  string
	values map[string]string
}

// Rows makes rows of a table of the blocks of a sheet, below a row of their headings; they are as they were where it has no two blocks
// that each say both ends of a wire. Text between the blocks stays where it is, and the headings come again below it. lines
// are those of the rows of each block, by the line of the first.
func Rows(h shape.Headings, t *table.Table) (rows []table.Row, lines map[int][]int) {
	if h.HeadLine() > 0 || h.Numbered() {
		return t.Rows, nil // a person has said where its columns are
	}
	fields := map[string]name.Field{}
	var keys []string // in the order in which they are first met
	known := func(key string) name.Field {
		f, seen := fields[key]
		if !seen {
			cols, _ := h.Columns([]table.Row{{Cells: []string{key, ""}}}, 2)
			f = cols[0].Field
			fields[key] = f
		}
		return f
	}
	var out []table.Row
	var all []*one
	lines = map[int][]int{}
	titled, titles := "", 0
	for i := 0; i < len(t.Rows); {
		rec, n := blockAt(known, t.Rows[i:])
		if rec == nil {
			if len(all) > 0 {
				out = append(out, whole(t.Rows[i]))
			}
			i++
			continue
		}
		if len(all) == 0 {
			out = slices.Clone(t.Rows[:i])
			for k := range out {
				out[k] = whole(out[k])
			}
		}
		if rec.title != "" {
			titled, titles = headOfTitle(known, rec.title), titles+1
		}
		rec.rows = t.Rows[i : i+n]
		all = append(all, rec)
		for _, r := range t.Rows[i : i+n] {
			if key, _ := keyed(r); key != "" && !slices.Contains(keys, key) {
				keys = append(keys, key)
			}
		}
		out = append(out, table.Row{Level: -len(all)}) // its place, filled below
		i += n
	}
	if len(all) < 2 {
		return t.Rows, nil
	}
	if 2*titles < len(all) {
		titled = "" // a text stands above a block here and there
	}
	cells := slices.Clone(keys)
	if titled != "" {
		cells = append([]string{titled}, keys...)
	}
	headed := false
	for _, r := range out {
		if r.Level >= 0 {
			rows, headed = append(rows, r), false // the table ends here
			continue
		}
		rec := all[-r.Level-1]
		if titled == "" && rec.title != "" {
			rows, headed, rec.rows = append(rows, rec.rows[0]), false, rec.rows[1:]
		}
		at := rec.rows[0].Line
		for _, r := range rec.rows {
			lines[at] = append(lines[at], r.Line)
		}
		if !headed {
			rows = append(rows, table.Row{Line: at, Cells: slices.Clone(cells), First: true, Ruled: t.Marked})
			headed = true
		}
		row := table.Row{Line: at}
		if titled != "" {
			row.Cells = append(row.Cells, idOfTitle(known, rec.title))
		}
		for _, k := range keys {
			row.Cells = append(row.Cells, rec.values[k])
		}
		rows = append(rows, row)
	}
	return rows, lines
}

// whole makes one text of a row of a heading and a value that is of no block: nothing heads its columns.
func whole(r table.Row) table.Row {
	if key, v := keyed(r); key != "" && len(r.Cells) > 1 {
		r.Cells, r.Prose = []string{key + ": " + v}, true
	}
	return r
}

// blockAt is the block that begins at the first of some rows, and how many rows it has; nil where none begins there. It needs both ends
// of a wire. A heading that it has already begins the next one, and so does a title.
func blockAt(known func(string) name.Field, rows []table.Row) (rec *one, n int) {
	const most = 40 // rows (no source)
	if key, _ := keyed(rows[0]); key == "" {
		if len(rows) < 2 || len(rows[0].Cells) != 1 && !isAlone(rows[0]) {
			return nil, 0
		}
		if key, _ := keyed(rows[1]); key == "" {
			return nil, 0
		}
		n = 1
	}
	rec = &one{values: map[string]string{}}
	if n == 1 {
		_, rec.title = rows[0].Filled()
	}
	from, to, first := false, false, n
	for ; n < min(len(rows), most); n++ {
		key, v := keyed(rows[n])
		if _, again := rec.values[key]; key == "" || again {
			break
		}
		if n > first && rows[n].Line > rows[n-1].Line+1 && from && to {
			break
		}
		rec.values[key] = v
		switch known(key) {
		case name.FieldFrom:
			from = true
		case name.FieldTo:
			to = true
		}
	}
	if !from || !to || len(rec.values) < 3 {
		return nil, 0
	}
	return rec, n
}

// isAlone reports whether one cell of a row has text, and that is the first.
func isAlone(r table.Row) bool {
	n, _ := r.Filled()
	return n == 1 && r.Cells[0] != ""
}

// keyed parts a row in a heading and its value: two cells, or one with a colon or an equals sign behind the heading.
func keyed(r table.Row) (key, v string) {
	switch n, first := r.Filled(); {
	case r.Level > 0:
	case n == 2 && r.Cells[0] != "" && len(r.Cells) > 1 && r.Cells[1] != "":
		key, v = strings.TrimRight(first, " :="), r.Cells[1]
	case n == 1 && r.Cells[0] != "":
		front, back, ok := strings.Cut(first, ": ")
		if !ok {
			front, back, ok = strings.Cut(first, " = ")
		}
		if ok {
			key, v = strings.TrimSpace(front), strings.TrimSpace(back)
		}
	}
	if len(strings.Fields(key)) > 3 || strings.ContainsAny(key, "0123456789,→") {
		return "", ""
	}
	return key, v
}

// headOfTitle is what the titles of the blocks are: the number of a wire, or its name.
func headOfTitle(known func(string) name.Field, title string) string {
	if id := idOfTitle(known, title); id != title || name.IsDesignator(title) || name.IsCavity(title) {
		return "Wire"
	}
	return "Signal"
}

// idOfTitle takes the word for a wire off a title, "wire 12" and "Wire no. 12"; a title without one stays as it is.
func idOfTitle(known func(string) name.Field, title string) string {
	w := strings.Fields(strings.TrimRight(title, ":"))
	for n := 1; n < len(w) && n < 3; n++ {
		if f := known(strings.Join(w[:n], " ")); len(w) == n+1 && (f == name.FieldWire || f == name.FieldCable) &&
			name.IsCavity(strings.Trim(w[n], "#.()")) {
			return strings.Trim(w[n], "#.()")
		}
	}
	return strings.Join(w, " ")
}
