package laycard_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/ui/paper/laycard"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
	"contralay/ui/paper/page/pagetest"
)

// The shape of the lay cards of the small loom, of what is made up first and of the matrix of threading. They were printed and
// looked at: the section with its ten discs round the pair, the splice that is made before layer 1 below it, the order with a head
// for each layer and its picture from the side, what is said beside; the legs; the splices; ends upright in the matrix.
func TestShapeOfTheCards(t *testing.T) {
	m := hand(t)
	pagetest.Compare(t, "testdata/cards.shape", slices.Concat(laycard.Units(m), laycard.Pages(m), laycard.Matrix(m)))
}

// alone is the cards of a trunk of n wires and nothing else.
func alone(t *testing.T, n int) []page.Block {
	t.Helper()
	text := "format = 1\n[[termination]]\nid = \"A\"\nclock = 2\nboot = \"boot-straight-12\"\nboot_clock = 6\n[[termination]]\nid = " +
		"\"Z\"\n" +
		"[[branch]]\nid = \"T1\"\nfrom = \"A\"\nto = \"Z\"\nlength_mm = 900.0\n"
	for k := 1; k <= n; k++ {
		text += fmt.Sprintf("[[wire]]\nid = \"%d\"\nfrom = \"A:%d\"\nto = \"Z:%d\"\nspec = \"AS22759/32\"\nsize = \"22\"\ncolour = "+
			"\"%d\"\n",
			100+k, k, k, k%10)
	}
	return laycard.Pages(list.MakerOf(calc.Complete(calctest.Parse(t, text), calctest.Catalogue(t), nil)))
}

// The shape of the cards of a trunk of 37 wires, which is too much for a block. They were printed and looked at: the centre and two
// layers on the
// first page, below what is said once, with the clock of the key beside the section and the order below, a head for each layer; layer 3
// by itself, seen
// from the side, with its OD to write in and what holds for the whole trunk.
func TestShapeOfALargeCard(t *testing.T) {
	pagetest.Compare(t, "testdata/large.shape", alone(t, 37))
}

// A layer of more than 24 wires has its order beside its picture: 99 mm of the page, and 83 with 4 between for the picture and what is
// said of it.
func TestOrderBesideItsPicture(t *testing.T) {
	set := page.Lay(alone(t, 91))
	last := string(set.Pages[len(set.Pages)-1].HTML)
	if len(set.Squeezed) > 0 || strings.Count(last, "<tr data-of") != 30 || !strings.Contains(last,
		`<div style="width:83.00mm;margin-left:0.00mm">`) ||
		!strings.Contains(last, `<div style="width:99.00mm;margin-left:4.00mm">`) || !strings.Contains(last, "Finished OD") {
		t.Errorf("%v, %d rows: %.3000s", set.Squeezed, strings.Count(last, "<tr data-of"), last)
	}
	for k, p := range set.Pages { // nothing is written twice, and what holds for the trunk stands with its last layer
		if n := strings.Count(string(p.HTML), "Finished OD"); n != map[bool]int{true: 1}[k == len(set.Pages)-1] {
			t.Errorf("page %d says %d times how thick it is", k+1, n)
		}
	}
}
