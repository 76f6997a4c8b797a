package tile_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"contralay/model/unit"
	"contralay/ui/paper/plot"
	"contralay/ui/paper/tile"
)

func inside(b plot.Box, p plot.Point) bool {
	return p.X >= b.Low.X-1e-9 && p.X <= b.High.X+1e-9 && p.Y >= b.Low.Y-1e-9 && p.Y <= b.High.Y+1e-9
}

// near is whether a millimetre of a line lies within 2 mm of a box: lines are looked at in steps.
func near(s *plot.Sheet, b plot.Box) bool {
	room := plot.Point{X: 2, Y: 2}
	b.Low, b.High = b.Low.Minus(room), b.High.Plus(room)
	for _, shape := range s.Shapes {
		from, to := shape.Way[0], shape.Way[1]
		for n := range int(from.To(to)) + 2 {
			if inside(b, from.Plus(to.Minus(from).Times(float64(n)/float64(int(from.To(to))+1)))) {
				return true
			}
		}
	}
	return false
}

// Whatever is drawn, every point of every line is on a page that is printed, two pages side by side
// share 10 mm, and no page is printed that no line comes onto.
func TestTilesHoldEveryLine(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := &plot.Sheet{}
		point := func() plot.Point {
			return plot.Point{X: unit.Millimetre(rapid.IntRange(-900, 1500).Draw(t, "x")), Y: unit.Millimetre(rapid.IntRange(-500,
				700).Draw(t, "y"))}
		}
		for n := range rapid.IntRange(1, 6).Draw(t, "lines") {
			a, b := point(), point()
			s.Way(plot.Bundle, 0.25, a, b)
			if n == 0 {
				s.Box = plot.Box{Low: a, High: a}
			}
			s.Box = s.Box.And(a).And(b)
		}
		p := rapid.SampledFrom(tile.Papers).Draw(t, "paper")
		c := tile.Of(s, p)
		if len(c.Cells) != c.Cols*c.Rows || c.Wide > 5000 {
			t.Fatalf("%d cells of %d x %d, %v wide", len(c.Cells), c.Cols, c.Rows, c.Wide)
		}
		used := map[string]bool{}
		for k := range s.Shapes {
			a, b := s.Shapes[k].Way[0], s.Shapes[k].Way[1]
			steps := int(a.To(b)) + 1
			for n := 0; n <= steps; n++ { // each millimetre of each line, by hand
				at := a.Plus(b.Minus(a).Times(float64(n) / float64(steps)))
				found := false
				for _, cell := range c.Cells {
					if inside(cell.Live, at) {
						used[cell.Name] = true
						found = found || !cell.Empty
					}
				}
				if !found {
					t.Fatalf("%v of a line is on no page", at)
				}
			}
		}
		for i, cell := range c.Cells {
			if !cell.Empty && !used[cell.Name] && !near(s, cell.Live) {
				t.Fatalf("%s is printed and no line is on it", cell.Name)
			}
			// Nor is one printed all of whose points are on others that are printed.
			if only := onlyOn(s, c, i); !cell.Empty && !only && !near(s, inner(c, cell)) {
				t.Fatalf("%s is printed and shows nothing that no other page shows", cell.Name)
			}
			if size := cell.Live.High.Minus(cell.Live.Low); math.Abs(float64(size.X-(c.Wide-20))) > 1e-6 ||
				math.Abs(float64(size.Y-(c.High-20))) > 1e-6 {
				t.Fatalf("%s shows %v", cell.Name, size)
			}
			if cell.Col > 0 {
				if o := c.Cells[i-1]; math.Abs(float64(o.Live.High.X-cell.Live.Low.X-10)) > 1e-6 {
					t.Fatalf("%s and %s share %v", o.Name, cell.Name, o.Live.High.X-cell.Live.Low.X)
				}
			}
			if cell.Row > 0 {
				if o := c.Cells[i-c.Cols]; math.Abs(float64(cell.Live.High.Y-o.Live.Low.Y-10)) > 1e-6 {
					t.Fatalf("%s and %s share %v", o.Name, cell.Name, cell.Live.High.Y-o.Live.Low.Y)
				}
			}
		}
	})
}

// onlyOn is whether a point of a line lies on no other printed page than the i-th.
func onlyOn(s *plot.Sheet, c tile.Cut, i int) bool {
	for _, shape := range s.Shapes {
		a, b := shape.Way[0], shape.Way[1]
		steps := 2*int(a.To(b)) + 1
		for n := 0; n <= steps; n++ {
			at := a.Plus(b.Minus(a).Times(float64(n) / float64(steps)))
			if !inside(c.Cells[i].Live, at) {
				continue
			}
			others := 0
			for j, o := range c.Cells {
				if j != i && !o.Empty && inside(o.Live, at) {
					others++
				}
			}
			if others == 0 {
				return true
			}
		}
	}
	return false
}

// inner is what a page shows that none beside it can show.
func inner(c tile.Cut, cell tile.Cell) plot.Box {
	b := cell.Live
	if cell.Col > 0 {
		b.Low.X += tile.Overlap
	}
	if cell.Col < c.Cols-1 {
		b.High.X -= tile.Overlap
	}
	if cell.Row > 0 {
		b.High.Y -= tile.Overlap
	}
	if cell.Row < c.Rows-1 {
		b.Low.Y += tile.Overlap
	}
	return b
}

// By hand: 600 x 300 mm on A4 lying down, which shows 277 x 190 and goes on every 267 x 180: three
// columns, since 277 + 267 is less than 600, and two rows. A line along the top and one down the left side
// leave B2 and C2 empty. Each page says its name and those beside it.
func TestCellsByHand(t *testing.T) {
	s := &plot.Sheet{Box: plot.Box{High: plot.Point{X: 600, Y: 300}}}
	s.Way(plot.Bundle, 0.25, plot.Point{Y: 300}, plot.Point{X: 600, Y: 300})
	s.Way(plot.Bundle, 0.25, plot.Point{}, plot.Point{Y: 300})
	p, _ := tile.Find("A4")
	c := tile.Of(s, p)
	cells, empty := c.Printed()
	if c.Cols != 3 || c.Rows != 2 || fmt.Sprint(empty) != "[B2 C2]" || len(cells) != 4 {
		t.Fatalf("%d x %d, empty %v", c.Cols, c.Rows, empty)
	}
	pages := c.Pages(s, "number and name")
	if pages[1].Name != "B1" {
		t.Fatalf("page 2 is %s", pages[1].Name)
	}
	var says []string
	for _, v := range pages[1].Views {
		for _, shape := range v.Of.Shapes {
			says = append(says, shape.Text)
		}
	}
	all := strings.Join(says, "\n")
	for _, want := range []string{"B1", "left A1, right C1, below B2 (empty)", "number and name", tile.Measure} {
		if !strings.Contains(all, want) {
			t.Errorf("page B1 lacks %q: %s", want, all)
		}
	}
}

// A roll is as long as the drawing with its margins, and is cut at 5 m; what is higher than the roll goes
// onto the next length.
func TestRolls(t *testing.T) {
	for _, c := range []struct {
		x, y       unit.Millimetre
		paper      string
		cols, rows int
		long       unit.Millimetre
	}{{1600, 580, "roll610", 1, 1, 1620}, {1600, 900, "roll610", 1, 2, 1620}, {1600, 890, "roll914", 1, 1, 1620}, {7000, 500,
		"roll610", 2, 1, 5000},
		{100, 100, "roll1067", 1, 1, 320}} {
		s := &plot.Sheet{Box: plot.Box{High: plot.Point{X: c.x, Y: c.y}}}
		s.Rect(plot.Frame, 0.1, plot.None, s.Box)
		p, _ := tile.Find(c.paper)
		if got := tile.Of(s, p); got.Cols != c.cols || got.Rows != c.rows || got.Wide != c.long || got.High != p.High {
			t.Errorf("%v x %v on %s: %d x %d of %v x %v", c.x, c.y, c.paper, got.Cols, got.Rows, got.Wide, got.High)
		}
	}
}

// Two lengths of a roll meet where they cut the least: a drawing of 1,000 mm with a trunk in its middle takes two of 594
// mm that could meet there; they meet below it, and the first length is full.
func TestLengthsMeetBesideTheTrunk(t *testing.T) {
	s := &plot.Sheet{Box: plot.Box{High: plot.Point{X: 2000, Y: 1000}}}
	for n := range 20 {
		s.Way(plot.Bundle, 0.25, plot.Point{X: 100 * unit.Millimetre(n), Y: 495}, plot.Point{X: 100*unit.Millimetre(n) + 90, Y: 505})
	}
	s.Way(plot.Bundle, 0.25, plot.Point{X: 1000}, plot.Point{X: 1000, Y: 1000})
	p, _ := tile.Find("roll610")
	c := tile.Of(s, p)
	if len(c.Cells) != 2 || c.Cells[0].Live.High.Y != 1000 || math.Abs(float64(c.Cells[0].Live.Low.Y)-410) > 1e-9 {
		t.Errorf("%+v", c.Cells)
	}
}
