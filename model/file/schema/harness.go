package schema

import (
	"contralay/model"
	"contralay/model/unit"
)

// maxCount is more than any bundle holds (no source): it keeps a slip of the
// finger from asking for a million fillers.
const maxCount = 9999

// Short names for the types of model that fill the schema.
type (
	optText  = model.Opt[string]
	optCount = model.Opt[int]
	optFlag  = model.Opt[bool]
	optMM    = model.Opt[unit.Millimetre]
	optRatio = model.Opt[unit.Ratio]
	optC     = model.Opt[unit.Celsius]
	optS     = model.Opt[unit.Second]
	mms      = []unit.Millimetre
)

// whole is the schema of a file. It is never written to.
var whole = document()

// document is the schema of a whole file, tables in the order they are written.
func document() table[model.Harness] {
	type h = model.Harness
	return table[h]{
		keys: []key[h]{formatKey()},
		parts: []part[h]{
			one[h, model.Head]{"harness", func(v *h) *model.Head { return &v.Head }, headTable()},
			one[h, model.Rules]{"rules", func(v *h) *model.Rules { return &v.Rules }, rulesTable()},
			one[h, model.Board]{"board", func(v *h) *model.Board { return &v.Board }, boardTable()},
			many[h, model.Reel]{"reel", func(v *h) *[]model.Reel { return &v.Reels }, reelTable()},
			many[h, model.Part]{"part", func(v *h) *[]model.Part { return &v.Parts }, partTable()},
			many[h, model.Termination]{"termination", func(v *h) *[]model.Termination { return &v.Terminations }, terminationTable()},
			many[h, model.Breakout]{"breakout", func(v *h) *[]model.Breakout { return &v.Breakouts }, breakoutTable()},
			many[h, model.Splice]{"splice", func(v *h) *[]model.Splice { return &v.Splices }, spliceTable()},
			many[h, model.Wire]{"wire", func(v *h) *[]model.Wire { return &v.Wires }, wireTable()},
			many[h, model.Feed]{"feed", func(v *h) *[]model.Feed { return &v.Feeds }, feedTable()},
			many[h, model.Unit]{"unit", func(v *h) *[]model.Unit { return &v.Units }, unitTable()},
			many[h, model.Branch]{"branch", func(v *h) *[]model.Branch { return &v.Branches }, branchTable()},
			many[h, model.Build]{"build", func(v *h) *[]model.Build { return &v.Builds }, buildTable()},
			many[h, model.Listed]{"listed", func(v *h) *[]model.Listed { return &v.Listed }, listedTable()},
		},
	}
}

func headTable() table[model.Head] {
	type h = model.Head
	return table[h]{keys: []key[h]{
		text("name", func(v *h) *optText { return &v.Name }),
		text("number", func(v *h) *optText { return &v.Number }),
		text("revision", func(v *h) *optText { return &v.Revision }),
		number("supply_v", func(v *h) *model.Opt[unit.Volt] { return &v.SupplyV }, volts),
		number("short_a", func(v *h) *model.Opt[unit.Ampere] { return &v.ShortA }, amperes),
		choice("use", func(v *h) *model.Opt[model.Use] { return &v.Use }, model.Uses...),
		choice("units", func(v *h) *optText { return &v.Units }, "mm", "in"),
		text("listed_from", func(v *h) *optText { return &v.ListedFrom }),
		text("mock_up", func(v *h) *optText { return &v.MockUp }),
		note(func(v *h) *optText { return &v.Note }),
	}}
}

func rulesTable() table[model.Rules] {
	type r = model.Rules
	return table[r]{keys: []key[r]{
		number("lay_ratio", func(v *r) *optRatio { return &v.LayRatio }, ratio),
		number("lift_max", func(v *r) *optRatio { return &v.LiftMax }, ratio),
		number("lift_tight", func(v *r) *optRatio { return &v.LiftTight }, ratio),
		number("lift_stop", func(v *r) *optRatio { return &v.LiftStop }, ratio),
		number("gap_inner", func(v *r) *optRatio { return &v.GapInner }, ratio),
		number("gap_outer", func(v *r) *optRatio { return &v.GapOuter }, ratio),
		number("lumpy_at", func(v *r) *optRatio { return &v.LumpyAt }, ratio),
		number("filler_weight", func(v *r) *optRatio { return &v.FillerWeight }, ratio),
		number("spare_gain", func(v *r) *optRatio { return &v.SpareGain }, ratio),
		count("spares_wanted", func(v *r) *optCount { return &v.SparesWanted }, 0, maxCount),
		count("laid_from", func(v *r) *optCount { return &v.LaidFrom }, 0, maxCount),
		number("leaver_weight", func(v *r) *optMM { return &v.LeaverWeight }, length),
		number("zone_mm", func(v *r) *optMM { return &v.ZoneMM }, length),
		number("zone_lump", func(v *r) *optRatio { return &v.ZoneLump }, ratio),
		number("cut_step_mm", func(v *r) *optMM { return &v.CutStepMM }, length),
		number("tail_first_mm", func(v *r) *optMM { return &v.TailFirstMM }, length),
		number("tail_second_mm", func(v *r) *optMM { return &v.TailSecondMM }, length),
		number("loop_mm", func(v *r) *optMM { return &v.LoopMM }, length),
		number("bundle_margin", func(v *r) *optRatio { return &v.BundleMargin }, ratio),
		number("ambient_c", func(v *r) *optC { return &v.AmbientC }, celsius),
		number("altitude_m", func(v *r) *model.Opt[unit.Metre] { return &v.AltitudeM }, metres),
		number("drop_max_v", func(v *r) *model.Opt[unit.Volt] { return &v.DropMaxV }, volts),
		number("drop_short_v", func(v *r) *model.Opt[unit.Volt] { return &v.DropShortV }, volts),
		number("feed_load_max", func(v *r) *optRatio { return &v.FeedLoadMax }, ratio),
		number("before_max_mm", func(v *r) *optMM { return &v.BeforeMaxMM }, length),
		id("size_min", func(v *r) *optText { return &v.SizeMin }),
		choice("outer", func(v *r) *model.Opt[model.Hand] { return &v.Outer }, model.Hands...),
		id("spec", func(v *r) *optText { return &v.Spec }),
		numbers("filler_stock_mm", func(v *r) *mms { return &v.FillerStock }, someMM),
		number("filler_c", func(v *r) *optC { return &v.FillerC }, celsius),
		choice("filler_of", func(v *r) *optText { return &v.FillerOf }, "fluoropolymer", "polyester", "aramid", "nylon", "polypropylene",
			"polyethylene"),
		number("tape_mm", func(v *r) *optMM { return &v.TapeMM }, someMM),
		number("tape_width_mm", func(v *r) *optMM { return &v.TapeWideMM }, someMM),
		number("adhesive_c", func(v *r) *optC { return &v.AdhesiveC }, celsius),
		choice("adhesive", func(v *r) *optText { return &v.Adhesive }, "epoxy", "hot melt"),
		count("pot_life_min", func(v *r) *optCount { return &v.PotLifeMin }, 1, maxCount),
		count("pack_joints", func(v *r) *optCount { return &v.PackJoints }, 1, maxCount),
		ids("colour_stock", func(v *r) *[]string { return &v.ColourStock }),
	}}
}

// boardTable is what the full-size drawing lies on.
func boardTable() table[model.Board] {
	type b = model.Board
	return table[b]{what: "board", keys: []key[b]{
		number("width_mm", func(v *b) *optMM { return &v.WidthMM }, someMM),
		number("height_mm", func(v *b) *optMM { return &v.HeightMM }, someMM),
		number("peg_mm", func(v *b) *optMM { return &v.PegMM }, someMM),
		id("datum", func(v *b) *optText { return &v.Datum }),
	}}
}

func reelTable() table[model.Reel] {
	type r = model.Reel
	return table[r]{
		what: "reel",
		keys: []key[r]{
			must(plainID("spec", func(v *r) *string { return &v.Spec })),
			must(plainID("size", func(v *r) *string { return &v.Size })),
			must(plainNumber("over_mm", func(v *r) *unit.Millimetre { return &v.OverMM }, someMM)),
			number("shelf_m", func(v *r) *model.Opt[unit.Metre] { return &v.ShelfM }, metres),
		},
	}
}
