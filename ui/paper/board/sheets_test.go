package board

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc/query/drawing"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/paper/font"
	"contralay/ui/paper/plot"
	"contralay/ui/paper/tile"
)

// headed is a loom that has a head and nothing else.
func headed() *sheet.Sheet {
	s := &sheet.Sheet{H: &model.Harness{}}
	s.H.Head.Number, s.H.Head.Revision, s.H.Head.Name = model.Some("N-1"), model.Some("B"), model.Some("  wing   loom ")
	return s
}

// Rows in columns 30 mm high, by hand: a row of 4 mm takes 5, a gap comes above it but not at the top of a column; the base line
// is a quarter of the size above the row's lower edge. A heavy row does not stand alone at the foot.
func TestRowsInColumns(t *testing.T) {
	line := func(text string) row { return row{cells: []string{text}, size: 4} }
	for _, c := range []struct {
		what string
		rows []row
		want string // each column: what stands where
	}{
		{"none", nil, ""},
		{"two", []row{line("a"), line("b")}, "a 0,-4 b 0,-9"},
		{"a gap", []row{line("a"), {cells: []string{"b"}, size: 4, gap: 3}}, "a 0,-4 b 0,-12"},
		{"cells", []row{{cells: []string{"a", "", "c", "d"}, at: []unit.Millimetre{1, 20, 40}, size: 4}}, "a 1,-4 c 40,-4 d 0,-4"},
		{"seven", []row{line("a"), line("b"), line("c"), line("d"), line("e"), line("f"), {cells: []string{"g"}, size: 4, gap: 3},
			line("h")},
			"a 0,-4 b 0,-9 c 0,-14 d 0,-19 e 0,-24 f 0,-29 / g 0,-4 h 0,-9"},
		{"a head", []row{line("a"), line("b"), line("c"), line("d"), line("e"), {cells: []string{"H"}, size: 4, bold: true}, line("g")},
			"a 0,-4 b 0,-9 c 0,-14 d 0,-19 e 0,-24 / H 0,-4 g 0,-9"},
		{"a head that has room", []row{line("a"), line("b"), line("c"), line("d"), {cells: []string{"H"}, size: 4, bold: true}, line("g")},
			"a 0,-4 b 0,-9 c 0,-14 d 0,-19 H 0,-24 g 0,-29"},
		{"a head at the end", []row{line("a"), line("b"), line("c"), line("d"), line("e"), {cells: []string{"H"}, size: 4, bold: true}},
			"a 0,-4 b 0,-9 c 0,-14 d 0,-19 e 0,-24 H 0,-29"},
		{"together", []row{line("a"), line("b"), line("c"), {cells: []string{"T"}, size: 4, gap: 3, whole: 3}, line("u"), line("v")},
			"a 0,-4 b 0,-9 c 0,-14 / T 0,-4 u 0,-9 v 0,-14"},
		{"together with room", []row{line("a"), line("b"), {cells: []string{"T"}, size: 4, gap: 3, whole: 3}, line("u"), line("v")},
			"a 0,-4 b 0,-9 T 0,-17 u 0,-22 v 0,-27"},
		{"exactly", []row{line("a"), line("b"), {cells: []string{"T"}, size: 4, gap: 5, whole: 3}, line("u"), line("v")},
			"a 0,-4 b 0,-9 T 0,-19 u 0,-24 v 0,-29"},
		{"too many to stay together", []row{line("a"), {cells: []string{"T"}, size: 4, whole: 7}, line("c"), line("d"), line("e"),
			line("f"),
			line("g"), line("h")}, "a 0,-4 T 0,-9 c 0,-14 d 0,-19 e 0,-24 f 0,-29 / g 0,-4 h 0,-9"},
		{"too high for any column", []row{{cells: []string{"a"}, size: 40}, line("b")}, "a 0,-40 / b 0,-4"},
	} {
		var got []string
		for _, column := range flowed(c.rows, 30) {
			var says []string
			for _, s := range column {
				says = append(says, s.Text+" "+pt(s.Middle))
			}
			got = append(got, strings.Join(says, " "))
		}
		if all := strings.Join(got, " / "); all != c.want {
			t.Errorf("%s: %s, want %s", c.what, all, c.want)
		}
	}
	texts := func(high unit.Millimetre, rows ...row) (out string) {
		for _, column := range flowed(rows, high) {
			for _, s := range column {
				out += s.Text
			}
			out += "/"
		}
		return out
	}
	// Of 29 mm four rows leave 9: no room for a head and a row behind it; behind two rows a head of 10 mm and a row of 5 have room.
	if got := texts(29, line("a"), line("b"), line("c"), line("d"), row{cells: []string{"H"}, size: 4, bold: true},
		line("g")); got != "abcd/Hg/" {
		t.Errorf("%s", got)
	}
	if got := texts(29, line("a"), line("b"), row{cells: []string{"H"}, size: 8, bold: true}, line("g")); got != "abHg/" {
		t.Errorf("%s", got)
	}
	six := []row{line("x"), {cells: []string{"T"}, size: 4, whole: 6}, line("b"), line("c"), line("d"), line("e"), line("f")}
	if got := texts(30, six...); got != "x/Tbcdef/" { // together just as high as a column
		t.Errorf("%s", got)
	}
	bold := flowed([]row{{cells: []string{"a"}, size: 4, bold: true}}, 30)[0]
	same(t, "heavy", bold, `frame bold 4 at 0,-4 "a"`)
}

// Words are broken into lines no wider than a width in heavy letters; one that is wider stands alone.
func TestWordsBrokenIntoLines(t *testing.T) {
	wide := font.Of(true).Width("aa bb", 4)
	for text, want := range map[string]string{"": "", "aa": "aa", "aa bb": "aa bb", " aa  bb cc ": "aa bb|cc",
		"aaaaaaaaaa bb cc": "aaaaaaaaaa|bb cc"} {
		if got := strings.Join(wrapped(text, wide+0.01, 4), "|"); got != want {
			t.Errorf("%q is broken into %q, want %q", text, got, want)
		}
	}
	if got := wrapped("aa bb", wide-0.01, 4); len(got) != 2 {
		t.Errorf("%q", got)
	}
	if plain := font.Of(false).Width("aa bb", 4); plain >= wide-0.01 || len(wrapped("aa bb", plain, 4)) != 2 {
		t.Error("it is measured in plain letters")
	}
}

// The table of pegs, by hand: in three columns of 60 mm, seven of them in rows of three, down first: 1 to 3, 4 to 6, 7.
func TestTableOfPegs(t *testing.T) {
	d := &drawing.Drawing{Branches: []drawing.Branch{{ID: "T1"}, {ID: "T2"}}}
	if got := pegRows(d); got != nil {
		t.Errorf("no pegs: %v", got)
	}
	for n := range 7 {
		d.Pegs = append(d.Pegs, drawing.Peg{No: n + 1, At: plot.Point{X: unit.Millimetre(10*n) + 0.25, Y: -1.5}, Branch: n % 2})
	}
	d.Pegs = d.Pegs[:6] // two rows of three
	if rows := pegRows(d); len(rows) != 4 || strings.Join(rows[2].cells, " ")[:1] != "1" || rows[2].cells[4] != "3" {
		t.Errorf("%+v", rows)
	}
	d.Pegs = d.Pegs[:7]
	rows := pegRows(d)
	if len(rows) != 5 || rows[0].whole != 5 || !rows[0].bold || rows[0].gap != 3 || rows[0].size != 4.4 || !rows[1].bold || rows[2].bold {
		t.Fatalf("%+v", rows)
	}
	want := []string{"Pegs, mm from the datum", "no. x y on no. x y on no. x y on", "1 0.2 -1.5 T1 4 30.2 -1.5 T2 7 60.2 -1.5 T1",
		"2 10.2 -1.5 T2 5 40.2 -1.5 T1", "3 20.2 -1.5 T1 6 50.2 -1.5 T2"}
	at := []unit.Millimetre{0, 10, 27, 44, 60, 70, 87, 104, 120, 130, 147, 164}
	for n, r := range rows {
		if got := strings.ReplaceAll(strings.Join(r.cells, " "), ".3", ".2"); got != want[n] {
			t.Errorf("row %d: %q, want %q", n, got, want[n])
		}
		if n > 0 && (!slices.Equal(r.at, at[:len(r.cells)]) || r.size != 3.6) {
			t.Errorf("row %d: at %v in %v", n, r.at, r.size)
		}
	}
}

// What pages there are, in words.
func TestWhatIsPrinted(t *testing.T) {
	cut := func(roll bool, empty ...bool) *tile.Cut {
		c := &tile.Cut{Paper: tile.Paper{Says: "PAPER", Roll: roll}}
		for k, e := range empty {
			c.Cells = append(c.Cells, tile.Cell{Name: fmt.Sprint("C", k+1), Empty: e})
		}
		return c
	}
	const shows = " pages of PAPER. Each shows 10 mm of the page beside it: lay cross on cross and diamond on diamond."
	for want, c := range map[string]*tile.Cut{
		"One length of PAPER.": cut(true, false),
		"2 lengths of PAPER, 10 mm of each of them shown on the next too.": cut(true, false, false),
		"1" + shows: cut(false, false),
		"2" + shows: cut(false, false, false),
		"3" + shows + " Left out, as nothing is on them that those beside them do not show: C2.":     cut(false, false, true, false, false),
		"2" + shows + " Left out, as nothing is on them that those beside them do not show: C2, C4.": cut(false, false, true, false, true),
	} {
		if got := printed(c); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
}

// The rows of the block, by hand: what is heavy or large, where columns begin, and what is said only where it is so.
func TestRowsOfTheBlock(t *testing.T) {
	world := &plot.Sheet{Box: plot.Box{Low: plot.Point{X: -10, Y: -20}, High: plot.Point{X: 400, Y: 300}}}
	d := &drawing.Drawing{Datum: "P1", PegMM: 6}
	m := Meta{On: "2026-05-31", File: "a.toml", Identity: "12-34", Sys: unit.Inch}
	of := func() (all string, rows []row) {
		rows = blockRows(headed(), d, world, nil, m)
		var says []string
		for _, r := range rows {
			says = append(says, strings.Join(r.cells, "|"))
		}
		return strings.Join(says, " "), rows
	}
	all, rows := of()
	for n, want := range []string{"[N-1 B wing loom] [] 6 true 0", "[drawing at full size, 1:1 lengths in in, pegs in mm] [0 90] 4.4 " +
		"false 2",
		"[serial ____________ drawn ____________ checked ____________ released ____________] [0 44 88 134] 3.6 false 4", "[] [] 0 false 2",
		"[Drawn 2026-05-31, a.toml, identity 12-34.] [] 3.6 false 0"} {
		if r := rows[n]; fmt.Sprint(r.cells, " ", r.at, " ", float64(r.size), " ", r.bold, " ", float64(r.gap)) != want {
			t.Errorf("row %d: %+v, want %s", n, r, want)
		}
	}
	for _, r := range rows[5:] {
		heads := r.cells[0] == "Signs"
		if r.bold != heads || (r.size == 4.4) != heads || (r.gap == 3) != heads || !heads && r.size != 3.6 {
			t.Errorf("%+v", r)
		}
	}
	for _, want := range []string{"The drawing is 410 x 320 mm. ", "up, from P1. ", "Branches lie by rule:", "peg of 6.0 mm, numbered",
		"Signs", "Hatched:",
		"Cross at an end:", "A length without a tolerance beside it has none in the file."} {
		if strings.Count(all, want) != 1 {
			t.Errorf("%q stands there %d times: %s", want, strings.Count(all, want), all)
		}
	}
	for _, never := range []string{"Read this first", "Print at 100", "Branches leave and bend as the file says", "Pegs, mm"} {
		if strings.Contains(all, never) {
			t.Errorf("it says %q", never)
		}
	}
	d.Keyed, d.Notes, m.File = true, []drawing.Note{{Says: "it is 25.4 mm long"}}, ""
	d.Pegs, d.Branches = []drawing.Peg{{No: 1}}, []drawing.Branch{{ID: "T1"}}
	all, rows = of()
	for _, want := range []string{"Branches leave and bend as the file says; the rest lies by rule.", "Read this first " +
		unit.Inch.Says("it is 25.4 mm long") + ". Signs", "Drawn 2026-05-31, identity 12-34."} {
		if !strings.Contains(all, want) {
			t.Errorf("it lacks %q: %s", want, all)
		}
	}
	if strings.Contains(all, "by rule: the longest") || !slices.Equal(rows[len(rows)-1].cells, []string{"1", "0.0", "0.0", "T1"}) {
		t.Errorf("%s", all)
	}
	paper, _ := tile.Find("a4")
	c := tile.Of(world, paper)
	var says []string
	for _, r := range blockRows(headed(), d, world, &c, m) {
		says = append(says, strings.Join(r.cells, "|"))
	}
	if all := strings.Join(says, " "); !strings.Contains(all, "Print at 100 %, not fitted to the page. "+strings.Fields(printed(&c))[0]) {
		t.Errorf("it does not say how it is printed: %s", all)
	}
}

// The block at the right of a drawing, by hand: 16 mm off its right edge and from its top; a column takes 180 mm and 10 more.
func TestBlockBesideADrawing(t *testing.T) {
	whole := &plot.Sheet{Box: plot.Box{Low: plot.Point{X: -5, Y: -5}, High: plot.Point{X: 100, Y: 50}}}
	line := func(text string) row { return row{cells: []string{text}, size: 4} }
	put(whole, []row{line("a"), line("b"), line("c")}, 10)
	same(t, "block", whole.Shapes, `frame 4 at 116,46 "a"`, `frame 4 at 116,41 "b"`, `frame 4 at 306,46 "c"`)
	if whole.Box != (plot.Box{Low: plot.Point{X: -5, Y: -5}, High: plot.Point{X: 496, Y: 50}}) {
		t.Errorf("%v", whole.Box)
	}
	put(whole, []row{line("a"), {cells: []string{"b"}, size: 60}}, 200)
	if whole.Box.Low.Y != 50-5-75+15 {
		t.Errorf("it reaches down to %v", whole.Box.Low.Y)
	}

	world := &plot.Sheet{Title: "T", Box: plot.Box{High: plot.Point{X: 400, Y: 1200}}}
	world.Way(plot.Centre, 1, plot.Point{}, plot.Point{X: 400, Y: 1200})
	out := beside(headed(), &drawing.Drawing{}, world, Meta{})
	if out.Title != "T" || len(world.Shapes) != 1 || stroke(out.Shapes[0]) != stroke(world.Shapes[0]) || out.Box.High.X != 400+16+190 ||
		stroke(out.Shapes[1]) != `frame bold 6 at 416,1194 "N-1 B wing loom"` { // 7.5 high; its base 1.5 above that
		t.Errorf("%v to %s", out.Box, stroke(out.Shapes[1]))
	}
	world.Box.High.Y = 20 // a low drawing has a block of 300 mm
	if low := beside(headed(), &drawing.Drawing{}, world, Meta{}); low.Box.High.X != 400+16+190 {
		t.Errorf("%v", low.Box)
	}
}

// A drawing of 1,100 x 100 mm on a roll of 610, by hand: two bars of 500 mm lie 6 mm below it, each with six marks of 4 mm; crosses of
// 12 mm
// stand at its corners, the lower ones 4 mm below the bars, and are what the block says the way between.
func TestRollByHand(t *testing.T) {
	world := &plot.Sheet{Title: "T", Box: plot.Box{Low: plot.Point{X: -100}, High: plot.Point{X: 1000, Y: 100}}}
	p, _ := tile.Find("roll610")
	out := rolled(headed(), &drawing.Drawing{Notes: slices.Repeat([]drawing.Note{{Says: "x"}}, 30)}, world, p, Meta{})
	var want []string
	for _, x := range []int{-100, 400} {
		for n := range 6 {
			want = append(want, fmt.Sprintf("frame 0.25: %d,-8 %d,-4", x+100*n, x+100*n))
		}
		want = append(want, fmt.Sprintf("frame 0.25: %d,-6 %d,-6", x, x+500), fmt.Sprintf(`frame 3.6 at %d,-5 "500 mm"`, x+3))
	}
	for _, at := range [][2]int{{-100, -10}, {1000, 100}, {-100, 100}, {1000, -10}} {
		want = append(want, fmt.Sprintf("frame 0.13: %d,%d %d,%d", at[0]-6, at[1], at[0]+6, at[1]),
			fmt.Sprintf("frame 0.13: %d,%d %d,%d", at[0], at[1]-6, at[0], at[1]+6))
	}
	same(t, "roll", out.Shapes[:len(want)], want...)
	last := out.Shapes[len(out.Shapes)-1]
	// √(1100² + 110²) = 1105.486
	if last.Text != "Between the corner crosses: 1100.0 mm from left to right, 110.0 mm upward, 1105.5 mm across." || last.Size != 3.6 {
		t.Errorf("%s", stroke(last))
	}
	// The block's columns are no higher than the drawing with its bars, 110 mm: it takes more than one, from 1016 on.
	columns := map[unit.Millimetre]bool{}
	for _, s := range out.Shapes[len(want):] {
		if x := s.Middle.X - 1016; s.Middle.Y > 100 || s.Middle.Y < -10 || x < 0 {
			t.Errorf("%s", stroke(s))
		} else {
			columns[unit.Millimetre(int(x)/190)] = true
		}
	}
	n := unit.Millimetre(len(columns))
	if n < 2 || out.Box != (plot.Box{Low: plot.Point{X: -107, Y: -17}, High: plot.Point{X: 1016 + 190*n, Y: 107}}) || out.Title != "T" {
		t.Errorf("%v, %v columns", out.Box, n)
	}
	// A high drawing has a column no higher than the roll shows with its margins and 14 mm: 576.
	world.Box.High.Y = 2000
	world.Way(plot.Bundle, 0.25, plot.Point{}, plot.Point{Y: 2000})
	high := rolled(headed(), &drawing.Drawing{Notes: slices.Repeat([]drawing.Note{{Says: "x"}}, 200)}, world, p, Meta{})
	low := high.Box.High.Y
	for _, s := range high.Shapes[len(want)+1:] {
		low = min(low, s.Middle.Y)
	}
	if low < 2000-576 || low > 2000-560 {
		t.Errorf("the block reaches to %v", low)
	}
	pages := Pages(headed(), &drawing.Drawing{}, world, p, Meta{On: "2026-05-31", Identity: "12-34"})
	head := false
	for _, s := range pages[0].Views[2].Of.Shapes {
		head = head || s.Text == "N-1 B wing loom, full size, 2026-05-31, 12-34"
	}
	if len(pages) != 4 || !head { // 2,000 mm and bars and corners, 2024 high, in lengths of 590: 580 and 10 more
		t.Errorf("%d pages, headed: %v", len(pages), head)
	}
}

// The pages before a drawing of 600 x 300 mm on A4 lying down, by hand: its block is 182 mm high, from 10 mm off the left
// edge and the top; one column has room, with the key plan at its right from 198 to 287 mm.
func TestFrontPages(t *testing.T) {
	world := &plot.Sheet{Box: plot.Box{High: plot.Point{X: 600, Y: 300}}}
	world.Way(plot.Centre, 0.13, plot.Point{Y: 300}, plot.Point{X: 600, Y: 300})
	world.Way(plot.Centre, 0.13, plot.Point{}, plot.Point{Y: 300})
	p, _ := tile.Find("a4")
	d := &drawing.Drawing{Notes: slices.Repeat([]drawing.Note{{Says: "x"}}, 100)}
	c := tile.Of(world, p)
	pages := fronts(headed(), d, world, &c, Meta{})
	columns := flowed(blockRows(headed(), d, world, &c, Meta{}), 182)
	if len(pages) != len(columns) || len(pages) < 3 {
		t.Fatalf("%d pages, %d columns", len(pages), len(columns))
	}
	for k, page := range pages {
		if page.Name != fmt.Sprint("front ", k+1) || page.Wide != 297 || page.High != 210 || len(page.Views) != 1 ||
			page.Views[0].Window != (plot.Box{High: plot.Point{X: 297, Y: 210}}) || page.Views[0].Move != (plot.Point{}) {
			t.Errorf("%+v", page)
		}
		shapes := page.Views[0].Of.Shapes
		if k == 0 { // the plan comes first
			shapes = shapes[len(shapes)-1-len(columns[0]):]
		}
		var want []string
		for _, s := range columns[k] {
			s.Middle = s.Middle.Plus(plot.Point{X: 10, Y: 200})
			want = append(want, stroke(s))
		}
		same(t, page.Name, shapes, append(want, fmt.Sprintf(`frame 3.2 at 10,6 "N-1 B wing loom, front page %d of %d"`, k+1,
			len(pages)))...)
	}
	a3, _ := tile.Find("a3") // 400 mm hold two columns of 180 and 8 between them; the first page has one, and the plan
	c = tile.Of(world, a3)
	pages = fronts(headed(), d, world, &c, Meta{})
	columns = flowed(blockRows(headed(), d, world, &c, Meta{}), 297-28)
	if len(pages) != 1+(len(columns)-1+1)/2 || len(columns) < 3 {
		t.Errorf("%d pages of %d columns", len(pages), len(columns))
	}
	second := pages[1].Views[0].Of.Shapes
	if got, want := second[len(columns[1])], columns[2][0].Middle.Plus(plot.Point{X: 10 + 188, Y: 287}); got.Middle != want {
		t.Errorf("the second column of page 2 begins at %v, by hand %v", got.Middle, want)
	}
	all := Pages(headed(), d, world, a3, Meta{})
	cells, _ := c.Printed()
	if len(all) != len(pages)+len(cells) || all[0].Name != "front 1" || all[len(all)-1].Name != cells[len(cells)-1].Name {
		t.Errorf("%d pages, %d before the drawing, %d of it", len(all), len(pages), len(cells))
	}
}

// The key plan of 811 x 370 mm of cells in 89 x 190, by hand: at 89/811 of full size, from the top left; each cell has its name in its
// middle, one that is not
// printed is crossed out.
func TestKeyPlanByHand(t *testing.T) {
	world := &plot.Sheet{}
	world.Way(plot.Centre, 0.13, plot.Point{X: 100, Y: 300}, plot.Point{X: 300, Y: 300})
	world.Add(plot.Shape{Layer: plot.Connector, Way: []plot.Point{{X: 100, Y: 300}, {X: 200, Y: 200}, {X: 300, Y: 300}}, Closed: true},
		plot.Shape{Layer: plot.Connector, Radius: 7}, plot.Shape{Layer: plot.Bundle, Way: []plot.Point{{}, {X: 1}}})
	box := func(x0, y0, x1, y1 unit.Millimetre) plot.Box {
		return plot.Box{Low: plot.Point{X: x0, Y: y0}, High: plot.Point{X: x1, Y: y1}}
	}
	c := &tile.Cut{Cells: []tile.Cell{{Name: "A1", Live: box(0, 100, 200, 300)}, {Name: "B1", Live: box(200, 100, 400, 300)},
		{Name: "A2", Live: box(0, -100, 200, 100), Empty: true}, {Name: "B2", Live: box(200, -100, 400, 100)}}}
	page := &plot.Sheet{}
	keyPlan(page, world, c, box(20, 30, 60, 200)) // 40 of 400 mm wide, 170 of 400 high: a tenth
	wide := func(text string) float64 { return float64(font.Of(true).Width(text, 3.2)) }
	same(t, "key plan", page.Shapes, "frame 0.3: 30,200 50,200", "frame 0.3 closed: 30,200 40,190 50,200",
		"frame 0.13 closed: 20,180 40,180 40,200 20,200", fmt.Sprintf(`frame bold 3.2 at %s,196.4 "A1"`, num(30-wide("A1")/2)),
		"frame 0.13 closed: 40,180 60,180 60,200 40,200", fmt.Sprintf(`frame bold 3.2 at %s,196.4 "B1"`, num(50-wide("B1")/2)),
		"frame 0.13 closed: 20,160 40,160 40,180 20,180", "frame 0.13: 20,160 40,180",
		"frame 0.13 closed: 40,160 60,160 60,180 40,180", fmt.Sprintf(`frame bold 3.2 at %s,176.4 "B2"`, num(50-wide("B2")/2)),
		`frame 3.6 at 20,155 "Key plan. Crossed out: not printed."`)
	page = &plot.Sheet{}
	keyPlan(page, world, c, box(20, 30, 220, 70)) // here its height decides: 40 of 400
	if got := stroke(page.Shapes[0]); got != "frame 0.3: 30,70 50,70" {
		t.Error(got)
	}
}

// Scales of a page, by hand: 200 mm of 248 and 100 of 124 have room beside the words, 24 mm at each side and once in its height.
func TestScalesOfAPage(t *testing.T) {
	for _, c := range []struct {
		x, y  unit.Millimetre
		scale float64 // 1 to so many
	}{{200, 100, 1}, {201, 100, 2}, {200, 101, 2}, {400, 200, 2}, {401, 100, 2.5}, {100, 251, 4}, {800, 0, 4}, {1000, 100, 5}, {20000, 0,
		100},
		{20001, 0, 101}, {30000, 100, 150}} {
		d := &drawing.Drawing{Low: plot.Point{X: -50, Y: 30}, High: plot.Point{X: c.x - 50, Y: c.y + 30}}
		if got := Scaled(d, 248, 124, unit.Inch); num(1/got.Scale) != num(c.scale) || got.Size != 3.2 || got.Sys != unit.Inch ||
			got.Full || got.Small {
			t.Errorf("%v x %v: %+v, want 1:%v", c.x, c.y, got, c.scale)
		}
	}
	for _, c := range [][3]float64{{1, 2, 1}, {2, 2.5, 1}, {2.5, 4, 2}, {3, 4, 2.5}, {100, 125, 75}, {150, 187.5, 100}, {75, 100, 50}} {
		if next(c[0]) != c[1] || larger(c[0]) != c[2] {
			t.Errorf("after 1:%v comes 1:%v, before it 1:%v; want %v and %v", c[0], next(c[0]), larger(c[0]), c[1], c[2])
		}
	}
	if o := FullSize(unit.Inch); o != (Options{Scale: 1, Size: 4.8, Full: true, Sys: unit.Inch}) {
		t.Errorf("%+v", o)
	}
}

// The bar below a drawing, by hand: 100 mm of the harness, 500 where that is less than 20 mm of paper; at 1:5 it is 20 mm long. It lies
// 4 mm below the box, 3 mm in, and
// its words 3 mm beside it. Under a narrow drawing it lies below the middle.
func TestBarOfTheScale(t *testing.T) {
	for _, c := range []struct {
		scale float64
		sys   unit.System
		says  string
		long  unit.Millimetre
	}{
		{1. / 5, unit.MM, unit.MM.Length(100) + " mm of the harness. Scale 1:5, lengths in mm. Full size: a file of its own.", 20},
		{1. / 6, unit.MM, unit.MM.Length(500) + " mm of the harness. Scale 1:6, lengths in mm. Full size: a file of its own.", 500. / 6},
		{1. / 2.5, unit.Inch, unit.Inch.Length(127) + " in of the harness. Scale 1:2.5, lengths in in. Full size: a file of its own.",
			50.8},
		{1. / 12, unit.Inch, unit.Inch.Length(508) + " in of the harness. Scale 1:12, lengths in in. Full size: a file of its own.",
			508. / 12},
	} {
		wide := textWide(c.says, 3.2)
		for _, narrow := range []bool{false, true} {
			out := &plot.Sheet{Box: plot.Box{Low: plot.Point{X: 10, Y: 20}, High: plot.Point{X: 400, Y: 300}}}
			left, high := unit.Millimetre(13), unit.Millimetre(400)
			if narrow {
				out.Box.High.X = 50 // its middle is at 30
				left = 30 - (c.long+3+wide)/2
				high = left + c.long + 3 + wide + 3
			}
			caption(out, Options{Scale: c.scale, Sys: c.sys})
			x := func(v unit.Millimetre) string { return num(float64(v)) }
			same(t, c.says, out.Shapes, fmt.Sprintf("frame 0.5: %s,16 %s,16", x(left), x(left+c.long)),
				fmt.Sprintf("frame 0.25: %s,14.8 %s,17.2", x(left), x(left)),
				fmt.Sprintf("frame 0.25: %s,14.8 %s,17.2", x(left+c.long), x(left+c.long)),
				fmt.Sprintf("frame 3.2 at %s,14.9 %q", x(left+c.long+3), c.says))
			if b := out.Box; b.Low.Y != 13 || b.High.Y != 300 || x(b.Low.X) != x(min(10, left-3)) || x(b.High.X) != x(high) {
				t.Errorf("%s: its box is %v", c.says, b)
			}
		}
	}
}

// What all of a drawing lies in, with 3 mm round it; the title is the number, the revision and the name with one space between words.
func TestBoundsOfADrawing(t *testing.T) {
	c := blank(1, true)
	c.out.Way(plot.Bundle, 1, plot.Point{X: 10, Y: 20}, plot.Point{X: 30, Y: 15})
	c.out.Way(plot.Bundle, 1, plot.Point{X: 12, Y: 40}, plot.Point{X: 14, Y: 18})
	c.out.Add(plot.Shape{Middle: plot.Point{X: 40, Y: 20}, Radius: 5})
	c.bounds()
	if c.out.Box != (plot.Box{Low: plot.Point{X: 7, Y: 12}, High: plot.Point{X: 48, Y: 43}}) {
		t.Errorf("%v", c.out.Box)
	}
	if got := title(headed()); got != "N-1 B wing loom" {
		t.Errorf("%q", got)
	}
}
