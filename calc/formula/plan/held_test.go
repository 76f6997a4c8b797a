package plan

import (
	"slices"
	"testing"

	"pgregory.net/rapid"
)

// sizesOf lists what a layer holds, as it would be held.
func sizesOf(l Layer) (z []Size) {
	for i, d := range l.Sizes {
		if l.N[i] > 0 {
			z = append(z, Size{D: d, N: l.N[i]})
		}
	}
	return z
}

// countOf is how many of a diameter a layer holds.
func countOf(l Layer, d mm) int {
	if i := slices.Index(l.Sizes, d); i >= 0 {
		return l.N[i]
	}
	return 0
}

// What one plan does with a layer, held, is in every plan of the next search:
// locked, exactly that; pinned, at least that.
func TestHeldStays(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := someAsk(t, 30, 3000)
		a.Spares = 0
		first := Make(a)
		p := first[len(first)-1]
		at := rapid.IntRange(0, len(p.Layers)-1).Draw(t, "layer")
		if p.Layers[at].CentreMM > 0 {
			t.Skip("a built-up centre is not held by its size")
		}
		h := Held{At: at, Sizes: sizesOf(p.Layers[at])}
		if rapid.Bool().Draw(t, "locked") {
			h.Locked, h.Fillers, h.FillerMM = true, p.Layers[at].Fillers, p.Layers[at].FillerMM
		} else {
			h.Sizes = h.Sizes[:1]
			h.Sizes[0].N = rapid.IntRange(1, h.Sizes[0].N).Draw(t, "pinned")
		}
		a.Held = []Held{h}
		again := Make(a)
		if len(again) == 0 {
			t.Fatalf("no plan although one is known: %+v holds %+v", p, h)
		}
		for _, q := range again {
			if len(q.Layers) <= at {
				t.Fatalf("layer %d is held and not there: %+v", at, q)
			}
			l, all := q.Layers[at], 0
			for _, z := range h.Sizes {
				all += z.N
				if countOf(l, z.D) < z.N {
					t.Errorf("layer %d holds %d of %v, %d held", at, countOf(l, z.D), z.D, z.N)
				}
			}
			if h.Locked && (l.Count() != all || l.Fillers != h.Fillers) {
				t.Errorf("a locked layer changed: %+v, was %+v", l, p.Layers[at])
			}
		}
	})
}

// In the order of leaving, nothing lies outside what leaves before it. Every
// group has a diameter of its own here, so the layers tell who lies where.
func TestInOrderOfLeaving(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := Ask{Rules: shop, InOrder: true, Effort: 20000}
		leaves := map[mm]int{}
		for k := range rapid.IntRange(2, 4).Draw(t, "groups") {
			d := mm(rapid.SampledFrom([]float64{1.0, 1.2, 1.5, 1.9}).Draw(t, "size")) + mm(k)/1000
			leaves[d] = rapid.IntRange(0, 3).Draw(t, "leaves")
			a.Sizes = append(a.Sizes, Size{D: d, N: rapid.IntRange(1, 12).Draw(t, "n"), Leaves: leaves[d]})
		}
		ps := Make(a)
		if len(ps) == 0 {
			t.Fatal("no plan")
		}
		for _, p := range ps {
			inside := 99 // the first to leave of all that lies further in
			for i, l := range p.Layers {
				here := inside
				for k, d := range l.Sizes {
					if l.N[k] == 0 {
						continue
					}
					if leaves[d] > inside {
						t.Errorf("layer %d: %v leaves at %d, one inside it at %d: %+v", i, d, leaves[d], inside, p)
					}
					here = min(here, leaves[d])
				}
				inside = here
			}
		}
	})
}

// An even number of layers more or fewer turns no hand.
func TestLayersKeepTheHand(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := someAsk(t, 40, 3000)
		a.Layers = rapid.IntRange(1, 5).Draw(t, "layers")
		for _, p := range Make(a) {
			if (len(p.Layers)-a.Layers)%2 != 0 {
				t.Errorf("%d layers, asked for %d", len(p.Layers), a.Layers)
			}
		}
	})
}
