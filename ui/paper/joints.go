package paper

import (
	"fmt"
	"strings"

	"contralay/calc/phase/built"
	"contralay/model"
	"contralay/ui/paper/list"
)

// joints are the splices that are made while a branch is laid, and when.
func joints(m maker, branch int) []string {
	var out []string
	for i, made := range built.MadeWhen(m.S) {
		if made.Branch != branch {
			continue
		}
		when := "Before you lay " + model.LayerName(made.Layer)
		if made.Layer == len(m.S.Branches[branch].Layers) {
			when = "When this branch is laid"
		}
		out = append(out, fmt.Sprintf("%s, make %s.", when, list.Becomes(m.S, m.Sys, i)))
	}
	return out
}

// jointsBefore names the splices that are made before a layer of a branch; "" for none.
func jointsBefore(m maker, branch, layer int) string {
	var out []string
	for i, made := range built.MadeWhen(m.S) {
		if made.Branch == branch && made.Layer == layer {
			out = append(out, m.H.Splices[i].ID)
		}
	}
	if len(out) > 1 {
		return "splices " + strings.Join(out, ", ")
	}
	return list.Word("splice ", strings.Join(out, ""))
}
