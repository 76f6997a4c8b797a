package derate

import "contralay/model/unit"

// shares are the curves of the bundle chart: share of the bundle's capacity in use.
var shares = [5]unit.Ratio{0.20, 0.40, 0.60, 0.80, 1.00}

// curves are the bundle factors for 1 to 19 wires. Source: a hand digitisation of the
// bundle chart of MIL-W-5088L (the same curves as AC 43.13-1B figure 11-5); 8 wires
// at 60 % agree with the circular's 0.6, p. 11-27.
var curves = [19][5]unit.Ratio{
	{1, 1, 1, 1, 1},
	{0.9675, 0.920, 0.910, 0.870, 0.825}, {0.935, 0.855, 0.815, 0.770, 0.725}, {0.9075, 0.805, 0.750, 0.705, 0.660},
	{0.875, 0.760, 0.695, 0.650, 0.610}, {0.850, 0.725, 0.655, 0.605, 0.5725}, {0.820, 0.695, 0.625, 0.570, 0.540},
	{0.795, 0.6675, 0.595, 0.5425, 0.5125}, {0.775, 0.645, 0.575, 0.520, 0.485}, {0.755, 0.6225, 0.550, 0.500, 0.465},
	{0.735, 0.600, 0.530, 0.480, 0.445}, {0.715, 0.585, 0.515, 0.465, 0.430}, {0.6975, 0.5675, 0.495, 0.4475, 0.415},
	{0.685, 0.5525, 0.480, 0.435, 0.3975}, {0.670, 0.540, 0.465, 0.420, 0.385}, {0.6575, 0.5275, 0.455, 0.410, 0.370},
	{0.645, 0.515, 0.4425, 0.3975, 0.360}, {0.635, 0.505, 0.4325, 0.3875, 0.350}, {0.625, 0.495, 0.4225, 0.380, 0.3425},
}

// more are points of the 20 % curve beyond: 20 wires read, 33 worked back from table
// 11-9, 35 from the example of 11-69, from memory.
var more = [...]struct {
	n int
	f unit.Ratio
}{{19, 0.625}, {20, 0.615}, {33, 0.53}, {35, 0.52}}

// Bundle is the factor for n wires of which so large a share of the capacity is in
// use. Less than 20 % counts as 20 %: the chart has no curve below. Past the last point
// of a curve, 19 wires or 35 at up to 20 %, that point is held.
func Bundle(n int, share unit.Ratio) (f unit.Ratio, held bool) {
	n = max(n, 1)
	if !(share >= shares[0]) {
		share = shares[0]
	}
	held = n > more[len(more)-1].n || n > len(curves) && share > shares[0]
	c := curves[min(n, len(curves))-1]
	f = c[len(c)-1]
	for k := 1; k < len(shares); k++ {
		if share <= shares[k] {
			w := (share - shares[k-1]) / (shares[k] - shares[k-1])
			f = c[k-1] + w*(c[k]-c[k-1])
			break
		}
	}
	for k := 1; k < len(more) && n > len(curves); k++ {
		if a, b := more[k-1], more[k]; n <= b.n || k == len(more)-1 {
			n := min(n, b.n)
			f = min(f, a.f+(b.f-a.f)*unit.Ratio(n-a.n)/unit.Ratio(b.n-a.n))
			break
		}
	}
	return f, held
}

// MostWires is the number of wires past which Bundle gives one value whatever their
// number.
const MostWires = 35

// heights are points of the altitude curve. Source: 20,000 ft AC 43.13-1B p. 11-27;
// sea level and 60,000 ft from memory of figure 11-6 and its example. A chart that was digitised
// elsewhere has 0.80 at 50,000 ft and 0.77 at 60,000 ft, 0.02 less: both are hand readings.
var heights = [...]struct {
	ft, f unit.Ratio
}{{0, 1}, {20_000, 0.91}, {60_000, 0.79}}

// feet turns mm into feet: 304.8 mm, exact.
const feet = 304.8

// Altitude is the factor for thin air at a height in mm above the sea, that of 60,000 ft
// held above it and that of the sea below.
func Altitude(height unit.Millimetre) (f unit.Ratio, held bool) {
	ft := unit.Ratio(height / feet)
	if !(ft > 0) {
		return heights[0].f, false
	}
	for k := 1; k < len(heights); k++ {
		if a, b := heights[k-1], heights[k]; ft <= b.ft {
			return a.f + (b.f-a.f)*(ft-a.ft)/(b.ft-a.ft), false
		}
	}
	return heights[len(heights)-1].f, true
}
