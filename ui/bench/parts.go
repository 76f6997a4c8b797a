package bench

import (
	"fmt"

	"contralay/calc"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// What is read off a part in hand, entered where it decides; it takes the place of what the
// catalogue has from memory.

// given is where a value comes from that the file holds.
var given = catalogue.Origin{Source: "given in the file", Standing: catalogue.House}

// mostPart is more than any boot or wall measures.
const mostPart unit.Millimetre = 500

// wallField takes the wall read off a tube's reel; an empty value gives the catalogue's
// back.
func (m *Model) wallField(id string) *field {
	t, ok := m.sheet.Cat.Tube(id)
	if !ok {
		return nil
	}
	return &field{label: "wall of " + id + ", off its reel", unit: m.sys.Name(), value: m.sys.Fine(t.WallMM), number: true, set: func(m *Model, text string) error {
		if text == "" {
			m.change(m.h.EditPart(id, func(p *model.Part) { p.WallMM = model.Opt[unit.Millimetre]{} }), "back to the catalogue's wall")
			return nil
		}
		v, err := m.partSize(text, t.SuppliedMM)
		if err != nil {
			return err
		}
		m.change(m.h.EditPart(id, func(p *model.Part) { p.WallMM = model.Some(v) }), fmt.Sprintf("wall of %s is %s %s, read off the reel", id, m.sys.Fine(v), m.sys.Name()))
		return nil
	}}
}

// stepWall makes it thicker or thinner by what a reel's sheet tells apart.
func (m *Model) stepWall(id string, by int) {
	t, ok := m.sheet.Cat.Tube(id)
	if !ok {
		return
	}
	v := max(0.05, t.WallMM+unit.Millimetre(float64(by)*0.05))
	m.change(m.h.EditPart(id, func(p *model.Part) { p.WallMM = model.Some(v) }), fmt.Sprintf("wall of %s is %s %s, read off the reel", id, m.sys.Fine(v), m.sys.Name()))
}

// partSize reads a size of a part, more than 0 and up to most.
func (m *Model) partSize(text string, most unit.Millimetre) (unit.Millimetre, error) {
	v, err := m.sys.Parse(text)
	if err != nil {
		return 0, err
	}
	if v <= 0 || v > most {
		return 0, fmt.Errorf("%s %s is out of range: more than 0, %s %s at most", text, m.sys.Name(), m.sys.Fine(most), m.sys.Name())
	}
	return v, nil
}

// bootScreen is a boot with its sizes, each to be typed off the part.
func bootScreen(id string) screen {
	return screen{name: "boot", of: id, page: func(m *Model, w int) page {
		b, ok := m.sheet.Cat.Boot(id)
		if !ok {
			return page{empty: "boot " + id + " is in no catalogue; Esc goes back"}
		}
		p := page{lines: []string{id + ", shrunk on as it comes", "Digits take what is read off the part or its drawing; an empty value gives the catalogue's back."}}
		long := b.LengthStanding
		if long == "" {
			long = b.Standing
		}
		add := func(key, text string, v unit.Millimetre, st catalogue.Standing, set func(p *model.Part, v unit.Millimetre), clear func(p *model.Part)) {
			from := b.Origin
			from.Standing = st
			p.rows = append(p.rows, row{key: key, text: fmt.Sprintf("%-32s %s%s %s", text, m.sys.Fine(v), memMark(st == catalogue.Memory), m.sys.Name()), detail: "digits: as the part has it",
				why: []reason{{made: func() (calc.Why, bool) { return calc.LookedUp(text, float64(v), calc.Diameter, from), true }}},
				field: &field{label: text + " of " + id, unit: m.sys.Name(), value: m.sys.Fine(v), number: true, set: func(m *Model, t string) error {
					if t == "" {
						m.change(m.h.EditPart(id, clear), "back to the catalogue's")
						return nil
					}
					v, err := m.partSize(t, mostPart)
					if err != nil {
						return err
					}
					h := m.h.EditPart(id, func(p *model.Part) { set(p, v) })
					if err := sound(h, id); err != nil {
						return err
					}
					m.change(h, fmt.Sprintf("%s of %s is %s %s, read off the part", text, id, m.sys.Fine(v), m.sys.Name()))
					return nil
				}}})
		}
		pair := func(two *[]unit.Millimetre, rec, sup unit.Millimetre) *[]unit.Millimetre {
			if len(*two) != 2 {
				*two = []unit.Millimetre{rec, sup}
			} else {
				*two = []unit.Millimetre{(*two)[0], (*two)[1]}
			}
			return two
		}
		noCable, noLip := func(p *model.Part) { p.CableMM = nil }, func(p *model.Part) { p.LipMM = nil }
		add("cable least", "bore at the cable, recovered", b.CableRecoveredMM, b.Standing, func(p *model.Part, v unit.Millimetre) {
			(*pair(&p.CableMM, b.CableRecoveredMM, b.CableSuppliedMM))[0] = v
		}, noCable)
		add("cable most", "bore at the cable, as supplied", b.CableSuppliedMM, b.Standing, func(p *model.Part, v unit.Millimetre) {
			(*pair(&p.CableMM, b.CableRecoveredMM, b.CableSuppliedMM))[1] = v
		}, noCable)
		add("lip least", "bore at the connector, recovered", b.LipRecoveredMM, m.lipStanding(id, b), func(p *model.Part, v unit.Millimetre) { (*pair(&p.LipMM, b.LipRecoveredMM, b.LipSuppliedMM))[0] = v }, noLip)
		add("lip most", "bore at the connector, supplied", b.LipSuppliedMM, m.lipStanding(id, b), func(p *model.Part, v unit.Millimetre) { (*pair(&p.LipMM, b.LipRecoveredMM, b.LipSuppliedMM))[1] = v }, noLip)
		add("length", "length, recovered", b.LengthMM, long, func(p *model.Part, v unit.Millimetre) { p.LengthMM = model.Some(v) }, func(p *model.Part) { p.LengthMM = model.Opt[unit.Millimetre]{} })
		return p
	}}
}

// lipStanding is how far the bore at the connector can be trusted.
func (m *Model) lipStanding(id string, b catalogue.Boot) catalogue.Standing {
	for _, p := range m.h.Parts {
		if p.ID == id && len(p.LipMM) == 2 {
			return catalogue.House
		}
	}
	if base, ok := m.cfg.Cat.Boot(id); ok {
		return base.Standing
	}
	return b.Standing
}

// sound refuses a part whose bore recovered is not less than that as supplied.
func sound(h *model.Harness, id string) error {
	for _, p := range h.Parts {
		for _, two := range [][]unit.Millimetre{p.CableMM, p.LipMM} {
			if p.ID == id && len(two) == 2 && two[0] >= two[1] {
				return fmt.Errorf("it would shrink to %s mm from %s: the bore recovered is the lesser one", unit.Fixed(float64(two[0]), 2), unit.Fixed(float64(two[1]), 2))
			}
		}
	}
	return nil
}

// loopRow is the service loop of a termination and what it has in its boot.
func (m *Model) loopRow(t int) row {
	term := &m.h.Terminations[t]
	id := term.ID
	l := m.sheet.LoopRoomOf(t)
	text := fmt.Sprintf("loop %s  %s %s, good for %d", id, m.sys.Length(l.LoopMM), m.sys.Name(), l.Again)
	detail := "how often a contact can be made anew from it; + - changes it"
	why := figs(id, 0, "", "loop.length")
	if l.Known {
		why = figs(id, 0, "", "loop.length", "loop.bow", "loop.room", "loop.longest", "loop.turn")
		switch {
		case l.LoopMM <= 0:
		case l.Fits:
			text += fmt.Sprintf(", bows %s of %s %s", m.sys.Diameter(l.BowMM), m.sys.Diameter(l.RoomMM), m.sys.Name())
		default:
			text += fmt.Sprintf(", no room: %s %s lie in it", m.sys.Length(l.LongestMM), m.sys.Name())
		}
		if l.TurnMM > 0 {
			detail = fmt.Sprintf("the boot's bend takes %s %s of it on the outer side; + - changes it", m.sys.Length(l.TurnMM), m.sys.Name())
		}
	}
	return row{key: "loop " + id, text: text, detail: detail, why: why, mark: m.markFor(id),
		step: func(m *Model, by int) {
			v := max(0, l.LoopMM+unit.Millimetre(by))
			m.change(m.h.EditTermination(m.sheet.X.Termination[id], func(t *model.Termination) { t.LoopMM = model.Some(v) }), fmt.Sprintf("loop of %s is %s %s", id, m.sys.Length(v), m.sys.Name()))
		}}
}
