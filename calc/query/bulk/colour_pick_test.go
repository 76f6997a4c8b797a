package bulk_test

import (
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/query/bulk"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/file"
)

// loom is a small harness to colour: connectors at both ends of a trunk, those with an even number
// at the one and those with an odd number at the other, wires between their cavities, and the
// layers of the trunk as written.
type loom struct {
	terms  int
	wires  [][2]int // connectors
	colour []string
	layers [][]int // wires; the first is the centre
	filler []int   // by layer
	stock  []string
}

// text is the file of it.
func (l loom) text() string {
	var b strings.Builder
	b.WriteString("format = 1\n[rules]\n")
	if l.stock != nil {
		fmt.Fprintf(&b, "colour_stock = [\"%s\"]\n", strings.Join(l.stock, `", "`))
	}
	used := make([]int, l.terms)
	var wires strings.Builder
	for k, ends := range l.wires {
		var at [2]string
		for n, t := range ends {
			used[t]++
			at[n] = fmt.Sprintf("P%d:%d", t, used[t])
		}
		fmt.Fprintf(&wires, "[[wire]]\nid = \"%d\"\nfrom = \"%s\"\nto = \"%s\"\nspec = \"AS22759/32\"\nsize = \"22\"\n", 100+k, at[0],
			at[1])
		if l.colour[k] != "" {
			fmt.Fprintf(&wires, "colour = \"%s\"\n", l.colour[k])
		}
	}
	for t := range l.terms {
		fmt.Fprintf(&b, "[[termination]]\nid = \"P%d\"\ncavities = [\"1\"", t)
		for c := 2; c <= used[t]+2; c++ {
			fmt.Fprintf(&b, ", \"%d\"", c)
		}
		b.WriteString("]\n")
	}
	b.WriteString("[[breakout]]\nid = \"J0\"\n[[breakout]]\nid = \"J1\"\n" + wires.String())
	b.WriteString("[[branch]]\nid = \"T\"\nfrom = \"J0\"\nto = \"J1\"\nlength_mm = 300\n")
	b.WriteString([]string{"make = \"straight\"\n", "make = \"laid\"\n"}[min(1, len(l.layers))])
	for k, layer := range l.layers {
		b.WriteString("[[branch.layer]]\nof = [")
		for n, w := range layer {
			fmt.Fprintf(&b, "%s\"%d\"", []string{", ", ""}[max(0, 1-n)], 100+w)
		}
		fmt.Fprintf(&b, "]\nfillers = %d\nfiller_mm = 1.09\n", l.filler[k])
	}
	for t := range l.terms {
		fmt.Fprintf(&b, "[[branch]]\nid = \"L%d\"\nfrom = \"J%d\"\nto = \"P%d\"\nlength_mm = 100\nmake = \"twisted\"\n", t, t%2, t)
	}
	return b.String()
}

// asItShouldBe says what is wrong with colours, by the words of the issue alone: two alike in a
// connector; a layer in which no colour is there once. all is a colour for each wire.
func (l loom) asItShouldBe(all []string) string {
	for t := range l.terms {
		seen := map[string]bool{}
		for k, ends := range l.wires {
			if ends[0] == t || ends[1] == t {
				if all[k] != "" && seen[all[k]] {
					return fmt.Sprintf("two %s in P%d", all[k], t)
				}
				seen[all[k]] = true
			}
		}
	}
	for k, layer := range l.layers {
		has := map[string]int{"9": l.filler[k]} // a filler is white
		for _, w := range layer {
			has[all[w]]++
		}
		delete(has, "")
		if once := slices.Contains(slices.Collect(maps.Values(has)), 1); k > 0 && len(layer)+l.filler[k] > 1 && !once {
			return fmt.Sprintf("layer %d has no tracer", k)
		}
	}
	return ""
}

// exists tries every colour of the stock for every wire that has none.
func (l loom) exists() bool {
	all := slices.Clone(l.colour)
	var from func(k int) bool
	from = func(k int) bool {
		if k == len(all) {
			return l.asItShouldBe(all) == ""
		}
		if l.colour[k] != "" {
			return from(k + 1)
		}
		for _, c := range l.stock {
			if all[k] = c; from(k + 1) {
				return true
			}
		}
		all[k] = ""
		return false
	}
	return from(0)
}

func someLoom(t *rapid.T) loom {
	l := loom{terms: rapid.IntRange(2, 7).Draw(t, "connectors"),
		stock: []string{"9", "0", "92", "6"}[:rapid.IntRange(1, 4).Draw(t, "stock")]}
	var through []int
	for k := range rapid.IntRange(1, 6).Draw(t, "wires") {
		left := 2 * rapid.IntRange(0, (l.terms-1)/2).Draw(t, "from")
		right := 1 + 2*rapid.IntRange(0, l.terms/2-1).Draw(t, "to")
		l.wires, through = append(l.wires, [2]int{left, right}), append(through, k)
		l.colour = append(l.colour, rapid.SampledFrom([]string{"", "", "", "9", "0", "7"}).Draw(t, "given"))
	}
	for len(through) > 0 {
		m := rapid.IntRange(1, len(through)).Draw(t, "in the layer")
		l.layers, through = append(l.layers, through[:m]), through[m:]
		fillers := 0
		if len(l.layers) > 1 { // there are no fillers in a centre
			fillers = rapid.IntRange(0, 2).Draw(t, "fillers")
		}
		l.filler = append(l.filler, fillers)
	}
	return l
}

// Wherever the stock has colours that are as they should be, such colours are proposed, and no
// given colour is changed; where it has not, the answer says what lacks, and what it proposes
// still has no two alike in a connector.
func TestColoursAreFoundWhereverThereAreSome(t *testing.T) {
	found, lacking := 0, 0
	one := func(t *rapid.T) {
		l := someLoom(t)
		s := built(t, l.text())
		got, err := bulk.Colours(s, bulk.ColourAsk{})
		if err != nil {
			t.Fatal(err)
		}
		var all []string
		for k, w := range got.H.Wires {
			if l.colour[k] != "" && w.Colour.V != l.colour[k] {
				t.Fatalf("wire %s was %s", w.ID, l.colour[k])
			}
			if w.Colour.V != "" && l.colour[k] == "" && !slices.Contains(l.stock, w.Colour.V) {
				t.Fatalf("wire %s got %q, which is not in stock", w.ID, w.Colour.V)
			}
			all = append(all, w.Colour.V)
		}
		wrong := l.asItShouldBe(all)
		if slices.Contains(all, "") {
			wrong = "a wire has none"
		}
		if l.exists() {
			found++
			if wrong != "" || len(got.Lacks) > 0 {
				t.Fatalf("there are such colours, and got %v: %s %+v\n%s", all, wrong, got.Lacks, l.text())
			}
			return
		}
		lacking++
		if len(got.Lacks) == 0 {
			t.Fatalf("nothing is said to lack in %v: %s\n%s", all, wrong, l.text())
		}
		given := loom{terms: l.terms, wires: l.wires} // without its layers
		if was, is := given.asItShouldBe(l.colour), given.asItShouldBe(all); was == "" && is != "" {
			t.Fatalf("proposed: %s\n%s", is, l.text())
		}
	}
	for range 5 { // the short form draws a dozen looms, which are of one kind once in a few hundred times
		if rapid.Check(t, one); found > 0 && lacking > 0 {
			break
		}
	}
	if found == 0 || lacking == 0 {
		t.Errorf("%d found, %d lacking: both must occur", found, lacking)
	}
}

// The sheet agrees: with the default stock no layer of a demonstration is without its tracer, no
// connector has two alike, nothing lacks.
func TestColoursOfAWholeLoom(t *testing.T) {
	for _, name := range []string{"demo.toml", "whole.toml", "feeds.toml", "example.toml", "built-up.toml"} {
		s := calctest.Laid(t, strings.TrimSuffix(name, ".toml"))
		got, err := bulk.Colours(s, bulk.ColourAsk{Again: true})
		if err != nil || len(got.Lacks) > 0 {
			t.Fatalf("%s: %v %+v", name, err, got.Lacks)
		}
		next := calc.Build(got.H, calctest.Catalogue(t), s)
		for i, b := range next.Branches {
			for k, layer := range b.Layers {
				wires := slices.ContainsFunc(layer.Members, func(m sheet.Member) bool { _, is := next.Index.Wire[m.ID]; return is })
				if k > 0 && layer.Tracer == "" && wires { // one of units alone has no colour to choose
					t.Errorf("%s: layer %d of %s has no tracer", name, k, next.H.Branches[i].ID)
				}
			}
		}
		for i, term := range next.Terms {
			seen := map[string]string{}
			for _, c := range term.Cavities {
				for _, id := range term.State[c].Wires {
					colour := next.H.Wires[next.Index.Wire[id]].Colour.V
					if other, is := seen[colour]; is && other != c || colour == "" {
						t.Errorf("%s: %s of %s in %s: %q", name, id, c, next.H.Terminations[i].ID, colour)
					}
					seen[colour] = c
				}
			}
		}
		once, err := bulk.Colours(s, bulk.ColourAsk{Again: true})
		if err != nil || !once.H.Same(got.H) {
			t.Errorf("%s: the same ask has another answer", name)
		}
		if again, err := bulk.Colours(next, bulk.ColourAsk{}); err != nil || again.H != next.H {
			t.Errorf("%s: coloured wires are coloured once more without being asked", name)
		}
	}
}

// How many colours lack, and where, in figures worked out by hand.
func TestSaysWhatLacks(t *testing.T) {
	five := loom{terms: 4, wires: [][2]int{{0, 1}, {0, 1}, {0, 3}, {0, 3}, {0, 3}}, colour: make([]string, 5),
		stock: []string{"0", "1", "2"}}
	given := loom{terms: 4, wires: [][2]int{{0, 1}, {0, 1}, {0, 3}}, colour: []string{"6", "6", "7"}, layers: [][]int{{2}, {0, 1}},
		filler: []int{0, 0}, stock: []string{"0"}}
	// Three connectors at each end, of one wire each: one colour does for them, but not for a tracer.
	ring := loom{terms: 6, wires: [][2]int{{0, 1}, {2, 3}, {4, 5}}, colour: make([]string, 3), layers: [][]int{{0}, {1, 2}},
		filler: []int{0, 0}, stock: []string{"0"}}
	for _, c := range []struct {
		name string
		loom
		want []string
		bare int
	}{
		{"two colours at P0", five, []string{"P0 needs 2 colours more in stock: 103 and 104 get none"}, 2},
		{"given alike, and a layer of them", given, []string{"P0: 100 and 101 were given one colour, blue",
			"P1: 100 and 101 were given one colour, blue", "Layer 1 of T has no tracer: the colours of its wires are all given"}, 0},
		{"one colour for a layer", ring, []string{"Layer 1 of T gets no tracer: it needs 1 colour more in stock"}, 0},
	} {
		got, err := bulk.Colours(built(t, c.text()), bulk.ColourAsk{})
		if err != nil {
			t.Fatal(err)
		}
		var says []string
		for _, l := range got.Lacks {
			says = append(says, l.Says)
		}
		if !slices.Equal(says, c.want) {
			t.Errorf("%s: %q", c.name, says)
		}
		bare := 0
		for _, w := range got.H.Wires {
			if w.Colour.V == "" {
				bare++
			}
		}
		if bare != c.bare {
			t.Errorf("%s: %d wires without a colour", c.name, bare)
		}
	}
}

// WHBU is 96 and WH is what a filler is: one colour in two codes is one colour.
func TestCodesOfOneColour(t *testing.T) {
	l := loom{terms: 2, wires: [][2]int{{0, 1}, {0, 1}, {0, 1}}, colour: []string{"96", "", "BK"},
		stock: []string{"WHBU", "0", "PK", "WHBU", "wh/bu"}}
	got, err := bulk.Colours(built(t, l.text()), bulk.ColourAsk{})
	if err != nil || len(got.Lacks) > 0 || got.H.Wires[1].Colour.V != "PK" {
		t.Errorf("%v %+v %q", err, got.Lacks, got.H.Wires[1].Colour.V)
	}
	if got, _ := bulk.Colours(built(t, l.text()), bulk.ColourAsk{Again: true}); len(got.Lacks) > 0 || got.H.Wires[0].Colour.V != "WHBU" {
		t.Errorf("all again: %+v", got)
	}
	if _, err := bulk.Colours(built(t, l.text()), bulk.ColourAsk{Wires: []string{"nobody"}}); err == nil {
		t.Error("coloured a wire that is not there")
	}
}

// The default stock: 10 plain colours, then white with a stripe, then the other bases; 100 in
// all, each once, and none with a stripe of its base.
func TestDefaultStock(t *testing.T) {
	stock := model.Rules{}.Resolve().ColourStock
	if len(stock) != 100 || stock[0] != "0" || stock[9] != "9" || stock[10] != "90" || stock[19] != "01" {
		t.Errorf("%v", stock)
	}
	seen := map[string]bool{}
	for _, c := range stock {
		if seen[c] || len(c) == 2 && c[0] == c[1] || len(c) > 2 {
			t.Errorf("%q", c)
		}
		seen[c] = true
	}
}

// built is the sheet of a file's text.
func built(t interface{ Fatal(...any) }, text string) *sheet.Sheet {
	d, err := file.Parse([]byte(text), "test")
	if err != nil {
		t.Fatal(err, "\n", text)
	}
	c, err := shelf()
	if err != nil {
		t.Fatal(err)
	}
	return calc.Build(&d.Harness, c, nil)
}
