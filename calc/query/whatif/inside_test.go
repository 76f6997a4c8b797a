package whatif

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/formula/plan"
	"contralay/calc/phase/bundle"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// nineteen is a laid branch of 19 equal wires, 1, 6 and 12, worked out twice, so that the second may be changed by hand.
func nineteen(t *testing.T) (s *sheet.Sheet, tr trial) {
	t.Helper()
	h := calctest.Parse(t, calctest.OneSize(19, "22", "length_mm = 500.0\n"))
	s = calc.Complete(h, calctest.Catalogue(t), nil)
	again := *s
	again.Branches = slices.Clone(s.Branches)
	again.Branches[0].Layers = slices.Clone(s.Branches[0].Layers)
	again.Branches[0].As = model.CloneLayers(s.Branches[0].As)
	return s, trial{h: s.H, built: &again}
}

// A lay-up stays where every layer keeps the limits, or misses them by no more than before: change by change on a branch of 1, 6 and 12.
func TestLayUpStays(t *testing.T) {
	for _, c := range []struct {
		name   string
		change func(was, is *sheet.Branch, tr *trial)
		want   bool
	}{
		{"as it was", func(*sheet.Branch, *sheet.Branch, *trial) {}, true},
		{"made otherwise", func(_, is *sheet.Branch, _ *trial) { is.Make = model.MakeTwisted }, false},
		{"a layer fewer", func(_, is *sheet.Branch, _ *trial) { is.Layers = is.Layers[:2] }, false},
		{"its OD is not known", func(_, is *sheet.Branch, _ *trial) { is.OverMM = 0 }, false},
		{"a thin one", func(_, is *sheet.Branch, _ *trial) { is.OverMM = 0.5 }, true},
		{"lifted as far as allowed", func(_, is *sheet.Branch, _ *trial) { is.Layers[1].Lift = 0.05 }, true},
		{"lifted further", func(_, is *sheet.Branch, _ *trial) { is.Layers[1].Lift = 0.0501 }, false},
		{"lifted further outside", func(_, is *sheet.Branch, _ *trial) { is.Layers[2].Lift = 0.0501 }, false},
		{"lifted as before", func(was, is *sheet.Branch, _ *trial) { was.Layers[1].Lift, is.Layers[1].Lift = 0.07, 0.07 }, true},
		{"lifted more than before", func(was, is *sheet.Branch, _ *trial) { was.Layers[1].Lift, is.Layers[1].Lift = 0.07, 0.0701 }, false},
		{"an inner gap as allowed", func(_, is *sheet.Branch, _ *trial) { is.Layers[1].Gap = 0.10 }, true},
		{"an inner gap of more", func(_, is *sheet.Branch, _ *trial) { is.Layers[1].Gap = 0.1001 }, false},
		{"an outer gap as allowed", func(_, is *sheet.Branch, _ *trial) { is.Layers[2].Gap = 0.15 }, true},
		{"an outer gap of more", func(_, is *sheet.Branch, _ *trial) { is.Layers[2].Gap = 0.1501 }, false},
		{"an inner gap as before", func(was, is *sheet.Branch, _ *trial) { was.Layers[1].Gap, is.Layers[1].Gap = 0.2, 0.2 }, true},
		{"an inner gap of more than before", func(was, is *sheet.Branch, _ *trial) { was.Layers[1].Gap, is.Layers[1].Gap = 0.2, 0.2001 },
			false},
		{"the centre has no limits", func(_, is *sheet.Branch, _ *trial) { is.Layers[0].Gap, is.Layers[0].Lift = 1, 1 }, true},
		{"fillers, and the sizes stay", func(_, is *sheet.Branch, _ *trial) { is.As[1].Fillers = model.Some(1) }, true},
		{"fillers for other sizes", func(_, is *sheet.Branch, tr *trial) { is.As[1].Fillers, tr.resized = model.Some(1), true }, false},
		{"locked fillers for other sizes", func(_, is *sheet.Branch, tr *trial) {
			is.As[1].Fillers, is.As[1].Locked, tr.resized = model.Some(1), model.Some(true), true
		}, true},
		{"no fillers, and other sizes", func(_, _ *sheet.Branch, tr *trial) { tr.resized = true }, true},
		{"a rod in the centre, and other sizes", func(_, is *sheet.Branch, tr *trial) {
			is.As[0].Fillers, tr.resized = model.Some(1),
				true
		}, true},
		{"tape for other sizes", func(was, is *sheet.Branch, tr *trial) {
			was.As[0].BindMM, is.As[0].BindMM, tr.resized = model.Some[unit.Millimetre](0.3), model.Some[unit.Millimetre](0.3), true
		}, false},
		{"tape of a layer for other sizes", func(was, is *sheet.Branch, tr *trial) {
			was.As[1].BindMM, is.As[1].BindMM, tr.resized = model.Some[unit.Millimetre](0.3), model.Some[unit.Millimetre](0.3), true
		}, true},
		{"tape as before", func(was, is *sheet.Branch, _ *trial) {
			was.As[0].BindMM, is.As[0].BindMM = model.Some[unit.Millimetre](0.3), model.Some[unit.Millimetre](0.3)
		}, true},
		{"tape that was not there", func(_, is *sheet.Branch, _ *trial) { is.As[0].BindMM = model.Some[unit.Millimetre](0.3) }, false},
		{"six in the centre", func(was, is *sheet.Branch, _ *trial) { is.As[0].Of = is.As[1].Of }, false},
		{"six, and locked", func(was, is *sheet.Branch, _ *trial) { is.As[0].Of, is.As[0].Locked = is.As[1].Of, model.Some(true) }, true},
		{"six as before", func(was, is *sheet.Branch, _ *trial) { is.As[0].Of, was.As[0].Of = is.As[1].Of, is.As[1].Of }, true},
	} {
		s, tr := nineteen(t)
		was := *s
		was.Branches = slices.Clone(s.Branches)
		was.Branches[0].Layers, was.Branches[0].As = slices.Clone(s.Branches[0].Layers), model.CloneLayers(s.Branches[0].As)
		if got := s.Branches[0].As; len(got) != 3 || len(got[1].Of) != 6 {
			t.Fatalf("it is laid %+v", got)
		}
		c.change(&was.Branches[0], &tr.built.Branches[0], &tr)
		if got := tr.stays(&was, 0); got != c.want {
			t.Errorf("%s: stays %v", c.name, got)
		}
	}
	// A few that are twisted stay so where somebody asked for it, or while they are few.
	for _, c := range []struct {
		n     int
		asked bool
		rings int
		want  bool
	}{{2, false, 1, true}, {60, false, 1, false}, {60, true, 1, true}, {2, false, 2, false}, {4, false, 1, true}, {5, false, 1, false}} {
		s, tr := nineteen(t)
		h := *s.H
		h.Branches = slices.Clone(h.Branches)
		was := *s
		was.H, was.Branches = &h, slices.Clone(s.Branches)
		is := &tr.built.Branches[0]
		is.Make, was.Branches[0].Make = model.MakeTwisted, model.MakeTwisted
		is.Layers, was.Branches[0].Layers = is.Layers[:c.rings], was.Branches[0].Layers[:c.rings]
		is.Components = make([]string, c.n)
		h.Branches[0].Make = model.Opt[model.Make]{}
		was.Limits.LaidFrom = 5 // five are laid, four are not yet
		if c.asked {
			h.Branches[0].Make = model.Some(model.MakeTwisted)
		}
		if got := tr.stays(&was, 0); got != c.want {
			t.Errorf("%d twisted in %d layers, asked for %v: stays %v", c.n, c.rings, c.asked, got)
		}
	}
}

// What of layers is still here: what is gone is left out, and spares that are new take the places of what has another name now.
func TestWhatIsStillHere(t *testing.T) {
	layer := func(of, pinned string, fillers int, bind unit.Millimetre) model.Layer {
		l := model.Layer{Of: strings.Fields(of), Pinned: strings.Fields(pinned)}
		if fillers > 0 {
			l.Fillers = model.Some(fillers)
		}
		if bind > 0 {
			l.BindMM, l.BindPart = model.Some(bind), model.Some("tape")
		}
		return l
	}
	s := &sheet.Sheet{Branches: []sheet.Branch{{Components: strings.Fields("a b c d e f s1 s2")}}}
	for _, c := range []struct {
		name       string
		in         []model.Layer
		fresh      string
		want, gone string
	}{
		{"all of it", []model.Layer{layer("a", "", 0, 0.3), layer("b c d e f", "c", 1, 0)}, "", "[a]/[]/0/0.3 [b c d e f]/[c]/1/0 ", "[]"},
		{"one is gone", []model.Layer{layer("a", "", 0, 0.3), layer("b x d", "x d", 1, 0)}, "", "[a]/[]/0/0.3 [b d]/[d]/1/0 ", "[x]"},
		{"a layer is gone", []model.Layer{layer("a", "", 0, 0), layer("x y", "x", 0, 0), layer("b", "", 0, 0)}, "",
			"[a]/[]/0/0 [b]/[]/0/0 ", "[x y]"},
		{"its fillers stay", []model.Layer{layer("a", "", 0, 0), layer("x y", "x", 2, 0), layer("b", "", 0, 0)}, "",
			"[a]/[]/0/0 []/[]/2/0 [b]/[]/0/0 ", "[x y]"},
		{"spares take the places", []model.Layer{layer("a", "", 0, 0.3), layer("x b y z", "x b", 0, 0)}, "s1 s2",
			"[a]/[]/0/0.3 [s1 b s2]/[b]/0/0 ", "[z]"},
		{"a spare that is named already", []model.Layer{layer("a s1", "", 0, 0), layer("x", "", 0, 0)}, "s1 s2",
			"[a s1]/[]/0/0 [s2]/[]/0/0 ", "[]"},
		{"spares beyond lie outermost", []model.Layer{layer("a", "", 0, 0), layer("b", "", 0, 0)}, "s1 s2", "[a]/[]/0/0 [b s1 s2]/[]/0/0 ",
			"[]"},
		{"tape of another centre", []model.Layer{layer("x", "", 0, 0.3), layer("b", "", 0, 0.2)}, "s1", "[s1]/[]/0/0 [b]/[]/0/0.2 ", "[]"},
		{"one layer", []model.Layer{layer("a", "", 0, 0.3)}, "s1", "[a s1]/[]/0/0 ", "[]"},
		{"nothing", nil, "s1", "", "[]"},
	} {
		before := fmt.Sprintf("%+v", c.in)
		out, gone := stillHere(s, 0, c.in, strings.Fields(c.fresh))
		got := ""
		for _, l := range out {
			got += fmt.Sprintf("%v/%v/%d/%v ", l.Of, l.Pinned, l.Fillers.V, l.BindMM.V)
			if l.BindPart.Set != l.BindMM.Set {
				t.Errorf("%s: its tape is %+v thick %+v", c.name, l.BindPart, l.BindMM)
			}
		}
		if got != c.want || fmt.Sprint(gone) != c.gone {
			t.Errorf("%s: %s, gone %v; want %s, gone %s", c.name, got, gone, c.want, c.gone)
		}
		if fmt.Sprintf("%+v", c.in) != before {
			t.Errorf("%s: what was given is changed", c.name)
		}
	}
}

// A sheath takes the place of the first that is named, else it lies outermost. It follows where it was the first that fits and is not
// any more,
// or where it stops or sticks now and did not before; what the file does not name is proposed by itself.
func TestSheathThatFollows(t *testing.T) {
	h := calctest.Parse(t, calctest.OneSize(19, "22", "length_mm = 500.0\n"))
	sheath, tape := model.Cover{What: model.CoverSheath, Part: model.Some("old")}, model.Cover{What: model.CoverTape}
	for _, c := range []struct {
		name   string
		covers []model.Cover
		want   string
	}{{"none", nil, "new"}, {"tape", []model.Cover{tape}, "- new"}, {"one", []model.Cover{sheath, tape}, "new -"},
		{"two", []model.Cover{tape, sheath, sheath}, "- new old"}} {
		h.Branches[0].Covers = c.covers
		got := ""
		for _, v := range sheathed(h, 0, "new").Branches[0].Covers {
			if v.What == model.CoverSheath {
				got += v.Part.V + " "
			} else {
				got += "- "
			}
		}
		if strings.TrimSpace(got) != c.want {
			t.Errorf("%s: %s, want %s", c.name, got, c.want)
		}
	}
	h.Branches[0].Covers = []model.Cover{{What: model.CoverSheath, Part: model.Some("A")}}
	type state struct {
		first                       string // of those that could be
		stops, sticks, firstStops   bool
		proposed, unknown, noOthers bool
	}
	of := func(v state) sheet.Sheath {
		out := sheet.Sheath{Part: "A", Proposed: v.proposed, Tube: model.Some(catalogue.Tube{ID: "A"})}
		out.Verdict.StopSlide, out.Verdict.Sticks = v.stops, v.sticks
		if v.unknown {
			out.Tube = model.Opt[catalogue.Tube]{}
		}
		if !v.noOthers {
			c := sheet.Choice{Tube: catalogue.Tube{ID: v.first}}
			c.Verdict.StopLoose = v.firstStops
			out.Others = []sheet.Choice{c}
		}
		return out
	}
	for _, c := range []struct {
		name    string
		was, is state
		want    string
	}{
		{"the first, and it is still", state{first: "A"}, state{first: "A"}, "A"},
		{"the first, and another is", state{first: "A"}, state{first: "B"}, "B"},
		{"not the first, and another is", state{first: "C"}, state{first: "B"}, "A"},
		{"it stops now", state{first: "C"}, state{first: "B", stops: true}, "B"},
		{"it stopped before", state{first: "C", stops: true}, state{first: "B", stops: true}, "A"},
		{"it sticks now", state{first: "C"}, state{first: "B", sticks: true}, "B"},
		{"it stuck before", state{first: "C", sticks: true}, state{first: "B", sticks: true}, "A"},
		{"the best stops, too", state{first: "A"}, state{first: "B", firstStops: true}, "A"},
		{"it was proposed", state{first: "A", proposed: true}, state{first: "B"}, "A"},
		{"no catalogue has it", state{first: "A", unknown: true}, state{first: "B"}, "A"},
		{"none could be before", state{noOthers: true}, state{first: "B"}, "A"},
		{"none could be now", state{first: "A"}, state{noOthers: true}, "A"},
	} {
		s := &sheet.Sheet{H: h, Branches: []sheet.Branch{{Sheath: of(c.was)}}}
		now := &sheet.Sheet{H: h, Branches: []sheet.Branch{{Sheath: of(c.is)}}, Index: calc.Build(h, calctest.Catalogue(t), nil).Index}
		tr := trial{h: h, built: now}
		tr.follow(s, 0)
		if got := tr.h.Branches[0].Covers[0].Part.V; got != c.want {
			t.Errorf("%s: %s, want %s", c.name, got, c.want)
		}
	}
	s := &sheet.Sheet{H: h, Branches: []sheet.Branch{{}}}
	tr := trial{h: h}
	if tr.follow(s, 0); tr.h != h {
		t.Error("a branch without a sheath gets one")
	}
}

// Small ones by hand: which layer holds a piece, what rules a lay-up out, what a variant is, its free name.
func TestSmallOnesByHand(t *testing.T) {
	yes := model.Some(true)
	h := &model.Harness{Branches: []model.Branch{{ID: "B1", Layers: []model.Layer{{Of: []string{"a"}}, {Of: []string{"b", "c"},
		Pinned: []string{"c"}}}},
		{ID: "B2", Layers: []model.Layer{{Of: []string{"a", "d"}, Locked: yes}, {Of: []string{"b"}}}}}}
	for id, want := range map[string]string{"a": "B2 0 true true", "b": " 0 false false", "c": "B1 1 false true", "d": "B2 0 true true",
		"x": " 0 false false"} {
		b, k, locked, held := heldBy(h, id)
		if got := fmt.Sprint(b, " ", k, " ", locked, " ", held); got != want {
			t.Errorf("%s: %s, want %s", id, got, want)
		}
	}
	for _, c := range []struct {
		b    model.Branch
		want string
	}{
		{h.Branches[0], "c is pinned to " + model.LayerName(1) + ", and no lay-up keeps it there: unpin it first"},
		{h.Branches[1], model.LayerName(0) + " is locked, and no lay-up keeps it: unlock it first"}, {model.Branch{},
			"nothing can be laid so here"},
	} {
		if got := cannot(&c.b); got != c.want {
			t.Errorf("%s, want %s", got, c.want)
		}
	}
	for _, c := range []struct {
		a    model.Aside
		want bool
	}{
		{model.Aside{}, true}, {model.Aside{Layers: []model.Layer{{}}, Outer: model.Opt[model.Hand]{Set: true},
			Make: model.Some(model.MakeLaid)}, true},
		{model.Aside{Letter: model.Opt[model.Letter]{Set: true}}, false}, {model.Aside{Spec: model.Some("x")}, false},
		{model.Aside{Sizes: map[string]string{"22": "24"}}, false},
		{model.Aside{Spares: model.Some(0)}, false}, {model.Aside{Covers: []model.Cover{{}}}, false},
	} {
		if layUpOnly(&c.a) != c.want {
			t.Errorf("%+v is a lay-up alone: %v", c.a, !c.want)
		}
	}
	b := &model.Branch{Asides: []model.Aside{{Name: "x"}, {Name: "x, 2"}, {Name: "y"}}}
	for like, want := range map[string]string{"x": "x, 3", "y": "y, 2", "z": "z"} {
		if got := freeName(b, like); got != want {
			t.Errorf("like %s: %s, want %s", like, got, want)
		}
	}
	for _, c := range []struct {
		a, b string
		want bool
	}{{"a b c", "c a b", true}, {"a b", "a c", false}, {"a a b", "a b b", false}, {"a", "a b", false}, {"", "", true}} {
		if got := sameSet(strings.Fields(c.a), strings.Fields(c.b)); got != c.want {
			t.Errorf("%s and %s: %v", c.a, c.b, got)
		}
	}
	if got := (Value{name: "lay-up", Laid: []int{2, 14, 22}}).Name(); got != "lay-up: 2-14-22" {
		t.Errorf("%s", got)
	}
	if got := (Value{name: "centre", Says: "three"}).Name(); got != "centre: three" {
		t.Errorf("%s", got)
	}
	for _, c := range []struct {
		room []int
		lock []bool
		want int
	}{
		{[]int{1, 1, 1}, []bool{false, false, false}, 2}, {[]int{1, 1, 0}, []bool{false, false, false}, 1}, {[]int{1, 0, 0}, []bool{false,
			false, false}, 0},
		{[]int{0, 0, 0}, []bool{false, false, false}, 2}, {[]int{0, 0, 0}, []bool{false, false, true}, 1}, {[]int{0, 0, 5}, []bool{false,
			false, true}, 1},
		{[]int{5, 5, 5}, []bool{true, true, true}, -1}, {nil, []bool{false, true}, 0}, {[]int{2}, []bool{false, false}, 0},
	} {
		var layers []model.Layer
		for _, l := range c.lock {
			layers = append(layers, model.Layer{Locked: model.Some(l)})
		}
		if got := roomiest(layers, c.room); got != c.want {
			t.Errorf("%+v: %d", c, got)
		}
	}
}

// Sizes by hand: AWG 24 is thinner than 22, 20 is not; what makes of heat goes by current twice and by resistance; a wire without a
// current,
// or one that the sheet does not rate, may not become thinner.
func TestSizesByHand(t *testing.T) {
	s := calctest.Carrying(t, 20, "", []string{"22 3", "22 0", "20 1"}, nil, "")
	for size, want := range map[string]bool{"24": true, "22": false, "20": false, "99": false} {
		if got := thinner(s, 0, size); got != want {
			t.Errorf("%s is thinner than 22: %v", size, got)
		}
	}
	if a, b := heat(s, 0), heat(s, 2); a <= b || heat(s, 1) != 0 {
		t.Errorf("3 A make %v, 1 A in a thicker one %v, none %v", a, b, heat(s, 1))
	}
	c := &s.Wires[0]
	if got, want := heat(s, 0), 9*float64(c.Entry.OhmPerKm); c.Heats == 3 && got != want {
		t.Errorf("3 A make %v, want %v", got, want)
	}
	for _, v := range []struct {
		k    int
		size string
		want string
	}{{0, "24", ""}, {0, "20", ""}, {1, "24", ""}, {1, "20", ""}} {
		if got := unjudged(s, v.k, v.size); got != v.want {
			t.Errorf("%+v: %q", v, got)
		}
	}
	none, _ := nineteen(t)
	if got := unjudged(none, 0, "24"); got != "no current is entered" {
		t.Errorf("of a wire without a current: %q", got)
	}
	if got := unjudged(none, 0, "20"); got != "" {
		t.Errorf("of a thicker wire without a current: %q", got)
	}
	if !hasSize(s, map[int]string{1: "24"}, "22") || hasSize(s, map[int]string{2: "24"}, "22") || hasSize(s, nil, "22") {
		t.Error("which size has a wire")
	}
	h := given(s.H, map[int]string{1: "24"})
	if h.Wires[1].Size != "24" || s.H.Wires[1].Size != "22" || h.Wires[0].Size != "22" {
		t.Errorf("%v, and before %v", h.Wires[1].Size, s.H.Wires[1].Size)
	}
	if got := staysAs(s, 0, "24", "it is hot").Error(); got != "none of size 22 can be 24 here; wire "+s.H.Wires[0].ID+": it is hot" {
		t.Error(got)
	}
	if n, of := Share(s, 0, Value{change: size{"22", "24"}}, h); n != 1 || of != 2 {
		t.Errorf("%d of %d have another size", n, of)
	}
	for _, v := range []Value{{}, {change: spare(2)}} {
		if n, of := Share(s, 0, v, h); n != 0 || of != 0 {
			t.Errorf("%d of %d of another kind", n, of)
		}
	}
	if n, of := Share(s, 9, Value{change: size{"22", "24"}}, h); n != 0 || of != 0 {
		t.Errorf("%d of %d of no branch", n, of)
	}
}

// Lay-ups that are offered: those that lay no new spare, eight at most, the present one marked, each told by its counts with fillers
// but those
// of the centre; and only of a branch that is laid.
func TestLayUpsThatAreOffered(t *testing.T) {
	s, _ := nineteen(t)
	as := s.Branches[0].As
	option := func(over unit.Millimetre, spares int, layers []model.Layer, fillers int) sheet.Option {
		return sheet.Option{Layers: layers, Spares: make([]sheet.SparePlace, spares), Plan: plan.Plan{Over: over, Layers: []plan.Layer{
			{N: []int{1}, Fillers: 1}, {N: []int{4, 2}, Fillers: fillers}}}}
	}
	other := []model.Layer{{Of: []string{"x"}}}
	all := []sheet.Option{option(5, 0, other, 0), option(6, 1, other, 0), option(5.5, 0, as, 3)}
	for n := range 9 {
		all = append(all, option(7+unit.Millimetre(n), 0, other, 0))
	}
	s.Proposals = map[string]sheet.Proposal{bundle.Question(s, 0): {Options: all}}
	k := layups(s, 0)[0]
	var keys []string
	for _, v := range k.Values {
		keys = append(keys, v.Key)
	}
	if want := []string{"0 at 5.00", "2 at 5.50", "3 at 7.00", "4 at 8.00", "5 at 9.00", "6 at 10.00", "7 at 11.00",
		"8 at 12.00"}; !slices.Equal(keys, want) {
		t.Errorf("%v", keys)
	}
	if k.Now != 1 || !slices.Equal(k.Values[1].Laid, []int{1, 9}) || !slices.Equal(k.Values[0].Laid, []int{1, 6}) {
		t.Errorf("now %d, laid %v and %v", k.Now, k.Values[1].Laid, k.Values[0].Laid)
	}
	for name, change := range map[string]func(l []model.Layer){
		"another piece": func(l []model.Layer) { l[1].Of[0] = "x" }, "a filler": func(l []model.Layer) { l[1].Fillers = model.Some(1) },
		"tape": func(l []model.Layer) { l[0].BindMM = model.Some[unit.Millimetre](0.2) },
	} {
		c := layup{sheet.Option{Layers: model.CloneLayers(as)}}
		change(c.Layers)
		if c.present(s, 0) {
			t.Errorf("%s: it is taken for the present one", name)
		}
	}
	if _, err := (layup{sheet.Option{Layers: other}}).make(s, 0); err == nil ||
		err.Error() != "other pieces run here since that lay-up was worked out" {
		t.Errorf("%v", err)
	}
	twisted := *s
	twisted.Branches = slices.Clone(s.Branches)
	twisted.Branches[0].Make = model.MakeTwisted
	if got := layups(&twisted, 0); got != nil {
		t.Errorf("%+v", got)
	}
}
