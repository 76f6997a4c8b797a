package catalogue

import "testing"

func TestAWGNumber(t *testing.T) {
	for _, tt := range []struct {
		size string
		n    int
		ok   bool
	}{
		{"22", 22, true},
		{"1", 1, true},
		{"40", 40, true},
		{"1/0", 0, true}, // source: ASTM B258, 0 … 0000 are n = 0 … −3
		{"2/0", -1, true},
		{"4/0", -3, true},
		{"0", 0, true},
		{"0000", -3, true},
		{"5/0", 0, false},
		{"0/0", 0, false},
		{"00000", 0, false},
		{"41", 0, false},
		{"022", 0, false},
		{"-3", 0, false},
		{"+3", 0, false},
		{" 22", 0, false},
		{"0.35mm2", 0, false},
		{"", 0, false},
		{"/0", 0, false},
	} {
		if n, ok := AWGNumber(tt.size); n != tt.n || ok != tt.ok {
			t.Errorf("AWGNumber(%q) = %d, %v; want %d, %v", tt.size, n, ok, tt.n, tt.ok)
		}
	}
}

func TestCanonicalSize(t *testing.T) {
	for size, want := range map[string]string{
		"22": "22", " 22 ": "22", "00": "2/0", "0": "1/0", "3/0": "3/0",
		"0.50mm2": "0.5mm2", "1.0mm2": "1mm2", ".35mm2": "0.35mm2",
		"mm2": "mm2", "1e3mm2": "1e3mm2", "0mm2": "0mm2", "heavy": "heavy",
	} {
		got := CanonicalSize(size)
		if got != want {
			t.Errorf("CanonicalSize(%q) = %q, want %q", size, got, want)
		}
		if again := CanonicalSize(got); again != got {
			t.Errorf("CanonicalSize(%q) = %q: not its own spelling", got, again)
		}
	}
}
