package laycard

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/phase/threading"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
)

// The matrix of threading, by hand: 186 mm less 0.3 for outer lines; ends are 5.2 to 8.5 mm wide, what is left goes to the parts behind
// the number of 7 mm and what each is of, 12 mm at least. Heads are 10 mm
// high, or as long as the longest name and 2.5 mm; rows are as high as their lines and 0.9 mm.
func TestMeasuresOfTheMatrix(t *testing.T) {
	matrixOf := func(n int, id, of string, part string) page.Block {
		h := &model.Harness{}
		var ends []int
		for k := range n {
			h.Terminations = append(h.Terminations, model.Termination{ID: fmt.Sprint(id, k)})
			ends = append(ends, k)
		}
		m := list.Maker{H: h, S: &sheet.Sheet{H: h, Index: model.NewIndex(h), Terms: make([]sheet.Term, n)}}
		return matrix(m, []Thread{{Threaded: threading.Threaded{Of: of, Part: part, What: sheet.PartSheath, From: "x", CutMM: 120},
			Ends: []int{0}}}, ends)
	}
	for _, c := range []struct {
		n       int
		id, of  string
		each    unit.Millimetre
		high    unit.Millimetre
		ofWide  unit.Millimetre
		lines   int
		part    string
		rowHigh unit.Millimetre
	}{
		{1, "A", "T1", 8.5, 10, 12, 1, "p", page.Small.Line() + 0.9}, {20, "A", "T1", 6.2, 10, 12, 1, "p", page.Small.Line() + 0.9}, {23,
			"A", "T1", 124.0 / 23, 10, 12, 1, "p", page.Small.Line() + 0.9}, {24, "A", "T1", 5.2, 10, 12, 1, "p", page.Small.Line() + 0.9},
		{1, "A long name of an end ", "a long name of a branch", 8.5, page.Strong.Wide("A long name of an end 0") + 2.5,
			page.Strong.Wide("a long name of a branch") + 2.2, 2, "p\nq", 2*page.Small.Line() + 0.9},
	} {
		b := matrixOf(c.n, c.id, c.of, c.part)
		all := unit.Millimetre(185.7)
		want := fmt.Sprintf(`<table class="p9 threading" style="width:185.70mm"><colgroup><col style="width:7.00mm"><col `+
			`style="width:%s"><col style="width:%s">`, mm(c.ofWide), mm(all-c.each*unit.Millimetre(c.n)-7-c.ofWide)) +
			strings.Repeat(`<col style="width:`+mm(c.each)+`">`, c.n) + "</colgroup>"
		if string(b.Cut.Open) != want {
			t.Errorf("%d ends:\n%s, by hand\n%s", c.n, b.Cut.Open, want)
		}
		head := fmt.Sprintf(`<thead><tr style="height:%s"><th class="p9b">no</th><th class="p9b">of</th><th class="p9b">part, cut in `+
			`mm</th><th class="p9b" style="padding:0">%s</th>`, mm(c.high), upright(c.id+"0", c.each, c.high-0.6))
		if !strings.HasPrefix(string(b.Cut.Head), head) || strings.Count(string(b.Cut.Head), "<th") != 4+c.n ||
			math.Abs(float64(b.Cut.HeadHigh-c.high-0.2)) > 1e-9 || b.Gap != 1 || b.Cut.Wide != page.Wide {
			t.Errorf("%d ends: %v %s", c.n, b.Cut.HeadHigh, b.Cut.Head)
		}
		row := fmt.Sprintf(`<tr style="height:%s"><td>1</td><td class="p9b">%s</td><td>%s, cut 120</td><td class="p9b" `+
			`style="padding:.3mm 0;text-align:center">X</td>`, mm(c.rowHigh), c.of, strings.ReplaceAll(c.part, "\n", "<br>"))
		if got := b.Cut.Rows[0]; !strings.HasPrefix(string(got.HTML), row) || math.Abs(float64(got.High-c.rowHigh)) > 1e-9 {
			t.Errorf("%d ends: %v %s, by hand %s", c.n, got.High, got.HTML, row)
		}
	}
	// A page has room for (186 − 62) / 5.2 = 23 ends; one more begins another table. A loom without parts has none.
	if got := ownOf([]Thread{{Own: true, Ends: []int{2}}, {Ends: []int{1}}, {Own: true, Ends: []int{0}}}, []int{1, 2}); len(got) != 1 ||
		got[2] != "X" {
		t.Errorf("%v", got)
	}
	text := "format = 1\n"
	for k := range 24 {
		text += fmt.Sprintf("[[termination]]\nid = \"A%d\"\ncavities = [\"1\", \"2\", \"3\"]\n", k)
	}
	text += "[[breakout]]\nid = \"J\"\n"
	for k := range 24 {
		text += fmt.Sprintf("[[branch]]\nid = \"T%d\"\nfrom = \"J\"\nto = \"A%d\"\nlength_mm = 300.0\n[[branch.cover]]\nwhat = "+
			"\"sheath\"\npart = \"AS23053/16 3.2\"\n", k, k)
	}
	for k := 1; k < 24; k++ {
		text += fmt.Sprintf("[[wire]]\nid = \"%d\"\nfrom = \"A0:%d\"\nto = \"A%d:1\"\nspec = \"AS22759/32\"\nsize = \"22\"\n", k, k%3+1, k)
	}
	m := list.MakerOf(calctest.Built(t, text))
	blocks := Matrix(m)
	if len(blocks) != 3 || !blocks[0].KeepNext || strings.Count(string(blocks[1].Cut.Head), "<svg") != 23 ||
		strings.Count(string(blocks[2].Cut.Head), "<svg") != 1 {
		t.Errorf("%d blocks", len(blocks))
	}
	if all := Threads(m); len(all) == 0 || all[0].Place != 1 || all[len(all)-1].Place != len(all) {
		t.Errorf("%+v", all)
	}
	none := list.MakerOf(calctest.Built(t, "format = 1\n[[termination]]\nid = \"A\"\n"))
	if Matrix(none) != nil || Pages(none) != nil || CardsOf(none) != nil {
		t.Error("pages of nothing")
	}
}

// small is a branch with wires from A to B and what a change says of it.
func small(t *testing.T, n int, change ...string) list.Maker {
	text := `format = 1
[[termination]]
id = "A"
[[termination]]
id = "B"
[[branch]]
id = "T1"
name = "trunk"
from = "A"
to = "B"
length_mm = 400.0
`
	for k := 1; k <= n; k++ {
		text += fmt.Sprintf("[[wire]]\nid = \"%d\"\nfrom = \"A:%d\"\nto = \"B:%d\"\nspec = \"AS22759/32\"\nsize = \"22\"\ncolour = "+
			"\"%d\"\n", k, k, k, k%10)
	}
	return list.MakerOf(calctest.Built(t, strings.NewReplacer(change...).Replace(text)))
}

// What a card says of a branch, by hand: why it cannot be laid; its length with its tolerance; where it stops.
func TestCardsByHand(t *testing.T) {
	if c := CardOf(small(t, 0), 0); c.Why != "Nothing runs here." || c.Length != "400 mm, A to B" || len(c.Layers) != 0 ||
		c.title() != "T1  trunk" {
		t.Errorf("%+v", c)
	}
	m := small(t, 3)
	m.S.Branches[0].OverMM = 0
	if c := CardOf(m,
		0); c.Why != "It cannot be laid yet: a piece of it has no diameter, or no lay-up was found. The open points say which." ||
		c.OD != "" {
		t.Errorf("%+v", c)
	}
	m = small(t, 3, "length_mm = 400.0", "length_mm = 400.0\ntolerance_mm = [2.0, 8.0]")
	b := &m.S.Branches[0]
	b.OverMM, b.LaidMM, b.Bend.MinMM = 2.35, 398.9, 14.1
	c := CardOf(m, 0)
	if c.Length != "400 mm, -2 +8, A to B" || c.Stops != "lay 399 of it" || c.Bend != m.Sys.AtLeast(14.1)+" mm" || c.Why != "" ||
		c.From != "A" || c.To != "B" || c.ID != "T1" || c.Name != "trunk" || c.Pieces() != 3 {
		t.Errorf("%+v", c)
	}
	b.LaidMM, b.Bend.MinMM = 399, 0
	if c := CardOf(m, 0); c.Stops != "" || c.Bend != "" {
		t.Errorf("%+v", c)
	}
	b.LaidMM = 0
	if c := CardOf(m, 0); c.Stops != "" {
		t.Errorf("%+v", c)
	}
	// A layer: its hand only where it is laid; what binds it; its fillers and spares.
	l := &b.Layers[0]
	l.LayMM, l.Hand, l.Turns, l.Fillers, l.FillerMM, l.OverMM = 63, "LH", 3.26, 2, 1.1, 2.35
	b.As = []model.Layer{{BindMM: model.Some[unit.Millimetre](0.2)}}
	got := layerOf(m, 0, 0)
	if got.Hand != "LH" || got.LayMM != 65 || got.Turns != "3.3" || got.Fillers != "2 of 1.1 mm" &&
		got.Fillers != "2 of "+m.Sys.Fine(1.1)+" mm" || got.Bind != "Tape or thread over it: adds "+m.Sys.Fine(0.2)+" mm to the OD" ||
		got.OD != m.Sys.Diameter(2.35) ||
		got.ODMM != 2.35 || got.Name != "The centre" || got.Index != 0 || got.Spares != "" || got.Built != "" {
		t.Errorf("%+v", got)
	}
	b.As[0].BindPart = model.Some("own tape")
	if got := layerOf(m, 0, 0); got.Bind != "Own tape over it: adds "+m.Sys.Fine(0.2)+" mm to the OD" {
		t.Errorf("%+v", got)
	}
	l.LayMM, l.Fillers, b.As = 0, 0, nil
	l.Members[0].Kind, l.Members[1].Kind = sheet.OfSpare, sheet.OfSpare
	if got := layerOf(m, 0, 0); got.Hand != "straight" || got.LayMM != 0 || got.Turns != "" || got.Fillers != "" || got.Bind != "" ||
		got.Spares != l.Members[0].ID+" "+l.Members[1].ID {
		t.Errorf("%+v", got)
	}
	// The covers: those under the sheath before it; a cut only where one is cut; what a sheath lies at only where that is known.
	b.Covers = []sheet.Covered{{What: model.CoverSleeve, Part: "S", FromMM: 1, ToMM: 2, OverMM: 5, ThickGuess: true},
		{What: model.CoverTape, Under: true, CutMM: 0.5}}
	b.Sheath = sheet.Sheath{Part: "X", FromMM: 3, ToMM: 4, CutMM: 9, Proposed: true}
	said := func() (out []string) {
		for _, x := range coversOf(m, b) {
			out = append(out, strings.Join([]string{x.What, x.Part, x.Start, x.Stop, x.Cut, x.OD}, "|")+fmt.Sprint(" ", x.Proposed))
		}
		return out
	}
	at := m.Sys.Length
	if got := said(); !slices.Equal(got, []string{"tape|-|" + at(0) + "|" + at(0) + "|" + m.Sys.AtLeast(0.5) + "|" + m.Sys.Diameter(0) +
		" false", "sheath|X|" + at(3) + "|" + at(4) + "|-|- true",
		"sleeve|S|" + at(1) + "|" + at(2) + "|-|" + m.Sys.Diameter(5) + "~ false"}) {
		t.Errorf("%q", got)
	}
	b.Sheath.Tube.Set, b.Sheath.Verdict.Wraps, b.Sheath.Verdict.OverMM, b.Covers = true, true, 7.2, nil
	if got := said(); len(got) != 1 || !strings.HasPrefix(got[0], "sheath|X|"+at(3)+"|"+at(4)+"|"+m.Sys.AtLeast(9)+
		"|"+m.Sys.Diameter(7.2)) {
		t.Errorf("%q", got)
	}
}

// How blocks go on pages, by hand: each in order, but one that has room where the next has none comes before it.
func TestBlocksOnPages(t *testing.T) {
	m := small(t, 6)
	c := CardOf(m, 0)
	if got := packed(m, nil); got != nil {
		t.Errorf("%v", got)
	}
	one := blockOf(m, &c, c.Layers, true)
	if one.Part != "T1" || one.Gap != 2.5 || one.High < 60 {
		t.Errorf("%+v", one)
	}
	per := int((page.BodyHigh + 2.5) / (one.High + 2.5)) // the first of a page has no gap above it
	cards := make([]*Card, per+1)
	for k := range cards {
		cards[k] = &c
	}
	begins := ""
	for _, b := range packed(m, cards) {
		begins += map[bool]string{true: "1", false: "0"}[b.NewPage]
	}
	if begins != "1"+strings.Repeat("0", per-1)+"1" {
		t.Errorf("%s, of %d on a page", begins, per)
	}
	set := page.Lay(Pages(m))
	if len(set.Squeezed) > 0 || len(set.Contents) != 2 || set.Contents[1].Part != "T1" {
		t.Errorf("%+v", set.Contents)
	}
	// What is said once: the order, those that are proposed, and only the marks that are there.
	said := Once(m, []Card{c})
	if said[0] != "Lay in this order: T1." || !strings.Contains(strings.Join(said, " "), "the program proposes how: all of them.") ||
		strings.Contains(strings.Join(said, " "), "heavy line") {
		t.Errorf("%q", said)
	}
	d := c
	d.Layers = []Layer{{Rows: []Row{{Kind: sheet.OfUnit}, {Kind: sheet.OfSpare}, {Kind: sheet.OfFiller}, {Tracer: true}}}}
	said = Once(m, []Card{d})
	if last := said[len(said)-1]; last != "Thin grey circles are laid already; a heavy line is made up first; dashed is a spare; "+
		"grey is filler, or tape round the centre; two rings are the tracer." {
		t.Errorf("%q", last)
	}
	d.Layers = nil
	if said = Once(m, []Card{d}); said[len(said)-1] != "Thin grey circles are laid already." {
		t.Errorf("%q", said)
	}
	d.Layers, d.Why = []Layer{{Built: "x"}}, "why"
	m.S.Branches[0].Proposed = true
	said = Once(m, []Card{d})
	if last := said[len(said)-1]; last != "Thin grey circles are laid already; grey is filler, or tape round the centre." ||
		strings.Contains(strings.Join(said, " "), "proposes") {
		t.Errorf("%q", said)
	}
}
