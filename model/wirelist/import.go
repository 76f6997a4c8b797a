package wirelist

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"sync"

	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/model/visible"
	"contralay/model/wirelist/audit"
	"contralay/model/wirelist/block"
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/endvalues"
	"contralay/model/wirelist/farside"
	"contralay/model/wirelist/join"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/ratings"
	"contralay/model/wirelist/reading"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/row"
	"contralay/model/wirelist/runline"
	"contralay/model/wirelist/saidonce"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/sidehead"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/taghues"
	"contralay/model/wirelist/toldpairs"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// shelf is the catalogue of who gives none of his own; it is only read.
var shelf = sync.OnceValues(catalogue.Default)

// Import makes a harness and a report of tables.
//
// The error is an *Error: there is no table that names its columns, or a sheet was
// asked for that is not there. Then the harness is empty. Everything else is a finding
// of the report, and the harness passes model.Harness.Check.
func Import(tables []table.Table, opt draft.Options) (model.Harness, report.Report, error) {
	h, rep, err := imported(tables, opt, nil)
	for l := quotedIn(tables, nil); err != nil && l != nil; l = quotedIn(l.tables, l.beside) {
		if of, says, bad := imported(l.tables, opt, l); bad == nil {
			return of, says, nil
		}
	}
	return h, rep, err
}

// imported makes a harness and a report of tables; l is the letter that they stand in, nil where they are in none.
func imported(tables []table.Table, opt draft.Options, l *letter) (model.Harness, report.Report, error) {
	im := &draft.Importer{Opt: opt, Cat: opt.Catalogue, ByKey: map[string]*draft.Term{}, SpliceIDs: map[string]bool{}}
	if im.Cat == nil {
		cat, err := shelf()
		if err != nil {
			return model.Harness{}, report.Report{}, err
		}
		im.Cat = cat
	}
	im.Rep.States, im.Rep.Taken, im.Rep.Lengths = map[string]bool{}, map[string]bool{}, map[string]unit.Millimetre{}
	im.Rep.Notes, im.Rep.Kept, im.Rep.Unsaid, im.Rep.Counted = map[string][]string{}, map[string]bool{}, map[string]bool{},
		map[string]bool{}
	im.Rep.Numbered = map[string]bool{}
	im.Rep.Fuses, im.Rep.Cables, im.Rep.Kinds = map[string]string{}, map[string]string{}, map[string]string{}
	defaults(im)
	tables, err := chosen(tables, opt.Sheets)
	if err != nil {
		return model.Harness{}, report.Report{}, err
	}
	l.say(im)
	known := words.Vocabulary()
	tables = withoutKeys(im, known, withoutPrints(im, known, opt.Recipe, withoutSheetColumns(im, tables)))
	tables = colourKey(im, tables)
	h := shape.Headings{Words: known, Recipe: im.Opt.Recipe.OfColumns(), NoEnds: im.Opt.NoEnds}
	tables, told := withRecords(im, h, tables)
	met := map[int]bool{}
	var read []audit.Table
	for i := range tables {
		if o := slices.IndexFunc(tables[:i], func(t table.Table) bool { return sameRows(t.Rows, tables[i].Rows) }); o >= 0 &&
			len(tables[i].Rows) > 0 {
			im.Say(report.Warn, "the same table twice", table.Place{File: tables[i].File, Sheet: tables[i].Sheet},
				table.Place{File: tables[o].File, Sheet: tables[o].Sheet}.String(), "read once")
			continue
		}
		read = append(read, readTable(im, h, &tables[i], met)...)
	}
	tellLines(told, read)
	sayUnmet(im, tables, met)
	if im.Pages == 0 {
		if err := allLeftOut(tables, met, im.Opt.Recipe); err != nil {
			return model.Harness{}, report.Report{}, err
		}
		return model.Harness{}, report.Report{}, noHeader(tables, im.Rep.Findings)
	}
	if im.Rows == 0 {
		return model.Harness{}, report.Report{}, noRows(tables, !slices.ContainsFunc(im.Rep.Findings, report.Finding.LeavesOut))
	}
	farside.SamePins(im, tables)
	taghues.Take(im)
	farside.FromThere(im)
	farside.OwnDevices(im)
	ratings.Names(im)
	join.Ends(im)
	takeFreeOfRuns(im, tables)
	ratings.Told(im)
	join.Again(im)
	join.Nets(im)
	toldpairs.Take(im, tables)
	takeNamedFree(im, tables)
	join.Cables(im)
	join.Wires(im)
	join.Units(im)
	join.Feeds(im)
	join.Notes(im)
	join.Terminations(im)
	join.Tree(im)
	join.Judge(im)
	im.Rep.Rows = make(map[string][]table.Place, len(im.Items))
	for _, it := range im.Items {
		if it.Wire >= 0 {
			im.Rep.Rows[im.H.Wires[it.Wire].ID] = slices.Concat([]table.Place{it.Place}, it.Again, told[it.Place])
		}
		if it.Wire >= 0 && it.Gauge.Spec == "" {
			im.Rep.Taken[im.H.Wires[it.Wire].ID] = true
		}
		if it.Length.Set && it.Wire >= 0 {
			im.Rep.Lengths[im.H.Wires[it.Wire].ID] = it.Length.V
		}
	}
	if opt.Name != "" && !im.H.Head.Name.Set {
		im.H.Head.Name = model.Some(table.Tidy(visible.Line(opt.Name)))
	}
	join.Facts(im, tables)
	audit.Run(im, h.Words, tables, read)
	im.Rep.SayOnce()
	im.Rep.Sort(tables)
	return im.H, im.Rep, nil
}

// sameRows reports whether every cell of two tables is the same.
func sameRows(a, b []table.Row) bool {
	return slices.EqualFunc(a, b, func(x, y table.Row) bool { return x.Line == y.Line && slices.Equal(x.Cells, y.Cells) })
}

// defaults takes what the recipe says where the options say nothing.
func defaults(im *draft.Importer) {
	o := &im.Opt
	if r := o.Recipe; r != nil {
		if o.Unit == "" {
			o.Unit = r.Unit
		}
		if o.Spec == "" {
			o.Spec = r.Spec
		}
		if o.Metric == "" {
			o.Metric = r.Metric
		}
	}
	if o.Spec == "" {
		o.Spec = model.Rules{}.Resolve().Spec
	}
	if o.Metric == "" {
		o.Metric = value.MetricSpec
	}
}

// chosen is the tables of the sheets that were asked for.
func chosen(tables []table.Table, sheets []string) ([]table.Table, error) {
	if sheets == nil {
		return tables, nil
	}
	var names []string
	var out []table.Table
	for _, t := range tables {
		if t.Sheet == "" || slices.Contains(sheets, t.Sheet) {
			out = append(out, t)
		}
		if t.Sheet != "" {
			names = append(names, fmt.Sprintf("%q", t.Sheet))
		}
	}
	for _, s := range sheets {
		if !slices.ContainsFunc(tables, func(t table.Table) bool { return t.Sheet == s }) {
			return nil, &table.Error{Says: fmt.Sprintf("no sheet is called %q", s),
				Allowed: value.JoinNonEmpty("", strings.Join(names, ", "))}
		}
	}
	return out, nil
}

// noHeader says why a list is refused: what its tables were taken for, where it has any.
func noHeader(tables []table.Table, all []report.Finding) error {
	e := &table.Error{Says: "no row names its columns",
		Allowed: "a row with two headings or more, such as Pin and Description, or From and To; or columns named by a recipe"}
	var were []string
	for _, f := range all {
		if f.Rule == "table without wires" && strings.Contains(f.What, " | ") {
			were = append(were, fmt.Sprintf("row %d: %s", f.Row, f.What))
		}
	}
	if len(were) > 0 {
		e.Says = "no table of wires is in it; " + strings.Join(were[:min(len(were), 4)], "; ")
	}
	if len(tables) > 0 {
		e.File = tables[0].File
	}
	return e
}

func noRows(tables []table.Table, empty bool) error {
	e := &table.Error{Place: table.Place{File: tables[0].File}, Says: "has headings and no row below them that is read",
		Allowed: "a row or more for each wire or cavity"}
	if empty {
		return &table.EmptyError{Of: e}
	}
	return e
}

// readTable reads one sheet; met takes in what the recipe says of its tables.
func readTable(im *draft.Importer, h shape.Headings, t *table.Table, met map[int]bool) (read []audit.Table) {
	place := table.Place{File: t.File, Sheet: t.Sheet}
	if im.Opt.Recipe.LeavesOut(t.Sheet) {
		im.Say(report.Note, "sheet left out", place, "", "as was said")
		return nil
	}
	if t.Hidden && !slices.Contains(im.Opt.Sheets, t.Sheet) && !im.Opt.Recipe.ReadsHidden(t.Sheet) {
		im.Say(report.Warn, "hidden sheet", place, "", "left out; named as a sheet it is read")
		return nil
	}
	row.SayOdd(im, t)
	row.StruckAndHidden(im, t)
	sayTakenOut(im, t)
	sayQuoted(im, t)
	h.Colours = im.Keys[t.File]
	found, over := tablesIn(h, im.Opt.Recipe, t)
	var wires []*Found
	none := true
	for i := range found {
		f := &found[i]
		if f.at >= 0 {
			met[f.at] = true
		}
		f.say(im)
		none = none && f.Loose
		switch {
		case f.Loose || f.Said.LeftOut || f.Joined():
		case f.Wires():
			wires = append(wires, f)
			if f.Block.Grid {
				im.Say(report.Note, "cells of a grid", f.Place, "", "taken for the rows below it")
			}
			if f.pieced() {
				im.Doubt("lines read piece by piece", f.Place, "", "look at each end", f.Block.Rows)
			}
			if f.Block.Told {
				im.Doubt("wires that sentences tell", f.Place, "", "read word by word; look at each end", f.Block.Rows)
			}
			if of := sidehead.Devices(f.Block.Head, h.Words); of != nil {
				at := f.Place
				at.Row = f.Block.Head[0].Line
				im.Say(report.Note, "devices above the connectors of both ends", at, strings.Join(of, " and "),
					"left out; the connectors below them name the ends")
			}
			f.sayNear(im)
			f.sayDoubts(im)
		default:
			f.sayDoubts(im)
			leftOut(im, t, &f.Block, f.Reading())
		}
	}
	sayUnread(im, t, found)
	saySketches(im, t)
	if none && len(over) > 0 {
		im.Say(report.Note, "sheet without headings", table.Place{File: t.File, Sheet: t.Sheet, Row: over[0].Line}, "", "left out")
		last := &im.Rep.Findings[len(im.Rep.Findings)-1]
		for _, r := range over {
			last.Rows = append(last.Rows, r.Line)
		}
		over = nil
	}
	for _, r := range over {
		im.Say(report.Note, "text of no table", table.Place{File: t.File, Sheet: t.Sheet, Row: r.Line}, shape.RowText(r.Cells), "left out")
	}
	if rows := numbered(over); len(rows) > 0 {
		im.Doubt("numbered rows that are read as text", table.Place{File: t.File, Sheet: t.Sheet, Row: rows[0].Line},
			shape.RowText(rows[0].Cells), "left out; look whether they are cavities", rows)
	}
	var told []saidonce.Told
	var wide []saidonce.Wide
	sayEndValues(im, place, blocksOf(wires))
	if len(wires) > 0 {
		wide = saidonce.Overall(t, blocksOf(wires), wires[0].Block.Mark)
		saidonce.Default(im, t, blocksOf(wires), wires[0].Reading().Block.Lang)
		told = saidonce.ToldIn(im, t, blocksOf(wires), wires[0].Block.Mark)
		saidonce.Squares(im, t, blocksOf(wires))
		saySplices(im, h, t)
	}
	im.Squares = column.Squares(blocksOf(wires))
	colours := coloursOf(blocksOf(wires))
	for _, f := range wires {
		r := f.Reading()
		im.Pages++
		if im.Opt.Recipe != nil && im.Opt.Recipe.Language != "" {
			r.Block.Lang = im.Opt.Recipe.Language
		}
		im.Colours = h.Colours
		takeLetters(im, r.Block, colours, place)
		takePlain(im, r.Block, colours, place)
		saidonce.ToldOnce(im, r.Block, told)
		saidonce.OverallOf(im, r.Block, wide)
		from := len(im.Items)
		row.Read(im, r.Block, len(wires) == 1)
		takeFree(im, t, r.Block, from)
	}
	saidonce.SayOverall(im)
	saidonce.SayDefault(im)
	im.Overall = draft.Overall{}
	for i := range found {
		read = append(read, found[i].audited(t))
	}
	return read
}

// numbered are those of some rows of no table that have three cells or more and count from one, as cavities do.
func numbered(over []table.Row) (rows []table.Row) {
	for _, r := range over {
		if n, first := r.Filled(); n > 2 && first == strconv.Itoa(len(rows)+1) {
			rows = append(rows, r)
		}
	}
	if len(rows) < 2 {
		return nil
	}
	return rows
}

// sayEndValues gives the sizes that stand behind far ends columns of their own, and says so.
func sayEndValues(im *draft.Importer, at table.Place, blocks []*shape.Block) {
	for _, b := range blocks {
		endvalues.Names(b)
		for _, r := range endvalues.Part(b) {
			at.Row = r.Line
			im.Say(report.Note, "a size behind an end", at, b.Cell(r.Cells, name.FieldTo), "taken as the size of the wire")
		}
	}
}

// saySplices says of the headings of splices that what they say is of the legs below them.
func saySplices(im *draft.Importer, h shape.Headings, t *table.Table) {
	_, legs := runline.Legs(t.Rows, h.IsHead)
	for _, r := range t.Rows {
		if l, is := legs[r.Line]; is && l.Splice == "" {
			im.Say(report.Note, "heading of a splice", table.Place{File: t.File, Sheet: t.Sheet, Row: r.Line}, shape.RowText(r.Cells),
				"taken for the rows below it")
		}
	}
}

// blocksOf are the blocks of some tables as they are read.
func blocksOf(tables []*Found) (all []*shape.Block) {
	for _, f := range tables {
		all = append(all, f.Reading().Block)
	}
	return all
}

// audited is the table as it is held against the harness.
func (f *Found) audited(t *table.Table) audit.Table {
	a := audit.Table{At: f.Place, Wires: f.Wires(), Said: f.Said.Reading != "", Above: slices.Concat(f.Block.Titles, f.Block.Head),
		Mark: f.Block.Mark, Grid: f.Block.Grid, Points: f.Block.Listed || f.Block.Runs || f.Block.Fixed}
	if b := f.Reading().Block; a.Wires {
		a.Cols, a.Lang, a.Key = b.Cols, b.Lang, b.Key
	}
	for _, r := range f.Block.Rows {
		if r.Prose { // a title between the rows, short as a cavity is
			a.Above = append(a.Above, r)
		}
	}
	if a.Rows = f.Block.Rows; len(a.Rows) > 0 && len(f.Block.Head) > 0 && (column.IsAside(a.Rows[0]) || a.Wires &&
		f.Reading().Block.Units == a.Rows[0].Line) {
		a.Above = append(a.Above, a.Rows[0])
	}
	return a
}

// sayUnread says which points of a sheet could be cavities and are read as text.
func sayUnread(im *draft.Importer, t *table.Table, found []Found) {
	var blocks []block.Block
	for _, f := range found {
		blocks = append(blocks, f.Block)
	}
	for _, rows := range block.Unread(t, blocks) {
		im.Doubt("points that could be cavities are not read", table.Place{File: t.File, Sheet: t.Sheet, Row: rows[0].Line},
			shape.RowText(rows[0].Cells), "read as text", rows)
	}
}

// sayNear says where the next best reading of a table is nearly as good as the one that is taken, and nobody chose.
func (f *Found) sayNear(im *draft.Importer) {
	if f.Said.Reading != "" || len(f.Readings) < 2 {
		return
	}
	best, next := f.Readings[0], f.Readings[1]
	if next.Wires && best.Score-next.Score < nearScore && !best.Same(next) {
		im.Doubt("could be read in two ways", f.Place, best.Kind+", or "+next.Kind,
			"taken for the first; say what a column means if it is the other", row.DataRows(best.Block))
	}
}

// sayDoubts says what speaks against the reading of a table: once for it, with the rows that could be wrong.
func (f *Found) sayDoubts(im *draft.Importer) {
	if f.Said.Reading != "" {
		return // a person chose it
	}
	for _, d := range f.Reading().Doubts {
		im.Doubt(d.Rule, f.Place, d.What, d.Did, d.Rows)
	}
}

// nearScore is how near two readings of a block score, of 1, where a person should look (no source).
const nearScore = 0.03

// leftOut says of a block that its rows are no wires, and what they are taken for.
func leftOut(im *draft.Importer, t *table.Table, b *block.Block, r reading.Reading) {
	im.Say(report.Note, "table without wires", table.Place{File: t.File, Sheet: t.Sheet, Row: b.Line()},
		value.JoinNonEmpty(", ", headsOf(b), r.Kind), "left out")
	last := &im.Rep.Findings[len(im.Rep.Findings)-1]
	for _, r := range b.Rows {
		last.Rows = append(last.Rows, r.Line)
	}
}
