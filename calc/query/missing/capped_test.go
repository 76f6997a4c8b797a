package missing

import (
	"testing"

	"contralay/calc/sheet"
	"contralay/model"
)

// A termination at which a wire is capped has that wire, wherever it stands in the file; another has not.
func TestCappedAtAPlace(t *testing.T) {
	s := &sheet.Sheet{H: &model.Harness{Wires: []model.Wire{{ID: "1"}, {ID: "2", CappedAt: model.Some("P")}, {ID: "3",
		CappedAt: model.Some("Q")}}}}
	for place, want := range map[string]bool{"P": true, "Q": true, "R": false} {
		if got := capped(s, place); got != want {
			t.Errorf("%s: %v", place, got)
		}
	}
}
