package paper

import (
	"cmp"
	"fmt"
	"html/template"
	"slices"
	"strings"

	overphase "contralay/calc/phase/over"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/cross"
	"contralay/ui/draw"
	"contralay/ui/paper/list"
)

// The lay card: how one branch is laid, from the paper alone.

// card is one branch as it is printed.
type card struct {
	ID, Name, Title string
	Length          string
	Seen            string
	Section         template.HTML
	Layers          []cardLayer
	Over            string
	Proposed        bool
	Big             bool // it takes a page of its own
	Covers          list.Table
	Ends            []string
	Splices         []string
	Says            []string
}

// cardLayer is one layer of it.
type cardLayer struct {
	Name    string
	Hand    model.Hand
	Arrow   template.HTML
	Turn    string
	Turns   string
	Count   int
	Over    string
	Binder  string
	Fillers string
	Spares  string
	First   string // the splices that are made before it
	Members []cardMember
}

type cardMember struct {
	N                             int
	ID, What, Size, Colour, Leads string
	Tracer                        bool
}

// arrow is how the wires of a layer run over the top of the bundle, which goes away from
// whoever looks: to the left LH, to the right RH.
func arrow(hand model.Hand) template.HTML {
	x := map[model.Hand]string{model.HandLeft: "15 14 5 2", model.HandRight: "5 14 15 2"}[hand]
	head := map[model.Hand]string{model.HandLeft: "M5 2l5 .6M5 2l-.3 5", model.HandRight: "M15 2l-5 .6M15 2l.3 5"}[hand]
	if x == "" {
		x, head = "10 14 10 2", "M10 2l-2.5 3.5M10 2l2.5 3.5"
	}
	p := strings.Fields(x)
	// #nosec: constants alone
	return template.HTML(fmt.Sprintf(`<svg class="arrow" width="11mm" height="9mm" viewBox="0 0 20 16">`+
		`<path d="M3 0V16M17 0V16" stroke="#000" stroke-width=".8"/>`+
		`<path d="M%s %sL%s %s%s" fill="none" stroke="#000" stroke-width="1.8" stroke-linecap="round"/></svg>`, p[0], p[1], p[2], p[3],
		head))
}

// section is a branch as it is drawn: every component where it lies.
func (m maker) section(i int) draw.Section {
	s := cross.Of(m.S, i)
	s.Seen = "seen from " + m.H.Branches[i].From
	return s
}

// Widths of a section on paper, mm: thicker bundles are drawn larger.
const (
	sectionLeast, sectionMost = 26.0, 118.0
	sectionPer                = 9.0 // mm of paper for a mm of bundle
)

// bigCard is how many components make a card that begins a page.
const bigCard = 7

func (m maker) card(i int) card {
	mb, b := &m.H.Branches[i], &m.S.Branches[i]
	c := card{ID: mb.ID, Name: mb.Name.V, Title: strings.TrimSpace(mb.ID + "  " + mb.Name.V), Proposed: b.Proposed,
		Length: fmt.Sprintf("%s from %s to %s", list.LongIn(m.Sys, mb), m.Datum(mb.From), m.Datum(mb.To)),
		Seen:   mb.From}
	if len(mb.ToleranceMM) == 2 {
		c.Length += ", " + m.Tolerance(mb)
	}
	if b.OverMM <= 0 {
		c.Says = append(c.Says, "nothing runs here")
		return c
	}
	wide := min(max(float64(b.OverMM)*sectionPer, sectionLeast), sectionMost)
	c.Big = len(b.Components) >= bigCard
	c.Section = template.HTML(draw.SVG(m.section(i), wide)) // #nosec: SVG escapes what it writes
	c.Over = m.Band(b)
	for k := range b.Layers {
		c.Layers = append(c.Layers, m.cardLayer(i, k))
	}
	if len(b.Layers) == 1 && len(b.Layers[0].Members) < 5 {
		c.Says = append(c.Says, fmt.Sprintf("Start at %s; numbered clockwise, seen from there.", mb.From))
	} else {
		c.Says = append(c.Says,
			fmt.Sprintf("Start each layer at %s. Position 1 is the tracer (two rings); count on clockwise, seen from %s.", mb.From,
				mb.From))
	}
	if stop := mb.LengthMM - b.LaidMM; b.LaidMM > 0 && stop > 1 {
		c.Says = append(c.Says, fmt.Sprintf("Lay stops, and wires run straight and sorted, over the zone of a breakout and one diameter "+
			"before it: %s of %s %s are laid.", m.Sys.Length(b.LaidMM), m.Sys.Length(mb.LengthMM), m.Sys.Name()))
	}
	if b.Bend.MinMM > 0 {
		c.Says = append(c.Says, fmt.Sprintf("Bend it no tighter than %s %s inside (%s).", m.Sys.AtLeast(b.Bend.MinMM), m.Sys.Name(),
			b.Bend.Rule))
	}
	c.Covers = m.covers(i)
	for _, end := range []string{mb.From, mb.To} {
		if t, ok := m.S.Index.Termination[end]; ok {
			e := &m.H.Terminations[t]
			l := overphase.LoopRoomOf(m.S, t)
			c.Ends = append(c.Ends, strings.Join(list.NonEmpty(end, list.Word("boot ", e.Boot.V), m.Clock(e),
				fmt.Sprintf("loop %s %s, good for %d", m.Sys.Length(l.LoopMM), m.Sys.Name(), l.Again)), ", "))
		} else if j, ok := m.S.Index.Breakout[end]; ok {
			br := &m.H.Breakouts[j]
			outlet := ""
			if o, ok := overphase.OutletAt(m.S, i, end); ok {
				outlet = fmt.Sprintf("outlet %s / %s", m.Sys.Diameter(o.ExpandedMM), m.Sys.Diameter(o.RecoveredMM))
			}
			c.Ends = append(c.Ends, strings.Join(list.NonEmpty(end, br.Name.V, list.Word("transition ", br.Transition.V), outlet,
				string(br.Build.V), fmt.Sprintf("zone %s %s", m.Sys.Length(br.ZoneMM.Or(m.S.Limits.ZoneMM)), m.Sys.Name())), ", "))
		}
	}
	c.Splices = joints(m, i)
	return c
}

func (m maker) cardLayer(i, k int) cardLayer {
	mb, b := &m.H.Branches[i], &m.S.Branches[i]
	l := &b.Layers[k]
	out := cardLayer{Name: list.Capital(model.LayerName(k)), Hand: l.Hand, Arrow: arrow(l.Hand), Turn: "straight", Turns: "-",
		Count: len(l.Members), Over: m.Sys.Diameter(l.OverMM), Binder: "-", Fillers: "-", Spares: "-", First: jointsBefore(m, i, k)}
	if l.LayMM > 0 {
		out.Turn = m.Sys.Length(list.Turn(l.LayMM))
		out.Turns = unit.Fixed(l.Turns, 1)
	}
	if built := l.BuiltUp(m.Sys); built != "" {
		out.Binder = built
	} else if k < len(b.As) && b.As[k].BindMM.V > 0 {
		out.Binder = "adds " + m.Sys.Fine(b.As[k].BindMM.V)
	}
	if l.Fillers > 0 {
		out.Fillers = fmt.Sprintf("%d of %s, stop where the lay stops", l.Fillers, m.Sys.Fine(l.FillerMM))
	}
	if l.Spares > 0 {
		var ids []string
		for _, c := range l.Members {
			if c.Kind == sheet.OfSpare {
				ids = append(ids, c.ID)
			}
		}
		out.Spares = strings.Join(ids, " ")
	}
	for n, c := range l.Members {
		p := cardMember{N: n + 1, ID: c.ID, Tracer: c.ID == l.Tracer && k > 0}
		switch u, is := m.S.Index.Unit[c.ID]; {
		case c.Kind == sheet.OfFiller:
			p.ID, p.What, p.Size = "filler", "", m.Sys.Fine(c.D)+" "+m.Sys.Name()
		case is:
			p.What, p.Size = cmp.Or(m.H.Units[u].Name.V, string(m.H.Units[u].Build.V)), m.Sys.Diameter(c.D)+" "+m.Sys.Name()
			p.Leads = m.leads(i, m.H.Units[u].Wires[:min(1, len(m.H.Units[u].Wires))], mb.From)
		default:
			w := m.Wire(c.ID)
			p.What, p.Size, p.Colour = w.Signal.V, list.Size(w), list.Colour(w.Colour.V)
			p.Leads = m.leads(i, []string{c.ID}, mb.From)
		}
		out.Members = append(out.Members, p)
	}
	return out
}

// leads is where a wire goes beyond the far end of a branch.
func (m maker) leads(i int, ids []string, from string) string {
	var out []string
	for _, id := range ids {
		k, ok := m.S.Index.Wire[id]
		if !ok {
			continue
		}
		w := &m.H.Wires[k]
		path := m.S.Wires[k].Path
		at := slices.Index(path, i)
		if at < 0 {
			continue
		}
		// Seen from its from end the branch runs the wire's way, or against it.
		forward := at+1 < len(path) && slices.Contains(m.S.Index.Meeting(m.H.Branches[i].To), path[at+1]) || at > 0 &&
			slices.Contains(m.S.Index.Meeting(from), path[at-1])
		if len(path) == 1 {
			a, _, _ := m.S.Index.Places(w)
			forward = a == from
		}
		out = append(out, m.End(w, !forward))
	}
	return strings.Join(out, ", ")
}
