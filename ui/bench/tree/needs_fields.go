package tree

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/query/missing"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
)

// What may be typed at most where nothing else bounds it.
const (
	mostOver  unit.Millimetre = 100
	mostVolts float64         = 60
	mostShort float64         = 20_000
)

// givenHere is the field of a need that is one value; nil where it has a row of its own elsewhere.
func givenHere(n missing.Need) func(m *desk.Model) desk.Field {
	switch n.Kind {
	case missing.Supply:
		return numberField("supply voltage", "V", mostVolts, func(h *model.Harness, v float64) *model.Harness {
			return withHead(h, func(h *model.Head) { h.SupplyV = model.Some(unit.Volt(v)) })
		})
	case missing.Short:
		return numberField("current of the supply in a dead short", "A", mostShort, func(h *model.Harness, v float64) *model.Harness {
			return withHead(h, func(h *model.Head) { h.ShortA = model.Some(unit.Ampere(v)) })
		})
	case missing.UnitOver:
		return overField("OD of unit "+n.IDs[0], func(m *desk.Model, v unit.Millimetre) *model.Harness {
			return m.H.EditUnit(m.Sheet.Index.Unit[n.IDs[0]], func(u *model.Unit) { u.OverMM = model.Some(v) })
		})
	case missing.Filler:
		return overField("size of the filler in "+n.IDs[0], func(m *desk.Model, v unit.Millimetre) *model.Harness {
			return m.H.EditBranch(m.Sheet.Index.Branch[n.IDs[0]], func(b *model.Branch) {
				k, _ := missing.BareFiller(b)
				b.Layers = model.CloneLayers(b.Layers)
				b.Layers[k].FillerMM = model.Some(v)
			})
		})
	case missing.Cover:
		return overField("thickness of the cover on "+n.IDs[0], func(m *desk.Model, v unit.Millimetre) *model.Harness {
			i := m.Sheet.Index.Branch[n.IDs[0]]
			k, _ := missing.BareCover(m.Sheet, i)
			return m.H.EditBranch(i, func(b *model.Branch) {
				b.Covers = slices.Clone(b.Covers)
				b.Covers[k].ThickMM = model.Some(v)
			})
		})
	case missing.Number:
		return headField
	}
	return nil
}

func numberField(label, of string, most float64, set func(h *model.Harness, v float64) *model.Harness) func(m *desk.Model) desk.Field {
	return func(*desk.Model) desk.Field {
		return desk.Field{Label: label, Unit: of, Number: true, Set: func(m *desk.Model, text string) error {
			return m.SetNumber(text, 0.1, most, of, func(v float64) *model.Harness { return set(m.H, v) })
		}}
	}
}

// overField asks for a diameter or a thickness.
func overField(label string, set func(m *desk.Model, v unit.Millimetre) *model.Harness) func(m *desk.Model) desk.Field {
	return func(m *desk.Model) desk.Field {
		return desk.Field{Label: label, Unit: m.Sys.Name(), Number: true, Set: func(m *desk.Model, text string) error {
			v, err := m.Sys.Parse(text)
			if err != nil {
				return err
			}
			if v <= 0 || v > mostOver {
				return fmt.Errorf("%s %s is out of range: more than 0, at most %s %s", text, m.Sys.Name(), m.Sys.Fine(mostOver),
					m.Sys.Name())
			}
			m.Change(set(m, v), label+" "+text+" "+m.Sys.Name())
			return nil
		}}
	}
}

// headField asks for the number of the harness, or where it has one for its revision.
func headField(m *desk.Model) desk.Field {
	label, of := "number of the harness", func(h *model.Head) *model.Opt[string] { return &h.Number }
	if m.H.Head.Number.V != "" {
		label, of = "revision of the harness", func(h *model.Head) *model.Opt[string] { return &h.Revision }
	}
	return desk.Field{Label: label, Set: func(m *desk.Model, text string) error {
		if text = strings.TrimSpace(text); text == "" {
			return fmt.Errorf("type the %s: letters or digits", label)
		}
		m.Change(withHead(m.H, func(h *model.Head) { *of(h) = model.Some(text) }), label+" "+text)
		return nil
	}}
}

// withHead is a harness with another title block.
func withHead(h *model.Harness, edit func(*model.Head)) *model.Harness {
	n := *h
	edit(&n.Head)
	return &n
}
