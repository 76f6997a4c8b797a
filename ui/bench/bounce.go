package bench

import (
	"fmt"
	"time"

	"contralay/ui/bench/desk"
)

// bounceStep is what + - changes it by.
const bounceStep = 20 * time.Millisecond

// BounceRow sets the filter.
func BounceRow(m *desk.Model) desk.Row {
	says := "off"
	if m.Bounce > 0 {
		says = fmt.Sprintf("within %d ms counts once", m.Bounce.Milliseconds())
	}
	return desk.Row{Key: "bounce", Text: "same key again     " + says,
		Detail: "for worn keys and gloves, 60 to 80 ms; leave it off where a calliper types", Step: func(m *desk.Model, by int) {
			m.Bounce = min(max(m.Bounce+time.Duration(by)*bounceStep, 0), desk.MostBounce)
			m.Tell(map[bool]string{true: "every key counts",
				false: fmt.Sprintf("the same key within %d ms counts once", m.Bounce.Milliseconds())}[m.Bounce == 0])
		}}
}
