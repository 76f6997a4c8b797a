package face

import (
	"math"
	"strings"

	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/paper/cavity"
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

// Sizes of letters, mm: 9 and 12 pt, an inch being 72 of them.
const (
	leastSize unit.Millimetre = 9 * 25.4 / 72
	mostSize  unit.Millimetre = 12 * 25.4 / 72
	sizeStep  unit.Millimetre = 0.5 * 25.4 / 72
)

// What stands round the rim, mm.
const (
	keyHigh, keyWide   unit.Millimetre = 2.5, 5
	arrowFrom, arrowTo unit.Millimetre = 3, 9.5
	margin             unit.Millimetre = 1
	keyMargin          unit.Millimetre = 4
	bootMargin         unit.Millimetre = 10
	largestDisc        unit.Millimetre = 9 // radius
)

// Lines, mm: of a cavity, of one with a large contact, of the rim; the underline of a small letter as a
// share of its size.
const (
	thin, heavy, rimLine unit.Millimetre = 0.3, 0.9, 0.5
	underline                            = 0.07
)

// In a disc stand two lines: the letter over the middle and the number, which is wider, across it. Where
// their base lines lie, in sizes of the letters, and how far signs like g and Q go below theirs.
const (
	letterBase, numberBase = 0.32, -0.64
	below                  = 0.22
	clear                  = 0.12 // between the corner of a text and the line of its disc
	share                  = 0.47 // of the way to the nearest cavity that a disc takes
)

// disc is a cavity on paper.
type disc struct {
	catalogue.Place
	at     plot.Point
	radius unit.Millimetre
}

// Draw draws a face no wider than a width; the box of its sheet says how high it is. The rim lies as close round the
// cavities as they allow. ok is false where there is not even room for the letters of the
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
	d.Sheet = &plot.Sheet{Title: f.Title, Box: f.box(rim)}
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

// Least is how wide a face must be for every number to stand in its cavity in letters of a size, in whole
// mm, and at most most.
func Least(f Face, size, most unit.Millimetre) unit.Millimetre {
	low, high := 0, int(most) // what fits in a width fits in any wider one
	for low < high {
		middle := (low + high) / 2
		if discs, _ := f.discs(unit.Millimetre(middle)); len(discs) > 0 && f.allFit(discs, size) {
			high = middle
		} else {
			low = middle + 1
		}
	}
	return unit.Millimetre(low)
}

// box is what is seen of a face with a rim of a radius: the key at the top, the arrow where the boot points.
func (f Face) box(rim unit.Millimetre) plot.Box {
	out := plot.Box{Low: plot.Point{X: -rim - margin, Y: -rim - margin}, High: plot.Point{X: rim + margin, Y: rim + keyMargin}}
	if f.BootHours > 0 {
		reach := plot.Point{}.Away(unit.Degree(90-30*f.BootHours), rim+bootMargin)
		out = out.And(reach)
	}
	return out
}

// discs are the cavities on paper, and the radius of the rim there.
func (f Face) discs(wide unit.Millimetre) (out []disc, rim unit.Millimetre) {
	bare := f.box(0)
	rim = (wide - (bare.High.X - bare.Low.X)) / 2
	if len(f.Places) == 0 || rim <= largestDisc+thin {
		return nil, 0
	}
	nearest := make([]float64, len(f.Places))
	scale := unit.Millimetre(math.Inf(1))
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
	within := func(wide, high unit.Millimetre) bool {
		return math.Hypot(float64(wide/2), float64(high)) <= float64(k.radius-clear*size)
	}
	letterWide, numberWide := font.Of(false).Width(letter, size), font.Of(true).Width(number, size)
	if number == "" {
		return within(letterWide, (font.CapShare/2+below/2)*size)
	}
	deep := unit.Millimetre(-numberBase)
	if strings.ContainsAny(number, "gjpqyQ,;()[]|") {
		deep += below
	}
	return within(letterWide, (letterBase+font.CapShare)*size) && within(numberWide, deep*size)
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
	if cavity.Small(k.Cavity) {
		y := at.Y - 0.14*size
		s.Way(plot.TextLayer, underline*size, plot.Point{X: at.X - wide/2, Y: y}, plot.Point{X: at.X + wide/2, Y: y})
	}
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
	at.X = max(min(at.X, s.Box.High.X-wide/2), s.Box.Low.X+wide/2)
	at.Y = max(min(at.Y, s.Box.High.Y-leastSize/2), s.Box.Low.Y+leastSize/2)
	centred(s, plot.Point{X: at.X, Y: at.Y - font.CapShare*leastSize/2}, leastSize, false, "boot")
}
