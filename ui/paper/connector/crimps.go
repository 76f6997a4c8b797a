package connector

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

// How contacts are crimped: as a file, and as a block at the head of what is crimped so.

// CrimpTable is every crimp of the harness, as a file.
func CrimpTable(m list.Maker) list.Table {
	columns := []list.Column[lists.CrimpRow]{
		list.Text("contact size", func(c lists.CrimpRow) string { return c.Contact }),
		list.Text("part", func(c lists.CrimpRow) string { return c.Part }),
		list.Text("spec", func(c lists.CrimpRow) string { return c.Spec }),
		list.Text("wire", func(c lists.CrimpRow) string { return model.SizeWords(c.Size) }),
		list.Text("together as, AWG", func(c lists.CrimpRow) string { return c.Together }),
		list.Figure("count", func(c lists.CrimpRow) string { return fmt.Sprint(c.Count) }),
	}
	columns = append(columns, crimpColumns(m.Sys)...)
	columns = append(columns,
		list.Figure("strands nicked, at most", func(c lists.CrimpRow) string { n, _ := damage(c); return n }),
		list.Figure("strands broken, at most", func(c lists.CrimpRow) string { _, n := damage(c); return n }),
		list.Blank[lists.CrimpRow]("sample 1, N"), list.Blank[lists.CrimpRow]("sample 2, N"), list.Blank[lists.CrimpRow]("sample 3, N"))
	return list.Of(list.Table{File: "crimps", Title: "Crimp sheet and pull samples"}, columns, lists.CrimpList(m.S))
}

// InsertionTool is the tool that puts a contact in and takes it out; "" where none is known.
func InsertionTool(c lists.CrimpRow) string {
	if tool, ok := crimp.Insertion(c.Contact); ok && c.Circular {
		return tool
	}
	return ""
}

func pull(c lists.CrimpRow) string {
	if c.PullN <= 0 {
		return ""
	}
	return unit.Fixed(c.PullN, 0)
}

// damage is how many strands of the wire may be nicked and broken; "" where no table says.
func damage(c lists.CrimpRow) (nicked, broken string) {
	if size, ok := catalogue.AWGNumber(cmp.Or(c.Together, c.Size)); ok {
		if n, b, ok := crimp.Damage(size); ok {
			return fmt.Sprint(n), fmt.Sprint(b)
		}
	}
	return "", ""
}

// crimpsOf is the crimps of some terminations, alike ones together, in the order they are met.
func crimpsOf(m list.Maker, terms ...int) []lists.CrimpRow {
	var out []lists.CrimpRow
	for _, t := range terms {
		for _, name := range m.S.Terms[t].Cavities {
			r, ok := lists.CrimpOf(m.S, t, name)
			if !ok {
				continue
			}
			at := -1
			for k := range out {
				if out[k].Alike(r) {
					at = k
				}
			}
			if at < 0 {
				at, out = len(out), append(out, r)
			}
			out[at].Count++
		}
	}
	return out
}

// Samples says how the samples of the crimps are pulled, whose boxes stand with each connector.
func Samples() page.Block {
	note := page.Text("Crimp and pull three samples of each before the first real one, and again when the tool, its setting or the "+
		"wire's lot changes: write down the newtons. Pull slowly and in line; each must hold the newtons shown. A crimp that was sampled "+
		"for a connector before needs no others. Damage: strands nicked / broken that are allowed.", page.Small)
	note.KeepNext = true
	return note
}

// crimpGrid is how contacts are crimped, a row for each contact and wire, with room for its samples.
func crimpGrid(m list.Maker, rows []lists.CrimpRow) page.Block {
	columns := []list.Column[lists.CrimpRow]{
		list.Text("contact", crimpedContact),
		list.Text("wire", crimpedWire),
		list.Figure("count", func(c lists.CrimpRow) string { return fmt.Sprint(c.Count) }),
		list.Text(m.In("strip"), func(c lists.CrimpRow) string { return stripText(m.Sys, c) }),
		list.Text("tool and positioner", crimpTool),
		list.Text("setting", crimpSetting),
		list.Text("in and out by", func(c lists.CrimpRow) string { return list.Dash(InsertionTool(c)) }),
		list.Figure("pull, N", func(c lists.CrimpRow) string { return list.Dash(pull(c)) + list.Mem(c.PullBy.Standing) }),
	}
	columns = append(columns, list.Text("damage", crimpDamage), list.Blank[lists.CrimpRow]("1"), list.Blank[lists.CrimpRow]("2"),
		list.Blank[lists.CrimpRow]("3"))
	g := page.TableOf(list.Of(list.Table{}, columns, rows))
	for k := range g.Cols {
		switch g.Cols[k].Head {
		case "1", "2", "3":
			g.Cols[k].Wide = 11
		case "tool and positioner":
			g.Cols[k].Least = 33
		case "in and out by":
			g.Cols[k].Least = 24
		}
	}
	return g.Block()
}

func crimpedContact(c lists.CrimpRow) string {
	if c.Part == "" {
		return "size " + c.Contact
	}
	return "size " + c.Contact + ", " + c.Part
}

func crimpedWire(c lists.CrimpRow) string {
	if c.Together != "" {
		return c.Size + " AWG, together as " + c.Together
	}
	return model.SizeWords(c.Size)
}

// stripText is how much is stripped; "-" where the contact's maker says.
func stripText(sys unit.System, c lists.CrimpRow) string {
	if c.StripMin <= 0 {
		return "-"
	}
	return sys.Diameter(c.StripMin) + "–" + sys.Diameter(c.StripMax)
}

// bySheet is said of what no table has for a contact.
const bySheet = "by its maker's sheet"

func crimpTool(c lists.CrimpRow) string {
	if !c.Tool.Set {
		return bySheet
	}
	says := c.Tool.V.Frame + " with " + c.Tool.V.Positioner
	if c.Tool.V.Memory {
		says += "~"
	}
	return says
}

func crimpSetting(c lists.CrimpRow) string {
	if !c.Tool.Set || c.Step <= 0 {
		return "-"
	}
	return fmt.Sprintf("%d%s", c.Step, map[bool]string{true: "~"}[c.StepGuess])
}

// crimpDamage is how many strands of the wire may be hurt.
func crimpDamage(c lists.CrimpRow) string {
	nicked, broken := damage(c)
	if nicked == "" {
		return "-"
	}
	return nicked + " / " + broken
}
