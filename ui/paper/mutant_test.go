package paper

import (
	"slices"
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/formula/learn"
	"contralay/calc/formula/plan"
	"contralay/calc/phase/ends"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// How many each layer of a plan holds: fillers counted round the centre, not in it.
func TestCountsOfAPlan(t *testing.T) {
	layer := func(wires, fillers int) plan.Layer {
		return plan.Layer{Sizes: []unit.Millimetre{1}, N: []int{wires}, Fillers: fillers}
	}
	if got := Counts(plan.Plan{Layers: []plan.Layer{layer(5, 1), layer(10, 1), layer(16, 2)}}); !slices.Equal(got, []int{5, 11, 18}) {
		t.Errorf("%v", got)
	}
}

// A tube's name is its kind and its size; one of a single word is all size, and none is none.
func TestSheathSize(t *testing.T) {
	for part, want := range map[string][2]string{"AS23053/16 9.5": {"9.5", "AS23053/16"}, "own": {"own", ""}, "": {"none", ""},
		"AS23053/4 class 2 6.4": {"6.4", "AS23053/4 class 2"}} {
		if size, kind := sheathSize(part); size != want[0] || kind != want[1] {
			t.Errorf("%q: %q of %q, want %v", part, size, kind, want)
		}
	}
}

// A lay-up said aloud: in plain characters with a full stop between, else with a dot.
func TestAloud(t *testing.T) {
	if got := Aloud([]int{1, 6, 12}, true); got != "1 . 6 . 12" {
		t.Errorf("%q", got)
	}
	if got := Aloud([]int{1, 6, 12}, false); got != "1 · 6 · 12" {
		t.Errorf("%q", got)
	}
}

// What paper shares with the bench says what it says there.
func TestSharedWords(t *testing.T) {
	for size, want := range map[string]string{"22": "22 AWG", "0.35mm2": "0.35 mm2"} {
		if got := Size(&model.Wire{Size: size}); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
	for want, h := range map[string]*model.Harness{"none": {}, "1, 2": {Builds: []model.Build{{Serial: "1"}, {Serial: "2"}}}} {
		if got := Serials(&sheet.Sheet{H: h}); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
}

// What readings teach, by how much there is of it: too few correct nothing, a bias within the spread corrects the band, one
// beyond it is enough.
func TestLessonInLines(t *testing.T) {
	for want, l := range map[string]learn.Lesson{
		"  too few: 5 at least; nothing is corrected":                                     {Group: "over", N: 3, Least: 5},
		"  no bias that stands out from the spread: accepting it corrects the band alone": {Group: "over", N: 9, Enough: true},
		"  enough to correct by": {Group: "over", N: 9, Enough: true, Matters: true},
	} {
		if got := Lesson(l); len(got) != 2 || got[1] != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
	if got := Lesson(learn.Lesson{Group: "over"}); len(got) != 1 || got[0] != "over: 0 readings, none that counts" {
		t.Errorf("%q", got)
	}
}

// A reading of a layer is one row; of a centre that was read before and after its tape two; its turn stands with it.
func TestRowsOfAReading(t *testing.T) {
	m := makerOf(calctest.Laid(t, "example"))
	one := []unit.Millimetre{5.4}
	for _, c := range []struct {
		r    model.Reading
		want []string
	}{
		{model.Reading{Branch: "T1", Layer: 1, OverMM: one}, []string{"over"}},
		{model.Reading{Branch: "T1", BareMM: one}, []string{"over, before the tape"}},
		{model.Reading{Branch: "T1", BareMM: one, OverMM: one}, []string{"over, before the tape", "over"}},
		{model.Reading{Branch: "T1", BareMM: one, LayMM: model.Some[unit.Millimetre](65)}, []string{"over, before the tape", "over"}},
		{model.Reading{Branch: "T1", Layer: 1}, []string{"over"}},
	} {
		var got []string
		for _, r := range m.readingRows(c.r) {
			got = append(got, r.what)
		}
		if !slices.Equal(got, c.want) {
			t.Errorf("%+v: %q, want %q", c.r, got, c.want)
		}
	}
}

// A spare that is capped in its own connector lies on no branch.
func TestCappedOnNothing(t *testing.T) {
	m := makerOf(calctest.Laid(t, "example"))
	for want, r := range map[string]spareRow{"-": {cap: &ends.Cap{Branch: -1}}, m.H.Branches[0].ID: {cap: &ends.Cap{}}} {
		if got := m.cappedOn(r); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
	if got := m.cappedOn(spareRow{}); got != "-" {
		t.Errorf("not capped: %q", got)
	}
}
