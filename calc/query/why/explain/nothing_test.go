package explain_test

import (
	"strings"
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/query/why"
	"contralay/calc/query/why/explain"
)

// What is not there has no explanation, whichever figure is asked for: of no branch, wire, unit or end of the harness.
func TestNothingOfNothing(t *testing.T) {
	s := calctest.Laid(t, "example")
	for _, name := range explain.FigureNames() {
		if w, ok := explain.Figure(s, why.Figure{What: name, Of: "nonesuch"}); ok && !strings.HasPrefix(name, "loom.") {
			t.Errorf("%s of nonesuch: %s", name, w.Name)
		}
	}
	// Nothing of a sheath is explained on a branch that is wound with tape alone.
	bare := calctest.Built(t, calctest.OneSize(2, "22", "length_mm = 300\n"+calctest.CoverText("tape", "")))
	for _, name := range []string{"sheath.pass", "sheath.passmost"} {
		if w, ok := explain.Figure(bare, why.Figure{What: name, Of: "T1"}); ok {
			t.Errorf("%s of a branch without a sheath: %s", name, w.Name)
		}
	}
	if len(explain.FigureNames()) < 40 {
		t.Errorf("only %d figures", len(explain.FigureNames()))
	}
}
