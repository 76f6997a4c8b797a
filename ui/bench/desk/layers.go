package desk

import (
	"contralay/calc/sheet"
	"contralay/ui/paper"
)

func (m *Model) Aloud(ls []sheet.Layer) string {
	var n []int
	for k, l := range ls {
		c := len(l.Members)
		if k == 0 && l.Fillers > 0 && len(l.Members) == 6 {
			c-- // the rod in the middle of five
		}
		n = append(n, c)
	}
	return paper.Aloud(n, m.Cfg.ASCII)
}

// Uses reports whether the branch is laid as an option.
func (m *Model) Uses(o sheet.Option) bool {
	_, b, _ := m.B()
	if len(o.Layers) != len(b.Layers) || len(o.Spares) > 0 {
		return false
	}
	for k, l := range o.Layers {
		ids := map[string]bool{}
		for _, c := range b.Layers[k].Members {
			ids[c.ID] = true
		}
		fillers := b.Layers[k].Fillers
		if k == 0 && len(l.Of) == 5 {
			fillers = 0
		}
		if fillers != l.Fillers.V || b.As[k].BindMM.V != l.BindMM.V || len(b.As[k].Of) != len(l.Of) {
			return false
		}
		for _, id := range l.Of {
			if !ids[id] {
				return false
			}
		}
	}
	return true
}
