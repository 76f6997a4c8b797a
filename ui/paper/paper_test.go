package paper

import (
	"encoding/json"
	"strings"
	"testing"

	"contralay/calc/formula/plan"
	"contralay/calc/sheet"
	"contralay/ui/paper/figure"
)

var shop = plan.Rules{LayRatio: 12, LiftMax: 0.05, LiftTight: 0.08, GapInner: 0.10, GapOuter: 0.15, LumpyAt: 1.3, FillerWeight: 0.1,
	SpareGain: 0.15}

func TestPlans(t *testing.T) {
	ps := plan.Make(plan.Ask{Sizes: []plan.Size{{D: 1.09, N: 16}}, Spares: 3, Rules: shop})
	text := Plans(ps, nil)
	lines := strings.Split(text, "\n")
	if !strings.HasPrefix(lines[1], "1 · 6 · 12 ") || !strings.HasPrefix(lines[2], "5 · 11 ") {
		t.Errorf("got\n%s", text)
	}
	if strings.Contains(text, "\x1b") {
		t.Error("an escape code in plain output")
	}
	b, err := figure.Plans(ps, nil)
	if err != nil {
		t.Fatal(err)
	}
	var back []struct {
		Proven bool
		Spares int
		Layers []struct {
			Sizes  map[string]int
			Spares int
			Takes  *int
		}
	}
	if err := json.Unmarshal(b, &back); err != nil {
		t.Fatal(err)
	}
	if n := back[0].Layers[2].Sizes["1.09"]; n != 12 || back[0].Spares != 3 || !back[0].Proven || back[0].Layers[0].Takes != nil {
		t.Errorf("got %s", b)
	}
	if sum := back[0].Layers[0].Spares + back[0].Layers[1].Spares + back[0].Layers[2].Spares; sum != 3 {
		t.Errorf("the layers hold %d spares, want 3", sum)
	}
}

func TestCheckSaysOneCauseOnce(t *testing.T) {
	s := &sheet.Sheet{Snags: []sheet.Snag{{Level: sheet.Note, Rule: "a", Where: "T1", Says: "x"},
		{Level: sheet.Stop, Rule: "b", Where: "L22", Says: "y"}, {Level: sheet.Note, Rule: "a", Where: "T2", Says: "x"}}}
	want := "stop  L22  y  [b]\nnote  T1   x (and 1 more: T2)  [a]\n"
	if got := Check(s); got != want {
		t.Errorf("got %q, want %q", got, want)
	}
	if got := Check(&sheet.Sheet{}); got != "no open points\n" {
		t.Errorf("got %q", got)
	}
}
