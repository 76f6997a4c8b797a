package paper

import (
	"cmp"
	"fmt"
	"slices"

	"contralay/calc/formula/crimp"
	"contralay/calc/query/lists"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/paper/list"
)

// crimps is how every contact is crimped, and the samples that are pulled first.
func (m bought) crimps() list.Table {
	return list.Of(list.Table{File: "crimps", Title: "Crimp sheet and pull samples",
		Note: "Three samples of each pull the least given before the first real one, and again when tool, setting or reel changes. " +
			"Newton; pulled slowly, in line."},
		[]list.Column[lists.CrimpRow]{
			list.Text("contact", func(c lists.CrimpRow) string { return "size " + c.Contact }).InFile(
				list.Text("contact size", func(c lists.CrimpRow) string { return c.Contact })),
			list.Text("part", func(c lists.CrimpRow) string { return list.Dash(c.Part) }),
			list.Text("wire", crimpedWire).InFile(
				list.Text("spec", func(c lists.CrimpRow) string { return c.Spec }),
				list.Text("size", func(c lists.CrimpRow) string { return list.Size(&model.Wire{Size: c.Size}) }),
				list.Text("together as", func(c lists.CrimpRow) string { return together(c) })),
			list.Figure("count", func(c lists.CrimpRow) string { return fmt.Sprint(c.Count) }),
			list.Text(m.In("strip"), func(c lists.CrimpRow) string { return crimpStrip(m.Sys, c) }).InFile(
				list.Figure(m.In("strip from"), func(c lists.CrimpRow) string { return strip(m.Sys, c.StripMin) }),
				list.Figure(m.In("strip to"), func(c lists.CrimpRow) string { return strip(m.Sys, c.StripMax) })),
			list.Text("tool and positioner", crimpTool).InFile(
				list.Text("tool", func(c lists.CrimpRow) string { return c.Tool.V.Frame }),
				list.Text("positioner", func(c lists.CrimpRow) string { return c.Tool.V.Positioner }).Stands(
					func(lists.CrimpRow) catalogue.Standing { return catalogue.Memory })),
			list.Text("setting", func(c lists.CrimpRow) string { return crimpSetting(c) }).Stands(settingStands),
			list.Text("insertion tool", crimpInsertion),
			list.Text("strands nicked / broken, at most", crimpDamage).InFile(
				list.Figure("strands nicked at most", func(c lists.CrimpRow) string { return hurt(c, true) }),
				list.Figure("strands broken at most", func(c lists.CrimpRow) string { return hurt(c, false) })),
			list.Figure("pull at least, N", crimpPull).Stands(func(c lists.CrimpRow) catalogue.Standing { return c.PullBy.Standing }),
			list.Blank[lists.CrimpRow]("sample 1").InFile(),
			list.Blank[lists.CrimpRow]("sample 2").InFile(),
			list.Blank[lists.CrimpRow]("sample 3").InFile(),
		}, lists.CrimpList(m.S))
}

func crimpedWire(c lists.CrimpRow) string {
	if c.Together != "" {
		return c.Size + " AWG, together as " + c.Together
	}
	return list.Size(&model.Wire{Size: c.Size})
}

// together is the size that several wires in one contact count as.
func together(c lists.CrimpRow) string {
	if c.Together == "" {
		return "-"
	}
	return list.Size(&model.Wire{Size: c.Together})
}

func crimpStrip(sys unit.System, c lists.CrimpRow) string {
	if c.StripMin <= 0 {
		return "-"
	}
	return sys.Diameter(c.StripMin) + " to " + sys.Diameter(c.StripMax)
}

func crimpTool(c lists.CrimpRow) string {
	if !c.Tool.Set {
		return "its maker's sheet"
	}
	return fmt.Sprintf("%s with %s~", c.Tool.V.Frame, c.Tool.V.Positioner)
}

func crimpSetting(c lists.CrimpRow) string {
	if !c.Tool.Set || c.Step <= 0 {
		return "-"
	}
	return fmt.Sprint(c.Step)
}

func settingStands(c lists.CrimpRow) catalogue.Standing {
	if c.StepGuess {
		return catalogue.Memory
	}
	return catalogue.Published
}

func crimpInsertion(c lists.CrimpRow) string {
	if tool, ok := crimp.Insertion(c.Contact); ok && c.Circular {
		return tool
	}
	return "-"
}

// crimpDamage is how many strands of the wire may be hurt.
func crimpDamage(c lists.CrimpRow) string {
	if hurt(c, true) == "-" {
		return "-"
	}
	return hurt(c, true) + " / " + hurt(c, false)
}

// hurt is how many strands may be nicked, or broken.
func hurt(c lists.CrimpRow, nicks bool) string {
	if size, ok := catalogue.AWGNumber(cmp.Or(c.Together, c.Size)); ok {
		if nicked, broken, ok := crimp.Damage(size); ok && nicks {
			return fmt.Sprint(nicked)
		} else if ok {
			return fmt.Sprint(broken)
		}
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
