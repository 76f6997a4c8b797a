package inserts

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// shelf is a catalogue of two wires: "own 22", 1.1 mm and 0.4 mm², and "own 16", 1.8 and 1.3.
func shelf() *catalogue.Catalogue {
	c := &catalogue.Catalogue{Wires: map[catalogue.WireKey]catalogue.Wire{}}
	for _, e := range []catalogue.Wire{{Spec: "own", Size: "22", OverMM: 1.1, AreaMM2: 0.4, OverStanding: catalogue.Published},
		{Spec: "own", Size: "16", OverMM: 1.8, AreaMM2: 1.3}} {
		c.Wires[e.Key()] = e
	}
	return c
}

// What is wanted is sorted into kinds that no contact tells apart, by hand: asked for twice it is added up; a pair is two and, shielded,
// a drain
// more; spares are of the commonest wire.
func TestKindsThatAreWanted(t *testing.T) {
	w := func(spec, size string, over float64, n int) Wire { return Wire{spec, size, unit.Millimetre(over), n} }
	for _, c := range []struct {
		want Want
		n    int
		says string
	}{
		{Want{}, 0, ""},
		{Want{Wires: []Wire{w("own", "22", 0, 3), w("own", "16", 0, 1), w("own", "22", 0, 2)}}, 6, "5 0 22 AWG 1.1; 1 0 16 AWG 1.8"},
		{Want{Wires: []Wire{w("own", "22", 1.1, 3), w("own", "22", 1.15, 2), w("own", "22", 0, 1)}}, 6, "4 0 22 AWG 1.1; 2 0 22 AWG 1.15"},
		{Want{Wires: []Wire{w("own", "22", 0, 0), w("own", "16", 0, -2)}}, 0, ""},
		{Want{Pairs: []Pair{{w("own", "22", 0, 2), true}, {w("own", "22", 0, 1), false}}, Wires: []Wire{w("own", "22", 0, 1)}}, 9,
			"7 0 22 AWG 1.1; 2 1 22 AWG 0"},
		{Want{Drains: []Wire{w("own", "22", 0, 2), w("", "", 0, 1), w("", "", 3, 1)}}, 4, "2 1 22 AWG 0; 2 1 unknown gauge 0"},
		{Want{Wires: []Wire{w("own", "22", 0, 1), w("own", "16", 0, 2)}, Spares: 3}, 6, "1 0 22 AWG 1.1; 2 0 16 AWG 1.8; 3 2 16 AWG 1.8"},
		{Want{Spares: 2}, 2, "2 2 any wire 0"}, {Want{Spares: -1}, 0, ""},
		{Want{Wires: []Wire{w("", "", 2.9, 2), w("", "", 2.95, 1), w("", "", math.Inf(1), 1), w("", "", 3, 1)}}, 5,
			"2 0 2.9 mm 2.9; 1 0 2.95 mm 2.95; 1 0 0 mm 0; 1 0 3 mm 3"},
		{Want{Wires: []Wire{w("own", "22", 0, 1), w("rare", "20", 0, 1), w("", "", 2, 1)}}, 3,
			"1 0 own 22 AWG 1.1; 1 0 rare 20 AWG 0; 1 0 2 mm 2"},
	} {
		var got []string
		for _, k := range kinds(shelf(), c.want) {
			got = append(got, fmt.Sprintf("%d %d %s %.4g", k.count, k.role, k.says, float64(k.over)))
		}
		if strings.Join(got, "; ") != c.says || c.want.Cavities() != c.n {
			t.Errorf("%+v: %q, %d cavities; want %q, %d", c.want, got, c.want.Cavities(), c.says, c.n)
		}
	}
	k := kindOf(shelf(), Wire{Spec: "own", Size: "22"}, ForWire, false)
	if k.unread || k.byOver || k.area != 0.4 || k.from.Standing != catalogue.Published {
		t.Errorf("%+v", k)
	}
	if k = kindOf(shelf(), Wire{Spec: "own", Size: "22", OverMM: 1.2}, ForWire, false); k.over != 1.2 ||
		k.from.Standing != catalogue.House {
		t.Errorf("%+v", k)
	}
	if k = kindOf(shelf(), Wire{Spec: "none", Size: "22"}, ForWire, true); !k.unread || k.says != "none 22 AWG" || k.area != 0 {
		t.Errorf("%+v", k)
	}
	if k = kindOf(shelf(), Wire{OverMM: 2}, ForWire, true); !k.byOver || k.unread {
		t.Errorf("%+v", k)
	}
	if got := fmt.Sprint(specs(Want{Wires: []Wire{w("b", "1", 0, 1), w("c", "", 1, 1)}, Drains: []Wire{w("a", "1", 0, 1)},
		Pairs: []Pair{{w("b", "2", 0, 1),
			true}}})); got != "[a b]" {
		t.Error(got)
	}
}

// What a connector holds, and what taking another arrangement comes to, by hand.
func TestTakingAnArrangement(t *testing.T) {
	wire := func(id, from, size string) string {
		return fmt.Sprintf("[[wire]]\nid = %q\nfrom = %q\nto = \"Z:%s\"\nspec = \"AS22759/32\"\nsize = %q\n", id, from, id, size)
	}
	text := "format = 1\n[[termination]]\nid = \"P\"\ncavities = [\"1\", \"2\", \"3\", \"4\", \"A\"]\nreserved = [\"4\"]\naliases = { " +
		"\"1\" = [\"one\"], \"3\" = [\"three\"] }\n" +
		"[[termination]]\nid = \"Z\"\n" + wire("a", "P:1", "22") + wire("b", "P:A", "22") +
		"[[unit]]\nid = \"U\"\nwires = [\"a\", \"b\"]\nshield = true\ndrain_from = \"P:2\"\n" +
		"[[branch]]\nid = \"T\"\nfrom = \"P\"\nto = \"Z\"\nlength_mm = 300.0\n"
	s := calctest.Built(t, text)
	if got := fmt.Sprintf("%+v", Of(s, 0)); got != "{Wires:[{Spec:AS22759/32 Size:22 OverMM:1.09 Count:2}] Pairs:[] "+
		"Drains:[{Spec:AS22759/32 Size:22 OverMM:0 "+
		"Count:1}] Spares:1}" {
		t.Errorf("%s", got)
	}
	if got := Shared(s, 0); got != nil {
		t.Errorf("%v are shared", got)
	}
	// Of own: A, B, C, D of size 20. A keeps its name; 1, 2 and the reserved 4 get others.
	own := func(n int) *catalogue.Catalogue {
		return catalogue.Merge(s.Base, &catalogue.Catalogue{Inserts: map[string]catalogue.Insert{"own": {ID: "own",
			Cavities: strings.Split("ABCD", "")[:n],
			Contacts: []catalogue.InsertContacts{{Size: "20", Count: n, Cavities: strings.Split("ABCD", "")[:n]}}}}})
	}
	with := calc.Build(s.H, own(4), nil)
	got, err := Take(with, 0, "own")
	if err != nil || got.Kept != 1 || got.Moved != 3 || got.Names != 1 || got.Listed || got.Mixed {
		t.Fatalf("%v %+v", err, got)
	}
	now := got.H.Terminations[0]
	if got.H.Wires[1].From.V != "P:A" || now.Insert.V != "own" || len(now.Reserved) != 1 || len(now.Cavities) != 0 {
		t.Errorf("%+v %+v", got.H.Wires, now)
	}
	seen := map[string]bool{got.H.Wires[0].From.V: true, got.H.Wires[1].From.V: true, got.H.Units[0].DrainFrom.V: true, "P:" +
		now.Reserved[0]: true}
	for _, c := range []string{"P:A", "P:B", "P:C", "P:D"} {
		if !seen[c] {
			t.Errorf("%s holds nothing: %v", c, seen)
		}
	}
	three := calc.Build(s.H, own(3), nil)
	if _, err := Take(three, 0, "own"); err == nil || err.Error() != "own has no place for 1 x 22 AWG (kept free): nothing was changed" {
		t.Errorf("%v", err)
	}
	two := calc.Build(s.H.EditTermination(0, func(t *model.Termination) { t.Reserved = nil }), own(2), nil)
	if _, err := Take(two, 0, "own"); err == nil || err.Error() != "own has no place for 1 x 22 AWG (drain): nothing was changed" {
		t.Errorf("%v", err)
	}
	if _, err := Take(s, 0, "none"); err == nil || err.Error() != `insert "none" is in no catalogue` {
		t.Errorf("%v", err)
	}
	twice := calc.Build(s.H.EditWire(1, func(w *model.Wire) { w.From = model.Some("P:1") }), own(4), nil)
	if _, err := Take(twice, 0, "own"); err == nil || err.Error() != "cavity 1 of P holds several wires, and a sealed cavity takes "+
		"one: splice them first. "+
		"Nothing was changed" {
		t.Errorf("%v", err)
	}
	// Which arrangement takes a wire at all: 22 AWG of an aerospace specification some does, 4/0 none.
	if cat := calctest.Catalogue(t); !Takes(cat, Wire{Spec: "AS22759/32", Size: "22"}) || Takes(cat, Wire{OverMM: 40}) {
		t.Error("which wires some arrangement takes")
	}
}
