package bulk

import (
	"fmt"

	"contralay/calc/phase/wires"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// LikeAsk asks for wires like one.
type LikeAsk struct {
	Wire    string
	Count   int
	DeadEnd bool // a spare for which one end has no cavity is capped there
}

// MostAtOnce bounds how many wires are made by one ask.
const MostAtOnce = 200

// Like makes wires like one, to the next free cavities at the same two ends whose contacts and
// seals take it; an end in a splice, or capped, stays where it is. Where an end has too few it
// makes what it can and says why no more. What was measured along the one, its note and its return
// are its own; so is its feed.
func Like(s *sheet.Sheet, ask LikeAsk) (Made, error) {
	k, ok := s.Index.Wire[ask.Wire]
	if !ok {
		return Made{}, fmt.Errorf("there is no wire %q", ask.Wire)
	}
	if ask.Count < 1 || ask.Count > MostAtOnce {
		return Made{}, fmt.Errorf("%d is out of range: 1 to %d wires at once", ask.Count, MostAtOnce)
	}
	like := s.H.Wires[k]
	if ask.DeadEnd && like.Role.V != model.RoleSpare {
		return Made{}, fmt.Errorf("wire %s is no spare: only a spare may end without a cavity", like.ID)
	}
	out := Made{H: s.H}
	taken, last := map[string]bool{}, like.ID
	for range ask.Count {
		w := like
		w.ID = out.H.NextID(last)
		last = w.ID
		w.Return, w.Note, w.DropV = model.Opt[string]{}, model.Opt[string]{}, model.Opt[unit.Volt]{}
		if out.Short = endsLike(s, &w, &like, taken, ask.DeadEnd); out.Short != "" {
			break
		}
		path, way := wires.Path(s, &w)
		if !way {
			out.Short = fmt.Sprintf("no branch leads from %s to %s", w.From.V, w.To.V)
			break
		}
		out.H = out.H.AddWire(w, path)
		out.Wires = append(out.Wires, w.ID)
	}
	if len(out.Wires) == 0 {
		return Made{}, fmt.Errorf("nothing is made: %s", out.Short)
	}
	out.Says = count(len(out.Wires), "wire") + " like " + like.ID + ": " + Named(out.Wires)
	if i, fed := s.Index.FeedOf[like.ID]; fed {
		out.Says += ", on no feed yet (" + like.ID + " is on " + s.H.Feeds[i].ID + ")"
	}
	if u, in := s.Index.UnitOf[like.ID]; in {
		out.Says += ", in no unit (" + like.ID + " is in " + s.H.Units[u].ID + ")"
	}
	return out, nil
}

// endsLike gives a wire the next cavities at the ends of the one it is like, and marks them as
// taken; short says why it cannot.
func endsLike(s *sheet.Sheet, w, like *model.Wire, taken map[string]bool, deadEnd bool) (short string) {
	capped := "" // why the first end was
	for _, end := range []*model.Opt[string]{&w.From, &w.To} {
		e, given := s.Index.End(end.V)
		if !given && wires.Capped(like) || given && e.Splice != "" {
			continue
		}
		t, cavity, known := cavityAt(s, end.V)
		if !known {
			return fmt.Sprintf("wire %s has an end that leads nowhere: %q", like.ID, end.V)
		}
		if free := FreeFrom(s, t, cavity, w.Spec, w.Size, 1, taken); len(free) > 0 {
			*end = model.Some(s.H.Terminations[t].ID + ":" + free[0])
			taken[end.V] = true
			continue
		}
		why := noneFree(s, t, w.Spec, w.Size, taken)
		if !deadEnd || w.CappedAt.V != "" {
			return capped + why
		}
		capped = why + ", and "
		*end, w.CappedAt = model.Opt[string]{}, model.Some(s.H.Terminations[t].ID)
	}
	return ""
}
