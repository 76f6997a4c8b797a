package paper

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"contralay/calc/formula/crimp"
	"contralay/calc/phase/ends"
	"contralay/calc/phase/over"
	wiresphase "contralay/calc/phase/wires"
	"contralay/calc/query/lists"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// The lists of a build sheet: what is cut, made first, crimped, bought.

// maker makes the tables of one sheet.
type maker struct {
	s   *sheet.Sheet
	h   *model.Harness
	sys unit.System
}

func makerOf(s *sheet.Sheet) maker {
	m := maker{s: s, h: s.H}
	if sys, err := unit.ParseSystem(s.H.Head.Units.V); err == nil {
		m.sys = sys
	}
	return m
}

// in is a column head with its unit.
func (m maker) in(head string) string { return head + ", " + m.sys.Name() }

func dash(s string) string { return cmp.Or(s, "-") }

// mem marks a figure that rests on memory.
func mem(st catalogue.Standing) string {
	if st == catalogue.Memory {
		return "~"
	}
	return ""
}

func (m maker) wire(id string) *model.Wire {
	if k, ok := m.s.Index.Wire[id]; ok {
		return &m.h.Wires[k]
	}
	return &model.Wire{ID: id}
}

// end is an end of a wire in words.
func (m maker) end(w *model.Wire, from bool) string {
	text := w.To.V
	if from {
		text = w.From.V
	}
	switch {
	case text == "" && wiresphase.Capped(w):
		return "capped at " + w.CappedAt.V
	case text == "":
		return "open"
	}
	if _, splice := m.s.Index.Splice[text]; splice {
		return "splice " + text
	}
	return text
}

// cutList is every wire by reel, longest first.
func (m maker) cutList() Table {
	t := Table{File: "cut-list", Title: "Cut list, by reel",
		Note: "Longest first. Flag both ends as it is cut; the flag stays until its contact is in. Finished is what stays in the " +
			"harness, loops in; what is cut holds the tails too, which come off when it is pinned.",
		Head: []string{"reel", "wire", m.in("cut"), m.in("finished"), "colour", "from", "to", "signal", "cut"}, Right: right(2, 3),
		Blank: right(8)}
	for _, c := range lists.CutList(m.s) {
		for _, k := range c.Wires {
			w := &m.h.Wires[k]
			t.add(c.Spec+" "+Size(&model.Wire{Size: c.Size}), w.ID, m.sys.Length(c.CutMM), m.sys.Length(m.s.Wires[k].Finished),
				Colour(w.Colour.V), m.end(w, true), m.end(w, false), w.Signal.V, "")
		}
	}
	return t
}

// flags is what each wire wears at its ends.
func (m maker) flags() Table {
	t := Table{File: "wire-flags", Title: "Wire flags", Note: "Two of each wire, one at each end.", Head: []string{"flag", "end", "reads"}}
	for k := range m.h.Wires {
		w := &m.h.Wires[k]
		t.add(w.ID, "1", w.ID+"  "+m.end(w, true))
		t.add(w.ID, "2", w.ID+"  "+m.end(w, false))
	}
	return t
}

func (m maker) units() Table {
	t := Table{File: "units", Title: "Made up first", Note: "Twisted, and shielded where it says so, before anything is laid.",
		Head: []string{"unit", "name", "build", "wires", m.in("turn"), m.in("over"), "shield", m.in("shield ends before contacts"),
			m.in("lead"), "solder sleeve", "drain from", "drain to"}, Right: right(4, 5, 7, 8)}
	sleeve := map[int]int{}
	for _, e := range over.ShieldEnds(m.s) {
		sleeve[e.Unit] = max(sleeve[e.Unit], e.Sleeve)
	}
	for i := range m.h.Units {
		u, s := &m.h.Units[i], &m.s.Units[i]
		var wires []string
		for _, id := range u.Wires {
			w := m.wire(id)
			wires = append(wires, strings.TrimSpace(fmt.Sprintf("%s %s %s", id, Size(w), Colour(w.Colour.V))))
		}
		turn, size := "-", "-"
		if s.LayMM > 0 {
			turn = m.sys.Length(Turn(s.LayMM))
		}
		if sleeve[i] > 0 {
			size = fmt.Sprintf("size %d~", sleeve[i])
		}
		t.add(u.ID, u.Name.V, string(u.Build.V), strings.Join(wires, "; "), turn, m.sys.Diameter(s.Dia.Nominal)+mem(s.Dia.Standing),
			map[bool]string{true: "yes", false: "no"}[u.Shield.V], m.optLength(u.StripMM), m.optLength(u.DrainMM), size,
			dash(u.DrainFrom.V), dash(u.DrainTo.V))
	}
	return t
}

func (m maker) optLength(v model.Opt[unit.Millimetre]) string {
	if !v.Set {
		return "-"
	}
	return m.sys.Length(v.V)
}

// crimps is how every contact is crimped, and the samples that are pulled first.
func (m maker) crimps() Table {
	t := Table{File: "crimps", Title: "Crimp sheet and pull samples",
		Note: "Three samples of each pull the least given before the first real one, and again when tool, setting or reel changes. " +
			"Newton; pulled slowly, in line.",
		Head: []string{"contact", "part", "wire", "count", "strip, mm", "tool and positioner", "setting", "insertion tool",
			"strands nicked / broken, at most", "pull at least, N", "sample 1", "sample 2", "sample 3"}, Right: right(3, 9),
		Blank: right(10, 11, 12)}
	for _, c := range lists.CrimpList(m.s) {
		strip, tool, step, insert, hurt, pull := "-", "its maker's sheet", "-", "-", "-", "-"
		if c.StripMin > 0 {
			strip = fmt.Sprintf("%s to %s", unit.Fixed(c.StripMin, 1), unit.Fixed(c.StripMax, 1))
		}
		if c.Tool.Set {
			tool = fmt.Sprintf("%s with %s~", c.Tool.V.Frame, c.Tool.V.Positioner)
			if c.Step > 0 {
				step = fmt.Sprintf("%d%s", c.Step, map[bool]string{true: "~"}[c.StepGuess])
			}
		}
		if i, ok := crimp.Insertion(c.Contact); ok && c.Circular {
			insert = i
		}
		if n, ok := catalogue.AWGNumber(cmp.Or(c.Together, c.Size)); ok {
			if nicked, broken, ok := crimp.Damage(n); ok {
				hurt = fmt.Sprintf("%d / %d", nicked, broken)
			}
		}
		if c.PullN > 0 {
			pull = unit.Fixed(c.PullN, 0) + mem(c.PullBy.Standing)
		}
		size := Size(&model.Wire{Size: c.Size})
		if c.Together != "" {
			size = c.Size + " AWG, together as " + c.Together
		}
		t.add("size "+c.Contact, dash(c.Part), size, fmt.Sprint(c.Count), strip, tool, step, insert, hurt, pull, "", "", "")
	}
	return t
}

func (m maker) splices() Table {
	t := Table{File: "splices", Title: "Splices", Head: []string{"splice", "at", "sleeve lies", "part", "first barrel", "second barrel",
		"done"}, Blank: right(6)}
	side := func(all []int) string {
		var out []string
		for _, k := range all {
			out = append(out, m.h.Wires[k].ID)
		}
		return strings.Join(out, ", ")
	}
	for i := range m.s.Splices {
		sp, c := &m.h.Splices[i], &m.s.Splices[i]
		lies := "at its centre"
		if sp.Toward.V != "" {
			lies = fmt.Sprintf("%s %s along %s", m.sys.Length(sp.OffsetMM.V), m.sys.Name(), sp.Toward.V)
		}
		t.add(sp.ID, sp.At, lies, dash(c.Part)+mem(c.Standing), side(c.Near), side(c.Far), "")
	}
	return t
}

func (m maker) bill() Table {
	t := Table{File: "bill", Title: "Bill of material",
		Note: "To order: a tenth more of what is cut, a twentieth more of contacts and plugs, samples to pull; what is on the shelf is " +
			"taken off. Consumables beside it: wipes and solvent for the adhesive, lacing tape or thread, marker ribbon.",
		Head: []string{"what", "part", "needed", "to order", "unit", "says"}, Right: right(2, 3)}
	for _, r := range lists.Bill(m.s) {
		digits, of := 0, "pieces"
		if r.Metres {
			digits, of = 1, "m"
		}
		t.add(r.Group, r.Part, unit.Fixed(r.Need, digits)+mem(r.Standing), unit.Fixed(r.Order, digits), of, r.Says)
	}
	return t
}

func (m maker) labels() Table {
	t := Table{File: "labels", Title: "Labels",
		Note: "25 to 50 mm off the boot's tail, read from the connector, on the clocked side. Threaded on before the boot.",
		Head: []string{"end", "reads", "sleeve", m.in("shrinks on"), "on the side of"}, Right: right(3)}
	for _, l := range lists.Labels(m.s) {
		side := "-"
		if l.OnHours > 0 {
			side = fmt.Sprintf("%d o'clock", l.OnHours)
		}
		t.add(l.Of, strings.Join(l.Text, "  "), l.Sleeve, m.sys.Diameter(l.OverMM), side)
	}
	return t
}

// spares is where each spare is found when it is wanted.
func (m maker) spares() Table {
	t := Table{File: "spares", Title: "Spares card", Note: "Goes with the harness: what is free in it, and where.",
		Head: []string{"wire", "size", "colour", "from", "to", "runs through", "where its end lies"}}
	caps := map[int]ends.Cap{}
	for _, c := range ends.Caps(m.s) {
		caps[c.Wire] = c
	}
	for k := range m.h.Wires {
		w := &m.h.Wires[k]
		if w.Role.V != model.RoleSpare {
			continue
		}
		var way []string
		for _, b := range m.s.Wires[k].Path {
			way = append(way, m.h.Branches[b].ID)
		}
		lies := "a cavity at both ends"
		if c, is := caps[k]; is {
			lies = "capped at " + c.Place
			if c.Branch >= 0 {
				lies = fmt.Sprintf("capped, folded back %s %s; its cap at %s of %s", m.sys.Length(c.FoldMM), m.sys.Name(),
					m.sys.Length(c.AtMM), m.h.Branches[c.Branch].ID)
			}
		}
		t.add(w.ID, Size(w), Colour(w.Colour.V), m.end(w, true), m.end(w, false), strings.Join(way, " "), lies)
	}
	return t
}

// loops is how often the contacts of an end can be made anew, and how often they were.
func (m maker) loops() Table {
	t := Table{File: "loops", Title: "Loop ledger", Note: "Each new contact takes some loop. Strike one out when it is used.",
		Head: []string{"end", m.in("loop"), "good for", "used so far", "left", "struck out"}, Right: right(1, 2, 3, 4), Blank: right(5)}
	used := map[string]int{}
	for i := range m.h.Builds {
		for _, a := range m.h.Builds[i].Again {
			used[a.End] += a.Times
		}
	}
	for k := range m.h.Terminations {
		l := over.LoopRoomOf(m.s, k)
		id := m.h.Terminations[k].ID
		n := 0
		for end, times := range used {
			if e, _, _ := strings.Cut(end, ":"); e == id {
				n = max(n, times)
			}
		}
		t.add(id, m.sys.Length(l.LoopMM), fmt.Sprint(l.Again), fmt.Sprint(n), fmt.Sprint(max(0, l.Again-n)), "")
	}
	return t
}

// lots is what was used, for whoever has to find it again.
func (m maker) lots() Table {
	t := Table{Title: "Lots and tools", Head: []string{"what", "lot, date or number"}, Blank: right(1)}
	seen := map[string]bool{}
	put := func(what string) {
		if what != "" && !seen[what] {
			seen[what] = true
			t.add(what, "")
		}
	}
	for _, r := range lists.ReelList(m.s) {
		put(r.Spec + " " + Size(&model.Wire{Size: r.Size}))
	}
	for _, r := range lists.Bill(m.s) {
		if sheet.PartKind(r.Group).IsCover() || slices.Contains([]string{"boot", "transition", "splice", "adhesive"}, r.Group) {
			put(r.Group + " " + r.Part)
		}
	}
	for _, c := range lists.CrimpList(m.s) {
		if c.Tool.Set {
			put("crimp tool " + c.Tool.V.Frame + ", positioner " + c.Tool.V.Positioner)
		}
	}
	put("heat gun")
	put("meter, pull tester")
	return t
}
