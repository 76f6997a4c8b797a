package section

import (
	"cmp"
	"math"
	"slices"
	"strconv"
)

// Numbers outside their discs: each is written along the radius, at the end of a leader. Leaders
// leave in the order of their discs round the bundle and end in the same order, so that no two
// cross.

// spoke is one number outside: the disc, the angle of the disc and that of its number, radians
// clockwise from the top.
type spoke struct {
	disc     Disc
	from, at float64
	text     string // number, and mark
	position string // outside the number; "" where it stands in the disc
}

// where positions stand in a picture with numbers outside.
type where int

const (
	inDiscs where = iota
	beyond        // outside the numbers
	nowhere       // there is no room for them: the list has them
)

// led is a picture as wide as it may be, in which a number that does not fit its disc stands outside.
// Positions stand in the discs where these have room, else outside the numbers, else nowhere.
func (a Asked) led() Picture {
	var p Picture
	for _, at := range []where{inDiscs, beyond, nowhere} {
		p = a.drawn(a.Most, a.spokeMargin(at))
		if at == inDiscs && !p.positionsFit() {
			continue
		}
		spokes := p.spokes(at)
		if float64(len(spokes))*p.pitch() > 2*math.Pi && at != nowhere {
			continue
		}
		p.spread(spokes)
		break
	}
	return p
}

// spokes are what stands outside, and puts the positions into the discs that hold them.
func (p *Picture) spokes(at where) []spoke {
	var out []spoke
	for _, d := range p.Discs {
		if !d.numbered() {
			continue
		}
		position := strconv.Itoa(d.Position)
		switch {
		case d.Numbered && d.Outside && (at != nowhere || d.Mark != ""):
			s := spoke{disc: d, from: p.angle(d), text: d.Mark}
			if at != nowhere {
				s.position = position
			}
			out = append(out, s)
		case !d.Numbered:
			s := spoke{disc: d, from: p.angle(d), text: d.ID}
			if d.Mark != "" {
				s.text += " " + d.Mark
			}
			if at == beyond {
				s.position = position
			}
			out = append(out, s)
		}
		if at == inDiscs && !d.Numbered {
			p.Labels = append(p.Labels, Label{Position, d.ID, position, d.CX, d.CY, leastSize, 0, false})
		}
	}
	return out
}

// pitch is the angle from one number to the next at least, radians.
func (p *Picture) pitch() float64 { return pitchMM * tall(NumberSize) / (p.Over + leadMM) }

// spokeMargin is what numbers outside take round the bundle.
func (a Asked) spokeMargin(at where) float64 {
	longest := 0.0
	for _, p := range a.Pieces {
		if !p.numbered() {
			continue
		}
		w := wide(p.ID, NumberSize)
		if p.Mark != "" {
			w += wide(" "+p.Mark, NumberSize)
		}
		if at == beyond {
			w += ringGapMM + wide(strconv.Itoa(p.Position), leastSize)
		}
		longest = max(longest, w)
	}
	return leadMM + 2*ringGapMM + longest
}

// positionsFit reports whether every disc in hand that holds no number has room for its position.
func (p *Picture) positionsFit() bool {
	for _, d := range p.Discs {
		if d.numbered() && !d.Numbered && math.Hypot(wide(strconv.Itoa(d.Position), leastSize), tall(leastSize))+2*d.line() > 2*d.R {
			return false
		}
	}
	return true
}

// angle is where a disc lies, radians clockwise from the top.
func (p *Picture) angle(d Disc) float64 {
	dx, dy := p.direction(d)
	return math.Mod(math.Atan2(dx, -dy)+2*math.Pi, 2*math.Pi)
}

// spread puts numbers round the bundle, each as near to its disc as the others let it.
func (p *Picture) spread(all []spoke) {
	if len(all) == 0 {
		return
	}
	inner, pitch := p.Over+leadMM, p.pitch()
	if float64(len(all))*pitch > 2*math.Pi { // there is no room for so many: they are said to be left out
		for _, s := range all {
			p.Left = append(p.Left, s.disc.ID)
		}
		return
	}
	slices.SortFunc(all, func(a, b spoke) int { return cmp.Compare(a.from, b.from) })
	apart(all, pitch)
	for _, s := range all {
		p.spoke(s, inner)
	}
}

// apart moves numbers, sorted by the angle of their discs, until each is a pitch from the next. The
// circle is cut where the gap between two discs is widest.
func apart(all []spoke, pitch float64) {
	n, cut := len(all), 0
	widest := -1.0
	for k := range all {
		gap := all[k].from - all[(k+n-1)%n].from
		if k == 0 {
			gap += 2 * math.Pi
		}
		if gap > widest {
			widest, cut = gap, k
		}
	}
	turned := append(slices.Clone(all[cut:]), all[:cut]...)
	for k := n - cut; k < n; k++ {
		turned[k].from += 2 * math.Pi
	}
	// Least squares with order: pool neighbours that want to be nearer than a pitch.
	type pool struct {
		sum   float64
		count int
	}
	var pools []pool
	for k := range turned {
		pools = append(pools, pool{turned[k].from - float64(k)*pitch, 1})
		for len(pools) > 1 {
			a, b := pools[len(pools)-2], pools[len(pools)-1]
			if a.sum/float64(a.count) < b.sum/float64(b.count) {
				break
			}
			pools = append(pools[:len(pools)-2], pool{a.sum + b.sum, a.count + b.count})
		}
	}
	k := 0
	for _, q := range pools {
		for range q.count {
			turned[k].at = q.sum/float64(q.count) + float64(k)*pitch
			k++
		}
	}
	// Where the last would run into the first, a whole turn on, all stand evenly apart.
	if turned[n-1].at-turned[0].at+pitch > 2*math.Pi {
		even, sum := 2*math.Pi/float64(n), 0.0
		for k := range turned {
			sum += turned[k].from - float64(k)*even
		}
		for k := range turned {
			turned[k].at = sum/float64(n) + float64(k)*even
		}
	}
	copy(all, turned)
}

// bendStep is how far round the bundle a straight piece of a leader goes at most, radians.
const bendStep = 0.05

// spoke draws one number outside: its leader, its text along the radius, and its position beyond.
func (p *Picture) spoke(s spoke, inner float64) {
	at := func(angle, r float64) (x, y float64) { return p.CX + r*math.Sin(angle), p.CY - r*math.Cos(angle) }
	r := inner + ringGapMM/2
	put := func(what What, text string, size float64, heavy bool) {
		if text == "" {
			return
		}
		w := wide(text, size)
		x, y := at(s.at, r+w/2)
		turn := math.Mod(s.at*180/math.Pi+360, 360) - 90
		if turn > 90 { // on the left it is read from the outside in, or it would stand on its head
			turn -= 180
		}
		p.Labels = append(p.Labels, Label{what, s.disc.ID, text, x, y, size, turn, heavy})
		r += w + ringGapMM
	}
	if s.disc.Numbered { // its position alone stands outside
		put(Position, s.position, leastSize, false)
		put(Mark, s.text, leastSize, true)
		return
	}
	ax, ay := at(s.from, math.Hypot(s.disc.CX-p.CX, s.disc.CY-p.CY)+s.disc.R)
	line := [][2]float64{{ax, ay}}
	begin, end := p.Over+leadMM/3, inner
	steps := math.Ceil(math.Abs(s.at-s.from)/bendStep) + 1
	for k := range int(steps) + 1 { // a spiral: two of them in the same order at both ends never cross
		part := float64(k) / steps
		x, y := at(s.from+(s.at-s.from)*part, begin+(end-begin)*part)
		line = append(line, [2]float64{x, y})
	}
	p.Leaders = append(p.Leaders, Leader{s.disc.ID, line})
	put(Number, s.text, NumberSize, true)
	put(Position, s.position, leastSize, false)
}
