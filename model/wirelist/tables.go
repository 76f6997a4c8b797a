package wirelist

import (
	"fmt"
	"slices"
	"strings"

	"contralay/model/visible"
	"contralay/model/wirelist/abreast"
	"contralay/model/wirelist/block"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/huekey"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/pieces"
	"contralay/model/wirelist/reading"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/signoff"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/thingheads"
	"contralay/model/wirelist/titleplugs"
	"contralay/model/wirelist/words"
)

// The tables of a list one by one, and what a person says about each of them.

// Found is one table of a list.
type Found struct {
	Key      name.TableKey
	Alike    int // how many tables of the sheet have its headings
	Place    table.Place
	Said     name.TableSaid // by a recipe
	Block    block.Block    // with the rows and headings that were said
	All      []table.Row    // every row of it, those above its headings and those that are left out as well
	Readings []reading.Reading
	Names    []string // of the readings, as a recipe calls them; no two are alike
	Chosen   int      // the reading that is taken
	Loose    bool     // rows without any headings that nothing is said about: they are left out
	Below    bool     // another table of its sheet stands above it
	Apart    bool     // its headings are other ones than those of the table above it: the two cannot be one
	Odd      []string // what is said about it, and does not fit
	at       int      // its entry in the recipe, −1 for none
	dropped  []table.Row
}

// Reading is what the table is read as.
func (f *Found) Reading() reading.Reading { return f.Readings[f.Chosen] }

// Joined reports whether its rows are read with the table above it.
func (f *Found) Joined() bool { return f.Said.GoesOn && f.Below && !f.Apart }

// Wires reports whether its rows are read as wires.
func (f *Found) Wires() bool { return !f.Said.LeftOut && !f.Loose && !f.Joined() && f.Reading().Wires }

// prepared is some lists as Import takes their rows: without keys and remarks, lines that tell a wire each in columns.
// keys are what the colours of each file mean.
func prepared(tables []table.Table, recipe *name.Recipe) (h shape.Headings, rows []table.Table, keys map[string]huekey.ColourKey) {
	im, known := &draft.Importer{}, words.Vocabulary()
	tables = withoutKeys(im, known, withoutPrints(im, known, recipe, withoutSheetColumns(im, tables)))
	tables = colourKey(im, tables)
	h = shape.Headings{Words: known, Recipe: recipe.OfColumns()}
	tables, _ = withRecords(im, h, tables)
	return h, tables, im.Keys
}

// Tables are the tables of some lists in their order, as a recipe, which may be nil, has them read. Hidden sheets and
// sheets that are left out have none.
func Tables(tables []table.Table, recipe *name.Recipe) (all []Found) {
	h, tables, keys := prepared(tables, recipe)
	for i, t := range tables {
		if recipe.Passes(&t) ||
			slices.ContainsFunc(tables[:i], func(o table.Table) bool { return sameRows(o.Rows, t.Rows) }) {
			continue
		}
		h.Colours = keys[t.File]
		found, _ := tablesIn(h, recipe, &t)
		all = append(all, found...)
	}
	if slices.ContainsFunc(all, func(f Found) bool { return f.Wires() }) {
		return all
	}
	if l := quotedIn(tables, nil); l != nil {
		return Tables(l.tables, recipe)
	}
	return all
}

// tablesIn are the tables of one sheet, and the rows that belong to none.
func tablesIn(h shape.Headings, recipe *name.Recipe, t *table.Table) (all []Found, over []table.Row) {
	plain := signoff.WithoutTakenOut(signoff.WithoutQuoted(signoff.WithoutSignature(signoff.WithoutStruckRows(*t))))
	blocks, over := block.Find(h, plain)
	loose := len(blocks) == 0 && len(over) > 0
	if loose {
		blocks = []block.Block{{Table: &plain, Rows: over, Mark: h.MarkOf(&plain)}}
	}
	seen, alike := map[name.TableKey]int{}, map[string]int{}
	for _, b := range blocks {
		if len(b.Rows) == 0 && len(b.Head) == 0 {
			continue
		}
		k := keyOf(t, &b)
		seen[k]++
		alike[k.Heads]++
		k.Nth = seen[k]
		all = append(all, Found{Key: k, Block: b, Place: table.Place{File: t.File, Sheet: t.Sheet, Row: b.Line()}})
	}
	for i := range all {
		f := &all[i]
		f.Alike = alike[f.Key.Heads]
		f.All = slices.Concat(f.Block.Titles, f.Block.Head, f.Block.Rows)
		if f.at = recipe.Of(f.Key, f.Alike); f.at >= 0 {
			f.Said = recipe.Tables[f.at].Clone()
		}
		f.Said.Columns = recipe.ColumnsOf(f.Key, f.at)
		f.Loose, f.Below = loose && f.Said.Nothing(), i > 0
		f.leaveRows()
		f.setHeading()
	}
	first := 0 // of the tables that are one
	for i := range all {
		if i > 0 {
			all[i].Apart = slices.ContainsFunc(all[i].Block.Head, func(r table.Row) bool { return h.IsHead(r) && !all[first].headedBy(r) })
		}
		if !all[i].Joined() {
			first = i
		}
	}
	for i := range all {
		if !all[i].Joined() {
			all[i].goOn(all[i+1:])
		} else if all[i].Said.LeftOut {
			all[i].Odd = append(all[i].Odd, "it is said to go on with the table above it and to be left out")
		}
	}
	abreast.Rows(len(all), func(from, to int) {
		for i := from; i < to; i++ {
			all[i].read(h, recipe)
		}
	})
	if len(all) > 0 && loose && !all[0].Loose {
		over = nil
	}
	thingheads.Settle(blocksAll(all))
	titleplugs.Settle(blocksAll(all))
	rows, ok := pieces.Rows(h, t, unread(h, t, all, over), headless(h, t, all))
	if ok {
		parted := *t
		parted.Rows = rows
		return tablesIn(h, recipe, &parted)
	}
	return all, over
}

// blocksAll are the blocks of those of some tables that are read as wires.
func blocksAll(all []Found) (blocks []*shape.Block) {
	for i := range all {
		if all[i].Wires() {
			blocks = append(blocks, all[i].Reading().Block)
		}
	}
	return blocks
}

// pieced reports whether a table is made of lines that no other package could read: its headings stand on the line of its first row.
func (f *Found) pieced() bool {
	b := &f.Block
	return len(b.Head) == 1 && len(b.Rows) > 0 && pieces.IsHead(b.Head[0]) && b.Head[0].Line == b.Rows[0].Line
}

// headed reports whether the table has headings that are known, or at least one that is in a row that a rule of Markdown makes headings.
//
//	| DB9 | OBD | Signal | Colour |
//	|-----|-----|--------|--------|
func (f *Found) headed(h shape.Headings) bool {
	return slices.ContainsFunc(f.Block.Head, func(r table.Row) bool { return h.IsHead(r) || r.Ruled && h.KnowsOne(r) })
}

// headless are the rows, as the sheet has them, of tables that are read without headings and of which nothing is said.
func headless(h shape.Headings, t *table.Table, all []Found) (taken pieces.Taken) {
	of := map[int]bool{}
	taken.Colourless, taken.OneEnd = true, true
	numbers := 0
	for i := range all {
		f := &all[i]
		if !f.Wires() || f.headed(h) || f.Block.Told || !f.Said.Nothing() {
			continue
		}
		b := f.Reading().Block
		for _, r := range f.Block.Head {
			of[r.Line], taken.Odd = true, true
		}
		taken.Colourless = taken.Colourless && !b.Has(name.FieldColour, name.FieldGauge)
		taken.OneEnd = taken.OneEnd && !b.Has(name.FieldTo)
		taken.Under = taken.Under || b.Has(name.FieldFrom) && !b.Has(name.FieldPin) && slices.ContainsFunc(f.Block.Titles, namesPlug)
		for _, r := range b.Rows {
			of[r.Line] = true
			if pieces.IsBareSize(b.Cell(r.Cells, name.FieldNote)) {
				numbers++
			}
			taken.Odd = taken.Odd || pieces.IsOddEnd(b.Cell(r.Cells, name.FieldFrom)) || pieces.IsOddEnd(b.Cell(r.Cells, name.FieldTo)) ||
				pieces.IsCurrent(b.Cell(r.Cells, name.FieldFromPin)) || pieces.IsCurrent(b.Cell(r.Cells, name.FieldToPin))
		}
	}
	for _, r := range t.Rows {
		if of[r.Line] {
			taken.Rows = append(taken.Rows, r)
		}
	}
	taken.Numbered = numbers > 0 && 2*numbers >= len(taken.Rows)
	return taken
}

// namesPlug reports whether a text above a table names a connector.
func namesPlug(r table.Row) bool {
	_, text := r.Filled()
	return name.SaysConnector(text)
}

// unread are the rows of a sheet that no table of wires takes in: those of no table, and those of the others without headings that are
// known, or every row where there is no table of wires; none where a person has said something.
func unread(h shape.Headings, t *table.Table, all []Found, over []table.Row) []table.Row {
	rows, wires := slices.Clone(over), false
	for i := range all {
		f := &all[i]
		if !f.Said.Nothing() {
			return nil
		}
		wires = wires || f.Wires()
		switch {
		case f.headed(h):
		case !f.Wires():
			rows = append(rows, f.All...)
		default:
			rows = append(rows, f.Block.Titles...)
		}
	}
	if !wires {
		return t.Rows
	}
	return rows
}

// keyOf names a table; Nth is still to be given.
func keyOf(t *table.Table, b *block.Block) name.TableKey {
	k := name.TableKey{Sheet: t.Sheet}
	level := -1
	for _, r := range b.Titles {
		if r.Level >= level && !r.Point { // a heading before a text, the nearest of either
			k.Title, level = shape.RowText(r.Cells), min(r.Level, 1)
		}
	}
	var heads []string
	for _, h := range b.Head {
		for _, c := range h.Cells {
			if c != "" {
				heads = append(heads, c)
			}
		}
	}
	k.Heads = strings.Join(heads, " | ")
	return k
}

// read finds the readings of the table with what is said about it.
func (f *Found) read(h shape.Headings, recipe *name.Recipe) {
	with := recipe.With(f.Said)
	h.Recipe = with.OfColumns()
	f.Readings = reading.Of(h, f.Block)
	f.leaveValues()
	f.sayColumns()
	nth := map[string]int{}
	for i := range f.Readings {
		r := &f.Readings[i]
		called := r.Kind
		if nth[r.Kind]++; nth[r.Kind] > 1 {
			called = fmt.Sprintf("%s, way %d", r.Kind, nth[r.Kind])
		}
		f.Names = append(f.Names, called)
		r.Block.Said = f.Said.Connector
	}
	if f.Said.Reading != "" {
		if f.Chosen = slices.Index(f.Names, f.Said.Reading); f.Chosen < 0 {
			f.Chosen = 0
			f.Odd = append(f.Odd, "it cannot be read as "+f.Said.Reading)
		}
	}
}

// leaveRows takes the rows away that are said to be left out.
func (f *Found) leaveRows() {
	for _, text := range f.Said.Rows {
		is := func(r table.Row) bool { return shape.RowText(r.Cells) == text }
		if !slices.ContainsFunc(f.All, is) {
			f.Odd = append(f.Odd, "no row of it is "+table.Short(text)+", to be left out")
			continue
		}
		for _, rows := range []*[]table.Row{&f.Block.Titles, &f.Block.Head, &f.Block.Rows} {
			for _, r := range *rows {
				if is(r) {
					f.dropped = append(f.dropped, r)
				}
			}
			*rows = slices.DeleteFunc(slices.Clone(*rows), is)
		}
	}
}

// setHeading makes the row that is said the headings of the table: what stands above it are titles.
func (f *Found) setHeading() {
	b := &f.Block
	if f.Said.Heading == "" && !f.Said.NoHeading {
		return
	}
	rows := slices.Concat(b.Titles, b.Head, b.Rows)
	switch at := slices.IndexFunc(rows, func(r table.Row) bool { return shape.RowText(r.Cells) == f.Said.Heading }); {
	case f.Said.NoHeading:
		b.Rows, b.Head = slices.Concat(b.Head, b.Rows), nil
	case f.Said.Heading == "":
	case at < 0:
		f.Odd = append(f.Odd, "no row of it is "+table.Short(f.Said.Heading)+", to be its headings")
	default:
		b.Titles, b.Head, b.Rows, b.Listed = rows[:at:at], rows[at:at+1:at+1], rows[at+1:], false
	}
}

// goOn takes in the rows of the tables below that are said to be one with this one. Headings that come again are none of them.
func (f *Found) goOn(below []Found) {
	for i := range below {
		b := &below[i].Block
		if !below[i].Joined() {
			return
		}
		if below[i].Said.LeftOut {
			continue
		}
		rows := slices.Clone(b.Titles)
		for _, r := range b.Head {
			if !f.headedBy(r) {
				rows = append(rows, r)
			}
		}
		f.Block.Rows = slices.Concat(f.Block.Rows, rows, b.Rows)
	}
}

// headedBy reports whether a row is the headings of the table once more, all of them or some.
func (f *Found) headedBy(r table.Row) bool {
	return slices.ContainsFunc(f.Block.Head, func(head table.Row) bool {
		for i, c := range r.Cells {
			if c != "" && (i >= len(head.Cells) || table.Fold(head.Cells[i]) != table.Fold(c)) {
				return false
			}
		}
		return true
	})
}

// sayColumns looks whether the columns that something is said about are there.
func (f *Found) sayColumns() {
	cols := f.Readings[0].Block.Cols
	for key := range f.Said.Columns {
		if !slices.ContainsFunc(cols, func(c shape.Column) bool { return table.Fold(c.Head) == table.Fold(key) }) &&
			(!strings.HasPrefix(key, "#") || key == "#") {
			f.Odd = append(f.Odd, "no column of it is headed "+visible.Line(key))
		}
	}
	slices.Sort(f.Odd)
}

// ColumnKey is the name of a column of the table in what is said about it: its heading where no other column has
// that, else its number.
func (f *Found) ColumnKey(i int) string {
	cols := f.Reading().Block.Cols
	n := 0
	for _, c := range cols {
		if table.Fold(c.Head) == table.Fold(cols[i].Head) {
			n++
		}
	}
	if cols[i].Head == "" || n > 1 || strings.HasPrefix(cols[i].Head, "#") {
		return fmt.Sprintf("#%d", i+1)
	}
	return cols[i].Head
}

// say enters what was said about the table and does not fit, and the rows that were left out.
func (f *Found) say(im *draft.Importer) {
	for _, odd := range f.Odd {
		im.Say(report.Warn, "the recipe does not fit", f.Place, odd, "read without that")
	}
	if f.Said.LeftOut {
		im.Say(report.Note, "table left out", f.Place, f.Key.String(), "as was said")
		return
	}
	if f.Joined() {
		im.Say(report.Note, "table joined to the one above it", f.Place, f.Key.String(), "as was said")
	} else if f.Said.GoesOn && f.Apart {
		im.Say(report.Warn, "the recipe does not fit", f.Place, "its headings are other ones than those of the table above it",
			"read by itself")
	} else if f.Said.GoesOn {
		im.Say(report.Warn, "the recipe does not fit", f.Place, "no table stands above it, to go on with", "read by itself")
	}
	for _, r := range f.dropped {
		at := f.Place
		at.Row = r.Line
		im.Say(report.Note, "row left out", at, shape.RowText(r.Cells), "as was said")
	}
}

// sayUnmet enters what a recipe says about tables and sheets that no list has.
func sayUnmet(im *draft.Importer, tables []table.Table, met map[int]bool) {
	r := im.Opt.Recipe
	if r == nil || len(tables) == 0 {
		return
	}
	at := table.Place{File: tables[0].File}
	for i, s := range r.Tables {
		if !met[i] && !r.LeavesOut(s.Key.Sheet) {
			im.Say(report.Warn, "the recipe speaks of a table that is not here", at, s.Key.String(), "nothing is done")
		}
	}
	for _, s := range slices.Concat(r.Sheets, r.Hidden) {
		if !slices.ContainsFunc(tables, func(t table.Table) bool { return t.Sheet == s }) {
			im.Say(report.Warn, "the recipe speaks of a sheet that is not here", at, s, "nothing is done")
		}
	}
}

// allLeftOut is why nothing is read where a person left out every table.
func allLeftOut(tables []table.Table, met map[int]bool, r *name.Recipe) error {
	said := slices.ContainsFunc(tables, func(t table.Table) bool { return r.LeavesOut(t.Sheet) })
	for i := range met {
		said = said || r.Tables[i].LeftOut
	}
	if !said {
		return nil
	}
	return &table.Error{Place: table.Place{File: tables[0].File}, Says: "every table of wires in it is left out",
		Allowed: "one that is taken in, or more"}
}
