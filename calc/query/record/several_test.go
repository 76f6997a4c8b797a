package record_test

import (
	"fmt"
	"slices"
	"testing"

	"contralay/calc"
	"contralay/calc/query/record"
	"contralay/model"
)

// One wire cut in one minute for four serials is one stretch of four pieces, in the order of the serials; another wire, another
// person and
// another minute each are their own. By hand.
func TestCutForFourSerials(t *testing.T) {
	s := shop(t, func(b *model.Build) {
		b.Steps = []model.Ticked{at("cut 101", "08:00", "7"), at("cut 110", "08:09", "7"), at("cut 111", "08:09", "7")}
	})
	h := s.H
	for _, serial := range []string{"004", "005", "006"} {
		h = h.EditBuild(serial, func(b *model.Build) {
			b.EachTest = model.Some(true)
			b.Steps = []model.Ticked{at("cut 110", "08:09", "7"), at("cut 102", "08:30", "9"), at("cut 120", "08:31", "9")}
		})
	}
	got, breaks := record.Minutes(calc.Build(h, s.Cat, nil))
	var told []string
	for _, m := range got {
		told = append(told, fmt.Sprint(m.Key, " ", m.By, " ", m.Serials, " ", m.Pieces, " ", m.Minutes))
	}
	want := []string{"cut 110 7 [003 004 005 006] 4 9", "cut 111 7 [003] 1 0", "cut 120 9 [004 005 006] 3 1"}
	if !slices.Equal(told, want) || breaks != 0 {
		t.Errorf("%q, %d pauses, want\n%q", told, breaks, want)
	}
	spell := got[0].Spell("HC2")
	if spell.Of != "HC2 serial 003, 004, 005, 006 cut 110" || spell.Minutes != 9 || spell.Pieces != 4 {
		t.Errorf("%+v", spell)
	}
}
