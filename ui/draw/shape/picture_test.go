package shape

import (
	"fmt"
	"math"
	"strings"
	"testing"
	"unicode/utf8"

	"contralay/model/shorttest"
	"contralay/model/unit"
	"contralay/ui/draw"
)

var dark = draw.NewPalette(draw.TrueColour, true)

// far is how different two colours are, 0 to 1.
func far(a, b draw.Colour) float64 {
	d := math.Abs(float64(a.R)-float64(b.R)) + math.Abs(float64(a.G)-float64(b.G)) + math.Abs(float64(a.B)-float64(b.B))
	return d / 765
}

// lone is a section with some of its discs alone, all white and of one kind, and nothing else that
// is drawn; it is as large as before.
func lone(s draw.Section, keep ...int) draw.Section {
	out := draw.Section{OverMM: unit.Millimetre(2 * s.Reach())}
	for i, d := range s.Discs {
		for _, k := range keep {
			if i == k {
				d.Kind, d.Code, d.Cores, d.Numbered, d.Dim, d.Selected = draw.Wire, "9", nil, false, false, false
				out.Discs = append(out.Discs, d)
			}
		}
	}
	return out
}

// The discs of a canvas cover the area of the circles within 5 %. How much of a pixel is disc is
// seen by drawing the same discs on black and on white: what differs between the two is ground.
func TestDiscsCoverTheirArea(t *testing.T) {
	shorttest.Turn(t)
	on := func(s draw.Section, pane [2]int, ground draw.Colour) [][]draw.Colour {
		f := plan(s, pane[0], pane[1]-1, 0.5).f
		b := build(s, dark, 1/f.kx)
		b.ground = ground
		c := draw.NewCanvas(pane[0], pane[1])
		b.cells(&c, b.pixels(f), f)
		return image(c, ground)
	}
	for _, n := range every(t) {
		all := make([]int, len(n.s.Discs))
		for i := range all {
			all[i] = i
		}
		s := lone(n.s, all...)
		for _, pane := range panes {
			_, _, k := middle(pane[0], pane[1], s.Reach())
			want := 0.0
			for _, d := range s.Discs {
				want += math.Pi * math.Pow(float64(d.D)/2*k, 2)
			}
			black, white := on(s, pane, draw.Black), on(s, pane, draw.White)
			got := 0.0
			for y := range black {
				for x := range black[y] {
					got += 1 - float64(int(white[y][x].G)-int(black[y][x].G))/255
				}
			}
			if math.Abs(got-want) > 0.05*want {
				t.Errorf("%s in %v: discs cover %.1f pixels, their circles %.1f: %+.1f %%", n.name, pane, got, want, 100*(got/want-1))
			}
		}
	}
}

// Pieces that touch in millimetres touch in cells, and those that are three pixels apart do not:
// alone on a canvas, one is reached from the other over pixels that are not void.
func TestNeighboursTouch(t *testing.T) {
	shorttest.Turn(t)
	ground := lookOf(dark).ground
	touching, apart, share := 0, 0, 3
	if shorttest.Long() {
		share = 1
	}
	for _, n := range every(t) {
		discs, reach := n.s.Discs, n.s.Reach()
		for i := range discs {
			for j := range i {
				gap := math.Hypot(float64(discs[i].X-discs[j].X), float64(discs[i].Y-discs[j].Y)) - float64(discs[i].D+discs[j].D)/2
				for at, pane := range panes {
					if (i+j+at)%share > 0 {
						continue // by default each pair in a third of the panes
					}
					x, y, k := middle(pane[0], pane[1], reach)
					touch := gap <= 0.002*float64(min(discs[i].D, discs[j].D))
					if !touch && (gap*k < 3 || gap*k > 4) || touch && min(discs[i].D, discs[j].D)*2 < 1 {
						continue
					}
					img := image(Picture(lone(n.s, i, j), pane[0], pane[1], dark), ground)
					at := func(d draw.Disc) (int, int) {
						return int(x + float64(d.X)*k), int(y - float64(d.Y)*k)
					}
					ax, ay := at(discs[i])
					bx, by := at(discs[j])
					if got := joined(img, ground, ax, ay, bx, by); got != touch {
						t.Errorf("%s in %v: %s and %s are %.3f mm apart, %.1f pixels; joined on the canvas: %v", n.name, pane, discs[i].ID,
							discs[j].ID, gap, gap*k, got)
					}
					if touch {
						touching++
					} else {
						apart++
					}
				}
			}
		}
	}
	if touching < 500/share || apart < 100/share {
		t.Errorf("only %d pairs that touch and %d apart were seen", touching, apart)
	}
}

// joined reports whether a pixel is reached from another over pixels that show a disc, from each
// to the eight round it.
func joined(img [][]draw.Colour, ground draw.Colour, ax, ay, bx, by int) bool {
	seen := map[[2]int]bool{}
	next := [][2]int{{ax, ay}}
	for len(next) > 0 {
		p := next[len(next)-1]
		next = next[:len(next)-1]
		x, y := p[0], p[1]
		if y < 0 || y >= len(img) || x < 0 || x >= len(img[y]) || seen[p] || far(img[y][x], ground) < 0.08 {
			continue
		}
		if x == bx && y == by {
			return true
		}
		seen[p] = true
		for dx := -1; dx <= 1; dx++ {
			for dy := -1; dy <= 1; dy++ {
				next = append(next, [2]int{x + dx, y + dy})
			}
		}
	}
	return false
}

// onDiscShare is how much of a cell lies on a disc, by a grid of the test's own.
func onDiscShare(col, row int, d draw.Disc, f field) float64 {
	const n = 20
	dx, dy := (float64(col)+0.5-f.cx)/f.kx-float64(d.X), (f.cy-2*(float64(row)+0.5))/f.ky-float64(d.Y)
	if math.Hypot(dx, dy) > float64(d.D)/2+math.Hypot(0.5/f.kx, 1/f.ky) {
		return 0 // the whole cell is further away
	}
	in := 0
	for a := range n {
		for b := range n {
			x := (float64(col) + (float64(a)+0.5)/n - f.cx) / f.kx
			y := (f.cy - 2*(float64(row)+(float64(b)+0.5)/n)) / f.ky
			if math.Hypot(x-float64(d.X), y-float64(d.Y)) <= float64(d.D)/2 {
				in++
			}
		}
	}
	return float64(in) / (n * n)
}

// Whatever layer is in hand, each of its pieces has its number, once, on the screens of 80×24 and
// more. No number lies on another or against it; on a disc, more than half of each of its cells is
// the disc; round the drawing, no cell is on any disc.
func TestEveryNumberHasItsPlace(t *testing.T) {
	shorttest.Turn(t)
	for _, n := range every(t) {
		for _, layer := range layersOf(n.s) {
			s := inHand(n.s, layer)
			for _, pane := range panes {
				p := plan(s, pane[0], pane[1]-1, 0.5)
				where := fmt.Sprintf("%s, layer %d in %v", n.name, layer, pane)
				if len(p.gone) > 0 {
					t.Errorf("%s: %v have no number", where, p.gone)
				}
				has := map[int]bool{}
				cells := map[[2]int]string{}
				for _, m := range p.numbers {
					if has[m.disc] || !s.Discs[m.disc].Numbered {
						t.Errorf("%s: %s has a number too many", where, m.text)
					}
					has[m.disc] = true
					for c := m.col; c < m.col+m.cells(); c++ {
						for off := -1; off <= 1; off++ {
							if other, taken := cells[[2]int{c + off, m.row}]; taken && other != m.text {
								t.Errorf("%s: %s lies on %s or against it", where, m.text, other)
							}
						}
						cells[[2]int{c, m.row}] = m.text
						if c < 0 || c >= pane[0] || m.row < 0 || m.row >= pane[1]-1 {
							t.Errorf("%s: %s leaves the picture", where, m.text)
						}
						for i, d := range s.Discs {
							share := onDiscShare(c, m.row, d, p.f)
							if i == m.disc && !p.round && share < 0.5 || p.round && share > 0.02 {
								t.Errorf("%s: a cell of %s is %.0f %% on %s", where, m.text, 100*share, d.ID)
							}
						}
					}
				}
				for i, d := range s.Discs {
					if d.Numbered && d.Kind != draw.Filler && !has[i] {
						t.Errorf("%s: %s has no number", where, d.ID)
					}
				}
				whole := p.left
				for _, m := range p.numbers {
					if name := nameOf(s.Discs[m.disc]); p.cutTo == 0 && whole+m.text != name || !strings.HasSuffix(name, m.text) {
						t.Errorf("%s: %s is called %s", where, name, m.text)
					}
				}
			}
		}
	}
}

// The drawing has the same size whichever layer is in hand.
func TestNothingJumps(t *testing.T) {
	shorttest.Turn(t)
	for _, n := range every(t) {
		for _, pane := range panes {
			seen := map[field]bool{}
			for _, layer := range layersOf(n.s) {
				seen[plan(inHand(n.s, layer), pane[0], pane[1]-1, 0.5).f] = true
			}
			if len(seen) > 1 {
				t.Errorf("%s in %v has %d sizes", n.name, pane, len(seen))
			}
		}
	}
}

// ratio is the contrast ratio of WCAG 2.1 of two colours, written out once more: black on white
// is 21.
func ratio(a, b draw.Colour) float64 {
	luminance := func(c draw.Colour) float64 {
		sum := 0.0
		for k, v := range [3]uint8{c.R, c.G, c.B} {
			u := float64(v) / 255
			if u <= 0.04045 {
				u /= 12.92
			} else {
				u = math.Pow((u+0.055)/1.055, 2.4)
			}
			sum += u * [3]float64{0.2126, 0.7152, 0.0722}[k]
		}
		return sum
	}
	la, lb := luminance(a)+0.05, luminance(b)+0.05
	return max(la, lb) / min(la, lb)
}

// A number on its disc has a contrast of 4.5 : 1 and more (WCAG 2.1, 1.4.3) for every colour of
// insulation with every stripe, on every terminal with colours, as they are written to it.
func TestNumbersAreRead(t *testing.T) {
	shorttest.Turn(t)
	if got := ratio(draw.Black, draw.White); math.Abs(got-21) > 1e-9 {
		t.Fatalf("black on white is %.3f", got)
	}
	for name, p := range terminals() {
		if p.Depth() == draw.NoColour {
			continue
		}
		for code := range 110 {
			text := fmt.Sprint(code)
			if code >= 100 {
				text = fmt.Sprint(code - 100) // one digit
			} else if code < 10 {
				text = "0" + text
			}
			for _, kind := range []draw.Kind{draw.Wire, draw.Spare} {
				s := draw.Section{Discs: []draw.Disc{{ID: "123", D: 8, Code: text, Kind: kind, Numbered: true}}, OverMM: 10}
				c := Picture(s, 46, 24, p)
				found := 0
				for _, cell := range c.Cells[:46*23] {
					if cell.Rune < '1' || cell.Rune > '3' {
						continue
					}
					found++
					ink, ground, is, too := cell.Style.Colours()
					if got := ratio(ink.As(p.Depth()), ground.As(p.Depth())); !is || !too || got < 4.5 {
						t.Errorf("%s: the number on %q is %.2f : 1", name, text, got)
					}
				}
				if found != 3 {
					t.Errorf("%s: %d characters of 123 on %q", name, found, text)
				}
			}
		}
	}
}

// Every insulation is kept off the void: a disc or its rim has 3 : 1 with what lies round it (WCAG
// 2.1, 1.4.11), black and violet on a dark ground, white and yellow on a light one.
func TestEveryWireIsSeen(t *testing.T) {
	for _, isDark := range []bool{true, false} {
		p := draw.NewPalette(draw.TrueColour, isDark)
		void := lookOf(p).void
		for digit := range 10 {
			s := draw.Section{Discs: []draw.Disc{{ID: "1", D: 2, Code: fmt.Sprint(digit)}}, OverMM: 4, SheathMM: 6, WallMM: 0.5}
			c := Picture(s, 60, 31, p)
			best := 0.0
			img := image(c, void)
			for x := range 30 { // from the void to the middle of the disc
				if x > 10 {
					best = max(best, ratio(img[30][x], void))
				}
			}
			if best < 3 {
				t.Errorf("dark %v: colour %d is %.2f : 1 at most", isDark, digit, best)
			}
		}
	}
}

// Each terminal is written what it has: of 16 and of 256 its own colours alone, without colour
// none at all. Shapes are kept: what is drawn is drawn on all of them.
func TestEachTerminalHasItsColours(t *testing.T) {
	shorttest.Turn(t)
	for _, n := range every(t)[:6] {
		s := inHand(n.s, layersOf(n.s)[len(layersOf(n.s))-1])
		for name, p := range terminals() {
			c := Picture(s, 60, 32, p)
			shown := 0
			for _, cell := range c.Cells[:60*31] {
				ink, ground, isInk, isGround := cell.Style.Colours()
				if isInk && ink != ink.As(p.Depth()) || isGround && ground != ground.As(p.Depth()) {
					t.Fatalf("%s, %s: a cell of %v on %v", n.name, name, ink, ground)
				}
				if p.Depth() == draw.NoColour && cell.Style != 0 {
					t.Fatalf("%s, %s: a cell has a look", n.name, name)
				}
				if cell.Rune != ' ' || isGround {
					shown++
				}
			}
			if shown < 300 {
				t.Errorf("%s, %s: %d cells show anything", n.name, name, shown)
			}
		}
	}
}

// The same section gives the same bytes, and exactly as many cells as there is room for.
func TestPictureIsTheSameAgain(t *testing.T) {
	shorttest.Turn(t)
	for at, n := range every(t)[:4] {
		for name, p := range terminals() {
			for w := 1; w < 90; w += 29 {
				for h := 1; h < 45; h += 11 {
					if (at+w+h)%4 > 0 && !shorttest.Long() {
						continue // by default a quarter of the sizes, others of each section, on every terminal
					}
					s := inHand(n.s, 0)
					first := Picture(s, w, h, p)
					a, b := first.Styled(p), Picture(s, w, h, p).Styled(p)
					if strings.Join(a, "\n") != strings.Join(b, "\n") {
						t.Fatalf("%s, %s in %d×%d is not the same twice", n.name, name, w, h)
					}
					for _, l := range first.Lines() {
						if utf8.RuneCountInString(l) != w || len(a) != h {
							t.Fatalf("%s, %s in %d×%d: a line of %d of %d", n.name, name, w, h, utf8.RuneCountInString(l), len(a))
						}
					}
				}
			}
		}
	}
}
