package bulk

import (
	"fmt"

	"contralay/calc/phase/ends"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// Change is what is set for several wires; what is not given stays as it is.
type Change struct {
	Spec, Size model.Opt[string]
	Colour     model.Opt[string] // "" takes the colour away
	Role       model.Opt[model.Role]
	Amps       model.Opt[unit.Ampere]
}

// MostAmps is more than any wire of a loom carries.
const MostAmps unit.Ampere = 1000

// Set changes several wires alike. A wire that cannot have the value is left and named: one whose
// specification has no such size, and one that its contact or seal would not take.
func Set(s *sheet.Sheet, ids []string, c Change) (Made, error) {
	at, err := picked(s, ids)
	if err != nil {
		return Made{}, err
	}
	if c.Amps.Set && !(c.Amps.V >= 0 && c.Amps.V <= MostAmps) {
		return Made{}, fmt.Errorf("%s A is out of range: 0 to %s A", unit.Fixed(c.Amps.V, 2), unit.Fixed(MostAmps, 0))
	}
	out := Made{H: s.H}
	var change []int
	for _, k := range at {
		w := s.H.Wires[k]
		c.to(&w)
		if w == s.H.Wires[k] {
			continue
		}
		if why := refuses(s, k, &w); why != "" {
			out.Left = append(out.Left, Left{w.ID, why})
			continue
		}
		change, out.Wires = append(change, k), append(out.Wires, w.ID)
	}
	if len(change) > 0 {
		out.H = s.H.EditWires(change, c.to)
	}
	out.Says = fmt.Sprintf("%s: %s", count(len(change), "wire"), c.text())
	if same := len(at) - len(change) - len(out.Left); same > 0 {
		out.Says += fmt.Sprintf("; %d had it already", same)
	}
	return out, nil
}

// to makes the change to a wire.
func (c Change) to(w *model.Wire) {
	w.Spec, w.Size = c.Spec.Or(w.Spec), c.Size.Or(w.Size)
	if c.Colour.Set {
		if w.Colour = c.Colour; c.Colour.V == "" {
			w.Colour = model.Opt[string]{}
		}
	}
	if c.Role.Set {
		w.Role = c.Role
	}
	if c.Amps.Set {
		w.Amps = c.Amps
	}
}

// text says what is set.
func (c Change) text() string {
	says := ""
	put := func(given bool, text string) {
		if given && says != "" {
			says += ", "
		}
		if given {
			says += text
		}
	}
	put(c.Spec.Set, c.Spec.V)
	put(c.Size.Set, model.SizeWords(c.Size.V))
	put(c.Colour.Set && c.Colour.V != "", "colour "+model.ColourWords(c.Colour.V))
	put(c.Colour.Set && c.Colour.V == "", "no colour")
	put(c.Role.Set, "role "+string(c.Role.V))
	put(c.Amps.Set, trimmed(float64(c.Amps.V))+" A")
	return says
}

// refuses says why a wire cannot be as it would be; "" where it can.
func refuses(s *sheet.Sheet, k int, w *model.Wire) string {
	if was := &s.H.Wires[k]; w.Spec == was.Spec && w.Size == was.Size {
		return ""
	}
	if _, known := s.Cat.Wire(w.Spec, w.Size); !known {
		return fmt.Sprintf("%s has no size %s in the catalogue", w.Spec, w.Size)
	}
	for _, text := range []string{w.From.V, w.To.V} {
		if t, c, ok := cavityAt(s, text); ok && !ends.Takes(s, t, c, w.Spec, w.Size) {
			return fmt.Sprintf("%s does not take %s", s.H.Terminations[t].ID, ofSize(w.Spec, w.Size))
		}
	}
	return ""
}
