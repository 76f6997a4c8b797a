package shape

import (
	"math"
	"slices"
	"strconv"
	"unicode/utf8"

	"contralay/ui/draw"
)

// The least cells of a drawing. Below them the map says that there is no room.
const leastW, leastH = 16, 7

// farthest is how many pixels a name may lie from where its disc points; smallest is how small a
// drawing may become to make room for names round it, as a share of the largest.
const (
	farthest = 6.0
	smallest = 0.55
)

// Picture draws a section in w×h cells; the last line has what s.Says, and what is to be said of
// the numbers. Where there is no room, or nothing is laid, it says so as the map does.
func Picture(s draw.Section, w, h int, p draw.Palette) draw.Canvas {
	reach := s.Reach()
	if w < leastW || h < leastH || !(reach > 0) {
		return draw.Picture(s, w, h, p)
	}
	aspect := p.Aspect()
	n := plan(s, w, h-1, aspect)
	c := draw.NewCanvas(w, h)
	drawing := s
	if n.round {
		drawing.Turn = 0 // its corner has numbers; what s.Says has the hand
	}
	b := build(drawing, p, 1/n.f.kx)
	b.cells(&c, b.pixels(n.f), n.f)
	b.write(&c, s, n)
	c.NotShown, c.OutOfView = n.gone, append(c.OutOfView, s.OutOfView...)
	says := fitting(w, n.says(s), s.Says)
	c.Centred(h-1, says, 0)
	return c
}

// numbering is the numbers of a drawing and how large they let it be.
type numbering struct {
	f       field
	numbers []number
	left    string   // characters that every number begins with and that are not written
	cutTo   int      // characters that are left of longer names; 0 is all
	gone    []string // ids without a number
	round   bool     // some lie round the drawing
}

// plan chooses how large a section is drawn and where its numbers lie. The size is the same
// whichever of its layers is in hand, so that nothing jumps when another is.
func plan(s draw.Section, w, h int, aspect float64) numbering {
	reach, full := s.Reach(), widest(w, h, aspect)
	if !s.View.Whole() {
		f := newField(w, h, float64(s.View.X), float64(s.View.Y), float64(s.View.D)/2, full, aspect)
		return closer(s, f)
	}
	asked := false
	for _, d := range s.Discs {
		asked = asked || d.Numbered
	}
	f := newField(w, h, 0, 0, reach, full, aspect)
	if !asked {
		return numbering{f: f}
	}
	all := groups(s)
	best, least := f, math.Inf(1)
	for wide := full; wide >= smallest*full; wide-- {
		f := newField(w, h, 0, 0, reach, wide, aspect)
		far := 0.0
		for _, g := range all {
			far = max(far, lay(s, f, g).far)
		}
		if far < least-1e-9 {
			best, least = f, far
		}
		if far <= farthest {
			break
		}
	}
	out := numbering{f: best}
	for _, g := range all {
		if l := lay(s, best, g).only(s); len(l.numbers)+len(l.gone) > 0 {
			out.numbers, out.gone = append(out.numbers, l.numbers...), append(out.gone, l.gone...)
			out.round = out.round || l.round
			if l.left != "" {
				out.left = l.left
			}
			if l.cutTo > 0 {
				out.cutTo = l.cutTo
			}
		}
	}
	return out
}

// laid is the numbers of one layer, and how far one is from its disc at most.
type laid struct {
	numbering
	far float64
}

// only keeps the numbers that are asked for: where one stands does not hang on which others are
// written.
func (l laid) only(s draw.Section) laid {
	asked := func(disc int) bool { return s.Discs[disc].Numbered }
	l.numbers = slices.DeleteFunc(l.numbers, func(n number) bool { return !asked(n.disc) })
	gone := l.gone
	l.gone = nil
	for i, d := range s.Discs {
		if asked(i) && slices.Contains(gone, d.ID) {
			l.gone = append(l.gone, d.ID)
		}
	}
	return l
}

// shortNames are how many characters are left of names, where they have no room whole.
var shortNames = [...]int{6, 4, 3}

// lay lays the numbers of one layer: whole on their discs, then without what they share, then
// round the drawing, then there shortened to their last characters.
func lay(s draw.Section, f field, g group) laid {
	if out, ok := onDiscs(s, f, g, g.texts); ok {
		return laid{numbering: numbering{numbers: out}}
	}
	left := leftOut(g.texts)
	short := without(g.texts, left)
	if left != "" {
		if out, ok := onDiscs(s, f, g, short); ok {
			return laid{numbering: numbering{numbers: out, left: left}}
		}
	}
	best := laid{far: math.Inf(1)}
	try := func(texts []string, left string, cutTo int) {
		if best.far <= farthest {
			return
		}
		if out, far, ok := roundIt(s, f, g, texts, nil); ok && far < best.far {
			best = laid{numbering{numbers: out, left: left, cutTo: cutTo, round: true}, far}
		}
	}
	try(g.texts, "", 0)
	if left != "" {
		try(short, left, 0)
	}
	for _, n := range shortNames {
		if texts, cut := lastOf(g.texts, n); cut {
			try(texts, "", n)
		}
	}
	if best.numbers == nil {
		for _, i := range g.discs {
			best.gone = append(best.gone, s.Discs[i].ID)
		}
	}
	return best
}

// lastOf is the last n characters of each name, since ids of a harness differ at the end; cut
// reports whether one was longer and whether all still differ.
func lastOf(texts []string, n int) (out []string, cut bool) {
	seen := map[string]bool{}
	for _, t := range texts {
		r := []rune(t)
		if len(r) > n {
			r, cut = r[len(r)-n:], true
		}
		if seen[string(r)] {
			return nil, false
		}
		seen[string(r)] = true
		out = append(out, string(r))
	}
	return out, cut
}

// closer lays the numbers of a part that is seen closer: each on its disc where it has room.
func closer(s draw.Section, f field) numbering {
	out := numbering{f: f}
	taken := map[[2]int]bool{}
	for i, d := range s.Discs {
		if !d.Usable() || d.Kind == draw.Filler {
			continue
		}
		n, ok := onDisc(d, f, nameOf(d), taken)
		if !ok {
			out.gone = append(out.gone, d.ID)
			continue
		}
		n.disc = i
		for c := n.col - 1; c <= n.col+n.cells(); c++ {
			taken[[2]int{c, n.row}] = true
		}
		out.numbers = append(out.numbers, n)
	}
	return out
}

// write writes the numbers, each on the colour of its disc.
func (b *builder) write(c *draw.Canvas, s draw.Section, all numbering) {
	for _, n := range all.numbers {
		style := draw.Style(0)
		if b.depth == draw.NoColour { // nothing else keeps it off what it lies on
			c.Put(n.col-1, n.row, ' ', style)
			c.Put(n.col+n.cells(), n.row, ' ', style)
		}
		if b.depth != draw.NoColour {
			ground := b.bodies[n.disc].As(b.depth)
			text := draw.TextOn(ground)
			style = draw.Exact(&text, &ground, true)
		}
		for k, r := range []rune(n.text) {
			c.Put(n.col+k, n.row, r, style)
		}
		b.bracket(c, s, all.f, n)
	}
}

// bracket marks the number of the piece in hand where the cells beside it are no disc: [12]. On a
// disc a ring marks it.
func (b *builder) bracket(c *draw.Canvas, s draw.Section, f field, n number) {
	if !s.Discs[n.disc].Selected || b.depth != draw.NoColour && !n.round {
		return
	}
	style := draw.Style(0)
	if b.depth != draw.NoColour {
		style = draw.Exact(&b.mark, &b.ground, true)
	}
	for col, sign := range map[int]rune{n.col - 1: '[', n.col + n.cells(): ']'} {
		free := true
		for _, d := range s.Discs {
			free = free && (!n.round || f.covered(col, n.row, float64(d.X), float64(d.Y), float64(d.D)/2) < 0.1)
		}
		if free {
			c.Put(col, n.row, sign, style)
		}
	}
}

// says is what is to be said of the numbers, the longest way first.
func (n numbering) says(s draw.Section) []string {
	switch {
	case len(n.gone) > 0:
		more := plural(len(n.gone), "has", "have")
		return []string{more + " no number here; the list has them", more + " no number here", more + " no number"}
	case n.left != "":
		return []string{"every number here begins with " + n.left, "numbers begin with " + n.left}
	case n.cutTo > 0:
		k := string(rune('0' + n.cutTo))
		return []string{"only the last " + k + " characters of each name", "last " + k + " characters only"}
	}
	return nil
}

// fitting is what is said in one line: what must be said, then what else has room.
func fitting(w int, must []string, more string) string {
	if len(must) == 0 {
		return more
	}
	for _, m := range must {
		if both := more + ", " + m; more != "" && utf8.RuneCountInString(both) <= w {
			return both
		}
	}
	for _, m := range must {
		if utf8.RuneCountInString(m) <= w {
			return m
		}
	}
	return must[len(must)-1]
}

// plural is a count with its verb.
func plural(n int, one, many string) string {
	verb := many
	if n == 1 {
		verb = one
	}
	return strconv.Itoa(n) + " " + verb
}
