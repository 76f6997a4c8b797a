package row

import "contralay/model/wirelist/name"

// countedIn is the connector that one of some texts names by its number of cavities; "" where none does, or two differ.
func countedIn(texts []string) (found string) {
	for _, t := range texts {
		switch of := name.CountedConnector(t); {
		case of == "" || of == found:
		case found != "":
			return ""
		default:
			found = of
		}
	}
	return found
}
