package laycard

import (
	"math"
	"slices"
	"strings"

	"contralay/calc/phase/bundle"
	"contralay/calc/sheet"
	"contralay/ui/paper/laycard/joint"
	"contralay/ui/paper/list"
)

// rowsOf is the pieces of a layer in the order in which they lie: the first of the layer first, then
// clockwise, seen from the from end of the branch; one in the very middle before them.
func rowsOf(m list.Maker, branch, k int) []Row {
	var out []Row
	for n, c := range m.S.Branches[branch].Layers[k].Members {
		out = append(out, rowOf(m, branch, k, n+1, c))
	}
	return out
}

// hours is where a member lies on a clock seen from the from end, from 0 at the top to 12.
func hours(c sheet.Member) float64 {
	return math.Mod(math.Atan2(float64(c.X), float64(c.Y))*6/math.Pi+12, 12)
}

func rowOf(m list.Maker, branch, layer, position int, c sheet.Member) Row {
	l := &m.S.Branches[branch].Layers[layer]
	r := Row{Position: position, ID: c.ID, Kind: c.Kind, Of: c, Tracer: layer > 0 && c.ID == l.Tracer && c.Kind != sheet.OfFiller}
	var all []string
	switch u, is := m.S.Index.Unit[c.ID]; {
	case c.Kind == sheet.OfFiller:
		r.ID, r.Size = "filler", m.Sys.Fine(c.D)+" "+m.Sys.Name()
		return r
	case is:
		all = m.H.Units[u].Wires
		r.Size = m.Sys.Diameter(c.D) + " " + m.Sys.Name()
	default:
		all = []string{c.ID}
		r.Size = list.Size(m.Wire(c.ID))
	}
	var codes, colours, starts, ends []string
	for _, id := range all {
		w := m.Wire(id)
		codes, colours = append(codes, list.Dash(w.Colour.V)), append(colours, joint.Colour(w))
		near, far := endsOf(m, branch, id)
		starts, ends = append(starts, near), append(ends, far)
	}
	r.Code, r.Colour = strings.Join(codes, " + "), strings.Join(colours, " + ")
	if r.Code == r.Colour { // no code of digits: it is said once
		r.Code = ""
	}
	r.Starts, r.To = joinEnds(list.NonEmpty(starts...)), joinEnds(ends)
	if r.Leaves = bundle.NextAfter(m.S, branch, c.ID); r.Leaves == "cap" { // where, its end says
		r.Leaves = ""
	}
	if s, in := m.S.Index.Splice[r.Leaves]; in && m.H.Splices[s].Toward.V != "" {
		r.Leaves = m.H.Splices[s].Toward.V
	}
	var joined []string
	for _, end := range ends {
		id := strings.TrimPrefix(end, "splice ")
		if s, in := m.S.Index.Splice[id]; in && id != end && m.H.Splices[s].Toward.V == m.H.Branches[branch].ID {
			joined = append(joined, id)
		}
	}
	r.Splice = strings.Join(joined, " ")
	return r
}

// joinEnds is ends of a unit's wires, the termination said once: "AUX1:3 + 4".
func joinEnds(all []string) string {
	var out []string
	last := ""
	for k, end := range all {
		term, cavity, is := strings.Cut(end, ":")
		switch {
		case is && k > 0 && term == last:
			out = append(out, cavity)
		case !slices.Contains(out, end):
			out = append(out, end)
		}
		last = term
	}
	return strings.Join(out, " + ")
}

// endsOf is where a wire ends before a branch, "" where that is not at the branch's own from end,
// and where it ends beyond it.
func endsOf(m list.Maker, branch int, id string) (near, far string) {
	k, ok := m.S.Index.Wire[id]
	if !ok {
		return "", "-"
	}
	w, from := &m.H.Wires[k], m.H.Branches[branch].From
	forward := runsForward(m.S, branch, k)
	far = m.End(w, !forward)
	if _, cavity, is := strings.Cut(m.End(w, forward), ":"); is && list.TermOf(m.End(w, forward)) == from {
		near = cavity
	}
	return near, far
}

// runsForward reports whether a wire runs through a branch from the branch's from end to its to end,
// on its own way from its from to its to.
func runsForward(s *sheet.Sheet, branch, wire int) bool {
	path := s.Wires[wire].Path
	at := slices.Index(path, branch)
	b := &s.H.Branches[branch]
	switch {
	case at < 0:
		return true
	case at > 0:
		return slices.Contains(s.Index.Meeting(b.From), path[at-1])
	case len(path) > 1:
		return slices.Contains(s.Index.Meeting(b.To), path[1])
	}
	place, _, _ := s.Index.Places(&s.H.Wires[wire])
	if place == b.From || place == b.To {
		return place == b.From
	}
	return true
}
