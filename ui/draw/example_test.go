package draw_test

import (
	"fmt"

	"contralay/ui/draw"
)

// A pair of wires, the second one chosen, as plain text.
func ExamplePicture() {
	s := draw.Section{
		Discs: []draw.Disc{
			{ID: "W101", Label: "101", X: -0.5, D: 1},
			{ID: "W102", Label: "102", X: 0.5, D: 1, Selected: true},
		},
		OverMM: 2,
		Seen:   "seen from P1",
	}
	for _, line := range draw.Picture(s, 21, 10, draw.Palette{}).Lines() {
		fmt.Println("|" + line + "|")
	}
	// Output:
	// |        . . .        |
	// |      .       .      |
	// |   .             .   |
	// |  . .---.   .---. .  |
	// |  .| 101 | |[102]|.  |
	// |  . '---'   '---' .  |
	// |   .             .   |
	// |      .       .      |
	// |        . . .        |
	// |    seen from P1     |
}
