package built

import (
	"fmt"
	"reflect"
	"slices"
	"strings"
	"testing"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

func mm(v float64) model.Opt[unit.Millimetre] { return model.Some(unit.Millimetre(v)) }

func ohm(v float64) model.Opt[unit.OhmPerKilometre] { return model.Some(unit.OhmPerKilometre(v)) }

// shelved is a sheet of wires of two sizes in tubes x and y, by a catalogue that is written down.
func shelved() *sheet.Sheet {
	cat := &catalogue.Catalogue{
		Wires: map[catalogue.WireKey]catalogue.Wire{
			{Spec: "fine", Size: "22"}: {Spec: "fine", Size: "22", OverMM: 1.09004, TolMM: 0.05, OhmPerKm: 53.12345},
			{Spec: "fine", Size: "20"}: {Spec: "fine", Size: "20", OverMM: 1.27, TolMM: 0.06}},
		Tubes: []catalogue.Tube{{ID: "x", RecoveredMM: 3, WallMM: 0.8}, {ID: "y", RecoveredMM: 4.0006, WallMM: 0.9}, {ID: "z"}},
	}
	h := &model.Harness{Wires: []model.Wire{{Spec: "fine", Size: "22"}, {Spec: "lost", Size: "22"}, {Spec: "fine", Size: "22"},
		{Spec: "fine", Size: "20"}}, Branches: []model.Branch{{Covers: []model.Cover{{Part: model.Some("y")},
		{Part: model.Some("lost")}}}, {}}}
	return &sheet.Sheet{H: h, Base: cat, Cat: cat, Branches: []sheet.Branch{{Sheath: sheet.Sheath{Part: "x"}},
		{Sheath: sheet.Sheath{Part: "x"}}}}
}

// What a serial is begun with, by hand: each wire and tube of the sheet once, by name, rounded to a thousandth; what is in no
// catalogue, or in no branch, is left out.
func TestShelfByHand(t *testing.T) {
	want := []model.Shelved{
		{Spec: model.Some("fine"), Size: model.Some("20"), OverMM: mm(1.27), TolMM: mm(0.06)},
		{Spec: model.Some("fine"), Size: model.Some("22"), OverMM: mm(1.09), TolMM: mm(0.05), OhmPerKm: ohm(53.123)},
		{Part: model.Some("x"), RecoveredMM: mm(3), WallMM: mm(0.8)},
		{Part: model.Some("y"), RecoveredMM: mm(4.001), WallMM: mm(0.9)},
	}
	s := shelved()
	if got := Shelf(s); !reflect.DeepEqual(got, want) {
		t.Errorf("%+v, want\n%+v", got, want)
	}
	thin := shelved() // an ohm a km is little, and still one that is known
	w := thin.Base.Wires[catalogue.WireKey{Spec: "fine", Size: "20"}]
	w.OhmPerKm = 0.9
	thin.Base.Wires[catalogue.WireKey{Spec: "fine", Size: "20"}] = w
	if got := Shelf(thin)[0].OhmPerKm; got != ohm(0.9) {
		t.Errorf("%+v", got)
	}
}

// The catalogue that a serial was begun with, by hand: what differs by more than 0.005 mm, or a thousandth of its ohms, is as it
// was; all else is as it is, and the catalogue itself is not touched.
func TestBegunCatalogueByHand(t *testing.T) {
	wire := func(size string, over, tol, ohms model.Opt[unit.Millimetre]) model.Shelved {
		return model.Shelved{Spec: model.Some("fine"), Size: model.Some(size), OverMM: over, TolMM: tol,
			OhmPerKm: model.Opt[unit.OhmPerKilometre]{V: unit.OhmPerKilometre(ohms.V), Set: ohms.Set}}
	}
	tube := func(id string, recovered, wall model.Opt[unit.Millimetre]) model.Shelved {
		return model.Shelved{Part: model.Some(id), RecoveredMM: recovered, WallMM: wall}
	}
	var none model.Opt[unit.Millimetre]
	for _, c := range []struct {
		name  string
		shelf []model.Shelved
		want  string // over, tolerance and ohms of 22 and 20, bore and wall of x and y; "" where nothing moved
	}{
		{"nothing", nil, ""},
		{"as it is", []model.Shelved{wire("22", mm(1.09), mm(0.05), mm(53.12)), tube("x", mm(3), mm(0.8))}, ""},
		{"of nobody", []model.Shelved{wire("10", mm(9), mm(9), none), tube("lost", mm(9), mm(9))}, ""},
		{"a hair", []model.Shelved{wire("20", mm(1.2748), mm(0.0552), none), tube("y", mm(4.005), mm(0.9048))}, ""},
		{"thicker", []model.Shelved{wire("20", mm(1.2753), none, none)},
			"1.0900 0.05 53.123; 1.2753 0.06 0.000; x 3.0000 0.800; y 4.0006 0.900"},
		{"thinner", []model.Shelved{wire("20", mm(1.2), mm(0.06), none)},
			"1.0900 0.05 53.123; 1.2000 0.06 0.000; x 3.0000 0.800; y 4.0006 0.900"},
		{"wider", []model.Shelved{wire("22", none, mm(0.07), none)},
			"1.0900 0.07 53.123; 1.2700 0.06 0.000; x 3.0000 0.800; y 4.0006 0.900"},
		{"more ohms", []model.Shelved{wire("22", none, none, mm(53.18))},
			"1.0900 0.05 53.180; 1.2700 0.06 0.000; x 3.0000 0.800; y 4.0006 0.900"},
		{"a hair of ohms", []model.Shelved{wire("22", none, none, mm(53.174))}, ""},
		{"another bore", []model.Shelved{tube("y", mm(3.9), none)},
			"1.0900 0.05 53.123; 1.2700 0.06 0.000; x 3.0000 0.800; y 3.9000 0.900"},
		{"another wall", []model.Shelved{tube("x", mm(3.002), mm(0.81))},
			"1.0900 0.05 53.123; 1.2700 0.06 0.000; x 3.0020 0.810; y 4.0006 0.900"},
		{"all of it", []model.Shelved{tube("y", mm(5), mm(1)), wire("22", mm(1), mm(0.1), mm(50)), tube("x", mm(2), mm(0.5)),
			wire("20", mm(1.5), mm(0.2), mm(30)), wire("10", mm(9), none, none), tube("x", mm(3), mm(0.8))},
			"1.0000 0.10 50.000; 1.5000 0.20 30.000; x 2.0000 0.500; y 5.0000 1.000"},
	} {
		was := shelved().Base
		cat := shelved().Base
		got := Begun(cat, &model.Build{Shelf: c.shelf})
		if (got == cat) != (c.want == "") || !reflect.DeepEqual(cat, was) {
			t.Errorf("%s: the same catalogue %v, itself %+v", c.name, got == cat, cat)
		}
		if c.want == "" {
			continue
		}
		var says []string
		for _, size := range []string{"22", "20"} {
			w := got.Wires[catalogue.WireKey{Spec: "fine", Size: size}]
			says = append(says, fmt.Sprintf("%.4f %.2f %.3f", float64(w.OverMM), float64(w.TolMM), float64(w.OhmPerKm)))
		}
		for _, u := range got.Tubes[:2] {
			says = append(says, fmt.Sprintf("%s %.4f %.3f", u.ID, float64(u.RecoveredMM), float64(u.WallMM)))
		}
		if text := strings.Join(says, "; "); text != c.want || len(got.Tubes) != 3 || len(got.Wires) != 2 {
			t.Errorf("%s: %s, want %s", c.name, text, c.want)
		}
	}
}

// What the shop has learned since a serial was begun, by hand: of ODs and walls alone; a group that it was not begun with is
// withdrawn, one that it was begun with comes back, and one that reads as it did stays.
func TestBegunLessonsByHand(t *testing.T) {
	of := func(of string, bias unit.Ratio) catalogue.Correction { return catalogue.Correction{Of: of, Bias: bias} }
	gone := func(of string) catalogue.Correction { return catalogue.Correction{Of: of, Withdrawn: true} }
	two := of("over, 2 layers", 0.02)
	for _, c := range []struct {
		name   string
		goesBy []string
		shop   []catalogue.Correction
		want   []catalogue.Correction
	}{
		{"not known", nil, []catalogue.Correction{two}, nil},
		{"nothing then, nothing now", []string{}, nil, nil},
		{"learned since", []string{}, []catalogue.Correction{of("wall, x", 0.2), two, of("wire used, fine 22", 0.1), of("wall, x", 0.3)},
			[]catalogue.Correction{gone("over, 2 layers"), gone("wall, x")}},
		{"as it was", []string{"over, 2 layers: +2.0 %"}, []catalogue.Correction{two}, nil},
		{"another since", []string{"over, 2 layers: +2.0 %"}, []catalogue.Correction{two, of("over, 2 layers", 0.05)},
			[]catalogue.Correction{two}},
		{"gone from the history", []string{"over, 2 layers: +2.0 %", "wall, x: -3.0 %"}, nil, []catalogue.Correction{two, of("wall, x",
			-0.03)}},
		{"withdrawn since", []string{"over, 2 layers: +2.0 %"}, []catalogue.Correction{two, gone("over, 2 layers")},
			[]catalogue.Correction{two}},
		{"words without a group", []string{": +2.0 %", "nothing"}, nil, nil},
	} {
		cat := &catalogue.Catalogue{Corrections: c.shop}
		b := &model.Build{GoesBy: c.goesBy}
		if got := begunLessons(cat, b); !slices.Equal(got, c.want) {
			t.Errorf("%s: %+v, want %+v", c.name, got, c.want)
		}
		if got := Begun(cat, b).Corrections; !slices.Equal(got, slices.Concat(c.shop, c.want)) || len(cat.Corrections) != len(c.shop) {
			t.Errorf("%s: the catalogue has %+v", c.name, got)
		}
	}
}

// What is said of a catalogue that has changed, in whole sentences: once, until somebody decides, and never of what is finished. What
// the file has measured for itself is none of the catalogue.
func TestCatalogueHasChanged(t *testing.T) {
	wire := model.Shelved{Spec: model.Some("fine"), Size: model.Some("20"), OverMM: mm(1.2), TolMM: mm(0.05)}
	over := "wire fine, 20 AWG, is 1.27 mm (1.21 to 1.33), was 1.20 mm (1.15 to 1.25)"
	open := wire
	open.TolMM = model.Opt[unit.Millimetre]{}
	band := wire
	band.OverMM = mm(1.27)
	ohms := model.Shelved{Spec: model.Some("fine"), Size: model.Some("22"), OhmPerKm: ohm(50)}
	tube := model.Shelved{Part: model.Some("x"), RecoveredMM: mm(2.5), WallMM: mm(0.7)}
	bore, wall := "x recovers to 3.00 mm, was 2.50", "the wall of x is 0.80 mm, was 0.70"
	for _, c := range []struct {
		name   string
		shelf  []model.Shelved
		change func(s *sheet.Sheet, b *model.Build)
		want   []string
	}{
		{"nothing", []model.Shelved{{Spec: model.Some("fine"), Size: model.Some("20"), OverMM: mm(1.27), TolMM: mm(0.06)}}, nil, nil},
		{"a wire", []model.Shelved{wire}, nil, []string{over}},
		{"a wire whose tolerance was not kept", []model.Shelved{open}, nil,
			[]string{"wire fine, 20 AWG, is 1.27 mm (1.21 to 1.33), was 1.20 mm (1.14 to 1.26)"}},
		{"its tolerance", []model.Shelved{band}, nil, []string{"wire fine, 20 AWG, is 1.27 mm (1.21 to 1.33), was 1.27 mm (1.22 to 1.32)"}},
		{"its ohms", []model.Shelved{ohms}, nil, []string{"wire fine, 22 AWG, is 53.1 ohm a km, was 50.0"}},
		{"a tube", []model.Shelved{tube}, nil, []string{wall, bore}},
		{"all", []model.Shelved{tube, wire, ohms}, nil, []string{wall, bore, over, "wire fine, 22 AWG, is 53.1 ohm a km, was 50.0"}},
		{"of nobody", []model.Shelved{{Part: model.Some("lost"), WallMM: mm(1), RecoveredMM: mm(1)}, {Spec: model.Some("lost"),
			Size: model.Some("22"), OverMM: mm(1), OhmPerKm: ohm(1)}}, nil, nil},
		{"measured", []model.Shelved{tube, wire}, func(s *sheet.Sheet, _ *model.Build) {
			s.H.Reels = []model.Reel{{Spec: "fine", Size: "22"}, {Spec: "fine", Size: "20"}}
			s.H.Parts = []model.Part{{ID: "y", WallMM: mm(1)}, {ID: "x", WallMM: mm(1)}}
		}, []string{bore}},
		{"others measured", []model.Shelved{tube, wire}, func(s *sheet.Sheet, _ *model.Build) {
			s.H.Reels = []model.Reel{{Spec: "fine", Size: "22"}, {Spec: "coarse", Size: "20"}}
			s.H.Parts = []model.Part{{ID: "y", WallMM: mm(1)}, {ID: "x"}}
		}, []string{wall, bore, over}},
		{"finished", []model.Shelved{wire}, func(_ *sheet.Sheet, b *model.Build) { b.Steps = []model.Ticked{{Key: HoldLoaded}} }, nil},
		{"kept", []model.Shelved{wire}, func(_ *sheet.Sheet, b *model.Build) {
			b.Apart = []model.Deviation{{At: AboutCatalogue, Says: "what it was begun with is kept: the catalogue has changed: " + over}}
		}, nil},
		{"another kept", []model.Shelved{wire}, func(_ *sheet.Sheet, b *model.Build) {
			says := "what it was begun with is kept: the catalogue has changed: "
			b.Apart = []model.Deviation{{At: AboutCatalogue, Says: says + bore}, {At: "T", Says: says + over}}
		}, []string{over}},
	} {
		s, b := shelved(), &model.Build{Shelf: c.shelf}
		if c.change != nil {
			c.change(s, b)
		}
		cmp := &comparison{s: s, b: b}
		cmp.catalogue()
		if c.want == nil {
			if len(cmp.out) != 0 {
				t.Errorf("%s: %+v", c.name, cmp.out)
			}
			continue
		}
		says := "the catalogue has changed: " + strings.Join(c.want, "; ")
		if len(cmp.out) != 1 || cmp.out[0].At != "catalogue" || cmp.out[0].Says != says || cmp.out[0].Built != "what it was begun with" {
			t.Errorf("%s: %+v, want %s", c.name, cmp.out, says)
			continue
		}
		// Somebody decides to build on by the catalogue of today.
		for _, on := range []string{"", "2026-05-01"} {
			taken := *b
			cmp.out[0].Take(s, &taken, "Ada", on)
			dev := model.Deviation{At: "catalogue", Says: "it goes by the catalogue of today from here on: " + says, By: model.Some("Ada"),
				On: model.Opt[string]{V: on, Set: on != ""}}
			if n := len(taken.Apart); n != len(b.Apart)+1 || !reflect.DeepEqual(taken.Apart[n-1], dev) ||
				!reflect.DeepEqual(taken.Shelf, Shelf(s)) {
				t.Errorf("%s: taken as %+v", c.name, taken)
			}
		}
	}
}
