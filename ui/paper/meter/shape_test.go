package meter_test

import (
	"slices"
	"testing"

	"contralay/ui/paper/list"
	"contralay/ui/paper/meter"
	"contralay/ui/paper/page/pagetest"
)

// The shape of the tests of the small loom. They were printed and looked at: the ring-out in three columns with two boxes to tick,
// isolation by
// groups, the loaded drop of two feeds, four instruments beside three names.
func TestShapeOfTheTests(t *testing.T) {
	m := list.MakerOf(handLoom(t))
	pagetest.Compare(t, "testdata/tests.shape", slices.Concat(meter.Ring(m), meter.Isolation(m), meter.Drop(m), meter.Sign()))
}
