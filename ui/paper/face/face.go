package face

import (
	"math"
	"unicode"

	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/paper/font"
	"contralay/ui/paper/plot"
)

// Use is what a cavity is used for.
type Use int

// The uses.
const (
	Wired    Use = iota
	Spare        // a spare wire is in it
	Reserved     // kept free for later
	Blank        // nothing is in it
)

// Cavity is what a face shows of one cavity.
type Cavity struct {
	Number string // of the wire in it; "" none
	Use    Use
	Large  bool // its contact is larger than the smallest of the insert
}

// Face is what is drawn.
type Face struct {
	Title     string
	Rim       float64           // radius of the insert, in the unit of the places
	Places    []catalogue.Place // as they are seen
	In        map[string]Cavity // by the name of the cavity
	BootHours int               // where the boot points, 1 to 12 with the key at 12; 0: it is not said
}

// Drawing is a face on paper.
type Drawing struct {
	Sheet  *plot.Sheet
	Size   unit.Millimetre // of its letters: of the face, not the height of a capital
	Listed []string        // cavities whose number has no room: it stands in the list alone
}

// Sizes of letters, mm: 9 and 14 pt, an inch being 72 of them.
const (
	leastSize unit.Millimetre = 9 * 25.4 / 72
	mostSize  unit.Millimetre = 14 * 25.4 / 72
	sizeStep  unit.Millimetre = 0.5 * 25.4 / 72
)

// What stands round the rim, mm.
const (
	keyHigh, keyWide   unit.Millimetre = 2.5, 5
	arrowFrom, arrowTo unit.Millimetre = 3, 9.5
	marginBare         unit.Millimetre = 4
	marginBoot         unit.Millimetre = 10
	largestDisc        unit.Millimetre = 9 // radius
)

// Lines, mm: of a cavity, of one with a large contact, of the rim; the underline of a small letter as a
// share of its size.
const (
	thin, heavy, rimLine unit.Millimetre = 0.3, 0.9, 0.5
	underline                            = 0.07
)

// In a disc stand two lines: the letter over the middle and the number under it. Where their base lines
// lie and how far they reach from the middle, in sizes of the letters.
const (
	letterBase, numberBase = 0.24, -0.96
	reach                  = 0.97
	clear                  = 0.25 // mm between the corner of a text and the line of its disc
	share                  = 0.47 // of the way to the nearest cavity that a disc takes
)

// disc is a cavity on paper.
type disc struct {
	catalogue.Place
	at     plot.Point
	radius unit.Millimetre
}

// Draw draws a face so wide, and as high. ok is false where there is not even room for the letters of the
// cavities, or there are none.
func Draw(f Face, wide unit.Millimetre) (d Drawing, ok bool) {
	discs, rim := f.discs(wide)
	if len(discs) == 0 {
		return Drawing{}, false
	}
	for _, k := range discs {
		if !fits(k, k.Cavity, "", leastSize) {
			return Drawing{}, false
		}
	}
	d.Size = leastSize
	for size := mostSize; size > leastSize; size -= sizeStep {
		if f.allFit(discs, size) {
			d.Size = size
			break
		}
	}
	half := wide / 2
	d.Sheet = &plot.Sheet{Title: f.Title, Box: plot.Box{Low: plot.Point{X: -half, Y: -half}, High: plot.Point{X: half, Y: half}}}
	d.Sheet.Add(plot.Shape{Layer: plot.Connector, Line: plot.Line{Wide: rimLine}, Radius: rim})
	key(d.Sheet, rim)
	if f.BootHours > 0 {
		boot(d.Sheet, rim, f.BootHours)
	}
	for _, k := range discs {
		number := f.In[k.Cavity].Number
		if !fits(k, k.Cavity, number, d.Size) {
			d.Listed = append(d.Listed, k.Cavity)
			number = ""
		}
		f.put(d.Sheet, k, number, d.Size)
	}
	return d, true
}

// Least is how wide a face must be for every number to stand in its cavity, in whole mm, and at most most.
func Least(f Face, most unit.Millimetre) unit.Millimetre {
	for wide := unit.Millimetre(30); wide < most; wide++ {
		if discs, _ := f.discs(wide); f.allFit(discs, leastSize) {
			return wide
		}
	}
	return most
}

// discs are the cavities on paper, and the radius of the rim there: wide enough to hold them.
func (f Face) discs(wide unit.Millimetre) (out []disc, rim unit.Millimetre) {
	margin := marginBare
	if f.BootHours > 0 {
		margin = marginBoot
	}
	rim = wide/2 - margin
	if len(f.Places) == 0 || f.Rim <= 0 || rim <= largestDisc {
		return nil, 0
	}
	nearest := make([]float64, len(f.Places))
	scale := rim / unit.Millimetre(f.Rim)
	for k, p := range f.Places {
		nearest[k] = math.Inf(1)
		for j, q := range f.Places {
			if j != k {
				nearest[k] = min(nearest[k], math.Hypot(p.X-q.X, p.Y-q.Y))
			}
		}
		if len(f.Places) == 1 {
			nearest[k] = 1
		}
		// The disc stays within the rim, as a share of the way to the next one or at its largest.
		far := math.Hypot(p.X, p.Y)
		scale = min(scale, max((rim-thin)/unit.Millimetre(far+share*nearest[k]), (rim-thin-largestDisc)/unit.Millimetre(max(far, 1e-3))))
	}
	for k, p := range f.Places {
		out = append(out, disc{p, plot.Point{X: unit.Millimetre(p.X) * scale, Y: unit.Millimetre(p.Y) * scale},
			min(unit.Millimetre(share*nearest[k])*scale, largestDisc)})
	}
	return out, rim
}

// allFit reports whether every number fits into its cavity beside its letter.
func (f Face) allFit(discs []disc, size unit.Millimetre) bool {
	for _, k := range discs {
		if !fits(k, k.Cavity, f.In[k.Cavity].Number, size) {
			return false
		}
	}
	return true
}

// fits reports whether a letter, with a number under it or alone, has room in a disc.
func fits(k disc, letter, number string, size unit.Millimetre) bool {
	high := reach * size
	if number == "" {
		high = font.CapShare * size / 2
	}
	half := max(font.Of(false).Width(letter, size), font.Of(true).Width(number, size)) / 2
	return math.Hypot(float64(half), float64(high)) <= float64(k.radius-clear)
}

// put draws one cavity.
func (f Face) put(s *plot.Sheet, k disc, number string, size unit.Millimetre) {
	in := f.In[k.Cavity]
	shape := plot.Shape{Layer: plot.Connector, Line: plot.Line{Wide: thin}, Fill: plot.White, Middle: k.at, Radius: k.radius}
	if in.Large {
		shape.Line.Wide = heavy
		shape.Radius -= (heavy - thin) / 2
	}
	switch in.Use {
	case Spare:
		shape.Line.Dash = []unit.Millimetre{1.6, 1}
	case Reserved:
		shape.Fill, shape.Line.Dash = plot.Light, []unit.Millimetre{0.1, 1}
	case Blank:
		shape.Fill = plot.Light
	}
	s.Add(shape)
	base := -font.CapShare * size / 2
	if number != "" {
		base = letterBase * size
		centred(s, plot.Point{X: k.at.X, Y: k.at.Y + numberBase*size}, size, true, number)
	}
	at := plot.Point{X: k.at.X, Y: k.at.Y + base}
	wide := centred(s, at, size, false, k.Cavity)
	if Small(k.Cavity) {
		y := at.Y - 0.14*size
		s.Way(plot.TextLayer, underline*size, plot.Point{X: at.X - wide/2, Y: y}, plot.Point{X: at.X + wide/2, Y: y})
	}
}

// Small reports whether a name of a cavity is underlined: it has a small letter.
func Small(name string) bool {
	for _, r := range name {
		if unicode.IsLower(r) {
			return true
		}
	}
	return false
}

// centred puts a text with the middle of its base line at a point.
func centred(s *plot.Sheet, at plot.Point, size unit.Millimetre, bold bool, text string) (wide unit.Millimetre) {
	wide = font.Of(bold).Width(text, size)
	s.Write(plot.TextLayer, plot.Point{X: at.X - wide/2, Y: at.Y}, size, bold, text)
	return wide
}

// key draws the master key, at the top and outside the rim.
func key(s *plot.Sheet, rim unit.Millimetre) {
	s.Rect(plot.Connector, 0, plot.Black, plot.Box{Low: plot.Point{X: -keyWide / 2, Y: rim}, High: plot.Point{X: keyWide / 2,
		Y: rim + keyHigh}})
	s.Write(plot.TextLayer, plot.Point{X: keyWide/2 + 1, Y: rim + 0.6}, leastSize, false, "key")
}

// boot draws an arrow where the boot points.
func boot(s *plot.Sheet, rim unit.Millimetre, hours int) {
	turn := unit.Degree(90 - 30*hours)
	middle := plot.Point{}
	from, to := middle.Away(turn, rim+arrowFrom), middle.Away(turn, rim+arrowTo)
	s.Way(plot.Connector, 1, from, to.Away(turn, -1))
	s.Add(plot.Shape{Layer: plot.Connector, Fill: plot.Black, Closed: true,
		Way: []plot.Point{to, to.Away(turn+155, 3), to.Away(turn-155, 3)}})
	wide := font.Of(false).Width("boot", leastSize)
	left := middle.Away(turn, rim+(arrowFrom+arrowTo)/2)
	beside := plot.Point{}.Away(turn+90, 1)
	off := unit.Millimetre(math.Abs(float64(beside.X)))*(wide/2+1.5) + unit.Millimetre(math.Abs(float64(beside.Y)))*(leastSize*0.5+1.5)
	at := left.Away(turn+90, off)
	// A text stays on the paper: where an arrow points sideways, it may not reach over the edge.
	edge := s.Box.High.X - wide/2
	at.X = max(min(at.X, edge), -edge)
	centred(s, plot.Point{X: at.X, Y: at.Y - font.CapShare*leastSize/2}, leastSize, false, "boot")
}
