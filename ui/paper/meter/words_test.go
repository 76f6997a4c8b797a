package meter

import (
	"encoding/csv"
	"os"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/query/lists"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/compare"
	"contralay/model/file"
	"contralay/model/unit"
	"contralay/ui/paper/cavity"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
)

// The files of the tests as testdata/byhand.txt has them with their sums.
func TestFilesByHand(t *testing.T) {
	d, err := file.Load("../testdata/byhand.toml")
	if err != nil {
		t.Fatal(err)
	}
	m := list.MakerOf(calc.Complete(&d.Harness, calctest.Catalogue(t), nil))
	text, err := os.ReadFile("../testdata/byhand.txt")
	if err != nil {
		t.Fatal(err)
	}
	for name, table := range map[string]list.Table{"ring-out": RingTable(m), "isolation": IsolationTable(m), "loaded-drop": DropTable(m)} {
		_, block, ok := strings.Cut(string(text), "== "+name+"\n")
		block, _, _ = strings.Cut(block, "\n== ")
		r := csv.NewReader(strings.NewReader(block))
		r.Comma, r.Comment, r.FieldsPerRecord, r.LazyQuotes = '|', '#', -1, true
		want, err := r.ReadAll()
		if err != nil || !ok || table.File != name {
			t.Fatalf("%s: %v", name, err)
		}
		if len(table.Rows)+1 != len(want) {
			t.Errorf("%s has %d rows, by hand %d", name, len(table.Rows), len(want)-1)
			continue
		}
		for k, head := range want[0] {
			at := slices.Index(table.Head, strings.TrimSpace(head))
			for n, row := range want[1:] {
				cell := ""
				if k < len(row) {
					cell = strings.TrimSpace(row[k])
				}
				if at < 0 || table.Rows[n][at] != cell && !(cell == "-" && table.Rows[n][at] == "") {
					t.Errorf("%s, row %d, %s: by hand %q in %q", name, n+1, head, cell, table.Rows[n])
				}
			}
		}
	}
}

// Tests in words, by hand: a net that rings to nothing is open, a copper that is not known a dash; a mark of memory where not all
// figures share it.
func TestRingsInWords(t *testing.T) {
	to := func(end string, ohm float64, standing catalogue.Standing) ring {
		r := ring{to: lists.RungTo{End: end, Via: []string{"101", "102"}}}
		if ohm > 0 {
			r.to.Ohm, r.to.Standing = model.Some(unit.Ohm(ohm)), standing
		}
		return r
	}
	m := list.Maker{H: &model.Harness{Wires: []model.Wire{{ID: "1"}, {ID: "2"}}}}
	silent := ring{of: lists.Net{Wires: []int{1, 0}}}
	rings, dash, memory := to("A:1", 0.0264, catalogue.Published), to("A:1", 0, ""), to("A:1", 0.05, catalogue.Memory)
	for _, c := range []struct {
		r                                ring
		to, by, four, marked, hand, fine string
	}{{rings, "A:1", "101 102", "0.026", "0.026", "0.5", "0.026"}, {dash, "A:1", "101 102", "-", "-", "-", ""}, {memory, "A:1", "101 102",
		"0.050", "0.050~", "0.5", "0.050"}, {silent, "nothing", "2 1", "open", "open", "open", ""}} {
		if c.r.toText() != c.to || c.r.by(m) != c.by || c.r.fourWire(catalogue.Memory) != c.four || c.r.fourWire("") != c.marked ||
			c.r.hand() != c.hand || c.r.ohm(fine) != c.fine {
			t.Errorf("%q %q %q %q %q %q, by hand %+v", c.r.toText(), c.r.by(m), c.r.fourWire(catalogue.Memory), c.r.fourWire(""),
				c.r.hand(), c.r.ohm(fine), c)
		}
	}
	if coarse(0.04) != "0.0" || coarse(1.26) != "1.3" || fine(1.2345) != "1.234" && fine(1.2345) != "1.235" {
		t.Errorf("%s %s %s", coarse(0.04), coarse(1.26), fine(1.2345))
	}
	for _, c := range []struct {
		all   []ring
		same  catalogue.Standing
		limit unit.Ohm
	}{{nil, "", 0}, {[]ring{silent, dash}, "", 0}, {[]ring{silent, rings, dash}, catalogue.Published, 0.5}, {[]ring{memory, dash, memory},
		catalogue.Memory, 0.5}, {[]ring{rings, memory}, "", 0.5}, {[]ring{memory, rings, rings}, "", 0.5},
		{[]ring{rings, to("B:1", 5, catalogue.Published)}, catalogue.Published, 0}, {[]ring{to("B:1", 5, catalogue.Published), rings},
			catalogue.Published, 0}} {
		if got, limit := standing(c.all), oneLimit(c.all); got != c.same || coarse(limit) != coarse(c.limit) {
			t.Errorf("%v: %q, %v; by hand %q, %v", c.all, got, limit, c.same, c.limit)
		}
	}
	if against(lists.GroupShield) != "every net" || against(lists.GroupPower) != "all other nets, shields and shells" {
		t.Error("against what a net is tested")
	}
	for v, want := range map[unit.Volt]string{0.0049: "0.005", 0.001: "0.001", 0.005: "0.01", 0.126: "0.13"} {
		if got := expected(lists.Drop{Expect: v}); got != want {
			t.Errorf("%v V: %q, want %q", v, got, want)
		}
	}
	if got := wireIDs(m, []int{1, 0}); got != "2 1" || wireIDs(m, nil) != "" {
		t.Errorf("%q", got)
	}
	if heldText(compare.Count{All: 5, Matched: 5}) != "all 5 wired cavities" || heldText(compare.Count{All: 5,
		Matched: 4}) != "4 of 5 wired cavities" {
		t.Error("how much is held")
	}
	if count(1, "net") != "1 net" || count(0, "net") != "0 nets" || count(13, "test") != "13 tests" {
		t.Error("numbers of things")
	}
	line := func(nets ...string) string {
		text, _ := cavity.Lines(netWords(lists.Apart{Nets: nets}), page.Small, 500)
		return string(text)
	}
	for want, nets := range map[string]string{"3: P1 A, B; X <u>a</u>": "P1:A P1:B X:a", "4: P1 1 to 4": "P1:1 P1:2 P1:3 P1:4",
		"3: P1 A, C; X 1": "P1:A X:1 P1:C"} {
		if got := line(strings.Fields(nets)...); got != want {
			t.Errorf("%s: %q, want %q", nets, got, want)
		}
	}
	if got := line("shield of C1", "shield of C2", "P1:A"); got != "3: shield of C1, C2; P1 A" {
		t.Errorf("%q", got)
	}
}

// What an independent list says of a loom of two wires, by hand: where it joins the same, what it does not name, and that it disagrees.
func TestHeldAgainstAList(t *testing.T) {
	const loom = `format = 1
[harness]
listed_from = "list 7"
[[termination]]
id = "A"
cavities = ["1", "2"]
[[termination]]
id = "Z"
cavities = ["1", "2"]
[[branch]]
id = "T1"
from = "A"
to = "Z"
length_mm = 400.0
[[wire]]
id = "1"
from = "A:1"
to = "Z:1"
spec = "AS22759/32"
size = "22"
[[wire]]
id = "2"
from = "A:2"
to = "Z:2"
spec = "AS22759/32"
size = "22"
`
	m := list.MakerOf(calctest.Built(t, loom))
	if got := listedNote(m); got != "" {
		t.Errorf("%q", got)
	}
	m = list.MakerOf(calctest.Built(t, loom+"[[listed]]\nends = [\"A:1\", \"Z:1\"]\n[[listed]]\nends = [\"A:2\", \"Z:2\"]\n"))
	if got := listedNote(m); got != " Held against an independent list, list 7: it joins the same in all 4 wired cavities." {
		t.Errorf("%q", got)
	}
	m = list.MakerOf(calctest.Built(t, loom+"[[listed]]\nends = [\"A:1\", \"A:2\"]\n"))
	if got := listedNote(m); !strings.HasPrefix(got, " Held against an independent list, list 7: ") || !strings.HasSuffix(got,
		" DISAGREE, see the first page. Do not build before that is settled.") {
		t.Errorf("%q", got)
	}
	m.H.Listed = []model.Listed{{Ends: []string{"A:1"}}}
	if got := unlisted(m); !slices.Equal(got, []string{"Z"}) {
		t.Errorf("%q", got)
	}
}
