package set_test

import (
	"slices"
	"testing"

	"contralay/calc/query/run"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page/pagetest"
	"contralay/ui/paper/set"
)

// The shape of the traveller, the kit, the pieces of tube, the cut list, the labels and the loops of the small loom. They were printed and
// looked at: the loom in small beside the contents, thirteen steps of which the holds are grey, three boxes to release, the notes;
// spools beside
// each other and parts in two columns; a row for each wire below its spool; a box for each label; a hold in grey.
func TestShapeOfTheSet(t *testing.T) {
	m := handLoom(t)
	rest := slices.Concat(set.Drawing(m), set.Kit(m), set.Tubes(m), set.Cut(m), set.Threading(m),
		set.Spares(m, list.Table{}, map[string]int{"P1": 1}))
	rest = append(rest, set.Hold(m, run.HoldBare))
	pagetest.Compare(t, "testdata/set.shape", append(set.Traveller(m, rest), rest...))
}
