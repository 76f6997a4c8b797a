package heattest

import "math"

// face joins two unknowns: open is the share of it inside the surface. Heat takes the line
// between the two centres, gap the share of its length that lies in air and rest what the
// rest of it resists, m K/W.
type face struct {
	p, q            int
	open, gap, rest float64
}

// grid is a section cut into square cells. The unknowns are the cells that are not in a
// conductor, row by row, and then the conductors, each of them one.
type grid struct {
	cells int
	wires []circle
	faces []face
	rim   []float64 // mm of the surface in each unknown
	outer float64   // mm, radius of the surface
}

// circle is a wire in mm: centre, radius, radius of the conductor.
type circle struct{ x, y, r, rc float64 }

// chord is how much of the line from a to b along an axis is within r of a centre that
// lies at c along the axis and off it by e.
func chord(a, b, c, e, r float64) float64 {
	if math.Abs(e) >= r {
		return 0
	}
	half := math.Sqrt(r*r - e*e)
	return math.Max(0, math.Min(b, c+half)-math.Max(a, c-half))
}

// newGrid cuts a section into cells of h mm: wires inside a sheath between the radii
// inner and outer round 0, 0. The conductivities are those of insulation and sheath.
func newGrid(wires []circle, inner, outer, h, insul, sheath float64) *grid {
	g := &grid{wires: wires, outer: outer}
	n := 2*int(math.Ceil(outer/h)) + 2
	low := -float64(n) / 2 * h // of the whole grid, to the left and below
	mid := func(i int) float64 { return low + (float64(i)+0.5)*h }

	near := make([][]int, n*n) // wires that reach into a cell or the next
	id := make([]int, n*n)     // unknown, or −1 outside
	for c := range id {
		id[c] = -1
	}
	inCopper := make([]int, n*n) // 1 + wire
	for w, c := range wires {
		reach := c.r + h
		for i := max(0, int((c.x-reach-low)/h)); i <= min(n-1, int((c.x+reach-low)/h)); i++ {
			for j := max(0, int((c.y-reach-low)/h)); j <= min(n-1, int((c.y+reach-low)/h)); j++ {
				near[j*n+i] = append(near[j*n+i], w)
				if math.Hypot(mid(i)-c.x, mid(j)-c.y) < c.rc {
					inCopper[j*n+i] = 1 + w
				}
			}
		}
	}

	// The surface, in steps far shorter than a cell.
	rim := make([]float64, n*n)
	steps := 64 * n
	for s := range steps {
		sin, cos := math.Sincos((float64(s) + 0.5) / float64(steps) * 2 * math.Pi)
		rim[int((outer*sin-low)/h)*n+int((outer*cos-low)/h)] += 2 * math.Pi * outer / float64(steps)
	}
	for j := range n {
		for i := range n {
			c := j*n + i
			if inCopper[c] == 0 && (rim[c] > 0 || math.Hypot(mid(i), mid(j)) < outer) {
				id[c] = g.cells
				g.cells++
				g.rim = append(g.rim, rim[c])
			}
		}
	}
	for c, w := range inCopper {
		if w > 0 {
			id[c] = g.cells + w - 1
		}
	}
	g.rim = append(g.rim, make([]float64, len(wires))...)

	// Faces: to the right (along x) and up (along y). a is the coordinate along the line
	// and e the one across.
	join := func(from, to int, a, e float64, upright bool) {
		p, q := id[from], id[to]
		if p < 0 || q < 0 || p == q {
			return
		}
		edge := a + h/2
		open := chord(e-h/2, e+h/2, 0, edge, outer) / h
		if open <= 0 {
			return
		}
		// The middle line stands for the face: the edges of conductors are exact along it. More
		// lines, averaged, come out worse: copper in the corner of a cell then heats all of it.
		inside := chord(a, a+h, 0, e, inner)
		wire, metal := 0.0, 0.0
		for _, w := range near[from] {
			x, y := wires[w].x, wires[w].y
			if upright {
				x, y = y, x
			}
			wire += chord(a, a+h, x, e-y, wires[w].r)
			metal += chord(a, a+h, x, e-y, wires[w].rc)
		}
		g.faces = append(g.faces, face{p: p, q: q, open: open, gap: math.Max(0, inside-wire) / h,
			rest: (h-inside)/h/sheath + (wire-metal)/h/insul + metal/h/kCopper})
	}
	for j := range n {
		for i := range n {
			if i+1 < n {
				join(j*n+i, j*n+i+1, mid(i), mid(j), false)
			}
			if j+1 < n {
				join(j*n+i, (j+1)*n+i, mid(j), mid(i), true)
			}
		}
	}
	return g
}

// conducts is what a face carries in a metre of bundle at one kelvin, W/(m K).
func (f face) conducts(air float64) float64 { return f.open / (f.gap/air + f.rest) }
