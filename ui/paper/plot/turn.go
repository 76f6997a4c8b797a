package plot

// Turned is a sheet turned a quarter to the left, as a page that is read from its side.
func (s *Sheet) Turned() *Sheet {
	turn := func(p Point) Point { return Point{X: -p.Y, Y: p.X} }
	out := &Sheet{Title: s.Title, Box: Box{Low: turn(Point{X: s.Box.Low.X, Y: s.Box.High.Y}), High: turn(Point{X: s.Box.High.X,
		Y: s.Box.Low.Y})}}
	for _, shape := range s.Shapes {
		way := make([]Point, len(shape.Way))
		for k, p := range shape.Way {
			way[k] = turn(p)
		}
		shape.Way, shape.Middle, shape.Turn = way, turn(shape.Middle), shape.Turn+90
		out.Add(shape)
	}
	return out
}
