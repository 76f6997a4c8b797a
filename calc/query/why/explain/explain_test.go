package explain_test

import (
	"math"
	"path/filepath"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/phase/bundle"
	"contralay/calc/phase/current"
	overphase "contralay/calc/phase/over"
	"contralay/calc/phase/planning"
	"contralay/calc/phase/wires"
	"contralay/calc/query/lists"
	"contralay/calc/query/why"
	"contralay/calc/query/why/explain"
	"contralay/calc/query/why/power"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/file"
	"contralay/model/unit"
)

// everyFigure is every figure that a sheet has a value for.
func everyFigure(s *sheet.Sheet) (out []why.Figure) {
	put := func(is bool, f why.Figure) {
		if is {
			out = append(out, f)
		}
	}
	for i := range s.Branches {
		id, b := s.H.Branches[i].ID, &s.Branches[i]
		laid := len(b.Layers) > 0
		put(true, why.Figure{What: "branch.length", Of: id})
		for _, w := range []string{"branch.over", "branch.least", "branch.most", "branch.tape", "branch.tapeleast", "branch.laid",
			"branch.bend"} {
			put(laid, why.Figure{What: w, Of: id})
		}
		put(len(b.Layers) > 1, why.Figure{What: "branch.room", Of: id})
		for _, w := range []string{"branch.hottest", "branch.under", "branch.surface"} {
			put(b.Warm.Known, why.Figure{What: w, Of: id})
		}
		for _, c := range b.Warm.Wires {
			put(true, why.Figure{What: "conductor.hot", Of: id, Part: s.H.Wires[c.Wire].ID})
		}
		put(b.Gram.Set, why.Figure{What: "branch.mass", Of: id})
		for k, l := range b.Layers {
			on := b.Make == model.MakeLaid && k > 0
			put(true, why.Figure{What: "layer.over", Of: id, K: k})
			put(true, why.Figure{What: "layer.tape", Of: id, K: k})
			put(l.LayMM > 0, why.Figure{What: "layer.lay", Of: id, K: k})
			put(l.LayMM > 0, why.Figure{What: "layer.turns", Of: id, K: k})
			put(l.FlatMM > 0, why.Figure{What: "layer.flat", Of: id, K: k})
			put(l.FlatMM > 0 && l.LayMM > 0, why.Figure{What: "layer.bent", Of: id, K: k})
			put(l.Fillers > 0, why.Figure{What: "layer.filler", Of: id, K: k})
			for _, w := range []string{"layer.stand", "layer.proud", "layer.takes", "layer.room"} {
				put(on && l.Closes, why.Figure{What: w, Of: id, K: k})
			}
			put(on && l.Closes && len(l.Members) > 2, why.Figure{What: "layer.gap", Of: id, K: k})
			for _, m := range l.Members {
				for _, w := range []string{"component.over", "component.loss", "component.run"} {
					put(m.Kind != sheet.OfFiller, why.Figure{What: w, Of: id, K: k, Part: m.ID})
				}
			}
		}
		for _, c := range b.Sheath.Others {
			for _, w := range []string{"tube.slide", "tube.worst", "tube.grip", "tube.full", "tube.cut", "tube.room"} {
				put(true, why.Figure{What: w, Of: id, Part: c.Tube.ID})
			}
			put(c.Verdict.Wraps, why.Figure{What: "tube.over", Of: id, Part: c.Tube.ID})
			put(c.Verdict.Wraps, why.Figure{What: "tube.wall", Of: id, Part: c.Tube.ID})
			put(c.Gram > 0, why.Figure{What: "tube.mass", Of: id, Part: c.Tube.ID})
		}
		if len(b.Sheath.Others) > 0 {
			for _, w := range []string{"sheath.pass", "sheath.passmost", "sheath.from", "sheath.to"} {
				put(true, why.Figure{What: w, Of: id})
			}
		}
		p := s.Proposals[bundle.PlanKey(s, i)]
		for k := range p.Options {
			put(true, why.Figure{What: "option.over", Of: id, K: k})
		}
		put(p.LeaversMM.Set, why.Figure{What: "wish.leavers", Of: id})
		put(s.H.Branches[i].DataApart.V && laid, why.Figure{What: "wish.apart", Of: id})
		put(p.UnitsMM.Set, why.Figure{What: "wish.units", Of: id})
		put(len(overphase.WiresOf(s, i)) > 0, why.Figure{What: "branch.wire", Of: id})
	}
	for k, w := range s.Wires {
		id := s.H.Wires[k].ID
		put(w.Cut > 0, why.Figure{What: "wire.cut", Of: id})
		put(w.Finished > 0, why.Figure{What: "wire.finished", Of: id})
		put(w.Finished > 0, why.Figure{What: "wire.takeup", Of: id})
		put(w.Finished > 0, why.Figure{What: "wire.flat", Of: id})
		put(w.Drop.Set, why.Figure{What: "wire.drop", Of: id})
		put(w.Drop.Set, why.Figure{What: "wire.circuit", Of: id})
		put(w.Dia.Known(), why.Figure{What: "component.over", Part: id})
		put(w.Bound.Set, why.Figure{What: "wire.bound", Of: id})
		put(w.HottestC.Set, why.Figure{What: "wire.hottest", Of: id})
		put(wires.Carries(s, k), why.Figure{What: "wire.heats", Of: id})
		put(w.Drop.Set && s.H.Wires[k].DropV.Set, why.Figure{What: "wire.lost", Of: id})
		for n := range power.LimitsOf(s, k) {
			put(true, why.Figure{What: "wire.limit", Of: id, K: n})
		}
	}
	for i, fd := range s.Feeds {
		id := s.H.Feeds[i].ID
		for _, w := range []string{"feed.load", "feed.most", "feed.opens"} {
			put(fd.Device.Set, why.Figure{What: w, Of: id})
		}
		for n, k := range current.AllWires(&fd) {
			v := current.ShortOf(s, i, n, k)
			put(fd.Device.Set && fd.Far[n] > 0, why.Figure{What: "short.far", Of: id, Part: s.H.Wires[k].ID})
			put(fd.Device.Set && v.Known, why.Figure{What: "short.lets", Of: id, Part: s.H.Wires[k].ID})
			put(fd.Device.Set && v.Known, why.Figure{What: "short.bears", Of: id, Part: s.H.Wires[k].ID})
		}
	}
	for i, u := range s.Units {
		id := s.H.Units[i].ID
		put(u.Pair.Known, why.Figure{What: "unit.ohm", Of: id})
		put(u.Pair.Known, why.Figure{What: "unit.loop", Of: id})
		put(u.Pair.Bus.Known, why.Figure{What: "unit.bus", Of: id})
		put(u.Pair.Bus.StubMM > 0, why.Figure{What: "unit.stub", Of: id})
		put(u.Pair.Bus.StubMM > 0, why.Figure{What: "unit.stubs", Of: id})
	}
	for _, t := range s.H.Terminations {
		_, has := s.Cat.Boot(t.Boot.V)
		put(has, why.Figure{What: "boot.least", Of: t.ID})
		put(has, why.Figure{What: "boot.most", Of: t.ID})
		for i, b := range s.H.Branches {
			met := has && (b.From == t.ID || b.To == t.ID) && s.Branches[i].OverMM > 0
			put(met, why.Figure{What: "boot.holds", Of: t.ID, Part: b.ID})
			put(met, why.Figure{What: "boot.fills", Of: t.ID, Part: b.ID})
		}
		l := overphase.LoopRoomOf(s, s.Index.Termination[t.ID])
		put(true, why.Figure{What: "loop.length", Of: t.ID})
		for _, w := range []string{"loop.room", "loop.bow", "loop.turn"} {
			put(l.Known && l.Fits, why.Figure{What: w, Of: t.ID})
		}
		put(l.Known && !l.Fits, why.Figure{What: "loop.longest", Of: t.ID})
	}
	for i, b := range s.Branches {
		id := s.H.Branches[i].ID
		put(len(b.Layers) > 0, why.Figure{What: "branch.floor", Of: id})
		for _, c := range b.Covers {
			put(c.ThickMM > 0, why.Figure{What: "cover.over", Of: id, K: c.Index})
			put(c.Tube.Set, why.Figure{What: "cover.slide", Of: id, K: c.Index})
			put(c.Tube.Set, why.Figure{What: "cover.least", Of: id, K: c.Index})
			put(c.Tube.Set, why.Figure{What: "cover.grip", Of: id, K: c.Index})
			put(c.Tube.Set, why.Figure{What: "cover.cut", Of: id, K: c.Index})
		}
	}
	put(true, why.Figure{What: "loom.wire"})
	for _, r := range lists.ReelList(s) {
		put(true, why.Figure{What: "reel.need", Of: r.Spec, Part: r.Size})
	}
	put(s.Totals.Gram.Set, why.Figure{What: "loom.mass"})
	return out
}

// Every figure of every sheet has its explanation, whose own arithmetic on its own
// inputs gives the figure; every input says where it comes from.
func TestEveryFigureIsExplained(t *testing.T) {
	cat, err := catalogue.Default()
	if err != nil {
		t.Fatal(err)
	}
	met := map[string]int{}
	for _, name := range []string{"testdata/example.toml", "testdata/trunk.toml", "testdata/feeds.toml", "cmd/contralay/demo.toml"} {
		d, err := file.Load(filepath.Join("..", "..", "..", "..", name))
		if err != nil {
			t.Fatal(err)
		}
		h := &d.Harness
		if strings.Contains(name, "demo") { // a branch that keeps data apart
			h = h.EditBranch(0, func(b *model.Branch) {
				b.DataApart = model.Some(true)
				b.Covers = []model.Cover{{What: model.CoverTape}, {What: model.CoverBraid, ThickMM: model.Some[unit.Millimetre](0.25)},
					{What: model.CoverSheath, Part: model.Some("AS23053/16 15.9")},
					{What: model.CoverSleeve, Part: model.Some("AS23053/16 19.0"), FromMM: model.Some[unit.Millimetre](100),
						ToMM: model.Some[unit.Millimetre](200)}}
			})
			h = h.EditTermination(0, func(t *model.Termination) { t.LoopMM = model.Some[unit.Millimetre](40) })
		}
		s := calc.Complete(h, cat, nil)
		for i := range s.Branches { // options of what the file lays, too
			if s.Branches[i].Make == model.MakeLaid {
				planning.Adopt(s, bundle.PlanKey(s, i), planning.Propose(s, i))
			}
		}
		e := explain.Of(s)
		for _, f := range everyFigure(s) {
			w, ok := e.Why(f)
			if !ok {
				t.Errorf("%s: %+v is not explained", name, f)
				continue
			}
			met[f.What]++
			tol := 1e-5
			if w.Measure == why.Celsius {
				tol = 1e-4 // the balance is good to that, in degrees over some tens
			}
			// The hull of a tape diameter is integrated in 7200 steps: 1e-5 mm.
			if got := w.Made(); math.Abs(got-w.Value) > tol*math.Max(1, math.Abs(w.Value)) {
				t.Errorf("%s: %s is %v, its explanation comes to %v from %+v", name, w.Name, w.Value, got, w.In)
			}
			if w.Name == "" || w.Says == "" || len(w.In) == 0 || !w.Standing.Known() {
				t.Errorf("%s: %+v says too little: %+v", name, f, w)
			}
			for _, in := range w.In {
				if in.Name == "" || in.Source == "" || !in.Standing.Known() || in.Source == "not known" {
					t.Errorf("%s: %s: input %+v says too little", name, w.Name, in)
				}
			}
		}
	}
	for _, n := range explain.FigureNames() {
		if met[n] == 0 {
			t.Errorf("no sheet here has a %s", n)
		}
	}
}

// An explanation is of its inputs: change one and it comes to something else.
func TestExplanationsHangOnTheirInputs(t *testing.T) {
	s := calctest.Laid(t, "example")
	e := explain.Of(s)
	for _, f := range everyFigure(s) {
		w, ok := e.Why(f)
		if !ok {
			continue
		}
		was, moved := w.Made(), false
		for k := range w.In {
			keep := w.In[k].Value
			for _, v := range []float64{keep*1.5 + 11, keep * 0.5} {
				w.In[k].Value = v
				moved = moved || w.Made() != was
			}
			w.In[k].Value = keep
		}
		if !moved {
			t.Errorf("%s comes to %v whatever its inputs are", w.Name, was)
		}
	}
}

// How warm a wire gets hangs on its current most where it heats the others: of nine amperes the heat grows by 2 % with 1 %, while
// 1 % of insulation or of lay hardly moves it.
func TestMostOfHeat(t *testing.T) {
	s := calctest.Carrying(t, 20, "", []string{"22 9", "22 0.1", "22 0.1"}, nil, "")
	w, ok := explain.Figure(s, why.Figure{What: "wire.hottest", Of: "w0"})
	if !ok || !strings.HasPrefix(w.Most, "its current: 1 % more of it makes this figure ") || !strings.HasSuffix(w.Most, " % larger") {
		t.Errorf("%v: %q", ok, w.Most)
	}
}

// What it says would change a figure most does so.
func TestMost(t *testing.T) {
	s := calctest.Laid(t, "example")
	for _, c := range []struct {
		f    why.Figure
		want string
	}{
		{why.Figure{What: "branch.over", Of: "T1"}, "the diameter of AS22759/32 20"},
		{why.Figure{What: "wire.drop", Of: "101"}, "its current: 1 % more of it makes this figure 1.0 % larger"},
		{why.Figure{What: "wire.circuit", Of: "101"}, "its current: 1 % more of it makes this figure"},
		{why.Figure{What: "layer.turns", Of: "T1", K: 1}, "the length of T1"},
	} {
		w, ok := explain.Figure(s, c.f)
		if !ok || !strings.Contains(w.Most, c.want) {
			t.Errorf("%+v: %q, want %q", c.f, w.Most, c.want)
		}
	}
	over := func(size string) float64 { // with 1 % more of one size
		for k, w := range s.H.Wires {
			if w.Size == size {
				h := s.H.SetReel(w.Spec, size, 1.01*s.Wires[k].Dia.Nominal)
				return float64(calc.Build(h, s.Cat, nil).Branches[0].OverMM)
			}
		}
		return 0
	}
	if a, b := over("20"), over("22"); a <= b {
		t.Errorf("1 %% more of 20 makes T1 %v, of 22 %v: the explanation names 20", a, b)
	}
}
