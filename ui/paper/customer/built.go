package customer

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/query/record"
	"contralay/calc/query/run"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
)

// layerResult is what the readings of a layer came to.
func layerResult(l record.Layer) string {
	switch {
	case len(l.ReadMM) == 0:
		return "not measured"
	case l.Within():
		return "within"
	case l.Decided:
		return "conceded"
	case l.Told == run.TooThick:
		return "TOO THICK"
	}
	return "TOO THIN"
}

// diameter is a diameter; "" where it is not known.
func (c Set) diameter(v unit.Millimetre) string {
	if v <= 0 {
		return ""
	}
	return c.Sys.Fine(v)
}

func layerName(l record.Layer) string {
	says := l.Branch + " " + model.LayerName(l.Layer)
	if l.Bare {
		says += ", before the tape"
	}
	return says
}

// built is the pages of how it was built.
func (c Set) built() []page.Block {
	r := c.Record
	out := []page.Block{page.Section(BuiltName)}
	out = append(out, c.layers()...)
	if all := c.otherwise(); len(all) > 0 {
		out = append(out, c.deviations("deviation at", all))
	} else {
		out = append(out, page.Text("No deviation is written down beside the concessions of tests and inspection.", page.Small))
	}
	if again := c.again(); again != "" {
		out = append(out, page.Text(again, page.Small))
	}
	if len(r.Lots) == 0 {
		return append(out, page.Text("No lot of material is written down.", page.Small))
	}
	g := page.Grid{Columns: 2, Plain: true, Cols: []page.Col{{Head: "material", Bold: true}, {Head: "lot"}, {Head: "expires"}}}
	for _, l := range r.Lots {
		g.Lines = append(g.Lines, page.Cells(l.Of, list.Dash(l.Lot), list.Dash(l.Expires.V)))
	}
	return append(out, g.Block())
}

// again says which contacts were made again, and which steps were taken back and why; "" where none was.
func (c Set) again() string {
	var all []string
	for _, a := range c.Record.Again {
		all = append(all, "contact "+a.End+" made again, "+counted(a.Times, "time"))
	}
	for _, t := range c.undone() {
		all = append(all, "step "+t.Key+" undone"+list.Word(": ", t.Undone.V))
	}
	if len(all) == 0 {
		return ""
	}
	return "Done again: " + strings.Join(all, "; ") + "."
}

// undone are the steps that were taken back, with the reason.
func (c Set) undone() (out []model.Ticked) {
	k := c.H.BuildOf(c.Record.Serial)
	if k < 0 {
		return nil
	}
	for _, t := range c.H.Builds[k].Steps {
		if t.Undone.Set {
			out = append(out, t)
		}
	}
	return out
}

// layers is what was measured beside the sheet.
func (c Set) layers() []page.Block {
	turns := slices.ContainsFunc(c.Record.Layers, func(l record.Layer) bool { return l.LayMM.Set })
	g := page.Grid{Plain: true, Cols: []page.Col{{Head: "layer", Bold: true}, {Head: "sheet", Align: list.ToRight},
		{Head: "wire allows"}, {Head: "read"}}}
	out, short := false, strings.NewReplacer(" the centre", "\u00a0centre", ", before the tape", ", bare")
	if turns {
		g.Cols = append(g.Cols, page.Col{Head: "turn"})
	}
	for _, l := range c.Record.Layers {
		band, reading := "-", "-"
		if l.MostMM > 0 {
			band = c.diameter(l.LeastMM) + "–" + c.diameter(l.MostMM)
		}
		if len(l.ReadMM) > 0 {
			if reading = c.diameter(l.MeanMM); !l.Within() {
				reading, out = reading+"*", true
			}
		}
		line := page.Line{Cells: []page.Cell{{Text: short.Replace(layerName(l))},
			{Text: list.Dash(c.diameter(l.SheetMM))}, {Text: band}, {Text: reading, Bold: len(l.ReadMM) > 0 && !l.Within()}}}
		if turns {
			turn := "-"
			if l.LayMM.Set {
				turn = c.Sys.Length(l.LayMM.V) + " of " + c.Sys.Length(list.Turn(l.SheetLay))
			}
			line.Cells = append(line.Cells, page.Cell{Text: turn})
		}
		g.Lines = append(g.Lines, line)
	}
	for _, t := range c.Record.Tubes {
		line := page.Cells(t.Branch+" over sheath", list.Dash(c.diameter(t.SheetMM)), "-", c.diameter(t.OverMM))
		if turns {
			line.Cells = append(line.Cells, page.Cell{Text: "-"})
		}
		g.Lines = append(g.Lines, line)
	}
	if len(g.Lines) == 0 {
		return nil
	}
	g.Columns = 3 // what does not go on one line is broken
	if turns {
		g.Columns = 2
	}
	breaks(&g, 14, 0)
	says := "Diameters over each layer in " + c.Sys.Name() + ": by the sheet, what the tolerance of its wire allows, and the mean of " +
		"what was read. A dash: not measured."
	if slices.ContainsFunc(c.Record.Layers, func(l record.Layer) bool { return l.Bare }) {
		says += " Bare: before its tape."
	}
	if out {
		says += " A star: out of tolerance."
	}
	return []page.Block{kept(page.Text(says, page.Small)), g.Block()}
}

// builtRow is a row of the file: a reading, a deviation, a lot, a contact made again, a step undone, the mass.
type builtRow struct {
	what, where, sheet, least, most, read, unit, says, expires, result, by, on string
}

// asBuilt is how it was built as a file: one value a cell, a row for each reading.
func (c Set) asBuilt() list.Table {
	r, mm := c.Record, c.Sys.Name()
	var rows []builtRow
	for _, l := range r.Layers {
		row := builtRow{what: "over", where: layerName(l), sheet: c.diameter(l.SheetMM), least: c.diameter(l.LeastMM),
			most: c.diameter(l.MostMM), unit: mm, result: layerResult(l)}
		if len(l.ReadMM) == 0 {
			rows = append(rows, row)
		}
		for _, v := range l.ReadMM {
			row.read = c.diameter(v)
			rows = append(rows, row)
		}
		if l.LayMM.Set {
			rows = append(rows, builtRow{what: "turn", where: layerName(l), sheet: c.Sys.Length(list.Turn(l.SheetLay)),
				read: c.Sys.Length(l.LayMM.V), unit: mm})
		}
	}
	for _, t := range r.Tubes {
		rows = append(rows, builtRow{what: "over the sheath", where: t.Branch, sheet: c.diameter(t.SheetMM),
			read: c.diameter(t.OverMM), unit: mm})
	}
	for _, d := range r.Deviations {
		rows = append(rows, builtRow{what: "deviation", where: d.At, says: d.Says, by: d.By.V, on: d.On.V})
	}
	for _, a := range r.Again {
		rows = append(rows, builtRow{what: "contact made again", where: a.End, read: fmt.Sprint(a.Times), unit: "times"})
	}
	for _, t := range c.undone() {
		rows = append(rows, builtRow{what: "step undone", where: t.Key, says: t.Undone.V, by: t.By.V, on: t.At.V})
	}
	for _, l := range r.Lots {
		rows = append(rows, builtRow{what: "lot", where: l.Of, says: l.Lot, expires: l.Expires.V, by: l.By.V, on: l.At.V})
	}
	if r.MassG.Set {
		rows = append(rows, builtRow{what: "mass on the scale", where: "harness", read: unit.Fixed(r.MassG.V, 1), unit: "g"})
	}
	return list.Of(list.Table{File: "as-built", Title: BuiltName}, []list.Column[builtRow]{
		list.Text("what", func(r builtRow) string { return r.what }),
		list.Text("where", func(r builtRow) string { return r.where }),
		list.Figure("sheet", func(r builtRow) string { return r.sheet }),
		list.Figure("at least", func(r builtRow) string { return r.least }),
		list.Figure("at most", func(r builtRow) string { return r.most }),
		list.Figure("read", func(r builtRow) string { return r.read }),
		list.Text("unit", func(r builtRow) string { return r.unit }),
		list.Text("result", func(r builtRow) string { return r.result }),
		list.Text("says", func(r builtRow) string { return r.says }),
		list.Text("expires", func(r builtRow) string { return r.expires }),
		list.Text("by", func(r builtRow) string { return r.by }),
		list.Text("on", func(r builtRow) string { return r.on }),
	}, rows)
}
