package customer

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"contralay/calc/query/record"
	"contralay/model"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
)

// Conforms reports whether nothing stands against a certificate.
func (c Set) Conforms() bool { return c.Record != nil && len(c.Record.Open) == 0 }

// certificate is the first page of a set for a serial: that it was built, inspected and tested, or what
// stands against that.
func (c Set) certificate() []page.Block {
	r := c.Record
	var out []page.Block
	if c.Conforms() {
		says := fmt.Sprintf("The harness named here was built to its build sheet, inspected and tested. Every test passed, or stands below "+
			"as conceded. Revision and serial are those that it carries: %s rev %s, serial %s.", list.Dash(r.Number), list.Dash(r.Revision),
			r.Serial)
		out = append(out, page.Section(CertificateName), page.Text(says, page.Body))
	} else {
		out = append(out, page.Section(NotCompleteName), kept(page.Text("This is no certificate. What stands against one:", page.Body)))
		g := page.Grid{Cols: []page.Col{{}}, Bare: true, Letter: page.Body}
		for _, says := range r.Open {
			g.Lines = append(g.Lines, page.Line{Cells: []page.Cell{{Text: list.Capital(c.Sys.Says(says)) + ".", Shade: true}}})
		}
		out = append(out, g.Block())
	}
	out = append(out, c.named(), c.people())
	out = append(out, c.concessions()...)
	out = append(out, c.testPages()...)
	if c.Conforms() {
		g := page.Grid{Cols: []page.Col{{Head: "released by", Align: list.ByHand}, {Head: "signature", Align: list.ByHand},
			{Head: "day", Align: list.ByHand}}, Lines: []page.Line{page.Cells("", "", "")}}
		g.Lines[0].High = 9
		out = append(out, page.Stack(g.Block()))
	}
	return out
}

// named is which harness it is, line by line.
func (c Set) named() page.Block {
	r := c.Record
	g := page.Grid{Cols: []page.Col{{Wide: 26}, {Bold: true}, {Wide: 26}, {Bold: true}}, Bare: true}
	g.Lines = []page.Line{
		page.Cells("number", list.Dash(r.Number), "name", list.Dash(r.Name)),
		page.Cells("revision", list.Dash(r.Revision), "serial", r.Serial),
		page.Cells("begun", list.Dash(r.Begun), "finished", cmp.Or(r.Ended, "not finished")),
		page.Cells("printed", list.Dash(c.On), "workmanship class", "the file states none"),
	}
	return page.Stack(g.Block())
}

// person is somebody by name and number.
func person(id, name string) string {
	switch {
	case id == "":
		return "-"
	case name == "" || name == id:
		return id
	}
	return name + " (" + id + ")"
}

// people is who built it, and who signed each hold.
func (c Set) people() page.Block {
	r := c.Record
	var built []string
	for _, w := range r.Built {
		steps := "steps"
		if w.Steps == 1 {
			steps = "step"
		}
		built = append(built, fmt.Sprintf("%s, %d %s", person(w.ID, w.Name), w.Steps, steps))
	}
	g := page.Grid{Cols: []page.Col{{Wide: 26}, {}}, Bare: true}
	g.Lines = []page.Line{page.Cells("built by", cmp.Or(strings.Join(built, "; "), "nobody has a name in the record"))}
	if len(r.Inspected) == 0 {
		g.Lines = append(g.Lines, page.Cells("inspected by", "nobody has signed a hold"))
	}
	for k, x := range r.Inspected {
		says := fmt.Sprintf("%s: %s, %s", x.Hold, person(x.ID, x.Name), cmp.Or(x.At, "no day"))
		if x.Alone {
			says += ". That person built it too: a concession"
		}
		head := ""
		if k == 0 {
			head = "inspected by"
		}
		g.Lines = append(g.Lines, page.Cells(head, says))
	}
	return page.Stack(g.Block())
}

// conceded are the deviations that were written down at a test or a hold.
func (c Set) conceded() []model.Deviation {
	return slices.DeleteFunc(slices.Clone(c.Record.Deviations), func(d model.Deviation) bool {
		return !strings.HasPrefix(d.Step.V, "hold ") && !strings.HasPrefix(d.Step.V, "pull ")
	})
}

// concessions is what was conceded of the tests and of the inspection, and how much else differs.
func (c Set) concessions() []page.Block {
	all := c.conceded()
	more := ""
	if n := len(c.Record.Deviations) - len(all); n > 0 {
		more = fmt.Sprintf("The page %q has %s more.", BuiltName, counted(n, "deviation"))
	}
	alone := slices.ContainsFunc(c.Record.Inspected, func(x record.Inspected) bool { return x.Alone })
	head := kept(page.SubHeading("Concessions"))
	if len(all) == 0 {
		says := "None of the tests."
		if alone {
			says = "Whoever built it inspected it too, as said above."
		}
		return []page.Block{head, page.Text(strings.TrimSpace(says+" "+more), page.Small)}
	}
	out := []page.Block{head, c.deviations(all)}
	if more != "" {
		out = append(out, page.Text(more, page.Small))
	}
	return out
}

// deviations is a table of what was built otherwise, and who decided so.
func (c Set) deviations(all []model.Deviation) page.Block {
	g := page.Grid{Cols: []page.Col{{Head: "at", Bold: true}, {Head: "what differs"}, {Head: "decided by"}, {Head: "on"}}}
	for _, d := range all {
		name := ""
		if c.S.Cat != nil {
			p, _ := c.S.Cat.Person(d.By.V)
			name = p.Name
		}
		by := "nobody has decided"
		if d.By.Set {
			by = person(d.By.V, name)
		}
		g.Lines = append(g.Lines, page.Cells(list.Dash(d.At), c.Sys.Says(d.Says), by, list.Dash(d.On.V)))
	}
	return g.Block()
}

// counted is a number of things: "1 deviation", "3 deviations".
func counted(n int, what string) string {
	if n == 1 {
		return "1 " + what
	}
	return fmt.Sprintf("%d %ss", n, what)
}
