package sentence

import (
	"strconv"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// CountedConnector is the connector that one of some texts names by its number of cavities; "" where none does, or two differ.
func CountedConnector(texts []string) (found string) {
	for _, t := range texts {
		switch of := countedConnector(t); {
		case of == "" || of == found:
		case found != "":
			return ""
		default:
			found = of
		}
	}
	return found
}

// countedConnector is the connector that a sentence names by its number of cavities, "16-pin mast header" of "The table shows the
// 16-pin mast header of the box."; "" where it names none, or two.
func countedConnector(text string) (found string) {
	all := strings.Fields(text)
	for i, w := range all {
		n, word, ok := strings.Cut(table.Fold(strings.Trim(w, "(\"'")), "-")
		if _, err := strconv.Atoi(n); err != nil || !ok || word != "pin" && word != "way" && word != "pole" && word != "pins" {
			continue
		}
		for k := i + 1; k < min(len(all), i+6); k++ {
			bare := strings.Trim(all[k], ".,:;()\"'")
			if name.IsConnectorWord(table.Fold(bare)) {
				if found != "" {
					return ""
				}
				found = strings.TrimLeft(strings.Join(append(append([]string{}, all[i:k]...), bare), " "), "(\"'")
				break
			}
			if bare != all[k] {
				break
			}
		}
	}
	return found
}
