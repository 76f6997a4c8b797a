package toldpairs

import (
	"strings"
	"testing"

	"contralay/model/wirelist/draft"
)

// A sentence twists cavities together where it says so of them alone, in the languages of lists; a number that counts something is none.
func TestCavitiesOfASentence(t *testing.T) {
	c := cavities{all: map[string]*draft.Item{}}
	for _, pin := range []string{"2", "3", "4", "6", "7", "a", "b", "e", "f"} {
		c.all[pin] = &draft.Item{}
	}
	for _, s := range []struct{ says, want string }{
		{"6 and 7 are twisted together, keep it that way", "6,7"},
		{"pins 6 & 7 twisted", "6,7"},
		{"Pin 6 and pin 7: twisted pair", "6,7"},
		{"twist 6 with 7", "6,7"},
		{"6/7 twisted, 40 turns per metre", "6,7"},
		{"Twisted pair: 6 + 7", "6,7"},
		{"Twisted pairs: 6 + 7", "6,7"},
		{"Pins A and B are a twisted pair", "A,B"},
		{"2, 3 and 4 are twisted together", "2,3,4"},
		{"Nota: i fili 6 e 7 sono intrecciati.", "6,7"},
		{"i pin 6 e 7 sono intrecciati", "6,7"},
		{"6 e 7 ritorti insieme", "6,7"},
		{"Kontakte 6 und 7 sind verdrillt", "6,7"},
		{"Hinweis: 6 und 7 verdrillt", "6,7"},
		{"Adern 6 und 7 sind miteinander verdrillt", "6,7"},
		{"les fils 6 et 7 sont torsadés", "6,7"},
		{"broches 6 et 7 torsadées", "6,7"},
		{"los cables 6 y 7 van trenzados", "6,7"},
		{"los pines 6 y 7 están trenzados", "6,7"},
		{"przewody 6 i 7 są skręcone", "6,7"},
		{"piny 6 i 7 skręcone razem", "6,7"},
		{"de draden 6 en 7 zijn getwist", "6,7"},
		{"6 en 7 zijn in elkaar gedraaid", "6,7"},
		{"stift 6 och 7 är tvinnade", "6,7"},
		{"6 og 7 er snoet", "6,7"},
		{"os fios 6 e 7 são torcidos", "6,7"},
		{"E e F sono intrecciati", "E,F"},
		{"6 and 7 are not twisted", ""},
		{"do not twist 6 and 7", ""},
		{"6 und 7 sind nicht verdrillt", ""},
		{"6 e 7 non sono intrecciati", ""},
		{"6 and 7 were twisted", ""},
		{"2 twisted with 6 turns", ""},
		{"2 wires twisted, 6 turns", ""},
		{"2 pairs, twisted, 6 to 7", ""},
		{"2 to 7 are twisted", ""},
		{"2, 3, 4, 6, 7 twisted", ""},
		{"6 and 8 are twisted", ""},
		{"6 is twisted", ""},
		{"6 and 7 are red", ""},
		{"twisted at row 6 and 7", ""},
		{"use 6 or 7, twisted", ""},
		{"page 6 and 7 show the twisted wires", ""},
	} {
		if got := strings.Join(c.twists(tokens(s.says), false).pins, ","); got != s.want {
			t.Errorf("%q: %q, want %q", s.says, got, s.want)
		}
	}
}
