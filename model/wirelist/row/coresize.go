package row

import (
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/value"
)

// takeCoreSize gives a row the size that the kind of its cable says of its cores; the text stays where it is kept.
func takeCoreSize(b *shape.Block, cells []string, it *draft.Item) {
	if it.Gauge.Size != "" {
		return
	}
	for i, c := range b.Cols {
		if c.CoreSize && i < len(cells) {
			it.Gauge.Size = value.CoreSize(cells[i], b.Mark)
			return
		}
	}
}
