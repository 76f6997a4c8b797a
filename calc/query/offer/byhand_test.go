package offer

import (
	"fmt"
	"strings"
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// between is a sheet of connectors A to D, each with so many cavities of which some are free, on legs of a joint J, and wires "id from to
// size role".
func between(t *testing.T, wires ...string) *sheet.Sheet {
	text := "format = 1\n"
	for _, id := range []string{"A", "B", "C"} {
		text += "[[termination]]\nid = \"" + id + "\"\ncavities = [\"1\", \"2\", \"3\", \"4\", \"5\", \"6\"]\n"
	}
	text += "[[termination]]\nid = \"D\"\ncavities = [\"1\"]\n[[breakout]]\nid = \"J\"\n[[splice]]\nid = \"S\"\nat = \"J\"\n"
	for _, w := range wires {
		f := strings.Fields(w + " -")
		text += fmt.Sprintf("[[wire]]\nid = %q\nfrom = %q\nto = %q\nspec = \"AS22759/32\"\nsize = %q\n", f[0], f[1], f[2], f[3])
		if f[4] != "-" {
			text += fmt.Sprintf("role = %q\n", f[4])
		}
	}
	for _, id := range []string{"A", "B", "C", "D"} {
		text += "[[branch]]\nid = \"T" + id + "\"\nfrom = \"" + id + "\"\nto = \"J\"\nlength_mm = 200.0\n"
	}
	return calctest.Built(t, text)
}

// Which spares stand in for a wire, and what two ends could still take, by hand. A spare runs between the same ends, either way round, and
// is no thinner; one to a splice, to elsewhere, or that is no spare does not.
func TestSparesThatStandIn(t *testing.T) {
	s := between(t, "w A:1 B:1 22", "x A:2 B:2 22 spare", "y B:3 A:3 20 spare", "z A:4 B:4 24 spare", "v A:5 C:1 22 spare",
		"u A:6 S 22 spare", "n B:5 C:2 22",
		"d C:3 C:4 22", "e C:5 C:6 22 spare")
	say := func(k int) string {
		var out []string
		for _, x := range Substitutes(s, k) {
			out = append(out, fmt.Sprintf("%s %s>%s %s>%s", s.H.Wires[x.Wire].ID, x.FromA, x.ToA, x.FromB, x.ToB))
		}
		return strings.Join(out, ", ")
	}
	for k, want := range map[int]string{0: "x A:1>A:2 B:1>B:2, y A:1>A:3 B:1>B:3", 1: "y A:2>A:3 B:2>B:3", 2: "",
		3: "x A:4>A:2 B:4>B:2, y A:4>A:3 B:4>B:3",
		4: "", 5: "", 6: "", 7: "e C:3>C:5 C:4>C:6", 8: ""} {
		if got := say(k); got != want {
			t.Errorf("for %s: %q, want %q", s.H.Wires[k].ID, got, want)
		}
	}
	// A is full; to B run four of its wires, three of them spares, to C one. B has cavity 6 free, C none.
	for _, c := range []struct {
		of   int
		want string
	}{{0, "[{0 1 4 3 0} {0 2 1 1 0}]"}, {1, "[{1 0 4 3 0} {1 2 1 0 0}]"}, {2, "[{2 0 1 1 0} {2 1 1 0 0}]"}, {3, "[]"}} {
		if got := fmt.Sprint(Pairings(s, c.of)); got != c.want {
			t.Errorf("%d: %s, want %s", c.of, got, c.want)
		}
	}
	s = between(t, "w A:1 B:1 22", "x B:2 A:2 22", "v C:1 A:3 22")
	for _, c := range []struct {
		of   int
		want string
	}{{0, "[{0 1 2 0 3} {0 2 1 0 3}]"}, {2, "[{2 0 1 0 3}]"}, {1, "[{1 0 2 0 3}]"}} {
		if got := fmt.Sprint(Pairings(s, c.of)); got != c.want {
			t.Errorf("%d: %s, want %s", c.of, got, c.want)
		}
	}
	// A spare with one end goes to the connector with most cavities free, which is C, 5 of them, and through the branch to its far end:
	// from C through its own leg to the joint, and through each other leg to its connector.
	for i, want := range []string{"C:2 capped at A by [2 0]", "C:2 capped at B by [2 1]", "C:2 capped at J by [2]",
		"C:2 capped at D by [2 3]"} {
		got, ok := DeadEnd(s, i, 0)
		if text := fmt.Sprintf("%s capped at %s by %v", got.From, got.CappedAt, got.Path); text != want || !ok || got.Like != 0 ||
			got.To != "" {
			t.Errorf("%d: %s, want %s", i, text, want)
		}
	}
	if branch, thicker, starts, ok := OneMore(s, Pairing{A: 0, B: 1}); ok || branch != 0 || thicker != 0 || starts != 0 {
		t.Errorf("where there is no room: %d %v %d", branch, thicker, starts)
	}
}

// Numbers in signals by hand: that of the old end gives way to that of the new, the first word that is it and no part of a word.
func TestSignalsRenumbered(t *testing.T) {
	s := between(t, "w A:1 B:1 22")
	s.H.Terminations[0].ID, s.H.Terminations[1].ID, s.H.Terminations[2].ID = "L1", "L02", "X"
	s.Index = model.NewIndex(s.H)
	w := &model.Wire{From: model.Some("L1:1"), To: model.Some("X:1")}
	for _, c := range []struct {
		signal string
		to     map[int]int
		want   string
	}{{"Lamp 1 feed 1", map[int]int{0: 1}, "Lamp 2 feed 1"}, {"Lamp 11", map[int]int{0: 1}, "Lamp 11"}, {"Lamp 1", map[int]int{0: 2},
		"Lamp 1"},
		{"Lamp 1", map[int]int{1: 0}, "Lamp 1"}, {"", map[int]int{0: 1}, ""}, {"Lamp 1", map[int]int{2: 1}, "Lamp 1"}} {
		if got := renumbered(s, model.Some(c.signal), w, c.to); got.V != c.want {
			t.Errorf("%q by %v: %q, want %q", c.signal, c.to, got.V, c.want)
		}
	}
	w.From, w.To = w.To, w.From
	if got := renumbered(s, model.Some("1 1"), w, map[int]int{0: 1}); got.V != "2 1" {
		t.Errorf("%q", got.V)
	}
	for id, want := range map[string]string{"L1": "1", "L02": "2", "X": "", "": "", "10": "10", "L0": "0", "A1B": "", "L190": "190"} {
		if got := tailNumber(id); got != want {
			t.Errorf("%q: %q", id, got)
		}
	}
}

// What speaks against a wire, one reason at a time, in the order in which they count; each limit is still kept at equality.
func TestDoubtsByHand(t *testing.T) {
	s := between(t, "w A:1 B:1 22", "r A:2 B:2 22")
	fresh := s.Wires[0]
	fresh.Bound = model.Some(sheet.Limit{Amps: 5, Where: "heat in T"})
	fresh.Heats, fresh.Drop, fresh.Circuit = 5, model.Some[unit.Volt](0.1), 0
	s.H.Wires[0].Amps = model.Some[unit.Ampere](5)
	for _, c := range []struct {
		change func(w *sheet.Wire)
		want   string
	}{{func(*sheet.Wire) {}, ""}, {func(w *sheet.Wire) { w.Bound.Set = false }, "its current limit is not known"},
		{func(w *sheet.Wire) { w.Heats = 5.1 }, "may carry 5 A: heat in T"},
		{func(w *sheet.Wire) { w.PulseBurns = true }, "its device does not protect it, or a pulse is too much for it"},
		{func(w *sheet.Wire) { w.FeedBurns = true }, "its device does not protect it, or a pulse is too much for it"},
		{func(w *sheet.Wire) { w.Drop.Set = false }, "its voltage drop is not known"},
		{func(w *sheet.Wire) { w.Circuit = 1000 }, "drops 1000.00 V of"},
		{func(w *sheet.Wire) { w.Heats, w.FeedBurns, w.Drop.Set = 6, true, false }, "may carry 5 A: heat in T"}} {
		s.Wires[0] = fresh
		c.change(&s.Wires[0])
		if got := Doubts(s, 0); !strings.HasPrefix(got, c.want) || c.want == "" && got != "" {
			t.Errorf("%q, want %q", got, c.want)
		}
	}
	for size, want := range map[string]string{"20": "", "77": "AS22759/32 has no size 77"} {
		if got := Handles(s, 0, size); got != want {
			t.Errorf("%s: %q", size, got)
		}
	}
	s.Limits.SizeMin = "22"
	for size, want := range map[string]string{"22": "", "24": "thinner than the shop uses, 22", "20": ""} {
		if got := Handles(s, 0, size); got != want {
			t.Errorf("%s, no thinner than 22: %q", size, got)
		}
	}
	s.H.Wires[0].Amps.Set, s.Wires[0].Heats = false, 0
	if got := Doubt(s, 0, "20"); got != "no current is entered" {
		t.Errorf("%q", got)
	}
	if size, ok := SmallestThatDoes(s, 0); size != "" || ok {
		t.Errorf("%q", size)
	}
	if at, ok := DatumAt(s, 0, "elsewhere"); at != 0 || ok {
		t.Errorf("%v %v", at, ok)
	}
	if at, ok := DatumAt(s, 0, model.DatumMatingFace); at != 0 || !ok {
		t.Errorf("%v %v", at, ok)
	}
}
