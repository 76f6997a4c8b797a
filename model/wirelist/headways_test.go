package wirelist_test

import (
	"fmt"
	"strings"
	"testing"
)

// A list whose headings stand in two rows, the ends above and the same words below each, comes right in whatever words: what is
// fitted to an end is no colour, no size and no cavity of the wire.
func TestWaysToHeadBothEnds(t *testing.T) {
	n := 0
	for _, ends := range [][2]string{{"END 1", "END 2"}, {"From", "To"}, {"Side A", "Side B"}, {"Left end", "Right end"}, {"Von", "Nach"},
		{"Extrémité 1", "Extrémité 2"}, {"Lato A", "Lato B"}, {"Desde", "Hasta"}} {
		for _, words := range [][]string{{"Place", "Stud"}, {"Connector", "Pin"}, {"Device", "Terminal"}, {"Location", "Post", "Lug"},
			{"Ort", "Klemme", "Kabelschuh"}, {"Unit", "Pin", "Ferrule", "Boot"}, {"Appareil", "Borne", "Cosse"}, {"Posto", "Morsetto"}} {
			for _, before := range []bool{true, false} {
				for _, sep := range []string{",", ";", "\t"} {
					var b strings.Builder
					row := func(first []string, ends ...string) {
						if !before {
							first, ends = ends, first
						}
						fmt.Fprintln(&b, strings.Join(append(append([]string{}, first...), ends...), sep))
					}
					gap := make([]string, len(words)-1)
					row([]string{"", "", ""}, append(append(append([]string{ends[0]}, gap...), ends[1]), gap...)...)
					row([]string{"Size", "Colour", "Signal"}, append(append([]string{}, words...), words...)...)
					for _, w := range wayWires() {
						fitted := []string{"blue", "yes"}[:len(words)-2]
						row([]string{w.size + " AWG", w.colour, w.signal}, append(append(append([]string{w.plug, w.pin}, fitted...),
							w.device, w.cavity), fitted...)...)
					}
					n++
					if right, wires, says := wayRead(t, "l.csv", b.String()); right != len(wayWires()) || wires != right {
						t.Errorf("%d right of %d wires\n%s\n%s", right, wires, b.String(), says)
					}
				}
			}
		}
	}
	if n != 8*8*2*3 {
		t.Errorf("%d ways", n)
	}
}
