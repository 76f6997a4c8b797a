package meter

import (
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
)

// What it is tested with, and who says that it passed.

// Sign is the instruments and the three signatures as blocks.
func Sign() []page.Block {
	hand := func(first string, heads ...string) page.Grid {
		g := page.Grid{Cols: []page.Col{{Head: first, Bold: true}}}
		for _, h := range heads {
			g.Cols = append(g.Cols, page.Col{Head: h, Align: list.ByHand})
		}
		return g
	}
	rows := func(g page.Grid, names ...string) page.Block {
		for _, n := range names {
			line := page.Cells(n)
			line.High = 4.8
			for len(line.Cells) < len(g.Cols) {
				line.Cells = append(line.Cells, page.Cell{})
			}
			g.Lines = append(g.Lines, line)
		}
		return g.Block()
	}
	const gutter = 4
	with := hand("instrument", "number", "calibrated until")
	with.Wide = (page.Wide - gutter) / 2
	who := hand("", "name", "signature", "day")
	who.Wide = page.Wide - gutter - with.Wide
	return []page.Block{page.SubHeading("Instruments and names: three different people sign"), page.Beside(gutter,
		page.Column{Wide: with.Wide, Blocks: []page.Block{
			rows(with, "hand meter", "four-wire meter", "insulation tester", "pull tester")}},
		page.Column{Wide: who.Wide, Blocks: []page.Block{rows(who, "built", "checked", "released")}})}
}
