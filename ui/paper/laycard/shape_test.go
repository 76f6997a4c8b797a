package laycard_test

import (
	"slices"
	"testing"

	"contralay/ui/paper/laycard"
	"contralay/ui/paper/page/pagetest"
)

// The shape of the lay cards of the small loom, of what is made up first and of the matrix of threading. They were printed and
// looked at: the section with its ten discs round the pair, the splice that is made before layer 1 below it, the order with a head
// for each layer and its picture from the side, what is said beside; the legs; the splices; ends upright in the matrix.
func TestShapeOfTheCards(t *testing.T) {
	m := hand(t)
	pagetest.Compare(t, "testdata/cards.shape", slices.Concat(laycard.Units(m), laycard.Pages(m), laycard.Matrix(m)))
}
