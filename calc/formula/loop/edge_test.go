package loop

import (
	"math"
	"testing"

	"contralay/model/unit"
)

func alike(a, b unit.Millimetre) bool { return math.Abs(float64(a-b)) <= 1e-6*math.Abs(float64(b)) }

// A loop a hundredth of the size has bows a hundredth of the size, down to where all is far below a millimetre.
func TestLoopsOfEverySize(t *testing.T) {
	const to = 0.001
	off, r := Bow(40, 80, 2)
	smallOff, smallR := Bow(40*to, 80*to, 2)
	if !alike(smallOff, off*to) || !alike(smallR, r*to) || off <= 0 || r <= 0 {
		t.Errorf("%v and %v, small %v and %v", off, r, smallOff, smallR)
	}
	bows, off, ok := Fit(40, 80, 12, 3)
	smallBows, smallOff, smallOK := Fit(40*to, 80*to, 12*to, 3*to)
	if bows != smallBows || !alike(smallOff, off*to) || ok != smallOK {
		t.Errorf("%d bows %v off, small %d bows %v off", bows, off, smallBows, smallOff)
	}
	if l, small := Longest(80, 12, 3), Longest(80*to, 12*to, 3*to); !alike(small, l*to) || l <= 0 {
		t.Errorf("the longest %v, small %v", l, small)
	}
	if got := Turn(0.5, 0.5); !alike(got, unit.Millimetre(0.25*0.5*math.Pi/180)) {
		t.Errorf("half a degree of half a millimetre takes %v", got)
	}
}

// What fits, by the bow alone: so many bows stand off so many times less, and are bent so many times less wide. It fits exactly at the
// room and the radius, and no more beyond.
func TestFitEdges(t *testing.T) {
	one, r := Bow(40, 80, 1)
	for _, c := range []struct {
		room, radius unit.Millimetre
		bows         int
		ok           bool
	}{
		{one, 1e-6, 2, true}, {one / 2, r / 2, 2, true}, {one / 2, r / 2 * 1.0001, 2, false}, {one / 2 * 0.9999, 1e-6, 3, true},
		{one / 4, r / 4, 4, true}, {one / 4, r / 3.99, 4, false}, {one / 999.5, 0, 1000, true}, {one / 1050, 0, 1000, false},
	} {
		bows, off, ok := Fit(40, 80, c.room, c.radius)
		if bows != c.bows || !alike(off, one/unit.Millimetre(c.bows)) || ok != c.ok {
			t.Errorf("room %v, radius %v: %d bows %v off, %v; want %d", c.room, c.radius, bows, off, ok, c.bows)
		}
	}
	for _, no := range []unit.Millimetre{0, -1, unit.Millimetre(math.NaN())} {
		if bows, off, ok := Fit(no, 80, 5, 1); bows != 0 || off != 0 || !ok {
			t.Errorf("no loop: %d bows %v off, %v", bows, off, ok)
		}
		for _, c := range [][2]unit.Millimetre{{no, 5}, {80, no}, {no, no}} {
			if bows, off, ok := Fit(40, c[0], c[1], 1); bows != 0 || off != 0 || ok {
				t.Errorf("span and room %v: %d bows %v off, %v", c, bows, off, ok)
			}
		}
		if off, r := Bow(no, 80, 2); off != 0 || r != 0 {
			t.Errorf("no loop: %v off, bent to %v", off, r)
		}
		if Again(no) != 0 || Turn(no, 90) != 0 || Turn(5, unit.Degree(no)) != 0 {
			t.Errorf("%v gives something", no)
		}
	}
	if off, r := Bow(40, 80, 0); off != 0 || r != 0 {
		t.Errorf("no bow: %v off, bent to %v", off, r)
	}
	// Up to three times its span it is a loop, beyond a coil.
	if off, _ := Bow(240, 80, 2); !(off > 0) {
		t.Error("240 mm over 80 are no loop")
	}
	if off, r := Bow(240.1, 80, 2); off != 0 || r != 0 {
		t.Errorf("240.1 mm over 80: %v off, bent to %v", off, r)
	}
	if l := Longest(80, 0, 3); l != 0 {
		t.Errorf("%v mm fit without room", l)
	}
	if Again(1e9) != 1000 || Again(8*999) != 999 {
		t.Error("a contact can be made anew 1000 times at most")
	}
}
