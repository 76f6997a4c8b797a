package titled

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// inPairs makes one text of a row of pairs that names a connector first: a word for one and its name, and behind them what else is known
// of it; "" for any other row.
//
//	Conn.: | J101 | Part no.: | HB-361 | Ways: | 8
//	Plug   | Power box
func inPairs(r table.Row) string {
	if n, _ := r.Filled(); n < 2 || n%2 > 0 {
		return ""
	}
	var filled []string
	for _, c := range r.Cells {
		if c != "" {
			filled = append(filled, c)
		}
	}
	bare := func(c string) string { return strings.TrimRight(strings.TrimSpace(c), ":.# ") }
	if !saysConnector(bare(filled[0])) || len(strings.Fields(filled[1])) > mostName {
		return ""
	}
	text, more := bare(filled[0])+" "+filled[1], []string(nil)
	for k := 2; k < len(filled); k += 2 {
		key := bare(filled[k])
		if isWays(key) && strings.Trim(filled[k+1], "0123456789") == "" {
			more = append(more, filled[k+1]+" way")
		} else {
			more = append(more, key+" "+filled[k+1])
		}
	}
	if more != nil {
		text += " (" + strings.Join(more, ", ") + ")"
	}
	return text
}

// mostName is how many words the name of a connector has (no source).
const mostName = 4

// saysConnector reports whether a word heads the name of a connector.
func saysConnector(word string) bool {
	switch w := table.Fold(word); w {
	case "conn", "connector id", "connector name", "plug name", "fiche", "device", "gerat", "bauteil", "component", "componente":
		return true
	default:
		return name.IsConnectorWord(w)
	}
}

// isWays reports whether a word heads how many cavities there are.
func isWays(word string) bool {
	switch table.Fold(word) {
	case "ways", "way", "no of ways", "pins", "poles", "cavities", "pole", "polzahl", "voies", "vias", "vie", "polen":
		return true
	}
	return false
}
