package wirelist_test

import (
	"slices"
	"strings"
	"testing"

	"contralay/model/wirelist"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/table"
)

// A list names the cavities of the part: a range goes by the drawing's names, and a cavity that
// only the rule of letters has is reported with what there is. Source: 21-39 has i and no s, by
// a maker's arrangement chart put right by MIL-STD-1560 and another maker's drawing. 14-37 has no
// source, which is said.
func TestCavitiesOfInsertsByTheDrawing(t *testing.T) {
	list := "## P1\n21-39 pin\n\n| Cavity | Function | AWG |\n|---|---|---|\n| h-k | Ground | 20 |\n| s | Lamp | 20 |\n\n" +
		"## P2\n14-37 pin\n\n| Cavity | Function | AWG |\n|---|---|---|\n| 1 | Ground | 24 |\n| A | Lamp | 24 |\n"
	tables, err := table.Read("pins.md", []byte(list), table.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	h, report, err := wirelist.Import(tables, draft.Options{})
	if err != nil {
		t.Fatal(err)
	}
	var ends []string
	for _, w := range h.Wires {
		ends = append(ends, w.From.V, w.To.V)
	}
	for _, want := range []string{"P1:h", "P1:i", "P1:j", "P1:k", "P1:s", "P2:A"} {
		if !slices.Contains(ends, want) {
			t.Errorf("no wire in %s: %v", want, ends)
		}
	}
	said := strings.Join(report.Full(), "\n")
	for _, want := range []string{
		"P1:s, 21-39 has A to H, J to N, P, R to Z, a to k, m, n, p to r",
		"P2:A, 14-37 has 1 to 37 (names from memory: check the part)",
	} {
		if !strings.Contains(said, want) {
			t.Errorf("%q is not said:\n%s", want, said)
		}
	}
	for _, never := range []string{"P1:i,", "r (names"} {
		if strings.Contains(said, never) {
			t.Errorf("%q is said:\n%s", never, said)
		}
	}
}
