package page

import (
	"fmt"
	"html/template"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"contralay/model/unit"
	"contralay/ui/paper/list"
)

// No block is lost, made twice or put out of its order, whatever blocks there are; no page holds more
// than it has room for; what stays with the next is never the last of a page.
func TestEveryRowOnce(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var blocks []Block
		var want, keep []string
		n := 0
		mark := func(keeps bool) template.HTML {
			n++
			id := fmt.Sprintf("<i>%d</i>", n)
			want = append(want, id)
			if keeps {
				keep = append(keep, id)
			}
			return template.HTML(id)
		}
		for range rapid.IntRange(1, 12).Draw(t, "blocks") {
			b := Block{Gap: unit.Millimetre(rapid.IntRange(0, 6).Draw(t, "gap")), NewPage: rapid.Bool().Draw(t, "new")}
			if rapid.Bool().Draw(t, "cut") {
				c := Cut{HeadHigh: 5, Columns: rapid.IntRange(0, 3).Draw(t, "columns"), Wide: 50}
				for range rapid.IntRange(1, 90).Draw(t, "rows") {
					c.Rows = append(c.Rows, Row{HTML: mark(false), High: unit.Millimetre(rapid.IntRange(3, 30).Draw(t, "high"))})
				}
				b.Cut = &c
			} else {
				b.KeepNext = rapid.IntRange(0, 3).Draw(t, "keep") == 0
				b.HTML, b.High = mark(b.KeepNext), unit.Millimetre(rapid.IntRange(1, 80).Draw(t, "high"))
				if b.KeepNext {
					b.High = min(b.High, 9) // thirteen of them are less than a page
				}
			}
			blocks = append(blocks, b)
		}
		blocks = append(blocks, Block{HTML: mark(false), High: 1})
		set := Lay(blocks)
		var got []string
		for k, p := range set.Pages {
			if p.Used > BodyHigh+1e-3 || p.Used <= 0 {
				t.Fatalf("page %d uses %v of %v mm", k+1, p.Used, BodyHigh)
			}
			ids := regexp.MustCompile(`<i>\d+</i>`).FindAllString(string(p.HTML), -1)
			if k < len(set.Pages)-1 && slices.Contains(keep, ids[len(ids)-1]) {
				t.Fatalf("page %d ends with %s", k+1, ids[len(ids)-1])
			}
			got = append(got, ids...)
		}
		if !slices.Equal(got, want) || len(set.Squeezed) > 0 {
			t.Fatalf("got %v, want %v; squeezed %v", got, want, set.Squeezed)
		}
	})
}

// Rows stand in columns as even as can be, and a table that is cut has its head on both pages.
func TestColumns(t *testing.T) {
	g := Grid{Cols: []Col{{Head: "no"}, {Head: "what"}}, Columns: 3}
	for k := range 10 {
		g.Lines = append(g.Lines, Cells(strconv.Itoa(k), "x"))
	}
	b := g.Block()
	one := b.Cut.Rows[0].High
	if got, want := b.high(), b.Cut.HeadHigh+4*one; got < want-0.001 || got > want+0.001 {
		t.Errorf("10 rows in 3 columns are %v high, want %v", got, want)
	}
	long := Grid{Cols: g.Cols}
	for k := range 100 {
		long.Lines = append(long.Lines, Cells(strconv.Itoa(k), "y"))
	}
	set := Lay([]Block{long.Block()})
	per := int((BodyHigh - b.Cut.HeadHigh) / one)
	if want := (100 + per - 1) / per; len(set.Pages) != want {
		t.Errorf("%d pages, want %d", len(set.Pages), want)
	}
	for _, p := range set.Pages {
		if strings.Count(string(p.HTML), "<thead>") != 1 {
			t.Error("a page without the head of its table")
		}
	}
}

// The contents list has the page that each section and part begins on, and the head of a page has the names of what is on it.
func TestContents(t *testing.T) {
	tall := func(name, part string, high unit.Millimetre) Block {
		return Block{Section: name, Part: part, HTML: "x", High: high}
	}
	blocks := []Block{tall("kit", "", 100), tall("cards", "T1", 100), tall("", "R1", 100), tall("", "R2", 100), tall("test", "", 40)}
	blocks = append([]Block{Contents(blocks, Small, 90)}, blocks...)
	set := Lay(blocks)
	want := []Entry{{"kit", "", 1, ""}, {"cards", "", 1, ""}, {"cards", "T1", 1, ""}, {"cards", "R1", 2, ""}, {"cards", "R2", 2, ""},
		{"test", "", 3, ""}}
	if !slices.Equal(set.Contents, want) {
		t.Errorf("got %v", set.Contents)
	}
	var names []string
	for _, p := range set.Pages {
		names = append(names, p.Name)
	}
	if want := []string{"kit; cards T1", "cards R1, R2", "test"}; !slices.Equal(names, want) {
		t.Errorf("got %q", names)
	}
	rows := regexp.MustCompile(`<td>([^<]*)</td><td[^>]*>([^<]*)</td>`).FindAllStringSubmatch(string(set.Pages[0].HTML), -1)
	var says []string
	for _, r := range rows {
		says = append(says, r[1]+" "+r[2])
	}
	if want := []string{"kit 1", "cards: T1, R1, R2 1–2", "test 3"}; !slices.Equal(says, want) {
		t.Errorf("the contents say %q", says)
	}
	page := string(set.HTML(Frame{Number: "A<1", Identity: "0-0", Foot: "today"}))
	for _, part := range []string{"A&lt;1  rev -", "page 2 of 3", "SERIAL", "QTY", "identity 0-0", "today", caution} {
		if n := strings.Count(page, part); n == 0 || part != "page 2 of 3" && n != 3 {
			t.Errorf("%q stands %d times", part, n)
		}
	}
}

// A text is broken at the ends of its words, and in a word that is too long; nothing is lost.
func TestLines(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := strings.Join(strings.Fields(rapid.StringMatching(`([a-zA-Z/:-]{1,40} ){0,12}`).Draw(t, "text")), " ")
		wide := unit.Millimetre(rapid.IntRange(8, 60).Draw(t, "wide"))
		lines := Small.Lines(text, wide)
		for _, line := range lines {
			if Small.Wide(line) > wide+1e-5 {
				t.Fatalf("%q is wider than %v", line, wide)
			}
		}
		if got := strings.ReplaceAll(strings.Join(lines, ""), " ", ""); got != strings.ReplaceAll(text, " ", "") {
			t.Fatalf("%q came out as %q", text, got)
		}
	})
	if got := Small.Lines("one two three", Small.Wide("one two")+0.01); !slices.Equal(got, []string{"one two", "three"}) {
		t.Errorf("got %q", got)
	}
}

// The columns of a table are together as wide as it is, and none narrower than its longest word where
// that can be.
func TestWidths(t *testing.T) {
	g := TableOf(list.Table{Head: []string{"a", "b", "in"}, Align: []list.Align{list.ToLeft, list.ToRight, list.ByHand},
		Rows: [][]string{{strings.Repeat("long words ", 30), "12", ""}, {"x", "unbreakableword", ""}}})
	for _, total := range []unit.Millimetre{186, 90, 60, 20} {
		sum := unit.Millimetre(0)
		for _, w := range g.widths(total) {
			sum += w
		}
		if sum < total-0.01 || sum > total+0.01 {
			t.Errorf("%v mm wide, want %v", sum, total)
		}
	}
	if w := g.widths(90); w[1] < Small.Wide("unbreakableword") || w[2] < handWide {
		t.Errorf("%v", w)
	}
}

// No letter is smaller than 9 points.
func TestNoLetterIsSmall(t *testing.T) {
	for _, m := range regexp.MustCompile(`([0-9.]+)pt`).FindAllStringSubmatch(style(), -1) {
		if v, err := strconv.ParseFloat(m[1], 64); err != nil || v < 9 {
			t.Errorf("%s", m[0])
		}
	}
}

// In the words for ends a cavity with a small letter is underlined, behind its end, a comma or a plus; nothing else is.
func TestEndLines(t *testing.T) {
	for _, c := range []struct {
		line  string
		alone bool
		want  string
	}{
		{"P1:a", false, "P1:<u>a</u>"}, {"P1:A", false, "P1:A"}, {"AUX1:3 + b", false, "AUX1:3 + <u>b</u>"},
		{"MAP1:b, 3, c", false, "MAP1:<u>b</u>, 3, <u>c</u>"}, {"splice S5 + splice S6", false, "splice S5 + splice S6"},
		{"capped at J1", false, "capped at J1"}, {"U + v", true, "U + <u>v</u>"}, {"shell of P1", false, "shell of P1"},
		{"P1:k then free", false, "P1:<u>k</u> then free"}, {"<a>:b", false, "&lt;a&gt;:<u>b</u>"},
	} {
		if got := string(EndLines([]string{c.line}, c.alone)); got != c.want {
			t.Errorf("%q: %q, want %q", c.line, got, c.want)
		}
	}
	if got := string(EndLines([]string{"P1:", "a"}, false)); got != "P1:<br><u>a</u>" {
		t.Errorf("broken over two lines: %q", got)
	}
}
