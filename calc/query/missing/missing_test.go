package missing_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/query/missing"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// Each kind of need is found where just that is missing, names it, and is not found otherwise.
func TestEachKind(t *testing.T) {
	if all := missing.Of(calctest.Built(t, calctest.LacksNothing)); len(all) > 0 {
		t.Errorf("nothing is missing, but %+v", all)
	}
	without := func(text string) func(string) string {
		return func(s string) string { return strings.Replace(s, text, "", 1) }
	}
	with := func(old, text string) func(string) string {
		return func(s string) string { return strings.Replace(s, old, text, 1) }
	}
	for _, c := range []struct {
		name string
		edit func(string) string
		want string // kind, rank, what it says
	}{
		{"anything", func(string) string { return "format = 1\n" }, "anything 0 nothing is here yet: begin with a connector or a device"},
		{"no ends", without("from = \"P1:A\"\nto = \"S1\"\n"), "ends 0 wire 1 has no ends"},
		{"no second end", without("to = \"S1\"\n"), "end 0 wire 1 has no second end"},
		{"one end, capped", with("to = \"S1\"\nspec", "capped_at = \"J1\"\nspec"), ""},
		{"no first end", without("from = \"P1:B\"\n"), "end 0 wire 4 has no second end"},
		{"no size", with("size = \"20\"", "size = \"\""), "size 0 wire 1 has no size"},
		{"no spec", with("\"S1\"\nspec = \"AS22759/32\"", "\"S1\"\nspec = \"\""), "spec 0 wire 1 has no specification"},
		{"no way", without("[[branch]]\nid = \"L2\"\nfrom = \"J1\"\nto = \"LEAD\"\nlength_mm = 100.0\n"),
			"way 0 no branch from J1 to LEAD: 1 wire has no way"},
		{"nothing runs there", with("[[breakout]]", "[[termination]]\nid = \"NEW\"\n[[breakout]]"), "way 0 no branch from J1 to NEW"},
		{"one place alone", func(string) string {
			return "format = 1\n[harness]\nnumber = \"1\"\nrevision = \"A\"\n[[termination]]\nid = \"P1\"\ninsert = \"14-18\"\ngender = " +
				"\"pin\"\n"
		}, "way 0 no branch leads from P1 yet"},
		{"two places alone", func(string) string {
			return "format = 1\n[harness]\nnumber = \"1\"\nrevision = \"A\"\n[[termination]]\nid = \"P1\"\n[[termination]]\nid = \"P2\"\n"
		}, "way 0 no branch from P1 to P2"},
		{"no length", with("100.0", "0.0"), "length 0 the length of L2 is not known yet"},
		{"no lengths", func(s string) string { return strings.NewReplacer("100.0", "0.0", "200.0", "0.0").Replace(s) },
			"length 0 the lengths of 2 branches are not known yet: L1, L2"},
		{"unit without wires", with("wires = [\"4\", \"5\"]", "wires = []"), "unit wires 0 unit U1 has no wires"},
		{"unit of five", func(s string) string {
			return strings.Replace(strings.Replace(s, "wires = [\"4\", \"5\"]", "wires = [\"4\", \"5\", \"6\", \"7\", \"8\"]", 1),
				"[[unit]]", more(6, 7, 8)+
					"[[unit]]", 1)
		}, "unit OD 0 the OD of unit U1 is not known"},
		{"filler without its size", func(s string) string {
			return strings.Replace(s, "  of = [\"1\"]\n  fillers = 5\n  filler_mm = 1.27\n", "  fillers = 5\n", 1)
		}, "filler size 0 the size of the filler in T1 is not known"},
		{"unwired", with("to = \"LEAD:1\"", "to = \"P1:F\""), "wire 1 no wire ends at LEAD"},
		{"contacts", without("contacts = { \"20\" = [\"1\", \"2\", \"3\"] }\n"), "contacts 1 the contact size of ECU is not known"},
		{"some contacts", with("{ \"20\" = [\"1\", \"2\", \"3\"] }", "{ \"20\" = [\"1\"] }"),
			"contacts 1 the contact size of ECU is not known"},
		{"gender", without("gender = \"pin\"\n"), "gender 1 the gender of P1 is not known: pin or socket"},
		{"current", without("amps = 2.0\n"), "current 1 the current of wire 1 is not known"},
		{"currents", func(s string) string { return strings.ReplaceAll(s, "amps = 1.0\n", "") },
			"current 1 the currents of 2 wires are not known: 2, 3"},
		{"current of a spare", func(s string) string {
			return strings.Replace(s, "amps = 0.0\nrole = \"signal\"", "role = \"spare\"", 1)
		}, ""},
		{"supply", without("supply_v = 13.8\n"), "supply 1 the supply voltage is not known"},
		{"supply, without a feed", func(s string) string {
			i, j := strings.Index(s, "[[feed]]"), strings.Index(s, "[[branch]]")
			return strings.Replace(s[:i]+s[j:], "supply_v = 13.8\n", "", 1)
		}, ""},
		{"device", without("device = \"electronic\"\n"), "device 1 feed F1 has no device or no rating"},
		{"rating", without("amps = 5.0\n"), "device 1 feed F1 has no device or no rating"},
		{"trip", without("trip_s = 0.01\n"), "trip 1 how fast feed F1 opens a short is not known"},
		{"dead short", without("short_a = 400.0\n"), "short 1 the current of the supply in a dead short is not known"},
		{"cover", without("  thick_mm = 0.5\n"), "cover 1 a cover on L1 has no part and no thickness"},
		{"number", without("number = \"A1\"\n"), "number 2 the harness has no number"},
		{"revision", without("revision = \"A\"\n"), "number 2 the harness has no revision"},
		{"number and revision", without("number = \"A1\"\nrevision = \"A\"\n"), "number 2 the harness has no number and no revision"},
		{"colour", without("colour = \"5\"\n"), "colour 2 wire 4 has no colour"},
	} {
		text := c.edit(calctest.LacksNothing)
		if text == calctest.LacksNothing {
			t.Fatalf("%s: the edit changes nothing", c.name)
		}
		s := calctest.Built(t, text)
		var got []string
		for _, n := range missing.Of(s) {
			got = append(got, fmt.Sprint(n.Kind, " ", n.Rank, " ", n.Says))
			for _, rule := range n.Rules {
				if len(calctest.SaidOf(s, rule)) == 0 {
					t.Errorf("%s: no open point %s says it", c.name, rule)
				}
			}
		}
		if strings.Join(got, "; ") != c.want {
			t.Errorf("%s:\n got %q\nwant %q", c.name, got, c.want)
		}
	}
}

// more are wires like 4, from P1 to J1's lead.
func more(ids ...int) string {
	out := ""
	for n, id := range ids {
		out += fmt.Sprintf("[[wire]]\nid = \"%d\"\nfrom = \"P1:%c\"\nto = \"ECU:2\"\nspec = \"AS22759/32\"\nsize = \"22\"\ncolour = "+
			"\"1\"\nrole = \"data\"\n",
			id, 'H'+n)
	}
	return out
}

// Needs come worst first, and of one rank in the order of the work.
func TestWorstFirst(t *testing.T) {
	text := strings.NewReplacer("number = \"A1\"\n", "", "amps = 2.0\n", "", "100.0", "0.0",
		"to = \"ECU:1\"\n", "").Replace(calctest.LacksNothing)
	var got []missing.Kind
	for _, n := range missing.Of(calctest.Built(t, text)) {
		got = append(got, n.Kind)
	}
	if want := []missing.Kind{missing.End, missing.Length, missing.Current, missing.Number}; !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
}

// removal takes one value of a kind from a harness: from which thing, of how many, pick says.
type removal struct {
	kind missing.Kind
	take func(h *model.Harness, pick func(n int) int) (out *model.Harness, id string, ok bool)
}

// removals take one value out of a harness: what is then missing, and of which thing. ok is false
// where the harness does not have it.
var removals = []removal{
	{missing.Size, wire(func(w *model.Wire) bool { w.Size = ""; return true })},
	{missing.Spec, wire(func(w *model.Wire) bool { w.Spec = ""; return true })},
	{missing.Colour, wire(func(w *model.Wire) bool { w.Colour = model.Opt[string]{}; return true })},
	{missing.End, wire(func(w *model.Wire) bool {
		w.To = model.Opt[string]{}
		return w.From.V != "" && w.CappedAt.V == ""
	})},
	{missing.End, wire(func(w *model.Wire) bool {
		w.From = model.Opt[string]{}
		return w.To.V != "" && w.CappedAt.V == ""
	})},
	{missing.Current, wire(func(w *model.Wire) bool {
		w.Amps = model.Opt[unit.Ampere]{}
		return w.Role.V != model.RoleSpare && w.Role.V != model.RoleData
	})},
	{missing.Length, func(h *model.Harness, pick func(n int) int) (*model.Harness, string, bool) {
		i := pick(len(h.Branches))
		return h.EditBranch(i, func(b *model.Branch) { b.LengthMM = 0 }), h.Branches[i].ID, true
	}},
	{missing.Gender, termination(func(t *model.Termination) bool {
		had := t.Gender.V != "" && t.Insert.V != ""
		t.Gender = model.Opt[model.Gender]{}
		return had
	})},
	{missing.Contacts, termination(func(t *model.Termination) bool {
		had := t.Insert.V == "" && len(t.Contacts) > 0 && len(t.Cavities) > 1
		t.Contacts = nil
		return had
	})},
	{missing.Number, func(h *model.Harness, pick func(n int) int) (*model.Harness, string, bool) {
		n := *h
		*[]*model.Opt[string]{&n.Head.Number, &n.Head.Revision}[pick(2)] = model.Opt[string]{}
		return &n, "", true
	}},
}

func wire(take func(w *model.Wire) bool) func(h *model.Harness, pick func(n int) int) (*model.Harness, string, bool) {
	return func(h *model.Harness, pick func(n int) int) (*model.Harness, string, bool) {
		i, ok := pick(len(h.Wires)), false
		return h.EditWire(i, func(w *model.Wire) { ok = take(w) }), h.Wires[i].ID, ok
	}
}

func termination(take func(t *model.Termination) bool) func(h *model.Harness, pick func(n int) int) (*model.Harness, string, bool) {
	return func(h *model.Harness, pick func(n int) int) (*model.Harness, string, bool) {
		i, ok := pick(len(h.Terminations)), false
		return h.EditTermination(i, func(t *model.Termination) { ok = take(t) }), h.Terminations[i].ID, ok
	}
}

// The demonstration harness lacks nothing; whatever one value is taken from it, the need names that
// thing and no other. A wire that loses an end may leave an end that no wire ends at.
func TestOneValueTaken(t *testing.T) {
	s := calctest.Laid(t, "demo")
	if all := missing.Of(s); len(all) > 0 {
		t.Fatalf("the demonstration harness lacks %+v", all)
	}
	taken := map[missing.Kind]int{}
	try := func(t rapid.TB, r removal, pick func(n int) int) {
		h, id, ok := r.take(s.H, pick)
		serves := func(w model.Wire) bool { return w.Return.V == id } // then id carries what comes through w
		if !ok || r.kind == missing.Current && slices.ContainsFunc(h.Wires, serves) {
			return // it has none
		}
		taken[r.kind]++
		got := calc.Build(h, s.Base, s)
		var lost []string // ends that only that wire ended at
		if k, is := s.Index.Wire[id]; is && r.kind == missing.End {
			for _, text := range []string{s.H.Wires[k].From.V, s.H.Wires[k].To.V} {
				if e, _ := s.Index.End(text); e.Termination != "" && ended(got, e.Termination) == 0 {
					lost = append(lost, e.Termination)
				}
			}
		}
		for _, n := range missing.Of(got) {
			switch {
			case n.Kind == r.kind && (n.Of == missing.Harness || slices.Equal(n.IDs, []string{id}) && strings.Contains(n.Says, id)):
				id = "\x00"
			case n.Kind == missing.Unwired && slices.Equal(n.IDs, lost):
			default:
				t.Errorf("%s taken from %q: %+v", r.kind, id, n)
			}
		}
		if id != "\x00" {
			t.Errorf("%s taken from %q is not missed", r.kind, id)
		}
	}
	for _, r := range removals { // each once, then any
		try(t, r, func(n int) int { return n / 2 })
	}
	for _, k := range []missing.Kind{missing.Size, missing.End, missing.Length} {
		if taken[k] == 0 {
			t.Errorf("%s was never taken", k)
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		try(t, rapid.SampledFrom(removals).Draw(t, "what"), func(n int) int { return rapid.IntRange(0, n-1).Draw(t, "which") })
	})
}

// ended counts the wires that end at a termination.
func ended(s *sheet.Sheet, id string) int {
	n := 0
	for i := range s.H.Wires {
		for _, text := range []string{s.H.Wires[i].From.V, s.H.Wires[i].To.V} {
			if e, _ := s.Index.End(text); e.Termination == id {
				n++
			}
		}
	}
	return n
}
