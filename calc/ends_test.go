package calc_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/phase/bundle"
	endsphase "contralay/calc/phase/ends"
	"contralay/calc/phase/over"
	"contralay/calc/phase/planning"
	"contralay/calc/query/lists"
	"contralay/calc/query/offer"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// saidOf is what a sheet says by one rule, "LEVEL WHERE".
func saidOf(s *sheet.Sheet, rule string) []string {
	var out []string
	for _, g := range s.Snags {
		if g.Rule == rule {
			out = append(out, fmt.Sprint(g.Level, " ", g.Where))
		}
	}
	return out
}

const alias = `format = 1
[[termination]]
id = "A"
cavities = ["A", "B"]
%s
[[termination]]
id = "Z"
cavities = ["1", "2"]
[[wire]]
id = "w1"
from = "A:+"
to = "Z:1"
spec = "AS22759/32"
size = "22"
[[branch]]
id = "T"
from = "A"
to = "Z"
length_mm = 300.0
`

// A wire may name a cavity by what its device calls it; a name that could be two is a stop.
func TestAliases(t *testing.T) {
	s := sheetOf(t, fmt.Sprintf(alias, `aliases = { "A" = ["+"], "B" = ["-"] }`))
	if c := s.Terms[0].State["A"]; !slices.Equal(c.Wires, []string{"w1"}) || s.Terms[0].Used != 1 || s.Terms[0].Blank != 1 {
		t.Errorf("cavity A holds %v, used %d, blank %d", c.Wires, s.Terms[0].Used, s.Terms[0].Blank)
	}
	if got := saidOf(s, "cavity.none"); len(got) > 0 {
		t.Errorf("a known alias: %v", got)
	}
	for _, c := range []struct{ aliases, says string }{
		{`aliases = { "A" = ["B"] }`, `and has a cavity "B" of its own`},
		{`aliases = { "A" = ["+"], "B" = ["+"] }`, `calls two cavities "+"`}, {`aliases = { "C" = ["+"] }`, "does not have"},
	} {
		s := sheetOf(t, fmt.Sprintf(alias, c.aliases))
		if !slices.ContainsFunc(s.Snags, func(g sheet.Snag) bool {
			return g.Level == sheet.Stop && g.Rule == "cavity.alias" && strings.Contains(g.Says, c.says)
		}) {
			t.Errorf("%s: nothing says %q: %v", c.aliases, c.says, s.Snags)
		}
	}
}

// In a firewall each cavity that is not wired takes contact, plug and a stub of wire: AC
// 43.13-1B ¶ 11-262.
func TestFirewall(t *testing.T) {
	for _, wall := range []bool{false, true} {
		s := sheetOf(t, fmt.Sprintf(`format = 1
[[termination]]
id = "P"
insert = "10-35"
gender = "pin"
reserved = ["13"]
firewall = %v
[[termination]]
id = "Z"
[[wire]]
id = "w1"
from = "P:1"
to = "Z:1"
spec = "AS22759/32"
size = "22"
[[branch]]
id = "T"
from = "P"
to = "Z"
length_mm = 300.0
`, wall))
		want := 0
		if wall {
			want = 12 // 13 cavities of the arrangement, one wired
		}
		stubs := 0
		for _, b := range lists.BuyList(s) {
			stubs += b.Stubs
		}
		if s.Terms[0].Stubs != want || stubs != want {
			t.Errorf("firewall %v: %d stubs, %d to buy; want %d", wall, s.Terms[0].Stubs, stubs, want)
		}
	}
}

const dead = `format = 1
[rules]
tail_first_mm = 100.0
tail_second_mm = 75.0
cut_step_mm = 10.0
[[termination]]
id = "P"
cavities = ["1", "2", "3"]
loop_mm = 16.0
[[termination]]
id = "D"
cavities = ["1"]
[[breakout]]
id = "J"
[[wire]]
id = "w1"
from = "P:1"
to = "D:1"
spec = "AS22759/32"
size = "22"
[[wire]]
id = "s1"
%s
spec = "AS22759/32"
size = "22"
role = "spare"
[[branch]]
id = "T"
from = "P"
to = "J"
length_mm = 400.0
make = "straight"
[[branch]]
id = "L"
from = "J"
to = "D"
length_mm = 200.0
`

// A spare that is capped at a breakout runs as far as that and no further; its cap lies
// where its fold ends, and it is as long as way, loop, fold and the tail of its one end.
func TestCappedSpare(t *testing.T) {
	for _, ends := range []string{"from = \"P:2\"\ncapped_at = \"J\"\nfold_mm = 80.0", "to = \"P:2\"\ncapped_at = \"J\"\nfold_mm = 80.0"} {
		s := sheetOf(t, fmt.Sprintf(dead, ends))
		for _, g := range s.Snags {
			if g.Level > sheet.Note {
				t.Errorf("%s: %v", ends, g)
			}
		}
		if len(s.Wires[1].Path) != 1 || s.Terms[0].Spare != 1 {
			t.Errorf("%s: path %v, %d spare cavities", ends, s.Wires[1].Path, s.Terms[0].Spare)
		}
		caps := endsphase.Caps(s)
		if len(caps) != 1 || caps[0].AtMM != 320 || caps[0].Place != "J" {
			t.Errorf("%s: caps %+v", ends, caps)
		}
		tail := unit.Millimetre(100)
		if strings.HasPrefix(ends, "to") {
			tail = 75
		}
		if want := unit.Millimetre(unit.UpTo(float64(400+16+80+tail), 10)); s.Wires[1].Cut != want || s.Wires[1].Finished != 496 {
			t.Errorf("%s: cut %v, finished %v; want %v, 496", ends, s.Wires[1].Cut, s.Wires[1].Finished, want)
		}
	}
	for ends, want := range map[string]string{
		"from = \"P:2\"": "wire.path", "from = \"P:2\"\nto = \"P:3\"\ncapped_at = \"J\"": "wire.capped",
		"from = \"P:2\"\ncapped_at = \"J\"\nfold_mm = 500.0": "wire.fold",
	} {
		if s := sheetOf(t, fmt.Sprintf(dead, ends)); len(saidOf(s, want)) != 1 {
			t.Errorf("%s: nothing by %s: %v", ends, want, s.Snags)
		}
	}
}

// Where the other end has no cavity, a spare is offered dead-ended, and lies in the loom
// as any other once it is laid in.
func TestDeadEnd(t *testing.T) {
	s := sheetOf(t, fmt.Sprintf(dead, "from = \"P:2\"\ncapped_at = \"J\""))
	if got := bundle.SparePlaces(s, 0, 0, 1); len(got) > 0 {
		t.Fatalf("a spare with two cavities: %v", got)
	}
	p, ok := offer.DeadEnd(s, 0, 0)
	if !ok || p.From != "P:3" || p.CappedAt != "J" {
		t.Fatalf("dead end %+v, %v", p, ok)
	}
	h := s.H.EditBranch(0, func(b *model.Branch) { b.Layers = []model.Layer{{Of: []string{"w1", "s1"}}} })
	h, w := planning.AddSpare(s, h, 0, 0, p)
	s = calc.Build(h, s.Cat, nil)
	if got := saidOf(s, "wire.path"); len(got) > 0 || len(endsphase.Caps(s)) != 2 || !slices.Contains(s.Branches[0].Components, w.ID) {
		t.Errorf("laid in: %v, caps %v, components %v", got, endsphase.Caps(s), s.Branches[0].Components)
	}
}

// A layer whose wires all go on together is whole, one whose wires part is broken, once
// at each breakout.
func TestBroken(t *testing.T) {
	var b strings.Builder
	b.WriteString("format = 1\n[[termination]]\nid = \"P\"\n[[termination]]\nid = \"X\"\n[[termination]]\nid = \"Y\"\n[[breakout]]\nid = " +
		"\"J\"\n[[splice]]\nid = \"S\"\nat = \"J\"\n")
	for k, to := range []string{"X", "X", "Y", "Y", "S"} {
		end := to + ":" + fmt.Sprint(k)
		if to == "S" {
			end = "S"
		}
		fmt.Fprintf(&b, "[[wire]]\nid = \"w%d\"\nfrom = \"P:%d\"\nto = %q\nspec = \"AS22759/32\"\nsize = \"22\"\n", k, k, end)
	}
	for _, e := range [][3]string{{"T", "P", "J"}, {"A", "J", "X"}, {"B", "J", "Y"}} {
		fmt.Fprintf(&b, "[[branch]]\nid = %q\nfrom = %q\nto = %q\nlength_mm = 300.0\n", e[0], e[1], e[2])
	}
	s := sheetOf(t, b.String())
	for _, c := range []struct {
		layers string
		want   int
	}{{"w0 w1|w2 w3|w4", 0}, {"w0 w2|w1 w3|w4", 2}, {"w0 w1|w2 w3 w4", 1}, {"w0|w1 w2 w3 w4", 1}} {
		var layers []model.Layer
		for _, l := range strings.Split(c.layers, "|") {
			layers = append(layers, model.Layer{Of: strings.Fields(l)})
		}
		if got := offer.Broken(s, 0, layers); got != c.want {
			t.Errorf("%s: %d broken, want %d", c.layers, got, c.want)
		}
	}
}

// A wire spliced at both ends is said where one of the splices only lengthens it, and not
// where both join several or change size: AC 43.13-1B ¶ 11-167 c.
func TestInSeries(t *testing.T) {
	file := func(sizes string, more string) *sheet.Sheet {
		z := strings.Fields(sizes)
		text := "format = 1\n[[termination]]\nid = \"P\"\n[[termination]]\nid = \"Q\"\n[[breakout]]\nid = \"J\"\n[[breakout]]\nid = " +
			"\"K\"\n[[splice]]\nid = \"S1\"\nat = \"J\"\n[[splice]]\nid = \"S2\"\nat = \"K\"\n"
		for k, e := range [][2]string{{"P:1", "S1"}, {"S1", "S2"}, {"S2", "Q:1"}} {
			text += fmt.Sprintf("[[wire]]\nid = \"w%d\"\nfrom = %q\nto = %q\nspec = \"AS22759/32\"\nsize = %q\n", k, e[0], e[1], z[k])
		}
		for _, e := range [][3]string{{"T", "P", "J"}, {"M", "J", "K"}, {"L", "K", "Q"}} {
			text += fmt.Sprintf("[[branch]]\nid = %q\nfrom = %q\nto = %q\nlength_mm = 300.0\n", e[0], e[1], e[2])
		}
		return sheetOf(t, text+more)
	}
	const two = "[[wire]]\nid = \"a\"\nfrom = \"S1\"\nto = \"P:2\"\nspec = \"AS22759/32\"\nsize = \"22\"\n[[wire]]\nid = \"b\"\nfrom = " +
		"\"S2\"\nto = \"Q:2\"\nspec = \"AS22759/32\"\nsize = \"22\"\n"
	for _, c := range []struct {
		sizes, more string
		want        int
	}{{"22 22 22", "", 1}, {"22 20 22", "", 0}, {"22 22 20", "", 1}, {"22 22 22", two, 0}} {
		if got := saidOf(file(c.sizes, c.more), "splice.series"); len(got) != c.want {
			t.Errorf("%s %q: %v", c.sizes, c.more, got)
		}
	}
}

// Shields end within 100 mm of their contacts and their leads are 190 mm long at most, 20
// and 115 where noise matters: NASA-STD-8739.4 § 11.6.
func TestShieldLengths(t *testing.T) {
	for _, c := range []struct {
		strip, drain float64
		kbit         string
		want         []string
	}{
		{100, 190, "", nil}, {101, 191, "", []string{"warn U", "warn U"}}, {20, 115, "kbit_s = 500.0", nil},
		{21, 116, "kbit_s = 500.0", []string{"note U", "note U"}}, {0, 0, "kbit_s = 500.0", nil},
	} {
		s := sheetOf(t, fmt.Sprintf(`format = 1
[[termination]]
id = "P"
[[termination]]
id = "Q"
[[wire]]
id = "a"
from = "P:1"
to = "Q:1"
spec = "AS22759/32"
size = "22"
[[wire]]
id = "b"
from = "P:2"
to = "Q:2"
spec = "AS22759/32"
size = "22"
[[unit]]
id = "U"
wires = ["a", "b"]
shield = true
drain_from = "P:3"
drain_to = "cut"
strip_mm = %v.0
drain_mm = %v.0
%s
[[branch]]
id = "T"
from = "P"
to = "Q"
length_mm = 300.0
`, c.strip, c.drain, c.kbit))
		if got := saidOf(s, "shield.length"); !slices.Equal(got, c.want) {
			t.Errorf("%v and %v %s: %v, want %v", c.strip, c.drain, c.kbit, got, c.want)
		}
		if e := over.ShieldEnds(s); len(e) != 2 || e[0].Sleeve == 0 || e[1].Sleeve != 0 {
			t.Errorf("ends %+v", e)
		}
	}
}

// Two wires in one contact are one crimp, of the size their circular mils come to: two 22
// AWG, 1508, go by 18 AWG (1900), two 20 AWG, 2432, by 16 AWG (2426, within 1 %).
func TestCrimpOfTwo(t *testing.T) {
	for wires, want := range map[string]string{"22 22": "18", "20 20": "16", "22 20": "16"} {
		a, b, _ := strings.Cut(wires, " ")
		s := ended(t, "cavities = [\"1\"]\ncontacts = { \"16\" = [\"1\"] }", a+" 1", b+" 1")
		rows := lists.CrimpList(s)
		if len(rows) != 1 || rows[0].Together != want || rows[0].Count != 1 || !strings.Contains(rows[0].Size, " + ") ||
			rows[0].PullN <= 0 {
			t.Errorf("%s: %+v, want one crimp as %s", wires, rows, want)
		}
	}
}

// Wires of which one has no known conductor come to no size: to count it as nothing would
// ask for a setting too small.
func TestCrimpOfAnUnknown(t *testing.T) {
	s := ended(t, "cavities = [\"1\"]\ncontacts = { \"16\" = [\"1\"] }", "22 1", "22 1")
	h := *s.H
	h.Wires = slices.Clone(h.Wires)
	h.Wires[1].Spec = "nobody's"
	if rows := lists.CrimpList(calc.Build(&h, s.Cat, nil)); len(rows) != 1 || rows[0].Together != "" {
		t.Errorf("%+v", rows)
	}
}

// What a cavity is called counts wherever one is named: kept free, and the size of its contact.
func TestAliasEverywhere(t *testing.T) {
	s := sheetOf(t, fmt.Sprintf(alias, `aliases = { "A" = ["+"], "B" = ["-"] }
reserved = ["-"]
contacts = { "20" = ["+"] }`))
	if got := saidOf(s, "cavity.none"); len(got) > 0 {
		t.Errorf("a known alias: %v", got)
	}
	if s.Terms[0].Reserved != 1 || s.Terms[0].State["A"].Size != "20" {
		t.Errorf("%d reserved, cavity A of size %q", s.Terms[0].Reserved, s.Terms[0].State["A"].Size)
	}
}

// A spare that is capped where it begins runs nowhere, and that is said.
func TestCappedWhereItBegins(t *testing.T) {
	s := sheetOf(t, fmt.Sprintf(dead, "from = \"P:2\"\ncapped_at = \"P\""))
	if g, ok := snag(s, "wire.capped", "s1"); !ok || g.Level != sheet.Warn {
		t.Errorf("nothing: %v", s.Snags)
	}
}

// The folded end of a spare is in a sheath's way: one more wire on the bundle where it lies,
// less between a few that are twisted.
func TestFoldInTheWay(t *testing.T) {
	more := "[[breakout]]\nid = \"J\"\n[[termination]]\nid = \"P\"\n"
	s := ringed(t, 1.09, 0.05, 400, []int{1, 6, 12}, more, "")
	bare := s.Branches[0].Sheath.PassMM
	h := *s.H
	h.Branches = append(slices.Clone(h.Branches), model.Branch{ID: "L", From: "J", To: "Q", LengthMM: 100})
	h.Branches[0].To = "J"
	k := len(h.Wires) - 1
	h.Wires = slices.Clone(h.Wires)
	h.Wires[k].To, h.Wires[k].CappedAt, h.Wires[k].Role, h.Wires[k].FoldMM = model.Opt[string]{}, model.Some("J"),
		model.Some(model.RoleSpare),
		model.Some[unit.Millimetre](100)
	n := calc.Build(&h, s.Cat, nil)
	sh := n.Branches[0].Sheath
	if d := float64(sh.PassMM - bare); math.Abs(d-1.09) > 1e-9 || !strings.Contains(sh.PassAt, "folded end of "+h.Wires[k].ID) {
		t.Errorf("it passes %v more, over %s; one wire more is 1.09", d, sh.PassAt)
	}
	two := ringed(t, 1.0, 0.05, 400, []int{2}, "", "")
	if got, want := float64(over.StandsOut(two, 0, 1)), 1+2/math.Sqrt(3)-2; math.Abs(got-want) > 1e-6 {
		t.Errorf("a third beside two stands out %v; three alike lie in 2.155, %v more than two", got, want)
	}
}

// A wall that must be tight is passed by a sealed connector that is fixed in it, and by
// nothing else.
func TestTightWall(t *testing.T) {
	for keys, want := range map[string]string{
		"insert = \"18-32\"\nmount = \"jam nut\"\n": "wall.rated", "insert = \"18-32\"\nmount = \"flange\"\n": "wall.rated",
		"insert = \"18-32\"\nmount = \"inline\"\n": "wall.tight", "insert = \"18-32\"\n": "wall.tight",
		"cavities = [\"1\"]\nmount = \"flange\"\n": "wall.tight",
	} {
		for _, tight := range []bool{true, false} {
			s := ringed(t, 1.09, 0.05, 400, []int{1, 6}, fmt.Sprintf("[[termination]]\nid = \"P\"\n%stight = %v\n", keys, tight), "")
			for rule, level := range map[string]sheet.Level{"wall.tight": sheet.Stop, "wall.rated": sheet.Note} {
				if g, ok := snag(s, rule, "P"); ok != (tight && rule == want) || ok && g.Level != level {
					t.Errorf("%q tight %v: %s %v %+v", keys, tight, rule, ok, g)
				}
			}
		}
	}
}
