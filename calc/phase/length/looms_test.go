package length_test

import (
	"fmt"
	"math"
	"math/rand"
	"slices"
	"strings"
	"testing"

	"contralay/calc/calctest"
)

// A loom is a trunk from P over breakouts J0, J1 … in a row, with a leg from each to D0, D1 …; the last
// leg goes on from the last breakout.
type loom struct {
	text  strings.Builder
	ratio float64
	// by branch: T0 … from P along the row, L0 … the legs
	length map[string]float64
	legs   int
	load   map[string][]string // the wires in a branch
	zone   float64
	step   float64
	first  float64
	second float64
	loop   map[string]float64
	want   map[string]want
}

type want struct{ finished, cut float64 }

// through is the branches from P to breakout j; J-1 is P itself.
func through(j int) (out []string) {
	for k := range j + 1 {
		out = append(out, fmt.Sprint("T", k))
	}
	return out
}

// ways are how often a diameter goes into the pitch circle and the outside of a ring of equal circles
// that touch: by geometry, a ring of n has its centres on d/sin(π/n).
func ways(n int) (pitch, over float64) {
	if n == 1 {
		return 0, 1
	}
	if n == 6 { // one in the middle of five, with room between them
		return 2, 3
	}
	pitch = 1 / math.Sin(math.Pi/float64(n))
	return pitch, pitch + 1
}

// along is how long a wire is in a branch, by rules 3, 4 and 6 of the design: two to six equal wires of
// 0.94 mm are twisted or laid round; one runs straight; in the zone at a breakout, and one diameter before
// it, everything runs straight. A wire in the middle of five runs straight too.
func (l *loom) along(branch, wire string) float64 {
	n := len(l.load[branch])
	length := l.length[branch]
	pitch, over := ways(n)
	straight := l.zone + over*0.94
	ends := 1 // of a leg, and of the trunk at P
	if branch[0] == 'T' && branch != "T0" {
		ends = 2
	}
	laid := length - float64(ends)*straight
	if n == 1 || laid < 0 || n == 6 && l.load[branch][0] == wire {
		return length
	}
	k := math.Sqrt(1 + math.Pow(math.Pi*pitch/(l.ratio*over), 2))
	return laid*k + length - laid
}

// loomOf draws a loom; false where a branch would hold more than six.
func loomOf(r *rand.Rand) (*loom, bool) {
	l := &loom{ratio: []float64{10, 12, 14.5}[r.Intn(3)], length: map[string]float64{}, legs: 1 + r.Intn(3), load: map[string][]string{},
		zone: []float64{15, 25, 40}[r.Intn(3)], step: []float64{1, 5, 10}[r.Intn(3)], first: float64(60 + r.Intn(80)),
		second: float64(40 + r.Intn(80)), loop: map[string]float64{}, want: map[string]want{}}
	ends := map[string]string{}
	type wire struct {
		id, text             string
		path                 []string
		loops, tails, folded float64
	}
	var wires []wire
	fmt.Fprintf(&l.text, "format = 1\n[rules]\nlay_ratio = %v\nzone_mm = %v\ncut_step_mm = %v\ntail_first_mm = %v\ntail_second_mm = %v\n",
		l.ratio, l.zone, l.step, l.first, l.second)
	places := []string{"P"}
	for k := range l.legs {
		places = append(places, fmt.Sprint("D", k))
		fmt.Fprintf(&l.text, "[[breakout]]\nid = \"J%d\"\n", k)
		from := "P"
		if k > 0 {
			from = fmt.Sprint("J", k-1)
		}
		ends[fmt.Sprint("T", k)] = fmt.Sprintf("from = %q\nto = \"J%d\"", from, k)
		leg := []string{fmt.Sprint("J", k), fmt.Sprint("D", k)}
		if r.Intn(2) == 0 {
			slices.Reverse(leg)
		}
		ends[fmt.Sprint("L", k)] = fmt.Sprintf("from = %q\nto = %q", leg[0], leg[1])
	}
	for _, p := range places {
		fmt.Fprintf(&l.text, "[[termination]]\nid = %q\n", p)
		l.loop[p] = 8 // where no insert is given
		if r.Intn(2) == 0 {
			l.loop[p] = float64(r.Intn(40))
			fmt.Fprintf(&l.text, "loop_mm = %v\n", l.loop[p])
		}
	}
	add := func(w wire) {
		w.id = fmt.Sprint("w", len(wires))
		w.text = strings.ReplaceAll(w.text, "#", fmt.Sprint(len(wires)))
		for _, b := range w.path {
			l.load[b] = append(l.load[b], w.id)
		}
		wires = append(wires, w)
	}
	for k := range l.legs {
		for range 1 + r.Intn(4) {
			path := append(through(k), fmt.Sprint("L", k))
			leg := []string{"P:#", fmt.Sprintf("D%d:#", k)}
			if r.Intn(2) == 0 {
				slices.Reverse(leg)
			}
			add(wire{text: fmt.Sprintf("from = %q\nto = %q\n", leg[0], leg[1]), path: path,
				loops: l.loop["P"] + l.loop[fmt.Sprint("D", k)], tails: l.first + l.second})
		}
		// A spare that ends in the loom, over one branch or several: nothing is cut off where it is folded.
		if fold := float64(40 + r.Intn(60)); r.Intn(3) == 0 {
			end, tail := "from", l.first
			if r.Intn(2) == 0 {
				end, tail = "to", l.second
			}
			add(wire{text: fmt.Sprintf("%s = \"P:#\"\ncapped_at = \"J%d\"\nfold_mm = %v\nrole = \"spare\"\n", end, k, fold),
				path: through(k), loops: l.loop["P"], folded: fold, tails: tail})
		}
		// A splice at the breakout: no loop there.
		if r.Intn(3) == 0 {
			fmt.Fprintf(&l.text, "[[splice]]\nid = \"S%d\"\nat = \"J%d\"\n", k, k)
			add(wire{text: fmt.Sprintf("from = \"P:#\"\nto = \"S%d\"\n", k), path: through(k), loops: l.loop["P"],
				tails: l.first + l.second})
			for range 2 {
				add(wire{text: fmt.Sprintf("from = \"S%d\"\nto = \"D%d:#\"\n", k, k), path: []string{fmt.Sprint("L", k)},
					loops: l.loop[fmt.Sprint("D", k)], tails: l.first + l.second})
			}
		}
	}
	for _, in := range l.load {
		if len(in) > 6 {
			return nil, false
		}
	}
	for _, w := range wires {
		fmt.Fprintf(&l.text, "[[wire]]\nid = %q\n%sspec = \"AS22759/32\"\nsize = \"24\"\n", w.id, w.text)
	}
	for k := range l.legs {
		for _, b := range []string{fmt.Sprint("T", k), fmt.Sprint("L", k)} {
			// Five and six are twisted only from 75 mm and two lays on: long enough for either.
			l.length[b] = float64(2000+r.Intn(9000)) / 10
			fmt.Fprintf(&l.text, "[[branch]]\nid = %q\n%s\nlength_mm = %v\n", b, ends[b], l.length[b])
			layers := [][]string{l.load[b]}
			if len(l.load[b]) == 6 {
				layers = [][]string{l.load[b][:1], l.load[b][1:]}
			}
			for _, in := range layers {
				if len(in) > 0 {
					fmt.Fprintf(&l.text, "  [[branch.layer]]\n  of = [\"%s\"]\n", strings.Join(in, "\", \""))
				}
			}
		}
	}
	for _, w := range wires {
		finished := w.loops + w.folded
		for _, b := range w.path {
			finished += l.along(b, w.id)
		}
		l.want[w.id] = want{finished, math.Ceil((finished+w.tails)/l.step) * l.step}
	}
	return l, true
}

// TestCutLengthOfAnyLoom holds the cut length of every wire of drawn looms to a second one, written from
// section 6 of the design alone (rules 3, 4 and 6): legs, spares capped over one branch or several, splices.
func TestCutLengthOfAnyLoom(t *testing.T) {
	r := rand.New(rand.NewSource(7))
	looms, wires, capped := 0, 0, 0
	for looms < 150 {
		l, ok := loomOf(r)
		if !ok {
			continue
		}
		looms++
		s := calctest.Built(t, l.text.String())
		for k, w := range s.H.Wires {
			wires++
			if w.CappedAt.Set && len(s.Wires[k].Path) > 1 {
				capped++
			}
			want, got := l.want[w.ID], s.Wires[k]
			if math.Abs(float64(got.Finished)-want.finished) > 1e-6 || math.Abs(float64(got.Cut)-want.cut) > 1e-6 {
				t.Fatalf("%s: finished %.3f, cut %.1f; want %.3f, %.1f\n%s", w.ID, got.Finished, got.Cut, want.finished, want.cut,
					l.text.String())
			}
		}
	}
	if wires < 600 || capped < 20 {
		t.Errorf("only %d wires, %d spares over several branches", wires, capped)
	}
}

// TestCutLengthOfAPair: the wires of a unit of two, by the design's rule 6: the lay is 12 of its bare diameter of
// two wires, their centres a wire apart; each end gets 50 mm more to open the twist. Two branches, in which the
// unit lies alone and straight; loops of 8 mm where no insert is given.
func TestCutLengthOfAPair(t *testing.T) {
	text := "format = 1\n[[breakout]]\nid = \"J\"\n[[termination]]\nid = \"P\"\n[[termination]]\nid = \"D\"\n"
	for k := range 2 {
		text += fmt.Sprintf("[[wire]]\nid = \"w%d\"\nfrom = \"P:%d\"\nto = \"D:%d\"\nspec = \"AS22759/32\"\nsize = \"22\"\n", k, k, k)
	}
	s := calctest.Built(t, text+"[[unit]]\nid = \"U\"\nwires = [\"w0\", \"w1\"]\nbuild = \"pair\"\n"+
		"[[branch]]\nid = \"T\"\nfrom = \"P\"\nto = \"J\"\nlength_mm = 2500\n  [[branch.layer]]\n  of = [\"U\"]\n"+
		"[[branch]]\nid = \"L\"\nfrom = \"J\"\nto = \"D\"\nlength_mm = 1500\n  [[branch.layer]]\n  of = [\"U\"]\n")
	finished := 4000*math.Sqrt(1+math.Pow(math.Pi/24, 2)) + 16 // 4034.1 + 16
	for k := range 2 {
		calctest.Near(t, "finished", float64(s.Wires[k].Finished), finished, 1e-6)
		calctest.Near(t, "cut", float64(s.Wires[k].Cut), 4330, 1e-9) // 4050.1 + 100 + 75 + 2·50 = 4325.1
	}
}
