package settle

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/plugwires"
	"contralay/model/wirelist/table"
)

// Plug is the heading that could name the plug of a table of colours: the nearest one, else a short text above it.
func (l *Look) Plug() string {
	for _, r := range slices.Backward(slices.Concat(l.Src.Titles, l.Src.Path)) {
		if _, text := r.Filled(); (r.Level > 1 || r.Level == 1 && plugwires.NamesPlug(text)) && !name.IsGeneric(text) {
			return text
		}
	}
	for _, r := range slices.Backward(l.Src.Titles) {
		if _, text := r.Filled(); r.Level == 0 && len(name.Words(table.Fold(text))) <= mostPlug && !name.IsGeneric(text) &&
			!strings.HasSuffix(text, ".") {
			return strings.TrimRight(text, ": ")
		}
	}
	return ""
}

// mostPlug is how many words a text has that names a plug and is no heading (no source).
const mostPlug = 6
