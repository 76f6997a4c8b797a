package sheath

import (
	"errors"
	"fmt"

	"contralay/calc/phase/over"
	"contralay/calc/phase/wires"
	whyquery "contralay/calc/query/why"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
)

// What is read off a part in hand, entered where it decides; it takes the place of what the
// catalogue has from memory.

// wallField takes the wall read off a tube's reel; an empty value gives the catalogue's
// back.
func wallField(m *desk.Model, id string) *desk.Field {
	t, ok := m.Sheet.Cat.Tube(id)
	if !ok {
		return nil
	}
	return &desk.Field{Label: "wall of " + id + ", off its reel", Unit: m.Sys.Name(), Value: m.Sys.Fine(t.WallMM), Number: true,
		Set: func(m *desk.Model, text string) error {
			if text == "" {
				m.Change(m.H.EditPart(id, func(p *model.Part) { p.WallMM = model.Opt[unit.Millimetre]{} }), "the catalogue's wall again")
				return nil
			}
			v, err := m.PartSize(text, wires.MostWall(t))
			if err != nil {
				return err
			}
			m.Change(m.H.EditPart(id, func(p *model.Part) { p.WallMM = model.Some(v) }),
				fmt.Sprintf("wall of %s is %s %s, read off the reel", id, m.Sys.Fine(v), m.Sys.Name()))
			return nil
		}}
}

// stepWall makes it thicker or thinner by what a reel's sheet tells apart.
func stepWall(m *desk.Model, id string, by int) {
	t, ok := m.Sheet.Cat.Tube(id)
	if !ok {
		return
	}
	v := min(max(0.05, unit.Millimetre(unit.RoundHalfUp(float64(t.WallMM)+0.05*float64(by), 0.01))), wires.MostWall(t))
	m.Change(m.H.EditPart(id, func(p *model.Part) { p.WallMM = model.Some(v) }),
		fmt.Sprintf("wall of %s is %s %s, read off the reel", id, m.Sys.Fine(v), m.Sys.Name()))
}

// BootKind is the screen of one boot.
const BootKind desk.Kind = "boot"

// BootPage is a boot with its sizes, each to be typed off the part.
func BootPage(m *desk.Model, _ int, id string) desk.Page {
	b, ok := m.Sheet.Cat.Boot(id)
	if !ok {
		return desk.Page{Empty: "boot " + id + " is in no catalogue. Esc goes back"}
	}
	p := desk.Page{Lines: []string{id + ", shrunk on as supplied",
		"Type what you read off the part or its drawing. An empty value brings the catalogue's back."}}
	add := func(key, text string, v unit.Millimetre, read bool, at func(p *model.Part) *model.Opt[unit.Millimetre]) {
		from := b.From(read)
		p.Rows = append(p.Rows, desk.Row{Key: key,
			Text:   fmt.Sprintf("%-32s %s%s %s", text, m.Sys.Fine(v), words.MemMark(from.Standing == catalogue.Memory), m.Sys.Name()),
			Detail: "Digits: the size of the part in hand",
			Why: []desk.Reason{{Made: func() (whyquery.Why, bool) {
				return whyquery.LookedUp(text, float64(v), whyquery.Diameter, from),
					true
			}}},
			Field: &desk.Field{Label: text + " of " + id, Unit: m.Sys.Name(), Value: m.Sys.Fine(v), Number: true,
				Set: func(m *desk.Model, t string) error {
					if t == "" {
						h := m.H.EditPart(id, func(p *model.Part) { *at(p) = model.Opt[unit.Millimetre]{} })
						if err := sound(m, h, id); err != nil {
							return err
						}
						m.Change(h, "the catalogue's value again")
						return nil
					}
					v, err := m.PartSize(t, desk.MostPart)
					if err != nil {
						return err
					}
					h := m.H.EditPart(id, func(p *model.Part) { *at(p) = model.Some(v) })
					if err := sound(m, h, id); err != nil {
						return err
					}
					m.Change(h, fmt.Sprintf("%s of %s is %s %s, read off the part", text, id, m.Sys.Fine(v), m.Sys.Name()))
					return nil
				}}})
	}
	type opt = *model.Opt[unit.Millimetre]
	add("cable least", "bore at the cable, recovered", b.CableRecoveredMM, b.Read.CableRecovered,
		func(p *model.Part) opt { return &p.CableRecMM })
	add("cable most", "bore at the cable, as supplied", b.CableSuppliedMM, b.Read.CableSupplied,
		func(p *model.Part) opt { return &p.CableSupMM })
	add("lip least", "bore at the connector, recovered", b.LipRecoveredMM, b.Read.LipRecovered,
		func(p *model.Part) opt { return &p.LipRecMM })
	add("lip most", "bore at the connector, supplied", b.LipSuppliedMM, b.Read.LipSupplied,
		func(p *model.Part) opt { return &p.LipSupMM })
	add("length", "length, recovered", b.LengthMM, b.Read.Length, func(p *model.Part) opt { return &p.LengthMM })
	return p
}

// sound refuses a boot whose bore recovered is not less than that as supplied.
func sound(m *desk.Model, h *model.Harness, id string) error {
	b, known := m.Built(h).Cat.Boot(id)
	if says, ok := wires.Shrinks(b); known && !ok {
		return errors.New(says)
	}
	return nil
}

// loopRow is the service loop of a termination and what it has in its boot.
func loopRow(m *desk.Model, t int) desk.Row {
	term := &m.H.Terminations[t]
	id := term.ID
	l := over.LoopRoomOf(m.Sheet, t)
	text := fmt.Sprintf("loop %s  %s %s, good for %d", id, m.Sys.Length(l.LoopMM), m.Sys.Name(), l.Again)
	detail := "How often you can make a contact again from it. + - changes it"
	why := desk.FiguresOf(id, "loop.length")
	if l.Known {
		why = desk.FiguresOf(id, "loop.length", "loop.bow", "loop.room", "loop.longest", "loop.turn")
		switch {
		case l.LoopMM <= 0:
		case l.Fits:
			text += fmt.Sprintf(", needs %s of %s %s", m.Sys.Diameter(l.BowMM), m.Sys.Diameter(l.RoomMM), m.Sys.Name())
		default:
			text += fmt.Sprintf(", too long: %s %s fits", m.Sys.Length(l.LongestMM), m.Sys.Name())
		}
		if l.TurnMM > 0 {
			detail = fmt.Sprintf("The boot's bend takes %s %s from the outer wires. + - changes it", m.Sys.Length(l.TurnMM),
				m.Sys.Name())
		}
	}
	return desk.Row{Key: "loop " + id, Text: text, Detail: detail, Why: why, Mark: m.MarkFor(id),
		Step: func(m *desk.Model, by int) {
			v := max(0, unit.Written(l.LoopMM+unit.Millimetre(by)))
			m.Change(m.H.EditTermination(m.Sheet.Index.Termination[id], func(t *model.Termination) { t.LoopMM = model.Some(v) }),
				fmt.Sprintf("loop of %s is %s %s", id, m.Sys.Length(v), m.Sys.Name()))
		}}
}
