package meter

import (
	"fmt"
	"strings"

	"contralay/calc/query/lists"
	"contralay/model/unit"
	"contralay/ui/paper/cavity"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
)

// Insulation: which nets are kept apart.

// apart is one net that is tested against all else.
type apart struct {
	group lists.Group
	net   string
}

// against is what is joined together on the other side.
func against(g lists.Group) string {
	if g == lists.GroupShield {
		return "every net"
	}
	return "all other nets, shields and shells"
}

// IsolationTable is the test of insulation as a file: a row for each net, and what is read left blank.
func IsolationTable(m list.Maker) list.Table {
	var rows []apart
	for _, g := range lists.Isolations(m.S) {
		for _, n := range g.Nets {
			rows = append(rows, apart{g.Group, n})
		}
	}
	x := lists.Isolation
	return list.Of(list.Table{File: "isolation", Title: "Isolation"}, []list.Column[apart]{
		list.Text("group", func(a apart) string { return string(a.group) }),
		list.Text("net", func(a apart) string { return a.net }),
		list.Text("against", func(a apart) string { return against(a.group) }),
		list.Figure("volts DC", func(apart) string { return unit.Fixed(x.Volts, 0) }),
		list.Figure("at least, megohm", func(apart) string { return unit.Fixed(x.Megohm, 0) }),
		list.Blank[apart]("reading, megohm"),
		list.Blank[apart]("by"),
	}, rows)
}

// Isolation is the test of insulation as blocks, a row for each group.
func Isolation(m list.Maker) []page.Block {
	groups := lists.Isolations(m.S)
	if len(groups) == 0 {
		return nil
	}
	x := lists.Isolation
	volts := unit.Fixed(x.Volts, 0)
	says := fmt.Sprintf("Take every device, sensor and load off the harness first: %s V can destroy them. Nobody touches an end while the "+
		"volts are on; discharge the harness before you do. Each net of a row by itself against all other nets, shields and shells "+
		"joined together, %s min at most, until the reading is steady; write the least. %s V DC: common practice, no source; never "+
		"more volts than the part rated lowest stands. %s megohm, and %s to %s V: %s.", volts, unit.Fixed(x.Minutes, 0), volts,
		unit.Fixed(x.Megohm, 0), unit.Fixed(x.Least, 0), unit.Fixed(x.Top, 0), x.Source)
	const netsWide unit.Millimetre = 84
	g := page.Grid{Cols: []page.Col{{Head: "group", Bold: true}, {Head: "nets, by the first end of each", Wide: netsWide},
		{Head: "V DC", Align: list.ToRight}, {Head: "least Mohm", Align: list.ToRight}, {Head: "reading", Align: list.ByHand},
		{Head: "at net", Align: list.ByHand}, {Head: "by", Align: list.ByHand}}}
	for _, a := range groups {
		text, lines := cavity.Lines(netWords(a), page.Small, netsWide-4)
		g.Lines = append(g.Lines, page.Line{Cells: []page.Cell{{Text: string(a.Group)},
			{Picture: text, Wide: netsWide - 4, High: unit.Millimetre(lines) * page.Small.Line()}, {Text: volts},
			{Text: unit.Fixed(x.Megohm, 0)}, {}, {}, {}}})
	}
	head := page.SubHeading("Isolation")
	head.Mark = IsolationMark
	return []page.Block{head, kept(page.Text(says, page.Small)), g.Block()}
}

// netWords is the nets of a group in few words, end by end: "12: P1 A, B, K; PWR1 1 to 4".
func netWords(a lists.Apart) []cavity.Word {
	var order []string
	cavities := map[string][]string{}
	for _, n := range a.Nets {
		end, name, is := strings.Cut(n, ":")
		if !is {
			end, name = "shield of", strings.TrimPrefix(n, "shield of ")
		}
		if cavities[end] == nil {
			order = append(order, end)
		}
		cavities[end] = append(cavities[end], name)
	}
	out := cavity.Words(fmt.Sprint(len(a.Nets), ":"))
	for k, end := range order {
		last := ";"
		if k == len(order)-1 {
			last = ""
		}
		out = append(append(out, cavity.Words(end)...), cavity.Runs(cavities[end], last)...)
	}
	return out
}
