package shape

import (
	"fmt"
	"math"
	"math/rand/v2"
	"path/filepath"
	"sync"
	"testing"

	"contralay/calc"
	"contralay/model/catalogue"
	"contralay/model/file"
	"contralay/model/shorttest"
	"contralay/model/unit"
	"contralay/ui/cross"
	"contralay/ui/draw"
)

// panes are the cells that screens of 80×24, 120×40 and larger have for the section, and two
// others.
var panes = [][2]int{{26, 15}, {38, 17}, {46, 31}, {60, 32}, {72, 40}}

// terminals are all kinds of terminal.
func terminals() map[string]draw.Palette {
	out := map[string]draw.Palette{}
	for name, depth := range map[string]draw.Profile{"none": draw.NoColour, "16": draw.Colours16, "256": draw.Colours256,
		"all": draw.TrueColour} {
		out[name+", dark"], out[name+", light"] = draw.NewPalette(depth, true), draw.NewPalette(depth, false)
	}
	return out
}

// named is a section with a name for messages.
type named struct {
	name string
	s    draw.Section
}

// harnesses are the sections of every branch of the harnesses of testdata that is laid.
var harnesses = sync.OnceValues(func() ([]named, error) {
	cat, err := catalogue.Default()
	if err != nil {
		return nil, err
	}
	var out []named
	names := []string{"demo", "example", "built-up", "trunk"}
	if shorttest.Long() { // with a large one, that takes longer to lay than to draw
		names = append(names, "whole")
	}
	for _, name := range names {
		d, err := file.Load(filepath.Join("..", "..", "..", "testdata", name+".toml"))
		if err != nil {
			return nil, err
		}
		s := calc.Complete(&d.Harness, cat, nil)
		for i := range s.Branches {
			if len(s.Branches[i].Layers) > 0 {
				out = append(out, named{name + " " + s.H.Branches[i].ID, cross.Of(s, i)})
			}
		}
	}
	return out, nil
})

// seeded are sections of rings of equal discs that touch, round one in the middle, with colours,
// kinds, names and a sheath by chance.
func seeded(n int) []named {
	var out []named
	for seed := range n {
		r := rand.New(rand.NewPCG(uint64(seed), 21))
		d := 0.8 + 2*r.Float64()
		s := draw.Section{Discs: []draw.Disc{{D: unit.Millimetre(d)}}}
		for layer := 1; layer <= 1+r.IntN(3); layer++ {
			many := 6 * layer
			at := d / 2 / math.Sin(math.Pi/float64(many)) // each touches the next
			turn := r.Float64()
			for k := range many {
				a := turn + 2*math.Pi*float64(k)/float64(many)
				s.Discs = append(s.Discs, draw.Disc{X: unit.Millimetre(at * math.Sin(a)), Y: unit.Millimetre(at * math.Cos(a)),
					D: unit.Millimetre(d), Layer: layer, Kind: draw.Kind(r.IntN(4) * r.IntN(2)), Code: fmt.Sprint(r.IntN(100))})
			}
		}
		first := []string{"", "W", "10"}[r.IntN(3)]
		for k := range s.Discs {
			s.Discs[k].ID = first + fmt.Sprint(10+k)
		}
		s.OverMM = unit.Millimetre(2 * s.Reach())
		if r.IntN(2) == 0 {
			s.SheathMM, s.WallMM = s.OverMM*1.25, s.OverMM/12
		}
		out = append(out, named{fmt.Sprint("seed ", seed), s})
	}
	return out
}

// every is all sections that are tested.
func every(t *testing.T) []named {
	t.Helper()
	out, err := harnesses()
	if err != nil {
		t.Fatal(err)
	}
	if len(out) < 20 {
		t.Fatalf("only %d sections of testdata", len(out))
	}
	return append(out, seeded(12)...)
}

// layersOf are the layers of a section.
func layersOf(s draw.Section) []int {
	var out []int
	for _, g := range groups(s) {
		out = append(out, g.layer)
	}
	return out
}

// inHand is a section with one layer in hand.
func inHand(s draw.Section, layer int) draw.Section {
	s.Discs = append([]draw.Disc(nil), s.Discs...)
	for i := range s.Discs {
		in := s.Discs[i].Layer == layer
		s.Discs[i].Numbered, s.Discs[i].Dim = in, !in
	}
	s.Turn = draw.ToLeft
	return s
}

// at reads the two pixels of a cell; a pixel that is not drawn is not ok.
func pixelsOf(c draw.Cell) (up, low draw.Colour, upDrawn, lowDrawn bool) {
	text, ground, isText, isGround := c.Style.Colours()
	switch c.Rune {
	case upperHalf:
		return text, ground, isText, isGround
	case lowerHalf:
		return ground, text, isGround, isText
	}
	return ground, ground, isGround, isGround
}

// image is the pixels of a canvas, row by row, in true colour: what is not drawn is the ground.
func image(c draw.Canvas, ground draw.Colour) [][]draw.Colour {
	out := make([][]draw.Colour, 2*c.H)
	for row := range c.H {
		for col := range c.W {
			up, low, isUp, isLow := pixelsOf(c.Cells[row*c.W+col])
			if !isUp {
				up = ground
			}
			if !isLow {
				low = ground
			}
			out[2*row], out[2*row+1] = append(out[2*row], up), append(out[2*row+1], low)
		}
	}
	return out
}

// middle is where the axis lies on a canvas of w×h cells whose last line is words, and the pixels
// for a mm, by arithmetic of the test's own.
func middle(w, h int, reach float64) (x, y, k float64) {
	wide := math.Min(float64(w), 2*float64(h-1))
	return float64(w) / 2, float64(h - 1), wide / (2 * reach)
}
