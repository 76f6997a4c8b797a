package bundle

import (
	"testing"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// A filler is as thick as it is given, else as the thinnest piece of its layer; a layer without one has none.
func TestSizeOfAFiller(t *testing.T) {
	h := &model.Harness{Wires: []model.Wire{{ID: "a"}, {ID: "b"}, {ID: "c"}}}
	s := &sheet.Sheet{H: h, Index: model.NewIndex(h), Wires: []sheet.Wire{{Dia: sheet.Dia{Nominal: 2}}, {Dia: sheet.Dia{Nominal: 1.2}},
		{Dia: sheet.Dia{Nominal: 3}}}}
	for _, c := range []struct {
		given   unit.Millimetre
		fillers int
		ids     []string
		want    unit.Millimetre
	}{{1.5, 1, []string{"a"}, 1.5}, {0.9, 0, []string{"a"}, 0.9}, {0, 0, []string{"a", "b"}, 0}, {0, 1, []string{"a", "b", "c"}, 1.2},
		{0, 2, []string{"c", "a"}, 2}, {0, 1, nil, 0}} {
		ml := model.Layer{FillerMM: model.Some(c.given), Fillers: model.Some(c.fillers)}
		if got := fillerMM(s, ml, c.ids); got != c.want {
			t.Errorf("%+v: %v", c, got)
		}
	}
}

// What a bend made of the layers before goes, and the prior keeps its own; where nothing is bent the layers stay as they are.
func TestStraightened(t *testing.T) {
	prior := []sheet.Layer{{OverMM: 3, BentMM: 0.2}, {OverMM: 4, FlatMM: 0.3}, {OverMM: 5}}
	out := &sheet.Branch{Layers: prior}
	straighten(out)
	for k, l := range out.Layers {
		if l.BentMM != 0 || l.FlatMM != 0 || l.OverMM != prior[k].OverMM {
			t.Errorf("%+v", l)
		}
	}
	if prior[0].BentMM != 0.2 || prior[1].FlatMM != 0.3 {
		t.Errorf("the prior is changed: %+v", prior)
	}
	flat := prior[2:]
	if out = (&sheet.Branch{Layers: flat}); &out.Layers[0] != &flat[0] {
		t.Fatal("not the same list")
	}
	if straighten(out); &out.Layers[0] != &flat[0] {
		t.Error("copied without need")
	}
	// A branch whose file has no bend any more is straight again.
	h := &model.Harness{Branches: []model.Branch{{ID: "T"}}}
	s := &sheet.Sheet{H: h, Branches: []sheet.Branch{{Layers: prior, OverMM: 5}}}
	if bend(s, 0); s.Branches[0].Layers[0].BentMM != 0 || s.Branches[0].Layers[1].FlatMM != 0 {
		t.Errorf("still bent: %+v", s.Branches[0].Layers)
	}
	if b := s.Branches[0].Bend; b.MinMM != 30 || b.Rule != "6 x OD" {
		t.Errorf("%+v", b)
	}
}
