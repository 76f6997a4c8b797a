// Package shell has what a builder wants of a MIL-DTL-38999 shell beside its insert: the thread behind it that an
// accessory goes on, the hole it wants in a panel, the torque of a jam nut, how large a plug is. A shell
// is named by its size in series II, as the inserts of the catalogue are: 8 to 24; series I, III and IV call the same one
// larger, 9 to 25.
//
// It does not say which series a connector is of: whoever asks gets both threads. It knows no other family.
package shell

import "contralay/model/unit"

// Where the figures come from, as a page or a screen says it.
const (
	ThreadSource = "MIL-DTL-38999N with amendment 1, figures 8, 9 and 10, pp. 115, 119, 123"
	PanelSource  = "MIL-DTL-38999N with amendment 1, figure 11, p. 126"
	NutSource    = "MIL-DTL-38999N with amendment 1, figure 11, p. 127"
	PlugSource   = "a maker's MIL-DTL-38999 series I, II, III catalogue, shell drawings of series III"
)

// LongestPlug is the greatest length of a plug of series III, mm. Source: PlugSource.
const LongestPlug unit.Millimetre = 31.34

// NewtonMetre is a torque.
type NewtonMetre float64

// A Hole is the cut-out of a panel by the letters of figure 11, mm. A is the hole of a receptacle mounted from the rear; what
// the other letters measure stands in the figure, which is to be at hand when a panel is cut.
type Hole struct{ A, AA, B, C, E, F, G unit.Millimetre }

// A Nut is the jam nut of a receptacle of series III: its thread, and the least and the greatest torque, lbf·in as printed.
type Nut struct {
	Thread      string
	Least, Most float64
}

// poundInch is one pound-force inch in newton metres: 4.4482216152605 N × 0.0254 m, exact by definition.
const poundInch = 4.4482216152605 * 0.0254

// Torque is the least and the greatest torque of a nut.
func (n Nut) Torque() (least, most NewtonMetre) {
	return NewtonMetre(n.Least * poundInch), NewtonMetre(n.Most * poundInch)
}

// A Shell is one size. A thread is written as the document prints it: that of series I and II is UNEF class 2A in
// inches, that of III and IV metric.
type Shell struct {
	II         int             // its size in series II; I, III and IV: one more
	Rear       string          // thread behind, series I and II
	RearMetric string          // thread behind, series III and IV
	GrommetMM  unit.Millimetre // the grommet of series I and II, greatest diameter
	Hole       Hole
	Nut        Nut
	PlugMM     unit.Millimetre // a plug of series III, greatest diameter
}

// Of is a shell by its size in series II; false for one that there is none of.
func Of(size int) (Shell, bool) {
	k := size/2 - 4
	if size%2 != 0 || k < 0 || k >= len(shells) {
		return Shell{}, false
	}
	return shells[k], true
}

// shells are all sizes, the smallest first.
var shells = [...]Shell{
	{8, ".4375-28", "M12x1.0-6g 0.100R", 7.59, Hole{16.66, 13.11, 16.70, 17.60, 14.15, 21.08, 22.48}, Nut{"M17", 30, 36}, 21.8},
	{10, ".5625-24", "M15x1.0-6g 0.100R", 10.85, Hole{20.22, 15.88, 19.59, 20.96, 17.32, 24.26, 25.65}, Nut{"M20", 40, 46}, 25.0},
	{12, ".6875-24", "M18x1.0-6g 0.100R", 13.74, Hole{23.42, 19.05, 24.26, 25.65, 21.69, 27.56, 28.83}, Nut{"M25", 55, 60}, 29.4},
	{14, ".8125-20", "M22x1.0-6g 0.100R", 16.92, Hole{26.59, 23.01, 27.56, 28.83, 24.87, 30.73, 32.01}, Nut{"M28", 70, 75}, 32.5},
	{16, ".9375-20", "M25x1.0-6g 0.100R", 20.09, Hole{30.96, 25.81, 30.73, 32.01, 28.04, 33.91, 35.18}, Nut{"M32", 80, 85}, 35.7},
	{18, "1.0625-18", "M28x1.0-6g 0.100R", 22.78, Hole{32.94, 28.98, 33.91, 35.18, 31.22, 37.08, 38.35}, Nut{"M35", 90, 95}, 38.5},
	{20, "1.1875-18", "M31x1.0-6g 0.100R", 25.96, Hole{36.12, 32.16, 37.08, 38.35, 34.39, 40.26, 41.53}, Nut{"M38", 100, 110}, 41.7},
	{22, "1.3125-18", "M34x1.0-6g 0.100R", 29.13, Hole{39.29, 34.93, 40.26, 41.53, 37.57, 43.42, 44.70}, Nut{"M41", 110, 120}, 44.9},
	{24, "1.4375-18", "M37x1.0-6g 0.100R", 32.31, Hole{42.47, 37.69, 43.43, 44.70, 40.74, 46.61, 47.88}, Nut{"M44", 120, 130}, 48.0},
}
