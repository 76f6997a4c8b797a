package set

import (
	"fmt"
	"strings"
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/phase/over"
	"contralay/calc/query/lists"
	"contralay/model/unit"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
)

// textOf is all that blocks say.
func textOf(blocks []page.Block) string {
	var b strings.Builder
	for _, x := range blocks {
		b.WriteString(string(x.HTML) + "\n")
		if x.Cut != nil {
			for _, r := range x.Cut.Rows {
				b.WriteString(string(r.HTML) + "\n")
			}
		}
	}
	return b.String()
}

// What cannot be ordered yet stands under its reason: each reason once, with all that waits for it.
func TestUnsettledByReason(t *testing.T) {
	rows := []lists.BillRow{{Group: "connector", Part: "8-98", Open: "no gender", Need: 1},
		{Group: "contact", Part: "size 20", Open: "no part", Need: 3},
		{Group: "connector", Part: "8-35", Open: "no gender", Need: 2}}
	blocks := unsettled(list.Maker{Sys: unit.MM}, rows)
	text := textOf(blocks)
	if len(blocks) != 3 || strings.Count(text, "No gender.") != 1 || strings.Count(text, "No part.") != 1 {
		t.Errorf("%d blocks:\n%s", len(blocks), text)
	}
	for _, want := range []string{"8-98", "8-35", "size 20"} {
		if strings.Count(text, want) != 1 {
			t.Errorf("%s stands %d times in\n%s", want, strings.Count(text, want), text)
		}
	}
}

// A colour on a spool is said in words, and one that has none by its code.
func TestColourOnASpool(t *testing.T) {
	for code, want := range map[string]string{"9": "white", "zz": "zz"} {
		if got := colour(code); got != want || got == "" {
			t.Errorf("%q, want %q", got, want)
		}
	}
}

// Ends whose loops are alike stand in one line, each once, with what is left of them.
func TestSparesByLoop(t *testing.T) {
	s := calctest.Laid(t, "example")
	text := textOf(Spares(list.MakerOf(s), list.Table{}, map[string]int{s.H.Terminations[0].ID: 1}))
	for _, e := range s.H.Terminations {
		if n := strings.Count(text, e.ID+"\u00a0["); n != 1 {
			t.Errorf("%s stands %d times", e.ID, n)
		}
	}
	lines := map[string]bool{}
	for k := range s.H.Terminations {
		l := over.LoopRoomOf(s, k)
		used := 0
		if k == 0 {
			used = 1
		}
		lines[fmt.Sprint(unit.MM.Length(l.LoopMM), l.Again, used)] = true
	}
	if got := strings.Count(text, "so far"); got != len(lines) {
		t.Errorf("%d lines of loops, want %d:\n%s", got, len(lines), text)
	}
}
