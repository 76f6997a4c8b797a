package titleline

import (
	"strings"

	"contralay/model/wirelist/stripname"
	"contralay/model/wirelist/table"
)

// A title may say in a piece of its own how the connector or the strip is called below.
//
//	BELL RELAY, cable to desk. Strip = BLR
//	Hoist hut (plug is called J7)
//	Winch, upper deck; connector: WX

// Defined is that name, and what else the title says; "" where it says none, or several.
func Defined(text string) (called, more string) {
	const longest = 160 // bytes (no source)
	if len(text) > longest || !strings.ContainsAny(text, "=:") && !strings.Contains(text, " is ") && !strings.Contains(text, "called") &&
		!strings.Contains(text, "named") {
		return "", ""
	}
	bare := text
	for _, sign := range []string{". ", "; ", ", ", " (", ")", " - ", " – ", " — "} {
		bare = strings.ReplaceAll(bare, sign, "\n")
	}
	var left []string
	for piece := range strings.SplitSeq(bare, "\n") {
		if piece = strings.Trim(piece, " ."); piece == "" {
			continue
		}
		if n := definedBy(piece); n == "" {
			left = append(left, piece)
		} else if called != "" && n != called {
			return "", ""
		} else {
			called = n
		}
	}
	return called, strings.Join(left, ", ")
}

// definedBy is the name of a piece that is a word for a connector, a word that gives it a name, and the name: "the strip is called SWB".
func definedBy(piece string) string {
	w := strings.Fields(strings.NewReplacer("=", " = ", ": ", " = ").Replace(piece))
	for len(w) > 0 && isPlain[table.Fold(w[0])] {
		w = w[1:]
	}
	if len(w) == 0 {
		return ""
	}
	n := 1
	if f := table.Fold(w[0]); !IsPlug(f) && !stripname.Is(f) && f != "strip" && f != "leiste" && f != "regla" {
		if len(w) < 2 || table.Fold(w[1]) != "strip" && table.Fold(w[1]) != "block" {
			return ""
		}
		n = 2 // "terminal strip = TB2"
	}
	gives := 0
	for n+gives < len(w) && isGiven(w[n+gives]) {
		gives++
	}
	w = w[n:]
	if gives == 0 || len(w) != gives+1 || gives == 1 && !strings.Contains("=:", w[0]) && !isCalled(w[0]) {
		return ""
	}
	if name := strings.Trim(w[gives], `"'“”„`); isOwnName(name) {
		return name
	}
	return ""
}

// isGiven reports whether a word is one of those between a thing and its name.
func isGiven(w string) bool {
	switch table.Fold(w) {
	case "=", ":", "is", "are", "here", "below", "ist", "hier", "est", "ici", "es", "e", "heet", "heter", "hedder", "name", "id", "label",
		"labelled", "labeled", "marked", "tagged":
		return true
	}
	return isCalled(w)
}

// isCalled reports whether a word says by itself that a name follows.
func isCalled(w string) bool {
	switch table.Fold(w) {
	case "called", "named", "heisst", "genannt", "appele", "nomme", "llamado", "llamada", "chiamato", "chiamata", "genoemd", "kallas",
		"kaldt", "heet", "heter", "hedder", "labelled", "labeled", "marked", "tagged":
		return true
	}
	return false
}

// isOwnName reports whether a word is capitals and figures, as a list calls its connectors.
func isOwnName(w string) bool {
	const fewest, most = 2, 12 // bytes (no source)
	return len(w) >= fewest && len(w) <= most && strings.Trim(w, "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-_/.") == "" &&
		strings.IndexAny(w, "ABCDEFGHIJKLMNOPQRSTUVWXYZ") == 0
}
