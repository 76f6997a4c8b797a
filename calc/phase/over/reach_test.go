package over

import (
	"testing"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// How much thinner and thicker a branch may be, which of its ends lies at a place, and how far two clocks are apart: 3 at one end lies
// where 9
// is at the other, so that every pair that adds up to 12 is none.
func TestTolerancesAndHours(t *testing.T) {
	for _, c := range []struct{ over, least, most, thinner, thicker unit.Millimetre }{
		{5, 4.5, 5.75, 0.5, 0.75}, {5, 0, 5.75, 0, 0.75}, {5, 5.5, 4, 0, 0}, {5, 4.5, 0, 0.5, 0}, {5, 0.5, 5, 4.5, 0},
	} {
		thinner, thicker := tolerance(&sheet.Branch{OverMM: c.over, OverMinMM: c.least, OverMaxMM: c.most})
		if thinner != c.thinner || thicker != c.thicker {
			t.Errorf("%+v: %v thinner, %v thicker", c, thinner, thicker)
		}
	}
	s := &sheet.Sheet{H: &model.Harness{Branches: []model.Branch{{From: "A", To: "B"}}}}
	if endAt(s, 0, "A") != 0 || endAt(s, 0, "B") != 1 {
		t.Error("its ends")
	}
	for a := 1; a <= 12; a++ {
		for b := 1; b <= 12; b++ {
			want := 0
			for (a+want+b)%12 != 0 && (a-want+b+12)%12 != 0 { // turned by so many hours, either way, they meet
				want++
			}
			if got := hoursApart(a, b); got != want {
				t.Errorf("%d and %d are %d hours apart, want %d", a, b, got, want)
			}
		}
	}
}
