package bundle

import (
	"testing"

	"contralay/calc/formula/lay"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// The one filler of five equal ones is the rod in their middle where its size is not given or within 0.05 mm of that; of others it is a
// piece
// more.
func TestRodOfFiveByHand(t *testing.T) {
	h := &model.Harness{}
	s := &sheet.Sheet{H: h, Wires: make([]sheet.Wire, 6)}
	for k, id := range []string{"a", "b", "c", "d", "e", "f"} {
		h.Wires = append(h.Wires, model.Wire{ID: id})
		s.Wires[k].Dia = sheet.Dia{Nominal: 2, Min: 2, Max: 2}
	}
	s.Wires[5].Dia.Nominal = 2.1
	s.Index = model.NewIndex(h)
	rod := 2 * unit.Millimetre(lay.RodOfFive)
	for _, c := range []struct {
		of   []string
		mm   unit.Millimetre
		want bool
	}{
		{[]string{"a", "b", "c", "d", "e"}, 0, true}, {[]string{"a", "b", "c", "d", "e"}, rod + 0.0499, true}, {[]string{"a", "b", "c",
			"d", "e"}, rod - 0.0499, true},
		{[]string{"a", "b", "c", "d", "e"}, rod + 0.051, false}, {[]string{"a", "b", "c", "d", "e"}, rod - 0.051, false}, {[]string{"a",
			"b", "c", "d"}, 0, false},
		{[]string{"a", "b", "c", "d", "f"}, 0, false}, {[]string{"a", "b", "c", "d", "e", "f"}, 0, false},
	} {
		l := model.Layer{Of: c.of, Fillers: model.Some(1)}
		if c.mm > 0 {
			l.FillerMM = model.Some(c.mm)
		}
		if got := isRod(s, l); got != c.want {
			t.Errorf("%v with %v mm: a rod %v", c.of, c.mm, got)
		}
	}
}

// What an earlier bend left in the layers is taken away where there is none any more.
func TestBendIsForgotten(t *testing.T) {
	h := &model.Harness{Branches: []model.Branch{{ID: "T"}}}
	s := &sheet.Sheet{H: h, Branches: []sheet.Branch{{OverMM: 4, Layers: []sheet.Layer{{Members: []sheet.Member{{D: 1}}, BentMM: 9,
		FlatMM: 8},
		{Members: []sheet.Member{{D: 0.5}}, BentMM: 7, FlatMM: 6}}}}}
	bend(s, 0)
	for k, l := range s.Branches[0].Layers {
		if l.BentMM != 0 || l.FlatMM != 0 {
			t.Errorf("layer %d: %+v", k, l)
		}
	}
	// 6 x 4 mm are more than 10 x 1 mm.
	if b := s.Branches[0].Bend; b.MinMM != 24 || b.Rule != "6 x OD" {
		t.Errorf("%+v", b)
	}
	s.Branches[0].OverMM = 1.5
	if bend(s, 0); s.Branches[0].Bend.MinMM != 10 || s.Branches[0].Bend.Rule != "10 x thickest piece" {
		t.Errorf("%+v", s.Branches[0].Bend)
	}
}
