// Package madeover hands the rows of a block to the packages that write them anew, each for one habit, in the order in which they ask.
package madeover

import (
	"contralay/model/wirelist/cableheads"
	"contralay/model/wirelist/cablelines"
	"contralay/model/wirelist/copies"
	"contralay/model/wirelist/corecells"
	"contralay/model/wirelist/countrow"
	"contralay/model/wirelist/iolist"
	"contralay/model/wirelist/labelids"
	"contralay/model/wirelist/pinhues"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/titled"
	"contralay/model/wirelist/titlepin"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/worksteps"
)

// Rows are the headings and the rows of a block as they are read; titles are the texts above them.
func Rows(h shape.Headings, titles []table.Row, head table.Row, rows []table.Row, mark value.Mark) (table.Row, []table.Row) {
	rows = countrow.Joined(rows)
	if h.HeadLine() == 0 && !h.Numbered() && h.Recipe == nil {
		head = titlepin.Headed(h, titles, head)
		head, rows = iolist.Headed(h, head, rows)
		head, rows = labelids.Headed(h, head, rows)
		head, rows = copies.Spread(h, head, rows)
	}
	head, rows = titled.CableBetween(titles, head, rows)
	head, rows = cableheads.Spread(h, titles, head, rows, mark)
	head, rows, _ = cablelines.Spread(h, head, rows, mark)
	head, rows, _ = corecells.Spread(h, head, rows)
	head, rows = pinhues.Spread(h, head, rows)
	rows, _ = cablelines.FillDown(h, head, rows)
	return worksteps.Part(h, head, rows)
}
