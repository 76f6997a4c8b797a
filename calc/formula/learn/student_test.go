package learn

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// critical is the table of NIST/SEMATECH e-Handbook 1.3.6.7.2, upper critical values of
// Student's t. The page could not be reached; the numbers were typed from memory of it. In
// the last column some differ from the true value by a few units of their last place (at
// one degree it has 318.313, which is 318.309), so it carries a wider tolerance.
var critical = []struct {
	df int
	t  [6]float64
}{
	{1, [6]float64{3.078, 6.314, 12.706, 31.821, 63.657, 318.313}},
	{2, [6]float64{1.886, 2.920, 4.303, 6.965, 9.925, 22.327}},
	{3, [6]float64{1.638, 2.353, 3.182, 4.541, 5.841, 10.215}},
	{4, [6]float64{1.533, 2.132, 2.776, 3.747, 4.604, 7.173}},
	{5, [6]float64{1.476, 2.015, 2.571, 3.365, 4.032, 5.893}},
	{6, [6]float64{1.440, 1.943, 2.447, 3.143, 3.707, 5.208}},
	{7, [6]float64{1.415, 1.895, 2.365, 2.998, 3.499, 4.782}},
	{8, [6]float64{1.397, 1.860, 2.306, 2.896, 3.355, 4.499}},
	{9, [6]float64{1.383, 1.833, 2.262, 2.821, 3.250, 4.296}},
	{10, [6]float64{1.372, 1.812, 2.228, 2.764, 3.169, 4.143}},
	{11, [6]float64{1.363, 1.796, 2.201, 2.718, 3.106, 4.024}},
	{12, [6]float64{1.356, 1.782, 2.179, 2.681, 3.055, 3.929}},
	{13, [6]float64{1.350, 1.771, 2.160, 2.650, 3.012, 3.852}},
	{14, [6]float64{1.345, 1.761, 2.145, 2.624, 2.977, 3.787}},
	{15, [6]float64{1.341, 1.753, 2.131, 2.602, 2.947, 3.733}},
	{16, [6]float64{1.337, 1.746, 2.120, 2.583, 2.921, 3.686}},
	{17, [6]float64{1.333, 1.740, 2.110, 2.567, 2.898, 3.646}},
	{18, [6]float64{1.330, 1.734, 2.101, 2.552, 2.878, 3.610}},
	{19, [6]float64{1.328, 1.729, 2.093, 2.539, 2.861, 3.579}},
	{20, [6]float64{1.325, 1.725, 2.086, 2.528, 2.845, 3.552}},
	{21, [6]float64{1.323, 1.721, 2.080, 2.518, 2.831, 3.527}},
	{22, [6]float64{1.321, 1.717, 2.074, 2.508, 2.819, 3.505}},
	{23, [6]float64{1.319, 1.714, 2.069, 2.500, 2.807, 3.485}},
	{24, [6]float64{1.318, 1.711, 2.064, 2.492, 2.797, 3.467}},
	{25, [6]float64{1.316, 1.708, 2.060, 2.485, 2.787, 3.450}},
	{26, [6]float64{1.315, 1.706, 2.056, 2.479, 2.779, 3.435}},
	{27, [6]float64{1.314, 1.703, 2.052, 2.473, 2.771, 3.421}},
	{28, [6]float64{1.313, 1.701, 2.048, 2.467, 2.763, 3.408}},
	{29, [6]float64{1.311, 1.699, 2.045, 2.462, 2.756, 3.396}},
	{30, [6]float64{1.310, 1.697, 2.042, 2.457, 2.750, 3.385}},
	{40, [6]float64{1.303, 1.684, 2.021, 2.423, 2.704, 3.307}},
	{60, [6]float64{1.296, 1.671, 2.000, 2.390, 2.660, 3.232}},
	{100, [6]float64{1.290, 1.660, 1.984, 2.364, 2.626, 3.174}},
	{math.MaxInt, [6]float64{1.282, 1.645, 1.960, 2.326, 2.576, 3.090}}, // infinity
}

var (
	columns    = [6]float64{0.90, 0.95, 0.975, 0.99, 0.995, 0.999}
	tolerances = [6]float64{0.00051, 0.00051, 0.00051, 0.00051, 0.00051, 0.005} // half the last place; see critical
)

func TestStudentTable(t *testing.T) {
	for _, row := range critical {
		for k, p := range columns {
			got, ok := Student(p, row.df)
			if !ok || !(math.Abs(got-row.t[k]) <= tolerances[k]) {
				t.Errorf("p %v, %d degrees: %.5f, want %v", p, row.df, got, row.t[k])
			}
		}
	}
}

// At 1, 2 and 4 degrees the quantile has a closed form. Derived from the density.
func TestStudentClosed(t *testing.T) {
	closed := map[int]func(p float64) float64{
		1: func(p float64) float64 { return math.Tan(math.Pi * (p - 0.5)) },
		2: func(p float64) float64 { return (2*p - 1) / math.Sqrt(2*p*(1-p)) },
		4: func(p float64) float64 {
			a := math.Sqrt(4 * p * (1 - p))
			q := math.Cos(math.Acos(a)/3) / a
			return math.Copysign(2*math.Sqrt(q-1), p-0.5)
		},
	}
	for df, want := range closed {
		for _, p := range []float64{0.001, 0.025, 0.2, 0.4, 0.49, 0.51, 0.7, 0.9, 0.975, 0.999} {
			got, ok := Student(p, df)
			if !ok || !(math.Abs(got/want(p)-1) <= 1e-11) { // the closed forms lose the most, about the middle
				t.Errorf("p %v, %d degrees: %.15g, want %.15g", p, df, got, want(p))
			}
		}
	}
}

// between is P(|T| < t) by adding up the density in small steps, with t = √df · tan θ:
//
//	∫ (1 + t²/df)^−(df+1)/2 dt ∝ ∫ cos^(df−1) θ dθ
//
// divided by the same over all of it, so that it needs no gamma function: a way of its own.
func between(t float64, df int) float64 {
	area := func(to float64) float64 { // Simpson
		const n = 2000
		sum := 0.0
		for k := range n + 1 {
			w := 2.0 + 2*float64(k%2)
			if k == 0 || k == n {
				w = 1
			}
			sum += w * math.Pow(math.Cos(to*float64(k)/n), float64(df-1))
		}
		return sum * to / n / 3
	}
	return area(math.Atan(t/math.Sqrt(float64(df)))) / area(math.Pi/2)
}

func TestStudentDensity(t *testing.T) {
	for _, df := range []int{1, 2, 3, 5, 7, 8, 12, 19, 29, 30, 61, 100, 400, 1000} {
		for _, p := range []float64{0.5001, 0.6, 0.75, 0.9, 0.975, 0.99, 0.9995} {
			got, ok := Student(p, df)
			if back := (1 + between(got, df)) / 2; !ok || !(math.Abs(back-p) <= 1e-10) { // Simpson's own error
				t.Errorf("p %v, %d degrees: t %v has %.12f below it", p, df, got, back)
			}
		}
	}
}

// With many degrees it is the normal quantile z and the first terms of its expansion,
//
//	t = z + (z³ + z) ÷ 4df + (5z⁵ + 16z³ + 3z) ÷ 96df²
//
// Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 26.7.5 (from memory).
func TestStudentMany(t *testing.T) {
	for _, df := range []float64{1000, 30_000, 1e6} {
		for _, p := range []float64{0.51, 0.8, 0.975, 0.9995} {
			z := math.Sqrt2 * math.Erfinv(2*p-1)
			want := z + (z*z*z+z)/(4*df) + (5*math.Pow(z, 5)+16*z*z*z+3*z)/(96*df*df)
			tolerance := 1e-9 + math.Pow(1+z, 7)/100/df/df/df // digits lost in the gamma functions; the next term
			if got, ok := Student(p, int(df)); !ok || !(math.Abs(got-want) <= tolerance) {
				t.Errorf("p %v, %v degrees: %.12f, want %.12f", p, df, got, want)
			}
		}
	}
}

// A quantile rises with p, is the same on both sides, and draws in with more degrees.
func TestStudentOrder(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		df := rapid.IntRange(1, 3000).Draw(r, "df")
		p := rapid.Float64Range(1e-12, 0.499).Draw(r, "p")
		a, _ := Student(p, df)
		b, _ := Student(p*1.001, df)
		if !(a < b) || !(b < 0) {
			r.Fatalf("%v at %v, %v at a little more", a, p, b)
		}
		if more, _ := Student(p, df+1+df/10); !(more > a) {
			r.Fatalf("%v, with more degrees %v", a, more)
		}
		upper := 1 - p
		a, _ = Student(1-upper, df)
		if b, _ := Student(upper, df); b != -a {
			r.Fatalf("%v below, %v above", a, b)
		}
	})
}

func TestStudentOdd(t *testing.T) {
	for _, p := range []float64{0, 1, -1, 2, math.NaN(), math.Inf(1), math.Inf(-1), 5e-324} {
		if got, ok := Student(p, 5); ok || got != 0 {
			t.Errorf("p %v: %v, %v", p, got, ok)
		}
	}
	for _, df := range []int{0, -1, math.MinInt} {
		if got, ok := Student(0.9, df); ok || got != 0 {
			t.Errorf("%d degrees: %v, %v", df, got, ok)
		}
	}
	for _, p := range []float64{1e-20, 1e-300, least} { // t is −1/πp so far out
		if got, ok := Student(p, 1); !ok || !(math.Abs(got*p*math.Pi+1) <= 1e-11) {
			t.Errorf("p %v: %v, %v", p, got, ok)
		}
		if got, ok := Student(p/1e300/1e20, 1); ok || got != 0 {
			t.Errorf("p %v: %v, %v", p/1e300/1e20, got, ok)
		}
	}
	if got, ok := Student(0.5, 1); !ok || got != 0 {
		t.Errorf("the middle: %v, %v", got, ok)
	}
	// A hair beside the middle t = (p − ½) ÷ f(0), and the density f(0) is 1/π at one degree,
	// 1/√8 at two, and 1/√2π with many.
	for df, density := range map[int]float64{1: 1 / math.Pi, 2: 1 / math.Sqrt(8), mostDF: (1 - 0.25/mostDF) / math.Sqrt(2*math.Pi)} {
		for _, p := range []float64{math.Nextafter(0.5, 0), math.Nextafter(0.5, 1), 0.5 + 1e-9} {
			if got, ok := Student(p, df); !ok || !(math.Abs(got/(p-0.5)*density-1) < 1e-8) {
				t.Errorf("p ½ %+v, %d degrees: %v, %v", p-0.5, df, got, ok)
			}
		}
	}
}
