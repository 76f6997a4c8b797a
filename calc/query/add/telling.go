package add

import (
	"cmp"
	"fmt"
	"maps"
	"slices"
	"strings"

	"contralay/model"
)

func sortedKeys[V any](of map[string]V) []string { return slices.Sorted(maps.Keys(of)) }

// span is ids in few words, in order: "101, 103 to 106", "INJ1 to INJ4".
func span(ids []string) string {
	ids = slices.SortedStableFunc(slices.Values(ids), func(a, b string) int {
		return cmp.Or(cmp.Compare(head(a), head(b)), cmp.Compare(number(a), number(b)))
	})
	var parts []string
	for k := 0; k < len(ids); {
		last := k
		for last+1 < len(ids) && head(ids[last+1]) == head(ids[k]) && head(ids[k]) != ids[k] && number(ids[last+1]) == number(ids[last])+1 {
			last++
		}
		if last-k < 2 {
			last = k
			parts = append(parts, ids[k])
		} else {
			parts = append(parts, ids[k]+" to "+ids[last])
		}
		k = last + 1
	}
	return strings.Join(parts, ", ")
}

// ofWires keeps what is told of wires, so that the same of several rows is one line.
func (d *devices) ofWires(kind GuessKind, about string, ids []string, t Taken, format string, args ...any) {
	says := fmt.Sprintf(format, args...)
	for k := range d.told {
		if g := &d.told[k]; g.Kind == kind && g.About == about && g.Says == says && g.Taken == t {
			g.Of = append(g.Of, ids...)
			return
		}
	}
	d.told = append(d.told, Guess{Kind: kind, About: about, Of: slices.Clone(ids), Says: says, Taken: t, Source: d.s.Cat.SourcesIn(t.From)})
}

// tellWires tells what the wires of each row of the kind took.
func (d *devices) tellWires() {
	for r := range d.kind.Carries {
		if len(d.of[r]) > 0 {
			d.tellRow(r)
		}
	}
	for _, about := range []string{"role", "return", "size", "spec", "amps", "on_s", "peak", "from"} {
		for _, g := range d.told {
			if g.About == about {
				g.Says = span(g.Of) + ": " + g.Says
				d.out.Says = append(d.out.Says, g)
			}
		}
	}
	d.tellCavities()
	d.tellColours()
}

func (m *maker) tellColours() {
	var without []string
	for k := range m.h.Wires {
		if w := &m.h.Wires[k]; slices.Contains(m.out.Wires, w.ID) && !w.Colour.Set {
			without = append(without, w.ID)
		}
	}
	m.chose("colour", m.out.Wires, "%s: colours are the next in stock that no other wire at the same ends has; the wires of a splice "+
		"share one", span(m.out.Wires))
	if len(without) > 0 {
		m.tell(Missing, "colour", without, Taken{}, "%s: no colour code is left at their ends: choose one", span(without))
	}
}

// tellCavities tells which new wires and drains stand in which cavities of the connectors.
func (m *maker) tellCavities() {
	at := map[string][]string{}
	put := func(end, what string) {
		if e, ok := model.ParseEnd(end); ok && e.Termination != "" {
			at[e.Termination] = append(at[e.Termination], what+" in "+e.Cavity)
		}
	}
	for k := range m.h.Wires {
		if w := &m.h.Wires[k]; slices.Contains(m.out.Wires, w.ID) {
			put(w.From.V, w.ID)
		}
	}
	for k := range m.h.Units {
		if u := &m.h.Units[k]; slices.Contains(m.out.Units, u.ID) {
			put(u.DrainFrom.V, "the drain of "+u.ID)
		}
	}
	for _, id := range sortedKeys(at) {
		m.chose("cavity", []string{id}, "At %s: %s", id, strings.Join(at[id], ", "))
	}
}

func (d *devices) tellRow(r int) {
	c, ids, is := d.kind.Carries[r], d.of[r], d.sizeOf(r)
	d.ofWires(Chosen, "role", ids, d.kind.Layout, "%s, cavity %s; role %s", c.What, c.Cavity, c.Role)
	if c.Return != "" {
		d.ofWires(Chosen, "return", ids, Taken{}, "the current comes back by the wire of cavity %s", c.Return)
	}
	switch {
	case d.ask.Size != "":
	case c.Size == "":
		d.ofWires(Missing, "size", ids, c.SizeIs, "no size is known%s. %s %s holds the place: choose one", because(c.SizeIs.From), is.spec,
			model.SizeWords(is.size))
	default:
		d.ofWires(Chosen, "size", ids, c.SizeIs, "%s %s", is.spec, model.SizeWords(is.size))
	}
	if is.says != "" {
		d.ofWires(Chosen, "spec", ids, Taken{}, "%s", is.says)
	}
	if d.kind.Outside == "" {
		d.tellFlow(r)
	}
	d.tellFar(r)
}

func because(from string) string {
	if from == "" {
		return ""
	}
	return " (" + from + ")"
}

// tellFlow tells the current of a row and how it comes and goes.
func (d *devices) tellFlow(r int) {
	c, ids := d.kind.Carries[r], d.of[r]
	switch {
	case c.Amps > 0:
		d.ofWires(Chosen, "amps", ids, c.AmpsIs, "%s A", plainAmps(c.Amps))
	case c.LimitA > 0:
		d.ofWires(Missing, "amps", ids, c.LimitIs, "no current is known. The contact may carry %s A: enter what flows", plainAmps(c.LimitA))
	default:
		d.ofWires(Missing, "amps", ids, c.AmpsIs, "no current is known%s", because(c.AmpsIs.From))
	}
	if c.OnS > 0 {
		d.ofWires(Chosen, "on_s", ids, c.DutyIs, "on for %s s in every %s s, %s A in between", plain(float64(c.OnS)),
			plain(float64(c.PeriodS)),
			plainAmps(c.RestA))
	}
	if c.PeakA > 0 {
		d.ofWires(Chosen, "peak", ids, c.PeakIs, "%s A for %s s at first. The file does not hold that: choose fuse and output by it",
			plainAmps(c.PeakA), plain(float64(c.PeakS)))
	}
}

// tellFar tells where the other ends of a row go, and where the kind would have them.
func (d *devices) tellFar(r int) {
	c, ids := d.kind.Carries[r], d.of[r]
	term, ok := d.farEnd(c)
	switch {
	case d.splice[r] != "":
		d.ofWires(Chosen, "from", ids, Taken{}, "from the splice %s", d.splice[r])
	case !ok:
		d.ofWires(Missing, "from", ids, Taken{}, "no connector is given for the other end, which goes to: %s", c.Far)
	}
	if ok && !strings.HasPrefix(c.Far, "controller") && d.ask.Ends[c.Far] == "" {
		to := ids
		if d.splice[r] != "" {
			to = d.feedWire(d.splice[r])
		}
		d.ofWires(Chosen, "from", to, d.kind.Layout, "the other end is put into %s. With this kind it goes to: %s",
			d.s.H.Terminations[term].ID,
			c.Far)
	} else if !ok && d.splice[r] != "" {
		d.ofWires(Missing, "from", d.feedWire(d.splice[r]), Taken{}, "no connector is given for the other end, which goes to: %s", c.Far)
	}
}

// feedWire is the wire that feeds a splice of this package.
func (d *devices) feedWire(splice string) []string {
	for k := range d.h.Wires {
		if d.h.Wires[k].To.V == splice {
			return []string{d.h.Wires[k].ID}
		}
	}
	return nil
}

// tellKind tells what must be asked of such devices, and what is outside what the sheet rates.
func (d *devices) tellKind() {
	if d.kind.Ask != "" {
		d.tell(Ask, "ask", d.terms, Taken{}, "Such devices differ. Ask for %s", d.kind.Ask)
	}
	if d.kind.Outside != "" {
		d.tell(Outside, "outside", d.terms, Taken{}, "Outside what the sheet rates: %s. No current is entered", d.kind.Outside)
	}
	if d.kind.Note != "" {
		d.tell(Chosen, "note", d.terms, Taken{}, "%s", d.kind.Note)
	}
}
