package set

import (
	"cmp"
	"fmt"

	"contralay/calc/formula/crimp"
	"contralay/calc/query/lists"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
)

// Crimps is how each contact is crimped on each wire, with its samples.
func Crimps(m list.Maker) []page.Block {
	rows := lists.CrimpList(m.S)
	if len(rows) == 0 {
		return nil
	}
	g := page.Grid{Cols: []page.Col{{Head: "contact", Bold: true}, {Head: "wire"}, {Head: "count", Align: list.ToRight},
		{Head: m.In("strip"), Bold: true}, {Head: "tool, positioner, setting", Least: 28}, {Head: "insertion tool", Least: 20},
		{Head: "strands nicked / broken", Wide: 18}, {Head: "pull, N", Align: list.ToRight, Bold: true},
		{Head: "pulled 1", Wide: 14, Align: list.ByHand}, {Head: "2", Wide: 14, Align: list.ByHand}, {Head: "3", Wide: 14,
			Align: list.ByHand}}}
	for _, c := range rows {
		line := page.Cells(contact(c), crimped(c), fmt.Sprint(c.Count), strip(m.Sys, c), tool(c), insertion(c), damage(c), pull(c), "", "", "")
		line.High = 9
		g.Lines = append(g.Lines, line)
	}
	note := page.Text("Before the first real crimp, pull three samples of each; each must hold at least the force shown. Pull slowly, in "+
		"line. Pull three more when the tool, its setting or the spool changes. No more strands may be nicked / broken than shown.",
		page.Small)
	note.KeepNext = true
	return []page.Block{page.Section(CrimpName), note, g.Block()}
}

func contact(c lists.CrimpRow) string {
	if c.Part == "" {
		return "size " + c.Contact + ",\nthe device's own"
	}
	return "size " + c.Contact + "\n" + c.Part
}

func crimped(c lists.CrimpRow) string {
	if c.Together != "" {
		return c.Size + " AWG, together as " + c.Together
	}
	return list.Size(&model.Wire{Size: c.Size})
}

func strip(sys unit.System, c lists.CrimpRow) string {
	if c.StripMin <= 0 {
		return "-"
	}
	return sys.Diameter(c.StripMin) + " to " + sys.Diameter(c.StripMax)
}

func tool(c lists.CrimpRow) string {
	if !c.Tool.Set {
		return "see its maker's sheet"
	}
	says := c.Tool.V.Frame + "~, " + c.Tool.V.Positioner
	if c.Step > 0 {
		says += fmt.Sprintf(", setting %d%s", c.Step, map[bool]string{true: "~"}[c.StepGuess])
	}
	return says
}

func insertion(c lists.CrimpRow) string {
	if tool, ok := crimp.Insertion(c.Contact); ok && c.Circular {
		return tool
	}
	return "-"
}

// damage is how many strands of the wire may be hurt.
func damage(c lists.CrimpRow) string {
	if size, ok := catalogue.AWGNumber(cmp.Or(c.Together, c.Size)); ok {
		if nicked, broken, ok := crimp.Damage(size); ok {
			return fmt.Sprintf("%d / %d", nicked, broken)
		}
	}
	return "-"
}

func pull(c lists.CrimpRow) string {
	if c.PullN <= 0 {
		return "-"
	}
	return unit.Fixed(c.PullN, 0) + list.Mem(c.PullBy.Standing)
}
