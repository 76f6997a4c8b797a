package board

import (
	"fmt"

	"contralay/calc/query/drawing"
	"contralay/calc/sheet"
	"contralay/model/unit"
	"contralay/ui/paper/font"
	"contralay/ui/paper/plot"
	"contralay/ui/paper/tile"
)

// Pages are the pages of a drawing at full size on a paper: on sheets first those that say what it
// is, with a key plan, and then the drawing; on a roll one after another in its length, with the block
// at its end.
func Pages(s *sheet.Sheet, d *drawing.Drawing, world *plot.Sheet, p tile.Paper, m Meta) []plot.Page {
	head := title(s) + ", full size, " + m.On + ", " + m.Identity
	if p.Roll {
		whole := rolled(s, d, world, p, m)
		c := tile.Of(whole, p)
		return c.Pages(whole, head)
	}
	c := tile.Of(world, p)
	pages := c.Pages(world, head)
	return append(fronts(s, d, world, &c, m), pages...)
}

// rolled is the drawing with its block at the right, and with bars of 500 mm below it.
func rolled(s *sheet.Sheet, d *drawing.Drawing, world *plot.Sheet, p tile.Paper, m Meta) *plot.Sheet {
	whole := &plot.Sheet{Title: world.Title, Box: world.Box, Shapes: append([]plot.Shape(nil), world.Shapes...)}
	long := unit.Millimetre(500)
	y := whole.Box.Low.Y - 6
	for x := whole.Box.Low.X; x+long <= whole.Box.High.X; x += long {
		for n := range 6 {
			at := plot.Point{X: x + unit.Millimetre(100*n), Y: y}
			whole.Way(plot.Frame, 0.25, at.Away(90, -2), at.Away(90, 2))
		}
		whole.Way(plot.Frame, 0.25, plot.Point{X: x, Y: y}, plot.Point{X: x + long, Y: y})
		whole.Write(plot.Frame, plot.Point{X: x + 3, Y: y + 1}, small, false, "500 mm")
	}
	whole.Box.Low.Y = y - 4
	corners := whole.Box
	for _, at := range []plot.Point{corners.Low, corners.High, {X: corners.Low.X, Y: corners.High.Y}, {X: corners.High.X,
		Y: corners.Low.Y}} {
		const arm = 6
		whole.Way(plot.Frame, 0.13, at.Away(0, -arm), at.Away(0, arm))
		whole.Way(plot.Frame, 0.13, at.Away(90, -arm), at.Away(90, arm))
	}
	c := tile.Of(whole, p)
	rows := blockRows(s, d, world, &c, m)
	rows = append(rows, row{cells: []string{fmt.Sprintf("Between the corner crosses: %s mm from left to right, %s mm upward, %s mm across.",
		unit.Fixed(corners.High.X-corners.Low.X, 1), unit.Fixed(corners.High.Y-corners.Low.Y, 1),
		unit.Fixed(corners.Low.To(corners.High), 1))},
		size: small, gap: 3})
	whole.Box = corners
	put(whole, rows, min(p.High-2*tile.Margin-14, corners.High.Y-corners.Low.Y))
	whole.Box.Low = whole.Box.Low.Minus(plot.Point{X: 7, Y: 7})
	whole.Box.High = whole.Box.High.Plus(plot.Point{Y: 7})
	return whole
}

// beside is the drawing with its block at the right, as it is on no paper.
func beside(s *sheet.Sheet, d *drawing.Drawing, world *plot.Sheet, m Meta) *plot.Sheet {
	whole := &plot.Sheet{Title: world.Title, Box: world.Box, Shapes: append([]plot.Shape(nil), world.Shapes...)}
	put(whole, blockRows(s, d, world, nil, m), max(300, world.Box.High.Y-world.Box.Low.Y))
	return whole
}

// put puts rows into columns of a height at the right of a drawing.
func put(whole *plot.Sheet, rows []row, high unit.Millimetre) {
	x, top := whole.Box.High.X+16, whole.Box.High.Y
	for _, column := range flowed(rows, high) {
		for _, shape := range column {
			shape.Middle = shape.Middle.Plus(plot.Point{X: x, Y: top})
			whole.Add(shape)
			whole.Box = whole.Box.And(shape.Middle)
		}
		x += blockWide + 10
	}
	whole.Box.High.X = x
}

// fronts are the pages before the drawing: the block, and the key plan on the first.
func fronts(s *sheet.Sheet, d *drawing.Drawing, world *plot.Sheet, c *tile.Cut, m Meta) []plot.Page {
	rows := blockRows(s, d, world, c, m)
	high, wide := c.High-2*tile.Margin-8, c.Wide-2*tile.Margin
	plan := plot.Box{Low: plot.Point{X: tile.Margin + blockWide + 8, Y: tile.Margin + 10}, High: plot.Point{X: c.Wide - tile.Margin,
		Y: c.High - tile.Margin}}
	columns := flowed(rows, high)
	perPage := max(1, int((wide+8)/(blockWide+8)))
	var out []plot.Page
	for n := 0; n < len(columns); {
		page := &plot.Sheet{}
		room := perPage
		if n == 0 {
			room = 1
			keyPlan(page, world, c, plan)
		}
		for k := range room {
			if n < len(columns) {
				for _, shape := range columns[n] {
					shape.Middle = shape.Middle.Plus(plot.Point{X: tile.Margin + unit.Millimetre(k)*(blockWide+8),
						Y: c.High - tile.Margin})
					page.Add(shape)
				}
				n++
			}
		}
		out = append(out, plot.Page{Name: fmt.Sprint("front ", len(out)+1), Wide: c.Wide, High: c.High,
			Views: []plot.View{{Of: page, Window: plot.Box{High: plot.Point{X: c.Wide, Y: c.High}}}}})
	}
	for k := range out {
		says := fmt.Sprintf("%s, front page %d of %d", title(s), k+1, len(out))
		out[k].Views[0].Of.Write(plot.Frame, plot.Point{X: tile.Margin, Y: tile.Margin - 4}, 3.2, false, says)
	}
	return out
}

// keyPlan draws the drawing in small, with its cells.
func keyPlan(page, world *plot.Sheet, c *tile.Cut, in plot.Box) {
	first, last := c.Cells[0].Live, c.Cells[len(c.Cells)-1].Live
	all := plot.Box{Low: plot.Point{X: first.Low.X, Y: last.Low.Y}, High: plot.Point{X: last.High.X, Y: first.High.Y}}
	size, room := all.High.Minus(all.Low), in.High.Minus(in.Low)
	f := min(float64(room.X/size.X), float64(room.Y/size.Y))
	to := func(p plot.Point) plot.Point {
		return plot.Point{X: in.Low.X, Y: in.High.Y}.Plus(p.Minus(plot.Point{X: all.Low.X, Y: all.High.Y}).Times(f))
	}
	for _, shape := range world.Shapes {
		if shape.Layer == plot.Centre || shape.Layer == plot.Connector && len(shape.Way) > 0 {
			way := make([]plot.Point, len(shape.Way))
			for k, p := range shape.Way {
				way[k] = to(p)
			}
			page.Add(plot.Shape{Layer: plot.Frame, Line: plot.Line{Wide: 0.3}, Way: way, Closed: shape.Closed})
		}
	}
	for _, cell := range c.Cells {
		b := plot.Box{Low: to(cell.Live.Low), High: to(cell.Live.High)}
		page.Rect(plot.Frame, 0.13, plot.None, b)
		text, size := cell.Name, unit.Millimetre(3.2)
		if cell.Empty {
			page.Way(plot.Frame, 0.13, b.Low, b.High)
			continue
		}
		page.Write(plot.Frame, plot.Point{X: b.Middle().X - font.Of(true).Width(text, size)/2, Y: b.High.Y - 3.6}, size, true, text)
	}
	page.Write(plot.Frame, plot.Point{X: in.Low.X, Y: to(all.Low).Y - 5}, small, false, "Key plan. Crossed out: not printed.")
}
