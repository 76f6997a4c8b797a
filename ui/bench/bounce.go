package bench

import (
	"fmt"
	"time"

	"contralay/ui/bench/desk"
)

// bounceStep is what + - changes it by.
const bounceStep = 20 * time.Millisecond

// bounceRow sets the filter.
func bounceRow(m *desk.Model) desk.Row {
	says := "off"
	if m.Bounce.Within > 0 {
		says = fmt.Sprintf("within %d ms counts once", m.Bounce.Within.Milliseconds())
	}
	return desk.Row{Key: "bounce", Text: "a repeated key     " + says,
		Detail: "For worn keys and gloves, 60 to 80 ms. Leave it off if a calliper types", Step: func(m *desk.Model, by int) {
			m.Bounce.Within = min(max(m.Bounce.Within+time.Duration(by)*bounceStep, 0), desk.MostBounce)
			if m.Bounce.Within == 0 {
				m.Tell("every key counts")
				return
			}
			m.Tell(fmt.Sprintf("the same key within %d ms counts once", m.Bounce.Within.Milliseconds()))
		}}
}
