package catalogue

import (
	"strings"
	"testing"

	"contralay/model/unit"
	"contralay/model/visible"
)

// What is read can be calculated with: every figure is a number, every entry has
// an origin, and it can be merged and asked.
func FuzzRead(f *testing.F) {
	f.Add(goodWire + goodTube + goodInsert + goodContact)
	f.Add("[[correction]]\nof = \"over, 3 layers\"\nbias = 0.01\non = \"2026-05-31\"\nfrom = \"a.toml\"\n")
	f.Add(with(goodWire, "spec", `spec = "\u001B[2J\u009B"`))
	f.Add("[[wire]]\n\"\\u0007\" = 1\n\"a\\nb\" = 2\n[[\"\\u202E\"]]\n")
	f.Add("[[insert]]\nid = \"\\n\"\naliases = [\"\u200b\", 1]\ncontacts = [{ \"\\r\" = 1 }]\n")
	base, err := Default()
	if err != nil {
		f.Fatal(err)
	}
	f.Fuzz(func(t *testing.T, text string) {
		c, err := Read(strings.NewReader(text), "fuzz")
		if err != nil {
			for line := range strings.SplitSeq(err.Error(), "\n") {
				if _, found := visible.Find(line); found || c != nil || !strings.HasPrefix(line, "fuzz:") {
					t.Fatalf("%v, %q", c, err)
				}
			}
			return
		}
		for name, o := range origins(c) {
			if r, found := visible.Find(name + o.Source); found {
				t.Errorf("%q, %q holds %U", name, o.Source, r)
			}
			if strings.TrimSpace(o.Source) == "" || !o.Standing.Known() {
				t.Errorf("%s: origin %+v", name, o)
			}
		}
		for _, w := range c.Wires {
			if !unit.Finite(float64(w.OverMM)) || w.OverMM <= 0 || w.AreaMM2 <= 0 || w.OhmPerKm <= 0 {
				t.Errorf("%+v", w)
			}
			if _, ok := c.Wire(w.Spec, w.Size); !ok {
				t.Errorf("%q %q is not found", w.Spec, w.Size)
			}
		}
		for _, tube := range c.Tubes {
			if !(tube.RecoveredMM > 0 && tube.RecoveredMM < tube.SuppliedMM && tube.LengthChange < 1) {
				t.Errorf("%+v", tube)
			}
		}
		m := Merge(base, c)
		for name, i := range c.Inserts {
			if got, ok := m.Insert(name); !ok || got.ID != i.ID {
				t.Errorf("%q is lost in the merge", name)
			}
			for _, cavity := range i.Cavities {
				i.ContactSize(cavity)
			}
		}
	})
}
