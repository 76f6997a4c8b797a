package bulk

import (
	"fmt"
	"slices"

	"contralay/calc/phase/ends"
	"contralay/calc/phase/wires"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
)

// Ends is where one side of several wires goes: cavities of a termination, one for each wire in
// their order, or a splice for all of them.
type Ends struct {
	Termination string
	Cavities    []string
	Splice      string
}

// RangeAsk asks for a wire from each cavity of one side to that of the other.
type RangeAsk struct {
	From, To   Ends
	Spec, Size string
	Role       model.Role // "" is not said
}

// Range makes a wire from each cavity of a range to each of another, in order. It makes all or
// none: what stands in the way is in the error.
func Range(s *sheet.Sheet, ask RangeAsk) (Made, error) {
	if _, known := s.Cat.Wire(ask.Spec, ask.Size); !known {
		return Made{}, fmt.Errorf("%s has no size %s in the catalogue", ask.Spec, ask.Size)
	}
	if ask.Role != "" && !slices.Contains(model.Roles, ask.Role) {
		return Made{}, fmt.Errorf("there is no role %q", ask.Role)
	}
	from, err := endTexts(s, ask.From, ask.Spec, ask.Size)
	if err != nil {
		return Made{}, err
	}
	to, err := endTexts(s, ask.To, ask.Spec, ask.Size)
	if err != nil {
		return Made{}, err
	}
	n := max(len(from), len(to))
	switch {
	case ask.From.Splice != "" && ask.To.Splice != "":
		return Made{}, fmt.Errorf("both ends are splices: choose the cavities of one side")
	case min(len(from), len(to)) == 0:
		return Made{}, fmt.Errorf("no cavity is chosen")
	case ask.From.Splice == "" && ask.To.Splice == "" && len(from) != len(to):
		return Made{}, fmt.Errorf("%s of %s to %s of %s: choose as many on both sides", count2(len(from)), ask.From.Termination,
			count2(len(to)), ask.To.Termination)
	case n > MostAtOnce:
		return Made{}, fmt.Errorf("%d is out of range: 1 to %d wires at once", n, MostAtOnce)
	}
	if twice := slices.IndexFunc(from, func(e string) bool { return ask.From.Splice == "" && slices.Contains(to, e) }); twice >= 0 {
		return Made{}, fmt.Errorf("cavity %s is chosen on both sides", from[twice])
	}
	out := Made{H: s.H}
	id := nextWire(s.H)
	for k := range n {
		w := model.Wire{ID: id, From: model.Some(nth(from, k)), To: model.Some(nth(to, k)), Spec: ask.Spec, Size: ask.Size}
		if ask.Role != "" {
			w.Role = model.Some(ask.Role)
		}
		path, way := wires.Path(s, &w)
		if !way {
			return Made{}, fmt.Errorf("no branch leads from %s to %s", placeOf(ask.From), placeOf(ask.To))
		}
		out.H = out.H.AddWire(w, path)
		out.Wires = append(out.Wires, w.ID)
		id = out.H.NextID(id)
	}
	out.Says = fmt.Sprintf("%s from %s to %s: %s", count(n, "wire"), sideText(ask.From), sideText(ask.To), Named(out.Wires))
	return out, nil
}

// count2 is "1 cavity", "3 cavities".
func count2(n int) string {
	if n == 1 {
		return "1 cavity"
	}
	return fmt.Sprintf("%d cavities", n)
}

// nth is the k-th of several, or the only one.
func nth(all []string, k int) string { return all[min(k, len(all)-1)] }

func placeOf(e Ends) string {
	if e.Splice != "" {
		return e.Splice
	}
	return e.Termination
}

// sideText is "P1:A", "P1:A to K", "S1".
func sideText(e Ends) string {
	switch n := len(e.Cavities); {
	case e.Splice != "":
		return e.Splice
	case n == 1:
		return e.Termination + ":" + e.Cavities[0]
	default:
		return fmt.Sprintf("%s:%s...%s", e.Termination, e.Cavities[0], e.Cavities[n-1])
	}
}

// endTexts are the ends of one side as a file writes them. The error names the first cavity that
// cannot take such a wire.
func endTexts(s *sheet.Sheet, e Ends, spec, size string) ([]string, error) {
	if e.Splice != "" {
		if _, known := s.Index.Splice[e.Splice]; !known {
			return nil, fmt.Errorf("there is no splice %q", e.Splice)
		}
		return []string{e.Splice}, nil
	}
	t, known := s.Index.Termination[e.Termination]
	if !known {
		return nil, fmt.Errorf("there is no termination %q", e.Termination)
	}
	term := &s.H.Terminations[t]
	var out []string
	for _, name := range e.Cavities {
		c := term.CavityOf(name)
		text := term.ID + ":" + c
		st, there := s.Terms[t].State[c]
		switch {
		case slices.Contains(out, text):
			return nil, fmt.Errorf("cavity %s is chosen twice", text)
		case c == "":
			return nil, fmt.Errorf("a cavity of %s is chosen that has no name", term.ID)
		case !there && cavitiesKnown(s, t):
			return nil, fmt.Errorf("%s has no cavity %q. It has %s", term.ID, name, catalogue.NamesList(s.Terms[t].Cavities))
		case len(st.Wires) > 0:
			return nil, fmt.Errorf("cavity %s is taken by wire %s", text, Named(st.Wires))
		case st.Drain != "":
			return nil, fmt.Errorf("cavity %s is taken by the drain of %s", text, st.Drain)
		case term.Reserves(c):
			return nil, fmt.Errorf("cavity %s is reserved: free it first", text)
		case !ends.Takes(s, t, c, spec, size):
			return nil, fmt.Errorf("cavity %s does not take %s: its contact or seal is of another size", text, ofSize(spec, size))
		}
		out = append(out, text)
	}
	return out, nil
}
