package lists

import (
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/formula/crimp"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// reeled is a sheet of wires alone, each "spec size colour cut", in this order.
func reeled(wires ...string) *sheet.Sheet {
	s := &sheet.Sheet{H: &model.Harness{}, Cat: &catalogue.Catalogue{}}
	for k, text := range wires {
		w := model.Wire{ID: fmt.Sprint(k)}
		var colour string
		var cut unit.Millimetre
		fmt.Sscan(text, &w.Spec, &w.Size, &colour, &cut)
		if colour != "-" {
			w.Colour = model.Some(colour)
		}
		s.H.Wires, s.Wires = append(s.H.Wires, w), append(s.Wires, sheet.Wire{Cut: cut})
	}
	s.Index = model.NewIndex(s.H)
	return s
}

// What is cut, and what of each spool, by hand: reels stand in the order of their first wire, whatever is longer or comes first in the
// alphabet; within a reel the longest is first, like lengths together; spools by the code of their colour. A wire without a length is
// in none.
func TestReelsAndSpoolsInOrder(t *testing.T) {
	s := reeled("y 22 6 100", "x 20 5 900", "y 22 2 300", "x 22 6 500", "y 22 - 100", "x 20 5 800", "y 20 6 700", "x 20 1 900", "y 22 2 0",
		"y 22 6 300")
	var cuts []string
	for _, r := range CutList(s) {
		cuts = append(cuts, fmt.Sprint(r.Spec, " ", r.Size, " ", r.CutMM, " ", r.Wires))
	}
	if got, want := strings.Join(cuts, "; "),
		"y 22 300 [2 9]; y 22 100 [0 4]; x 20 900 [1 7]; x 20 800 [5]; x 22 500 [3]; y 20 700 [6]"; got != want {
		t.Errorf("%s\nwant %s", got, want)
	}
	var reels []string
	for _, r := range ReelList(s) {
		reels = append(reels, fmt.Sprint(r.Spec, " ", r.Size, " ", r.NeedMM, " ", r.Shelved))
	}
	if got, want := strings.Join(reels, "; "), "y 22 800 false; x 20 2600 false; x 22 500 false; y 20 700 false"; got != want {
		t.Errorf("%s\nwant %s", got, want)
	}
	var spools []string
	for _, r := range SpoolList(s) {
		spools = append(spools, fmt.Sprintf("%s %s %q %v of %d", r.Spec, r.Size, r.Colour, r.NeedMM, r.Wires))
	}
	if got, want := strings.Join(spools, "; "), `y 22 "" 100 of 1; y 22 "2" 300 of 1; y 22 "6" 400 of 2; x 20 "1" 900 of 1; `+
		`x 20 "5" 1700 of 2; x 22 "6" 500 of 1; y 20 "6" 700 of 1`; got != want {
		t.Errorf("%s\nwant %s", got, want)
	}
	// The bill has a row for each spool, in whole tenths of a metre, and a tenth more is ordered: 1,700 mm are 1.7 m, with more 1.87 m.
	var rows []string
	for _, r := range billWire(s) {
		rows = append(rows, fmt.Sprintf("%s %q %v %v%s%s", r.Part, r.Colour, r.Need, r.Order, r.Says, r.Open))
	}
	if got, want := strings.Join(rows, "; "),
		`y 22 "" 0.1 0.2its colour is not given; y 22 "2" 0.3 0.4; y 22 "6" 0.4 0.5; x 20 "1" 0.9 1; `+
			`x 20 "5" 1.7 1.9; x 22 "6" 0.5 0.6; y 20 "6" 0.7 0.8`; got != want {
		t.Errorf("%s\nwant %s", got, want)
	}
	if got := SpoolColour(&model.Wire{Shade: model.Some(model.Shade("light")), Colour: model.Some("5")}); got != "light 5" {
		t.Errorf("%q", got)
	}
}

// What the shop has learnt it takes off a reel, and what its shelf has: 1,000 mm with 4 % more than is cut and twice the spread of 3 %
// is 1,100 mm; of 2 m on the shelf all of it comes, of 0.5 m not.
func TestWireFromTheShelf(t *testing.T) {
	for _, c := range []struct {
		bias, spread unit.Ratio
		shelf        unit.Metre
		order        float64
		says         string
	}{
		{0.04, 0.03, 0, 1.1, "this shop takes 4.0 % more than it cuts"},
		{0.04, 0.08, 0, 1.2, "this shop takes 4.0 % more than it cuts"},
		{-0.5, 0.1, 0, 1, "this shop takes -50.0 % more than it cuts"},
		{0.04, 0.03, 2, 0, "this shop takes 4.0 % more than it cuts; 2.0 m on the shelf"},
		{0.04, 0.03, 0.5, 0.6, "this shop takes 4.0 % more than it cuts; 0.5 m on the shelf"},
	} {
		s := reeled("y 22 6 1000")
		s.Cat.Corrections = []catalogue.Correction{{Of: "wire used, y 22", Bias: c.bias, Spread: c.spread}}
		if c.shelf > 0 {
			s.H.Reels = []model.Reel{{Spec: "y", Size: "22", ShelfM: model.Some(c.shelf)}}
		}
		if r := billWire(s)[0]; r.Need != 1 || r.Order != c.order || r.Says != c.says || !r.Metres || r.Group != "wire" {
			t.Errorf("%+v: %+v", c, r)
		}
	}
}

// Filler, by size: of branches of 1,000 and 500 mm, three of 1.1 mm with a lay that adds a tenth, 3,300, and two of them straight, 1,000:
// 4.3 m; a tenth more is 4.73. The shop stocks 1.1 mm alone: what is white wire of the branch has no stuff of its own.
func TestBillOfFiller(t *testing.T) {
	s := &sheet.Sheet{H: &model.Harness{Wires: []model.Wire{{ID: "w"}}, Branches: []model.Branch{{ID: "T", LengthMM: 1000}, {ID: "U",
		LengthMM: 500}}},
		Wires: []sheet.Wire{{Known: true, Dia: sheet.Dia{Nominal: 0.9}}},
		Branches: []sheet.Branch{{Components: []string{"w"}, Layers: []sheet.Layer{{}, {Fillers: 3, FillerMM: 1.1, Loss: 1.1},
			{Fillers: 1, FillerMM: 0.9, Loss: 1}}}, {Layers: []sheet.Layer{{Fillers: 2, FillerMM: 1.1}}}}}
	s.Index = model.NewIndex(s.H)
	s.Limits.FillerOf, s.Limits.FillerStock = "aramid", []unit.Millimetre{1.1}
	want := []BillRow{{Group: "filler", Part: "0.90 mm", Need: 1, Order: 1.1, Metres: true},
		{Group: "filler", Part: "1.10 mm", Says: "aramid", Need: 4.3, Order: 4.8, Metres: true}}
	if got := billFiller(s); !slices.Equal(got, want) {
		t.Errorf("%+v", got)
	}
	if got := billFiller(&sheet.Sheet{H: s.H}); got != nil {
		t.Errorf("of nothing: %+v", got)
	}
}

// What the shop lists stands beside the row, and it can be ordered: 230 of a pack of 100 are three packs, 200 are two; without a pack
// none are counted.
func TestStockBesideARow(t *testing.T) {
	s := &sheet.Sheet{Cat: &catalogue.Catalogue{Stock: []catalogue.Stock{{Of: "a", Pack: 100}, {Of: "b"}, {Of: "c", Pack: 1}}}}
	for _, c := range []struct {
		part  string
		order float64
		packs int
		open  string
	}{{"a", 230, 3, ""}, {"a", 200, 2, ""}, {"b", 230, 0, ""}, {"c", 7, 7, ""}, {"d", 230, 0, "no part"}} {
		r := BillRow{Part: c.part, Order: c.order, Open: "no part"}
		stocked(s, &r)
		if r.Packs != c.packs || r.Open != c.open || (r.Stock.Of != "") != (c.open == "") {
			t.Errorf("%+v: %+v", c, r)
		}
	}
	if rankOf(BillRow{Open: "x"}) >= rankOf(BillRow{}) {
		t.Error("what cannot be ordered yet comes first")
	}
}

// Ties by hand: two at each splice, one at each branch of a breakout; 300 mm each. Two splices and breakouts of three and two: 9 ties,
// 2,700 mm; a tenth more is 2,970.
func TestTiesOfALoom(t *testing.T) {
	h := &model.Harness{Terminations: []model.Termination{{ID: "A"}, {ID: "B"}, {ID: "C"}}, Breakouts: []model.Breakout{{ID: "J"},
		{ID: "K"}},
		Splices: []model.Splice{{ID: "S", At: "J"}, {ID: "R", At: "J"}},
		Branches: []model.Branch{{ID: "1", From: "A", To: "J"}, {ID: "2", From: "J", To: "K"}, {ID: "3", From: "K", To: "B"},
			{ID: "4", From: "J", To: "C"}}}
	s := &sheet.Sheet{H: h, Index: model.NewIndex(h)}
	want := BillRow{Group: "lacing", Part: "tape or thread", Metres: true, Need: 2.7, Order: 3, Standing: catalogue.Practice,
		Says: "9 ties of 300 mm"}
	if got := billLacing(s); len(got) != 1 || got[0] != want {
		t.Errorf("%+v", got)
	}
	none := &model.Harness{}
	if got := billLacing(&sheet.Sheet{H: none, Index: model.NewIndex(none)}); got != nil {
		t.Errorf("%+v", got)
	}
}

// Braid before jacket, whichever unit they are of; like ones in a row of their own.
func TestShieldsByKind(t *testing.T) {
	h := &model.Harness{Wires: []model.Wire{{ID: "a"}, {ID: "b"}, {ID: "c"}}}
	s := &sheet.Sheet{H: h}
	for k, bare := range []unit.Millimetre{2, 3, 2} {
		h.Units = append(h.Units, model.Unit{ID: fmt.Sprint("U", k+1), Wires: []string{h.Wires[k].ID}, Shield: model.Some(true)})
		s.Wires = append(s.Wires, sheet.Wire{Finished: 1000})
		s.Units = append(s.Units, sheet.Unit{BareMM: bare, Loss: 1, Dia: sheet.Dia{Nominal: bare + 1}})
	}
	h.Units = append(h.Units, model.Unit{ID: "U4", Wires: []string{"a"}})
	s.Units = append(s.Units, sheet.Unit{BareMM: 2, Loss: 1})
	s.Index = model.NewIndex(h)
	var got []string
	for _, r := range billShields(s) {
		got = append(got, fmt.Sprintf("%s %s %v %v", r.Group, r.Says, r.Need, r.Order))
	}
	want := []string{"shield braid over 2.0 mm: U1, U3 2 2.2", "shield braid over 3.0 mm: U2 1 1.1",
		"shield jacket to 3.0 mm OD: U1, U3 2 2.2",
		"shield jacket to 4.0 mm OD: U2 1 1.1"}
	if !slices.Equal(got, want) {
		t.Errorf("%q\nwant %q", got, want)
	}
}

// A label says its end, what the end is called, and the number of the harness with its revision; its sleeve is that for what it lies on.
func TestLabelsByHand(t *testing.T) {
	text := calctest.OneSize(7, "22", "length_mm = 400.0\nmake = \"laid\"\n[[branch.layer]]\nof = [\"0\"]\n[[branch.layer]]\n"+
		"of = [\"1\", \"2\", \"3\", \"4\", \"5\", \"6\"]\n")
	text = strings.Replace(text, "id = \"A\"\n", "id = \"A\"\nname = \"Left lamp\"\nboot_clock = 4\n", 1)
	for _, c := range []struct {
		head string
		want []string
	}{{"", []string{"A, Left lamp at 4", "Z at 0"}},
		{"[harness]\nnumber = \"H-7\"\nrevision = \"B\"\n", []string{"A, Left lamp, H-7 B at 4", "Z, H-7 B at 0"}}} {
		s := calctest.Built(t, strings.Replace(text, "format = 1\n", "format = 1\n"+c.head, 1))
		var got []string
		for _, l := range Labels(s) {
			got = append(got, fmt.Sprint(strings.Join(l.Text, ", "), " at ", l.OnHours))
			if over := s.Branches[0].Sheath.Verdict.OverMM; l.Of != l.Text[0] || !strings.HasPrefix(l.Sleeve, "marker sleeve ") ||
				l.OverMM != over || over <= s.Branches[0].OverMM { // it lies on the sheath
				t.Errorf("%+v", l)
			}
		}
		if !slices.Equal(got, c.want) {
			t.Errorf("%q, want %q", got, c.want)
		}
		marks := billMarks(s)
		if last := marks[len(marks)-1]; last.Need != 14 || last.Order != 14 || marks[0].Group != "label" || marks[0].Need != 2 {
			t.Errorf("%+v", marks)
		}
	}
	if got := billMarks(&sheet.Sheet{H: &model.Harness{}, Index: model.NewIndex(&model.Harness{})}); len(got) != 0 {
		t.Errorf("%+v", got)
	}
}

// Take-up is what is left of the finished length without loops and way; the flat rule adds a fifth of the way. Of no length is nothing.
func TestTakeUpOfNothing(t *testing.T) {
	s := &sheet.Sheet{H: &model.Harness{Wires: []model.Wire{{ID: "a"}}, Branches: []model.Branch{{LengthMM: 400}, {LengthMM: 100}}},
		Wires: []sheet.Wire{{Path: []int{0, 1}}}}
	s.Index = model.NewIndex(s.H)
	if laid, flat, ok := TakeUp(s, 0); laid != 0 || flat != 0 || ok {
		t.Errorf("%v %v %v", laid, flat, ok)
	}
	s.Wires[0].Finished = 512
	if laid, flat, ok := TakeUp(s, 0); laid != 12 || flat != 100 || !ok {
		t.Errorf("%v %v %v", laid, flat, ok)
	}
}

// Contacts that several wires share, a plug that no catalogue names, and a contact bought in two connectors: wired and unwired are added
// up, samples once for each size of wire, and 5 % more of all, up to a whole one.
func TestContactsToBuy(t *testing.T) {
	h := &model.Harness{Terminations: []model.Termination{{ID: "P"}, {ID: "Q", Firewall: model.Some(true)}},
		Wires: []model.Wire{{ID: "a", Spec: "x", Size: "22"}, {ID: "b", Spec: "x", Size: "20"}, {ID: "c", Spec: "x", Size: "22"}}}
	in := func(size, drain string, ids ...string) sheet.Cavity {
		return sheet.Cavity{Size: size, Drain: drain, Wires: ids}
	}
	s := &sheet.Sheet{H: h, Cat: &catalogue.Catalogue{}, Index: model.NewIndex(h), Wires: make([]sheet.Wire, 3), Terms: []sheet.Term{
		{Cavities: []string{"1", "2", "3", "4"}, Sealed: true,
			State: map[string]sheet.Cavity{"1": in("20", "", "a"), "2": in("20", ""), "3": in("", ""), "4": in("16", "U")}},
		{Cavities: []string{"1", "2", "3"}, Sealed: true, State: map[string]sheet.Cavity{"1": in("20", "", "b"), "2": in("20", ""),
			"3": in("16", "", "c")}}}}
	// Size 16: a drain and a wire, 3 samples: 5, and 0.25 more is 1. Size 20: two wired, two not, of 20 and 22 AWG 6 samples: 10 and 0.5.
	want := []BuyRow{{Size: "16", Wired: 2, Samples: 3, More: 1}, {Size: "20", Wired: 2, Unwired: 2, Samples: 6, More: 1, Plugs: 2,
		Stubs: 1}}
	got := BuyList(s)
	if !slices.Equal(got, want) {
		t.Errorf("%+v", got)
	}
	if got[0].Buy() != 6 || got[1].Buy() != 11 {
		t.Errorf("%d and %d are bought", got[0].Buy(), got[1].Buy())
	}
	var rows []string
	for _, r := range billContacts(s) {
		rows = append(rows, fmt.Sprintf("%s, %s: %s, %v, %v, %s", r.Group, r.Part, r.Says, r.Need, r.Order, r.Open))
	}
	if want := []string{"contact, size 16: the device's own, 2, 6, no part is given for it",
		"contact, size 20: the device's own, 4, 11, no part is given for it",
		"seal plug, for size 20: one in each cavity without a wire, 2, 3, no part is given for it"}; !slices.Equal(rows, want) {
		t.Errorf("%q", rows)
	}
	took := map[[2]string]int{}
	maps.Copy(took, sampleWires(s))
	if len(took) != 2 || took[[2]string{"x", "22"}] != 6 || took[[2]string{"x", "20"}] != 3 {
		t.Errorf("%v", took)
	}
}

// Covers by the metre: what is no tube of the catalogue as long as it lies, 530 − 30 = 500 mm, a tube as it is cut; a part on two
// branches once, and sleeves before sheaths before braids, each by part.
func TestBillOfCovers(t *testing.T) {
	tube := model.Some(catalogue.Tube{ID: "tube"})
	s := &sheet.Sheet{Cat: &catalogue.Catalogue{Tubes: []catalogue.Tube{{ID: "tube", ShelfLabel: "tube 9.5 / 4.8"}}},
		Branches: []sheet.Branch{
			{Sheath: sheet.Sheath{Part: "own", FromMM: 30, ToMM: 530}, Covers: []sheet.Covered{
				{What: model.CoverBraid, FromMM: 10, ToMM: 260}, {What: model.CoverTape, FromMM: 0, ToMM: 500},
				{What: model.CoverSleeve, Part: "tube", Tube: tube, CutMM: 120, FromMM: 10, ToMM: 110}}},
			{Sheath: sheet.Sheath{Part: "tube", Tube: tube, CutMM: 310, FromMM: 0, ToMM: 300}, Covers: []sheet.Covered{
				{What: model.CoverBraid, FromMM: 0, ToMM: 100}, {What: model.CoverBraid, Part: "fine", FromMM: 50, ToMM: 150},
				{What: model.CoverSleeve, Part: "tube", Tube: tube, CutMM: 130}}}, {}, {Sheath: sheet.Sheath{Part: "tube", Tube: tube}}}}
	var got []string
	for _, r := range billCovers(s) {
		got = append(got, strings.TrimSpace(fmt.Sprintf("%s %s %v %v %s", r.Group, r.Part, r.Need, r.Order, r.Says)))
		if !r.Metres {
			t.Errorf("%+v", r)
		}
	}
	if want := []string{"sleeve tube 0.3 0.3 tube 9.5 / 4.8", "sheath own 0.5 0.6", "sheath tube 0.4 0.4 tube 9.5 / 4.8",
		"braid as stocked 0.4 0.4", "braid fine 0.1 0.2"}; !slices.Equal(got, want) {
		t.Errorf("%q\nwant %q", got, want)
	}
}

// Tape counts as from memory unless the shop says both how thick and how wide it is; a layer that the lay-up does not name is bound by
// nothing.
func TestTapeOfThisShop(t *testing.T) {
	some := model.Some[unit.Millimetre]
	for _, c := range []struct {
		thick, wide model.Opt[unit.Millimetre]
		want        catalogue.Standing
	}{{some(0.1), some(10), ""}, {some(0.1), model.Opt[unit.Millimetre]{}, catalogue.Memory}, {model.Opt[unit.Millimetre]{}, some(10),
		catalogue.Memory}} {
		s := &sheet.Sheet{H: &model.Harness{Branches: []model.Branch{{ID: "T", LengthMM: 1000}}}, Branches: []sheet.Branch{
			{Layers: []sheet.Layer{{OverMM: 4}, {OverMM: 8}}, As: []model.Layer{{BindMM: some(0.2)}}}}}
		s.Limits.TapeMM, s.Limits.TapeWideMM = 0.1, 10
		s.H.Rules.TapeMM, s.H.Rules.TapeWideMM = c.thick, c.wide
		if got := billTape(s); len(got) != 1 || got[0].Standing != c.want || !strings.HasSuffix(got[0].Says, ": binder of T") {
			t.Errorf("%+v: %+v", c, got)
		}
	}
}

// Samples are crimped once for contacts of one part, whichever end has pins; each takes 150 mm of its wire: three of 22 AWG, 450 mm, on
// the colour that there is most of. 1,000 mm are with a tenth more 1,100, and 1,550 with them. A step of the tool is that of its frame.
func TestSamplesOfCrimps(t *testing.T) {
	text := "format = 1\n[[termination]]\nid = \"P\"\ncontacts = { \"20\" = [\"1\", \"2\", \"3\"] }\ncavities = [\"1\", \"2\", \"3\"]\n" +
		"gender = \"pin\"\n" +
		"[[termination]]\nid = \"Q\"\ncontacts = { \"20\" = [\"1\", \"2\", \"3\"] }\ncavities = [\"1\", \"2\", \"3\"]\ngender = " +
		"\"socket\"\n"
	for k, colour := range []string{"5", "6", "6"} {
		text += fmt.Sprintf("[[wire]]\nid = \"%d\"\nfrom = \"P:%d\"\nto = \"Q:%d\"\nspec = \"AS22759/32\"\nsize = \"22\"\ncolour = %q\n",
			k, k+1, k+1, colour)
	}
	s := calctest.Built(t, text+"[[branch]]\nid = \"T\"\nfrom = \"P\"\nto = \"Q\"\nlength_mm = 400.0\nmake = \"straight\"\n")
	rows := BuyList(s)
	if len(rows) != 2 || rows[0].Samples+rows[1].Samples != 3 || rows[0].Wired != 3 || rows[1].Wired != 3 {
		t.Errorf("%+v", rows)
	}
	for k := range s.Wires {
		s.Wires[k].Cut = 500
	}
	var got []string
	for _, r := range billWire(s) {
		got = append(got, fmt.Sprintf("%s %v %v %s", r.Colour, r.Need, r.Order, r.Says))
	}
	if want := []string{"5 0.5 0.6 ", "6 1 1.6 with 3 sample crimps"}; !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
	s = calctest.Built(t, strings.Replace(strings.Replace(text,
		"contacts = { \"20\" = [\"1\", \"2\", \"3\"] }\ncavities = [\"1\", \"2\", \"3\"]\n",
		"insert = \"14-35\"\n", 1), "gender = \"pin\"", "gender = \"pin\"\nname = \"x\"", 1))
	r, ok := CrimpOf(s, 0, "1")
	step, guess, known := crimp.Setting(r.Tool.V.Frame, 22)
	if !ok || !r.Tool.Set || !known || r.Step != step || r.StepGuess != guess || step == 0 {
		t.Errorf("%+v, want step %d", r, step)
	}
	// A branch without a boot needs no adhesive.
	if rows := billAdhesive(s); rows != nil {
		t.Errorf("%+v", rows)
	}
}
