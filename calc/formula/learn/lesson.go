package learn

import "math"

// Lesson is what the readings of one group teach.
//
//	d  = measured ÷ predicted − 1, of each reading
//	Bias   = Σd ÷ N
//	Spread = √(Σ(d − Bias)² ÷ (N − 1))
//	Low, High = Bias ∓ t · Spread ÷ √N
//
// t is Student's, of N − 1 degrees of freedom, that leaves (1 − Confidence) ÷ 2 in each
// tail. Source: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.2, confidence limits
// for the mean (from memory).
//
// All of it is pure numbers. From two readings on there is an interval; before that
// Spread, Low and High are 0 and Bounded is false.
type Lesson struct {
	Group   string
	N       int // readings that count, the outliers among them
	Skipped int // readings that are not two finite sizes above zero, or are 10⁶ apart

	Bias, Spread float64
	Low, High    float64 // the interval of Bias
	Confidence   float64 // of that interval
	Bounded      bool    // there are readings enough for an interval

	Outliers []Outlier // counted in all the above
	Limit    float64   // of Grubbs' test for them; 0 below three readings, where there is none
	LeftOut  []Outlier // named in Options.Without, counted in nothing else

	Least   int  // fewest readings that correct anything
	Enough  bool // N is at least that
	Matters bool // there is an interval, and it does not hold 0
}

// dust is the spread, and the bias of readings without one, that is rounding of the
// arithmetic and not of the board: below it they are 0. Callipers tell 10⁻³.
const dust = 1e-12

// one is a reading that counts.
type one struct {
	of string
	d  float64 // ratio − 1
}

// Lessons judges the readings group by group, the groups in the order in which they first
// turn up. A group of nothing but skipped readings is told too, with N 0.
func Lessons(readings []Reading, o Options) []Lesson {
	without := map[string]bool{}
	for _, name := range o.Without {
		without[name] = name != ""
	}
	var (
		at          = map[string]int{}
		lessons     []Lesson
		kept, aside [][]one
	)
	for _, r := range readings {
		k, seen := at[r.Group]
		if !seen {
			k = len(lessons)
			at[r.Group] = k
			lessons = append(lessons, Lesson{Group: r.Group, Confidence: o.confidence(), Least: o.least()})
			kept, aside = append(kept, nil), append(aside, nil)
		}
		switch d, ok := r.off(); {
		case !ok:
			lessons[k].Skipped++
		case without[r.Of]:
			aside[k] = append(aside[k], one{r.Of, d})
		default:
			kept[k] = append(kept[k], one{r.Of, d})
		}
	}
	for k := range lessons {
		lessons[k].judge(kept[k])
		lessons[k].Outliers = lessons[k].outliers(kept[k])
		for _, r := range aside[k] {
			lessons[k].LeftOut = append(lessons[k].LeftOut, lessons[k].stand(r))
		}
	}
	return lessons
}

// judge fills in what the readings that count say.
func (l *Lesson) judge(kept []one) {
	l.N = len(kept)
	if l.N == 0 {
		return
	}
	n := float64(l.N)
	for _, r := range kept {
		l.Bias += r.d / n
	}
	if l.N == 1 {
		return
	}
	squares := 0.0
	for _, r := range kept {
		squares += (r.d - l.Bias) * (r.d - l.Bias)
	}
	l.Spread = math.Sqrt(squares / (n - 1))
	if l.Spread <= dust*(1+l.Bias) {
		l.Spread = 0
		if math.Abs(l.Bias) <= dust {
			l.Bias = 0
		}
	}
	t, ok := Student((1-l.Confidence)/2, l.N-1)
	if !ok {
		return
	}
	half := -t * l.Spread / math.Sqrt(n)
	l.Low, l.High, l.Bounded = l.Bias-half, l.Bias+half, true
	l.Enough = l.N >= l.Least
	l.Matters = l.Low > 0 || l.High < 0
	l.Limit, _ = Grubbs(l.N)
}

// Correction is what may be accepted of a lesson: a better prediction is
//
//	predicted × (1 + bias), and one reading scatters about it by predicted × spread
//
// ok is true where there are readings enough and the bias matters. Where there are enough
// and it does not matter, bias is 0, ok is false and spread is still told: the prediction
// stands as it is, and its band may be the shop's own. Where there are not enough all is 0.
//
// A correction is for the prediction that the readings were set against, never on top of
// one: what was already corrected has to be learned anew.
func Correction(l Lesson) (bias, spread float64, ok bool) {
	switch {
	case !l.Enough:
		return 0, 0, false
	case !l.Matters:
		return 0, l.Spread, false
	}
	return l.Bias, l.Spread, true
}
