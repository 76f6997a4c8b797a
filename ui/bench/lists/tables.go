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
	for _, t := range in.Tables {
		if t.Sheet != "" && !t.Hidden && len(t.Rows) > 0 && !slices.Contains(sheets, t.Sheet) {
			sheets = append(sheets, t.Sheet)
		}
	}
	if len(sheets) < 2 {
		sheets = nil
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
	return rows
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
		if out {
			n.Recipe.Sheets = slices.DeleteFunc(slices.Clone(n.Recipe.Sheets), func(s string) bool { return s == sheet })
		} else {
			n.Recipe.Sheets = append(slices.Clone(n.Recipe.Sheets), sheet)
		}
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
