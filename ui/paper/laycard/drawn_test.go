package laycard

import (
	"fmt"
	"html"
	"math"
	"regexp"
	"slices"
	"strings"
	"testing"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/paper/laycard/section"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
)

func equal(t *testing.T, what, got, want string) {
	t.Helper()
	if got != want {
		t.Errorf("%s:\n%s\nwant\n%s", what, strings.ReplaceAll(got, "<", "\n<"), strings.ReplaceAll(want, "<", "\n<"))
	}
}

// wave is a wire over half a turn, in twelve steps: from x, over so much, from the height y by the cosine, so high to both sides.
func wave(x, over, y, high float64) string {
	var p []string
	for k := range 13 {
		p = append(p, num(x+over*float64(k)/12)+" "+num(y+high*math.Cos(math.Pi*float64(k)/12)))
	}
	return "M" + strings.Join(p, "L")
}

// A layer from above in 100 mm, by hand: a lay of 60 mm at full size from 20 to 80; the bundle of 5.5 mm from 1.5 to 7, its middle at
// 4.25. A wire of a left hand goes up the paper
// over half a lay and comes back below; five more wires have room a sixth of a lay apart, from 10 mm on. The dimension is 2.6 mm below,
// its words 4.4 mm lower.
func TestALayerFromAbove(t *testing.T) {
	for _, c := range []struct {
		hand  model.Hand
		high  float64
		arrow string
	}{{model.HandLeft, 2.75, "M50 1.5l-2.6 0.6M50 1.5l-1 2.4"}, {model.HandRight, -2.75, "M50 7l-2.6 -0.6M50 7l-1 -2.4"}} {
		want := `<svg xmlns="http://www.w3.org/2000/svg" class="side" width="100mm" height="15mm" viewBox="0 0 100 15" role="img" ` +
			`aria-label="the bundle from above: ` + string(c.hand) +
			`, lay 60 mm" font-family="` + section.Family + `" fill="none" stroke="#000" stroke-width=".25"><path d="M9 1.5H91M9 7H91"/>`
		for _, x := range []float64{10, 30, 40, 50, 60} {
			want += `<path d="` + wave(x, 30, 4.25, c.high) + `" stroke="#777"/>`
		}
		want += `<path class="followed" d="` + wave(20, 30, 4.25, c.high) + `" stroke-width=".9"/><path d="` + wave(50, 30, 4.25,
			-c.high) + `" stroke-width=".5" stroke-dasharray="1 .8"/>` +
			`<path d="` + c.arrow + `" stroke-width=".9"/>` +
			`<path class="dimension" d="M20 7.6V10.4M80 7.6V10.4M20 9.6H80m-2 -.8l2 .8l-2 .8M20 9.6m2 -.8l-2 .8l2 .8"/>` +
			`<text x="0" y="5.393" font-size="3.175" text-anchor="start" stroke="none" fill="#000" font-weight="bold">P&lt;1</text>` +
			`<text x="100" y="5.393" font-size="3.175" text-anchor="end" stroke="none" fill="#000" font-weight="bold">J1</text>` +
			`<text x="50" y="14" font-size="3.881" text-anchor="middle" stroke="none" fill="#000" font-weight="bold">lay 60 mm</text></svg>`
		svg, high := side(unit.MM, &Layer{LayMM: 60, ODMM: 5.5, Hand: c.hand}, "P<1", "J1", 100)
		equal(t, string(c.hand), string(svg), want)
		if high != 15 {
			t.Errorf("%v high", high)
		}
	}
	if svg, high := side(unit.MM, &Layer{ODMM: 5.5}, "a", "b", 100); svg != "" || high != 0 {
		t.Errorf("a straight layer: %v %s", high, svg)
	}
	// The largest scale at which a lay leaves 24 mm, and in a row 3 of 21; a bundle is drawn from 5 to 6.3 mm.
	for lay, scale := range map[unit.Millimetre]string{76: "", 77: "2", 152: "2", 153: "5", 380: "5", 381: "10", 760: "10", 761: "20",
		1520: "20", 1521: "50", 9000: "50"} {
		says := "lay " + unit.MM.Length(lay) + " mm"
		if scale != "" {
			says += " (drawn 1:" + scale + ")"
		}
		if svg, _ := side(unit.MM, &Layer{LayMM: lay, Hand: model.HandLeft}, "a", "b", 100); !strings.Contains(string(svg), ">"+says+
			"<") || !strings.Contains(string(svg), "M9 1.5H91M9 6.5H91") {
			t.Errorf("%v: %s", lay, svg)
		}
	}
	if svg, _ := side(unit.MM, &Layer{LayMM: 60, ODMM: 20, Hand: model.HandLeft}, "a", "b", 100); !strings.Contains(string(svg),
		"M9 1.5H91M9 7.8H91") {
		t.Errorf("%s", svg)
	}
}

// The same in a row of a table, 21 x 6.2 mm, by hand: a lay of 60 at 1:5 is 12 mm, from 4.5; the bundle is 3.6 mm high round 2.2.
func TestALayerInARow(t *testing.T) {
	for _, c := range []struct {
		hand  model.Hand
		high  float64
		arrow string
	}{{model.HandLeft, 1.8, "M10.5 0.4l-2.6 0.6M10.5 0.4l-1 2.4"}, {model.HandRight, -1.8, "M10.5 4l-2.6 -0.6M10.5 4l-1 -2.4"}} {
		equal(t, string(c.hand), smallSide(&Layer{LayMM: 60, Hand: c.hand}, 21, 6.2),
			`<svg xmlns="http://www.w3.org/2000/svg" class="side" width="21mm" height="6.2mm" viewBox="0 0 21 6.2" role="img" aria-label="`+
				string(c.hand)+`" fill="none" stroke="#000" stroke-width=".25"><path d="M0 0.4H21M0 4H21"/><path class="followed" `+
				`d="`+wave(4.5, 6, 2.2, c.high)+`" stroke-width=".8"/><path d="`+wave(10.5, 6, 2.2, -c.high)+
				`" stroke-width=".4" stroke-dasharray=".8 .6"/><path d="`+c.arrow+
				`" stroke-width=".9"/><path class="dimension" d="M4.5 4.6V6.2M16.5 4.6V6.2M4.5 5.4H16.5"/></svg>`)
	}
	if got := smallSide(&Layer{}, 21, 6.2); got != "" {
		t.Errorf("a straight layer: %s", got)
	}
	for lay, x := range map[unit.Millimetre]string{18: "M1.5 4.6", 19: "M5.75 4.6", 36: "M1.5 4.6", 180: "M1.5 4.6", 900: "M1.5 4.6",
		901: "M1.49 4.6"} { // at 1:1, 2, 2, 10, 50, 50
		if got := smallSide(&Layer{LayMM: lay, Hand: model.HandLeft}, 21, 6.2); !strings.Contains(got, `"dimension" d="`+x) {
			t.Errorf("%v: %s", lay, got)
		}
	}
}

// The clock of a connector in 19 mm, by hand: a ring of 4.18 mm round 9.5, position 1 in black 2.4 mm below its top; the key and the
// boot at their hours, their words 3.9 mm outside it. A boot at
// the hour of the key is not drawn again.
func TestRoseByHand(t *testing.T) {
	const begin = `<svg xmlns="http://www.w3.org/2000/svg" class="rose" width="19mm" height="19mm" viewBox="0 0 19 19" role="img" ` +
		`aria-label="position 1, key and boot" font-family="` + section.Family +
		`" font-size="3.175" text-anchor="middle"><circle cx="9.5" cy="9.5" r="4.18" fill="#fff" stroke="#000" stroke-width=".5"/>` +
		`<circle cx="9.5" cy="7.72" r="1.9" fill="#000"/><text x="9.5" y="8.863" fill="#fff" font-weight="bold">1</text>`
	hand := func(turn, x, y, says string) string {
		return `<path d="M9.5 5.32l-1.3 -2.2h2.6z" transform="rotate(` + turn + ` 9.5 9.5)"/><text x="` + x + `" y="` + y + `">` + says +
			"</text>"
	}
	some := model.Some[int]
	for _, c := range []struct {
		s    Start
		want string
	}{
		{Start{}, ""}, {Start{Key: some(3)}, hand("90", "17.58", "10.643", "key")}, {Start{Boot: some(12)}, hand("0", "9.5", "2.563",
			"boot")}, // 9.5 − 8.08 + 1.143
		{Start{Key: some(6), Boot: some(9)}, hand("180", "9.5", "18.723", "key") + hand("270", "1.42", "10.643", "boot")},
		{Start{Key: some(3), Boot: some(3)}, hand("90", "17.58", "10.643", "key")},
	} {
		equal(t, "rose", c.s.rose(19), begin+c.want+"</svg>")
	}
}

var tagOf = regexp.MustCompile(`<[^>]*>`)

// said is what blocks say, each with its gap; a picture is its first class.
func said(blocks []page.Block) (out []string) {
	for _, b := range blocks {
		text := string(b.HTML)
		if b.Cut != nil {
			text = string(b.Cut.Open)
			for _, r := range b.Cut.Rows {
				text += string(r.HTML) + " "
			}
		}
		class := regexp.MustCompile(`class="([a-z0-9]+)"`).FindStringSubmatch(text)
		out = append(out, fmt.Sprintf("%v %s %s", float64(b.Gap), class[1],
			html.UnescapeString(strings.Join(strings.Fields(tagOf.ReplaceAllString(text, " ")), " "))))
	}
	return out
}

func saysAll(t *testing.T, what string, blocks []page.Block, want ...string) {
	t.Helper()
	if got := said(blocks); !slices.Equal(got, want) {
		t.Errorf("%s:\n%s\nwant\n%s", what, strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
}

// What is said of a layer and, with the last, of its branch, by hand.
func TestWhatIsSaidOfALayer(t *testing.T) {
	m := list.Maker{H: &model.Harness{Splices: []model.Splice{{ID: "S1"}, {ID: "S2"}}}}
	tell := func(f func(*teller)) []page.Block {
		x := &teller{m: m, wide: 150}
		f(x)
		return x.out
	}
	l := &Layer{Built: "built up to 3 mm", Bind: "Tape over it", Fillers: "4 of 1.1 mm", Spares: "109 113"}
	for _, stops := range []bool{true, false} {
		more := map[bool]string{true: "; they stop where the lay stops"}[stops]
		saysAll(t, "layer", tell(func(x *teller) { x.layer(l, stops, page.Body) }), "0.6 p10 Built up to 3 mm.", "0.6 p10 Tape over it.",
			"0.6 p10 Fillers: 4 of 1.1 mm"+more+".", "0.6 p10 Spares: 109 113.")
	}
	saysAll(t, "nothing", tell(func(x *teller) { x.layer(&Layer{}, true, page.Body) }))
	c := &Card{OD: "5.4", After: []int{0, 1}, Ends: []string{"P1, boot b", "J1 zone 25"}, Bend: "33 mm", Covers: []Cover{{What: "sheath",
		Part: "X 3", Cut: "380", Start: "35", Stop: "375", OD: "7.2", Shelf: "3/8"},
		{What: "tape", Part: "Y", Cut: "-", Start: "0", Stop: "10", OD: "8"}}}
	saysAll(t, "branch", tell(func(x *teller) { x.finish(c, page.Small, page.Strong) }),
		"0.6 p9b When this branch is laid, make S1 and S2.", "0.6 p9b Finished OD 5.4",
		"0.6 p9 Sheath X 3, cut 380, from 35 to 375, OD 7.2, shelf 3/8", "0.6 p9 Tape Y, from 0 to 10, OD 8",
		"0.6 p9 P1, boot b; J1 zone 25", "0.6 p9 Bend no tighter than 33 mm")
	one := &Card{OD: "5.4", After: []int{1}, Ends: []string{"P1, boot b"}}
	saysAll(t, "one of each", tell(func(x *teller) { x.finish(one, page.Small, page.Strong) }),
		"0.6 p9b When this branch is laid, make S2.", "0.6 p9b Finished OD 5.4", "0.6 p9 P1, boot b")
	saysAll(t, "bare branch", tell(func(x *teller) { x.finish(&Card{OD: "5.4"}, page.Small, page.Strong) }), "0.6 p9b Finished OD 5.4")
}

// The facts beside a picture, by hand: for each layer its title, its side, its OD; from three layers on those stand in the order. Where
// piece 1 of the centre lies, and position 1, stand with the centre alone.
func TestFactsByHand(t *testing.T) {
	m := list.Maker{H: &model.Harness{}}
	one := Row{ID: "101", Of: sheet.Member{X: 3}}
	layer := func(k int) Layer {
		return Layer{Index: k, Name: fmt.Sprint("Layer ", k), OD: "5.4", Rows: []Row{one, {ID: "102"}}}
	}
	c := &Card{OD: "9", From: "P1", To: "J1", Layers: []Layer{layer(0), layer(1), layer(2)}, Start: Start{Says: "Position 1 lies on top."}}
	const od = "0 p10b OD 5.4 mm measured"
	saysAll(t, "the first", facts(m, c, c.Layers[:1], false, 66), "1.5 p12b Layer 0: straight", od,
		"1 p10 In the centre 101 lies at 3 o'clock.", "1.5 p10 Position 1 lies on top.")
	saysAll(t, "the last", facts(m, c, c.Layers[2:], true, 66), "1.5 p12b Layer 2: straight", od, "1.5 p10 Position 1 lies on top.",
		"0.6 p9b Finished OD 9")
	saysAll(t, "all", facts(m, c, c.Layers, false, 66), "1 p10 In the centre 101 lies at 3 o'clock.", "1.5 p10 Position 1 lies on top.")
	c.Start.Says = ""
	c.Layers[1].LayMM, c.Layers[1].Hand = 60, model.HandLeft
	got := facts(m, c, c.Layers[1:2], false, 66)
	if all := said(got); len(all) != 3 || all[0] != "1.5 p12b Layer 1 LH to the left over the top" || all[2] != od || got[1].Gap != 0.3 ||
		got[1].High != 15 || !strings.Contains(string(got[1].HTML), `class="side"`) || got[0].High != 8 || got[2].High != 7 {
		t.Errorf("%q", all)
	}
	c.Layers[1].Hand = model.HandRight
	if all := said(facts(m, c, c.Layers[1:2], false, 66)); all[0] != "1.5 p12b Layer 1 RH to the right over the top" {
		t.Errorf("%q", all)
	}
	alone := &Card{Layers: []Layer{{Name: "The centre", OD: "1", Rows: []Row{one}}}}
	saysAll(t, "one piece", facts(m, alone, alone.Layers, false, 66), "1.5 p12b The centre", "0 p10b OD 1 mm measured")
	// With a key position 1 is drawn, 19 mm wide, with the words beside it; in less than 50 mm the words stand alone.
	start := &Card{Start: Start{Says: "Position 1 lies so.", Boot: model.Some(3)}}
	if b := startBlock(start, 66, page.Body); b.High != 19 || !strings.Contains(string(b.HTML), `class="rose"`) ||
		!strings.Contains(string(b.HTML), `width:45.00mm;margin-left:2.00mm`) {
		t.Errorf("%+v", b)
	}
	if b := startBlock(start, 50, page.Body); b.High != 19 {
		t.Errorf("%+v", b)
	}
	for _, c := range []*Card{start, {Start: Start{Says: "Position 1 lies so."}}} {
		if b := startBlock(c, 49.9, page.Body); b.Cut == nil || strings.Contains(string(b.HTML), "rose") {
			t.Errorf("%+v", b)
		}
	}
}

// What a picture shows, by hand: the bundle up to the last of some layers, those in hand, what stands outside, and what its centre is
// built up to.
func TestWhatAPictureShows(t *testing.T) {
	row := func(id string, x unit.Millimetre) Row {
		return Row{ID: id, Position: 2, Splice: "S1", Of: sheet.Member{X: x, Y: 3, D: 1}}
	}
	c := &Card{Layers: []Layer{{ODMM: 2, Rows: []Row{row("a", 0)}}, {Index: 1, ODMM: 5, Rows: []Row{row("b", 1), {ID: "u",
		Kind: sheet.OfUnit}, {ID: "s", Kind: sheet.OfSpare, Tracer: true}}}, {Index: 2, ODMM: 8, Rows: []Row{row("d", 2)}}}}
	shown := func(layers []Layer) string {
		a := askedOf(c, layers, 10, 20)
		out := fmt.Sprint(a.OverMM, " ", a.BuiltMM, " ", a.Least, " ", a.Most)
		for _, p := range a.Pieces {
			out += fmt.Sprintf(" %s(%v,%v,%v k%d t%v h%v o%v %d%s)", p.ID, p.X, p.Y, p.D, p.Kind, p.Tracer, p.InHand, p.Outside,
				p.Position, p.Mark)
		}
		return strings.NewReplacer("false", "0", "true", "1").Replace(out)
	}
	equal(t, "the centre", shown(c.Layers[:1]), "2 0 10 20 a(0,3,1 k0 t0 h1 o0 2S1)")
	c.Layers[0].Built = "built up"
	equal(t, "layer 1", shown(c.Layers[1:2]),
		"5 2 10 20 a(0,3,1 k0 t0 h0 o0 2S1) b(1,3,1 k0 t0 h1 o1 2S1) u(0,0,0 k1 t0 h1 o1 0) s(0,0,0 k2 t1 h1 o1 0)")
	c.Layers[0].Rows = append(c.Layers[0].Rows, Row{ID: "e"})
	equal(t, "a centre of two", shown(c.Layers[:1]), "2 2 10 20 a(0,3,1 k0 t0 h1 o1 2S1) e(0,0,0 k0 t0 h1 o1 0)")
	c.Layers[1].Rows = c.Layers[1].Rows[:1]
	if a := askedOf(c, c.Layers[:2], 10, 20); a.Pieces[0].Outside || !a.Pieces[2].Outside { // one piece round a centre of two
		t.Errorf("%+v", a.Pieces)
	}
	inner := section.Picture{Leaders: []section.Leader{{Of: "b"}}}
	for _, x := range []struct {
		p    section.Picture
		from int
		want bool
	}{{inner, 1, true}, {inner, 2, false}, {section.Picture{}, 1, false}, {section.Picture{Left: []string{"d"}}, 2, true}} {
		if got := innerLed(x.p, c.Layers[x.from:]); got != x.want {
			t.Errorf("%+v from layer %d: %v", x.p, x.from, got)
		}
	}
	c.ID, c.From = "T1", "P1"
	b := pictureBlock(section.Picture{W: 60, H: 50}, c)
	if b.High != 50 || !strings.Contains(string(b.HTML), `aria-label="T1, seen from P1"`) {
		t.Errorf("%+v", b)
	}
	b = pictureBlock(section.Picture{W: 60, H: 50, Left: []string{"a", "b"}}, c)
	if text := said([]page.Block{b})[0]; !strings.HasSuffix(text, "There is no room for 2 numbers: go by the list.") ||
		b.High != 50+1+2*page.Body.Line() {
		t.Errorf("%v %s", b.High, text)
	}
}

// The row of a leg, by hand.
func TestALegInWords(t *testing.T) {
	m := list.Maker{H: &model.Harness{Branches: []model.Branch{{ID: "L1", From: "J", To: "A", LengthMM: 200,
		ToleranceMM: []unit.Millimetre{0, 5}}, {ID: "L2", LengthMM: 100}}, Terminations: []model.Termination{
		{ID: "A", Boot: model.Some("boot-a"), Clock: model.Some(6)}, {ID: "B"}}}, Sys: unit.MM}
	m.S = &sheet.Sheet{H: m.H, Index: model.NewIndex(m.H)}
	for want, l := range map[string]Layer{"straight": {Hand: "LH"}, "LH 25": {Hand: "LH", LayMM: 25}} {
		if got := legLay(m, &l); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
	rows := func(all ...Row) *Card { return &Card{Layers: []Layer{{Rows: all}}} }
	if got := legWires(rows(Row{ID: "1", Colour: "red"}, Row{ID: "C1", Kind: sheet.OfUnit, Colour: "white + blue"}, Row{ID: "filler",
		Kind: sheet.OfFiller, Size: "1.1 mm"}, Row{ID: "2"})); got != "1 red, C1 (white + blue), filler 1.1 mm, 2" {
		t.Errorf("%q", got)
	}
	for want, ends := range map[string]string{"A:1": "A:1 A:1", "A:1, 2, 3": "A:1 A:2 A:3", "A:1, B:2, A:3": "A:1 B:2 A:3",
		"A:1, splice": "A:1 splice", "splice, A:1, 2": "splice A:1 A:2", "": ""} {
		c := rows(Row{Kind: sheet.OfFiller, To: "none"})
		for _, e := range strings.Fields(ends) {
			c.Layers[0].Rows = append(c.Layers[0].Rows, Row{To: e})
		}
		if got := legEnds(c); got != want {
			t.Errorf("%s: %q, want %q", ends, got, want)
		}
	}
	if a, b := legLength(m, &Card{}), legLength(m, &Card{Branch: 1}); a != "200 -0 +5" || b != "100" {
		t.Errorf("%q, %q", a, b)
	}
	for _, c := range []struct {
		x          Cover
		kind, want string
	}{{Cover{What: "sheath", Part: "X Y 3", Cut: "380"}, "X Y", "3, 380"}, {Cover{What: "sheath", Part: "X Y 3", Cut: "-"}, "", "X Y 3"},
		{Cover{What: "sheath", Part: "Z 3", Cut: "-"}, "X Y", "Z 3"},
		{Cover{What: "tape", Part: "X Y 3", Cut: "5"}, "X Y", "tape X Y 3, 5"}} {
		if got := legCover(c.x, c.kind); got != c.want {
			t.Errorf("%+v: %q, want %q", c.x, got, c.want)
		}
	}
	if got := coversIn(&Card{Covers: []Cover{{Part: "a"}, {Part: "b"}}}, func(x Cover) string { return x.Part }); got != "a, b" ||
		coversIn(&Card{}, Cover.name) != "-" {
		t.Errorf("%q", got)
	}
	for want, c := range map[string]Card{"boot-a, key at 6": {From: "J", To: "A"}, "-": {From: "J", To: "B"}} {
		if got := legAt(m, &c); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
	if got := legAt(m, &Card{From: "A", To: "A"}); got != "boot-a, key at 6; boot-a, key at 6" {
		t.Errorf("%q", got)
	}
}

// What a file lacks of shields, by hand: both in one sentence; a drain lead only where it leads anywhere.
func TestWhatShieldsLack(t *testing.T) {
	some, length := model.Some[string], model.Some[unit.Millimetre](30)
	shield := func(id, from, to string, strip, drain bool) model.Unit {
		u := model.Unit{ID: id, Shield: model.Some(true)}
		if from != "" {
			u.DrainFrom = some(from)
		}
		if to != "" {
			u.DrainTo = some(to)
		}
		if strip {
			u.StripMM = length
		}
		if drain {
			u.DrainMM = length
		}
		return u
	}
	const begin, end = "The file does not say ", ". Type it at the unit in the file, or agree it and write it in above."
	for _, c := range []struct {
		units []model.Unit
		want  string
	}{
		{nil, ""}, {[]model.Unit{{ID: "C1", DrainFrom: some("shell")}}, ""}, {[]model.Unit{shield("C1", "shell", "cut", true, true)}, ""},
		{[]model.Unit{shield("C1", "cut", "cut", true, false)}, ""},
		{[]model.Unit{shield("C1", "", "", true, false)}, ""}, {[]model.Unit{shield("C1", "cut", "", false, false)}, begin +
			"how far the shield of C1 is stripped back (strip_mm)" + end},
		{[]model.Unit{shield("C1", "", "", false, false), shield("C2", "", "", false, false)}, begin +
			"how far the shields of C1 and C2 are stripped back (strip_mm)" + end},
		{[]model.Unit{shield("C1", "shell", "cut", true, false), shield("C2", "cut", "P1:A", true, false), shield("C3", "", "P1:B", true,
			false)}, begin + "how long the drain lead of C1, C2 and C3 is (drain_mm)" + end},
		{[]model.Unit{shield("C1", "shell", "", false, false)}, begin +
			"how far the shield of C1 is stripped back (strip_mm), nor how long the drain lead of C1 is (drain_mm)" + end},
	} {
		if got := unitsLack(list.Maker{H: &model.Harness{Units: c.units}}); got != c.want {
			t.Errorf("%q, want %q", got, c.want)
		}
	}
	for size, want := range map[int]string{0: "-", 1: "size 1~", 3: "size 3~"} {
		if got := solderSleeve(size); got != want {
			t.Errorf("%q", got)
		}
	}
	m := list.Maker{Sys: unit.MM, H: &model.Harness{Wires: []model.Wire{{ID: "1", Size: "22"}, {ID: "2", Size: "22"}, {ID: "3",
		Size: "20"}}}}
	m.S = &sheet.Sheet{H: m.H, Index: model.NewIndex(m.H)}
	u := &model.Unit{Wires: []string{"1", "2", "3"}}
	if got := unitSizes(m, u); got != "22 AWG, 20 AWG" {
		t.Errorf("%q", got)
	}
	if got := unitWires(m, u, func(w *model.Wire) string { return map[string]string{"2": "red"}[w.ID] }); got != "1, 2 red, 3" {
		t.Errorf("%q", got)
	}
	if lengthOr(m, 0) != "-" || lengthOr(m, 0.6) != unit.MM.Length(0.6) {
		t.Errorf("%q, %q", lengthOr(m, 0), lengthOr(m, 0.6))
	}
	if ofShield(unitRow{entered: &model.Unit{}}, "x") != "" || ofShield(unitRow{entered: &model.Unit{Shield: model.Some(true)}},
		"x") != "x" {
		t.Error("what is said of a shield")
	}
}

// The columns of an order, by hand: only those that say something; marks over a page alone, a box to tick not in a block.
func TestColumnsOfAnOrder(t *testing.T) {
	c := &Card{ID: "T1", From: "P1", To: "A"}
	plain := Row{Position: 1, ID: "1", Colour: "red", Size: "22 AWG", Leaves: "A", To: "A:1"}
	filler := Row{ID: "filler", Kind: sheet.OfFiller, Size: "1.1 mm", To: "x", Leaves: "x"}
	full := Row{Position: 2, ID: "2", Code: "9", Size: "0.5 mm²", Starts: "B", Leaves: "L1", To: "B:2", Tracer: true}
	line := func(form form, rows ...Row) string {
		var out []string
		for _, f := range fieldsOf(c, []Layer{{}, {Rows: rows}}, form) {
			says := f.head
			if f.key {
				says += "*"
			}
			if f.ends() {
				says += "!"
			}
			for _, r := range rows {
				says += "=" + f.cell(r)
			}
			out = append(out, says)
		}
		return strings.Join(out, "|")
	}
	equal(t, "a block", line(inBlock, plain, filler), "no*=1=0|wire*=1=filler|colour=red=|AWG=22=|to A!=1=x")
	equal(t, "a column", line(inColumn, plain, filler), "no*=1=0|wire*=1=filler|colour=red=|AWG=22=|to A!=1=x|laid==")
	equal(t, "a page", line(overPage, plain, filler), "no*=1=0|wire*=1=filler|colour=red=|AWG=22=1.1 mm|to A!=1=x|laid==")
	equal(t, "all", line(overPage, plain, full),
		"no*=1=2|wire*=1=2|from P1!==B|colour=red=|code==9|size=22 AWG=0.5 mm²|into==L1|ends at!=A:1=B:2|==tracer|laid==")
	equal(t, "all in a column", line(inColumn, full), "no*=2|wire*=2|from P1!=B|colour=|code=9|size=0.5 mm²|into=L1|ends at!=B:2|laid=")
	for want, r := range map[string]Row{"tracer, spare": {Tracer: true, Kind: sheet.OfSpare, Splice: "S"}, "tracer": {Tracer: true,
		Splice: "S"}, "spare": {Kind: sheet.OfSpare, Splice: "S"}, "ends here": {Splice: "S"}, "": {}} {
		if got := r.mark(); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
	for want, r := range map[string]Row{"L1": {Leaves: "L1"}, "": {Leaves: "A"}} {
		if got := r.leaves(c); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
	if (Row{Leaves: "T1"}).leaves(c) != "" || filler.leaves(c) != "" {
		t.Error("what ends here goes on")
	}
}

// How an order is set, by hand: each column as wide as its longest word of the head and its longest cell, 2.2 mm more; what is left is
// shared; in the largest letters with room both ways.
func TestHowAnOrderIsSet(t *testing.T) {
	c := &Card{ID: "T1", From: "P1", To: "A"}
	layers := []Layer{{Name: "One", Rows: []Row{{Position: 1, ID: "1", Colour: "green", Size: "22 AWG", To: "A:1", Leaves: "A"},
		{Position: 2, ID: "C1", Kind: sheet.OfUnit, Colour: "white/black + white/black", Size: "22 AWG", To: "A:2", Leaves: "A"}}}}
	near := func(a, b unit.Millimetre) bool { return math.Abs(float64(a-b)) < 1e-6 }
	g := gridOf(c, layers, 300, 9, inColumn)
	heading, twelve := page.Heading, page.Letter{Point: 12}
	want := []unit.Millimetre{max(heading.Wide("1"), heading.Wide("2"), page.Strong.Wide("no")) + 2.2, max(heading.Wide("C1"),
		page.Strong.Wide("wire")) + 2.2, twelve.Wide("white/black + white/black") + 2.2,
		max(page.Strong.Wide("AWG"), twelve.Wide("22")) + 2.2, max(page.Strong.Wide("to"), page.Strong.Wide("A"), twelve.Wide("1"),
			twelve.Wide("2")) + 2.2, 8}
	sum := unit.Millimetre(0)
	for _, w := range want {
		sum += w
	}
	for k := range want {
		if !near(g.wide[k], want[k]+(300-sum)/6) {
			t.Errorf("column %d is %v wide, by hand %v", k, g.wide[k], want[k]+(300-sum)/6)
		}
	}
	if g.large != heading || g.other != twelve || g.total != 300 || !near(g.row, heading.Line()+1.2) || len(g.heads) != 0 {
		t.Errorf("%+v", g)
	}
	// Less room takes smaller letters; at the last the words of units are broken.
	before := unit.Millimetre(1000)
	for n, l := range orderLetters {
		total := unit.Millimetre(8)
		for _, f := range g.fields[:5] {
			w := unit.Millimetre(0)
			for _, word := range strings.Fields(f.head) {
				w = max(w, page.Strong.Wide(word))
			}
			for _, r := range layers[0].Rows {
				w = max(w, (map[bool]page.Letter{true: l[0], false: l[1]}[f.key]).Wide(f.cell(r)))
			}
			total += w + 2.2
		}
		if before <= total+0.001 { // the larger letters have room as well, for their heads are wider
			continue
		}
		before = total
		if h := gridOf(c, layers, total+0.001, 9, inColumn); h.large != l[0] || h.other != l[1] || !near(h.total, total+0.001) {
			t.Errorf("%v mm: %v and %v, by hand %v", total, h.large, h.other, l)
		}
		if h := gridOf(c, layers, total-0.001, 9, inColumn); n+1 < len(orderLetters) && h.large == l[0] && h.other == l[1] {
			t.Errorf("a hair less than %v mm: %v", total, l)
		}
	}
	tiny := gridOf(c, layers, 50, 9, inColumn)
	if tiny.large != page.Sub || tiny.other != page.Small || tiny.total > 50.001 || tiny.total < 49.9 {
		t.Errorf("%+v", tiny)
	}
	// Low rows take smaller letters as well: 14 points need 4.939 · 1.04 + 0.4 = 5.537 mm, 12 need 4.803, 11 need 4.436.
	for row, want := range map[unit.Millimetre]page.Letter{5.54: heading, 5.53: {Point: 12, Bold: true}, 4.81: {Point: 12, Bold: true},
		4.79: page.Sub, 1: page.Sub} {
		if h := gridOf(c, layers, 300, row, inColumn); h.large != want || h.row < 4.4 {
			t.Errorf("rows of %v: %v, %v high", row, h.large, h.row)
		}
	}
	if h := gridOf(c, layers, 300, 1, inColumn); !near(h.row, 11*25.4/72*1.04+0.4) {
		t.Errorf("the least row is %v high", h.row)
	}
	// Widths narrowed, by hand: 10 and two of 40 in 70: the wide ones are 30 each.
	n := grid{wide: []unit.Millimetre{10, 40, 40}}
	if n.narrow(70); math.Abs(float64(n.wide[1]-30)) > 1e-6 || n.wide[0] != 10 || math.Abs(float64(n.total-70)) > 1e-6 {
		t.Errorf("%+v", n)
	}
}

// The order as HTML, by hand.
func TestAnOrderAsHTML(t *testing.T) {
	g := grid{fields: []field{{"no", true, func(r Row) string { return fmt.Sprint(r.Position) }}, {"ends at", false,
		func(r Row) string { return r.To }}, {"<head>", false, func(r Row) string { return r.Colour }}}, wide: []unit.Millimetre{10, 40,
		40},
		total: 90, large: page.Heading, other: page.Body, row: 5}
	head := page.Strong.Line() + 0.9
	if g.headHigh() != head {
		t.Errorf("%v", g.headHigh())
	}
	td := func(class, lead, text string) string {
		return `<td class="` + class + `" style="line-height:` + lead + `mm;padding-top:0;padding-bottom:0;vertical-align:middle">` +
			text + "</td>"
	}
	// 14 points: 4.939 · 1.04 = 5.14; 10 points: 3.528 · 1.04 = 3.67
	row := g.tr(Row{ID: "a&b", Position: 1, To: "A:b", Colour: "red<"})
	equal(t, "row", string(row.HTML), `<tr data-of="a&amp;b" style="height:5.00mm">`+td("p14b", "5.14", "1")+td("p10", "3.67",
		"A:<u>b</u>")+td("p10", "3.67", "red&lt;")+"</tr>\n")
	if row.High != 5 || row.KeepNext {
		t.Errorf("%+v", row)
	}
	long := g.tr(Row{Kind: sheet.OfFiller, Colour: "one\ntwo"})
	if !strings.Contains(string(long.HTML), td("p10 shade", "3.67", "one<br>two")) ||
		math.Abs(float64(long.High)-2*10*25.4/72*1.04-0.4) > 1e-6 {
		t.Errorf("%v %s", long.High, long.HTML)
	}
	over := g.over(6, "<b>x</b>")
	equal(t, "over", string(over.HTML), `<tr class="title" style="height:6.00mm"><td class="p9b" `+
		`style="padding-top:0;padding-bottom:0;vertical-align:middle" colspan="3"><b>x</b></td></tr>`)
	if over.High != 6 || !over.KeepNext {
		t.Errorf("%+v", over)
	}
	layers := []Layer{{Rows: []Row{{ID: "1"}}}, {Rows: []Row{{ID: "2"}, {ID: "3"}}}}
	g.heads = []page.Row{over}
	b := g.block(layers)
	if len(b.Cut.Rows) != 4 || b.Cut.Rows[0] != over || b.Gap != 1 || b.Cut.Wide != 90 ||
		math.Abs(float64(b.Cut.HeadHigh-head-0.2)) > 1e-9 || math.Abs(float64(g.high(layers)-head-0.2-6-15)) > 1e-9 {
		t.Errorf("%+v", b.Cut)
	}
	equal(t, "open", string(b.Cut.Open+b.Cut.Head), `<table class="order" style="width:90.00mm"><colgroup><col `+
		`style="width:10.00mm"><col style="width:40.00mm"><col style="width:40.00mm"></colgroup><thead><tr style="height:4.52mm">`+
		`<th class="p9b">no</th><th class="p9b">ends at</th><th class="p9b">&lt;head&gt;</th></tr></thead><tbody>`)
	g.wide[1] = page.Strong.Wide("ends") + 2 // the head takes two lines
	if lines, high := g.headLines(); lines[1] != "ends<br>at" || math.Abs(float64(high-2*page.Strong.Line()-0.9)) > 1e-9 {
		t.Errorf("%q, %v", lines, high)
	}
	// The heads of layers: none of one alone on a page, names of two, all of it from three on and in a block: 7 mm, 5.5 of a straight one.
	m := list.Maker{}
	named := []Layer{{Name: "A"}, {Name: "B", LayMM: 60, Hand: "LH", OD: "5"}, {Name: "C"}}
	for _, c := range []struct {
		n      int
		onPage bool
		want   string
	}{{1, true, "[]"}, {2, true, fmt.Sprint([]unit.Millimetre{head, head})}, {3, true, "[5.5 7 5.5]"}, {1, false, "[5.5]"}, {2, false,
		"[5.5 7]"}} {
		g.heads = nil
		g.headed(m, named[:c.n], c.onPage)
		high := []unit.Millimetre{}
		for _, r := range g.heads {
			high = append(high, r.High)
		}
		if fmt.Sprint(high) != c.want {
			t.Errorf("%d layers on a page %v: %v, by hand %s", c.n, c.onPage, high, c.want)
		}
	}
	line := func(high, says, side string) string {
		return `<div style="display:flex;align-items:center;width:88.00mm;height:` + high +
			`mm"><span class="p10b" style="margin-right:2mm">` + says + `</span>` + side +
			`<span class="p10b" style="margin-left:2mm">OD 5</span>` +
			`<span style="flex:1;border-bottom:.3mm solid #000;height:4.4mm;margin:0 1mm"></span></div>`
	}
	equal(t, "head of a layer", layerHead(m, &named[1], 90), line("6.80", "B  LH  lay 60", smallSide(&named[1], 21, 6.2)))
	equal(t, "head of a straight layer", layerHead(m, &Layer{Name: "A", OD: "5"}, 90), line("5.00", "A", ""))
}

// Some branches of all, and names of layers, by hand.
func TestBranchesInWords(t *testing.T) {
	for _, c := range [][3]string{{"A B", "A B", "all of them"}, {"A", "A B C", "A"}, {"A B C", "A B C D E F", "A, B and C"}, {
		"A B C D E", "A B C D E F", "all but F"}, {"A B C D", "A B C D E F", "A, B, C and D"}, {"A B", "A B C", "A and B"},
		{"A B C D", "A B C D E", "all but E"}} {
		if got := shorter(strings.Fields(c[0]), strings.Fields(c[1])); got != c[2] {
			t.Errorf("%s of %s: %q, want %q", c[0], c[1], got, c[2])
		}
	}
	layers := []Layer{{Name: "The centre", Rows: make([]Row, 2)}, {Name: "Layer 1", Rows: make([]Row, 3)}}
	if namesOf(layers) != "the centre and layer 1" || rowsIn(layers) != 5 || (&Card{Layers: layers}).Pieces() != 5 {
		t.Errorf("%q, %d", namesOf(layers), rowsIn(layers))
	}
	if got := (&Card{ID: "T1", Name: "trunk"}).title(); got != "T1  trunk" || (&Card{ID: "T1"}).title() != "T1" {
		t.Errorf("%q", got)
	}
	if got := (&Card{Length: "400 mm", Stops: "lay 370 of it"}).length(); got != "400 mm; lay 370 of it" ||
		(&Card{Length: "400 mm"}).length() != "400 mm" {
		t.Errorf("%q", got)
	}
	if wordOr("", "b") != "b" || wordOr("a", "b") != "a" {
		t.Error("a word or another")
	}
	x, y := float64(8)/2, 20.0
	if got := upright("P<1", 8, 20); !strings.Contains(got, fmt.Sprintf(`translate(%s %s) rotate(-90)">P&lt;1<`, num(x-0.1+1.143),
		num(y-0.8))) || !strings.Contains(got, `width="7.8mm" height="20mm" viewBox="0 0 7.8 20"`) ||
		!strings.Contains(got, `font-size="3.175"`) {
		t.Errorf("%s", got)
	}
}
