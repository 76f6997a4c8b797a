package lists_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/query/lists"
	"contralay/model/catalogue"
)

// counted is a small loom of a rover's lamps: four connectors of the catalogue, one of them without its gender, two like
// devices with seals, a stud, a capped spare, and a sleeve that the catalogue knows beside a braid that it does not.
func counted(t *testing.T) string {
	t.Helper()
	var b strings.Builder
	b.WriteString("format = 1\n[[breakout]]\nid = \"J\"\ntransition = \"y-9\"\n")
	for _, e := range []string{
		"id = \"P1\"\ninsert = \"14-18\"\ngender = \"pin\"\nkey = \"N\"\nboot = \"boot-straight-14\"\nmount = \"inline\"",
		"id = \"P2\"\ninsert = \"8-35\"\ngender = \"socket\"",
		"id = \"P3\"\ninsert = \"9-35\"\ngender = \"socket\"",
		"id = \"P4\"\ninsert = \"8-98\"",
		"id = \"LAMP1\"\nname = \"Lamp 1\"\ncavities = [\"1\", \"2\"]\nseal_mm = [1.0, 1.4]",
		"id = \"LAMP2\"\nname = \"Lamp 2\"\ncavities = [\"1\", \"2\"]\nseal_mm = [1.0, 1.4]",
		"id = \"G\"\nname = \"Ground stud M6\"\ncavities = [\"1\"]",
		"id = \"H\"\nname = \"Hull stud\"\ncavities = [\"1\"]",
	} {
		b.WriteString("[[termination]]\n" + e + "\n")
	}
	for k, w := range [][2]string{{"P1:A", "LAMP1:1"}, {"P1:B", "LAMP1:2"}, {"P1:C", "LAMP2:1"}, {"P1:D", "P2:1"}, {"P2:2", "G:1"},
		{"P3:1", "G:1"}, {"P4:A", "LAMP2:2"}, {"P4:B", "H:1"}} {
		fmt.Fprintf(&b, "[[wire]]\nid = \"w%d\"\nfrom = %q\nto = %q\nspec = \"AS22759/32\"\nsize = \"22\"\n", k, w[0], w[1])
	}
	b.WriteString("[[wire]]\nid = \"s1\"\nfrom = \"P1:E\"\ncapped_at = \"J\"\nspec = \"AS22759/32\"\nsize = \"20\"\nrole = \"spare\"\n")
	for _, e := range []string{"P1", "P2", "P3", "P4", "LAMP1", "LAMP2", "G", "H"} {
		fmt.Fprintf(&b, "[[branch]]\nid = \"B%s\"\nfrom = \"J\"\nto = %q\nlength_mm = 500.0\n", e, e)
		if e == "P1" {
			b.WriteString(calctest.CoverText("sleeve", "part = \"own\"\nfrom_mm = 100.0\nto_mm = 200.0\n"))
			b.WriteString(calctest.CoverText("braid", "part = \"tin\"\nthick_mm = 0.3\nfrom_mm = 250.0\nto_mm = 500.0\n"))
		}
	}
	return b.String()
}

// TestBillCountedByHand counts what the loom takes, by the rules of the lists: a contact in every cavity of a sealed
// connector; three samples for each size of wire that a contact takes; 5 % more of what is counted, 10 % more of what
// is cut, pieces and tenths of a metre rounded up.
//
// P1 is 14-18, 18 of size 20 (insert chart of a MIL-DTL-38999 catalogue, as are the others): 5 wired, 13 not, samples of 20 and
// 22 AWG: 24, with 5 % 26. P2 and P3 are one arrangement of six 22D, called by the names of two series, each with the
// socket of its own: 2 and 1 wired; 3 samples; 9, and one more. P4 is 8-98, three of size 20: 2 wired. Plugs: 13 + 1 of size
// 20, with 5 % 15; 4 + 5 of size 22, with 5 % 10. Seals: 4 wires at the lamps, 5.
//
// The sleeve covers 100 mm and gets 10 % shorter: 111 mm, cut 120, so 0.2 m are taken and ordered. The braid covers 250.
func TestBillCountedByHand(t *testing.T) {
	h := calctest.Parse(t, counted(t))
	own := catalogue.Tube{ID: "own", Kind: "own", SuppliedMM: 12, RecoveredMM: 1, WallMM: 0.5, Density: 1.3, Flexible: true,
		ServiceMaxC: 150, LengthChange: 0.10, Origin: catalogue.Origin{Source: "measured", Standing: catalogue.House}}
	cat := catalogue.Merge(calctest.Catalogue(t), &catalogue.Catalogue{Tubes: []catalogue.Tube{own}})
	s := calc.Complete(h, cat, nil)
	var got []string
	for _, r := range lists.Bill(s) {
		switch r.Group {
		case "connector", "ring terminal", "end cap", "contact", "seal plug", "wire seal", "sleeve", "braid", "boot", "transition":
			open := ""
			if r.Open != "" {
				open = " open"
			}
			got = append(got, fmt.Sprintf("%s | %s | %s | %g %g%s", r.Group, r.Part, r.Says, r.Need, r.Order, open))
		}
	}
	want := []string{
		"connector | 14-18 | pin, key N, inline | 1 1",
		"connector | 8-35 | socket | 1 1",
		"connector | 9-35 | socket | 1 1",
		"connector | 8-98 |  | 1 1 open",
		"connector | Lamp, 2 ways | LAMP1, LAMP2 | 2 2 open",
		"ring terminal | ring M6 | for 2 x 22 AWG, together as 18 AWG | 1 1",
		"ring terminal | ring of H | for 22 AWG | 1 1 open",
		"end cap | for a wire of 1.3 mm | over the folded end of a capped spare | 1 1",
		"contact | M39029/58-363 | size 20, pin | 18 26",
		"contact | M39029/57-354 | size 22D, socket | 6 10",
		"contact | M39029/56-348 | size 22D, socket | 6 10",
		"contact | size 20 | the device's own | 3 7 open",
		"seal plug | MS27488-20-2 | one in each cavity without a wire | 14 15",
		"seal plug | MS27488-22-2 | one in each cavity without a wire | 9 10",
		"wire seal | for 1.0 to 1.4 mm | one for each wire; none where the connector seals all its wires in one | 4 5 open",
		"sleeve | own | 0.2 0.2",
		"braid | tin | 0.3 0.3",
		"boot | boot-straight-14 | 1 1",
		"transition | y-9 | 1 1",
	}
	slices.Sort(got)
	slices.Sort(want)
	for _, w := range want {
		if !slices.ContainsFunc(got, func(g string) bool { return g == w || tubeRow(g) == w }) {
			t.Errorf("missing: %s", w)
		}
	}
	for _, g := range got {
		if !slices.Contains(want, g) && !slices.Contains(want, tubeRow(g)) {
			t.Errorf("not counted: %s", g)
		}
	}
}

// tubeRow is a row without what it says of a tube.
func tubeRow(row string) string {
	p := strings.Split(row, " | ")
	return p[0] + " | " + p[1] + " | " + p[3]
}
