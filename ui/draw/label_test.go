package draw

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"contralay/model/unit"
)

func TestStatesInPlainText(t *testing.T) {
	one := func(d Disc) Section {
		d.ID, d.Label, d.D = "W12", "12", 1.09
		return Section{Discs: []Disc{d}, OverMM: 12, Seen: "seen from P1"}
	}
	tests := []struct {
		name string
		d    Disc
		want string
	}{
		{"plain", Disc{}, " 12 "},
		{"selected", Disc{Selected: true}, "[12]"},
		{"neighbour", Disc{Neighbour: true}, "(12)"},
		{"selected wins over neighbour", Disc{Selected: true, Neighbour: true}, "[12]"},
		{"flagged", Disc{Flagged: true}, " !12 "},
		{"tracer", Disc{Tracer: true}, " *12 "},
		{"flagged tracer", Disc{Flagged: true, Tracer: true}, " !*12 "},
		{"selected and flagged", Disc{Selected: true, Flagged: true}, "[!12]"},
		{"neighbour and tracer", Disc{Neighbour: true, Tracer: true}, "(*12)"},
		{"filler", Disc{Kind: Filler}, " o "},
		{"selected filler", Disc{Kind: Filler, Selected: true}, "[o]"},
		{"spare", Disc{Kind: Spare}, " 12 "},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			for _, p := range []Palette{{}, {Colour: true}, {Colour: true, Dark: true}} {
				if got := strings.Join(Picture(one(tt.d), 40, 16, p).Lines(), "\n"); !strings.Contains(got, tt.want) {
					t.Errorf("%+v: no %q in\n%s", p, tt.want, got)
				}
			}
		})
	}
}

func TestCollisions(t *testing.T) {
	row := func(gap, dia unit.Millimetre, labels ...string) Section {
		s := Section{OverMM: 14} // in 31×16: a row is 1 mm high, a cell 0.5 mm wide
		for i, l := range labels {
			s.Discs = append(s.Discs, Disc{ID: "W" + l, Label: l, X: (unit.Millimetre(i) - unit.Millimetre(len(labels)-1)/2) * gap, D: dia})
		}
		return s
	}
	tests := []struct {
		name string
		s    Section
		want string
		not  []string
	}{
		{"room enough", row(2, 2, "11", "12", "13"), "11  12  13", nil},
		{"one blank", row(1.5, 1.5, "11", "12", "13"), "11 12 13", nil},
		{"touching: moved apart", row(1, 2, "11", "12"), "11 12", nil},
		{"moved up or down where the disc reaches there", row(0.6, 2, "101", "102"), "102", nil},
		{"no room on the disc", row(0.6, 0.55, "101", "102"), "   +   ", []string{"W101", "W102"}},
		{"a third joins", row(0.6, 0.55, "101", "102", "103"), "   +   ", []string{"W101", "W102", "W103"}},
		{"one far off does not", row(1.4, 0.55, "101", "102", "103", "4"), "+", []string{"W101", "W102"}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			c := Picture(tt.s, 31, 16, Palette{})
			got := strings.Join(c.Lines(), "\n")
			if !strings.Contains(got, tt.want) {
				t.Errorf("no %q in\n%s", tt.want, got)
			}
			if d := cmp.Diff(tt.not, c.NotShown); d != "" {
				t.Errorf("not shown (-want +got):\n%s", d)
			}
		})
	}
}

func TestShortened(t *testing.T) {
	tests := []struct {
		name   string
		labels []string
		want   []string
	}{
		{"short ones stay", []string{"1", "22", "333"}, []string{"1", "22", "333"}},
		{"the end is kept", []string{"INJ101", "INJ102"}, []string{"101", "102"}},
		{"taken: the start", []string{"101", "AB-101"}, []string{"101", "AB-"}},
		{"a short one later is not taken away", []string{"A101", "101"}, []string{"A10", "101"}},
		{"ends and starts alike", []string{"AAB001", "AAC001", "AAC001x"}, []string{"001", "AAC", "01x"}},
		{"four alike", []string{"AB01", "AB01", "AB01", "AB01"}, []string{"B01", "AB0", "A01", "AB1"}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			var discs []Disc
			for _, l := range tt.labels {
				discs = append(discs, Disc{ID: l, Label: l, D: 1})
			}
			got, short := cores(discs)
			if d := cmp.Diff(tt.want, got); d != "" {
				t.Errorf("(-want +got):\n%s", d)
			}
			n := 0
			for _, l := range tt.labels {
				if len(l) > coreMax {
					n++
				}
			}
			if len(short) != n {
				t.Errorf("%d listed as shortened, want %d", len(short), n)
			}
		})
	}
}
