package sidehead

import (
	"slices"
	"testing"
)

func TestOfWall(t *testing.T) {
	for _, c := range []struct {
		heads []string
		sides []int
	}{
		{[]string{"Pin", "Inside", "Outside"}, []int{-1, 0, 1}},
		{[]string{"Pin", "Shed side", "Yard side"}, []int{-1, 0, 1}},
		{[]string{"Hull side conn", "Hull pin", "Signal", "Mast side conn", "Mast pin"}, []int{0, 0, -1, 1, 1}},
		{[]string{"Lado remolque", "Lado tractor"}, []int{0, 1}},
		{[]string{"Motorseite", "Führerstandseite"}, []int{0, 1}},
		{[]string{"Shed side", "Yard side", "Loft side"}, []int{-1, -1, -1}},
		{[]string{"Seal shed side", "Seal yard side"}, []int{-1, -1}},
		{[]string{"Shed side seal", "Yard side seal"}, []int{-1, -1}},
		{[]string{"Shed", "Yard"}, []int{-1, -1}},
	} {
		if got := OfWall(c.heads); !slices.Equal(got, c.sides) {
			t.Errorf("%q: %v", c.heads, got)
		}
	}
}
