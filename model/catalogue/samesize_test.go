package catalogue_test

import (
	"testing"

	"contralay/model/catalogue"
)

// Areas of ASTM B258: 22 AWG 0.3255 mm², 20 AWG 0.5176, 18 AWG 0.8231, 2/0 67.43; 1 % of each either way is the gauge
// in another unit, and no size that is made in mm² (ISO 6722: 0.35, 0.5, 0.75, 1) is.
func TestSameSize(t *testing.T) {
	for _, c := range []struct {
		a, b string
		same bool
	}{
		{"22", "22", true}, {"00", "2/0", true}, {"0.50mm2", "0.5mm2", true},
		{"22", "0.324mm2", true}, {"22", "0.326mm2", true}, {"22", "0.3286mm2", true}, {"22", "0.3224mm2", true},
		{"22", "0.3289mm2", false}, {"22", "0.3221mm2", false}, {"22", "0.35mm2", false}, {"22", "0.33mm2", false},
		{"20", "0.518mm2", true}, {"20", "0.5mm2", false}, {"18", "0.823mm2", true}, {"18", "0.75mm2", false}, {"2/0", "67.4mm2", true},
		{"17", "1mm2", false}, {"22", "20", false}, {"0.5mm2", "0.501mm2", false}, {"", "0.3mm2", false}, {"22", "", false},
	} {
		if got := catalogue.SameSize(c.a, c.b); got != c.same || catalogue.SameSize(c.b, c.a) != got {
			t.Errorf("%q and %q: %v", c.a, c.b, got)
		}
	}
}
