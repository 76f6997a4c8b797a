package offer_test

import (
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/query/offer"
	"contralay/model"
	"contralay/model/edit"
	"contralay/model/unit"
)

// A cover keeps its place where a branch is split or measured from elsewhere.
func TestCoversKeepTheirPlace(t *testing.T) {
	mm := model.Some[unit.Millimetre]
	h := &model.Harness{Terminations: []model.Termination{{ID: "A", Datum: model.Some(model.DatumMatingFace), PartMM: mm(40)}, {ID: "Z"}},
		Branches: []model.Branch{{ID: "T", From: "A", To: "Z", LengthMM: 1000,
			Covers: []model.Cover{{What: model.CoverSheath, FromMM: mm(100), ToMM: mm(700)},
				{What: model.CoverTape, FromMM: mm(100), ToMM: mm(200)},
				{What: model.CoverSleeve, FromMM: mm(800), ToMM: mm(900)}}}}}
	n, _, err := edit.Split(h, "T", 500)
	if err != nil {
		t.Fatal(err)
	}
	a, b := n.Branches[0].Covers, n.Branches[1].Covers
	if len(a) != 2 || a[0].FromMM.V != 100 || a[0].ToMM.Set || a[1].What != model.CoverTape || a[1].ToMM.V != 200 {
		t.Errorf("%+v", a)
	}
	if len(b) != 2 || b[0].FromMM.Set || b[0].ToMM.V != 200 || b[1].What != model.CoverSleeve || b[1].FromMM.V != 300 ||
		b[1].ToMM.V != 400 {
		t.Errorf("%+v", b)
	}
	s := calc.Build(h, calctest.Laid(t, "example").Cat, nil)
	r, ok := offer.Redatum(s, 0, model.DatumShellRear)
	if c := r.Branches[0].Covers[0]; !ok || r.Branches[0].LengthMM != 960 || c.FromMM.V != 60 || c.ToMM.V != 660 {
		t.Errorf("%v long, %+v", r.Branches[0].LengthMM, c)
	}
}
