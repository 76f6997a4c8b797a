package bench

import (
	"fmt"
	"time"
)

// MostBounce is the longest time the same key may be ignored.
const MostBounce = 300 * time.Millisecond

// bounceStep is what + - changes it by.
const bounceStep = 20 * time.Millisecond

// bounced reports whether a key is the same as the last one, so soon after it that
// it is taken for one press: a worn key, a glove. Arrows are left alone, as they are
// held down; and so is what arrives in one burst, as a calliper sends it. It is off
// until it is set, since a terminal does not tell when a key is let go: a calliper
// that types slowly could lose one of two equal digits.
func (m *Model) bounced(k key) bool {
	if m.bounce <= 0 || m.cfg.Now == nil || k.paste {
		return false
	}
	switch k.name {
	case "up", "down", "left", "right":
		m.lastKey = ""
		return false
	}
	now := m.cfg.Now()
	same := k.name == m.lastKey && now.Sub(m.lastTime) < m.bounce
	if !same { // a run of bounces is measured from the press that was taken
		m.lastKey, m.lastTime = k.name, now
	}
	return same
}

// bounceRow sets the filter.
func (m *Model) bounceRow() row {
	says := "off"
	if m.bounce > 0 {
		says = fmt.Sprintf("within %d ms counts once", m.bounce.Milliseconds())
	}
	return row{key: "bounce", text: "same key again     " + says, detail: "for worn keys and gloves, 60 to 80 ms; leave it off where a calliper types", step: func(m *Model, by int) {
		m.bounce = min(max(m.bounce+time.Duration(by)*bounceStep, 0), MostBounce)
		m.tell(map[bool]string{true: "every key counts", false: fmt.Sprintf("the same key within %d ms counts once", m.bounce.Milliseconds())}[m.bounce == 0])
	}}
}
