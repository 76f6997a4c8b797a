package cavity_test

import (
	"math"
	"strings"
	"testing"

	"contralay/model/unit"
	"contralay/ui/paper/cavity"
	"contralay/ui/paper/page"
)

// Cells and sentences, by hand: as wide as their words, a line high; a word more than has room begins the next line.
func TestMeasuresByHand(t *testing.T) {
	c := cavity.Cell("P1:", "a", " (b)", true)
	if math.Abs(float64(c.Wide-page.Strong.Wide("P1:a (b)"))) > 1e-9 || c.High != page.Strong.Line() || c.Text != "" {
		t.Errorf("%+v", c)
	}
	if c := cavity.Cell("P1:", "A", " (b)", false); c.Text != "P1:A (b)" || c.Bold || c.Wide != 0 {
		t.Errorf("%+v", c)
	}
	if c := cavity.EndCell("none", true); c.Text != "none" || !c.Bold {
		t.Errorf("%+v", c)
	}
	words := cavity.Words("  loom loom <oom ")
	if len(words) != 3 || words[2] != (cavity.Word{Text: "<oom"}) {
		t.Errorf("%+v", words)
	}
	two := page.Small.Wide("loom") + page.Small.Wide(" ") + page.Small.Wide("loom")
	for _, c := range []struct {
		more unit.Millimetre
		want string
	}{{0.001, "loom loom|&lt;oom"}, {-0.001, "loom|loom|&lt;oom"}} {
		got, n := cavity.Lines(words, page.Small, two+c.more)
		if all := strings.ReplaceAll(string(got), "<br>", "|"); all != c.want || n != strings.Count(c.want, "|")+1 {
			t.Errorf("%v more: %s in %d lines, by hand %s", c.more, all, n, c.want)
		}
	}
	three := two + page.Small.Wide(" ") + page.Small.Wide("<oom")
	if got, n := cavity.Lines(words, page.Small, three+1e-6); got != "loom loom &lt;oom" || n != 1 {
		t.Errorf("%s in %d lines", got, n)
	}
	if got, n := cavity.Lines(nil, page.Small, 10); got != "" || n != 1 {
		t.Errorf("%q, %d", got, n)
	}
	b := cavity.Sentence(words, two+0.001)
	if b.HTML != `<div class="p9">loom loom<br>&lt;oom</div>` || b.High != 2*page.Small.Line() || b.Gap != 1 || b.Cut != nil {
		t.Errorf("%+v", b)
	}
}

// Runs of numbers, by hand: from three on; what is no number or not the next ends one.
func TestRunsByHand(t *testing.T) {
	for names, want := range map[string]string{"": "", "1": "1.", "1 2": "1,2.", "1 2 3": "1to3.", "1 2 3 5 6 7 8 10": "1to3,5to8,10.",
		"1 3 5": "1,3,5.", "9 10 11": "9to11.",
		"a b c": "a,b,c.", "1 2 3 a": "1to3,a.", "3 2 1": "3,2,1.", "1 1 1": "1,1,1."} {
		got := ""
		for _, w := range cavity.Runs(strings.Fields(names), ".") {
			if w.Cavity != (w.Text != "to") {
				t.Errorf("%+v", w)
			}
			got += w.Text + w.After
		}
		if got != want {
			t.Errorf("%s: %s, by hand %s", names, got, want)
		}
	}
	if got := cavity.Names(nil, "."); got != nil {
		t.Errorf("%v", got)
	}
}
