package cover_test

import (
	"math"
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

func TestAssignIsTheCheapest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		rows, columns := rapid.IntRange(1, 5).Draw(t, "rows"), rapid.IntRange(1, 6).Draw(t, "columns")
		cost := make([][]cover.Cost, rows)
		for r := range cost {
			cost[r] = make([]cover.Cost, columns)
			for c := range cost[r] {
				for k := range cost[r][c] { // whole numbers: sums are exact
					cost[r][c][k] = float64(rapid.IntRange(0, 3).Draw(t, "cost"))
				}
			}
		}
		got := cover.Assign(cost)
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
	})
}

func TestAssignOfNothing(t *testing.T) {
	if got := cover.Assign(nil); len(got) != 0 {
		t.Errorf("nothing is given %v", got)
	}
	if got := cover.Assign([][]cover.Cost{{}, {}}); !slices.Equal(got, []int{-1, -1}) {
		t.Errorf("without columns: %v", got)
	}
}
