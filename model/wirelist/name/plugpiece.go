package name

import (
	"strings"

	"contralay/model/wirelist/prose"
	"contralay/model/wirelist/table"
)

// plugPiece is the piece of a title that says which connector it is of, where a dash parts it from what it is in and it ends with a word
// for one: "rate controller plug" of "SPRAYER - rate controller plug (the round one)". "" where no piece does, or several.
func plugPiece(text string) (plug string) {
	bare := strings.NewReplacer(" – ", " - ", " — ", " - ").Replace(strings.TrimSpace(WithoutBrackets(text)))
	pieces := strings.Split(bare, " - ")
	if first, _, _ := strings.Cut(bare, " "); len(pieces) < 2 || IsDesignator(strings.TrimRight(first, ":,")) {
		return ""
	}
	for _, p := range pieces {
		p, _, _ = strings.Cut(p, ", ") // "ECU plug B, grey"
		w := strings.Fields(p)
		if len(w) < 2 || len(w) > 5 || isSentence(p) {
			continue
		}
		named := IsConnectorWord(table.Fold(w[len(w)-2])) && prose.IsOrdinal(w[len(w)-1]) && w[len(w)-1] == strings.ToUpper(w[len(w)-1])
		if !named && !IsConnectorWord(table.Fold(strings.Trim(w[len(w)-1], ".,:;"))) && !prose.LeadsConnector(table.Fold(w[0])) {
			continue
		}
		if plug != "" {
			return ""
		}
		plug = strings.TrimRight(strings.TrimSpace(p), ".,:;")
	}
	return plug
}
