package cliff_test

import (
	"fmt"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/query/cliff"
	"contralay/calc/sheet"
	"contralay/model"
)

// mixed is a harness of n wires of 22 and some thicker, by hand: the lay-up is nobody's but the planner's.
func mixed(n, thick int, branch string) string {
	var b strings.Builder
	b.WriteString("format = 1\n[rules]\nspares_wanted = 0\n[[termination]]\nid = \"A\"\n[[termination]]\nid = \"Z\"\n")
	for k := range n + thick {
		size := "22"
		if k >= n {
			size = "18"
		}
		fmt.Fprintf(&b, "[[wire]]\nid = \"w%d\"\nfrom = \"A:%d\"\nto = \"Z:%d\"\nspec = \"AS22759/32\"\nsize = %q\n", k, k, k, size)
	}
	return b.String() + "[[branch]]\nid = \"T1\"\nfrom = \"A\"\nto = \"Z\"\nlength_mm = 420.0\n" + branch
}

func complete(t *testing.T, text string) *sheet.Sheet {
	t.Helper()
	return calc.Complete(calctest.Parse(t, text), calctest.Catalogue(t), nil)
}

// Each point is what the figures of a harness with so many wires are, and the harness of a point builds to it.
func TestAPointIsTheHarnessWithSoManyWires(t *testing.T) {
	for _, c := range []struct{ now, thick int }{{12, 3}, {5, 0}, {9, 2}} {
		s := complete(t, mixed(c.now, c.thick, ""))
		a, why := cliff.OfWires(s, 0)
		if why != "" {
			t.Fatal(why)
		}
		least := max(c.now-cliff.Reach, calctest.Once(c.thick == 0)) // a branch holds one piece at least
		if a.Size != "22" || a.Now != c.now || a.Most != c.now+cliff.Reach || a.Least != least {
			t.Errorf("%+v", a)
		}
		for n := a.Least; n <= a.Most; n++ {
			p := a.At(n)
			by := complete(t, mixed(n, c.thick, "")).Branches[0]
			same(t, fmt.Sprintf("%d of 22 and %d of 18", n, c.thick), p, &by)
			h := a.Harness(p)
			b := calc.Build(h, calctest.Catalogue(t), s).Branches[0]
			same(t, fmt.Sprintf("the harness of %d", n), p, &b)
			if len(h.Wires) != n+c.thick {
				t.Errorf("%d wires in the harness of %d and %d", len(h.Wires), n, c.thick)
			}
		}
	}
}

func same(t *testing.T, what string, p cliff.Point, b *sheet.Branch) {
	t.Helper()
	over := b.Sheath.Verdict.OverMM
	if p.Branch == nil || p.OverMM != b.OverMM || p.Tube.ID != b.Sheath.Part || p.Sheath != over || p.Round() != len(b.Layers)-1 ||
		p.Branch.Gram != b.Gram {
		t.Errorf("%s: OD %v in %s %v, by hand %v in %s %v", what, p.OverMM, p.Tube.ID, p.Sheath, b.OverMM, b.Sheath.Part, over)
	}
}

// A named tube stays as long as it holds; then the strip shows the next of its kind.
func TestANamedTubeStays(t *testing.T) {
	s := complete(t, mixed(30, 0, "[[branch.cover]]\nwhat = \"sheath\"\npart = \"AS23053/16 12.7\"\n"))
	a, why := cliff.OfWires(s, 0)
	if why != "" {
		t.Fatal(why)
	}
	if p := a.At(31); p.Tube.ID != "AS23053/16 12.7" {
		t.Errorf("31 in %s: the tube is named and goes on", p.Tube.ID)
	}
	p := a.At(22) // 6.5 mm: the tube recovers to 6.35 mm at most, and hangs loose round 22 at their thinnest
	if p.Tube.ID == "AS23053/16 12.7" || p.Tube.RecoveredMM >= p.OverMM || p.Tube.Kind != "AS23053/16" {
		t.Errorf("22 in %s, which recovers to %v over %v", p.Tube.ID, p.Tube.RecoveredMM, p.OverMM)
	}
	b := calc.Build(a.Harness(p), calctest.Catalogue(t), s).Branches[0]
	same(t, "the harness of 22", p, &b)
}

// What is locked or pinned is neither taken out nor moved.
func TestWhatIsHeldStays(t *testing.T) {
	s := complete(t, mixed(7, 0, "[[branch.layer]]\nof = [\"w0\"]\nlocked = true\n[[branch.layer]]\nof = [\"w1\", \"w2\", \"w3\", \"w4\", "+
		"\"w5\", \"w6\"]\npinned = [\"w6\"]\n"))
	a, why := cliff.OfWires(s, 0)
	if why != "" {
		t.Fatal(why)
	}
	if a.Least != 2 {
		t.Errorf("from %d on: one is locked and one pinned", a.Least)
	}
	for n := a.Least; n <= a.Most; n++ {
		p := a.At(n)
		if p.Branch == nil {
			continue // nothing keeps what is held
		}
		if l := p.Branch.As; len(l[0].Of) != 1 || l[0].Of[0] != "w0" || !has(l[1], "w6") || len(l)%2 != 0 {
			t.Errorf("%d is laid as %+v", n, l)
		}
	}
	if p := a.At(7); p.Branch == nil || p.Round() != 1 {
		t.Errorf("7 lie as %+v", p)
	}
}

func has(l model.Layer, id string) bool { return strings.Contains(strings.Join(l.Of, " ")+" ", id+" ") }

// Spares go from none to what both ends can take. Where none can be added the reason is said.
func TestSparesToWhatBothEndsTake(t *testing.T) {
	text := func(cavities, spares int) string {
		t := calctest.OneSize(16, "22", "length_mm = 400.0\n", cavities)
		for k := range spares {
			t = strings.Replace(t, fmt.Sprintf("to = \"Z:%d\"\n", 15-k), fmt.Sprintf("to = \"Z:%d\"\nrole = \"spare\"\n", 15-k), 1)
		}
		return strings.Replace(t, "format = 1\n", "format = 1\n[rules]\nspares_wanted = 0\n", 1)
	}
	for _, c := range []struct {
		cavities, spares, least, most int
		ends, fails                   string
	}{
		{19, 0, 0, 3, "Both ends have cavities for 3 more", ""},
		{19, 2, 0, 5, "Both ends have cavities for 3 more", ""},
		{40, 0, 0, cliff.Reach, "", ""},
		{16, 3, 0, 3, "No spare can be added: no cavity is free at the A end", ""},
		{16, 0, 0, 0, "", "No spare can be added: no cavity is free at the A end"},
	} {
		s := complete(t, text(c.cavities, c.spares))
		a, why := cliff.OfSpares(s, 0)
		if c.fails != "" {
			if why != c.fails {
				t.Errorf("%+v: %v", c, why)
			}
			continue
		}
		if why != "" || a.Least != c.least || a.Most != c.most || a.Ends != c.ends || a.Now != c.spares {
			t.Errorf("%+v: %d to %d, now %d, %q, %v", c, a.Least, a.Most, a.Now, a.Ends, why)
		}
		for n := a.Least; n <= a.Most; n++ {
			p := a.At(n)
			want := complete(t, mixed(16+n-c.spares, 0, "")).Branches[0] // spares are of the commonest size
			if p.Branch == nil || p.OverMM != want.OverMM {
				t.Errorf("%d spares: OD %v, and %d wires have %v", n, p.OverMM, 16+n-c.spares, want.OverMM)
			}
			b := calc.Build(a.Harness(p), calctest.Catalogue(t), s)
			laid := 0
			for _, l := range b.Branches[0].Layers {
				laid += l.Spares
			}
			if laid != n {
				t.Errorf("the harness of %d spares lays %d", n, laid)
			}
		}
	}
}

// A connector with free cavities for another size only takes none.
func TestNoCavityTakesTheSize(t *testing.T) {
	text := calctest.OneSize(3, "22", "length_mm = 400.0\n")
	text = strings.Replace(text, "id = \"A\"\n", "id = \"A\"\ncavities = [\"0\", \"1\", \"2\", \"3\"]\n", 1)
	text = strings.Replace(text, "id = \"Z\"\n", "id = \"Z\"\ncavities = [\"0\", \"1\", \"2\", \"9\"]\nreserved = [\"9\"]\n", 1)
	_, why := cliff.OfSpares(complete(t, text), 0)
	if why != "No spare can be added: no cavity is free at the Z end" {
		t.Error(why)
	}
}

// A branch of units alone, or of nothing, has no wire to count.
func TestNothingToCount(t *testing.T) {
	text := calctest.OneSize(2, "22", "length_mm = 400.0\n") + "[[unit]]\nid = \"U\"\nwires = [\"0\", \"1\"]\nbuild = \"pair\"\n"
	s := complete(t, text)
	if _, why := cliff.OfWires(s, 0); why == "" {
		t.Error("a pair is counted as wires")
	}
	if _, why := cliff.OfSpares(s, 0); why == "" {
		t.Error("a pair is counted as spares")
	}
}

// The key of a question changes with what the figures hang on, and with nothing else.
func TestKeyOfAQuestion(t *testing.T) {
	keyOf := func(text string) string {
		a, why := cliff.OfWires(complete(t, text), 0)
		if why != "" {
			t.Fatal(why)
		}
		return a.Key
	}
	base := mixed(12, 2, "")
	for what, text := range map[string]string{
		"another length": strings.Replace(base, "420.0", "90.0", 1), "one more": mixed(13, 2, ""),
		"another rule":   strings.Replace(base, "spares_wanted = 0\n", "spares_wanted = 0\nlay_ratio = 9.0\n", 1),
		"another sheath": base + "[[branch.cover]]\nwhat = \"sheath\"\npart = \"AS23053/16 12.7\"\n",
	} {
		if keyOf(text) == keyOf(base) {
			t.Errorf("%s: the same key", what)
		}
	}
	if keyOf(strings.Replace(base, "size = \"22\"\n", "size = \"22\"\ncolour = \"6\"\namps = 2.0\n", 1)) != keyOf(base) {
		t.Error("a colour and a current change the key")
	}
}
