package offer_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/query/offer"
)

// A bank of which one device alone is wired is no bank to be wired like another, wherever its devices stand in the file.
func TestWiredBankIsNotOffered(t *testing.T) {
	of := func(id string) string { return "[[termination]]\nid = \"" + id + "\"\ncavities = [\"1\", \"2\"]\n" }
	text := strings.Replace(twoBanks, of("INJ1")+of("INJ2")+of("INJ3")+of("INJ4"), of("INJ3")+of("INJ4")+of("INJ2")+of("INJ1"), 1)
	if text == twoBanks {
		t.Fatal("the devices are not in their order")
	}
	text += "[[wire]]\nid = \"103\"\nfrom = \"P1:5\"\nto = \"INJ3:1\"\nspec = \"AS22759/32\"\nsize = \"22\"\n"
	s := calctest.Built(t, text)
	left, right := s.Index.Branch["RL"], s.Index.Branch["RR"]
	for _, k := range []int{left, right} { // each is wired at one of its two devices
		if got := offer.LikeBanks(s, k); len(got) != 0 {
			t.Errorf("%s is wired, and like %v", s.H.Branches[k].ID, got)
		}
	}
}

// Laid like another branch, each place gets a wire of the role that stands there, where there is one: eight wires of
// one size to B and to C, of which the fourth to B in the middle and the last to C carry power.
func TestLaidLikeByRole(t *testing.T) {
	text := "format = 1\n[[breakout]]\nid = \"J\"\n"
	for _, id := range []string{"A", "B", "C"} {
		text += fmt.Sprintf("[[termination]]\nid = %q\n", id)
	}
	for i := range 16 {
		role, to := "signal", fmt.Sprintf("B:%d", i+1)
		if i >= 8 {
			to = fmt.Sprintf("C:%d", i-7)
		}
		if i == 3 || i == 15 {
			role = "power"
		}
		text += fmt.Sprintf("[[wire]]\nid = \"w%d\"\nfrom = \"A:%d\"\nto = %q\nrole = %q\n", i+1, i+1, to, role) +
			"spec = \"AS22759/32\"\nsize = \"22\"\n"
	}
	text += "[[branch]]\nid = \"T\"\nfrom = \"A\"\nto = \"J\"\nlength_mm = 300\n" +
		"[[branch]]\nid = \"X\"\nfrom = \"J\"\nto = \"B\"\nlength_mm = 300\n  [[branch.layer]]\n  of = [\"w4\"]\n" +
		"  [[branch.layer]]\n  of = [\"w1\", \"w2\", \"w3\", \"w5\", \"w6\", \"w7\", \"w8\"]\n" +
		"[[branch]]\nid = \"Y\"\nfrom = \"J\"\nto = \"C\"\nlength_mm = 200\n"
	s := calctest.Built(t, text)
	ls, ok := offer.LaidLike(s, s.Index.Branch["X"], s.Index.Branch["Y"])
	if !ok || len(ls) != 2 || !slices.Equal(ls[0].Of, []string{"w16"}) || slices.Contains(ls[1].Of, "w16") || len(ls[1].Of) != 7 {
		t.Errorf("%v %+v", ok, ls)
	}
}

// One wire more between two connectors is laid in every branch of its way, by that branch's own layers: seven of 1.09 mm,
// one among six, over a trunk and a leg, make room for none, so each gets a new layer.
func TestOneMoreInEveryBranch(t *testing.T) {
	text := "format = 1\n[[breakout]]\nid = \"J\"\n[[breakout]]\nid = \"K\"\n"
	for _, id := range []string{"A", "Z"} {
		text += fmt.Sprintf("[[termination]]\nid = %q\ncavities = [\"0\", \"1\", \"2\", \"3\", \"4\", \"5\", \"6\", \"7\"]\n", id)
	}
	text += "[[termination]]\nid = \"Y\"\n[[wire]]\nid = \"y\"\nfrom = \"A:7\"\nto = \"Y:1\"\nspec = \"AS22759/32\"\nsize = \"22\"\n"
	text = strings.Replace(text, "\"7\"]\n", "\"7\", \"8\"]\n", 1)
	for k := range 7 {
		text += fmt.Sprintf("[[wire]]\nid = \"w%d\"\nfrom = \"A:%d\"\nto = \"Z:%d\"\nspec = \"AS22759/32\"\nsize = \"22\"\n", k, k, k)
	}
	layers := "  [[branch.layer]]\n  of = [\"w0\"]\n  [[branch.layer]]\n  of = [\"w1\", \"w2\", \"w3\", \"w4\", \"w5\", \"w6\"]\n"
	text += "[[branch]]\nid = \"T\"\nfrom = \"A\"\nto = \"J\"\nlength_mm = 300.0\n" + layers + "  [[branch.layer]]\n  of = [\"y\"]\n" +
		"[[branch]]\nid = \"M\"\nfrom = \"J\"\nto = \"Y\"\nlength_mm = 300.0\n  [[branch.layer]]\n  of = [\"y\"]\n" +
		"[[branch]]\nid = \"L\"\nfrom = \"J\"\nto = \"Z\"\nlength_mm = 300.0\n" + layers
	s := calctest.Built(t, text)
	for _, p := range offer.Pairings(s, s.Index.Termination["A"]) {
		if s.H.Terminations[p.B].ID != "Z" {
			continue
		}
		branch, thicker, starts, ok := offer.OneMore(s, p)
		// The leg has no second layer yet: a wire outside of its seven adds two diameters, 2 · 1.09, and starts layer 2.
		if !ok || s.H.Branches[branch].ID != "L" || starts != 2 {
			t.Errorf("%v: branch %d, layer %d", ok, branch, starts)
		}
		calctest.Near(t, "thicker by", float64(thicker), 2*1.09, 0.02)
		return
	}
	t.Error("no pairing of A and Z")
}
