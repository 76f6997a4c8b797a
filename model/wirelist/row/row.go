package row

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"contralay/model/catalogue"
	"contralay/model/wirelist/cablecells"
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/nameaside"
	"contralay/model/wirelist/pads"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/saidonce"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// begin reads of a row what asks nothing of the rows before it: what its cells say of its wire and what its cavity is for. notes is
// what else is to be kept of it; plain are its cells with the numbers and the names of cavities parted.
func begin(im *draft.Importer, b *shape.Block, cells, notes []string, place table.Place, it *draft.Item) (plain []string) {
	cells, called, more := partNumbered(b, cells)
	*it = draft.Item{Place: place, Wire: -1, Block: im.Pages, Notes: append(notes, more...)}
	at := func(i int) table.Place { return columnOf(b, place, i) }
	for i, c := range cells {
		if i >= len(b.Cols) && c != "" {
			it.Notes = append(it.Notes, c)
			im.Say(report.Warn, "cell without heading", at(i), c, "kept in the note")
		}
		if i < len(b.Cols) && b.Cols[i].Field == name.FieldKeep && !b.Cols[i].Spared && c != "" &&
			!(b.Cols[i].Alias && value.IsNothing(c)) {
			it.Notes = append(it.Notes, value.JoinNonEmpty(": ", value.JoinNonEmpty(" ", b.Cols[i].OfEnd, b.Cols[i].Head), c))
		}
	}
	// "plug" is no number of a wire
	if id := b.Cell(cells, name.FieldWire); !value.IsNothing(id) && (isPlainName(id) || name.StateOf(id) == name.Used) {
		it.OwnID = id
	}
	bare, remark := nameaside.Cut(b.Cell(cells, name.FieldSignal))
	bare, it.Aside = nameaside.Made(bare)
	it.Signal = value.JoinNonEmpty("", bare, called)
	it.Notes = append(it.Notes, nonEmpty(remark)...)
	for i, c := range cells {
		if i < len(b.Cols) && b.Cols[i].Field == name.FieldKeep && it.Signal == "" && name.IsDrainWord(table.Fold(c)) {
			it.Signal = c // a shield among the numbers of the cores
		}
	}
	if pin := b.Cell(cells, name.FieldPin); value.IsNothing(it.Signal) && name.IsDrainWord(table.Fold(pin)) && pads.Lands(b, cells) {
		it.Signal = pin // a screen among the cavities of a device, with the cavity where it ends
	}
	if it.Signal == "" && it.OwnID != "" && name.IsDrainWord(strings.TrimRight(table.Fold(it.OwnID), "0123456789 ")) {
		it.Signal, it.OwnID = it.OwnID, "" // a shield in the column of the wires
	}
	for i, c := range cells {
		if i < len(b.Cols) && b.Cols[i].Running && b.Cols[i].Field == name.FieldIgnore {
			it.Counted = strings.TrimRight(c, ".)")
		}
	}
	readValues(im, b, cells, it, at)
	saidonce.TakeGroup(b, it)
	_, it.Drain = name.DrainOf(it.Signal)
	it.Drain = it.Drain && !column.NamesShieldedDevice(b, cells, it.Signal)
	readNote(im, b, cells, it)
	cablecells.Take(im, b, cells, it)
	readState(im, b, cells, it)
	return cells
}

// columnOf is the place of a cell of a row.
func columnOf(b *shape.Block, row table.Place, i int) table.Place {
	row.Column = shape.At(b.Cols, i)
	return row
}

// finish makes the items of a row that is begun: one for each cavity or wire that it names.
func finish(im *draft.Importer, b *shape.Block, cells []string, it draft.Item, owner *draft.Term) {
	place := it.Place
	column := func(i int) table.Place { return columnOf(b, place, i) }
	saidonce.TakeNamedSize(im, b, &it)
	saidonce.TakeDefault(im, b, &it, cells)
	saidonce.TakeOverall(im, &it)
	for i, c := range cells {
		if i < len(b.Cols) && b.Cols[i].Spared && c != "" {
			it.Notes = append(it.Notes, value.JoinNonEmpty(": ", b.Cols[i].Head, c))
		}
	}
	it.Notes = append(it.Notes, b.Beside(cells)...)
	im.Rows++

	if contact, col := b.CellAt(cells, name.FieldContact); contact != "" && !value.IsNothing(contact) {
		it.Notes = append(it.Notes, value.JoinNonEmpty(": ", b.Cols[col].Head, contact))
	}
	if b.Has(name.FieldDevicePin) {
		devicesRow(im, b, cells, it, column)
		return
	}
	if b.Has(name.FieldVia) {
		viaRow(im, b, cells, it, owner, column)
		return
	}
	if b.Plug != "" {
		tos, col := endsOf(im, b, cells, name.FieldTo, name.FieldToPin, &it, column)
		betweenEnds(im, it, []draft.End{{Text: cmp.Or(b.Near, b.Plug)}}, tos, column(max(col, 0)))
		return
	}
	if !b.Has(name.FieldFrom, name.FieldTo, name.FieldFromPin) || b.InCells() && !b.Has(name.FieldFrom) ||
		owner != nil && !b.Has(name.FieldFrom) {
		pinRow(im, b, cells, it, owner, column)
		return
	}
	if pin, col := b.CellAt(cells, name.FieldPin); pin != "" && owner == nil {
		it.Notes = append(it.Notes, "cavity: "+pin)
		im.Say(report.Warn, "cavity of no connector", column(col), pin, "kept in the note")
	}
	froms, fromCol := endsOf(im, b, cells, name.FieldFrom, name.FieldFromPin, &it, column)
	tos, toCol := endsOf(im, b, cells, name.FieldTo, name.FieldToPin, &it, column)
	if len(froms) == 0 && b.Near != "" && len(tos) > 0 && !b.Has(name.FieldFrom, name.FieldFromPin) {
		froms = []draft.End{{Text: b.Near}}
	}
	if len(tos) == 0 && b.Far != "" && len(froms) > 0 && it.State == name.Used {
		tos = []draft.End{{Text: b.Far}}
	}
	if it.State == name.Used && len(froms)+len(tos) == 1 && headsDevices(b) && (saysNothing(&it) || saysANote(b, &it)) {
		sayNoteAlone(im, &it)
		it.State = name.Blank // "3 | -": a cavity with nothing beside it
	}
	if isFreePlace(b, froms, tos, &it) {
		im.Say(report.Note, "a place with nothing beside it", it.Place, endsText(append(froms, tos...)), "the cavity is kept free")
		sayNoteAlone(im, &it)
		it.State = name.Blank
	}
	col := toCol
	if len(froms) > 1 || col < 0 {
		col = max(fromCol, 0)
	}
	betweenEnds(im, it, froms, tos, column(col))
}

// pinRow makes an item for each cavity of a row of a pin table.
func pinRow(im *draft.Importer, b *shape.Block, cells []string, it draft.Item, owner *draft.Term, column func(int) table.Place) {
	cell, col := b.CellAt(cells, name.FieldPin)
	if im.Opt.NoEnds && !b.Has(name.FieldPin) {
		betweenEnds(im, it, nil, nil, column(0))
		return
	}
	if cell == "" || value.IsDots(cell) || owner == nil && !(b.Cols[col].InCell && namesEnd(cell)) {
		im.Say(report.Warn, "row without cavity", it.Place, table.Tidy(strings.Join(cells, " ")), "left out")
		return
	}
	if b.Cols[col].InCell && namesEnd(cell) {
		endsInCell(im, b, cells, cell, it, column, col)
		return
	}
	switch {
	case pads.IsAny(cell):
		it.Notes = append(it.Notes, "cavity: "+cell)
		im.Say(report.Warn, "any cavity will do", column(col), cell, "kept in the note, no end made")
		tos, toCol := endsOf(im, b, cells, name.FieldTo, name.FieldToPin, &it, column)
		betweenEnds(im, it, nil, tos, column(max(toCol, col)))
		return
	case name.StateOf(cell) == name.Blank && len(cell) > 2:
		im.Say(report.Note, "no cavity", it.Place, table.Tidy(strings.Join(cells, " ")), "not connected, left out")
		return
	}
	var ins *catalogue.Insert
	if i, ok := im.Cat.Insert(owner.Insert.V); ok {
		ins = &i
	}
	var pins []string
	if ins != nil && ins.Has(cell) || b.Cols[col].Slashed {
		pins = []string{cell}
	} else {
		for _, p := range name.SplitPins(cell) {
			pins = append(pins, spreadPin(im, b, p, ins, column(col))...)
		}
	}
	if len(pins) == 0 {
		im.Say(report.Warn, "no cavity", column(col), cell, "row left out")
		return
	}
	free := it.State == name.Blank || it.State == name.Reserved
	switch {
	case len(pins) > 1 && free:
		im.Say(report.Note, "several cavities in one cell", column(col), cell, fmt.Sprintf("taken as %d of them", len(pins)))
	case len(pins) > 1 && (len(b.Poles) == len(pins) || len(b.Poles) == 0 && b.EachColour): // said of the block
	case len(pins) > 1:
		net := fmt.Sprintf("%q", it.Signal)
		if it.Signal == "" {
			net = "without name"
		}
		im.Say(report.Note, twoOrMore(len(pins))+" cavities of one net", column(col), cell+" "+net, "a wire in each")
	}
	tos, toCol := endsOf(im, b, cells, name.FieldTo, name.FieldToPin, &it, column)
	if it.Signal != "" && len(tos) == 0 && !b.Nodes && !tellsNoEnd(b, cells) {
		it.Net = draft.NetKey(it.Signal)
	}
	var froms []draft.End
	for _, p := range pins {
		owner.Pin(p, it.State, it.Place)
		if free {
			one := it
			if len(tos) > 0 {
				one.To = tos[0]
			}
			im.RestOf(&one, owner.ID+":"+p)
			continue
		}
		froms = append(froms, draft.End{Term: owner, Pin: p})
	}
	switch {
	case free || eachPole(im, b, cells, it, froms, tos, column(col)):
	case len(froms) > 1 && len(tos) < 2: // said above
		sayOnePlace(im, cell, tos, column(col))
		for k, from := range froms {
			one := it
			if len(it.Each) > 1 && len(it.Each) == len(froms) {
				one.Colour, one.Each = it.Each[k], nil
			}
			betweenEnds(im, one, []draft.End{from}, tos, column(col))
		}
	default:
		betweenEnds(im, it, froms, tos, column(max(toCol, col)))
	}
}

// namesEnd reports whether a cell names a connector and a cavity.
func namesEnd(cell string) bool {
	connector, pin, ok := name.SplitEnd(cell)
	return ok && (strings.Contains(cell, ":") || name.IsDesignator(connector) && pin != "")
}

// endsInCell makes an item for each cavity of a cell that names its connector too, "X9:B04".
func endsInCell(im *draft.Importer, b *shape.Block, cells []string, cell string, it draft.Item, column func(int) table.Place, col int) {
	found, more := name.SplitEnds(cell)
	if len(found) == 0 {
		connector, pin, _ := name.SplitEnd(cell)
		found = []name.End{{Connector: connector, Pin: pin}}
	}
	if more != "" {
		it.Notes = append(it.Notes, "at "+cell+": "+more)
	}
	for _, e := range found {
		one := b.Clone()
		for i := range one.Cols {
			one.Cols[i].InCell = false
		}
		parted := slices.Clone(cells)
		parted[col] = e.Pin
		pinRow(im, one, parted, it, im.Named(e.Connector, it.Place, true), column)
	}
}

// twoOrMore is "two" and the numbers beyond.
func twoOrMore(n int) string {
	if n == 2 {
		return "two"
	}
	return fmt.Sprint(n)
}

// headsDevices reports whether the headings of the cavities name their devices, so that each row is a cavity.
func headsDevices(b *shape.Block) bool {
	return slices.ContainsFunc(b.Cols, func(c shape.Column) bool { return c.Field == name.FieldFromPin && c.Of != "" })
}

// saysNothing reports whether a row says nothing of a wire but its ends.
func saysNothing(it *draft.Item) bool {
	return it.Signal == "" && it.OwnID == "" && it.Gauge.Size == "" && it.Gauge.Spec == "" && len(it.Colour) == 0 && !it.Length.Set &&
		len(it.Notes) == 0 && it.Cable == "" && !it.Amps.Set && !it.Fuse.Set && it.FuseName == ""
}
