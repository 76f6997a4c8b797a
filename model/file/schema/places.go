package schema

import (
	"contralay/model"
	"contralay/model/unit"
)

func partTable() table[model.Part] {
	type p = model.Part
	return table[p]{
		what: "part",
		keys: []key[p]{
			must(plainID("id", func(v *p) *string { return &v.ID })),
			number("wall_mm", func(v *p) *optMM { return &v.WallMM }, someMM),
			number("lip_recovered_mm", func(v *p) *optMM { return &v.LipRecMM }, someMM),
			number("lip_supplied_mm", func(v *p) *optMM { return &v.LipSupMM }, someMM),
			number("cable_recovered_mm", func(v *p) *optMM { return &v.CableRecMM }, someMM),
			number("cable_supplied_mm", func(v *p) *optMM { return &v.CableSupMM }, someMM),
			number("length_mm", func(v *p) *optMM { return &v.LengthMM }, someMM),
			number("supplied_mm", func(v *p) *optMM { return &v.SuppliedMM }, someMM),
		},
	}
}

func terminationTable() table[model.Termination] {
	type t = model.Termination
	return table[t]{
		what: "termination",
		keys: []key[t]{
			must(plainID("id", func(v *t) *string { return &v.ID })),
			text("name", func(v *t) *optText { return &v.Name }),
			text("device", func(v *t) *optText { return &v.Device }),
			id("insert", func(v *t) *optText { return &v.Insert }),
			choice("gender", func(v *t) *model.Opt[model.Gender] { return &v.Gender }, model.Genders...),
			text("key", func(v *t) *optText { return &v.Key }),
			choice("mount", func(v *t) *model.Opt[model.Mount] { return &v.Mount }, model.Mounts...),
			choice("datum", func(v *t) *model.Opt[model.Datum] { return &v.Datum }, model.Data...),
			number("part_mm", func(v *t) *optMM { return &v.PartMM }, length),
			count("clock", func(v *t) *optCount { return &v.Clock }, 1, 12),
			id("boot", func(v *t) *optText { return &v.Boot }),
			count("boot_clock", func(v *t) *optCount { return &v.BootClock }, 1, 12),
			ids("reserved", func(v *t) *[]string { return &v.Reserved }),
			number("loop_mm", func(v *t) *optMM { return &v.LoopMM }, length),
			number("space_mm", func(v *t) *optMM { return &v.SpaceMM }, length),
			number("limit_c", func(v *t) *optC { return &v.LimitC }, celsius),
			ids("cavities", func(v *t) *[]string { return &v.Cavities }),
			idMap("contacts", func(v *t) *map[string][]string { return &v.Contacts }),
			pair("seal_mm", func(v *t) *mms { return &v.SealMM }, length, true, "the smallest and the largest wire that the seal fits"),
			idMap("aliases", func(v *t) *map[string][]string { return &v.Aliases }),
			flag("firewall", func(v *t) *optFlag { return &v.Firewall }),
			flag("tight", func(v *t) *optFlag { return &v.Tight }),
		},
	}
}

func breakoutTable() table[model.Breakout] {
	type b = model.Breakout
	return table[b]{
		what: "breakout",
		keys: []key[b]{
			must(plainID("id", func(v *b) *string { return &v.ID })),
			text("name", func(v *b) *optText { return &v.Name }),
			id("transition", func(v *b) *optText { return &v.Transition }),
			choice("build", func(v *b) *model.Opt[model.Closure] { return &v.Build }, model.Closures...),
			number("zone_mm", func(v *b) *optMM { return &v.ZoneMM }, length),
		},
	}
}

func spliceTable() table[model.Splice] {
	type s = model.Splice
	return table[s]{
		what: "splice",
		keys: []key[s]{
			must(plainID("id", func(v *s) *string { return &v.ID })),
			must(plainID("at", func(v *s) *string { return &v.At })),
			id("toward", func(v *s) *optText { return &v.Toward }),
			number("offset_mm", func(v *s) *optMM { return &v.OffsetMM }, length),
			id("part", func(v *s) *optText { return &v.Part }),
		},
	}
}

func wireTable() table[model.Wire] {
	type w = model.Wire
	return table[w]{
		what: "wire",
		keys: []key[w]{
			must(plainID("id", func(v *w) *string { return &v.ID })),
			text("signal", func(v *w) *optText { return &v.Signal }),
			id("from", func(v *w) *optText { return &v.From }),
			id("to", func(v *w) *optText { return &v.To }),
			must(plainID("spec", func(v *w) *string { return &v.Spec })),
			must(plainID("size", func(v *w) *string { return &v.Size })),
			id("colour", func(v *w) *optText { return &v.Colour }),
			choice("shade", func(v *w) *model.Opt[model.Shade] { return &v.Shade }, model.Shades...),
			number("amps", func(v *w) *model.Opt[unit.Ampere] { return &v.Amps }, amperes),
			number("on_s", func(v *w) *optS { return &v.OnS }, seconds),
			number("period_s", func(v *w) *optS { return &v.PeriodS }, seconds),
			number("rest_a", func(v *w) *model.Opt[unit.Ampere] { return &v.RestA }, amperes),
			choice("role", func(v *w) *model.Opt[model.Role] { return &v.Role }, model.Roles...),
			flag("safety", func(v *w) *optFlag { return &v.Safety }),
			id("return", func(v *w) *optText { return &v.Return }),
			id("capped_at", func(v *w) *optText { return &v.CappedAt }),
			number("fold_mm", func(v *w) *optMM { return &v.FoldMM }, length),
			number("measured_drop_v", func(v *w) *model.Opt[unit.Volt] { return &v.DropV }, volts),
			note(func(v *w) *optText { return &v.Note }),
		},
	}
}

func feedTable() table[model.Feed] {
	type f = model.Feed
	return table[f]{
		what: "feed",
		keys: []key[f]{
			must(plainID("id", func(v *f) *string { return &v.ID })),
			text("name", func(v *f) *optText { return &v.Name }),
			choice("device", func(v *f) *model.Opt[model.Protection] { return &v.Device }, model.Protections...),
			number("amps", func(v *f) *model.Opt[unit.Ampere] { return &v.Amps }, amperes),
			count("outputs", func(v *f) *optCount { return &v.Outputs }, 1, maxCount),
			number("trip_s", func(v *f) *optS { return &v.TripS }, seconds),
			number("before_mm", func(v *f) *optMM { return &v.BeforeMM }, length),
			ids("wires", func(v *f) *[]string { return &v.Wires }),
		},
	}
}

func unitTable() table[model.Unit] {
	type u = model.Unit
	return table[u]{
		what: "unit",
		keys: []key[u]{
			must(plainID("id", func(v *u) *string { return &v.ID })),
			text("name", func(v *u) *optText { return &v.Name }),
			must(plainIDs("wires", func(v *u) *[]string { return &v.Wires })),
			choice("build", func(v *u) *model.Opt[model.UnitBuild] { return &v.Build }, model.UnitBuilds...),
			flag("shield", func(v *u) *optFlag { return &v.Shield }),
			id("drain_from", func(v *u) *optText { return &v.DrainFrom }),
			id("drain_to", func(v *u) *optText { return &v.DrainTo }),
			number("strip_mm", func(v *u) *optMM { return &v.StripMM }, length),
			number("drain_mm", func(v *u) *optMM { return &v.DrainMM }, length),
			number("over_mm", func(v *u) *optMM { return &v.OverMM }, length),
			number("kbit_s", func(v *u) *model.Opt[unit.KilobitPerSec] { return &v.Kbit }, ratio),
		},
	}
}
