package desk

import (
	"time"

	"contralay/ui/bench/words"
)

// MostBounce is the longest time the same key may be ignored.
const MostBounce = 300 * time.Millisecond

// Bounce takes the same key twice, so soon after each other, for one press: a worn key, a
// glove. Arrows are left alone, as they are held down; and so is what arrives in one burst, as
// a calliper sends it. It is off until it is set, since a terminal does not tell when a key is
// let go: a calliper that types slowly could lose one of two equal digits.
type Bounce struct {
	Within time.Duration // 0 is off
	Enter  time.Duration // of a second bare Enter where Enter ticks work off; 0 is off

	last    string    // the key that was taken last
	when    time.Time // and when
	entered time.Time // when the last Enter was done with, whether it counted or not
}

// Again reports whether a key is that press once more; now is the clock, or nil.
func (b *Bounce) Again(k words.Key, now func() time.Time) bool {
	if b.Within <= 0 || now == nil || k.Paste {
		return false
	}
	switch k.Name {
	case "up", "down", "left", "right":
		b.last = ""
		return false
	}
	at := now()
	same := k.Name == b.last && at.Sub(b.when) < b.Within
	if !same { // a run of bounces is measured from the press that was taken
		b.last, b.when = k.Name, at
	}
	return same
}

// Bounced reports whether an Enter counts as none: a bare one, with no field open, so soon after
// another Enter. The time runs from the last that came, so that a key which is held down counts
// once; the Enter that ends what is typed always counts, as does every other key.
func (b *Bounce) Bounced(bare bool, now func() time.Time) bool {
	if b.Enter <= 0 || now == nil {
		return false
	}
	at := now()
	soon := bare && !b.entered.IsZero() && at.Sub(b.entered) < b.Enter
	b.entered = at
	return soon
}

// Entered says that an Enter is done with: writing it down may have taken its time.
func (b *Bounce) Entered(now func() time.Time) {
	if b.Enter > 0 && now != nil {
		b.entered = now()
	}
}

// Ticking reports whether Enter ticks work off here, or leads back to where it does.
func Ticking(m *Model) bool {
	for _, s := range m.Stack {
		if s.place.Ticks {
			return true
		}
	}
	return false
}
