package row

import (
	"contralay/model/wirelist/boxtitles"
	"contralay/model/wirelist/cableheads"
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/grouphead"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/runon"
	"contralay/model/wirelist/saidonce"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/signoff"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/total"
	"contralay/model/wirelist/value"
)

// Read reads the rows of one block.
func Read(im *draft.Importer, b *shape.Block, only bool) {
	place := table.Place{File: b.Table.File, Sheet: b.Table.Sheet}
	here := func(row int) table.Place { p := place; p.Row = row; return p }
	sayReading(im, b, place)
	b.PartRuns()
	b.PartFar()
	partNamedValues(b)
	column.PartTold(b)
	column.SettleSees(b)
	b.PartBrackets()
	b.WithoutZeros()
	unitOfLengths(im, b)
	pinTable := b.IsPinTable()
	column.SettleBareSizes(b, im.Squares)
	column.SettlePoles(b)
	column.SettleCoreSizes(b)
	sayPoles(im, b, here(b.Head))
	b.SettleRanges()

	if of, ok := cableheads.Said(b); ok {
		_, text := of.Filled()
		im.Say(report.Note, "a cable in a heading", here(of.Line), text, saidonce.TakenForRows)
	}
	var boxes map[int]bool
	if len(b.Rows) > 0 && pinTable && !b.Has(name.FieldConnector) {
		boxes = boxtitles.Lines(b)
		// The name of the first connector may stand below the headings, as the others do.
		if _, first := b.Rows[0].Filled(); shape.IsText(b.Rows[0]) && !signoff.Is(b.Rows[0]) &&
			(name.SaysConnector(first) || endsInPlug(first) || b.StartsAgain()) {
			b.Titles, b.Rows = append(b.Titles, b.Rows[0]), b.Rows[1:]
		}
	}
	var t *draft.Term
	titles := titlesOf(im, b, here)
	saidonce.TakeHeadSize(im, b, here(b.Head))
	if (pinTable || b.Has(name.FieldVia)) && !b.InCells() && (len(b.Rows) == 0 || !boxes[b.Rows[0].Line]) {
		t = connectorOf(im, b, titles, only)
		saidonce.TakeTitleSize(im, b, titles, here)
	} else {
		for _, r := range titles {
			_, text := r.Filled()
			end := grouphead.Near(b, text)
			if b.Plug != "" && text == b.Plug {
				end = text
			}
			if end != "" {
				b.Near = end
			}
			did := grouphead.LeftOutBut(end)
			if far := grouphead.Far(b, text); far != "" {
				b.Far, did = far, grouphead.TakenAsFar+far
			}
			if g, ok := saidonce.GroupValues(b, text); ok {
				b.Group, did = g, saidonce.TakenForRows
			}
			im.Say(report.Note, "above the table", here(r.Line), text, did)
		}
	}
	sayColumns(im, b, place)
	columnsTwice(b, im, here(b.Head))
	if b.Nodes {
		im.Say(report.Note, "lines of a bus", here(b.Head), "",
			"each kept with one end: the list does not say how they run from node to node")
	}
	columnsGiven(im, b, pinTable)
	if pinTable {
		runon.Join(im, b, here)
	}
	runon.ConnectorRows(im, b, here)
	above, connector := []string(nil), ""
	last := b.LastData()
	devices, groups := map[name.Field]string{}, map[int]string{}
	changes := false // the rows are those of a table of changes
	var rows ahead
	for i, r := range b.Rows {
		_, first := r.Filled()
		changes = changes || signoff.IsRevisionHead(r)
		switch {
		case changes || signoff.Is(r):
			im.Say(report.Note, "about the paper", here(r.Line), shape.RowText(r.Cells), "left out")
			continue
		case total.Say(im, b, i):
			continue
		case r.Step:
			im.Say(report.Note, "a step of work", here(r.Line), first, "no wire, left out")
			continue
		case boxes[r.Line]:
			if !shape.IsText(r) { // as short as a cavity
				im.Say(report.Note, "heading between the rows", here(r.Line), first,
					"taken as the name of the connector of the rows below it")
			}
			t = connectorOf(im, b, []table.Row{r}, false)
			b.Group.Size = ""
			saidonce.TakeTitleSize(im, b, []table.Row{r}, here)
			continue
		case shape.IsText(r) && !column.IsLoneCavity(b, r) || column.IsShortHeading(b, i):
			if c, ok := name.ReadCount(first); ok && t != nil {
				c.Row = r.Line
				t.Counts = append(t.Counts, c)
			} else if t != nil && i < last && namesConnector(b, first, i, t) {
				t = connectorOf(im, b, []table.Row{r}, false)
				b.Group.Size = ""
				saidonce.TakeTitleSize(im, b, []table.Row{r}, here)
			} else if end := grouphead.Near(b, first); end != "" && i < last {
				b.Near = end
				im.Say(report.Note, "heading between the rows", here(r.Line), first, grouphead.LeftOutBut(end))
			} else if far := grouphead.Far(b, first); far != "" && i < last {
				b.Far = far
				im.Say(report.Note, "heading between the rows", here(r.Line), first, grouphead.TakenAsFar+far)
			} else if g, ok := saidonce.GroupValues(b, first); ok && i < last {
				b.Group = g
				im.Say(report.Note, "heading between the rows", here(r.Line), first, saidonce.TakenForRows)
			} else if i < last {
				rule, did := "remark between the rows", "left out"
				if r.Taken {
					rule, did = "line of a cable above its cores", "taken for the rows below it"
				}
				im.Say(report.Note, rule, here(r.Line), first, did)
			} else {
				im.Say(report.Note, "below the table", here(r.Line), first, "left out")
			}
			continue
		}
		if b.Deleted(r.Cells) {
			im.Say(report.Warn, "row marked as deleted", here(r.Line), shape.RowText(r.Cells), "left out")
			continue
		}
		cells := runon.Ditto(im, r, above, here(r.Line))
		cells, notes := runon.WithoutFormulas(im, b, cells, here(r.Line))
		cells, notes = withoutStruck(im, b, cells, notes, here(r.Line))
		above = cells
		cells = runon.DeviceAbove(im, b, cells, devices, here(r.Line))
		cells = runon.GroupAbove(im, b, cells, groups, here(r.Line))
		owner := t
		if (pinTable || b.Has(name.FieldVia)) && b.Has(name.FieldConnector) {
			named := b.Cell(cells, name.FieldConnector)
			if named == "" && connector != "" {
				im.Say(report.Note, "connector not repeated", here(r.Line), connector, "taken from the row above")
				named = connector
			}
			if connector = named; named != "" {
				owner = im.Named(value.JoinNonEmpty(" ", b.Prefix, named), here(r.Line), true)
			}
		}
		it, cells := rows.begun(im, b, i, cells, notes, here(r.Line))
		finish(im, b, cells, *it, owner)
	}
}
