package connector_test

import (
	"testing"

	"contralay/ui/paper/connector"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
	"contralay/ui/paper/page/pagetest"
)

// The shape of the pages of connectors of the small loom. They were printed and looked at: for P1 and LOG1 the crimps, the face with the
// words
// beside it and their cavities in two columns below; all other ends in three columns, the ring terminal's two wires last.
func TestShapeOfConnectors(t *testing.T) {
	m := list.MakerOf(handLoom(t, nil))
	pagetest.Compare(t, "testdata/connectors.shape", append([]page.Block{connector.Samples()}, connector.Blocks(m)...))
}
