package wirelist_test

import (
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"

	"contralay/model/shorttest"
)

// A list whose headings stand in two rows, the ends above and the same words below each, comes right in whatever words: what is
// fitted to an end is no colour, no size and no cavity of the wire.
func TestWaysToHeadBothEnds(t *testing.T) {
	if testing.Short() {
		t.Skip("the race detector takes ten times as long, and nothing runs beside it")
	}
	n, turn := 0, rand.IntN(3)
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
					if n++; n%3 != turn && !shorttest.Long() {
						continue
					}
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

// A heading above a list that has the near ends alone names the far end, in whatever words; a heading that says something else
// names none.
func TestWaysToNameTheFarEndAbove(t *testing.T) {
	list := func(heading string) string {
		return heading + ",,\nWire,From,AWG\n7,Pump:B,16\n8,Horn:2,16\n"
	}
	for heading, far := range map[string]string{
		"Returns to bus NB1": "NB1", "Grounds to X9": "X9", "All returns to the rear stud": "rear stud",
		"Masseleitungen an Massepunkt M3": "M3",
		"Ruckleiter zu X9":                "X9", "Retours vers X9": "X9", "Fili di massa al nodo N4": "N4", "Retornos a la barra B2": "B2",
	} {
		_, wires, says := wayRead(t, "l.csv", list(heading))
		if wires != 2 || !strings.Contains(says, "far end of the rows below it, "+far+"\n") {
			t.Errorf("%s: %d wires\n%s", heading, wires, says)
		}
	}
	for _, heading := range []string{"Wired to IEC 60204", "Cut to length",
		"Notes to the builder", "Cables to drawing 4411", "All wires to length", "All leads to suit",
		"Loom to drawing 4411 sheet 2 of 7"} {
		if _, wires, says := wayRead(t, "l.csv", list(heading)); wires != 2 || strings.Contains(says, "far end of the rows below it") {
			t.Errorf("%s: %d wires\n%s", heading, wires, says)
		}
	}
}
