package planning_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/phase/planning"
	"contralay/calc/query/offer"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// tee is a stem of wires that fork into arms: as many into each as asks says, "12x22" of one size.
// The wires of the first arm stand first in the file.
func tee(asks ...string) string {
	var b strings.Builder
	b.WriteString("format = 1\n[[breakout]]\nid = \"Y\"\n[[termination]]\nid = \"S\"\n")
	n := 0
	for k, ask := range asks {
		fmt.Fprintf(&b, "[[termination]]\nid = \"E%d\"\n", k)
		for _, part := range strings.Fields(ask) {
			count, size := 0, ""
			fmt.Sscanf(part, "%dx%s", &count, &size)
			for range count {
				n++
				fmt.Fprintf(&b, "[[wire]]\nid = \"%d.%d\"\nfrom = \"S:%d\"\nto = \"E%d:%d\"\nspec = \"AS22759/32\"\nsize = %q\n", k, n, n,
					k, n,
					size)
			}
		}
	}
	b.WriteString("[[branch]]\nid = \"STEM\"\nfrom = \"S\"\nto = \"Y\"\nlength_mm = 500\n")
	for k := range asks {
		fmt.Fprintf(&b, "[[branch]]\nid = \"ARM%d\"\nfrom = \"Y\"\nto = \"E%d\"\nlength_mm = %d\n", k, k, 200+100*k)
	}
	return b.String()
}

// armsOf is which arms each layer of the stem goes on into, told by the ids.
func armsOf(layers []model.Layer) (out []string) {
	for _, l := range layers {
		arms := map[string]bool{}
		for _, id := range l.Of {
			arm, _, _ := strings.Cut(id, ".")
			arms[arm] = true
		}
		var names []string
		for a := range arms {
			names = append(names, a)
		}
		slices.Sort(names)
		out = append(out, strings.Join(names, "+"))
	}
	return out
}

func stem(t *testing.T, text string, change func(h *model.Harness) *model.Harness) *sheet.Branch {
	t.Helper()
	h := calctest.Parse(t, text)
	if change != nil {
		h = change(h)
	}
	s := calc.Complete(h, calctest.Catalogue(t), nil)
	return &s.Branches[0]
}

// Nineteen of one size lie 1-6-12 whoever lies where, 5.475 mm over: at a fork of 12 and 7 those 7
// lie inside and the 12 outside, and no layer parts.
func TestLayersStayWholeAtAFork(t *testing.T) {
	turn := func(h *model.Harness) *model.Harness {
		return h.EditBranch(0, func(b *model.Branch) { b.From, b.To = b.To, b.From })
	}
	free := func(h *model.Harness) *model.Harness {
		return h.EditBranch(0, func(b *model.Branch) { b.LeaversOut = model.Some(false) })
	}
	for _, c := range []struct {
		name   string
		asks   []string
		change func(h *model.Harness) *model.Harness
		want   string
	}{
		{"12 and 7", []string{"12x22", "7x22"}, nil, "1 1 0"},
		{"7 and 12", []string{"7x22", "12x22"}, nil, "0 0 1"},
		{"the stem written the other way round", []string{"12x22", "7x22"}, turn, "1 1 0"},
		{"13 and 6: the middle layer is the other arm's", []string{"13x22", "6x22"}, nil, "0 1 0"},
		{"three arms", []string{"6x22", "12x22", "1x22"}, nil, "2 0 1"},
		{"10 and 9: some layer parts whatever is done, so the larger tail lies inside", []string{"9x22", "10x22"}, nil, "1 1 0+1"},
		{"not wished", []string{"12x22", "7x22"}, free, "0 0 0+1"},
	} {
		b := stem(t, tee(c.asks...), c.change)
		if got := strings.Join(armsOf(b.As), " "); got != c.want || math.Abs(float64(b.OverMM)-5.475) > 0.01 {
			t.Errorf("%s: layers go on into %q at %.3f mm, want %q at 5.475", c.name, got, float64(b.OverMM), c.want)
		}
	}
	// What is pinned stays, and then a layer may have to part.
	pin := func(h *model.Harness) *model.Harness {
		return h.EditBranch(0, func(b *model.Branch) {
			b.Layers = []model.Layer{{Of: []string{"0.1"}, Pinned: []string{"0.1"}}}
		})
	}
	h := pin(calctest.Parse(t, tee("12x22", "7x22")))
	s := calc.Complete(h, calctest.Catalogue(t), nil)
	if o, ok := planning.Propose(s, 0).Best(); !ok || !slices.Contains(o.Layers[0].Of, "0.1") {
		t.Errorf("pinned to the centre: %+v", o.Layers)
	}
}

// A layer that parts costs the weight of a leaver where a lay-up of the same diameter parts none,
// and nothing where none does. Whether one does is found by trying every way to give the layers
// to the arms.
func TestPartedLayersAreFoundAndPriced(t *testing.T) {
	rng := rand.New(rand.NewPCG(19, 6))
	whole, split := 0, 0
	for range 120 {
		n := 7 + rng.IntN(24)
		arms := 2 + rng.IntN(2)
		asks, left := make([]string, arms), n
		counts := make([]int, arms)
		for k := range arms - 1 {
			counts[k] = 1 + rng.IntN(max(1, left-(arms-k)))
			left -= counts[k]
		}
		counts[arms-1] = left
		for k, c := range counts {
			asks[k] = fmt.Sprintf("%dx22", c)
		}
		s := calc.Complete(calctest.Parse(t, tee(asks...)), calctest.Catalogue(t), nil)
		for _, o := range planning.Propose(s, 0).Options {
			if len(o.Spares) > 0 {
				continue
			}
			if got := offer.Broken(s, 0, o.Layers); got != o.Parted {
				t.Errorf("%v: %d layers part, the option says %d", asks, got, o.Parted)
			}
			could := canStayWhole(o.Layers, counts)
			if could != (o.Parted == 0) {
				t.Errorf("%v laid %v: %d layers part, whole is possible: %v", asks, armsOf(o.Layers), o.Parted, could)
			}
			want := o.Plan.Cost + unit.Ratio(0.2*float64(o.Buried))
			if math.Abs(float64(o.Cost-want)) > 1e-9 {
				t.Errorf("%v: costs %v, want %v: of its diameter it is the only one", asks, o.Cost, want)
			}
			if could {
				whole++
			} else {
				split++
			}
		}
	}
	if whole < 10 || split < 10 {
		t.Errorf("%d whole, %d split: the test sees one kind only", whole, split)
	}
}

// canStayWhole tries every arm for every layer.
func canStayWhole(layers []model.Layer, counts []int) bool {
	ways := 1
	for range layers {
		ways *= len(counts)
	}
	for w := range ways {
		sum := make([]int, len(counts))
		for k, v := 0, w; k < len(layers); k, v = k+1, v/len(counts) {
			sum[v%len(counts)] += len(layers[k].Of)
		}
		if slices.Equal(sum, counts) {
			return true
		}
	}
	return false
}

// Two sizes in both arms: the lay-up that parts no layer is proposed, if its diameter is the same.
func TestPartingCountsBetweenLayUps(t *testing.T) {
	s := calc.Complete(calctest.Parse(t, tee("6x20 1x20", "12x22")), calctest.Catalogue(t), nil)
	b := &s.Branches[0]
	if got := armsOf(b.As); slices.ContainsFunc(got, func(a string) bool { return strings.Contains(a, "+") }) {
		t.Errorf("layers go on into %v", got)
	}
	for _, o := range planning.Propose(s, 0).Options {
		if unit.Written(o.Plan.Over) == unit.Written(b.OverMM) && o.Parted > 0 && float64(o.Cost-o.Plan.Cost) < 0.2*float64(o.Parted)-1e-9 {
			t.Errorf("of the same diameter, %d layers part at a cost of %v", o.Parted, o.Cost-o.Plan.Cost)
		}
	}
}
