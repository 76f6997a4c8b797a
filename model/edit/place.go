package edit

import (
	"fmt"
	"slices"
	"strings"

	"contralay/model"
)

// ToBreakout makes a breakout of a termination, under the same id and name: branches meet there
// in place of a part. Wires that end in it lose that end, which is refused unless loseEnds says
// that they may.
func ToBreakout(h *model.Harness, termination string, loseEnds bool) (*model.Harness, error) {
	i, err := at(h, Termination, termination)
	if err != nil {
		return h, err
	}
	if ends := endingAt(h, termination); len(ends) > 0 && !loseEnds {
		return h, fmt.Errorf("%s at %s: take them off it first, or let them lose that end", plural("wire", ends, "ends", "end"),
			termination)
	}
	name := h.Terminations[i].Name
	self := thing{Termination, termination}
	g := gone{self: true}
	g.follow(h) // wires that end nowhere else
	delete(g, self)
	n := without(h, g)
	for _, m := range mentions {
		if m.names != anEnd && m.names != aDrain || m.outlives {
			continue
		}
		m.each(n, func(_, text string) (string, bool) { return text, !slices.Contains(m.names.named(text), self) })
	}
	n.Terminations = less(h.Terminations, func(k int) bool { return k == i })
	n.Breakouts = append(slices.Clone(n.Breakouts), model.Breakout{ID: termination, Name: name})
	return n, nil
}

// endingAt is the wires that end in a termination.
func endingAt(h *model.Harness, termination string) []string {
	var out []string
	for i := range h.Wires {
		w := &h.Wires[i]
		for _, text := range []string{w.From.V, w.To.V} {
			if end, ok := model.ParseEnd(text); ok && end.Termination == termination && !slices.Contains(out, w.ID) {
				out = append(out, w.ID)
			}
		}
	}
	return out
}

// ToTermination makes a termination of a breakout where no more than one branch ends, under the
// same id and name. It has no cavities yet.
func ToTermination(h *model.Harness, breakout string) (*model.Harness, error) {
	i, err := at(h, Breakout, breakout)
	if err != nil {
		return h, err
	}
	if meet := model.NewIndex(h).Meeting(breakout); len(meet) > 1 {
		return h, fmt.Errorf("%s meet at %s: a termination is the end of one", branchesOf(h, meet), breakout)
	}
	if strings.Contains(breakout, ":") {
		return h, fmt.Errorf("%s has a colon: a termination has none, because wires write TERMINATION:CAVITY. Rename it first", breakout)
	}
	for k := range h.Splices {
		if h.Splices[k].At == breakout {
			return h, fmt.Errorf("splice %s is at %s: move it to another breakout first", h.Splices[k].ID, breakout)
		}
	}
	n := *h
	n.Breakouts = less(h.Breakouts, func(k int) bool { return k == i })
	n.Terminations = append(slices.Clone(h.Terminations), model.Termination{ID: breakout, Name: h.Breakouts[i].Name})
	return &n, nil
}

// EditBreakout changes one breakout; f gets a copy. The harness comes back as it was where there
// is no breakout of that id.
func EditBreakout(h *model.Harness, id string, f func(*model.Breakout)) *model.Harness {
	i, err := at(h, Breakout, id)
	if err != nil {
		return h
	}
	n := *h
	n.Breakouts = slices.Clone(h.Breakouts)
	f(&n.Breakouts[i])
	return &n
}
