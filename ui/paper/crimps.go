package paper

import (
	"cmp"
	"fmt"

	"contralay/calc/formula/crimp"
	"contralay/calc/query/lists"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/paper/list"
)

// crimps is how every contact is crimped, and the samples that are pulled first.
func (m maker) crimps() list.Table {
	return list.Of(list.Table{File: "crimps", Title: "Crimp sheet and pull samples",
		Note: "Three samples of each pull the least given before the first real one, and again when tool, setting or reel changes. " +
			"Newton; pulled slowly, in line."},
		[]list.Column[lists.CrimpRow]{
			list.Text("contact", func(c lists.CrimpRow) string { return "size " + c.Contact }),
			list.Text("part", func(c lists.CrimpRow) string { return list.Dash(c.Part) }),
			list.Text("wire", crimpedWire),
			list.Figure("count", func(c lists.CrimpRow) string { return fmt.Sprint(c.Count) }),
			list.Text(m.In("strip"), func(c lists.CrimpRow) string { return crimpStrip(m.Sys, c) }),
			list.Text("tool and positioner", crimpTool),
			list.Text("setting", crimpSetting),
			list.Text("insertion tool", crimpInsertion),
			list.Text("strands nicked / broken, at most", crimpDamage),
			list.Figure("pull at least, N", crimpPull),
			list.Blank[lists.CrimpRow]("sample 1"),
			list.Blank[lists.CrimpRow]("sample 2"),
			list.Blank[lists.CrimpRow]("sample 3"),
		}, lists.CrimpList(m.S))
}

func crimpedWire(c lists.CrimpRow) string {
	if c.Together != "" {
		return c.Size + " AWG, together as " + c.Together
	}
	return list.Size(&model.Wire{Size: c.Size})
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
	return fmt.Sprintf("%d%s", c.Step, map[bool]string{true: "~"}[c.StepGuess])
}

func crimpInsertion(c lists.CrimpRow) string {
	if tool, ok := crimp.Insertion(c.Contact); ok && c.Circular {
		return tool
	}
	return "-"
}

// crimpDamage is how many strands of the wire may be hurt.
func crimpDamage(c lists.CrimpRow) string {
	if size, ok := catalogue.AWGNumber(cmp.Or(c.Together, c.Size)); ok {
		if nicked, broken, ok := crimp.Damage(size); ok {
			return fmt.Sprintf("%d / %d", nicked, broken)
		}
	}
	return "-"
}

func crimpPull(c lists.CrimpRow) string {
	if c.PullN <= 0 {
		return "-"
	}
	return unit.Fixed(c.PullN, 0) + list.Mem(c.PullBy.Standing)
}
