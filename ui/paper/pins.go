package paper

import (
	"strings"

	"contralay/ui/paper/connector"
	"contralay/ui/paper/list"
)

// pinList is every connector in one list, for a spreadsheet.
func (m maker) pinList() list.Table { return connector.PinTable(m.Maker) }

// pins is a connector, cavity by cavity.
func (m maker) pins(k int) list.Table {
	e, t := &m.H.Terminations[k], m.pinList()
	t.File, t.Title = "", strings.TrimSpace("Pins of "+e.ID+"  "+e.Name.V)
	var rows [][]string
	for _, r := range t.Rows {
		if r[0] == e.ID {
			rows = append(rows, r)
		}
	}
	t.Rows = rows
	return t
}
