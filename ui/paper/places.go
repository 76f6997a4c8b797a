package paper

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/phase/ends"
	"contralay/calc/phase/threading"
	"contralay/calc/query/lists"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// The tables of places: branches, ends, cavities, and what is tested at them.

// datum is where a branch's length is taken from at one of its ends.
func (m maker) datum(id string) string {
	if t, ok := m.s.Index.Termination[id]; ok {
		if d := m.h.Terminations[t].Datum.V; d != "" {
			return string(d) + " of " + id
		}
		return id
	}
	return "centre of " + id
}

// clock is how a termination is clocked, seen from the wire side.
func (m maker) clock(t *model.Termination) string {
	var out []string
	if t.Clock.Set {
		out = append(out, fmt.Sprintf("key at %d", t.Clock.V))
	}
	if t.BootClock.Set {
		out = append(out, fmt.Sprintf("boot to %d", t.BootClock.V))
	}
	return dash(strings.Join(out, ", "))
}

// band is a diameter with its band from the tolerance of its wires.
func (m maker) band(b *sheet.Branch) string {
	if b.OverMM <= 0 {
		return "-"
	}
	return fmt.Sprintf("%s%s (%s to %s)%s", m.sys.Diameter(b.OverMM), mem(b.Standing), m.sys.Diameter(b.OverMinMM),
		m.sys.Diameter(b.OverMaxMM), m.learned(b))
}

// learned is the prediction, what was learned on it, and its spread.
func (m maker) learned(b *sheet.Branch) string {
	l := &b.Learned
	if l.Of == "" {
		return ""
	}
	return fmt.Sprintf("; predicted %s, learned %s, spread %s from %d readings", m.sys.Diameter(l.PredictedMM),
		m.signed(b.OverMM-l.PredictedMM), m.sys.Fine(b.OverMM*unit.Millimetre(l.Spread)), l.Readings)
}

// signed is a difference with its sign.
func (m maker) signed(v unit.Millimetre) string {
	if v < 0 {
		return "-" + m.sys.Fine(-v)
	}
	return "+" + m.sys.Fine(v)
}

func (m maker) tolerance(b *model.Branch) string {
	if t := b.ToleranceMM; len(t) == 2 {
		return fmt.Sprintf("-%s +%s", m.sys.Length(t[0]), m.sys.Length(t[1]))
	}
	return "-"
}

func (m maker) branches() Table {
	t := Table{File: "branches", Title: "Branches", Note: "Lengths along the centre line.",
		Head: []string{"branch", "name", "from", "to", m.in("length"), m.in("tolerance"), "things laid", m.in("over"), m.in("in sheath"),
			m.in("bend at least"), "surroundings"}, Right: right(4, 6, 9)}
	for i := range m.h.Branches {
		b, c := &m.h.Branches[i], &m.s.Branches[i]
		sheathed := "-"
		if c.Sheath.Tube.Set && c.Sheath.Verdict.Wraps {
			sheathed = m.sys.Diameter(c.Sheath.Verdict.OverMM)
		}
		var around []string
		for _, e := range b.Environment {
			around = append(around, string(e))
		}
		around = append(around, unit.Fixed(c.Ambient, 0)+" C")
		t.add(b.ID, b.Name.V, m.datum(b.From), m.datum(b.To), m.sys.Length(b.LengthMM), m.tolerance(b), fmt.Sprint(len(c.Components)),
			m.band(c), sheathed, m.sys.Length(c.Bend.MinMM), strings.Join(around, ", "))
	}
	return t
}

func (m maker) ends() Table {
	t := Table{File: "ends", Title: "Ends", Note: "Clocks seen from the wire side.",
		Head: []string{"end", "name", "device", "insert", "contacts", "key", "mount", "clock", "boot", "wired", "spare", "reserved",
			"blank", "plugs"}, Right: right(9, 10, 11, 12, 13)}
	for k := range m.h.Terminations {
		e, c := &m.h.Terminations[k], &m.s.Terms[k]
		t.add(e.ID, e.Name.V, e.Device.V, dash(e.Insert.V), dash(string(e.Gender.V)), dash(e.Key.V), dash(string(e.Mount.V)), m.clock(e),
			dash(e.Boot.V),
			fmt.Sprint(c.Used), fmt.Sprint(c.Spare), fmt.Sprint(c.Reserved), fmt.Sprint(c.Blank), fmt.Sprint(c.SealPlugs))
	}
	return t
}

// state is what a cavity is used for.
func (m maker) state(t int, name string, c sheet.Cavity) string {
	switch {
	case c.Drain != "" && len(c.Wires) == 0:
		return "drain"
	case len(c.Wires) == 0 && m.h.Terminations[t].Reserves(name):
		return "reserved"
	case len(c.Wires) == 0:
		return "blank"
	case m.wire(c.Wires[0]).Role.V == model.RoleSpare:
		return "spare"
	}
	return "wired"
}

// pins is a connector, cavity by cavity.
func (m maker) pins(k int) Table {
	e, c := &m.h.Terminations[k], &m.s.Terms[k]
	t := Table{Title: strings.TrimSpace("Pins of " + e.ID + "  " + e.Name.V),
		Note: strings.Join(nonEmpty("seen from the wire side", e.Insert.V, string(e.Gender.V), word("key ", e.Key.V), m.clock(e),
			word("boot ", e.Boot.V), word("fitted to ", e.Device.V)), "; "),
		Head: []string{"cavity", "state", "wire", "signal", "size", "colour", "contact", "leads to", "in"}, Blank: right(8)}
	for _, name := range c.Cavities {
		cav := c.State[name]
		called := name
		if also := e.Aliases[name]; len(also) > 0 {
			called += " (" + strings.Join(also, ", ") + ")"
		}
		state := m.state(k, name, cav)
		if c.Sealed && (state == "reserved" || state == "blank") {
			plug := "contact and plug"
			if e.Firewall.V {
				plug = "contact, stub of wire and plug"
			}
			state += ", " + plug
		}
		var ids, signals, sizes, colours, far []string
		for _, id := range cav.Wires {
			w := m.wire(id)
			ids, signals, sizes, colours = append(ids, id), append(signals, w.Signal.V), append(sizes, Size(w)),
				append(colours, Colour(w.Colour.V))
			other := m.end(w, w.To.V != "" && m.s.Index.H.Terminations[k].ID == termOf(w.To.V))
			far = append(far, other)
		}
		if cav.Drain != "" {
			ids, far = append(ids, "drain of "+cav.Drain), append(far, "shield of "+cav.Drain)
		}
		t.add(called, state, strings.Join(ids, ", "), strings.Join(signals, ", "), strings.Join(sizes, ", "), strings.Join(colours, ", "),
			word("size ", cav.Size), strings.Join(far, ", "), "")
	}
	return t
}

func termOf(end string) string {
	t, _, _ := strings.Cut(end, ":")
	return t
}

// word is a word before a text, or nothing where there is none.
func word(before, text string) string {
	if text == "" {
		return ""
	}
	return before + text
}

func nonEmpty(all ...string) []string {
	return slices.DeleteFunc(all, func(s string) bool { return s == "" || s == "-" })
}

// pinList is every connector in one list, for a spreadsheet.
func (m maker) pinList() Table {
	t := Table{File: "pins", Title: "Pin tables", Head: []string{"end", "cavity", "state", "wire", "signal", "size", "colour", "contact",
		"leads to"}}
	for k := range m.h.Terminations {
		for _, r := range m.pins(k).Rows {
			t.add(append([]string{m.h.Terminations[k].ID}, r[:8]...)...)
		}
	}
	return t
}

// ringOut is what must ring at each cavity, and through how much copper.
func (m maker) ringOut() Table {
	t := Table{File: "ring-out", Title: "Ring-out, by connector",
		Note: "Twice: bare, before anything shrinks, and with contacts in, before any adhesive. Ohm of the copper at 20 C and at most; " +
			"contacts add a few thousandths, the meter's leads are taken off. What is not listed must not ring.",
		Head: []string{"end", "cavity", "wire", "rings to", "by way of", "at most, ohm", "bare", "pinned"}, Right: right(5),
		Blank: right(6, 7)}
	if from := m.h.Head.ListedFrom.V; len(m.h.Listed) > 0 {
		if n := len(ends.Disagreements(m.s)); n == 0 {
			t.Note += " Held against an independent list, " + dash(from) + ": it joins the same."
			if silent := m.unlisted(); len(silent) > 0 {
				t.Note += " It does not name, and nothing there is held: " + strings.Join(silent, ", ") + "."
			}
		} else {
			t.Note += fmt.Sprintf(" Held against an independent list, %s: %d DISAGREE, see the first page. Do not build before that is "+
				"settled.", dash(from), n)
		}
	}
	for _, r := range lists.RingOut(m.s) {
		id := m.h.Terminations[r.Termination].ID
		wire := "drain of " + r.Drain
		if r.Wire >= 0 {
			wire = m.h.Wires[r.Wire].ID
		}
		if len(r.To) == 0 {
			t.add(id, r.Cavity, wire, "nothing", "", "open", "", "")
		}
		for _, to := range r.To {
			ohm := "rings"
			if to.Ohm.Set {
				ohm = unit.Fixed(to.Ohm.V, 3) + mem(to.Standing)
			}
			t.add(id, r.Cavity, wire, to.End, strings.Join(to.Via, ", "), ohm, "", "")
		}
	}
	return t
}

// unlisted is the wired ends that the independent list says nothing of.
func (m maker) unlisted() []string {
	named := map[string]bool{}
	for _, n := range m.h.Listed {
		for _, e := range n.Ends {
			named[termOf(e)] = true
		}
	}
	var out []string
	for k := range m.h.Terminations {
		if id := m.h.Terminations[k].ID; !named[id] && m.s.Terms[k].Used > 0 {
			out = append(out, id)
		}
	}
	return out
}

// isolation is what is held against what.
func (m maker) isolation() Table {
	x := lists.Isolation
	t := Table{Title: "Isolation",
		Note: fmt.Sprintf("Each net against every other, against shields and shells: %s megohm at least, at %s to %s V DC, within %s min "+
			"(%s). Devices off; never more volts than the least rated part stands.", unit.Fixed(x.Megohm, 0),
			unit.Fixed(x.Least, 0), unit.Fixed(x.Top, 0), unit.Fixed(x.Minutes, 0), x.Source),
		Head: []string{"at", "volts used", "least reading, megohm", "between", "by"}, Blank: right(1, 2, 3, 4)}
	for k := range m.h.Terminations {
		if m.s.Terms[k].Used+m.s.Terms[k].Spare > 0 {
			t.add(m.h.Terminations[k].ID, "", "", "", "")
		}
	}
	return t
}

// loads is what each wire carries and bears.
func (m maker) loads() Table {
	t := Table{File: "loads", Title: "Loads and loaded drop",
		Note: "Limits by the least of heat in the bundle, contact, splice and device, with every other current as entered. Measure the " +
			"drop with the load on, along the circuit, return and all.",
		Head: []string{"wire", "signal", "size", "carries, A", "heats as, A", "may carry, A", "bound by", "hottest, C", "in",
			"drop to expect, V", "measured, V"}, Right: right(3, 4, 5, 7, 9), Blank: right(10)}
	for k := range m.h.Wires {
		w, c := &m.h.Wires[k], &m.s.Wires[k]
		if !w.Amps.Set || w.Amps.V <= 0 {
			continue
		}
		most, by, hot, drop := "-", "", "-", "-"
		if c.Bound.Set {
			most, by = unit.Fixed(c.Bound.V.Amps, 1)+mem(c.Bound.V.Standing), c.Bound.V.Where
		}
		if c.HottestC.Set {
			hot = unit.Fixed(c.HottestC.V, 0)
		}
		if c.Drop.Set {
			drop = unit.Fixed(c.Circuit, 2)
		}
		t.add(w.ID, w.Signal.V, Size(w), unit.Fixed(w.Amps.V, 2), unit.Fixed(c.Heats, 2), most, by, hot, c.HottestIn,
			drop, "")
	}
	return t
}

func (m maker) feeds() Table {
	t := Table{File: "feeds", Title: "Feeds", Head: []string{"feed", "name", "device", "rated, A", "outputs", "wires"}, Right: right(3, 4)}
	for i := range m.h.Feeds {
		f := &m.h.Feeds[i]
		amps := "-"
		if f.Amps.Set {
			amps = unit.Fixed(f.Amps.V, 1)
		}
		t.add(f.ID, f.Name.V, dash(string(f.Device.V)), amps, fmt.Sprint(f.Outputs.Or(1)), strings.Join(f.Wires, ", "))
	}
	return t
}

// threading is one order of threading as a table.
func (m maker) threading(all []threading.Threaded, title, file string) Table {
	t := Table{File: file, Title: title, Head: []string{"no", "what", "of", "part", "comes on from", m.in("bore"), m.in("to pass"), "over",
		"on"}, Right: right(0, 5, 6), Blank: right(8)}
	for n, x := range all {
		bore, pass := "-", "-"
		if x.BoreMM > 0 {
			bore, pass = m.sys.Fine(x.BoreMM)+mem(x.Standing), m.sys.Fine(x.PassMM)
		}
		t.add(fmt.Sprint(n+1), string(x.What), x.Of, x.Part, x.From, bore, pass, x.Over, "")
	}
	return t
}

// tail is the order at one end, short: whoever stands there has the rest in the list.
func (m maker) tail(all []threading.Threaded, title string) Table {
	t := Table{Title: title, Head: []string{"no", "what", "of", "part", "on"}, Right: right(0), Blank: right(4)}
	for n, x := range all {
		t.add(fmt.Sprint(n+1), string(x.What), x.Of, x.Part, "")
	}
	return t
}

func (m maker) glue() Table {
	l := &m.s.Limits
	life := "its sheet says how long it can be used, and how it cures"
	if l.PotLifeMin > 0 {
		life = fmt.Sprintf("used within %d minutes of mixing; its sheet says how it cures", l.PotLifeMin)
	}
	t := Table{Title: "Adhesive: " + l.Adhesive, Note: "Not before it is rung out with contacts in. Abrade, wipe, recover, let cure; " +
		life + ".", Head: []string{"mix", "joints", "mixed at", "done by"}, Blank: right(2, 3)}
	for n, x := range threading.Mixes(m.s) {
		t.add(fmt.Sprint(n+1), strings.Join(x.Joints, "; "), "", "")
	}
	return t
}
