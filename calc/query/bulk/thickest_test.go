package bulk_test

import (
	"strings"
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/query/bulk"
)

// Where a current is not known, the wire on from a splice is as thick as the thickest that it joins, whichever stands first;
// where all are known, what it is for is said: 1 A and 1 A are 2 A with all on at once.
func TestSpliceOfTheThickest(t *testing.T) {
	for _, thick := range []string{"101", "103"} {
		text := strings.ReplaceAll(bank, "amps = 1.0\n", "")
		at := strings.Index(text, "id = \""+thick+"\"")
		text = text[:at] + strings.Replace(text[at:], "size = \"20\"", "size = \"16\"", 1)
		got, err := bulk.SpliceOf(calctest.Built(t, text), bulk.SpliceAsk{Wires: []string{"101", "103"}})
		if err != nil {
			t.Fatal(err)
		}
		if on := wire(t, got.H, got.Wires[0]); on.Size != "16" {
			t.Errorf("%s is thick: %s, %s", thick, on.Size, got.Says)
		}
	}
	got, err := bulk.SpliceOf(calctest.Built(t, bank), bulk.SpliceAsk{Wires: []string{"101", "103"}})
	if err != nil || !strings.HasSuffix(got.Says, ", for 2 A with all on at once") {
		t.Errorf("%v %q", err, got.Says)
	}
}

// A range to a splice or a termination that there is none of is refused by its name.
func TestRangeToNothing(t *testing.T) {
	s := calctest.Built(t, bank)
	for _, c := range []struct{ what, want string }{{"splice", "there is no splice \"S9\""},
		{"termination", "there is no termination \"X9\""}} {
		ask := bulk.RangeAsk{From: bulk.Ends{Termination: "BOX", Cavities: []string{"6"}}, To: bulk.Ends{Splice: "S9"},
			Spec: "AS22759/32", Size: "22"}
		if c.what == "termination" {
			ask.To = bulk.Ends{Termination: "X9", Cavities: []string{"1"}}
		}
		if _, err := bulk.Range(s, ask); err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%s: %v", c.what, err)
		}
	}
}

// The drain of a unit goes to the shell or is cut, as it is asked for at either end.
func TestDrainsOfAUnit(t *testing.T) {
	got, err := bulk.UnitOf(calctest.Built(t, bank), bulk.UnitAsk{Wires: []string{"101", "102"}, Shield: true,
		DrainFrom: bulk.DrainShell, DrainTo: bulk.DrainCut})
	if err != nil {
		t.Fatal(err)
	}
	if u := got.H.Units[0]; u.DrainFrom.V != "shell" || u.DrainTo.V != "cut" {
		t.Errorf("%+v", u)
	}
}
