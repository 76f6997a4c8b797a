package paper

import (
	"encoding/csv"
	"math"
	"strings"
	"testing"

	listsquery "contralay/calc/query/lists"
	"contralay/ui/paper/list"
	"contralay/ui/paper/meter"
)

// The nets of the loom by hand, and the copper from the first end of each to the others at 20 °C: 53.15 or 32.41
// ohm a km times the finished lengths of byhand.txt. Between any two ends of a net it is the sum or the difference.
func handNets() []map[string]float64 {
	// From S1 and GND1, where wires meet: the way to each end of the net.
	const ohm20, ohm22 = 32.41e-6, 53.15e-6
	return []map[string]float64{
		{"P1:A": 363.368 * ohm20, "LMP1:1": 268 * ohm22, "LMP2:1": 318 * ohm22, "LOG1:C": 376 * ohm22},
		{"GND1:1": 0, "LMP1:2": 366 * ohm22, "LMP2:2": 416 * ohm22, "P1:B": 581.368 * ohm20},
		{"P1:C": 0, "LOG1:A": 737.972 * ohm22},
		{"P1:D": 0, "LOG1:B": 737.972 * ohm22},
		{"P1:E": 0, "LMP1:3": 630.751 * ohm22},
		{"P1:F": 0, "LMP1:4": 630.751 * ohm22},
		{"P1:G": 0, "LMP2:3": 680.751 * ohm22},
		{"P1:H": 0},
	}
}

// netOf is the net that holds an end.
func netOf(end string) map[string]float64 {
	for _, n := range handNets() {
		if _, in := n[end]; in {
			return n
		}
	}
	return nil
}

// What is rung out is the nets by hand, each end to every other of its net.
func TestRingOutByHand(t *testing.T) {
	s := handLoom(t)
	met := map[string]bool{}
	for _, r := range listsquery.RingOut(s) {
		here := s.H.Terminations[r.Termination].ID + ":" + r.Cavity
		met[here] = true
		net := netOf(here)
		if len(r.To) != len(net)-1 {
			t.Errorf("%s rings to %d ends, by hand to %d", here, len(r.To), len(net)-1)
		}
		for _, to := range r.To {
			far, in := net[to.End]
			if want := net[here] + far; !in || math.Abs(float64(to.Ohm.V)-want) > 1e-6 {
				t.Errorf("%s to %s: %.6f ohm, by hand %.6f (%v)", here, to.End, float64(to.Ohm.V), want, in)
			}
		}
	}
	for _, n := range handNets() {
		for end := range n {
			if !met[end] {
				t.Errorf("%s is not rung out", end)
			}
		}
	}
}

// The lists of what a meter tests by hand, from testdata/byhand.txt, literally, on paper and read back.
func TestMeterListsByHand(t *testing.T) {
	want := handMade(t, "testdata/byhand.txt")
	m := makerOf(handLoom(t))
	for _, l := range []list.Table{m.ringOut(), m.isolation(), meter.DropTable(m.Maker)} {
		text, err := CSV(l)
		if err != nil {
			t.Fatal(err)
		}
		back, err := csv.NewReader(strings.NewReader(string(text))).ReadAll()
		if err != nil {
			t.Fatal(err)
		}
		compareHand(t, l.File+" on paper", want[l.File], append([][]string{l.Head}, l.Rows...))
		compareHand(t, l.File+" as a file", want[l.File], back)
	}
}
