package add

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"contralay/calc"
	"contralay/calc/phase/ends"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
)

// maker is a harness on its way: a copy of the old one with lists of its own.
type maker struct {
	s     *sheet.Sheet
	h     *model.Harness
	out   Added
	used  map[string]bool // TERMINATION:CAVITY that something new stands in
	short map[lack]int    // how many cavities were asked for in vain
	found map[lack]int    // and how many were found
	order []lack
	lost  string // what becomes of a wire for which there is no cavity
}

// lack is one kind of cavity at one termination.
type lack struct {
	term       int
	spec, size string
}

func newMaker(s *sheet.Sheet) *maker {
	h := *s.H
	h.Terminations = slices.Clone(h.Terminations)
	h.Splices = slices.Clone(h.Splices)
	h.Wires = slices.Clone(h.Wires)
	h.Units = slices.Clone(h.Units)
	return &maker{s: s, h: &h, used: map[string]bool{}, short: map[lack]int{}, found: map[lack]int{},
		lost: "end nowhere yet"}
}

// done is what was made: what is new is laid where its branches are laid already, and what was
// asked for in vain is told.
func (m *maker) done() Added {
	m.lay()
	m.tellShort()
	m.out.H = m.h
	return m.out
}

// tell adds one guess.
func (m *maker) tell(kind GuessKind, about string, of []string, t Taken, format string, args ...any) {
	m.out.Says = append(m.out.Says, Guess{Kind: kind, About: about, Of: of, Says: fmt.Sprintf(format, args...), Taken: t,
		Source: m.s.Cat.SourcesIn(t.From)})
}

// chose tells a value that the program chose by itself.
func (m *maker) chose(about string, of []string, format string, args ...any) {
	m.tell(Chosen, about, of, Taken{}, format, args...)
}

// termination finds an end of the old harness.
func (m *maker) termination(id string) (int, error) {
	if k, ok := m.s.Index.Termination[id]; ok {
		return k, nil
	}
	return 0, fmt.Errorf("there is no termination %q; allowed: %s", id, listOf(idsOf(m.s.H.Terminations, func(t model.Termination) string {
		return t.ID
	}), "none: the harness has no termination"))
}

func idsOf[T any](all []T, id func(T) string) []string {
	out := make([]string, len(all))
	for k := range all {
		out[k] = id(all[k])
	}
	return out
}

// listOf is names in few words, or what to say where there are none.
func listOf(names []string, none string) string {
	const most = 8
	switch {
	case len(names) == 0:
		return none
	case len(names) > most:
		return fmt.Sprintf("%s and %d more", strings.Join(names[:most], ", "), len(names)-most)
	}
	return strings.Join(names, ", ")
}

// wireID is the number after the harness's last wire: 101 is the first.
func (m *maker) wireID() string {
	if len(m.h.Wires) == 0 {
		return m.h.NextID("100")
	}
	last := m.h.Wires[len(m.h.Wires)-1].ID
	if head(last) == last {
		return m.h.NextID("100")
	}
	most := last
	for k := range m.h.Wires {
		id := m.h.Wires[k].ID
		if head(id) == head(last) && number(id) > number(most) {
			most = id
		}
	}
	return m.h.NextID(most)
}

// head is an id without the number that it ends in.
func head(id string) string { return strings.TrimRight(id, "0123456789") }

// number is the number that an id ends in.
func number(id string) int {
	n, _ := strconv.Atoi(id[len(head(id)):])
	return n
}

// unitID is the first free C1, C2 …: units and wires share their ids.
func (m *maker) unitID() string { return m.h.NextID("C0") }

// wire adds a wire under the next number, in a colour that no other at its ends has.
func (m *maker) wire(w model.Wire) string {
	w.ID = m.wireID()
	w.Colour = nextColour(m.h, w)
	m.h.Wires = append(m.h.Wires, w)
	m.out.Wires = append(m.out.Wires, w.ID)
	return w.ID
}

// free lists the cavities of a termination that nothing stands in and that take a size of wire,
// in the order of its insert.
func (m *maker) free(term int, spec, size string) []string {
	var out []string
	for _, c := range m.s.Terms[term].Free {
		if !m.used[m.s.H.Terminations[term].ID+":"+c] && ends.Takes(m.s, term, c, spec, size) {
			out = append(out, c)
		}
	}
	return out
}

// cavities takes n free cavities of a termination for one size of wire: neighbours where there
// are any, else the first that are free; nothing where there are fewer. A termination whose
// cavities are not known has as many as are wanted, numbered on.
func (m *maker) cavities(term int, spec, size string, n int) ([]string, bool) {
	id, what := m.s.H.Terminations[term].ID, lack{term, spec, size}
	free := m.free(term, spec, size)
	if !m.listed(term) {
		free = m.numbered(term, n)
	}
	if _, seen := m.found[what]; !seen {
		m.order = append(m.order, what)
	}
	if len(free) < n {
		m.found[what] += 0
		m.short[what] += n
		return nil, false
	}
	out := free[:n]
	for from := 0; n > 1 && from+n <= len(free); from++ {
		if m.neighbours(term, free[from:from+n]) {
			out = free[from : from+n]
			break
		}
	}
	for _, c := range out {
		m.used[id+":"+c] = true
	}
	m.found[what] += n
	return out, true
}

// neighbours reports whether cavities follow one another in the order of their insert.
func (m *maker) neighbours(term int, names []string) bool {
	all := m.s.Terms[term].Cavities
	at := slices.Index(all, names[0])
	return at >= 0 && at+len(names) <= len(all) && slices.Equal(all[at:at+len(names)], names)
}

// listed reports whether the cavities of a termination are known before its wires are.
func (m *maker) listed(term int) bool {
	t := &m.s.H.Terminations[term]
	_, known := m.s.Cat.Insert(t.Insert.V)
	return known || len(t.Cavities) > 0
}

// numbered is the next n numbers that no wire at a termination has.
func (m *maker) numbered(term, n int) []string {
	var out []string
	for k := 1; len(out) < n; k++ {
		name := strconv.Itoa(k)
		if _, there := m.s.Terms[term].State[name]; !there && !m.used[m.s.H.Terminations[term].ID+":"+name] {
			out = append(out, name)
		}
	}
	return out
}

// tellShort says where cavities were asked for in vain, and how many there were.
func (m *maker) tellShort() {
	for _, l := range m.order {
		if n := m.short[l]; n > 0 {
			id := m.s.H.Terminations[l.term].ID
			has := m.found[l] + len(m.free(l.term, l.spec, l.size))
			m.tell(Missing, "cavity", []string{id}, Taken{},
				"%s has %d free cavities that take %s, and %d are needed: %d wires %s",
				id, has, model.SizeWords(l.size), m.found[l]+n, n, m.lost)
		}
	}
}

// lay puts what is new into the branches on its way that are laid already: into the room that
// the outermost layer has, and what is left into a layer of its own. A branch that is twisted or
// straight takes all of it.
func (m *maker) lay() {
	index := model.NewIndex(m.h)
	on := map[int][]string{}
	var branches []int
	for _, id := range m.out.Wires {
		w := &m.h.Wires[index.Wire[id]]
		from, to, ok := index.Places(w)
		path, joined := index.Between(from, to)
		if !ok || !joined {
			continue
		}
		piece := id
		if u, in := index.UnitOf[id]; in {
			piece = m.h.Units[u].ID
		}
		for _, b := range path {
			if len(m.h.Branches[b].Layers) == 0 || slices.Contains(on[b], piece) {
				continue
			}
			if on[b] == nil {
				branches = append(branches, b)
			}
			on[b] = append(on[b], piece)
		}
	}
	for _, b := range branches {
		m.layInto(b, on[b])
	}
}

func (m *maker) layInto(branch int, pieces []string) {
	b := &m.h.Branches[branch]
	last := len(b.Layers) - 1
	laid := b.Make.V != model.MakeTwisted && b.Make.V != model.MakeStraight
	room := len(pieces)
	if laid {
		room = 0
		if layers := m.s.Branches[branch].Layers; len(layers) == len(b.Layers) && last > 0 {
			room = max(0, min(len(pieces), layers[last].Room))
		}
	}
	if b.Layers[last].Locked.V {
		room = 0
	}
	// What has room counts pieces like those that are there: thicker ones are tried.
	with := func(layer, n int) *model.Harness {
		return m.h.EditBranch(branch, func(b *model.Branch) {
			if layer == len(b.Layers) {
				b.Layers = append(b.Layers, model.Layer{})
			}
			for _, id := range pieces[:n] {
				b.AddTo(layer, id)
			}
		})
	}
	for room > 0 && laid && !m.closes(with(last, room), branch, last) {
		room--
	}
	for layer := last; len(pieces) > 0; layer++ {
		n := room
		if layer > last {
			for n = len(pieces); n > 1 && !m.closes(with(layer, n), branch, layer); {
				n--
			}
		}
		if n == 0 {
			continue
		}
		m.h = with(layer, n)
		says := "goes into"
		if layer > last {
			says = "opens"
		}
		m.chose("layer", pieces[:n], "%s is laid already: %s %s %s", b.ID, strings.Join(pieces[:n], ", "), says, model.LayerName(layer))
		pieces = pieces[n:]
	}
}

// closes reports whether a layer of a branch closes with what a harness puts into it.
func (m *maker) closes(h *model.Harness, branch, layer int) bool {
	t := calc.Build(h, m.s.Base, m.s)
	layers := t.Branches[branch].Layers
	return layer >= len(layers) || layers[layer].Closes && layers[layer].Lift <= t.Limits.LiftTight
}

// worst is how far a figure can be trusted that is worked out from others.
func worst(all ...Taken) Taken {
	out := Taken{Standing: catalogue.House, Worked: true}
	for _, t := range all {
		out.Standing = catalogue.Weakest(out.Standing, t.Standing)
	}
	return out
}
