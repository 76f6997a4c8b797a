package calc_test

import (
	"path/filepath"
	"reflect"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"contralay/calc"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/edittest"
	"contralay/model/file"
	"contralay/model/unit"
)

// edit is one change of a kind that a person makes, drawn at random.
func edit(t *rapid.T, h *model.Harness) *model.Harness {
	wire := rapid.IntRange(0, len(h.Wires)-1).Draw(t, "wire")
	branch := rapid.IntRange(0, len(h.Branches)-1).Draw(t, "branch")
	other := rapid.IntRange(0, len(h.Wires)-1).Draw(t, "other")
	w := func(f func(w *model.Wire)) *model.Harness { return h.EditWire(wire, f) }
	b := func(f func(b *model.Branch)) *model.Harness { return h.EditBranch(branch, f) }
	n := *h
	switch rapid.IntRange(0, 26).Draw(t, "kind") {
	case 0, 1, 2:
		return w(func(w *model.Wire) {
			w.Amps = model.Some(unit.Ampere(rapid.Float64Range(0, 12).Draw(t, "amps")))
		})
	case 3:
		return w(func(w *model.Wire) { w.Size = rapid.SampledFrom([]string{"24", "22", "20", "16"}).Draw(t, "size") })
	case 4:
		return w(func(w *model.Wire) { w.Colour = model.Some("3") })
	case 5:
		return w(func(w *model.Wire) { w.Role = model.Some(model.RoleSpare) })
	case 6:
		return w(func(w *model.Wire) { w.From, w.To = h.Wires[other].From, h.Wires[other].To })
	case 7:
		return w(func(w *model.Wire) { w.Return = model.Some(h.Wires[other].ID) })
	case 8:
		return w(func(w *model.Wire) { w.OnS, w.PeriodS = model.Some[unit.Second](1), model.Some[unit.Second](4) })
	case 9:
		return w(func(w *model.Wire) { w.To = model.Opt[string]{} })
	case 10:
		return b(func(b *model.Branch) {
			b.LengthMM = unit.Millimetre(rapid.IntRange(10, 900).Draw(t, "length"))
		})
	case 11:
		return b(func(b *model.Branch) { b.Environment = []model.Surrounding{model.Flexing, model.Fuel} })
	case 12:
		return b(func(b *model.Branch) {
			b.Covers = []model.Cover{{What: model.CoverSheath, Part: model.Some("AS23053/16 4.8")}}
		})
	case 13:
		return b(func(b *model.Branch) { b.AmbientC = model.Some[unit.Celsius](110) })
	case 14:
		m, err := h.Move(branch, h.Wires[wire].ID, rapid.IntRange(-1, len(h.Branches[branch].Layers)).Draw(t, "layer"))
		if err != nil {
			return h
		}
		return m
	case 15:
		return h.SetReel(h.Wires[wire].Spec, h.Wires[wire].Size, 1.2)
	case 16:
		n.Rules.ZoneMM = model.Some(unit.Millimetre(rapid.IntRange(5, 40).Draw(t, "zone")))
	case 17:
		n.Head.SupplyV = model.Some(unit.Volt(rapid.SampledFrom([]float64{12, 13.8, 61}).Draw(t, "supply")))
	case 18:
		if m, err := h.RemoveWire(wire); err == nil && len(m.Wires) > 1 {
			return m
		}
		return h
	case 19:
		like := h.Wires[wire]
		like.ID = h.NextID(like.ID)
		return h.AddWire(like, nil)
	case 20:
		if len(h.Splices) > 0 {
			n.Splices = append([]model.Splice{}, h.Splices...)
			n.Splices[0].OffsetMM = model.Some[unit.Millimetre](90)
		}
	case 22:
		return w(func(w *model.Wire) {
			w.To, w.Role, w.CappedAt = model.Opt[string]{}, model.Some(model.RoleSpare), model.Some(h.Branches[branch].To)
		})
	case 23:
		return b(func(b *model.Branch) {
			b.Covers = []model.Cover{{What: model.CoverTape}, {What: model.CoverBraid}, {What: model.CoverSheath},
				{What: model.CoverSleeve, Part: model.Some("AS23053/16 9.5"), FromMM: model.Some[unit.Millimetre](20)}}
		})
	case 24:
		return h.EditPart("AS23053/16 "+rapid.SampledFrom([]string{"3.2", "9.5", "15.9"}).Draw(t, "tube"), func(p *model.Part) {
			p.WallMM = model.Some(unit.Millimetre(rapid.Float64Range(0.5, 2).Draw(t, "wall")))
		})
	case 25:
		return h.EditTermination(rapid.IntRange(0, len(h.Terminations)-1).Draw(t, "termination"), func(t *model.Termination) {
			t.Firewall, t.LoopMM, t.Aliases = model.Some(true), model.Some[unit.Millimetre](30), map[string][]string{"1": {"+"}}
		})
	case 26:
		n.Rules.FillerOf, n.Rules.Adhesive = model.Some("polyethylene"), model.Some("hot melt")
	case 21:
		return h.AddFeed(model.Feed{Device: model.Some(model.ProtectionBlade), Amps: model.Some[unit.Ampere](5)}, h.Wires[wire].ID)
	}
	return &n
}

// Whatever a person changes, one after the other, and whichever lay-ups come in
// between, a sheet built on the one before it is the sheet built from nothing.
func TestBuiltOnAnotherIsBuiltFromNothing(t *testing.T) {
	cat, err := catalogue.Default()
	if err != nil {
		t.Fatal(err)
	}
	start := map[string]*sheet.Sheet{}
	for _, name := range []string{"example", "feeds", "demo"} {
		d, err := file.Load(filepath.Join("..", "testdata", name+".toml"))
		if err != nil {
			t.Fatal(err)
		}
		start[name] = calc.Complete(&d.Harness, cat, nil)
	}
	rapid.Check(t, func(t *rapid.T) {
		s := start[rapid.SampledFrom([]string{"example", "example", "feeds", "feeds", "demo"}).Draw(t, "file")]
		for range rapid.IntRange(1, 5).Draw(t, "edits") {
			h := edit(t, s.H)
			s = calc.Build(h, cat, s)
			sameSheets(t, s, calc.Build(h, cat, withProposals(s.Proposals)))
			if rapid.IntRange(0, 3).Draw(t, "plan") == 0 && len(s.Branches) < 12 { // a lay-up comes in
				s = calc.Complete(h, cat, s)
				sameSheets(t, s, calc.Build(h, cat, withProposals(s.Proposals)))
			}
		}
	})
}

// The same of every edit that there is: of the tree, of names, of what is removed.
func TestBuiltOnAnotherAfterAnyEdit(t *testing.T) {
	cat, err := catalogue.Default()
	if err != nil {
		t.Fatal(err)
	}
	start := map[string]*sheet.Sheet{}
	for _, name := range []string{"example", "feeds", "every-key"} {
		d, err := file.Load(filepath.Join("..", "testdata", name+".toml"))
		if err != nil {
			t.Fatal(err)
		}
		start[name] = calc.Complete(&d.Harness, cat, nil)
	}
	rapid.Check(t, func(t *rapid.T) {
		s := start[rapid.SampledFrom([]string{"example", "feeds", "every-key"}).Draw(t, "file")]
		edittest.Some(t, s.H, rapid.IntRange(1, 6).Draw(t, "edits"), func(_ string, _, is *model.Harness) {
			s = calc.Build(is, cat, s)
			sameSheets(t, s, calc.Build(is, cat, withProposals(s.Proposals)))
		})
	})
}

// withProposals is a prior that knows proposals and nothing else.
func withProposals(p map[string]sheet.Proposal) *sheet.Sheet {
	return &sheet.Sheet{H: &model.Harness{}, Proposals: p}
}

// everything lets a difference be told of what a package keeps to itself, too.
var everything = cmp.Exporter(func(reflect.Type) bool { return true })

func sameSheets(t interface {
	Helper()
	Fatalf(format string, args ...any)
}, a, b *sheet.Sheet) {
	t.Helper()
	clean := func(s *sheet.Sheet) []sheet.Branch {
		out := append([]sheet.Branch{}, s.Branches...)
		for i := range out {
			out[i].PlanKey = "" // made when it is asked for
		}
		return out
	}
	for _, c := range []struct {
		name string
		x, y any
	}{
		{"wires", a.Wires, b.Wires}, {"units", a.Units, b.Units}, {"terminations", a.Terms, b.Terms}, {"splices", a.Splices, b.Splices},
		{"feeds", a.Feeds, b.Feeds},
		{"totals", a.Totals, b.Totals}, {"snags", a.Snags, b.Snags},
	} {
		if !reflect.DeepEqual(c.x, c.y) {
			t.Fatalf("%s differ: %s", c.name, cmp.Diff(c.y, c.x, everything))
		}
	}
	x, y := clean(a), clean(b)
	for i := range x {
		if !reflect.DeepEqual(x[i], y[i]) {
			t.Fatalf("branch %s differs: %s", a.H.Branches[i].ID, cmp.Diff(y[i], x[i], everything))
		}
	}
}
