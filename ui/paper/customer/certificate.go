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
		says := fmt.Sprintf("The harness named here was built to its build sheet, inspected and tested. Every test passed, or stands "+
			"below as conceded. Revision and serial are those that it carries: %s rev %s, serial %s.",
			list.Dash(r.Number), list.Dash(r.Revision), r.Serial)
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
	g := page.Grid{Cols: []page.Col{{Wide: 24}, {Bold: true, Wide: 54}, {Wide: 34}, {Bold: true}}, Bare: true}
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
	g := page.Grid{Cols: []page.Col{{Wide: 24}, {}}, Bare: true}
	g.Lines = []page.Line{page.Cells("built by", cmp.Or(strings.Join(built, "; "), "nobody has a name in the record"))}
	if len(r.Inspected) == 0 {
		g.Lines = append(g.Lines, page.Cells("inspected by", "nobody has signed a hold"))
	}
	var met []string
	for _, x := range r.Inspected {
		if slices.Contains(met, x.ID) {
			continue
		}
		met = append(met, x.ID)
		var holds []string
		alone := false
		for _, o := range r.Inspected {
			if o.ID == x.ID {
				holds, alone = append(holds, o.Hold+" "+cmp.Or(o.At, "without a day")), alone || o.Alone
			}
		}
		says := person(x.ID, x.Name) + ": " + strings.Join(holds, ", ")
		if alone {
			says += ". Built it too: a concession"
		}
		head := ""
		if len(met) == 1 {
			head = "inspected by"
		}
		g.Lines = append(g.Lines, page.Cells(head, says))
	}
	if len(c.conceded()) == 0 {
		g.Lines = append(g.Lines, page.Cells("concessions", c.noConcession()))
	}
	return page.Stack(g.Block())
}

// conceded are the deviations that were written down at a test or a hold.
func (c Set) conceded() []model.Deviation {
	return slices.DeleteFunc(slices.Clone(c.Record.Deviations), func(d model.Deviation) bool { return !atTest(d) })
}

// otherwise are all others.
func (c Set) otherwise() []model.Deviation {
	return slices.DeleteFunc(slices.Clone(c.Record.Deviations), atTest)
}

func atTest(d model.Deviation) bool {
	return strings.HasPrefix(d.Step.V, "hold ") || strings.HasPrefix(d.Step.V, "pull ")
}

// noConcession is said where nothing was written down as conceded of a test or a hold.
func (c Set) noConcession() string {
	says := "none of tests or inspection"
	if slices.ContainsFunc(c.Record.Inspected, func(x record.Inspected) bool { return x.Alone }) {
		says = "the inspection, as said above"
	}
	return says + list.Word(". ", c.more())
}

// more says how many deviations are of no test and no hold.
func (c Set) more() string {
	if n := len(c.otherwise()); n > 0 {
		return fmt.Sprintf("%q below has %s", BuiltName, counted(n, "deviation"))
	}
	return ""
}

// concessions is what was conceded of the tests and of the inspection, and how much else differs.
func (c Set) concessions() []page.Block {
	all := c.conceded()
	if len(all) == 0 {
		return nil
	}
	out := []page.Block{kept(page.SubHeading("Concessions")), c.deviations("at", all)}
	if more := c.more(); more != "" {
		out = append(out, page.Text(more+".", page.Small))
	}
	return out
}

// deviations is a table of what was built otherwise, and who decided so.
func (c Set) deviations(at string, all []model.Deviation) page.Block {
	g := page.Grid{Plain: true, Cols: []page.Col{{Head: at, Bold: true}, {Head: "what differs"}, {Head: "decided by"}, {Head: "on"}}}
	for _, d := range all {
		p, _ := c.S.Cat.Person(d.By.V)
		by := "nobody has decided"
		if d.By.Set {
			by = person(d.By.V, p.Name)
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
