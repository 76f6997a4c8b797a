package customer

import (
	"html/template"
	"strings"

	"contralay/calc/query/record"
	"contralay/ui/paper/board"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
	"contralay/ui/paper/svg"
)

// The sections of the set, as the heads of its pages name them.
const (
	CertificateName = "Certificate of conformity"
	NotCompleteName = "NOT COMPLETE"
	DrawingName     = "Drawing and pinout"
	CardName        = "Spares, loops and repair"
	BuiltName       = "As built"
	MassName        = "Mass by branch"
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

// drawing is the harness to scale, with the faces of its connectors and what is in their cavities.
func (c Set) drawing() []page.Block {
	out := []page.Block{page.Section(DrawingName)}
	if c.Record == nil {
		out = append(out, kept(page.Text("These pages hold for every serial. No serial was named, so there is no certificate and no record "+
			"with them.", page.Small)))
	}
	if drawn, notes := board.Page(c.S, page.Wide, drawHigh, c.Sys); drawn != nil {
		var b strings.Builder
		svg.Write(&b, drawn, "drawing")
		out = append(out, page.Picture(template.HTML(b.String()), drawn.Box.High.Y-drawn.Box.Low.Y)) // #nosec: the writer escapes
		for _, n := range notes {
			out = append(out, page.Text(c.Sys.Says(n.Says)+".", page.Small))
		}
	}
	return append(out, c.pins()...)
}
