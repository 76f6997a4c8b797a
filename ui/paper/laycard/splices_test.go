package laycard

import (
	"fmt"
	"strings"
	"testing"

	"contralay/calc/calctest"
	"contralay/model/unit"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
)

// spliced is a loom of a trunk and two legs with so many splices at their breakout, each of a wire that becomes two; name is what an end
// is called.
func spliced(t *testing.T, n int, name string) list.Maker {
	text := fmt.Sprintf("format = 1\n[[termination]]\nid = \"P\"\n[[termination]]\nid = %[1]q\n[[termination]]\nid = "+
		"\"B\"\n[[breakout]]\nid = \"J\"\n"+
		"[[branch]]\nid = \"T1\"\nfrom = \"P\"\nto = \"J\"\nlength_mm = 400.0\n[[branch]]\nid = \"L1\"\nfrom = \"J\"\nto = "+
		"%[1]q\nlength_mm = 200.0\n"+
		"[[branch]]\nid = \"L2\"\nfrom = \"J\"\nto = \"B\"\nlength_mm = 100.0\n", name)
	for k := 1; k <= n; k++ {
		text += fmt.Sprintf("[[splice]]\nid = \"S%d\"\npart = \"AS81824/1-2\"\nat = \"J\"\n", k)
		for w, ends := range []string{fmt.Sprintf("from = \"P:%d\"\nto = \"S%d\"", k, k), fmt.Sprintf("from = \"S%d\"\nto = \"%s:%d\"", k,
			name, k),
			fmt.Sprintf("from = \"S%d\"\nto = \"B:%d\"", k, k)} {
			text += fmt.Sprintf("[[wire]]\nid = \"%d\"\n%s\nspec = \"AS22759/32\"\nsize = \"22\"\ncolour = \"2\"\n", 10*k+w, ends)
		}
	}
	return list.MakerOf(calctest.Built(t, text))
}

// Splices that no card has are drawn: two beside each other, or one where one of them is too wide for half of a page; those that a card
// has stand in a table, with their
// part and what it is said of it once.
func TestSplicesOnPaper(t *testing.T) {
	blocks := splicesOf(spliced(t, 3, "A"), nil)
	if len(blocks) != 3 || blocks[0].Section != "Splices" {
		t.Fatalf("%d blocks", len(blocks))
	}
	for k, n := range []int{2, 1} {
		text := string(blocks[1+k].HTML)
		if strings.Count(text, `class="joint"`) != n || strings.Count(text, "width:92.00mm") != n || blocks[1+k].Gap != 2.5 || n == 2 &&
			!strings.Contains(text, "margin-left:2.00mm") {
			t.Errorf("row %d: %.600s", k, text)
		}
	}
	says := said(splice(spliced(t, 1, "A"), 0, 92))
	if len(says) != 3 || says[0] != "1 p9b S1: wire 10 becomes 2 wires; middle of its sleeve at the centre of J." ||
		!strings.HasPrefix(says[1], "0.3 p9 Part AS81824/1-2~, sleeve 28 mm long, OD 3.6~.") || !strings.HasPrefix(says[2], "1.2 joint ") {
		t.Errorf("%q", says)
	}
	long := splicesOf(spliced(t, 3, strings.Repeat("a-long-name-", 3)), nil)
	if len(long) != 4 || strings.Count(string(long[1].HTML), "width:186.00mm") != 1 {
		t.Errorf("%d blocks of wide splices", len(long))
	}
	m := spliced(t, 2, "A")
	all := splicesOf(m, map[int]bool{0: true, 1: true, 2: true})
	if len(all) != 3 || !all[1].KeepNext {
		t.Fatalf("%d blocks", len(all))
	}
	got := said(all[1:])
	if got[0] != "1 p9 Drawn on the card of the branch that each is made in. AS81824/1-2~: sleeve 28 mm long, OD 3.6~." ||
		!strings.Contains(got[1], "S1 10 11, 12 at the centre of J AS81824/1-2~ S2 20 21, 22 at the centre of J AS81824/1-2~") {
		t.Errorf("%q", got)
	}
	if got := splicesOf(list.MakerOf(calctest.Built(t, "format = 1\n")), nil); got != nil {
		t.Errorf("%v", got)
	}
	if set := page.Lay(all); len(set.Pages) != 1 {
		t.Errorf("%d pages", len(set.Pages))
	}
}

// Splices that are made before a layer, drawn small, by hand: as many beside each other as have 37 mm, 2 mm apart, with what is said of
// them below.
func TestMadeFirstByHand(t *testing.T) {
	m := spliced(t, 3, "A")
	for _, c := range []struct {
		wide  unit.Millimetre
		each  string
		first int
		rows  int
	}{{150, "48.67mm", 3, 1}, {110, "54.00mm", 2, 2}, {74, "36.00mm", 2, 2}, {73.9, "73.90mm", 1, 3}, {30, "30.00mm", 1, 3}} {
		b := madeFirst(m, []int{0, 1, 2}, "layer 1", c.wide)
		text := string(b.HTML)
		if strings.Count(text, `class="joint"`) != 3 || strings.Count(text, `class="beside"`) != c.rows || strings.Count(text,
			`<div style="width:`+c.each) != 3 {
			t.Errorf("%v wide: %d rows, want %d of %s: %.400s", c.wide, strings.Count(text, `class="beside"`), c.rows, c.each, text)
		}
		if says := said([]page.Block{b})[0]; !strings.Contains(says, "Make S1, S2 and S3 before you lay layer 1.") || strings.Count(says,
			"at the centre of J") != 3 {
			t.Errorf("%s", says)
		}
	}
	one := said([]page.Block{madeFirst(m, []int{1}, "the centre", 60)})[0]
	if !strings.Contains(one, "Make S2 before you lay the centre.") {
		t.Errorf("%s", one)
	}
}
