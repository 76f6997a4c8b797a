package column

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/strands"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// AreSizes reports whether every cell of a column is a size of wire with its unit, and none has cores: below a heading for cables
// four rows of "25 mm²" are four wires and no cable of four.
func AreSizes(rows []table.Row, i int, mark value.Mark) bool {
	n := 0
	for _, r := range rows {
		if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) || shape.IsText(r) || value.IsDitto(r.Cells[i]) {
			continue
		}
		if strands.Inches(r.Cells[i]) {
			n++ // a size that is told, and not read
			continue
		}
		g, ok := value.ParseGauge(r.Cells[i], value.BareAWG, mark)
		_, made := strands.Cut(r.Cells[i])
		if !ok || g.Size == "" || g.IsCable() || made == "" && strings.Trim(r.Cells[i], "0123456789.,/ ") == "" {
			return false
		}
		n++
	}
	return n > 0
}

// OnlyWithout reports whether the cell of a row in a column of a field is empty where nearly all others have something in them.
func OnlyWithout(b *shape.Block, f name.Field, cells []string) bool {
	i := slices.IndexFunc(b.Cols, func(c shape.Column) bool { return c.Field == f })
	if i < 0 || i < len(cells) && !value.IsNothing(cells[i]) {
		return false
	}
	n, with := 0, 0
	for _, r := range b.Rows {
		if shape.IsText(r) {
			continue
		}
		if n++; i < len(r.Cells) && !value.IsNothing(r.Cells[i]) {
			with++
		}
	}
	return with > 2 && 10*with >= 8*(n-1)
}
