package compare_test

import (
	"encoding/json"
	"os"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"contralay/model"
	"contralay/model/compare"
	"contralay/model/file"
)

// read imports a list written in a test.
func read(t testing.TB, text string) model.Harness {
	t.Helper()
	return list(t, text).Harness
}

const fromTo = `Wire,From,Pin,To,Pin,Gauge,Colour,Signal
1,P1,1,INJ1,1,22,white/red,Injector 1
2,P1,2,INJ2,1,22,white/black,Injector 2
3,P1,3,INJ3,1,22,white/green,Injector 3
4,P1,4,INJ4,1,22,white/blue,Injector 4
5,P1,5,INJ5,1,22,white/violet,Injector 5
6,P1,6,OIL1,A,20,black,Oil pressure ground
`

const pinTable = `Connector: P1
Pin,Description,Colour,Size
1,Injector 1,white/red,22
2,Injector 2,white/black,22
3,Injector 3,white/green,22
4,Injector 4,white/blue,22
5,Injector 5,white/violet,22
6,Oil pressure ground,black,20
`

func with(text string, pairs ...string) string { return strings.NewReplacer(pairs...).Replace(text) }

func TestLists(t *testing.T) {
	for _, c := range []struct {
		name, was, is string
		want          []string
	}{
		{"nothing", fromTo, fromTo, nil},
		{"columns in another order, codes for words, no signal", fromTo, `To,To pin,From pin,From,Colour,Wire
INJ1,1,1,P1,92,1
INJ2,1,2,P1,WHBK,2
INJ3,1,3,P1,wht/grn,3
INJ4,1,4,P1,weiß/blau,4
INJ5,1,5,P1,97,5
OIL1,A,6,P1,BK,6
`, nil},
		{"two channels swapped at the connector", fromTo, with(fromTo, "4,P1,4,", "4,P1,5,", "5,P1,5,", "5,P1,4,"),
			[]string{`4 and 5 swapped at P1 ("Injector 4" and "Injector 5")`}},
		{"two channels swapped, the list numbers by its rows", fromTo,
			with(fromTo, "4,P1,4,INJ4,1,22,white/blue,Injector 4", "4,P1,4,INJ5,1,22,white/violet,Injector 5",
				"5,P1,5,INJ5,1,22,white/violet,Injector 5", "5,P1,5,INJ4,1,22,white/blue,Injector 4"),
			[]string{`4 and 5 swapped at P1 ("Injector 4" and "Injector 5")`}},
		{"two channels swapped in a pin table", pinTable,
			with(pinTable, "4,Injector 4,white/blue", "4,Injector 5,white/violet", "5,Injector 5,white/violet", "5,Injector 4,white/blue"),
			[]string{`4 and 5 swapped at P1 ("Injector 4" and "Injector 5")`}},
		{"two far ends swapped", with(fromTo, ",Signal", ""), with(with(fromTo, ",Signal", ""), "P1,4,INJ4", "P1,4,INJ5", "P1,5,INJ5",
			"P1,5,INJ4"),
			[]string{"4 and 5 swapped at P1, 4 now leads to INJ5:1 and 5 to INJ4:1"}},
		{"wires by numbers, cavities by letters", "Wire,From,To\n3,P1:C,X:1\n4,P1:D,X:2\n5,P1:E,X:3\n",
			"Wire,From,To\n3,P1:C,X:1\n4,P1:E,X:2\n5,P1:D,X:3\n",
			[]string{"D and E swapped at P1: wires 4 and 5 swapped places"}},
		{"four colours turned round are no swap", "Wire,From,To,Colour\n1,A:1,B:1,red\n2,A:2,B:2,red\n3,A:3,B:3,white\n4,A:4,B:4,white\n",
			"Wire,From,To,Colour\n1,A:1,B:1,white\n2,A:2,B:2,white\n3,A:3,B:3,red\n4,A:4,B:4,red\n",
			[]string{"wire 1 A:1 to B:1: colour is white, was red", "wire 2 A:2 to B:2: colour is white, was red",
				"wire 3 A:3 to B:3: colour is red, was white", "wire 4 A:4 to B:4: colour is red, was white"}},
		{"two ids swapped in a table of cavities", "Pin,Wire,Gauge\n1,1,22\n2,2,22\n3,3,22\n4,4,22\n5,5,22\n",
			"Pin,Wire,Gauge\n1,1,22\n2,2,22\n3,3,22\n4,5,22\n5,4,22\n",
			[]string{"4 and 5 swapped at list"}},
		{"wires with one id", "Wire,From,To\n6,P1:G,DASH:4\n6,P1:H,DASH:5\n", "Wire,From,To\n6,P1:G,DASH:5\n6,P1:H,DASH:4\n",
			[]string{"4 and 5 swapped at DASH: wires 6 and 6-2 swapped places"}},
		{"two colours swapped", fromTo, with(fromTo, "white/blue", "white/violet", "white/violet", "white/blue"),
			[]string{`4 and 5 swapped: colour ("Injector 4" and "Injector 5")`}},
		{"three in a ring are no swap", fromTo, with(fromTo, "1,P1,1", "1,P1,2", "2,P1,2", "2,P1,3", "3,P1,3", "3,P1,1"),
			[]string{`wire 1 "Injector 1" moved from P1:1 to P1:2`, `wire 2 "Injector 2" moved from P1:2 to P1:3`,
				`wire 3 "Injector 3" moved from P1:3 to P1:1`}},
		{"one moved", fromTo, with(fromTo, "3,P1,3", "3,P1,7"), []string{`wire 3 "Injector 3" moved from P1:3 to P1:7`}},
		{"one removed", fromTo, with(fromTo, "3,P1,3,INJ3,1,22,white/green,Injector 3\n", ""),
			[]string{`wire 3 "Injector 3" P1:3 to INJ3:1 removed`, "termination INJ3 removed"}},
		{"one added", with(fromTo, "3,P1,3,INJ3,1,22,white/green,Injector 3\n", ""), fromTo,
			[]string{`wire 3 "Injector 3" P1:3 to INJ3:1 added`, "termination INJ3 added"}},
		{"size and colour", fromTo, with(fromTo, "A,20,black", "A,18,brown"),
			[]string{`wire 6 "Oil pressure ground" P1:6 to OIL1:A: size is 18, was 20`,
				`wire 6 "Oil pressure ground" P1:6 to OIL1:A: colour is brown, was black`}},
		{"a colour left out", fromTo, with(fromTo, "20,black", "20,"),
			[]string{`wire 6 "Oil pressure ground" P1:6 to OIL1:A: colour is none, was black`}},
		{"other ids for all", fromTo, with(fromTo, "\n1,", "\n101,", "\n2,", "\n102,", "\n3,", "\n103,", "\n4,", "\n104,", "\n5,", "\n105,",
			"\n6,", "\n106,"), nil},
		{"another id for one", fromTo, with(fromTo, "\n6,", "\n60,"),
			[]string{`wire 6 "Oil pressure ground" P1:6 to OIL1:A: id is 60, was 6`}},
		{"a list without far ends", fromTo, pinTable, nil},
		{"a list without far ends, a cavity left out", fromTo, with(pinTable, "3,Injector 3,white/green,22\n", ""),
			[]string{`wire 3 "Injector 3" P1:3 removed`}},
		{"a list without far ends, two swapped", with(fromTo, "4,P1,4,", "4,P1,5,", "5,P1,5,", "5,P1,4,"), pinTable,
			[]string{`4 and 5 swapped at P1 ("Injector 5" and "Injector 4")`}},
		{"a connector called anew", fromTo, with(fromTo, "P1", "X9"), []string{"termination P1 is called X9 now: it holds the same"}},
		{"a connector called anew, no names of nets", with(fromTo, ",Signal", ""), with(with(fromTo, ",Signal", ""), "P1", "X9"),
			[]string{"termination P1 is called X9 now: it holds the same"}},
		{"a small connector called anew, and a colour", fromTo, with(fromTo, "OIL1", "B7", "20,black", "20,brown"),
			[]string{"termination OIL1 is called B7 now: it holds the same",
				`wire 6 "Oil pressure ground" P1:6 to OIL1:A: colour is brown, was black`}},
		{"a connector with another name and other cavities, by the ids of its wires",
			"Wire,From,To,Signal\n1,P1:1,A:1,Horn\n2,P1:2,A:2,Lamp\n3,P1:3,A:3,Pump\n",
			"Wire,From,To,Signal\n1,P1:1,B:1,Horn\n2,P1:2,B:7,Lamp\n3,P1:3,B:8,Pump\n",
			[]string{"termination A is called B now: 3 of 3 wires have the same ids", `wire 2 "Lamp" moved from A:2 to A:7`,
				`wire 3 "Pump" moved from A:3 to A:8`}},
		{"another connector in its place, of other wires", "Wire,From,To,Signal\n1,P1:1,A:1,Horn\n2,P1:2,A:2,Lamp\n",
			"Wire,From,To,Signal\n3,P1:3,B:1,Pump\n4,P1:4,B:2,Fan\n",
			[]string{`wire 1 "Horn" P1:1 to A:1 removed`, `wire 2 "Lamp" P1:2 to A:2 removed`, `wire 3 "Pump" P1:3 to B:1 added`,
				`wire 4 "Fan" P1:4 to B:2 added`, "termination A removed", "termination B added"}},
		{"other names for connectors", fromTo, with(fromTo, "P1", `"p-1"`, "OIL1", "Oil 1"), nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			var got []string
			for _, d := range compare.Lists(read(t, c.was), read(t, c.is)) {
				got = append(got, d.String())
			}
			if d := cmp.Diff(c.want, got); d != "" {
				t.Errorf("-want +got:\n%s", d)
			}
		})
	}
}

func TestUnitsFusesAndReserved(t *testing.T) {
	const was = `Connector: P1
Pin,Description,Colour,Size,Note
A,Crank +,white,24,2x24 shielded
B,Crank -,white/blue,24,2x24 shielded
C,Pump,red,20,7.5A fuse
D,Not used,,,reserved
E,Not used,,,reserved
F,CAN H,green,22,twisted
G,CAN L,yellow,22,twisted
`
	is := with(was, "2x24 shielded", "twisted pair", "7.5A", "10A", "E,Not used,,,reserved", "E,Not used,,,")
	is = with(is, "green,22,twisted", "green,22,", "yellow,22,twisted", "yellow,22,")
	var got []string
	for _, d := range compare.Lists(read(t, was), read(t, is)) {
		got = append(got, d.String())
	}
	want := []string{
		"P1:E is not reserved any more",
		"unit of wires 1, 2: not shielded, was shielded",
		"unit of wires 4, 5 is not made up any more",
		`wire 3 "Pump" P1:C: fuse is 10 A, was 7.5 A`,
	}
	if d := cmp.Diff(want, got); d != "" {
		t.Errorf("-want +got:\n%s", d)
	}
}

func TestDisagreements(t *testing.T) {
	for _, c := range []struct {
		name, built, list string
		want              []string
	}{
		{"the same from a pin table", fromTo, pinTable, nil},
		{"a pin table with two swapped", fromTo,
			with(pinTable, "4,Injector 4,white/blue", "4,Injector 5,white/violet", "5,Injector 5,white/violet", "5,Injector 4,white/blue"),
			[]string{`4 and 5 swapped at P1 ("Injector 4" and "Injector 5")`}},
		{"a from-to list with two swapped, no names", fromTo, with(`From,To,Colour
P1:1,INJ1:1,
P1:2,INJ2:1,
P1:3,INJ3:1,
P1:4,INJ5:1,
P1:5,INJ4:1,
P1:6,OIL1:A,black
`),
			[]string{`4 and 5 swapped at P1 ("Injector 4" and "Injector 5")`}},
		{"one wire to another place", fromTo, with(fromTo, "3,P1,3", "3,P1,7"),
			[]string{`P1:3 "Injector 3" is wired, not in the list`, `P1:7 "Injector 3" is in the list, not wired`}},
		{"a spare of the shop", fromTo + "7,P1,7,OIL1,B,22,white,spare\n", pinTable, nil},
		{"a spare that the list wants", fromTo, pinTable + "7,spare,white,22\n", []string{"P1:7 is in the list, not wired"}},
		{"a splice and a chain are one net", `Wire,From,To
1,P1:1,S1
2,S1,A1:1
3,S1,B1:1
`, `Wire,From,To
1,P1:1,A1:1
2,A1:1,B1:1
`, nil},
		{"one leg on another net", `Wire,From,To
1,P1:1,S1
2,S1,A1:1
3,S1,B1:1
4,P1:2,C1:1
`, `Wire,From,To
1,P1:1,A1:1
3,P1:2,S1
4,S1,C1:1
5,S1,B1:1
`, []string{"B1:1 is joined to P1:1, A1:1, in the list to P1:2, C1:1"}},
		{"size", fromTo, with(pinTable, "black,20", "black,22"), []string{`P1:6 "Oil pressure ground": size is 20, in the list 22`}},
		{"one size in two units", fromTo, with(pinTable, "black,20", "black,0.52 mm²"), nil},
		{"the next size in another unit", fromTo, with(pinTable, "black,20", "black,0.5 mm²"),
			[]string{`P1:6 "Oil pressure ground": size is 20, in the list 0.5mm2`}},
		{"a shade", with(fromTo, "20,black", "20,light blue"), with(pinTable, "black,20", "dark blue,20"),
			[]string{`P1:6 "Oil pressure ground": colour is light blue, in the list dark blue`}},
		{"plus and minus", "Pin,Signal\n1,Temp+\n2,Temp-\n", "Pin,Signal\n1,Temp-\n2,Temp+\n",
			[]string{`1 and 2 swapped at list ("Temp+" and "Temp-")`}},
	} {
		t.Run(c.name, func(t *testing.T) {
			var got []string
			for _, d := range compare.Disagreements(read(t, c.built), read(t, c.list)) {
				got = append(got, d.String())
			}
			if d := cmp.Diff(c.want, got); d != "" {
				t.Errorf("-want +got:\n%s", d)
			}
		})
	}
}

func TestRenderers(t *testing.T) {
	a, b := list(t, fromTo), list(t, with(fromTo, "4,P1,4,", "4,P1,5,", "5,P1,5,", "5,P1,4,"))
	same := compare.Between(a, a)
	if got := same.Text(); got != "no difference\nmatched: 12 of 12 cavities of A, 12 of 12 of B\n" {
		t.Errorf("text of none: %q", got)
	}
	r := compare.Between(a, b)
	if n := strings.Count(r.Text(), "4 and 5 swapped"); n != 1 || !strings.HasSuffix(r.Text(), "\n"+r.Matched()+"\n") {
		t.Errorf("told %d times:\n%s", n, r.Text())
	}
	for _, r := range []compare.Result{same, r} {
		text, err := r.JSON()
		if err != nil {
			t.Fatal(err)
		}
		var back struct {
			Differences []compare.Difference
			Matched     struct{ A, B compare.Count }
			Complete    bool
			Says        string
		}
		if err := json.Unmarshal(text, &back); err != nil {
			t.Fatal(err)
		}
		if d := cmp.Diff(append([]compare.Difference{}, r.Differences...), back.Differences); d != "" || back.Matched.A != r.A ||
			back.Matched.B != r.B || back.Says != r.Matched() || back.Complete != r.Complete() {
			t.Errorf("JSON (-was +read back):\n%s%s", d, text)
		}
	}
}

// The demonstration against itself, and with any two wires of one connector swapped.
func TestDemonstrationSwapped(t *testing.T) {
	text, err := os.ReadFile("../../testdata/demo.toml")
	if err != nil {
		t.Fatal(err)
	}
	doc, err := file.Parse(text, "demo.toml")
	if err != nil {
		t.Fatal(err)
	}
	h := doc.Harness
	if d := compare.Lists(h, h); len(d) > 0 {
		t.Errorf("against itself: %v", d)
	}
	if d := compare.Disagreements(h, h); len(d) > 0 {
		t.Errorf("against itself: %v", d)
	}
	var at []int
	for i, w := range h.Wires {
		if strings.HasPrefix(w.From.V, "P1:") && w.To.V != "" {
			at = append(at, i)
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		i := rapid.SampledFrom(at).Draw(t, "one")
		k := rapid.SampledFrom(at).Draw(t, "other")
		if h.Wires[i].From == h.Wires[k].From {
			return
		}
		b := *h.EditWire(i, func(w *model.Wire) { w.From = h.Wires[k].From })
		b = *b.EditWire(k, func(w *model.Wire) { w.From = h.Wires[i].From })
		got := compare.Lists(h, b)
		if len(got) != 1 || got[0].Kind != compare.Swapped {
			t.Fatalf("%s and %s: %v", h.Wires[i].ID, h.Wires[k].ID, got)
		}
		if h.Wires[i].To == h.Wires[k].To {
			return // one net: electrically the same
		}
		got = compare.Disagreements(h, b)
		if len(got) == 0 || got[0].Kind != compare.Swapped {
			t.Fatalf("nets of %s and %s: %v", h.Wires[i].ID, h.Wires[k].ID, got)
		}
	})
}

// Of any wires in any order with any ids nothing differs but what was changed.
func TestOrderAndIDsDoNotMatter(t *testing.T) {
	h := read(t, fromTo)
	rapid.Check(t, func(t *rapid.T) {
		b := h
		b.Wires = rapid.Permutation(h.Wires).Draw(t, "order")
		for i := range b.Wires {
			b.Wires[i].ID = "W" + b.Wires[i].ID
			if rapid.Bool().Draw(t, "turned") {
				b.Wires[i].From, b.Wires[i].To = b.Wires[i].To, b.Wires[i].From
			}
		}
		if d := compare.Lists(h, b); len(d) > 0 {
			t.Fatalf("%v", d)
		}
	})
}

// What an import knows by a column that the other list does not have is no difference.
func TestRolesBySignal(t *testing.T) {
	const list = "Wire,From,To,Gauge,Signal\n1,ECU:1,TPS:1,22,TPS\n2,ECU:2,TPS:2,22,TPS gnd\n3,ECU:3,spare,22,\n4,ECU:4,spare,22,\n"
	const bare = "Wire,From,To,Gauge\n1,ECU:1,TPS:1,22\n2,ECU:2,TPS:2,22\n3,ECU:3,spare,22\n4,ECU:4,spare,22\n"
	for _, d := range compare.Lists(read(t, list), read(t, bare)) {
		t.Error(d.Says)
	}
	if all := compare.Lists(read(t, list), read(t, with(bare, "3,ECU:3,spare", "3,ECU:3,"))); len(all) != 1 ||
		!strings.Contains(all[0].Says, "role is none, was spare") {
		t.Errorf("%v", all)
	}
}
