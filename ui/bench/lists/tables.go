package lists

import (
	"fmt"
	"slices"

	"contralay/model/wirelist"
	"contralay/ui/bench/desk"
	"contralay/ui/draw"
)

// The tables of a list, those of each sheet of a workbook below it.

// tableRows are the tables of the list that is open, those of each sheet of a workbook below it.
func tableRows(m *desk.Model, in *importing, w int) (rows []desk.Row) {
	var sheets []string
	var hidden []desk.Row
	for _, t := range in.Tables {
		if t.Sheet != "" && (!t.Hidden || in.Recipe.ReadsHidden(t.Sheet)) && len(t.Rows) > 0 && !slices.Contains(sheets, t.Sheet) {
			sheets = append(sheets, t.Sheet)
		}
	}
	if len(sheets) < 2 {
		sheets = nil
	}
	for _, t := range in.Tables {
		if t.Hidden && t.Sheet != "" && len(t.Rows) > 0 {
			hidden = append(hidden, hiddenRow(in, t.Sheet))
		}
	}
	last := ""
	for i := range in.Found {
		f := &in.Found[i]
		for sheets != nil && f.Key.Sheet != last {
			last, sheets = sheets[0], sheets[1:]
			rows = append(rows, sheetRow(in, last))
			if len(sheets) == 0 {
				break
			}
		}
		rows = append(rows, tableRow(m, in, f, w))
	}
	for _, s := range sheets {
		rows = append(rows, sheetRow(in, s))
	}
	return append(rows, hidden...)
}

// hiddenRow reads a sheet that its workbook does not show, or leaves it again.
func hiddenRow(in *importing, sheet string) desk.Row {
	read := in.Recipe.ReadsHidden(sheet)
	text, does, says := "sheet "+sheet+": hidden in the workbook, not read", "reads it", "read, though its workbook hides it"
	if read {
		text, does, says = "sheet "+sheet+": hidden in the workbook, read", "leaves out", "left out, as its workbook hides it"
	}
	turn := func(m *desk.Model) {
		now := opened(m).list
		n := *now
		n.Before = now
		n.Recipe.Hidden = with(now.Recipe.Hidden, sheet, !read)
		opened(m).list = readList(m, n)
		m.Tell("sheet " + sheet + " " + says + ": " + makes(opened(m).list))
	}
	return desk.Row{Key: "hidden " + sheet, Text: text, Detail: "Enter reads this sheet too, or leaves it out again. . does the same",
		Does: does, Enter: turn, Drop: turn}
}

// with is a list of names with one more, or without it. The list it is made from is not changed.
func with(names []string, name string, in bool) []string {
	out := slices.DeleteFunc(slices.Clone(names), func(s string) bool { return s == name })
	if in {
		out = append(out, name)
	}
	return out
}

// sheetRow leaves a sheet out, or takes it in.
func sheetRow(in *importing, sheet string) desk.Row {
	out := slices.Contains(in.Recipe.Sheets, sheet)
	text, does, says := "sheet "+sheet, "leaves out", "left out"
	if out {
		text, does, says = text+": left out", "takes in", "taken in"
	}
	turn := func(m *desk.Model) {
		now := opened(m).list
		n := *now
		n.Before = now
		n.Recipe.Sheets = with(now.Recipe.Sheets, sheet, !out)
		opened(m).list = readList(m, n)
		m.Tell("sheet " + sheet + " " + says + ": " + makes(opened(m).list))
	}
	return desk.Row{Key: "sheet " + sheet, Text: text, Detail: "Enter or . leaves the whole sheet out, or takes it in again", Does: does,
		Enter: turn, Drop: turn}
}

// tableRow is one table: Enter opens it.
func tableRow(m *desk.Model, in *importing, f *wirelist.Found, w int) desk.Row {
	key := f.Key.String()
	name := f.Key.Heads
	if name == "" {
		name = "without headings"
	}
	if f.Key.Title != "" {
		name = f.Key.Title + ": " + name
	}
	first := readingRows(f)[0]
	return desk.Row{Key: "table " + key, Mark: markOf(in.rows.said[f.Place]),
		Text:   fmt.Sprintf("  table %s  is  %s", draw.Fit(name, max(8, (w-14)/2), m.Cfg.ASCII), readAs(f)),
		Detail: "Enter opens it: rows, columns, connector. + reads it as the next best, . leaves it out",
		Enter:  func(m *desk.Model) { m.Show(TableKind, key) }, Drop: func(m *desk.Model) { leaveOut(m, f) },
		Steps: first.Steps, Step: first.Step}
}
