package layers

import (
	"fmt"
	"slices"

	"contralay/model"
	"contralay/ui/bench/desk"
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
			More: func() string { return a.Name + ", Enter takes it up: " + t.Tally().Differs(m.Tally(), m.Sys) },
			Enter: func(m *desk.Model) {
				takeUp(m, k)
			},
			Drop: func(m *desk.Model) {
				m.Change(m.H.EditBranch(m.Branch, func(b *model.Branch) { b.Asides = slices.Delete(b.Asides, k, k+1) }),
					a.Name+" is no longer kept aside")
			},
		})
	}
	name := asideName(m)
	out = append(out, desk.Row{Key: "set aside", Text: "set this lay-up aside",
		Detail: "to compare with or to come back to; kept in the file. Enter names it",
		Field:  &desk.Field{Label: "set aside as", Value: name, Set: func(m *desk.Model, text string) error { return setAside(m, text) }}})
	if len(mb.Asides) > 0 {
		out = append(out, desk.Row{Key: "compare", Text: "compare side by side", Detail: "this lay-up and those set aside",
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
		return fmt.Errorf("a name is wanted")
	case len(mb.Asides) >= mostAsides:
		return fmt.Errorf("%d are aside already: take one out with . first", mostAsides)
	case slices.ContainsFunc(mb.Asides, func(a model.Aside) bool { return a.Name == name }):
		return fmt.Errorf("%s is aside already: give another name", name)
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
	all := []*desk.Model{m}
	names := []string{"now"}
	for k, a := range mb.Asides {
		all = append(all, m.Try(fmt.Sprintf("aside %d %s", k, a.Name), func() *model.Harness { h, _ := takenUp(m, k); return h }))
		names = append(names, a.Name)
	}
	p := desk.Page{Lines: []string{"Lay-ups of " + mb.ID + " side by side; Enter takes the row's up."},
		Cols: fmt.Sprintf("%-14s %-20s %7s %7s %8s %6s %6s %6s  %s", "", "lay-up", "over", "mass g", "wire m", "spare", "filler",
			"buried", "sheath")}
	for k, t := range all {
		_, b, _ := t.BranchHere()
		y := t.Tally()
		r := desk.Row{Key: names[k], Text: fmt.Sprintf("%s %s %7s %7s %8.1f %6d %6d %6d  %s", draw.Fit(names[k], 14, m.Cfg.ASCII),
			draw.Fit(aloud(m, b.Layers), 20, m.Cfg.ASCII),
			m.Sys.Diameter(y.Over), grams0(y), float64(y.Wire)/1000, y.Spares, y.Fillers, y.Buried, sheathText(t)),
			Detail: "as it is laid now", Why: desk.FiguresOf(mb.ID, "branch.over", "branch.mass", "branch.wire")}
		if k > 0 {
			r.Detail = y.Differs(all[0].Tally(), m.Sys)
			r.Enter = func(m *desk.Model) { m.Back(); takeUp(m, k-1) }
			r.Show = func(m *desk.Model) *desk.Model { return t }
			r.Why = desk.InTrial(r.Show, r.Why)
		}
		p.Rows = append(p.Rows, r)
	}
	return p
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
