package loop

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"contralay/model/unit"
)

// arc is the length of the bows in small straight steps, and the least radius from three
// points at a crown: another way to the same.
func arc(h, span float64, bows int) (length, radius float64) {
	const n = 40000
	y := func(x float64) float64 { return h / 2 * (1 - math.Cos(2*math.Pi*float64(bows)*x/span)) }
	for k := range n {
		length += math.Hypot(span/n, y(span*float64(k+1)/n)-y(span*float64(k)/n))
	}
	d := span / 1e4
	return length, d * d / (2*y(0) - y(d) - y(-d)) * -1
}

// The bows are as long as the wire and bent as they say.
func TestBow(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		span := rapid.Float64Range(20, 160).Draw(r, "span")
		loop := span * rapid.Float64Range(0.01, 0.8).Draw(r, "share")
		bows := rapid.IntRange(1, 6).Draw(r, "bows")
		off, radius := Bow(unit.Millimetre(loop), unit.Millimetre(span), bows)
		length, bent := arc(float64(off), span, bows)
		if math.Abs(length-span-loop) > 1e-3*span || math.Abs(float64(radius)/bent-1) > 0.01 {
			r.Fatalf("off %v, radius %v: %v longer, want %v; bent to %v", off, radius, length-span, loop, bent)
		}
	})
}

// What fits stays within the room and above the radius; the longest that fits does, and a
// little more does not.
func TestFit(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		mm := func(name string, lo, hi float64) unit.Millimetre {
			return unit.Millimetre(rapid.Float64Range(lo, hi).Draw(r, name))
		}
		span, room, radius := mm("span", 30, 160), mm("room", 2, 25), mm("radius", 1, 12)
		l := Longest(span, room, radius)
		if l <= 0 {
			return
		}
		bows, off, ok := Fit(l, span, room, radius)
		if _, bent := Bow(l, span, bows); !ok || off > room || bent < radius*0.999 {
			r.Fatalf("the longest, %v: %d bows off %v bent to %v, %v", l, bows, off, bent, ok)
		}
		if _, _, ok := Fit(l*1.001+0.001, span, room, radius); ok && l < most*span*0.999 {
			r.Fatalf("more than the longest, %v, fits", l)
		}
	})
	nan := unit.Millimetre(math.NaN())
	for _, v := range []unit.Millimetre{0, -1, nan} {
		if off, r := Bow(10, v, 2); off != 0 || r != 0 {
			t.Errorf("a span of %v: %v, %v", v, off, r)
		}
		if _, _, ok := Fit(10, v, 5, 1); ok {
			t.Errorf("a span of %v fits", v)
		}
		if _, _, ok := Fit(10, 50, v, 1); ok {
			t.Errorf("a room of %v fits", v)
		}
		if Longest(v, 5, 1) != 0 || Turn(v, 90) != 0 || Turn(10, unit.Degree(v)) != 0 || Again(v) != 0 {
			t.Errorf("%v gives something", v)
		}
	}
}

// Common practice, no source: 12.7 to 19 mm behind larger connectors, none or 5 to 8 mm in
// small sensor boots. The boots' sizes are from memory.
func TestPractice(t *testing.T) {
	const wire = 3 * 1.09 // three times a light 22 AWG
	for _, c := range []struct {
		name             string
		span, lip, over  unit.Millimetre
		least, mostLoops unit.Millimetre
	}{{"shell 18", 78, 31, 12, 12.7, 60}, {"shell 22", 97, 36, 15, 12.7, 60}, {"shell 8, a sensor", 39, 18, 5, 4, 12}} {
		if l := Longest(c.span, (c.lip-c.over)/2, wire); l < c.least || l > c.mostLoops {
			t.Errorf("%s: the longest loop is %v mm, practice %v to %v", c.name, l, c.least, c.mostLoops)
		}
	}
}

// A quarter turn takes a quarter of the circumference of the bundle from its outer side,
// and 16 mm of loop are good for two contacts, as AC 43.13-1B ¶ 11-118 asks.
func TestTurnAndAgain(t *testing.T) {
	if got := Turn(10, 90); math.Abs(float64(got)-math.Pi*10/4) > 1e-9 {
		t.Errorf("a quarter turn of 10 mm: %v", got)
	}
	for loop, want := range map[unit.Millimetre]int{0: 0, 7.9: 0, 8: 1, 16: 2, 19: 2} {
		if got := Again(loop); got != want {
			t.Errorf("%v mm: %d, want %d", loop, got, want)
		}
	}
}
