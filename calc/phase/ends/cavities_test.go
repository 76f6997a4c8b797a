package ends_test

import (
	"fmt"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/sheet"
)

// Several wires in one contact go by the sum of their circular mils: two 20 AWG make
// 2432, into a barrel for 16 AWG (2426) within 1 %; two 22 AWG make 1508, too much for
// size 20 (1216) and right for size 16 (18 AWG, 1900, and thicker … 20 AWG, 1216). The
// file loads in every case. Sources: circular mils AC 43.13-1B table 11-9; the rule
// NASA-STD-8739.4 § 19.11.
func TestSeveralInOneContact(t *testing.T) {
	for _, c := range []struct {
		size, wires string
		refused     bool
	}{{"16", "20 20", false}, {"20", "22 22", true}, {"16", "22 22", false}} {
		a, b, _ := strings.Cut(c.wires, " ")
		s := calctest.InCavities(t, `cavities = ["1"]
contacts = { "`+c.size+`" = ["1"] }`, a+" 1", b+" 1")
		if g, said := calctest.Snag(s, "cavity.barrel", ""); said != c.refused {
			t.Errorf("%s in size %s: %+v", c.wires, c.size, g)
		}
	}
	// Under one seal two wires are refused, whatever their barrel.
	s := calctest.InCavities(t, "cavities = [\"1\"]\nseal_mm = [1.0, 2.1]", "22 1", "22 1")
	if g, ok := calctest.Snag(s, "cavity.twice", "A:1"); !ok || g.Level != sheet.Stop {
		t.Errorf("%+v", s.Snags)
	}
}

// A seal of the catalogue, published in MIL-DTL-38999N table IV, takes 1.65 to 2.77 mm at size 16. 20
// AWG goes into its barrel and is too thin for it: that of AS22759/41, 1.47 mm, read in a drawing, stops;
// that of AS22759/32, 1.27 mm from memory, is warned of alone.
func TestSealOfTheCatalogue(t *testing.T) {
	for spec, level := range map[string]sheet.Level{"AS22759/41": sheet.Stop, "AS22759/32": sheet.Warn} {
		h := calctest.InCavities(t, "insert = \"18-11\"", "20 A").H
		h.Wires[0].Spec = spec
		s := calc.Build(h, calctest.Catalogue(t), nil)
		if g, ok := calctest.Snag(s, "cavity.seal", ""); !ok || g.Level != level {
			t.Errorf("%s: %+v, want %v", spec, s.Snags, level)
		}
	}
}

// Light 22 AWG of 1.09 mm in a seal of 1.30 to 2.54 mm stops, 20 AWG of 1.27 by 0.03 mm,
// 18 AWG of 1.52 passes. Diameters from memory of AS22759/32.
func TestSealRange(t *testing.T) {
	for size, stops := range map[string]bool{"22": true, "20": true, "18": false} {
		s := calctest.InCavities(t, "cavities = [\"1\"]\nseal_mm = [1.30, 2.54]", size+" 1")
		if g, ok := calctest.Snag(s, "cavity.seal", "A:1"); ok != stops || ok && g.Level != sheet.Stop {
			t.Errorf("%s AWG: %+v", size, s.Snags)
		}
	}
}

// 34 × 22 and 4 × 16 AWG and two shielded pairs are 42 conductors: in 37 cavities of 22D
// they load and stop, for what has no cavity and for 16 AWG, which needs larger contacts.
func TestTooManyForTheConnector(t *testing.T) {
	var wires []string
	for k := range 42 {
		size := "22"
		if k >= 34 && k < 38 {
			size = "16"
		}
		wires = append(wires, fmt.Sprintf("%s %d", size, k+1))
	}
	s := calctest.InCavities(t, `insert = "14-35"`, wires...)
	none, thick := 0, 0
	for _, g := range s.Snags {
		if g.Rule == "cavity.none" && g.Level == sheet.Stop {
			none++
		}
		if g.Rule == "cavity.barrel" && strings.Contains(g.Says, "too thick for a size 22D contact") {
			thick++
		}
	}
	if none != 5 || thick != 4-1 { // the last 16 AWG is the 38th wire, which has no cavity
		t.Errorf("%d without a cavity, %d too thick: %+v", none, thick, s.Snags)
	}
}
