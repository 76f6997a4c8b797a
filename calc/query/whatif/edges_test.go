package whatif

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/phase/bundle"
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
	// What is there already is no change, and what is asked for after it is made nevertheless.
	h, _, err := Taken(s, 0, model.Aside{Letter: a, Spec: model.Some("AS22759/32"), Sizes: map[string]string{"22": "20"}})
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
