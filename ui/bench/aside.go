package bench

import (
	"fmt"
	"slices"

	"contralay/model"
	"contralay/ui/draw"
)

// mostAsides is how many lay-ups a branch keeps aside.
const mostAsides = 9

// asideRows is the lay-ups set aside, and the row that sets one more aside.
func (m *Model) asideRows() []row {
	mb, _, _ := m.b()
	var out []row
	for k, a := range mb.Asides {
		name := fmt.Sprintf("aside %d %s", k, a.Name)
		show := func(m *Model) *Model {
			return m.try(name, func() *model.Harness { h, _ := m.takenUp(k); return h })
		}
		t := show(m)
		_, b, _ := t.b()
		out = append(out, row{
			key:  "aside " + a.Name,
			text: fmt.Sprintf("  %d  %s %5s  %s", k+1, draw.Fit(m.aloud(b.Layers), 17, m.cfg.ASCII), m.sys.Diameter(b.OverMM), a.Name),
			show: show,
			more: func() string { return a.Name + ", Enter takes it up: " + m.differs(m.tally(), t.tally()) },
			enter: func(m *Model) {
				m.takeUp(k)
			},
			drop: func(m *Model) {
				m.change(m.h.EditBranch(m.branch, func(b *model.Branch) { b.Asides = slices.Delete(b.Asides, k, k+1) }), a.Name+" is no longer kept aside")
			},
		})
	}
	name := m.asideName()
	out = append(out, row{key: "set aside", text: "set this lay-up aside", detail: "to compare with or to come back to; kept in the file. Enter names it",
		field: &field{label: "set aside as", value: name, set: func(m *Model, text string) error { return m.setAside(text) }}})
	if len(mb.Asides) > 0 {
		out = append(out, row{key: "compare", text: "compare side by side", detail: "this lay-up and those set aside", enter: func(m *Model) { m.open(compareScreen()) }})
	}
	return out
}

// asideName is the first name that is free.
func (m *Model) asideName() string {
	for n := 1; ; n++ {
		name := fmt.Sprintf("lay-up %d", n)
		if !slices.ContainsFunc(m.h.Branches[m.branch].Asides, func(a model.Aside) bool { return a.Name == name }) {
			return name
		}
	}
}

func (m *Model) setAside(name string) error {
	mb, b, _ := m.b()
	switch {
	case name == "":
		return fmt.Errorf("a name is wanted")
	case len(mb.Asides) >= mostAsides:
		return fmt.Errorf("%d are aside already: take one out with . first", mostAsides)
	case slices.ContainsFunc(mb.Asides, func(a model.Aside) bool { return a.Name == name }):
		return fmt.Errorf("%s is aside already: give another name", name)
	}
	a := model.Aside{Name: name, Make: model.Some(b.Make), Outer: mb.Outer, Layers: m.editLayers()}
	m.change(m.h.EditBranch(m.branch, func(b *model.Branch) { b.Asides = append(b.Asides, a) }), "set aside as "+name)
	return nil
}

// takenUp is the harness laid as aside k, and what of it no longer runs here.
func (m *Model) takenUp(k int) (*model.Harness, []string) {
	mb, b, _ := m.b()
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
	return m.h.EditBranch(m.branch, func(b *model.Branch) { b.Layers, b.Make, b.Outer = layers, a.Make, a.Outer }), gone
}

func (m *Model) takeUp(k int) {
	mb, _, _ := m.b()
	a := mb.Asides[k]
	h, gone := m.takenUp(k)
	says := "laid as " + a.Name
	if len(gone) > 0 {
		says += fmt.Sprintf("; %v no longer run here and are left out", gone)
	}
	m.change(h, says)
}

// compareScreen sets the lay-up in hand and those set aside side by side.
func compareScreen() screen {
	return screen{name: "compare", page: func(m *Model, w int) page {
		mb, _, _ := m.b()
		all := []*Model{m}
		names := []string{"now"}
		for k, a := range mb.Asides {
			all = append(all, m.try(fmt.Sprintf("aside %d %s", k, a.Name), func() *model.Harness { h, _ := m.takenUp(k); return h }))
			names = append(names, a.Name)
		}
		p := page{lines: []string{"Lay-ups of " + mb.ID + " side by side; Enter takes the row's up."},
			cols: fmt.Sprintf("%-14s %-20s %7s %7s %8s %6s %6s %6s  %s", "", "lay-up", "over", "mass g", "wire m", "spare", "filler", "buried", "sheath")}
		for k, t := range all {
			_, b, _ := t.b()
			y := t.tally()
			r := row{key: names[k], text: fmt.Sprintf("%s %s %7s %7s %8.1f %6d %6d %6d  %s", draw.Fit(names[k], 14, m.cfg.ASCII), draw.Fit(m.aloud(b.Layers), 20, m.cfg.ASCII),
				m.sys.Diameter(y.over), grams0(y), float64(y.wire)/1000, y.spares, y.fillers, y.buried, sheathText(t)),
				detail: "as it is laid now", why: figs(mb.ID, 0, "", "branch.over", "branch.mass", "branch.wire")}
			if k > 0 {
				r.detail = m.differs(all[0].tally(), y)
				r.enter = func(m *Model) { m.back(); m.takeUp(k - 1) }
				r.show = func(m *Model) *Model { return t }
				r.why = inTrial(r.show, r.why)
			}
			p.rows = append(p.rows, r)
		}
		return p
	}}
}

func grams0(t tally) string {
	if !t.gramKnown {
		return "-"
	}
	return fmt.Sprintf("%.0f", float64(t.gram))
}

func sheathText(m *Model) string {
	_, b, _ := m.b()
	if b.Sheath.Part == "" {
		return "-"
	}
	return b.Sheath.Part
}
