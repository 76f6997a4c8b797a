package columned

import "strings"

// Pointed parts the remark off a line of cells that ends with an arrow back to them and some words over the edges of its columns; below
// is that it stands below the headings.
//
//	pin  signal colour     pin  signal colour
//	 1   DO     red         3   FA     white
//	 2   com    brown <- thick one, 14 ga, to the frame
func Pointed(heads []Field, line string, below bool) (cells, remark string) {
	const fewest = 3 // words (no source)
	if !below || strings.IndexByte(line, ' ') < 0 {
		return line, ""
	}
	for _, sign := range []string{" <- ", " <-- ", " <--- ", " <= ", " <== ", " ← ", " ⇐ ", " << ", " ^ "} {
		before, behind, ok := strings.Cut(line, sign)
		if !ok {
			continue
		}
		behind = strings.TrimSpace(behind)
		if len(Gapped(before)) < 2 || len(Gapped(behind)) != 1 || len(strings.Fields(behind)) < fewest {
			return line, ""
		}
		from := len([]rune(before)) + 1
		if !Crosses(heads, []Field{{From: from, To: len([]rune(strings.TrimRight(line, " ")))}}) {
			return line, ""
		}
		return before, strings.TrimSpace(sign) + " " + behind
	}
	return line, ""
}
