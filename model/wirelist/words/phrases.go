package words

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
)

// SaysInWords reads a heading that is a phrase, "Where it goes now", "What it does".
func SaysInWords(all []string) (name.Field, bool) {
	if f, ok := SaysFunction(all); ok || len(all) < 2 {
		return f, ok
	}
	goes := slices.ContainsFunc(all, func(w string) bool {
		switch w {
		case "go", "goes", "going", "leads", "ends", "connects", "connected", "runs", "landed":
			return true
		}
		return false
	})
	switch {
	case landsOn(all):
		return name.FieldTo, true
	case goes && (all[0] == "where" || all[0] == "what" || all[len(all)-1] == "to"):
		return name.FieldTo, true
	case (all[0] == "where" || all[0] == "comes") && all[len(all)-1] == "from":
		return name.FieldFrom, true
	case all[0] == "what" && !goes && strings.HasPrefix(all[len(all)-1], "change"):
		return name.FieldNote, true
	case all[0] == "what" && !goes:
		return name.FieldSignal, true
	}
	return "", false
}

// landsOn reports whether the words of a heading say where a wire ends: "Lands on", "Terminates at", "Plugs into", "Wired to".
func landsOn(all []string) bool {
	if len(all) != 2 {
		return false
	}
	switch all[0] {
	case "land", "lands", "landed", "terminates", "terminated", "ends", "arrives", "lugged", "fastens", "bolts", "bolted", "screws",
		"screwed", "clamps", "clamped", "sits":
		switch all[1] {
		case "on", "at", "in", "to":
			return true
		}
	case "plugs", "goes", "runs", "feeds", "leads", "solders", "soldered", "wires", "crimps":
		return all[1] == "into" || all[1] == "to" || all[1] == "onto"
	}
	return false
}
