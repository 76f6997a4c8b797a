package planning

import (
	"fmt"
	"strings"
	"testing"

	"contralay/calc/formula/plan"
	"contralay/calc/phase/bundle"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// lot is an option by its figures.
type lot struct {
	cost           float64
	relaxed        plan.Relaxed
	fillers, lumpy int
	over           unit.Millimetre
	spares, buried int
	parted, layers int
	id             string
}

func (l lot) option() sheet.Option {
	o := sheet.Option{Plan: plan.Plan{Over: l.over, Fillers: l.fillers, Lumpy: l.lumpy, Relaxed: l.relaxed, Cost: unit.Ratio(l.cost)},
		Cost: unit.Ratio(l.cost), Buried: l.buried, Parted: l.parted, Spares: make([]sheet.SparePlace, l.spares),
		Layers: make([]model.Layer, l.layers+1)}
	o.Layers[0].Of = []string{l.id}
	return o
}

func names(all []sheet.Option) string {
	var out []string
	for _, o := range all {
		out = append(out, o.Layers[0].Of[0])
	}
	return strings.Join(out, " ")
}

// Which options stay, in which order, by hand: those that keep the limits first, the cheaper first, of equals that with fewer layers;
// left out is what another that is no dearer equals or beats in every figure, what leaves a limit where another keeps it, and what
// costs more than 1.35 of the best.
func TestOptionsThatStay(t *testing.T) {
	for _, c := range []struct {
		name string
		in   []lot
		want string
	}{
		{"none", nil, ""},
		{"the cheaper first", []lot{{id: "b", cost: 11, over: 9}, {id: "a", cost: 10, over: 10}}, "a b"},
		{"dear by a third", []lot{{id: "a", cost: 10, over: 10}, {id: "b", cost: 13.5, over: 8}, {id: "c", cost: 13.51, over: 7},
			{id: "d", cost: 13.4, over: 6}}, "a d"},
		{"what leaves a limit comes after and goes", []lot{{id: "b", cost: 1, relaxed: 1}, {id: "a", cost: 10}, {id: "c", cost: 11,
			over: -1}}, "a c"},
		{"all leave it", []lot{{id: "b", cost: 12, relaxed: 1, over: 3}, {id: "a", cost: 10, relaxed: 1, over: 4}, {id: "c", cost: 1,
			relaxed: 2}}, "a b"},
		{"of equals fewer layers", []lot{{id: "b", cost: 10, layers: 3}, {id: "a", cost: 10, layers: 2}}, "a"},
		{"fewer fillers", []lot{{id: "a", cost: 10, fillers: 2}, {id: "b", cost: 11, fillers: 1}, {id: "c", cost: 12, fillers: 1}}, "a b"},
		{"fewer lumps", []lot{{id: "a", cost: 10, lumpy: 1}, {id: "b", cost: 11}, {id: "c", cost: 12, lumpy: 1}}, "a b"},
		{"more spares", []lot{{id: "a", cost: 10}, {id: "b", cost: 11, spares: 1}, {id: "c", cost: 12, spares: 1}}, "a b"},
		{"fewer buried", []lot{{id: "a", cost: 10, buried: 2}, {id: "b", cost: 11, buried: 1}, {id: "c", cost: 12, buried: 2}}, "a b"},
		{"fewer that part, of one diameter", []lot{{id: "a", cost: 10, parted: 2, over: 9}, {id: "b", cost: 11, parted: 1, over: 9}},
			"a b"},
		{"fewer that part, thicker", []lot{{id: "a", cost: 10, parted: 2, over: 8.9}, {id: "b", cost: 11, parted: 1, over: 9}}, "a"},
		{"a hundredth is one", []lot{{id: "a", cost: 10, over: 9.004}, {id: "b", cost: 11, over: 9.001}}, "a"},
		{"two hundredths are two", []lot{{id: "a", cost: 10, over: 9.02}, {id: "b", cost: 11, over: 9.0}}, "a b"},
	} {
		var in []sheet.Option
		for _, l := range c.in {
			in = append(in, l.option())
		}
		if got := names(worthHaving(in)); got != c.want {
			t.Errorf("%s: %s, want %s", c.name, got, c.want)
		}
	}
}

// An option is dearer by the weight of each piece that is buried, and of each layer that parts where one of its diameter that keeps the
// limits parts none.
func TestWhatIsAddedToTheCost(t *testing.T) {
	in := []lot{{id: "a", cost: 10, over: 9, buried: 2, parted: 1}, {id: "b", cost: 10, over: 9, parted: 0}, {id: "c", cost: 10,
		over: 8, parted: 3},
		{id: "d", cost: 10, over: 7, relaxed: 1, buried: 1}, {id: "e", cost: 10, over: 7, parted: 2, buried: 1}}
	var all []sheet.Option
	for _, l := range in {
		all = append(all, l.option())
	}
	price(all, 0.25)
	for k, want := range []float64{10.75, 10, 10, 10.25, 10.25} {
		if got := float64(all[k].Cost); got != want {
			t.Errorf("%s costs %v, want %v", in[k].id, got, want)
		}
	}
}

// Two options are one where their layers hold the same in the same order with the same fillers and tape.
func TestTheSameOption(t *testing.T) {
	of := func(change func(l []model.Layer)) sheet.Option {
		l := []model.Layer{{Of: []string{"1"}, BindMM: model.Some(unit.Millimetre(0.5))}, {Of: []string{"2", "3"}, Fillers: model.Some(1)}}
		change(l)
		return sheet.Option{Layers: l}
	}
	was := of(func([]model.Layer) {})
	for what, c := range map[string]struct {
		change func(l []model.Layer)
		want   bool
	}{
		"nothing": {func([]model.Layer) {}, true}, "order": {func(l []model.Layer) { l[1].Of = []string{"3", "2"} }, false},
		"fillers": {func(l []model.Layer) { l[1].Fillers = model.Some(2) }, false},
		"tape":    {func(l []model.Layer) { l[0].BindMM = model.Opt[unit.Millimetre]{} }, false},
		"a lock":  {func(l []model.Layer) { l[0].Locked = model.Some(true) }, true},
	} {
		if got := same(was, of(c.change)); got != c.want {
			t.Errorf("another %s: the same %v", what, got)
		}
	}
	if same(was, sheet.Option{Layers: was.Layers[:1]}) {
		t.Error("of one layer less it is the same")
	}
}

// Layers that part at a fork, where pieces go on, and which are buried, by hand.
func TestWhereLayersPart(t *testing.T) {
	r := bundle.Ranks{Next: map[string]int{"a": 4, "b": 4, "c": 7, "d": -1, "e": 4}, Depth: map[string]int{"a": 3, "b": 1, "c": 2,
		"d": 0, "e": 3}}
	layers := func(all ...string) []model.Layer {
		var out []model.Layer
		for _, l := range all {
			out = append(out, model.Layer{Of: strings.Fields(l)})
		}
		return out
	}
	for _, c := range []struct {
		layers         []model.Layer
		parted, buried int
	}{
		{layers("a b", "c", "d"), 0, 1}, {layers("a c", "b d"), 2, 0}, {layers("a b e"), 0, 0}, {layers("a", "b c d"), 1, 0},
		{layers("d", "c", "a"), 0, 2}, {layers("b", "a"), 0, 1}, {layers("a", "e"), 0, 0}, {layers("d c", "b"), 1, 1}, {nil, 0, 0},
		{layers("d d", "b"), 0, 2},
	} {
		if got := parted(c.layers, r); got != c.parted {
			t.Errorf("%v: %d part, want %d", c.layers, got, c.parted)
		}
		if got := buriedIn(c.layers, r); got != c.buried {
			t.Errorf("%v: %d are buried, want %d", c.layers, got, c.buried)
		}
	}
	if got := fmt.Sprint(nexts(strings.Fields("d a b c e"), r)); got != "[-1 4 7]" {
		t.Errorf("they go on into %s", got)
	}
	// The branch with fewest innermost: one ends here, one goes into 7, three into 4.
	if got := fmt.Sprint(byBranch(strings.Fields("a b c d e"), r, []int{4, 7, -1})); got != "map[a:0 b:0 c:1 d:2 e:0]" {
		t.Errorf("%s", got)
	}
	for end, want := range map[string]string{"P1:A": "P1", "S1": "S1", "": "", "P:1:2": "P"} {
		if got := place(end); got != want {
			t.Errorf("%q is at %q", end, got)
		}
	}
	h := &model.Harness{Wires: []model.Wire{{From: model.Some("B:1"), To: model.Some("A:9")}, {From: model.Some("A:2"),
		To: model.Some("B:7")},
		{From: model.Some("A:2"), To: model.Some("C:7")}}}
	s := &sheet.Sheet{H: h}
	if endsOf(s, 0) != endsOf(s, 1) || endsOf(s, 1) == endsOf(s, 2) || !strings.HasPrefix(endsOf(s, 0), "A") {
		t.Errorf("%q %q %q", endsOf(s, 0), endsOf(s, 1), endsOf(s, 2))
	}
}

// A spare is white with the first stripe that no wire of the branch has, then with two stripes; white where all are had.
func TestColoursOfSpares(t *testing.T) {
	codes := []string{"90", "91", "92", "93", "94", "95", "96", "97", "98", "901", "902"}
	for n, want := range map[int]string{0: "90", 1: "91", 8: "98", 9: "901", 10: "902", 11: "903"} {
		h := &model.Harness{Branches: []model.Branch{{ID: "T", Layers: []model.Layer{{}}}}}
		s := &sheet.Sheet{Branches: []sheet.Branch{{}}}
		for k, code := range codes[:n] {
			id := fmt.Sprint(k)
			h.Wires = append(h.Wires, model.Wire{ID: id, Colour: model.Some(code)})
			if k%2 == 0 {
				s.Branches[0].Components = append(s.Branches[0].Components, id)
			} else {
				h.Branches[0].Layers[0].Of = append(h.Branches[0].Layers[0].Of, id)
			}
		}
		h.Wires = append(h.Wires, model.Wire{ID: "elsewhere", Colour: model.Some(want)})
		if got := freeColour(s, h, 0); got != want {
			t.Errorf("beside %d: %s, want %s", n, got, want)
		}
	}
	h := &model.Harness{Branches: []model.Branch{{ID: "T"}}}
	s := &sheet.Sheet{Branches: []sheet.Branch{{}}}
	last := ""
	for k := range 46 { // nine with one stripe, thirty-six with two, and then white alone
		last = freeColour(s, h, 0)
		h.Wires = append(h.Wires, model.Wire{ID: fmt.Sprint(k), Colour: model.Some(last)})
		s.Branches[0].Components = append(s.Branches[0].Components, fmt.Sprint(k))
		if k == 44 && last != "978" {
			t.Errorf("the last with stripes is %s", last)
		}
	}
	if last != "9" {
		t.Errorf("then it is %s", last)
	}
}

// What the builder set on a layer stays: a locked one as it is, else its pins and its lay.
func TestWhatIsKeptOfALayer(t *testing.T) {
	now := model.Layer{Of: []string{"1"}, Pinned: []string{"1"}, LayMM: model.Some(unit.Millimetre(80)), Fillers: model.Some(2)}
	out := model.Layer{Of: []string{"2", "3"}, Fillers: model.Some(1)}
	keepHeld(&out, now)
	if fmt.Sprint(out.Of, out.Pinned, out.LayMM.V, out.Fillers.V) != "[2 3] [1] 80 1" {
		t.Errorf("%+v", out)
	}
	now.Locked = model.Some(true)
	keepHeld(&out, now)
	if fmt.Sprint(out.Of, out.Pinned, out.LayMM.V, out.Fillers.V, out.Locked.V) != "[1] [1] 80 2 true" {
		t.Errorf("%+v", out)
	}
	now.Of[0] = "x"
	if out.Of[0] != "1" {
		t.Error("it shares its list with the layer it was taken from")
	}
}
