package whatif

import (
	"errors"
	"fmt"
	"slices"

	"contralay/calc/phase/bundle"
	"contralay/calc/phase/planning"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// layup is another lay-up of the same pieces, worked out before.
type layup struct{ sheet.Option }

// mostLayups is how many lay-ups are offered.
const mostLayups = 8

// layups is the lay-ups that are worked out for the branch as it is, without those that lay new spares in. There are
// none where nobody has planned it yet: Kinds does not.
func layups(s *sheet.Sheet, i int) []Kind {
	if s.Branches[i].Make != model.MakeLaid {
		return nil
	}
	k := Kind{ID: "layup", Name: "lay-up", Now: -1}
	for n, o := range s.Proposals[bundle.Question(s, i)].Options {
		if len(o.Spares) > 0 || len(k.Values) == mostLayups {
			continue
		}
		c := layup{o}
		if c.present(s, i) {
			k.Now = len(k.Values)
		}
		v := Value{Key: fmt.Sprintf("%d at %s", n, unit.Fixed(o.Plan.Over, 2)), change: c}
		for at, l := range o.Plan.Layers {
			pieces := l.Count()
			if at > 0 {
				pieces += l.Fillers
			}
			v.Laid = append(v.Laid, pieces)
		}
		k.Values = append(k.Values, v)
	}
	return []Kind{k}
}

func (c layup) present(s *sheet.Sheet, i int) bool {
	return slices.EqualFunc(c.Layers, s.Branches[i].As, func(a, b model.Layer) bool {
		return sameSet(a.Of, b.Of) && a.Fillers.V == b.Fillers.V && unit.Written(a.BindMM.V) == unit.Written(b.BindMM.V)
	})
}

func (c layup) make(s *sheet.Sheet, i int) (trial, error) {
	var in []string
	for _, l := range c.Layers {
		in = append(in, l.Of...)
	}
	if !sameSet(in, s.Branches[i].Components) {
		return trial{}, errors.New("other pieces run here since that lay-up was worked out")
	}
	return trial{h: planning.Laid(s, s.H, i, c.Option)}, nil
}

// sameSet reports whether two lists hold the same ids, in any order.
func sameSet(a, b []string) bool {
	return slices.Equal(slices.Sorted(slices.Values(a)), slices.Sorted(slices.Values(b)))
}
