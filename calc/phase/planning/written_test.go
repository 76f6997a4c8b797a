package planning_test

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/phase/planning"
	"contralay/model"
	"contralay/model/file"
	"contralay/model/unit"
)

// cable is a screened pair of a diameter, and n wires of 22 AWG beside it; where n is below 0,
// so many such pairs and no wire.
func cable(over string, n int) string {
	pairs := 1
	if n < 0 {
		pairs, n = -n, 0
	}
	var b strings.Builder
	b.WriteString("format = 1\n[[termination]]\nid = \"A\"\n[[termination]]\nid = \"B\"\n")
	for i := range n + 2*pairs {
		fmt.Fprintf(&b, "[[wire]]\nid = \"v%d\"\nfrom = \"A:%d\"\nto = \"B:%d\"\nspec = \"AS22759/32\"\nsize = \"22\"\n", i, i+1, i+1)
	}
	for k := range pairs {
		fmt.Fprintf(&b, "[[unit]]\nid = \"Q%d\"\nwires = [\"v%d\", \"v%d\"]\nbuild = \"pair\"\nshield = true\nover_mm = %s\n", k+1, n+2*k,
			n+2*k+1, over)
	}
	b.WriteString("[[branch]]\nid = \"K\"\nfrom = \"A\"\nto = \"B\"\nlength_mm = 450\n")
	return b.String()
}

// What the planner makes is written to 0.01 mm, and what is written is what was proposed.
func TestLayUpsAreWrittenToAHundredth(t *testing.T) {
	built, fillers := 0, 0
	for _, c := range []struct {
		over string
		n    int
	}{{"2.637", 11}, {"2.8", 13}, {"3.1234", 12}, {"2.5", 9}, {"3.3333333", 33}, {"2.12345", -9}, {"2.12345", -17}} {
		s := calc.Complete(calctest.Parse(t, cable(c.over, c.n)), calctest.Catalogue(t), nil)
		for _, o := range planning.Propose(s, 0).Options {
			h := planning.Laid(s, s.H, 0, o)
			for k, l := range h.Branches[0].Layers {
				for _, v := range []model.Opt[unit.Millimetre]{l.BindMM, l.FillerMM} {
					if digits := strconv.FormatFloat(float64(v.V), 'f', -1, 64); v.Set && len(digits[strings.Index(digits+".", "."):]) > 3 {
						t.Errorf("%s mm, %d wires, layer %d: %s is written", c.over, c.n, k, digits)
					}
				}
				built, fillers = built+int(math.Ceil(float64(l.BindMM.V))), fillers+l.Fillers.V
			}
			// A hundredth of tape moves the outside by a hundredth, and no more.
			if got := calc.Build(h, s.Cat, nil).Branches[0].OverMM; len(o.Spares) == 0 && math.Abs(float64(got-o.Plan.Over)) > 0.011 {
				t.Errorf("%s mm, %d wires: laid at %v, planned at %v", c.over, c.n, got, o.Plan.Over)
			}
		}
	}
	if built == 0 || fillers == 0 {
		t.Errorf("nothing built up (%d) or filled (%d): the test looks at nothing", built, fillers)
	}
}

// A long value of a file is saved as it was read, until somebody changes it.
func TestLongTapeOfAFileStays(t *testing.T) {
	text := cable("2.9", 8) + "  [[branch.layer]]\n  of = [\"Q1\"]\n  bind_mm = 1.8940955223341125\n  [[branch.layer]]\n" +
		"  of = [\"v0\", \"v1\", \"v2\", \"v3\", \"v4\", \"v5\", \"v6\", \"v7\"]\n"
	d, err := file.Parse([]byte(text), "test")
	if err != nil {
		t.Fatal(err)
	}
	if out := string(file.Encode(d)); !strings.Contains(out, "bind_mm = 1.8940955223341125") {
		t.Errorf("saved as:\n%s", out[strings.Index(out, "[[branch]]"):])
	}
}
