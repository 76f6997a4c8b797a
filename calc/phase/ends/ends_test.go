package ends_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc/calctest"
	endsphase "contralay/calc/phase/ends"
	"contralay/calc/query/lists"
	"contralay/calc/sheet"
	"contralay/model/unit"
)

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
	s := calctest.Built(t, fmt.Sprintf(alias, `aliases = { "A" = ["+"], "B" = ["-"] }`))
	if c := s.Terms[0].State["A"]; !slices.Equal(c.Wires, []string{"w1"}) || s.Terms[0].Used != 1 || s.Terms[0].Blank != 1 {
		t.Errorf("cavity A holds %v, used %d, blank %d", c.Wires, s.Terms[0].Used, s.Terms[0].Blank)
	}
	if got := calctest.SaidOf(s, "cavity.none"); len(got) > 0 {
		t.Errorf("a known alias: %v", got)
	}
	for _, c := range []struct{ aliases, says string }{
		{`aliases = { "A" = ["B"] }`, `It also calls cavity A "B", but has another cavity "B"`},
		{`aliases = { "A" = ["+"], "B" = ["+"] }`, `calls two cavities "+"`}, {`aliases = { "C" = ["+"] }`, "does not have"},
	} {
		s := calctest.Built(t, fmt.Sprintf(alias, c.aliases))
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
		s := calctest.Built(t, fmt.Sprintf(`format = 1
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

// A spare that is capped at a breakout runs as far as that and no further; its cap lies
// where its fold ends, and it is as long as way, loop, fold and the tail of its one end.
func TestCappedSpare(t *testing.T) {
	for _, ends := range []string{"from = \"P:2\"\ncapped_at = \"J\"\nfold_mm = 80.0", "to = \"P:2\"\ncapped_at = \"J\"\nfold_mm = 80.0"} {
		s := calctest.Built(t, fmt.Sprintf(calctest.CappedSpare, ends))
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
		if s := calctest.Built(t, fmt.Sprintf(calctest.CappedSpare, ends)); len(calctest.SaidOf(s, want)) != 1 {
			t.Errorf("%s: nothing by %s: %v", ends, want, s.Snags)
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
		return calctest.Built(t, text+more)
	}
	const two = "[[wire]]\nid = \"a\"\nfrom = \"S1\"\nto = \"P:2\"\nspec = \"AS22759/32\"\nsize = \"22\"\n[[wire]]\nid = \"b\"\nfrom = " +
		"\"S2\"\nto = \"Q:2\"\nspec = \"AS22759/32\"\nsize = \"22\"\n"
	for _, c := range []struct {
		sizes, more string
		want        int
	}{{"22 22 22", "", 1}, {"22 20 22", "", 0}, {"22 22 20", "", 1}, {"22 22 22", two, 0}} {
		if got := calctest.SaidOf(file(c.sizes, c.more), "splice.series"); len(got) != c.want {
			t.Errorf("%s %q: %v", c.sizes, c.more, got)
		}
	}
}

// What a cavity is called counts wherever one is named: kept free, and the size of its contact.
func TestAliasEverywhere(t *testing.T) {
	s := calctest.Built(t, fmt.Sprintf(alias, `aliases = { "A" = ["+"], "B" = ["-"] }
reserved = ["-"]
contacts = { "20" = ["+"] }`))
	if got := calctest.SaidOf(s, "cavity.none"); len(got) > 0 {
		t.Errorf("a known alias: %v", got)
	}
	if s.Terms[0].Reserved != 1 || s.Terms[0].State["A"].Size != "20" {
		t.Errorf("%d reserved, cavity A of size %q", s.Terms[0].Reserved, s.Terms[0].State["A"].Size)
	}
}

// A spare that is capped where it begins runs nowhere, and that is said.
func TestCappedWhereItBegins(t *testing.T) {
	s := calctest.Built(t, fmt.Sprintf(calctest.CappedSpare, "from = \"P:2\"\ncapped_at = \"P\""))
	if g, ok := calctest.Snag(s, "wire.capped", "s1"); !ok || g.Level != sheet.Warn {
		t.Errorf("nothing: %v", s.Snags)
	}
}
