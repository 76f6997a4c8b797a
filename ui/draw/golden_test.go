package draw

import (
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

var update = flag.Bool("update", false, "write the golden pictures anew; look at each before keeping it")

// golden compares lines with testdata/name.golden. A line ends in | so that its
// blanks can be seen and no editor strips them.
func golden(t *testing.T, name string, lines []string) {
	t.Helper()
	got := strings.Join(lines, "|\n") + "|\n"
	path := filepath.Join("testdata", name+".golden")
	if *update {
		if err := os.WriteFile(path, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if d := cmp.Diff(string(want), got); d != "" {
		t.Errorf("%s differs (-want +got):\n%s", path, d)
	}
}

// states is 1 · 6 · 12 with one of each state: 3 is selected, what touches it is
// marked, 8 is the tracer, 13 is flagged, 17 is a filler and 18 a spare.
func states() Section {
	s := rings(1, 6, 12)
	sel := s.Discs[2]
	for i := range s.Discs {
		d := &s.Discs[i]
		d.Selected = i == 2
		d.Neighbour = i != 2 && dist(*d, sel) < 1.15*float64(d.D)
		d.Tracer = d.Label == "8"
		d.Flagged = d.Label == "13"
	}
	s.Discs[16].Kind = Filler
	s.Discs[17].Kind, s.Discs[17].Label = Spare, "s1"
	return s
}

// mixed is a shielded pair of 2.4 mm with 10 and 16 wires of 1.09 mm round it,
// under a sheath; three-character labels.
func mixed() Section {
	s := Section{Seen: "seen from P1", OverMM: 6.9, SheathMM: 8.6}
	s.Discs = append(s.Discs, Disc{ID: "C1", Label: "C1", D: 2.4, Kind: Unit})
	s.Discs = append(s.Discs, ring(10, 1.75, 1, "1")...)
	s.Discs = append(s.Discs, ring(16, 2.9, 2, "2")...)
	return s
}

func TestGolden(t *testing.T) {
	big := rings(1, 6, 12, 18, 24, 30)
	tests := []struct {
		name string
		s    Section
		w, h int
	}{
		{"1-6-12_34x16_ascii", rings(1, 6, 12), 34, 16},
		{"1-6-12_46x20_ascii", rings(1, 6, 12), 46, 20},
		{"1-6-12_16x7_ascii", rings(1, 6, 12), 16, 7},
		{"states_34x16_ascii", states(), 34, 16},
		{"states_46x20_ascii", states(), 46, 20},
		{"mixed_34x16_ascii", mixed(), 34, 16},
		{"mixed_46x20_ascii", mixed(), 46, 20},
		{"mixed_70x30_ascii", mixed(), 70, 30},
		{"91_46x20_ascii", big, 46, 20},
		{"91_46x20_ascii_zoom", Zoomed(big, "W22"), 46, 20},
		{"small_12x5", rings(1, 6), 12, 5},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			golden(t, tt.name, Picture(tt.s, tt.w, tt.h, Palette{}).Lines())
		})
	}
}
