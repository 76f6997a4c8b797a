package planning_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/formula/plan"
	"contralay/calc/phase/planning"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/shorttest"
	"contralay/model/unit"
)

// trunk is a branch of four sizes whose wires leave at two breakouts.
func trunk(t *testing.T) *sheet.Sheet {
	t.Helper()
	var b strings.Builder
	b.WriteString("format = 1\n[[termination]]\nid = \"P\"\n[[termination]]\nid = \"X\"\n[[termination]]\nid = \"Y\"\n" +
		"[[breakout]]\nid = \"J1\"\n[[breakout]]\nid = \"J2\"\n")
	n := 0
	for k, of := range []struct {
		size string
		n    int
	}{{"22", 22}, {"20", 14}, {"18", 8}, {"16", 5}} {
		for j := range of.n {
			n++
			fmt.Fprintf(&b, "[[wire]]\nid = \"%d\"\nfrom = \"P:%d\"\nto = \"%s:%d\"\nspec = \"AS22759/32\"\nsize = %q\n", n, n,
				[]string{"X", "Y"}[(j+k)%2], n, of.size)
		}
	}
	for _, r := range []string{"T P J1 400", "L J1 X 150", "U J1 J2 300", "M J2 Y 150"} {
		f := strings.Fields(r)
		fmt.Fprintf(&b, "[[branch]]\nid = %q\nfrom = %q\nto = %q\nlength_mm = %s\nmake = \"laid\"\n", f[0], f[1], f[2], f[3])
	}
	return calc.Build(calctest.Parse(t, b.String()), calctest.Catalogue(t), nil)
}

// However a search of a branch is sliced, it finds the same with the same effort; it is never worse than
// before, no bound is above the best, and begun alone it is what is proposed.
func TestSearchOfABranch(t *testing.T) {
	s := trunk(t)
	once := planning.Propose(s, 0)
	if diff := cmp.Diff(once, planning.Begin(s, 0).Proposal()); diff != "" {
		t.Errorf("begun, it is not what is proposed:\n%s", diff)
	}
	one, other := planning.Begin(s, 0), planning.Begin(s, 0)
	was := once.Options[0].Cost
	for k := range shorttest.Rounds(30) {
		one.Run(20_000)
		other.Run(20_000)
		p := one.Proposal()
		best := p.Options[0]
		if best.Cost > was+1e-9 {
			t.Fatalf("after %d slices the best costs %v, before %v", k, best.Cost, was)
		}
		if p.Reach.Least > best.Cost+1e-9 || p.Reach.Proven != (best.Cost <= p.Reach.Least+1e-9) {
			t.Fatalf("%+v, and the best costs %v", p.Reach, best.Cost)
		}
		was = best.Cost
	}
	if diff := cmp.Diff(one.Proposal(), other.Proposal()); diff != "" {
		t.Errorf("the same effort finds other lay-ups:\n%s", diff)
	}
	if again := planning.Propose(s, 0); cmp.Diff(once, again) != "" {
		t.Error("a search changed the sheet it reads")
	}
}

// A small branch is searched to the end, and then nothing better exists: the one layer of six round one.
func TestSearchedToTheEnd(t *testing.T) {
	s := calc.Build(calctest.Parse(t, calctest.OneSize(7, "22", "length_mm = 400.0\nmake = \"laid\"\n")), calctest.Catalogue(t), nil)
	q := planning.Begin(s, 0)
	for k := 0; !q.Proposal().Reach.Ended; k++ {
		if q.Run(100_000); k > 100 {
			t.Fatal("seven are not searched to the end")
		}
	}
	p := q.Proposal()
	if best := p.Options[0]; !p.Reach.Proven || !p.Reach.Thinnest || len(best.Layers) != 2 || len(best.Layers[1].Of) != 6 {
		t.Errorf("%+v %+v", p.Reach, best.Layers)
	}
}

// Whatever is found, what was shown stays where it was, under its letter, and so does what is proposed; what
// comes is new and either the cheapest of all or beaten by nothing, and nothing has two letters.
func TestExtendMovesNothing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		options := func(name string, least int) (out []sheet.Option) {
			for range rapid.IntRange(least, 12).Draw(t, name) {
				n := rapid.IntRange(0, 40).Draw(t, "lay-up")
				p := plan.Plan{Over: unit.Millimetre(10 + n%7), Fillers: n % 3, Lumpy: n % 2}
				out = append(out, sheet.Option{Plan: p, Layers: []model.Layer{{Of: []string{fmt.Sprint(n)}}},
					Cost: unit.Ratio(p.Over) + unit.Ratio(p.Fillers)})
			}
			return out
		}
		shown := sheet.Proposal{Options: options("shown", 1)}
		shown.Shown, shown.Plain = len(shown.Options), rapid.IntRange(0, len(shown.Options)-1).Draw(t, "plain")
		was := shown
		for range 3 {
			found := sheet.Proposal{Options: options("found", 0)}
			out, news := planning.Extend(was, found)
			if news != (len(out.Options) > len(was.Options)) {
				t.Fatalf("news %v, %d and then %d options", news, len(was.Options), len(out.Options))
			}
			diff := cmp.Diff(was.Options, out.Options[:len(was.Options)])
			if diff != "" || out.Plain != was.Plain || out.Shown != was.Shown {
				t.Fatalf("moved: %s", diff)
			}
			is := map[string]bool{}
			for k := out.Shown; k < len(out.Options); k++ {
				name := fmt.Sprint(out.Options[k].Layers)
				if is[name] {
					t.Fatalf("%s twice", name)
				}
				is[name] = true
				if k < len(was.Options) && out.Letter(k) != was.Letter(k) {
					t.Fatalf("%c is %c now", was.Letter(k), out.Letter(k))
				}
				if l := out.Letter(k); l > 'Z' || l <= out.Letter(k-1) && k > out.Shown {
					t.Fatalf("letter %c", l)
				}
			}
			was = out
		}
	})
}
