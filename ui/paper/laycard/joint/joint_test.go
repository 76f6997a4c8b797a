package joint

import (
	"fmt"
	"strings"
	"testing"

	"contralay/calc/calctest"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/paper/laycard/section"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
)

// head is how the picture of a splice begins; its letters are 9 points, 3.175 mm.
func head(wide, high, says string) string {
	return `<svg xmlns="http://www.w3.org/2000/svg" class="joint" width="` + wide + `mm" height="` + high + `mm" viewBox="0 0 ` + wide +
		" " + high +
		`" role="img" aria-label="` + says + `" font-family="` + section.Family + `" font-size="3.175" fill="#000">`
}

func wire(way string) string {
	return `<path d="` + way + `" fill="none" stroke="#000" stroke-width=".5"/>`
}

// word is a text whose middle lies at a height: its base line is 0.36 sizes, 1.143 mm, lower.
func word(says string, x, y float64, anchor string, bold bool) string {
	weight := ""
	if bold {
		weight = ` font-weight="bold"`
	}
	return fmt.Sprintf(`<text x="%s" y="%s" text-anchor="%s"%s>%s</text>`, num(x), num(y+1.143), anchor, weight, says)
}

func strong(text string) float64 { return float64(page.Strong.Wide(text)) }
func small(text string) float64  { return float64(page.Small.Wide(text)) }

func equal(t *testing.T, what, got, want string) {
	t.Helper()
	if got != want {
		t.Errorf("%s:\n%s\nwant\n%s", what, strings.ReplaceAll(got, "<", "\n<"), strings.ReplaceAll(want, "<", "\n<"))
	}
}

// A splice of one wire into two, 40 mm wide, by hand: wires are 4.2 mm apart round a middle at 1 + 4.2 = 5.2; the sleeve of 10 mm lies
// in the middle, and wires of 4 mm beside it.
func TestCompactByHand(t *testing.T) {
	j := Joint{ID: "S<1", One: []Wire{{ID: "1"}}, More: []Wire{{ID: "2"}, {ID: "3"}}, At: "J1", Is: "1", Becomes: "2 and 3"}
	const sleeve = `<rect x="15" y="2.7" width="10" height="5" rx="1.2" fill="#fff" stroke="#000" stroke-width=".7"/>`
	wires := wire("M11 5.2C13 5.2 13 5.2 15 5.2") + word("1", 10, 5.2, "end", true) + wire("M25 5.2C27 5.2 27 3.1 29 3.1") + word("2",
		30, 3.1, "start", true) +
		wire("M25 5.2C27 5.2 27 7.3 29 7.3") + word("3", 30, 7.3, "start", true) + sleeve + word("S&lt;1", 20, 5.2, "middle", true)
	const says = "S&lt;1: wire 1 becomes 2 wires"
	svg, high := j.Compact(40)
	equal(t, "at its centre", string(svg), head("40", "10.4", says)+wires+"</svg>")
	if high != 10.4 {
		t.Errorf("%v high", high)
	}
	// The dimension lies 2.4 mm below the wires, at 11.8; it runs from the middle of the sleeve to beside the name of the breakout,
	// which lies
	// beyond it or before it; it takes 7.5 mm.
	j.From = "60 mm"
	for _, beyond := range []bool{true, false} {
		j.Beyond = beyond
		at := 1.5 + strong("J1")
		anchor, label, arrows := "end", at-1, "m2 -.8l-2 .8l2 .8M20 11.8m-2 -.8l2 .8l-2 .8"
		if beyond {
			at = 40 - at
			anchor, label, arrows = "start", at+1, "m-2 -.8l2 .8l-2 .8M20 11.8m2 -.8l-2 .8l2 .8"
		}
		// the words stand three quarters of their size below the line: 11.8 + 2.381
		dimension := fmt.Sprintf(`<path class="dimension" d="M20 7.7V12.8M%[1]s 10.3V12.8M20 11.8H%[1]s%[2]s" fill="none" stroke="#000" `+
			`stroke-width=".25"/>`, num(at), arrows) + word("60 mm", (20+at)/2, 14.18125, "middle", true) + word("J1", label, 11.8,
			anchor, true)
		svg, high := j.Compact(40)
		equal(t, "beside", string(svg), head("40", "17.9", says)+wires+dimension+"</svg>")
		if high != 17.9 {
			t.Errorf("%v high", high)
		}
	}
	many := Joint{One: make([]Wire, 3), More: make([]Wire, 5)}
	if high := highOf(many); high != 23 { // 5 · 4.2 + 2
		t.Errorf("five wires are %v high", high)
	}
}

// A splice with its words, by hand: above the one wire that comes in its colour, below it its end; beside those that go on all they are.
func TestPictureByHand(t *testing.T) {
	one := Wire{"1", "red", "20 AWG", "P1:A"}
	two, three := Wire{"2", "black", "22 AWG", "LAMP1:1"}, Wire{"33", "red/white", "22 AWG", "A:2"}
	need := func(w Wire) float64 { return strong(w.ID) + small(w.Colour+" "+w.Size+" to "+w.End) + 2.6 }
	j := Joint{ID: "S1", One: []Wire{one}, More: []Wire{two, three}, At: "J1", Is: "1", Becomes: "2 and 33"}
	svg, wide, high := j.Picture()
	w := 14 + 11 + 3.5 + max(need(two), need(three))
	said := func(w Wire, x, y float64) string {
		return word(w.ID, x+1, y, "start", true) + word(w.Colour+" "+w.Size+" to "+w.End, x+strong(w.ID)+2.5, y, "start", false)
	}
	// 0.95 · 4.2 = 3.99 above and below the middle
	want := head(num(w), "10.4", "S1: wire 1 becomes 2 wires") + wire("M10.5 5.2C12.25 5.2 12.25 5.2 14 5.2") + word("1", 9.5, 5.2,
		"end", true) +
		word("red", 0, 1.21, "start", false) + word("P1:A", 0, 9.19, "start", false) + wire("M25 5.2C26.75 5.2 26.75 3.1 28.5 "+
		"3.1") + said(two, 28.5, 3.1) +
		wire("M25 5.2C26.75 5.2 26.75 7.3 28.5 7.3") + said(three, 28.5, 7.3) +
		`<rect x="14" y="2.7" width="11" height="5" rx="1.2" fill="#fff" stroke="#000" stroke-width=".7"/>` + word("S1", 19.5, 5.2,
		"middle", true) + "</svg>"
	equal(t, "one wire", string(svg), want)
	if num(float64(wide)) != num(w) || high != 10.4 {
		t.Errorf("%v x %v", wide, high)
	}
	// Long words above, below or at the wire make it longer; short wires that go on have 20 mm.
	for _, c := range []struct {
		w Wire
		x float64
	}{
		{Wire{"1", "a very long colour", "", "x"}, small("a very long colour") - 2}, {Wire{"1", "x", "", "a very long name of an end"},
			small("a very long name of an end") - 2},
		{Wire{"a wire of a long name", "x", "", "y"}, strong("a wire of a long name") + 4.5},
	} {
		_, wide, _ := Joint{One: []Wire{c.w}, More: []Wire{{ID: "2"}}}.Picture()
		if want := c.x + 11 + 3.5 + 20; num(float64(wide)) != num(want) {
			t.Errorf("%v: %v wide, by hand %v", c.w, wide, want)
		}
	}
	// Two wires that come in have their end and colour before their number.
	j.One = []Wire{{"1", "red", "", "LAMP2:13"}, one}
	svg, wide, _ = j.Picture()
	x := strong("1") + small("LAMP2:13 red") + 2.6
	if num(float64(wide)) != num(x+3.5+11+3.5+max(need(two), need(three))) || x < 14 {
		t.Errorf("%v wide, by hand from %v", wide, x)
	}
	if want := wire(fmt.Sprintf("M%[1]s 3.1C%[2]s 3.1 %[2]s 5.2 %[3]s 5.2", num(x), num(x+1.75), num(x+3.5))) + word("1", x-1, 3.1,
		"end", true) +
		word("LAMP2:13 red", x-strong("1")-2.5, 3.1, "end", false); !strings.Contains(string(svg), want) {
		t.Errorf("it lacks\n%s\n%s", want, svg)
	}
}

// A splice in words, by hand.
func TestSpliceInWords(t *testing.T) {
	w := func(ids ...string) (out []Wire) {
		for _, id := range ids {
			out = append(out, Wire{ID: id})
		}
		return out
	}
	for want, j := range map[string]Joint{
		"S joins 1 and 2":                       {ID: "S", More: w("1", "2"), Becomes: "1 and 2"},
		"S joins 3":                             {ID: "S", One: w("3"), Is: "3"},
		"S: wire 1 becomes wire 2":              {ID: "S", One: w("1"), More: w("2"), Is: "1", Becomes: "2"},
		"S: wire 1 becomes 2 wires":             {ID: "S", One: w("1"), More: w("2", "3"), Is: "1", Becomes: "2 and 3"},
		"S: wires 1 and 2 become wires 3 and 4": {ID: "S", One: w("1", "2"), More: w("3", "4"), Is: "1 and 2", Becomes: "3 and 4"},
	} {
		if got := j.Says(); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
	j := Joint{At: "J1"}
	if j.Lies() != "at the centre of J1" || j.AlsoSays() != "at the centre of J1" {
		t.Errorf("%q, %q", j.Lies(), j.AlsoSays())
	}
	j.From, j.Along = "60 mm", "T1"
	if j.Lies() != "60 mm from the centre of J1, in T1" || j.AlsoSays() != "" {
		t.Errorf("%q, %q", j.Lies(), j.AlsoSays())
	}
	j.Also = "340 mm from P1"
	if j.Lies() != "60 mm from the centre of J1, in T1, 340 mm from P1" || j.AlsoSays() != "340 mm from P1" {
		t.Errorf("%q, %q", j.Lies(), j.AlsoSays())
	}
	all := []Joint{{ID: "S1", Over: "7.8", Goes: "S1 to J1"}, {ID: "S2"}, {ID: "S3", Over: "9"},
		{ID: "S4", Over: "7.8", Goes: "S4 to J2"}, {ID: "S5", Over: "7.8"}}
	if got := Over(all); got != "OD over S1, S4 and S5 7.8, S3 9." {
		t.Errorf("%q", got)
	}
	if got := Goes(all); got != "Lay from S1 to J1; from S4 to J2." {
		t.Errorf("%q", got)
	}
	if Over(all[1:2]) != "" || Goes(all[1:2]) != "" {
		t.Errorf("%q, %q", Over(all[1:2]), Goes(all[1:2]))
	}
	for text, want := range map[string]string{"": "", "1": "1", "1 2": "1 and 2", "1 2 3": "1, 2 and 3"} {
		if got := idsOf(w(strings.Fields(text)...)); got != want {
			t.Errorf("%q: %q", text, got)
		}
	}
	for want, wire := range map[string]model.Wire{"-": {}, "red": {Colour: model.Some("2")},
		"light blue": {Colour: model.Some("6"), Shade: model.Some(model.Shade("light"))},
		"white/blue": {Colour: model.Some("96")}} {
		if got := Colour(&wire); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
	for v, want := range map[float64]string{0: "0", -0.0001: "0", 1.5: "1.5", 2: "2", -3.1239: "-3.124"} {
		if got := num(v); got != want {
			t.Errorf("%v: %q, want %q", v, got, want)
		}
	}
}

// spliced is a loom of a trunk of 400 mm and two legs with a splice 60 mm along the trunk from the breakout, or where a change says.
func spliced(t *testing.T, change ...string) list.Maker {
	text := `format = 1
[[termination]]
id = "P1"
[[termination]]
id = "A"
[[termination]]
id = "B"
[[breakout]]
id = "J"
[[branch]]
id = "T1"
from = "P1"
to = "J"
length_mm = 400.0
[[branch]]
id = "L1"
from = "J"
to = "A"
length_mm = 200.0
[[branch]]
id = "L2"
from = "J"
to = "B"
length_mm = 100.0
[[splice]]
id = "S1"
part = "AS81824/1-2"
at = "J"
toward = "T1"
offset_mm = 60.0
[[wire]]
id = "1"
from = "P1:1"
to = "S1"
colour = "2"
spec = "AS22759/32"
size = "20"
[[wire]]
id = "2"
from = "S1"
to = "A:1"
spec = "AS22759/32"
size = "22"
[[wire]]
id = "3"
from = "B:1"
to = "S1"
spec = "AS22759/32"
size = "22"
[[wire]]
id = "4"
from = "S1"
to = "A:2"
spec = "AS22759/32"
size = "22"
`
	return list.MakerOf(calctest.Built(t, strings.NewReplacer(change...).Replace(text)))
}

// What a splice is, read off its file by hand. The part that joins is sold in a sleeve whose measures its catalogue gives.
func TestSpliceOfAFile(t *testing.T) {
	m := spliced(t)
	j := Of(m, 0)
	e := m.S.Cat.Splices["AS81824/1-2"]
	wantSleeve := "sleeve " + unit.MM.Length(e.LengthMM) + " mm long, OD " + unit.MM.Diameter(e.OverMM) + list.Mem(e.Standing)
	if e.LengthMM <= 0 || e.OverMM <= 0 || j.Sleeve != wantSleeve || j.Part != "AS81824/1-2"+list.Mem(m.S.Splices[0].Standing) {
		t.Errorf("%q %q, want %q", j.Part, j.Sleeve, wantSleeve)
	}
	if fmt.Sprint(j.One) != "[{1 red 20 AWG P1:1}]" || fmt.Sprint(j.More) != "[{2 - 22 AWG A:1} {3 - 22 AWG B:1} {4 - 22 AWG A:2}]" {
		t.Errorf("%v, %v", j.One, j.More)
	}
	if j.ID != "S1" || j.At != "J" || j.Along != "T1" || j.From != "60 mm" || j.Also != "340 mm from P1" || !j.Beyond || j.Is != "1" ||
		j.Becomes != "2, 3 and 4" {
		t.Errorf("%+v", j)
	}
	if m.S.Branches[0].OverMM != 1.27 || j.Over != "3.6"+list.Mem(e.Standing) { // wire 1 alone is 1.27 mm, the sleeve 3.60
		t.Errorf("%q over %v", j.Over, m.S.Branches[0].OverMM)
	}
	if j.Goes != "S1 to J, in the place of 1: 2 4 into L1, 3 into L2" {
		t.Errorf("%q", j.Goes)
	}
	// The other way round the branch ends at P1, and the splice lies as far from its start.
	if j := Of(spliced(t, "from = \"P1\"\nto = \"J\"", "from = \"J\"\nto = \"P1\""), 0); j.Also != "340 mm from P1" || !j.Beyond {
		t.Errorf("%+v", j)
	}
	// Along a leg the wires that come in do not run where it lies.
	if j := Of(spliced(t, `toward = "T1"`, `toward = "L1"`), 0); j.Beyond || j.Goes != "" || j.Also != "140 mm from A" ||
		j.From != "60 mm" {
		t.Errorf("%+v", j)
	}
	if j := Of(spliced(t, "offset_mm = 60.0\n", ""), 0); j.From != "" || j.Along != "" || j.Also != "" || j.Beyond || j.Over != "" {
		t.Errorf("%+v", j)
	}
	if j := Of(spliced(t, "part = \"AS81824/1-2\"\n", "", "length_mm = 400.0", "length_mm = 0.0"), 0); j.Also != "" || j.From != "60 mm" ||
		j.Goes != "" || j.Beyond {
		t.Errorf("%+v", j)
	}
	if j := Of(spliced(t, "part = \"AS81824/1-2\"", "part = \"none\""), 0); j.Sleeve != "" || !strings.HasPrefix(j.Part, "none") ||
		j.Over != "" {
		t.Errorf("%+v", j)
	}
}

// A sleeve whose length nobody knows is not told; one whose diameter is not known by its length alone.
func TestSleeveInPart(t *testing.T) {
	m := spliced(t)
	e := m.S.Cat.Splices["AS81824/1-2"]
	for want, change := range map[string]func(*catalogue.Splice){"": func(e *catalogue.Splice) { e.LengthMM = 0 },
		"sleeve " + unit.MM.Length(0.6) + " mm long" + list.Mem(e.Standing): func(e *catalogue.Splice) { e.LengthMM, e.OverMM = 0.6, 0 },
		"sleeve " + unit.MM.Length(9) + " mm long, OD " + unit.MM.Diameter(0.5) + list.Mem(e.Standing): func(e *catalogue.Splice) {
			e.LengthMM, e.OverMM = 9, 0.5
		}} {
		cat, x := *m.S.Cat, e
		change(&x)
		cat.Splices = map[string]catalogue.Splice{"AS81824/1-2": x}
		s := *m.S
		s.Cat = &cat
		if got := Of(list.Maker{H: m.H, S: &s, Sys: m.Sys}, 0).Sleeve; got != want {
			t.Errorf("%q, by hand %q", got, want)
		}
	}
}

// The bundle over a sleeve, by hand: of 5 mm, with a sleeve that is thicker than the thickest of its wires by their difference.
func TestOverASleeve(t *testing.T) {
	m := spliced(t)
	e := m.S.Cat.Splices["AS81824/1-2"]
	thickest := max(m.S.Wires[0].Dia.Nominal, m.S.Wires[1].Dia.Nominal)
	m.S.Branches[0].OverMM = 5
	if got, want := overSleeve(m, 0), unit.MM.Diameter(5+e.OverMM-thickest)+list.Mem(e.Standing); got != want || thickest <= 0 ||
		e.OverMM <= thickest {
		t.Errorf("%q, want %q", got, want)
	}
	m.S.Wires[1].Dia.Nominal = e.OverMM + 1 // a thicker wire, which hides the sleeve
	if got, want := overSleeve(m, 0), unit.MM.Diameter(5)+list.Mem(e.Standing); got != want {
		t.Errorf("%q, want %q", got, want)
	}
	for k := range m.S.Wires {
		m.S.Wires[k].Dia.Nominal = 0.5
	}
	if got, want := overSleeve(m, 0), unit.MM.Diameter(5+e.OverMM-0.5)+list.Mem(e.Standing); got != want {
		t.Errorf("%q, want %q", got, want)
	}
	for what, change := range map[string]func(){
		"no bundle": func() { m.S.Branches[0].OverMM = 0 }, "no offset": func() { m.H.Splices[0].OffsetMM = model.Opt[unit.Millimetre]{} },
	} {
		m = spliced(t)
		m.S.Branches[0].OverMM = 5
		change()
		if got := overSleeve(m, 0); got != "" {
			t.Errorf("%s: %q", what, got)
		}
	}
}
