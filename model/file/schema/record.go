package schema

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"contralay/model"
)

// tickedTable is one step of a build as it was ticked.
func tickedTable() table[model.Ticked] {
	type t = model.Ticked
	return table[t]{what: "step", keys: []key[t]{
		must(plainText("key", func(v *t) *string { return &v.Key })),
		text("at", func(v *t) *optText { return &v.At }),
		text("by", func(v *t) *optText { return &v.By }),
		inline("what", func(v *t) *model.Opt[model.What] { return &v.What }, whatTable()),
		inline("sheet", func(v *t) *model.Opt[model.What] { return &v.Sheet }, whatTable()),
		text("undone", func(v *t) *optText { return &v.Undone }),
		texts("so_far", func(v *t) *[]string { return &v.SoFar }),
	}}
}

// whatTable is what a step made.
func whatTable() table[model.What] {
	type w = model.What
	return table[w]{what: "what", keys: []key[w]{
		text("spec", func(v *w) *optText { return &v.Spec }),
		text("size", func(v *w) *optText { return &v.Size }),
		text("colour", func(v *w) *optText { return &v.Colour }),
		text("part", func(v *w) *optText { return &v.Part }),
		text("place", func(v *w) *optText { return &v.Place }),
		choice("hand", func(v *w) *model.Opt[model.Hand] { return &v.Hand }, model.HandLeft, model.HandRight, model.HandStraight),
		texts("members", func(v *w) *[]string { return &v.Members }),
		texts("ends", func(v *w) *[]string { return &v.Ends }),
		count("fillers", func(v *w) *optCount { return &v.Fillers }, 0, maxCount),
		number("filler_mm", func(v *w) *optMM { return &v.FillerMM }, length),
		number("bind_mm", func(v *w) *optMM { return &v.BindMM }, length),
		number("mm", func(v *w) *optMM { return &v.MM }, length),
		number("finished_mm", func(v *w) *optMM { return &v.FinishedMM }, length),
		number("from_mm", func(v *w) *optMM { return &v.FromMM }, length),
		number("to_mm", func(v *w) *optMM { return &v.ToMM }, length),
		number("lay_mm", func(v *w) *optMM { return &v.LayMM }, length),
		number("over_mm", func(v *w) *optMM { return &v.OverMM }, length),
		texts("path", func(v *w) *[]string { return &v.Path }),
		numbers("path_mm", func(v *w) *mms { return &v.PathMM }, length),
	}}
}

// testTable is one test of a build, read in one of five units.
func testTable() table[model.Test] {
	type t = model.Test
	return table[t]{what: "test", keys: []key[t]{
		text("net", func(v *t) *optText { return &v.Net }),
		text("feed", func(v *t) *optText { return &v.Feed }),
		text("pull", func(v *t) *optText { return &v.Pull }),
		text("step", func(v *t) *optText { return &v.Step }),
		text("fault", func(v *t) *optText { return &v.Fault }),
		number("ohm", func(v *t) *model.Opt[float64] { return &v.Ohm }, ratio),
		number("milliohm", func(v *t) *model.Opt[float64] { return &v.Milliohm }, ratio),
		number("megohm", func(v *t) *model.Opt[float64] { return &v.Megohm }, ratio),
		number("volt", func(v *t) *model.Opt[float64] { return &v.Volt }, ratio),
		number("newton", func(v *t) *model.Opt[float64] { return &v.Newton }, ratio),
		number("limit", func(v *t) *model.Opt[float64] { return &v.Limit }, ratio),
		text("instrument", func(v *t) *optText { return &v.Instrument }),
		text("at", func(v *t) *optText { return &v.At }),
		text("by", func(v *t) *optText { return &v.By }),
	}}
}

// lotTable is what a part or a reel was taken from.
func lotTable() table[model.Lot] {
	type l = model.Lot
	return table[l]{what: "lot", keys: []key[l]{
		must(plainText("of", func(v *l) *string { return &v.Of })),
		must(plainText("lot", func(v *l) *string { return &v.Lot })),
		text("expires", func(v *l) *optText { return &v.Expires }),
		text("at", func(v *l) *optText { return &v.At }),
		text("by", func(v *l) *optText { return &v.By }),
	}}
}

// inline is a table that is written on the line of its key, so that a record of hundreds of
// steps can be read: name = { spec = "AS22759/32", mm = 750.0 }.
func inline[T, S any](name string, at func(*T) *model.Opt[S], inside table[S]) key[T] {
	read := func(raw any) (S, problem) {
		var got S
		m, ok := raw.(map[string]any)
		if !ok {
			return got, bad("is "+describe(raw), "a table on one line, "+name+" = { ... }")
		}
		for _, called := range slices.Sorted(maps.Keys(m)) {
			k := inside.find(called)
			p := problem("")
			if k == nil {
				p = inside.unknown(called)
			} else {
				p = k.put(&got, m[called])
			}
			if p != "" {
				return got, problem(fmt.Sprintf("in it, %s: %s", Short(called), p))
			}
		}
		return got, ""
	}
	text := func(v S) string {
		var all []string
		for _, l := range inside.lines(&v, nil) {
			all = append(all, l.name+" = "+l.value)
		}
		if len(all) == 0 {
			return "{}"
		}
		return "{ " + strings.Join(all, ", ") + " }"
	}
	raw := func(v S) any { return inside.raw(&v) }
	k := optional(name, at, form[S]{Key{Kind: KindTable, Keys: inside.views()}, read, text, raw})
	k.open = func(v *T, own bool) node {
		o := at(v)
		if !o.Set && !own {
			return nil
		}
		if !o.Set { // a value in it gives it
			o.Set = true
		}
		return &record[S]{inside, &o.V}
	}
	return k
}
