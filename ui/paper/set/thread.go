package set

import (
	"fmt"
	"strings"

	"contralay/calc/phase/threading"
	"contralay/calc/query/lists"
	"contralay/ui/paper/laycard"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
)

// Threading is what goes over the tails before the contacts, in its order; the labels and boots, which
// each go on at their own end, with their texts; and the adhesive.
func Threading(m list.Maker) []page.Block {
	out := append([]page.Block{page.Section(ThreadName)}, laycard.Matrix(m)...)
	out = append(out, labels(m)...)
	return append(out, glue(m)...)
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
	g := page.Grid{Cols: []page.Col{{Head: "label reads"}}, Columns: 4, Bare: true}
	for _, l := range all {
		text := l.Text
		if also != "" {
			text = text[:len(text)-1]
		}
		says := strings.Join(text, "  ")
		if l.OnHours > 0 {
			says += fmt.Sprintf(", at %d o'clock", l.OnHours)
		}
		g.Lines = append(g.Lines, page.Cells(says))
	}
	says := m.Sys.Says("25 to 50 mm off the boot's tail, read from the connector, on the clocked side. Thread each on before the " +
		"boot; its " +
		"size stands above.")
	if also != "" {
		says = "Each reads as below, and " + also + ". " + says
	}
	note := page.Text(says, page.Small)
	note.KeepNext = true
	out := []page.Block{page.SubHeading("Labels, on marker sleeves"), note, g.Block()}
	if whole := page.Stack(out...); whole.High <= page.BodyHigh/2 { // a label alone on the next page is overlooked
		return []page.Block{whole}
	}
	return out
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
