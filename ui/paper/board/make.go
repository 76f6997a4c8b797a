package board

import (
	"errors"
	"slices"
	"strings"

	"contralay/calc/query/drawing"
	"contralay/calc/sheet"
	"contralay/model/unit"
	"contralay/model/visible"
	"contralay/ui/paper/dxf"
	"contralay/ui/paper/font"
	"contralay/ui/paper/origin"
	"contralay/ui/paper/pdf"
	"contralay/ui/paper/plot"
	"contralay/ui/paper/svg"
	"contralay/ui/paper/tile"
)

// Drawn is a harness at full size in all its forms.
type Drawn struct {
	PDF, SVG, DXF []byte
	Pages         int
	Identity      string
	Notes         []string // what has to be known about it, a sentence each
}

// Make draws a harness at full size on a paper.
func Make(s *sheet.Sheet, p tile.Paper, m Meta) (Drawn, error) {
	if len(s.H.Branches) == 0 {
		return Drawn{}, errors.New("it has no branch yet, so there is nothing to draw. Add one on the map of branches")
	}
	if sys, err := unit.ParseSystem(s.H.Head.Units.V); err == nil {
		m.Sys = sys
	}
	d := drawing.Of(s)
	if d.Large {
		k := slices.IndexFunc(d.Notes, func(n drawing.Note) bool { return n.Where == "drawing" })
		return Drawn{}, errors.New(visible.Line(m.Sys.Says(d.Notes[k].Says)))
	}
	world := Draw(s, &d, FullSize(m.Sys))
	d.Notes = append(d.Notes, unlettered(world)...)
	out := Drawn{Identity: origin.Of(s).Identity([]byte("drawing " + m.On + " " + m.File))}
	m.Identity = out.Identity
	pages := Pages(s, &d, world, p, m)
	out.Pages = len(pages)
	whole := beside(s, &d, world, m)
	out.SVG, out.DXF = svg.Bytes(whole), dxf.Bytes(whole)
	for _, n := range d.Notes {
		out.Notes = append(out.Notes, visible.Line(m.Sys.Says(n.Says))+".")
	}
	var err error
	out.PDF, err = pdf.Bytes(title(s), pages)
	return out, err
}

// unlettered says which signs the face lacks.
func unlettered(world *plot.Sheet) []drawing.Note {
	var lacks []string
	for k := range world.Shapes {
		for _, r := range font.Of(world.Shapes[k].Bold).Lacks(world.Shapes[k].Text) {
			if !slices.Contains(lacks, string(r)) {
				lacks = append(lacks, string(r))
			}
		}
	}
	if len(lacks) == 0 {
		return nil
	}
	return []drawing.Note{{Where: "drawing", Says: "The PDF has no letters for " + strings.Join(lacks, " ") +
		": it shows boxes there. The SVG has them where the reader has. Use Latin, Greek or Cyrillic names for the PDF"}}
}
