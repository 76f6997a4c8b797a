package over

import (
	"fmt"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// turnIn is how many times its thickness a run needs to take up a quarter of a turn between
// two ends that are clocked, more or less in proportion to the angle: common practice, no
// source.
const turnIn = 30

// hoursApart is how far two clocks at the ends of one run are apart, 0 to 6. Each is seen
// from its own wire side, so the two are looked at in opposite directions: on a straight run
// 3 at one end lies where 9 is at the other.
func hoursApart(a, b int) int {
	apart := (a + b) % 12
	return min(apart, 12-apart)
}

// points reports whether a termination's boot points somewhere: a straight one does not.
func points(s *sheet.Sheet, t *model.Termination) bool {
	boot, ok := s.Cat.Boot(t.Boot.V)
	return ok && BootTurns[boot.Shape] > 0 && t.BootClock.Set
}

// heldBy is how much of a run lies in the boot of a termination, where it turns no more.
func heldBy(s *sheet.Sheet, t *model.Termination) unit.Millimetre {
	boot, _ := s.Cat.Boot(t.Boot.V)
	return boot.LengthMM
}

// Clocked tells which two terminations stand too near for the run between them to take up
// the turn between their keys, or between the boots of 45 or 90 degrees that are shrunk on
// them.
func Clocked(s *sheet.Sheet) {
	reach := clockedWithin(s)
	for i := range s.H.Terminations {
		b := &s.H.Terminations[i]
		if !b.Clock.Set && !points(s, b) {
			continue
		}
		for _, n := range near(s, b.ID, reach) { // none further off can be too near
			if n.term < i {
				sayClocked(s, &s.H.Terminations[n.term], b)
			}
		}
	}
}

// sayClocked says of two terminations what the run between them cannot take up.
func sayClocked(s *sheet.Sheet, a, b *model.Termination) {
	hours, at, says := 0, 0, ""
	if a.Clock.Set && b.Clock.Set {
		hours, at = hoursApart(a.Clock.V, b.Clock.V), a.Clock.V
		says = fmt.Sprintf("Its key is at %d and the key of %s at %d", a.Clock.V, b.ID, b.Clock.V)
	}
	if points(s, a) && points(s, b) && hoursApart(a.BootClock.V, b.BootClock.V) > hours {
		hours, at = hoursApart(a.BootClock.V, b.BootClock.V), a.BootClock.V
		says = fmt.Sprintf("Its boot points to %d and the boot of %s to %d", a.BootClock.V, b.ID, b.BootClock.V)
	}
	long, over := unit.Millimetre(0), unit.Millimetre(0)
	way, _ := s.Index.Between(a.ID, b.ID)
	for _, br := range way {
		long, over = long+s.H.Branches[br].LengthMM, max(over, Outermost(&s.Branches[br]))
	}
	free, clear := long, ""
	if held := heldBy(s, a) + heldBy(s, b); held > 0 {
		free = max(0, long-held)
		clear = fmt.Sprintf(", %s mm of it clear of the boots", unit.Fixed(free, 0))
	}
	if needs := turnIn * over * unit.Millimetre(hours) / 3; free < needs {
		s.Say(sheet.Warn, "clock", a.ID,
			fmt.Sprintf("%s, each seen from its wire side: the run must turn by %d degrees, and it is %s mm long%s. "+
				"Allow %s mm for that (common practice, %d x OD a quarter turn), or clock %s at %d",
				says, 30*hours, unit.Fixed(long, 0), clear, unit.Fixed(needs, 0), turnIn, b.ID, 12-at%12))
	}
}

// clockedWithin is how far apart two ends are, at most, whose run is too short for half a
// turn.
func clockedWithin(s *sheet.Sheet) unit.Millimetre {
	thickest, held := unit.Millimetre(0), unit.Millimetre(0)
	for i := range s.Branches {
		thickest = max(thickest, Outermost(&s.Branches[i]))
	}
	for i := range s.H.Terminations {
		held = max(held, heldBy(s, &s.H.Terminations[i]))
	}
	return 2*turnIn*thickest + 2*held + 1
}
