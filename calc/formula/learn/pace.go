package learn

import (
	"math"

	"contralay/model/unit"
)

// Spell is a stretch of work: how long it took, in minutes, and how many pieces it made.
type Spell struct {
	Group   string  // what it is judged with: "minutes, cut"
	Of      string  // which work it was, in words
	Minutes float64 // from 0
	Pieces  float64 // above 0
}

// Pace is what the spells of one group teach.
//
//	Each   = Σm ÷ Σp
//	Spread = √(Σ((m − Each·p)² ÷ p) ÷ (N − 1))
//
// It rests on this, and does not test it: what a piece takes scatters by itself, so that the square of
// the scatter of a spell grows with its pieces. That is least squares through the origin with a weight of
// 1 ÷ p (from memory: NIST/SEMATECH e-Handbook of Statistical Methods, 4.1.4.3).
type Pace struct {
	Group   string
	N       int     // spells that count
	Pieces  float64 // that they made
	Minutes float64 // that they took
	Each    float64 // minutes a piece
	Spread  float64 // of one piece, in minutes; 0 with one spell
	Skipped int     // spells that are no finite minutes from 0, or of no piece
	Least   int     // fewest spells that anything is expected by
	Enough  bool    // N is at least that, and they took any time
}

// Paces judges spells group by group, the groups in the order in which they first turn up.
func Paces(all []Spell, o Options) []Pace {
	var out []Pace
	at := map[string]int{}
	counts := func(s Spell) bool {
		return unit.Finite(s.Minutes) && unit.Finite(s.Pieces) && s.Minutes >= 0 && s.Minutes <= mostSpell && s.Pieces > 0 &&
			s.Pieces <= mostSpell
	}
	for _, s := range all {
		k, seen := at[s.Group]
		if !seen {
			k = len(out)
			at[s.Group] = k
			out = append(out, Pace{Group: s.Group, Least: o.least()})
		}
		if !counts(s) {
			out[k].Skipped++
			continue
		}
		out[k].N++
		out[k].Pieces += s.Pieces
		out[k].Minutes += s.Minutes
	}
	for k := range out {
		p := &out[k]
		if p.N == 0 {
			continue
		}
		p.Each = p.Minutes / p.Pieces
		p.Enough = p.N >= p.Least && p.Each > 0
		squares := 0.0
		for _, s := range all {
			if s.Group == p.Group && counts(s) {
				d := s.Minutes - p.Each*s.Pieces
				squares += d * d / s.Pieces
			}
		}
		if p.N > 1 {
			p.Spread = math.Sqrt(squares / float64(p.N-1))
		}
	}
	return out
}

// mostSpell is the most minutes, and pieces, of a spell that counts: it keeps every square within range.
const mostSpell = 1e6

// Ahead is what so many pieces more are expected to take, in minutes, and the spread of that: what the
// pieces themselves scatter, and how well Each is known from the pieces it rests on.
//
//	minutes = n · each
//	spread  = spread of one · √(n + n² ÷ pieces)
//
// Both are 0 for n or pieces that are not above 0.
func Ahead(n, each, spread, pieces float64) (minutes, off float64) {
	if !(n > 0) || !(pieces > 0) {
		return 0, 0
	}
	return n * each, spread * math.Sqrt(n+n*n/pieces)
}
