package block

import (
	"slices"
	"strings"

	"contralay/model/wirelist/plugwires"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/table"
)

// The cavities of a header or a driver board are often told by their marks, a point each, and the colour of the wire behind a colon.
//
//	### X driver
//	- 2B: black
//	- 2A: green, to motor A
//	- EN: not used

// padColours is how many rows from one on are the marked cavities of a device, a point each; 0 where they are none. Half of the marks
// must be known as such, all that are in use have a colour, and a heading must name the device and say nothing of lamps.
func (f *finder) padColours(i int) int {
	rows := f.t.Rows
	if i > 0 && f.padColourAt(i-1).Pad != "" && rows[i].Line <= rows[i-1].Line+1 && rows[i].Deep == rows[i-1].Deep {
		return 0
	}
	n, known, used, numbers, told := 0, 0, 0, 0, false
	seen, colours := map[string]bool{}, map[string]bool{}
	for i+n < len(rows) && (n == 0 || rows[i+n].Line <= rows[i+n-1].Line+1 && rows[i+n].Deep == rows[i].Deep) {
		p := f.padColourAt(i + n)
		if p.Pad == "" || seen[p.Pad] {
			break
		}
		seen[p.Pad] = true
		if point.IsMark(p.Pad) {
			known++
		}
		if p.Colour != "" {
			used++
			colours[table.Fold(p.Colour)] = true
		}
		told = told || p.To != "" || p.Size != ""
		if strings.Trim(p.Pad, "0123456789") == "" {
			numbers++
		}
		n++
	}
	if n < 2 || used < 2 || 2*known < n || 2*numbers >= n || !told && 4*len(colours) < 3*used {
		return 0 // lamps have one colour often
	}
	_, device := f.headed(nil, rows[i].Line)
	if above, plug := f.plugAbove(i); device == "" && above >= 0 {
		device = plug
	}
	if of := plugwires.LookedUp(device); device == "" || of != "" && !told {
		return 0
	}
	return n
}

// padColourAt parts a row; free cavities have no colour.
func (f *finder) padColourAt(i int) (p point.Marked) {
	r := f.t.Rows[i]
	if len(r.Cells) != 1 || r.Level > 0 || f.t.Marked && !r.Prose || !r.Point && f.t.Marked || len(r.Cells[0]) > 2*mostHead {
		return p
	}
	return point.PartMarked(strings.TrimSpace(strings.TrimLeft(r.Cells[0], "*•·")))
}

// listPads makes the block of such points.
func (f *finder) listPads(at, n int) {
	b := Block{Table: f.t, Path: slices.Clone(f.path), Titles: f.titles(), Listed: true, Fixed: true}
	far := f.farMarks()
	for i := at; i < at+n; i++ {
		r, p := f.t.Rows[i], f.padColourAt(i)
		r.Cells, r.Prose, r.Point = []string{p.Pad, p.Signal, p.Colour, p.Size, far.Part(p.To), p.Note}, false, false
		b.Rows = append(b.Rows, r)
	}
	f.close()
	f.all = append(f.all, b)
}

// farMarks are the far ends of the points of the whole sheet, looked for once.
func (f *finder) farMarks() point.FarMarks {
	if f.far != nil {
		return *f.far
	}
	var all []string
	for i := range f.t.Rows {
		all = append(all, f.padColourAt(i).To)
	}
	m := point.MarksOf(all)
	f.far = &m
	return m
}
