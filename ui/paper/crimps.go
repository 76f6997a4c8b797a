package paper

import (
	"fmt"
	"slices"

	"contralay/calc/formula/crimp"
	"contralay/calc/query/lists"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/paper/connector"
	"contralay/ui/paper/list"
)

// crimps is how every contact is crimped, and the samples that are pulled first.
func (m bought) crimps() list.Table { return connector.CrimpTable(m.Maker) }

func crimpedWire(c lists.CrimpRow) string {
	if c.Together != "" {
		return c.Size + " AWG, together as " + c.Together
	}
	return list.Size(&model.Wire{Size: c.Size})
}

func crimpInsertion(c lists.CrimpRow) string {
	if tool, ok := crimp.Insertion(c.Contact); ok && c.Circular {
		return tool
	}
	return "-"
}

func crimpPull(c lists.CrimpRow) string {
	if c.PullN <= 0 {
		return "-"
	}
	return unit.Fixed(c.PullN, 0)
}

// pulls is the form on which the samples are written down: a line for each that is crimped before the first real one.
func (m bought) pulls() list.Table {
	type pull struct {
		lists.CrimpRow
		sample int
	}
	var rows []pull
	for _, c := range lists.CrimpList(m.S) {
		for n := range lists.Samples {
			rows = append(rows, pull{c, n + 1})
		}
	}
	return list.Of(list.Table{File: "pull-samples", Title: "Pull samples"}, []list.Column[pull]{
		list.Text("contact size", func(p pull) string { return p.Contact }),
		list.Text("part", func(p pull) string { return list.Dash(p.Part) }),
		list.Text("wire", func(p pull) string { return crimpedWire(p.CrimpRow) }),
		list.Figure("sample", func(p pull) string { return fmt.Sprint(p.sample) }),
		list.Figure("at least, N", func(p pull) string { return crimpPull(p.CrimpRow) }).Stands(
			func(p pull) catalogue.Standing { return p.PullBy.Standing }),
		list.Blank[pull]("pulled, N"), list.Blank[pull]("tool number"), list.Blank[pull]("by"), list.Blank[pull]("day"),
	}, rows)
}

// toolRow is one tool, and what it is for.
type toolRow struct {
	what, tool, use string
	standing        catalogue.Standing
}

// tools is what has to lie ready: for crimping, for putting contacts in, for shrinking and testing.
func (m bought) tools() list.Table {
	var rows []toolRow
	add := func(r toolRow) {
		if r.tool != "" && r.tool != "-" && !slices.Contains(rows, r) {
			rows = append(rows, r)
		}
	}
	crimps := lists.CrimpList(m.S)
	for _, c := range crimps {
		add(toolRow{"crimp tool", c.Tool.V.Frame, "contacts of size " + c.Contact, ""})
		add(toolRow{"positioner", c.Tool.V.Positioner, "contacts of size " + c.Contact, catalogue.Memory})
		if !c.Tool.Set {
			add(toolRow{"crimp tool", "by its maker's sheet", "contacts of size " + c.Contact + ", the device's own", ""})
		}
	}
	for _, c := range crimps {
		add(toolRow{"insertion and removal tool", crimpInsertion(c), "contacts of size " + c.Contact, catalogue.Published})
	}
	for _, r := range lists.Bill(m.S) {
		switch r.Group {
		case "splice":
			add(toolRow{"crimp tool", "by its maker's sheet", "splices " + r.Part, ""})
		case "ring terminal":
			add(toolRow{"crimp tool", "by its maker's sheet", r.Part + " terminals", ""})
		}
	}
	if len(crimps) > 0 {
		add(toolRow{"pull tester", "any that reads newtons", "the pull samples", ""})
	}
	if len(lists.Tubes(m.S)) > 0 || len(lists.Labels(m.S)) > 0 {
		add(toolRow{"heat gun", "with a reflector", "tubes, boots and labels", ""})
	}
	add(toolRow{"meter", "for low resistance", "the ring-out", ""})
	add(toolRow{"insulation tester", "for the volts that the sheet orders", "isolation", ""})
	return list.Of(list.Table{File: "tools", Title: "Tools"}, []list.Column[toolRow]{
		list.Text("what", func(r toolRow) string { return r.what }),
		list.Text("tool", func(r toolRow) string { return r.tool }).Stands(func(r toolRow) catalogue.Standing { return r.standing }),
		list.Text("for", func(r toolRow) string { return r.use }),
		list.Blank[toolRow]("number"), list.Blank[toolRow]("calibrated until"),
	}, rows)
}

// consumables is what is used up and counted by nobody.
func (m bought) consumables() list.Table {
	type used struct{ what, use string }
	var rows []used
	groups := map[string]bool{}
	for _, r := range lists.Bill(m.S) {
		groups[r.Group] = true
	}
	for _, u := range []struct {
		group string
		used
	}{{"adhesive", used{"wipes and solvent", "cleaning what is glued"}}, {"adhesive", used{"abrasive", "roughing what is glued"}},
		{"lacing", used{"lacing tape or thread", "ties at breakouts and splices"}},
		{"label", used{"marker ribbon", "labels"}}, {"wire flag", used{"marker ribbon or pen", "wire flags"}}} {
		if groups[u.group] {
			rows = append(rows, u.used)
		}
	}
	return list.Of(list.Table{File: "consumables", Title: "Consumables"}, []list.Column[used]{
		list.Text("what", func(u used) string { return u.what }), list.Text("for", func(u used) string { return u.use }),
	}, rows)
}
