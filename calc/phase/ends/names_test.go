package ends_test

import (
	"strings"
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/sheet"
)

// A file written when the rule still named these inserts loads. A wire in a cavity that the
// part has is taken; in one that only the rule had it is a stop, which says what the part has.
// Sources of the names: those of the catalogue.
func TestCavitiesByTheDrawing(t *testing.T) {
	for _, c := range []struct{ insert, real, ruleOnly, has string }{
		{"11-54", "A", "1", "Insert 11-54 has A to D"},
		{"19-18", "U", "18", "has A to H, J to N, P, R to U"},
		{"21-79", "V", "19", "P, R to V"},
		{"21-29", "27", "d", "has 1 to 27"},
		{"25-17", "w", "42", "m, n, p to w"},
		{"25-20", "7", "g", "1 to 7"},
		{"21-39", "i", "s", "a to k, m, n, p to r"},
		{"21-41", "i", "u", "a to k, m, n, p to t"},
		{"23-53", "HH", "j", "AA to HH"},
		{"23-55", "i", "JJ", "AA to HH"},
		{"25-4", "LL", "j", "AA to HH, JJ to LL"},
		{"24-43", "x", "j", "a to h, k, m, n, p to x"},
		{"25-61", "i", "RR", "AA to HH, JJ to NN, PP"},
		{"25-46", "AA", "j", "a to h, k"},
		{"25-90", "AA", "j", "a to h, k"},
		{"24-37", "r", "j", "a to h, k"},
		{"7-D2", "B", "2", "has A, B"},
		{"7-D3", "C", "3", "has A to C"},
		{"7-D4", "D", "4", "has A to D"},
	} {
		s := calctest.InCavities(t, "insert = \""+c.insert+"\"", "22 "+c.real, "22 "+c.ruleOnly)
		var said []sheet.Snag
		for _, g := range s.Snags {
			if g.Rule == "cavity.none" {
				said = append(said, g)
			}
		}
		if len(said) != 1 || said[0].Where != "w1" || said[0].Level != sheet.Stop || !strings.Contains(said[0].Says, c.has) ||
			!strings.HasPrefix(said[0].Says, "A has no cavity \""+c.ruleOnly+"\". Insert "+c.insert) ||
			strings.Contains(said[0].Says, "memory") {
			t.Errorf("%s: %+v", c.insert, said)
		}
		if got := s.Terms[0].State[c.real].Wires; len(got) != 1 {
			t.Errorf("%s: %s holds %v", c.insert, c.real, got)
		}
	}
}

// A file that keeps the numbers of its own drawing says so by other names, and its ends go where
// they mean.
func TestOldNamesAsOtherNames(t *testing.T) {
	s := calctest.InCavities(t, "insert = \"11-54\"\naliases = { A = [\"1\"], D = [\"4\"] }", "22 1", "22 4")
	if got := noneSaid(s); len(got) > 0 || len(s.Terms[0].State["D"].Wires) != 1 {
		t.Errorf("%q, D holds %v", got, s.Terms[0].State["D"].Wires)
	}
	s = calctest.InCavities(t, "insert = \"11-54\"\naliases = { 1 = [\"A1\"] }", "22 A")
	if g, ok := calctest.Snag(s, "cavity.alias", "A"); !ok || !strings.HasSuffix(g.Says, "Insert 11-54 has A to D") {
		t.Errorf("%+v", s.Snags)
	}
}

// Many wires of one connector that is named wrongly are one line of check, every one with its place.
func TestWrongNamesAreOneLine(t *testing.T) {
	s := calctest.InCavities(t, `insert = "11-54"`, "22 1", "22 2", "22 3", "22 4")
	lines := 0
	for _, g := range sheet.Grouped(s.Snags) {
		if g.Rule == "cavity.none" {
			lines++
			if g.Count != 4 {
				t.Errorf("%+v", g)
			}
		}
	}
	if lines != 1 {
		t.Errorf("%d lines: %+v", lines, s.Snags)
	}
}

// Where the names have no source it is said once for the connector, and with the stop; a list of
// cavities in the file, or a source, and nothing is said.
func TestNamesFromMemoryAreSaid(t *testing.T) {
	for _, c := range []struct {
		term string
		note bool
	}{
		{`insert = "14-37"`, true}, // 37 × 22M: no drawing of it was read
		{`insert = "14-35"`, false},
		{"insert = \"14-37\"\ncavities = [\"1\", \"2\"]", false},
		{`cavities = ["1", "2"]`, false},
	} {
		s := calctest.InCavities(t, c.term, "22 1", "24 2")
		g, said := calctest.Snag(s, "insert.names", "A")
		if said != c.note || said && (g.Level != sheet.Note || !strings.Contains(g.Says, "insert 14-37 are from memory")) {
			t.Errorf("%s: %+v", c.term, s.Snags)
		}
	}
	s := calctest.InCavities(t, `insert = "14-37"`, "24 A")
	if g, ok := calctest.Snag(s, "cavity.none", "w0"); !ok || g.Level != sheet.Stop ||
		g.Says != `A has no cavity "A". Insert 14-37 has 1 to 37. These names are from memory: where the part has others, list its `+
			`cavities in the file` {
		t.Errorf("%+v", s.Snags)
	}
}

// noneSaid is what is said of cavities that are not there.
func noneSaid(s *sheet.Sheet) []string {
	var out []string
	for _, g := range s.Snags {
		if g.Rule == "cavity.none" {
			out = append(out, g.Says)
		}
	}
	return out
}

// What a termination reserves or sizes must be there too: its names follow the drawing.
func TestReservedAndSizedByTheDrawing(t *testing.T) {
	s := calctest.InCavities(t, "insert = \"11-54\"\nreserved = [\"4\"]\ncontacts = { \"22D\" = [\"A\", \"1\", \"2\", \"3\"] }", "22 A")
	got := strings.Join(noneSaid(s), "\n")
	for _, want := range []string{
		`It reserves cavity "4", which it does not have. Insert 11-54 has A to D`,
		`It gives contact size 22D to 1 to 3, which it does not have. Insert 11-54 has A to D`,
	} {
		if !strings.Contains(got, want) {
			t.Errorf("%q is not said:\n%s", want, got)
		}
	}
	s = calctest.InCavities(t, "cavities = [\"1\", \"2\"]\nreserved = [\"3\"]", "22 1")
	if got := noneSaid(s); len(got) != 1 || !strings.Contains(got[0], "The file lists 1, 2") {
		t.Errorf("%q", got)
	}
}

// A cavity of a mixed insert is judged by its own contact: 16 AWG goes into P of 15-15 and into
// none of its other cavities, 24 AWG the other way round. Contacts that no catalogue has are named.
// Source of the sizes: a maker's arrangement chart put right by MIL-STD-1560.
func TestMixedInsertsAreJudgedByCavity(t *testing.T) {
	s := calctest.InCavities(t, `insert = "15-15"`, "16 P", "16 A", "24 B")
	var said []string
	for _, g := range s.Snags {
		if g.Rule == "cavity.barrel" {
			said = append(said, g.Where)
		}
	}
	if strings.Join(said, " ") != "A:A" {
		t.Errorf("%q: %+v", said, s.Snags)
	}
	if g, ok := calctest.Snag(s, "contact.part", "A"); ok {
		t.Errorf("%+v", g)
	}
	s = calctest.InCavities(t, `insert = "25-7"`, "22 1", "22 25", "22 75")
	if g, ok := calctest.Snag(s, "contact.part", "A"); !ok || g.Level != sheet.Note ||
		!strings.Contains(g.Says, "size 8 twinax are in no catalogue") {
		t.Errorf("%+v", s.Snags)
	}
	s = calctest.InCavities(t, `insert = "25-7"`, "22 1")
	if g, ok := calctest.Snag(s, "contact.part", ""); ok {
		t.Errorf("no wire stands in one: %+v", g)
	}
}
