package learn

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"
)

// shop is a made-up shop: what it measures is off by a bias and a spread that are known,
// by the normal law, over sizes from a thin branch to a thick one.
type shop struct {
	bias, spread float64
	n            int
}

func (s shop) readings(r *rand.Rand) []Reading {
	list := make([]Reading, s.n)
	for k := range list {
		p := 3 + 17*r.Float64()
		list[k] = Reading{"over", fmt.Sprint("no ", k), p, p * (1 + s.bias + s.spread*r.NormFloat64())}
	}
	return list
}

var shops = []shop{{0.02, 0.015, 8}, {-0.03, 0.01, 12}, {0, 0.02, 20}, {0.1, 0.05, 5}}

// many is how many shops are tried: a quarter where the tests are to be short.
func many(n int) int {
	if testing.Short() {
		return n / 4
	}
	return n
}

// four is four standard deviations of a binomial share of m.
func four(share float64, m int) float64 { return 4 * math.Sqrt(share*(1-share)/float64(m)) }

// The interval holds the true bias as often as it says. Of m shops the count is binomial:
// its share scatters by √(c(1 − c) ÷ m). Of 2,000 at 95 % that is 0.49 points, so that 94 to
// 96 % is only 2 of it to each side and a right method would miss it with one seed in 25;
// of 8,000 it is 0.24 points, and one point is 4 of it: 1 in 16,000. The seed is fixed. The
// normal quantile instead of Student's would hold 90.9 % of 8 readings, and fails by far.
func TestHoldsAsOftenAsItSays(t *testing.T) {
	m := many(8000)
	r := rand.New(rand.NewPCG(1, 95))
	for _, s := range shops {
		for _, c := range []float64{0.95, 0.8} {
			held := 0
			for range m {
				l := Lessons(s.readings(r), Options{Confidence: c})[0]
				if l.Low <= s.bias && s.bias <= l.High {
					held++
				}
			}
			share := float64(held) / float64(m)
			if bound := four(c, m); !(math.Abs(share-c) <= bound) {
				t.Errorf("%+v: %.2f %% hold the bias, want %v ± %.2f", s, 100*share, 100*c, 100*bound)
			}
		}
	}
}

// The mean square of the spread is that of the shop: each has n − 1 degrees of freedom, so
// the mean over m of them scatters by √(2 ÷ (n − 1)m) of it; 4 of that is the tolerance. And
// where there is no bias, it seems to matter as rarely as it should.
func TestSpreadComesBack(t *testing.T) {
	m := many(4000)
	r := rand.New(rand.NewPCG(2, 7))
	for _, s := range shops {
		square, matter := 0.0, 0
		for range m {
			l := Lessons(s.readings(r), Options{Least: 2})[0]
			square += l.Spread * l.Spread / float64(m)
			if l.Matters {
				matter++
			}
		}
		tolerance := 4 * math.Sqrt(2/float64((s.n-1)*m))
		if got := square / s.spread / s.spread; !(math.Abs(got-1) <= tolerance) {
			t.Errorf("%+v: spread² comes back × %v, tolerance %v", s, got, tolerance)
		}
		if share := float64(matter) / float64(m); s.bias == 0 && !(math.Abs(share-0.05) <= four(0.05, m)) {
			t.Errorf("%+v: a bias of none matters in %.1f %%", s, 100*share)
		}
	}
}

// Of groups without an outlier one in twenty has one found: 8,000 scatter by 0.24 points,
// and 4 of that is the tolerance. The limit shares its 5 % out evenly over 2n tails, which
// is exact or a hair on the safe side.
func TestFalseAlarms(t *testing.T) {
	m := many(8000)
	r := rand.New(rand.NewPCG(3, 5))
	for _, n := range []int{3, 8, 15, 30} {
		alarms := 0
		for range m {
			if l := Lessons(shop{0.01, 0.02, n}.readings(r), Options{})[0]; len(l.Outliers) > 0 {
				alarms++
			}
		}
		if share := float64(alarms) / float64(m); !(math.Abs(share-OutlierRate) <= four(OutlierRate, m)) {
			t.Errorf("%d readings: %.2f %% false alarms", n, 100*share)
		}
	}
}

// A reading planted six spreads off is found and named, always among 20 and nearly always
// among 12; it stays in the mean until it is named in Without, and then the lesson is that
// of the others alone.
func TestPlanted(t *testing.T) {
	m := many(1000)
	r := rand.New(rand.NewPCG(4, 6))
	for _, c := range []struct {
		n     int
		least float64 // by trial: 99.3 % and 100 %
	}{{12, 0.98}, {20, 0.995}} {
		n, found := c.n, 0
		for k := range m {
			s := shop{0.02, 0.01, n}
			list := s.readings(r)
			at := k % n
			list[at].Measured = list[at].Predicted * (1 + s.bias + 6*s.spread)
			name := list[at].Of
			l := Lessons(list, Options{})[0]
			if len(l.Outliers) == 1 && l.Outliers[0].Of == name {
				found++
			}
			out := Lessons(list, Options{Without: []string{name}})[0]
			others := Lessons(append(list[:at:at], list[at+1:]...), Options{})[0]
			if out.Bias != others.Bias || out.Spread != others.Spread || out.Low != others.Low || out.N != n-1 {
				t.Fatalf("without the planted one %+v, the others alone %+v", out, others)
			}
			if l.N != n || len(out.LeftOut) != 1 || out.LeftOut[0].Of != name || out.LeftOut[0].Z < 3 {
				t.Fatalf("with it %+v, without %+v", l, out)
			}
		}
		if share := float64(found) / float64(m); share < c.least {
			t.Errorf("of %d readings the planted one is found in %.1f %%", n, 100*share)
		}
	}
}
