package lists_test

import (
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/query/lists"
	"contralay/model"
	"contralay/model/unit"
)

// Tape by its part, in order, and where each piece of it goes; a tube with what the shelf calls it.
func TestTapeAndTubesOfTheBill(t *testing.T) {
	h := calctest.Parse(t, calctest.OneSize(8, "22", "length_mm = 500.0\n"))
	var ids []string
	for _, w := range h.Wires {
		ids = append(ids, w.ID)
	}
	b := &h.Branches[0]
	b.Make = model.Some(model.MakeLaid)
	some := func(v unit.Millimetre) model.Opt[unit.Millimetre] { return model.Some(v) }
	b.Layers = []model.Layer{{Of: ids[:1], BindMM: some(0.4), BindPart: model.Some("tape 9")}, {Of: ids[1:], BindMM: some(0.1),
		BindPart: model.Some("tape 1")}}
	b.Covers = []model.Cover{{What: model.CoverTape, Part: model.Some("tape 5"), ThickMM: some(0.2)}, {What: model.CoverSheath,
		Part: model.Some("AS23053/16 6.4")}}
	s := calc.Build(h, calctest.Catalogue(t), nil)
	var parts, says []string
	shelf := ""
	for _, r := range lists.Bill(s) {
		if r.Group == "tape" {
			parts, says = append(parts, r.Part), append(says, r.Says)
			if !r.Metres || r.Need <= 0 || r.Order < r.Need {
				t.Errorf("%+v", r)
			}
		}
		if r.Part == "AS23053/16 6.4" {
			shelf = r.Says
		}
	}
	if want := []string{"tape 1", "tape 5", "tape 9"}; !slices.Equal(parts, want) {
		t.Fatalf("%q", parts)
	}
	d := s.Wires[0].Dia.Nominal
	id := h.Branches[0].ID
	for k, want := range []string{": binder of " + id + " layer 1", ": over " + id,
		": centre of " + id + " " + unit.Fixed(d, 1) + " to " + unit.Fixed(d+0.4, 1) + " mm"} {
		if !strings.HasSuffix(says[k], want) {
			t.Errorf("%q, want it to end with %q", says[k], want)
		}
	}
	if tube, ok := s.Cat.Tube("AS23053/16 6.4"); !ok || shelf != tube.ShelfLabel || shelf == "" {
		t.Errorf("the tube is called %q", shelf)
	}
	// A twisted one has a binder and no centre.
	b.Make, b.Layers = model.Some(model.MakeTwisted), []model.Layer{{Of: ids, BindMM: some(0.1)}}
	for _, r := range lists.Bill(calc.Build(h, calctest.Catalogue(t), nil)) {
		if r.Group == "tape" && r.Part == "as stocked" && !strings.HasSuffix(r.Says, ": binder of "+id) {
			t.Errorf("%q", r.Says)
		}
	}
}
