package customer

import (
	"html/template"
	"strings"

	"contralay/calc/query/drawing"
	"contralay/calc/query/record"
	"contralay/ui/paper/board"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
	"contralay/ui/paper/plot"
	"contralay/ui/paper/svg"
)

// The sections of the set, as the heads of its pages name them.
const (
	CertificateName = "Certificate of conformity"
	NotCompleteName = "NOT COMPLETE"
	DrawingName     = "Drawing and pinout"
	CardName        = "Spares, loops and repair"
	BuiltName       = "As built"
	MassName        = "Branches, length and mass"
)

// Set is what is handed over. Without a record it is what holds for every serial.
type Set struct {
	list.Maker
	Spares list.Table     // where the end of each spare lies
	Record *record.Record // of the serial; nil: none was asked for
	On     string         // the day it is printed
}

// Blocks are the pages.
func (c Set) Blocks() []page.Block {
	var out []page.Block
	add := func(fresh bool, blocks []page.Block) {
		if len(blocks) > 0 && len(out) > 0 {
			blocks[0].NewPage = blocks[0].NewPage || fresh
		}
		out = append(out, blocks...)
	}
	if c.Record != nil {
		add(true, c.certificate())
	}
	add(true, c.drawing())
	add(false, c.mass())
	add(false, c.card())
	if c.Record != nil {
		add(false, c.built())
	}
	return out
}

// Lists are the lists of the set, as files.
func (c Set) Lists() []list.Table {
	out := []list.Table{c.pinout(), c.Spares, c.repair(), c.masses()}
	if c.Record != nil {
		out = append(out, c.tests(), c.asBuilt())
	}
	return out
}

// kept is a block that is never the last of its page.
func kept(b page.Block) page.Block {
	b.KeepNext = true
	return b
}

// drawHigh is how high the drawing is at most, mm: the faces of the connectors stand below it.
const drawHigh = 110

// smallHigh is the same of a drawing without words, mm.
const smallHigh = 92

// drawing is the harness to scale, with the faces of its connectors and what is in their cavities.
func (c Set) drawing() []page.Block {
	out := []page.Block{page.Section(DrawingName)}
	if c.Record == nil {
		out = append(out, kept(page.Text("These pages hold for every serial. No serial was named, so there is no certificate and no "+
			"record with them.", page.Small)))
	}
	out = append(out, c.drawn()...)
	return append(out, c.pins()...)
}

// drawn is the harness to scale, with all words beside it where they have room; else with its ends named, and
// the lengths stand in the table of branches.
func (c Set) drawn() []page.Block {
	picture := func(p *plot.Sheet) page.Block {
		var b strings.Builder
		svg.Write(&b, p, "drawing")
		return page.Picture(template.HTML(b.String()), p.Box.High.Y-p.Box.Low.Y) // #nosec: the writer escapes
	}
	if c.crowded() {
		if p := board.Small(c.S, page.Wide, smallHigh); p != nil {
			return []page.Block{picture(p), page.Text("True proportions, each end by its name. The table of branches has their lengths. "+
				"The full-size drawing is a file of its own.", page.Small)}
		}
		return nil
	}
	p, notes := board.Page(c.S, page.Wide, drawHigh, c.Sys)
	if p == nil {
		return nil
	}
	out := []page.Block{picture(p)}
	for _, n := range notes {
		out = append(out, page.Text(c.Sys.Says(n.Says)+".", page.Small))
	}
	return out
}

// crowded reports whether the words beside a drawing take so much room that it would be less than half as large
// as the page allows it.
func (c Set) crowded() bool {
	d := drawing.Of(c.S)
	if len(d.Branches) == 0 {
		return false
	}
	o := board.Scaled(&d, page.Wide, drawHigh, c.Sys)
	o.Scale /= 2
	size := board.Draw(c.S, &d, o).Box
	return size.High.X-size.Low.X > page.Wide || size.High.Y-size.Low.Y > drawHigh
}
