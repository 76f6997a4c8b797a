package runs

import (
	"fmt"
	"slices"

	"contralay/calc/query/run"
	"contralay/model"
	"contralay/ui/bench/board/runs/cards"
	"contralay/ui/bench/board/runs/say"
	"contralay/ui/bench/desk"
)

// The run goes piece by piece. Enter does the piece in hand, + the group that it is of, Backspace
// looks back; only what has its own row takes anything off.

// piecesOf are the pieces of a step; none of one that is one act.
func piecesOf(m *desk.Model, s run.RunStep) []run.Piece {
	if s.Kind == run.HoldStep && !build(m).EachTest.V {
		return nil // it was begun before tests were asked for one by one
	}
	return state(m).pieces.Get(m.Sheet, 0, s.Key, func() []run.Piece {
		if s.Kind == run.HoldStep {
			return run.Pieces(begun(m), s) // their limits
		}
		return run.Pieces(m.Sheet, s)
	})
}

// pieceOf is piece k of a step, and false where the step is one act or all its pieces are behind.
func pieceOf(m *desk.Model, s run.RunStep, k int) (run.Piece, bool) {
	if all := piecesOf(m, s); k < len(all) {
		return all[k], true
	}
	return run.Piece{}, false
}

// lastPiece is the last piece that a step can stand at: a layer is measured after that, a hold signed.
func lastPiece(m *desk.Model, s run.RunStep) int {
	n := len(piecesOf(m, s))
	if s.Kind == run.LayStep && n > 1 || s.Kind == run.HoldStep {
		return n
	}
	return max(0, n-1)
}

// markInHand is what finds a step again in another run: of wires that are cut the one in hand.
func markInHand(s run.RunStep, piece int) string {
	marks := s.Marks()
	return marks[min(piece, len(marks)-1)]
}

// goTo takes a step in hand, at its first piece that is not done.
func goTo(m *desk.Model, at int) {
	r, steps := state(m), runSteps(m)
	r.at, r.piece, r.page = at, 0, 0
	if at < len(steps) {
		s := steps[at]
		r.piece = min(s.FirstOpen(build(m), piecesOf(m, s)), lastPiece(m, s))
	}
	face(m)
}

// face turns the bench to the branch of the step in hand.
func face(m *desk.Model) {
	r := state(m)
	steps := runSteps(m)
	if r.at < len(steps) {
		if i, ok := m.Sheet.Index.Branch[steps[r.at].Of]; ok {
			m.Branch = i
		}
	}
	if m.Top() == RunKind {
		m.Unput() // Enter does the step, wherever the cursor stood when this branch was last in hand
	}
}

// RunBack goes a page or a piece back; nothing is undone by that.
func RunBack(m *desk.Model) {
	r, steps := state(m), runSteps(m)
	switch {
	case r.page > 0:
		r.page--
		m.Tell("one page back")
		return
	case r.piece > 0 && r.at < len(steps):
		r.piece--
	case r.at == 0:
		m.Tell("this is the first step")
		return
	default:
		r.at--
		r.piece, r.page = lastPiece(m, steps[r.at]), 0
		face(m)
	}
	m.Tell("one back. What is done stays done")
}

// next goes on from a piece that was done before: to the next one, or the next step.
func next(m *desk.Model, says string) {
	r, s := state(m), runSteps(m)[state(m).at]
	if r.piece < lastPiece(m, s) {
		r.piece, r.page = r.piece+1, 0
	} else {
		r.at, r.piece, r.page = r.at+1, 0, 0
		face(m)
	}
	m.Tell(says)
}

// onward goes on from what was ticked now: to the next piece that is open, in the step in hand or
// after it. Nothing is gone past but what is done.
func onward(m *desk.Model) {
	r, steps, b := state(m), runSteps(m), build(m) // where the step in hand is by now
	if r.at < len(steps) && !steps[r.at].In(b) {
		all := piecesOf(m, steps[r.at])
		for k := range all {
			if p := (r.piece + k) % len(all); !steps[r.at].Has(b, all[p]) {
				r.piece, r.page = p, 0
				return
			}
		}
		r.piece, r.page = lastPiece(m, steps[r.at]), 0
		return
	}
	for at := r.at + 1; at < len(steps); at++ {
		if !steps[at].In(b) {
			goTo(m, at)
			return
		}
	}
	r.at, r.piece, r.page = len(steps), 0, 0
}

// held refuses what is about to be done where a hold before it is not signed: nothing goes past one, from
// wherever a step was jumped to.
func held(m *desk.Model) bool {
	b := build(m)
	for _, s := range runSteps(m)[:state(m).at] {
		if s.Kind == run.HoldStep && !s.In(b) {
			m.Refuse(say.Step(m, s) + " comes before this and is not signed. All steps has it")
			return true
		}
	}
	return false
}

// tick marks the step in hand as done and goes on.
func tick(m *desk.Model, f func(b *model.Build)) {
	r, steps := state(m), runSteps(m)
	if r.at >= len(steps) {
		return
	}
	s := steps[r.at]
	if f == nil && s.In(build(m)) {
		next(m, "it was done already")
		return
	}
	if held(m) {
		return
	}
	says := "done: " + say.Step(m, s)
	m.Change(withAll(m, s, func(b *model.Build) {
		if f != nil {
			f(b)
		}
		by := r.who
		if k := slices.IndexFunc(b.Signed, func(g model.Signature) bool { return g.Step == s.Key }); k >= 0 {
			by = b.Signed[k].By
		}
		s.Tick(b, facts(m), now(m), by)
	}), says)
	if m.Trouble {
		return // refused, and said
	}
	onward(m)
	m.Tell(says)
}

// tickPiece marks the piece in hand as done and goes on.
func tickPiece(m *desk.Model) {
	r, s := state(m), runSteps(m)[state(m).at]
	all := piecesOf(m, s)
	p := all[r.piece]
	if p.Check.Kind != run.NoCheck {
		passPiece(m, s, p)
		return
	}
	if s.Has(build(m), p) {
		next(m, "it was done already")
		return
	}
	if held(m) {
		return
	}
	if s.Kind == run.LayStep && len(all) == 1 { // one piece is measured as it is laid
		if !odd(m, s) {
			tick(m, nil)
		}
		return
	}
	says := say.Piece(m, s, p)
	m.Change(withAll(m, s, func(b *model.Build) { s.Begin(b, all, []run.Piece{p}, facts(m), now(m), r.who) }), says)
	if m.Trouble {
		return
	}
	onward(m)
	m.Tell(says)
}

// tickGroup marks all that goes with the piece in hand as done. It goes past no hold.
func tickGroup(m *desk.Model, by int) {
	r, steps := state(m), runSteps(m)
	if by < 0 {
		m.Tell("+ ticks all that goes together; Backspace looks back and takes nothing off")
		return
	}
	s := steps[r.at]
	p, _ := pieceOf(m, s, min(r.piece, max(0, len(piecesOf(m, s))-1)))
	group := run.Group(m.Sheet, steps, build(m), r.at, p)
	if s.In(build(m)) || len(group) == 0 && s.Kind != run.LayStep && p.Check.Kind == run.NoCheck {
		next(m, "all of it was done already")
		return
	}
	if held(m) {
		return
	}
	if s.Kind == run.LayStep && odd(m, s) {
		return
	}
	if len(group) == 0 && p.Check.Kind != run.NoCheck || p.Check.NeedsReading() {
		m.Refuse("type what the instrument reads: digits, then Enter")
		return
	}
	if s.Kind == run.LotStep && len(cards.LotsOf(build(m), s.Of)) == 0 {
		m.Refuse("type the number on the label, or take the row that says it has none")
		return
	}
	says := "ticked: " + say.Group(m, s, p, len(group))
	m.Change(withAll(m, s, func(b *model.Build) {
		for _, item := range group {
			of := steps[item.Step]
			if c := item.Piece.Check; c.Kind != run.NoCheck {
				of.Test(b, piecesOf(m, of), c, model.Opt[float64]{}, "", r.instrument[c.Kind], now(m), r.who)
				continue
			}
			if item.Piece.Key == "" {
				of.Tick(b, facts(m), now(m), r.who)
				continue
			}
			of.Begin(b, piecesOf(m, of), []run.Piece{item.Piece}, facts(m), now(m), r.who)
		}
		if s.Kind == run.LayStep {
			s.Tick(b, facts(m), now(m), r.who)
		}
	}), says)
	if m.Trouble {
		return
	}
	onward(m)
	m.Tell(says)
}

// odd reports whether the reading of a layer is out of tolerance and this is asked for the first
// time; it is then said.
func odd(m *desk.Model, s run.RunStep) bool {
	r := build(m).ReadingOf(s.Of, s.Layer)
	e, ok := explained(m, s, r)
	if ok && (e.Told == run.TooThick || e.Told == run.TooThin) && !s.In(build(m)) && !again(m, fmt.Sprint(s.Key, *s.Readings(r))) {
		m.Refuse("it is out of tolerance: look first. Press again to go on anyway")
		return true
	}
	return false
}
