package learn

import (
	"math"
	"math/rand/v2"
	"testing"
)

// By hand: 3 spells of 2, 4 and 4 pieces took 3, 2 and 5 minutes. Each is 10 ÷ 10 = 1; what they are off is
// 1, −2 and 1, so the square of the spread is (1/2 + 4/4 + 1/4) ÷ 2 = 0.875.
func TestPaceByHand(t *testing.T) {
	all := []Spell{{"cut", "a", 3, 2}, {"lay", "x", 1, 1}, {"cut", "b", 2, 4}, {"cut", "c", 5, 4}, {"cut", "bad", -1, 3},
		{"cut", "none", 3, 0}, {"cut", "endless", math.Inf(1), 1}}
	got := Paces(all, Options{Least: 3})
	if len(got) != 2 || got[1].Group != "lay" || got[1].Enough {
		t.Fatalf("%+v", got)
	}
	if lay := got[1]; lay.N != 1 || lay.Each != 1 || lay.Spread != 0 { // one alone has no spread
		t.Errorf("%+v", lay)
	}
	cut := got[0]
	if cut.N != 3 || cut.Skipped != 3 || cut.Pieces != 10 || cut.Minutes != 10 || cut.Each != 1 || !cut.Enough ||
		math.Abs(cut.Spread-math.Sqrt(0.875)) > 1e-12 {
		t.Errorf("%+v", cut)
	}
	// 15 pieces more: 15 minutes, off by the root of 0.875·(15 + 225/10).
	if m, off := Ahead(15, cut.Each, cut.Spread, cut.Pieces); m != 15 || math.Abs(off-math.Sqrt(0.875*37.5)) > 1e-12 {
		t.Errorf("%v minutes, off by %v", m, off)
	}
	if m, off := Ahead(0, 1, 1, 10); m != 0 || off != 0 {
		t.Errorf("no piece takes %v, off by %v", m, off)
	}
	if m, off := Ahead(3, 1, 1, 0); m != 0 || off != 0 {
		t.Errorf("from nothing %v is expected, off by %v", m, off)
	}
	if p := Paces([]Spell{{"cut", "a", 0, 3}, {"cut", "b", 0, 2}}, Options{Least: 2}); p[0].Enough {
		t.Errorf("work that takes no time teaches something: %+v", p)
	}
}

// Work is made up with a known pace and spread; what is learned of it is that, and what is expected of
// more of the same is right, with its spread, as often as the normal law says.
func TestPaceFindsWhatWasPutIn(t *testing.T) {
	rng := rand.New(rand.NewPCG(24, 8))
	spells := func(n int) (out []Spell, minutes, pieces float64) {
		for range n {
			p := 1 + rng.IntN(20)
			m := 0.0
			for range p {
				m += 2 + 0.5*rng.NormFloat64()
			}
			out = append(out, Spell{"lay", "", math.Max(m, 0), float64(p)})
			minutes, pieces = minutes+m, pieces+float64(p)
		}
		return out, minutes, pieces
	}
	within := 0
	const rounds = 400
	each, spread := 0.0, 0.0
	for range rounds {
		had, _, _ := spells(40)
		p := Paces(had, Options{})[0]
		each, spread = each+p.Each/rounds, spread+p.Spread/rounds
		_, minutes, pieces := spells(30)
		if m, off := Ahead(pieces, p.Each, p.Spread, p.Pieces); math.Abs(m-minutes) <= off {
			within++
		}
	}
	if math.Abs(each-2) > 0.01 || math.Abs(spread-0.5) > 0.02 {
		t.Errorf("put in 2 and 0.5, learned %.3f and %.3f", each, spread)
	}
	if share := float64(within) / rounds; share < 0.6 || share > 0.76 { // 0.683, three times its own chance
		t.Errorf("within one spread %.2f of the time", share)
	}
}
