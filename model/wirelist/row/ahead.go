package row

import (
	"slices"

	"contralay/model/wirelist/abreast"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Most of what is read of a row asks nothing of other rows. Rows are begun some way ahead, several at once, as the list has them; where
// something is filled in or left out of one before its turn comes it is begun again.

// most is how many rows are begun ahead (no source): each takes a kilobyte.
const most = 1024

// ahead are rows that are begun before their turn.
type ahead struct {
	from, to int         // by their index in the block
	group    value.Gauge // what the heading above them says
	rows     []started
}

// started is a row that is begun.
type started struct {
	it    draft.Item
	cells []string
	said  []report.Finding // of it, by who began it
}

// begun is the item of a row and its cells, ahead of its turn or now.
func (a *ahead) begun(im *draft.Importer, b *shape.Block, i int, cells, notes []string, place table.Place) (*draft.Item, []string) {
	if i >= a.to {
		a.start(im, b, i, place)
	}
	s := &a.rows[i-a.from]
	if own := b.Rows[i].Cells; len(notes) > 0 || len(own) == 0 || &cells[0] != &own[0] || !a.group.Equal(b.Group) {
		s.said, s.cells = nil, begin(im, b, cells, notes, place, &s.it)
	}
	im.Rep.Findings = append(im.Rep.Findings, s.said...)
	return &s.it, s.cells
}

// start begins the rows from one on, up to the next text between them.
func (a *ahead) start(im *draft.Importer, b *shape.Block, i int, place table.Place) {
	a.from, a.to, a.group = i, i+1, b.Group
	for a.to < len(b.Rows) && a.to-a.from < most && !shape.IsText(b.Rows[a.to]) {
		a.to++
	}
	a.rows = slices.Grow(a.rows[:0], a.to-a.from)[:a.to-a.from]
	abreast.Rows(a.to-a.from, func(from, to int) {
		own := *im
		for k := from; k < to; k++ {
			own.Rep.Findings = nil
			r, at := b.Rows[a.from+k], place
			at.Row = r.Line
			s := &a.rows[k]
			s.cells = begin(&own, b, r.Cells, nil, at, &s.it)
			s.said = own.Rep.Findings
		}
	})
}
