package whatif_test

import (
	"encoding/json"
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/query/whatif"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/paper/figure"
)

// value is the value of a key, of the branch as it is.
func value(t *testing.T, s *sheet.Sheet, i int, key string) whatif.Value {
	t.Helper()
	for _, k := range whatif.Kinds(s, i) {
		for _, v := range k.Values {
			if v.Key == key {
				return v
			}
		}
	}
	t.Fatalf("%s is not offered", key)
	return whatif.Value{}
}

func figures(t *testing.T, s *sheet.Sheet, i int, key string) whatif.Figures {
	t.Helper()
	b, err := whatif.Built(s, i, value(t, s, i, key))
	if err != nil {
		t.Fatalf("%s: %v", key, err)
	}
	return whatif.FiguresOf(b, i)
}

// As many equal wires as close exactly round each centre: layers and OD by the table of equal wires at ratio 12 in the
// reference (worked out there from the geometry alone, by three programs).
func TestCentresOfEqualWires(t *testing.T) {
	const d = 1.09
	for _, c := range []struct {
		centre string
		layers []int
		over   float64 // in diameters
	}{
		{"one", []int{1, 6, 12}, 5.023}, {"two", []int{2, 8, 15}, 6}, {"three", []int{3, 9, 15}, 6.155}, {"four", []int{4, 10, 16}, 6.414},
		{"five", []int{5, 11, 17}, 6.701},
	} {
		n := 0
		for _, k := range c.layers {
			n += k
		}
		s := calc.Complete(calctest.Parse(t, calctest.OneSize(n, "22", "length_mm = 500.0\n")), calctest.Catalogue(t), nil)
		for _, k := range whatif.Kinds(s, 0) {
			if k.ID != "centre" {
				continue
			}
			if at := slices.IndexFunc(k.Values, func(v whatif.Value) bool { return v.Says == c.centre }); at >= 0 && at != k.Now {
				b, err := whatif.Built(s, 0, k.Values[at])
				if err != nil {
					t.Fatal(err)
				}
				s = b
			}
		}
		f := whatif.FiguresOf(s, 0)
		if !slices.Equal(f.Laid, c.layers) {
			t.Errorf("%d wires round a centre of %s: %v, want %v", n, c.centre, f.Laid, c.layers)
		}
		calctest.Near(t, c.centre+": OD", float64(f.Over), d*c.over, 0.002*d)
	}
}

// Spares are offered from none to what both ends have free cavities for.
func TestSparesAsFarAsBothEndsGo(t *testing.T) {
	for _, c := range []struct{ wires, cavities, more int }{{9, 9, 0}, {9, 11, 2}, {18, 21, 3}} {
		h := calctest.Parse(t, calctest.OneSize(c.wires, "22", "length_mm = 500.0\n", c.cavities))
		s := calc.Complete(h, calctest.Catalogue(t), nil)
		var got []string
		for _, k := range whatif.Kinds(s, 0) {
			if k.ID == "spares" {
				for _, v := range k.Values {
					got = append(got, v.Says)
				}
			}
		}
		want := []string{"0", "1", "2", "3"}[:c.more+1]
		if c.more == 0 {
			want = nil // there is no other
		}
		if !slices.Equal(got, want) {
			t.Errorf("%d wires in %d cavities: %v, want %v", c.wires, c.cavities, got, want)
		}
	}
}

// A wire with little current is made thinner though those beside it are not: they would be too warm, all thinner together
// it would be, too.
func TestACoolWireAmongHotOnesMayBeThinner(t *testing.T) {
	wires := append(calctest.Repeated(24, "22 3.5"), "22 0.2", "22 0.2")
	s := calctest.Carrying(t, 90, "", wires, nil, "")
	h, err := whatif.Changed(s, 0, value(t, s, 0, "size 22 24"))
	if err != nil {
		t.Fatal(err)
	}
	thinner := 0
	for k := range h.Wires {
		if h.Wires[k].Size == "24" {
			thinner++
		}
	}
	if n, of := whatif.Share(s, 0, value(t, s, 0, "size 22 24"), h); n != thinner || of != 26 {
		t.Errorf("told as %d of %d, it is %d of 26", n, of, thinner)
	}
	if h.Wires[24].Size != "24" || h.Wires[25].Size != "24" || thinner == len(h.Wires) {
		t.Errorf("%d of %d are thinner, the cool ones %s and %s", thinner, len(h.Wires), h.Wires[24].Size, h.Wires[25].Size)
	}
}

// What a person must see from the trunk of the demonstration, as the command figures prints it.
func TestTheTrunkOfTheDemonstration(t *testing.T) {
	s, i := demonstration(t)
	now := whatif.FiguresOf(s, i)
	for _, key := range []string{"centre three", "spares 1", "spares 5", "spec AS22759/34", "hand RH", "sheath AS23053/5", "size 20 22",
		"spec SAE J1128 TXL"} {
		h, err := whatif.Changed(s, i, value(t, s, i, key))
		if err != nil {
			t.Errorf("%s: %v", key, err)
			continue
		}
		is := calc.Complete(h, s.Base, nil)
		printed(t, key, is, i, whatif.FiguresOf(is, i))
	}
	for _, k := range whatif.Kinds(s, i) {
		if k.ID == "centre" && (k.Now < 0 || k.Values[k.Now].Says != "units") {
			t.Errorf("the centre is C1 and D1, both made up before: %+v", k)
		}
	}
	if f := figures(t, s, i, "centre three"); f.Laid[0] != 3 {
		t.Errorf("a centre of three is %v", f.Laid)
	}
	if f := figures(t, s, i, "spares 1"); f.Spares != now.Spares-3 || f.Pieces != now.Pieces-3 {
		t.Errorf("three spares fewer: %+v", f)
	}
	// The outer layer has room for one.
	last := s.Branches[i].Layers[len(s.Branches[i].Layers)-1]
	if f := figures(t, s, i, "spares 5"); last.Room < 1 || f.Spares != now.Spares+1 || f.Over != now.Over || f.Laid[2] != now.Laid[2]+1 {
		t.Errorf("one spare more, with room for %d: %v at %v, was %v at %v", last.Room, f.Laid, f.Over, now.Laid, now.Over)
	}
	other := figures(t, s, i, "hand RH")
	if b, _ := whatif.Built(s, i, value(t, s, i, "hand RH")); b.Branches[i].Layers[2].Hand != model.HandRight ||
		b.Branches[i].Layers[1].Hand != model.HandLeft {
		t.Error("the layers do not alternate")
	}
	if other.Over != now.Over || other.Gram != now.Gram || other.MinBend != now.MinBend || other.Sheath != now.Sheath {
		t.Errorf("the other hand: %+v", other)
	}
	h, _ := whatif.Changed(s, i, value(t, s, i, "spec AS22759/34"))
	for _, id := range s.Branches[i].Components {
		if k, ok := s.Index.Wire[id]; ok && h.Wires[k].Spec != "AS22759/34" {
			t.Errorf("%s stays %s", id, h.Wires[k].Spec)
		}
	}
}

// A variant of the file that says only what is otherwise is taken up as that change is made: lay-up and sheath follow.
func TestAVariantThatLeavesMuchOut(t *testing.T) {
	s, i := demonstration(t)
	for key, a := range map[string]model.Aside{
		"spec AS22759/34": {Name: "other wire", Spec: model.Some("AS22759/34")},
		"size 22 20":      {Name: "thicker", Sizes: map[string]string{"22": "20"}},
		"spares 1":        {Name: "few spares", Spares: model.Some(1)},
		"hand RH":         {Name: "other hand", Letter: model.Some(model.Letter("B")), Outer: model.Some(model.HandRight)},
	} {
		want, err := whatif.Changed(s, i, value(t, s, i, key))
		if err != nil {
			t.Fatal(err)
		}
		got, gone, err := whatif.Taken(s, i, a)
		if err != nil || len(gone) > 0 || text(got) != text(want) {
			t.Errorf("%s: %v, gone %v\n%s", a.Name, err, gone, cmp.Diff(text(want), text(got)))
		}
	}
}

// One spare more goes where there is room, and the rest lies as it lay: nineteen of one size are 1 · 6 · 12.
func TestASpareGoesWhereThereIsRoom(t *testing.T) {
	s := calctest.Built(t, calctest.OneSize(18, "22", `length_mm = 500.0
  [[branch.layer]]
  of = ["17"]
  [[branch.layer]]
  of = ["0", "1", "2", "3", "4"]
  [[branch.layer]]
  of = ["5", "6", "7", "8", "9", "10", "11", "12", "13", "14", "15", "16"]
`, 19))
	h, err := whatif.Changed(s, 0, value(t, s, 0, "spares 1"))
	if err != nil {
		t.Fatal(err)
	}
	for k, want := range []string{"17", "0 1 2 3 4 SP1", "5 6 7 8 9 10 11 12 13 14 15 16"} {
		if got := strings.Join(h.Branches[0].Layers[k].Of, " "); got != want {
			t.Errorf("layer %d is %s, want %s", k, got, want)
		}
	}
}

// printed compares figures with what the command figures prints of a branch.
func printed(t *testing.T, key string, s *sheet.Sheet, i int, f whatif.Figures) {
	t.Helper()
	type sized struct {
		Over    *float64 `json:"over_mm"`
		Min     *float64 `json:"over_min_mm"`
		Max     *float64 `json:"over_max_mm"`
		Gram    *float64 `json:"mass_g"`
		Hottest *float64 `json:"hottest_c"`
		Layers  []struct {
			Members         []string
			Fillers, Spares int
		}
		Bend struct {
			Min float64 `json:"min_mm"`
		}
		Sheath struct {
			Part  *string
			Slide *float64 `json:"slide_mm"`
			Over  *float64 `json:"over_mm"`
		}
	}
	var all struct {
		Branches []sized
		Snags    []struct{ Level, Where string }
		Wires    []struct {
			ID   string
			Path []string
		}
	}
	out, err := figure.All(s)
	if err != nil {
		t.Fatal(err)
	}
	if err := json.Unmarshal(out, &all); err != nil {
		t.Fatal(err)
	}
	p := all.Branches[i]
	members, fillers, spares := 0, 0, 0
	for _, l := range p.Layers {
		members, fillers, spares = members+len(l.Members), fillers+l.Fillers, spares+l.Spares
	}
	if len(p.Layers) != f.Layers || members-fillers != f.Pieces || fillers != f.Fillers || spares != f.Spares ||
		*p.Sheath.Part != f.Sheath {
		t.Errorf("%s: figures prints %d layers, %d pieces, %d fillers, %d spares, %s; here %+v", key, len(p.Layers), members-fillers,
			fillers, spares, *p.Sheath.Part, f)
	}
	near := func(what string, v float64, printed *float64) {
		t.Helper()
		if printed == nil || math.Abs(v-*printed) > 0.006 {
			t.Errorf("%s: %s is %v, figures prints %v", key, what, v, printed)
		}
	}
	near("OD", float64(f.Over), p.Over)
	near("least OD", float64(f.OverMin), p.Min)
	near("most OD", float64(f.OverMax), p.Max)
	near("mass", float64(f.Gram.V), p.Gram)
	near("hottest", float64(f.Hottest.V), p.Hottest)
	near("bend", float64(f.MinBend), &p.Bend.Min)
	near("slide", float64(f.SlideMM.V), p.Sheath.Slide)
	near("over the sheath", float64(f.Sheathed.V), p.Sheath.Over)
	about := []string{s.H.Branches[i].ID}
	for n, w := range all.Wires {
		if slices.Contains(w.Path, s.H.Branches[i].ID) {
			about = append(about, w.ID, s.H.Wires[n].From.V, s.H.Wires[n].To.V)
		}
	}
	stops := 0
	for _, g := range all.Snags {
		if g.Level == "stop" && slices.Contains(about, g.Where) {
			stops++
		}
	}
	if f.Stops != stops || strings.HasSuffix(key, "TXL") && stops == 0 { // too thick for the contacts
		t.Errorf("%s: %d stops, figures prints %d", key, f.Stops, stops)
	}
}

// Many ways are worked out beside one another, while the table is asked for: each is what it is by itself.
func TestWaysBesideOneAnother(t *testing.T) {
	s, i := demonstration(t)
	rows := firstRows(s, i)
	got := make([]string, len(rows))
	sheet.Beside(len(rows)+1, func(n int) {
		if n == len(rows) {
			whatif.Kinds(s, i)
		} else if h, err := whatif.Changed(s, i, rows[n]); err == nil {
			got[n] = text(h)
		}
	})
	for n, v := range rows {
		h, err := whatif.Changed(s, i, v)
		if (err == nil) != (got[n] != "") || err == nil && text(h) != got[n] {
			t.Errorf("%s is another beside others (%v)", v.Key, err)
		}
	}
}

// Of a branch that is not laid yet, or is not there, there is nothing to ask.
func TestNothingToAsk(t *testing.T) {
	s := calctest.Built(t, calctest.OneSize(12, "22", "length_mm = 500.0\n"))
	laid := calc.Complete(s.H, s.Base, s)
	v := value(t, laid, 0, "hand RH")
	for _, i := range []int{0, -1, 1} {
		if k := whatif.Kinds(s, i); k != nil {
			t.Errorf("branch %d: %v", i, k)
		}
		if h, err := whatif.Changed(s, i, v); err == nil || h != s.H {
			t.Errorf("branch %d: %v", i, err)
		}
		if _, err := whatif.Aside(s, i, v); err == nil {
			t.Errorf("branch %d is kept", i)
		}
	}
	if h, err := whatif.Changed(laid, 0, whatif.Value{}); err == nil || h != laid.H {
		t.Error("nothing was asked, and something changed")
	}
	if len(s.Proposals) > 0 {
		t.Error("it was planned")
	}
}

// At a moulded part the outlet that a branch goes into hangs on the others there: they are laid before its figures are told.
// E1 is where most wires end, so the two that go on from it share the outlets: the thicker takes the larger.
func TestWhatMeetsInAMouldedPart(t *testing.T) {
	meetInAMouldedPart(t, "Y", "E0")
	meetInAMouldedPart(t, "E0", "Y")
}

// meetInAMouldedPart is it of a branch from one place to another.
func meetInAMouldedPart(t *testing.T, from, to string) {
	var b strings.Builder
	b.WriteString("format = 1\n[[breakout]]\nid = \"Y\"\ntransition = \"own\"\n")
	for _, id := range []string{"S", "E0", "E1"} {
		fmt.Fprintf(&b, "[[termination]]\nid = %q\n", id)
	}
	n := 0
	for _, run := range []struct {
		from, to string
		wires    int
	}{{"E1", "S", 8}, {"E1", "E0", 18}, {"S", "E0", 4}} {
		for range run.wires {
			n++
			fmt.Fprintf(&b, "[[wire]]\nid = \"w%d\"\nfrom = \"%s:%d\"\nto = \"%s:%d\"\n", n, run.from, n, run.to, n)
			b.WriteString("spec = \"AS22759/32\"\nsize = \"22\"\n")
		}
	}
	for _, ends := range [][2]string{{from, to}, {"Y", "S"}, {"Y", "E1"}} {
		fmt.Fprintf(&b, "[[branch]]\nid = \"to %s\"\nfrom = %q\nto = %q\nlength_mm = 400\n", ends[1], ends[0], ends[1])
	}
	outlets := []catalogue.Outlet{{ExpandedMM: 25, RecoveredMM: 4, PortMM: 30}, {ExpandedMM: 12, RecoveredMM: 2, PortMM: 30},
		{ExpandedMM: 20, RecoveredMM: 3, PortMM: 120}}
	cat := catalogue.Merge(calctest.Catalogue(t), &catalogue.Catalogue{Transitions: map[string]catalogue.Transition{"own": {ID: "own",
		Outlets: outlets}}})
	s := calc.Complete(calctest.Parse(t, b.String()), cat, nil)
	is, err := whatif.Built(s, 0, value(t, s, 0, "spec AS22759/34"))
	if err != nil {
		t.Fatal(err)
	}
	whole := calc.Complete(is.H, cat, nil)
	end := slices.Index([]string{from, to}, "Y")
	if at := whole.Branches[0].Outlets[end]; !at.Set || at.V != 2 || calc.Build(is.H, cat, s).Branches[0].Outlets[end] == at {
		t.Fatalf("outlet %v: this harness shows nothing", at)
	}
	if d := cmp.Diff(whatif.FiguresOf(whole, 0), whatif.FiguresOf(is, 0)); d != "" {
		t.Errorf("in the whole harness (-), as told (+):\n%s", d)
	}
}

// A branch so short that its sorted zones leave nothing to cover is asked for no sheath.
func TestNoLengthForASheath(t *testing.T) {
	for length, want := range map[string]bool{"20.0": false, "90.0": true} {
		text := strings.Replace(calctest.OneSize(9, "22", "length_mm = "+length+"\n"), "[[termination]]\nid = \"Z\"",
			"[[termination]]\nid = \"Z\"\n[[termination]]\nid = \"X\"\n[[breakout]]\nid = \"Y\"\nzone_mm = 25.0", 1)
		text = strings.Replace(text, "to = \"Z\"\nlength", "to = \"Y\"\nlength", 1) + "[[branch]]\nid = \"L\"\nfrom = \"Y\"\nto = \"Z\"\n" +
			"length_mm = 200.0\n[[branch]]\nid = \"N\"\nfrom = \"Y\"\nto = \"X\"\nlength_mm = 200.0\n"
		s := calc.Complete(calctest.Parse(t, text), calctest.Catalogue(t), nil)
		kinds := whatif.Kinds(s, 0)
		if got := slices.ContainsFunc(kinds, func(k whatif.Kind) bool { return k.ID == "sheath" }); got != want || len(kinds) == 0 {
			t.Errorf("%s mm: asked for a sheath %v, want %v, of %d kinds", length, got, want, len(kinds))
		}
	}
}

// A lay-up that is set aside and nothing else is taken up as it always was: what does not run here any more is left out and
// named, tape round another centre comes off, and how it is made and turns is its own, given or not.
func TestALayUpSetAsideIsTakenUp(t *testing.T) {
	s := calc.Complete(calctest.Parse(t, calctest.OneSize(9, "22", "length_mm = 500.0\nouter = \"RH\"\n")), calctest.Catalogue(t), nil)
	a := model.Aside{Name: "old", Make: model.Some(model.MakeLaid), Layers: []model.Layer{
		{Of: []string{"gone", "0"}, BindMM: model.Some(unit.Millimetre(0.7)), Pinned: []string{"gone"}},
		{Of: []string{"lost"}},
		{Of: []string{"1", "2", "3", "4", "5", "6", "7", "8"}}}}
	h, gone, err := whatif.Taken(s, 0, a)
	if err != nil {
		t.Fatal(err)
	}
	b := h.Branches[0]
	if fmt.Sprint(gone) != "[gone lost]" || len(b.Layers) != 2 || fmt.Sprint(b.Layers[0].Of, b.Layers[1].Of) != "[0] [1 2 3 4 5 6 7 8]" {
		t.Errorf("gone %v, layers %v", gone, b.Layers)
	}
	if b.Layers[0].BindMM.Set || len(b.Layers[0].Pinned) > 0 || b.Outer.Set || b.Make.V != model.MakeLaid || len(b.Covers) > 0 {
		t.Errorf("%+v", b)
	}
	if text(s.H) != text(calctest.Parse(t, calctest.OneSize(9, "22", "length_mm = 500.0\nouter = \"RH\"\n"))) {
		t.Error("the harness that was asked about is another now")
	}
}

// A variant that a person wrote: every size at once, a specification, a number of spares; the lay-up follows. Spares that
// have another name by now lie where those lay.
func TestAVariantOfTheFile(t *testing.T) {
	var mixed []string
	for k := range 20 {
		mixed = append(mixed, []string{"22 0.2", "20 0.2"}[k%2])
	}
	s := calctest.Carrying(t, 60, "", mixed, nil, "")
	h, gone, err := whatif.Taken(s, 0, model.Aside{Name: "both", Letter: model.Some(model.Letter("A")), Spec: model.Some("AS22759/34"),
		Sizes: map[string]string{"20": "22", "22": "20", "12": "14"}})
	if err != nil || fmt.Sprint(gone) != "[size 12]" {
		t.Fatalf("%v, gone %v", err, gone)
	}
	for k, w := range h.Wires {
		if w.Spec != "AS22759/34" || w.Size == s.H.Wires[k].Size {
			t.Errorf("%s is %s %s, was %s", w.ID, w.Spec, w.Size, s.H.Wires[k].Size)
		}
	}
	if b := calc.Build(h, s.Base, s).Branches[0]; b.Waiting || len(b.Layers) < 2 {
		t.Error("it is not laid")
	}

	s = calc.Complete(calctest.Parse(t, calctest.OneSize(9, "22", "length_mm = 500.0\n", 12)), calctest.Catalogue(t), nil)
	v := value(t, s, 0, "spares 2")
	a, err := whatif.Aside(s, 0, v)
	if err != nil {
		t.Fatal(err)
	}
	// Meanwhile a spare of that name was laid elsewhere and taken out: the next has another name.
	for k := range a.Layers {
		a.Layers[k].Of = strings.Split(strings.ReplaceAll(strings.Join(a.Layers[k].Of, " "), "SP", "OLD"), " ")
	}
	h, gone, err = whatif.Taken(s, 0, a)
	if err != nil || len(gone) > 0 {
		t.Fatalf("%v, gone %v", err, gone)
	}
	want, _ := whatif.Changed(s, 0, v)
	if text(h) != text(want) {
		t.Errorf("under other names:\n%s", cmp.Diff(text(want), text(h)))
	}
}
