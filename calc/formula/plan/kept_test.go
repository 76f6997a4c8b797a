package plan

import (
	"encoding/json"
	"fmt"
	"math"
	"math/rand/v2"
	"os"
	"strings"
	"testing"

	"contralay/calc/formula/lay"
	"contralay/model/shorttest"
)

// A kept question is one of 25 to 150 components with the best lay-up that any method has found for
// it, and a bound that holds for every lay-up. `go test -tags oracle -run Oracle -update` writes them.
type kept struct {
	Sizes   []keptSize  `json:"sizes"`
	Spares  int         `json:"spares"`
	Centres Centres     `json:"centres"`
	Cost    float64     `json:"cost"`
	Least   float64     `json:"least"` // no lay-up is cheaper
	By      string      `json:"by"`    // who found it: "annealing" or "planner"
	Layers  []keptLayer `json:"layers"`
}

type keptSize struct {
	MM float64 `json:"mm"`
	N  int     `json:"n"`
}

// keptLayer counts by size, in the order of the question; a built-up centre says for how many.
type keptLayer struct {
	N       []int `json:"n"`
	Fillers int   `json:"fillers"`
	Built   int   `json:"built,omitempty"`
}

const keptFile = "testdata/kept.json"

func keptQuestions(t testing.TB) []kept {
	t.Helper()
	text, err := os.ReadFile(keptFile)
	if err != nil {
		t.Fatal(err)
	}
	var out []kept
	if err := json.Unmarshal(text, &out); err != nil {
		t.Fatal(err)
	}
	return out
}

func (k kept) ask() Ask {
	a := Ask{Spares: k.Spares, Centres: k.Centres, Rules: shop}
	for _, z := range k.Sizes {
		a.Sizes = append(a.Sizes, Size{D: mm(z.MM), N: z.N})
	}
	return a
}

func (k kept) String() string {
	var parts []string
	n := 0
	for _, z := range k.Sizes {
		parts, n = append(parts, fmt.Sprintf("%dx%g", z.N, z.MM)), n+z.N
	}
	return fmt.Sprintf("%d of %d: %s, %d spares, centres %d", n, len(k.Sizes), strings.Join(parts, " "), k.Spares, k.Centres)
}

// cost lays a kept lay-up layer by layer and adds it up, by the rule and not by the planner.
func (k kept) cost() (float64, error) {
	total, extra, used := 0.0, 0, make([]int, len(k.Sizes))
	var bed lay.Bed
	fillers, most := 0, 0
	for at, l := range k.Layers {
		var ds []mm
		lo, hi := math.Inf(1), 0.0
		for i, n := range l.N {
			used[i] += n
			for range n {
				ds = append(ds, mm(k.Sizes[i].MM))
				lo, hi = math.Min(lo, k.Sizes[i].MM), math.Max(hi, k.Sizes[i].MM)
			}
		}
		if hi > 1.3*lo {
			total += hi - lo
		} else {
			total += 0.3 * (hi - lo)
		}
		if at == 0 {
			g := lay.Centre(ds)
			bed = lay.Bed{Crown: g.Over, Tape: g.Tape}
			if !lay.CanBeCentre(ds) || lo != hi && k.Centres == EqualCentres {
				return 0, fmt.Errorf("%v is no centre", l.N)
			}
			if g.Rod > 0 {
				fillers, total = fillers+1, total+0.1*float64(g.Rod)
			}
			if l.Built > 0 {
				if len(ds) != 1 || k.Centres != BuiltCentres || l.Built != 7 && l.Built != 8 {
					return 0, fmt.Errorf("%v cannot be built up for %d", l.N, l.Built)
				}
				up := lay.BuiltUp(l.Built, ds[0], 12)
				bed = lay.Bed{Crown: up, Tape: up}
				fillers, total = fillers+1, total+0.1*float64(up-ds[0])
			}
			continue
		}
		for range l.Fillers {
			ds = append(ds, mm(lo))
		}
		fillers, total = fillers+l.Fillers, total+0.1*lo*float64(l.Fillers)
		ring, limit := lay.LayZigZag(ds, bed, lay.Laying{Ratio: 12}), 0.10
		if at == len(k.Layers)-1 {
			limit = 0.15
		}
		if float64(ring.Lift) > 0.05+1e-9 || float64(ring.Gap) > limit+1e-9 {
			return 0, fmt.Errorf("layer %d: lift %.4f, gap %.4f", at, ring.Lift, ring.Gap)
		}
		bed = lay.Bed{Crown: ring.Over, Tape: ring.Tape}
	}
	for i, z := range k.Sizes {
		if extra, most = used[i]-z.N, most+used[i]; extra < 0 {
			return 0, fmt.Errorf("%d of %g mm, need %d", used[i], z.MM, z.N)
		}
		total -= 0.15 * z.MM * float64(extra)
	}
	if fillers > max(most, 6) {
		return 0, fmt.Errorf("%d fillers", fillers)
	}
	return total + float64(bed.Crown), nil
}

// What is kept is a lay-up that keeps the rule and costs what is said, and no bound is above it.
func TestKeptLayUps(t *testing.T) {
	all := keptQuestions(t)
	if len(all) != 60 {
		t.Fatalf("%d questions", len(all))
	}
	for _, k := range all {
		if cost, err := k.cost(); err != nil || math.Abs(cost-k.Cost) > 1e-6 {
			t.Errorf("%v costs %.6f, laid again %.6f: %v", k, k.Cost, cost, err)
		}
		if k.Least > k.Cost {
			t.Errorf("%v costs %.3f, and no lay-up costs less than %.3f", k, k.Cost, k.Least)
		}
	}
}

// The answer at once is within 1 % of the best that any method has found, for each of the sixty.
const keptWithin = 0.01

func TestAnswerAtOnce(t *testing.T) {
	third := rand.IntN(3)
	for n, k := range keptQuestions(t) {
		if n%3 != third && !shorttest.Long() {
			continue
		}
		q := Begin(k.ask())
		q.AtOnce()
		p := q.Plans()[0]
		if dearer := float64(p.Cost)/k.Cost - 1; dearer > keptWithin || p.Relaxed != Keeps {
			t.Errorf("%.2f %% dearer, relaxed %d: %v", 100*dearer, p.Relaxed, k)
		}
		if float64(p.Least) > k.Cost+1e-6 {
			t.Errorf("a bound of %.4f, and a lay-up costs %.4f: %v", p.Least, k.Cost, k)
		}
		if over := q.Spent() - AtOnce; over > AtOnce/10 {
			t.Errorf("%d more than an answer at once takes: %v", over, k)
		}
	}
}
