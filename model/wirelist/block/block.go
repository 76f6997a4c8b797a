package block

import (
	"slices"
	"strings"

	"contralay/model/wirelist/alike"
	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/cableheads"
	"contralay/model/wirelist/goeson"
	"contralay/model/wirelist/grid"
	"contralay/model/wirelist/lettered"
	"contralay/model/wirelist/madeover"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/padlines"
	"contralay/model/wirelist/parted"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/runline"
	"contralay/model/wirelist/sentence"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/signoff"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/titled"
	"contralay/model/wirelist/twoside"
	"contralay/model/wirelist/value"
)

// Block is one table of a sheet.
type Block struct {
	Table  *table.Table // its sheet, or the band of it
	Path   []table.Row
	Titles []table.Row // the texts between the table before it and its headings
	Head   []table.Row // none, one, or two of which the first says the sides
	Rows   []table.Row
	Mark   value.Mark // how its sheet writes decimals
	Grid   bool       // its rows are the cells of a grid, under headings that the list does not have
	Nodes  bool       // these cells are the cavities that the lines of a bus have in the plugs of its nodes
	Runs   bool       // its rows are the points of a list, each parted in the two ends of a wire and what it is
	Told   bool       // each of these points is a sentence
	Fixed  bool       // of these points: each is parted in cavity, name, colour, size, far end
	Listed bool       // its rows are the points of a list, each parted in a cavity and its name
}

// Line is where the block begins: the row of its headings, else its first row; 0 where it has neither.
func (b *Block) Line() int {
	switch {
	case len(b.Head) > 0:
		return b.Head[len(b.Head)-1].Line
	case len(b.Rows) > 0:
		return b.Rows[0].Line
	}
	return 0
}

// Find parts a sheet into its blocks. What belongs to none is left over.
func Find(h shape.Headings, t table.Table) (all []Block, over []table.Row) {
	var before []Block // of the band to the left
	for _, band := range grid.Bands(h, t) {
		if rows := grid.Turned(h, &band); rows != nil {
			band.Rows, band.Marked = rows, false
		}
		band.Rows = parted.Rows(h, &band)
		band.Rows = titled.Rows(h, &band)
		band.Rows = twoside.Rows(h, &band)
		if h.HeadLine() == 0 && !h.Numbered() {
			band.Rows = alike.Fronted(runline.SpreadPins(runline.Chained(band.Rows)))
			if !slices.ContainsFunc(band.Rows, h.IsHead) {
				band.Rows = runline.Joined(band.Rows)
			}
		}
		var legs map[int]runline.Leg
		band.Rows, legs = runline.Legs(band.Rows, h.IsHead)
		made, heads := grid.Apart(h, &band)
		if heads != nil {
			band.Rows = made
		}
		f := finder{h: h, t: &band, legs: legs}
		more, rest := f.find()
		mark := h.MarkOf(&band)
		for i := range more {
			more[i].Mark = mark
			more[i].Rows = sections(h, &more[i])
			if b := &more[i]; len(b.Head) == 1 && !b.Grid {
				b.Head[0], b.Rows = madeover.Rows(h, slices.Concat(b.Path, b.Titles), b.Head[0], b.Rows, mark)
			}
			more[i].Grid = slices.Contains(heads, more[i].Line())
			more[i].Nodes = more[i].Grid && grid.OfNodes(more[i].Head)
			if i < len(before) && more[i].halfOf(&before[i]) {
				more[i].Titles = before[i].Titles
			}
		}
		before = more
		all, over = append(all, more...), append(over, rest...)
	}
	return all, over
}

// finder is the way through one band.
type finder struct {
	h        shape.Headings
	t        *table.Table
	all      []Block
	current  *Block              // the one that rows go to; nil before the first and behind a list of points
	aside    []table.Row         // small tables without headings below a list
	pending  []table.Row         // texts that belong to no block yet
	path     []table.Row         // the headings of Markdown above
	talk     sentence.Talk       // what the sentences since the last of them were about
	padHeads map[string]padHead  // what begins several ends of the sheet; nil before anyone asks
	cavities map[int]alike.Line  // the lines that are parted together, by their number: of a cavity each
	ends     map[int]alike.Line  // and of both ends
	legs     map[int]runline.Leg // the legs of splices, by their line
	loose    *bool               // what looseEnds says; nil before anyone asks
	far      *point.FarMarks     // what farMarks gives; nil before anyone asks
	lines    runline.Lines       // what run makes of each line that was asked for
	parts    point.Memo
}

func (f *finder) find() ([]Block, []table.Row) {
	if f.h.Numbered() {
		return f.headless(f.t.Rows)
	}
	rows := f.t.Rows
	together{f}.alikeLines()
	for i := 0; i < len(rows); i++ {
		r := rows[i]
		f.descend(r)
		if points := f.legLines(i); points > 0 {
			f.leads(rows[i+1 : i+points])
			i += points - 1
			continue
		}
		if points := f.padColours(i); points > 0 {
			f.listPads(i, points)
			i += points - 1
			continue
		}
		if points := f.drawnPads(i); points > 0 {
			if rows[i].Gap != nil {
				f.pending = append(f.pending, rows[i])
				i, points = i+1, points-1
			}
			f.leads(rows[i : i+points])
			i += points - 1
			continue
		}
		if lines := f.drawnLines(i); len(lines) > 1 {
			f.listDrawn(rows[i:i+len(lines)], lines)
			i += len(lines) - 1
			continue
		}
		if n := runline.LeadRows(rows, i); n > 0 {
			f.lead(rows[i : i+n])
			i += n - 1
			continue
		}
		if lines := runline.FromToRows(f.t, i); lines != nil {
			f.listFromTo(rows[i:i+len(lines)], lines)
			i += len(lines) - 1
			continue
		}
		if lines := lettered.Lines(rows, i); lines != nil {
			f.listDrawn(rows[i:i+len(lines)], lines)
			i += len(lines) - 1
			continue
		}
		if points := (together{f}).cavityLines(i); points > 0 {
			together{f}.listAlike(rows[i : i+points])
			i += points - 1
			continue
		}
		if points := max(f.points(i), f.arrowPoints(i)); points > 0 {
			f.list(rows[i : i+points])
			i += points - 1
			continue
		}
		if points := f.endPoints(i); points > 0 {
			f.listEnds(i, points)
			i += points - 1
			continue
		}
		if points := f.colourPoints(i, true); points > 0 {
			f.plug(i, points)
			i += points - 1
			continue
		}
		if points := padlines.Count(f.t, i); points > 0 {
			f.leads(padlines.Arrowed(rows[i : i+points]))
			i += points - 1
			continue
		}
		if n := (asides{f}).tail(i); n > 0 {
			asides{f}.take(i, n)
			i += n - 1
			continue
		}
		if n := f.sentences(i); n > 0 {
			f.tell(rows[i : i+n])
			i += n - 1
			continue
		}
		if points := f.runs(i); points > 0 {
			f.leads(rows[i : i+points])
			i += points - 1
			continue
		}
		if points := f.colourPoints(i, false); points > 0 {
			f.plug(i, points)
			i += points - 1
			continue
		}
		switch head := f.isHead(i); {
		case asides{f}.underSides(i):
		case head && f.current != nil && len(f.current.Rows) == 0 && len(f.current.Head) == 1 && f.h.IsGroup(f.current.Head[0]) &&
			f.h.Sideless(r):
			f.current.Head = append(f.current.Head, r) // From and To on one row, connector and pin below each
		case head:
			f.begin(r, i)
		case f.current != nil && f.current.endsBefore(r):
			f.close()
			f.pending = append(f.pending, r)
		case f.current == nil:
			f.pending = append(f.pending, r)
		default:
			f.current.Rows = append(f.current.Rows, r)
		}
	}
	f.close()
	f.all = f.parted(f.all)
	if len(f.all) == 0 {
		return f.headless(f.pending)
	}
	return f.all, append(f.aside, f.pending...)
}

// descend keeps the path of headings.
func (f *finder) descend(r table.Row) {
	if r.Level == 0 {
		return
	}
	f.talk = sentence.Talk{}
	f.path = slices.DeleteFunc(slices.Clone(f.path), func(p table.Row) bool { return p.Level >= r.Level })
	f.path = append(f.path, r)
}

// close puts the block in hand to those that are found.
func (f *finder) close() {
	if f.current != nil {
		f.all = append(f.all, *f.current)
		f.current = nil
	}
}

// titles takes the texts that belong to the next block: those that no block has, and those at the
// end of the block in hand.
func (f *finder) titles() []table.Row {
	titles := f.pending
	f.pending = nil
	if f.current != nil {
		titles = append(f.current.giveTitles(), titles...)
	}
	return titles
}

// begin opens the block of a row of headings. The same headings once more, as at the head of a
// page, go on with the block in hand.
func (f *finder) begin(r table.Row, i int) {
	if f.isCaption(r) {
		f.pending = append(append(f.current.Titles, f.current.Head...), append(f.current.Rows, f.pending...)...)
		f.current = nil
	}
	if c := f.current; c != nil && len(c.Head) == 1 && slices.Equal(c.Head[0].Cells, r.Cells) {
		c.Rows, f.pending = goeson.WithoutTitle(c.Rows, f.pending)
	}
	titles := f.titles()
	if c := f.current; c != nil && len(c.Head) == 1 && slices.Equal(c.Head[0].Cells, r.Cells) &&
		(!f.h.IsPinHead(r) && !goeson.StartsWithPins(f.h, r) && !f.restarts(i) && !f.isOfItsOwn(r, titles) ||
			!slices.ContainsFunc(titles, func(r table.Row) bool { return !signoff.Is(r) })) {
		c.Rows = append(c.Rows, titles...)
		return
	}
	f.close()
	titles = f.unheaded(titles)
	f.current = &Block{Table: f.t, Path: slices.Clone(f.path), Titles: titles, Head: []table.Row{r}}
}

// isOfItsOwn reports whether headings that come again behind a heading of Markdown begin a table of their own: they do not say from
// where and to where, so that the heading says of what the rows are.
func (f *finder) isOfItsOwn(r table.Row, titles []table.Row) bool {
	return slices.ContainsFunc(titles, func(r table.Row) bool { return r.Level > 0 }) && !f.h.SaysNear(r) ||
		namesOthers(f.h, r, titles) || cableheads.Head(titles)
}

// namesOthers reports whether the title of headings that come again names the two devices that the table below is between: the headings
// have the cavities of both sides and not what those are of.
func namesOthers(h shape.Headings, r table.Row, titles []table.Row) bool {
	if len(titles) == 0 {
		return false
	}
	_, text := titles[len(titles)-1].Filled()
	if near, _ := arrow.HeadingDevices(text); near == "" {
		return false
	}
	cols, _ := h.Columns([]table.Row{r}, len(r.Cells))
	has := (&shape.Block{Cols: cols}).Has
	return has(name.FieldFromPin) && has(name.FieldToPin) && !has(name.FieldFrom, name.FieldTo)
}

// restarts reports whether the row below the headings of row i begins with what the first row of the block in hand begins
// with: it counts again.
func (f *finder) restarts(i int) bool {
	if i+1 >= len(f.t.Rows) || len(f.current.Rows) == 0 {
		return false
	}
	n, first := f.current.Rows[0].Filled()
	_, again := f.t.Rows[i+1].Filled()
	return n > 1 && first == again
}

// headless makes blocks of rows that no row of headings names: some of two cells and more. A text between them is the
// title of the next.
//
//	Compass
//	1 | Power  | red
//	2 | Ground | black
//	Speed log
//	1 | Power  | red
func (f *finder) headless(rows []table.Row) (all []Block, over []table.Row) {
	b := Block{Table: f.t, Path: f.path}
	n := 0
	for _, r := range rows {
		if k, _ := r.Filled(); k > 1 {
			n++
		}
	}
	if n < 2 && !f.h.Numbered() {
		return nil, rows
	}
	line := f.h.HeadLine()
	for i, r := range rows {
		switch {
		case line > 0 && r.Line < line, line == 0 && len(b.Rows) == 0 && (shape.IsText(r) || headsNumbers(rows[i:])):
			b.Titles = append(b.Titles, r)
		case line > 0 && r.Line == line:
			b.Head = append(b.Head, r)
		case !f.h.Numbered() && len(b.Rows) > 0 && (shape.IsText(r) && r.Line > b.Rows[len(b.Rows)-1].Line+1 || headsNumbers(rows[i:])):
			all = append(all, b)
			b = Block{Table: f.t, Path: f.path, Titles: []table.Row{r}}
		default:
			b.Rows = append(b.Rows, r)
		}
	}
	if len(b.Rows) == 0 && len(all) > 0 {
		return all, b.Titles
	}
	return append(all, b), nil
}

// giveTitles takes the rows of one text off the end of a block: they are the title of
// the next one. A lone short text in a row of cells is a cavity and stays.
func (b *Block) giveTitles() []table.Row {
	alone := func(i int) bool { n, _ := b.Rows[i].Filled(); return n == 1 }
	i := len(b.Rows)
	for i > 0 && (shape.IsText(b.Rows[i-1]) || twoCellTitle(b.Rows[i-1])) {
		i--
	}
	// Behind an empty row even a short text is a title; what stands before the empty
	// row belongs to the table above, but for what a heading begins.
	last := slices.IndexFunc(b.Rows[i:], func(r table.Row) bool { return r.Level > 0 })
	for k := len(b.Rows) - 1; k > 0 && alone(k); k-- {
		if b.Rows[k].Line > b.Rows[k-1].Line+1 && (last < 0 || b.Rows[k].Level > 0) {
			i = k
			break
		}
	}
	titles := slices.Clone(b.Rows[i:])
	b.Rows = b.Rows[:i]
	return titles
}

// twoCellTitle reports whether a row is a word with a colon behind it and what it says, "Connector:" and its name, "Shell:" and
// its colour.
func twoCellTitle(r table.Row) bool {
	n, first := r.Filled()
	return n == 2 && len(first) > 3 && first[len(first)-1] == ':' && !strings.ContainsAny(first, "0123456789")
}
