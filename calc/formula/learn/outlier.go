package learn

import "math"

// Outlier is a reading that stands apart from those that count.
type Outlier struct {
	Of    string
	Ratio float64 // measured ÷ predicted
	Z     float64 // (Ratio − 1 − Bias) ÷ Spread of those that count; 0 where Spread is
}

// OutlierRate is how often Grubbs' test finds an outlier in a group that has none.
const OutlierRate = 0.05

// Grubbs is the limit of Grubbs' test for one outlier among n, on either side:
//
//	G = max |d − mean| ÷ s
//	limit = (n − 1) ÷ √n · √(t² ÷ (n − 2 + t²))
//
// t is Student's, of n − 2 degrees of freedom, that leaves OutlierRate ÷ 2n above it; s is
// the sample standard deviation, the reading in question being in it. false below three
// readings. Source: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.17.1 (from
// memory).
func Grubbs(n int) (limit float64, ok bool) {
	if n < 3 {
		return 0, false
	}
	return grubbs(n, OutlierRate/2/float64(n))
}

func grubbs(n int, tail float64) (limit float64, ok bool) {
	t, ok := Student(tail, n-2)
	if !ok {
		return 0, false
	}
	of := float64(n)
	return (of - 1) / math.Sqrt(of) / math.Sqrt(1+(of-2)/t/t), true
}

// outliers are those that Grubbs' test finds, the test being applied once: the farthest
// reading, or all that are equally far. The next one is found by leaving this one out by
// name and asking again, so that a person stands between. Two that lie close together far
// out hide one another, as the spread that they make is in the test.
func (l Lesson) outliers(kept []one) []Outlier {
	farthest := 0.0
	for _, r := range kept {
		farthest = max(farthest, math.Abs(l.stand(r).Z))
	}
	if l.Limit == 0 || farthest <= l.Limit {
		return nil
	}
	var found []Outlier
	for _, r := range kept {
		if s := l.stand(r); math.Abs(s.Z) >= farthest*(1-alike) {
			found = append(found, s)
		}
	}
	return found
}

// alike is the share by which two readings are equally far: rounding, no more.
const alike = 1e-9

// stand is where a reading stands among those that count.
func (l Lesson) stand(r one) Outlier {
	s := Outlier{Of: r.of, Ratio: 1 + r.d}
	if l.Spread > 0 {
		s.Z = (r.d - l.Bias) / l.Spread
	}
	return s
}
