package inserts

import (
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// crowded is a connector P with cavities 3, 2 and 1, in this order, and Z, with wires, each as "id end end size"; more is put behind.
func crowded(more string, wires ...string) string {
	text := "format = 1\n[[termination]]\nid = \"P\"\ncavities = [\"3\", \"2\", \"1\"]\nreserved = [\"1\"]\n" +
		"[[termination]]\nid = \"Z\"\n"
	for _, w := range wires {
		f := strings.Fields(w)
		text += fmt.Sprintf("[[wire]]\nid = %q\nfrom = %q\nto = %q\nspec = \"AS22759/32\"\nsize = %q\n", f[0], f[1], f[2], f[3])
	}
	return text + more + "[[branch]]\nid = \"T\"\nfrom = \"P\"\nto = \"Z\"\nlength_mm = 300.0\n"
}

// What is in use stands in the order of the termination, what it lacks behind; of several wires in one cavity the thickest counts, of
// those as thick the first; a wire goes before a drain, and a drain before a place kept free.
func TestHoldersInOrder(t *testing.T) {
	made := func(id, wires, ends string) string {
		return fmt.Sprintf("[[unit]]\nid = %q\nwires = [%s]\nshield = true\n%s\n", id, wires, ends)
	}
	for _, c := range []struct{ text, want, shared string }{
		{crowded("", "a P:2 Z:1 22", "b Z:2 P:2 20", "c P:2 Z:3 22", "d P:9 Z:4 24", "e P:3 Z:5 24"),
			"3 24 0.9 wire, 2 20 1.3 wire, 1 kept, 9 24 0.9 wire", "2"},
		{crowded("", "a P:2 P:2 22", "b Z:2 P:3 20", "c P:3 P:2 22"), "3 20 1.3 wire, 2 22 1.1 wire, 1 kept", "2 3"},
		{crowded(made("U", `"a", "b"`, "drain_from = \"P:1\"\ndrain_to = \"Z:4\"")+
			made("V", `"c", "d"`, "drain_from = \"Z:9\"\ndrain_to = \"P:8\""),
			"a P:2 Z:1 22", "b P:3 Z:2 22", "c P:2 Z:3 24", "d P:3 Z:5 20"),
			"3 20 1.3 wire, 2 22 1.1 wire, 1 22 0.0 drain, 8 24 0.0 drain", "2 3"},
		{crowded(made("U", `"a", "b"`, "drain_from = \"P:2\"\ndrain_to = \"P:1\"")+made("V", `"c", "d"`, "drain_from = \"P:1\""),
			"a P:2 Z:1 22", "b Z:1 Z:2 22", "c Z:6 Z:3 24", "d Z:7 Z:5 20"),
			"2 22 1.1 wire, 1 24 0.0 drain", "2 1"},
	} {
		s := calctest.Built(t, c.text)
		var got []string
		for _, h := range holders(s, 0) {
			text := fmt.Sprintf("%s %s %.1f %s", h.cavity, h.wire.Size, float64(h.wire.OverMM), [...]string{"wire", "drain",
				"kept"}[h.role])
			if h.role == ForSpare {
				text = h.cavity + " kept"
			} else if h.wire.Count != 1 || h.wire.Spec != "AS22759/32" {
				t.Errorf("%+v", h)
			}
			got = append(got, text)
		}
		if text := strings.Join(got, ", "); text != c.want {
			t.Errorf("got %s\nwant %s", text, c.want)
		}
		if got := strings.Join(Shared(s, 0), " "); got != c.shared {
			t.Errorf("%s are shared, want %s", got, c.shared)
		}
	}
	// Of two as thick in one cavity the first: by its insulation it is told apart.
	s := calctest.Built(t, strings.Replace(crowded("", "a P:2 Z:1 22", "b P:2 Z:2 22"), "AS22759/32", "AS22759/34", 1))
	if got := holders(s, 0)[0]; got.wire.Spec != "AS22759/34" {
		t.Errorf("%+v", got)
	}
}

// What is wanted is told apart by specification, gauge and diameter; that of which there is most comes first, else the order stays.
func TestWantedBySort(t *testing.T) {
	at := func(role Role, spec, size string, over unit.Millimetre) holder {
		return holder{role: role, wire: Wire{Spec: spec, Size: size, OverMM: over, Count: 1}}
	}
	w := wantOf([]holder{at(ForWire, "x", "22", 0), at(ForDrain, "x", "22", 0), at(ForWire, "y", "22", 0), at(ForSpare, "", "", 0),
		at(ForWire, "x", "20", 0), at(ForWire, "x", "22", 1), at(ForWire, "x", "20", 0), at(ForDrain, "x", "22", 0), at(ForDrain, "x",
			"20", 0),
		at(ForSpare, "", "", 0), at(ForWire, "x", "22", 1), at(ForWire, "x", "20", 0)})
	want := "[{x 20 0 3} {x 22 1 2} {x 22 0 1} {y 22 0 1}] [{x 22 0 2} {x 20 0 1}] 2"
	if got := fmt.Sprint(w.Wires, w.Drains, w.Spares); got != want {
		t.Errorf("%s, want %s", got, want)
	}
}

// Which cavity each becomes, by hand. s takes 24 and 22 AWG, m 24 to 16, other is in no catalogue: it takes anything.
func TestPlacesTaken(t *testing.T) {
	contacts := map[string]catalogue.Contact{
		"s": {Size: "s", LargestAWG: "22", SmallestAWG: "24", WellBoreMM: 1},
		"m": {Size: "m", LargestAWG: "16", SmallestAWG: "24", WellBoreMM: 2}}
	g := func(size string, count int, names ...string) catalogue.InsertContacts {
		return catalogue.InsertContacts{Size: size, Count: count, Cavities: names}
	}
	for _, c := range []struct {
		name   string
		cav    string
		groups []catalogue.InsertContacts
		wires  []string
		want   string // "" where there is no place
		mixed  bool
	}{
		{"all keep their names where the contact takes them", "1 2 3", []catalogue.InsertContacts{g("s", 2, "2", "3"), g("m", 1, "1")},
			[]string{"a P:2 Z:1 22", "b P:3 Z:2 24"}, "1>1 2>2 3>3", false},
		{"the thick one moves, the thin one stays", "1 2 3 4", []catalogue.InsertContacts{g("s", 2, "2", "3"), g("m", 2, "1", "4")},
			[]string{"a P:2 Z:1 16", "b P:3 Z:2 24"}, "1>1 2>4 3>3", false},
		{"the thin one makes room for the thick one", "1 2 3", []catalogue.InsertContacts{g("s", 2, "1", "2"), g("m", 1, "3")},
			[]string{"a P:2 Z:1 16", "b P:3 Z:2 24"}, "1>2 2>3 3>1", false},
		{"no place for two thick ones", "1 2 3", []catalogue.InsertContacts{g("s", 2, "1", "2"), g("m", 1, "3")},
			[]string{"a P:2 Z:1 16", "b P:3 Z:2 16"}, "", false},
		{"where no cavity is known by its size, names stay, and others take what nobody asks for", "A 2 B 1",
			[]catalogue.InsertContacts{g("s", 2), g("m", 2)}, []string{"a P:3 Z:1 16", "b P:2 Z:2 24"}, "1>1 2>2 3>A", true},
		{"in order", "A B C", []catalogue.InsertContacts{g("s", 2), g("m", 1)}, []string{"a P:2 Z:1 16", "b P:3 Z:2 24"},
			"1>C 2>B 3>A", true},
		{"two too thick for those that are known", "A B C", []catalogue.InsertContacts{g("s", 2), g("m", 1)},
			[]string{"a P:3 Z:1 16", "b P:2 Z:2 16"}, "", true},
		{"a contact that nobody knows takes anything", "1 2 3", []catalogue.InsertContacts{g("s", 2, "1", "3"), g("other", 1, "2")},
			[]string{"a P:2 Z:1 22", "b P:3 Z:2 24"}, "1>1 2>2 3>3", false},
		{"also what is too thick for the others", "1 2 3", []catalogue.InsertContacts{g("s", 2, "1", "2"), g("other", 1, "3")},
			[]string{"a P:2 Z:1 16", "b P:3 Z:2 24"}, "1>2 2>3 3>1", false},
	} {
		s := calctest.Built(t, crowded("", c.wires...))
		own := catalogue.Insert{ID: "own", Cavities: strings.Fields(c.cav), Contacts: c.groups}
		s = calc.Build(s.H, catalogue.Merge(s.Base, &catalogue.Catalogue{Contacts: contacts,
			Inserts: map[string]catalogue.Insert{"own": own}}), nil)
		got, err := Take(s, 0, "own")
		if c.want == "" {
			if err == nil || got.H != nil {
				t.Errorf("%s: %v %+v", c.name, err, got)
			}
			continue
		}
		if err != nil {
			t.Errorf("%s: %v", c.name, err)
			continue
		}
		to, kept := map[string]string{"1": got.H.Terminations[0].Reserved[0]}, 0
		for k, w := range s.H.Wires {
			to[strings.TrimPrefix(w.From.V, "P:")] = strings.TrimPrefix(got.H.Wires[k].From.V, "P:")
		}
		var all []string
		for _, was := range slices.Sorted(maps.Keys(to)) {
			all = append(all, was+">"+to[was])
			if was == to[was] {
				kept++
			}
		}
		if text := strings.Join(all, " "); text != c.want || got.Mixed != c.mixed || got.Kept != kept || got.Moved != len(to)-kept {
			t.Errorf("%s: %s, want %s; %+v", c.name, text, c.want, got)
		}
	}
}
