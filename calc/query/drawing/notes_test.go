package drawing

import (
	"fmt"
	"testing"

	"contralay/calc/formula/outline"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// Everything that a drawing notes of branches, of two that differ in all of it.
func TestWhatADrawingNotes(t *testing.T) {
	branch := func(id, from string, long unit.Millimetre) (Branch, model.Branch) {
		return Branch{ID: id, LengthMM: long, Measured: true, BundleMM: 10, Bends: []Bend{{Station: 50, Turn: 90, Radius: 25.4},
				{Station: 90,
					Turn: -90, Radius: 80}}},
			model.Branch{ID: id, From: from, To: "J", Vias: []model.Via{{AtMM: 50, TurnDeg: 90}, {AtMM: 900, TurnDeg: -90}}}
	}
	a, ma := branch("T1", "A", 400)
	b, mb := branch("T2", "B", 800)
	a.Guess, b.Break = true, model.Some(Break{From: 100, To: 350})
	c := Branch{ID: "T3"}
	d := Drawing{Branches: []Branch{a, b, c}}
	s := &sheet.Sheet{H: &model.Harness{Branches: []model.Branch{ma, mb, {ID: "T3"}}}, Branches: make([]sheet.Branch, 3)}
	s.Branches[0].Bend.MinMM, s.Branches[1].Bend.MinMM = 20.9, 21.2
	d.notes(s, outline.Plan{Cross: [][2]int{{1, 2}}, Trouble: []outline.Trouble{{Run: 1, Bend: 1, Past: true}, {Run: 0, Bend: 1,
		Radius: 24},
		{Run: 1, Bend: 0, Radius: 25}}})
	want := []Note{
		{"T2", "T2 and T3 cross on the drawing. Let one of them leave at another angle, or bend it"},
		{"T2", "Bend 2 of T2 lies 900 mm from B, and the branch is 800 mm long: it is left out. Give it a place on the branch"},
		{"T1", "Bend 2 of T1 is drawn with a radius of 24 mm, because there is no room for 80 mm"},
		{"T2", "Bend 1 of T2 is drawn with a radius of 25 mm, because there is no room for 25 mm"},
		// 25.4 less half of 10 is 20.4 inside, as 20 of 20; 24 less 5 is 19, of 20.9
		{"T1", "Bend 2 of T1 has a radius of 19 mm inside. The bundle takes 21 mm or more: give the bend a larger radius"},
		{"T1", "The OD of T1 is not known: it is drawn " + mm(thin) + " mm wide"},
		// 25 less 5 is 20, of 21
		{"T2", "Bend 1 of T2 has a radius of 20 mm inside. The bundle takes 21 mm or more: give the bend a larger radius"},
		{"T2", "T2 is shown broken: it is 800 mm long, and 250 mm of it are left out. Do not scale it"},
		{"T3", "T3 has no length yet: it is drawn " + mm(unmeasured) + " mm long, dashed. Measure it"},
	}
	for k := range max(len(want), len(d.Notes)) {
		if k >= len(want) || k >= len(d.Notes) || d.Notes[k] != want[k] {
			t.Errorf("note %d of %d: %v", k, len(d.Notes), d.Notes[min(k, len(d.Notes)-1)])
		}
	}
	if got := fmt.Sprint(d.Branches[0].Bends[1].Radius, d.Branches[1].Bends[0].Radius); got != "24 25" {
		t.Error("drawn with radii of", got)
	}
}

// What lines lie within that are nowhere near the middle of the board: 100 long from (40, 30) along x, and 20 long up from (60, -50).
func TestWhatLinesLieWithin(t *testing.T) {
	low, high := within(outline.Plan{Lines: []outline.Line{{{From: Point{X: 40, Y: 30}, Length: 100}},
		{{From: Point{X: 60, Y: -50}, Heading: 90, Length: 20}}}})
	if low != (Point{X: 40, Y: -50}) || high != (Point{X: 140, Y: 30}) {
		t.Error(low, high)
	}
}

// Where a station is drawn, by hand: of a branch of 800 mm with 100 to 350 left out, on a line of 550.
func TestWhereAStationIsDrawn(t *testing.T) {
	b := Branch{LengthMM: 800, Measured: true, Break: model.Some(Break{From: 100, To: 350}), Line: outline.Line{{Length: 550}}}
	for _, c := range [][2]unit.Millimetre{{-1, 0}, {0, 0}, {60, 60}, {100, 100}, {200, 100}, {350, 100}, {351, 101}, {800, 550}, {801,
		550}} {
		if got := b.Drawn(c[0]); got != c[1] {
			t.Errorf("%v: %v, want %v", c[0], got, c[1])
		}
	}
	b.Measured = false
	if got := b.Drawn(200); got != 200 {
		t.Error("of no length:", got)
	}
}
