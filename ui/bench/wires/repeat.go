package wires

import (
	"fmt"
	"strconv"
	"strings"

	"contralay/calc/query/bulk"
	"contralay/calc/query/offer"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
)

// Rows that save typing where a loom repeats itself.

// mostAtOnce bounds how many wires are added by one number.
const mostAtOnce = 60

// moreRow adds wires like one, with the next numbers: one by Enter or +, many by a
// number.
func moreRow(m *desk.Model, id string) desk.Row {
	return desk.Row{Key: "more", Text: "one more like " + id + ", with the next number", Detail: "Enter adds one. A number adds that many",
		Enter: func(m *desk.Model) { addLike(m, id, 1) },
		Step: func(m *desk.Model, by int) {
			if by < 0 {
				m.Tell("Backspace undoes it")
				return
			}
			addLike(m, id, 1)
		},
		Field: &desk.Field{Label: "how many more like " + id, Number: true, Set: func(m *desk.Model, text string) error {
			n, err := strconv.Atoi(text)
			if err != nil || n < 1 || n > mostAtOnce {
				return fmt.Errorf("type a whole number, 1 to %d", mostAtOnce)
			}
			addLike(m, id, n)
			return nil
		}}}
}

// addLike adds n wires like one, to the next free cavities, or as many as there is room for. It is
// one change.
func addLike(m *desk.Model, id string, n int) {
	got, err := bulk.Like(m.Sheet, bulk.LikeAsk{Wire: id, Count: n})
	hint := ""
	if r, any := likeRow(m, id); any {
		hint = "; see the row: " + r.Text
	}
	if err != nil {
		m.Refuse(err.Error() + hint)
		return
	}
	was := m.H
	m.Change(got.H, got.Says)
	if m.H != was && got.Short != "" {
		m.Refuse(fmt.Sprintf("%s. No more than %d: %s%s", got.Says, len(got.Wires), got.Short, hint))
	}
}

// likeRow repeats what a wire's connector has on those like it that are empty.
func likeRow(m *desk.Model, id string) (desk.Row, bool) {
	k, ok := m.Sheet.Index.Wire[id]
	if !ok {
		return desk.Row{}, false
	}
	for _, text := range []string{m.H.Wires[k].To.V, m.H.Wires[k].From.V} {
		e, _ := m.Sheet.Index.End(text)
		if r, any := likeOf(m, e.Termination); any {
			return r, true
		}
	}
	return desk.Row{}, false
}

// likeOf is the row for one connector.
func likeOf(m *desk.Model, id string) (desk.Row, bool) {
	t, known := m.Sheet.Index.Termination[id]
	if !known {
		return desk.Row{}, false
	}
	like := offer.Like(m.Sheet, t)
	if len(like) == 0 {
		return desk.Row{}, false
	}
	var names []string
	for _, l := range like {
		names = append(names, m.H.Terminations[l].ID)
	}
	n := m.Sheet.Terms[t].Used
	return desk.Row{Key: "like " + id, Text: fmt.Sprintf("repeat %s on %s", id, strings.Join(names, " ")),
		Detail: fmt.Sprintf("%s each, to the next free cavities. Enter: on all of them. +: only on %s", words.Plural(n, "wire", "wires"),
			names[0]),
		Enter: func(m *desk.Model) { repeatOn(m, t, like) },
		Step: func(m *desk.Model, by int) {
			if by < 0 {
				m.Tell("Backspace undoes it")
				return
			}
			repeatOn(m, t, like[:1])
		}}, true
}

// repeatOn repeats a termination on others, as one change.
func repeatOn(m *desk.Model, of int, on []int) {
	h := m.H
	n := 0
	s := m.Sheet
	for _, to := range on {
		next, ids, err := offer.Repeated(s, of, to)
		if err != nil {
			m.Refuse(fmt.Sprintf("%s on %s: %s", m.H.Terminations[of].ID, m.H.Terminations[to].ID, err))
			return
		}
		n += len(ids)
		h = next
		s = m.Built(h)
	}
	m.Change(h, fmt.Sprintf("%s for %s", words.Plural(n, "wire", "wires"), words.Plural(len(on), "more end", "more ends")))
	// The row is gone now: what takes its place must not be hit by a key that bounces.
	m.Put(0, "")
}

// likeRows are what the connectors of these wires have, on those like them.
func likeRows(m *desk.Model, wires []int) []desk.Row {
	var out []desk.Row
	seen := map[string]bool{}
	for _, i := range wires {
		for _, text := range []string{m.H.Wires[i].From.V, m.H.Wires[i].To.V} {
			e, _ := m.Sheet.Index.End(text)
			if seen[e.Termination] {
				continue
			}
			seen[e.Termination] = true
			if r, any := likeOf(m, e.Termination); any {
				out = append(out, r)
			}
		}
	}
	return out
}

// mirrorRows offer to wire an empty bank as another is.
func mirrorRows(m *desk.Model) []desk.Row {
	var out []desk.Row
	for _, of := range offer.LikeBanks(m.Sheet, m.Branch) {
		id := m.H.Branches[of].ID
		out = append(out, desk.Row{Key: "mirror " + id, Text: "wire this bank like the one beyond " + id,
			Detail: "Enter repeats each wire of that bank, to the next free cavities", Enter: func(m *desk.Model) {
				h, ids, err := offer.Mirrored(m.Sheet, of, m.Branch)
				if err != nil {
					m.Refuse(err.Error())
					return
				}
				m.Change(h, fmt.Sprintf("%s, as beyond %s", words.Plural(len(ids), "wire", "wires"), id))
			}})
	}
	return out
}
