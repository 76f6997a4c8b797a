package point

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Points that say each thing in a piece of its own, one sign between all of them, tell together what a piece is that says little alone:
// a number without unit is a size where nearly every point has one, and a colour beside it.
//
//	1 - green/red - 0.5 - indicator -> front plug 4
//	2 - blue/white - 1.0 - main beam -> front plug 1

// pieces are those of one point; far is what stands behind its arrow.
type pieces struct {
	all    []string
	size   int // which of them is the size; −1 for none
	colour int
	far    string
}

// InPieces parts such points, one for each text; nil where they are none.
func InPieces(texts []string, key value.ColourKey) []Parts {
	for _, sign := range []string{" - ", " – ", " — ", " | ", "; ", ", ", ": ", " / "} {
		points, used, sized, coloured, bare := make([]pieces, len(texts)), 0, 0, 0, []string(nil)
		for i, t := range texts {
			points[i].size = -1
			if t == "" || name.StateOf(t) != name.Used {
				continue
			}
			used++
			p := piecesOf(t, sign, key)
			if len(p.all) < 3 && p.far == "" {
				p.size = -1
			}
			if points[i] = p; p.size < 0 {
				continue
			}
			sized++
			if p.colour >= 0 {
				coloured++
			}
			if s := p.all[p.size]; strings.Trim(s, "0123456789.,") == "" {
				bare = append(bare, s)
			}
		}
		if sized > 1 && 4*sized >= 3*used && 2*coloured >= used && (len(bare) == 0 || areBareSizes(bare)) {
			return partsOfAll(points, texts)
		}
	}
	return nil
}

// piecesOf parts one point at a sign.
func piecesOf(text, sign string, key value.ColourKey) (p pieces) {
	front, far := CutArrow(text)
	p = pieces{all: strings.Split(front, sign), size: -1, colour: -1, far: far}
	for i := range p.all {
		p.all[i] = strings.TrimSpace(p.all[i])
	}
	for i, s := range p.all {
		g, ok := value.ParseGauge(s, value.BareAWG, value.MarkUnknown)
		switch {
		case p.colour < 0 && (IsColour(s) || key.Written(s)):
			p.colour = i
		case ok && g.Size != "" && !g.IsCable() && p.size >= 0: // which of the two?
			return pieces{all: p.all, size: -1, colour: -1, far: far}
		case ok && g.Size != "" && !g.IsCable():
			p.size = i
		}
	}
	return p
}

// areBareSizes reports whether some numbers without unit can be sizes of wire: cross sections, of which some has decimals, or gauges
// that nothing else is so often.
func areBareSizes(all []string) bool {
	decimals := slices.ContainsFunc(all, func(s string) bool { return strings.ContainsAny(s, ".,") })
	return decimals || !slices.ContainsFunc(all, func(s string) bool {
		return !slices.Contains([]string{"10", "12", "14", "16", "18", "20", "22", "24", "26", "28", "30"}, s)
	})
}

// partsOfAll makes of the pieces of some points what each says. A piece that is neither colour nor size is the name; of two the last
// is where the wire goes, where nearly all of these end in a cavity.
func partsOfAll(points []pieces, texts []string) []Parts {
	out := make([]Parts, len(points))
	two, places := 0, 0
	at := map[int]int{} // how many points have their colour there
	for _, p := range points {
		if p.size < 0 {
			continue
		}
		if p.colour >= 0 {
			at[p.colour]++
		}
		if rest := p.rest(); p.far == "" && len(rest) == 2 {
			two++
			if last := strings.Fields(rest[1]); len(last) > 1 && name.IsCavity(last[len(last)-1]) || name.IsEnd(rest[1]) {
				places++
			}
		}
	}
	for i, p := range points {
		if p.size < 0 {
			out[i] = PartsOf(texts[i])
			continue
		}
		for k := range p.all { // a colour that nobody knows stands where the others are
			if p.colour < 0 && k != p.size && 2*at[k] > len(points) {
				p.colour = k
			}
		}
		one := Parts{Size: p.all[p.size], To: p.far}
		if p.colour >= 0 {
			one.Colour = p.all[p.colour]
		}
		rest := p.rest()
		if p.far == "" && len(rest) == 2 && 4*places >= 3*two {
			one.To, rest = rest[1], rest[:1]
		}
		one.Signal = strings.Join(rest, ", ")
		if more := PartsOf(one.Signal); one.To == "" && more.To != "" && more.Colour == "" {
			one.Signal, one.To = more.Signal, more.To
		}
		out[i] = one
	}
	return out
}

// rest are the pieces that are neither the size nor the colour.
func (p pieces) rest() (all []string) {
	for i, s := range p.all {
		if i != p.size && i != p.colour && s != "" {
			all = append(all, s)
		}
	}
	return all
}

// PartColoured gives the pieces of some points cells of their own, where nearly each has a colour for a piece and others do not have as
// many: what stands before or behind it is the name, and a third piece is a remark.
//
//	1 - Horn - red
//	2 - Lamp - blue - new this year
func PartColoured(rows []table.Row, pins, texts []string, key value.ColourKey) bool {
	for _, sign := range []string{" - ", " – ", " — "} {
		all, used, coloured := make([]Parts, len(texts)), 0, 0
		for i, t := range texts {
			all[i] = PartsOf(t)
			if t == "" || name.StateOf(t) != name.Used || name.IsKey(t) {
				all[i] = Parts{Signal: t}
				continue
			}
			used++
			p := piecesOf(t, sign, key)
			rest := p.rest()
			if p.colour < 0 || len(rest) == 0 || len(rest) > 2 {
				continue
			}
			coloured++
			all[i] = Parts{Signal: rest[0], Colour: p.all[p.colour], To: p.far, Note: strings.Join(rest[1:], "; ")}
			if p.size >= 0 {
				all[i].Size = p.all[p.size]
			}
		}
		if coloured < 2 || 4*coloured < 3*used {
			continue
		}
		for i, p := range all {
			rows[i].Cells, rows[i].Prose = []string{pins[i], p.Signal, p.Colour, p.Size, p.To, p.Note}, false
		}
		return true
	}
	return false
}
