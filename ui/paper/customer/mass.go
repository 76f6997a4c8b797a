package customer

import (
	"slices"
	"strings"

	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
)

// massRow is what a branch weighs, in g. A part of it that is not known is unset; one that it does not
// have is 0.
type massRow struct {
	branch, from, to       string
	long, tolerance        string
	bundle, sheath, covers model.Opt[unit.Gram]
	lacks                  []string // what is not known of it
}

// known is the sum of what is known.
func (r massRow) known() unit.Gram { return r.bundle.V + r.sheath.V + r.covers.V }

// massRows are the branches, in file order.
func (c Set) massRows() []massRow {
	var out []massRow
	for i := range c.S.Branches {
		b := &c.S.Branches[i]
		of := &c.H.Branches[i]
		r := massRow{branch: of.ID, from: of.From, to: of.To, long: list.Long(c.Sys, of), tolerance: c.Tolerance(of),
			bundle: b.Gram, sheath: model.Some[unit.Gram](0), covers: model.Some[unit.Gram](0)}
		if !b.Gram.Set {
			r.lacks = append(r.lacks, "the bundle of "+r.branch)
		}
		if b.Sheath.Part != "" {
			r.sheath = model.Opt[unit.Gram]{Set: b.Sheath.Gram > 0, V: b.Sheath.Gram}
			if !r.sheath.Set {
				r.lacks = append(r.lacks, "the sheath of "+r.branch)
			}
		}
		for _, x := range b.Covers {
			if r.covers.V += x.Gram; x.Gram <= 0 {
				r.covers.Set = false
				r.lacks = append(r.lacks, string(x.What)+" on "+r.branch)
			}
		}
		out = append(out, r)
	}
	return out
}

// gram is a mass to 0.1 g; "not known" where it is not, a dash where there is nothing to weigh.
func gram(v model.Opt[unit.Gram]) string {
	switch {
	case !v.Set:
		return "not known"
	case v.V == 0:
		return "-"
	}
	return unit.Fixed(v.V, 1)
}

// masses is the mass by branch as a table.
func (c Set) masses() list.Table {
	return list.Of(list.Table{File: "mass", Title: MassName}, []list.Column[massRow]{
		list.Text("branch", func(r massRow) string { return r.branch }),
		list.Text("from", func(r massRow) string { return r.from }),
		list.Text("to", func(r massRow) string { return r.to }),
		list.Figure(c.In("length"), func(r massRow) string { return r.long }),
		list.Text(c.In("tolerance"), func(r massRow) string { return r.tolerance }),
		list.Figure("bundle, g", func(r massRow) string { return gram(r.bundle) }),
		list.Figure("sheath, g", func(r massRow) string { return gram(r.sheath) }),
		list.Figure("other covers, g", func(r massRow) string { return gram(r.covers) }),
		list.Figure("sum, g", func(r massRow) string {
			if len(r.lacks) > 0 {
				return "not known"
			}
			return unit.Fixed(r.known(), 1)
		}),
	}, c.massRows())
}

// weights is the sentences about the total, what it lacks, and the scale.
func (c Set) weights() string {
	total, lacks := unit.Gram(0), []string(nil)
	for _, r := range c.massRows() {
		total += r.known()
		lacks = append(lacks, r.lacks...)
	}
	in := "Lengths in " + c.Sys.Name() + ", mass in g. "
	says := in + "With its covers it comes to " + unit.Fixed(total, 1) + " g by the sheet."
	if len(lacks) > 0 {
		says = in + "What is known of it comes to " + unit.Fixed(total, 1) + " g by the sheet. Not known: " +
			strings.Join(lacks, ", ") + "."
	}
	says += " Connectors, contacts, boots, labels and adhesive are not in that."
	switch {
	case c.Record == nil:
	case c.Record.MassG.Set:
		says = "On the scale: " + unit.Fixed(c.Record.MassG.V, 1) + " g, finished. " + says
	default:
		says = "It was not weighed. " + says
	}
	return says
}

// mass is the mass by branch as blocks.
func (c Set) mass() []page.Block {
	t := c.masses()
	if len(t.Rows) == 0 {
		return nil
	}
	g := page.TableOf(t)
	for k, head := range []string{"branch", "from", "to", "long", "tol", "bundle", "sheath", "other", "sum"} {
		g.Cols[k].Head = head
	}
	if !slices.ContainsFunc(c.massRows(), func(r massRow) bool { return !r.covers.Set || r.covers.V > 0 }) {
		g = without(g, 7) // no branch has one
	}
	g.Plain, g.Columns = true, side(g)
	return []page.Block{kept(page.SubHeading(MassName)), kept(page.Text(c.weights(), page.Small)), g.Block()}
}

// without is a grid without one of its columns.
func without(g page.Grid, k int) page.Grid {
	g.Cols = slices.Delete(slices.Clone(g.Cols), k, k+1)
	lines := slices.Clone(g.Lines)
	for n := range lines {
		lines[n].Cells = slices.Delete(slices.Clone(lines[n].Cells), k, k+1)
	}
	g.Lines = lines
	return g
}
