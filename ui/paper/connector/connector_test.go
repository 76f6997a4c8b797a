package connector_test

import (
	"encoding/xml"
	"fmt"
	"html"
	"io"
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/file"
	"contralay/ui/paper/connector"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
)

// handLoom is the small loom whose lists were worked out by hand, changed where change is not nil.
func handLoom(t *testing.T, change func(*model.Harness) *model.Harness) *sheet.Sheet {
	t.Helper()
	d, err := file.Load("../testdata/byhand.toml")
	if err != nil {
		t.Fatal(err)
	}
	h := &d.Harness
	if change != nil {
		h = change(h)
	}
	return calc.Complete(h, calctest.Catalogue(t), nil)
}

// printed is the connectors of a sheet on paper.
func printed(t *testing.T, s *sheet.Sheet) string {
	t.Helper()
	set := page.Lay(connector.Blocks(list.MakerOf(s)))
	if len(set.Squeezed) > 0 {
		t.Errorf("made smaller: %v", set.Squeezed)
	}
	_, body, _ := strings.Cut(string(set.HTML(page.Frame{})), "</style>")
	return body
}

var (
	rowOf  = regexp.MustCompile(`(?s)<tr[^>]*>(.*?)</tr>`)
	cellOf = regexp.MustCompile(`(?s)<td[^>]*>(.*?)</td>`)
	tagOf  = regexp.MustCompile(`<[^>]*>`)
)

// text is HTML without its tags; where a line was broken, a blank.
func text(s string) string {
	s = strings.NewReplacer("<br>", " ", "</div>", " ").Replace(s)
	return strings.Join(strings.Fields(html.UnescapeString(tagOf.ReplaceAllString(s, ""))), " ")
}

// rowsIn are the rows of all tables, their cells with strokes between; small letters in braces.
func rowsIn(body string) (out []string) {
	body = strings.NewReplacer("<u>", "{", "</u>", "}").Replace(body)
	for _, r := range rowOf.FindAllStringSubmatch(body, -1) {
		var cells []string
		for _, c := range cellOf.FindAllStringSubmatch(r[1], -1) {
			cells = append(cells, text(c[1]))
		}
		if len(cells) > 0 {
			out = append(out, strings.Join(cells, " | "))
		}
	}
	return out
}

// Every row of the connectors of the loom as it was written down by hand from its file and byhand.txt, in the
// order they are printed: crimps of P1, its cavities, those of LOG1, then all other ends.
func TestRowsByHand(t *testing.T) {
	body := printed(t, handLoom(t, nil))
	const tool = "M22520/2-01 with M22520/2-10~"
	want := []string{
		"size 20, M39029/58-363 | 20 AWG | 2 | 5.6–6.1 | " + tool + " | 7~ | M81969/14-10 | 89 | 2 / 0 |  |  | ",
		"size 20, M39029/58-363 | 22 AWG | 6 | 5.6–6.1 | " + tool + " | 6~ | M81969/14-10 | 53 | 2 / 0 |  |  | ",
		"A | 101 | red |  | ", "B | 110 | black |  | ", "C | 107 | white |  | ", "D | 108 | blue |  | ",
		"E | 109 | white/brown |  | ", "F | 111 | green |  | ", "G | 112 | green/yellow |  | ", "H | 113 | white/green |  | ",
		"size 20, M39029/57-357 | 22 AWG | 3 | 5.6–6.1 | " + tool + " | 6~ | M81969/14-10 | 53 | 2 / 0 |  |  | ",
		"A | 107 | white |  | ", "B | 108 | blue |  | ", "C | 104 | red/white |  | ",
		"size 20 | 22 AWG | 7 | - | by its maker's sheet | - | - | 36 | 2 / 0 |  |  | ",
		"LMP1:1 | 102 | red |  | ", "LMP1:2 | 105 | black |  | ", "LMP1:3 | 109 | white/brown |  | ",
		"LMP1:4 | 111 | green |  | ", "LMP2:1 | 103 | red |  | ", "LMP2:2 | 106 | black |  | ",
		"LMP2:3 | 112 | green/yellow |  | ", "GND1:1 | 105 | black |  | ", "GND1:1 | 106 | black |  | ",
		"GND1:1 | 110 | black |  | ",
	}
	if got := rowsIn(body); !slices.Equal(got, want) {
		t.Errorf("got\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
	says := text(body)
	for _, w := range []string{
		"Contact and plug MS27488-20-2 in: J.", "Kept free for later. Contact and plug MS27488-20-2 in: K.",
		"Insert 12-98 (13-98), pins, key N at 12 o'clock, inline, boot-straight-12, fitted to bracket on the drawbar.",
		"10 cavities: 6 wired, 2 spare, 1 kept free, 1 empty.",
		"Insert 8-98 (9-98), sockets, key A at 6 o'clock, flange, fitted to logger, lid.",
		"Seen from the wire side, not to scale.", "Dashed: a spare wire. Grey: no wire. Grey with dots: kept free for later.",
		"Strip - : as the maker's sheet of the contact says.",
	} {
		if !strings.Contains(says, w) {
			t.Errorf("it does not say %q:\n%s", w, says)
		}
	}
}

// circle is a circle of a face, mm with y up.
type circle struct{ x, y, r float64 }

// faceIn is the nth face of a page: the circle that each text stands in, and the rim, which is the largest.
func faceIn(t *testing.T, body string, n int) (in map[string]circle, rim circle) {
	t.Helper()
	parts := strings.Split(body, `class="face"`)
	if len(parts) < n+2 {
		t.Fatalf("%d faces are drawn", len(parts)-1)
	}
	inner, _, _ := strings.Cut(parts[n+1], "</svg>")
	_, inner, _ = strings.Cut(inner, ">")
	var circles []circle
	type word struct {
		text string
		x, y float64
	}
	var words []word
	d := xml.NewDecoder(strings.NewReader("<svg>" + inner + "</svg>"))
	for {
		tok, err := d.Token()
		if err == io.EOF {
			break
		} else if err != nil {
			t.Fatal(err)
		}
		switch v := tok.(type) {
		case xml.StartElement:
			at := map[string]float64{}
			for _, a := range v.Attr {
				at[a.Name.Local], _ = strconv.ParseFloat(a.Value, 64)
			}
			switch v.Name.Local {
			case "circle":
				circles = append(circles, circle{at["cx"], -at["cy"], at["r"]})
			case "text":
				words = append(words, word{"", at["x"] + at["textLength"]/2, -at["y"] + 1})
			}
		case xml.CharData:
			if len(words) > 0 && words[len(words)-1].text == "" {
				words[len(words)-1].text = string(v)
			}
		}
	}
	in = map[string]circle{}
	for _, c := range circles {
		if c.r > rim.r {
			rim = c
		}
	}
	for _, w := range words {
		for _, c := range circles {
			if c != rim && math.Hypot(w.x-c.x, w.y-c.y) < c.r {
				in[w.text] = c
			}
		}
	}
	return in, rim
}

// Three cavities of each gender, typed from the table of faces: where the number of their wire stands on the
// face that is printed. The table shows the front of the pin insert. The rear of a socket insert looks the same;
// that of a pin insert is its mirror image: B, which the table has on the right, is on the left.
func TestFaceOfEachGender(t *testing.T) {
	body := printed(t, handLoom(t, nil))
	for n, want := range []map[string][2]float64{
		// P1, pins, 13-98 of the table: B 0.7056 0.6786, G -0.9834 0.1484, D 0.7286 -0.6016. Wires 110, 112, 108.
		{"B": {-0.7056, 0.6786}, "110": {-0.7056, 0.6786}, "112": {0.9834, 0.1484}, "108": {-0.7286, -0.6016}},
		// LOG1, sockets, 9-98: A 0.7997 0.4856, B 0.0517 -0.7294, C -0.9009 0.4339. Wires 107, 108, 104.
		{"A": {0.7997, 0.4856}, "107": {0.7997, 0.4856}, "108": {0.0517, -0.7294}, "104": {-0.9009, 0.4339}},
	} {
		in, rim := faceIn(t, body, n)
		unit := 0.0 // mm of the table's unit: one for all
		for _, far := range want {
			unit = max(unit, math.Hypot(far[0], far[1]))
		}
		most := 0.0
		for name := range want {
			most = max(most, math.Hypot(in[name].x-rim.x, in[name].y-rim.y))
		}
		unit = most / unit
		if unit < 15 {
			t.Errorf("face %d: a unit is %.1f mm", n, unit)
		}
		for name, at := range want {
			if x, y := (in[name].x-rim.x)/unit, (in[name].y-rim.y)/unit; math.Hypot(x-at[0], y-at[1]) > 0.002 {
				t.Errorf("face %d: %s stands at %.4f, %.4f, want %.4f, %.4f", n, name, x, y, at[0], at[1])
			}
		}
	}
}

// Where no face is drawn, the page says why, and has the list.
func TestNoFaceSaysWhy(t *testing.T) {
	gender := func(g model.Gender, insert string) func(*model.Harness) *model.Harness {
		return func(h *model.Harness) *model.Harness {
			return h.EditTermination(0, func(e *model.Termination) {
				e.Gender, e.Insert = model.Opt[model.Gender]{V: g, Set: g != ""}, model.Some(insert)
			})
		}
	}
	for _, c := range []struct {
		s     *sheet.Sheet
		faces int
		says  string
	}{
		{laid(t, "demo"), 0, "J and j had changed places in its source, which asks for a check by hand."},
		{laid(t, "whole"), 0,
			"the file does not say whether ECU1 has pins or sockets, and the one is the mirror image of the other."},
		{handLoom(t, gender("", "12-98")), 1, "the file does not say whether P1 has pins or sockets"},
		{handLoom(t, gender(model.GenderPin, "14-37")), 1, "no face is known for 14-37"},
		{handLoom(t, gender(model.GenderSocket, "20-39")), 1, "asks for a check by hand"},
	} {
		body := printed(t, c.s)
		if n := strings.Count(body, `class="face"`); n != c.faces || !strings.Contains(text(body), c.says) {
			t.Errorf("%d faces, want %d; %q is said: %v", n, c.faces, c.says, strings.Contains(text(body), c.says))
		}
	}
}

// Each end of a wire that is in a cavity has one row, and each drain: counted from the file.
func TestARowForEachEnd(t *testing.T) {
	for _, name := range []string{"demo", "whole", "feeds", "example", "trunk", "built-up"} {
		s := laid(t, name)
		want := map[string]int{}
		for _, w := range s.H.Wires {
			for _, e := range []string{w.From.V, w.To.V} {
				if strings.Contains(e, ":") {
					want[w.ID]++
				}
			}
		}
		for _, u := range s.H.Units {
			for _, e := range []string{u.DrainFrom.V, u.DrainTo.V} {
				if strings.Contains(e, ":") {
					want["drain"]++
				}
			}
		}
		got := map[string]int{}
		for _, r := range rowsIn(printed(t, s)) {
			if cells := strings.Split(r, " | "); len(cells) == 5 {
				got[cells[1]]++
			}
		}
		for id, n := range want {
			if got[id] != n {
				t.Errorf("%s: %s has %d rows, want %d", name, id, got[id], n)
			}
			delete(got, id)
		}
		if len(got) > 0 {
			t.Errorf("%s: rows of %v", name, got)
		}
	}
}

// Where the boot points with the key at 12, by hand on a clock.
func TestBootHours(t *testing.T) {
	for _, c := range []struct{ key, boot, want int }{{12, 6, 6}, {3, 6, 3}, {6, 12, 6}, {0, 9, 9}, {12, 12, 12}, {1, 1, 12}, {11, 2, 3},
		{12, 0, 0}} {
		e := model.Termination{}
		if c.key > 0 {
			e.Clock = model.Some(c.key)
		}
		if c.boot > 0 {
			e.BootClock = model.Some(c.boot)
		}
		if got := connector.BootHours(&e); got != c.want {
			t.Errorf("key at %d, boot to %d: drawn to %d, want %d", c.key, c.boot, got, c.want)
		}
	}
}

// A connector of 55 cavities with 40 wires goes on one page with its face, every number in it.
func TestFiftyFiveOnOnePage(t *testing.T) {
	var b strings.Builder
	var far []string
	for k := 1; k <= 40; k++ {
		far = append(far, strconv.Quote(strconv.Itoa(k)))
	}
	fmt.Fprintf(&b, "format = 1\n[[termination]]\nid = \"P1\"\nname = \"Bulkhead\"\ninsert = \"16-35\"\ngender = \"pin\"\nclock = 12\n"+
		"boot_clock = 6\n[[termination]]\nid = \"X1\"\ncavities = [%s]\n", strings.Join(far, ","))
	for k := 1; k <= 40; k++ {
		fmt.Fprintf(&b, "[[wire]]\nid = \"%d\"\nfrom = \"P1:%d\"\nto = \"X1:%d\"\nspec = \"AS22759/32\"\nsize = \"22\"\ncolour = \"93\"\n",
			200+k, k, k)
	}
	b.WriteString("[[branch]]\nid = \"T1\"\nfrom = \"P1\"\nto = \"X1\"\nlength_mm = 900.0\n")
	s := calc.Complete(calctest.Parse(t, b.String()), calctest.Catalogue(t), nil)
	set := page.Lay(connector.Blocks(list.MakerOf(s)))
	first := string(set.Pages[0].HTML)
	if strings.Count(first, `class="face"`) != 1 || strings.Contains(first, "has no room here") {
		t.Error("no face, or not with every number")
	}
	for k := 1; k <= 40; k++ {
		if !strings.Contains(text(first), fmt.Sprintf("%d%dwhite/orange", k, 200+k)) {
			t.Errorf("wire %d is not in the list of the first page", 200+k)
		}
	}
}

// A shade, another name of a cavity, two wires in one, a drain, and a firewall, in which a stub of wire goes with
// each plug: by hand from every-key.toml.
func TestWhatIsRare(t *testing.T) {
	body := printed(t, laid(t, "every-key"))
	rows := rowsIn(body)
	for _, want := range []string{"A (1, +) | 101 | light blue |  | ", "A (1, +) | 102 | |  | ", "L | drain | shield of C1 |  | "} {
		if !slices.Contains(rows, want) && !slices.Contains(rows, strings.Replace(want, "| |", "|  |", 1)) {
			t.Errorf("no row %q in\n%s", want, strings.Join(rows, "\n"))
		}
	}
	in, _ := faceIn(t, body, 0)
	if in["101+"] != in["A"] || in["101+"].r == 0 || in["drain"] != in["L"] {
		t.Errorf("two wires in A stand at %v, the drain at %v", in["101+"], in["drain"])
	}
	says := text(body)
	for _, w := range []string{"Contact, stub of wire and plug MS27488-20-2 in: C, D,",
		"Kept free for later. Contact, stub of wire and plug MS27488-20-2 in: Z.", "A plus: the list has more in that cavity.",
		"Underlined: a small letter.", "Arrow: where the boot points."} {
		if !strings.Contains(says, w) {
			t.Errorf("it does not say %q:\n%s", w, says)
		}
	}
	if !strings.Contains(body, "<u>a</u>") || strings.Contains(body, "<u>A</u>") {
		t.Error("small letters are not underlined, or capitals are")
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
