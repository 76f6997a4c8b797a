package calc

import (
	"testing"
)

// The size advised does, and the one below it does not; a size that drops too much or
// that a contact does not take is not advised.
func TestSmallestThatDoes(t *testing.T) {
	for _, c := range []struct {
		name, contact, wire string
		want                string
		ok                  bool
	}{
		{"little current", "", "22 0.5", "30", true},
		{"the drop decides", "", "22 8.0", "16", true}, // 1 m of 18 at 8 A drops 0.17 V; heat decides for thinner
		{"the contact takes no thinner", "20", "20 0.5", "24", true},
		{"the contact allows no more", "20", "20 9.0", "", false},
	} {
		t.Run(c.name, func(t *testing.T) {
			s := loaded(t, 60, c.contact, append(repeated(6, "22 1.0"), c.wire), nil, "")
			size, ok := s.SmallestThatDoes(6)
			if ok != c.ok {
				t.Fatalf("%q %v", size, ok)
			}
			if !ok {
				return
			}
			sizes := s.Cat.Sizes("AS22759/32")
			for n, z := range sizes {
				if z == size && n > 0 && s.Does(6, sizes[n-1]) {
					t.Errorf("%s is advised and %s does, too", size, sizes[n-1])
				}
			}
			if c.name != "the drop decides" && size != c.want {
				t.Errorf("%s, want %s", size, c.want)
			}
		})
	}
	s := loaded(t, 60, "", []string{"22 1.0", "22 1.0"}, nil, "")
	s.H.Wires[0].Amps.Set = false
	if size, ok := s.SmallestThatDoes(0); ok {
		t.Errorf("without a current: %s", size)
	}
}
