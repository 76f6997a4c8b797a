package heat

import (
	"math"
	"slices"

	"contralay/model/unit"
)

// Disc is one round piece of a section.
type Disc struct {
	X, Y   unit.Millimetre // its axis, from that of the bundle
	OverMM unit.Millimetre // outside diameter
	// CoreMM is the diameter of what is of one temperature in it: a conductor, or the
	// bore of a jacket. 0: solid, a filler.
	CoreMM unit.Millimetre
	In     int // 1 + the place of the disc whose jacket holds it; 0: none does
	Ohm    unit.OhmPerKilometre
	Amps   unit.Ampere
	Rated  unit.Celsius // 0: nothing is asked for it
}

// At20 is the heat that its current makes in a metre at 20 °C.
func (d Disc) At20() unit.WattPerMetre {
	return unit.WattPerMetre(float64(d.Amps) * float64(d.Amps) * float64(d.Ohm) / 1000)
}

// Section is what is to be balanced: discs, and the circle that they lie in.
type Section struct {
	Discs     []Disc
	InsideMM  unit.Millimetre // the bore of the sheath, or the bundle's OD
	OutsideMM unit.Millimetre // over the sheath; InsideMM or less: there is none
	Ambient   unit.Celsius
	Pressure  float64 // pascal; 0: sea level
}

const (
	// rays leave each disc; sectors are the parts of the sheath, each of them seen by as many
	// rays of a wire alone in it. More of either moves no conductor of the tests by a hundredth
	// of its rise.
	rays    = 72
	sectors = 24
)

// airs are what the air in the gaps may conduct, W/(m K): links are worked out for these,
// some −50, 160 and 600 °C, and read between.
var airs = [3]float64{0.02, 0.034, 0.058}

// link is what goes between two nodes for each kelvin, W/(m K), for each of airs.
type link struct {
	a, b  int32
	known [len(airs)]float64
	own   [2]int32 // where the balances of a and of b stand in a matrix
	entry int32    // and what goes between them
}

// Rays is the geometry of a section: what sees what, and how well heat goes there. It
// rests on diameters and places alone, so it holds as long as they do.
type Rays struct {
	discs int
	links []link
	place []int32 // of each node in the order across the bundle
	front *front  // of them in that order
	nodes int     // the discs, then the sectors of each ring of the sheath from the inside out
	outer float64 // outside diameter, mm
}

// depth is how thick the wall between the surface of a disc and what is of one
// temperature in it is, as ln(r/r_c). A solid disc counts as one with a core of r/e²: that
// carries what flows across it within 4 % of what the whole disc would, since heat that
// varies as cos nθ round a solid disc meets n k/r, and round a core n k/r coth(n ln(r/r_c)).
func (d Disc) depth() float64 {
	r := float64(d.OverMM) / 2
	if d.CoreMM <= 0 {
		return 2
	}
	return math.Log(r / math.Min(float64(d.CoreMM)/2, 0.97*r))
}

// Trace finds what every disc of a section sees. False where a diameter is not known or
// a disc lies in one that comes after it.
func Trace(s Section) (*Rays, bool) {
	n := len(s.Discs)
	if n == 0 || !(s.InsideMM > 0) || !unit.Finite(float64(s.InsideMM)) || !unit.Finite(float64(s.OutsideMM)) {
		return nil, false
	}
	for i, d := range s.Discs {
		if !(d.OverMM > 0) || !unit.Finite(float64(d.OverMM)) || !unit.Finite(float64(d.X)) || !unit.Finite(float64(d.Y)) ||
			d.In < 0 || d.In > i || !(d.CoreMM >= 0) {
			return nil, false
		}
	}
	out := &Rays{discs: n, outer: float64(max(s.OutsideMM, s.InsideMM))}
	out.cover(s)
	seen := map[[2]int32]int{} // places in links
	for i := range s.Discs {
		out.see(s, i, seen)
	}
	out.order(s)
	return out, true
}

// cover adds the sheath: a ring of sectors on its inside, one on its outside, and what goes
// along each and across. Without a wall the inside is the surface.
func (r *Rays) cover(s Section) {
	r.nodes = r.discs + sectors
	ri, ro := float64(s.InsideMM)/2, float64(s.OutsideMM)/2
	if !(ro > ri) {
		return
	}
	steady := func(a, b int, conducts float64) {
		l := link{a: int32(a), b: int32(b)}
		for n := range l.known {
			l.known[n] = conducts * float64(SheathK)
		}
		r.links = append(r.links, l)
	}
	for k := range sectors {
		in, out := r.discs+k, r.discs+sectors+k
		steady(in, r.discs+(k+1)%sectors, (ro-ri)/2*sectors/(2*math.Pi*ri))
		steady(out, r.discs+sectors+(k+1)%sectors, (ro-ri)/2*sectors/(2*math.Pi*ro))
		steady(in, out, 2*math.Pi/sectors/math.Log(ro/ri))
	}
	r.nodes += sectors
}

// see adds what disc i gives to each that its heat goes to. To another disc that is as far
// as the middle between them, where two discs alike have a surface of one temperature; the
// other gives the rest, and the two are in series.
func (r *Rays) see(s Section, i int, seen map[[2]int32]int) {
	v := r.look(s, i)
	d := &s.Discs[i]
	ring := int32(d.In - 1)
	// Where each slice goes, as a place in a short list.
	var goes []int32
	var slot [rays]int
	for k, j := range v.meets {
		if slot[k] = slices.Index(goes, j); slot[k] < 0 {
			slot[k], goes = len(goes), append(goes, j)
		}
	}
	var at []int // in links
	for _, j := range goes {
		pair := [2]int32{min(int32(i), j), max(int32(i), j)}
		k, met := seen[pair]
		if !met {
			k = len(r.links)
			seen[pair], r.links = k, append(r.links, link{a: int32(i), b: j})
		}
		at = append(at, k)
	}
	width := math.Pi * float64(d.OverMM) / rays
	sum := make([]float64, len(goes))
	for n, air := range airs {
		var outside, gives [rays]float64
		for k, gap := range v.gap {
			outside[k] = width * air / gap
		}
		wall(d.depth(), &outside, &gives)
		clear(sum)
		for k, g := range gives {
			sum[slot[k]] += g
		}
		for k, j := range goes {
			l := &r.links[at[k]]
			switch {
			case int(j) >= r.discs || j == ring || l.known[n] == 0:
				l.known[n] = sum[k]
			default:
				l.known[n] = 1 / (1/l.known[n] + 1/sum[k])
			}
		}
	}
}
