package section

import (
	"math"
	"strconv"
)

// Kind is what a piece is.
type Kind int

// The kinds of piece.
const (
	Wire Kind = iota
	Unit
	Spare
	Filler
)

// Piece is one piece of a bundle. Its place and its diameter are in mm of the bundle, x to the
// right and y upward from the axis.
type Piece struct {
	ID       string
	X, Y, D  float64
	Kind     Kind
	Tracer   bool
	InHand   bool   // it is laid from this picture: it has its number
	Outside  bool   // nothing in the picture lies outside its layer: its position stands outside, too
	Position int    // in its layer, from 1
	Mark     string // of a splice that it ends in on the way: "S3"; "" for none
}

// Asked is what is to be drawn. Widths are in mm of paper.
type Asked struct {
	Pieces      []Piece
	OverMM      float64 // of the bundle so far, over the high spots
	BuiltMM     float64 // what its centre is built up to with tape; 0: it is not
	Least, Most float64 // width of the picture
}

// Disc is a piece as it is drawn, in mm of paper from the top left of the picture, y downward.
type Disc struct {
	Piece
	CX, CY, R float64 // its outline, to the outside of the line
	Numbered  bool    // its number stands inside
}

// What is what a label says.
type What int

// The kinds of label.
const (
	Number   What = iota // of a piece in hand
	Position             // in its layer
	Mark                 // of a splice
)

// Label is a text on the picture: its middle, its size and its turn in degrees clockwise.
type Label struct {
	What  What
	Of    string // id of its piece
	Text  string
	X, Y  float64
	Size  float64
	Turn  float64
	Heavy bool
}

// Width and Height are those of the box round a label before it is turned, in mm.
func (l Label) Width() float64  { return wide(l.Text, l.Size) }
func (l Label) Height() float64 { return tall(l.Size) } //nolint:revive // one comment for both

// Leader is a line from a disc to its number, through Points in turn.
type Leader struct {
	Of     string
	Points [][2]float64
}

// Picture is a section laid out on paper, in mm.
type Picture struct {
	W, H    float64
	CX, CY  float64 // the axis of the bundle
	Over    float64 // radius over the bundle so far
	Built   float64 // radius of the tape round the centre; 0: there is none
	Discs   []Disc
	Labels  []Label
	Leaders []Leader
	Left    []string // ids of pieces in hand that have no number in it: there is no room for it
}

// Lines and gaps, mm of paper.
const (
	lineMM     = 0.35 // of a piece in hand
	unitLineMM = 0.9
	thinMM     = 0.18 // of what is not in hand
	clearMM    = 0.12 // between a number and the line round it
	ringGapMM  = 1.0  // between the bundle and what stands outside it
	leadMM     = 3.0  // least length of a leader outside the bundle
	pitchMM    = 1.05 // of the height of a number: what two of them stand apart round the bundle
)

// line is the width of the line round a piece.
func (p Piece) line() float64 {
	switch {
	case !p.InHand:
		return thinMM
	case p.Kind == Unit:
		return unitLineMM
	}
	return lineMM
}

// numbered reports whether a piece has a number and a position to be read: a filler has neither, the
// gap in the positions shows where it lies.
func (p Piece) numbered() bool { return p.InHand && p.Kind != Filler }

// need is the diameter on paper that a piece needs to hold its number, mm.
func (p Piece) need() float64 {
	return math.Hypot(wide(p.ID, NumberSize), tall(NumberSize)) + 2*(p.line()+clearMM)
}

// Inside is how wide a picture is that holds every number inside its disc, mm of paper; 0 where
// there is nothing to draw.
func Inside(a Asked) float64 {
	scale := 0.0
	for _, p := range a.Pieces {
		if p.numbered() && p.D > 0 {
			scale = max(scale, p.need()/p.D)
		}
	}
	if scale == 0 || a.OverMM <= 0 {
		return 0
	}
	return max(a.Least, a.OverMM*scale+2*a.margin(a.tangential(scale)))
}

// sizes are the largest diagonals of a position that stands outside, and of a mark with its black.
func (a Asked) sizes() (position, mark float64) {
	for _, p := range a.Pieces {
		if p.numbered() && p.Outside {
			position = max(position, p.positionSize())
			if p.Mark != "" {
				mark = max(mark, p.markSize())
			}
		}
	}
	return position, mark
}

func (p Piece) positionSize() float64 {
	return math.Hypot(wide(strconv.Itoa(p.Position), positionSize), tall(positionSize))
}

func (p Piece) markSize() float64 {
	return math.Hypot(wide(p.Mark, leastSize)+2*markPad, tall(leastSize)+markPad)
}

// tangential reports whether every mark has room behind its position, clockwise, before the next
// position, at a scale.
func (a Asked) tangential(scale float64) bool {
	position, mark := a.sizes()
	r := a.OverMM*scale/2 + ringGapMM + position/2
	for _, p := range a.Pieces {
		if p.Mark == "" || !p.numbered() || !p.Outside {
			continue
		}
		gap := 2 * math.Pi
		for _, q := range a.Pieces {
			if q.ID != p.ID && q.numbered() && q.Outside {
				gap = min(gap, math.Mod(math.Atan2(q.X, q.Y)-math.Atan2(p.X, p.Y)+4*math.Pi, 2*math.Pi))
			}
		}
		if 2*r*math.Sin(min(gap, math.Pi)/2) < position+mark+ringGapMM {
			return false
		}
	}
	return true
}

// margin is what stands outside the bundle where every number is inside: positions, and marks outside
// them or beside them.
func (a Asked) margin(beside bool) float64 {
	position, mark := a.sizes()
	switch {
	case position == 0:
		return ringGapMM
	case mark == 0:
		return ringGapMM + position
	case beside:
		return ringGapMM + position/2 + max(position, mark)/2
	}
	return ringGapMM + position + ringGapMM/2 + mark
}

// markPad is the black round the text of a mark, mm.
const markPad = 0.6

// Of lays a picture out: with every number inside where that fits the width it may have, else with
// leaders. A bundle without a diameter gives no picture.
func Of(a Asked) Picture {
	if a.OverMM <= 0 || len(a.Pieces) == 0 {
		return Picture{}
	}
	inside := Inside(a)
	if inside == 0 {
		inside = a.Least
	}
	if inside <= a.Most {
		beside := a.tangential((inside - 2*a.margin(true)) / a.OverMM)
		p := a.drawn(inside, a.margin(beside))
		for _, d := range p.Discs {
			if d.numbered() && d.Outside {
				p.outside(d, beside)
			}
		}
		return p
	}
	return a.led()
}

// drawn is a picture so wide, with a margin round the bundle.
func (a Asked) drawn(width, margin float64) Picture {
	scale := (width - 2*margin) / a.OverMM
	p := Picture{W: width, H: width, CX: width / 2, CY: width / 2, Over: a.OverMM * scale / 2, Built: a.BuiltMM * scale / 2}
	for _, piece := range a.Pieces {
		d := Disc{Piece: piece, CX: p.CX + piece.X*scale, CY: p.CY - piece.Y*scale, R: piece.D * scale / 2}
		d.Numbered = piece.numbered() && piece.need() <= 2*d.R+1e-9
		p.Discs = append(p.Discs, d)
		if d.Numbered {
			p.Labels = append(p.Labels, Label{Number, d.ID, d.ID, d.CX, d.CY, NumberSize, 0, true})
		}
	}
	return p
}

// outside puts the position of a disc outside the bundle, and the mark of its splice beside that,
// clockwise, or outside it.
func (p *Picture) outside(d Disc, beside bool) {
	dx, dy := p.direction(d)
	size := d.positionSize()
	r := p.Over + ringGapMM + size/2
	p.Labels = append(p.Labels, Label{Position, d.ID, strconv.Itoa(d.Position), p.CX + dx*r, p.CY + dy*r, positionSize, 0, false})
	if d.Mark == "" {
		return
	}
	if beside {
		angle := 2 * math.Asin(min(1, (size+d.markSize())/2/(2*r)))
		sin, cos := math.Sincos(angle)
		dx, dy = dx*cos-dy*sin, dx*sin+dy*cos
	} else {
		r += size/2 + ringGapMM/2 + d.markSize()/2
	}
	p.Labels = append(p.Labels, Label{Mark, d.ID, d.Mark, p.CX + dx*r, p.CY + dy*r, leastSize, 0, true})
}

// direction is from the axis to a disc, of length 1; one on the axis is seen from the top.
func (p *Picture) direction(d Disc) (dx, dy float64) {
	dx, dy = d.CX-p.CX, d.CY-p.CY
	if r := math.Hypot(dx, dy); r > 1e-6 {
		return dx / r, dy / r
	}
	return 0, -1
}
