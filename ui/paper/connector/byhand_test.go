package connector

import (
	"html"
	"regexp"
	"strings"
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/formula/crimp"
	"contralay/calc/query/lists"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/paper/face"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
	"contralay/ui/paper/plot"
)

var tagsOf = regexp.MustCompile(`<[^>]*>`)

func plainOf(b page.Block) string {
	text := string(b.HTML)
	if b.Cut != nil {
		for _, r := range b.Cut.Rows {
			text += string(r.HTML) + " "
		}
	}
	return html.UnescapeString(strings.Join(strings.Fields(tagsOf.ReplaceAllString(strings.ReplaceAll(text, "<br>", " "), "")), " "))
}

// What is said of a crimp, by hand; a dash or "by its maker's sheet" of what no table has, ~ behind what is from memory.
func TestCrimpsInWords(t *testing.T) {
	tool := model.Some(crimp.Tool{Frame: "F", Positioner: "P"})
	memory := model.Some(crimp.Tool{Frame: "F", Positioner: "P"})
	memory.V.Memory = true
	for _, c := range []struct {
		what, got, want string
	}{
		{"tool", crimpTool(lists.CrimpRow{Tool: tool}), "F with P"}, {"tool", crimpTool(lists.CrimpRow{Tool: memory}), "F with P~"}, {
			"tool", crimpTool(lists.CrimpRow{}), "by its maker's sheet"},
		{"setting", crimpSetting(lists.CrimpRow{Tool: tool, Step: 1}), "1"}, {"setting", crimpSetting(lists.CrimpRow{Tool: tool, Step: 6,
			StepGuess: true}), "6~"}, {"setting", crimpSetting(lists.CrimpRow{Tool: tool}), "-"},
		{"setting", crimpSetting(lists.CrimpRow{Step: 6}), "-"},
		{"strip", stripText(unit.MM, lists.CrimpRow{StripMin: 0.6, StripMax: 6.1}), unit.MM.Diameter(0.6) + "–" + unit.MM.Diameter(6.1)},
		{"strip", stripText(unit.MM, lists.CrimpRow{StripMax: 6.1}), "-"},
		{"contact", crimpedContact(lists.CrimpRow{Contact: "20"}), "size 20"}, {"contact", crimpedContact(lists.CrimpRow{Contact: "20",
			Part: "X"}), "size 20, X"},
		{"wire", crimpedWire(lists.CrimpRow{Size: "22"}), "22 AWG"}, {"wire", crimpedWire(lists.CrimpRow{Size: "22 + 22",
			Together: "19"}), "22 + 22 AWG, together as 19"},
		{"pull", pull(lists.CrimpRow{PullN: 53.4}), "53"}, {"pull", pull(lists.CrimpRow{PullN: 0.6}), "1"}, {"pull",
			pull(lists.CrimpRow{}), ""},
		{"tool to insert", InsertionTool(lists.CrimpRow{Contact: "20", Circular: true}), "M81969/14-10"}, {"tool to insert",
			InsertionTool(lists.CrimpRow{Contact: "20"}), ""},
		{"tool to insert", InsertionTool(lists.CrimpRow{Contact: "none", Circular: true}), ""},
		{"damage", crimpDamage(lists.CrimpRow{Size: "22"}), "2 / 0"}, {"damage", crimpDamage(lists.CrimpRow{Size: "none"}), "-"}, {
			"damage", crimpDamage(lists.CrimpRow{Size: "none", Together: "20"}), "2 / 0"},
		{"gender", Gendered(&model.Termination{Gender: model.Some(model.GenderPin)}), "pins"}, {"gender",
			Gendered(&model.Termination{Gender: model.Some(model.GenderSocket)}), "sockets"}, {"gender", Gendered(&model.Termination{}),
			""},
		{"also", alsoText(Pin{}), ""}, {"also", alsoText(Pin{Also: []string{"1", "+"}}), " (1, +)"},
		{"size of a contact", contactOf(Pin{Crimp: model.Some(lists.CrimpRow{Contact: "20"})}), "20"}, {"size of a contact",
			contactOf(Pin{}), "-"},
	} {
		if c.got != c.want {
			t.Errorf("%s: %q, by hand %q", c.what, c.got, c.want)
		}
	}
	for _, c := range []struct {
		a, b string
		want bool
	}{{"22", "20", true}, {"20", "22", false}, {"20", "20", false}, {"22D", "20", true}, {"16", "22D", false}} {
		if got := smaller(c.a, c.b); got != c.want {
			t.Errorf("%s is smaller than %s: %v", c.a, c.b, got)
		}
	}
	for state, want := range map[string]face.Use{wired: face.Wired, spare: face.Spare, reserved: face.Reserved, blank: face.Blank,
		drain: face.Wired} {
		if got := useOf(Pin{State: state}); got != want {
			t.Errorf("%s: %v", state, got)
		}
	}
	m := list.Maker{H: &model.Harness{Wires: []model.Wire{{ID: "101"}, {ID: "102"}}}}
	for want, p := range map[string]Pin{"101": {Wires: []int{0}}, "102+": {Wires: []int{1, 0}}, "101+": {Wires: []int{0}, Drain: "C1"},
		"drain": {Drain: "C1"}, "": {}} {
		if got := numbers(m, p); got != want {
			t.Errorf("%+v: %q, want %q", p, got, want)
		}
		if p.Filled() != (want != "") {
			t.Errorf("%+v is filled: %v", p, p.Filled())
		}
	}
}

// How a face is read, by hand: only of what it shows.
func TestHowAFaceIsRead(t *testing.T) {
	const always = "Seen from the wire side, not to scale. Above: the cavity. Bold: its wire. The key is drawn at the top from " +
		"memory (~): find it on the part first."
	read := func(f face.Face, listed ...string) string {
		var all []string
		for _, b := range legend(f, face.Drawing{Listed: listed}, 150) {
			all = append(all, plainOf(b))
		}
		return strings.TrimPrefix(strings.Join(all, "|"), always)
	}
	of := func(name string, in face.Cavity) face.Face {
		return face.Face{Places: []catalogue.Place{{Cavity: name}}, In: map[string]face.Cavity{name: in}}
	}
	for want, f := range map[string]face.Face{"": of("A", face.Cavity{Number: "1"}), " Underlined: a small letter.": of("a",
		face.Cavity{}), " Dashed: a spare wire.": of("A", face.Cavity{Use: face.Spare}),
		" Grey: no wire.": of("A", face.Cavity{Use: face.Blank}), " Grey with dots: kept free for later.": of("A",
			face.Cavity{Use: face.Reserved}), " Heavy ring: a larger contact.": of("A", face.Cavity{Large: true}),
		" A plus: the list has more in that cavity.": of("A", face.Cavity{Number: "1+"}),
		" Arrow: where the boot points.":             {BootHours: 1}} {
		if got := read(f); got != want {
			t.Errorf("%q, by hand %q", got, want)
		}
	}
	if got := read(of("A", face.Cavity{}), "B", "c"); got != "|The number has no room here, the list has it: B, c." {
		t.Errorf("%q", got)
	}
	both := of("A", face.Cavity{Large: true, Use: face.Spare})
	both.Places = append(both.Places, catalogue.Place{Cavity: "B"})
	if got := read(both); got != " Dashed: a spare wire. Heavy ring: a larger contact." {
		t.Errorf("%q", got)
	}
}

// Words stand beside a face where at least 42 mm are left with 5 between, else below it.
func TestWordsBesideAFace(t *testing.T) {
	for wide, beside := range map[unit.Millimetre]bool{139: true, 139.1: false} {
		d := face.Drawing{Sheet: &plot.Sheet{Box: plot.Box{High: plot.Point{X: wide, Y: 70}}}}
		var asked unit.Millimetre
		out := withWords(face.Face{}, d, func(w unit.Millimetre) []page.Block {
			asked = w
			return []page.Block{page.TextIn("words",
				page.Small, w)}
		})
		text := string(out[0].HTML)
		if !strings.Contains(text, `class="face"`) || !out[0].KeepNext || (len(out) == 1) != beside || strings.Contains(text,
			"margin-left:5.00mm") != beside {
			t.Errorf("%v: %d blocks, %s", wide, len(out), text)
		}
		if beside && (asked != 42 || !strings.Contains(text, "words")) || !beside && (asked != page.Wide || len(out) != 3 ||
			plainOf(out[2]) != "words" || !out[1].KeepNext || !out[2].KeepNext || out[0].High != 70) {
			t.Errorf("%v: the words are %v wide", wide, asked)
		}
	}
	tall := page.Block{HTML: "a", High: 200}
	short := page.Block{HTML: "b", High: 37}
	if got := whole([]page.Block{tall}, []page.Block{short}); len(got) != 1 || got[0].High != 237 {
		t.Errorf("%+v", got)
	}
	short.High = 37.1
	if got := whole([]page.Block{tall}, []page.Block{short}); len(got) != 2 || onePage([]page.Block{tall, short}) ||
		!onePage([]page.Block{tall}) || got[1].High != 37.1 {
		t.Errorf("%+v", got)
	}
}

// What closes cavities, by hand: a sentence for each way, in the order they are met.
func TestWhatClosesCavities(t *testing.T) {
	var got []string
	for _, b := range empties("P1: ", []Pin{{Cavity: "A", State: blank}, {Cavity: "B", State: reserved, Closed: "contact and plug",
		Plug: "X"}, {Cavity: "C", State: blank}, {Cavity: "D", Wires: []int{0}}, {Cavity: "E", Drain: "C1"},
		{Cavity: "F", State: blank, Closed: "plug"}, {Cavity: "G", State: reserved}}, 180) {
		got = append(got, plainOf(b))
	}
	if all := strings.Join(got,
		"|"); all != "P1: Nothing goes in: A, C.|P1: Kept free for later. Contact and plug X in: B.|P1: Plug in: F.|P1: Kept free "+
		"for later. Nothing goes in: G." {
		t.Errorf("%s", all)
	}
}

const rare = `format = 1
[[termination]]
id = "P1"
name = "front"
insert = "12-98"
gender = "pin"
clock = 3
boot = "boot-x"
boot_clock = 6
key = "N"
device = "pump"
mount = "jam nut"
[[termination]]
id = "A"
cavities = ["1", "2", "b"]
boot = "cap"
[[termination]]
id = "G"
device = "stud M5"
cavities = ["1"]
[[termination]]
id = "B"
insert = "none"
cavities = ["1"]
[[branch]]
id = "T1"
from = "P1"
to = "A"
length_mm = 400.0
[[wire]]
id = "1"
from = "P1:A"
to = "A:1"
spec = "AS22759/32"
size = "20"
colour = "2"
[[wire]]
id = "2"
from = "A:b"
to = "P1:B"
spec = "AS22759/32"
size = "22"
role = "spare"
`

// The drain of a shield in a cavity by itself, and beside a wire, by hand.
func TestDrainsByHand(t *testing.T) {
	unit := "[[unit]]\nid = \"C1\"\nwires = [\"1\", \"2\"]\nshield = true\n"
	for to, by := range map[string]string{"P1:C": "C drain drain|shield of C1", "P1:A": "A wired 1|red drain|shield of C1"} {
		m := list.MakerOf(calctest.Built(t, rare+unit+"drain_from = \""+to+"\"\n"))
		got := ""
		for _, p := range Pins(m, 0) {
			if p.Cavity == to[3:] {
				got = p.Cavity + " " + p.State
				for _, cells := range linesOf(m, p) {
					got += " " + cells[1].Text + "|" + cells[2].Text
				}
			}
		}
		if got != by {
			t.Errorf("%s: %q, by hand %q", to, got, by)
		}
		leads := ""
		for _, l := range Leads(m, 0) {
			if l.Wire == "drain" {
				leads += l.Cavity + " " + l.To
			}
		}
		if leads != to[3:]+" shield of C1" {
			t.Errorf("%s: %q", to, leads)
		}
	}
}

// What connectors are, by hand from a file.
func TestAboutConnectors(t *testing.T) {
	m := list.MakerOf(calctest.Built(t, rare))
	if got := Large(m); len(got) != 1 || got[0] != 0 {
		t.Errorf("large are %v", got)
	}
	says := about(m, 0)
	if want := "Insert 12-98 (13-98), pins, key N at 3 o'clock, jam nut, boot-x to 6 o'clock, fitted to pump. 10 cavities: 1 wired, " +
		"1 spare, 8 empty."; !strings.HasPrefix(says, want) || !strings.Contains(says, " Jam nut ") ||
		strings.Contains(says, "A flange") {
		t.Errorf("%s", says)
	}
	if got := about(m, 1); got != "Boot cap. 3 cavities: 1 wired, 1 spare, 1 empty." {
		t.Errorf("%s", got)
	}
	if got := about(m, 3); got != "Insert none, in no catalogue. 1 cavities: 1 empty." {
		t.Errorf("%s", got)
	}
	if got := about(m, 2); !strings.HasPrefix(got, "Fitted to stud M5. 1 cavities: 1 empty.") {
		t.Errorf("%s", got)
	}
	var leads []string
	for t := range m.H.Terminations {
		for _, l := range Leads(m, t) {
			leads = append(leads, strings.Join([]string{l.End, l.Cavity, l.Also, l.Wire, l.Colour, l.Signal, l.To}, "|"))
		}
	}
	if all := strings.Join(leads, " "); all != "P1|A||1|red||A:1 P1|B||2|||A:b A|1||1|red||P1:A A|b||2|||P1:B" {
		t.Errorf("%s", all)
	}
	states := ""
	for _, p := range append(Pins(m, 0)[:3], Pins(m, 1)...) {
		states += p.End + p.Cavity + " " + p.State + " " + p.Closed + "; "
	}
	if states != "P1A wired ; P1B spare ; P1C blank contact and plug; A1 wired ; A2 blank ; Ab spare ; " {
		t.Errorf("%s", states)
	}
	if p, ok, why := Face(m, 0); !ok || why != "" || p.Wide < 20 || p.Picture.High < 20 || !strings.Contains(plainOf(p.Legend(180)[0]),
		"Arrow: where the boot points.") {
		t.Errorf("%+v %v %s", p, ok, why)
	}
	if _, ok, why := Face(m, 1); ok || why != "" {
		t.Errorf("%v %q", ok, why)
	}
	m.H.Terminations[0].Gender = model.Opt[model.Gender]{}
	if _, ok, why := Face(m, 0); ok ||
		why != "No face is drawn: the file does not say whether P1 has pins or sockets, and the one is the mirror image of the other." {
		t.Errorf("%v %q", ok, why)
	}
	for k, name := range map[int]string{10: "none", 11: "P1"} { // more than ten cavities have a block of their own
		n := list.Maker{H: &model.Harness{Terminations: []model.Termination{{ID: "P1"}}}}
		n.S = &sheet.Sheet{H: n.H, Cat: m.S.Cat, Index: model.NewIndex(n.H), Terms: []sheet.Term{{Cavities: make([]string, k)}}}
		if got := len(Large(n)) == 1; got != (name == "P1") {
			t.Errorf("%d cavities: %v", k, got)
		}
	}
}
