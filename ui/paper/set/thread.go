package set

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/phase/threading"
	"contralay/calc/query/lists"
	"contralay/calc/sheet"
	"contralay/model/unit"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
)

// What the table of what is threaded on leaves for its ends, and what an end takes of it, mm.
const (
	endsWide  unit.Millimetre = 106
	endLeast  unit.Millimetre = 4.4
	endMost   unit.Millimetre = 6
	partsWide                 = page.Wide - endsWide
)

// Threading is what goes over the tails before the contacts, in its order, with a mark at each end that
// it goes on from; the labels with their texts; and the adhesive.
func Threading(m list.Maker) []page.Block {
	all := threading.Threading(m.S)
	var ends []string
	on := map[string][]string{} // by key of a part: the ends whose tails it goes over
	for k := range m.H.Terminations {
		id := m.H.Terminations[k].ID
		tail := threading.TailOf(m.S, id)
		if len(tail) == 0 {
			continue
		}
		ends = append(ends, id)
		for n, key := range threading.Keys(tail) {
			if tail[n].What != sheet.PartContacts {
				on[key] = append(on[key], id)
			}
		}
	}
	note := page.Text("Down each column in this order, before the contacts of that end. Legs that do not meet may go in any order.",
		page.Small)
	note.KeepNext = true
	out := []page.Block{page.Section(ThreadName), note}
	const most = 24 // endsWide / endLeast
	for len(ends) > 0 {
		n := len(ends)
		if n > most {
			n = (n + (n+most-1)/most - 1) / ((n + most - 1) / most) // as many in each table
		}
		out = append(out, matrix(m, all, on, ends[:n]).Block())
		ends = ends[n:]
	}
	out = append(out, labels(m)...)
	return append(out, glue(m)...)
}

// matrix is parts in their order over the ends that they go on from. The labels, each of which goes on at its own
// end, are one row.
func matrix(m list.Maker, all []threading.Threaded, on map[string][]string, ends []string) page.Grid {
	g := page.Grid{Cols: []page.Col{{Head: "part", Bold: true, Wide: 24}, {Head: "", Wide: partsWide - 24 - 27},
		{Head: m.In("bore"), Align: list.ToRight, Wide: 13}, {Head: m.In("to pass"), Align: list.ToRight, Wide: 14}}}
	wide := min(endMost, endsWide/unit.Millimetre(len(ends)))
	for _, id := range ends {
		g.Cols = append(g.Cols, page.Col{Head: id, Wide: wide, Upright: true})
	}
	put := func(line page.Line, at []string) {
		is := false
		for _, id := range ends {
			mark := ""
			if slices.Contains(at, id) {
				mark, is = "X", true
			}
			line.Cells = append(line.Cells, page.Cell{Text: mark, Bold: true})
		}
		if is {
			g.Lines = append(g.Lines, line)
		}
	}
	keys, labelled := threading.Keys(all), false
	for k, x := range all {
		switch {
		case x.What == sheet.PartContacts:
		case x.What != sheet.PartLabel:
			put(page.Cells(string(x.What)+" "+x.Of, x.Part, bore(m, x), pass(m, x)), on[keys[k]])
		case !labelled:
			labelled = true
			var at []string
			for n := range all {
				if all[n].What == sheet.PartLabel {
					at = append(at, on[keys[n]]...)
				}
			}
			put(page.Cells("label", "its own, see below", "", ""), at)
		}
	}
	return g
}

func bore(m list.Maker, x threading.Threaded) string {
	if x.BoreMM <= 0 {
		return "-"
	}
	return m.Sys.Fine(x.BoreMM) + list.Mem(x.Standing)
}

func pass(m list.Maker, x threading.Threaded) string {
	if x.BoreMM <= 0 {
		return "-"
	}
	return m.Sys.Fine(x.PassMM)
}

// labels is the marker sleeve of each end with its text; words that all of them end with are said once.
func labels(m list.Maker) []page.Block {
	all := lists.Labels(m.S)
	if len(all) == 0 {
		return nil
	}
	also := all[0].Text[len(all[0].Text)-1]
	for _, l := range all {
		if len(l.Text) < 2 || l.Text[len(l.Text)-1] != also {
			also = ""
		}
	}
	g := page.Grid{Cols: []page.Col{{Head: "label reads"}, {Head: "sleeve"}, {Head: m.In("bore"), Align: list.ToRight},
		{Head: m.In("goes on"), Align: list.ToRight}, {Head: "side"}}, Columns: 2}
	for _, l := range all {
		side := "-"
		if l.OnHours > 0 {
			side = fmt.Sprintf("%d o'clock", l.OnHours)
		}
		text := l.Text
		if also != "" {
			text = text[:len(text)-1]
		}
		g.Lines = append(g.Lines, page.Cells(strings.Join(text, "  "), strings.TrimPrefix(l.Sleeve, "marker sleeve "), labelBore(m, l.Of),
			m.Sys.Diameter(l.OverMM), side))
	}
	says := m.Sys.Says("25 to 50 mm off the boot's tail, read from the connector, on the clocked side. Thread each on before the boot.")
	if also != "" {
		says = "Each reads as below, and " + also + ". " + says
	}
	note := page.Text(says, page.Small)
	note.KeepNext = true
	return []page.Block{page.SubHeading("Labels, on marker sleeves"), note, g.Block()}
}

// labelBore is the bore of the label of an end as it is supplied.
func labelBore(m list.Maker, end string) string {
	for _, x := range threading.Threading(m.S) {
		if x.What == sheet.PartLabel && x.Of == end {
			return bore(m, x)
		}
	}
	return "-"
}

func glue(m list.Maker) []page.Block {
	mixes := threading.Mixes(m.S)
	if len(mixes) == 0 {
		return nil
	}
	l := &m.S.Limits
	life := "its sheet says how long it can be used, and how it cures"
	if l.PotLifeMin > 0 {
		life = fmt.Sprintf("used within %d minutes of mixing; its sheet says how it cures", l.PotLifeMin)
	}
	note := page.Text("Not before it is rung out with contacts in. Abrade, wipe, recover, let cure; "+life+".", page.Small)
	note.KeepNext = true
	g := page.Grid{Cols: []page.Col{{Head: "mix", Align: list.ToRight, Wide: 9}, {Head: "joints"}, {Head: "mixed at", Wide: 22,
		Align: list.ByHand}, {Head: "done by", Wide: 22, Align: list.ByHand}}}
	for k, x := range mixes {
		g.Lines = append(g.Lines, page.Cells(fmt.Sprint(k+1), strings.Join(x.Joints, "; "), "", ""))
	}
	return []page.Block{page.SubHeading("Adhesive: " + l.Adhesive), note, g.Block()}
}
