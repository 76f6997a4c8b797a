package compare

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
)

// swap is two wires that changed places.
type swap struct {
	first  int      // index of the pair that it is told with
	ends   bool     // their ends at one connector did
	fields []string // these of their fields did
	says   Difference
}

// swaps finds pairs of wires that changed places, each wire in one swap at most.
func (c *comparer) swaps(pairs []pair) map[int]*swap {
	out := map[int]*swap{}
	went := map[[2]string][]int{} // from, to → pairs
	crossed := map[string][]int{}
	crosses := make([][]change, len(pairs))
	for k, p := range pairs {
		if from, to, ok := exchanged(p); ok {
			went[[2]string{from, to}] = append(went[[2]string{from, to}], k)
		}
		crosses[k] = c.changes(p)
		for _, ch := range crosses[k] {
			if tells(ch.what) {
				crossed[ch.what+"\x00"+ch.was] = append(crossed[ch.what+"\x00"+ch.was], k)
			}
		}
	}
	for k, p := range pairs {
		from, to, ok := exchanged(p)
		if !ok || out[k] != nil {
			continue
		}
		back := went[[2]string{to, from}]
		if o := slices.IndexFunc(back, func(o int) bool { return out[o] == nil }); o >= 0 {
			c.swapEnds(out, pairs, k, back[o], from, to)
		}
	}
	for k := range pairs {
		if out[k] != nil {
			continue
		}
		for _, ch := range crosses[k] {
			if !tells(ch.what) || ch.was == "" || ch.is == "" {
				continue
			}
			// Of several that were red and several that are, none can be said to have
			// swapped with another.
			there, back := crossed[ch.what+"\x00"+ch.was], crossed[ch.what+"\x00"+ch.is]
			if len(there) == 1 && len(back) == 1 && out[back[0]] == nil && out[k] == nil &&
				crossing(crosses[k], crosses[back[0]], ch.what) {
				c.swapFields(out, pairs, crosses, k, back[0])
			}
		}
	}
	return out
}

// tells reports whether few wires share a field, so that two that crossed are no chance.
func tells(field string) bool { return field == "signal" || field == "colour" || field == "id" }

// exchanged is the one end that a pair left and the one it went to, at one connector.
func exchanged(p pair) (from, to string, ok bool) {
	switch {
	case p.was.ends() == p.is.ends():
		return "", "", false
	case p.was.one == p.is.one:
		from, to = p.was.two, p.is.two
	case p.was.two == p.is.two:
		from, to = p.was.one, p.is.one
	case p.was.one == p.is.two:
		from, to = p.was.two, p.is.one
	case p.was.two == p.is.one:
		from, to = p.was.one, p.is.two
	default:
		return "", "", false
	}
	return from, to, from != "" && to != ""
}

// swapEnds tells two wires that have each other's end. Where those ends are at two
// connectors and the others at one, it is told there: the same two cavities hold each
// other's wire. Both names of the wires are said, that of their cavities first.
func (c *comparer) swapEnds(out map[int]*swap, pairs []pair, k, o int, from, to string) {
	a, b := pairs[k], pairs[o]
	s := &swap{first: k, ends: true}
	// Ids that crossed too are the numbers of a list that counts as it goes.
	if a.was.wire.ID == b.is.wire.ID && b.was.wire.ID == a.is.wire.ID {
		s.fields = append(s.fields, "id")
	}
	far := ""
	if x, y := a.was.other(from), b.was.other(to); termination(from) != termination(to) && x != "" && x != y &&
		termination(x) == termination(y) {
		far = fmt.Sprintf(", %s now leads to %s and %s to %s", a.was.wire.ID, to, b.was.wire.ID, from)
		from, to = x, y
	}
	if termination(from) == termination(to) && after(cavity(from), cavity(to)) { // in the order of the connector
		a, b, from, to = b, a, to, from
	}
	d := Difference{Kind: Swapped, Of: "wire", Wires: []string{a.was.wire.ID, b.was.wire.ID}, Cavities: []string{from, to}}
	if a.was.two == "" && b.was.two == "" {
		d.Of = "cavity"
	}
	d.Says = from + " and " + to + " swapped"
	if termination(from) == termination(to) {
		d.Says = fmt.Sprintf("%s and %s swapped at %s", cavity(from), cavity(to), termination(from))
	}
	if d.Of == "wire" && (a.was.wire.ID != cavity(from) || b.was.wire.ID != cavity(to)) {
		d.Says += fmt.Sprintf(": wires %s and %s swapped places", a.was.wire.ID, b.was.wire.ID)
	}
	d.Says += signals(a, b) + far
	s.says = d
	out[k], out[o] = s, s
}

// other is the end of a wire that is not the one given.
func (s *placed) other(end string) string {
	if s.one == end {
		return s.two
	}
	return s.one
}

// after reports whether a comes after b: the larger of two numbers, else the later in the
// alphabet.
func after(a, b string) bool {
	m, err1 := strconv.Atoi(a)
	n, err2 := strconv.Atoi(b)
	if err1 == nil && err2 == nil {
		return m > n
	}
	return a > b
}

// signals names what two wires carry, in brackets; "" where one has no name.
func signals(a, b pair) string {
	if a.was.wire.Signal.V == "" || b.was.wire.Signal.V == "" {
		return ""
	}
	return fmt.Sprintf(" (%q and %q)", a.was.wire.Signal.V, b.was.wire.Signal.V)
}

// crossing reports whether each of two wires has in a field what the other had.
func crossing(a, b []change, what string) bool {
	x := slices.IndexFunc(a, func(c change) bool { return c.what == what })
	y := slices.IndexFunc(b, func(c change) bool { return c.what == what })
	return x >= 0 && y >= 0 && a[x].was == b[y].is && a[x].is == b[y].was
}

// swapFields tells two wires whose signal, colour or id crossed, with all that crossed
// beside. Where both lists give the wires one end each, at one connector, it is the
// cavities that were swapped.
func (c *comparer) swapFields(out map[int]*swap, pairs []pair, crosses [][]change, k, o int) {
	s := &swap{first: k}
	for _, ch := range crosses[k] {
		if crossing(crosses[k], crosses[o], ch.what) {
			s.fields = append(s.fields, ch.what)
		}
	}
	a, b := pairs[k], pairs[o]
	d := Difference{Kind: Swapped, Of: "wire", Wires: []string{a.was.wire.ID, b.was.wire.ID},
		Cavities: slices.Concat(a.was.list(), b.was.list()),
		What:     s.fields[0]}
	if a.was.two == "" && b.was.two == "" && termination(a.was.one) == termination(b.was.one) &&
		(slices.Contains(s.fields, "signal") || slices.Contains(s.fields, "id")) {
		d.Of = "cavity"
		d.Says = fmt.Sprintf("%s and %s swapped at %s%s", cavity(a.was.one), cavity(b.was.one), termination(a.was.one), signals(a, b))
	} else if whole := len(s.fields) > 1 && (slices.Contains(s.fields, "signal") || slices.Contains(s.fields, "id")); whole &&
		a.was.two != "" && b.was.two != "" {
		// What each is, and not its name alone, lies where the other lay.
		d.Says = fmt.Sprintf("wires %s and %s swapped at both ends: %s with %s%s", a.was.wire.ID, b.was.wire.ID,
			strings.Join(a.was.list(), " to "), strings.Join(b.was.list(), " to "), signals(a, b))
	} else {
		d.Says = fmt.Sprintf("%s and %s swapped: %s%s", a.was.wire.ID, b.was.wire.ID, strings.Join(s.fields, ", "), signals(a, b))
	}
	s.says = d
	out[k], out[o] = s, s
}
