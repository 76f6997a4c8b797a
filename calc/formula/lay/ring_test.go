package lay

import (
	"math"
	"testing"

	"contralay/model/unit"
)

type mm = unit.Millimetre

func same(n int, d mm) []mm {
	out := make([]mm, n)
	for i := range out {
		out[i] = d
	}
	return out
}

type equalRow struct {
	n    int
	lift unit.Ratio
	over mm
}

// Counts, lifts and diameters of equal wires of diameter 1 at lift_max 0.05, by
// lay ratio and centre. Derived for this rule, not published; reproduced
// by two further programs from its text alone; its lifts over a centre of one
// agree with the exact radii of two helices (TestTouchRadius).
var equalTable = []struct {
	ratio unit.Ratio
	core  int
	rows  [4]equalRow
}{
	{8, 1, [4]equalRow{{6, 0.0258, 3.052}, {12, 0.0391, 5.052}, {18, 0.0312, 7.068}, {24, 0.0356, 9.108}}},
	{8, 2, [4]equalRow{{8, 0.0266, 4.000}, {14, 0, 6.000}, {20, 0, 8.000}, {26, 0, 10.000}}},
	{8, 3, [4]equalRow{{9, 0.0364, 4.155}, {15, 0, 6.155}, {21, 0, 8.155}, {27, 0, 10.155}}},
	{8, 4, [4]equalRow{{10, 0.0457, 4.414}, {16, 0.0145, 6.414}, {22, 0.0240, 8.428}, {28, 0.0345, 10.471}}},
	{8, 5, [4]equalRow{{10, 0, 4.701}, {17, 0.0439, 6.729}, {23, 0.0360, 8.768}, {29, 0.0343, 10.812}}},
	{10, 1, [4]equalRow{{6, 0.0165, 3.033}, {12, 0.0158, 5.033}, {18, 0, 7.033}, {24, 0, 9.033}}},
	{10, 2, [4]equalRow{{8, 0.0124, 4.000}, {15, 0.0196, 6.000}, {21, 0, 8.000}, {27, 0, 10.000}}},
	{10, 3, [4]equalRow{{9, 0.0170, 4.155}, {15, 0, 6.155}, {21, 0, 8.155}, {27, 0, 10.155}}},
	{10, 4, [4]equalRow{{10, 0.0217, 4.414}, {16, 0, 6.414}, {22, 0, 8.414}, {28, 0, 10.414}}},
	{10, 5, [4]equalRow{{11, 0.0268, 4.701}, {17, 0, 6.701}, {23, 0, 8.701}, {29, 0, 10.701}}},
	{12, 1, [4]equalRow{{6, 0.0114, 3.023}, {12, 0.0036, 5.023}, {18, 0, 7.023}, {24, 0, 9.023}}},
	{12, 2, [4]equalRow{{8, 0.0049, 4.000}, {15, 0, 6.000}, {21, 0, 8.000}, {27, 0, 10.000}}},
	{12, 3, [4]equalRow{{9, 0.0069, 4.155}, {15, 0, 6.155}, {22, 0.0446, 8.206}, {28, 0, 10.206}}},
	{12, 4, [4]equalRow{{10, 0.0091, 4.414}, {16, 0, 6.414}, {22, 0, 8.414}, {28, 0, 10.414}}},
	{12, 5, [4]equalRow{{11, 0.0118, 4.701}, {17, 0, 6.701}, {23, 0, 8.701}, {29, 0, 10.701}}},
	{16, 1, [4]equalRow{{6, 0.0064, 3.013}, {12, 0, 5.013}, {18, 0, 7.013}, {24, 0, 9.013}}},
	{16, 2, [4]equalRow{{8, 0, 4.000}, {15, 0, 6.000}, {21, 0, 8.000}, {28, 0.0472, 10.068}}},
	{16, 3, [4]equalRow{{9, 0, 4.155}, {15, 0, 6.155}, {22, 0.0051, 8.155}, {28, 0, 10.155}}},
	{16, 4, [4]equalRow{{10, 0, 4.414}, {16, 0, 6.414}, {23, 0.0358, 8.451}, {29, 0, 10.451}}},
	{16, 5, [4]equalRow{{11, 0, 4.701}, {17, 0, 6.701}, {23, 0, 8.701}, {30, 0.0191, 10.716}}},
}

func TestEqualLayers(t *testing.T) {
	const liftMax = 0.05
	for _, row := range equalTable {
		g := Centre(same(row.core, 1))
		bed := Bed{g.Over, g.Tape}
		how := Laying{Ratio: row.ratio}
		for k, want := range row.rows {
			if n := Room(nil, 1, bed, how, liftMax); n != want.n {
				t.Fatalf("ratio %v core %d layer %d takes %d, want %d", row.ratio, row.core, k+1, n, want.n)
			}
			r := Lay(same(want.n, 1), bed, how)
			// Half a unit of the last printed digit.
			if math.Abs(float64(r.Lift-want.lift)) > 0.5e-4+1e-9 || math.Abs(float64(r.Over-want.over)) > 0.5e-3+1e-9 {
				t.Errorf("ratio %v core %d layer %d: lift %.4f over %.3f, want %.4f %.3f", row.ratio, row.core, k+1, r.Lift, r.Over,
					want.lift, want.over)
			}
			bed = Bed{r.Over, r.Tape}
		}
	}
}

func TestExampleTrunk(t *testing.T) {
	d := append(same(9, 1.09), 1.27)
	bed := Bed{2.9, 2.9}
	how := Laying{Ratio: 12}
	order := inZigZag(d)
	r := Lay(order, bed, how)
	t.Logf("%+v", r)
	if math.Abs(float64(r.Over)-5.440) > 5e-4 || math.Abs(float64(r.Gap)-0.094) > 5e-4 {
		t.Errorf("over %.4f gap %.4f, want 5.440 0.094", r.Over, r.Gap)
	}
	if n := Room(d, 1.09, bed, how, 0.05); n != 1 {
		t.Errorf("room %d, want 1", n)
	}
}
