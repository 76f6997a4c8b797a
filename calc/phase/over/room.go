package over

import (
	"fmt"

	"contralay/calc/formula/loop"
	"contralay/calc/phase/length"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// LoopRoom is what a termination's service loop has in its boot.
type LoopRoom struct {
	LoopMM    unit.Millimetre
	Again     int             // how often a contact can be made anew from it
	Bows      int             // it lies in so many
	BowMM     unit.Millimetre // that stand so far off the bundle
	RoomMM    unit.Millimetre // and has room to
	Fits      bool            // it has room, as far as boot and bundle are known
	LongestMM unit.Millimetre // loop that has room; worked out where this one has none
	TurnMM    unit.Millimetre // what the boot's bend takes from the wires on its outer side
	Known     bool            // boot and bundle are known: else what hangs on them is not
}

// LoopRoomOf is what the loop of termination t has.
func LoopRoomOf(s *sheet.Sheet, t int) LoopRoom {
	term := &s.H.Terminations[t]
	out := LoopRoom{LoopMM: length.Loop(s, term.ID+":"), Fits: true}
	out.Again = loop.Again(out.LoopMM)
	boot, ok := s.Cat.Boot(term.Boot.V)
	over := unit.Millimetre(0)
	for _, b := range s.Index.Meeting(term.ID) {
		over = max(over, s.Branches[b].OverMM)
	}
	if !ok || over <= 0 || boot.LipSuppliedMM <= 0 || boot.LengthMM <= 0 {
		return out
	}
	out.Known = true
	out.RoomMM = max(0, (boot.LipSuppliedMM-over)/2)
	radius := Supported * ThickestAt(s, term.ID)
	out.Bows, out.BowMM, out.Fits = loop.Fit(out.LoopMM, boot.LengthMM, out.RoomMM, radius)
	if !out.Fits {
		out.LongestMM = loop.Longest(boot.LengthMM, out.RoomMM, radius)
	}
	out.TurnMM = loop.Turn(over, BootTurns[boot.Shape])
	return out
}

// Supported is how many times its thickness a wire may be bent to where it is held: AC
// 43.13-1B and AS50881 as a list posting quotes them.
const Supported = 3

// ThickestAt is the thickest wire that ends at a termination.
func ThickestAt(s *sheet.Sheet, id string) unit.Millimetre {
	d := unit.Millimetre(0)
	for _, c := range s.Terms[s.Index.Termination[id]].State {
		for _, w := range c.Wires {
			d = max(d, s.Wires[s.Index.Wire[w]].Dia.Nominal)
		}
	}
	return d
}

// BootTurns is the angle a boot of a shape turns by.
var BootTurns = map[string]unit.Degree{"45": 45, "90": 90}

// Loops tells which service loop has no room in its boot, or is taken up by its bend, and
// which connector has no room behind it.
func Loops(s *sheet.Sheet) {
	for t := range s.H.Terminations {
		term := &s.H.Terminations[t]
		l := LoopRoomOf(s, t)
		switch {
		case !l.Fits && loopJudged(s, term):
			s.SayLike(sheet.Note, "loop.room", term.ID, "",
				fmt.Sprintf("Its loop of %s mm does not fit in %s, which has %s mm beside the bundle: the longest loop that fits is %s mm",
					unit.Fixed(l.LoopMM, 0), term.Boot.V, unit.Fixed(l.RoomMM, 2),
					unit.Fixed(l.LongestMM, 0)))
		case l.Known && l.LoopMM > 0 && l.TurnMM > l.LoopMM:
			s.SayLike(sheet.Note, "loop.turn", term.ID, "",
				fmt.Sprintf("The bend of %s takes %s mm from its outer wires, and the loop is %s mm: they have no loop left",
					term.Boot.V, unit.Fixed(l.TurnMM, 0), unit.Fixed(l.LoopMM, 0)))
		}
		space(s, term)
	}
}

// loopJudged reports whether a loop that has no room is worth a word: it was asked for, or
// the boot's sizes were read off it. Our own default in a boot from memory is neither.
func loopJudged(s *sheet.Sheet, term *model.Termination) bool {
	boot, _ := s.Cat.Boot(term.Boot.V)
	return term.LoopMM.Set || s.H.Rules.LoopMM.Set || boot.Read.LipSupplied && boot.Read.Length
}

// space tells where a straight boot and the bend behind it need more than there is.
func space(s *sheet.Sheet, term *model.Termination) {
	if !term.SpaceMM.Set {
		return
	}
	boot, ok := s.Cat.Boot(term.Boot.V)
	if !ok || boot.Shape != "straight" {
		return
	}
	for _, b := range s.Index.Meeting(term.ID) {
		over, _ := OverFrom(s, b, term.ID, boot.LengthMM, boot.LengthMM+s.Branches[b].Bend.MinMM)
		need := boot.LengthMM + s.Branches[b].Bend.MinMM + over
		if bend := s.Branches[b].Bend.MinMM; bend > 0 && need > term.SpaceMM.V {
			s.Say(sheet.AtMost(boot.From(boot.Read.Length).Standing, sheet.Warn), "boot.space", term.ID,
				fmt.Sprintf("It has %s mm behind it, and a straight boot with its bend takes %s mm: use a 90 degree boot, or "+
					"another place%s",
					unit.Fixed(term.SpaceMM.V, 0), unit.Fixed(need, 0), placeholder("length", boot.From(boot.Read.Length))))
		}
	}
}
