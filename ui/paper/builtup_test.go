package paper

import (
	"strings"
	"testing"

	"contralay/calc/formula/plan"
	"contralay/calc/query/lists"
	"contralay/model/unit"
)

// The lay card says what the centre is built up to; the bill has the tape that it takes, by hand:
// 5 passes of 0.1 mm, 800 / 19 = 42.1 turns a pass, each 3.5 pi = 11.0 mm round: 2.315 m.
func TestBuiltUpCentreOnPaper(t *testing.T) {
	s := sheetFile(t, "built-up")
	page, err := Make(s, Meta{})
	if err != nil {
		t.Fatal(err)
	}
	if !strings.Contains(words(string(page.HTML)), "K1 built up to 4.0 with 1.00 mm of PTFE tape") {
		t.Error("the lay card does not say it")
	}
	if got := float64(lists.TapeMM(4, 3, 800, 0.1, 19)); got < 2314 || got > 2316 {
		t.Errorf("%.1f mm of tape, want 2315", got)
	}
	for _, bad := range [][5]unit.Millimetre{{3, 3, 800, 0.1, 19}, {4, 3, 0, 0.1, 19}, {4, 3, 800, 0, 19}, {4, 3, 800, 0.1, 0}} {
		if got := lists.TapeMM(bad[0], bad[1], bad[2], bad[3], bad[4]); got != 0 {
			t.Errorf("%v: %v", bad, got)
		}
	}
	n := 0
	for _, r := range lists.Bill(s) {
		if r.Group == "tape" {
			n++
			if r.Part != "PTFE tape" || r.Need != 2.4 || !r.Metres || !strings.Contains(r.Says, "0.10 mm thick, 19.0 mm wide") ||
				!strings.Contains(r.Says, "centre of T1 3.0 to 4.0 mm") {
				t.Errorf("%+v", r)
			}
		}
	}
	if n != 1 {
		t.Errorf("%d rows of tape", n)
	}
}

// A plan with a built-up centre says so, and does not call its tape a filler.
func TestPlansSayBuiltUp(t *testing.T) {
	text := Plans([]plan.Plan{{Proven: true, Fillers: 1, Over: 7.745, Cost: 7.883, Layers: []plan.Layer{
		{Sizes: []unit.Millimetre{2.12}, N: []int{1}, Fillers: 1, FillerMM: 1.3844, CentreMM: 3.5044},
		{Sizes: []unit.Millimetre{2.12}, N: []int{8}}}}}, nil)
	row := strings.Split(text, "\n")[1]
	if !strings.Contains(row, "centre built up to 3.5 with 1.38 mm of tape") || strings.Fields(row)[4] != "0" {
		t.Errorf("%q", row)
	}
}
