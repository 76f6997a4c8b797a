package several

import (
	"fmt"
	"slices"
	"strconv"

	"contralay/calc/query/bulk"
	"contralay/calc/query/offer"
	"contralay/model"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
)

// wiring is wires from a free cavity on, on their way. What was chosen for one cavity is offered
// for the next.
type wiring struct {
	of         string // the cavity, "P1:A"
	to         string // a termination or a splice
	at         string // the first cavity there
	n          int
	spec, size string
	role       model.Role
}

// target is where wires could go: how many cavities there take one, or a splice.
type target struct {
	id     string
	splice bool
	free   []string
	wires  int // that it shares with the connector already
}

// targetsOf are where a wire from a termination could go, those that it shares most wires with
// first, splices last.
func targetsOf(m *desk.Model, t int, f *wiring) []target {
	here := m.H.Terminations[t].ID
	var out []target
	for k := range m.H.Terminations {
		if _, way := m.Sheet.Index.Between(here, m.H.Terminations[k].ID); !way || k == t {
			continue
		}
		if free := bulk.FreeFrom(m.Sheet, k, "", f.spec, f.size, bulk.MostAtOnce, nil); len(free) > 0 {
			out = append(out, target{id: m.H.Terminations[k].ID, free: free})
		}
	}
	for _, q := range offer.Pairings(m.Sheet, t) {
		for k := range out {
			if out[k].id == m.H.Terminations[q.B].ID {
				out[k].wires = q.Wires + q.Spares
			}
		}
	}
	slices.SortStableFunc(out, func(a, b target) int { return b.wires - a.wires })
	for _, sp := range m.H.Splices {
		if _, way := m.Sheet.Index.Between(here, sp.At); way {
			out = append(out, target{id: sp.ID, splice: true})
		}
	}
	return out
}

// settle gives the form what it lacks for a cavity: the specification and size that most wires
// have and the cavity takes, and where most wires of the connector go.
func (f *wiring) settle(m *desk.Model, t int, cavity, of string) []target {
	if f.of != of {
		f.of, f.n, f.at = of, 1, ""
	}
	if f.spec == "" {
		f.spec = m.Sheet.Limits.Spec
	}
	if !takes(m, t, cavity, f.spec, f.size) || f.size == "" {
		f.size = likelySize(m, t, cavity, f.spec)
	}
	all := targetsOf(m, t, f)
	k := slices.IndexFunc(all, func(x target) bool { return x.id == f.to })
	if k < 0 {
		if k, f.to, f.at = 0, "", ""; len(all) == 0 {
			return nil
		}
		f.to = all[0].id
	}
	if !slices.Contains(all[k].free, f.at) {
		f.at = ""
		if len(all[k].free) > 0 {
			f.at = all[k].free[0]
		}
	}
	return all
}

// likelySize is the size of a specification that most wires have, of those that a cavity takes.
func likelySize(m *desk.Model, t int, cavity, spec string) string {
	used := map[string]int{"22": 1, "20": 1} // common sizes, where the harness has no wire yet
	for k := range m.H.Wires {
		if m.H.Wires[k].Spec == spec {
			used[m.H.Wires[k].Size] += 2
		}
	}
	best := ""
	for _, size := range m.Sheet.Cat.Sizes(spec) {
		if takes(m, t, cavity, spec, size) && (best == "" || used[size] > used[best]) {
			best = size
		}
	}
	return best
}

// ask is what would be made, and why not as many as wanted; "" where all.
func (f *wiring) ask(m *desk.Model, t int, cavity string, to target) (bulk.RangeAsk, string) {
	here := append([]string{cavity}, bulk.FreeFrom(m.Sheet, t, cavity, f.spec, f.size, f.n, nil)...)
	if k := slices.Index(here[1:], cavity); k >= 0 { // round to where it began
		here = here[:k+1]
	}
	ask := bulk.RangeAsk{Spec: f.spec, Size: f.size, Role: f.role, From: bulk.Ends{Termination: m.H.Terminations[t].ID}}
	n, short := min(f.n, len(here)), ""
	if n < f.n {
		short = fmt.Sprintf("%s has only %d free that take it", ask.From.Termination, n)
	}
	if to.splice {
		ask.To.Splice = to.id
	} else {
		k := max(0, slices.Index(to.free, f.at))
		there := slices.Concat(to.free[k:], to.free[:k])
		if len(there) < n {
			n, short = len(there), fmt.Sprintf("%s has only %d free that take it", to.id, len(there))
		}
		ask.To = bulk.Ends{Termination: to.id, Cavities: there[:n]}
	}
	ask.From.Cavities = here[:n]
	return ask, short
}

// FromPage makes wires from a free cavity on; of is "TERMINATION:CAVITY".
func FromPage(m *desk.Model, _ int, of string) desk.Page {
	e, ok := m.Sheet.Index.End(of)
	t, known := m.Sheet.Index.Termination[e.Termination]
	if !ok || !known || !slices.Contains(m.Sheet.Terms[t].Free, e.Cavity) {
		return desk.Page{Empty: "cavity " + of + " is not free any more. Esc goes back"}
	}
	f := desk.State[wiring](m)
	all := f.settle(m, t, e.Cavity, of)
	p := desk.Page{Lines: []string{"wires from cavity " + of + " on: nothing is made before you take it."}}
	sizes := func(m *desk.Model) []string {
		return slices.DeleteFunc(slices.Clone(m.Sheet.Cat.Sizes(f.spec)), func(s string) bool { return !takes(m, t, e.Cavity, f.spec, s) })
	}
	p.Rows = append(p.Rows, f.takeRow(m, t, e.Cavity, all),
		desk.Row{Key: "count", Text: label("how many") + strconv.Itoa(f.n), Detail: "Digits or + - say how many, to the next free cavities",
			Step: func(m *desk.Model, by int) {
				f.n = max(1, min(f.n+by, bulk.MostAtOnce))
				m.Tell(countText(f.n))
			},
			Field: &desk.Field{Label: "how many wires", Number: true, Set: func(m *desk.Model, text string) error {
				n, err := strconv.Atoi(text)
				if err != nil || n < 1 || n > bulk.MostAtOnce {
					return fmt.Errorf("type a whole number, 1 to %d", bulk.MostAtOnce)
				}
				f.n = n
				m.Tell(countText(n))
				return nil
			}}})
	p.Rows = append(p.Rows, f.toRows(m, all)...)
	p.Rows = append(p.Rows,
		chosen("size", model.SizeWords(f.size), sizes, model.SizeWords, func() string { return f.size }, func(v string) { f.size = v }),
		chosen("spec", f.spec, func(m *desk.Model) []string { return m.Sheet.Cat.Specs() }, itself, func() string { return f.spec },
			func(v string) { f.spec = v }),
		chosen("role", words.Either(f.role == "", "not said", string(f.role)), func(*desk.Model) []string {
			out := []string{""}
			for _, r := range model.Roles {
				out = append(out, string(r))
			}
			return out
		}, func(v string) string { return words.Either(v == "", "not said", v) }, func() string { return string(f.role) },
			func(v string) { f.role = model.Role(v) }))
	return p
}

// chosen is a row of the form: + - goes through a list, Enter shows it.
func chosen(key, now string, list func(m *desk.Model) []string, says func(string) string, value func() string, put func(string)) desk.Row {
	return desk.Row{Key: key, Text: label(key) + words.OrDash(now), Detail: "+ - the next one, Enter lists them",
		Step: func(m *desk.Model, by int) {
			v, moved := words.Around(list(m), value(), by)
			if !moved {
				m.Tell("there is no other")
				return
			}
			put(v)
			m.Tell(key + " " + says(v))
		},
		Enter: func(m *desk.Model) {
			m.Open(desk.ChooseScreen(key, func(*desk.Model) bool { return true },
				func(m *desk.Model) []desk.Choice { return plain(list(m), says) }, func(*desk.Model) string { return value() },
				func(m *desk.Model, v string) { put(v); m.Tell(key + " " + says(v)) }, nil))
		}}
}

// toRows are where the wires go.
func (f *wiring) toRows(m *desk.Model, all []target) []desk.Row {
	var ids []string
	for _, x := range all {
		ids = append(ids, x.id)
	}
	name := f.to
	if t, is := m.Sheet.Index.Termination[f.to]; is {
		name += "   " + m.H.Terminations[t].Name.V
	}
	rows := []desk.Row{chosen("to", name, func(*desk.Model) []string { return ids }, func(id string) string {
		k := slices.IndexFunc(all, func(x target) bool { return x.id == id })
		switch {
		case k < 0:
			return id
		case all[k].splice:
			return id + "   splice"
		}
		return fmt.Sprintf("%s   %d free", id, len(all[k].free))
	}, func() string { return f.to }, func(v string) { f.to, f.at = v, "" })}
	if k := slices.Index(ids, f.to); k >= 0 && !all[k].splice {
		rows = append(rows, chosen("from cavity", f.at, func(*desk.Model) []string { return all[k].free }, itself,
			func() string { return f.at },
			func(v string) { f.at = v }))
		rows[1].Key, rows[1].Text = "at", label("from there")+"cavity "+f.at+" on"
	}
	return rows
}

// takeRow says what would be made, and makes it.
func (f *wiring) takeRow(m *desk.Model, t int, cavity string, all []target) desk.Row {
	r := desk.Row{Key: "take", Does: "make", Enter: func(m *desk.Model) { m.Refuse(f.nowhere(m, t)) }}
	k := slices.IndexFunc(all, func(x target) bool { return x.id == f.to })
	if k < 0 {
		r.Mark, r.Text, r.Detail = "!", "no wire can be made", words.Capital(f.nowhere(m, t))
		return r
	}
	ask, short := f.ask(m, t, cavity, all[k])
	r.Text = fmt.Sprintf("make %s, %s: %s to %s", countText(len(ask.From.Cavities)), model.SizeWords(f.size), endsText(ask.From),
		endsText(ask.To))
	r.Detail = "Enter makes " + words.Either(len(ask.From.Cavities) == 1, "it", "them, each to the next free cavity")
	if short != "" {
		r.Mark, r.Detail = "?", words.Capital(short)
	}
	r.Enter = func(m *desk.Model) {
		got, err := bulk.Range(m.Sheet, ask)
		if done(m, got, err) {
			m.Back()
		}
	}
	return r
}

// nowhere says why there is no place for the other end.
func (f *wiring) nowhere(m *desk.Model, t int) string {
	return fmt.Sprintf("no other connector that a branch leads to from %s has a free cavity that takes %s", m.H.Terminations[t].ID,
		model.SizeWords(f.size))
}

// endsText is "P1:A", "P1:A B C", "S1".
func endsText(e bulk.Ends) string {
	switch n := len(e.Cavities); {
	case e.Splice != "":
		return e.Splice
	case n > 4:
		return fmt.Sprintf("%s:%s ... %s", e.Termination, e.Cavities[0], e.Cavities[n-1])
	default:
		out := e.Termination + ":"
		for k, c := range e.Cavities {
			out += words.Either(k > 0, " ", "") + c
		}
		return out
	}
}
