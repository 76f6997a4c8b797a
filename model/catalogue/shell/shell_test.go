package shell

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"contralay/model/typedtest"
)

// TestTypedTwice compares every figure with the one another hand typed from the notes on the same documents:
// threads and grommets of figures 8 to 10, cut-outs and nuts of figure 11, plugs of a maker's shell drawings.
func TestTypedTwice(t *testing.T) {
	rear, panel, nut, three := typedtest.Must(t, "shell_rear"), typedtest.Must(t, "panel"), typedtest.Must(t, "jam_nut"),
		typedtest.Must(t, "shell_iii")
	cells := 0
	same := func(what string, table typedtest.Table, row, column, got string) {
		t.Helper()
		c, ok := table.Cell(row, column)
		if !ok || c.Text != got {
			t.Errorf("%s: %s, typed %q in %s %s", what, got, c.Text, table.Name, row)
		}
		cells++
	}
	near := func(what string, table typedtest.Table, row, column string, got float64) {
		t.Helper()
		want, ok := table.Number(row, column)
		if !ok || math.Abs(got-want) > 1e-9 {
			t.Errorf("%s: %v, typed %v in %s %s", what, got, want, table.Name, row)
		}
		cells++
	}
	for _, size := range []int{8, 10, 12, 14, 16, 18, 20, 22, 24} {
		s, ok := Of(size)
		if !ok || s.II != size {
			t.Fatalf("shell %d: %v %v", size, s.II, ok)
		}
		three9 := fmt.Sprint(size + 1)
		one := fmt.Sprintf("I shell %d / II shell %d", size+1, size)
		same("thread", rear, one, "rear_thread", s.Rear)
		near("grommet", rear, one, "grommet_max_mm", float64(s.GrommetMM))
		same("metric thread", rear, "III/IV shell "+three9, "rear_thread", s.RearMetric)
		for column, v := range map[string]float64{"a_mm": float64(s.Hole.A), "aa_mm": float64(s.Hole.AA), "b_mm": float64(s.Hole.B),
			"c_mm": float64(s.Hole.C), "e_mm": float64(s.Hole.E), "f_mm": float64(s.Hole.F), "g_mm": float64(s.Hole.G)} {
			near("cut-out", panel, fmt.Sprintf("%d-%d", size, size+1), column, v)
		}
		same("nut", nut, three9, "thread", s.Nut.Thread)
		near("torque", nut, three9, "torque_min_lbf_in", s.Nut.Least)
		near("torque", nut, three9, "torque_max_lbf_in", s.Nut.Most)
		near("plug", three, three9, "plug_max_mm", float64(s.PlugMM))
		// The second document agrees with the first: rear hole and thread.
		near("rear hole", three, three9, "rear_hole_mm", float64(s.Hole.A))
		short, _, _ := strings.Cut(s.RearMetric, ".0-")
		same("thread of the maker", three, three9, "rear_thread", short)
	}
	if cells != 9*16 {
		t.Errorf("%d cells compared, want 16 of each of 9 shells", cells)
	}
}

// TestOf: what is no shell of series II is none, also the odd sizes of the other series.
func TestOf(t *testing.T) {
	for _, size := range []int{-8, 0, 6, 7, 9, 11, 25, 26} {
		if s, ok := Of(size); ok {
			t.Errorf("%d is shell %d", size, s.II)
		}
	}
}

// TestTorque: one pound-force inch is 0.1129848 N·m, as remembered from tables of conversion.
func TestTorque(t *testing.T) {
	s, _ := Of(8)
	least, most := s.Nut.Torque()
	if math.Abs(float64(least)-30*0.1129848) > 1e-5 || math.Abs(float64(most)-36*0.1129848) > 1e-5 {
		t.Errorf("%v to %v N·m", least, most)
	}
}
