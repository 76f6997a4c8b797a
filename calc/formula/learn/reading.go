package learn

import "contralay/model/unit"

// Reading is one size as predicted and as measured. Both are in one unit, whichever: only
// their ratio is used. Both must be above zero.
type Reading struct {
	Group     string // what it is judged with: "over, 3 layers"
	Of        string // what was measured, in words: file, branch, layer, serial
	Predicted float64
	Measured  float64
}

// widest is the ratio, and one over it, beyond which a reading is skipped. No part is a
// million times its prediction; a slip of a thousand (metres typed for millimetres) is
// still told as an outlier. Ours, no source; it also keeps every square within range.
const widest = 1e6

// off is the ratio less 1, taken as a difference so that a small one keeps its digits:
//
//	d = (m − p) / p
//
// false where a size is no finite number above zero, or the ratio is beyond widest.
func (r Reading) off() (d float64, ok bool) {
	m, p := r.Measured, r.Predicted
	if !unit.Finite(m) || !unit.Finite(p) || m <= 0 || p <= 0 {
		return 0, false
	}
	if ratio := m / p; !(ratio <= widest) || !(ratio >= 1/widest) {
		return 0, false
	}
	return (m - p) / p, true
}

// Options are what the shop decides.
type Options struct {
	// Confidence is how often the interval is to hold the true bias, within (0, 1). Any
	// other value, 0 among them, is taken as UsualConfidence.
	Confidence float64

	// Least is the fewest readings that correct anything. Below 1 it is UsualLeast. One
	// reading never corrects anything: it has no spread.
	Least int

	// Without names readings (their Of) that are left out, in every group. An empty name
	// leaves out nothing; a name that no reading has does nothing.
	Without []string
}

// UsualConfidence is the confidence where none is given. Common practice, no source.
const UsualConfidence = 0.95

// UsualLeast is the fewest readings where none are given. At 8 the interval of the bias is
// the spread × 2.365 ÷ √8 = 0.84 to each side, so that a bias as large as the spread is
// seen; at 4 it is 1.6 and one odd reading decides. Ours, no source.
const UsualLeast = 8

func (o Options) confidence() float64 {
	if o.Confidence > 0 && o.Confidence < 1 {
		return o.Confidence
	}
	return UsualConfidence
}

func (o Options) least() int {
	if o.Least < 1 {
		return UsualLeast
	}
	return max(o.Least, 2)
}
