package catalogue

import (
	"fmt"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

func TestShopWins(t *testing.T) {
	base := mustDefault(t)
	before := mustDefault(t)
	shop := mustRead(t,
		strings.Replace(goodWire, `"X"`, `"AS22759/32"`, 1)+
			strings.Replace(goodTube, `"T 9.5"`, `"AS23053/16 9.5"`, 1)+
			strings.Replace(goodInsert, "aliases  = [\"19-32\"]\n", "", 1)+goodContact)
	c := Merge(base, shop)

	if w, _ := c.Wire("AS22759/32", "22"); w.OverMM != 1.1 || w.Standing != House || w.GramPerM != 0 {
		t.Errorf("the shop's wire did not replace the entry whole: %+v", w)
	}
	if w, _ := c.Wire("AS22759/32", "20"); w.OverMM != 1.27 {
		t.Errorf("a wire the shop does not have changed: %+v", w)
	}
	if tube, _ := c.Tube("AS23053/16 9.5"); tube.ServiceMaxC != 150 || len(c.Tubes) != len(base.Tubes) {
		t.Errorf("the shop's tube: %+v among %d", tube, len(c.Tubes))
	}
	for _, name := range []string{"18-32", "19-32"} { // the shop gave the first name only
		if i, ok := c.Insert(name); !ok || i.Count() != 3 || strings.Join(i.Names(), " ") != "18-32 19-32" {
			t.Errorf("%s: %+v", name, i)
		}
	}
	if len(c.InsertIDs()) != len(base.InsertIDs()) {
		t.Errorf("%d inserts, want %d", len(c.InsertIDs()), len(base.InsertIDs()))
	}
	if d := cmp.Diff(before, base); d != "" {
		t.Errorf("the base changed:\n%s", d)
	}
}

func TestMergeWithNothing(t *testing.T) {
	base := mustDefault(t)
	for name, c := range map[string]*Catalogue{"nothing over": Merge(base, nil), "over nothing": Merge(nil, base),
		"itself": Merge(base, base), "the zero catalogue": Merge(&Catalogue{}, base)} {
		if d := cmp.Diff(base, c); d != "" {
			t.Errorf("%s:\n%s", name, d)
		}
	}
}

func TestOrderIsAlwaysTheSame(t *testing.T) {
	said := func(c *Catalogue) string {
		s := fmt.Sprint(c.Specs(), c.Kinds(), c.InsertIDs(), c.BootIDs(), c.SpliceIDs(), c.ContactSizes(), c.TransitionIDs())
		for _, spec := range c.Specs() {
			s += fmt.Sprint(c.Sizes(spec))
		}
		for _, tube := range c.Tubes {
			s += tube.ID
		}
		return s
	}
	first := said(mustDefault(t))
	for range 5 { // map order differs from run to run and from call to call
		if again := said(mustDefault(t)); again != first {
			t.Fatalf("order differs:\n%s\n%s", first, again)
		}
	}
}

func TestCompareNames(t *testing.T) {
	sorted := []string{"", "8-2", "8-35", "10-4", "AS23053/1", "AS23053/5", "AS23053/13", "AS23053/16", "AS23053/16 thin", "AS23053/016x",
		"B"}
	for i, a := range sorted {
		for j, b := range sorted {
			got, want := compareNames(a, b), 0
			if i < j {
				want = -1
			} else if i > j {
				want = 1
			}
			if got != want {
				t.Errorf("compareNames(%q, %q) = %d, want %d", a, b, got, want)
			}
		}
	}
}
