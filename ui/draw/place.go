package draw

import (
	"cmp"
	"slices"
)

// A spot is a label with its place on the map, or the + that stands for several.
type spot struct {
	disc     int // index in the section; of a group, the first
	row, col int // of the first character of the core
	n        int // characters of the core
	pre      int // characters of the prefix, to the left of col
	x, y     float64
	rx, ry   float64 // of the disc, in cells

	group               bool
	gone                bool // joined a group
	selected, neighbour bool
	flagged             bool
}

// from and to are the first and the last cell that the label fills.
func (s spot) from() int { return s.col - s.pre }
func (s spot) to() int   { return s.col + s.n - 1 }

// board is the map with who fills which cell: 0 is nobody, i+1 is spots[i].
type board struct {
	w, h  int
	owner []int32
	spots []spot
}

// moves is how far a label may be moved to make room: two cells sideways, or one
// up or down, which is the height of two. The order is that of nearness.
var moves = [...]struct{ dx, dy int }{{0, 0}, {-1, 0}, {1, 0}, {-2, 0}, {2, 0}, {0, -1}, {0, 1}}

// blocker returns who keeps spot i from standing at (col, row), one blank cell
// kept on both sides: −1 nobody, −2 the edge or more than one label.
func (b *board) blocker(i, col, row int) int {
	s := b.spots[i]
	from, to := col-s.pre-1, col+s.n
	if row < 0 || row >= b.h || from < 0 || to >= b.w {
		return -2
	}
	who := -1
	for _, o := range b.owner[row*b.w+from : row*b.w+to+1] {
		o := int(o) - 1
		if o < 0 || o == i {
			continue
		}
		if who >= 0 && who != o {
			return -2
		}
		who = o
	}
	return who
}

// fill writes spot i's owner mark on its cells; clear takes it away.
func (b *board) fill(i int)  { b.set(i, int32(i+1)) }
func (b *board) clear(i int) { b.set(i, 0) }

func (b *board) set(i int, v int32) {
	s := b.spots[i]
	for c := s.from(); c <= s.to(); c++ {
		b.owner[s.row*b.w+c] = v
	}
}

// tries returns the places where spot i may stand, nearest to its disc first,
// and how many there are: those where the middle of the core is on the disc.
func (b *board) tries(i int) (places [len(moves)]struct{ col, row int }, n int) {
	s := b.spots[i]
	var far [len(moves)]float64
	for k, m := range moves {
		col, row := s.col+m.dx, s.row+m.dy
		dx := (float64(col) + float64(s.n-1)/2 - s.x) / s.rx
		dy := (float64(row) - s.y) / s.ry
		off := dx*dx + dy*dy
		if k > 0 && off > 1 {
			continue
		}
		if k == 0 {
			off = -1 // its own place first, whatever rounding did
		}
		j := n
		for ; j > 0 && far[j-1] > off+tie; j-- {
			far[j], places[j] = far[j-1], places[j-1]
		}
		far[j] = off
		places[j].col, places[j].row = col, row
		n++
	}
	return places, n
}

// stand puts spot i on the first place that is free, and reports whether there was one.
func (b *board) stand(i int) bool {
	places, n := b.tries(i)
	for _, p := range places[:n] {
		if b.blocker(i, p.col, p.row) == -1 {
			b.spots[i].col, b.spots[i].row = p.col, p.row
			b.fill(i)
			return true
		}
	}
	return false
}

// makeWay moves the one label that is in the way of spot i, if that lets both stand.
func (b *board) makeWay(i int) bool {
	places, n := b.tries(i)
	for _, p := range places[:n] {
		who := b.blocker(i, p.col, p.row)
		if who < 0 || b.spots[who].group {
			continue
		}
		was, mine := b.spots[who], b.spots[i]
		b.clear(who)
		b.spots[i].col, b.spots[i].row = p.col, p.row
		b.fill(i)
		if b.stand(who) {
			return true
		}
		b.clear(i)
		b.spots[i], b.spots[who] = mine, was
		b.fill(who)
	}
	return false
}

// join makes one + of spot i and the label that is nearest in its way.
func (b *board) join(i int) {
	s := b.spots[i]
	who := -1
	for c := max(s.from()-1, 0); c <= min(s.to()+1, b.w-1); c++ {
		if o := int(b.owner[s.row*b.w+c]) - 1; o >= 0 && (who < 0 || b.off(o, s) < b.off(who, s)-tie) {
			who = o
		}
	}
	b.spots[i].gone = true
	if who < 0 {
		return
	}
	g := &b.spots[who]
	if !g.group {
		b.clear(who)
		g.col, g.n, g.pre = g.from(), min(g.n+g.pre, 2), 0
		g.group = true
		b.fill(who)
	}
	g.selected = g.selected || s.selected
	g.neighbour = g.neighbour || s.neighbour
	g.flagged = g.flagged || s.flagged
}

// off is how far two discs are apart in cells, squared; a row counts as two.
func (b *board) off(i int, s spot) float64 {
	dx, dy := b.spots[i].x-s.x, 2*(b.spots[i].y-s.y)
	return dx*dx + dy*dy
}

// place gives every usable disc a spot. Discs are taken in the order of the
// section: a label stands at its disc's centre if it can; else it is moved; else
// the one in its way is moved; else both become a +.
func place(s Section, f frame, core []string) *board {
	b := &board{w: f.w, h: f.h, owner: make([]int32, f.w*f.h), spots: make([]spot, 0, len(s.Discs))}
	for i, d := range s.Discs {
		if !d.usable() {
			continue
		}
		x, y := f.at(float64(d.X), float64(d.Y))
		n := len([]rune(core[i]))
		p := spot{
			disc: i, n: n, pre: len(d.prefix()), x: x, y: y,
			ry: float64(d.D) / 2 * f.k, rx: float64(d.D) / 2 * f.k / f.aspect,
			selected: d.Selected, neighbour: d.Neighbour, flagged: d.Flagged,
		}
		p.row = min(max(cell(y), 0), f.h-1)
		p.col = min(max(cell(x-float64(n-1)/2), 1+p.pre), f.w-1-n)
		b.spots = append(b.spots, p)
		k := len(b.spots) - 1
		if !b.stand(k) && !b.makeWay(k) {
			b.join(k)
		}
	}
	return b
}

// reading returns the spots that are on the map, line by line.
func (b *board) reading() []int {
	order := make([]int, 0, len(b.spots))
	for i, s := range b.spots {
		if !s.gone {
			order = append(order, i)
		}
	}
	slices.SortFunc(order, func(i, j int) int {
		a, c := b.spots[i], b.spots[j]
		return cmp.Or(cmp.Compare(a.row, c.row), cmp.Compare(a.col, c.col))
	})
	return order
}
