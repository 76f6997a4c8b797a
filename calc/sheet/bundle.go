package sheet

// Dia is the diameter of a component by id.
func (s *Sheet) Dia(id string) Dia {
	c, ok := s.Index.Component(id)
	switch {
	case !ok:
		return Dia{}
	case c.Unit:
		return s.Units[c.At].Dia
	}
	return s.Wires[c.At].Dia
}
