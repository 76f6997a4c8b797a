package bench

import (
	"errors"
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
		v, err := m.partSize(text, calc.MostWall(t))
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
	v := min(max(0.05, unit.Millimetre(unit.RoundHalfUp(float64(t.WallMM)+0.05*float64(by), 0.01))), calc.MostWall(t))
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
		add := func(key, text string, v unit.Millimetre, read bool, at func(p *model.Part) *model.Opt[unit.Millimetre]) {
			from := b.From(read)
			p.rows = append(p.rows, row{key: key, text: fmt.Sprintf("%-32s %s%s %s", text, m.sys.Fine(v), memMark(from.Standing == catalogue.Memory), m.sys.Name()), detail: "digits: as the part has it",
				why: []reason{{made: func() (calc.Why, bool) { return calc.LookedUp(text, float64(v), calc.Diameter, from), true }}},
				field: &field{label: text + " of " + id, unit: m.sys.Name(), value: m.sys.Fine(v), number: true, set: func(m *Model, t string) error {
					if t == "" {
						h := m.h.EditPart(id, func(p *model.Part) { *at(p) = model.Opt[unit.Millimetre]{} })
						if err := m.sound(h, id); err != nil {
							return err
						}
						m.change(h, "back to the catalogue's")
						return nil
					}
					v, err := m.partSize(t, mostPart)
					if err != nil {
						return err
					}
					h := m.h.EditPart(id, func(p *model.Part) { *at(p) = model.Some(v) })
					if err := m.sound(h, id); err != nil {
						return err
					}
					m.change(h, fmt.Sprintf("%s of %s is %s %s, read off the part", text, id, m.sys.Fine(v), m.sys.Name()))
					return nil
				}}})
		}
		type opt = *model.Opt[unit.Millimetre]
		add("cable least", "bore at the cable, recovered", b.CableRecoveredMM, b.Read.CableRecovered, func(p *model.Part) opt { return &p.CableRecMM })
		add("cable most", "bore at the cable, as supplied", b.CableSuppliedMM, b.Read.CableSupplied, func(p *model.Part) opt { return &p.CableSupMM })
		add("lip least", "bore at the connector, recovered", b.LipRecoveredMM, b.Read.LipRecovered, func(p *model.Part) opt { return &p.LipRecMM })
		add("lip most", "bore at the connector, supplied", b.LipSuppliedMM, b.Read.LipSupplied, func(p *model.Part) opt { return &p.LipSupMM })
		add("length", "length, recovered", b.LengthMM, b.Read.Length, func(p *model.Part) opt { return &p.LengthMM })
		return p
	}}
}

// sound refuses a boot whose bore recovered is not less than that as supplied.
func (m *Model) sound(h *model.Harness, id string) error {
	b, known := m.built(h).Cat.Boot(id)
	if says, ok := calc.Shrinks(b); known && !ok {
		return errors.New(says)
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
