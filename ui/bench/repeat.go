package bench

import (
	"fmt"
	"strconv"
	"strings"

	"contralay/calc"
	"contralay/model"
	"contralay/model/unit"
)

// Rows that save typing where a loom repeats itself.

// mostAtOnce bounds how many wires are added by one number.
const mostAtOnce = 60

// moreRow adds wires like one, with the next numbers: one by Enter or +, many by a
// number.
func (m *Model) moreRow(id string) row {
	return row{key: "more", text: "one more like " + id + ", with the next number", detail: "Enter adds one; a number adds as many",
		enter: func(m *Model) { m.addLike(id, 1) },
		step: func(m *Model, by int) {
			if by < 0 {
				m.tell("Backspace takes it back")
				return
			}
			m.addLike(id, 1)
		},
		field: &field{label: "how many more like " + id, number: true, set: func(m *Model, text string) error {
			n, err := strconv.Atoi(text)
			if err != nil || n < 1 || n > mostAtOnce {
				return fmt.Errorf("a whole number is wanted, 1 to %d", mostAtOnce)
			}
			m.addLike(id, n)
			return nil
		}}}
}

// addLike adds n wires like one, to the next free cavities. It is one change.
func (m *Model) addLike(id string, n int) {
	k, ok := m.sheet.X.Wire[id]
	if !ok {
		m.refuse("wire " + id + " is gone")
		return
	}
	like, path := m.h.Wires[k], m.sheet.Wires[k].Path
	h := m.h
	last, taken := like.ID, map[string]bool{}
	first := ""
	for range n {
		w := like
		w.ID = h.NextID(last)
		last = w.ID
		w.Return, w.Note, w.DropV = model.Opt[string]{}, model.Opt[string]{}, model.Opt[unit.Volt]{} // what was measured, was measured there
		a, okA := m.freeBeyond(like.From.V, like, taken)
		taken[a] = a != ""
		z, okZ := m.freeBeyond(like.To.V, like, taken)
		taken[z] = z != ""
		if !okA || !okZ {
			hint := ""
			if r, any := m.likeRow(id); any {
				hint = "; there is: " + r.text
			}
			m.refuse(fmt.Sprintf("no free cavity for %s from %s to %s%s", map[bool]string{true: "one more", false: fmt.Sprintf("%d more", n)}[n == 1], endText(&like, true), endText(&like, false), hint))
			return
		}
		for at, text := range map[*model.Opt[string]]string{&w.From: a, &w.To: z} {
			if *at = (model.Opt[string]{}); text != "" {
				*at = model.Some(text)
			}
		}
		h = h.AddWire(w, path)
		if first == "" {
			first = fmt.Sprintf("wire %s from %s to %s", w.ID, endText(&w, true), endText(&w, false))
		}
	}
	if n > 1 {
		first = fmt.Sprintf("%d wires, to %s", n, last)
	}
	m.change(h, first)
}

// freeBeyond is freeBeside without what is taken already.
func (m *Model) freeBeyond(text string, w model.Wire, taken map[string]bool) (string, bool) {
	e, ok := m.sheet.X.End(text)
	t, known := m.sheet.X.Termination[e.Termination]
	switch {
	case text == "" && calc.Capped(&w):
		return "", true
	case ok && e.Splice != "":
		return text, true
	case !ok || !known:
		return "", false
	}
	for _, c := range m.freeFor(t, w) {
		if end := e.Termination + ":" + c; !taken[end] {
			return end, true
		}
	}
	return "", false
}

// likeRow repeats what a wire's connector has on those like it that are empty.
func (m *Model) likeRow(id string) (row, bool) {
	k, ok := m.sheet.X.Wire[id]
	if !ok {
		return row{}, false
	}
	for _, text := range []string{m.h.Wires[k].To.V, m.h.Wires[k].From.V} {
		e, _ := m.sheet.X.End(text)
		if r, any := m.likeOf(e.Termination); any {
			return r, true
		}
	}
	return row{}, false
}

// likeOf is the row for one connector.
func (m *Model) likeOf(id string) (row, bool) {
	t, known := m.sheet.X.Termination[id]
	if !known {
		return row{}, false
	}
	like := m.sheet.Like(t)
	if len(like) == 0 {
		return row{}, false
	}
	var names []string
	for _, l := range like {
		names = append(names, m.h.Terminations[l].ID)
	}
	n := m.sheet.Terms[t].Used
	return row{key: "like " + id, text: fmt.Sprintf("all %s again for %s", id, strings.Join(names, " ")), detail: fmt.Sprintf("%s each, to the next free cavities: Enter for all of them, + for %s alone", plural(n, "wire", "wires"), names[0]),
		enter: func(m *Model) { m.repeatOn(t, like) },
		step: func(m *Model, by int) {
			if by < 0 {
				m.tell("Backspace takes it back")
				return
			}
			m.repeatOn(t, like[:1])
		}}, true
}

// repeatOn repeats a termination on others, as one change.
func (m *Model) repeatOn(of int, on []int) {
	h := m.h
	n := 0
	t := *m
	for _, to := range on {
		next, ids, err := t.sheet.Repeated(of, to)
		if err != nil {
			m.refuse(fmt.Sprintf("%s on %s: %s", m.h.Terminations[of].ID, m.h.Terminations[to].ID, err))
			return
		}
		n += len(ids)
		h = next
		t.h = h
		t.sheet = m.built(h)
	}
	m.change(h, fmt.Sprintf("%s for %s", plural(n, "wire", "wires"), plural(len(on), "more end", "more ends")))
	// The row is gone now: what takes its place must not be hit by a key that bounces.
	m.cursor[m.cursorKey()] = 0
	delete(m.on, m.cursorKey())
}

// likeRows are what the connectors of these wires have, on those like them.
func (m *Model) likeRows(wires []int) []row {
	var out []row
	seen := map[string]bool{}
	for _, i := range wires {
		for _, text := range []string{m.h.Wires[i].From.V, m.h.Wires[i].To.V} {
			e, _ := m.sheet.X.End(text)
			if seen[e.Termination] {
				continue
			}
			seen[e.Termination] = true
			if r, any := m.likeOf(e.Termination); any {
				out = append(out, r)
			}
		}
	}
	return out
}

// once makes rows that a sheet and a branch settle, and keeps them for the frames
// that follow.
func (m *Model) once(name string, make func() []row) []row {
	if m.onceFor != m.sheet || m.onceOf != m.branch {
		m.onceFor, m.onceOf, m.onceRows = m.sheet, m.branch, map[string][]row{}
	}
	rows, ok := m.onceRows[name]
	if !ok {
		rows = make()
		m.onceRows[name] = rows
	}
	return rows
}

// mirrorRows offer to wire an empty bank as another is.
func (m *Model) mirrorRows() []row {
	var out []row
	for _, of := range m.sheet.LikeBanks(m.branch) {
		id := m.h.Branches[of].ID
		out = append(out, row{key: "mirror " + id, text: "wire what lies beyond as beyond " + id, detail: "each wire of that bank once more, to the next free cavities", enter: func(m *Model) {
			h, ids, err := m.sheet.Mirrored(of, m.branch)
			if err != nil {
				m.refuse(err.Error())
				return
			}
			m.change(h, fmt.Sprintf("%s as beyond %s", plural(len(ids), "wire", "wires"), id))
		}})
	}
	return out
}

// laidLikeRows offer the lay-up of a branch that holds the same sizes.
func (m *Model) laidLikeRows() []row {
	var out []row
	for of := range m.h.Branches {
		ls, ok := m.sheet.LaidLike(of, m.branch)
		if !ok || m.sameLayers(ls) {
			continue
		}
		src, hand := &m.h.Branches[of], m.outer(&m.h.Branches[of])
		other := map[string]string{"LH": "RH", "RH": "LH"}[hand]
		lay := func(m *Model, hand string) {
			m.change(m.h.EditBranch(m.branch, func(b *model.Branch) {
				b.Layers, b.Make, b.Outer = model.CloneLayers(ls), model.Some("laid"), model.Some(hand)
			}), "laid as "+src.ID+" is, outer layer "+hand)
		}
		out = append(out, row{key: "as " + src.ID, text: fmt.Sprintf("lay it as %s  %s", src.ID, m.aloud(m.sheet.Branches[of].Layers)), detail: fmt.Sprintf("Enter: outer layer %s as there; + mirrored, %s", hand, other),
			enter: func(m *Model) { lay(m, hand) },
			step:  func(m *Model, _ int) { lay(m, other) }})
	}
	return out
}

// sameLayers reports whether the branch in hand is laid so.
func (m *Model) sameLayers(ls []model.Layer) bool {
	_, b, _ := m.b()
	if len(ls) != len(b.As) {
		return false
	}
	for k := range ls {
		if len(ls[k].Of) != len(b.As[k].Of) || ls[k].Fillers.V != b.As[k].Fillers.V || !m.sameSizes(ls[k].Of, b.As[k].Of) {
			return false
		}
	}
	return true
}

func (m *Model) sameSizes(a, b []string) bool {
	count := map[unit.Millimetre]int{}
	d := func(id string) unit.Millimetre {
		if k, ok := m.sheet.X.Wire[id]; ok {
			return m.sheet.Wires[k].Dia.Nominal
		}
		return m.sheet.Units[m.sheet.X.Unit[id]].Dia.Nominal
	}
	for _, id := range a {
		count[d(id)]++
	}
	for _, id := range b {
		count[d(id)]--
	}
	for _, n := range count {
		if n != 0 {
			return false
		}
	}
	return true
}
