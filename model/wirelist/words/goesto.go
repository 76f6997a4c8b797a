package words

import (
	"strings"

	"contralay/model/wirelist/table"
)

// BehindGoesTo is the place that a text names behind words for where a wire goes, "a relé K3 borne 87", "va au relais K3", "to the frame";
// ok is false where it begins with no such word. "A" is one in some languages and an article in others: a single text says little. From
// memory, no source.
func BehindGoesTo(text string) (place string, ok bool) {
	all := strings.Fields(strings.ReplaceAll(text, "’", "'"))
	at := 0
	if at < len(all) && isGoes(table.Fold(all[at])) {
		at++
	}
	if at >= len(all) {
		return text, false
	}
	w := table.Fold(all[at])
	if after, cut := strings.CutPrefix(w, "all'"); cut && after != "" {
		return strings.Join(append([]string{all[at][len("all'"):]}, all[at+1:]...), " "), true
	}
	if !GoesTo(w) && !isJoinedTo(w) {
		return text, false
	}
	for at++; at < len(all) && IsArticle(table.Fold(all[at])); {
		at++
	}
	if at >= len(all) {
		return text, false
	}
	return strings.Join(all[at:], " "), true
}

// isGoes reports whether a folded word says that a wire goes somewhere.
func isGoes(w string) bool {
	switch w {
	case "goes", "runs", "leads", "geht", "fuhrt", "lauft", "va", "vai", "gaat", "loopt", "gar", "idzie", "vede", "part", "sale":
		return true
	}
	return false
}

// isJoinedTo reports whether a folded word is one for where to with its article, or one that GoesTo leaves out as it begins names as well.
func isJoinedTo(w string) bool {
	switch w {
	case "aux", "allo", "agli", "ai", "alle", "ao", "aos", "para", "till", "til", "do", "zum", "zur", "hasta":
		return true
	}
	return false
}
