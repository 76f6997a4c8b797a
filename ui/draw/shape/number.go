package shape

import (
	"math"
	"slices"
	"strings"
	"unicode/utf8"

	"contralay/ui/draw"
)

// number is the name of a disc with its place: the cell of its first character.
type number struct {
	disc     int
	text     string
	col, row int
	round    bool // beside the drawing
}

func (n number) cells() int { return utf8.RuneCountInString(n.text) }

// least is how much of each cell of a number lies on the disc, and of its middle all. The strokes
// of a letter lie in the middle of its cell.
const least = 0.55

// group is the discs of one layer that could carry a number.
type group struct {
	layer int
	discs []int
	texts []string
}

// groups are the layers of a section in order, with what each disc is called.
func groups(s draw.Section) []group {
	var out []group
	for i, d := range s.Discs {
		if !d.Usable() || d.Kind == draw.Filler {
			continue
		}
		k := slices.IndexFunc(out, func(g group) bool { return g.layer == d.Layer })
		if k < 0 {
			k = len(out)
			out = append(out, group{layer: d.Layer})
		}
		out[k].discs = append(out[k].discs, i)
		out[k].texts = append(out[k].texts, nameOf(d))
	}
	return out
}

// nameOf is what a disc is called, in characters of one cell.
func nameOf(d draw.Disc) string {
	for _, t := range [2]string{d.Label, d.ID} {
		if t = strings.ReplaceAll(draw.Cellular(t, false), " ", ""); t != "" {
			return t
		}
	}
	return "?"
}

// leftOut is the characters that all names of a layer begin with, and that can be left out so
// that something of each is left.
func leftOut(texts []string) string {
	if len(texts) < 2 {
		return ""
	}
	first := []rune(texts[0])
	n := len(first) - 1
	for _, t := range texts[1:] {
		r := []rune(t)
		n = min(n, len(r)-1)
		for k := range n {
			if r[k] != first[k] {
				n = k
				break
			}
		}
	}
	return string(first[:max(n, 0)])
}

// without is the names without what is left out.
func without(texts []string, left string) []string {
	if left == "" {
		return texts
	}
	out := make([]string, len(texts))
	for k, t := range texts {
		out[k] = strings.TrimPrefix(t, left)
	}
	return out
}

// covered is how much of a cell lies on a circle, 0 to 1.
func (f field) covered(col, row int, x, y, r float64) float64 {
	const across, down = 5, 8
	n := 0
	for k := range 4 { // where its corners lie on it, all of it does
		px, py := f.place(float64(col+k%2), float64(2*(row+k/2)))
		if dx, dy := px-x, py-y; dx*dx+dy*dy <= r*r {
			n++
		}
	}
	if n == 4 {
		return 1
	}
	n = 0
	for k := range across * down {
		px, py := f.place(float64(col)+(float64(k%across)+0.5)/across, 2*(float64(row)+(float64(k/across)+0.5)/down))
		if dx, dy := px-x, py-y; dx*dx+dy*dy <= r*r {
			n++
		}
	}
	return float64(n) / (across * down)
}

// onDiscs gives each name its place on its disc; ok is false where one has none. No name touches
// another: a cell is left free between two.
func onDiscs(s draw.Section, f field, g group, texts []string) (out []number, ok bool) {
	taken := map[[2]int]bool{}
	for k, i := range g.discs {
		n, found := onDisc(s.Discs[i], f, texts[k], taken)
		if !found {
			return nil, false
		}
		n.disc = i
		for c := n.col - 1; c <= n.col+n.cells(); c++ {
			taken[[2]int{c, n.row}] = true
		}
		out = append(out, n)
	}
	return out, true
}

// onDisc is the best place of a name on its disc: first where it hides least of the cores of a
// unit, then where most of it lies on the disc, then nearest to the middle.
func onDisc(d draw.Disc, f field, text string, taken map[[2]int]bool) (best number, ok bool) {
	n := utf8.RuneCountInString(text)
	x, y := f.at(float64(d.X), float64(d.Y))
	ry := float64(d.D) / 2 * f.ky
	if float64(d.D)*f.kx < float64(n)*least || 2*ry < 2*least {
		return best, false
	}
	score := math.Inf(-1)
	middle, reach := int(math.Floor(y/2)), int(ry/2)+1
	for row := middle - reach; row <= middle+reach; row++ {
		for col := int(math.Floor(x-float64(n)/2)) - 1; col <= int(math.Floor(x-float64(n)/2))+2; col++ {
			worth, fits := f.worth(d, col, row, n, taken)
			if fits && worth > score+1e-9 {
				score, best, ok = worth, number{text: text, col: col, row: row}, true
			}
		}
	}
	return best, ok
}

// worth is how good a place is for n characters on a disc, and whether it is one at all.
func (f field) worth(d draw.Disc, col, row, n int, taken map[[2]int]bool) (worth float64, fits bool) {
	x, y, r := float64(d.X), float64(d.Y), float64(d.D)/2
	lowest, hides := 1.0, 0.0
	for c := col; c < col+n; c++ {
		if c < 0 || row < 0 || c >= f.w || 2*row+1 >= f.h || taken[[2]int{c, row}] {
			return 0, false
		}
		mx, my := f.place(float64(c)+0.5, 2*float64(row)+1)
		if math.Hypot(mx-x, my-y) > r {
			return 0, false
		}
		cover := f.covered(c, row, x, y, r)
		if cover < least {
			return 0, false
		}
		lowest = min(lowest, cover)
		for _, core := range d.Cores {
			hides += f.covered(c, row, x+float64(core.X), y+float64(core.Y), float64(core.D)/2)
		}
	}
	px, py := f.at(x, y)
	off := math.Hypot(float64(col)+float64(n)/2-px, 2*float64(row)+1-py)
	return -100*hides + lowest - 0.1*off, true
}
