package cliff

import (
	"regexp"
	"slices"
	"strings"
	"testing"

	"contralay/calc/sheet"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// A strip made by hand: what is said hangs on OD, layers, centre and tube alone.
type at struct {
	over   float64
	layers int // the centre among them
	centre int
	tube   string
	rings  int
}

func strip(what What, least, now int, ends string, points ...at) *Strip {
	s := Begin(Ask{What: what, Size: "22", Least: least, Now: now, Most: least + len(points) - 1, Ends: ends})
	for k, a := range points {
		p := Point{N: least + k, OverMM: unit.Millimetre(a.over), Rings: a.rings}
		if a.layers > 0 {
			b := &sheet.Branch{Layers: make([]sheet.Layer, a.layers)}
			b.Layers[0].Members = make([]sheet.Member, a.centre)
			p.Branch = b
		}
		if a.tube != "" {
			p.Tube = catalogue.Tube{ID: "kind " + a.tube, ShelfLabel: a.tube + " (9.5 / 4.8)"}
		}
		s.Put(p)
	}
	return s
}

func TestSays(t *testing.T) {
	thin, thick := at{over: 10.2, layers: 3, centre: 2, tube: "3/8"}, at{over: 12.4, layers: 4, centre: 1, tube: "1/2"}
	for _, c := range []struct {
		name  string
		strip *Strip
		short string
		want  []string
	}{
		{"a layer and a tube", strip(Wires, 22, 22, "", thin, thin, thick), "1 still fits, then a new layer",
			[]string{"One more still fits.", "The 24th starts a new layer: OD 12.4 mm and the next tube, 1/2."}},
		{"the tube later", strip(Wires, 21, 21, "", thin, at{10.9, 3, 3, "3/8", 0}, thick), "OD 10.9 mm",
			[]string{"The 22nd needs a centre of 3: OD 10.9 mm.", "The 23rd starts a new layer: OD 12.4 mm and the next tube, 1/2."}},
		{"the tube alone", strip(Wires, 10, 10, "", thin, at{10.2, 3, 2, "1/2", 0}), "tube 1/2",
			[]string{"The 11th needs the next tube, 1/2."}},
		{"no tube", strip(Wires, 100, 100, "", thin, at{10.2, 3, 2, "", 0}), "no tube",
			[]string{"With the 101st no tube holds any more."}},
		{"a tube at last", strip(Wires, 10, 10, "", at{5, 2, 5, "", 0}, at{5.3, 3, 1, "3/8", 0}), "a new layer, OD 5.3 mm",
			[]string{"The 11th starts a new layer: OD 5.3 mm and tube 3/8."}},
		{"all fit", strip(Wires, 10, 10, "", thin, thin, thin), "2 still fit", []string{"2 more still fit."}},
		{"the ends", strip(Spares, 0, 0, "Both ends have cavities for 2 more", thin, thin, at{10.5, 3, 2, "3/8", 0}),
			"1 still fits, then OD 10.5 mm",
			[]string{"One more still fits.", "The 2nd spare makes it thicker: OD 10.5 mm.", "Both ends have cavities for 2 more."}},
		{"no spare more", strip(Spares, 0, 1, "No spare can be added: no cavity is free at the A end", at{9.8, 2, 2, "3/8", 0}, thin),
			"none can be added",
			[]string{"No spare can be added: no cavity is free at the A end.", "With 1 fewer it is 9.8 mm, a layer less."}},
		{"fewer", strip(Wires, 20, 22, "", at{8, 3, 1, "5/16", 0}, thin, thin), "none can be added",
			[]string{"With 2 fewer it is 8.0 mm, in tube 5/16."}},
		{"no lay-up", strip(Wires, 12, 12, "", thin, at{}), "no lay-up", []string{"No lay-up takes the 13th."}},
		{"none at all", strip(Wires, 12, 12, "", at{}), "no lay-up", []string{"No lay-up of 12 wires of size 22 keeps what is locked."}},
		{"thicker with fewer", strip(Wires, 3, 4, "", at{11.5, 3, 2, "3/8", 0}, at{11.1, 3, 2, "3/8", 1}), "none can be added",
			[]string{"With 1 fewer it is 11.5 mm.",
				"3 wires of size 22 come out thicker than 4: 11.5 mm against 11.1 mm. With 1 filler more, 3 are as thin as 4."}},
		{"thinner with more", strip(Wires, 1, 1, "", at{7.3, 2, 2, "3/8", 0}, at{6.9, 2, 2, "3/8", 0}), "OD 6.9 mm",
			[]string{"The 2nd makes it thinner: OD 6.9 mm.", "1 wire of size 22 comes out thicker than 2: 7.3 mm against 6.9 mm."}},
	} {
		if got := c.strip.Says(unit.MM); !slices.Equal(got, c.want) {
			t.Errorf("%s: %q\nwant %q", c.name, got, c.want)
		}
		got := ""
		if all := c.strip.Short(unit.MM); len(all) > 0 {
			got = all[0]
		}
		if got != c.short {
			t.Errorf("%s in short: %q, want %q", c.name, got, c.short)
		}
	}
}

// A centre that is built up, or built up to more, is what the next one needs.
func TestSaysABuiltUpCentre(t *testing.T) {
	s := strip(Wires, 19, 19, "", at{5.5, 3, 1, "3/8", 0}, at{5.8, 3, 1, "3/8", 0}, at{6.2, 3, 1, "3/8", 0}, at{6.5, 3, 2, "3/8", 0})
	s.points[1].Branch.Layers[0].BuiltMM, s.points[2].Branch.Layers[0].BuiltMM = 0.37, 0.71
	for n, want := range map[int]string{20: "The 20th needs a built-up centre: OD 5.8 mm.",
		21: "The 21st needs a built-up centre: OD 6.2 mm.",
		22: "The 22nd needs a centre of 2: OD 6.5 mm.", 19: ""} {
		if got := s.Comes(n, unit.MM); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
}

// The lay-up in use is told from the one that is proposed where their OD is not the same.
func TestSaysHowItIsLaid(t *testing.T) {
	s := strip(Wires, 22, 22, "", at{9.8, 3, 2, "3/8", 0}, at{9.8, 3, 2, "3/8", 0})
	s.Laid = Point{N: 22, OverMM: 10.2, Branch: &sheet.Branch{Layers: []sheet.Layer{{}, {Room: 1}}}}
	want := []string{"As it is laid: OD 10.2 mm, room for 1.", "Laid as proposed: 9.8 mm.", "One more still fits."}
	if got := s.Says(unit.MM); !slices.Equal(got, want) {
		t.Errorf("%q", got)
	}
	if got := s.Short(unit.MM); len(got) == 0 || got[0] != "room 1; 1 if laid as proposed" || !slices.Contains(got, "1 still fits") {
		t.Errorf("in short %q", got)
	}
}

// Counts are asked for from the present one outwards; what is not worked out is not spoken of.
func TestNextAndNear(t *testing.T) {
	full := strip(Wires, 3, 5, "", at{1, 1, 1, "", 0}, at{1, 1, 1, "", 0}, at{2, 1, 1, "", 0}, at{2, 1, 1, "", 0}, at{3, 1, 1, "", 0},
		at{3, 1, 1, "", 0})
	order := func(next func(s *Strip) (int, bool)) (out []int) {
		s := Begin(full.Ask)
		for n, more := next(s); more; n, more = next(s) {
			if len(s.Says(unit.MM)) > 0 && len(out) == 0 {
				t.Error("something is said before anything is worked out")
			}
			p, _ := full.Point(n)
			s.Put(p)
			out = append(out, n)
		}
		return out
	}
	if got := order((*Strip).Next); !slices.Equal(got, []int{5, 6, 4, 7, 3, 8}) {
		t.Errorf("all: %v", got)
	}
	if got := order((*Strip).Near); !slices.Equal(got, []int{5, 6, 7, 4}) {
		t.Errorf("what the short sentence needs: %v", got)
	}
}

var tubes = regexp.MustCompile(` and (?:the next )?tube,? [^ .]+|, in tube [^ .]+|, and no tube holds| and no tube that holds`)

// Untubed is a sentence without what it says of the tube.
func Untubed(text string) string { return tubes.ReplaceAllString(text, "") }

// Of two counts that come out thicker than a greater one, as near to the present, the lesser is spoken of: 4 and 6 beside 5.
func TestSaysTheLesserOfTwoThatAreAsNear(t *testing.T) {
	s := strip(Wires, 4, 5, "", at{5.5, 3, 2, "3/8", 1}, at{5.4, 3, 2, "3/8", 0}, at{6.2, 3, 2, "3/8", 1}, at{6.0, 3, 2, "3/8", 1})
	for n, want := range map[int]bool{4: true, 5: false, 6: true, 7: false} {
		if as, _ := s.Fillable(n); (as > 0) != want {
			t.Errorf("%d is thicker than %d", n, as)
		}
	}
	if got := s.odd(unit.MM); len(got) != 1 || !strings.HasPrefix(got[0],
		"4 wires of size 22 come out thicker than 5: 5.5 mm against 5.4 mm.") {
		t.Errorf("%q", got)
	}
}
