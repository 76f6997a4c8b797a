package offer

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/formula/plan"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// A wire that no size does for stays as it is and is named: contacts of size 20 allow no 9 A. One without a current stays, too, unnamed.
func TestAdviceForOneThatNoSizeDoes(t *testing.T) {
	s := calctest.Carrying(t, 60, "20", []string{"22 0.5", "20 9", "20 0.5", "20 1"}, nil, "")
	s = calc.Build(s.H.EditWire(3, func(w *model.Wire) { w.Amps = model.Opt[unit.Ampere]{} }), s.Cat, s)
	changes, h, none := Advise(s)
	if !slices.Equal(none, []int{1}) || h.Wires[1].Size != "20" || h.Wires[3].Size != "20" || len(changes) == 0 {
		t.Errorf("none does for %v, which becomes %s, and %s", none, h.Wires[1].Size, h.Wires[3].Size)
	}
	for _, c := range changes {
		if c.Wire == 1 || c.Wire == 3 || c.From != s.H.Wires[c.Wire].Size || c.To != h.Wires[c.Wire].Size {
			t.Errorf("%+v", c)
		}
	}
}

// Each wire goes up by the sizes of its own specification: 10 AWG and thicker, which those beside it do not have.
func TestAdviceByEachSpecification(t *testing.T) {
	s := calctest.Carrying(t, 60, "", []string{"22 0.5", "22 70", "22 0.5"}, nil, "")
	s = calc.Build(s.H.EditWire(1, func(w *model.Wire) { w.Spec, w.Size = "AS22759/41", "12" }), s.Cat, nil)
	s = calc.Complete(s.H, s.Cat, s)
	_, h, none := Advise(s)
	if w := h.Wires[1]; len(none) != 0 || !slices.Contains([]string{"10", "8", "6"}, w.Size) ||
		slices.Contains(s.Cat.Sizes("AS22759/32"), w.Size) {
		t.Errorf("of %s it becomes %s; none does for %v", w.Spec, w.Size, none)
	}
}

// Two wires that carry the same have each their own size where their contacts are others: contact 16 takes 20 AWG and thicker, contact 20
// down to 24, which is the thinnest that the shop uses.
func TestAdviceByEachContact(t *testing.T) {
	text := "format = 1\n"
	for _, id := range []string{"A", "Z"} {
		text += "[[termination]]\nid = \"" + id + "\"\ncavities = [\"0\", \"1\"]\ncontacts = { \"16\" = [\"0\"], \"20\" = [\"1\"] }\n"
	}
	for k := range 2 {
		text += fmt.Sprintf("[[wire]]\nid = \"w%d\"\nfrom = \"A:%d\"\nto = \"Z:%d\"\nspec = \"AS22759/32\"\nsize = \"20\"\namps = 0.5\n",
			k, k, k)
	}
	s := calctest.Built(t, text+"[[branch]]\nid = \"T\"\nfrom = \"A\"\nto = \"Z\"\nlength_mm = 500.0\nambient_c = 40.0\n")
	_, h, none := Advise(s)
	if len(none) != 0 || h.Wires[0].Size != "20" || h.Wires[1].Size != "24" {
		t.Errorf("%s and %s, none for %v", h.Wires[0].Size, h.Wires[1].Size, none)
	}
}

// Written as it is laid, a branch of three that is twisted has its one layer, too.
func TestAsLaidWhereItIsTwisted(t *testing.T) {
	s := calctest.Built(t, calctest.OneSize(3, "22", "length_mm = 500.0\n"))
	s = calc.Complete(s.H, s.Cat, s)
	b, is := AsLaid(s).Branches[0], &s.Branches[0]
	if !is.Proposed || len(is.As) != 1 {
		t.Fatalf("%+v", is)
	}
	if len(b.Layers) != 1 || len(b.Layers[0].Of) != 3 || b.Make.V != is.Make {
		t.Errorf("%+v", b)
	}
}

// star is terminations of so many cavities each on legs of a joint, each leg its own branch "to"; a letter behind the number wires cavity 1
// of it to a splice at the joint, and "<" draws its branch towards the joint.
func star(t *testing.T, legs ...string) string {
	t.Helper()
	text := "format = 1\n[[breakout]]\nid = \"J\"\n[[splice]]\nid = \"S\"\nat = \"J\"\n"
	branches := ""
	for k, leg := range legs {
		var n int
		fmt.Sscanf(leg, "%d", &n)
		var c []string
		for i := range n {
			c = append(c, fmt.Sprintf("%q", fmt.Sprint(i+1)))
		}
		text += fmt.Sprintf("[[termination]]\nid = \"P%d\"\ncavities = [%s]\n", k, strings.Join(c, ", "))
		if strings.Contains(leg, "w") {
			text += fmt.Sprintf("[[wire]]\nid = \"w%d\"\nfrom = \"P%d:1\"\nto = \"S\"\nspec = \"AS22759/32\"\nsize = \"22\"\n", k, k)
		}
		ends := fmt.Sprintf("from = \"J\"\nto = \"P%d\"", k)
		if strings.Contains(leg, "<") {
			ends = fmt.Sprintf("from = \"P%d\"\nto = \"J\"", k)
		}
		branches += fmt.Sprintf("[[branch]]\nid = \"B%d\"\n%s\nlength_mm = 100.0\n", k, ends)
	}
	return text + branches
}

// A bank is not wired like one that holds some of the same terminations, nor like one of other cavities, whichever of them differs.
func TestBanksThatAreNotLike(t *testing.T) {
	s := calctest.Built(t, star(t, "2", "2<", "2w<"))
	// Beyond B2 lie P0 and P1, nothing wired; beyond B1 lie P0 and P2, the latter wired.
	if got := LikeBanks(s, 2); got != nil {
		t.Errorf("it shares P0, and could be wired like %v", got)
	}
	for _, c := range []struct {
		left, right string // cavities of both, those of the left bank wired
		want        string
	}{{"2 3", "2 3", "[0]"}, {"2 3", "3 3", "[]"}, {"2 3", "2 2", "[]"}, {"2 3", "3 2", "[]"}} {
		l, r := strings.Fields(c.left), strings.Fields(c.right)
		text := star(t, l[0]+"w", l[1], r[0], r[1])
		text = text[:strings.Index(text, "[[branch]]")] + "[[breakout]]\nid = \"L\"\n[[breakout]]\nid = \"R\"\n"
		text = strings.Replace(text, "to = \"S\"", "to = \"P0:2\"", 1)
		for k, b := range []string{"J L", "J R", "L P0", "L P1", "R P2", "R P3"} {
			from, to, _ := strings.Cut(b, " ")
			text += fmt.Sprintf("[[branch]]\nid = \"B%d\"\nfrom = %q\nto = %q\nlength_mm = 100.0\n", k, from, to)
		}
		s := calctest.Built(t, text)
		if got := fmt.Sprint(LikeBanks(s, 1)); got != c.want {
			t.Errorf("%s like %s: %s, want %s", c.right, c.left, got, c.want)
		}
	}
}

// Of two diameters each is its own wire: six of 1.5 mm round one of 2 mm come to 5 mm, all seven run through the branch, and no layer has
// fillers that the plan has not.
func TestPlannedOfTwoDiameters(t *testing.T) {
	p := plan.Plan{Layers: []plan.Layer{{Sizes: []unit.Millimetre{2}, N: []int{1}}, {Sizes: []unit.Millimetre{1.5}, N: []int{6}}}}
	cat := &catalogue.Catalogue{Wires: map[catalogue.WireKey]catalogue.Wire{}}
	b, ok := Planned(p, []Piece{{OverMM: 1.5, N: 6}, {OverMM: 2, N: 1}}, model.Rules{}, cat)
	if !ok || len(b.As) != 2 || len(b.Components) != 7 {
		t.Fatalf("%v %+v", ok, b)
	}
	calctest.Near(t, "OD", float64(b.OverMM), 5, 1e-6)
	for k, want := range []string{"[1]", "[2 3 4 5 6 7]"} {
		if l := b.As[k]; fmt.Sprint(l.Of) != want || l.Fillers.Set || l.FillerMM.Set || l.BindMM.Set {
			t.Errorf("%+v, want %s", l, want)
		}
	}
	if len(cat.Wires) != 0 {
		t.Error("the catalogue that was given has other wires now")
	}
	// A rod in the middle of five is the branch's own to propose.
	p = plan.Plan{Layers: []plan.Layer{{Sizes: []unit.Millimetre{1}, N: []int{5}, Fillers: 1, FillerMM: 0.7}}}
	if b, ok = Planned(p, []Piece{{OverMM: 1, N: 5}}, model.Rules{}, cat); !ok || b.As[0].Fillers.Set {
		t.Errorf("%v %+v", ok, b)
	}
}

// One wire more where a layer has room starts none: five of 22 AWG round one leave room for the sixth, which lifts them by 0.023 d, the
// 3.023 of six round one in the geometry notes. Three twisted become four, thicker by d (1 + √2) - d (1 + 2/√3) = 0.2595 d.
func TestOneMoreWhereThereIsRoom(t *testing.T) {
	ring := "  [[branch.layer]]\n  of = [\"0\"]\n  [[branch.layer]]\n  of = [\"1\", \"2\", \"3\", \"4\", \"5\"]\n"
	for _, c := range []struct {
		n       int
		layers  string
		thicker float64
	}{{6, "make = \"laid\"\n" + ring, 0.023}, {3, "make = \"twisted\"\n  [[branch.layer]]\n  of = [\"0\", \"1\", \"2\"]\n", 0.2595}} {
		s := calctest.Built(t, calctest.OneSize(c.n, "22", "length_mm = 500.0\n"+c.layers, 9))
		branch, thicker, starts, ok := OneMore(s, Pairings(s, 0)[0])
		if !ok || branch != 0 || starts != 0 {
			t.Errorf("%d: branch %d, layer %d, %v", c.n, branch, starts, ok)
		}
		calctest.Near(t, "thicker by", float64(thicker), c.thicker*float64(s.Dia("0").Nominal), 0.001)
	}
}

// A spare that is capped at a joint of its bank is not mirrored onto a bank that has no such joint, and nothing is changed.
func TestMirroredOntoFewerJoints(t *testing.T) {
	text := star(t, "8", "2w", "2", "2", "2")
	text = text[:strings.Index(text, "[[branch]]")] + "[[wire]]\nid = \"sp\"\nfrom = \"P1:2\"\ncapped_at = \"LL\"\n" +
		"spec = \"AS22759/32\"\nsize = \"22\"\nrole = \"spare\"\n"
	for _, id := range []string{"L", "LL", "R"} {
		text += "[[breakout]]\nid = \"" + id + "\"\n"
	}
	text = strings.Replace(text, "to = \"S\"", "to = \"P0:1\"", 1)
	for k, b := range []string{"J P0", "J L", "L LL", "LL P1", "L P2", "J R", "R P3", "R P4"} {
		from, to, _ := strings.Cut(b, " ")
		text += fmt.Sprintf("[[branch]]\nid = \"B%d\"\nfrom = %q\nto = %q\nlength_mm = 100.0\n", k, from, to)
	}
	s := calctest.Built(t, text)
	h, ids, err := Mirrored(s, 1, 5)
	if err == nil || err.Error() != "spare sp is capped at LL, and the other side has no place like it" || h != s.H || ids != nil {
		t.Errorf("%v %v", ids, err)
	}
}

// Advice is for wires that carry something, are no spares, are known, lie somewhere and are rated by the sheet: each of the others fails in
// one of these alone, is of 16 AWG, and is neither changed nor named. The first may become 24 AWG, the thinnest that the shop uses.
func TestAdviceIsForWiresThatCanBeJudged(t *testing.T) {
	s := calctest.Carrying(t, 60, "", []string{"22 0.5", "16 0.5", "16 0.5", "16 0.5", "16 0.5", "16 0.5"}, nil, "")
	h := s.H.EditWire(1, func(w *model.Wire) { w.Amps = model.Opt[unit.Ampere]{} }).
		EditWire(2, func(w *model.Wire) { w.Role = model.Some(model.RoleSpare) }).
		EditWire(3, func(w *model.Wire) { w.Spec, w.From, w.To = "of nobody", model.Some("B:0"), model.Some("Y:0") }).
		EditWire(4, func(w *model.Wire) { w.To = model.Some("nowhere") }).
		EditWire(5, func(w *model.Wire) { w.Safety = model.Some(true) })
	apart := *h // a wire that nobody knows leaves those beside it unjudged
	apart.Terminations = append(slices.Clone(h.Terminations), model.Termination{ID: "B"}, model.Termination{ID: "Y"})
	apart.Branches = append(slices.Clone(h.Branches), model.Branch{ID: "T2", From: "B", To: "Y", LengthMM: 300})
	s = calc.Complete(&apart, s.Cat, nil)
	changes, is, none := Advise(s)
	if want := []Change{{0, "22", "24"}}; !slices.Equal(changes, want) || len(none) != 0 || is.Wires[0].Size != "24" {
		t.Errorf("%+v, none for %v; want %+v", changes, none, want)
	}
	for k := range s.H.Wires {
		if size, ok := SmallestThatDoes(s, k); ok != (k == 0 || k == 2) {
			t.Errorf("wire %d: %q does, %v", k, size, ok)
		}
	}
}

// Where nothing is proposed the harness is as laid as it is; what waits for its lay-up is left to wait.
func TestAsLaidWhereNothingIsProposed(t *testing.T) {
	s := calctest.Built(t, calctest.OneSize(3, "22", "length_mm = 500.0\n  [[branch.layer]]\n  of = [\"0\", \"1\", \"2\"]\n"))
	if h := AsLaid(s); h != s.H {
		t.Errorf("%+v", h.Branches[0])
	}
	s.Branches[0].Proposed, s.Branches[0].As = true, nil
	if h := AsLaid(s); h != s.H {
		t.Errorf("nothing is written: %+v", h.Branches[0])
	}
}

// Pieces of one diameter are laid in the order in which they are asked for: of A, of 10 g/m, two, and of B, of 20, five. One round which
// six lie weighs 10 + (10 + 5 · 20) · 1.0151 g, by the take-up of six round one; a piece more than was asked for is of the last.
func TestPlannedInTheOrderOfPieces(t *testing.T) {
	cat := &catalogue.Catalogue{Wires: map[catalogue.WireKey]catalogue.Wire{}}
	for spec, gram := range map[string]unit.GramPerMetre{"A": 10, "B": 20} {
		w := catalogue.Wire{Spec: spec, Size: "22", OverMM: 1, GramPerM: gram}
		cat.Wires[w.Key()] = w
	}
	p := plan.Plan{Layers: []plan.Layer{{Sizes: []unit.Millimetre{1}, N: []int{1}}, {Sizes: []unit.Millimetre{1}, N: []int{6}}}}
	for _, n := range []int{5, 4} {
		b, ok := Planned(p, []Piece{{Spec: "A", Size: "22", OverMM: 1, N: 2}, {Spec: "B", Size: "22", OverMM: 1, N: n}}, model.Rules{}, cat)
		if !ok {
			t.Fatal("no branch")
		}
		calctest.Near(t, "mass", float64(b.Gram.V), 10+110*1.0151, 0.2)
	}
	thin := plan.Plan{Layers: []plan.Layer{{Sizes: []unit.Millimetre{0.5}, N: []int{1}, CentreMM: 0.9}}}
	if b, ok := Planned(thin, []Piece{{OverMM: 0.5, N: 1}}, model.Rules{}, cat); !ok || b.As[0].BindMM.V != 0.4 {
		t.Errorf("%v %+v", ok, b)
	}
}

// Like a branch is laid only one that is laid; what its layers name beside the pieces that run through it has no like.
func TestLaidLikeWhatIsLaid(t *testing.T) {
	h := &model.Harness{Branches: []model.Branch{{ID: "A"}, {ID: "B"}}}
	s := &sheet.Sheet{H: h}
	for _, w := range []string{"a", "b", "x"} {
		h.Wires = append(h.Wires, model.Wire{ID: w})
		s.Wires = append(s.Wires, sheet.Wire{Dia: sheet.Dia{Nominal: 1}})
	}
	s.Index = model.NewIndex(h)
	for _, c := range []struct {
		mk   model.Make
		as   []string
		want bool
	}{{model.MakeLaid, []string{"a"}, true}, {model.MakeTwisted, []string{"a"}, false}, {model.MakeLaid, []string{"a", "x"}, false},
		{model.MakeLaid, nil, false}} {
		src := sheet.Branch{Make: c.mk, Components: []string{"a"}}
		if c.as != nil {
			src.As = []model.Layer{{Of: c.as}}
		}
		s.Branches = []sheet.Branch{src, {Components: []string{"b"}}}
		if got, ok := LaidLike(s, 0, 1); ok != c.want || ok && fmt.Sprint(got[0].Of) != "[b]" || !ok && got != nil {
			t.Errorf("%+v: %v %v", c, got, ok)
		}
	}
}

// A bank of as many ends and another number of splices is not alike; one on which nothing is wired is not offered, and where a spare is
// planned none is.
func TestBanksByWhatIsOnThem(t *testing.T) {
	text := star(t, "2w", "2", "2")
	s := calctest.Built(t, text)
	if got := LikeBanks(s, 1); fmt.Sprint(got) != "[0]" {
		t.Errorf("like B1 are %v", got)
	}
	if s.Terms[1].Spare = 1; LikeBanks(s, 1) != nil {
		t.Error("a spare is there already")
	}
	s = calctest.Built(t, strings.Replace(deep1, "[[splice]]\nid = \"SB\"\nat = \"R\"\n", "", 1))
	h, ids, err := Mirrored(s, 1, 2)
	if err == nil || err.Error() != "the banks of L and R are not alike" || h != s.H || ids != nil {
		t.Errorf("%v %v", ids, err)
	}
	if _, ids, err = Mirrored(calctest.Built(t, deep1), 1, 2); err != nil || len(ids) != 1 {
		t.Errorf("%v %v", ids, err)
	}
}

// deep1 is two legs with a joint, a splice and an end each; the left end is wired to its splice.
const deep1 = `format = 1
[[termination]]
id = "P"
[[termination]]
id = "A"
cavities = ["1"]
[[termination]]
id = "B"
cavities = ["1"]
[[breakout]]
id = "J"
[[breakout]]
id = "L"
[[breakout]]
id = "R"
[[splice]]
id = "SA"
at = "L"
[[splice]]
id = "SB"
at = "R"
[[wire]]
id = "1"
from = "SA"
to = "A:1"
spec = "AS22759/32"
size = "22"
[[branch]]
id = "T"
from = "P"
to = "J"
length_mm = 100
[[branch]]
id = "L"
from = "J"
to = "L"
length_mm = 100
[[branch]]
id = "R"
from = "J"
to = "R"
length_mm = 100
[[branch]]
id = "LA"
from = "L"
to = "A"
length_mm = 100
[[branch]]
id = "RB"
from = "R"
to = "B"
length_mm = 100
`

// Where a datum lies by hand: a part of 20 mm and its boot of 30; not where one of the two is not known. A length that would come to
// nothing stays; one of half a millimetre is a length.
func TestDatumByHand(t *testing.T) {
	for _, c := range []struct {
		part      model.Opt[unit.Millimetre]
		boot      string
		grommet   bool
		lip       bool
		at, atLip unit.Millimetre
	}{{model.Some[unit.Millimetre](20), "b", true, true, 20, 50}, {model.Some[unit.Millimetre](20), "short", true, true, 20, 20.5},
		{model.Some[unit.Millimetre](20), "none", true, false, 20, 0}, {model.Some[unit.Millimetre](20), "flat", true, false, 20, 0},
		{model.Opt[unit.Millimetre]{}, "b", false, false, 0, 0}} {
		h := &model.Harness{Terminations: []model.Termination{{ID: "P", PartMM: c.part, Boot: model.Some(c.boot)}}}
		s := &sheet.Sheet{H: h, Cat: &catalogue.Catalogue{Boots: map[string]catalogue.Boot{"b": {ID: "b", LengthMM: 30},
			"short": {ID: "short", LengthMM: 0.5}, "flat": {ID: "flat"}}}}
		if at, ok := DatumAt(s, 0, model.DatumGrommet); ok != c.grommet || ok && at != c.at {
			t.Errorf("%+v: the grommet at %v, %v", c, at, ok)
		}
		if at, ok := DatumAt(s, 0, model.DatumBootLip); ok != c.lip || ok && at != c.atLip {
			t.Errorf("%+v: the lip at %v, %v", c, at, ok)
		}
	}
	for length, want := range map[unit.Millimetre]unit.Millimetre{20: 20, 20.5: 0.5, 100: 80} {
		s := calctest.Built(t, calctest.OneSize(3, "22", fmt.Sprintf("length_mm = %g\n", float64(length))))
		h := s.H.EditTermination(0, func(t *model.Termination) {
			t.PartMM, t.Datum = model.Some[unit.Millimetre](20), model.Some(model.DatumMatingFace)
		})
		h, converted := Redatum(calc.Build(h, s.Cat, nil), 0, model.DatumShellRear)
		if got := h.Branches[0].LengthMM; got != want || converted != (want != length) ||
			h.Terminations[0].Datum.V != model.DatumShellRear {
			t.Errorf("%v mm becomes %v, %v; want %v", length, got, converted, want)
		}
	}
}

// A wire from a splice has no substitute, whatever else begins there; and of connectors with as many free cavities the first has the spare
// with one end, none where none is free.
func TestNoSubstituteFromASplice(t *testing.T) {
	s := between(t, "w S B:1 22", "x S B:2 22 spare")
	if got := Substitutes(s, 0); got != nil {
		t.Errorf("%+v", got)
	}
	if got, ok := DeadEnd(s, 2, 0); !ok || got.From != "A:1" || got.CappedAt != "C" { // A and C have six free, A stands first
		t.Errorf("%+v %v", got, ok)
	}
	for k := range s.Terms {
		s.Terms[k].Free = nil
	}
	if got, ok := DeadEnd(s, 2, 0); ok || got.From != "" {
		t.Errorf("%+v %v", got, ok)
	}
}
