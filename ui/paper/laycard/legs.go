package laycard

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
)

// LegTable is every branch of one layer and five pieces at most, a row each, as a list.
func LegTable(m list.Maker, legs []*Card) list.Table {
	kind := commonKind(legs)
	note := "The wires stand in their order, clockwise seen from where the leg begins. The lay is set to 5 mm. Bend is the least " +
		"radius inside."
	if kind != "" {
		note += " A sheath is " + kind + " where the row names no other."
	}
	columns := []list.Column[*Card]{
		list.Text("leg", func(c *Card) string { return c.ID }),
		list.Text("from", func(c *Card) string { return c.From }),
		list.Text("wires in their order", legWires),
		list.Text("to", legEnds),
		list.Text(m.In("lay"), func(c *Card) string { return legLay(m, &c.Layers[0]) }),
		list.Figure(m.In("length"), func(c *Card) string { return legLength(m, c) }),
		list.Text("sheath, "+m.In("cut"), func(c *Card) string { return coversIn(c, func(x Cover) string { return legCover(x, kind) }) }),
	}
	if slices.ContainsFunc(legs, func(c *Card) bool { return legAt(m, c) != "-" }) {
		columns = append(columns, list.Text("boot", func(c *Card) string { return legAt(m, c) }))
	}
	return list.Of(list.Table{File: "legs", Title: "Legs", Note: m.Sys.Says(note)}, append(columns,
		list.Figure(m.In("OD"), func(c *Card) string { return c.Layers[0].OD }),
		list.Figure(m.In("bend"), func(c *Card) string { return m.Sys.AtLeast(m.S.Branches[c.Branch].Bend.MinMM) }),
		list.Blank[*Card]("laid")), legs)
}

// legLay is hand and lay of a leg: "LH 25", or "straight".
func legLay(m list.Maker, l *Layer) string {
	if l.LayMM <= 0 {
		return "straight"
	}
	return string(l.Hand) + " " + m.Sys.Length(l.LayMM)
}

// legWires is the pieces of a leg in their order, each with its colour.
func legWires(c *Card) string {
	var out []string
	for _, r := range c.Layers[0].Rows {
		says := r.ID + " " + r.Colour
		if r.Kind == sheet.OfUnit {
			says = fmt.Sprintf("%s (%s)", r.ID, r.Colour)
		}
		if r.Kind == sheet.OfFiller {
			says = r.ID + " " + r.Size
		}
		out = append(out, strings.TrimSpace(says))
	}
	return strings.Join(out, ", ")
}

// legEnds is where the pieces of a leg end, in the same order; the termination once.
func legEnds(c *Card) string {
	var out []string
	for _, r := range c.Layers[0].Rows {
		if r.Kind != sheet.OfFiller {
			out = append(out, r.To)
		}
	}
	if all := slices.Compact(slices.Clone(out)); len(all) == 1 {
		return all[0]
	}
	last, says := "", ""
	for k, end := range out {
		term, cavity, is := strings.Cut(end, ":")
		switch {
		case k == 0:
			says = end
		case is && term == last:
			says += ", " + cavity
		default:
			says += ", " + end
		}
		last = term
	}
	return says
}

// legLength is the length of a leg with its tolerance, where it has one of its own.
func legLength(m list.Maker, c *Card) string {
	mb := &m.H.Branches[c.Branch]
	says := list.Long(m.Sys, mb)
	if len(mb.ToleranceMM) == 2 {
		says += " " + m.Tolerance(mb)
	}
	return says
}

// legCover is a cover with its cut length; a sheath of the common kind by its size alone.
func legCover(x Cover, kind string) string {
	name := x.name()
	if x.What == string(model.CoverSheath) && kind != "" {
		name = strings.TrimPrefix(name, kind+" ")
	}
	if x.Cut == "-" {
		return name
	}
	return name + ", " + x.Cut
}

// commonKind is the kind of tube that most legs have as their sheath, where at least two have it: its
// name without the size.
func commonKind(legs []*Card) string {
	count := map[string]int{}
	best := ""
	for _, c := range legs {
		for _, x := range c.Covers {
			if at := strings.LastIndex(x.Part, " "); at > 0 && x.What == string(model.CoverSheath) {
				kind := x.Part[:at]
				if count[kind]++; count[kind] > max(count[best], 1) {
					best = kind
				}
			}
		}
	}
	return best
}

// name is a cover, short: a sheath by its part alone.
func (x Cover) name() string {
	if x.What == string(model.CoverSheath) {
		return x.Part
	}
	return x.What + " " + x.Part
}

func coversIn(c *Card, of func(x Cover) string) string {
	var out []string
	for _, x := range c.Covers {
		out = append(out, of(x))
	}
	return list.Dash(strings.Join(out, ", "))
}

// legAt is the boot at the terminations of a leg, and the clock; the label stands with what is threaded on.
func legAt(m list.Maker, c *Card) string {
	var out []string
	for _, end := range []string{c.From, c.To} {
		if t, is := m.S.Index.Termination[end]; is {
			e := &m.H.Terminations[t]
			out = append(out, strings.Join(list.NonEmpty(e.Boot.V, m.Clock(e)), ", "))
		}
	}
	return list.Dash(strings.Join(list.NonEmpty(out...), "; "))
}

// legsOf is the table of legs as blocks.
func legsOf(m list.Maker, legs []*Card) []page.Block {
	t := LegTable(m, legs)
	out := page.List(t)
	if len(out) == 0 {
		return nil
	}
	g := page.TableOf(t)
	for k := range g.Cols {
		switch l := page.Small; t.Head[k] {
		case "leg", "from":
			w := page.Strong.Wide(t.Head[k])
			for _, row := range t.Rows {
				if t.Head[k] == "leg" {
					l = page.Strong
				}
				w = max(w, l.Wide(row[k]))
			}
			g.Cols[k].Wide = w + cellPad
		case "laid":
			g.Cols[k].Wide = tickWide
		}
		g.Cols[k].Bold = t.Head[k] == "leg"
	}
	out[len(out)-1] = g.Block()
	return out
}
