package cliff

import (
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// forked is a trunk T from A to J, from where U goes to Y and V to Z. Wires are "id from to size keys…".
func forked(trunk string, wires ...string) string {
	text := "format = 1\n[rules]\nspares_wanted = 3\n[[termination]]\nid = \"A\"\n[[termination]]\nid = \"Y\"\n[[termination]]\nid = " +
		"\"Z\"\n" +
		"[[breakout]]\nid = \"J\"\n"
	for _, w := range wires {
		f := strings.Fields(w)
		text += fmt.Sprintf("[[wire]]\nid = %q\nfrom = %q\nspec = \"AS22759/32\"\nsize = %q\n", f[0], f[1], f[3])
		if f[2] != "-" {
			text += fmt.Sprintf("to = %q\n", f[2])
		}
		for _, more := range f[4:] {
			key, value, _ := strings.Cut(more, "=")
			text += key + " = " + value + "\n"
		}
	}
	return text + "[[branch]]\nid = \"T\"\nfrom = \"A\"\nto = \"J\"\nlength_mm = 400.0\n" + trunk +
		"[[branch]]\nid = \"U\"\nfrom = \"J\"\nto = \"Y\"\nlength_mm = 100.0\n[[branch]]\nid = \"V\"\nfrom = \"J\"\nto = \"Z\"\n" +
		"length_mm = 100.0\n"
}

// ids are the wires of a harness, in the order of the file.
func ids(h *model.Harness) string {
	var out []string
	for _, w := range h.Wires {
		out = append(out, w.ID)
	}
	return strings.Join(out, " ")
}

// laidAs is the harness of a question with n of what is counted, whatever its lay-up.
func laidAs(a Ask, n int) *model.Harness { return a.with(Point{N: n, Branch: &sheet.Branch{}}) }

// In which order wires are taken out of a trunk, and what is put in. Most go to Z, and are no spares: those from the last on; then the
// others from the last on. What another names as its return stays, and so does what is pinned.
func TestOrderOfTakingOut(t *testing.T) {
	wires := []string{"a A:1 Y:1 22", "b A:2 Z:1 22 amps=1.0", "c Z:2 A:3 22", "d A:4 Z:3 22 return=\"b\"", "e A:5 Y:2 22 role=\"spare\"",
		"f A:6 Y:3 22 role=\"spare\"", "g A:7 Y:4 22 role=\"spare\"", "h A:8 - 22 role=\"spare\" capped_at=\"Z\"", "x A:9 Z:9 16"}
	for _, c := range []struct {
		trunk string
		want  []string // with 9, 8, 7 … wires
		least int
	}{
		{"", []string{"a b c d e f g h x b2", "a b c d e f g h x", "a b c e f g h x", "a b e f g h x", "a b e f g x", "a b e f x",
			"a b e x",
			"a b x", "b x"}, 1},
		{"[[branch.layer]]\nof = [\"c\"]\nlocked = true\n[[branch.layer]]\nof = [\"a\", \"b\", \"d\", \"e\", \"f\", \"g\", \"h\", \"x\"]\n",
			[]string{"a b c d e f g h x b2", "a b c d e f g h x", "a b c e f g h x", "a b c e f g x", "a b c e f x", "a b c e x", "a b c x",
				"b c x"}, 2},
	} {
		s := calctest.Built(t, forked(c.trunk, wires...))
		a, why := OfWires(s, 0)
		if why != "" || a.Now != 8 || a.Least != c.least || a.Most != 16 || a.Size != "22" {
			t.Errorf("%+v %s", a, why)
		}
		for k, want := range c.want {
			h := laidAs(a, 9-k)
			if got := ids(h); got != want {
				t.Errorf("%d: %s, want %s", 9-k, got, want)
			}
			if k == 0 {
				if w := h.Wires[9]; w != (model.Wire{ID: "b2", From: model.Some("A:2"), To: model.Some("Z:1"), Spec: "AS22759/32",
					Size: "22"}) {
					t.Errorf("%+v", w)
				}
			}
		}
	}
	// With no other size the last piece stays, and of ways that as many go the first in the file counts.
	s := calctest.Built(t, forked("", "a A:1 Y:1 22", "b A:2 Z:1 22", "c A:3 Z:2 22", "d A:4 Y:2 22"))
	a, _ := OfWires(s, 0)
	if got := ids(laidAs(a, 3)) + ", " + ids(laidAs(a, 2)) + ", " + ids(laidAs(a, 1)); a.Least != 1 || got != "a b c, b c, b" {
		t.Errorf("from %d: %s", a.Least, got)
	}
	// At most Reach are taken out.
	var many []string
	for k := range 20 {
		many = append(many, fmt.Sprintf("w%d A:%d Z:%d 22", k, k, k))
	}
	if a, _ := OfWires(calctest.Built(t, forked("", many...)), 0); a.Least != 12 || a.Now != 20 || a.Most != 28 {
		t.Errorf("%+v", a)
	}
	// Of as many the thinner are counted, a pair not among them.
	s = calctest.Built(t, forked("", "a A:1 Y:1 16", "b A:2 Z:1 22", "c A:3 Z:2 22", "d A:4 Y:2 16", "e A:5 Y:3 16", "f A:6 Y:4 16")+
		"[[unit]]\nid = \"P\"\nwires = [\"e\", \"f\"]\nbuild = \"pair\"\n")
	if d, all := commonest(s, 0); d != 1.09 || !slices.Equal(all, []int{1, 2}) {
		t.Errorf("%v %v", d, all)
	}
}

// What a point is planned from has no spares that nobody counted, and no lay-up unless something is held there; the harness of a point
// has the rules of the file, the lay-up of the point, and its tube in the first sheath that names one.
func TestHarnessOfACount(t *testing.T) {
	covers := "[[branch.cover]]\nwhat = \"braid\"\npart = \"own\"\nthick_mm = 0.5\n[[branch.cover]]\nwhat = \"sheath\"\npart = " +
		"\"AS23053/16 12.7\"\n" +
		"[[branch.cover]]\nwhat = \"sheath\"\npart = \"AS23053/16 19.1\"\n"
	layers := "[[branch.layer]]\nof = [\"a\"]\n%s[[branch.layer]]\nof = [\"b\", \"c\"]\n"
	wires := []string{"a A:1 Z:1 22", "b A:2 Z:2 22", "c A:3 Z:3 22"}
	for _, held := range []string{"", "locked = true\n"} {
		s := calctest.Built(t, forked(covers+fmt.Sprintf(layers, held), wires...))
		b := branchAsk{s: s, now: 3, out: []string{"c"}, more: func(h *model.Harness, _ int) *model.Harness { return h }}
		h := b.harness(3)
		if got := len(h.Branches[0].Layers); h.Rules.SparesWanted != model.Some(0) || got != 2*calctest.Once(held != "") ||
			len(s.H.Branches[0].Layers) != 2 || s.H.Rules.SparesWanted.V != 3 {
			t.Errorf("%d layers, %v spares", got, h.Rules.SparesWanted)
		}
		if got := ids(b.harness(2)); got != "a b" {
			t.Error(got)
		}
		p := Point{N: 3, Tube: catalogue.Tube{ID: "T"}, Branch: &sheet.Branch{Make: model.MakeLaid, As: []model.Layer{{Of: []string{"b"}}}}}
		h = b.with(p)
		to := h.Branches[0]
		if h.Rules.SparesWanted != s.H.Rules.SparesWanted || len(to.Layers) != 1 || to.Layers[0].Of[0] != "b" ||
			to.Make != model.Some(model.MakeLaid) ||
			to.Covers[0].Part.V != "own" || to.Covers[1].Part.V != "T" || to.Covers[2].Part.V != "AS23053/16 19.1" {
			t.Errorf("%+v", to)
		}
		p.Tube.ID = ""
		if got := b.with(p).Branches[0].Covers[1].Part.V; got != "AS23053/16 12.7" {
			t.Errorf("no tube: %s", got)
		}
	}
	s := calctest.Built(t,
		forked("[[branch.cover]]\nwhat = \"sheath\"\n[[branch.cover]]\nwhat = \"sheath\"\npart = \"AS23053/16 19.1\"\n", wires...))
	b := branchAsk{s: s, now: 3}
	to := b.with(Point{N: 3, Tube: catalogue.Tube{ID: "T"}, Branch: &sheet.Branch{}}).Branches[0]
	if to.Covers[0].Part.Set || to.Covers[1].Part.V != "AS23053/16 19.1" { // the sheath is chosen by the sheet, and stays so
		t.Errorf("%+v", to.Covers)
	}
}

// Spares, by hand: which go first, what a new one is, and when their diameter is none. A has cavities 1 to 6 and B, Z as many.
func TestSparesOfABranch(t *testing.T) {
	cavities := "cavities = [\"1\", \"2\", \"3\", \"4\", \"5\", \"6\", \"7\"]\n"
	text := func(trunk string, wires ...string) string {
		t := forked(trunk, wires...)
		t = strings.Replace(t, "id = \"A\"\n", "id = \"A\"\n"+cavities, 1)
		return strings.Replace(t, "id = \"Z\"\n", "id = \"Z\"\n"+cavities, 1)
	}
	wires := []string{"a A:1 Z:1 22", "b A:2 Z:2 22", "s A:3 Z:3 22 role=\"spare\"", "u A:4 Z:4 22 role=\"spare\"",
		"v A:5 Z:5 22 role=\"spare\" return=\"s\""}
	s := calctest.Built(t, text("", wires...))
	a, why := OfSpares(s, 0)
	// s is the return of v.
	if why != "" || a.Now != 3 || a.Least != 1 || a.Most != 5 || a.D != 1.09 || a.Ends != "Both ends have cavities for 2 more" {
		t.Errorf("%+v %s", a, why)
	}
	for n, want := range map[int]string{1: "a b s", 2: "a b s u", 3: "a b s u v", 4: "a b s u v SP1", 5: "a b s u v SP1 SP2"} {
		if got := ids(laidAs(a, n)); got != want {
			t.Errorf("%d: %s, want %s", n, got, want)
		}
	}
	h := laidAs(a, 5)
	if w := h.Wires[5]; w.Signal.V != "Spare" || w.Spec != "AS22759/32" || w.Size != "22" || w.Colour.V != "9" || !w.Amps.Set ||
		w.Amps.V != 0 ||
		w.Role.V != model.RoleSpare || w.From.V != "A:6" || w.To.V != "Z:6" || h.Wires[6].From.V != "A:7" || h.Wires[6].To.V != "Z:7" {
		t.Errorf("%+v\n%+v", w, h.Wires[6])
	}
	// A spare of another size than the commonest: they have no one diameter. What is pinned stays.
	wires[2] = "s A:3 Z:3 20 role=\"spare\""
	wires = wires[:3]
	if a, _ = OfSpares(calctest.Built(t, text("", wires...)), 0); a.D != 0 || a.Size != "22" || a.Least != 0 || a.Now != 1 {
		t.Errorf("%+v", a)
	}
	held := "[[branch.layer]]\nof = [\"s\"]\nlocked = true\n[[branch.layer]]\nof = [\"a\", \"b\"]\n"
	if a, _ = OfSpares(calctest.Built(t, text(held, wires...)), 0); a.D != 1.09 || a.Least != 1 || a.Now != 1 {
		t.Errorf("%+v", a)
	}
	// The size is the commonest, though it is not the first in the file and no cavity is left.
	full := []string{"a A:1 Z:1 20", "b A:2 Z:2 22", "c A:3 Z:3 22", "d A:4 Z:4 22", "e A:5 Z:5 16", "f A:6 Z:6 22 role=\"spare\"",
		"g A:7 Z:7 22 role=\"spare\""}
	for range 2 {
		a, why = OfSpares(calctest.Built(t, text("", full...)), 0)
		if a.Size != "22" || a.D != 1.09 || why != "" || a.Ends != "No spare can be added: no cavity is free at the A end" ||
			a.Most != 2 || a.Least != 0 {
			t.Errorf("%+v %s", a, why)
		}
		full[0], full[3] = "a A:1 Z:1 22", "d A:4 Z:4 20" // now the first in the file is of the commonest
	}
	// Exactly Reach more: nothing ends there.
	for n, want := range map[int]string{Reach: "", Reach - 1: "Both ends have cavities for 7 more"} {
		more := strings.ReplaceAll(text("", "a A:1 Z:1 22"), cavities, "cavities = [\"1\""+strings.Repeat(", \"x%d\"", n)+"]\n")
		var names []any
		for k := range 2 * n {
			names = append(names, k)
		}
		if a, why := OfSpares(calctest.Built(t, fmt.Sprintf(more, names...)), 0); a.Ends != want || a.Most != n || why != "" {
			t.Errorf("%d: %+v %s", n, a, why)
		}
	}
}

// The key changes with everything that the figures hang on, one at a time.
func TestEverythingInTheKey(t *testing.T) {
	var few []string // nine: a branch of less is laid without a search
	var names []string
	for k := range 11 {
		names = append(names, fmt.Sprintf("\"%d\"", k+1))
		if k < 9 {
			few = append(few, fmt.Sprintf("w%d A:%d Z:%d 22", k+1, k+1, k+1))
		}
	}
	cavities := "cavities = [" + strings.Join(names, ", ") + "]\n"
	base := strings.ReplaceAll(forked("[[branch.cover]]\nwhat = \"braid\"\npart = \"own\"\nthick_mm = 0.5\n", few...),
		"[[termination]]\nid = \"A\"\n", "[[termination]]\nid = \"A\"\n"+cavities)
	base = strings.ReplaceAll(base, "[[termination]]\nid = \"Z\"\n", "[[termination]]\nid = \"Z\"\n"+cavities)
	other := *calctest.Catalogue(t)
	other.Wires = maps.Clone(other.Wires)
	e, _ := other.Wire("AS22759/32", "22")
	e.TolMM *= 2
	other.Wires[e.Key()] = e
	e.Spec = "own"
	e.TolMM /= 2
	other.Wires[e.Key()] = e
	of := func(cat *catalogue.Catalogue, was, now string) *sheet.Sheet {
		if !strings.Contains(base, was) {
			t.Errorf("nothing is changed: %s", was)
		}
		return calc.Complete(calctest.Parse(t, strings.Replace(base, was, now, 1)), cat, nil)
	}
	cat := calctest.Catalogue(t)
	s := of(cat, "", "")
	if len(s.Proposals) == 0 {
		t.Fatal("nothing was searched for")
	}
	proposed := func(change func(o *sheet.Option)) *sheet.Sheet {
		out := *s
		out.Proposals = maps.Clone(s.Proposals)
		for key, p := range s.Proposals {
			p.Options = slices.Clone(p.Options)
			for k := range p.Options {
				change(&p.Options[k])
			}
			out.Proposals[key] = p
		}
		return &out
	}
	spare := func(s *sheet.Sheet) string { a, _ := OfSpares(s, 0); return a.Key }
	wires := func(s *sheet.Sheet) string { a, _ := OfWires(s, 0); return a.Key }
	if wires(s) == spare(s) {
		t.Error("one key for wires and spares")
	}
	for what, x := range map[string]*sheet.Sheet{
		"how much the wire may be thicker": of(&other, "", ""), "another specification of the same figures": of(&other, "AS22759/32",
			"own"),
		"another end": of(cat, "A:9", "A:10"), "the other end": of(cat, "Z:9", "Z:10"), "a spare": of(cat, "to = \"Z:2\"\n",
			"to = \"Z:2\"\nrole = \"spare\"\n"),
		"a thicker braid": of(cat, "thick_mm = 0.5", "thick_mm = 0.6"), "over a part": of(cat, "thick_mm = 0.5",
			"thick_mm = 0.5\nfrom_mm = 10.0"),
		"up to a place":      of(cat, "thick_mm = 0.5", "thick_mm = 0.5\nto_mm = 300.0"),
		"another costs":      proposed(func(o *sheet.Option) { o.Cost++ }),
		"another is thinner": proposed(func(o *sheet.Option) { o.Plan.Over *= 0.9 }),
		"a name is taken":    of(cat, "id = \"U\"", "id = \"U\"\nmake = \"straight\""),
	} {
		same := what == "a name is taken" // another branch
		if (wires(x) == wires(s)) != same || (spare(x) == spare(s)) != same {
			t.Errorf("%s: the same key %v", what, same)
		}
	}
	for what, x := range map[string]*sheet.Sheet{"another name of a free cavity": of(cat, "\"11\"", "\"12\""),
		"a wire elsewhere has the name of the next spare": of(cat, "[[branch]]\nid = \"U\"",
			"[[wire]]\nid = \"SP1\"\nfrom = \"Y:1\"\nto = \"Y:2\"\nspec = \"AS22759/32\"\nsize = \"22\"\n[[branch]]\nid = \"U\"")} {
		if spare(x) == spare(s) {
			t.Errorf("%s: the same key of spares", what)
		}
	}
}

// Of several greater counts that come out thinner the thinnest is told, of as thin ones the first; and what is not worked out has none.
func TestThinnestOfMore(t *testing.T) {
	a := func(over unit.Millimetre, rings int) Point { p := pt(over, "", 1, 6); p.Rings = rings; return p }
	for _, c := range []struct {
		s       *Strip
		as      int
		fillers bool
	}{
		{stripOf(Wires, 4, 4, "", a(6, 0), a(5.5, 0), a(5, 2), a(5.4, 3)), 6, true},
		{stripOf(Wires, 4, 4, "", a(6, 0), a(5, 0), a(5, 2), a(5.4, 3)), 5, false},
		{stripOf(Wires, 4, 4, "", a(6, 0), a(5.5, 1), a(5.2, 1), a(5, 2)), 7, false},
		{stripOf(Wires, 4, 4, "", a(6, 0), unknown, noLayUp, a(6.1, 3)), 0, false},
		{stripOf(Wires, 4, 4, "", noLayUp, a(5, 1)), 0, false}, {stripOf(Wires, 4, 4, "", unknown, a(5, 1)), 0, false},
		{stripOf(Wires, 4, 4, "", a(6, 0), a(5.99, 1)), 0, false}, // no thinner by what is shown
	} {
		if as, fillers := c.s.Fillable(4); as != c.as || fillers != c.fillers {
			t.Errorf("%d, %v; want %d, %v", as, fillers, c.as, c.fillers)
		}
	}
	none := stripOf(Wires, 4, 4, "", unknown, a(5, 1))
	if n, known := none.Fits(); n != 0 || known {
		t.Errorf("%d fit: %v", n, known)
	}
	if none.Odd(4, unit.MM) != "" || none.Comes(4, unit.MM) != "" || (Point{}).Centre() != 0 ||
		(Point{Branch: &sheet.Branch{}}).Centre() != 0 ||
		(Point{}).built() != 0 {
		t.Error("something is said of what is not worked out")
	}
}
