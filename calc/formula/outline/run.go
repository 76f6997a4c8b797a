package outline

import (
	"cmp"
	"math"
	"slices"

	"contralay/model/unit"
)

// Bend is a turn of a run on its way.
type Bend struct {
	At     unit.Millimetre // from the From of the run to the middle of the arc, along the centre line
	Turn   unit.Degree     // + to the left, seen from the From
	Radius unit.Millimetre // of the centre line; 0 is a corner
}

// Run is one length of bundle between two places.
type Run struct {
	From, To int             // places, counted from 0
	Length   unit.Millimetre // along the centre line, 0 or more
	Out      unit.Millimetre // how much longer it is than it is drawn: it decides what is the longest way
	Width    unit.Millimetre // what it takes on the board
	Bends    []Bend
	Turn     unit.Degree // how it leaves its near end
	Told     bool        // Turn is to be kept; otherwise it is found by rule
}

// A Trouble is a bend that could not be drawn as it was told.
type Trouble struct {
	Run, Bend int             // which
	Past      bool            // it lies past the end of its run, and is left out
	Radius    unit.Millimetre // otherwise what there was room for
}

// shape is the centre line of a run from its From, which lies at (0, 0) and points along x, and
// what of its bends could not be kept.
//
// An arc of a turn a (in radians) and a radius r is r·|a| long, half of it before and half of it
// behind its station. It has room up to the arcs before and behind it and up to the ends; where
// it wants more, its radius is less. The straights between take the rest, so that the length is
// that of the run.
func (r Run) shape(which int) (Line, []Trouble) {
	var troubles []Trouble
	order := make([]int, 0, len(r.Bends))
	for k, b := range r.Bends {
		switch {
		case b.At > r.Length:
			troubles = append(troubles, Trouble{Run: which, Bend: k, Past: true})
		case b.Turn != 0:
			order = append(order, k)
		}
	}
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(r.Bends[a].At, r.Bends[b].At) })
	half := func(k int) unit.Millimetre {
		b := r.Bends[k]
		return b.Radius * unit.Millimetre(math.Abs(float64(b.Turn))*math.Pi/360)
	}
	line, at, end := Line{}, Point{}, unit.Millimetre(0)
	heading := unit.Degree(0)
	straight := func(to unit.Millimetre) {
		if to > end {
			line = append(line, Piece{From: at, Heading: heading, Length: to - end})
			at = at.Away(heading, to-end)
			end = to
		}
	}
	for n, k := range order {
		b := r.Bends[k]
		room := min(b.At-end, r.Length-b.At)
		if n+1 < len(order) {
			next := r.Bends[order[n+1]].At - b.At
			room = min(room, max(next/2, next-half(order[n+1])))
		}
		h := min(half(k), max(0, room))
		if h < half(k)-0.005 {
			troubles = append(troubles, Trouble{Run: which, Bend: k, Radius: b.Radius * h / half(k)})
		}
		straight(b.At - h)
		if h > 0 {
			radius := b.Radius * h / half(k)
			if b.Turn < 0 {
				radius = -radius
			}
			p := Piece{From: at, Heading: heading, Length: 2 * h, Radius: radius}
			line = append(line, p)
			at, _ = p.At(p.Length)
			end = b.At + h
		}
		heading += b.Turn
	}
	straight(r.Length)
	if len(line) == 0 || line[len(line)-1].Heading+line[len(line)-1].Turn() != heading { // a corner at its very end
		line = append(line, Piece{From: at, Heading: heading})
	}
	return line, troubles
}

// fromStart is a line moved and turned so that it starts at (0, 0) along x.
func (l Line) fromStart() Line {
	at, heading := l[0].From, l[0].Heading
	back := make(Line, len(l))
	for k, p := range l {
		p.From = p.From.Minus(at)
		back[k] = p
	}
	return back.moved(Point{}, -heading)
}

// moved is a line that was drawn from (0, 0) along x, drawn from a point in a heading.
func (l Line) moved(at Point, heading unit.Degree) Line {
	out := make(Line, len(l))
	s, c := math.Sincos(float64(heading) * math.Pi / 180)
	for k, p := range l {
		x, y := float64(p.From.X), float64(p.From.Y)
		p.From = Point{at.X + unit.Millimetre(x*c-y*s), at.Y + unit.Millimetre(x*s+y*c)}
		p.Heading += heading
		out[k] = p
	}
	return out
}
