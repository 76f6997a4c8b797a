package shape

import "contralay/calc/query/why"

// Makers explain one figure each, by its name. The table is only read.
var Makers = map[string]why.Maker{
	"branch.over":      branchOver,
	"branch.floor":     branchFloor,
	"branch.least":     branchBand,
	"branch.most":      branchBand,
	"branch.tape":      branchTape,
	"branch.tapeleast": branchBand,
	"branch.laid":      branchLaid,
	"branch.mass":      branchMass,
	"branch.bend":      branchBend,
	"branch.wire":      branchWire,
	"branch.room":      branchRoom,
	"branch.length":    branchLength,

	"loop.length":  loopOf,
	"loop.room":    loopOf,
	"loop.bow":     loopOf,
	"loop.turn":    loopOf,
	"loop.longest": loopOf,

	"cover.over":  coverOver,
	"cover.slide": coverOver,
	"cover.cut":   coverOver,
	"cover.least": coverOver,
	"cover.grip":  coverOver,

	"layer.over":   layerOver,
	"layer.stand":  layerStand,
	"layer.tape":   layerTape,
	"layer.proud":  layerProud,
	"layer.lay":    layerLay,
	"layer.turns":  layerTurns,
	"layer.takes":  layerTakes,
	"layer.room":   layerRoom,
	"layer.gap":    layerGap,
	"layer.bent":   layerBent,
	"layer.flat":   layerBent,
	"layer.filler": layerFiller,

	"component.over": componentOver,
	"component.loss": componentLoss,
	"component.run":  componentRun,

	"tube.slide": tubeSlide,
	"tube.worst": tubeSlide,
	"tube.grip":  tubeGrip,
	"tube.over":  tubeOver,
	"tube.wall":  tubeWall,
	"tube.mass":  tubeMass,
	"tube.cut":   tubeCut,
	"tube.room":  tubeRoom,
	"tube.full":  tubeFull,

	"sheath.pass":     sheathPass,
	"sheath.passmost": sheathPass,
	"sheath.from":     sheathEnd,
	"sheath.to":       sheathEnd,

	"boot.least": bootCable,
	"boot.most":  bootCable,
	"boot.holds": bootUnder,
	"boot.fills": bootUnder,

	"wire.cut":      wireCut,
	"wire.finished": wireFinished,
	"wire.takeup":   wireTakeUp,
	"wire.flat":     wireTakeUp,

	"reel.need": reelNeed,

	"loom.wire": loomWire,
	"loom.mass": loomMass,

	"option.over": optionOver,

	"wish.leavers": wish,
	"wish.units":   wish,
	"wish.apart":   wishApart,
}
