package add

import (
	"fmt"

	"contralay/calc/sheet"
	"contralay/model"
)

// mostSpares is a stop against a slip of the finger.
const mostSpares = 200

// SparesAsk is what a person answers to have spares added: from a termination to another, or to
// where they are capped.
type SparesAsk struct {
	Count      int
	From       string // termination
	To         string // termination; "" where they are capped
	CappedAt   string // breakout or termination at the end of a branch; "" where they have two ends
	Spec, Size string // "" is the shop's specification, and 22 AWG
}

// Spares adds spare wires from the next free cavities of a termination that take them. As many
// are made as there is room for; how many that is not is told.
func Spares(s *sheet.Sheet, ask SparesAsk) (Added, error) {
	m := newMaker(s)
	m.lost = "are not made"
	from, err := m.termination(ask.From)
	if err != nil {
		return Added{H: s.H}, err
	}
	to := -1
	if ask.To != "" {
		if to, err = m.termination(ask.To); err != nil {
			return Added{H: s.H}, err
		}
	}
	_, isBreakout := s.Index.Breakout[ask.CappedAt]
	_, isTermination := s.Index.Termination[ask.CappedAt]
	switch {
	case ask.Count < 1 || ask.Count > mostSpares:
		return Added{H: s.H}, fmt.Errorf("%d spares cannot be added at once; allowed: 1 to %d", ask.Count, mostSpares)
	case (ask.To == "") == (ask.CappedAt == ""):
		return Added{H: s.H}, fmt.Errorf("a spare goes to another termination, or is capped at a place; allowed: one of the two")
	case ask.CappedAt != "" && !isBreakout && !isTermination:
		return Added{H: s.H}, fmt.Errorf("there is no breakout and no termination %q to cap spares at; allowed: %s", ask.CappedAt,
			listOf(idsOf(s.H.Breakouts, func(b model.Breakout) string { return b.ID }), "none: the harness has no breakout"))
	case to == from || ask.CappedAt == ask.From:
		return Added{H: s.H}, fmt.Errorf("a spare cannot end at %s, where it begins; allowed: another place", ask.From)
	}
	spec, size := ask.Spec, ask.Size
	if spec == "" {
		spec = s.Limits.Spec
		m.chose("spec", nil, "The specification is the shop's, %s", spec)
	}
	if size == "" {
		size = placeholder
		m.chose("size", nil, "The size is %s, the commonest", model.SizeWords(size))
	}
	for range ask.Count {
		w := model.Wire{Spec: spec, Size: size, Role: model.Some(model.RoleSpare)}
		if to >= 0 && len(m.free(from, spec, size)) == 0 && m.listed(from) {
			m.cavities(from, spec, size, 1) // asked in vain: it is told
			continue
		}
		if to >= 0 {
			far, ok := m.cavities(to, spec, size, 1)
			if !ok {
				continue
			}
			w.To = model.Some(ask.To + ":" + far[0])
		} else {
			w.CappedAt = model.Some(ask.CappedAt)
		}
		near, ok := m.cavities(from, spec, size, 1)
		if !ok {
			continue
		}
		w.From = model.Some(ask.From + ":" + near[0])
		m.wire(w)
	}
	if len(m.out.Wires) == 0 {
		return Added{H: s.H}, fmt.Errorf("%s has no free cavity that takes %s %s; allowed: a size that its contacts and seals take",
			m.noRoom(from, to, spec, size), spec, model.SizeWords(size))
	}
	m.tellCavities()
	m.tellColours()
	return m.done(), nil
}

// noRoom is the end of a spare that has no cavity for it.
func (m *maker) noRoom(from, to int, spec, size string) string {
	if to >= 0 && len(m.free(to, spec, size)) == 0 && m.listed(to) {
		return m.s.H.Terminations[to].ID
	}
	return m.s.H.Terminations[from].ID
}
