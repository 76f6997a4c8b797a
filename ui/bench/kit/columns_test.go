package kit_test

import (
	"fmt"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"contralay/ui/bench/kit"
)

// Columns never run together, whatever stands in them and however narrow they are: fractions of
// an inch are wider than whole millimetres. Figures are whole, and words are cut. (A fraction
// has a hyphen here, so that each cell is one word of the line.)
func TestColumnsNeverRunTogether(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		cells := rapid.SliceOfN(rapid.SampledFrom([]string{"7", "450", "1-15/32", "17-11/16", "393-11/16", "0.125", "AS22759/32", "WHRD",
			"22"}), 1, 8).Draw(t, "cells")
		var columns []kit.Column[int]
		for k := range cells {
			columns = append(columns, kit.Column[int]{Head: fmt.Sprint("head", k), Least: rapid.IntRange(1, 9).Draw(t, "least"),
				Lead: rapid.IntRange(0, 2).Draw(t, "lead"), Align: rapid.SampledFrom([]kit.Align{kit.ToLeft, kit.ToRight}).Draw(t, "side"),
				Gives: rapid.Bool().Draw(t, "gives"), Cell: func(int) string { return cells[k] }})
		}
		ascii := rapid.Bool().Draw(t, "ascii")
		given := kit.GivenColumns(columns, ascii).Line(0)
		measured := kit.MakeColumns(columns, []int{0}, rapid.IntRange(0, 60).Draw(t, "room"), ascii).Line(0)
		for name, line := range map[string]string{"given": given, "measured": measured} {
			shown := strings.Fields(line)
			if len(shown) != len(cells) {
				t.Fatalf("%s: %q is %d cells, not %d", name, line, len(shown), len(cells))
			}
			for k, cell := range cells {
				if name == "given" && columns[k].Align == kit.ToRight && shown[k] != cell {
					t.Fatalf("the figure %q is cut: %q", cell, line)
				}
			}
		}
	})
}
