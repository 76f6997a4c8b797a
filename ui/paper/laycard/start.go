package laycard

import (
	"fmt"
	"math"

	"contralay/model"
	"contralay/ui/paper/list"
)

// Start is where position 1 of a layer lies. It lies at 12 o'clock of the picture, which is seen from
// the from end of the branch along the bundle; clocks of a file are seen from the wire side, which is
// the other way, so that 3 o'clock there is 9 o'clock here.
type Start struct {
	Says string
	Key  model.Opt[int] // o'clock in the picture
	Boot model.Opt[int]
}

// mirrored is an hour of the wire side as it is seen along the bundle from the connector.
func mirrored(hour int) int { return (23-hour)%12 + 1 }

// startOf says where position 1 lies where a branch is seen from a place; nothing where that is a
// breakout, which has no key.
func startOf(m list.Maker, place string) Start {
	t, is := m.S.Index.Termination[place]
	if !is {
		return Start{} // on top, which is said once
	}
	e := &m.H.Terminations[t]
	out := Start{}
	if e.Clock.Set {
		out.Key = model.Some(mirrored(e.Clock.V))
	}
	if e.BootClock.Set {
		out.Boot = model.Some(mirrored(e.BootClock.V))
	}
	switch {
	case out.Key.Set:
		out.Says = fmt.Sprintf("Seen from %s, along the bundle, position 1 lies %s its key. Count on clockwise.", place,
			after(out.Key.V))
	case out.Boot.Set:
		out.Says = fmt.Sprintf("Seen from %s, along the bundle, position 1 lies %s the way its boot points. Count on clockwise.", place,
			after(out.Boot.V))
	default:
		out.Says = fmt.Sprintf("The file does not say where the key of %s points: position 1 lies on top, as %s lies on the board.", place,
			place)
	}
	return out
}

// after is how far clockwise 12 o'clock lies from an hour, in words.
func after(hour int) string {
	switch n := (12 - hour) % 12; n {
	case 0:
		return "in line with"
	case 6:
		return "opposite"
	case 3:
		return "a quarter turn clockwise from"
	case 9:
		return "a quarter turn anticlockwise from"
	default:
		if n > 6 {
			return fmt.Sprintf("%s anticlockwise from", hoursWord(12-n))
		}
		return fmt.Sprintf("%s clockwise from", hoursWord(n))
	}
}

// hoursWord is so many hours of a clock in words.
func hoursWord(n int) string {
	if n == 1 {
		return "1 hour"
	}
	return fmt.Sprintf("%d hours", n)
}

// clockOf is where a piece lies in words: "at 9 o'clock"; "in the middle".
func clockOf(r Row) string {
	if math.Hypot(float64(r.Of.X), float64(r.Of.Y)) < 1e-6 {
		return "in the middle"
	}
	h := int(math.Mod(math.Round(hours(r.Of)), 12))
	if h == 0 {
		h = 12
	}
	return fmt.Sprintf("at %d o'clock", h)
}

// around is a place on a circle round (c, c), degrees clockwise from the top.
func around(c, r, degrees float64) (x, y float64) {
	sin, cos := math.Sincos(degrees * math.Pi / 180)
	return c + r*sin, c - r*cos
}
