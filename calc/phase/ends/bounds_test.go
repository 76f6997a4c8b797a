package ends_test

import (
	"fmt"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/sheet"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// A wire of exactly the least or the most that a seal takes seals; a hundredth beyond it does not, and the sentence has all
// three figures.
// The seal is one of the file, 1.10 to 1.50 mm, or that of the catalogue's contact of size 16, 1.65 to 2.77 (MIL-DTL-38999N table IV).
func TestSealAtItsBounds(t *testing.T) {
	for _, c := range []struct {
		term, size string
		least      unit.Millimetre
		most       unit.Millimetre
		says       string
	}{
		{"cavities = [\"A\"]\nseal_mm = [1.1, 1.5]", "22", 1.1, 1.5, "Wire w0 of %s mm does not seal: the seal takes 1.10 to 1.50 mm"},
		{"insert = \"18-11\"", "16", 1.65, 2.77,
			"Wire w0 of %s mm is outside the seal of a size 16 cavity, 1.65 to 2.77 mm. Check the part's sheet"},
	} {
		s := calctest.InCavities(t, c.term, c.size+" A")
		for _, d := range []struct {
			over   unit.Millimetre
			sealed bool
		}{{c.least, true}, {c.most, true}, {c.least - 0.01, false}, {c.most + 0.01, false}, {(c.least + c.most) / 2, true}} {
			e, _ := s.Cat.Wire("AS22759/32", c.size)
			e.OverMM, e.OverStanding, e.Origin = d.over, "", catalogue.Origin{Source: "measured", Standing: catalogue.House}
			cat := catalogue.Merge(s.Cat, &catalogue.Catalogue{Wires: map[catalogue.WireKey]catalogue.Wire{{Spec: "AS22759/32",
				Size: c.size}: e}})
			got := calc.Build(s.H, cat, nil)
			g, said := calctest.Snag(got, "cavity.seal", "")
			if said == d.sealed {
				t.Errorf("%s of %v mm: %+v", c.size, d.over, g)
			}
			if said && (g.Level != sheet.Stop || g.Says != fmt.Sprintf(c.says, unit.Fixed(d.over, 2)) || g.Where != "A:A") {
				t.Errorf("%v %s: %q", g.Level, g.Where, g.Says)
			}
		}
	}
}
