package draw

// Face is the face of a connector as it is seen: where its cavities lie, the outermost at a distance
// of 1 from the middle, x to the right and y up.
type Face struct {
	Rim    float64 // radius of the insert, drawn where there is room for it; 0 draws none
	Places []FacePlace
}

// FacePlace is one cavity.
type FacePlace struct {
	Name  string
	X, Y  float64
	Class int // of its contact, 0 for the smallest: cavities of one class look alike
}

// What stands for a cavity whose name has no room: that of the smallest contacts, of a larger one,
// and of several that share a cell. No cavity has such a name.
const (
	smallCavity = 'o'
	largeCavity = 'O'
	manyCavity  = '+'
)

// leastFace is the least height and width a face is drawn in; below it nothing is to be seen.
const (
	leastFaceW = 9
	leastFaceH = 5
)

// Face draws a face in w×h cells. Each cavity stands where it lies, as its name where that has room
// and as a small ring where it has not; a name never touches another or a ring. Canvas.NotShown are
// the cavities without a name. The rim is left out where the names need its room.
func (f Face) Draw(w, h int, p Palette) Canvas {
	c := newCanvas(w, h)
	if w < leastFaceW || h < leastFaceH || len(f.Places) == 0 {
		for _, at := range f.Places {
			c.NotShown = append(c.NotShown, at.Name)
		}
		return c
	}
	with := newFrame(w, h, 0, 0, max(f.Rim, 1.1), p.aspect())
	bare := newFrame(w, h, 0, 0, 1.001, p.aspect())
	names, all := f.named(w, h, with)
	fr, rim := with, f.Rim > 0
	if !all {
		if more, _ := f.named(w, h, bare); shown(more) > shown(names) {
			names, fr, rim = more, bare, false
		}
	}
	if rim {
		dotted(&c, fr, f.Rim, lineRune, lineStyle(p))
	}
	f.write(&c, fr, names, p)
	return c
}

func shown(names []bool) int {
	n := 0
	for _, named := range names {
		if named {
			n++
		}
	}
	return n
}

// cellOf is the cell of a cavity.
func (f Face) cellOf(k int, fr frame) (col, row int) {
	x, y := fr.at(f.Places[k].X, f.Places[k].Y)
	return min(max(cell(x), 0), fr.w-1), min(max(cell(y), 0), fr.h-1)
}

// named says which cavities can stand as their names: in the order of worth, each where all its cells
// and one on each side are free of other cavities.
func (f Face) named(w, h int, fr frame) (out []bool, all bool) {
	taken := make([]int, w*h) // how many cavities have the cell
	for k := range f.Places {
		col, row := f.cellOf(k, fr)
		taken[row*w+col]++
	}
	out = make([]bool, len(f.Places))
	all = true
	for _, k := range f.byWorth() {
		col, row := f.cellOf(k, fr)
		from, n := f.nameAt(k, col, w)
		taken[row*w+col]--
		free := true
		for x := max(from-1, 0); x <= min(from+n, w-1); x++ {
			free = free && taken[row*w+x] == 0
		}
		out[k] = free
		all = all && free
		if !free {
			taken[row*w+col]++
			continue
		}
		for x := from; x < from+n; x++ {
			taken[row*w+x]++
		}
	}
	return out, all
}

// nameAt is where the name of a cavity begins, and how many cells it has.
func (f Face) nameAt(k, col, w int) (from, n int) {
	n = len([]rune(cellular(f.Places[k].Name, true)))
	return max(min(col-n/2, w-n), 0), n
}

// byWorth are the cavities in the order in which they are given room for their names: the first and
// the last, then every tenth and every fifth, from which the others are counted.
func (f Face) byWorth() []int {
	n := len(f.Places)
	out := make([]int, 0, n)
	seen := make([]bool, n)
	put := func(k int) {
		if !seen[k] {
			seen[k] = true
			out = append(out, k)
		}
	}
	put(0)
	put(n - 1)
	for _, every := range []int{10, 5, 1} {
		for k := every - 1; k < n; k += every {
			put(k)
		}
	}
	return out
}

// write puts names and rings on the canvas.
func (f Face) write(c *Canvas, fr frame, names []bool, p Palette) {
	for k, at := range f.Places {
		col, row := f.cellOf(k, fr)
		style := Style(0)
		if p.Colour {
			style = MakeStyle(InkClass+Ink(Disc{Class: at.Class}.class()), InkNone, false)
		}
		if names[k] {
			from, n := f.nameAt(k, col, c.W)
			for _, side := range []int{from - 1, from + n} { // the rim does not touch it either
				if c.inside(side, row) && c.Cells[row*c.W+side].Rune == lineRune {
					c.put(side, row, ' ', 0)
				}
			}
			if p.Colour {
				style = ClassStyle(at.Class)
			}
			c.write(from, row, cellular(at.Name, true), style)
			continue
		}
		c.NotShown = append(c.NotShown, at.Name)
		sign := smallCavity
		if at.Class > 0 {
			sign = largeCavity
		}
		if was := c.Cells[row*c.W+col].Rune; was == smallCavity || was == largeCavity || was == manyCavity {
			sign = manyCavity
		}
		c.put(col, row, sign, style)
	}
}
