package crimp

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"contralay/model/typedtest"
	"contralay/model/unit"
)

// gauge is "22" or "1/0" as a number, 0 being 1/0.
func gauge(t *testing.T, text string) int {
	t.Helper()
	if n, ok := strings.CutSuffix(text, "/0"); ok {
		k, _ := strconv.Atoi(n)
		return 1 - k
	}
	n, err := strconv.Atoi(text)
	if err != nil {
		t.Fatal(err)
	}
	return n
}

// TestPullsTypedTwice compares every pull force with the tables typed by another hand, and its
// standing: a figure of theirs from memory is one here.
func TestPullsTypedTwice(t *testing.T) {
	const pound = 4.4482216152605 // N, exact
	n := 0
	for _, c := range []struct {
		table, column string
		kind          Kind
		nickel        bool
	}{
		{"pull_contact", "silver_tin_lbf", Contact, false},
		{"pull_contact", "nickel_lbf", Contact, true},
		{"pull_stamped", "lbf", Commercial, false},
		{"pull_terminal", "lbf", Terminal, false},
		{"pull_table", "stamped_lbf", Commercial, false},
		{"pull_table", "terminal_lbf", Terminal, false},
		{"pull_table", "contact_lbf", Contact, false},
	} {
		typed := typedtest.Must(t, c.table)
		for _, row := range typed.Rows {
			want, ok := typed.Number(row, c.column)
			if !ok || c.kind == Terminal && row == "2" {
				continue // 550 lbf for a terminal on 2 AWG is from memory, and not held
			}
			n++
			got, from, ok := Pull(c.kind, gauge(t, row), c.nickel)
			if !ok || math.Abs(float64(got)/pound-want) > 1e-9 {
				t.Errorf("%s, %s AWG: %.3f lbf, typed %v", c.table, row, float64(got)/pound, want)
			}
			if cell, _ := typed.Cell(row, c.column); c.table != "pull_table" && from.Memory == cell.How.Published() {
				t.Errorf("%s, %s AWG: from memory %v, typed as %c", c.table, row, from.Memory, cell.How)
			}
		}
	}
	t.Logf("%d figures compared", n)
	// Nothing is printed for nickel on 18 AWG: the higher force of other wire stands.
	if a, _, _ := Pull(Contact, 18, true); a != unit.Newton(32*pound) {
		t.Errorf("nickel on 18 AWG: %v", a)
	}
}

// TestWorkTypedTwice compares gaps, strand damage, tools and steps likewise.
func TestWorkTypedTwice(t *testing.T) {
	gap := typedtest.Must(t, "strip_gap")
	for row, awg := range map[string]int{"20 AWG and finer": 20, "18 AWG and coarser": 18} {
		least, most := Gap(awg)
		a, _ := gap.Number(row, "gap_min_mm")
		b, _ := gap.Number(row, "gap_max_mm")
		if float64(least) != a || float64(most) != b {
			t.Errorf("%s: %v to %v, typed %v to %v", row, least, most, a, b)
		}
	}
	damage := typedtest.Must(t, "table_11_13")
	for _, row := range damage.Rows {
		small, large, _ := strings.Cut(row, "-")
		for _, awg := range []int{gauge(t, small), gauge(t, large)} {
			nicked, broken, _ := Damage(awg)
			a, _ := damage.Number(row, "nicked")
			b, _ := damage.Number(row, "broken")
			if float64(nicked) != a || float64(broken) != b {
				t.Errorf("%d AWG: %d nicked, %d broken, typed %v and %v", awg, nicked, broken, a, b)
			}
		}
	}
	tools := typedtest.Must(t, "crimp_tool")
	steps := 0
	for _, row := range tools.Rows {
		cell, _ := tools.Cell(row, "value")
		switch what, of, _ := strings.Cut(row, " "); what {
		case "selector":
			steps++
			step, memory, ok := Setting("M22520/1-01", gauge(t, strings.TrimSuffix(of, " AWG")))
			if want, _ := cell.Number(); !ok || float64(step) != want || memory == cell.How.Published() {
				t.Errorf("%s: step %d, memory %v; typed %v", row, step, memory, cell)
			}
		case "positioner":
			size, gender, _ := strings.Cut(of, " ")
			if tool, ok := ToolFor(size, gender); !ok || tool.Positioner != cell.Text {
				t.Errorf("%s: %+v, typed %v", row, tool, cell)
			}
		case "insertion":
			if got, ok := Insertion(of); of != "23" && (!ok || got != cell.Text) {
				t.Errorf("%s: %s, typed %v", row, got, cell)
			}
		}
	}
	if steps != 8 {
		t.Errorf("%d steps compared", steps)
	}
}
