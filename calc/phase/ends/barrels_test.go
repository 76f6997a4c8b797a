package ends

import (
	"math"
	"testing"

	"contralay/calc/formula/join"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// copper is a conductor of so many circular mils.
func copper(mils unit.CircularMil) catalogue.Wire { return catalogue.Wire{AreaMM2: mils.SquareMM()} }

// barrelOf is a catalogue with one contact for 24 to 20 AWG, of 500 and 1000 circular mils, and a seal of 1 to 2 mm.
func barrelOf(largest, smallest catalogue.Standing) *catalogue.Catalogue {
	return &catalogue.Catalogue{
		Wires: map[catalogue.WireKey]catalogue.Wire{{Spec: "AS22759/41", Size: "20"}: copper(1000), {Spec: "AS22759/41",
			Size: "24"}: copper(500)},
		Contacts: map[string]catalogue.Contact{"k": {Size: "k", LargestAWG: "20", SmallestAWG: "24", SealMinMM: 1, SealMaxMM: 2,
			AWGStanding: largest, SmallestStanding: smallest, SealStanding: catalogue.Published}},
	}
}

// What is said of a barrel, by hand: it takes 500 to 1000 circular mils and a twentieth beyond either, 476.2 to 1050.
func TestAllThatIsSaidOfABarrel(t *testing.T) {
	const published, memory = catalogue.Published, catalogue.Memory
	for _, c := range []struct {
		name              string
		largest, smallest catalogue.Standing
		mils              []unit.CircularMil
		want              []string
	}{
		{"just thin enough", published, published, []unit.CircularMil{1049}, nil},
		{"too thick", published, published, []unit.CircularMil{1051},
			[]string{"stop cavity.barrel X:1: wire a (22) is too thick for a size k contact: 20 AWG at most"}},
		{"too thick by memory", memory, published, []unit.CircularMil{1051},
			[]string{"warn cavity.barrel X:1: wire a (22) is too thick for a size k contact: 20 AWG at most"}},
		{"just thick enough", published, published, []unit.CircularMil{477}, nil},
		{"too thin", published, published, []unit.CircularMil{476},
			[]string{"stop cavity.barrel X:1: wire a (22) is too thin for a size k contact: 24 AWG at least. Check the part's sheet"}},
		{"too thin by what nobody says", published, "", []unit.CircularMil{476},
			[]string{"warn cavity.barrel X:1: wire a (22) is too thin for a size k contact: 24 AWG at least. Check the part's sheet"}},
		{"two that fit", published, published, []unit.CircularMil{500, 549}, nil},
		{"two that are too thick", published, published, []unit.CircularMil{500, 551},
			[]string{"stop cavity.barrel X:1: wires a and b are together too thick for a size k contact: 20 AWG at most"}},
		{"two that are too thin", published, published, []unit.CircularMil{200, 276},
			[]string{"stop cavity.barrel X:1: wires a and b are together too thin for a size k contact: 24 AWG at least. " +
				"Check the part's sheet"}},
		{"copper that nobody knows", published, published, []unit.CircularMil{0}, nil},
	} {
		h := &model.Harness{Terminations: []model.Termination{{ID: "X", Cavities: []string{"1"},
			Contacts: map[string][]string{"k": {"1"}}}}}
		s := &sheet.Sheet{H: h, Cat: barrelOf(c.largest, c.smallest), Limits: model.Rules{}.Resolve()}
		for k, mils := range c.mils {
			h.Wires = append(h.Wires, model.Wire{ID: string(rune('a' + k)), Size: "22", From: model.Some("X:1")})
			s.Wires = append(s.Wires, sheet.Wire{Entry: copper(mils), Dia: sheet.Dia{Nominal: 3}}) // no insert, so no seal
		}
		s.Index = model.NewIndex(h)
		FillCavities(s)
		sameSaid(t, c.name, said(s), c.want)
		if x := s.Terms[0]; !x.HasContacts || x.Sealed || x.Used != 1 || x.Contacts != 1 {
			t.Errorf("%s: %+v", c.name, x)
		}
	}
}

// Which wire a cavity takes, at every edge: by the seal of the file, by the contact's copper, by the contact's seal where there is an
// insert and the file has none. What is not known refuses nothing.
func TestTakesAtEveryEdge(t *testing.T) {
	own, none := model.Some("own"), model.Opt[string]{}
	for _, c := range []struct {
		name   string
		seal   []unit.Millimetre
		insert model.Opt[string]
		size   string
		over   unit.Millimetre
		mils   unit.CircularMil
		want   bool
	}{
		{"a seal of just that", []unit.Millimetre{1.5, 1.5}, none, "", 1.5, 700, true},
		{"thinner than the seal", []unit.Millimetre{1.51, 2}, none, "", 1.5, 700, false},
		{"thicker than the seal", []unit.Millimetre{1, 1.49}, none, "", 1.5, 700, false},
		{"no contact that is known", nil, own, "", 9, 9000, true},
		{"in its barrel", nil, none, "k", 9, 700, true},
		{"too thick for its barrel", nil, none, "k", 1.5, 1051, false}, {"just thin enough", nil, none, "k", 1.5, 1049, true},
		{"too thin for its barrel", nil, none, "k", 1.5, 476, false}, {"just thick enough", nil, none, "k", 1.5, 477, true},
		{"at the least of the contact's seal", nil, own, "k", 1, 700, true}, {"below it", nil, own, "k", 0.99, 700, false},
		{"at the most of the contact's seal", nil, own, "k", 2, 700, true}, {"above it", nil, own, "k", 2.01, 700, false},
		{"the seal of the file goes first", []unit.Millimetre{0.1, 5}, own, "k", 3, 700, true},
		{"and its barrel counts as well", []unit.Millimetre{0.1, 5}, own, "k", 3, 1051, false},
		{"no insert, no seal", nil, none, "k", 3, 700, true},
	} {
		cat := barrelOf(catalogue.Published, catalogue.Published)
		e := copper(c.mils)
		e.OverMM = c.over
		cat.Wires[catalogue.WireKey{Spec: "W", Size: "22"}] = e
		s := &sheet.Sheet{Cat: cat, H: &model.Harness{Terminations: []model.Termination{{ID: "X", SealMM: c.seal, Insert: c.insert}}},
			Terms: []sheet.Term{{State: map[string]sheet.Cavity{"1": {Size: c.size}}}}}
		if got := Takes(s, 0, "1", "W", "22"); got != c.want {
			t.Errorf("%s: %v", c.name, got)
		}
		if !Takes(s, 0, "1", "W", "21") {
			t.Errorf("%s: a wire that no catalogue has is refused", c.name)
		}
	}
	// Just a twentieth more than the table's copper is not too thick, whatever the gauge; the last bit more is.
	cat := barrelOf(catalogue.Published, catalogue.Published)
	k, _ := cat.Contact("k")
	most, _ := StrandedArea(cat, "20")
	edge := float64(most) * 1.05
	if thick, thin := InBarrel(cat, k, unit.SquareMM(edge)); thick || thin {
		t.Errorf("a twentieth more is too thick %v, too thin %v", thick, thin)
	}
	if thick, _ := InBarrel(cat, k, unit.SquareMM(math.Nextafter(edge, 1))); !thick {
		t.Error("more than a twentieth more is not too thick")
	}
	// A seal of less than a millimetre at its thickest, and one of which nothing is known.
	for most, want := range map[unit.Millimetre]bool{0.5: false, 0: true} {
		cat := barrelOf(catalogue.Published, catalogue.Published)
		cat.Contacts["k"] = catalogue.Contact{Size: "k", SealMinMM: 0.3 * most, SealMaxMM: most}
		cat.Wires[catalogue.WireKey{Spec: "W", Size: "22"}] = catalogue.Wire{OverMM: 0.6}
		s := &sheet.Sheet{Cat: cat, H: &model.Harness{Terminations: []model.Termination{{Insert: own}}},
			Terms: []sheet.Term{{State: map[string]sheet.Cavity{"1": {Size: "k"}}}}}
		if got := Takes(s, 0, "1", "W", "22"); got != want {
			t.Errorf("0.6 mm in a seal up to %v: %v", most, got)
		}
	}
}

// What is said of a splice's barrels, by hand: one feed of 1400 circular mils, three wires of 500, 500 and 1000, which are 2000, and all
// 3400. "sm" takes the feed and either half, "wide" the three and a feed of 1900.
func TestAllThatIsSaidOfASplicesBarrels(t *testing.T) {
	const published, memory = catalogue.Published, catalogue.Memory
	splice := func(id, build string, least, most int, st catalogue.Standing) catalogue.Splice {
		return catalogue.Splice{ID: id, Build: build, CMAMin: least, CMAMax: most, Origin: catalogue.Origin{Source: "own", Standing: st}}
	}
	sm, wide, big := splice("sm", "butt", 900, 1500, published), splice("wide", "butt", 1800, 2200, published),
		splice("big", "butt", 900, 2200, published)
	par := splice("par", "parallel", 3000, 4000, published)
	const ways = "; ways out: parallel, par; or two splices, sm for 2 and sm for 1; or a feed of 20 with wide"
	toward := model.Some("T")
	for _, c := range []struct {
		name   string
		given  catalogue.Splice
		toward model.Opt[string]
		others []catalogue.Splice
		want   []string
		part   string // that it goes into in the end
	}{
		{"too much", splice("but", "butt", 900, 1900, published), model.Opt[string]{}, nil, []string{
			"stop splice.barrel S1: but takes 900 to 1900 circular mils at each end, and gets 1400 and 2000"}, ""},
		{"too much by memory", splice("but", "butt", 900, 1900, memory), model.Opt[string]{}, nil, []string{
			"warn splice.barrel S1: but takes 900 to 1900 circular mils at each end, and gets 1400 and 2000"}, ""},
		{"another takes them", splice("but", "butt", 900, 1900, published), model.Opt[string]{}, []catalogue.Splice{sm, big, par}, []string{
			"stop splice.barrel S1: but takes 900 to 1900 circular mils at each end, and gets 1400 and 2000; big takes them"}, ""},
		{"every way out", splice("but", "butt", 900, 1900, published), model.Opt[string]{}, []catalogue.Splice{sm, wide, par}, []string{
			"stop splice.barrel S1: but takes 900 to 1900 circular mils at each end, and gets 1400 and 2000" + ways}, ""},
		{"the feed on the far side", splice("but", "butt", 900, 1900, published), toward, []catalogue.Splice{sm, wide, par}, []string{
			"stop splice.barrel S1: but takes 900 to 1900 circular mils at each end, and gets 2000 and 1400" + ways}, ""},
		{"parallel", splice("stub", "parallel", 900, 1900, published), model.Opt[string]{}, nil, []string{
			"stop splice.barrel S1: stub takes 900 to 1900 circular mils, and gets 3400"}, ""},
		{"another parallel", splice("stub", "parallel", 900, 1900, published), model.Opt[string]{}, []catalogue.Splice{big, par}, []string{
			"stop splice.barrel S1: stub takes 900 to 1900 circular mils, and gets 3400; par takes them"}, ""},
		{"as given", par, toward, nil, nil, "par"},
		{"the first that fits", catalogue.Splice{}, model.Opt[string]{}, []catalogue.Splice{sm, big, par}, nil, "big"},
		{"none", catalogue.Splice{}, model.Opt[string]{}, []catalogue.Splice{sm, wide}, []string{
			"stop splice.barrel S1: No splice of the catalogue takes 1400 circular mils on one side and 2000 on the other; " +
				"ways out: two splices, sm for 2 and sm for 1; or a feed of 20 with wide"}, ""},
		{"none by memory", catalogue.Splice{}, model.Opt[string]{}, []catalogue.Splice{splice("other", "butt", 1, 2, memory)}, []string{
			"warn splice.barrel S1: No splice of the catalogue takes 1400 circular mils on one side and 2000 on the other"}, ""},
	} {
		h := &model.Harness{Splices: []model.Splice{{ID: "S1", Toward: c.toward}}, Branches: []model.Branch{{ID: "T"}}}
		cat := &catalogue.Catalogue{Splices: map[string]catalogue.Splice{}, Wires: map[catalogue.WireKey]catalogue.Wire{}}
		for size, mils := range map[string]unit.CircularMil{"22": 1400, "20": 1900, "18": 2400, "16": 0} {
			e := copper(mils)
			e.Spec, e.Size = "W", size
			cat.Wires[catalogue.WireKey{Spec: "W", Size: size}] = e
		}
		s := &sheet.Sheet{H: h, Cat: cat, Splices: []sheet.Splice{{Wires: []int{0, 1, 2, 3}}}}
		for k, mils := range []unit.CircularMil{500, 1400, 500, 1000} {
			h.Wires = append(h.Wires, model.Wire{ID: string(rune('a' + k)), Spec: "W"})
			s.Wires = append(s.Wires, sheet.Wire{Entry: copper(mils)})
		}
		s.Wires[1].Path = []int{0} // the feed goes on along T
		s.Index = model.NewIndex(h)
		var parts []join.Part
		for _, p := range c.others {
			cat.Splices[p.ID] = p
			parts = append(parts, join.Part{ID: p.ID, Parallel: p.Build == "parallel", Least: unit.CircularMil(p.CMAMin),
				Most: unit.CircularMil(p.CMAMax)})
		}
		if c.given.ID != "" {
			h.Splices[0].Part, cat.Splices[c.given.ID] = model.Some(c.given.ID), c.given
		}
		joinAt(s, 0, parts)
		sameSaid(t, c.name, said(s), c.want)
		out := s.Splices[0]
		if out.Fits != (c.part != "") || out.Fits && (out.Part != c.part || !out.Known || out.Origin.Source != "own") ||
			out.Given != (c.given.ID != "") {
			t.Errorf("%s: %+v", c.name, out)
		}
	}
}
