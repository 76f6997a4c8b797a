package calc_test

import (
	"fmt"
	"testing"

	"pgregory.net/rapid"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/phase/current"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// bundleOf is a laid bundle for the properties of limits: its wires as "SIZE AMPS", its
// layers as the places of its wires.
type bundleOf struct {
	wires   []string
	layers  [][]int
	ambient float64
	height  unit.Metre
	sheath  string
}

func someBundle(t *rapid.T) bundleOf {
	b := bundleOf{ambient: rapid.SampledFrom([]float64{-20, 25, 69, 70, 71, 95, 120}).Draw(t, "ambient"),
		height: unit.Metre(rapid.SampledFrom([]float64{0, 0, 1500, 4000}).Draw(t, "height")),
		sheath: rapid.SampledFrom([]string{"", "AS23053/16 6.4", "AS23053/5 12.7"}).Draw(t, "sheath")}
	sizes := []string{rapid.SampledFrom([]string{"26", "24", "22", "20", "16"}).Draw(t, "size")}
	if rapid.Bool().Draw(t, "mixed") {
		sizes = append(sizes, rapid.SampledFrom([]string{"26", "22", "20"}).Draw(t, "second"))
	}
	at := 0
	for _, n := range rapid.SampledFrom([][]int{{1}, {1, 6}, {1, 5}, {1, 6, 12}, {1, 6, 11}, {3, 9}, {1, 6, 12, 15},
		{1, 6, 12, 17}}).Draw(t, "layers") {
		var layer []int
		for range n {
			layer = append(layer, at)
			b.wires = append(b.wires, fmt.Sprintf("%s %.2f", rapid.SampledFrom(sizes).Draw(t, "of"),
				rapid.SampledFrom([]float64{0, 0, 0, 0.2, 1, 2.5, 4, 7}).Draw(t, "amps")))
			at++
		}
		b.layers = append(b.layers, layer)
	}
	return b
}

func (b bundleOf) built(t testing.TB) *sheet.Sheet {
	s := calctest.Carrying(t, b.ambient, "", b.wires, b.layers, "make = \"laid\"\n")
	h := *s.H
	h.Rules.AltitudeM = model.Some(b.height)
	if b.sheath != "" {
		h = *h.EditBranch(0, func(br *model.Branch) {
			br.Covers = []model.Cover{{What: model.CoverSheath, Part: model.Some(b.sheath)}}
		})
	}
	return calc.Complete(&h, s.Cat, nil)
}

// reading is how exactly a limit by heat is read between the states that are worked out: of
// the heat that the wire may make alone.
const reading = 0.005

// rises reports whether a limit is above what it was by more than that.
func rises(was, is, alone unit.Ampere) bool { return is*is > was*was+reading*alone*alone }

// aloneOf is what a wire may carry alone in the air.
func aloneOf(w sheet.Wire) unit.Ampere {
	for _, l := range w.Limits {
		if l.Where == current.AloneIn("T1") {
			return l.Amps
		}
	}
	return 0
}

// Limits fall or stay with warmer air, more height and more load in any wire; and none is
// above that of the wire alone.
func TestLimitsNeverRise(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		b := someBundle(r)
		s := b.built(t)
		compare := func(what string, c bundleOf) {
			after := c.built(t)
			for k := range s.Wires {
				was, is := s.Wires[k].Bound, after.Wires[k].Bound
				if was.Set && (!is.Set || rises(was.V.Amps, is.V.Amps, aloneOf(s.Wires[k]))) {
					r.Errorf("%s: wire %d (%s) from %.4f A (%s) to %.4f A (%s)", what, k, b.wires[k], float64(was.V.Amps), was.V.Where,
						float64(is.V.Amps), is.V.Where)
				}
			}
		}
		warmer, higher, more := b, b, b
		warmer.ambient += rapid.SampledFrom([]float64{0.5, 1, 5, 20}).Draw(r, "warmer")
		higher.height += unit.Metre(rapid.SampledFrom([]float64{100, 1000, 3000}).Draw(r, "higher"))
		k := rapid.IntRange(0, len(b.wires)-1).Draw(r, "more in")
		more.wires = append([]string{}, b.wires...)
		var size string
		var amps float64
		fmt.Sscanf(b.wires[k], "%s %f", &size, &amps)
		more.wires[k] = fmt.Sprintf("%s %.2f", size, amps+rapid.SampledFrom([]float64{0.1, 1, 3}).Draw(r, "more"))
		alone := b
		alone.wires, alone.layers, alone.sheath = []string{size + " 0.0"}, nil, ""
		switch rapid.IntRange(0, 3).Draw(r, "change") {
		case 0:
			compare("warmer", warmer)
		case 1:
			compare("higher", higher)
		case 2:
			compare("more load in "+fmt.Sprint(k), more)
		case 3:
			if lone := alone.built(t).Wires[0].Bound; s.Wires[k].Bound.V.Amps > lone.V.Amps+1e-9 {
				r.Errorf("wire %d (%s) may carry %.4f A (%s), alone %.4f A (%s)", k, b.wires[k], float64(s.Wires[k].Bound.V.Amps),
					s.Wires[k].Bound.V.Where, float64(lone.V.Amps), lone.V.Where)
			}
		}
	})
}

// Idle wires laid outside the same lay-up lower limits or leave them; where one rises, the
// heat decided it, and by finite volumes too the wire gets no warmer, within the 5 % of its
// rise by which the balance may be off.
func TestIdleWire(t *testing.T) {
	solved := 0
	rapid.Check(t, func(r *rapid.T) {
		b := someBundle(r)
		if len(b.layers) < 2 || len(b.wires) > 7 {
			return // small ones: a solution of a larger one takes a second
		}
		b.height, b.sheath = 0, "AS23053/16 6.4"
		with := b
		var size string
		fmt.Sscanf(b.wires[0], "%s", &size)
		with.wires = append([]string{}, b.wires...)
		var outer []int
		for range rapid.IntRange(1, 9).Draw(r, "idle") {
			outer, with.wires = append(outer, len(with.wires)), append(with.wires, size+" 0.00")
		}
		with.layers = append(append([][]int{}, b.layers...), outer)
		s, more := b.built(t), with.built(t)
		for k := range s.Wires {
			was, is := s.Wires[k].Bound.V, more.Wires[k].Bound.V
			if !rises(was.Amps, is.Amps, aloneOf(s.Wires[k])) {
				continue
			}
			if was.Where != "heat in T1" {
				r.Errorf("wire %d from %.4f A (%s) to %.4f A (%s) by idle wires", k, float64(was.Amps), was.Where, float64(is.Amps),
					is.Where)
				continue
			}
			solved++
			if a, c := calctest.Volumes(t, s, 0, 0.1, k, was.Amps)[k], calctest.Volumes(t, more, 0, 0.1, k, was.Amps)[k]; c > a+
				0.05*(a-s.Branches[0].Ambient) {
				r.Errorf("wire %d may carry more by idle wires, and gets warmer by finite volumes: %.1f, then %.1f", k, float64(a),
					float64(c))
			}
			break // one of a bundle
		}
	})
	t.Logf("%d rose and were solved by finite volumes", solved)
}
