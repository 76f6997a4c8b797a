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

// mostEnds is how many ends stand beside each other in a table of what is threaded on.
const mostEnds = 22

// endWide is the width of the column of an end, mm.
const endWide unit.Millimetre = 5

// Threading is what goes over the tails before the contacts, in its order, with a mark at each end that
// it goes on from; the labels with their texts; and the adhesive.
func Threading(m list.Maker) []page.Block {
	all := threading.Threading(m.S)
	var ends []string
	on := map[string][]string{} // by key of a part: the ends whose tails it goes over
	keys := threading.Keys(all)
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
	head := page.Section(ThreadName)
	note := page.Text("Down each column in this order, before the contacts of that end. Legs that do not meet may go in any order.",
		page.Small)
	note.KeepNext = true
	out := []page.Block{head, note}
	for n := 0; n < len(ends); n += mostEnds {
		out = append(out, matrix(m, all, keys, on, ends[n:min(n+mostEnds, len(ends))]).Block())
	}
	out = append(out, labels(m)...)
	return append(out, glue(m)...)
}

// matrix is parts in their order over the ends that they go on from.
func matrix(m list.Maker, all []threading.Threaded, keys []string, on map[string][]string, ends []string) page.Grid {
	g := page.Grid{Cols: []page.Col{{Head: "part", Bold: true}, {Head: ""}, {Head: m.In("bore"), Align: list.ToRight, Wide: 13},
		{Head: m.In("to pass"), Align: list.ToRight, Wide: 14}}}
	for _, id := range ends {
		g.Cols = append(g.Cols, page.Col{Head: id, Wide: endWide, Upright: true})
	}
	for k, x := range all {
		if x.What == sheet.PartContacts || !slices.ContainsFunc(on[keys[k]], func(id string) bool { return slices.Contains(ends, id) }) {
			continue
		}
		line := page.Cells(string(x.What)+" "+x.Of, x.Part, bore(m, x), pass(m, x))
		for _, id := range ends {
			mark := ""
			if slices.Contains(on[keys[k]], id) {
				mark = "X"
			}
			line.Cells = append(line.Cells, page.Cell{Text: mark, Bold: true})
		}
		g.Lines = append(g.Lines, line)
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

func labels(m list.Maker) []page.Block {
	all := lists.Labels(m.S)
	if len(all) == 0 {
		return nil
	}
	g := page.Grid{Cols: []page.Col{{Head: "end", Bold: true}, {Head: "label reads"}, {Head: "sleeve"}, {Head: "side"}}, Columns: 2}
	for _, l := range all {
		side := "-"
		if l.OnHours > 0 {
			side = fmt.Sprintf("%d o'clock", l.OnHours)
		}
		g.Lines = append(g.Lines, page.Cells(l.Of, strings.Join(l.Text, "  "), l.Sleeve, side))
	}
	note := page.Text(m.Sys.Says("25 to 50 mm off the boot's tail, read from the connector, on the clocked side. Threaded on before the boot."),
		page.Small)
	note.KeepNext = true
	return []page.Block{page.SubHeading("Labels"), note, g.Block()}
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
