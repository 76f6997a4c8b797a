package alike

import (
	"slices"

	"contralay/model/wirelist/value"
)

// wholeSections takes whole numbers for sizes where the piece at their place is a section with decimals and no unit in other lines, and
// each line that is in use has one there.
//
//	1 - red - pump - 1.5
//	2 - blue - lamp - 1
func wholeSections(side [][]piece) {
	for at := range 5 { // places that are looked at (no source)
		decimals, whole, others := 0, 0, 0
		for _, all := range side {
			switch {
			case !slices.ContainsFunc(all, piece.isValue) || at >= len(all):
			case value.IsSection(all[at].text):
				decimals++
			case isWholeSection(all[at].text):
				whole++
			default:
				others++
			}
		}
		if decimals == 0 || whole == 0 || others > 0 {
			continue
		}
		for _, all := range side {
			if at < len(all) && isWholeSection(all[at].text) && slices.ContainsFunc(all, piece.isValue) {
				all[at].size = all[at].text
			}
		}
	}
}

// isWholeSection reports whether a text is a cross section in mm² without decimals that wire is made in. Common practice, no source.
func isWholeSection(text string) bool {
	return slices.Contains([]string{"1", "2", "3", "4", "6", "10", "16", "25"}, text)
}
