package cards

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/phase/built"
	"contralay/calc/phase/wires"
	"contralay/calc/query/run"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/bench/board/runs/card"
	"contralay/ui/bench/board/runs/say"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
	"contralay/ui/paper"
)

// The cards of what is gone through piece by piece: one wire to cut, one to lay, one to pin.

// Hand is what is in hand in a run.
type Hand struct {
	*desk.Model
	Begun     *sheet.Sheet                              // the sheet by the figures that the serial was begun with
	Build     *model.Build                              // what is built, as far as it is
	Serials   []string                                  // that are cut together; one alone is named in the head
	Pieces    []run.Piece                               // of the step; none of one that is one act
	Explained func(s run.RunStep) (run.Explained, bool) // what the readings of its layer come to
}

// Of is the card of piece k of a step.
func Of(m Hand, s run.RunStep, k int) card.Card {
	var p run.Piece
	is := k < len(m.Pieces)
	if is {
		p = m.Pieces[k]
	}
	switch {
	case is && s.Kind == run.CutStep:
		return cutCard(m, s, p, k)
	case is && s.Kind == run.LayStep:
		return layCard(m, s, p, k)
	case is && p.Check.Kind != run.NoCheck:
		return testCard(m, s, p, k)
	case s.Kind == run.LotStep:
		return lotCard(m, s)
	case is && s.Kind == run.PinStep:
		return pinCard(m, s, p, k)
	case s.Kind == run.LayStep:
		return laidCard(m, s)
	}
	return actCard(m, s)
}

// marksOf are the pieces of a step on its bar; tracer is the one that lies first, "" for none.
func marksOf(m Hand, s run.RunStep, at int, tracer string) []card.Mark {
	b := m.Build
	var out []card.Mark
	if len(m.Pieces) < 2 {
		return nil // no way to lose
	}
	for k, p := range m.Pieces {
		out = append(out, card.Mark{Done: s.Has(b, p), Hand: k == at, Tracer: p.ID != "" && p.ID == tracer})
	}
	return out
}

// coloured is a wire with its colour in words.
func coloured(w *model.Wire) string {
	return strings.TrimSpace(w.ID + " " + model.ColourWords(w.Colour.V))
}

// neighbours are the pieces before and after piece k.
func neighbours(m Hand, s run.RunStep, k int) string {
	all := m.Pieces
	name := func(p run.Piece) string {
		text := p.ID
		if i, is := m.Sheet.Index.Wire[p.ID]; is {
			text = coloured(&m.H.Wires[i])
		}
		if p.Cavity != "" {
			text = strings.TrimSpace(p.Cavity + " " + text)
		}
		return text
	}
	var out []string
	if k > 0 {
		out = append(out, "before: "+name(all[k-1]))
	}
	if k+1 < len(all) {
		out = append(out, "after: "+name(all[k+1]))
	}
	return strings.Join(out, "   ")
}

// flag is the text of one of the flags of a wire: its number and where that end goes.
func flag(m Hand, w *model.Wire, from bool) string {
	end := w.To.V
	if from {
		end = w.From.V
	}
	return strings.TrimSpace(w.ID + " " + endSays(m, w, end))
}

// endSays is an end of a wire in words: a cavity as it is written, a splice, where it is capped.
func endSays(m Hand, w *model.Wire, end string) string {
	switch _, splice := m.Sheet.Index.Splice[end]; {
	case splice:
		return "splice " + end
	case end == "" && wires.Capped(w):
		return "capped at " + w.CappedAt.V
	case end == "":
		return "open"
	}
	return end
}

// cutCard is one wire to cut, and what is written on its flags.
func cutCard(m Hand, s run.RunStep, p run.Piece, k int) card.Card {
	w := &m.H.Wires[m.Sheet.Index.Wire[p.ID]]
	n := len(s.Cut.Wires)
	long := m.Sys.AtLeast(s.Cut.CutMM) + " " + m.Sys.Name()
	times := ""
	if len(m.Serials) > 1 {
		times = fmt.Sprint(len(m.Serials), " x ")
	}
	c := card.Card{Title: fmt.Sprintf("cut %s%s to %s, %d of %d", times, w.ID, long, k+1, n), Number: w.ID, Colour: w.Colour.V,
		Second: long,
		Lines: []string{
			"off the spool " + strings.Join(nonEmpty(w.Spec, paper.Size(w), model.ColourWords(w.Colour.V)), ", "),
			"flag 1: " + flag(m, w, true) + "   flag 2: " + flag(m, w, false)},
		Bar:   marksOf(m, s, k, ""),
		Low:   []string{"cut " + times + long, paper.Size(w) + fmt.Sprintf("  %d of %d", k+1, n)},
		Under: flag(m, w, true) + " | " + flag(m, w, false)}
	switch len(m.Serials) {
	case 0:
	case 1:
		c.Lines = append([]string{"1 piece, for serial " + m.Serials[0] + " alone"}, c.Lines...)
		c.Under = "for serial " + m.Serials[0] + " alone. " + c.Under
	default:
		c.Lines = append([]string{fmt.Sprintf("%d pieces: one each for serials %s", len(m.Serials), words.List(m.Serials))}, c.Lines...)
		c.Under = "serials " + words.List(m.Serials) + ". " + c.Under
	}
	if says := w.Signal.V; says != "" {
		c.More = append(c.More, says)
	}
	return c
}

func nonEmpty(all ...string) []string {
	return slices.DeleteFunc(all, func(s string) bool { return s == "" })
}

// layCard is one piece of a layer to lay, or one of a branch to put in.
func layCard(m Hand, s run.RunStep, p run.Piece, k int) card.Card {
	i := m.Sheet.Index.Branch[s.Of]
	l := &m.Sheet.Branches[i].Layers[s.Layer]
	n := len(l.Members)
	c := card.Card{Title: fmt.Sprintf("%s, %s: put on %s, %d of %d", say.Layer(s), layWords(m, l), p.ID, k+1, n), Number: p.ID,
		Lines: nonEmpty(goesSays(m, i, p), neighbours(m, s, k)),
		Bar:   marksOf(m, s, k, tracerOf(s, l)),
		Low:   []string{fmt.Sprintf("%d of %d  %s", k+1, n, say.Layer(s)), layWords(m, l)},
		Under: between(m, k, tracerOf(s, l) == p.ID && p.ID != "") + ", " + goesSays(m, i, p)}
	if w, is := m.Sheet.Index.Wire[p.ID]; is {
		c.Colour = m.H.Wires[w].Colour.V
	}
	start := "seen from " + m.H.Branches[i].From + ", clockwise"
	switch tracer := tracerOf(s, l); {
	case tracer == p.ID && tracer != "":
		c.Lines[0] = "the tracer: start with it at the key; " + c.Lines[0]
	case tracer != "":
		start += "; the tracer is " + tracer
	}
	if e, ok := m.Explained(s); ok {
		c.More = append(c.More, say.Reading(m.Model, e)...)
	}
	over, _ := run.SheetOver(m.Begun, m.Build, s)
	c.More = append(c.More, fmt.Sprintf("%s. OD %s %s when it is laid", start, m.Sys.Diameter(over), m.Sys.Name()))
	return c
}

// between is where piece k lies among the others, for the one line that a low screen has.
func between(m Hand, k int, tracer bool) string {
	out := ""
	switch {
	case tracer:
		out = "tracer: start at the key"
	case k == 0:
		out = "first"
	default:
		out = m.Pieces[k-1].ID + " <"
	}
	switch {
	case k+1 == len(m.Pieces):
		return out + words.Either(k == 0, "", " last")
	case k == 0:
		return out + ", then " + m.Pieces[k+1].ID
	}
	return out + " > " + m.Pieces[k+1].ID
}

// tracerOf is the wire that lies first in a layer round a centre; "" where there is none.
func tracerOf(s run.RunStep, l *sheet.Layer) string {
	if s.Layer == 0 || len(l.Members) == 0 || l.Members[0].ID != l.Tracer {
		return ""
	}
	return l.Tracer
}

// layWords is which way a layer is laid, and how long a turn is.
func layWords(m Hand, l *sheet.Layer) string {
	if l.LayMM <= 0 {
		return "straight"
	}
	return fmt.Sprintf("%s, lay %s %s", l.Hand, m.Sys.Length(paper.Turn(l.LayMM)), m.Sys.Name())
}

// goesSays is where a piece of branch i goes beyond it, and what it is.
func goesSays(m Hand, i int, p run.Piece) string {
	k, wire := m.Sheet.Index.Wire[p.ID]
	u, unit := m.Sheet.Index.Unit[p.ID]
	name := ""
	switch {
	case unit:
		name = "unit " + strings.TrimSpace(p.ID+" "+m.H.Units[u].Name.V)
		if len(m.H.Units[u].Wires) > 0 {
			k, wire = m.Sheet.Index.Wire[m.H.Units[u].Wires[0]]
		}
	case !wire:
		return "filler: it only keeps the layer round"
	case m.H.Wires[k].Role.V == model.RoleSpare:
		name = "spare"
	}
	if wire {
		w := &m.H.Wires[k]
		to, _ := run.Away(m.Sheet, i, k)
		return strings.Join(nonEmpty(name, "goes to "+endSays(m, w, to)), ", ")
	}
	return name
}

// laidCard is a layer that is all on: it is measured.
func laidCard(m Hand, s run.RunStep) card.Card {
	i := m.Sheet.Index.Branch[s.Of]
	mb, b := &m.H.Branches[i], &m.Sheet.Branches[i]
	l := &b.Layers[s.Layer]
	over, _ := run.SheetOver(m.Begun, m.Build, s)
	n := len(l.Members)
	od := "OD " + m.Sys.Diameter(over)
	c := card.Card{Title: fmt.Sprintf("%s, %s: all %d are on. Measure it", say.Layer(s), layWords(m, l), n), Number: od,
		Bar: marksOf(m, s, -1, tracerOf(s, l)),
		Low: []string{say.Layer(s), fmt.Sprintf("all %d on", n)}, Under: "measure it, " + m.Sys.Name()}
	e, read := m.Explained(s)
	if read {
		c.Lines = append(c.Lines, say.Reading(m.Model, e)...)
		c.Under = c.Lines[0]
	} else {
		c.Lines = append(c.Lines, fmt.Sprintf("The sheet has %s %s over the high spots", m.Sys.Diameter(over), m.Sys.Name()))
	}
	switch bind := b.As[s.Layer].BindMM.V; {
	case s.Bare:
		c.Lines = append(c.Lines, "The next step builds it up with tape")
	case bind > 0:
		c.Lines = append(c.Lines, fmt.Sprintf("Bind it: the binder adds %s", m.Sys.Fine(bind)))
	}
	if l.LayMM > 0 {
		c.More = append(c.More, fmt.Sprintf("%s turns in this branch, begun at %s", unit.Fixed(l.Turns, 1), mb.From))
	}
	for k, made := range built.MadeWhen(m.Sheet) {
		if made.Branch == i && made.Layer == s.Layer && made.Inside {
			c.More = append(c.More, "In this layer lies "+paper.Becomes(m.Sheet, m.Sys, k))
		}
	}
	c.Lines = append(c.Lines, Order(m.Model, s))
	return c
}

// Order is the pieces of a layer as they lie; "" where the sheet has the layer no more.
func Order(m *desk.Model, s run.RunStep) string {
	l, ok := LayerAt(m, s)
	if !ok {
		return ""
	}
	var ids []string
	for k, p := range l.Members {
		id := p.ID
		if k == 0 && tracerOf(s, l) != "" {
			id = "*" + id
		}
		ids = append(ids, id)
	}
	return "Clockwise from " + m.H.Branches[m.Sheet.Index.Branch[s.Of]].From + ": " + strings.Join(ids, " ")
}

// pinCard is one cavity: the wire that goes in, and how its contact is crimped.
func pinCard(m Hand, s run.RunStep, p run.Piece, k int) card.Card {
	n := len(m.Pieces)
	t := m.Sheet.Index.Termination[s.Of]
	c := card.Card{Title: fmt.Sprintf("%s cavity %s, %d of %d, seen from the wire side", s.Of, p.Cavity, k+1, n), Number: p.ID,
		Bar: marksOf(m, s, k, ""), Low: []string{fmt.Sprintf("%s cavity %s", s.Of, p.Cavity), fmt.Sprintf("%d of %d", k+1, n)}}
	switch {
	case p.ID == "":
		c.Number = "plug"
		c.Lines = []string{"No wire: a contact and a plug into cavity " + p.Cavity}
		if m.H.Terminations[t].Firewall.V {
			c.Lines[0] = "No wire: a contact on a stub of wire, sealed, into cavity " + p.Cavity
		}
	case len(p.Wires) == 0:
		c.Lines = []string{"The drain of " + p.Drain + " into cavity " + p.Cavity}
	default:
		w := &m.H.Wires[m.Sheet.Index.Wire[p.ID]]
		c.Colour = w.Colour.V
		c.Lines = []string{coloured(w) + " into cavity " + p.Cavity}
		if others := slices.DeleteFunc(slices.Clone(p.Wires), func(id string) bool { return id == p.ID }); len(others) > 0 {
			c.Lines[0] += ", in one contact with " + strings.Join(others, ", ")
		}
	}
	if says := say.Crimp(m.Model, t, p.Cavity); says != "" {
		c.Lines = append(c.Lines, says)
	}
	c.Under = c.Lines[len(c.Lines)-1]
	if text := neighbours(m, s, k); text != "" {
		c.Lines = append(c.Lines, text)
	}
	return c
}
