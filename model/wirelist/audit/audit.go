package audit

import (
	"cmp"
	"maps"
	"slices"
	"strings"

	"contralay/model/wirelist/abreast"
	"contralay/model/wirelist/cable"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/huekey"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Table is one table of a list, as it was read.
type Table struct {
	At     table.Place
	Wires  bool           // its rows are read as wires
	Said   bool           // a person said how it is read
	Above  []table.Row    // the texts above it and its headings
	Rows   []table.Row    // as the list has them
	Cols   []shape.Column // nil where it is not read
	Points bool           // its rows are the points of a list, or lines of text, each parted by the signs in it
	Grid   bool           // its rows are the cells of a grid, several to a line
	Lang   string
	Key    huekey.ColourKey // what its short forms of colours mean
	Mark   value.Mark
}

// auditor is the way through the lists.
type auditor struct {
	im       *draft.Importer
	words    map[string]name.Meaning
	sheets   map[[2]string]int // the number of a sheet, by its file and name
	sheet    [2]string         // the one that was asked for last, and its number
	sheetNo  int
	rowsOf   map[place]*rowMade       // of the rows that something was made of, or that the report names
	units    map[string]int           // the unit of a wire, by its id
	feeds    map[string]int           // its feed
	seen     map[string]*look         // what the texts of cells are, as far as they were looked at
	kinds    map[string]kind          // what they look like
	names    map[*draft.Term][]string // the words of their names
	same     map[pair]bool            // cells and colours that were compared
	sizes    map[string]sizes         // what sizes of wire the cells of the table in hand say
	text     []byte                   // room for the text of a wire
	told     map[cell]bool            // the cells that the report names
	freePins map[cell]bool            // cavities without a wire, and the rows that name them
}

// place is a row of a sheet.
type place struct{ sheet, row int }

// rowMade is what became of a row.
type rowMade struct {
	items    []*draft.Item
	wires    []int // by index
	said     bool  // the report names it
	conflict bool  // the report says that it contradicts another row
	remark   bool  // it is a text between rows that was left out
}

// look is what the text of a cell is.
type look struct {
	folded  string
	pieces  []string
	asked   bool // whether it says nothing of a wire, which many cells are not asked
	nothing bool
}

// cell is a place in a row.
type cell struct {
	place
	column string
}

// Run enters what a person should look at. words are the headings that are known.
func Run(im *draft.Importer, words map[string]name.Meaning, lists []table.Table, tables []Table) {
	a := &auditor{im: im, words: words, sheets: map[[2]string]int{}, rowsOf: make(map[place]*rowMade, len(im.Items)),
		units: map[string]int{}, feeds: map[string]int{}, seen: map[string]*look{}, kinds: make(map[string]kind, len(im.Items)),
		told: map[cell]bool{}, names: map[*draft.Term][]string{},
		same: map[pair]bool{}, freePins: map[cell]bool{}}
	for _, it := range im.Items {
		if it.Wire < 0 {
			continue
		}
		a.made(a.place(it.Place)).add(it)
		for _, at := range it.Again {
			a.made(a.place(at)).add(it)
		}
	}
	for _, f := range im.Rep.Findings {
		p := a.place(f.Place)
		made := a.made(p)
		made.said = true
		made.conflict = made.conflict || strings.Contains(f.Did, "the first is kept")
		made.remark = made.remark || f.Rule == "remark between the rows"
		if f.Column != "" {
			a.told[cell{p, f.Column}] = true
		}
		for _, r := range f.Rows {
			a.made(place{p.sheet, r}).said = true
		}
	}
	for i, u := range im.H.Units {
		for _, id := range u.Wires {
			a.units[id] = i
		}
	}
	for i, f := range im.H.Feeds {
		for _, id := range f.Wires {
			a.feeds[id] = i
		}
	}
	a.rows(lists, tables)
	other := beside(a)
	for i := range tables {
		t := &tables[i]
		if !t.Wires || t.Said {
			continue
		}
		a.sizes, other.sizes = map[string]sizes{}, map[string]sizes{}
		before := len(im.Rep.Findings)
		other.im.Rep.Findings = slices.Clip(im.Rep.Findings)
		abreast.Both(len(t.Rows), func() {
			a.cells(t)
			a.columns(t)
			a.lacking(t)
			a.misplaced(t)
			a.unsized(t)
			a.namedSizes(t)
			a.unread(t)
		}, func() {
			other.odd(t)
			other.running(t)
			other.ends(t)
			other.below(t)
			other.twisted(t)
			other.unlikely(t)
			other.remarks(t)
			other.counted(t)
		})
		im.Rep.Findings = append(im.Rep.Findings, other.im.Rep.Findings[before:]...)
	}
	a.openNamed()
	a.nearNames()
	a.sizedLines()
	a.above()
	other.im.Rep.Findings = nil
	abreast.Both(len(im.Items), func() { a.strangers(tables) }, func() { other.guessedNames(lists, tables) })
	im.Rep.Findings = append(im.Rep.Findings, other.im.Rep.Findings...)
}

// beside is an auditor of the lists of another that keeps what it says and what it looked at to itself.
func beside(a *auditor) *auditor {
	im, other := *a.im, *a
	other.im, other.sheets, other.text = &im, maps.Clone(a.sheets), nil
	other.seen, other.kinds = map[string]*look{}, map[string]kind{}
	other.names, other.same = map[*draft.Term][]string{}, map[pair]bool{}
	return &other
}

// place is the row of a place.
func (a *auditor) place(at table.Place) place {
	key := [2]string{at.File, at.Sheet}
	if key == a.sheet && len(a.sheets) > 0 { // row after row is of one
		return place{a.sheetNo, at.Row}
	}
	n, ok := a.sheets[key]
	if !ok {
		n = len(a.sheets)
		a.sheets[key] = n
	}
	a.sheet, a.sheetNo = key, n
	return place{n, at.Row}
}

// made finds or makes what became of a row.
func (a *auditor) made(p place) *rowMade {
	m := a.rowsOf[p]
	if m == nil {
		m = &rowMade{}
		a.rowsOf[p] = m
	}
	return m
}

// add takes in an item that a row tells of.
func (m *rowMade) add(it *draft.Item) {
	m.items = append(m.items, it)
	if !slices.Contains(m.wires, it.Wire) {
		m.wires = append(m.wires, it.Wire)
	}
}

// of is the place of a row of a table.
func (t *Table) of(r table.Row) table.Place {
	return table.Place{File: t.At.File, Sheet: t.At.Sheet, Row: r.Line}
}

// row is what became of a row of a table.
func (a *auditor) row(t *Table, r table.Row) rowMade {
	if m := a.rowsOf[a.place(t.of(r))]; m != nil {
		return *m
	}
	return rowMade{}
}

// look looks at the text of a cell, once.
func (a *auditor) look(text string) *look {
	l := a.seen[text]
	if l == nil {
		l = &look{folded: table.Fold(text)}
		l.pieces = pieces(l.folded)
		a.seen[text] = l
	}
	return l
}

// isNothing reports whether the text of a cell says nothing of a wire.
func (a *auditor) isNothing(text string) bool {
	l := a.look(text)
	if !l.asked {
		l.asked = true
		l.nothing = len(l.pieces) == 0 || value.IsNothing(text) || cable.YesOrNo(text) != "" || name.StateOf(text) != name.Used ||
			name.IsUnknown(text) || name.IsSpliceName(text) || value.IsDitto(text)
	}
	return l.nothing
}

// doubt enters a line about some rows of a table, each once and in their order.
func (a *auditor) doubt(rule string, at table.Place, what, did string, rows []table.Row) {
	if len(rows) == 0 {
		return
	}
	rows = slices.Clone(rows)
	slices.SortStableFunc(rows, func(a, b table.Row) int { return cmp.Compare(a.Line, b.Line) })
	rows = slices.CompactFunc(rows, func(a, b table.Row) bool { return a.Line == b.Line })
	at.Row, at.Column = rows[0].Line, ""
	a.im.Doubt(rule, at, what, did, rows)
}

// heads names some columns.
func heads(t *Table, cols map[int]bool) string {
	var all []string
	for i := range t.Cols {
		if cols[i] {
			all = append(all, shape.At(t.Cols, i))
		}
	}
	return strings.Join(all, " | ")
}

// some names the first few of some texts.
func some(all []string) string {
	const most = 6 // no source
	if len(all) > most {
		all = append(slices.Clone(all[:most]), "…")
	}
	return strings.Join(all, ", ")
}
