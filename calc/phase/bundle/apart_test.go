package bundle_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/sheet"
	"contralay/model"
)

// Data, ground and power in one layer, named in turn: wished apart, no data lies
// beside power, and the layer holds what it held, as thick as it was.
func TestDataApart(t *testing.T) {
	var b strings.Builder
	b.WriteString("format = 1\n[[termination]]\nid = \"A\"\n[[termination]]\nid = \"Z\"\n")
	for i := range 13 {
		role := []string{"data", "power", "ground"}[i%3]
		fmt.Fprintf(&b, "[[wire]]\nid = \"%02d\"\nfrom = \"A:%d\"\nto = \"Z:%02d\"\nspec = \"AS22759/32\"\nsize = \"22\"\nrole = %q\n", i,
			i, i, role)
	}
	b.WriteString("[[branch]]\nid = \"T1\"\nfrom = \"A\"\nto = \"Z\"\nlength_mm = 400\n")
	h := calctest.Parse(t, b.String())
	h = h.EditBranch(0, func(b *model.Branch) {
		b.Layers = []model.Layer{{Of: []string{"00", "03", "06"}},
			{Of: []string{"01", "02", "04", "05", "07", "08", "09", "10", "11", "12"}}}
	})
	set := func(on bool) *sheet.Branch {
		s := calc.Complete(h.EditBranch(0, func(b *model.Branch) { b.DataApart = model.Some(on) }), calctest.Catalogue(t), nil)
		return &s.Branches[0]
	}
	off, on := set(false), set(true)
	if off.Layers[1].Beside == 0 || on.Layers[1].Beside != 0 {
		t.Errorf("beside power: %d, wished apart %d", off.Layers[1].Beside, on.Layers[1].Beside)
	}
	ids := func(l sheet.Layer) []string {
		var out []string
		for _, m := range l.Members {
			out = append(out, m.ID)
		}
		return slices.Sorted(slices.Values(out))
	}
	for k := range off.Layers {
		if !slices.Equal(ids(off.Layers[k]), ids(on.Layers[k])) || off.Layers[k].OverMM != on.Layers[k].OverMM {
			t.Errorf("layer %d changed with the wish", k)
		}
	}
}
