package wires

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"contralay/calc/phase/wires"
	"contralay/calc/query/lists"
	"contralay/calc/query/offer"
	"contralay/calc/query/why/power"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
	"contralay/ui/paper"
)

// WirePage is one wire: what it is, where it ends, and the reel it comes from.
func WirePage(m *desk.Model, _ int, id string) desk.Page {
	i, ok := m.Sheet.Index.Wire[id]
	if !ok {
		return desk.Page{Empty: "wire " + id + " is gone. Esc goes back"}
	}
	w, c := &m.H.Wires[i], &m.Sheet.Wires[i]
	p := desk.Page{Lines: []string{"wire " + id + "   " + w.Signal.V}}
	comp := id
	if u, in := m.Sheet.Index.UnitOf[id]; in {
		comp = m.H.Units[u].ID
	}
	add := func(label, value, detail string, step func(m *desk.Model, by int), f *desk.Field) {
		r := desk.Row{Key: label, Text: fmt.Sprintf("%-12s %s", label, words.OrDash(value)), Detail: detail, Id: comp, Step: step, Field: f}
		switch label {
		case "reel", "size":
			r.Why = desk.FiguresOfPart(desk.WholeLoom, id, "component.over")
			if c.Dia.Known() {
				r.Big, r.BigSays = m.Sys.Fine(c.Dia.Nominal), m.Sys.Name()+"  OD of "+id
			}
		case "current":
			r.Big, r.BigSays = strings.TrimPrefix(ampsText(w), "-"), "A  in wire "+id
		}
		p.Rows = append(p.Rows, r)
	}
	set := func(edit func(w *model.Wire, v string)) func(m *desk.Model, text string) error {
		return func(m *desk.Model, text string) error {
			m.Change(m.H.EditWire(m.Sheet.Index.Wire[id], func(w *model.Wire) { edit(w, text) }), "set to "+text)
			return nil
		}
	}
	there := func(m *desk.Model) bool {
		_, ok := m.Sheet.Index.Wire[id]
		return ok
	}
	choose := func(what string, list func(m *desk.Model) []desk.Choice, now func(m *desk.Model) string, edit func(w *model.Wire, v string),
		other *desk.Field) {
		r := &p.Rows[len(p.Rows)-1]
		r.Enter = func(m *desk.Model) {
			m.Open(desk.ChooseScreen(what, there, list, now, func(m *desk.Model, v string) {
				m.Change(m.H.EditWire(m.Sheet.Index.Wire[id], func(w *model.Wire) { edit(w, v) }), what+" "+v)
			}, other))
		}
	}
	wire := func(m *desk.Model) *model.Wire { return &m.H.Wires[m.Sheet.Index.Wire[id]] }
	add("reel", reelText(m, w.Spec, w.Size, c.Dia.Nominal),
		"Lay ten side by side. Type their width, or a tenth of it. Empty removes it",
		func(m *desk.Model, by int) { stepReel(m, id, by) }, reelField(m, w.Spec, w.Size))
	add("current", ampsText(w)+" A"+ofText(m, id, w.Amps.V, c), "+ - or digits. The lowest limit in the list below counts",
		func(m *desk.Model, by int) { stepCurrent(m, id, by) }, ampsField(m, i))
	add("size", paper.Size(w), "Enter lists the sizes", func(m *desk.Model, by int) { stepSize(m, m.Sheet.Index.Wire[id], by) }, nil)
	sized := len(p.Rows)
	choose("size", sizeChoices(m, id), func(m *desk.Model) string { return wire(m).Size }, func(w *model.Wire, v string) { w.Size = v },
		nil)
	if r, any := adviceRow(m, i, comp); any {
		p.Rows = append(p.Rows[:sized], append([]desk.Row{r}, p.Rows[sized:]...)...)
	}
	add("spec", w.Spec, "Enter lists them", func(m *desk.Model, by int) { stepSpec(m, id, by) }, nil)
	choose("spec", specChoices(m, id), func(m *desk.Model) string { return wire(m).Spec }, func(w *model.Wire, v string) { w.Spec = v },
		nil)
	colour := &desk.Field{Label: "colour of wire " + id, Value: w.Colour.V, ID: true,
		Set: set(func(w *model.Wire, v string) { w.Colour = model.Some(v) })}
	add("colour", paper.Colour(w.Colour.V), "0 black 1 brown 2 red 3 orange 4 yellow 5 green 6 blue 7 violet 8 grey 9 white",
		func(m *desk.Model, by int) { stepColour(m, id, by) }, colour)
	choose("colour", colourChoices, func(m *desk.Model) string { return wire(m).Colour.V },
		func(w *model.Wire, v string) { w.Colour = model.Some(v) }, colour)
	add("role", string(w.Role.V), "Enter lists them", func(m *desk.Model, by int) { stepRole(m, id, by) }, nil)
	choose("role", roleChoices, func(m *desk.Model) string { return string(wire(m).Role.V) },
		func(w *model.Wire, v string) { w.Role = model.Some(model.Role(v)) }, nil)
	for _, from := range []bool{true, false} {
		label, now := "to", endOf(m, id, from)
		if from {
			label = "from"
		}
		typed := &desk.Field{Label: label + ", TERMINATION:CAVITY or a splice", Value: now, ID: true,
			Set: func(m *desk.Model, t string) error { return setEnd(m, id, from, t) }}
		add(label, now, "+ - next free cavity of the same connector. Enter lists other ends",
			func(m *desk.Model, by int) { stepEnd(m, id, from, by) }, nil)
		p.Rows[len(p.Rows)-1].Enter = func(m *desk.Model) {
			m.Open(desk.ChooseScreen(label, there, func(m *desk.Model) []desk.Choice { return endChoices(m, id, from) },
				func(m *desk.Model) string { return endOf(m, id, from) },
				func(m *desk.Model, v string) { putEnd(m, id, from, v) }, typed))
		}
	}
	if wires.Capped(w) {
		if r, any := foldRow(m, id); any {
			p.Rows = append(p.Rows, r)
		}
	}
	add("signal", w.Signal.V, "", nil, &desk.Field{Label: "signal of wire " + id, Value: w.Signal.V,
		Set: set(func(w *model.Wire, v string) { w.Signal = model.Some(v) })})
	p.Rows = append(p.Rows, dutyRow(m, id), feedRow(m, id), measuredRow(m, id))
	p.Rows = append(p.Rows, pairRows(m, id)...)
	if r, any := damagedRow(m, id); any {
		p.Rows = append(p.Rows, r)
	}
	p.Rows = append(p.Rows, moreRow(m, id))
	if r, any := likeRow(m, id); any {
		p.Rows = append(p.Rows, r)
	}
	if comp != id {
		r := desk.AllValuesRow("unit", comp)
		r.Key, r.Text = "unit", fmt.Sprintf("%-12s %s", "unit", comp)
		r.Detail = "It is laid as one piece. Enter opens everything of the unit"
		p.Rows = append(p.Rows, r)
	}
	p.Rows = append(p.Rows, desk.AllValuesRow("wire", id))
	p.Why = desk.FiguresOf(id, "wire.bound", "wire.heats", "wire.hottest", "wire.cut", "wire.finished", "wire.circuit")
	for n, l := range power.LimitsOf(m.Sheet, i) {
		mem, in := "", "  "
		if l.Standing == catalogue.Memory {
			mem = "~"
		}
		if l == c.Bound.V {
			in = "= "
		}
		p.Rows = append(p.Rows, desk.Row{Key: fmt.Sprint("limit ", n), Id: comp,
			Text:   fmt.Sprintf("%smay carry %s%s A  %s", in, unit.Fixed(l.Amps, 1), mem, l.Where),
			Detail: l.Where + ". Enter shows how it was made and what it assumes", Why: desk.FiguresAt(id, n, "wire.limit")})
	}
	if c.Finished > 0 {
		p.Lines = append(p.Lines, fmt.Sprintf("cut %s %s, finished %s with loops", m.Sys.AtLeast(c.Cut), m.Sys.Name(),
			m.Sys.Length(c.Finished)))
		if laid, flat, ok := lists.TakeUp(m.Sheet, i); ok {
			p.Lines = append(p.Lines, fmt.Sprintf("the twist adds %s %s; a flat 20 %% would add %s %s", m.Sys.Length(laid), m.Sys.Name(),
				m.Sys.Length(flat), m.Sys.Name()))
			p.Why = append(p.Why, desk.FiguresOf(id, "wire.takeup", "wire.flat")...)
		}
	}
	return p
}

// advice is the smallest size that does for a wire.
type advice struct {
	size  string
	ok    bool
	doubt string // why the size it has does not do
}

// advising is the advice that a sheet gives, by wire.
type advising struct{ desk.Kept[advice] }

// Advise asks for the size that does for the wire whose page is in front: it takes a
// build for each size it tries, which is more than a key may.
func Advise(m *desk.Model) (desk.Work, bool) {
	id := m.Subject()
	k, ok := m.Sheet.Index.Wire[id]
	if !ok || !wires.Carries(m.Sheet, k) {
		return desk.Work{}, false
	}
	if _, known := desk.State[advising](m).Find(m.Sheet, 0, id); known {
		return desk.Work{}, false
	}
	s := m.Sheet
	return desk.Work{Key: "advice\x00" + id, Do: func() func(m *desk.Model) {
		size, ok := offer.SmallestThatDoes(s, k)
		a := advice{size, ok, offer.Doubt(s, k, s.H.Wires[k].Size)}
		return func(m *desk.Model) { desk.State[advising](m).Put(s, 0, id, a) }
	}}, true
}

// adviceRow is the smallest size that does, and where that is another than the wire has
// what it costs or saves.
func adviceRow(m *desk.Model, i int, comp string) (desk.Row, bool) {
	w := m.H.Wires[i]
	if !wires.Carries(m.Sheet, i) || m.Sheet.Unrated || w.Safety.V {
		return desk.Row{}, false
	}
	a, known := desk.State[advising](m).Find(m.Sheet, 0, w.ID)
	if !known {
		return desk.Row{Key: "advice", Id: comp, Text: "advice       is being worked out",
			Detail: "the smallest size that satisfies heating, voltage drop, the fuse and both contacts"}, true
	}
	rows := m.Once("advice "+w.ID, func() []desk.Row {
		size := a.size
		switch {
		case a.ok && size == w.Size:
			return []desk.Row{{Key: "advice", Id: comp, Text: "advice       " + paper.Size(&w) + " is the smallest that works",
				Detail: "It satisfies heating, voltage drop, the fuse and both contacts"}}
		case !a.ok:
			return []desk.Row{{Key: "advice", Id: comp, Mark: "?", Text: "advice       no size works",
				Detail: w.Spec + " " + paper.Size(&w) + ": " + a.doubt,
				WhyOf:  func() []desk.Reason { return desk.LimitReasons(m.Sheet, w.ID) }}}
		}
		edit := func(m *desk.Model) *model.Harness {
			return m.H.EditWire(m.Sheet.Index.Wire[w.ID], func(w *model.Wire) { w.Size = size })
		}
		return []desk.Row{{Key: "advice", Id: comp, Text: "advice       " + paper.Size(&model.Wire{Size: size}) +
			" is the smallest that works",
			More: func() string {
				t := m.Try("advice "+w.ID+size, func() *model.Harness { return edit(m) })
				if _, b, _ := t.BranchHere(); b.Waiting || len(b.Layers) == 0 {
					return "Enter takes it. A new lay-up is worked out after that"
				}
				return "Enter takes it: " + t.Tally().Differs(m.Tally(), m.Sys)
			},
			Enter: func(m *desk.Model) { m.Change(edit(m), fmt.Sprintf("wire %s is now %s", w.ID, size)) }}}
	})
	if len(rows) == 0 {
		return desk.Row{}, false
	}
	return rows[0], true
}

// ofText is a wire's limit and temperature behind its current.
func ofText(m *desk.Model, id string, amps unit.Ampere, c *sheet.Wire) string {
	t := ""
	if w := unit.RoundHalfUp(float64(c.Heats), 0.01); c.Heats > 0 && w != unit.RoundHalfUp(float64(amps), 0.01) {
		t = ", RMS " + desk.CarriesText(m.Sheet, m.Sheet.Index.Wire[id])
	}
	if c.Bound.Set {
		t += fmt.Sprintf(" of %s A", desk.MostText(c))
	}
	if c.HottestC.Set {
		t += fmt.Sprintf(", %s C in %s", desk.HotText(c), c.HottestIn)
	}
	return t
}

func stepSpec(m *desk.Model, id string, by int) {
	i := m.Sheet.Index.Wire[id]
	size := m.H.Wires[i].Size
	var specs []string // only those that have the size
	for _, s := range m.Sheet.Cat.Specs() {
		if _, ok := m.Sheet.Cat.Wire(s, size); ok {
			specs = append(specs, s)
		}
	}
	spec, ok := words.Around(specs, m.H.Wires[i].Spec, by)
	if !ok {
		m.Refuse("no other specification has size " + size)
		return
	}
	m.Change(m.H.EditWire(i, func(w *model.Wire) { w.Spec = spec }), fmt.Sprintf("wire %s is now %s", id, spec))
}

// stepCurrent changes a current by + -.
func stepCurrent(m *desk.Model, id string, by int) {
	k := m.Sheet.Index.Wire[id]
	v := m.H.Wires[k].Amps.V
	by1 := stepAmps(v)
	if by < 0 && v > 0 {
		by1 = stepAmps(v - stepAmps(v)/1e6) // down from 1 goes by tenths
	}
	v = unit.Ampere(unit.RoundHalfUp(float64(v+unit.Ampere(by)*by1), 0.01))
	if v < 0 {
		m.Tell("0 A is the lowest")
		return
	}
	m.Change(m.H.EditWire(k, func(w *model.Wire) { w.Amps = model.Some(v) }), fmt.Sprintf("set to %s A", words.Trim(float64(v))))
}

// stepReel changes a measured diameter by a hundredth.
func stepReel(m *desk.Model, id string, by int) {
	k := m.Sheet.Index.Wire[id]
	w, d := &m.H.Wires[k], m.Sheet.Wires[k].Dia.Nominal
	if d <= 0 {
		m.Refuse("no diameter to start from: type what you measured")
		return
	}
	v := unit.Millimetre(unit.RoundHalfUp(float64(d)+0.01*float64(by), 0.01))
	if v < leastReel {
		m.Tell("that is the thinnest")
		return
	}
	m.Change(m.H.SetReel(w.Spec, w.Size, v), fmt.Sprintf("reel %s %s measures %s %s", w.Spec, w.Size, m.Sys.Fine(v), m.Sys.Name()))
}

// tenSide is how many wires are laid side by side to measure one.
const tenSide = 10

// leastReel and mostReel bound what a reel may measure.
const (
	leastReel unit.Millimetre = 0.2
	mostReel  unit.Millimetre = 30
)

func stepColour(m *desk.Model, id string, by int) {
	i := m.Sheet.Index.Wire[id]
	c, _ := words.Around(m.Sheet.Limits.ColourStock, m.H.Wires[i].Colour.V, by)
	m.Change(m.H.EditWire(i, func(w *model.Wire) { w.Colour = model.Some(c) }), "colour "+paper.Colour(c))
}

func stepRole(m *desk.Model, id string, by int) {
	i := m.Sheet.Index.Wire[id]
	r, _ := words.Around(model.Roles, m.H.Wires[i].Role.V, by)
	m.Change(m.H.EditWire(i, func(w *model.Wire) { w.Role = model.Some(r) }), fmt.Sprintf("wire %s is %s", id, r))
}

func endOf(m *desk.Model, id string, from bool) string {
	return endText(&m.H.Wires[m.Sheet.Index.Wire[id]], from)
}

// endText is one end of a wire in words: a cavity, a splice, or where it is capped.
func endText(w *model.Wire, from bool) string {
	text := w.To.V
	if from {
		text = w.From.V
	}
	if text == "" && wires.Capped(w) {
		return capAt + w.CappedAt.V
	}
	return text
}

// capAt stands before the place where a spare's end is capped.
const capAt = "cap at "

func stepEnd(m *desk.Model, id string, from bool, by int) {
	e, ok := m.Sheet.Index.End(endOf(m, id, from))
	t, known := m.Sheet.Index.Termination[e.Termination]
	if !ok || !known {
		m.Refuse("this end is in no connector. Enter lists other ends")
		return
	}
	all := m.Sheet.Terms[t].Cavities
	var open []string
	for _, c := range all {
		if c == e.Cavity || slices.Contains(m.Sheet.Terms[t].Free, c) {
			open = append(open, c)
		}
	}
	c, moved := words.Around(open, e.Cavity, by)
	if !moved {
		m.Refuse(e.Termination + " has no other free cavity")
		return
	}
	putEnd(m, id, from, e.Termination+":"+c)
}

func setEnd(m *desk.Model, id string, from bool, text string) error {
	if at, is := strings.CutPrefix(text, capAt); is {
		return capEnd(m, id, from, at)
	}
	e, ok := m.Sheet.Index.End(text)
	if !ok {
		return fmt.Errorf("type an end: TERMINATION:CAVITY, or a splice")
	}
	if e.Splice != "" {
		if _, known := m.Sheet.Index.Splice[e.Splice]; !known {
			return fmt.Errorf("there is no splice %q. Write the end in a connector as TERMINATION:CAVITY", e.Splice)
		}
	} else if _, known := m.Sheet.Index.Termination[e.Termination]; !known || e.Cavity == "" {
		return fmt.Errorf("there is no termination %q with a cavity %q", e.Termination, e.Cavity)
	}
	putEnd(m, id, from, text)
	return nil
}

// capEnd caps one end of a wire at a place, where its other end stands in a cavity.
func capEnd(m *desk.Model, id string, from bool, at string) error {
	_, breakout := m.Sheet.Index.Breakout[at]
	if _, termination := m.Sheet.Index.Termination[at]; !breakout && !termination {
		return fmt.Errorf("there is no breakout or termination %q to cap it at", at)
	}
	if other := endOf(m, id, !from); other == "" || strings.HasPrefix(other, capAt) {
		return fmt.Errorf("wire %s can be capped at one end only: put its other end in a cavity", id)
	}
	putEnd(m, id, from, capAt+at)
	return nil
}

func putEnd(m *desk.Model, id string, from bool, text string) {
	m.Change(m.H.EditWire(m.Sheet.Index.Wire[id], func(w *model.Wire) {
		end := &w.To
		if from {
			end = &w.From
		}
		if at, is := strings.CutPrefix(text, capAt); is {
			*end, w.CappedAt = model.Opt[string]{}, model.Some(at)
			return
		}
		if *end = model.Some(text); w.From.V != "" && w.To.V != "" {
			w.CappedAt, w.FoldMM = model.Opt[string]{}, model.Opt[unit.Millimetre]{}
		}
	}), fmt.Sprintf("wire %s now ends in %s", id, text))
}

func reelText(m *desk.Model, spec, size string, d unit.Millimetre) string {
	for _, r := range m.H.Reels {
		if r.Spec == spec && r.Size == size {
			return m.Sys.Fine(r.OverMM) + " " + m.Sys.Name() + "  measured"
		}
	}
	if d <= 0 {
		return "not known: measure it"
	}
	return m.Sys.Fine(d) + " " + m.Sys.Name() + "  not measured yet"
}

// reelField takes the diameter of a reel measured on this job.
func reelField(m *desk.Model, spec, size string) *desk.Field {
	value := ""
	for _, r := range m.H.Reels {
		if r.Spec == spec && r.Size == size {
			value = m.Sys.Fine(r.OverMM)
		}
	}
	return &desk.Field{Label: fmt.Sprintf("measured OD of %s %s", spec, size), Unit: m.Sys.Name(), Value: value, Number: true,
		Set: func(m *desk.Model, text string) error {
			if text == "" {
				m.Change(m.H.SetReel(spec, size, 0), "the catalogue's diameter again")
				return nil
			}
			v, err := m.Sys.Parse(text)
			if err != nil {
				return err
			}
			says := ""
			if e, ok := m.Sheet.Cat.Wire(spec, size); ok && e.OverMM > 0 {
				switch r := v / e.OverMM; {
				case r > 7 && r < 13: // nobody has a wire ten times as thick: these are the ten
					v = unit.Millimetre(math.Round(float64(v)/tenSide*1e4) / 1e4)
					says = fmt.Sprintf(", from %s for ten side by side", text)
				case r < 0.6 || r > 1.6:
					defer func() { m.Trouble = true }()
					says = fmt.Sprintf(": the catalogue has %s; is that the right reel?", m.Sys.Fine(e.OverMM))
				}
			}
			if v < leastReel || v > mostReel {
				return fmt.Errorf("%s %s is out of range: %s to %s %s", text, m.Sys.Name(), m.Sys.Fine(leastReel), m.Sys.Fine(mostReel),
					m.Sys.Name())
			}
			m.Change(m.H.SetReel(spec, size, v), fmt.Sprintf("reel %s %s measures %s %s%s", spec, size, m.Sys.Fine(v), m.Sys.Name(), says))
			return nil
		}}
}
