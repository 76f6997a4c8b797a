package layers

import (
	"fmt"
	"slices"

	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/kit"
	"contralay/ui/draw"
)

// mostAsides is how many lay-ups a branch keeps aside.
const mostAsides = 9

// asideRows is the lay-ups set aside, and the row that sets one more aside.
func asideRows(m *desk.Model) []desk.Row {
	mb, _, _ := m.BranchHere()
	var out []desk.Row
	for k, a := range mb.Asides {
		name := fmt.Sprintf("aside %d %s", k, a.Name)
		show := func(m *desk.Model) *desk.Model {
			return m.Try(name, func() *model.Harness { h, _ := takenUp(m, k); return h })
		}
		t := show(m)
		_, b, _ := t.BranchHere()
		out = append(out, desk.Row{
			Key:  "aside " + a.Name,
			Text: fmt.Sprintf("  %d  %s %5s  %s", k+1, draw.Fit(aloud(m, b.Layers), 17, m.Cfg.ASCII), m.Sys.Diameter(b.OverMM), a.Name),
			Show: show,
			More: func() string {
				return fmt.Sprintf("%s. %sEnter takes it: %s", a.Name, builtText(t), t.Tally().Differs(m.Tally(), m.Sys))
			},
			Enter: func(m *desk.Model) {
				takeUp(m, k)
			},
			Drop: func(m *desk.Model) {
				m.Change(m.H.EditBranch(m.Branch, func(b *model.Branch) { b.Asides = slices.Delete(b.Asides, k, k+1) }),
					a.Name+" is no longer set aside")
			},
		})
	}
	name := asideName(m)
	out = append(out, desk.Row{Key: "set aside", Text: "set this lay-up aside",
		Detail: "The file keeps it, to compare and to come back to. Enter names it",
		Field:  &desk.Field{Label: "set aside as", Value: name, Set: func(m *desk.Model, text string) error { return setAside(m, text) }}})
	if len(mb.Asides) > 0 {
		out = append(out, desk.Row{Key: "compare", Text: "compare side by side", Detail: "This lay-up and those set aside",
			Enter: func(m *desk.Model) { m.Show(CompareKind, "") }})
	}
	return out
}

// asideName is the first name that is free.
func asideName(m *desk.Model) string {
	for n := 1; ; n++ {
		name := fmt.Sprintf("lay-up %d", n)
		if !slices.ContainsFunc(m.H.Branches[m.Branch].Asides, func(a model.Aside) bool { return a.Name == name }) {
			return name
		}
	}
}

func setAside(m *desk.Model, name string) error {
	mb, b, _ := m.BranchHere()
	switch {
	case name == "":
		return fmt.Errorf("type a name")
	case len(mb.Asides) >= mostAsides:
		return fmt.Errorf("%d are set aside already. Remove one with . first", mostAsides)
	case slices.ContainsFunc(mb.Asides, func(a model.Aside) bool { return a.Name == name }):
		return fmt.Errorf("%s is set aside already. Give another name", name)
	}
	a := model.Aside{Name: name, Make: model.Some(b.Make), Outer: mb.Outer, Layers: editLayers(m)}
	m.Change(m.H.EditBranch(m.Branch, func(b *model.Branch) { b.Asides = append(b.Asides, a) }), "set aside as "+name)
	return nil
}

// takenUp is the harness laid as aside k, and what of it no longer runs here.
func takenUp(m *desk.Model, k int) (*model.Harness, []string) {
	mb, b, _ := m.BranchHere()
	a := mb.Asides[k]
	layers := model.CloneLayers(a.Layers)
	var gone []string
	for i := range layers {
		layers[i].Of = slices.DeleteFunc(layers[i].Of, func(id string) bool {
			if slices.Contains(b.Components, id) {
				return false
			}
			gone = append(gone, id)
			return true
		})
		layers[i].Pinned = slices.DeleteFunc(layers[i].Pinned, func(id string) bool { return slices.Contains(gone, id) })
	}
	layers = slices.DeleteFunc(layers, func(l model.Layer) bool { return len(l.Of) == 0 && l.Fillers.V == 0 })
	if len(layers) > 0 && !desk.SameSet(layers[0].Of, a.Layers[0].Of) { // its tape was for what lay in it
		layers[0].BindMM, layers[0].BindPart = model.Opt[unit.Millimetre]{}, model.Opt[string]{}
	}
	return m.H.EditBranch(m.Branch, func(b *model.Branch) { b.Layers, b.Make, b.Outer = layers, a.Make, a.Outer }), gone
}

func takeUp(m *desk.Model, k int) {
	mb, _, _ := m.BranchHere()
	a := mb.Asides[k]
	h, gone := takenUp(m, k)
	says := "laid as " + a.Name
	if len(gone) > 0 {
		says += fmt.Sprintf("; %v no longer run here and are left out", gone)
	}
	m.Change(h, says)
}

// CompareKind is the screen of lay-ups side by side.
const CompareKind desk.Kind = "compare"

// ComparePage sets the lay-up in hand and those set aside side by side.
func ComparePage(m *desk.Model, _ int, _ string) desk.Page {
	mb, _, _ := m.BranchHere()
	all := []compared{{name: "now", bench: m, tally: m.Tally()}}
	for k, a := range mb.Asides {
		t := m.Try(fmt.Sprintf("aside %d %s", k, a.Name), func() *model.Harness { h, _ := takenUp(m, k); return h })
		all = append(all, compared{name: a.Name, bench: t, tally: t.Tally()})
	}
	columns := comparedColumns(m)
	p := desk.Page{Lines: []string{"Lay-ups of " + mb.ID + " side by side. Enter takes the one in the row."}, Cols: columns.Head()}
	for k, c := range all {
		r := desk.Row{Key: c.name, Text: columns.Line(c), Detail: "The lay-up in use",
			Why: desk.FiguresOf(mb.ID, "branch.over", "branch.mass", "branch.wire")}
		if k > 0 {
			r.Detail = c.tally.Differs(all[0].tally, m.Sys)
			r.Enter = func(m *desk.Model) { m.Back(); takeUp(m, k-1) }
			r.Show = func(m *desk.Model) *desk.Model { return c.bench }
			r.Why = desk.InTrial(r.Show, r.Why)
		}
		p.Rows = append(p.Rows, r)
	}
	return p
}

// compared is a lay-up beside others: the bench as it would be with it, and its figures.
type compared struct {
	name  string
	bench *desk.Model
	tally desk.Tally
}

func comparedColumns(m *desk.Model) kit.Columns[compared] {
	return kit.GivenColumns([]kit.Column[compared]{
		{Least: 14, Cell: func(c compared) string { return c.name }},
		{Head: "lay-up", Least: 20, Cell: func(c compared) string {
			_, b, _ := c.bench.BranchHere()
			return aloud(m, b.Layers)
		}},
		{Head: "OD", Least: 7, Align: kit.ToRight, Cell: func(c compared) string { return m.Sys.Diameter(c.tally.Over) }},
		{Head: "mass g", Least: 7, Align: kit.ToRight, Cell: func(c compared) string { return grams0(c.tally) }},
		{Head: "wire m", Least: 8, Align: kit.ToRight,
			Cell: func(c compared) string { return fmt.Sprintf("%.1f", float64(c.tally.Wire)/1000) }},
		{Head: "spare", Least: 6, Align: kit.ToRight, Cell: func(c compared) string { return fmt.Sprint(c.tally.Spares) }},
		{Head: "filler", Least: 6, Align: kit.ToRight, Cell: func(c compared) string { return fmt.Sprint(c.tally.Fillers) }},
		{Head: "buried", Least: 6, Align: kit.ToRight, Cell: func(c compared) string { return fmt.Sprint(c.tally.Buried) }},
		{Head: "sheath", Lead: 1, Cell: func(c compared) string { return sheathText(c.bench) }},
	}, m.Cfg.ASCII)
}

func grams0(t desk.Tally) string {
	if !t.GramKnown {
		return "-"
	}
	return fmt.Sprintf("%.0f", float64(t.Gram))
}

func sheathText(m *desk.Model) string {
	_, b, _ := m.BranchHere()
	if b.Sheath.Part == "" {
		return "-"
	}
	return b.Sheath.Part
}
