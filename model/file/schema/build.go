package schema

import (
	"contralay/model"
	"contralay/model/unit"
)

// buildTable is one harness as it was built, under its serial.
func buildTable() table[model.Build] {
	type b = model.Build
	return table[b]{
		what: "build",
		keys: []key[b]{
			must(plainID("serial", func(v *b) *string { return &v.Serial })),
			text("revision", func(v *b) *optText { return &v.Revision }),
			text("begun", func(v *b) *optText { return &v.Begun }),
			note(func(v *b) *optText { return &v.Note }),
			flag("each_test", func(v *b) *model.Opt[bool] { return &v.EachTest }),
			number("mass_g", func(v *b) *model.Opt[unit.Gram] { return &v.MassG }, grams),
			texts("goes_by", func(v *b) *[]string { return &v.GoesBy }),
			texts("done", func(v *b) *[]string { return &v.Done }),
		},
		parts: []part[b]{
			many[b, model.Shelved]{"shelf", func(v *b) *[]model.Shelved { return &v.Shelf }, shelvedTable()},
			many[b, model.Ticked]{"step", func(v *b) *[]model.Ticked { return &v.Steps }, tickedTable()},
			many[b, model.Signature]{"signed", func(v *b) *[]model.Signature { return &v.Signed }, signatureTable()},
			many[b, model.Reading]{"reading", func(v *b) *[]model.Reading { return &v.Readings }, readingTable()},
			many[b, model.UsedWire]{"wire", func(v *b) *[]model.UsedWire { return &v.Used }, usedTable()},
			many[b, model.Recovered]{"tube", func(v *b) *[]model.Recovered { return &v.Tubes }, recoveredTable()},
			many[b, model.Again]{"again", func(v *b) *[]model.Again { return &v.Again }, againTable()},
			many[b, model.Deviation]{"deviation", func(v *b) *[]model.Deviation { return &v.Apart }, deviationTable()},
			many[b, model.Test]{"test", func(v *b) *[]model.Test { return &v.Tests }, testTable()},
			many[b, model.Lot]{"lot", func(v *b) *[]model.Lot { return &v.Lots }, lotTable()},
		},
	}
}

// RawBuild is a build as a decoder gives it; ReadBuild reads it back.
func RawBuild(b *model.Build) map[string]any { return buildTable().raw(b) }

// ReadBuild reads a build that stands by itself, by the rules of a file, and gives all that is wrong
// with it.
func ReadBuild(raw map[string]any) (model.Build, []Fault) {
	d, b := &decoder{at: map[string]bool{}}, model.Build{}
	readTable(d, buildTable(), &b, raw, place{})
	return b, d.faults
}

func shelvedTable() table[model.Shelved] {
	type s = model.Shelved
	return table[s]{what: "shelf", keys: []key[s]{
		text("spec", func(v *s) *optText { return &v.Spec }),
		text("size", func(v *s) *optText { return &v.Size }),
		text("part", func(v *s) *optText { return &v.Part }),
		number("over_mm", func(v *s) *optMM { return &v.OverMM }, length),
		number("tol_mm", func(v *s) *optMM { return &v.TolMM }, length),
		number("ohm_per_km", func(v *s) *model.Opt[unit.OhmPerKilometre] { return &v.OhmPerKm }, ratio),
		number("recovered_mm", func(v *s) *optMM { return &v.RecoveredMM }, length),
		number("wall_mm", func(v *s) *optMM { return &v.WallMM }, length),
	}}
}

func signatureTable() table[model.Signature] {
	type s = model.Signature
	return table[s]{what: "signed", keys: []key[s]{
		must(plainText("step", func(v *s) *string { return &v.Step })),
		must(plainText("by", func(v *s) *string { return &v.By })),
		text("at", func(v *s) *optText { return &v.At }),
	}}
}

func readingTable() table[model.Reading] {
	type r = model.Reading
	return table[r]{what: "reading", keys: []key[r]{
		must(plainID("branch", func(v *r) *string { return &v.Branch })),
		must(plainCount("layer", func(v *r) *int { return &v.Layer }, 0, maxCount)),
		numbers("bare_mm", func(v *r) *mms { return &v.BareMM }, length),
		numbers("over_mm", func(v *r) *mms { return &v.OverMM }, length),
		number("lay_mm", func(v *r) *optMM { return &v.LayMM }, length),
	}}
}

func usedTable() table[model.UsedWire] {
	type u = model.UsedWire
	return table[u]{what: "wire", keys: []key[u]{
		must(plainID("spec", func(v *u) *string { return &v.Spec })),
		must(plainID("size", func(v *u) *string { return &v.Size })),
		must(plainNumber("used_mm", func(v *u) *unit.Millimetre { return &v.UsedMM }, length)),
	}}
}

func recoveredTable() table[model.Recovered] {
	type r = model.Recovered
	return table[r]{what: "tube", keys: []key[r]{
		must(plainID("branch", func(v *r) *string { return &v.Branch })),
		must(plainNumber("over_mm", func(v *r) *unit.Millimetre { return &v.OverMM }, length)),
	}}
}

func againTable() table[model.Again] {
	type a = model.Again
	return table[a]{what: "again", keys: []key[a]{
		must(plainID("end", func(v *a) *string { return &v.End })),
		must(plainCount("times", func(v *a) *int { return &v.Times }, 0, maxCount)),
	}}
}

func deviationTable() table[model.Deviation] {
	type d = model.Deviation
	return table[d]{what: "deviation", keys: []key[d]{
		must(plainID("at", func(v *d) *string { return &v.At })),
		must(plainText("says", func(v *d) *string { return &v.Says })),
		text("step", func(v *d) *optText { return &v.Step }),
		texts("steps", func(v *d) *[]string { return &v.Steps }),
		text("by", func(v *d) *optText { return &v.By }),
		text("on", func(v *d) *optText { return &v.On }),
	}}
}

// listedTable is one net of an independent list.
func listedTable() table[model.Listed] {
	type l = model.Listed
	return table[l]{what: "listed", keys: []key[l]{
		text("signal", func(v *l) *optText { return &v.Signal }),
		ids("ends", func(v *l) *[]string { return &v.Ends }),
	}}
}
