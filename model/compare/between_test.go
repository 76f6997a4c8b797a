package compare_test

import (
	"strings"
	"testing"

	"contralay/model"
	"contralay/model/compare"
	"contralay/model/wirelist"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/table"
)

// list imports a list with what it has a place for.
func list(t testing.TB, text string) compare.List {
	t.Helper()
	tables, err := table.Read("list.csv", []byte(text), table.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	h, rep, err := wirelist.Import(tables, draft.Options{Unit: "mm"})
	if err != nil {
		t.Fatal(err)
	}
	return compare.List{Harness: h, Report: rep}
}

func told(a, b compare.List) string {
	var says []string
	r := compare.Between(a, b)
	for _, d := range r.Differences {
		says = append(says, d.Says)
	}
	return strings.Join(says, "; ")
}

// What a list has a place for is compared where one of the two leaves it empty; what it has
// no place for is not.
func TestBetween(t *testing.T) {
	for _, c := range []struct{ name, was, is, want string }{
		{"a length, of two wires that run together", "Wire,From,To,Length\n1,A:1,B:1,500\n2,A:2,B:2,500\n",
			"Wire,From,To,Length\n1,A:1,B:1,650\n2,A:2,B:2,650\n",
			"wires 1, 2 A to B: length is 650 mm, was 500 mm"},
		{"a length, of one of them", "Wire,From,To,Length\n1,A:1,B:1,500\n2,A:2,B:2,500\n",
			"Wire,From,To,Length\n1,A:1,B:1,500\n2,A:2,B:2,250\n",
			"wire 2 A:2 to B:2: length is 250 mm, was 500 mm"},
		{"a length left out", "Wire,From,To,Length\n1,A:1,B:1,500\n2,A:2,B:2,500\n", "Wire,From,To,Length\n1,A:1,B:1,500\n2,A:2,B:2,\n",
			"wire 2 A:2 to B:2: length is none, was 500 mm"},
		{"one length, in another unit", "Wire,From,To,Length\n1,A:1,B:1,610\n", "Wire,From,To,Length in\n1,A:1,B:1,24\n", ""},
		{"no column of lengths", "Wire,From,To,Length\n1,A:1,B:1,610\n", "Wire,From,To\n1,A:1,B:1\n", ""},
		{"the last fuse", "Signal,From,To,Fuse\nPump,E:1,C:1,15\nFan,E:2,C:2,\n", "Signal,From,To,Fuse\nPump,E:1,C:1,\nFan,E:2,C:2,\n",
			`wire 1 "Pump" E:1 to C:1: fuse is none, was 15 A`},
		{"the only twist", "Signal,From,To,Twist\nCAN H,E:1,C:1,T1\nCAN L,E:2,C:2,T1\nAux,E:3,C:3,\n",
			"Signal,From,To,Twist\nCAN H,E:1,C:1,\nCAN L,E:2,C:2,\nAux,E:3,C:3,\n", "unit of wires 1, 2 is not made up any more"},
		{"no column of twists", "Signal,From,To,Twist\nCAN H,E:1,C:1,T1\nCAN L,E:2,C:2,T1\n",
			"Signal,From,To\nCAN H,E:1,C:1\nCAN L,E:2,C:2\n", ""},
		{"the last colour", "Signal,From,To,Colour\nPump,E:1,C:1,red\n", "Signal,From,To,Colour\nPump,E:1,C:1,\n",
			`wire 1 "Pump" E:1 to C:1: colour is none, was red`},
		{"the only reserved cavity", "Pin,Signal,AWG\n1,Pump,20\n4,Reserved,\n", "Pin,Signal,AWG\n1,Pump,20\n4,-,\n",
			"list:4 is not reserved any more"},
		{"rows in another order, without ids", "From,To\nA:1,B:1\nA:2,B:2\nA:3,B:3\n", "From,To\nA:2,B:2\nA:1,B:1\nA:3,B:3\n", ""},
		{"a row gone, without ids", "From,To\nA:1,B:1\nA:2,B:2\nA:3,B:3\n", "From,To\nA:1,B:1\nA:3,B:3\n", "wire 2 A:2 to B:2 removed"},
		{"names swapped", "Signal,From,To,AWG,Colour\npwr,A:1,B:1,16,RD\ngnd,A:2,B:2,22,BK\n",
			"Signal,From,To,AWG,Colour\ngnd,A:1,B:1,16,RD\npwr,A:2,B:2,22,BK\n", `1 and 2 swapped: signal ("pwr" and "gnd")`},
		{"whole wires swapped", "Signal,From,To,AWG,Colour\npwr,A:1,B:1,16,RD\ngnd,A:2,B:2,22,BK\n",
			"Signal,From,To,AWG,Colour\npwr,A:2,B:2,16,RD\ngnd,A:1,B:1,22,BK\n",
			`wires 1 and 2 swapped at both ends: A:1 to B:1 with A:2 to B:2 ("pwr" and "gnd")`},
		{"whole wires swapped, by their ids", "Wire,From,To,Colour\n1,A:1,B:1,RD\n2,A:2,B:2,BK\n3,A:3,B:3,BK\n4,A:4,B:4,WH\n5,A:5,B:5,BU\n",
			"Wire,From,To,Colour\n2,A:1,B:1,BK\n1,A:2,B:2,RD\n3,A:3,B:3,BK\n4,A:4,B:4,WH\n5,A:5,B:5,BU\n",
			"wires 1 and 2 swapped at both ends: A:1 to B:1 with A:2 to B:2"},
		{"another specification", "Wire,From,To,Spec\n1,P1:1,P2:1,M22759/32-22-9\n", "Wire,From,To,Spec\n1,P1:1,P2:1,M22759/16-22-9\n",
			"wire 1 P1:1 to P2:1: specification is AS22759/16, was AS22759/32"},
		{"a specification that one does not say", "Wire,From,To,Size\n1,P1:1,P2:1,22\n", "Wire,From,To,Spec\n1,P1:1,P2:1,M22759/16-22\n",
			""},
		{"colours that no code has", "Wire,From,To,Colour\n1,P1:1,P2:1,puce\n2,P1:2,P2:2,red\n",
			"Wire,From,To,Colour\n1,P1:1,P2:1,mauve\n2,P1:2,P2:2,mauve\n",
			"wire 1 P1:1 to P2:1: colour is mauve, was puce; wire 2 P1:2 to P2:2: colour is mauve, was red"},
		{"a length that is none", "Wire,From,To,Length\n1,A:1,B:1,see drawing\n", "Wire,From,To,Length\n1,A:1,B:1,900\n",
			"wire 1 A:1 to B:1: length is 900 mm, was see drawing"},
		{"a drain moved", "Signal,From,To,Cable\nCRK+,E:1,C:1,K1 screened\nCRK-,E:2,C:2,K1 screened\nCRK screen,E:3,,K1 screened\n",
			"Signal,From,To,Cable\nCRK+,E:1,C:1,K1 screened\nCRK-,E:2,C:2,K1 screened\nCRK screen,E:5,,K1 screened\n",
			"unit of wires 1, 2: its shield is grounded at E:5, was at E:3"},
		{"a drain gone", "Signal,From,To,Cable\nCRK+,E:1,C:1,K1 screened\nCRK-,E:2,C:2,K1 screened\nCRK screen,E:3,,K1 screened\n",
			"Signal,From,To,Cable\nCRK+,E:1,C:1,K1 screened\nCRK-,E:2,C:2,K1 screened\n",
			"unit of wires 1, 2: its shield is grounded nowhere, was at E:3"},
		{"a shield beside the name of a cable", "Signal,From,To,Cable,Shield\nCRK+,E:1,C:1,K1,yes\nCRK-,E:2,C:2,K1,yes\n",
			"Signal,From,To,Cable,Shield\nCRK+,E:1,C:1,K1,no\nCRK-,E:2,C:2,K1,no\n", "unit of wires 1, 2 is not made up any more"},
		{"a remark of a fuse, beside another remark", "Signal,From,To,Remark\nPump,E:1,C:1,fused 10 A\nFan,E:2,C:2,short\n",
			"Signal,From,To,Remark\nPump,E:1,C:1,fused 15 A\nFan,E:2,C:2,long\n",
			`wire 2 "Fan" E:2 to C:2: note is long, was short; wire 1 "Pump" E:1 to C:1: fuse is 15 A, was 10 A`},
		{"a remark of a core that is in no unit", "Signal,From,To,Remark\nPump,E:1,C:1,4-core\nFan,E:2,C:2,\n",
			"Signal,From,To,Remark\nPump,E:1,C:1,3-core\nFan,E:2,C:2,\n",
			`wire 1 "Pump" E:1 to C:1: note is 3-core, was 4-core`},
		{"a remark of a cable of which the other list makes no unit",
			"Signal,From,To,AWG,Remark\nH,E:1,C:1,24,2-core shielded\nL,E:2,C:2,24,2-core shielded\n",
			"Signal,From,To,AWG,Remark\nH,E:1,C:1,24,4-core shielded\nL,E:2,C:2,24,4-core shielded\n",
			`wire 1 "H" E:1 to C:1: note is 4-core shielded, was 2-core shielded; ` +
				`wire 2 "L" E:2 to C:2: note is 4-core shielded, was 2-core shielded`},
	} {
		if got := told(list(t, c.was), list(t, c.is)); got != c.want {
			t.Errorf("%s:\n%s\nwant\n%s", c.name, got, c.want)
		}
	}
}

// The file of a harness states all there is: what is gone from it is told, also the last of
// its kind. Of a list against it, what the list does not say is named and not compared.
func TestWhole(t *testing.T) {
	h := list(t, "Wire,Signal,From,To,AWG,Colour\n1,Pump,A:1,B:1,20,red\n2,Ground,A:2,B:2,20,black\n").Harness
	for i := range h.Wires {
		h.Wires[i].Role = model.Some([]model.Role{model.RolePower, model.RoleGround}[i])
	}
	whole := func(h model.Harness) compare.List { return compare.List{Harness: h, Whole: true} }
	bare := h
	bare.Wires = append([]model.Wire{}, h.Wires...)
	for i := range bare.Wires {
		bare.Wires[i].Colour, bare.Wires[i].Role = model.Opt[string]{}, model.Opt[model.Role]{}
	}
	if got := told(whole(h), whole(bare)); strings.Count(got, "colour is none") != 2 || strings.Count(got, "role is none") != 2 {
		t.Errorf("%s", got)
	}
	other := list(t, "Signal,From,To\nPump,A:1,B:1\nGround,A:2,B:2\n")
	if got := told(whole(h), other); got != "" {
		t.Errorf("%s", got)
	}
	r := compare.Between(whole(h), other)
	if want := "matched: 4 of 4 cavities of A, 4 of 4 of B; not compared: wire ids, size, colour, specification and everything of a " +
		"harness file but wires, cavities, units and fuses, which B lacks"; r.Matched() != want {
		t.Errorf("%s\nwant\n%s", r.Matched(), want)
	}
}

// A swap at one end of two wires is told there alone, whatever else the connectors hold.
func TestSwapAtOneEnd(t *testing.T) {
	a := read(t, "Signal,From,To\naa,E:1,D:1\nbb,E:2,D:2\ncc,E:3,F:1\n")
	b := read(t, "Signal,From,To\naa,E:1,D:2\nbb,E:2,D:1\ncc,E:3,F:1\n")
	all := compare.Disagreements(a, b)
	if len(all) != 1 || !strings.HasPrefix(all[0].Says, "1 and 2 swapped at D") {
		t.Errorf("%v", all)
	}
}
