package heat

// wall is what each slice of a disc's surface gives outward for each kelvin of its core,
// W/(m K): through insulation of a depth ln(r/r_c), in which heat also runs round, to
// what lies outside each slice.
//
// Heat that varies as cos nθ round a wall with a core of one temperature meets
//
//	k/(rL) · x coth x,   L = ln(r/r_c), x = n L
//
// of which is kept x coth x ≈ 1 + x²/(3 + x²/5): the beginning of its continued fraction,
// exact where heat varies slowly and below it where it varies fast, which errs to the warm
// side. As a circuit: a slice leads to the core by k w/(rL) and by five times that to a
// ring, along which heat runs as through a thickness rL/3. The ring is eliminated as a
// cyclic tridiagonal matrix. Source: conduction in an annulus by separation of variables,
// any textbook; Lambert's continued fraction of the hyperbolic cotangent.
func wall(depth float64, outside, gives *[rays]float64) {
	const step = 2 * 3.141592653589793 / rays
	core := float64(InsulationK) * step / depth      // of a slice
	round := float64(InsulationK) * depth / 3 / step // from one place of the ring to the next
	toRing := 5 * core
	// The ring: diagonal, and what the core at one kelvin feeds into it.
	var diagonal, feeds [rays]float64
	for k, out := range outside {
		all := core + out + toRing
		diagonal[k] = toRing*(core+out)/all + 2*round
		feeds[k] = toRing * core / all
	}
	ring := cyclic(&diagonal, round, &feeds)
	for k, out := range outside {
		gives[k] = out * (core + toRing*ring[k]) / (core + out + toRing)
	}
}

// cyclic solves a ring of places: diagonal[k] x[k] − round (x[k−1] + x[k+1]) = y[k].
// Source: Thomas's method with the correction of Sherman and Morrison for the corner, any
// textbook of numerical methods.
func cyclic(diagonal *[rays]float64, round float64, y *[rays]float64) [rays]float64 {
	const n = rays
	gamma := -diagonal[0]
	var c, x, z [rays]float64
	first, last := diagonal[0]-gamma, diagonal[n-1]-round*round/gamma
	d := first
	c[0], x[0], z[0] = -round/d, y[0]/d, gamma/d
	for k := 1; k < n; k++ {
		of, corner := diagonal[k], 0.0
		if k == n-1 {
			of, corner = last, -round
		}
		d = of + round*c[k-1]
		c[k] = -round / d
		x[k] = (y[k] + round*x[k-1]) / d
		z[k] = (corner + round*z[k-1]) / d
	}
	for k := n - 2; k >= 0; k-- {
		x[k] -= c[k] * x[k+1]
		z[k] -= c[k] * z[k+1]
	}
	f := (x[0] - round*x[n-1]/gamma) / (1 + z[0] - round*z[n-1]/gamma)
	for k := range x {
		x[k] -= f * z[k]
	}
	return x
}
