package cover_test

import (
	"fmt"
	"math"
	"testing"

	"pgregory.net/rapid"

	"contralay/calc/formula/cover"
	"contralay/model/unit"
)

func near(t *testing.T, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s = %.6g, want %.6g ± %.2g", what, got, want, tol)
	}
}

// Published sizes: supplied bore, recovered bore, recovered wall.
var (
	// source: a maker's data sheet of AS23053/16 elastomeric tubing, size table.
	elastomer64  = cover.Tube{SuppliedMM: 6.35, RecoveredMM: 3.18, WallMM: 0.89}
	elastomer95  = cover.Tube{SuppliedMM: 9.53, RecoveredMM: 4.75, WallMM: 0.99}
	elastomer127 = cover.Tube{SuppliedMM: 12.70, RecoveredMM: 6.35, WallMM: 1.19}
	elastomer190 = cover.Tube{SuppliedMM: 19.05, RecoveredMM: 9.53, WallMM: 1.50}
	elastomer32  = cover.Tube{SuppliedMM: 3.18, RecoveredMM: 1.57, WallMM: 0.71}

	// source: a specification control drawing for flexible 2:1 polyolefin tubing, 1996.
	polyolefin95  = cover.Tube{SuppliedMM: 9.53, RecoveredMM: 4.75, WallMM: 0.64}
	polyolefin127 = cover.Tube{SuppliedMM: 12.70, RecoveredMM: 6.35, WallMM: 0.64}

	// source: a maker's component specification of fluoroelastomer tube, rev 9, size table.
	fluoro127 = cover.Tube{SuppliedMM: 12.70, RecoveredMM: 6.35, WallMM: 0.88}
	fluoro254 = cover.Tube{SuppliedMM: 25.40, RecoveredMM: 12.70, WallMM: 1.24}
)

func TestRecoveredOver(t *testing.T) {
	// Worked out apart from this code from conservation of the wall's cross-section;
	// two or four printed decimals. k 0.95 is a sleeve that shortens by a further 5 %.
	memory := cover.Tube{SuppliedMM: 12.7, RecoveredMM: 6.4, WallMM: 1.22} // wall from memory, not verified
	rows := []struct {
		name       string
		tube       cover.Tube
		d          unit.Millimetre
		k          unit.Ratio
		wall, over float64 // over 0: not worked out
		tol        float64
	}{
		{"polyolefin 12.7, just recovered", polyolefin127, 6.35, 1, 0.64, 7.63, 5e-3},
		{"polyolefin 12.7 on 10", polyolefin127, 10, 1, 0.43, 10.86, 5e-3},
		{"fluoroelastomer 12.7 on 10", fluoro127, 10, 1, 0.60, 11.20, 5e-3},
		{"fluoroelastomer 25.4 on 18", fluoro254, 18, 1, 0.91, 19.83, 5e-3},
		{"elastomer 12.7 with the wall once remembered", memory, 10, 1, 0.86, 11.71, 5e-3},
		{"elastomer 12.7 with the published wall", elastomer127, 10, 1, 0.83, 11.66, 6e-3}, // 11.6559
		{"polyolefin 9.5 on 4.75", polyolefin95, 4.75, 1, 0.6400, 6.0300, 6e-5},
		{"polyolefin 9.5 on 6", polyolefin95, 6, 1, 0.5284, 7.0568, 6e-5},
		{"polyolefin 9.5 on 7", polyolefin95, 7, 1, 0.4623, 7.9245, 6e-5},
		{"polyolefin 9.5 on 8", polyolefin95, 8, 1, 0.4102, 8.8203, 6e-5},
		{"polyolefin 9.5 on 9", polyolefin95, 9, 1, 0.3682, 9.7364, 6e-5},
		{"polyolefin 12.7 on 8", polyolefin127, 8, 1, 0.5248, 9.0496, 6e-5},
		{"polyolefin 12.7 on 10, four decimals", polyolefin127, 10, 1, 0.4290, 10.8579, 6e-5},
		{"polyolefin 12.7 on 11.5", polyolefin127, 11.5, 1, 0.3767, 12.2533, 6e-5},
		{"shortened, on 4.75", polyolefin95, 4.75, 0.95, 0.6700, 0, 6e-5},
		{"shortened, on 6", polyolefin95, 6, 0.95, 0.5540, 0, 6e-5},
		{"shortened, on 7", polyolefin95, 7, 0.95, 0.4851, 0, 6e-5},
		{"shortened, on 8", polyolefin95, 8, 0.95, 0.4307, 0, 6e-5},
		{"shortened, on 9", polyolefin95, 9, 0.95, 0.3868, 0, 6e-5},
		{"shortened 12.7, on 8", polyolefin127, 8, 0.95, 0.5507, 0, 6e-5},
		{"shortened 12.7, on 10", polyolefin127, 10, 0.95, 0.4506, 0, 6e-5},
		{"shortened 12.7, on 11.5", polyolefin127, 11.5, 0.95, 0.3959, 0, 6e-5},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			over, ok := cover.RecoveredOverAt(r.tube, r.d, r.k)
			if !ok {
				t.Fatal("no answer")
			}
			near(t, "wall", float64(over-r.d)/2, r.wall, r.tol)
			if r.over != 0 {
				near(t, "over", float64(over), r.over, r.tol)
			}
			if wall, ok := cover.Wall(r.tube, r.d); r.k == 1 && (!ok || math.Abs(float64(wall-(over-r.d)/2)) > 1e-12) {
				t.Errorf("Wall = %g, %v; over says %g", wall, ok, (over-r.d)/2)
			}
		})
	}
}

func TestRecoveredOverRefuses(t *testing.T) {
	noWall := elastomer95
	noWall.WallMM = 0
	upsideDown := cover.Tube{SuppliedMM: 4.75, RecoveredMM: 9.53, WallMM: 0.99}
	for name, r := range map[string]struct {
		tube cover.Tube
		d    unit.Millimetre
		k    unit.Ratio
	}{
		"loose":                {elastomer95, 4.74, 1},
		"does not go on":       {elastomer95, 9.54, 1},
		"wall not known":       {noWall, 7, 1},
		"recovers wider":       {upsideDown, 7, 1},
		"no length left":       {elastomer95, 7, 0},
		"nothing in it":        {elastomer95, unit.Millimetre(math.NaN()), 1},
		"length not a number":  {elastomer95, 7, unit.Ratio(math.NaN())},
		"a tube without bores": {cover.Tube{WallMM: 1}, 7, 1},
	} {
		if over, ok := cover.RecoveredOverAt(r.tube, r.d, r.k); ok || over != 0 {
			t.Errorf("%s: %g", name, over)
		}
	}
}

func TestMass(t *testing.T) {
	tube := elastomer95
	tube.Density = 1.3
	// By hand: π·0.99·(4.75 + 0.99)·1.3 = 23.208
	m, ok := cover.Mass(tube)
	if !ok {
		t.Fatal("no answer")
	}
	near(t, "g/m", float64(m), 23.208, 1e-3)
	if m, ok := cover.Mass(elastomer95); ok || m != 0 {
		t.Errorf("without a density: %g", m)
	}
}

// tubes draws a 2:1 sleeve with a plausible wall.
func tubes(t *rapid.T) cover.Tube {
	r := rapid.Float64Range(0.38, 40).Draw(t, "recovered")
	return cover.Tube{
		SuppliedMM:  unit.Millimetre(r * rapid.Float64Range(1.4, 3).Draw(t, "ratio")),
		RecoveredMM: unit.Millimetre(r),
		WallMM:      unit.Millimetre(rapid.Float64Range(0.1, 4).Draw(t, "wall")),
	}
}

func TestRecoveredOverAlwaysHolds(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		tube := tubes(t)
		between := func(name string) unit.Millimetre {
			return tube.RecoveredMM + unit.Millimetre(rapid.Float64Range(0, 1).Draw(t, name))*(tube.SuppliedMM-tube.RecoveredMM)
		}
		a, b := between("a"), between("b")
		if a > b {
			a, b = b, a
		}
		overA, okA := cover.RecoveredOver(tube, a)
		overB, okB := cover.RecoveredOver(tube, b)
		if !okA || !okB {
			t.Fatalf("no answer on %g or %g in %+v", a, b, tube)
		}
		if overA < a {
			t.Fatalf("on %g only %g over", a, overA)
		}
		if overB < overA-1e-12 || overB-b > overA-a+1e-12 {
			t.Fatalf("%g over on %g, %g over on %g: thicker on less, or a wall that grows", overA, a, overB, b)
		}
		// The wall's cross-section is what it was: π/4·(over² − D²) = π·w·(R + w).
		area := float64(overA-a) * float64(overA+a) / 4
		want := float64(tube.WallMM * (tube.RecoveredMM + tube.WallMM))
		if math.Abs(area-want) > 1e-9*want {
			t.Fatalf("cross-section %g π, supplied %g π", area, want)
		}
		twice := cover.Tube{SuppliedMM: 2 * tube.SuppliedMM, RecoveredMM: 2 * tube.RecoveredMM, WallMM: 2 * tube.WallMM}
		if over2, ok := cover.RecoveredOver(twice, 2*a); !ok || math.Abs(float64(over2-2*overA)) > 1e-9 {
			t.Fatalf("all twice as large: %g over, want %g", over2, 2*overA)
		}
	})
}

func ExampleRecoveredOver() {
	tube := cover.Tube{SuppliedMM: 12.70, RecoveredMM: 6.35, WallMM: 1.19}
	over, _ := cover.RecoveredOver(tube, 10)
	wall, _ := cover.Wall(tube, 10)
	fmt.Printf("over %.2f, wall %.2f mm\n", over, wall)
	// Output: over 11.66, wall 0.83 mm
}
