package cover_test

import (
	"fmt"
	"testing"

	"pgregory.net/rapid"

	"contralay/calc/formula/cover"
)

// Each advice is kept, nearly kept or missed at a mark that is worked out by hand from the
// bores 9.53 and 4.75 mm of 3/8 in tube and 3.18 and 1.57 of 1/8 in tube:
//
//	filled   0.80 · 9.53 = 7.624; nearly up to 2 % of 9.53 more, 7.8146
//	         0.80 · 3.18 = 2.544; nearly up to 0.1 mm more, which is more than 2 %, 2.644
//	grips    1.10 · 4.75 = 5.225; nearly down to 0.1 mm less, 5.125
//	         1.10 · 1.57 = 1.727; 0.1 mm less is beyond half of the way to 1.57, so 1.6485
//	slides   120 mm: 0.3 + 20·0.9/400 = 0.345; nearly down to half of it, 0.1725, where it sticks too
//	         900 mm: 1.2 + 400·0.8/500 = 1.84; nearly down to 2 % of 9.53 less, 1.6494; it sticks below 0.92
//	         900 mm, 6.35: nearly down to 2 % of that less, 1.713
func TestNearlyKeptByHand(t *testing.T) {
	type marks struct {
		name                 string
		at                   func(x mm) cover.Verdict
		of                   func(v cover.Verdict) cover.Advice
		kept, nearly, sticks mm
		more                 bool // more of it is worse
	}
	over := func(tube cover.Tube) func(x mm) cover.Verdict {
		return func(x mm) cover.Verdict { return judge(t, tube, tight(x, x), cover.Pass{}, 50) }
	}
	slide := func(tube cover.Tube, length mm) func(x mm) cover.Verdict {
		return func(x mm) cover.Verdict {
			pass := tube.SuppliedMM - x
			return judge(t, tube, tight(1.3*tube.RecoveredMM/1.05, 1.3*tube.RecoveredMM/1.05), cover.Pass{NominalMM: pass, MaxMM: pass},
				length)
		}
	}
	stretch := func(v cover.Verdict) cover.Advice { return v.Stretch }
	grips := func(v cover.Verdict) cover.Advice { return v.Grips }
	slides := func(v cover.Verdict) cover.Advice { return v.Slides }
	for _, m := range []marks{
		{"filled 3/8", over(elastomer95), stretch, 7.624, 7.8146, 0, true},
		{"filled 1/8", over(elastomer32), stretch, 2.544, 2.644, 0, true},
		{"grips 3/8", over(elastomer95), grips, 5.225, 5.125, 0, false},
		{"grips 1/8", over(elastomer32), grips, 1.727, 1.6485, 0, false},
		{"slides 3/8 over 120 mm", slide(elastomer95, 120), slides, 0.345, 0.1725, 0.1725, false},
		{"slides 3/8 over 900 mm", slide(elastomer95, 900), slides, 1.84, 1.6494, 0.92, false},
		{"slides 1/4 over 900 mm", slide(elastomer64, 900), slides, 1.84, 1.713, 0.92, false},
	} {
		const off = 0.001
		worse := mm(-off)
		if m.more {
			worse = off
		}
		for _, c := range []struct {
			at           mm
			kept, nearly bool
		}{
			{m.kept - worse, true, true}, {m.kept + worse, false, true}, {m.nearly - worse, false, true}, {m.nearly + worse, false, false},
		} {
			if a := m.of(m.at(c.at)); a.Kept != c.kept || a.Nearly != c.nearly {
				t.Errorf("%s at %.4f: %+v", m.name, float64(c.at), a)
			}
		}
		if m.sticks > 0 {
			if m.at(m.sticks + off).Sticks {
				t.Errorf("%s sticks at %.4f", m.name, float64(m.sticks+off))
			}
			if v := m.at(m.sticks - off); !v.Sticks || v.Level(false) != cover.Warn || v.Level(true) != cover.Warn {
				t.Errorf("%s at %.4f: %v, %v", m.name, float64(m.sticks-off), v.Sticks, v.Level(false))
			}
		}
	}
}

// Levels: nearly kept is a note whatever else the kind has, missed a warning where the kind
// has something better, and a tube that sticks ranks behind one that does not.
func TestNearlyKeptIsANote(t *testing.T) {
	at := func(over mm) cover.Verdict { return judge(t, elastomer95, tight(over, 7), cover.Pass{}, 50) }
	for _, c := range []struct {
		over          mm
		with, without cover.Level
	}{
		{7.62, cover.Sound, cover.Sound}, {7.63, cover.Note, cover.Note}, {7.81, cover.Note, cover.Note},
		{7.82, cover.Warn, cover.Note},
	} {
		if v := at(c.over); v.Level(true) != c.with || v.Level(false) != c.without {
			t.Errorf("%g: %v and %v, want %v and %v", c.over, v.Level(true), v.Level(false), c.with, c.without)
		}
	}
	// 3.04 over with 2.488 of tape for a metre: 1/8 in tube leaves 0.14 mm of 2.0; 3/16 in
	// tube, 4.75 and 2.36 mm, leaves 1.71 and grips by 1.05 only. Each keeps one advice.
	wider := cover.Tube{SuppliedMM: 4.75, RecoveredMM: 2.36, WallMM: 0.89, Density: 1.3}
	narrow := elastomer32
	narrow.Density = 1.3
	cs := cover.Candidates([]cover.Tube{narrow, wider}, cover.Bundle{OverMM: 3.04, OverMaxMM: 3.142, TapeMM: 2.488, TapeMinMM: 2.404},
		cover.Pass{}, 1000)
	if a, b := cs[0].Verdict, cs[1].Verdict; a.Stops() || b.Stops() || a.Kept() != 1 || b.Kept() != 1 || !a.Sticks || b.Sticks {
		t.Fatalf("%+v\n%+v", a, b)
	}
	if order := cover.Rank(cs); order[0] != 1 {
		t.Error("a tube that nobody can slide on ranks first")
	}
}

// A wider bore never makes a verdict worse as long as it recovers as far, and a longer one
// never makes it better; from nothing to say to a warning is more than a hundredth.
func TestVerdictIsMonotone(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		tube := tubes(t)
		draw := func(name string, lo, hi mm) mm { return lo + mm(rapid.Float64Range(0, 1).Draw(t, name))*(hi-lo) }
		over := draw("over", 0.95*tube.RecoveredMM, 1.02*tube.SuppliedMM)
		b := cover.Bundle{OverMM: over, OverMaxMM: over * draw("max", 1, 1.05), TapeMM: over * draw("tape", 0.9, 1)}
		b.TapeMinMM = b.TapeMM * draw("min", 0.97, 1)
		p := cover.Pass{NominalMM: over * draw("pass", 1, 1.1)}
		length := draw("length", 10, 1500)
		at := func(tube cover.Tube, b cover.Bundle, length mm) cover.Verdict {
			v, ok := cover.Judge(tube, b, p, length)
			if !ok {
				t.Fatal("no verdict")
			}
			return v
		}
		v := at(tube, b, length)
		for _, kind := range []bool{true, false} {
			if longer := at(tube, b, length+draw("longer", 0, 800)); longer.Level(kind) < v.Level(kind) || longer.Kept() > v.Kept() {
				t.Fatalf("longer is better: %+v", longer)
			}
			wide := tube
			wide.SuppliedMM += draw("wider", 0, 5)
			if w := at(wide, b, length); w.Level(kind) > v.Level(kind) || w.Kept() < v.Kept() {
				t.Fatalf("wider is worse: %+v", w)
			}
			for _, by := range []mm{0.01, -0.01} {
				near := at(tube, cover.Bundle{OverMM: b.OverMM + by, OverMaxMM: b.OverMaxMM + by, TapeMM: b.TapeMM + by,
					TapeMinMM: b.TapeMinMM + by}, length)
				if tube.RecoveredMM > 0.5 && v.Level(kind) == cover.Sound && near.Level(kind) > cover.Note {
					t.Fatalf("%v at %s", near.Level(kind), fmt.Sprint(b.OverMM+by))
				}
			}
		}
	})
}
