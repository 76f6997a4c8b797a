package cross_test

import (
	"math"
	"path/filepath"
	"slices"
	"testing"

	"contralay/calc"
	"contralay/calc/sheet"
	"contralay/model/catalogue"
	"contralay/model/file"
	"contralay/model/unit"
	"contralay/ui/cross"
	"contralay/ui/draw"
)

func load(t *testing.T, name string) *sheet.Sheet {
	t.Helper()
	d, err := file.Load(filepath.Join("..", "..", "testdata", name))
	if err != nil {
		t.Fatal(err)
	}
	cat, err := catalogue.Default()
	if err != nil {
		t.Fatal(err)
	}
	return calc.Complete(&d.Harness, cat, nil)
}

// Every piece of a branch is in its section once, where it lies, with its colour code.
func TestSectionHoldsEveryPiece(t *testing.T) {
	s := load(t, "demo.toml")
	for i := range s.Branches {
		b := &s.Branches[i]
		out := cross.Of(s, i)
		n := 0
		for k, l := range b.Layers {
			for _, c := range l.Members {
				d := out.Discs[n]
				n++
				code := ""
				if w, is := s.Index.Wire[c.ID]; is {
					code = s.H.Wires[w].Colour.V
				}
				if c.Kind != sheet.OfFiller && d.ID != c.ID || d.X != c.X || d.Y != c.Y || d.D != c.D || d.Layer != k || d.Code != code {
					t.Errorf("%s: %+v is drawn as %+v", s.H.Branches[i].ID, c, d)
				}
			}
		}
		if n != len(out.Discs) {
			t.Errorf("%s: %d discs for %d pieces", s.H.Branches[i].ID, len(out.Discs), n)
		}
	}
}

// The cores of a unit touch each other and lie inside it: the circle round two that touch is twice
// as wide as one of them, and C1 has a shield and a jacket outside of that.
func TestCoresLieInTheirUnit(t *testing.T) {
	s := load(t, "demo.toml")
	seen := 0
	for i := range s.Branches {
		for _, d := range cross.Of(s, i).Discs {
			if d.Kind != draw.Unit {
				continue
			}
			seen++
			if len(d.Cores) != len(s.H.Units[s.Index.Unit[d.ID]].Wires) {
				t.Errorf("%s has %d cores", d.ID, len(d.Cores))
			}
			for k, c := range d.Cores {
				if out := math.Hypot(float64(c.X), float64(c.Y)) + float64(c.D)/2; out > float64(d.D)/2+1e-9 {
					t.Errorf("core %d of %s reaches %.3f mm of %.3f", k, d.ID, out, float64(d.D)/2)
				}
				next := d.Cores[(k+1)%len(d.Cores)]
				gap := math.Hypot(float64(c.X-next.X), float64(c.Y-next.Y)) - float64(c.D+next.D)/2
				if len(d.Cores) == 2 && math.Abs(gap) > 1e-9 {
					t.Errorf("the cores of %s are %.4f mm apart", d.ID, gap)
				}
			}
		}
	}
	if seen == 0 {
		t.Error("no unit was seen")
	}
}

// A layer in hand: its pieces carry their numbers, all others are dimmed. A piece in hand: it and
// the two beside it in its layer. What is not there changes nothing.
func TestTakeInHand(t *testing.T) {
	s := load(t, "demo.toml")
	i := s.Index.Branch["T1"]
	layer := s.Branches[i].Layers[2]
	out := cross.Of(s, i)
	cross.TakeLayer(s, i, &out, 2)
	for _, d := range out.Discs {
		if d.Numbered != (d.Layer == 2) || d.Dim == d.Numbered {
			t.Errorf("layer 2 in hand: %s of layer %d is numbered %v, dim %v", d.ID, d.Layer, d.Numbered, d.Dim)
		}
	}
	if out.Turn != draw.ToLeft || layer.Hand != "LH" {
		t.Errorf("layer 2 is %s and its arrow %d", layer.Hand, out.Turn)
	}
	out = cross.Of(s, i)
	n := len(layer.Members)
	cross.TakePiece(s, i, &out, layer.Members[0].ID)
	var numbered []string
	for _, d := range out.Discs {
		if d.Numbered {
			numbered = append(numbered, d.ID)
		}
		if d.Selected != (d.ID == layer.Members[0].ID) || d.Dim == d.Numbered {
			t.Errorf("%+v", d)
		}
	}
	want := []string{layer.Members[0].ID, layer.Members[1].ID, layer.Members[n-1].ID}
	if !slices.Equal(numbered, want) {
		t.Errorf("numbered are %v, want %v", numbered, want)
	}
	out = cross.Of(s, i)
	cross.TakePiece(s, i, &out, "")
	cross.TakePiece(s, i, &out, "none such")
	for _, d := range out.Discs {
		if d.Numbered || d.Dim || d.Selected {
			t.Errorf("nothing in hand: %+v", d)
		}
	}
}

// Every way of colouring gives each piece a class that its names know; the names of the ways are
// those a command takes.
func TestClasses(t *testing.T) {
	s := load(t, "demo.toml")
	for by := cross.ByDestination; by < cross.End; by++ {
		if got, ok := cross.Find(by.String()); !ok || got != by {
			t.Errorf("%s is found as %v", by, got)
		}
		for i := range s.Branches {
			out := cross.Of(s, i)
			names := cross.Paint(s, i, &out, by, unit.MM)
			if len(names) == 0 && len(out.Discs) > 0 || len(names) > draw.Classes || !out.ByClass {
				t.Errorf("%s by %s: names %v", s.H.Branches[i].ID, by, names)
			}
			for _, d := range out.Discs {
				if d.Class < 0 || d.Class >= max(len(names), 1) {
					t.Errorf("%s by %s: class %d of %v", d.ID, by, d.Class, names)
				}
			}
		}
	}
	if _, ok := cross.Find("weight"); ok {
		t.Error("there is no way by weight")
	}
	out := cross.Of(s, 0)
	if names := cross.Paint(s, 0, &out, cross.ByColour, unit.MM); names != nil || out.ByClass {
		t.Errorf("by insulation there are no classes: %v", names)
	}
}

// A layer is as tight as its limits say: the same lift is tight above lift_max and will not close
// above lift_tight.
func TestTightness(t *testing.T) {
	s := load(t, "demo.toml")
	i := s.Index.Branch["T1"]
	for _, c := range []struct {
		lift   unit.Ratio
		room   int
		closes bool
		want   string
	}{
		{0, 0, true, "closes easily"}, {0, 2, true, "has room"}, {0.06, 0, true, "tight"}, {0.09, 0, true, "will not close"},
		{0, 0, false, "will not close"},
	} {
		l := &s.Branches[i].Layers[1]
		l.Lift, l.Room, l.Closes = c.lift, c.room, c.closes
		classes := cross.ClassesOf(s, i, cross.ByTightness, unit.MM)
		if got := classes.Names[classes.Of(1, l.Members[0])]; got != c.want {
			t.Errorf("lift %.2f, room %d, closes %v is %q, want %q", float64(c.lift), c.room, c.closes, got, c.want)
		}
	}
}
