package paper

import (
	"contralay/ui/paper/connector"
	"contralay/ui/paper/list"
)

// pinList is every connector in one list, for a spreadsheet.
func (m maker) pinList() list.Table { return connector.PinTable(m.Maker) }
