package commas_test

import (
	"slices"
	"testing"

	"contralay/model/wirelist/commas"
)

func TestParts(t *testing.T) {
	for text, want := range map[string][]string{
		"red, 2,5 mm²":  {"red", " 2,5 mm²"},
		"grün,0,75 mm²": {"grün", "0,75 mm²"},
		"a,b;c":         {"a", "b", "c"},
		",2,5,":         {"2,5"},
		"":              nil,
	} {
		if got := commas.Parts(text, ",;"); !slices.Equal(got, want) {
			t.Errorf("%q: %q", text, got)
		}
	}
	if at := commas.At("rood 2,5, dik", ",;("); at != len("rood 2,5") {
		t.Error(at)
	}
}
