package page

import (
	"fmt"
	"html/template"
	"math"
	"slices"
	"strings"
	"testing"

	"contralay/model/unit"
	"contralay/ui/paper/font"
	"contralay/ui/paper/list"
)

// edge is what a cell takes beside its words, by hand: 0.9 mm at each side, and the line, a 96th of an inch.
const edge unit.Millimetre = 2*0.9 + 25.4/96

func close2(a, b unit.Millimetre) bool { return math.Abs(float64(a-b)) < 1e-6 }

// Letters, by hand: 9 points are 3.175 mm, 14 are 4.939; lines are 1.14 sizes apart; a text is taken a hundredth wider than it is, and a
// sign that the
// face lacks is one size wide.
func TestLettersByHand(t *testing.T) {
	if !close2(Small.Size(), 3.175) || !close2(Small.Line(), 3.6195) || !close2(Heading.Size(), 14*25.4/72) {
		t.Errorf("%v, %v, %v", Small.Size(), Small.Line(), Heading.Size())
	}
	if got := Strong.Wide("loom"); !close2(got, font.Of(true).Width("loom", 3.175)*1.01) {
		t.Errorf("%v", got)
	}
	if got := Small.Wide("漢字"); !close2(got, 2*3.175*1.01) {
		t.Errorf("two signs that the face lacks are %v wide", got)
	}
	var says []string
	for _, l := range letters() {
		says = append(says, l.style())
	}
	// 3.6195, 4.0217, 4.4238, 4.8260, 5.6303, 6.8368, 8.0433, 11.2607 mm from line to line
	for n, want := range []string{"9 3.619", "9b", "10 4.022", "10b", "11 4.424", "11b", "12 4.826", "12b", "14 5.630", "14b",
		"17 6.837", "17b", "20 8.043",
		"20b", "28 11.261", "28b"} {
		size, line, plain := strings.Cut(want, " ")
		weight := "normal"
		if !plain {
			size, weight = strings.TrimSuffix(size, "b"), "bold"
			line = strings.Fields(strings.Split(says[n-1], "line-height:")[1])[0]
			line = strings.Split(line, "mm")[0]
		}
		class := "p" + strings.Fields(want)[0]
		if says[n] != fmt.Sprintf(".%s{font-size:%spt;line-height:%smm;font-weight:%s}", class, size, line, weight) {
			t.Errorf("%s, want %s", says[n], want)
		}
	}
	for _, l := range []Letter{Small, Strong, Body, Sub, Heading, Large, Title, Huge} {
		if !slices.Contains(letters(), l) {
			t.Errorf("%v has no rule", l)
		}
		if !strings.Contains(style(), "\n"+l.style()+"\n") {
			t.Errorf("the style lacks %s", l.style())
		}
	}
	if got := style(); !strings.HasPrefix(got, "@font-face{font-family:Go;font-weight:normal;src:url(data:font/ttf;base64,") ||
		strings.Count(got, "font-weight:bold;src:") != 1 || !strings.HasSuffix(got, pageCSS) || len(pageCSS) < 1000 {
		t.Error("the style lacks a face, or what stands in its file")
	}
}

// What stays together on a line, by hand: up to a space, a hyphen, a stroke and the like, each but before a figure; a space that parts
// no words
// and signs before a space do not part.
func TestPieces(t *testing.T) {
	for text, want := range map[string]string{"": "", "a": "a", "a b": "a |b", "a  b": "a  |b", "ab-cd": "ab-|cd", "-a": "-a",
		"a -b": "a |-b", "a-5": "a-5",
		"a/b,c;d:e_f·g": "a/|b,|c;|d:|e_|f·|g", "a, b": "a, |b", "a\u00a0b c": "a\u00a0b |c", "a b ": "a |b ", "x-": "x-"} {
		if got := strings.Join(pieces(text), "|"); got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
	long, short := Small.Wide("bbbbbb"), Small.Wide("aa bbbbbb")
	if got := Small.longest("aa bbbbbb c"); !close2(got, long) {
		t.Errorf("the longest word is %v wide, by hand %v", got, long)
	}
	if got := Small.widest("aa\naa bbbbbb\nc"); !close2(got, short) {
		t.Errorf("the widest line is %v wide, by hand %v", got, short)
	}
}

// Lines by hand: as much on each as there is room for; a word that is wider than a line is broken within; line ends stay.
func TestLinesByHand(t *testing.T) {
	wide := func(text string) unit.Millimetre { return Small.Wide(text) }
	for _, c := range []struct {
		text string
		wide unit.Millimetre
		want string
	}{
		{"", 10, ""}, {"a b", wide("a b"), "a b"}, {"a b  ", wide("a b  "), "a b"}, {"a b", wide("a b") - 0.01, "a|b"},
		{"aa bb cc", wide("aa bb"), "aa bb|cc"}, {"aa aa aa", wide("aa aa") - 0.01, "aa|aa|aa"}, {"a\nb\n\nc", 50, "a|b||c"},
		{"wwwww", wide("www"), "www|ww"}, {"a wwwww b", wide("www"), "a|www|ww|b"}, {"aa-bb", wide("aa-"), "aa-|bb"},
		{"wwww", wide("w") / 2, "w|w|w|w"},
	} {
		if got := strings.Join(Small.Lines(c.text, c.wide), "|"); got != c.want {
			t.Errorf("%q in %v: %q, want %q", c.text, c.wide, got, c.want)
		}
	}
	for _, c := range []struct {
		text string
		wide unit.Millimetre
		want string
	}{{"loom", wide("loom"), "loom"}, {"loomloom", wide("loom…"), "loom…"}, {"loomloom", wide("loom…") - 0.01, "loo…"}, {"a bcdef",
		wide("a …"),
		"a…"}, {"loom", 0.1, "…"}} {
		if got := Small.Short(c.text, c.wide); got != c.want {
			t.Errorf("%q cut to %v: %q, want %q", c.text, c.wide, got, c.want)
		}
	}
}

// Widths of columns, by hand: of what its words need, and what is left shared.
func TestWidthsByHand(t *testing.T) {
	s, b := func(text string) unit.Millimetre { return Small.Wide(text) + edge },
		func(text string) unit.Millimetre { return Strong.Wide(text) + edge }
	row := func(texts ...string) Line { return Cells(texts...) }
	long := strings.Repeat("words and ", 30) + "words"
	half := (100 - b("aa") - b("b")) / 2
	hand := 100 - b("aa") - 2*11
	for _, c := range []struct {
		what  string
		g     Grid
		total unit.Millimetre
		want  []unit.Millimetre
	}{
		{"given", Grid{Cols: []Col{{Head: "a long head", Wide: 20}, {Wide: 30}}}, 100, []unit.Millimetre{20, 30}},
		{"a given one keeps its width", Grid{Cols: []Col{{Head: "aa", Wide: 20}, {Head: "b"}}}, 100, []unit.Millimetre{20, 80}},
		{"heads alone", Grid{Cols: []Col{{Head: "aa"}, {Head: "b"}}}, 100, []unit.Millimetre{b("aa") + half, b("b") + half}},
		{"no wider than needed", Grid{Cols: []Col{{Head: "aa"}, {Head: "b"}}, Shrink: true}, 100, []unit.Millimetre{b("aa"), b("b")}},
		{"a least width", Grid{Cols: []Col{{Head: "aa", Least: 25}, {Head: "b", Least: 1}}, Shrink: true}, 100,
			[]unit.Millimetre{25, b("b")}},
		{"words of rows", Grid{Cols: []Col{{Head: "a"}, {Head: "b"}}, Lines: []Line{row("x", "some words"), row("more of them"),
			row("y", "z")}, Shrink: true}, 100,
			[]unit.Millimetre{s("more of them"), s("some words")}},
		{"heavy letters", Grid{Cols: []Col{{Head: "a", Bold: true}, {Head: "b"}, {Head: "c", Size: 14}},
			Lines: []Line{{Cells: []Cell{{Text: "loom"},
				{Text: "loom", Bold: true}, {Text: "loom"}}}}, Shrink: true}, 100,
			[]unit.Millimetre{b("loom"), b("loom"), Large.Wide("loom") + edge}},
		{"a picture", Grid{Cols: []Col{{Head: "a"}}, Lines: []Line{{Cells: []Cell{{Wide: 33}}}}, Shrink: true}, 100,
			[]unit.Millimetre{33 + edge}},
		{"a head of two words where there is room", Grid{Cols: []Col{{Head: "aa bb"}, {Wide: 70}}}, 100, []unit.Millimetre{30, 70}},
		{"the same without more room", Grid{Cols: []Col{{Head: "loom loom"}, {Head: "x", Wide: 70}}}, 70 + b("loom") + 0.5,
			[]unit.Millimetre{b("loom") + 0.5, 70}},
		{"a head takes what is left before others", Grid{Cols: []Col{{Head: "aa bb"}, {Head: "x"}}}, b("aa bb") + b("x") + 2,
			[]unit.Millimetre{b("aa bb") + 1, b("x") + 1}},
		{"bare", Grid{Cols: []Col{{Head: "aa bb"}, {Head: "x"}}, Bare: true}, b("aa bb") + b("x"), []unit.Millimetre{
			b("aa") + (b("aa bb")-max(b("aa"), b("bb")))/2 + max(b("aa"), b("bb")) - b("aa"), b("x") + (b("aa bb")-max(b("aa"),
				b("bb")))/2}},
		{"to write in", Grid{Cols: []Col{{Head: "aa"}, {Head: "b", Align: list.ByHand}}}, 100, []unit.Millimetre{67, 33}},
		{"two to write in", Grid{Cols: []Col{{Head: "aa"}, {Align: list.ByHand}, {Align: list.ByHand}}}, 100,
			[]unit.Millimetre{b("aa") + hand - 44, 33, 33}},
		{"two with little room", Grid{Cols: []Col{{Head: "aa"}, {Align: list.ByHand}, {Align: list.ByHand}}}, b("aa") + 32,
			[]unit.Millimetre{b("aa"), 16, 16}},
		{"nothing else", Grid{Cols: []Col{{Align: list.ByHand}, {Align: list.ByHand}}}, 100, []unit.Millimetre{50, 50}},
		{"the longest gives", Grid{Cols: []Col{{Head: "a"}, {Head: "b"}}, Lines: []Line{row(long, "some words")}}, 60,
			[]unit.Millimetre{60 - s("some words"),
				s("some words")}},
		{"a figure keeps its unit", Grid{Cols: []Col{{Head: "a"}, {Head: "b", Align: list.ToRight}},
			Lines: []Line{row(long, "3 4 5 6 7 8 mm")}},
			b("a") + s("words") + s("3 4 5 6 7 8 mm") - b("a"), []unit.Millimetre{s("words"), s("3 4 5 6 7 8 mm")}},
		{"words are broken", Grid{Cols: []Col{{Head: "a"}, {Head: "b"}, {Head: "c"}},
			Lines: []Line{row("wwwwwwwwwwwwwwwwwwww", "mmmmmmmmmmmmmmmmmmmmmmm", "x")}}, 40,
			[]unit.Millimetre{(40 - b("c")) / 2, (40 - b("c")) / 2, b("c")}},
	} {
		if c.g.Letter.Point == 0 {
			c.g.Letter = Small
		}
		got := c.g.widths(c.total)
		for k := range c.want {
			if math.Abs(float64(got[k]-c.want[k])) > 1e-4 {
				t.Errorf("%s: %v, by hand %v", c.what, got, c.want)
				break
			}
		}
	}
}

// Rows of a table as HTML, by hand. A row of one line of 9 points is 3.6195 mm and 2 · 0.25 mm and its line, 0.2646, high: 4.38 mm;
// without lines 0.2 more.
func TestRowsByHand(t *testing.T) {
	wide := []unit.Millimetre{40, 40}
	cols := []Col{{Head: "from"}, {Head: "b", Align: list.ToRight}}
	up := Strong.Wide("upward") + edge
	for _, c := range []struct {
		what string
		g    Grid
		line Line
		head bool
		want string
		high unit.Millimetre
	}{
		{"plain words", Grid{Cols: cols}, Cells("a<b", "1"), false, `<tr style="height:4.38mm"><td>a&lt;b</td><td class="r">1</td></tr>`,
			4.384083},
		{"a short row", Grid{Cols: cols}, Cells("a"), false, `<tr style="height:4.38mm"><td>a</td></tr>`, 4.384083},
		{"two lines", Grid{Cols: cols}, Cells("a\nb", "1"), false, `<tr style="height:8.00mm"><td>a<br>b</td><td class="r">1</td></tr>`,
			8.003583},
		{"without lines", Grid{Cols: cols, Plain: true}, Cells("a"), false, `<tr style="height:3.82mm"><td>a</td></tr>`, 3.8195},
		{"to write in", Grid{Cols: cols, Loose: true}, Cells("a"), false, `<tr style="height:5.98mm"><td>a</td></tr>`, 5.984083},
		{"a head to write in", Grid{Cols: cols, Loose: true}, Cells("a"), true, `<tr style="height:4.38mm"><th class="p9b">a</th></tr>`,
			4.384083},
		{"at least", Grid{Cols: cols}, Line{Cells: []Cell{{Text: "a"}}, High: 9}, false, `<tr style="height:9.00mm"><td>a</td></tr>`, 9},
		{"shade and weight", Grid{Cols: cols}, Line{Cells: []Cell{{Text: "a", Bold: true}, {Text: "b", Shade: true}}, Shade: true}, false,
			`<tr class="shade" style="height:4.38mm"><td class="p9b">a</td><td class="r shade">b</td></tr>`, 4.384083},
		{"all at once", Grid{Cols: cols}, Line{Cells: []Cell{{}, {Text: "b", Shade: true, Bold: true}}}, false,
			`<tr style="height:4.38mm"><td></td><td class="p9b r shade">b</td></tr>`, 4.384083},
		{"a large column", Grid{Cols: []Col{{Size: 14}}}, Cells("a"), false, `<tr style="height:6.39mm"><td class="p14">a</td></tr>`,
			5.630333 + 0.764583},
		{"a heavy column", Grid{Cols: []Col{{Bold: true}}}, Cells("a"), false, `<tr style="height:4.38mm"><td class="p9b">a</td></tr>`,
			4.384083},
		{"ends", Grid{Cols: []Col{{Ends: true}}}, Cells("P1:a"), false, `<tr style="height:4.38mm"><td>P1:<u>a</u></td></tr>`, 4.384083},
		{"a head of ends", Grid{Cols: []Col{{Ends: true}}}, Cells("P1:a"), true,
			`<tr style="height:4.38mm"><th class="p9b">P1:a</th></tr>`, 4.384083},
		{"upward", Grid{Cols: []Col{{Upright: true}}}, Cells("upward"), true,
			`<tr style="height:` + mm(up) + `"><th class="p9b"><span class="upright">upward</span></th></tr>`,
			up},
		{"not upward below the head", Grid{Cols: []Col{{Upright: true}}}, Cells("x"), false, `<tr style="height:4.38mm"><td>x</td></tr>`,
			4.384083},
		{"a picture", Grid{Cols: cols}, Line{Cells: []Cell{{Picture: "<svg/>", Wide: 5, High: 20}}}, false,
			`<tr style="height:20.76mm"><td><svg/></td></tr>`, 20.764583},
		{"a title", Grid{Cols: cols, Loose: true}, Line{Title: "one & two"}, false,
			`<tr class="title" style="height:4.38mm"><td colspan="2" class="p9b">one &amp; two</td></tr>`,
			4.384083},
	} {
		c.g.Letter = Small
		text, high := c.g.row(c.line, wide, c.head)
		if strings.TrimSuffix(string(text), "\n") != c.want || !close2(high, c.high) && math.Abs(float64(high-c.high)) > 1e-5 {
			t.Errorf("%s: %v high\n%s\nwant %v\n%s", c.what, high, text, c.high, c.want)
		}
	}
	// A word breaks where its cell leaves no room: 0.9 mm at each side and the line are not its own.
	g := Grid{Cols: cols, Letter: Small}
	for room, lines := range map[unit.Millimetre]int{edge + 0.001: 1, edge - 0.01: 2} {
		if text, _ := g.row(Cells("loom loom"), []unit.Millimetre{Small.Wide("loom loom") + room, 1}, false); strings.Count(string(text),
			"<br>") != lines-1 {
			t.Errorf("%s", text)
		}
		bold := Strong.Wide("loom loom") + room - 20
		if text, high := g.row(Line{Title: "loom loom"}, []unit.Millimetre{bold, 20}, false); strings.Count(string(text),
			"<br>") != lines-1 ||
			!close2(high, unit.Millimetre(lines)*Small.Line()+0.5+25.4/96) {
			t.Errorf("%s", text)
		}
	}
}

// A table as a block, by hand: in two columns of 100 mm with 3 between them, each 48.5 wide less the outer line; its head is as high as
// a row and a line.
func TestTableByHand(t *testing.T) {
	g := TableOf(list.Table{Head: []string{"from", "to", "n"}, Align: []list.Align{list.ToLeft, list.ToLeft, list.ToRight},
		Rows: [][]string{{"a", "b", "1"}}})
	if len(g.Cols) != 3 || !g.Cols[0].Ends || !g.Cols[1].Ends || g.Cols[2].Ends || g.Cols[2].Align != list.ToRight ||
		g.Cols[2].Head != "n" || len(g.Lines) != 1 {
		t.Errorf("%+v", g)
	}
	g = Grid{Cols: []Col{{Head: "x", Wide: 10}, {Head: "y"}}, Lines: []Line{{Cells: []Cell{{Text: "a"}, {Text: "b"}}, KeepNext: true},
		Cells("c", "d")}, Wide: 100, Columns: 2}
	b := g.Block()
	c := b.Cut
	if b.Gap != 1 || c.Columns != 2 || c.Gutter != 3 || !close2(c.Wide, 48.5) || len(c.Rows) != 2 || !c.Rows[0].KeepNext ||
		c.Rows[1].KeepNext ||
		math.Abs(float64(c.Rows[0].High)-4.384083) > 1e-5 || math.Abs(float64(c.HeadHigh)-4.384083-25.4/96) > 1e-5 {
		t.Errorf("%+v", c)
	}
	open := `<table class="p9" style="width:48.24mm"><colgroup><col style="width:10.00mm"><col style="width:38.24mm"></colgroup>`
	if string(c.Open) != open {
		t.Errorf("%s", c.Open)
	}
	if c.Head != `<thead><tr style="height:4.38mm"><th class="p9b">x</th><th class="p9b">y</th></tr>`+"\n</thead><tbody>" ||
		c.Close != "</tbody></table>" {
		t.Errorf("%s", c.Head)
	}
	g.Bare, g.Plain, g.Wide, g.Columns, g.Letter = true, true, 0, 0, Large
	c = g.Block().Cut
	if c.Head != "<tbody>" || c.HeadHigh != 0 || c.Wide != 186 || c.Columns != 1 ||
		!strings.HasPrefix(string(c.Open), `<table class="p14 plain" style="width:185.74mm">`) {
		t.Errorf("%+v", c)
	}
	if got := List(list.Table{Title: "T", Head: []string{"a"}}); got != nil {
		t.Errorf("a list without rows: %v", got)
	}
	full := list.Table{Title: "T", Head: []string{"a"}, Align: []list.Align{list.ToLeft}, Rows: [][]string{{"x"}}}
	if got := List(full); len(got) != 2 || got[0].Section != "T" || len(got[1].Cut.Rows) != 1 {
		t.Errorf("%+v", got)
	}
	full.Note = "note"
	if got := List(full); len(got) != 3 || !got[1].KeepNext || !strings.Contains(string(got[1].Cut.Rows[0].HTML), "note") ||
		got[1].Cut.Open != `<div class="p9">` {
		t.Errorf("%+v", got)
	}
}

// Headings, texts and pictures as blocks, by hand: the letters of a section are 5.63 mm from line to line and have a rule of 2 mm below
// them.
func TestBlocksByHand(t *testing.T) {
	s := Section("kit & cut")
	if s.Section != "kit & cut" || s.says != "kit & cut" || s.HTML != `<h2 class="p14b rule">kit &amp; cut</h2>` ||
		!close2(s.High, Heading.Line()+2) || s.Gap != 4 || !s.KeepNext {
		t.Errorf("%+v", s)
	}
	h := SubHeading("one")
	if h.Section != "" || h.HTML != `<h3 class="p11b">one</h3>` || !close2(h.High, Sub.Line()+0.6) || h.Gap != 2.5 || !h.KeepNext {
		t.Errorf("%+v", h)
	}
	if two := SubHeading("one\ntwo"); !close2(two.High, 2*Sub.Line()+0.6) || two.HTML != `<h3 class="p11b">one<br>two</h3>` {
		t.Errorf("%+v", two)
	}
	for n, keeps := range map[int]string{1: "0", 2: "10", 3: "110", 4: "1010",
		5: "10010"} { // neither the first line nor the last stands alone
		b := Text(strings.TrimSuffix(strings.Repeat("<\n", n), "\n"), Body)
		got := ""
		for _, r := range b.Cut.Rows {
			got += map[bool]string{true: "1", false: "0"}[r.KeepNext]
			if r.HTML != "<div>&lt;</div>" || !close2(r.High, Body.Line()) {
				t.Errorf("%+v", r)
			}
		}
		if got != keeps || b.Gap != 1 || b.Cut.Open != `<div class="p10">` || b.Cut.Close != "</div>" || b.Cut.Wide != 186 {
			t.Errorf("%d lines: %s, want %s; %+v", n, got, keeps, b)
		}
	}
	if b := TextIn("loom loom", Small, Small.Wide("loom")); len(b.Cut.Rows) != 2 || b.Cut.Wide != Small.Wide("loom") {
		t.Errorf("%+v", b)
	}
	if p := Picture("<svg/>", 30); p.HTML != `<div class="picture"><svg/></div>` || p.High != 30 || p.Gap != 1 {
		t.Errorf("%+v", p)
	}
}

// Blocks beneath each other are one: it takes the section, the part and the gap of the first, and is as high as all with the gaps
// between them. What waits
// for the pages waits in it.
func TestBlocksBeneathEachOther(t *testing.T) {
	cut := &Cut{Open: "<", Head: "h", Close: ">", HeadHigh: 2, Rows: []Row{{HTML: "#", High: 5}}}
	first := Block{Section: "S", Part: "P", HTML: "a", High: 10, Gap: 3}
	b := Stack(first, Block{Section: "other", HTML: "b", High: 20, Gap: 4}, Block{Cut: cut, Gap: 1})
	const box = `<div class="block" style="height:%s">%s</div>` + "\n"
	want := `<div class="block" style="height:10.00mm">a</div>` + "\n" +
		`<div class="block" style="height:20.00mm;margin-top:4.00mm">b</div>` + "\n" +
		`<div class="block" style="height:7.00mm;margin-top:1.00mm"><h#></div>` + "\n"
	if b.Section != "S" || b.Part != "P" || b.Gap != 3 || b.High != 10+4+20+1+7 || string(b.HTML) != want || b.Late != nil {
		t.Errorf("%+v", b)
	}
	late := Block{High: 5, Late: func(entries []Entry, pages int) template.HTML {
		return template.HTML(fmt.Sprint(len(entries), " of ",
			pages))
	}}
	b = Stack(first, late)
	if b.HTML != "" || b.Late == nil || b.High != 15 {
		t.Fatalf("%+v", b)
	}
	for range 2 { // the same whenever it is asked
		if got := string(b.Late(make([]Entry, 3), 7)); got != fmt.Sprintf(box, "10.00mm", "a")+fmt.Sprintf(box, "5.00mm", "3 of 7") {
			t.Errorf("%s", got)
		}
	}
	side := Beside(7, Column{Wide: 40, Blocks: []Block{first}}, Column{Wide: 50, Blocks: []Block{late, late}})
	if side.High != 10 || side.Gap != 2 || side.Late == nil || strings.Count(string(side.Late(nil, 9)), "0 of 9") != 2 {
		t.Errorf("%+v", side)
	}
}

// A page has 257 mm, 14.6 of them for its head and 5.4 for its foot: 237 for blocks.
func TestPagesByHand(t *testing.T) {
	block := func(text string, high, gap unit.Millimetre) Block {
		return Block{HTML: template.HTML(text), High: high, Gap: gap}
	}
	fresh := func(b Block) Block { b.NewPage = true; return b }
	keep := func(b Block) Block { b.KeepNext = true; return b }
	rows := func(n int, high unit.Millimetre) Block {
		return Block{Gap: 7, Cut: &Cut{Open: "<", Head: "h", Close: ">", HeadHigh: 3,
			Rows: slices.Repeat([]Row{{HTML: "#", High: high}}, n)}}
	}
	for _, c := range []struct {
		what   string
		blocks []Block
		want   string // of each page what stands on it, and how much of it is used
	}{
		{"one", []Block{block("a", 100, 5)}, "a 100"},
		{"two fit", []Block{block("a", 100, 5), block("b", 132, 5)}, "a b 237"},
		{"two do not", []Block{block("a", 100, 5), block("b", 132.1, 5)}, "a 100 | b 132.1"},
		{"a page is begun", []Block{block("a", 10, 5), fresh(block("b", 10, 5)), block("c", 10, 5)}, "a 10 | b c 25"},
		{"the first begins one anyway", []Block{fresh(block("a", 10, 5)), block("b", 10, 5)}, "a b 25"},
		{"kept together", []Block{block("a", 100, 5), keep(block("b", 100, 5)), block("c", 40, 5)}, "a 100 | b c 145"},
		{"they fit", []Block{block("a", 100, 5), keep(block("b", 100, 5)), block("c", 22, 5)}, "a b c 232"},
		{"they just fit", []Block{block("a", 100, 5), keep(block("b", 100, 5)), block("c", 27, 5)}, "a b c 237"},
		{"begun with what is kept", []Block{block("a", 10, 5), keep(block("b", 10, 5)), fresh(block("c", 10, 5)), block("d", 10, 5)},
			"a 10 | b c d 40"},
		{"rows", []Block{rows(3, 50)}, "<h###> 153"},
		{"rows over two pages", []Block{rows(6, 50)}, "<h####> 203 | <h##> 103"},
		{"rows below", []Block{block("a", 100, 5), rows(3, 50)}, "a <h##> 210 | <h#> 53"},
		{"no row has room", []Block{block("a", 180, 5), rows(2, 50)}, "a 180 | <h##> 103"},
		{"a heading with its first row", []Block{block("a", 180, 5), keep(block("b", 10, 5)), rows(2, 50)}, "a 180 | b <h##> 120"},
		{"a heading whose row has room", []Block{block("a", 150, 5), keep(block("b", 10, 5)), rows(2, 50)}, "a b <h#> 225 | <h#> 53"},
		{"rows higher than a page", []Block{rows(2, 300)}, "<h#> 237 | <h#> 237"},
		{"nothing", nil, " 0"},
	} {
		var got []string
		set := Lay(c.blocks)
		for _, p := range set.Pages {
			var says []string
			for _, part := range strings.Split(strings.TrimSpace(string(p.HTML)), "\n") {
				part = strings.ReplaceAll(strings.ReplaceAll(part, `<div style="transform:scale(0.782);transform-origin:0 0">`, ""),
					"</div>", "")
				if _, text, ok := strings.Cut(part, `">`); ok {
					says = append(says, text)
				}
			}
			got = append(got, strings.Join(says, " ")+" "+strings.TrimSuffix(fmt.Sprintf("%.1f", float64(p.Used)), ".0"))
		}
		if all := strings.Join(got, " | "); all != c.want {
			t.Errorf("%s: %s, want %s", c.what, all, c.want)
		}
	}
	// 237 / 303 = 0.782 of its size
	set := Lay([]Block{block("a", 10, 5), rows(1, 300)})
	if want := "page 2: a block of 303.0 mm, 237.0 at most"; len(set.Squeezed) != 1 || set.Squeezed[0] != want ||
		!strings.Contains(string(set.Pages[1].HTML),
			`<div class="block" style="height:237.00mm"><div style="transform:scale(0.782);transform-origin:0 0"><h#></div></div>`) {
		t.Errorf("%q %s", set.Squeezed, set.Pages[1].HTML)
	}
	one := Lay([]Block{block("a", 10, 5), block("b", 20, 2.5)})
	if got := string(one.Pages[0].HTML); got != `<div class="block" style="height:10.00mm">a</div>`+"\n"+
		`<div class="block" style="height:20.00mm;margin-top:2.50mm">b</div>`+"\n" {
		t.Errorf("%s", got)
	}
}

// Sections, parts and marks where they begin, by hand: a heading at the top of a page that has nothing of another section is not
// written, as the head of the page says it.
func TestSectionsOfPages(t *testing.T) {
	in := func(section, part, mark string, high unit.Millimetre) Block {
		return Block{Section: section, Part: part, Mark: mark, HTML: template.HTML("[" + section + part + mark + "]"), High: high}
	}
	var told []Entry
	pages := 0
	late := Block{High: 5, Late: func(entries []Entry, n int) template.HTML { told, pages = entries, n; return "[late]" }}
	set := Lay([]Block{Section("kit"), in("", "A", "", 100), in("", "A", "m1", 100), Section("cut"), in("", "A", "", 10),
		in("cut", "B", "m2", 230), late})
	want := []Entry{{Section: "kit", Page: 1}, {Section: "kit", Part: "A", Page: 1}, {Section: "cut", Page: 1},
		{Section: "cut", Part: "A", Page: 1},
		{Section: "cut", Part: "B", Page: 2}}
	if !slices.Equal(set.Contents, want) {
		t.Errorf("%+v", set.Contents)
	}
	if !slices.Equal(told, append(want, Entry{Mark: "m1", Page: 1}, Entry{Mark: "m2", Page: 2})) || pages != 2 {
		t.Errorf("what waited was told %+v of %d", told, pages)
	}
	first, second := string(set.Pages[0].HTML), string(set.Pages[1].HTML)
	if strings.Contains(first, ">kit<") || strings.Count(first, ">cut<") != 1 || !strings.Contains(second, "[late]") ||
		set.Pages[0].Name != "kit A; cut A" || set.Pages[1].Name != "cut B" {
		t.Errorf("%q and %q\n%s\n%s", set.Pages[0].Name, set.Pages[1].Name, first, second)
	}
}

// The head and the foot of a page by hand, and what is left out where it has no room: 186 mm less the boxes of 54, 24 and 32 mm and 4
// more for the number.
func TestHeadAndFoot(t *testing.T) {
	f := Frame{Number: "N-1", Revision: "B", Name: "wing", Kind: "build sheet", Serial: "7", Identity: "12-34", Foot: "a <file>"}
	page := string(Set{Pages: []Page{{Name: "kit", HTML: "[one]"}, {Name: "cut", HTML: "[two]"}}}.HTML(f))
	_, body, _ := strings.Cut(page, "<body>\n")
	one := func(n int, name, text string) string {
		return `<section class="page">` + "\n" + `<header><div class="line"><span class="p12b">N-1  rev B</span>` +
			`<span class="box" style="width:54.00mm"><span class="p9">SERIAL</span><span class="p12b value">7</span></span>` +
			`<span class="box" style="width:24.00mm"><span class="p9">QTY</span><span class="p12b value"></span></span>` +
			fmt.Sprintf(`<span class="p12b">page %d of 2</span></div>`, n) + `<div class="line"><h2 class="p14b">` + name +
			`</h2><span class="p9">identity 12-34</span></div></header>` + "\n" + `<div class="body" style="height:237.00mm">` + text +
			`</div>` +
			`<footer><span class="p9">a &lt;file&gt;</span><span class="p9b">A planning aid, not an approval.</span></footer>` +
			"\n</section>\n"
	}
	if want := one(1, "kit", "[one]") + one(2, "cut", "[two]") + "</body></html>\n"; body != want {
		t.Errorf("%s\nwant\n%s", body, want)
	}
	if !strings.HasPrefix(page, "<!doctype html>\n") || !strings.Contains(page,
		"<title>N-1 B wing: build sheet</title>\n<style>"+style()+"</style></head>") {
		t.Error("its head is another one")
	}
	// How much of a long word is left: the most that has room.
	long := strings.Repeat("n", 200)
	f.Number, f.Serial, f.Foot = long, long, long
	page = string(Set{Pages: []Page{{Name: long}}}.HTML(f))
	heavy := Letter{Point: 12, Bold: true}
	for what, c := range map[string]struct {
		before string
		l      Letter
		room   unit.Millimetre
	}{
		"number": {`<span class="p12b">`, heavy, 186 - 54 - 24 - 32 - 4}, "serial": {`value">`, heavy, 54 - 14},
		"name": {`<h2 class="p14b">`, Heading, 186 - 6 - Small.Wide("identity 0000-0000-0000-0000")},
		"foot": {`<footer><span class="p9">`, Small, 186 - 6 - Strong.Wide("A planning aid, not an approval.")},
	} {
		_, text, _ := strings.Cut(page, c.before)
		text, _, _ = strings.Cut(text, "<")
		if c.l.Wide(text) > c.room || c.l.Wide(text+"n") <= c.room || !strings.HasSuffix(text, "n…") {
			t.Errorf("%s: %q is %v wide of %v", what, text, c.l.Wide(text), c.room)
		}
	}
}

// The contents by hand: parts behind their section, of more than four the first and the last, the pages of a section from its first to
// its last.
func TestContentsByHand(t *testing.T) {
	parts := func(section string, n, page int) (out []Entry) {
		out = append(out, Entry{Section: section, Page: page})
		for k := range n {
			out = append(out, Entry{Section: section, Part: fmt.Sprint("p", k+1), Page: page + k})
		}
		return out
	}
	g := contentsGrid(slices.Concat(parts("one", 0, 1), parts("four", 4, 2), parts("five", 5, 7), parts("same", 1, 12)), Small, 90)
	var got []string
	for _, l := range g.Lines {
		got = append(got, l.Cells[0].Text+" "+l.Cells[1].Text)
	}
	if !slices.Equal(got, []string{"one 1", "four: p1, p2, p3, p4 2–5", "five: p1 … p5 7–11", "same: p1 12"}) {
		t.Errorf("%q", got)
	}
	if g.Cols[0].Wide != 74 || g.Cols[1].Wide != 16 || g.Cols[1].Align != list.ToRight || !g.Cols[1].Bold || !g.Bare || !g.Plain ||
		g.Wide != 90 || g.Letter != Small {
		t.Errorf("%+v", g)
	}
	// Blocks of one section behind each other are one line; parts before any section are none; each line is 3.62 + 0.2 mm.
	blocks := []Block{{Part: "x"}, {Section: "kit"}, {Section: "kit", Part: "A"}, {}, {Part: "B"}, {Section: "cut"}}
	c := Contents(blocks, Small, 90)
	if !close2(c.High, 2*(3.6195+0.2)) || c.Gap != 1 {
		t.Errorf("%+v", c)
	}
	text := string(c.Late([]Entry{{Section: "contents", Page: 1}, {Section: "kit", Page: 2}, {Section: "kit", Part: "A", Page: 3},
		{Section: "cut", Page: 4}, {Mark: "m", Page: 9}}, 9))
	if strings.Count(text, "<tr") != 2 || !strings.Contains(text, `<td>kit: A</td><td class="p9b r">2–3</td>`) ||
		!strings.Contains(text, `<td>cut</td><td class="p9b r">4</td>`) {
		t.Errorf("%s", text)
	}
}
