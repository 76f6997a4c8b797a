package bulk_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/query/bulk"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// fan is a box whose trunk T of length_mm goes to J1, from there a branch R to J2, with lamps L1 at J2 and L2 at J1; box is the box's
// keys. Wires are each "id from to size keys…"; "-" is no end.
func fan(box string, length float64, wires ...string) string {
	text := "format = 1\n[[termination]]\nid = \"BOX\"\n" + box + "\n[[termination]]\nid = \"L1\"\n[[termination]]\nid = \"L2\"\n" +
		"[[breakout]]\nid = \"J1\"\n[[breakout]]\nid = \"J2\"\n[[splice]]\nid = \"S0\"\nat = \"J1\"\n"
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
	return text + fmt.Sprintf("[[branch]]\nid = \"T\"\nfrom = \"BOX\"\nto = \"J1\"\nlength_mm = %g\n", length) +
		"[[branch]]\nid = \"R\"\nfrom = \"J1\"\nto = \"J2\"\nlength_mm = 100\n" +
		"[[branch]]\nid = \"LL1\"\nfrom = \"J2\"\nto = \"L1\"\nlength_mm = 100\n" +
		"[[branch]]\nid = \"LL2\"\nfrom = \"J1\"\nto = \"L2\"\nlength_mm = 100\n"
}

const sixOf20 = "cavities = [\"1\", \"2\", \"3\", \"4\", \"5\", \"6\"]\ncontacts = { \"20\" = [\"1\", \"2\", \"3\", \"4\", \"5\", \"6\"] }"

// What the one wire of a splice is, and what is said of it, by hand. 20 AWG has 32.41 mohm/m, 22 AWG 53.15, 16 AWG 15.78 and 14 AWG
// 10.04: over a trunk of 0.5 m no drop counts, over 10 m see TestSpliceOf.
func TestTheOneWireOfASplice(t *testing.T) {
	for _, c := range []struct {
		name, text string
		ids        []string
		want, says string
	}{
		{"what all of them share it has, what they do not share it has not; its current is the sum",
			fan("cavities = [\"1\", \"2\", \"3\"]", 500, `a BOX:3 L1:1 22 amps=0.1 signal="x" colour="6" role="signal"`,
				`b BOX:2 L1:2 22 amps=0.2 signal="x" colour="6"`, `c L2:1 BOX:1 22 amps=0.05 signal="y" colour="6"`),
			[]string{"a", "b", "c"}, "c2 BOX:1 S1 signal  6 0.35 true safety=false",
			"splice S1 at J1 joins a, b and c; wire c2, %s, goes on to BOX:1, for 0.35 A with all on at once"},
		{"the role of the first that has one; safety of any; no colour where they differ",
			fan("cavities = [\"3\", \"2\", \"1\"]", 500, `a BOX:3 L1:1 22 amps=0.1 colour="6"`,
				`b BOX:2 L1:2 22 amps=0.2 colour="5" role="ground" safety=true`),
			[]string{"b", "a"}, "b2 BOX:3 S1 ground   0.3 true safety=true",
			"splice S1 at J2 joins a and b; wire b2, 22 AWG, goes on to BOX:3. This sheet gives no electrical figures for it: its size " +
				"is " +
				"that of the thickest"},
		{"for an aircraft nothing is rated", strings.Replace(fan(sixOf20, 500, `a BOX:1 L1:1 22 amps=900.0`, `b BOX:2 L1:2 20 amps=0.2`),
			"format = 1\n", "format = 1\n[harness]\nuse = \"aircraft\"\n", 1),
			[]string{"b", "a"}, "b2 BOX:1 S1    900.2 true safety=false",
			"splice S1 at J2 joins a and b; wire b2, 20 AWG, goes on to BOX:1. This sheet gives no electrical figures for it: its size " +
				"is " +
				"that of the thickest"},
		{"no current is entered for two: the size of the thickest",
			fan("cavities = [\"1\", \"2\", \"3\"]", 500, `a BOX:1 L1:1 22`, `b BOX:2 L1:2 18 amps=1.0`, `c BOX:3 L2:2 20`),
			[]string{"a", "b", "c"}, "c2 BOX:1 S1    0 false safety=false",
			"splice S1 at J1 joins a, b and c; wire c2, 18 AWG, goes on to BOX:1. The current of a and c is not entered: its size is " +
				"that " +
				"of the thickest"},
		{"then the first cavity that takes the thickest",
			fan("cavities = [\"1\", \"2\"]\ncontacts = { \"20\" = [\"1\"], \"16\" = [\"2\"] }", 500, `a BOX:1 L1:1 22`, `b BOX:2 L1:2 16`),
			[]string{"a", "b"}, "b2 BOX:2 S1    0 false safety=false",
			"splice S1 at J2 joins a and b; wire b2, 16 AWG, goes on to BOX:2. The current of a and b is not entered: its size is that " +
				"of " +
				"the thickest"},
		{"and the first of all where none does",
			fan(sixOf20, 500, `a BOX:2 L1:1 22`, `b BOX:1 L1:2 12`),
			[]string{"a", "b"}, "b2 BOX:1 S1    0 false safety=false",
			"splice S1 at J2 joins a and b; wire b2, 12 AWG, goes on to BOX:1. The current of a and b is not entered: its size is that " +
				"of " +
				"the thickest"},
		{"14 AWG does, and only the contact of size 12 takes it",
			fan("cavities = [\"1\", \"2\", \"3\"]\ncontacts = { \"20\" = [\"1\", \"2\"], \"12\" = [\"3\"] }", 10000,
				`a BOX:1 L1:1 20 amps=1.0`, `b BOX:2 L1:2 20 amps=1.0`, `c BOX:3 L1:3 14 amps=1.0`),
			[]string{"a", "b", "c"}, "c2 BOX:3 S1    3 true safety=false",
			"splice S1 at J2 joins a, b and c; wire c2, 14 AWG, goes on to BOX:3, for 3 A with all on at once"},
		{"no size carries it: the thickest that a cavity takes, which is 20 AWG in a contact of 20",
			fan(sixOf20, 500, `a BOX:1 L1:1 20 amps=400.0`, `b BOX:2 L1:2 20 amps=500.0`),
			[]string{"a", "b"}, "b2 BOX:1 S1    900 true safety=false",
			"splice S1 at J2 joins a and b; wire b2, 20 AWG, goes on to BOX:1. No size satisfies 900 A there: see its page"},
		{"no size carries it, and no cavity takes any: the size of the thickest in the first",
			fan("cavities = [\"1\", \"2\"]\ncontacts = { \"20\" = [\"1\", \"2\"] }\nseal_mm = [30.0, 40.0]", 500,
				`a BOX:1 L1:1 22 amps=400.0`, `b BOX:2 L1:2 20 amps=500.0`),
			[]string{"a", "b"}, "b2 BOX:1 S1    900 true safety=false",
			"splice S1 at J2 joins a and b; wire b2, 20 AWG, goes on to BOX:1. No size satisfies 900 A there: see its page"},
		{"wires that end at a splice part there",
			fan("cavities = [\"1\", \"2\"]", 500, `a BOX:1 S0 22`, `b S0 BOX:2 22`),
			[]string{"a", "b"}, "b2 BOX:1 S1    0 false safety=false",
			"splice S1 at J1 joins a and b; wire b2, 22 AWG, goes on to BOX:1. The current of a and b is not entered: its size is that " +
				"of " +
				"the thickest"},
	} {
		s := calctest.Built(t, c.text)
		ask := bulk.SpliceAsk{Wires: c.ids, Common: "BOX"}
		got, err := bulk.SpliceOf(s, ask)
		if err != nil {
			t.Errorf("%s: %v", c.name, err)
			continue
		}
		w := wire(t, got.H, got.Wires[0])
		text := fmt.Sprintf("%s %s %s %s %s %s %v %v safety=%v", w.ID, w.From.V, w.To.V, w.Role.V, w.Signal.V, w.Colour.V, w.Amps.V,
			w.Amps.Set,
			w.Safety.V)
		says := c.says
		if strings.Contains(says, "%s") {
			says = fmt.Sprintf(says, model.SizeWords(w.Size))
		}
		if text != c.want || got.Says != says {
			t.Errorf("%s:\n%s\n%s\nwant\n%s\n%s", c.name, text, got.Says, c.want, says)
		}
		for _, id := range c.ids { // each ends at the splice, and at what it ended at before
			was, now := wire(t, s.H, id), wire(t, got.H, id)
			if strings.HasPrefix(was.From.V, "BOX") {
				was.From = model.Some("S1")
			} else {
				was.To = model.Some("S1")
			}
			if was != now {
				t.Errorf("%s: %+v, want %+v", c.name, now, was)
			}
		}
	}
}

// The size is the smallest from that on which does for which there is a splice that the cavity takes too. Three of 20 AWG are 3,648
// circular mils, 14 AWG 3,831, 12 AWG 5,874, 10 AWG 9,354; a stub holds all of them.
func TestSizeForWhichThereIsASplice(t *testing.T) {
	cavities := "cavities = [\"1\", \"2\", \"3\"]\n"
	for _, c := range []struct {
		box         string
		least, most int
		want        string
	}{
		{cavities, 304, 30000, "14"}, {cavities, 8500, 30000, "12"}, {cavities, 10500, 30000, "10"}, {cavities, 1, 2, "14"},
		{cavities + "contacts = { \"12\" = [\"1\", \"2\", \"3\"] }", 8500, 30000, "12"},
		{cavities + "contacts = { \"12\" = [\"1\", \"2\", \"3\"] }", 10500, 30000, "14"},
	} {
		cat := *calctest.Catalogue(t)
		cat.Splices = map[string]catalogue.Splice{"stub": {ID: "stub", Build: "parallel", OverMM: 5, LengthMM: 30, CMAMin: c.least,
			CMAMax: c.most}}
		h := calctest.Parse(t, strings.ReplaceAll(fan(c.box, 10000, `a BOX:1 L1:1 20 amps=1.0`, `b BOX:2 L1:2 20 amps=1.0`,
			`c BOX:3 L1:3 20 amps=1.0`), "AS22759/32", "AS22759/34"))
		got, err := bulk.SpliceOf(calc.Build(h, &cat, nil), bulk.SpliceAsk{Wires: []string{"a", "b", "c"}, Common: "BOX"})
		if err != nil {
			t.Fatal(err)
		}
		if w := wire(t, got.H, got.Wires[0]); w.Size != c.want {
			t.Errorf("%d to %d circular mils in %q: %s AWG, want %s", c.least, c.most, c.box, w.Size, c.want)
		}
	}
}

// A laid branch in which none of them lies yet gets the one wire in its last layer; a branch that nobody laid stays so; one that they
// do not share keeps its layers.
func TestSpliceInABranchThatLaysOthers(t *testing.T) {
	text := fan("cavities = [\"1\", \"2\", \"3\", \"4\"]", 500, "a BOX:1 L1:1 22", "b BOX:2 L1:2 22", "x BOX:3 L1:3 22", "y BOX:4 L1:4 22")
	laid := "length_mm = 500\n[[branch.layer]]\nof = [\"x\"]\n[[branch.layer]]\nof = [\"y\"]\n"
	s := calctest.Built(t, strings.Replace(text, "length_mm = 500\n", laid, 1))
	got, err := bulk.SpliceOf(s, bulk.SpliceAsk{Wires: []string{"a", "b"}, Common: "BOX", At: "J1"})
	if err != nil {
		t.Fatal(err)
	}
	if l := got.H.Branches[0].Layers; len(l) != 2 || !slices.Equal(l[0].Of, []string{"x"}) || !slices.Equal(l[1].Of, []string{"y", "b2"}) {
		t.Errorf("%+v", l)
	}
	if l := got.H.Branches[1].Layers; len(l) != 0 {
		t.Errorf("%+v", l)
	}
	at := strings.Replace(text, "id = \"R\"\nfrom = \"J1\"\nto = \"J2\"\nlength_mm = 100\n",
		"id = \"R\"\nfrom = \"J1\"\nto = \"J2\"\nlength_mm = 100\n[[branch.layer]]\nof = [\"a\"]\n[[branch.layer]]\nof = [\"x\", \"b\", "+
			"\"y\"]\n", 1)
	got, err = bulk.SpliceOf(calctest.Built(t, at), bulk.SpliceAsk{Wires: []string{"a", "b"}, Common: "BOX", At: "J1"})
	if err != nil {
		t.Fatal(err)
	}
	if l := got.H.Branches[1].Layers; len(l) != 2 || !slices.Equal(l[0].Of, []string{"a"}) || !slices.Equal(l[1].Of, []string{"x", "b",
		"y"}) {
		t.Errorf("%+v", l)
	}
}

// What must not be joined, and what cannot be, in full.
func TestWhatCannotBeSpliced(t *testing.T) {
	box := "cavities = [\"1\", \"2\", \"3\", \"4\", \"5\", \"6\", \"7\"]"
	s := calctest.Built(t, fan(box, 500, `a BOX:1 L1:1 22`, `b BOX:2 L1:2 22 role="spare"`, `c BOX:3 L1:3 22`, `d BOX:4 BOX:5 22`,
		`e BOX:6 L2:3 22 role="power"`, `f L1:4 L2:4 22`, `g BOX:7 L2:5 22`, `h BOX:8 - 22`, `i BOX:9 L2:6 22 role="ground"`)+
		"[[unit]]\nid = \"U\"\nwires = [\"c\"]\n[[feed]]\nid = \"F\"\nwires = [\"a\"]\n[[feed]]\nid = \"G\"\nwires = [\"e\", \"g\"]\n")
	short := calctest.Built(t,
		"format = 1\n[[termination]]\nid = \"A\"\n[[termination]]\nid = \"Z\"\n[[wire]]\nid = \"1\"\nfrom = \"A:1\"\n"+
			"to = \"Z:1\"\nspec = \"AS22759/32\"\nsize = \"22\"\n[[wire]]\nid = \"2\"\nfrom = \"Z:2\"\nto = \"A:2\"\nspec = "+
			"\"AS22759/32\"\n"+
			"size = \"22\"\n[[branch]]\nid = \"T\"\nfrom = \"A\"\nto = \"Z\"\nlength_mm = 100\n")
	for _, c := range []struct {
		s    *sheet.Sheet
		ask  bulk.SpliceAsk
		want string
	}{
		{s, bulk.SpliceAsk{Wires: []string{"a", "a"}}, "a splice joins two wires or more: choose more"},
		{s, bulk.SpliceAsk{}, "no wire is chosen"},
		{s, bulk.SpliceAsk{Wires: []string{"a", "c"}}, "wire c is in unit U: its end stays with the unit"},
		{s, bulk.SpliceAsk{Wires: []string{"a", "b"}}, "wire b is a spare: it is joined to nothing"},
		{s, bulk.SpliceAsk{Wires: []string{"i", "g", "e"}}, "e is power and i is ground: a splice would join them"},
		{s, bulk.SpliceAsk{Wires: []string{"a", "g"}}, "feed F and feed G would be joined: wire g is on G"},
		{s, bulk.SpliceAsk{Wires: []string{"a", "h"}}, "wire h runs nowhere yet: give it both ends"},
		{s, bulk.SpliceAsk{Wires: []string{"f", "g"}, Common: "BOX"}, "not every wire ends at BOX"},
		{s, bulk.SpliceAsk{Wires: []string{"f", "g"}, Common: "Q"}, "not every wire ends at Q"},
		{s, bulk.SpliceAsk{Wires: []string{"a", "f", "i"}}, "a, f and i share no connector: choose wires that end at one"},
		{s, bulk.SpliceAsk{Wires: []string{"e", "g"}},
			"the wires share both ends, BOX and L2: choose which of them the one wire goes to"},
		{s, bulk.SpliceAsk{Wires: []string{"a", "i"}, At: "J2"}, "they do not all pass J2: choose J1"},
		{short, bulk.SpliceAsk{Wires: []string{"1", "2"}, Common: "A"}, "1 and 2 pass no breakout together from A: hang one on their way"},
	} {
		if _, err := bulk.SpliceOf(c.s, c.ask); err == nil || err.Error() != c.want {
			t.Errorf("%v: %v, want %q", c.ask, err, c.want)
		}
	}
	// What there is to choose of: the connectors that all end at, and on the way from one of them the breakouts that all pass.
	for _, c := range []struct {
		ids             string
		common          string
		commons, places string
	}{
		{"e g", "", "BOX L2", "J1"}, {"e g", "L2", "BOX L2", "J1"}, {"a f", "", "L1", "J2 J1"}, {"a f", "BOX", "L1", ""}, {"a i", "",
			"BOX", "J1"},
		{"a c", "", "BOX L1", "J1 J2"}, {"a c", "L1", "BOX L1", "J2 J1"}, {"a no", "", "", ""}, {"h a", "", "", ""},
	} {
		commons, places := bulk.SpliceChoices(s, strings.Fields(c.ids), c.common)
		if strings.Join(commons, " ") != c.commons || strings.Join(places, " ") != c.places {
			t.Errorf("%s of %q: %v %v, want %q %q", c.ids, c.common, commons, places, c.commons, c.places)
		}
	}
}

// What wires like one are, and what is said of them, in full.
func TestLikeInFull(t *testing.T) {
	box := "cavities = [\"1\", \"2\", \"3\", \"4\", \"5\"]"
	text := fan(box, 500, `a BOX:1 L1:1 22 note="own" measured_drop_v=0.1 return="b"`, `b BOX:2 S0 22`, `c Y:1 Z:1 22`,
		`d BOX:3 Z:2 22 role="spare"`,
		`e BOX:4 - 22`, `f S0 L1:3 22 role="spare"`) +
		"[[termination]]\nid = \"Y\"\ncavities = [\"1\", \"2\"]\n[[termination]]\nid = \"Z\"\ncavities = [\"1\", \"2\", \"3\"]\n" +
		"[[unit]]\nid = \"U\"\nwires = [\"a\", \"b\"]\n[[feed]]\nid = \"F\"\nwires = [\"b\"]\n"
	text = strings.Replace(text, "id = \"L1\"\n", "id = \"L1\"\ncavities = [\"1\", \"2\", \"3\", \"4\"]\n", 1)
	s := calctest.Built(t, text)
	for _, c := range []struct {
		ask               bulk.LikeAsk
		says, short, fail string
		ends              string
	}{
		{bulk.LikeAsk{Wire: "a", Count: 1}, "1 wire like a: a2, in no unit (a is in U)", "", "", "BOX:5 L1:2"},
		{bulk.LikeAsk{Wire: "b", Count: 2}, "1 wire like b: b2, on no feed yet (b is on F), in no unit (b is in U)",
			"BOX has no free cavity left", "", "BOX:5 S0"},
		{bulk.LikeAsk{Wire: "f", Count: 2}, "2 wires like f: f2 and f3", "", "", "S0 L1:4, S0 L1:2"},
		{bulk.LikeAsk{Wire: "c", Count: 1}, "", "", "nothing is made: no branch leads from Y:2 to Z:3", ""},
		{bulk.LikeAsk{Wire: "no", Count: 1}, "", "", `there is no wire "no"`, ""},
		{bulk.LikeAsk{Wire: "a", Count: 0}, "", "", "0 is out of range: 1 to 200 wires at once", ""},
		{bulk.LikeAsk{Wire: "a", Count: 201}, "", "", "201 is out of range: 1 to 200 wires at once", ""},
		{bulk.LikeAsk{Wire: "a", Count: 200}, "1 wire like a: a2, in no unit (a is in U)", "BOX has no free cavity left", "", "BOX:5 L1:2"},
		{bulk.LikeAsk{Wire: "a", Count: 1, DeadEnd: true}, "", "", "wire a is no spare: only a spare may end without a cavity", ""},
		{bulk.LikeAsk{Wire: "e", Count: 1}, "", "", `nothing is made: wire e has an end that leads nowhere: ""`, ""},
	} {
		got, err := bulk.Like(s, c.ask)
		if err != nil || c.fail != "" {
			if fmt.Sprint(err) != c.fail || got.H != nil {
				t.Errorf("%+v: %v, want %s", c.ask, err, c.fail)
			}
			continue
		}
		var ends []string
		for _, id := range got.Wires {
			w := wire(t, got.H, id)
			ends = append(ends, w.From.V+" "+w.To.V)
			if was := wire(t, s.H, c.ask.Wire); w.Size != was.Size || w.Role != was.Role || w.Note.Set || w.Return.Set || w.DropV.Set {
				t.Errorf("%+v", w)
			}
		}
		if got.Says != c.says || got.Short != c.short || strings.Join(ends, ", ") != c.ends {
			t.Errorf("%+v:\n%s\n%s\n%s", c.ask, got.Says, got.Short, ends)
		}
	}
}

// Lists of ids as a person reads them, and which wires were left and why.
func TestNamedAndLeft(t *testing.T) {
	for n, want := range []string{"none", "a", "a and b", "a, b and c", "a, b, c and d", "a, b, c and 2 more", "a, b, c and 3 more"} {
		if got := bulk.Named(strings.Split("abcdef", "")[:n]); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
	left := []bulk.Left{{Wire: "a", Why: "x"}, {Wire: "b", Why: "y"}, {Wire: "c", Why: "x"}}
	if got := bulk.LeftText(left); got != "a and c: x; b: y" {
		t.Errorf("%q", got)
	}
}

// A return goes once the wire that names it is gone, however long the chain; what is removed is told in the order of the harness. A
// current may be 0 and 1,000 A, and the size asked for twice is a change of nothing.
func TestRemoveAndSetAtTheirEdges(t *testing.T) {
	s := calctest.Built(t, fan("cavities = [\"1\", \"2\", \"3\", \"4\"]", 500, `a BOX:1 L1:1 22`, `b BOX:2 L1:2 22 return="a"`,
		`c BOX:3 L1:3 22 return="b" amps=2.0`, `d BOX:4 L1:4 22 return="c"`))
	got, err := bulk.Remove(s, []string{"c", "a", "d", "b"})
	if err != nil || strings.Join(got.Wires, " ") != "a b c d" || len(got.Left) != 0 || len(got.H.Wires) != 0 ||
		got.Says != "4 wires removed: a, b, c and d" {
		t.Errorf("%v %+v", err, got)
	}
	got, err = bulk.Remove(s, []string{"b", "a", "c"}) // d names c, so all stay
	if err != nil || len(got.Wires) != 0 || len(got.Left) != 3 || got.H != s.H || got.Says != "0 wires removed: none" {
		t.Errorf("%v %+v", err, got)
	}
	got, err = bulk.Remove(s, []string{"d", "b"}) // c stays, and names b
	if err != nil || strings.Join(got.Wires, " ") != "d" || len(got.Left) != 1 || got.Left[0].Wire != "b" {
		t.Errorf("%v %+v", err, got)
	}
	for _, c := range []struct {
		amps unit.Ampere
		fail string
	}{{0, ""}, {1000, ""}, {-0.01, "-0.01 A is out of range: 0 to 1000 A"}, {1000.01, "1000.01 A is out of range: 0 to 1000 A"}} {
		got, err := bulk.Set(s, []string{"a", "c"}, bulk.Change{Amps: model.Some(c.amps)})
		if c.fail != "" {
			if err == nil || err.Error() != c.fail {
				t.Errorf("%v: %v", c.amps, err)
			}
			continue
		}
		want := fmt.Sprintf("2 wires: %v A", c.amps)
		if err != nil || got.Says != want || !wire(t, got.H, "a").Amps.Set || wire(t, got.H, "c").Amps.V != c.amps {
			t.Errorf("%v %+v, want %s", err, got, want)
		}
	}
	got, err = bulk.Set(s, []string{"a", "c"}, bulk.Change{Size: model.Some("22")})
	if err != nil || got.H != s.H || got.Says != "0 wires: 22 AWG; 2 had it already" || wire(t, got.H, "c").Amps.V != 2 {
		t.Errorf("%v %+v", err, got)
	}
	got, err = bulk.Set(s, []string{"c"}, bulk.Change{Size: model.Some("20")}) // what is not given stays
	if w := wire(t, got.H, "c"); err != nil || w.Amps.V != 2 || w.Size != "20" || w.Return.V != "b" {
		t.Errorf("%v %+v", err, w)
	}
}

// A pair that begins and ends in one box: its shield takes two cavities there, the next free behind the last of the pair, not one twice.
func TestBothDrainsInOneBox(t *testing.T) {
	s := calctest.Built(t, fan("cavities = [\"1\", \"2\", \"3\", \"4\", \"5\", \"6\"]", 500, "a BOX:1 BOX:2 22", "b BOX:3 BOX:4 22"))
	got, err := bulk.UnitOf(s, bulk.UnitAsk{Wires: []string{"a", "b"}, Shield: true, DrainFrom: bulk.DrainCavity,
		DrainTo: bulk.DrainCavity})
	if err != nil {
		t.Fatal(err)
	}
	if u := got.H.Units[0]; u.DrainFrom.V != "BOX:5" || u.DrainTo.V != "BOX:6" {
		t.Errorf("%+v", u)
	}
}
