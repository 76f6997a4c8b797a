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

// Cut is the cut list: each batch once, with what is written on the flags of its wires.
func Cut(m list.Maker) []page.Block {
	unitOf := map[string]string{}
	for k := range m.H.Units {
		for _, id := range m.H.Units[k].Wires {
			unitOf[id] = m.H.Units[k].ID
		}
	}
	g := page.Grid{Cols: []page.Col{{Head: "wire", Bold: true}, {Head: m.In("cut"), Align: list.ToRight, Bold: true}, {Head: "colour"},
		{Head: "flag 1"}, {Head: "flag 2"}, {Head: m.In("off it"), Align: list.ToRight}, {Head: "cut", Wide: 8, Align: list.ByHand}},
		Columns: 2}
	reel := ""
	for _, b := range Batches(m) {
		if now := b.Spec + " " + list.Size(&model.Wire{Size: b.Size}); now != reel {
			reel = now
			g.Lines = append(g.Lines, page.Line{Title: reel, KeepNext: true})
		}
		var ids, from, to []string
		for _, k := range b.Wires {
			w := &m.H.Wires[k]
			id := w.ID
			if u := unitOf[w.ID]; u != "" {
				id += " (" + u + ")"
			}
			ids, from, to = append(ids, id), append(from, m.End(w, true)), append(to, m.End(w, false))
		}
		cut := m.Sys.AtLeast(b.CutMM)
		if len(b.Wires) > 1 {
			cut = fmt.Sprintf("%d x %s", len(b.Wires), cut)
		}
		g.Lines = append(g.Lines, page.Cells(strings.Join(ids, "\n"), cut, list.Colour(b.Colour), strings.Join(from, "\n"),
			strings.Join(to, "\n"), m.Sys.AtLeast(b.TotalMM), ""))
	}
	head := page.Section(CutName)
	note := page.Text("Spool by spool, longest first; \"off it\" is what has come off that spool so far. Write the wire's number and "+
		"the words of its column on each flag as it is cut; the flag stays until its contact is in. A unit's name stands behind "+
		"its wires.", page.Small)
	note.KeepNext = true
	return []page.Block{head, note, g.Block()}
}
