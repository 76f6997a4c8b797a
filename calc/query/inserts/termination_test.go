package inserts_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/query/inserts"
	"contralay/calc/sheet"
	"contralay/model"
)

// loom is a connector P with wires from P to Q, a shielded pair whose drain ends in P, one cavity that
// is kept free, and another name for one.
const loom = `format = 1
[[termination]]
id = "P"
%s
[[termination]]
id = "Q"
cavities = ["1", "2", "3", "4", "5"]
contacts = { "20" = ["1", "2", "3", "4"], "16" = ["5"] }
[[wire]]
id = "a"
from = "P:A"
to = "Q:1"
spec = "AS22759/32"
size = "20"
[[wire]]
id = "b"
from = "Q:2"
to = "P:B"
spec = "AS22759/32"
size = "22"
[[wire]]
id = "c"
from = "P:C"
to = "Q:3"
spec = "AS22759/32"
size = "22"
[[unit]]
id = "U"
wires = ["b", "c"]
build = "pair"
shield = true
drain_from = "P:D"
drain_to = "cut"
[[branch]]
id = "T"
from = "P"
to = "Q"
length_mm = 300.0
`

// ends are where the wires and the drain of the loom stand in P, what it keeps free, and its names.
func ends(h *model.Harness) string {
	t := &h.Terminations[0]
	return strings.Join([]string{h.Wires[0].From.V, h.Wires[1].To.V, h.Wires[2].From.V, h.Units[0].DrainFrom.V,
		fmt.Sprint(t.Reserved), fmt.Sprint(t.Aliases)}, " ")
}

// What must go into a connector: wires by size, the drain that ends there, the cavity kept free.
func TestOfATermination(t *testing.T) {
	s := calctest.Built(t, fmt.Sprintf(loom, "insert = \"10-98\"\ngender = \"pin\"\nreserved = [\"F\"]"))
	w := inserts.Of(s, 0)
	var got []string
	for _, x := range w.Wires {
		got = append(got, fmt.Sprintf("%d x %s of %.2f", x.Count, x.Size, float64(x.OverMM)))
	}
	for _, x := range w.Drains {
		got = append(got, fmt.Sprintf("%d drain of %s", x.Count, x.Size))
	}
	if text := strings.Join(got, ", "); text != "2 x 22 of 1.09, 1 x 20 of 1.27, 1 drain of 22" || w.Spares != 1 || w.Cavities() != 5 {
		t.Errorf("%s and %d spares, %d cavities", text, w.Spares, w.Cavities())
	}
	// The other end has no drain and nothing reserved; the shield is cut there.
	if w := inserts.Of(s, 1); w.Cavities() != 3 || len(w.Drains) != 0 {
		t.Errorf("%+v", w)
	}
}

// Another arrangement: names stay where it has them and the contact takes the wire, the rest goes in
// order. Which cavity of 14-97 has which size was read off the table of arrangements: C, G, L and M
// are of size 16, for which 22 AWG is too thin.
func TestTake(t *testing.T) {
	for _, c := range []struct{ name, end, insert, want, counts string }{
		{"the same letters in a larger one", "insert = \"10-98\"\nreserved = [\"F\"]\naliases = { A = [\"+\"] }", "12-98",
			"P:A P:B P:C P:D [F] map[A:[+]]", "5 kept, 0 moved"},
		{"letters become numbers, in order", "insert = \"10-98\"\nreserved = [\"F\"]\naliases = { A = [\"+\"], E = [\"x\"] }", "11-54", "",
			""},
		{"numbers, in order", "insert = \"10-98\"\nreserved = [\"F\"]\naliases = { A = [\"+\"], E = [\"x\"] }", "21-29",
			"P:1 P:2 P:3 P:4 [5] map[1:[+]]", "0 kept, 5 moved, 1 names gone"},
		{"too thin for the contact of its name", "insert = \"10-98\"\nreserved = [\"F\"]", "14-97", "P:A P:B P:E P:D [F] map[]",
			"4 kept, 1 moved"},
		{"its own cavities go", "cavities = [\"A\", \"B\", \"C\", \"D\"]\ncontacts = { \"20\" = [\"A\", \"B\", \"C\", \"D\"] }\nseal_mm " +
			"= [1.0, 2.0]",
			"10-5", "P:A P:B P:C P:D [] map[]", "4 kept, 0 moved"},
		{"a flying lead becomes a connector", "", "10-4", "P:A P:B P:C P:D [] map[]", "4 kept, 0 moved"},
	} {
		s := calctest.Built(t, fmt.Sprintf(loom, c.end))
		before := ends(s.H)
		got, err := inserts.Take(s, 0, c.insert)
		if c.want == "" {
			if err == nil || !strings.Contains(err.Error(), "11-54 has no place for 1 x 20 AWG") || ends(s.H) != before {
				t.Errorf("%s: %v", c.name, err)
			}
			continue
		}
		if err != nil {
			t.Errorf("%s: %v", c.name, err)
			continue
		}
		counts := fmt.Sprintf("%d kept, %d moved", got.Kept, got.Moved)
		if got.Names > 0 {
			counts += fmt.Sprintf(", %d names gone", got.Names)
		}
		x := &got.H.Terminations[0]
		if ends(got.H) != c.want || counts != c.counts || x.Insert.V != c.insert || x.Cavities != nil || x.Contacts != nil ||
			x.SealMM != nil {
			t.Errorf("%s: %s, %s\nwant %s, %s\n%+v", c.name, ends(got.H), counts, c.want, c.counts, x)
		}
		if ends(s.H) != before {
			t.Errorf("%s: the harness before has changed: %s", c.name, ends(s.H))
		}
	}
}

// Whatever arrangement is ranked can be taken: then no cavity is missing or taken twice, no wire is
// too thick or too thin, and the wires that were apart still are.
func TestWhateverIsRankedCanBeTaken(t *testing.T) {
	for _, file := range []string{"demo.toml", "example.toml"} {
		h := calctest.Load(t, file)
		s := calc.Build(h, calctest.Catalogue(t), nil)
		for k := range h.Terminations {
			for n, f := range inserts.Rank(s.Cat, inserts.Of(s, k)).Fits {
				if n%6 != 0 || len(inserts.Shared(s, k)) > 0 {
					continue
				}
				got, err := inserts.Take(s, k, f.Insert.ID)
				if err != nil {
					t.Errorf("%s %s: %v", file, h.Terminations[k].ID, err)
					continue
				}
				after := calc.Build(got.H, s.Cat, s)
				bad := func(g sheet.Snag) bool {
					return strings.HasPrefix(g.Rule, "cavity.") && g.Level == sheet.Stop && strings.HasPrefix(g.Where, h.Terminations[k].ID)
				}
				for _, g := range after.Snags {
					if bad(g) && !slices.ContainsFunc(s.Snags, bad) {
						t.Errorf("%s %s as %s: %+v", file, h.Terminations[k].ID, f.Insert.ID, g)
					}
				}
				if a, b := s.Terms[k].Used+s.Terms[k].Spare+s.Terms[k].Reserved,
					after.Terms[k].Used+after.Terms[k].Spare+after.Terms[k].Reserved; a != b {
					t.Errorf("%s %s as %s: %d cavities in use, before %d", file, h.Terminations[k].ID, f.Insert.ID, b, a)
				}
			}
		}
	}
}

// Where the independent list names a cavity that has another name now, it is said: the list itself is
// nobody's to change.
func TestTakeLeavesTheList(t *testing.T) {
	s := calctest.Built(t, fmt.Sprintf(loom, "insert = \"10-98\"")+"[[listed]]\nends = [\"P:A\", \"Q:1\"]\n")
	a, err1 := inserts.Take(s, 0, "21-29")
	b, err2 := inserts.Take(s, 0, "12-98")
	if err1 != nil || err2 != nil || !a.Listed || b.Listed || a.H.Listed[0].Ends[0] != "P:A" {
		t.Errorf("%v %v: %v, %v", err1, err2, a.Listed, b.Listed)
	}
}
