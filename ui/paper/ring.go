package paper

import (
	"contralay/ui/paper/list"
	"contralay/ui/paper/meter"
)

// ringOut is what must ring, each net once, and through how much copper.
func (m maker) ringOut() list.Table { return meter.RingTable(m.Maker) }

// isolation is what is held against what.
func (m maker) isolation() list.Table { return meter.IsolationTable(m.Maker) }
