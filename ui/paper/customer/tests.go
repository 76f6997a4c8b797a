package customer

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"contralay/calc/query/record"
	"contralay/calc/query/run"
	"contralay/model/unit"
	"contralay/ui/paper/cavity"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
)

// result is what a test came to, in a word or two.
func result(t record.Tested) string {
	switch t.Result {
	case run.Passed:
		return "passed"
	case run.Conceded:
		return "conceded"
	case run.Failed:
		return "FAILED"
	}
	return "not tested"
}

// figure is a reading as it was written down.
func figure(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) }

// bound is the limit of a test, to 0.1 N or a thousandth of another unit.
func bound(c run.Check) string {
	digits := 3
	if c.Kind == run.Pulled {
		digits = 1
	}
	says := unit.Fixed(c.Limit, digits)
	if strings.Contains(says, ".") {
		says = strings.TrimRight(strings.TrimRight(says, "0"), ".")
	}
	return says
}

// limit is what a test must read: "at most 0.7 ohm".
func limit(c run.Check) string {
	switch {
	case c.Kind == run.Silent:
		return "rings to nothing"
	case c.Limit <= 0:
		return "no limit known"
	case c.AtLeast():
		return "at least " + bound(c) + " " + c.Unit()
	}
	return "at most " + bound(c) + " " + c.Unit()
}

// read is what a test read, short: its number, "passed" without one, what was wrong, or a dash. More than
// one instrument in the column puts its name behind each.
func read(t record.Tested, mixed bool) string {
	says := ""
	switch {
	case t.Result == run.Untested:
		return "not tested"
	case t.Fault != "":
		says = t.Fault
	case t.Read.Set:
		says = figure(t.Read.V)
	default:
		says = "passed"
	}
	switch t.Result {
	case run.Failed:
		says = "FAILED " + says
	case run.Conceded:
		says = "conceded " + says
	}
	if t.Times > 1 && isNet(t) { // the note above the ring-out says what that means
		says += " again"
	}
	if mixed && t.On.ID != "" {
		says += " " + t.On.ID
	}
	return says
}

// instruments are those of some tests, each once, in the order they were used.
func instruments(tests []record.Tested) (out []record.Instrument) {
	for _, t := range tests {
		if t.Result == run.Untested {
			continue
		}
		k := slices.IndexFunc(out, func(i record.Instrument) bool { return i.ID == t.On.ID })
		if k < 0 {
			out = append(out, t.On)
		} else if t.On.Overdue {
			out[k].Overdue = true
		}
	}
	return out
}

// of are the tests of some holds.
func (c Set) of(is func(record.Tested) bool) (out []record.Tested) {
	for _, t := range c.Record.Tests {
		if is(t) {
			out = append(out, t)
		}
	}
	return out
}

func isNet(t record.Tested) bool { return t.Check.Kind == run.Rings || t.Check.Kind == run.Silent }

// testPages is every test: what it must read, what it read, on what.
func (c Set) testPages() []page.Block {
	if len(c.Record.Tests) == 0 {
		return []page.Block{page.SubHeading("Tests"), page.Text("The record has no tests: it was begun before they were written down.",
			page.Small)}
	}
	out := []page.Block{}
	out = append(out, c.others()...)
	out = append(out, c.instrumentTable()...)
	return append(out, c.rings()...)
}

// rings is the ring-out, each net once: bare, and with its contacts in.
func (c Set) rings() []page.Block {
	nets := c.of(isNet)
	if len(nets) == 0 {
		return nil
	}
	var holds []string // in the order of the run
	var names []string
	at, first := map[string]record.Tested{}, map[string]record.Tested{}
	for _, t := range nets {
		if !slices.Contains(holds, t.Hold) {
			holds = append(holds, t.Hold)
		}
		if !slices.Contains(names, t.What) {
			names, first[t.What] = append(names, t.What), t
		}
		at[t.Hold+"\n"+t.What] = t
	}
	one := oneLimit(nets)
	g := page.Grid{Plain: true, Cols: []page.Col{{Head: "from"}, {Head: "to"}}}
	if one == "" {
		g.Cols = append(g.Cols, page.Col{Head: "at most", Align: list.ToRight})
	}
	mixed := map[string]bool{}
	for _, h := range holds {
		g.Cols = append(g.Cols, page.Col{Head: short(h), Align: list.ToRight, Least: 8})
		mixed[h] = len(instruments(c.of(func(t record.Tested) bool { return isNet(t) && t.Hold == h }))) > 1
	}
	for _, name := range names {
		net := first[name].Check
		to := net.To
		if net.Kind == run.Silent {
			to = "nothing"
		}
		line := page.Line{Cells: []page.Cell{cavity.EndCell(net.From, true), cavity.EndCell(to, false)}}
		if one == "" {
			most := "-"
			if net.Limit > 0 {
				most = bound(net)
			}
			line.Cells = append(line.Cells, page.Cell{Text: most})
		}
		for _, h := range holds {
			t, is := at[h+"\n"+name]
			text := "-"
			if is {
				text = read(t, mixed[h])
			}
			line.Cells = append(line.Cells, page.Cell{Text: text, Bold: is && t.Result != run.Passed})
		}
		g.Lines = append(g.Lines, line)
	}
	g.Columns = side(g)
	note := "Each net once, in ohms: bare, and with its contacts in."
	if one != "" {
		note = "Each net once, in ohms: bare, and with its contacts in. Each at most " + one + "."
	}
	for _, s := range []struct {
		is   func(record.Tested) bool
		says string
	}{
		{func(t record.Tested) bool { return t.Result == run.Passed && !t.Read.Set && t.Fault == "" },
			" Passed: it rang, or was silent where it leads to nothing; no number was written down."},
		{func(t record.Tested) bool { return t.Times > 1 }, " Again: it was tested more than once, and the last test counts."},
	} {
		if slices.ContainsFunc(nets, s.is) {
			note += s.says
		}
	}
	return []page.Block{kept(page.SubHeading("Ring-out")), kept(page.Text(note, page.Small)), g.Block()}
}

// short is a ring-out in a word, for the head of a column.
func short(hold string) string {
	if hold == "ring out pinned" {
		return "in"
	}
	return strings.TrimPrefix(hold, "ring out ")
}

// oneLimit is the limit of all nets that ring, where all have the same; else "".
func oneLimit(nets []record.Tested) string {
	one := ""
	for _, t := range nets {
		switch {
		case t.Check.Kind == run.Silent:
		case t.Check.Limit <= 0 || one != "" && one != bound(t.Check):
			return ""
		default:
			one = bound(t.Check)
		}
	}
	return one
}

// others is isolation, loaded drop and pulled samples, a line each; the samples of a crimp on one.
func (c Set) others() []page.Block {
	all := c.of(func(t record.Tested) bool { return !isNet(t) })
	if len(all) == 0 {
		return nil
	}
	g := page.Grid{Plain: true, Cols: []page.Col{{Head: "test", Bold: true}, {Head: "must read"}, {Head: "read"}, {Head: "on"},
		{Head: "result"}}}
	for k := 0; k < len(all); {
		end := k + 1
		for end < len(all) && all[k].Check.Kind == run.Pulled && all[end].Check.Kind == run.Pulled && all[end].What == all[k].What {
			end++
		}
		same := all[k:end]
		var reads, on []string
		worst := same[0]
		for _, t := range same {
			says := strings.TrimPrefix(strings.TrimPrefix(read(t, false), "FAILED "), "conceded ")
			if t.Read.Set && t.Fault == "" {
				says += " " + t.Check.Unit()
			}
			if t.Times > 1 && t.Check.Kind != run.Pulled {
				says += fmt.Sprintf(" (the last of %d readings)", t.Times)
			}
			reads = append(reads, says)
			if t.Result < worst.Result {
				worst = t
			}
		}
		for _, i := range instruments(same) {
			on = append(on, list.Dash(i.ID))
		}
		shade := worst.Result != run.Passed
		g.Lines = append(g.Lines, page.Line{Shade: shade, Cells: []page.Cell{{Text: testName(worst.Check)}, {Text: limit(worst.Check)},
			{Text: strings.Join(reads, ", ")}, {Text: list.Dash(strings.Join(on, ", "))}, {Text: result(worst), Bold: shade}}})
		k = end
	}
	return []page.Block{kept(page.SubHeading("Isolation, drop under load, pulled samples")), g.Block()}
}

// testName is what is tested, in words.
func testName(c run.Check) string {
	switch c.Kind {
	case run.Drops:
		return "drop of feed " + c.Name
	case run.Pulled:
		return "pull " + c.Name
	}
	return c.Name
}

// instrumentTable is what was measured with, and until when it was calibrated.
func (c Set) instrumentTable() []page.Block {
	all := instruments(c.Record.Tests)
	if len(all) == 0 {
		return nil
	}
	g := page.Grid{Plain: true, Cols: []page.Col{{Head: "instrument", Bold: true}, {Head: "what"}, {Head: "its serial"},
		{Head: "calibrated until"},
		{Head: "used for"}}}
	for _, i := range all {
		var holds []string
		for _, t := range c.Record.Tests {
			if t.Result != run.Untested && t.On.ID == i.ID && !slices.Contains(holds, t.Hold) {
				holds = append(holds, t.Hold)
			}
		}
		what, due := list.Dash(i.What), list.Dash(i.Due)
		switch {
		case i.ID == "":
			what = "no instrument was written down"
		case !i.Known:
			what = "not in the shop's list"
		case i.Overdue:
			due += ", was over"
		case i.Due == "":
			due = "not known"
		}
		g.Lines = append(g.Lines, page.Cells(list.Dash(i.ID), what, list.Dash(i.Serial), due, strings.Join(holds, ", ")))
	}
	return []page.Block{g.Block()}
}

// tests is every test as a file, a value in each cell.
func (c Set) tests() list.Table {
	opt := func(is bool, says string) string {
		if !is {
			return ""
		}
		return says
	}
	return list.Of(list.Table{File: "tests", Title: "Tests"}, []list.Column[record.Tested]{
		list.Text("hold", func(t record.Tested) string { return t.Hold }),
		list.Text("test", func(t record.Tested) string { return t.What }),
		list.Figure("sample", func(t record.Tested) string { return opt(t.Check.Sample > 0, fmt.Sprint(t.Check.Sample)) }),
		list.Figure("at least", func(t record.Tested) string {
			return opt(t.Check.Limit > 0 && t.Check.AtLeast(), bound(t.Check))
		}),
		list.Figure("at most", func(t record.Tested) string {
			return opt(t.Check.Limit > 0 && !t.Check.AtLeast(), bound(t.Check))
		}),
		list.Figure("read", func(t record.Tested) string { return opt(t.Read.Set, figure(t.Read.V)) }),
		list.Text("unit", func(t record.Tested) string { return t.Check.Unit() }),
		list.Text("result", result),
		list.Text("fault", func(t record.Tested) string { return t.Fault }),
		list.Figure("times tested", func(t record.Tested) string { return fmt.Sprint(t.Times) }),
		list.Text("instrument", func(t record.Tested) string { return t.On.ID }),
		list.Text("instrument serial", func(t record.Tested) string { return t.On.Serial }),
		list.Text("calibrated until", func(t record.Tested) string { return t.On.Due }),
		list.Text("at", func(t record.Tested) string { return t.At }),
		list.Text("by", func(t record.Tested) string { return t.By }),
		list.Text("name", func(t record.Tested) string { return t.Name }),
	}, c.Record.Tests)
}
