package whatif_test

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/query/whatif"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
)

// loom is wires of sizes on one branch, laid in one layer after the other as they are given, with cavities enough.
func loom(t *testing.T, branch string, layers ...[]string) *sheet.Sheet {
	t.Helper()
	var b, of strings.Builder
	b.WriteString("format = 1\n[[termination]]\nid = \"A\"\n[[termination]]\nid = \"Z\"\n")
	k := 0
	for _, sizes := range layers {
		var ids []string
		for _, z := range sizes {
			size, amps, has := strings.Cut(z, "@")
			fmt.Fprintf(&b, "[[wire]]\nid = \"%d\"\nfrom = \"A:%d\"\nto = \"Z:%d\"\nspec = \"AS22759/32\"\nsize = %q\n", k, k, k, size)
			if has {
				fmt.Fprintf(&b, "amps = %s\n", amps)
			}
			ids = append(ids, fmt.Sprintf("%q", fmt.Sprint(k)))
			k++
		}
		fmt.Fprintf(&of, "  [[branch.layer]]\n  of = [%s]\n", strings.Join(ids, ", "))
	}
	b.WriteString("[[branch]]\nid = \"T\"\nfrom = \"A\"\nto = \"Z\"\nlength_mm = 500.0\n" + branch + of.String())
	return calctest.Built(t, b.String())
}

func six(size string) []string { return []string{size, size, size, size, size, size} }

// The specifications offered are those of the catalogue that have every size here, thin to thick by the commonest of them, of equals the
// smaller by its name; the present one is marked. Told a second time from the catalogue.
func TestSpecificationsInOrder(t *testing.T) {
	for _, layers := range [][][]string{{{"22"}, six("22")}, {{"16"}, {"20", "20", "20", "22", "22"}}, {{"12"}, {"20", "12",
		"20", "12"}}} {
		s := loom(t, "", layers...)
		k := slices.IndexFunc(whatif.Kinds(s, 0), func(k whatif.Kind) bool { return k.ID == "spec" })
		if k < 0 {
			t.Fatal("no specification is offered")
		}
		kind := whatif.Kinds(s, 0)[k]
		count := map[string]int{}
		for _, w := range s.H.Wires {
			count[w.Size]++
		}
		common := ""
		for _, z := range []string{"12", "16", "20", "22"} {
			if count[z] > count[common] {
				common = z
			}
		}
		type one struct {
			name string
			e    catalogue.Wire
		}
		var want []one
		for _, name := range s.Cat.Specs() {
			all := true
			for z := range count {
				_, ok := s.Cat.Wire(name, z)
				all = all && ok
			}
			if e, ok := s.Cat.Wire(name, common); ok && all {
				want = append(want, one{name, e})
			}
		}
		slices.SortStableFunc(want, func(a, b one) int { return cmp.Compare(a.e.OverMM, b.e.OverMM) })
		if len(want) != len(kind.Values) || len(want) < 2 {
			t.Fatalf("%v: %d offered, want %d", layers, len(kind.Values), len(want))
		}
		for n, v := range kind.Values {
			if v.Key != "spec "+want[n].name || v.Says != want[n].name || (n == kind.Now) != (v.Says == "AS22759/32") {
				t.Errorf("%v: number %d is %s, want %s; now %d", layers, n, v.Key, want[n].name, kind.Now)
			}
		}
	}
}

// What holds a way back is named: a locked layer, a pin, a spare, a current that is not entered; and then nothing is changed.
func TestWaysAreHeldByName(t *testing.T) {
	for _, c := range []struct {
		name string
		s    *sheet.Sheet
		kind string
		key  string
		want string
	}{
		{"no current", loom(t, "", []string{"20"}, six("20")), "size 20", "22", "none of size 20 can be 22 here; wire "},
		{"locked", calc.Build(edit(loom(t, "", []string{"20@1.0"}, six("20@1.0")), func(b *model.Branch) {
			for k := range b.Layers {
				b.Layers[k].Locked = model.Some(true)
			}
		}), calctest.Catalogue(t), nil), "size 20", "22", ""},
	} {
		var v whatif.Value
		for _, k := range whatif.Kinds(c.s, 0) {
			for _, o := range k.Values {
				if k.ID == c.kind && o.Says == c.key {
					v = o
				}
			}
		}
		if v.Key == "" {
			if c.want != "" {
				t.Errorf("%s: it is not offered", c.name)
			}
			continue
		}
		h, err := whatif.Changed(c.s, 0, v)
		if err == nil || !strings.HasPrefix(err.Error(), c.want) || h != c.s.H {
			t.Errorf("%s: %v", c.name, err)
		}
	}
}

// Of wires of one size those are counted that another harness has otherwise, of those that lie by themselves: by hand three of four.
func TestShareByHand(t *testing.T) {
	s := loom(t, "", []string{"20@1.0"}, []string{"20@1.0", "20@1.0", "22@1.0", "20@1.0"})
	var v, other whatif.Value
	for _, k := range whatif.Kinds(s, 0) {
		for _, o := range k.Values {
			switch {
			case k.ID == "size 20" && o.Says == "22":
				v = o
			case k.ID == "hand":
				other = o
			}
		}
	}
	h := s.H
	for _, id := range []string{"0", "2", "4"} {
		h = h.EditWire(s.Index.Wire[id], func(w *model.Wire) { w.Size = "22" })
	}
	if n, of := whatif.Share(s, 0, v, h); n != 3 || of != 4 {
		t.Errorf("%d of %d, want 3 of 4", n, of)
	}
	if n, of := whatif.Share(s, 0, v, s.H); n != 0 || of != 4 {
		t.Errorf("%d of %d, want 0 of 4", n, of)
	}
	for _, i := range []int{-1, 1} {
		if n, of := whatif.Share(s, i, v, h); n != 0 || of != 0 {
			t.Errorf("of branch %d: %d of %d", i, n, of)
		}
	}
	if n, of := whatif.Share(s, 0, other, h); n != 0 || of != 0 {
		t.Errorf("of a hand: %d of %d", n, of)
	}
}

func edit(s *sheet.Sheet, f func(b *model.Branch)) *model.Harness {
	return s.H.EditBranch(0, func(b *model.Branch) {
		b.Layers = slices.Clone(b.Layers)
		f(b)
	})
}
