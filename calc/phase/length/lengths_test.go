package length_test

import (
	"math"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/sheet"
)

// Wire 101 of the example by hand. T1: lay loss √(1+(π·(2.9+1.09)/65.28)²) on
// 419.56, the rest of 450 straight; L1: twisted pair, L = 12·2.18, pitch diameter
// 1.09, laid on 90 − 25 − 2.18; loops 16 at P1 (insert) and 8 at INJ1; tails 100
// and 75; up to 10.
func TestCutLengthByHand(t *testing.T) {
	s := calc.Complete(calctest.Load(t, "example.toml"), calctest.Catalogue(t), nil)
	k1 := math.Sqrt(1 + math.Pow(math.Pi*3.99/65.28, 2))
	k2 := math.Sqrt(1 + math.Pow(math.Pi*1.09/26.16, 2))
	finished := 419.56*k1 + 30.44 + 62.82*k2 + 27.18 + 16 + 8
	w := s.Wires[s.Index.Wire["101"]]
	calctest.Near(t, "finished", float64(w.Finished), finished, 1e-6)
	calctest.Near(t, "cut", float64(w.Cut), math.Ceil((finished+175)/10)*10, 1e-9)
	// 22 AWG tin: 16.20 Ω/1000 ft (AC 43.13-1B table 11-9), 1 A, at the temperature of the
	// conductor in each branch, in air of 90 °C.
	grown := func(branch int) float64 { return (234.5 + conductorC(t, s, "101", branch, 90)) / 254.5 }
	calctest.Near(t, "drop", float64(w.Drop.V), finished/1e6*16.20/0.3048*(450*grown(0)+90*grown(1))/540, 1e-5)
	// A splice off its breakout: S1 stands 55 mm along R1. 110 comes to J1 and goes on
	// to it; 112 leaves along R1 and is that much shorter.
	calctest.Near(t, "110 past J1", float64(s.Wires[s.Index.Wire["110"]].Finished-16-55),
		419.56*math.Sqrt(1+math.Pow(math.Pi*(2.9+1.27)/65.28, 2))+
			30.44, 1e-6)
	if a, b := s.Wires[s.Index.Wire["112"]].Finished, s.Wires[s.Index.Wire["113"]].Finished; a >= b {
		t.Errorf("112 (%v) must be shorter than 113 (%v)", a, b)
	}
}

// A return without amps of its own carries what comes through the wire: 22 AWG tin,
// 16.20 Ω/1000 ft (AC 43.13-1B table 11-9), 10 A there and back, each at the temperature
// of its conductor. Two wires
// that name each other are one circuit and warn once.
func TestDropWithReturn(t *testing.T) {
	for _, c := range []struct {
		name, there, back string
		warns             int
	}{{"its current unsaid", "return = \"2\"\n", "", 1}, {"naming each other", "return = \"2\"\n", "amps = 10\nreturn = \"1\"\n", 1},
		{"naming itself", "return = \"1\"\n", "amps = 0\n", 1}} {
		t.Run(c.name, func(t *testing.T) {
			s := calc.Complete(calctest.Parse(t, `format = 1
[[termination]]
id = "A"
[[termination]]
id = "Z"
[[wire]]
id = "1"
from = "A:1"
to = "Z:1"
spec = "AS22759/32"
size = "22"
amps = 10
`+c.there+`[[wire]]
id = "2"
from = "A:2"
to = "Z:2"
spec = "AS22759/32"
size = "22"
`+c.back+`[[branch]]
id = "T"
from = "A"
to = "Z"
length_mm = 1500
`), calctest.Catalogue(t), nil)
			want := 0.0
			for k, id := range []string{"1", "2"} {
				if k == 0 || c.name != "naming itself" {
					want += float64(s.Wires[k].Finished) / 1e6 * 16.20 / 0.3048 * (234.5 + conductorC(t, s, id, 0, 40)) / 254.5 * 10
				}
			}
			calctest.Near(t, "circuit", float64(s.Wires[0].Circuit), want, 2e-4)
			n := 0
			for _, g := range s.Snags {
				if g.Rule == "wire.drop" {
					n++
				}
			}
			if n != c.warns {
				t.Errorf("%d warnings of drop, want %d", n, c.warns)
			}
		})
	}
}

// conductorC is how warm a wire's conductor is in a branch: warmer than the air by 0.1 K at
// least, where it carries 1 A and more.
func conductorC(t *testing.T, s *sheet.Sheet, wire string, branch int, air float64) float64 {
	t.Helper()
	for _, c := range s.Branches[branch].Warm.Wires {
		if s.H.Wires[c.Wire].ID == wire {
			if !(float64(c.C) > air+0.1) {
				t.Errorf("%s is at %v in air of %v", wire, c.C, air)
			}
			return float64(c.C)
		}
	}
	t.Fatalf("the heat of branch %d is not known", branch)
	return 0
}
