package whatif

import (
	"fmt"
	"slices"

	"contralay/calc"
	"contralay/calc/phase/over"
	"contralay/calc/sheet"
	"contralay/model"
)

// tube is the best tube of another kind as the sheath.
type tube string

func sheaths(s *sheet.Sheet, i int) []Kind {
	if s.Branches[i].OverMM <= 0 || !s.H.Branches[i].Measured() {
		return nil
	}
	if from, to := over.SheathEnds(s, i); to <= from {
		return nil // boots and sorted zones leave no length for one
	}
	all := s.Cat.Kinds()
	k := Kind{ID: "sheath", Name: "sheath", Now: slices.IndexFunc(all, func(kind string) bool { return tube(kind).present(s, i) })}
	for _, kind := range all {
		k.Values = append(k.Values, Value{Key: kind, Says: kind, change: tube(kind)})
	}
	return []Kind{k}
}

func (c tube) present(s *sheet.Sheet, i int) bool {
	sh := &s.Branches[i].Sheath
	return sh.Tube.Set && sh.Tube.V.Kind == string(c)
}

func (c tube) make(s *sheet.Sheet, i int) (trial, error) {
	all := s.Cat.TubesOf(string(c))
	if len(all) == 0 {
		return trial{}, fmt.Errorf("the catalogue has no tube %s", string(c))
	}
	t := trial{h: sheathed(s.H, i, all[0].ID), sheath: true}
	t.built = calc.Build(t.h, s.Base, s)
	best := t.built.Branches[i].Sheath.Others
	switch {
	case len(best) == 0:
		return trial{}, fmt.Errorf("no length is left for a sheath here")
	case best[0].Verdict.StopSlide:
		return trial{}, fmt.Errorf("no %s tube goes on here", string(c))
	case best[0].Verdict.StopLoose:
		return trial{}, fmt.Errorf("every %s tube that goes on here stays loose", string(c))
	case best[0].Tube.ID != all[0].ID:
		t.set(sheathed(t.h, i, best[0].Tube.ID))
	}
	return t, nil
}

// sheathed is a harness with another tube as the sheath of a branch: the first of its covers that is one, else outermost.
func sheathed(h *model.Harness, i int, part string) *model.Harness {
	return h.EditBranch(i, func(b *model.Branch) {
		for k := range b.Covers {
			if b.Covers[k].What == model.CoverSheath {
				b.Covers[k].Part = model.Some(part)
				return
			}
		}
		b.Covers = append(b.Covers, model.Cover{What: model.CoverSheath, Part: model.Some(part)})
	})
}

// follow takes the first tube of the sheath's kind where the one in use was that of what lay beneath before, or does not
// go on or grip any more. One that the file does not name is proposed anew by itself.
func (t *trial) follow(s *sheet.Sheet, i int) {
	was := &s.Branches[i].Sheath
	if was.Part == "" || was.Proposed || !was.Tube.Set || len(was.Others) == 0 {
		return
	}
	is := &t.whole(s, i).Branches[i].Sheath
	if len(is.Others) == 0 || is.Others[0].Tube.ID == is.Part || is.Others[0].Verdict.Stops() {
		return
	}
	first := was.Others[0].Tube.ID == was.Part
	bad := is.Verdict.Stops() && !was.Verdict.Stops() || is.Verdict.Sticks && !was.Verdict.Sticks
	if first || bad {
		t.set(sheathed(t.h, i, is.Others[0].Tube.ID))
	}
}
