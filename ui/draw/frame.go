package draw

import "math"

// minW and minH are the least cells a map is drawn in. Chosen here: below them
// seven discs no longer show as a ring round a centre.
const (
	minW = 16
	minH = 7
)

// frame maps millimetres to cells: scaled once, rounded once.
//
//	col = cx + (x − ox)·k/aspect
//	row = cy − (y − oy)·k
//
// k is cells of height per mm, aspect width ÷ height of a cell. cx and cy are
// cell coordinates: a whole number is the middle of a cell.
type frame struct {
	w, h   int // of the map, without the caption
	cx, cy float64
	ox, oy float64 // mm
	k      float64
	aspect float64
}

// newFrame fits a circle of radius r mm about (ox, oy) into w×h cells. Its middle
// is the middle of a cell, so that a ring looks the same on all sides.
func newFrame(w, h int, ox, oy, r, aspect float64) frame {
	f := frame{w: w, h: h, ox: ox, oy: oy, aspect: aspect}
	f.cx = float64((w - 1) / 2)
	f.cy = float64((h - 1) / 2)
	rows := f.cy
	cols := f.cx
	f.k = min(rows, cols*aspect) / r
	return f
}

// at returns the cell coordinates of a point.
func (f frame) at(x, y float64) (col, row float64) {
	return f.cx + float64((x-f.ox)*f.k)/f.aspect, f.cy - float64((y-f.oy)*f.k)
}

// tie pulls a coordinate that is a half but for rounding noise to one side, so
// that every machine rounds it alike.
const tie = 1e-6

// cell rounds a cell coordinate.
func cell(v float64) int { return int(math.Floor(v + 0.5 + tie)) }
