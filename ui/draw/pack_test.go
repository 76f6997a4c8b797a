package draw

import (
	"fmt"
	"math"

	"contralay/model/unit"
)

// rings makes a section of equal discs of 1.09 mm: the first number is the
// centre, each further one a layer round it. Names count from 1; position 1 of a
// layer is at twelve o'clock.
func rings(counts ...int) Section {
	const d = 1.09
	s := Section{Seen: "seen from P1"}
	id := 0
	add := func(x, y float64, layer int) {
		id++
		n := fmt.Sprint(id)
		s.Discs = append(s.Discs, Disc{ID: "W" + n, Label: n, X: unit.Millimetre(x), Y: unit.Millimetre(y), D: d, Layer: layer,
			Class: layer})
	}
	for layer, n := range counts {
		r := float64(layer) * d
		for i := range n {
			sin, cos := math.Sincos(2 * math.Pi * float64(i) / float64(n))
			add(r*sin, r*cos, layer)
		}
		s.OverMM = unit.Millimetre(2*r + d)
	}
	return s
}

// ring is n discs of 1.09 mm on a circle of radius r, named from prefix + 01 on.
func ring(n int, r float64, layer int, prefix string) []Disc {
	var out []Disc
	for i := range n {
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / float64(n))
		name := fmt.Sprintf("%s%02d", prefix, i+1)
		out = append(out, Disc{
			ID: name, Label: name, X: unit.Millimetre(r * sin), Y: unit.Millimetre(r * cos), D: 1.09, Layer: layer, Class: layer,
		})
	}
	return out
}
