package cover_test

import (
	"math"
	"math/rand"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"contralay/calc/formula/cover"
)

// cheapest tries every way to give rows columns of their own, and is the other method that
// Assign is checked against.
func cheapest(cost [][]cover.Cost, row int, free []int) cover.Cost {
	if row == len(cost) {
		return cover.Cost{}
	}
	best := cover.Cost{math.Inf(1)}
	for n, c := range free {
		rest := cheapest(cost, row+1, slices.Delete(slices.Clone(free), n, n+1))
		for k := range rest {
			rest[k] += cost[row][c][k]
		}
		if slices.Compare(rest[:], best[:]) < 0 {
			best = rest
		}
	}
	return best
}

// assigned fails a test unless Assign gives as many pairs as there can be, no column twice, at what the cheapest way of all costs.
func assigned(t interface {
	Helper()
	Fatalf(string, ...any)
}, cost [][]cover.Cost, columns int) {
	t.Helper()
	rows, got := len(cost), cover.Assign(cost)
	var sum cover.Cost
	given, seen := 0, map[int]bool{}
	for r, c := range got {
		if c < 0 {
			continue
		}
		if seen[c] {
			t.Fatalf("column %d is given twice: %v", c, got)
		}
		given, seen[c] = given+1, true
		for k := range sum {
			sum[k] += cost[r][c][k]
		}
	}
	if given != min(rows, columns) {
		t.Fatalf("%d of %d rows have one of %d columns", given, rows, columns)
	}
	wide := cost
	if rows > columns { // the same turned, for the other method
		wide = make([][]cover.Cost, columns)
		for c := range wide {
			for r := range cost {
				wide[c] = append(wide[c], cost[r][c])
			}
		}
	}
	all := make([]int, max(rows, columns))
	for c := range all {
		all[c] = c
	}
	if want := cheapest(wide, 0, all); sum != want {
		t.Fatalf("%v costs %v, the cheapest way %v", got, sum, want)
	}
}

func TestAssignIsTheCheapest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		rows, columns := rapid.IntRange(1, 5).Draw(t, "rows"), rapid.IntRange(1, 6).Draw(t, "columns")
		assigned(t, costs(rows, columns, func() float64 { return float64(rapid.IntRange(0, 3).Draw(t, "cost")) }), columns)
	})
}

// costs are whole numbers, so that sums are exact.
func costs(rows, columns int, draw func() float64) [][]cover.Cost {
	out := make([][]cover.Cost, rows)
	for r := range out {
		out[r] = make([]cover.Cost, columns)
		for c := range out[r] {
			out[r][c] = cover.Cost{draw(), draw(), draw()}
		}
	}
	return out
}

// The same at every run: each size from one to five rows and columns, ten times with each of few and of many costs.
func TestAssignInEverySize(t *testing.T) {
	chance := rand.New(rand.NewSource(7))
	for rows := 1; rows <= 5; rows++ {
		for columns := 1; columns <= 5; columns++ {
			for n := range 20 {
				assigned(t, costs(rows, columns, func() float64 { return float64(chance.Intn(2 + n%2*9)) }), columns)
			}
		}
	}
}

func TestAssignOfNothing(t *testing.T) {
	if got := cover.Assign(nil); len(got) != 0 {
		t.Errorf("nothing is given %v", got)
	}
	if got := cover.Assign([][]cover.Cost{{}, {}}); !slices.Equal(got, []int{-1, -1}) {
		t.Errorf("without columns: %v", got)
	}
}
