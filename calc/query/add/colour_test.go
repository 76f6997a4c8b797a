package add

import (
	"testing"

	"contralay/model"
)

// The colour of a new wire, by hand: on a splice that of the first wire there that has one, if no wire at its termination has it; else
// the first of the stock that none there has; none where all are taken.
func TestNextColour(t *testing.T) {
	wire := func(from, to, colour string) model.Wire {
		return model.Wire{From: model.Some(from), To: model.Some(to), Colour: model.Some(colour)}
	}
	red, blue := wire("P:1", "S1", "2"), wire("S1", "Q:1", "6")
	for _, c := range []struct {
		name  string
		wires []model.Wire
		new   model.Wire
		want  string
	}{
		{"the first of all", nil, wire("P:1", "Q:1", ""), "1"},
		{"where nothing joins it", []model.Wire{red, blue}, wire("Q:2", "R:1", ""), "1"},
		{"the first is taken", []model.Wire{wire("Q:1", "R:1", "1")}, wire("Q:2", "X:1", ""), "2"},
		{"the first two are taken, one at each end", []model.Wire{wire("Q:1", "R:1", "1"), wire("X:2", "Y:1", "2")},
			wire("Q:2", "X:1", ""), "3"},
		{"on the splice", []model.Wire{wire("P:2", "Q:4", "3"), red}, wire("S1", "R:1", ""), "2"},
		{"on the splice, the other way round", []model.Wire{red}, wire("R:1", "S1", ""), "2"},
		{"on the splice, the first of two", []model.Wire{red, blue}, wire("S1", "R:1", ""), "2"},
		{"on the splice, the first that has one", []model.Wire{wire("P:1", "S1", ""), blue, red}, wire("S1", "R:1", ""), "6"},
		{"on the splice, but taken there", []model.Wire{red}, wire("S1", "P:2", ""), "1"},
		{"on another splice", []model.Wire{red}, wire("S2", "R:1", ""), "1"},
		{"from splice to splice", []model.Wire{blue}, wire("S2", "S1", ""), "6"},
		{"at the same place of no splice", []model.Wire{wire("P:1", "Q:1", "5")}, wire("P:1", "R:1", ""), "1"},
		{"without ends", []model.Wire{red, wire("", "", "5")}, wire("", "", ""), "1"},
		{"all are taken", []model.Wire{wire("P:1", "", "1"), wire("P:2", "", "2"), wire("P:3", "", "3")}, wire("P:4", "", ""), ""},
	} {
		h := &model.Harness{Wires: c.wires}
		h.Rules.ColourStock = []string{"1", "2", "3"}
		if got := nextColour(h, c.new); got.V != c.want || got.Set != (c.want != "") {
			t.Errorf("%s: %q, want %q", c.name, got.V, c.want)
		}
	}
}
