package customer_test

import (
	"testing"

	"contralay/ui/paper/page/pagetest"
)

// The shape of the set that is handed over with the small loom, built to its end. It was printed and looked at: the certificate with
// its tests, instruments and ring-out; the drawing with two faces and the pinout in two columns; the card to cut out; layers as built.
func TestShapeOfTheSet(t *testing.T) {
	out, _ := handed(t, finished(t, "../testdata/byhand.toml", nil), "1")
	pagetest.ComparePages(t, "testdata/handed.shape", out.Pages.Pages)
}
