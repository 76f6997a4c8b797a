package lists_test

import (
	"fmt"
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/query/lists"
)

// What every cavity rings to, by hand: a pair over a splice, its shield at a cavity of its own, at the splice, and at a shell; a wire
// alone.
func TestShieldsRing(t *testing.T) {
	wire := func(id, from, to string) string {
		return fmt.Sprintf("[[wire]]\nid = %q\nfrom = %q\nto = %q\nspec = \"AS22759/32\"\nsize = \"22\"\n", id, from, to)
	}
	s := calctest.Built(t, "format = 1\n[[termination]]\nid = \"P\"\ncavities = [\"1\", \"2\", \"3\", \"4\", "+
		"\"5\"]\n[[termination]]\nid = \"Q\"\n"+
		"cavities = [\"1\", \"2\", \"3\"]\n[[breakout]]\nid = \"J\"\n[[splice]]\nid = \"S\"\nat = \"J\"\n"+
		wire("a", "P:1", "Q:1")+wire("b", "P:2", "Q:2")+wire("c", "P:4", "S")+wire("d", "S", "Q:3")+wire("e", "P:5", "")+
		"[[unit]]\nid = \"U\"\nwires = [\"a\", \"b\"]\nshield = true\ndrain_from = \"P:3\"\ndrain_to = \"S\"\n"+
		"[[unit]]\nid = \"V\"\nwires = [\"c\", \"d\"]\nshield = true\ndrain_from = \"shell\"\ndrain_to = \"P:3\"\n"+
		"[[branch]]\nid = \"T\"\nfrom = \"P\"\nto = \"J\"\nlength_mm = 300.0\n[[branch]]\nid = \"L\"\nfrom = \"J\"\nto = "+
		"\"Q\"\nlength_mm = 200.0\n")
	got := map[string]string{}
	for _, r := range lists.RingOut(s) {
		key, says := s.H.Terminations[r.Termination].ID+":"+r.Cavity, fmt.Sprintf("wire %d drain %q:", r.Wire, r.Drain)
		for _, to := range r.To {
			says += fmt.Sprintf(" %s%v", to.End, to.Via)
			if to.Ohm.Set && to.End[0] == 's' {
				t.Errorf("%s: a shield has %v ohm", key, to.Ohm.V)
			}
		}
		got[key] = says
	}
	for key, want := range map[string]string{
		"P:1": `wire 0 drain "": Q:1[a]`, "Q:2": `wire 1 drain "": P:2[b]`, "P:3": `wire -1 drain "V": shield of U[] shield of V[]`,
		"P:4": `wire 2 drain "": shield of U[c] Q:3[c d]`, "Q:3": `wire 3 drain "": shield of U[d] P:4[d c]`, "P:5": `wire 4 drain "":`,
	} {
		if got[key] != want {
			t.Errorf("%s rings: %s\nwant %s", key, got[key], want)
		}
	}
	if len(got) != 8 {
		t.Errorf("%d cavities ring", len(got))
	}
}
