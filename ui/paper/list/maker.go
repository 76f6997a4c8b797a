package list

import (
	"fmt"
	"strings"

	wiresphase "contralay/calc/phase/wires"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// Maker makes the tables of one sheet: the sheet, its harness, and the unit of its lengths.
type Maker struct {
	S   *sheet.Sheet
	H   *model.Harness
	Sys unit.System
}

// MakerOf makes the tables of a sheet, with lengths in the unit that its harness asks for.
func MakerOf(s *sheet.Sheet) Maker {
	m := Maker{S: s, H: s.H}
	if sys, err := unit.ParseSystem(s.H.Head.Units.V); err == nil {
		m.Sys = sys
	}
	return m
}

// In is a column head with its unit.
func (m Maker) In(head string) string { return head + ", " + m.Sys.Name() }

// Wire is a wire by its id; an id that there is not is a wire of that id alone.
func (m Maker) Wire(id string) *model.Wire {
	if k, ok := m.S.Index.Wire[id]; ok {
		return &m.H.Wires[k]
	}
	return &model.Wire{ID: id}
}

// WireIDs is wires by their ids, with commas.
func (m Maker) WireIDs(all []int) string {
	var out []string
	for _, k := range all {
		out = append(out, m.H.Wires[k].ID)
	}
	return strings.Join(out, ", ")
}

// End is an end of a wire in words.
func (m Maker) End(w *model.Wire, from bool) string {
	text := w.To.V
	if from {
		text = w.From.V
	}
	switch {
	case text == "" && wiresphase.Capped(w):
		return "capped at " + w.CappedAt.V
	case text == "":
		return "open"
	}
	if _, splice := m.S.Index.Splice[text]; splice {
		return "splice " + text
	}
	return text
}

// OptLength is a length that may not be given.
func (m Maker) OptLength(v model.Opt[unit.Millimetre]) string {
	if !v.Set {
		return "-"
	}
	return m.Sys.Length(v.V)
}

// Datum is where a branch's length is taken from at one of its ends.
func (m Maker) Datum(id string) string {
	if t, ok := m.S.Index.Termination[id]; ok {
		if d := m.H.Terminations[t].Datum.V; d != "" {
			return string(d) + " of " + id
		}
		return id
	}
	return "centre of " + id
}

// Clock is how a termination is clocked, seen from the wire side.
func (m Maker) Clock(t *model.Termination) string {
	var out []string
	if t.Clock.Set {
		out = append(out, fmt.Sprintf("key at %d", t.Clock.V))
	}
	if t.BootClock.Set {
		out = append(out, fmt.Sprintf("boot to %d", t.BootClock.V))
	}
	return Dash(strings.Join(out, ", "))
}

// Band is a diameter with its band from the tolerance of its wires.
func (m Maker) Band(b *sheet.Branch) string {
	if b.OverMM <= 0 {
		return "-"
	}
	return fmt.Sprintf("%s%s (%s to %s)%s", m.Sys.Diameter(b.OverMM), Mem(b.Standing), m.Sys.Diameter(b.OverMinMM),
		m.Sys.Diameter(b.OverMaxMM), m.learned(b))
}

// learned is the prediction, what was learned on it, and its spread.
func (m Maker) learned(b *sheet.Branch) string {
	l := &b.Learned
	if l.Of == "" {
		return ""
	}
	return fmt.Sprintf("; predicted %s, learned %s, spread %s from %d readings", m.Sys.Diameter(l.PredictedMM),
		m.signed(b.OverMM-l.PredictedMM), m.Sys.Fine(b.OverMM*unit.Millimetre(l.Spread)), l.Readings)
}

// signed is a difference with its sign.
func (m Maker) signed(v unit.Millimetre) string {
	if v < 0 {
		return "-" + m.Sys.Fine(-v)
	}
	return "+" + m.Sys.Fine(v)
}

// Tolerance is how much a branch may be shorter and longer.
func (m Maker) Tolerance(b *model.Branch) string {
	if t := b.ToleranceMM; len(t) == 2 {
		return fmt.Sprintf("-%s +%s", m.Sys.Length(t[0]), m.Sys.Length(t[1]))
	}
	return "-"
}

// InSheath is the diameter over the sheath of a branch.
func (m Maker) InSheath(b *sheet.Branch) string {
	if !b.Sheath.Tube.Set || !b.Sheath.Verdict.Wraps {
		return "-"
	}
	return m.Sys.Diameter(b.Sheath.Verdict.OverMM)
}
