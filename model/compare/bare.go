package compare

import (
	"maps"
	"slices"
	"strings"

	"contralay/model"
	"contralay/model/wirelist/report"
)

// Bare is the harness of a list without the cavities that the import numbered itself: what a list says of a device
// that it names without cavities is that a wire ends there. Each such end stands in the note of its wire.
func Bare(h model.Harness, rep report.Report) (model.Harness, report.Report) {
	if len(rep.Numbered) == 0 {
		return h, rep
	}
	h.Wires, rep.Notes = slices.Clone(h.Wires), maps.Clone(rep.Notes)
	if rep.Notes == nil {
		rep.Notes = map[string][]string{}
	}
	called := map[string]string{}
	for _, t := range h.Terminations {
		called[t.ID] = t.Name.Or(t.ID)
	}
	for i := range h.Wires {
		w := &h.Wires[i]
		for _, end := range []*model.Opt[string]{&w.From, &w.To} {
			id, _, _ := strings.Cut(end.V, ":")
			if !rep.Numbered[id] {
				continue
			}
			piece := "end at " + called[id]
			rep.Notes[w.ID] = append(slices.Clone(rep.Notes[w.ID]), piece)
			w.Note = model.Some(strings.Join(rep.Notes[w.ID], "; "))
			*end = model.Opt[string]{}
		}
		if !w.From.Set && w.To.Set {
			w.From, w.To = w.To, w.From
		}
	}
	gone := func(id string) bool { return rep.Numbered[id] }
	h.Terminations = slices.DeleteFunc(slices.Clone(h.Terminations), func(t model.Termination) bool { return gone(t.ID) })
	h.Branches = slices.DeleteFunc(slices.Clone(h.Branches), func(b model.Branch) bool { return gone(b.From) || gone(b.To) })
	return h, rep
}
