package value

import "testing"

func TestIsSizeRange(t *testing.T) {
	for _, c := range []struct {
		text string
		want bool
	}{
		{"0.5 - 4 mm²", true}, {"0,5 bis 4 mm²", true}, {"0.5...4 mm²", true}, {"26-12 AWG", true}, {"AWG 12 ... 26", true},
		{"AWG 26 to AWG 12", true}, {"max. 2.5 mm²", true}, {"up to 4 mm²", true}, {"≤ 4 mm²", true}, {"2.5 mm² max.", true},
		{"de 0,5 à 2,5 mm²", true}, {"0.5 mm² - 4 mm²", true},
		{"4-0.5 mm²", false}, // four cores
		{"2.5 mm²", false}, {"20 AWG - 0.5 mm²", false}, {"18 AWG - 2", false}, {"0.5 mm² (20 AWG)", false}, {"3x1.5 mm²", false},
		{"1.5-1.5 mm²", false}, {"0.5 - 4", false}, {"min. 1.5 mm²", false}, {"", false},
	} {
		if got := IsSizeRange(c.text); got != c.want {
			t.Errorf("%q: %v", c.text, got)
		}
	}
}
