package desk

import (
	"time"

	"contralay/ui/bench/words"
)

// MostBounce is the longest time the same key may be ignored.
const MostBounce = 300 * time.Millisecond

// Bounced reports whether a key is the same as the last one, so soon after it that
// it is taken for one press: a worn key, a glove. Arrows are left alone, as they are
// held down; and so is what arrives in one burst, as a calliper sends it. It is off
// until it is set, since a terminal does not tell when a key is let go: a calliper
// that types slowly could lose one of two equal digits.
func (m *Model) Bounced(k words.Key) bool {
	if m.Bounce <= 0 || m.Cfg.Now == nil || k.Paste {
		return false
	}
	switch k.Name {
	case "up", "down", "left", "right":
		m.lastKey = ""
		return false
	}
	now := m.Cfg.Now()
	same := k.Name == m.lastKey && now.Sub(m.lastTime) < m.Bounce
	if !same { // a run of bounces is measured from the press that was taken
		m.lastKey, m.lastTime = k.Name, now
	}
	return same
}
