package shape

import (
	"testing"

	"contralay/calc/query/why"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// A wire has its own band; a filler that of the first wire of the layer that is as thick to within 0.005 mm; any other filler has none.
func TestBandOfAMember(t *testing.T) {
	h := &model.Harness{Wires: []model.Wire{{ID: "a"}, {ID: "b"}}}
	wide := func(d unit.Millimetre) sheet.Dia { return sheet.Dia{Nominal: d, Min: d - 0.1, Max: d + 0.1} }
	e := why.New(&sheet.Sheet{H: h, Index: model.NewIndex(h), Wires: []sheet.Wire{{Dia: wide(2)}, {Dia: wide(3)}}}, nil)
	filler := func(d unit.Millimetre) sheet.Member { return sheet.Member{ID: "filler", Kind: sheet.OfFiller, D: d} }
	l := &sheet.Layer{Members: []sheet.Member{filler(2.5), {ID: "a", D: 2}, {ID: "b", D: 3}}}
	for _, c := range []struct {
		m    sheet.Member
		want sheet.Dia
	}{{l.Members[1], wide(2)}, {l.Members[2], wide(3)}, {filler(3.004), wide(3)}, {filler(1.996), wide(2)},
		{filler(2.5), sheet.Dia{Nominal: 2.5, Min: 2.5, Max: 2.5}}, {filler(3.006), sheet.Dia{Nominal: 3.006, Min: 3.006, Max: 3.006}}} {
		if got := memberDia(e, c.m, l); got.Nominal != c.want.Nominal || got.Min != c.want.Min || got.Max != c.want.Max {
			t.Errorf("%+v: %+v, want %+v", c.m, got, c.want)
		}
	}
}
