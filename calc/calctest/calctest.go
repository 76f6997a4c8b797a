// Package calctest is what the tests of calc and its rooms share: harnesses written in a
// few words, their sheets, and looking up what a sheet says. It is for tests only; nothing
// else imports it, and a test of the tower holds that.
package calctest

import (
	"fmt"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"

	"contralay/calc"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/file"
	"contralay/model/shorttest"
	"contralay/model/unit"
)

var catalogueOnce = sync.OnceValues(func() (*catalogue.Catalogue, error) {
	shorttest.CollectLate()
	return catalogue.Default()
})

// Catalogue is the default catalogue, read once.
func Catalogue(t testing.TB) *catalogue.Catalogue {
	t.Helper()
	c, err := catalogueOnce()
	if err != nil {
		t.Fatal(err)
	}
	return c
}

// root is the folder of the module, above the package that is tested.
func root(t testing.TB) string {
	t.Helper()
	dir, err := os.Getwd()
	if err != nil {
		t.Fatal(err)
	}
	for {
		if _, err := os.Stat(filepath.Join(dir, "go.mod")); err == nil {
			return dir
		}
		up := filepath.Dir(dir)
		if up == dir {
			t.Fatal("no go.mod above the package")
		}
		dir = up
	}
}

// Load is the harness of a file of testdata, with its ending.
func Load(t testing.TB, name string) *model.Harness {
	t.Helper()
	d, err := file.Load(filepath.Join(root(t), "testdata", name))
	if err != nil {
		t.Fatal(err)
	}
	return &d.Harness
}

// Parse is the harness written as text.
func Parse(t testing.TB, text string) *model.Harness {
	t.Helper()
	d, err := file.Parse([]byte(text), "test")
	if err != nil {
		t.Fatal(err)
	}
	return &d.Harness
}

// Near fails where a value is further from what it must be than a tolerance.
func Near(t *testing.T, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s: %.4f, want %.4f ± %g", what, got, want, tol)
	}
}

// Snag is the first open point of a rule about a place, any place where that is "".
func Snag(s *sheet.Sheet, rule, where string) (sheet.Snag, bool) {
	for _, g := range s.Snags {
		if g.Rule == rule && (where == "" || g.Where == where) {
			return g, true
		}
	}
	return sheet.Snag{}, false
}

// Ringed is wires of one size and diameter on a branch of a length, laid in rings of so
// many.
func Ringed(t *testing.T, over, tol unit.Millimetre, length float64, rings []int, more, branch string) *sheet.Sheet {
	t.Helper()
	var b strings.Builder
	b.WriteString("format = 1\n" + more + "\n[[termination]]\nid = \"Q\"\n")
	if !strings.Contains(more, `id = "P"`) {
		b.WriteString("[[termination]]\nid = \"P\"\n")
	}
	layers, k := "", 0
	for _, n := range rings {
		var members []string
		for range n {
			fmt.Fprintf(&b, "[[wire]]\nid = \"w%d\"\nfrom = \"P:%d\"\nto = \"Q:%d\"\nspec = \"own\"\nsize = \"16\"\n", k, k, k)
			members = append(members, fmt.Sprintf("\"w%d\"", k))
			k++
		}
		layers += "  [[branch.layer]]\n  of = [" + strings.Join(members, ", ") + "]\n"
	}
	make := "laid"
	if len(rings) == 1 {
		make = "twisted"
	}
	fmt.Fprintf(&b, "[[branch]]\nid = \"T\"\nfrom = \"P\"\nto = \"Q\"\nlength_mm = %v\nmake = %q\n%s%s", length, make, branch, layers)
	s := Built(t, b.String())
	entry := catalogue.Wire{Spec: "own", Size: "16", OverMM: over, TolMM: tol, RatedC: 150,
		Origin: catalogue.Origin{Source: "measured", Standing: catalogue.House}}
	cat := catalogue.Merge(s.Cat, &catalogue.Catalogue{Wires: map[catalogue.WireKey]catalogue.Wire{{Spec: "own", Size: "16"}: entry}})
	return calc.Build(s.H, cat, nil)
}

// CoverText is one cover of a branch as the file has it: what it is and its other keys.
func CoverText(what, keys string) string {
	return fmt.Sprintf("  [[branch.cover]]\n  what = %q\n%s", what, keys)
}

// Carrying is a branch of wires from A to Z, "size amps" each, in cavities with contacts
// of a size, "" for none; layers are wire numbers, nil to have it proposed.
func Carrying(t testing.TB, ambient float64, contact string, wires []string, layers [][]int, more string) *sheet.Sheet {
	t.Helper()
	var b strings.Builder
	b.WriteString("format = 1\n")
	var names []string
	for k := range wires {
		names = append(names, fmt.Sprintf("%q", fmt.Sprint(k)))
	}
	list := "[" + strings.Join(names, ", ") + "]"
	for _, id := range []string{"A", "Z"} {
		fmt.Fprintf(&b, "[[termination]]\nid = %q\ncavities = %s\n", id, list)
		if contact != "" {
			fmt.Fprintf(&b, "contacts = { %q = %s }\n", contact, list)
		}
	}
	for k, w := range wires {
		size, amps, _ := strings.Cut(w, " ")
		fmt.Fprintf(&b, "[[wire]]\nid = \"w%d\"\nfrom = \"A:%d\"\nto = \"Z:%d\"\nspec = \"AS22759/32\"\nsize = %q\namps = %s\n", k, k, k,
			size, amps)
	}
	fmt.Fprintf(&b, "[[branch]]\nid = \"T1\"\nfrom = \"A\"\nto = \"Z\"\nlength_mm = 1000.0\nambient_c = %g\n%s", ambient, more)
	for _, l := range layers {
		var members []string
		for _, k := range l {
			members = append(members, fmt.Sprintf("\"w%d\"", k))
		}
		fmt.Fprintf(&b, "  [[branch.layer]]\n  of = [%s]\n", strings.Join(members, ", "))
	}
	s := Built(t, b.String())
	return calc.Complete(s.H, s.Cat, s)
}

// Once is how often a list must have something: once where it is there, else never.
func Once(there bool) int {
	if there {
		return 1
	}
	return 0
}

// Repeated is n times the same wire for Carrying.
func Repeated(n int, w string) []string {
	out := make([]string, n)
	for k := range out {
		out[k] = w
	}
	return out
}

// SaidOf is what a sheet says by one rule, "LEVEL WHERE".
func SaidOf(s *sheet.Sheet, rule string) []string {
	var out []string
	for _, g := range s.Snags {
		if g.Rule == rule {
			out = append(out, fmt.Sprint(g.Level, " ", g.Where))
		}
	}
	return out
}

// CappedSpare is a harness of a wire w1 and a spare s1 over a breakout; %s takes the ends
// of the spare.
const CappedSpare = `format = 1
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

// InCavities is wires of sizes in one cavity of a termination, or each in its own.
func InCavities(t *testing.T, term string, wires ...string) *sheet.Sheet {
	t.Helper()
	var b strings.Builder
	b.WriteString("format = 1\n[[termination]]\nid = \"A\"\n" + term + "\n[[termination]]\nid = \"Z\"\n")
	for k, w := range wires {
		size, cavity, _ := strings.Cut(w, " ")
		fmt.Fprintf(&b, "[[wire]]\nid = \"w%d\"\nfrom = \"A:%s\"\nto = \"Z:%d\"\nspec = \"AS22759/32\"\nsize = %q\n", k, cavity, k, size)
	}
	b.WriteString("[[branch]]\nid = \"T1\"\nfrom = \"A\"\nto = \"Z\"\nlength_mm = 500.0\n")
	return Built(t, b.String())
}

// OneSize is a harness of n wires of one size along one branch, with what the branch
// says beside its ends; cavities is how many each end has.
func OneSize(n int, size, branch string, cavities ...int) string {
	var b strings.Builder
	b.WriteString("format = 1\n")
	for _, id := range []string{"A", "Z"} {
		fmt.Fprintf(&b, "[[termination]]\nid = %q\n", id)
		if len(cavities) > 0 {
			var c []string
			for k := range cavities[0] {
				c = append(c, fmt.Sprintf("%q", fmt.Sprint(k)))
			}
			fmt.Fprintf(&b, "cavities = [%s]\n", strings.Join(c, ", "))
		}
	}
	for i := range n {
		fmt.Fprintf(&b, "[[wire]]\nid = \"%d\"\nfrom = \"A:%d\"\nto = \"Z:%d\"\nspec = \"AS22759/32\"\nsize = %q\n", i, i, i, size)
	}
	return b.String() + "[[branch]]\nid = \"T1\"\nfrom = \"A\"\nto = \"Z\"\n" + branch
}

// Built is the sheet of a harness written as text, by the default catalogue; what the
// text does not lay waits for a proposal.
func Built(t testing.TB, text string) *sheet.Sheet {
	t.Helper()
	return calc.Build(Parse(t, text), Catalogue(t), nil)
}

// Laid is the sheet of a file of testdata, NAME without its ending, with every branch laid. What is proposed for a file is
// searched for once in a package: it hangs on nothing but the file and the catalogue, which a test of calc holds.
func Laid(t testing.TB, name string) *sheet.Sheet {
	t.Helper()
	prior := &sheet.Sheet{H: &model.Harness{}}
	if known, found := proposed.Load(name); found {
		prior.Proposals = known.(map[string]sheet.Proposal)
	}
	s := calc.Complete(Load(t, name+".toml"), Catalogue(t), prior)
	proposed.Store(name, s.Proposals)
	return s
}

// Files are those of some files of testdata that a test goes through: all in the long form, and by default all but the large one, whole,
// which takes longer to lay than the others together.
func Files(names ...string) []string {
	if shorttest.Long() {
		return names
	}
	return slices.DeleteFunc(slices.Clone(names), func(name string) bool { return name == "whole" })
}

// proposed is the lay-ups of each file, by its name.
var proposed sync.Map

// Corrected is the catalogue of a sheet with what a shop has learned of its own bundles.
func Corrected(s *sheet.Sheet, corrections ...catalogue.Correction) *catalogue.Catalogue {
	return catalogue.Merge(s.Cat, &catalogue.Catalogue{Corrections: corrections})
}
