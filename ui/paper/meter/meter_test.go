package meter_test

import (
	"html"
	"regexp"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/file"
	"contralay/model/unit"
	"contralay/ui/paper/list"
	"contralay/ui/paper/meter"
	"contralay/ui/paper/page"
)

// handLoom is the small loom whose lists were worked out by hand.
func handLoom(t *testing.T) *sheet.Sheet {
	t.Helper()
	d, err := file.Load("../testdata/byhand.toml")
	if err != nil {
		t.Fatal(err)
	}
	return calc.Complete(&d.Harness, calctest.Catalogue(t), nil)
}

var (
	rowOf  = regexp.MustCompile(`(?s)<tr[^>]*>(.*?)</tr>`)
	cellOf = regexp.MustCompile(`(?s)<td[^>]*>(.*?)</td>`)
	tagOf  = regexp.MustCompile(`<[^>]*>`)
)

// text is HTML without its tags.
func text(s string) string {
	s = strings.NewReplacer("<br>", " ", "</div>", " ").Replace(s)
	return strings.Join(strings.Fields(html.UnescapeString(tagOf.ReplaceAllString(s, ""))), " ")
}

// printed is blocks on paper: the rows of their tables, cells with strokes between and small letters in braces,
// and all that they say.
func printed(blocks []page.Block) (rows []string, says string) {
	_, body, _ := strings.Cut(string(page.Lay(blocks).HTML(page.Frame{})), "</style>")
	says = text(body)
	body = strings.NewReplacer("<u>", "{", "</u>", "}").Replace(body)
	for _, r := range rowOf.FindAllStringSubmatch(body, -1) {
		var cells []string
		for _, c := range cellOf.FindAllStringSubmatch(r[1], -1) {
			cells = append(cells, text(c[1]))
		}
		if len(cells) > 0 {
			rows = append(rows, strings.Join(cells, " | "))
		}
	}
	return rows, says
}

func same(t *testing.T, what string, got, want []string) {
	t.Helper()
	if !slices.Equal(got, want) {
		t.Errorf("%s: got\n%s\nwant\n%s", what, strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
}

// The ring-out of the loom by hand: its nets and ohm as testdata/byhand.txt has them with their sums, each once, a
// box for each time. All have the limit of 0.5 ohm of a hand meter, which the note says.
func TestRingByHand(t *testing.T) {
	rows, says := printed(meter.Ring(list.MakerOf(handLoom(t))))
	same(t, "ring-out", rows, []string{
		"P1:A | LMP1:1 | 0.026 |  | ", "P1:A | LMP2:1 | 0.029 |  | ", "P1:A | LOG1:C | 0.032 |  | ",
		"P1:B | GND1:1 | 0.019 |  | ", "P1:B | LMP1:2 | 0.038 |  | ", "P1:B | LMP2:2 | 0.041 |  | ",
		"P1:C | LOG1:A | 0.039 |  | ", "P1:D | LOG1:B | 0.039 |  | ", "P1:E | LMP1:3 | 0.034 |  | ",
		"P1:F | LMP1:4 | 0.034 |  | ", "P1:G | LMP2:3 | 0.036 |  | ", "P1:H | nothing | open |  | ",
		"shell of P1 | shield of C1 | - |  | ",
	})
	for _, w := range []string{"9 nets, 13 tests.", "Hand meter, leads and all: under 0.5 ohm.",
		"at most the ohm of the row, copper at 20 C; 0.01 more with contacts in", "Nothing else may ring.",
		"limits: common practice, no source",
		"bare, before anything covers the wires, and with contacts in, before tubes are shrunk", "A dash: not known; it must ring."} {
		if !strings.Contains(says, w) {
			t.Errorf("it does not say %q:\n%s", w, says)
		}
	}
	if strings.Contains(says, "~") {
		t.Error("a published figure is marked as from memory")
	}
}

// The pairs that are printed are those of the file: each end in a cavity is a probe once, by joining the ends
// of all wires. A wire that is left out of the list, or stands twice, is noticed.
func TestRingIsWhole(t *testing.T) {
	for _, name := range []string{"demo", "whole", "feeds", "example", "trunk", "built-up"} {
		s := laid(t, name)
		net := map[string]string{}
		var of func(string) string
		of = func(e string) string {
			if up, is := net[e]; is && up != e {
				return of(up)
			}
			return e
		}
		ends := map[string]bool{}
		for _, w := range s.H.Wires {
			for _, e := range []string{w.From.V, w.To.V} {
				if strings.Contains(e, ":") {
					ends[e] = true
				}
			}
			if a, z := of(w.From.V), of(w.To.V); w.From.V != "" && w.To.V != "" && a != z {
				net[a] = z
			}
		}
		rows, _ := printed(meter.Ring(list.MakerOf(s)))
		probed := map[string]int{}
		from := map[string]bool{}
		for _, r := range rows {
			cells := strings.Split(strings.NewReplacer("{", "", "}", "").Replace(r), " | ")
			a, z := cells[0], cells[1]
			if !ends[a] {
				continue // a shell, or a drain alone
			}
			if ends[z] && of(a) != of(z) {
				t.Errorf("%s: %s does not ring to %s", name, a, z)
			}
			from[a] = true
			if ends[z] {
				probed[z]++
			}
		}
		for e := range ends {
			if n := probed[e]; n != calctest.Once(!from[e]) {
				t.Errorf("%s: %s is probed %d times; a net begins there: %v", name, e, n, from[e])
			}
		}
	}
}

// Where nets are longer than the usual limit of a hand meter is good for, each row has its own; a figure from
// memory is marked where not all are.
func TestLimitsOfRows(t *testing.T) {
	rows, says := printed(meter.Ring(list.MakerOf(laid(t, "whole"))))
	limits := map[string]int{}
	for _, r := range rows {
		cells := strings.Split(r, " | ")
		limits[cells[3]]++
		ohm, err := unit.ParseNumber(strings.TrimRight(cells[2], " ~"))
		if err != nil {
			continue
		}
		if want := map[bool]string{true: "0.5", false: "0.6"}[ohm <= 0.1]; cells[3] != want {
			t.Errorf("%s: a hand meter reads under %s, want %s", r, cells[3], want)
		}
	}
	if limits["0.5"] == 0 || limits["0.6"] == 0 || !strings.Contains(says, "less than the column hand") {
		t.Errorf("%v: %s", limits, says)
	}
	demo, _ := printed(meter.Ring(list.MakerOf(laid(t, "demo"))))
	if !slices.ContainsFunc(demo, func(r string) bool { return strings.HasPrefix(r, "P1:{k} | TPS1:1 | 0.064~ |") }) {
		t.Errorf("wire 231 of 24 AWG has no mark of memory: %q", demo)
	}
}

// Two wires that join the same ends cannot be told apart by ringing: the page says so.
func TestTwoWiresBesideEachOther(t *testing.T) {
	s := handLoom(t)
	h := s.H.EditWire(slices.IndexFunc(s.H.Wires, func(w model.Wire) bool { return w.ID == "109" }), func(w *model.Wire) {
		w.From, w.To = model.Some("P1:F"), model.Some("LMP1:4")
	})
	_, says := printed(meter.Ring(list.MakerOf(calc.Complete(h, s.Cat, nil))))
	if !strings.Contains(says, "Ring 111 before it is joined: in the net of P1:F another wire joins the same ends.") {
		t.Errorf("it says %s", says)
	}
}

// Insulation by hand: groups by the role of their wires, one voltage, one limit, and the cautions.
func TestIsolationByHand(t *testing.T) {
	rows, says := printed(meter.Isolation(list.MakerOf(handLoom(t))))
	same(t, "isolation", rows, []string{
		"power | 3: P1 A, F, G | 500 | 100 |  |  | ", "ground | 1: P1 B | 500 | 100 |  |  | ",
		"signal and data | 2: P1 C, D | 500 | 100 |  |  | ", "spare | 2: P1 E, H | 500 | 100 |  |  | ",
		"shield | 1: shield of C1 | 500 | 100 |  |  | ",
	})
	for _, w := range []string{"Take every device, sensor and load off the harness first: 500 V can destroy them.",
		"Nobody touches an end while the volts are on; discharge the harness before you do.", "500 V DC: common practice, no source;",
		"100 megohm, and 200 to 1000 V: a service bulletin on wiring tests.", "1 min at most",
		"never more volts than the part rated lowest stands."} {
		if !strings.Contains(says, w) {
			t.Errorf("it does not say %q:\n%s", w, says)
		}
	}
}

// The loaded drop by hand, of feeds alone: byhand.txt has the sums. A harness without a feed says so, and a feed
// without a current is named.
func TestDropByHand(t *testing.T) {
	s := handLoom(t)
	rows, says := printed(meter.Drop(list.MakerOf(s)))
	same(t, "drop", rows, []string{
		"F1 | Lamps | P1:A | LMP1:1 | 101 102 | 110 | 0.80 | 0.03 | 0.50 |  | ",
		"F2 | Flasher unit | P1:G | LMP2:3 | 112 |  | 0.80 | 0.03 | 1.00 |  | ",
	})
	if !strings.Contains(says, "Live battery") {
		t.Errorf("no caution: %s", says)
	}
	bare := *s.H
	bare.Feeds = nil
	if rows, says := printed(meter.Drop(list.MakerOf(calc.Complete(&bare, s.Cat, nil)))); len(rows) > 0 ||
		!strings.Contains(says, "The file has no feed, so no drop under load is listed.") {
		t.Errorf("without a feed: %q %s", rows, says)
	}
	h := s.H.EditWire(0, func(w *model.Wire) { w.Amps = model.Opt[unit.Ampere]{} })
	for _, id := range []string{"102", "103", "104"} {
		h = h.EditWire(slices.IndexFunc(h.Wires, func(w model.Wire) bool { return w.ID == id }), func(w *model.Wire) {
			w.Amps = model.Opt[unit.Ampere]{}
		})
	}
	rows, says = printed(meter.Drop(list.MakerOf(calc.Complete(h, s.Cat, nil))))
	if len(rows) != 1 || !strings.Contains(says, "Not known, since a current, a length or a resistance is missing: F1.") {
		t.Errorf("without currents: %q %s", rows, says)
	}
}

// Three different people sign, and each instrument has its number.
func TestSign(t *testing.T) {
	rows, says := printed(meter.Sign())
	same(t, "signatures", rows, []string{"hand meter |  | ", "four-wire meter |  | ", "insulation tester |  | ", "pull tester |  | ",
		"built |  |  | ", "checked |  |  | ", "released |  |  | "})
	if !strings.Contains(says, "three different people sign") {
		t.Error(says)
	}
}

// sheets are those of files of testdata, each worked out once for all tests.
var sheets = map[string]*sheet.Sheet{}

func laid(t *testing.T, name string) *sheet.Sheet {
	t.Helper()
	if sheets[name] == nil {
		sheets[name] = calctest.Laid(t, name)
	}
	return sheets[name]
}
