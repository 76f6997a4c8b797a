package compare_test

import (
	"fmt"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"contralay/model"
	"contralay/model/compare"
	"contralay/model/wirelist"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/table"
)

// called imports a list of a name, which a connector without a name takes.
func called(t testing.TB, file, text string) compare.List {
	t.Helper()
	tables, err := table.Read(file, []byte(text), table.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	opt := draft.Options{Unit: "mm", Name: strings.TrimSuffix(file, ".csv")}
	h, rep, err := wirelist.Import(tables, opt)
	if err != nil || len(h.Wires) == 0 {
		opt.NoEnds = true
		h, rep, err = wirelist.Import(tables, opt)
	}
	if err != nil {
		t.Fatal(err)
	}
	return compare.List{Harness: h, Report: rep}
}

const alone = "what was compared is the same, but not everything was compared\n"

// Whatever the connectors and files are called, however much one of the lists leaves out: what was
// matched is said, and nothing passes for the same that was not compared.
func TestNothingIsTheSameByAccident(t *testing.T) {
	for _, c := range []struct{ name, a, b, want string }{
		{"one connector, called after the files, turned round", "Pin,Function\nA,Horn\nB,Wiper\nC,Lamp\n",
			"Pin,Function\nA,Lamp\nB,Wiper\nC,Horn\n",
			"A and C swapped at left (\"Horn\" and \"Lamp\")\nmatched: 3 of 3 cavities of A, 3 of 3 of B; connector left is right in B\n"},
		{"the same list under two names", "Pin,Function\nA,Horn\nB,Wiper\n", "Pin,Function\nA,Horn\nB,Wiper\n",
			"no difference\nmatched: 2 of 2 cavities of A, 2 of 2 of B; connector left is right in B\n"},
		{"one connector with a new name, all signals others", "Connector,Pin,Function\nK1,1,Horn\nK1,2,Wiper\n",
			"Connector,Pin,Function\nK9,1,Fan\nK9,2,Choke\n",
			"termination K1 is called K9 now: it is the only connector in both\n" +
				"wire 1 \"Horn\" K1:1: signal is Fan, was Horn\nwire 2 \"Wiper\" K1:2: signal is Choke, was Wiper\n" +
				"matched: 2 of 2 cavities of A, 2 of 2 of B\n"},
		{"one connector that only one list names", "Connector,Pin,Function\nK1,1,Horn\nK1,2,Wiper\n", "Pin,Function\n1,Horn\n2,Wiper\n",
			alone + "matched: 2 of 2 cavities of A, 2 of 2 of B; connector K1 is right in B; not compared: the name of the connector, " +
				"which B lacks\n"},
		{"two pin tables, one of them gone", "Connector,Pin,Function\nK1,1,Horn\nK1,2,Wiper\nK2,1,Fan\nK2,2,Choke\n",
			"Connector,Pin,Function\nK1,1,Horn\nK1,2,Wiper\n",
			"wire 3 \"Fan\" K2:1 removed\nwire 4 \"Choke\" K2:2 removed\ntermination K2 removed\n" +
				"matched: 2 of 4 cavities of A, 2 of 2 of B\n"},
		{"no column of colours in one", "Wire,From,To,Colour\n1,P1:1,M:1,red\n2,P1:2,M:2,blue\n", "Wire,From,To\n1,P1:1,M:1\n2,P1:2,M:2\n",
			alone + "matched: 4 of 4 cavities of A, 4 of 4 of B; not compared: colour, which B lacks\n"},
		{"columns that either lacks", "Wire,From,To,Colour\n1,P1:1,M:1,red\n", "From,To,AWG,Length mm\nP1:1,M:1,22,500\n",
			alone + "matched: 2 of 2 cavities of A, 2 of 2 of B; not compared: size and length, which A lacks; wire ids and colour, " +
				"which " +
				"B lacks\n"},
		{"nothing in common", "Pin,Function\nA,Horn\nB,Wiper\n", "Pin,Function\n1,Fan\n2,Choke\n3,Lamp\n",
			"A and B have nothing in common: no cavity, no wire id and no signal of one is in the other. Compare two lists of one " +
				"harness\n" +
				"matched: 0 of 2 cavities of A, 0 of 3 of B\n"},
		{"a signal in common, and no cavity", "Pin,Function\nA,Horn\nB,Wiper\n", "Pin,Function\n1,Horn\n2,Choke\n",
			"wire 1 \"Horn\" moved from left:A to left:1\nwire 2 \"Wiper\" left:B removed\nwire 2 \"Choke\" left:2 added\n" +
				"matched: 0 of 2 cavities of A, 0 of 2 of B; 1 wire by id, signal or the rest of their rows" +
				"; connector left is right in B\n"},
		{"ids and no cavities", "Wire,AWG,Colour\nW1,20,red\nW2,18,black\nW3,18,white\n",
			"Wire,AWG,Colour\nW1,20,red\nW3,16,white\nW4,18,pink\n",
			"wire W3: size is 16, was 18\nwire W2 removed\nwire W4 added\nmatched: 2 of 3 wires of A, 2 of 3 of B\n"},
		{"signals alone", "Signal,AWG,Colour\nHorn,20,red\nWiper,18,black\n", "Signal,AWG,Colour\nWiper,18,black\nHorn,22,red\n",
			"wire 1 \"Horn\": size is 22, was 20\nmatched: 2 of 2 wires of A, 2 of 2 of B\n"},
		{"a connector with another name and other cavities, by its signals", "From,To,Signal\nP:1,A:1,Horn\nP:2,A:2,Lamp\nP:3,A:3,Pump\n",
			"From,To,Signal\nP:3,B:8,Pump\nP:1,B:1,Horn\nP:2,B:7,Lamp\n",
			"termination A is called B now: 3 of 3 signals are the same\nwire 2 \"Lamp\" moved from A:2 to A:7\n" +
				"wire 3 \"Pump\" moved from A:3 to A:8\nmatched: 4 of 6 cavities of A, 4 of 6 of B\n"},
		{"ids against cavities", "Wire,AWG,Colour\nW1,20,red\nW2,18,black\n",
			"Wire,From,To,AWG,Colour\nW1,P:1,M:1,20,red\nW2,P:2,M:2,20,black\n",
			"wire W2: size is 20, was 18\n" +
				"matched: 0 of 0 cavities of A, 0 of 4 of B; 2 wires by id, signal or the rest of their rows; not compared: ends, which " +
				"A lacks\n"},
		{"shades", "Pin,Label,Colour\n1,Trim,light green\n2,Tab,green\n3,Gear,dk blue\n",
			"Pin,Label,Colour\n1,Trim,dark green\n2,Tab,light green\n3,Gear,dark blue\n",
			"wire 1 \"Trim\" left:1: colour is dark green, was light green\nwire 2 \"Tab\" left:2: colour is light green, was green\n" +
				"matched: 3 of 3 cavities of A, 3 of 3 of B; connector left is right in B\n"},
		{"far ends without a cavity, named twice", "Wire,From,To\nW1,P:A,lamp\nW2,P:B,lamp\nW3,P:C,horn\n",
			"Wire,From,To\nW1,P:A,lamp\nW2,P:B,horn\nW3,P:C,horn\n",
			"wire W2 moved from lamp to horn\nmatched: 3 of 3 cavities of A, 3 of 3 of B\n"},
		{"far ends without a cavity, named once", "Wire,From,To\nW1,P:A,lamp\n", "Wire,From,To\nW1,P:A,horn\n",
			"wire W1 moved from lamp to horn\nmatched: 1 of 1 cavities of A, 1 of 1 of B\n"},
		{"far ends swapped without a cavity", "Wire,From,To\nW1,P:A,lamp\nW2,P:B,horn\n", "Wire,From,To\nW1,P:A,horn\nW2,P:B,lamp\n",
			"A and B swapped at P: wires W1 and W2 swapped places, W1 now leads to horn and W2 to lamp\n" +
				"matched: 2 of 2 cavities of A, 2 of 2 of B\n"},
		{"no far end any more", "Wire,From,To\nW1,P:A,lamp\nW2,P:B,lamp\n", "Wire,From,To\nW1,P:A,lamp\nW2,P:B,\n",
			"wire W2 has no end at lamp any more\nmatched: 2 of 2 cavities of A, 2 of 2 of B\n"},
		{"sizes in mm²", "Wire,From,To,AWG\n1,P:1,M:1,22\n2,P:2,M:2,20\n3,P:3,M:3,22\n4,P:4,M:4,18\n",
			"Wire,From,To,mm²\n1,P:1,M:1,0.326\n2,P:2,M:2,0.518\n3,P:3,M:3,0.35\n4,P:4,M:4,0.75\n",
			"wire 3 P:3 to M:3: size is 0.35mm2, was 22\nwire 4 P:4 to M:4: size is 0.75mm2, was 18\n" +
				"the unit of size is mm², was AWG: 2 wires, of the same size within 1 %\nmatched: 8 of 8 cavities of A, 8 of 8 of B\n"},
		{"a sign at the end of a signal", "Pin,Function\n1,Temp+\n2,Temp-\n", "Pin,Function\n1,Temp-\n2,Temp+\n",
			"1 and 2 swapped at left (\"Temp+\" and \"Temp-\")\n" +
				"matched: 2 of 2 cavities of A, 2 of 2 of B; connector left is right in B\n"},
		{"a point in a signal", "Pin,Function\n1,Feed 3.3 V\n2,Feed 5 V\n", "Pin,Function\n1,Feed 33 V\n2,Feed 5 V\n",
			"wire 1 \"Feed 3.3 V\" left:1: signal is Feed 33 V, was Feed 3.3 V\n" +
				"matched: 2 of 2 cavities of A, 2 of 2 of B; connector left is right in B\n"},
		{"connectors whose names differ in signs alone", "Wire,From,To\n1,X1-1:1,M:1\n2,X11:1,M:2\n",
			"Wire,From,To\n2,X11:1,M:2\n1,X1-1:1,M:1\n",
			"no difference\nmatched: 4 of 4 cavities of A, 4 of 4 of B\n"},
		{"a remark", "Wire,From,To,Remark\n1,P:1,M:1,\n2,P:2,M:2,crimp twice\n", "Wire,From,To,Remark\n1,P:1,M:1,\n2,P:2,M:2,solder\n",
			"wire 2 P:2 to M:2: note is solder, was crimp twice\nmatched: 4 of 4 cavities of A, 4 of 4 of B\n"},
		{"a column that is not understood", "Wire,From,To,Zone\n1,P:1,M:1,hot\n2,P:2,M:2,wet\n",
			"Wire,From,To,Zone\n1,P:1,M:1,hot\n2,P:2,M:2,dry\n",
			"wire 2 P:2 to M:2: note is Zone: dry, was Zone: wet\nmatched: 4 of 4 cavities of A, 4 of 4 of B\n"},
		{"a column that is not understood, in one", "Wire,From,To,Zone\n1,P:1,M:1,hot\n2,P:2,M:2,wet\n",
			"Wire,From,To\n1,P:1,M:1\n2,P:2,M:2\n",
			alone + "matched: 4 of 4 cavities of A, 4 of 4 of B; not compared: column \"Zone\", which B lacks\n"},
		{"text above the table", "Revision B\nWire,From,To\n1,P:1,M:1\n", "Revision C\nWire,From,To\n1,P:1,M:1\n",
			alone + "matched: 2 of 2 cavities of A, 2 of 2 of B; not compared: what the import left out (A row 1; B row 1)\n"},
		{"an empty cavity that one does not list", "Pin,Function\n1,Horn\n2,Wiper\n3,-\n", "Pin,Function\n1,Horn\n2,Wiper\n",
			alone + "matched: 2 of 3 cavities of A, 2 of 2 of B; connector left is right in B; not compared: empty cavities left:3, " +
				"which B " +
				"lacks\n"},
		{"a fuse by another name", "Signal,From,To,Fuse\nPump,E:1,C:1,F4 15A\n", "Signal,From,To,Fuse\nPump,E:1,C:1,F5 15A\n",
			"wire 1 \"Pump\" E:1 to C:1: fuse is 15 A (F5), was 15 A (F4)\nmatched: 2 of 2 cavities of A, 2 of 2 of B\n"},
		{"a cable by another name", "Signal,From,To,Cable\nH,E:1,C:1,K1\nL,E:2,C:2,K1\n",
			"Signal,From,To,Cable\nH,E:1,C:1,K2\nL,E:2,C:2,K2\n",
			"wire 1 \"H\" E:1 to C:1: note is cable: K2, was cable: K1\nwire 2 \"L\" E:2 to C:2: note is cable: K2, was cable: K1\n" +
				"matched: 4 of 4 cavities of A, 4 of 4 of B\n"},
		{"a pair by another name", "Signal,From,To,Twist\nH,E:1,C:1,K1\nL,E:2,C:2,K1\n",
			"Signal,From,To,Twist\nH,E:1,C:1,K2\nL,E:2,C:2,K2\n",
			"unit of wires 1, 2: it is called K2, was K1\nmatched: 4 of 4 cavities of A, 4 of 4 of B\n"},
		{"a pin table against a list with far ends", "Wire,From,To\n1,P:1,M:1\n2,P:2,M:2\n3,N:1,O:1\n",
			"Connector,Pin,Wire\nP,1,1\nP,2,2\n",
			alone + "matched: 2 of 6 cavities of A, 2 of 2 of B; not compared: far ends, which B lacks; wire 3, with no end at a " +
				"connector " +
				"of B\n"},
		{"an id left out that was a number", "Wire,From,To\n1,P:1,M:1\n2,P:2,M:2\n3,P:3,M:3\n",
			"Wire,From,To\n,P:1,M:1\n2,P:2,M:2\n3,P:3,M:3\n",
			"wire 1 P:1 to M:1: id is none, was 1\nmatched: 6 of 6 cavities of A, 6 of 6 of B\n"},
		{"wires without end, name or id", "Wire,AWG,Colour\n,20,red\n,18,black\n", "Wire,AWG,Colour\n,18,black\n,20,red\n",
			"no difference\nmatched: 2 of 2 wires of A, 2 of 2 of B\n"},
		{"numbered in another way", "Wire,From,To\n1,P:1,M:1\n2,P:2,M:2\n", "Wire,From,To\n101,P:1,M:1\n102,P:2,M:2\n",
			alone + "matched: 4 of 4 cavities of A, 4 of 4 of B; not compared: wire ids, as most of them are others\n"},
	} {
		r := compare.Between(called(t, "left.csv", c.a), called(t, "right.csv", c.b))
		if got := r.Text(); got != c.want {
			t.Errorf("%s:\n%s\nwant\n%s", c.name, got, c.want)
		}
	}
	r := compare.Between(compare.List{}, compare.List{})
	if got := r.Text(); got != "no difference: both are empty\nmatched: 0 of 0 cavities of A, 0 of 0 of B\n" {
		t.Errorf("two empty lists: %s", got)
	}
	r = compare.Between(called(t, "left.csv", "Pin,Function,Remark,Zone\n1,Horn,loud,wet\n"), compare.List{})
	if got := r.Text(); got != "wire 1 \"Horn\" left:1 removed\ntermination left removed\nmatched: 0 of 1 cavities of A, 0 of 0 of B\n" {
		t.Errorf("an empty list: %s", got)
	}
}

// Change any one cell of a list to anything that means something else: it is never "no difference".
func TestAnyCell(t *testing.T) {
	head := []string{"Wire", "Signal", "From", "Pin", "To", "Pin", "AWG", "Colour", "Length mm", "Fuse", "Cable", "Note", "Zone"}
	rows := [][]string{
		{"W1", "Pump +", "P1", "1", "M1", "1", "16", "red", "800", "F1 15A", "", "keep clear", "hot"},
		{"W2", "Pump -", "P1", "2", "M1", "2", "16", "black", "800", "", "", "", "hot"},
		{"W3", "CAN H", "P1", "3", "D1", "1", "24", "yellow", "650", "", "K1 screened", "", "dry"},
		{"W4", "CAN L", "P1", "4", "D1", "2", "24", "light green", "650", "", "K1 screened", "", "dry"},
		{"W5", "Lamp", "P1", "5", "lamp", "", "22", "white", "1200", "F2 5A", "", "", ""},
		{"W6", "Lamp 2", "P1", "6", "lamp", "", "22", "grey", "1200", "F2 5A", "", "last", ""},
	}
	other := map[string][]string{
		"Wire": {"W7", "A2", "", "1"}, "Signal": {"Pump", "Fan", "CAN +", ""}, "From": {"P2", "D1", "M1"}, "To": {"P2", "horn", "M1"},
		"Pin": {"7", "9", "A"}, "AWG": {"20", "18", "0.35 mm²", "see note", ""}, "Colour": {"blue", "dark green", "mauve", "white/red", ""},
		"Length mm": {"820", "see drawing", ""}, "Fuse": {"F3 15A", "F1 20A", "F2 7.5A", ""}, "Cable": {"K2", "K1", ""},
		"Note": {"twice", "keep it clear", ""}, "Zone": {"wet", ""}}
	text := func(rows [][]string) string {
		all := strings.Join(head, ",") + "\n"
		for _, r := range rows {
			all += strings.Join(r, ",") + "\n"
		}
		return all
	}
	was := called(t, "left.csv", text(rows))
	if r := compare.Between(was, called(t, "right.csv", text(rows))); r.Text() != "no difference\n"+r.Matched()+"\n" {
		t.Fatal(r.Text())
	}
	for i := range rows {
		for k, h := range head {
			for _, now := range other[h] {
				if now == rows[i][k] {
					continue
				}
				changed := make([][]string, len(rows))
				for n := range rows {
					changed[n] = append([]string{}, rows[n]...)
				}
				changed[i][k] = now
				is := called(t, "right.csv", text(changed))
				for turn, pair := range [][2]compare.List{{was, is}, {is, was}} {
					r := compare.Between(pair[0], pair[1])
					if strings.HasPrefix(r.Text(), "no difference") || len(r.Differences) == 0 && r.Complete() {
						t.Errorf("%s of row %d is %q, was %q (turned %d):\n%s", h, i+1, now, rows[i][k], turn, r.Text())
					}
				}
			}
		}
	}
}

// Of two pin tables of one connector with any names and any signals: each cavity whose signal is another
// is told, whatever the connectors are called, and where all are the same nothing is.
func TestOneConnectorEach(t *testing.T) {
	signals := []string{"Horn", "Wiper", "Lamp", "Fan", "Choke", "Feed", "Ground"}
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 6).Draw(t, "cavities")
		a := rapid.Permutation(signals).Draw(t, "a")[:n]
		b := append([]string{}, a...)
		for range rapid.IntRange(0, 2).Draw(t, "changes") {
			b[rapid.IntRange(0, n-1).Draw(t, "cavity")] = rapid.SampledFrom(signals).Draw(t, "signal")
		}
		text := func(connector string, all []string) string {
			s := "Connector,Pin,Function\n"
			for i, name := range all {
				s += fmt.Sprintf("%s,%d,%s\n", connector, i+1, name)
			}
			return s
		}
		other := rapid.SampledFrom([]string{"K1", "K2", "Bulkhead"}).Draw(t, "name")
		r := compare.Between(pinTableOf(text("K1", a)), pinTableOf(text(other, b)))
		told := r.Text()
		if r.A != (compare.Count{Matched: n, All: n}) || r.A != r.B ||
			(other != "K1") != strings.Contains(told, "is called "+other+" now") {
			t.Fatalf("%v %v:\n%s", a, b, told)
		}
		for i := range a {
			if a[i] != b[i] && (!strings.Contains(told, a[i]) || !strings.Contains(told, b[i])) {
				t.Fatalf("cavity %d was %s, is %s:\n%s", i+1, a[i], b[i], told)
			}
		}
		if same := strings.Join(a, " ") == strings.Join(b, " ") && other == "K1"; same != strings.HasPrefix(told, "no difference\n") {
			t.Fatalf("%v %v:\n%s", a, b, told)
		}
	})
}

func pinTableOf(text string) compare.List {
	tables, _ := table.Read("list.csv", []byte(text), table.Limits{})
	h, rep, _ := wirelist.Import(tables, draft.Options{})
	return compare.List{Harness: h, Report: rep}
}

// Two connectors of a harness whose names differ in a sign alone are each the one that is spelled alike, in any
// order.
func TestSpelledAlike(t *testing.T) {
	wire := func(id, signal, from string) model.Wire {
		return model.Wire{ID: id, Signal: model.Some(signal), From: model.Some(from)}
	}
	a := model.Harness{Terminations: []model.Termination{{ID: "INJ-1"}, {ID: "INJ1"}},
		Wires: []model.Wire{wire("1", "Horn", "INJ-1:1"), wire("2", "Fan", "INJ1:1")}}
	b := a
	b.Terminations = []model.Termination{a.Terminations[1], a.Terminations[0]}
	r := compare.Between(compare.List{Harness: a}, compare.List{Harness: b})
	if len(r.Differences) > 0 || !r.Complete() {
		t.Error(r.Text())
	}
}
