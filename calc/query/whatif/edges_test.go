package whatif

import (
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/phase/bundle"
	"contralay/calc/phase/planning"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// told is the values of a kind, the present one in brackets, and -1 where none is.
func told(k Kind) string {
	var out []string
	for n, v := range k.Values {
		if n == k.Now {
			out = append(out, "["+v.Says+"]")
		} else {
			out = append(out, v.Says)
		}
	}
	if k.Now < 0 {
		out = append(out, fmt.Sprint(k.Now))
	}
	return strings.Join(out, " ")
}

// Where the present is none of the values, none is marked, and the mark is -1: four of two sizes in the centre, a lay-up that nobody worked
// out, wires of two specifications, a branch without a sheath.
func TestThePresentIsNone(t *testing.T) {
	text := calctest.OneSize(8, "22", "length_mm = 500.0\n"+layersOf([3]any{0, 3, ""}, [3]any{4, 7, ""}))
	text = strings.Replace(strings.Replace(text, "size = \"22\"", "size = \"16\"", 2), "AS22759/32", "AS22759/34", 1)
	s := calctest.Built(t, text)
	if got := told(centres(s, 0)[0]); got != "one two three four five mixed built up -1" {
		t.Errorf("of four in the centre: %s", got)
	}
	if k := specs(s, 0)[0]; k.Now != -1 || len(k.Values) < 2 {
		t.Errorf("of two specifications: %s", told(k))
	}
	s.Branches[0].Sheath.Tube.Set = false
	if k := sheaths(s, 0)[0]; k.Now != -1 || len(k.Values) < 2 {
		t.Errorf("of no sheath: %s", told(k))
	}
	s.Proposals = map[string]sheet.Proposal{bundle.Question(s, 0): {Options: []sheet.Option{{Layers: []model.Layer{{Of: []string{"x"}}}}}}}
	if k := layups(s, 0)[0]; k.Now != -1 || len(k.Values) != 1 {
		t.Errorf("of no lay-up: %s", told(k))
	}
	if k := hands(s, 0)[0]; told(k) != "[LH] RH" && told(k) != "LH [RH]" {
		t.Errorf("of a hand: %s", told(k))
	}
}

// A size is offered two steps up and two down the list of its specification, where that has so many; those that are thinner first.
func TestTwoSizesOnEitherSide(t *testing.T) {
	for size, want := range map[string]string{"20": "24 22 [20] 18 16", "22": "26 24 [22] 20 18"} {
		s := calctest.Built(t, strings.Replace(calctest.OneSize(7, size, "length_mm = 500.0\n"+roundOne("", "")), "format = 1\n",
			"format = 1\n[rules]\nsize_min = \"30\"\n", 1))
		if k := sizes(s, 0); len(k) != 1 || told(k[0]) != want {
			t.Errorf("%s: %+v", size, k)
		}
	}
	// The sizes of a branch come thin to thick, whatever their order in the file.
	text := calctest.OneSize(9, "22", "length_mm = 500.0\n"+layersOf([3]any{0, 1, ""}, [3]any{2, 8, ""}))
	text = strings.Replace(strings.Replace(text, "size = \"22\"", "size = \"16\"", 2), "size = \"22\"", "size = \"20\"", 3)
	var ids []string
	for _, k := range sizes(calctest.Built(t, text), 0) {
		ids = append(ids, k.ID)
	}
	if got := strings.Join(ids, ", "); got != "size 22, size 20, size 16" {
		t.Error(got)
	}
}

// Twelve more spares are offered at most, however many cavities are free; of a branch all of whose layers are locked none more.
func TestTwelveMoreSpares(t *testing.T) {
	if got := told(spares(equals(t, seven, 30, roundOne("", "")), 0)[0]); got != "[0] 1 2 3 4 5 6 7 8 9 10 11 12" {
		t.Error(got)
	}
	if got := told(spares(equals(t, seven, 30, roundOne(locked, locked)), 0)[0]); got != "[0]" {
		t.Error(got)
	}
	if got := told(spares(equals(t, seven, 9, roundOne("", locked)), 0)[0]); got != "[0] 1 2" { // the centre takes them
		t.Error(got)
	}
}

// Where no wire of a size may have another, it is said of the last that was left, and nothing changes: seven of 20 AWG beside each other
// carry all they may, so each would be too thin.
func TestNoneMayBeThinner(t *testing.T) {
	s := calctest.Carrying(t, 90, "", calctest.Repeated(7, "22 9"), [][]int{{0}, {1, 2, 3, 4, 5, 6}}, "")
	h, err := Changed(s, 0, Value{change: size{"22", "26"}})
	if err == nil || h != s.H || !strings.HasPrefix(err.Error(), "none of size 22 can be 26 here; wire w6: ") {
		t.Errorf("%v", err)
	}
	// Of two sizes at once each is judged: the thick ones may be thinner, those that carry much may not, whatever the others become.
	s = calctest.Carrying(t, 90, "", append(calctest.Repeated(6, "22 0.1"), "20 14"), [][]int{{6}, {0, 1, 2, 3, 4, 5}}, "")
	for range 4 { // in whatever order they are gone through
		_, _, err = Taken(s, 0, model.Aside{Letter: model.Some(model.Letter("A")), Sizes: map[string]string{"20": "26", "22": "20"}})
		if err == nil || !strings.HasPrefix(err.Error(), "none of size 20 can be 26 here; wire w6: ") {
			t.Errorf("%v", err)
		}
	}
}

// Taken up with layers, a variant changes how the branch is made where it says so, or where it is a lay-up alone.
func TestHowAVariantIsMade(t *testing.T) {
	s := calctest.Built(t, calctest.OneSize(seven, "22", "length_mm = 500.0\nmake = \"laid\"\n"+roundOne("", "")))
	a := model.Some(model.Letter("A"))
	none, laid, twisted := model.Opt[model.Make]{}, model.Some(model.MakeLaid), model.Some(model.MakeTwisted)
	for _, c := range []struct {
		letter     model.Opt[model.Letter]
		made, want model.Opt[model.Make]
	}{{a, none, laid}, {a, twisted, twisted}, {a, laid, laid}, {model.Opt[model.Letter]{}, none, none},
		{model.Opt[model.Letter]{}, twisted, twisted}} {
		layers := []model.Layer{{Of: []string{"1", "0"}}, {Of: []string{"2", "3", "4", "5", "6"}}}
		h, gone, err := Taken(s, 0, model.Aside{Letter: c.letter, Make: c.made, Layers: layers})
		if err != nil || len(gone) > 0 {
			t.Fatal(err, gone)
		}
		if b := h.Branches[0]; b.Make != c.want || len(b.Layers) != 2 || !slices.Equal(b.Layers[0].Of, []string{"1", "0"}) {
			t.Errorf("%+v: %+v", c, b)
		}
	}
	// One layer is a lay-up, too.
	h, _, err := Taken(s, 0, model.Aside{Letter: a, Make: twisted, Layers: []model.Layer{{Of: []string{"6", "5", "4", "3", "2",
		"1", "0"}}}})
	if b := h.Branches[0]; err != nil || b.Make != twisted || len(b.Layers) != 1 || b.Layers[0].Of[0] != "6" {
		t.Errorf("%v: %+v", err, b)
	}
	// What is there already is no change, and what is asked for after it is made nevertheless.
	h, _, err = Taken(s, 0, model.Aside{Letter: a, Spec: model.Some("AS22759/32"), Sizes: map[string]string{"22": "20"}})
	if err != nil || h.Wires[3].Size != "20" || h.Wires[3].Spec != "AS22759/32" {
		t.Errorf("%v: %+v", err, h.Wires[3])
	}
}

// A thin bundle has a sheath, and a unit of a thin OD its own specification.
func TestThinOnes(t *testing.T) {
	s := equals(t, seven, 7, roundOne("", ""))
	for over, want := range map[unit.Millimetre]bool{0: false, 0.4: true} {
		if s.Branches[0].OverMM = over; (sheaths(s, 0) != nil) != want {
			t.Errorf("%v mm: a sheath is asked for: %v", over, !want)
		}
	}
	text := strings.Replace(calctest.OneSize(4, "22", "length_mm = 500.0\n"), "[[branch]]",
		"[[unit]]\nid = \"U\"\nwires = [\"2\", \"3\"]\nover_mm = 0.9\n[[branch]]", 1)
	for _, c := range []struct {
		text string
		want []int
	}{{text, []int{0, 1}}, {strings.Replace(text, "over_mm = 0.9\n", "", 1), []int{0, 1, 2, 3}}} {
		if got := slices.Sorted(slices.Values(ofSpec(calctest.Built(t, c.text), 0))); !slices.Equal(got, c.want) {
			t.Errorf("%v, want %v", got, c.want)
		}
	}
}

// The sheet of a harness is built once: it is the same until the harness is another.
func TestASheetIsKept(t *testing.T) {
	s := equals(t, seven, 7, roundOne("", ""))
	tr := trial{h: s.H, built: s}
	if tr.sheet(s) != s {
		t.Error("the sheet that it has is built again")
	}
	tr.h = s.H.EditBranch(0, func(b *model.Branch) { b.LengthMM = 700 })
	is := tr.sheet(s)
	if is == s || is.H != tr.h || tr.sheet(s) != is || is.Branches[0].OverMM != calc.Build(tr.h, s.Base, nil).Branches[0].OverMM {
		t.Error("the sheet is of another harness")
	}
	if tr.set(s.H); tr.built != nil || tr.h != s.H {
		t.Error("the sheet of another harness is kept")
	}
}

// A variant that turns the other way says nothing of a lay-up that is proposed, though the file says how the branch is made; one with a
// spare more says where it lies, in a branch of one layer, too.
func TestWhatAVariantSaysOfLayers(t *testing.T) {
	s := calctest.Built(t, calctest.OneSize(12, "22", "length_mm = 500.0\nmake = \"laid\"\n"))
	s = calc.Complete(s.H, s.Base, s)
	other := model.HandLeft
	if hand(other).present(s, 0) {
		other = model.HandRight
	}
	a, err := Aside(s, 0, Value{change: hand(other)})
	if err != nil || a.Make.Set || a.Layers != nil || a.Outer.V != other {
		t.Errorf("%v: %+v", err, a)
	}
	s = equals(t, 3, 4, "make = \"twisted\"\n"+layersOf([3]any{0, 2, ""}))
	a, err = Aside(s, 0, Value{change: spare(1)})
	if err != nil || len(a.Layers) != 1 || len(a.Layers[0].Of) != 4 || a.Make.V != model.MakeTwisted || a.Spares.V != 1 {
		t.Errorf("%v: %+v", err, a)
	}
}

// Where units can lie in the centre together, they are asked for by that name and not by their number; a number up to three is of whatever
// pieces lie best, one above of so many of one size. By hand: 22 AWG, of which the first make pairs U and V.
func TestCentresOfUnits(t *testing.T) {
	of := func(n, units int, layers string) *sheet.Sheet {
		text := calctest.OneSize(n, "22", "length_mm = 500.0\n"+layers)
		for k := range units {
			text = strings.Replace(text, "[[branch]]", fmt.Sprintf("[[unit]]\nid = %q\nwires = [\"%d\", \"%d\"]\n[[branch]]",
				[]string{"U", "V"}[k], 2*k, 2*k+1), 1)
		}
		return calctest.Built(t, text)
	}
	layer := func(of string, more string) string {
		return "  [[branch.layer]]\n  of = [\"" + strings.Join(strings.Fields(of), "\", \"") + "\"]\n" + more
	}
	for _, c := range []struct {
		name string
		s    *sheet.Sheet
		want string
	}{
		{"both units", of(10, 2, layer("U V", "")+layer("4 5 6 7 8 9", "")), "one three four five [units] built up"},
		{"both units round one", of(10, 2, layer("4", "")+layer("U V 5 6 7 8 9", "")), "[one] three four five units built up"},
		{"two wires", of(10, 2, layer("4 5", "")+layer("U V 6 7 8 9", "")), "one [two] three four five units built up"},
		{"a unit and a wire", of(10, 2, layer("U 4", "")+layer("V 5 6 7 8 9", "")), "one [two] three four five units built up"},
		{"one unit", of(10, 1, layer("U", "")+layer("2 3 4 5 6 7 8 9", "")), "two three four five [units] built up"},
		{"one unit round two", of(10, 1, layer("2 3", "")+layer("U 4 5 6 7 8 9", "")), "[two] three four five units built up"},
		{"one pinned", of(10, 2, layer("4", "  pinned = [\"4\"]\n")+layer("U V 5 6 7 8 9", "")), "[one] three four five built up"},
		{"few wires", of(7, 2, layer("U", "")+layer("V 4 5 6", "")), "[one] three units"},
		{"as few as three", of(5, 2, layer("U", "")+layer("V 4", "")), "[one] units"},
	} {
		if got := told(centres(c.s, 0)[0]); got != c.want {
			t.Errorf("%s: %s, want %s", c.name, got, c.want)
		}
	}
}

// A number of a size is offered where the size has just so many, a mixed centre where at least three pieces run, of them three pinned at
// most; what a centre is it is by one name alone.
func TestCentresAtTheirEdges(t *testing.T) {
	mixed := func(thick, thin int, branch string) *sheet.Sheet {
		text := calctest.OneSize(thick+thin, "22", "length_mm = 500.0\n"+branch)
		return calctest.Built(t, strings.Replace(text, "size = \"22\"", "size = \"16\"", thick))
	}
	for _, c := range []struct {
		name string
		s    *sheet.Sheet
		want string
	}{
		{"three and four", mixed(3, 4, layersOf([3]any{0, 0, ""}, [3]any{1, 6, ""})), "[one] two three four mixed"},
		{"all of a few", equals(t, 3, 3, "make = \"laid\"\n"+layersOf([3]any{0, 0, ""}, [3]any{1, 2, ""})), "[one] two"},
		{"three mixed", mixed(2, 5, layersOf([3]any{0, 2, ""}, [3]any{3, 6, ""})), "one two three four five [mixed]"},
		{"three pieces", mixed(1, 2, "make = \"laid\"\n"+layersOf([3]any{0, 0, ""}, [3]any{1, 2, ""})), "[one] two mixed"},
		{"two pieces", mixed(1, 1, "make = \"laid\"\n"+layersOf([3]any{0, 0, ""}, [3]any{1, 1, ""})), "[one]"},
		{"three pinned", mixed(3, 4, layersOf([3]any{0, 2, "  pinned = [\"0\", \"1\", \"2\"]\n"}, [3]any{3, 6, ""})), "[three] mixed"},
		{"four pinned", mixed(4, 4, layersOf([3]any{0, 3, "  pinned = [\"0\", \"1\", \"2\", \"3\"]\n"}, [3]any{4, 7, ""})), "[four]"},
		{"one pinned of eight", mixed(1, 7, layersOf([3]any{0, 0, "  pinned = [\"0\"]\n"}, [3]any{1, 7, ""})), "[one] mixed built up"},
	} {
		if got := told(centres(c.s, 0)[0]); got != c.want {
			t.Errorf("%s: %s, want %s", c.name, got, c.want)
		}
	}
	s := equals(t, 9, 9, layersOf([3]any{0, 0, "  bind_mm = 0.8\n"}, [3]any{1, 8, ""}))
	thin := equals(t, 9, 9, layersOf([3]any{0, 1, "  bind_mm = 0.8\n"}, [3]any{2, 8, ""}))
	for _, c := range []struct {
		core core
		s    *sheet.Sheet
		want bool
	}{
		{core{Kind: planning.BuiltCore}, s, true}, {core{Kind: planning.EqualCore, N: 1}, s, false},
		{core{Kind: planning.MixedCore}, s, false},
		{core{Kind: planning.CountCore, N: 1}, s, false}, {core{Kind: planning.UnitCore}, s, false},
		{core{Kind: planning.BuiltCore}, thin, false}, {core{Kind: planning.EqualCore, N: 2}, thin, true},
	} {
		if got := c.core.present(c.s, 0); got != c.want {
			t.Errorf("%+v of %v: %v", c.core, c.s.Branches[0].As[0].Of, got)
		}
	}
}

// A specification whose OD nobody gave has all sizes, and cannot be laid: a variant of it is not taken up, and says why.
func TestAVariantThatCannotBeLaid(t *testing.T) {
	s := equals(t, seven, 7, roundOne("", ""))
	cat := *s.Cat
	cat.Wires = maps.Clone(cat.Wires)
	e, _ := cat.Wire("AS22759/32", "22")
	e.Spec, e.OverMM = "own", 0
	cat.Wires[e.Key()] = e
	s = calc.Build(s.H, &cat, nil)
	const want = "the OD of 0 is not known"
	h, gone, err := Taken(s, 0, model.Aside{Spec: model.Some("own")})
	if err == nil || err.Error() != want || h != s.H || gone != nil {
		t.Errorf("%v, gone %v", err, gone)
	}
	if h, err := Changed(s, 0, Value{change: spec("own")}); err == nil || err.Error() != want || h != s.H {
		t.Errorf("%v", err)
	}
}

// Fillers of the old size do not stay where a variant asks for a specification and for a spare: both are one change of the lay-up.
func TestAVariantOfTwoChanges(t *testing.T) {
	s := equals(t, 12, 14, layersOf([3]any{0, 0, ""}, [3]any{1, 5, "  fillers = 1\n  filler_mm = 1.07\n"}, [3]any{6, 11, ""}))
	h, _, err := Taken(s, 0, model.Aside{Spec: model.Some("AS22759/34"), Spares: model.Some(1)})
	if err != nil || len(h.Wires) != 13 || h.Wires[0].Spec != "AS22759/34" {
		t.Fatalf("%v, %d wires", err, len(h.Wires))
	}
	for k, l := range h.Branches[0].Layers {
		if l.FillerMM.V == 1.07 {
			t.Errorf("layer %d has fillers of 1.07 mm: %+v", k, l)
		}
	}
	// Of the spare alone they stay: it finds room outside of them.
	h, _, err = Taken(s, 0, model.Aside{Spares: model.Some(1)})
	if err != nil || h.Branches[0].Layers[1].FillerMM.V != 1.07 || len(h.Branches[0].Layers[2].Of) != 7 {
		t.Errorf("%v: %+v", err, h.Branches[0].Layers)
	}
}

// A spare that is pinned, or that a wire comes back by, stays: with one of each among three there are two at least, and three now.
func TestSparesThatStay(t *testing.T) {
	text := calctest.OneSize(8, "22", "length_mm = 500.0\n"+layersOf([3]any{0, 0, ""}, [3]any{1, 7, "  pinned = [\"7\"]\n"}), 9)
	for _, id := range []string{"5", "6", "7"} {
		text = strings.Replace(text, "id = \""+id+"\"\n", "id = \""+id+"\"\nrole = \"spare\"\n", 1)
	}
	text = strings.Replace(text, "id = \"0\"\n", "id = \"0\"\nreturn = \"5\"\n", 1)
	s := calctest.Built(t, text)
	if got := told(spares(s, 0)[0]); got != "2 [3] 4" {
		t.Error(got)
	}
	all, free := sparesIn(s, 0)
	if fmt.Sprint(all) != "[5 6 7]" || fmt.Sprint(free) != "[6]" {
		t.Errorf("%v, of them free %v", all, free)
	}
}

// The thinnest and the thickest size of a specification have neighbours on one side. Of ten sizes at once there are more values than are
// asked for: the nearest forty.
func TestFortyValuesAtMost(t *testing.T) {
	const rules = "format = 1\n[rules]\nsize_min = \"30\"\n"
	text := calctest.OneSize(20, "22", "length_mm = 500.0\n"+layersOf([3]any{0, 0, ""}, [3]any{1, 19, ""}))
	text = strings.Replace(text, "format = 1\n", rules, 1)
	for k, z := range []string{"30", "28", "26", "24", "20", "18", "16", "14", "12"} {
		id := fmt.Sprintf("id = \"%d\"\n", k)
		at := strings.Index(text, id)
		text = text[:at] + strings.Replace(text[at:], "size = \"22\"", "size = \""+z+"\"", 1)
	}
	s := calctest.Built(t, text)
	total := 0
	for _, k := range Kinds(s, 0) {
		total += len(k.Values)
	}
	if total != 40 {
		t.Errorf("%d values", total)
	}
	of := sizes(s, 0)
	if len(of) != 10 || told(of[0]) != "[30] 28 26" || told(of[9]) != "16 14 [12]" {
		t.Errorf("%d sizes, %s to %s", len(of), told(of[0]), told(of[len(of)-1]))
	}
}

// A branch is concerned by itself, by its wires and their units, and by the cavities where they end; not by a splice.
func TestWhatConcernsABranch(t *testing.T) {
	text := strings.Replace(calctest.OneSize(3, "22", "length_mm = 500.0\n"), "[[branch]]",
		"[[unit]]\nid = \"U\"\nwires = [\"1\", \"2\"]\n[[branch]]", 1)
	got := concerns(calctest.Built(t, text), 0)
	want := []string{"0", "1", "2", "A:0", "A:1", "A:2", "T1", "U", "Z:0", "Z:1", "Z:2"}
	if all := slices.Sorted(maps.Keys(got)); !slices.Equal(all, want) {
		t.Errorf("%v, want %v", all, want)
	}
}
