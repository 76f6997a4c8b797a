package over

import (
	"fmt"
	"slices"
	"testing"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// What covers add along a branch of 10 mm, by hand: one of 2 mm from 0 to 100, one of 1 mm from 50 to 200, a sheath of 13 mm from 20 to 480
// that lies on half a millimetre: 2.5 mm more.
func TestProfileOfCovers(t *testing.T) {
	covered := oneBranch(func(s *sheet.Sheet) {
		b := &s.Branches[0]
		b.Covers = []sheet.Covered{{FromMM: 0, ToMM: 100, UnderMM: 10, OverMM: 12}, {FromMM: 50, ToMM: 200, UnderMM: 12, OverMM: 13}}
		b.Sheath = sheet.Sheath{Tube: model.Some(catalogue.Tube{ID: "X"}), FromMM: 20, ToMM: 480, BeneathMM: 0.5}
		b.Sheath.Verdict.Wraps, b.Sheath.Verdict.OverMM = true, 13
	})
	want := []stretch{{0, 20, 2, 1}, {20, 50, 4.5, 2}, {50, 100, 5.5, 3}, {100, 200, 3.5, 2}, {200, 480, 2.5, 1}, {480, 500, 0, 0}}
	if got := profile(covered, 0, 0, 500); !slices.Equal(got, want) {
		t.Errorf("%v, by hand %v", got, want)
	}
	if got, want := profile(covered, 0, 20, 100), want[1:3]; !slices.Equal(got, want) {
		t.Errorf("between stations: %v, by hand %v", got, want)
	}
	if got := profile(oneBranch(func(*sheet.Sheet) {}), 0, 30, 70); !slices.Equal(got, []stretch{{from: 30, to: 70}}) {
		t.Errorf("bare: %v", got)
	}
	// Most, and what half of the length has: all along 50 + 30 + 100 mm are fewer than 250, with the 280 at 2.5 they are more.
	for _, c := range []struct{ from, to, most, held unit.Millimetre }{{0, 500, 5.5, 2.5}, {0, 100, 5.5, 5.5}, {0, 99, 5.5, 4.5}, {400,
		500, 2.5, 2.5},
		{480, 500, 0, 0}, {440, 500, 2.5, 2.5}, {470, 500, 2.5, 0}} {
		if most, held := beneath(covered, 0, c.from, c.to); most != c.most || held != c.held {
			t.Errorf("%+v: %v and %v", c, most, held)
		}
	}
	for _, c := range []struct {
		place                 string
		near, far, most, held unit.Millimetre
	}{{"A", 0, 100, 15.5, 15.5}, {"J", 0, 100, 12.5, 12.5}, {"J", 0, 30, 12.5, 10}, {"A", 0, 20, 12, 12}, {"A", -5, 0, 12, 12}, {"A", 300,
		100, 15.5, 15.5},
		{"A", 0, 9000, 15.5, 12.5}, {"J", 300, 400, 13.5, 13.5}} {
		if most, held := OverFrom(covered, 0, c.place, c.near, c.far); most != c.most || held != c.held {
			t.Errorf("%+v: %v and %v", c, most, held)
		}
	}
}

// What the air alone is too hot for is said once for each kind of tube, however many lie there.
func TestHotAirOnceForEachKind(t *testing.T) {
	s := oneBranch(func(s *sheet.Sheet) {
		b := &s.Branches[0]
		b.Ambient = 150
		for _, kind := range []string{"K", "K", "L", "M"} {
			limit := unit.Celsius(135)
			if kind == "M" {
				limit = 150
			}
			tube := catalogue.Tube{ID: kind + "1", Kind: kind, ServiceMaxC: limit, Origin: catalogue.Origin{Standing: catalogue.Published}}
			b.Covers = append(b.Covers, sheet.Covered{What: model.CoverSleeve, Tube: model.Some(tube)})
		}
	})
	hot(s, 0, nil)
	want := "[stop hot.sheath T The air around it is 150 C, and K is for 135 C at most " +
		"stop hot.sheath T The air around it is 150 C, and L is for 135 C at most]"
	if got := fmt.Sprint(told(s)); got != want {
		t.Errorf("%s", got)
	}
}
