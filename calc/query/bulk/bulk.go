package bulk

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"contralay/calc/phase/ends"
	"contralay/calc/sheet"
	"contralay/model"
)

// Made is what was done to several wires in one go.
type Made struct {
	H     *model.Harness
	Wires []string // that were made or changed, in the order of the harness
	Says  string   // what was done, in a sentence
	Short string   // why no more could be made; "" where all were
	Left  []Left   // wires that were left as they are
}

// Left is a wire that was left as it is, and why.
type Left struct{ Wire, Why string }

// LeftText says which wires were left and why, like reasons once; "" where none was.
func LeftText(left []Left) string {
	var whys []string
	by := map[string][]string{}
	for _, l := range left {
		if by[l.Why] == nil {
			whys = append(whys, l.Why)
		}
		by[l.Why] = append(by[l.Why], l.Wire)
	}
	var out []string
	for _, why := range whys {
		out = append(out, Named(by[why])+": "+why)
	}
	return strings.Join(out, "; ")
}

// Named is a list of ids as a person would read it: "101, 102 and 103", "101, 102, 103 and 9 more".
func Named(ids []string) string {
	const most = 4
	switch n := len(ids); {
	case n == 0:
		return "none"
	case n == 1:
		return ids[0]
	case n > most:
		return strings.Join(ids[:most-1], ", ") + fmt.Sprintf(" and %d more", n-most+1)
	default:
		return strings.Join(ids[:n-1], ", ") + " and " + ids[n-1]
	}
}

// count is "1 wire", "3 wires".
func count(n int, one string) string {
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%d %ss", n, one)
}

// picked finds wires by id, in the order of the harness and each once.
func picked(s *sheet.Sheet, ids []string) ([]int, error) {
	var out []int
	for _, id := range ids {
		k, ok := s.Index.Wire[id]
		if !ok {
			return nil, fmt.Errorf("there is no wire %q", id)
		}
		if !slices.Contains(out, k) {
			out = append(out, k)
		}
	}
	if len(out) == 0 {
		return nil, fmt.Errorf("no wire is chosen")
	}
	slices.Sort(out)
	return out, nil
}

// idsOf is the ids of wires.
func idsOf(h *model.Harness, at []int) []string {
	var out []string
	for _, k := range at {
		out = append(out, h.Wires[k].ID)
	}
	return out
}

// nextWire is the id for a new wire: the next after the last that is no spare.
func nextWire(h *model.Harness) string {
	for k := len(h.Wires) - 1; k >= 0; k-- {
		if h.Wires[k].Role.V != model.RoleSpare {
			return h.NextID(h.Wires[k].ID)
		}
	}
	return h.NextID("100")
}

// cavityAt is the termination and the cavity that an end stands in; ok is false for a splice and
// for an end that leads nowhere.
func cavityAt(s *sheet.Sheet, text string) (t int, cavity string, ok bool) {
	e, given := s.Index.End(text)
	t, known := s.Index.Termination[e.Termination]
	return t, e.Cavity, given && known && e.Splice == "" && e.Cavity != ""
}

// FreeFrom is up to n free cavities of a termination that take a wire, in the order of its
// cavities: those after one of them first, then from its first on. Those that are taken already
// are passed over.
func FreeFrom(s *sheet.Sheet, t int, after, spec, size string, n int, taken map[string]bool) []string {
	all := s.Terms[t].Cavities
	begin := slices.Index(all, after) + 1
	var out []string
	for k := range all {
		c := all[(begin+k)%len(all)]
		if len(out) < n && slices.Contains(s.Terms[t].Free, c) && !taken[s.H.Terminations[t].ID+":"+c] && ends.Takes(s, t, c, spec, size) {
			out = append(out, c)
		}
	}
	return out
}

// noneFree says why a termination has no cavity for one more wire.
func noneFree(s *sheet.Sheet, t int, spec, size string, taken map[string]bool) string {
	id := s.H.Terminations[t].ID
	open := slices.DeleteFunc(slices.Clone(s.Terms[t].Free), func(c string) bool { return taken[id+":"+c] })
	switch {
	case !cavitiesKnown(s, t):
		return fmt.Sprintf("the cavities of %s are not known: choose its insert or list its cavities", id)
	case len(open) == 0:
		return id + " has no free cavity left"
	}
	return fmt.Sprintf("no free cavity of %s takes %s: its contacts or seals are of another size", id, ofSize(spec, size))
}

func ofSize(spec, size string) string { return model.SizeWords(size) + " of " + spec }

// cavitiesKnown reports whether a termination has cavities before any wire stands in them.
func cavitiesKnown(s *sheet.Sheet, t int) bool {
	_, insert := s.Cat.Insert(s.H.Terminations[t].Insert.V)
	return insert || len(s.H.Terminations[t].Cavities) > 0
}

// trimmed writes a number without noughts that say nothing.
func trimmed(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) }

func indexOf(all []model.Wire, id string) int {
	return slices.IndexFunc(all, func(w model.Wire) bool { return w.ID == id })
}
