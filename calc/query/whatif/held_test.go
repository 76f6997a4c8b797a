package whatif

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/phase/planning"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// equals is n wires of 22 AWG with so many cavities at each end, laid as the branch's text says.
func equals(t *testing.T, n, cavities int, branch string) *sheet.Sheet {
	t.Helper()
	return calctest.Built(t, calctest.OneSize(n, "22", "length_mm = 500.0\n"+branch, cavities))
}

// layersOf is layers as a file has them: each the ids from one number to another, with more keys of its own.
func layersOf(layers ...[3]any) string {
	var b strings.Builder
	for _, l := range layers {
		var ids []string
		for k := l[0].(int); k <= l[1].(int); k++ {
			ids = append(ids, fmt.Sprintf("%q", fmt.Sprint(k)))
		}
		fmt.Fprintf(&b, "  [[branch.layer]]\n  of = [%s]\n%v", strings.Join(ids, ", "), l[2])
	}
	return b.String()
}

const seven, locked = 7, "  locked = true\n"

func roundOne(centre, layer string) string {
	return layersOf([3]any{0, 0, centre}, [3]any{1, 6, layer})
}

// What rules a way out is one sentence, and the harness is the one that was asked about.
func TestWhatRulesAWayOut(t *testing.T) {
	only := func(s *sheet.Sheet, tubes ...catalogue.Tube) *sheet.Sheet {
		c := *s.Cat
		c.Tubes = tubes
		return calc.Build(s.H, &c, nil)
	}
	own := func(supplied, recovered unit.Millimetre) catalogue.Tube {
		return catalogue.Tube{ID: "own 1", Kind: "own", SuppliedMM: supplied, RecoveredMM: recovered, WallMM: 0.5}
	}
	spares := func(n, cavities int, more string) *sheet.Sheet {
		text := calctest.OneSize(n, "22", "length_mm = 500.0\n"+more, cavities)
		return calctest.Built(t, strings.Replace(text, "id = \"6\"\n", "id = \"6\"\nrole = \"spare\"\n", 1))
	}
	plain := roundOne("", "")
	for _, c := range []struct {
		name string
		s    *sheet.Sheet
		ask  change
		want string
	}{
		{"a locked layer would turn", equals(t, seven, 7, roundOne("", locked)), hand(model.HandRight),
			"layer 1 is locked and would turn the other way: unlock it first"},
		{"a locked centre would turn", equals(t, seven, 7, roundOne(locked, "")), hand(model.HandRight),
			"the centre is locked and would turn the other way: unlock it first"},
		{"the only spare is pinned", spares(seven, 7, roundOne("", "  pinned = [\"6\"]\n")), spare(0),
			"a locked layer or a pin holds the other spares: unlock it first"},
		{"the only spare is locked in", spares(seven, 7, roundOne("", locked)), spare(0),
			"a locked layer or a pin holds the other spares: unlock it first"},
		{"two cavities are free", equals(t, seven, 9, plain), spare(3), "both ends have free cavities for 2 more spares only"},
		{"no layer takes a spare", equals(t, seven, 9, roundOne(locked, locked)), spare(1), "every layer is locked: unlock one first"},
		{"a size that a specification lacks", equals(t, seven, 7, plain), spec("none such"),
			"none such has no size 22, which wire 0 is"},
		{"a specification in a locked layer", equals(t, seven, 7, roundOne("", locked)), spec("AS22759/34"),
			"layer 1 of T1 is locked, and 1 in it would be another size: unlock it first"},
		{"a size in locked layers", equals(t, seven, 7, roundOne(locked, locked)), size{"22", "20"},
			"every wire of size 22 here lies in a unit or a locked layer"},
		{"a kind of tube that the catalogue lacks", only(equals(t, seven, 7, plain)), tube("own"), "the catalogue has no tube own"},
		{"a tube too tight", only(equals(t, seven, 7, plain), own(1.5, 0.5)), tube("own"), "no own tube goes on here"},
		{"a tube too wide", only(equals(t, seven, 7, plain), own(40, 20)), tube("own"), "every own tube that goes on here stays loose"},
	} {
		h, err := Changed(c.s, 0, Value{change: c.ask})
		if err == nil || err.Error() != c.want || h != c.s.H {
			t.Errorf("%s: %v, want %q", c.name, err, c.want)
		}
		if s, err := Built(c.s, 0, Value{change: c.ask}); err == nil || err.Error() != c.want || s != c.s {
			t.Errorf("%s, built: %v", c.name, err)
		}
	}
	// A variant says so, too.
	s := equals(t, seven, 9, plain)
	for want, of := range map[string]struct {
		i int
		a model.Aside
	}{
		"there is no such branch":                             {1, model.Aside{}},
		"there is no such branch ":                            {-1, model.Aside{}},
		"both ends have free cavities for 2 more spares only": {0, model.Aside{Spares: model.Some(3)}},
		"none such has no size 22, which wire 0 is":           {0, model.Aside{Spec: model.Some("none such")}},
	} {
		h, gone, err := Taken(s, of.i, of.a)
		if err == nil || err.Error() != strings.TrimSpace(want) || h != s.H || gone != nil {
			t.Errorf("a variant: %v %v, want %q", err, gone, want)
		}
	}
	if _, _, err := Taken(equals(t, 12, 12, ""), 0, model.Aside{Spares: model.Some(1)}); err == nil ||
		err.Error() != "the branch is not laid yet" {
		t.Errorf("not laid: %v", err)
	}
}

// What no lay-up keeps is named: the innermost layer that is locked or has a pin.
func TestWhatNoLayUpKeeps(t *testing.T) {
	lock, pin := model.Layer{Locked: model.Some(true)}, model.Layer{Pinned: []string{"7", "8"}}
	for _, c := range []struct {
		layers []model.Layer
		want   string
	}{
		{nil, "nothing can be laid so here"},
		{[]model.Layer{{}, {}}, "nothing can be laid so here"},
		{[]model.Layer{{}, lock, pin}, "layer 1 is locked, and no lay-up keeps it: unlock it first"},
		{[]model.Layer{{}, {}, pin}, "7 is pinned to layer 2, and no lay-up keeps it there: unpin it first"},
		{[]model.Layer{pin, lock}, "7 is pinned to the centre, and no lay-up keeps it there: unpin it first"},
	} {
		if got := cannot(&model.Branch{Layers: c.layers}); got != c.want {
			t.Errorf("%q, want %q", got, c.want)
		}
	}
	h := &model.Harness{Branches: []model.Branch{{ID: "T1", Layers: []model.Layer{{Of: []string{"1"}}, {Of: []string{"2", "3"},
		Pinned: []string{"3"}}}}, {ID: "L1", Layers: []model.Layer{{Of: []string{"1"}, Locked: model.Some(true)}}}}}
	for id, want := range map[string]string{"1": "L1 0 true true", "2": " 0 false false", "3": "T1 1 false true", "9": " 0 false false"} {
		branch, layer, is, held := heldBy(h, id)
		if got := fmt.Sprint(branch, " ", layer, " ", is, " ", held); got != want {
			t.Errorf("%s is held by %s, want %s", id, got, want)
		}
	}
}

// The outermost layer with room takes a piece, else the outermost that is not locked.
func TestRoomiest(t *testing.T) {
	free, lock := model.Layer{}, model.Layer{Locked: model.Some(true)}
	for _, c := range []struct {
		layers []model.Layer
		room   []int
		want   int
	}{
		{nil, nil, -1}, {[]model.Layer{lock, lock}, []int{3, 3}, -1}, {[]model.Layer{free, free, free}, nil, 2},
		{[]model.Layer{free, free, free}, []int{0, 1, 0}, 1}, {[]model.Layer{free, free, free}, []int{1, 1, 0}, 1},
		{[]model.Layer{free, free, lock}, []int{0, 0, 5}, 1}, {[]model.Layer{free, lock, lock}, []int{0, 9, 9}, 0},
		{[]model.Layer{free, free, free}, []int{1, 0}, 0},
	} {
		if got := roomiest(c.layers, c.room); got != c.want {
			t.Errorf("%v with room %v: %d, want %d", c.layers, c.room, got, c.want)
		}
	}
}

// A variant has a name that no other has: the second is called 2.
func TestNamesOfVariants(t *testing.T) {
	b := &model.Branch{}
	for _, want := range []string{"centre: two", "centre: two, 2", "centre: two, 3"} {
		got := freeName(b, "centre: two")
		if got != want {
			t.Errorf("%q, want %q", got, want)
		}
		b.Asides = append(b.Asides, model.Aside{Name: got})
	}
	if got := (Value{name: "lay-up", Laid: []int{2, 14, 22}}).Name(); got != "lay-up: 2-14-22" {
		t.Error(got)
	}
	if got := (Value{name: "centre", Says: "two"}).Name(); got != "centre: two" {
		t.Error(got)
	}
	for c, want := range map[core]string{{Kind: planning.UnitCore}: "units", {Kind: planning.MixedCore}: "mixed",
		{Kind: planning.BuiltCore, N: 1}: "built up", {Kind: planning.EqualCore, N: 1}: "one", {Kind: planning.CountCore, N: 2}: "two",
		{Kind: planning.EqualCore, N: 3}: "three", {Kind: planning.EqualCore, N: 4}: "four", {Kind: planning.CountCore, N: 5}: "five"} {
		if c.says() != want {
			t.Errorf("%+v is said as %q", c, c.says())
		}
	}
}

// A lay-up that is worked out is offered as what it lays in each layer, fillers too; taken, it is the present one, and
// what lies in the branch stays the same.
func TestLayUpsThatAreWorkedOut(t *testing.T) {
	text := calctest.OneSize(20, "22", "length_mm = 500.0\n", 24)
	text = strings.Replace(strings.Replace(text, "size = \"22\"", "size = \"16\"", 3), "size = \"22\"", "size = \"20\"", 6)
	s := calc.Complete(calctest.Parse(t, text), calctest.Catalogue(t), nil)
	k := layups(s, 0)
	if len(k) != 1 || k[0].ID != "layup" || k[0].Name != "lay-up" || len(k[0].Values) < 2 || len(k[0].Values) > 8 || k[0].Now < 0 {
		t.Fatalf("%+v", k)
	}
	keys := map[string]bool{}
	for n, v := range k[0].Values {
		all := 0
		for _, pieces := range v.Laid {
			all += pieces
		}
		b, err := Built(s, 0, v)
		if err != nil {
			t.Fatal(err)
		}
		f := FiguresOf(b, 0)
		if !slices.Equal(f.Laid, v.Laid) || f.Pieces != 20 || all < 20 || keys[v.Key] {
			t.Errorf("%s says %v, and %v is laid with %d pieces", v.Key, v.Laid, f.Laid, f.Pieces)
		}
		keys[v.Key] = true
		if got := (n == k[0].Now); got != v.change.present(s, 0) || got != (b.H == s.H) {
			t.Errorf("%s is the present one: %v", v.Key, got)
		}
		if want := fmt.Sprintf("%d at %s", n, unit.Fixed(b.Branches[0].OverMM, 2)); v.Key != want {
			t.Errorf("%s, want %s", v.Key, want)
		}
		a, err := Aside(s, 0, v)
		if err != nil || len(a.Layers) != len(v.Laid) {
			t.Errorf("kept as a variant: %v %+v", err, a)
		}
	}
	// Other pieces run here by now: it is not taken up.
	h := s.H.AddWire(model.Wire{ID: "more", From: model.Some("A:20"), To: model.Some("Z:20"), Spec: "AS22759/32", Size: "22"}, nil)
	more := calc.Complete(h, s.Base, nil)
	if _, err := Changed(more, 0, k[0].Values[0]); err == nil || err.Error() != "other pieces run here since that lay-up was worked out" {
		t.Errorf("%v", err)
	}
	if got := layups(calctest.Built(t, calctest.OneSize(3, "22", "length_mm = 500.0\n")), 0); got != nil {
		t.Errorf("a branch that is not laid: %v", got)
	}
	// The same ids in another order are the same layer; with other tape, other fillers, or another piece it is another.
	is := layup{sheet.Option{Layers: []model.Layer{{Of: []string{"b", "a"}}, {Of: []string{"c"}, Fillers: model.Some(2)}}}}
	for _, c := range []struct {
		as   []model.Layer
		want bool
	}{
		{[]model.Layer{{Of: []string{"a", "b"}}, {Of: []string{"c"}, Fillers: model.Some(2)}}, true},
		{[]model.Layer{{Of: []string{"a", "b"}}, {Of: []string{"c"}, Fillers: model.Some(3)}}, false},
		{[]model.Layer{{Of: []string{"a", "b"}, BindMM: model.Some(unit.Millimetre(0.2))}, {Of: []string{"c"}, Fillers: model.Some(2)}},
			false},
		{[]model.Layer{{Of: []string{"a", "b"}, BindMM: model.Some(unit.Millimetre(0.001))},
			{Of: []string{"c"}, Fillers: model.Some(2)}}, true},
		{[]model.Layer{{Of: []string{"a", "d"}}, {Of: []string{"c"}, Fillers: model.Some(2)}}, false},
		{[]model.Layer{{Of: []string{"a", "b"}}}, false},
	} {
		if got := is.present(&sheet.Sheet{Branches: []sheet.Branch{{As: c.as}}}, 0); got != c.want {
			t.Errorf("%v is the present one: %v", c.as, got)
		}
	}
}

// A unit, a few fillers and a rod: what counts as a piece, by hand. Five round a rod are five, six are six.
func TestPiecesThatAreCounted(t *testing.T) {
	layer := func(members, fillers, spares int, built unit.Millimetre) sheet.Layer {
		return sheet.Layer{Members: make([]sheet.Member, members), Fillers: fillers, Spares: spares, BuiltMM: built}
	}
	for _, c := range []struct {
		layers []sheet.Layer
		want   Figures
	}{
		{[]sheet.Layer{layer(6, 1, 0, 0), layer(12, 2, 1, 0)},
			Figures{Laid: []int{5, 12}, Layers: 2, Pieces: 15, Spares: 1, Fillers: 3}},
		{[]sheet.Layer{layer(6, 0, 0, 0), layer(6, 1, 2, 0)},
			Figures{Laid: []int{6, 6}, Layers: 2, Pieces: 11, Spares: 2, Fillers: 1}},
		{[]sheet.Layer{layer(1, 0, 1, 1.2), layer(7, 1, 1, 0)},
			Figures{Laid: []int{1, 7}, Layers: 2, Pieces: 7, Spares: 2, Fillers: 1, BuiltUp: true}},
		{[]sheet.Layer{layer(5, 1, 0, 0)}, Figures{Laid: []int{5}, Layers: 1, Pieces: 4, Fillers: 1}},
	} {
		got := FiguresOf(&sheet.Sheet{H: &model.Harness{Branches: []model.Branch{{ID: "T"}}}, Index: model.NewIndex(&model.Harness{}),
			Branches: []sheet.Branch{{Layers: c.layers}}}, 0)
		if fmt.Sprintf("%+v", got) != fmt.Sprintf("%+v", c.want) {
			t.Errorf("%+v\nwant %+v", got, c.want)
		}
	}
}

// Which centres are offered, by hand from the rules: a number that some size has, with what is pinned to the centre among
// them; two sizes also mixed; more than seven pieces also built up; the present one always and marked.
func TestCentresThatAreOffered(t *testing.T) {
	mixed := func(thick, thin int, branch string) *sheet.Sheet {
		text := calctest.OneSize(thick+thin, "22", "length_mm = 500.0\n"+branch)
		return calctest.Built(t, strings.Replace(text, "size = \"22\"", "size = \"16\"", thick))
	}
	for _, c := range []struct {
		name string
		s    *sheet.Sheet
		want string // the present one in brackets
	}{
		{"seven", equals(t, 7, 7, roundOne("", "")), "[one] two three four five"},
		{"eight round two", equals(t, 10, 10, layersOf([3]any{0, 1, ""}, [3]any{2, 9, ""})), "one [two] three four five built up"},
		{"eight", equals(t, 8, 8, layersOf([3]any{0, 1, ""}, [3]any{2, 7, ""})), "one [two] three four five built up"},
		{"two pinned", equals(t, 8, 8, layersOf([3]any{0, 1, "  pinned = [\"0\", \"1\"]\n"}, [3]any{2, 7, ""})),
			"[two] three four five"},
		{"locked", equals(t, 7, 7, roundOne(locked, "")), ""},
		{"two thick, six thin", mixed(2, 6, layersOf([3]any{0, 1, ""}, [3]any{2, 7, ""})),
			"one [two] three four five mixed built up"},
		{"a thick and a thin", mixed(1, 6, layersOf([3]any{0, 1, ""}, [3]any{2, 6, ""})), "one two three four five [mixed]"},
		{"built up", equals(t, 9, 9, layersOf([3]any{0, 0, "  bind_mm = 0.8\n"}, [3]any{1, 8, ""})),
			"one two three four five [built up]"},
		{"a thick one pinned", mixed(1, 7, layersOf([3]any{0, 0, "  pinned = [\"0\"]\n"}, [3]any{1, 7, ""})), "[one] mixed built up"},
	} {
		got := ""
		for _, k := range centres(c.s, 0) {
			for n, v := range k.Values {
				says := v.Says
				if n == k.Now {
					says = "[" + says + "]"
				}
				got += " " + says
			}
		}
		if strings.TrimSpace(got) != c.want {
			t.Errorf("%s:%s, want %s", c.name, got, c.want)
		}
	}
}
