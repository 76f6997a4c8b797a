package set

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"contralay/calc/query/lists"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
)

// Batch is wires that are cut alike: off one spool, to one length.
type Batch struct {
	Spec, Size, Colour string
	CutMM              unit.Millimetre
	Wires              []int
	TotalMM            unit.Millimetre // of this spool, up to and with this batch
}

// Batches is the cut list by spool, in the order in which the reels stand in it and then as each colour
// is first met; each spool longest first.
func Batches(m list.Maker) []Batch {
	var out []Batch
	spool := map[[3]string]int{}
	reel := map[[2]string]int{}
	for _, c := range lists.CutList(m.S) {
		if _, met := reel[[2]string{c.Spec, c.Size}]; !met {
			reel[[2]string{c.Spec, c.Size}] = len(reel)
		}
		for _, k := range c.Wires {
			key := [3]string{c.Spec, c.Size, m.H.Wires[k].Colour.V}
			if _, met := spool[key]; !met {
				spool[key] = len(spool)
			}
			at := slices.IndexFunc(out, func(b Batch) bool {
				return b.Spec == key[0] && b.Size == key[1] && b.Colour == key[2] &&
					b.CutMM == c.CutMM
			})
			if at < 0 {
				out = append(out, Batch{Spec: c.Spec, Size: c.Size, Colour: key[2], CutMM: c.CutMM})
				at = len(out) - 1
			}
			out[at].Wires = append(out[at].Wires, k)
		}
	}
	of := func(b Batch) [3]string { return [3]string{b.Spec, b.Size, b.Colour} }
	slices.SortStableFunc(out, func(a, b Batch) int {
		return cmp.Or(cmp.Compare(reel[[2]string{a.Spec, a.Size}], reel[[2]string{b.Spec, b.Size}]),
			cmp.Compare(spool[of(a)], spool[of(b)]), -cmp.Compare(a.CutMM, b.CutMM))
	})
	for k := range out {
		out[k].TotalMM = out[k].CutMM * unit.Millimetre(len(out[k].Wires))
		if k > 0 && of(out[k-1]) == of(out[k]) {
			out[k].TotalMM += out[k-1].TotalMM
		}
	}
	return out
}

// Cut is the cut list: each batch once, its length and colour beside the first of its wires, with what is
// written on the flags of each.
func Cut(m list.Maker) []page.Block {
	unitOf := map[string]string{}
	for k := range m.H.Units {
		for _, id := range m.H.Units[k].Wires {
			unitOf[id] = m.H.Units[k].ID
		}
	}
	g := page.Grid{Cols: []page.Col{{Head: "wire", Bold: true}, {Head: "cut", Align: list.ToRight, Bold: true}, {Head: "colour"},
		{Head: "flag 1", Ends: true}, {Head: "flag 2", Ends: true}, {Head: "off it", Align: list.ToRight},
		{Head: "", Wide: 6, Align: list.ByHand}}, Columns: 2}
	reel := ""
	for _, b := range Batches(m) {
		if now := b.Spec + " " + list.Size(&model.Wire{Size: b.Size}); now != reel {
			reel = now
			g.Lines = append(g.Lines, page.Line{Title: reel, KeepNext: true})
		}
		cut := m.Sys.AtLeast(b.CutMM)
		if n := len(b.Wires); n > 1 {
			cut = fmt.Sprintf("%d\u00a0×\u00a0%s", n, cut)
		}
		for n, k := range b.Wires {
			w := &m.H.Wires[k]
			line := page.Cells(strings.TrimSuffix(w.ID+"\u00a0"+unitOf[w.ID], "\u00a0"), "", "", flag(m, w, true), flag(m, w, false),
				"", "")
			if n == 0 {
				line.Cells[1].Text, line.Cells[2].Text, line.Cells[5].Text = cut, colour(b.Colour), m.Sys.AtLeast(b.TotalMM)
			}
			line.KeepNext = n+1 < len(b.Wires)
			g.Lines = append(g.Lines, line)
		}
	}
	head := page.Section(CutName)
	note := page.Text("Lengths in "+m.Sys.Name()+". Spool by spool, longest first; \"off it\" is what has come off that spool so "+
		"far. What "+
		"is cut alike stands together. Write the wire's number and the words of its column on each flag; it stays until the contact "+
		"is in. "+
		"Behind a number stands the unit that the wire is made up into; a flag without a cavity goes to that splice. "+
		"Small letters are underlined.", page.Small)
	note.KeepNext = true
	return []page.Block{head, note, g.Block()}
}

// flag is what the flag at an end of a wire says beside its number.
func flag(m list.Maker, w *model.Wire, from bool) string {
	return strings.TrimPrefix(m.End(w, from), "splice ")
}

// colour is a colour in words, without its code, which is on the spool.
func colour(code string) string {
	if says := model.ColourWords(code); says != "" {
		return says
	}
	return code
}
