package schema

import (
	"contralay/model"
	"contralay/model/unit"
)

func branchTable() table[model.Branch] {
	type b = model.Branch
	return table[b]{
		what: "branch",
		keys: []key[b]{
			must(plainID("id", func(v *b) *string { return &v.ID })),
			text("name", func(v *b) *optText { return &v.Name }),
			must(plainID("from", func(v *b) *string { return &v.From })),
			must(plainID("to", func(v *b) *string { return &v.To })),
			must(plainNumber("length_mm", func(v *b) *unit.Millimetre { return &v.LengthMM }, length)),
			pair("tolerance_mm", func(v *b) *mms { return &v.ToleranceMM }, length, false,
				"how much shorter it may be, and how much longer"),
			number("bend_mm", func(v *b) *optMM { return &v.BendMM }, length),
			number("bend_deg", func(v *b) *model.Opt[unit.Degree] { return &v.BendDeg }, degrees),
			number("leaves_deg", func(v *b) *model.Opt[unit.Degree] { return &v.LeavesDeg }, leaving),
			words("environment", func(v *b) *[]model.Surrounding { return &v.Environment }, model.Surroundings...),
			flag("supported", func(v *b) *optFlag { return &v.Supported }),
			number("ambient_c", func(v *b) *optC { return &v.AmbientC }, celsius),
			choice("make", func(v *b) *model.Opt[model.Make] { return &v.Make }, model.Makes...),
			choice("outer", func(v *b) *model.Opt[model.Hand] { return &v.Outer }, model.Hands...),
			flag("leavers_outside", func(v *b) *optFlag { return &v.LeaversOut }),
			flag("units_inside", func(v *b) *optFlag { return &v.UnitsIn }),
			flag("data_apart", func(v *b) *optFlag { return &v.DataApart }),
		},
		parts: []part[b]{
			many[b, model.Via]{"via", func(v *b) *[]model.Via { return &v.Vias }, viaTable()},
			many[b, model.Layer]{"layer", func(v *b) *[]model.Layer { return &v.Layers }, layerTable()},
			many[b, model.Cover]{"cover", func(v *b) *[]model.Cover { return &v.Covers }, coverTable()},
			many[b, model.AsBuilt]{"as_built", func(v *b) *[]model.AsBuilt { return &v.AsBuilt }, asBuiltTable()},
			many[b, model.Aside]{"aside", func(v *b) *[]model.Aside { return &v.Asides }, asideTable()},
		},
	}
}

// viaTable is a bend of the branch on the drawing.
func viaTable() table[model.Via] {
	type b = model.Via
	return table[b]{
		what: "via",
		keys: []key[b]{
			must(plainNumber("at_mm", func(v *b) *unit.Millimetre { return &v.AtMM }, length)),
			must(plainNumber("turn_deg", func(v *b) *unit.Degree { return &v.TurnDeg }, turning)),
			number("radius_mm", func(v *b) *optMM { return &v.RadiusMM }, length),
		},
	}
}

func layerTable() table[model.Layer] {
	type l = model.Layer
	return table[l]{
		what: "layer",
		keys: []key[l]{
			ids("of", func(v *l) *[]string { return &v.Of }),
			count("fillers", func(v *l) *optCount { return &v.Fillers }, 0, maxCount),
			number("filler_mm", func(v *l) *optMM { return &v.FillerMM }, length),
			number("bind_mm", func(v *l) *optMM { return &v.BindMM }, length),
			text("bind_part", func(v *l) *optText { return &v.BindPart }),
			number("lay_mm", func(v *l) *optMM { return &v.LayMM }, length),
			ids("pinned", func(v *l) *[]string { return &v.Pinned }),
			flag("locked", func(v *l) *optFlag { return &v.Locked }),
		},
	}
}

func coverTable() table[model.Cover] {
	type c = model.Cover
	return table[c]{
		what: "cover",
		keys: []key[c]{
			must(plainChoice("what", func(v *c) *model.CoverKind { return &v.What }, model.CoverKinds()...)),
			id("part", func(v *c) *optText { return &v.Part }),
			number("from_mm", func(v *c) *optMM { return &v.FromMM }, length),
			number("to_mm", func(v *c) *optMM { return &v.ToMM }, length),
			number("thick_mm", func(v *c) *optMM { return &v.ThickMM }, length),
		},
	}
}

// asBuiltTable asks for the layer: without it the figures belong to nothing.
func asBuiltTable() table[model.AsBuilt] {
	type a = model.AsBuilt
	return table[a]{
		what: "as_built",
		keys: []key[a]{
			must(plainCount("layer", func(v *a) *int { return &v.Layer }, 0, maxCount)),
			numbers("over_mm", func(v *a) *mms { return &v.OverMM }, length),
		},
	}
}

// asideTable is a variant: layers and covers as those of the branch.
func asideTable() table[model.Aside] {
	type a = model.Aside
	return table[a]{
		what: "aside",
		keys: []key[a]{
			must(plainText("name", func(v *a) *string { return &v.Name })),
			choice("letter", func(v *a) *model.Opt[model.Letter] { return &v.Letter }, model.Letters()...),
			choice("make", func(v *a) *model.Opt[model.Make] { return &v.Make }, model.Makes...),
			choice("outer", func(v *a) *model.Opt[model.Hand] { return &v.Outer }, model.Hands...),
			id("spec", func(v *a) *optText { return &v.Spec }),
			eachID("sizes", func(v *a) *map[string]string { return &v.Sizes }),
			count("spares", func(v *a) *optCount { return &v.Spares }, 0, maxCount),
		},
		parts: []part[a]{
			many[a, model.Layer]{"layer", func(v *a) *[]model.Layer { return &v.Layers }, layerTable()},
			many[a, model.Cover]{"cover", func(v *a) *[]model.Cover { return &v.Covers }, coverTable()},
		},
	}
}
