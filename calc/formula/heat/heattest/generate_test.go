//go:build volumes

package heattest

import (
	"bytes"
	"encoding/json"
	"flag"
	"fmt"
	"math"
	"math/rand/v2"
	"os"
	"slices"
	"testing"

	"contralay/calc/formula/lay"
	"contralay/model/unit"
)

var update = flag.Bool("update", false, "write volumes.json again, solved with cells of 0.04 mm")

// sizes are AS22759/32 as the catalogue has it, the smallest first.
var sizes = []size{
	awg26, {"24", 0.94, 0.597, 85.96}, awg22, {"20", 1.27, 0.965, 32.41}, {"18", 1.52, 1.206, 20.44}, {"16", 1.73, 1.359, 15.78},
}

// maker makes one case out of its own seed.
type maker struct {
	*rand.Rand
	t      *testing.T
	wires  []Wire
	layer  []int // of each wire; the centre is 0
	layers int
	crown  float64 // mm over what is laid
	tape   float64 // mm, the hull of it ÷ π
}

func newMaker(t *testing.T, n int) *maker {
	return &maker{t: t, Rand: rand.New(rand.NewPCG(19, uint64(n)))}
}

// between is a number from a to b, to two figures after the point.
func (m *maker) between(a, b float64) float64 { return math.Round((a+(b-a)*m.Float64())*100) / 100 }

// put adds a wire at a radius and an angle, its place to 0.1 µm.
func (m *maker) put(s size, radius, angle, loss float64) {
	sin, cos := math.Sincos(angle)
	to := func(v, parts float64) float64 { return math.Round(v*parts) / parts }
	w := s.wire()
	w.X, w.Y = unit.Millimetre(to(radius*cos, 1e4)), unit.Millimetre(to(radius*sin, 1e4))
	w.OhmPerKm = unit.OhmPerKilometre(to(s.ohms*loss, 1e3))
	m.wires = append(m.wires, w)
	m.layer = append(m.layer, m.layers)
}

// centre starts with one wire, or with two that touch.
func (m *maker) centre(s size, pair bool) {
	m.crown, m.tape = s.over, s.over
	if !pair {
		m.put(s, 0, 0, 1)
		return
	}
	m.crown, m.tape = 2*s.over, s.over*(2+math.Pi)/math.Pi
	turn := m.Float64() * math.Pi
	m.put(s, s.over/2, turn, 1)
	m.put(s, s.over/2, turn+math.Pi, 1)
}

// around lays a layer in the order given, at a lay ratio of 12. What room is left over is
// shared evenly, or as chance has it where it is uneven.
func (m *maker) around(of []size, uneven bool) {
	m.layers++
	d := make([]unit.Millimetre, len(of))
	for i, s := range of {
		d[i] = unit.Millimetre(s.over)
	}
	r := lay.Lay(d, lay.Bed{Crown: unit.Millimetre(m.crown), Tape: unit.Millimetre(m.tape)}, lay.Laying{Ratio: 12})
	n := len(of)
	step, share := make([]float64, n), make([]float64, n)
	room, shares := 2*math.Pi, 0.0
	for i := range of {
		j := (i + 1) % n
		a, b, apart := float64(r.Radii[i]), float64(r.Radii[j]), (of[i].over+of[j].over)/2
		step[i] = math.Acos((a*a + b*b - apart*apart) / (2 * a * b))
		room -= step[i]
		share[i] = 1
		if uneven {
			share[i] = math.Pow(m.Float64(), 4)
		}
		shares += share[i]
	}
	if room < 0 {
		m.t.Fatal("the generator lays more in a layer than it takes")
	}
	angle := m.Float64() * 2 * math.Pi
	for i, s := range of {
		m.put(s, float64(r.Radii[i]), angle, float64(r.Loss))
		angle += step[i] + room*share[i]/shares
	}
	m.crown, m.tape = float64(r.Over), float64(r.Tape)
}

// full is how many of a size a layer takes.
func (m *maker) full(s size) int {
	n := 3
	for {
		d := slices.Repeat([]unit.Millimetre{unit.Millimetre(s.over)}, n+1)
		r := lay.Lay(d, lay.Bed{Crown: unit.Millimetre(m.crown), Tape: unit.Millimetre(m.tape)}, lay.Laying{Ratio: 12})
		if 2*float64(r.Inner) > m.crown*1.02 {
			return n
		}
		n++
	}
}

// load puts currents on, in the proportions of a way to load, and says which. Afterwards they are
// scaled so that the hottest is about so many kelvin over the air.
func (m *maker) load(way int) string {
	outer := func() int { return len(m.wires) - 1 - m.IntN(len(m.wires)-slices.Index(m.layer, m.layers)) }
	// What a wire bears goes about with its conductor to the power of 1.5.
	amps := func(i int) unit.Ampere {
		return unit.Ampere(math.Pow(float64(m.wires[i].Conductor), 1.5) * (0.5 + m.Float64()))
	}
	switch way {
	case 0:
		i := outer()
		m.wires[i].Amps = amps(i)
		return "one outer"
	case 1:
		i := m.IntN(slices.Index(m.layer, m.layers)) // of any layer but the last
		m.wires[i].Amps = amps(i)
		return "one inner"
	case 2:
		n := 2 + m.IntN(len(m.wires)/3)
		for _, i := range m.Perm(len(m.wires))[:n] {
			m.wires[i].Amps = amps(i)
		}
		return fmt.Sprintf("%d here and there", n)
	case 3:
		for i := range m.wires {
			m.wires[i].Amps = 1
		}
		return "all alike"
	case 4:
		for i := range m.wires {
			if m.layer[i] < 2 {
				m.wires[i].Amps = amps(i) / 4
			}
		}
		i := outer()
		m.wires[i].Amps = 1.5 * amps(i)
		return "the inner ones and one outer"
	default:
		for i := range m.wires {
			m.wires[i].Amps = amps(i)
		}
		return "all, each its own"
	}
}

// generate is case n of thirty, without its result.
func generate(t *testing.T, n int) Case {
	m := newMaker(t, n)
	pick := func(from, to int) size { return sizes[from+m.IntN(to-from+1)] }
	what := ""
	less := func(full int) (int, bool) { // half of the cases have room in the last layer
		if n%4 == 0 || n%4 == 3 {
			return full, false
		}
		return full - 1 - m.IntN(max(1, full/5)), m.IntN(3) > 0
	}
	switch {
	case n < 23: // one size
		rings := 1
		s := pick(0, 5)
		switch {
		case n >= 21:
			rings, s = 4, pick(0, 2)
		case n >= 14:
			rings, s = 3, pick(0, 4)
		case n >= 6:
			rings = 2
		}
		m.centre(s, false)
		for k := 1; k <= rings; k++ {
			count, uneven := 6*k, false
			if k == rings {
				count, uneven = less(count)
			}
			m.around(slices.Repeat([]size{s}, count), uneven)
		}
		what = fmt.Sprintf("%d × %s", len(m.wires), s.name)
	case n < 27: // two larger ones in the middle
		big := 3 + m.IntN(3)
		s := sizes[m.IntN(big-1)]
		m.centre(sizes[big], true)
		rings := 1 + n%2
		for k := 1; k <= rings; k++ {
			count, uneven := m.full(s), false
			if k == rings {
				count, uneven = less(count)
			}
			m.around(slices.Repeat([]size{s}, count), uneven)
		}
		what = fmt.Sprintf("2 × %s and %d × %s", sizes[big].name, len(m.wires)-2, s.name)
	default: // two sizes mixed in each layer
		a := m.IntN(4)
		one, two := sizes[a], sizes[a+1]
		m.centre(two, false)
		for range 2 {
			of := make([]size, m.full(two))
			for i := range of {
				of[i] = one
				if m.IntN(2) == 0 {
					of[i] = two
				}
			}
			m.around(of, false)
		}
		what = fmt.Sprintf("%d of %s and %s mixed", len(m.wires), one.name, two.name)
	}
	how := m.load(n % 6)
	c := Case{Name: what + ", " + how, Wires: m.wires, SheathInner: unit.Millimetre(math.Round(m.crown*1e4) / 1e4),
		SheathWall: unit.Millimetre(m.between(0.4, 1.3)), Air: unit.Celsius(m.between(20, 110))}
	rise := math.Min(m.between(20, 140), 230-float64(c.Air))
	for range 6 { // a rise goes about with the square of the currents
		r, err := c.Solve(0.12)
		scale := 0.5 // where there is no steady state
		if err == nil {
			scale = math.Sqrt(rise / float64(r.Hottest()-c.Air))
		}
		for i := range c.Wires {
			c.Wires[i].Amps *= unit.Ampere(scale)
		}
	}
	for i := range c.Wires {
		c.Wires[i].Amps = unit.Ampere(math.Round(float64(c.Wires[i].Amps)*100) / 100)
	}
	return c
}

// The thirty come out of the generator as they are in the file, and finite volumes with cells
// of another size give what the file has, within 1 % of each wire's rise.
func TestVolumes(t *testing.T) {
	const count = 30
	if *update {
		var out bytes.Buffer
		out.WriteString("[\n")
		for n := range count {
			c := generate(t, n)
			r, err := c.Solve(0.04)
			if err != nil {
				t.Fatal(c.Name, err)
			}
			for i, v := range r.Conductors {
				r.Conductors[i] = unit.Celsius(math.Round(float64(v)*100) / 100)
			}
			r.Surface = unit.Celsius(math.Round(float64(r.Surface)*100) / 100)
			c.Want = r
			text, err := json.Marshal(c)
			if err != nil {
				t.Fatal(err)
			}
			out.Write(text)
			if n < count-1 {
				out.WriteByte(',')
			}
			out.WriteByte('\n')
			t.Logf("%s: air %.0f, hottest %.1f, surface %.1f", c.Name, c.Air, r.Hottest(), r.Surface)
		}
		out.WriteString("]\n")
		if err := os.WriteFile(dataFile(t), out.Bytes(), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	cases := Cases(t)
	if len(cases) != count {
		t.Fatalf("%d cases in the file, not %d", len(cases), count)
	}
	for n, want := range cases {
		c := generate(t, n)
		if c.Name != want.Name || len(c.Wires) != len(want.Wires) || c.Air != want.Air || c.SheathWall != want.SheathWall ||
			math.Abs(float64(c.SheathInner-want.SheathInner)) > 1e-3 {
			t.Errorf("case %d: the generator gives %s of %d wires, the file has %s", n, c.Name, len(c.Wires), want.Name)
			continue
		}
		for i, w := range c.Wires {
			o := want.Wires[i]
			if math.Hypot(float64(w.X-o.X), float64(w.Y-o.Y)) > 1e-3 || w.Over != o.Over || w.Conductor != o.Conductor ||
				math.Abs(float64(w.OhmPerKm-o.OhmPerKm)) > 0.01 || math.Abs(float64(w.Amps-o.Amps)) > 0.02 {
				t.Errorf("%s, wire %d: the generator gives %v, the file has %v", c.Name, i, w, o)
			}
		}
		again(t, want)
	}
}
