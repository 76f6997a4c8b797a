package power

import "contralay/calc/query/why"

// Makers explain one figure each, by its name. The table is only read.
var Makers = map[string]why.Maker{
	"wire.drop":    wireDrop,
	"wire.circuit": wireCircuit,
	"wire.bound":   wireBound,
	"wire.limit":   wireLimit,
	"wire.hottest": wireHottest,
	"wire.heats":   wireHeats,
	"wire.lost":    wireLost,

	"branch.hottest": branchHottest,
	"branch.under":   branchUnder,
	"branch.surface": branchSurface,

	"conductor.hot": conductorHot,

	"feed.load":  feedLoad,
	"feed.most":  feedMost,
	"feed.opens": feedOpens,

	"short.far":   shortFar,
	"short.lets":  shortLets,
	"short.bears": shortBears,

	"unit.ohm":   unitOhm,
	"unit.loop":  unitLoop,
	"unit.bus":   unitBus,
	"unit.stub":  unitBus,
	"unit.stubs": unitBus,
}
