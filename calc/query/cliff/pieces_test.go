package cliff_test

import (
	"slices"
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/formula/plan"
	"contralay/calc/query/cliff"
	"contralay/calc/query/offer"
	"contralay/model"
	"contralay/model/unit"
)

// asked is a strip over pieces of one diameter and what else there is, all of it worked out.
func asked(t *testing.T, pieces ...offer.Piece) *cliff.Strip {
	t.Helper()
	l := model.Rules{}.Resolve()
	ask := plan.Ask{Centres: plan.UnequalCentres, Rules: plan.Rules{LayRatio: 12, LiftMax: l.LiftMax, LiftTight: l.LiftTight,
		GapInner: l.GapInner, GapOuter: l.GapOuter, LumpyAt: l.LumpyAt, FillerWeight: l.FillerWeight, SpareGain: l.SpareGain}}
	for _, z := range pieces {
		ask.Sizes = append(ask.Sizes, plan.Size{D: z.OverMM, N: z.N})
	}
	a, ok := cliff.OfPieces(ask, pieces, model.Rules{LayRatio: model.Some[unit.Ratio](12)}, calctest.Catalogue(t))
	if !ok {
		t.Fatal("there is nothing to count")
	}
	s := cliff.Begin(a)
	s.Fill()
	return s
}

// Equal wires of 1 mm at lay ratio 12, lift 0.05. What the layers of each centre take and come to is the table
// "check values for equal wires" of the geometry notes (derived there, reproduced by two further programs):
//
//	centre 1: 6 (3.023) 12 (5.023) 18 (7.023)    centre 2: 8 (4.000) 15 (6.000) 21 (8.000)
//	centre 3: 9 (4.155) 15 (6.155)               centre 4: 10 (4.414) 16 (6.414)
//	centre 5: 11 (4.701) 17 (6.701)
//
// By hand: 7, 19 and 37 fill every layer round one wire, so the next needs the thinnest bundle that takes it, which is a centre
// of two: 2+8 = 10, 2+8+15 = 25, 2+8+15+21 = 46 in as many layers. From there it goes on with the centres of three to five,
// and the 17th and the 34th go back to one wire and begin a layer: 5+11 = 16, 5+11+17 = 33.
func TestEqualWiresAgainstTheTable(t *testing.T) {
	type step struct {
		upTo int
		over float64
	}
	for _, c := range []struct {
		now   int
		steps []step // counts above and below, up to each of them at this OD
	}{
		{11, []step{{7, 3.023}, {10, 4.000}, {12, 4.155}, {14, 4.414}, {16, 4.701}, {19, 5.023}}},
		{19, []step{{12, 4.155}, {14, 4.414}, {16, 4.701}, {19, 5.023}, {25, 6.000}, {27, 6.155}}},
		{37, []step{{30, 6.414}, {33, 6.701}, {37, 7.023}, {45, 8.000}}},
	} {
		s := asked(t, offer.Piece{OverMM: 1, N: c.now})
		if s.Now != c.now || s.Least != max(1, c.now-cliff.Reach) || s.Most != c.now+cliff.Reach {
			t.Errorf("%d: from %d to %d, now %d", c.now, s.Least, s.Most, s.Now)
		}
		for n := max(s.Least, 7); n <= s.Most; n++ { // fewer than seven need no layer
			p, ok := s.Point(n)
			if !ok || p.Branch == nil {
				t.Fatalf("%d is not worked out", n)
			}
			k := slices.IndexFunc(c.steps, func(s step) bool { return n <= s.upTo })
			want := c.steps[k].over
			calctest.Near(t, "OD", float64(p.OverMM), want, 0.001) // the table has three decimals
			began := s.Begins(n)
			jumps := k > 0 && n == c.steps[k-1].upTo+1 && n > s.Least
			if began.Thick != jumps || began.Thin {
				t.Errorf("%d of 1 mm: begins %+v, and the table has a step: %v", n, began, jumps)
			}
			if layer := n == 17 || n == 34; n > s.Least && began.Layer != layer {
				t.Errorf("%d of 1 mm: a layer begins: %v", n, began.Layer)
			}
		}
	}
}

// What is said of them: 19 fill every layer, 20 leave room for five.
func TestSaidOfEqualWires(t *testing.T) {
	for _, c := range []struct {
		now  int
		fits int
		says []string
	}{
		{19, 0, []string{"The 20th needs a centre of 2: OD 6.0 mm.", "With 3 fewer it is 4.7 mm, a layer less."}},
		{20, 5, []string{"5 more still fit.", "The 26th needs a centre of 3: OD 6.2 mm.", "With 1 fewer it is 5.0 mm."}},
		{24, 1, []string{"One more still fits.", "The 26th needs a centre of 3: OD 6.2 mm.", "With 5 fewer it is 5.0 mm."}},
		{16, 0, []string{"The 17th starts a new layer: OD 5.0 mm.", "With 2 fewer it is 4.4 mm."}},
	} {
		s := asked(t, offer.Piece{OverMM: 1, N: c.now})
		if fit, known := s.Fits(); fit != c.fits || !known {
			t.Errorf("%d: %d more fit, want %d", c.now, fit, c.fits)
		}
		for _, want := range c.says {
			if !slices.ContainsFunc(s.Says(unit.MM), func(got string) bool { return untubed(got) == want }) {
				t.Errorf("%d: %q lacks %q", c.now, s.Says(unit.MM), want)
			}
		}
	}
}

// One of 2.4 mm and some of 1.09 mm: of ten the geometry notes have a perfect lay-up, 4.681 mm; what is held in the centre is
// never taken out, and a question of one size asks for one piece at least.
func TestPiecesOfTwoSizes(t *testing.T) {
	s := asked(t, offer.Piece{OverMM: 2.4, N: 1}, offer.Piece{OverMM: 1.09, N: 4}, offer.Piece{OverMM: 1.09, N: 4})
	if s.Now != 8 || s.Least != 0 || s.D != 1.09 {
		t.Errorf("%d of %v now, from %d", s.Now, s.D, s.Least)
	}
	p, _ := s.Point(10)
	calctest.Near(t, "OD of ten", float64(p.OverMM), 4.681, 0.001)
	calctest.Near(t, "OD of none", float64(one(t, s, 0).OverMM), 2.4, 0.001)
	pieces := 0
	for _, l := range one(t, s, 3).Branch.Layers {
		pieces += len(l.Members) - l.Fillers
	}
	if pieces != 4 {
		t.Errorf("%d pieces where three and the thick one were asked for", pieces)
	}
}

func one(t *testing.T, s *cliff.Strip, n int) cliff.Point {
	t.Helper()
	p, ok := s.Point(n)
	if !ok || p.Branch == nil {
		t.Fatalf("%d is not worked out", n)
	}
	return p
}

// Of two sizes of which there are as many the thinner is counted, in whatever order they are asked for; of three the commonest is.
func TestTheThinnerOfTwoIsCounted(t *testing.T) {
	for range 8 { // in whatever order they are gone through
		for _, pieces := range [][]offer.Piece{{{OverMM: 2, N: 3}, {OverMM: 1, N: 3}}, {{OverMM: 1, N: 3}, {OverMM: 2, N: 3}},
			{{OverMM: 0.5, N: 1}, {OverMM: 1, N: 3}, {OverMM: 2, N: 3}}} {
			a, ok := cliff.OfPieces(plan.Ask{}, pieces, model.Rules{}, calctest.Catalogue(t))
			if !ok || a.D != 1 || a.Now != 3 || a.Size != "1 mm" {
				t.Errorf("%+v: %+v", pieces, a)
			}
		}
	}
}
