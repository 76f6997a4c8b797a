package offer

import (
	"fmt"
	"testing"

	"contralay/calc/calctest"
)

// Of seven alike that are all too thin none waits for another, whatever else is too thin: they go up together, and so to one size. Sixteen
// of 22 AWG that carry next to nothing lie beside them in contacts 16, which take 20 to 16 AWG: they wait until the seven do, and go up to
// 20, which is the next. So it is whatever order the wires are looked at in.
func TestAlikeGoUpTogether(t *testing.T) {
	for _, amps := range []float64{7.7, 7.8, 7.9, 8} {
		s := calctest.Carrying(t, 60, "16", append(calctest.Repeated(7, fmt.Sprintf("20 %g", amps)), calctest.Repeated(16, "22 0.1")...),
			nil, "")
		want := map[int]string{}
		for k := range s.H.Wires {
			want[k] = s.H.Wires[k].Size
			if k < 7 && Doubts(s, k) == "" || k >= 7 && endRefuses(s, k, "22") == "" {
				t.Fatalf("%v A: %s does from the beginning", amps, s.H.Wires[k].ID)
			}
		}
		does := settle(s, want)
		for k, size := range want {
			next := "18"
			if k >= 7 {
				next = "20"
			}
			if size != next || Doubts(does, k) != "" || does.H.Wires[k].Size != size {
				t.Errorf("%v A: %s becomes %s, want %s: %s", amps, s.H.Wires[k].ID, size, next, Doubts(does, k))
			}
		}
	}
}

// Four of 22 AWG are too thin beside three of 20 that carry far too much, and only for that: once those have gone up the four do as they
// are. By the square of the current they make less than half the heat of one of the three.
func TestWarmedByOthersStays(t *testing.T) {
	for _, amps := range [][2]float64{{12, 5}, {14, 5.5}, {14, 3}} {
		s := calctest.Carrying(t, 60, "", append(calctest.Repeated(3, fmt.Sprintf("20 %g", amps[0])),
			calctest.Repeated(4, fmt.Sprintf("22 %g", amps[1]))...), nil, "")
		want := map[int]string{}
		for k := range s.H.Wires {
			if want[k] = s.H.Wires[k].Size; Doubts(s, k) == "" {
				t.Fatalf("%v A: %s does from the beginning", amps, s.H.Wires[k].ID)
			}
		}
		does := settle(s, want)
		for k, size := range want {
			if (size == "22") != (k >= 3) || size == "20" || Doubts(does, k) != "" {
				t.Errorf("%v A: %s becomes %s: %s", amps, s.H.Wires[k].ID, size, Doubts(does, k))
			}
		}
	}
}
