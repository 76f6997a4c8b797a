package ends_test

import (
	"fmt"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// spliced is a feed that becomes so many branches at J1: sizes of feed and branches,
// and the keys of the splice.
func spliced(t testing.TB, feed, branch string, n int, keys string) *sheet.Sheet {
	t.Helper()
	var b strings.Builder
	b.WriteString("format = 1\n[[termination]]\nid = \"A\"\ncavities = [\"1\", \"2\"]\n[[termination]]\nid = \"Z\"\ncavities = [")
	for k := range n {
		fmt.Fprintf(&b, "\"%d\", ", k)
	}
	b.WriteString("\"x\"]\n[[breakout]]\nid = \"J1\"\n[[splice]]\nid = \"S1\"\nat = \"J1\"\n" + keys + "\n")
	fmt.Fprintf(&b, "[[wire]]\nid = \"f\"\nfrom = \"A:1\"\nto = \"S1\"\nspec = \"AS22759/32\"\nsize = %q\n", feed)
	for k := range n {
		fmt.Fprintf(&b, "[[wire]]\nid = \"b%d\"\nfrom = \"S1\"\nto = \"Z:%d\"\nspec = \"AS22759/32\"\nsize = %q\n", k, k, branch)
	}
	b.WriteString("[[branch]]\nid = \"T1\"\nfrom = \"A\"\nto = \"J1\"\nlength_mm = 900.0\n[[branch]]\nid = \"L1\"\nfrom = \"J1\"\nto = " +
		"\"Z\"\nlength_mm = 900.0\n")
	s := calctest.Built(t, b.String())
	return calc.Complete(s.H, s.Cat, s)
}

// One 20 AWG (1216 circular mils) to four 22 AWG (3016) by one butt splice fits none:
// barrels of 779 to 2680 and of 1900 to 6755 (from memory, so it warns). The ways out
// are named: a parallel splice, two small ones, an 18 AWG feed.
func TestSpliceBarrels(t *testing.T) {
	for _, part := range []string{"AS81824/1-2", "AS81824/1-3"} {
		s := spliced(t, "20", "22", 4, `part = "`+part+`"`)
		g, ok := calctest.Snag(s, "splice.barrel", "S1")
		if !ok || g.Level != sheet.Warn {
			t.Fatalf("%s: %+v", part, s.Snags)
		}
		for _, want := range []string{"gets 1216 and 3016", "parallel, stub-3", "two splices, AS81824/1-1 for 2 and AS81824/1-1 for 2",
			"a feed of 18 with AS81824/1-3"} {
			if !strings.Contains(g.Says, want) {
				t.Errorf("%s: %q lacks %q", part, g.Says, want)
			}
		}
	}
	for _, c := range []struct{ feed, part string }{{"18", `part = "AS81824/1-3"`}, {"20", `part = "stub-3"`}, {"20", ""}} {
		s := spliced(t, c.feed, "22", 4, c.part)
		if g, ok := calctest.Snag(s, "splice.barrel", ""); ok {
			t.Errorf("%s, %s: %s", c.feed, c.part, g.Says)
		}
		if p := s.Splices[0]; !p.Fits || c.part == "" && p.Part != "stub-3" {
			t.Errorf("%s, %s: %+v", c.feed, c.part, p)
		}
	}
}

// Where a splice lies: toward a branch, off its breakout.
func TestSplicePlaces(t *testing.T) {
	for _, c := range []struct {
		name, keys, rule string
		edit             func(h *model.Harness) *model.Harness
		level            sheet.Level
	}{
		{"clear of everything", "toward = \"L1\"\noffset_mm = 300.0", "", nil, sheet.Note},
		{"past the end", "toward = \"L1\"\noffset_mm = 950.0", "splice.place", nil, sheet.Stop},
		{"near a termination", "toward = \"L1\"\noffset_mm = 700.0", "splice.end", nil, sheet.Note},
		{"in a run that flexes", "toward = \"L1\"\noffset_mm = 300.0", "splice.flex", func(h *model.Harness) *model.Harness {
			return h.EditBranch(1, func(b *model.Branch) { b.Environment = []model.Surrounding{model.Flexing} })
		}, sheet.Warn},
		{"in a boot", "toward = \"L1\"\noffset_mm = 880.0", "splice.boot", func(h *model.Harness) *model.Harness {
			return h.EditTermination(1, func(t *model.Termination) { t.Boot = model.Some("boot-straight-10") })
		}, sheet.Warn},
		{"beside another", "toward = \"L1\"\noffset_mm = 300.0", "splice.stack", func(h *model.Harness) *model.Harness {
			n := *h
			n.Splices = append(append([]model.Splice{}, h.Splices...),
				model.Splice{ID: "S2", At: "J1", Toward: model.Some("L1"), OffsetMM: model.Some[unit.Millimetre](320)})
			return &n
		}, sheet.Note},
	} {
		s := spliced(t, "20", "22", 1, c.keys)
		if c.edit != nil {
			s = calc.Complete(c.edit(s.H), s.Cat, nil)
		}
		var said []string
		for _, g := range s.Snags {
			if strings.HasPrefix(g.Rule, "splice.") && g.Rule != "splice.one" {
				said = append(said, fmt.Sprint(g.Rule, " ", g.Level))
			}
		}
		want := fmt.Sprintf("[%s %s]", c.rule, c.level)
		if c.rule == "" {
			want = "[]"
		}
		if fmt.Sprint(said) != want {
			t.Errorf("%s: %v, want %s", c.name, said, want)
		}
	}
}
