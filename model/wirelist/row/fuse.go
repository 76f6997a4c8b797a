package row

import (
	"strings"

	"contralay/model"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/value"
)

// fuseCell reads the cell of a fuse column: "7.5", "7.5 A", "F3", "F3 10A", "F3 (10 A)".
func fuseCell(im *draft.Importer, b *shape.Block, cell string, it *draft.Item) {
	_, rest := value.CutFuseWord(cell)
	if a, ok := value.ParseCurrent(rest, false, b.Mark); ok {
		it.Fuse = model.Some(a)
		return
	}
	parts := strings.FieldsFunc(rest, func(r rune) bool { return r == ' ' || r == '(' || r == ')' || r == '/' || r == ':' })
	switch {
	case len(parts) == 0:
	case len(parts) == 1:
		it.FuseName = parts[0]
		return
	default:
		if a, ok := value.ParseCurrent(strings.Join(parts[1:], " "), false, b.Mark); ok {
			it.Fuse, it.FuseName = model.Some(a), parts[0]
			return
		}
	}
	it.Notes = append(it.Notes, "fuse: "+cell)
	im.Say(report.Note, "no fuse", it.Place, cell, "kept in the note")
}
