package learn

import "math"

// Student is the quantile of Student's t distribution: P(T ≤ t) = p for df degrees of
// freedom. By the incomplete beta function of both tails:
//
//	P(|T| > |t|) = I_x(df/2, 1/2) = 2 min(p, 1 − p)
//	x = 1 ÷ (1 + t² ÷ df), so that t² = df · (1 − x) ÷ x
//
// Good to 10 digits up to df 1,000, to 8 beyond.
//
// Range: least ≤ p < 1 and df ≥ 1; false otherwise. More than 10⁶ degrees count as 10⁶: t
// is then within (t² + 1) ÷ 4 · 10⁻⁶ of itself of the normal one.
//
// Source: NIST Digital Library of Mathematical Functions, 8.17 (from memory); the table
// that the tests hold it to is in the NIST/SEMATECH e-Handbook, 1.3.6.7.2.
func Student(p float64, df int) (t float64, ok bool) {
	if !(p >= least && p < 1) || df < 1 {
		return 0, false
	}
	if p == 0.5 {
		return 0, true
	}
	nu := float64(min(df, mostDF))
	t = math.Exp((math.Log(nu) - quantile(nu/2, 0.5, 2*min(p, 1-p))) / 2)
	return math.Copysign(t, p-0.5), true
}

const mostDF = 1_000_000

// least is the smallest number with all its digits. Below it math.Log is off on some
// machines (amd64 with go 1.26 says −709.1 of 5·10⁻³²⁴, which is −744.4), and there is no
// use for it: a confidence is 10⁻¹⁶ from 1 at the nearest.
const least = 0x1p-1022

// quantile is the logit of x, w = log(x ÷ (1 − x)), at which I_x(a, b) is share. The log of
// a share keeps its digits at both ends.
//
// By Newton's steps on log I over w. The density of w is x^a (1 − x)^b ÷ B, whose log is
// concave, and so is then that of I: from a start below, each step ends below the
// quantile or on it, and nearer. The start is where the first term of the series,
// e^(aw) ÷ aB, which is never less than I, has come to share. Some 10 steps, 40 where share
// is as near to 1 as a number can be.
func quantile(a, b, share float64) float64 {
	beta, want := logBeta(a, b), math.Log(share)
	w := (want + math.Log(a) + beta) / a
	for range 100 {
		have := logIncomplete(a, b, w, beta)
		density := a*logOf(w) + b*logOf(-w) - beta
		step := (want - have) * math.Exp(have-density)
		w += step
		if math.Abs(step) < 1e-9 { // the next would be some square of it
			break
		}
	}
	return w
}

// logIncomplete is log I_x(a, b), the regularised incomplete beta function, at the logit w
// of x, in which neither x nor 1 − x loses its digits; beta is log B(a, b).
//
// The continued fraction converges fast for x < (a + 1) ÷ (a + b + 2); beyond,
// I_x(a, b) = 1 − I_1−x(b, a).
func logIncomplete(a, b, w, beta float64) float64 {
	if x := 1 / (1 + math.Exp(-w)); x > (a+1)/(a+b+2) {
		return math.Log1p(-math.Exp(ascending(b, a, -w, beta)))
	}
	return ascending(a, b, w, beta)
}

// ascending is the log of the continued fraction of DLMF 8.17.22, from the front (Lentz's
// way):
//
//	I_x(a, b) = x^a (1 − x)^b ÷ (a B(a, b)) · 1/(1+ d₁/(1+ d₂/(1+ …
//	d₂ₘ   = m (b − m) x ÷ ((a + 2m − 1)(a + 2m))
//	d₂ₘ₊₁ = −(a + m)(a + b + m) x ÷ ((a + 2m)(a + 2m + 1))
//
// It needs some √max(a, b) terms.
func ascending(a, b, w, beta float64) float64 {
	x := 1 / (1 + math.Exp(-w))
	c, d, f := 1.0, 0.0, 1.0
	for k := 1; k < mostTerms; k++ {
		m, step := float64(k/2), 0.0
		if k%2 == 0 {
			step = m * (b - m) * x / ((a + 2*m - 1) * (a + 2*m))
		} else {
			step = -(a + m) * (a + b + m) * x / ((a + 2*m) * (a + 2*m + 1))
		}
		d = 1 / apart(1+step*d)
		c = apart(1 + step/c)
		f *= c * d
		if math.Abs(c*d-1) < 1e-15 {
			break
		}
	}
	return a*logOf(w) + b*logOf(-w) - beta - math.Log(a) - math.Log(f)
}

const mostTerms = 20_000 // never reached within mostDF

// apart keeps a denominator off zero.
func apart(v float64) float64 {
	if math.Abs(v) < 1e-300 {
		return 1e-300
	}
	return v
}

// logOf is log x from the logit of x: −log(1 + e^−w).
func logOf(w float64) float64 {
	if w < -40 {
		return w
	}
	return -math.Log1p(math.Exp(-w))
}

// logBeta is log B(a, b).
func logBeta(a, b float64) float64 {
	la, _ := math.Lgamma(a)
	lb, _ := math.Lgamma(b)
	lab, _ := math.Lgamma(a + b)
	return la + lb - lab
}
