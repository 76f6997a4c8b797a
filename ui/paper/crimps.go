package paper

import (
	"contralay/ui/paper/connector"
	"contralay/ui/paper/list"
)

// crimps is how every contact is crimped, and the samples that are pulled first.
func (m maker) crimps() list.Table { return connector.CrimpTable(m.Maker) }
