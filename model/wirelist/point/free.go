package point

import (
	"strings"

	"contralay/model/wirelist/name"
)

// freeWire parts a point that says first that its cavity is free and then which wire stands in it, "spare, blue 20 AWG coiled up": the
// values stand at the head of the rest, and a remark behind them.
func freeWire(text string) (p Parts, ok bool) {
	state, rest, cut := strings.Cut(text, ", ")
	if !cut {
		state, rest, cut = strings.Cut(text, ": ")
	}
	if state = strings.TrimSpace(state); !cut || name.StateOf(state) == name.Used {
		return p, false
	}
	all := strings.Fields(rest)
	for n := min(len(all), mostValues); n > 0; n-- {
		head := strings.TrimRight(strings.Join(all[:n], " "), ",;")
		colour, size := WireValues(head)
		if colour == "" {
			colour, size = valuesOf(head)
		}
		if colour != "" {
			return Parts{Signal: state, Colour: colour, Size: size, Note: strings.TrimLeft(strings.Join(all[n:], " "), "-– ")}, true
		}
	}
	return p, false
}

// mostValues is how many words the colour and the size of a wire have (no source).
const mostValues = 5
