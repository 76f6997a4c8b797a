package run_test

import (
	"fmt"
	"reflect"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/phase/built"
	runquery "contralay/calc/query/run"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// Every step of a run is gone through piece by piece: the first that is open goes up by one each time, a step is done with
// its last piece and not before (but for a layer, which is measured first), and what is written says who, when and what of
// that very mark.
func TestPieceByPiece(t *testing.T) {
	for _, name := range []string{"example", "feeds"} {
		s := calctest.Laid(t, name)
		facts := built.Facts(s)
		for _, r := range runquery.Run(s) {
			b := &model.Build{Serial: "1", EachTest: model.Some(true)}
			all := runquery.Pieces(s, r)
			if n := wantPieces(s, r); n != len(all) {
				t.Errorf("%s: %s has %d pieces, want %d", name, r.Key, len(all), n)
			}
			if len(all) == 0 || all[0].Check.Kind != runquery.NoCheck {
				continue
			}
			keys := map[string]bool{}
			for k, p := range all {
				keys[p.Key] = true
				if got := r.FirstOpen(b, all); got != k || r.Has(b, p) || r.In(b) {
					t.Fatalf("%s: %s: before piece %d the first open is %d, done %v, in %v", name, r.Key, k, got, r.Has(b, p), r.In(b))
				}
				r.Begin(b, all, []runquery.Piece{p}, facts, "2026-05-11 08:00", "7")
				if !r.Has(b, p) {
					t.Fatalf("%s: %s: piece %d was begun and is not done", name, r.Key, k)
				}
			}
			if len(keys) != len(all) {
				t.Errorf("%s: %s: two pieces of one key", name, r.Key)
			}
			if got := r.FirstOpen(b, all); got != len(all) || r.In(b) != (r.Kind != runquery.LayStep) {
				t.Errorf("%s: %s: at its end the first open is %d of %d, in %v", name, r.Key, got, len(all), r.In(b))
			}
			r.Tick(b, facts, "2026-05-11 08:00", "7")
			if !r.In(b) {
				t.Errorf("%s: %s is ticked and not done", name, r.Key)
			}
			for _, mark := range r.Marks() {
				at := slices.IndexFunc(b.Steps, func(x model.Ticked) bool { return x.Key == mark && !x.Begun() })
				f := slices.IndexFunc(facts, func(f built.Fact) bool { return f.Key == mark })
				if at < 0 || b.Steps[at].At.V != "2026-05-11 08:00" || b.Steps[at].By.V != "7" {
					t.Fatalf("%s: %s: %+v", name, mark, b.Steps)
				}
				if f < 0 || !reflect.DeepEqual(b.Steps[at].What.V, facts[f].What) || !b.Steps[at].What.Set {
					t.Errorf("%s: what %s made is %+v", name, mark, b.Steps[at].What)
				}
				if f >= 0 && r.Place(facts, mark) != facts[f].At {
					t.Errorf("%s: %s is about %q", name, mark, r.Place(facts, mark))
				}
			}
		}
		for _, r := range runquery.Run(s) {
			for _, x := range r.Ticks(facts, "", "") {
				if x.At.Set || x.By.Set {
					t.Errorf("%s: nobody at no time ticks %+v", r.Key, x)
				}
				if r.Kind == runquery.HoldStep && x.What.Set && len(x.What.V.Members) == 0 {
					t.Errorf("hold %s makes %+v", r.Key, x.What)
				}
			}
			if r.Kind == runquery.HoldStep && r.Name != "" && r.Place(facts, r.Key) != r.Name {
				t.Errorf("hold %s is called %q", r.Key, r.Place(facts, r.Key))
			}
			if r.Place(nil, "no such mark") != "no such mark" && r.Name == "" {
				t.Error("a mark of nothing has a place")
			}
		}
	}
}

// wantPieces counts the pieces of a step from the sheet: wires of a batch, members of a layer, wires and drains in cavities
// with the cavities that take a plug, tests; none of what is one act.
func wantPieces(s *sheet.Sheet, r runquery.RunStep) int {
	n := 0
	switch r.Kind {
	case runquery.CutStep:
		return len(r.Cut.Wires)
	case runquery.LayStep:
		return len(s.Branches[s.Index.Branch[r.Of]].Layers[r.Layer].Members)
	case runquery.PinStep:
		term := &s.Terms[s.Index.Termination[r.Of]]
		for _, c := range term.Cavities {
			switch st := term.State[c]; {
			case len(st.Wires) > 0:
				n += len(st.Wires)
			case st.Drain != "" || term.Sealed:
				n++
			}
		}
		return n
	}
	return len(runquery.Tests(s, r))
}

// What goes with a piece is told a second time, from the words of Group: off one spool, one layer, one end, one hold; what is
// done and what lies beyond a hold is not in it. Whole steps are done in turn, so that every state of a run is met.
func TestGroupOfAPiece(t *testing.T) {
	met := map[runquery.StepKind]int{}
	for _, name := range []string{"example"} {
		s := calctest.Laid(t, name)
		facts := built.Facts(s)
		steps := runquery.Run(s)
		b := &model.Build{Serial: "1", EachTest: model.Some(true)}
		for at, r := range steps {
			all := runquery.Pieces(s, r)
			if len(all) == 0 {
				all = []runquery.Piece{{}}
			}
			for n, p := range all {
				if n > 0 && n < len(all)-1 && n%5 != 0 {
					continue
				}
				got, want := runquery.Group(s, steps, b, at, p), groupOf(s, steps, b, at, p)
				if fmt.Sprint(got) != fmt.Sprint(want) {
					t.Fatalf("%s: %s, piece %d: %d go with it, want %d\n%v\n%v", name, r.Key, n, len(got), len(want), got, want)
				}
				met[r.Kind]++
				if p.Key != "" && p.Check.Kind == runquery.NoCheck && n%2 == 0 {
					r.Begin(b, all, []runquery.Piece{p}, facts, "", "")
				}
			}
			if r.Kind != runquery.HoldStep && at%3 == 0 {
				r.Tick(b, facts, "", "")
			}
		}
	}
	for _, k := range []runquery.StepKind{runquery.CutStep, runquery.LayStep, runquery.PinStep, runquery.ThreadStep,
		runquery.ShrinkStep, runquery.HoldStep, runquery.LotStep} {
		if met[k] == 0 {
			t.Errorf("no step of kind %v was met", k)
		}
	}
}

func groupOf(s *sheet.Sheet, steps []runquery.RunStep, b *model.Build, at int, p runquery.Piece) []runquery.Item {
	var out []runquery.Item
	stage := func(n int) (holds int) { // how many holds stand before a step
		for _, r := range steps[:n] {
			if r.Kind == runquery.HoldStep {
				holds++
			}
		}
		return holds
	}
	spool := func(id string) string {
		w := s.H.Wires[s.Index.Wire[id]]
		return w.Spec + "/" + w.Size + "/" + w.Colour.V
	}
	r := steps[at]
	for n, x := range steps {
		if x.Kind != r.Kind || stage(n) != stage(at) {
			continue
		}
		switch r.Kind {
		case runquery.CutStep:
			for k, w := range x.Cut.Wires {
				if id := s.H.Wires[w].ID; spool(id) == spool(p.ID) && !b.Did("cut "+id) {
					out = append(out, runquery.Item{Step: n, Piece: runquery.Pieces(s, x)[k]})
				}
			}
		case runquery.ThreadStep, runquery.ShrinkStep:
			if x.Put.From == r.Put.From && !b.Did(x.Key) {
				out = append(out, runquery.Item{Step: n})
			}
		default:
			if n != at {
				continue
			}
			pieces := runquery.Pieces(s, x)
			if r.Kind != runquery.HoldStep && r.Kind != runquery.PullStep && len(pieces) == 0 && !b.Did(x.Key) {
				out = append(out, runquery.Item{Step: n})
			}
			for _, o := range pieces {
				switch kind := o.Check.Kind; {
				case kind == runquery.NoCheck && (b.Did(x.Key) || slices.Contains(b.SoFar(x.Key), o.Key)):
				case kind == runquery.Isolated || kind == runquery.Drops:
				case kind != runquery.NoCheck && (b.Did(x.Key) || len(b.Tests) > 0 ||
					strings.Split(o.Check.From, ":")[0] != strings.Split(p.Check.From, ":")[0]):
				default:
					out = append(out, runquery.Item{Step: n, Piece: o})
				}
			}
		}
	}
	return out
}

// Each kind of test by hand: what it is read in, whether it wants a number, which way its limit goes, where its record has the
// reading; the last sample ticks the step.
func TestKindsOfTest(t *testing.T) {
	for _, c := range []struct {
		kind          runquery.CheckKind
		unit          string
		least, number bool
		low, high     bool // 9 and 11 against a limit of 10
		where         func(model.Test) (name, reading any)
	}{
		{runquery.Rings, "ohm", false, false, true, false, func(x model.Test) (any, any) { return x.Net.V, x.Ohm.V }},
		{runquery.Silent, "", false, false, true, false, func(x model.Test) (any, any) { return x.Net.V, x.Ohm.V }},
		{runquery.Isolated, "Mohm", true, true, false, true, func(x model.Test) (any, any) { return x.Net.V, x.Megohm.V }},
		{runquery.Drops, "V", false, true, true, false, func(x model.Test) (any, any) { return x.Feed.V, x.Volt.V }},
		{runquery.Pulled, "N", true, false, false, true, func(x model.Test) (any, any) { return x.Pull.V, x.Newton.V }},
	} {
		check := runquery.Check{Kind: c.kind, Name: "X", Limit: 10, Sample: 1}
		if check.Unit() != c.unit || check.AtLeast() != c.least || check.NeedsReading() != c.number {
			t.Errorf("%d: %q, at least %v, needs a number %v", c.kind, check.Unit(), check.AtLeast(), check.NeedsReading())
		}
		if check.Passes(9) != c.low || check.Passes(11) != c.high || !check.Passes(10) {
			t.Errorf("%d: 9 passes %v, 11 %v, 10 %v", c.kind, check.Passes(9), check.Passes(11), check.Passes(10))
		}
		if free := (runquery.Check{Kind: c.kind, Name: "X"}); !free.Passes(0.1) || !free.Passes(1e9) || free.Record("s",
			model.Some(1.0), "").Limit.Set {
			t.Errorf("%d: without a limit something fails", c.kind)
		}
		rec := check.Record("step", model.Some(7.5), "bent")
		if name, reading := c.where(rec); name != "X" || reading != 7.5 || rec.Limit.V != 10 || rec.Fault.V != "bent" ||
			rec.Step.V != "step" {
			t.Errorf("%d: %+v", c.kind, rec)
		}
		if !check.Is(rec) || (runquery.Check{Kind: c.kind, Name: "Y"}).Is(rec) || check.Reading(rec).V != 7.5 {
			t.Errorf("%d: its own record is another's", c.kind)
		}
		b := &model.Build{}
		for _, do := range []struct {
			read  float64
			fault string
			by    string
			want  runquery.Result
		}{{10, "", "", runquery.Passed}, {10, "bent", "", runquery.Failed}, {map[bool]float64{true: 9, false: 11}[c.least], "", "",
			runquery.Failed}, {10, "", "", runquery.Passed}, {10, "bent", "9", runquery.Conceded}} {
			b.Tests = append(b.Tests, check.Record("step", model.Some(do.read), do.fault))
			if do.by != "" {
				b.Apart = append(b.Apart, model.Deviation{At: "X", Step: model.Some("step"), By: model.Some(do.by)})
			}
			if got, last := check.Result(b, "step"); got != do.want || check.Reading(last).V != do.read {
				t.Errorf("%d: %v comes to %v", c.kind, do, got)
			}
			if got, _ := check.Result(b, "other"); got != runquery.Untested {
				t.Error("a test counts at another step")
			}
		}
	}
	s := calctest.Laid(t, "example")
	k := slices.IndexFunc(runquery.Run(s), func(r runquery.RunStep) bool { return r.Kind == runquery.PullStep })
	r := runquery.Run(s)[k]
	b, all := &model.Build{}, runquery.Pieces(s, r)
	for n, p := range all {
		if r.In(b) || r.FirstOpen(b, all) != n || p.Key != fmt.Sprintf("%s, sample %d", r.Of, n+1) {
			t.Fatalf("sample %d: %q, first open %d", n, p.Key, r.FirstOpen(b, all))
		}
		r.Test(b, all, p.Check, model.Some(p.Check.Limit+1), "", "M1", "2026-05-11 08:00", "7")
		if x := b.Tests[n]; x.Instrument.V != "M1" || x.At.V != "2026-05-11 08:00" || x.By.V != "7" || x.Newton.V != p.Check.Limit+1 {
			t.Errorf("%+v", x)
		}
	}
	if !r.In(b) || len(all) != 3 {
		t.Errorf("after %d samples the step is done: %v", len(all), r.In(b))
	}
	r.Test(b, all, all[0].Check, model.Opt[float64]{}, "", "", "", "")
	if x := b.Tests[3]; x.Instrument.Set || x.At.Set || x.By.Set || x.Newton.Set {
		t.Errorf("what was not said is written: %+v", x)
	}
}

// Where a wire goes beyond a branch is found a second time by walking from its from end along its way.
func TestAwayByWalking(t *testing.T) {
	for _, name := range calctest.Files("demo", "whole", "trunk", "example") {
		s := calc.Build(calctest.Load(t, name+".toml"), calctest.Catalogue(t), nil)
		for k := range s.H.Wires {
			w := &s.H.Wires[k]
			place, _, _ := s.Index.Places(w)
			on := map[int]bool{}
			for _, i := range s.Wires[k].Path {
				on[i] = true
				wantTo, wantFrom := w.From.V, w.To.V
				if s.H.Branches[i].From == place { // it comes in at the from end, so its to end lies beyond
					wantTo, wantFrom = w.To.V, w.From.V
					place = s.H.Branches[i].To
				} else {
					place = s.H.Branches[i].From
				}
				if to, from := runquery.Away(s, i, k); to != wantTo || from != wantFrom {
					t.Errorf("%s: %s in %s goes to %q from %q, want %q, %q", name, w.ID, s.H.Branches[i].ID, to, from, wantTo, wantFrom)
				}
			}
			for i := range s.H.Branches {
				if to, from := runquery.Away(s, i, k); !on[i] && to+from != "" {
					t.Errorf("%s: %s runs not in %s and goes to %q", name, w.ID, s.H.Branches[i].ID, to)
				}
			}
		}
	}
}

// Two readings of a layer, one of a centre before it was built up; a branch that is not there has three, a layer past the last one.
func TestMeasuredNowhereByHand(t *testing.T) {
	s := calctest.Laid(t, "example")
	id := s.H.Branches[0].ID
	s.H = s.H.EditBuild("1", func(b *model.Build) {
		b.Readings = []model.Reading{{Branch: id, Layer: 0, OverMM: []unit.Millimetre{5, 5}}, {Branch: "gone",
			OverMM: []unit.Millimetre{4, 4}, BareMM: []unit.Millimetre{3}},
			{Branch: id, Layer: len(s.Branches[0].Layers), OverMM: []unit.Millimetre{9}}}
	})
	if n := runquery.MeasuredNowhere(s); n != 4 {
		t.Errorf("%d readings are of nothing, want 4", n)
	}
}
