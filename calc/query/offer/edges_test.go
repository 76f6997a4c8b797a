package offer

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/formula/plan"
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
