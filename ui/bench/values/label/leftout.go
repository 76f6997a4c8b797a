package label

import (
	"fmt"
	"reflect"

	"contralay/calc/phase/wires"
	"contralay/model"
	"contralay/model/file/schema"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
)

// What holds where a key is left out.

// is is a value that holds wherever the key is left out.
func is(value any, by string) Fallout {
	return func(*desk.Model, schema.At, string) (any, string) { return value, by }
}

const byTheRules = "by the rules"

// defaults is a harness whose rules are all given as they are where a shop gives none. Rules and
// Limits name a rule alike.
var defaults = func() *model.Harness {
	h := &model.Harness{}
	limits, rules := reflect.ValueOf(h.Rules.Resolve()), reflect.ValueOf(&h.Rules).Elem()
	for k := range rules.NumField() {
		v := limits.FieldByName(rules.Type().Field(k).Name)
		if f := rules.Field(k); v.IsValid() && f.Kind() == reflect.Struct && v.Type() == f.Field(0).Type() {
			f.Field(0).Set(v)
			f.FieldByName("Set").SetBool(true)
		}
	}
	return h
}()

// RulesAt is where the rules are.
var RulesAt = schema.At{{Table: "rules"}}

// Default is what a rule is where a shop gives none; nil where it has no default.
func Default(key string) any {
	if l := labels["rules"][key]; l.Left == nil {
		return nil
	}
	return schema.Get(defaults, RulesAt, key)
}

// byRule is the default of a rule.
func byRule(_ *desk.Model, _ schema.At, key string) (any, string) {
	return schema.Get(defaults, RulesAt, key), "default"
}

func loopLeft(m *desk.Model, at schema.At, _ string) (any, string) {
	v := m.Sheet.Limits.LoopPlainMM
	if m.H.Terminations[at[0].Index].Insert.V != "" {
		v = m.Sheet.Limits.LoopMM
	}
	return float64(v), byTheRules
}

func cavitiesLeft(m *desk.Model, at schema.At, _ string) (any, string) {
	i := at[0].Index
	if m.H.Terminations[i].Insert.V == "" || i >= len(m.Sheet.Terms) || len(m.Sheet.Terms[i].Cavities) == 0 {
		return nil, ""
	}
	return fmt.Sprintf("%d of its insert", len(m.Sheet.Terms[i].Cavities)), ""
}

func zoneLeft(m *desk.Model, _ schema.At, _ string) (any, string) {
	return float64(m.Sheet.Limits.ZoneMM), byTheRules
}

func foldLeft(m *desk.Model, at schema.At, _ string) (any, string) {
	if !wires.Capped(&m.H.Wires[at[0].Index]) {
		return nil, ""
	}
	return float64(wires.FoldMM), "unless you say"
}

func spliceLeft(m *desk.Model, at schema.At, _ string) (any, string) {
	if i := at[0].Index; i < len(m.Sheet.Splices) && m.Sheet.Splices[i].Part != "" {
		return m.Sheet.Splices[i].Part, "proposed"
	}
	return nil, ""
}

func unitOver(m *desk.Model, at schema.At, _ string) (any, string) {
	if i := at[0].Index; i < len(m.Sheet.Units) && m.Sheet.Units[i].Dia.Known() {
		return hundredth(m.Sheet.Units[i].Dia.Nominal), "worked out"
	}
	return nil, ""
}

func ambientLeft(m *desk.Model, _ schema.At, _ string) (any, string) {
	return float64(m.Sheet.Limits.AmbientC), byTheRules
}

func outerLeft(m *desk.Model, _ schema.At, _ string) (any, string) {
	return string(m.Sheet.Limits.Outer), byTheRules
}

func makeLeft(m *desk.Model, at schema.At, _ string) (any, string) {
	if i := at[0].Index; i < len(m.Sheet.Branches) && m.Sheet.Branches[i].Make != "" {
		return string(m.Sheet.Branches[i].Make), "proposed"
	}
	return nil, ""
}

// letterLeft is the letter that a variant is shown under while it has none of its own.
func letterLeft(m *desk.Model, at schema.At, _ string) (any, string) {
	if letters := m.H.Branches[at[0].Index].AsideLetters(); at[1].Index < len(letters) && letters[at[1].Index] != "" {
		return string(letters[at[1].Index]), "the next that is free"
	}
	return nil, ""
}

func layLeft(m *desk.Model, at schema.At, _ string) (any, string) {
	if i, k := at[0].Index, at.Last().Index; at.Table() == "branch.layer" && i < len(m.Sheet.Branches) {
		if all := m.Sheet.Branches[i].Layers; k < len(all) && all[k].LayMM > 0 {
			return hundredth(all[k].LayMM), byTheRules
		}
	}
	return nil, ""
}

func coverFrom(m *desk.Model, at schema.At, key string) (any, string) { return coverEnd(m, at, true) }
func coverTo(m *desk.Model, at schema.At, key string) (any, string)   { return coverEnd(m, at, false) }

// coverEnd is where a cover starts or stops as the sheet has it.
func coverEnd(m *desk.Model, at schema.At, from bool) (any, string) {
	i, k := at[0].Index, at.Last().Index
	if i >= len(m.Sheet.Branches) {
		return nil, ""
	}
	b := &m.Sheet.Branches[i]
	start, stop, known := b.Sheath.FromMM, b.Sheath.ToMM, m.H.Branches[i].Covers[k].What == model.CoverSheath && b.Sheath.Part != ""
	for n := range b.Covers {
		if c := &b.Covers[n]; c.Index == k {
			start, stop, known = c.FromMM, c.ToMM, true
		}
	}
	switch {
	case !known:
		return nil, ""
	case from:
		return hundredth(start), "worked out"
	}
	return hundredth(stop), "worked out"
}

func coverThick(m *desk.Model, at schema.At, _ string) (any, string) {
	i, k := at[0].Index, at.Last().Index
	if i < len(m.Sheet.Branches) {
		for n := range m.Sheet.Branches[i].Covers {
			if c := &m.Sheet.Branches[i].Covers[n]; c.Index == k && c.ThickMM > 0 {
				by := "by its part"
				if c.ThickGuess {
					by = "from memory"
				}
				return hundredth(c.ThickMM), by
			}
		}
	}
	return nil, ""
}

// hundredth is a length that the program worked out, as it would write it.
func hundredth(v unit.Millimetre) float64 { return float64(unit.Written(v)) }
