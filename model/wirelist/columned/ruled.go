package columned

import "strings"

// A rule below headings says that a text has a table, whatever else stands above it and below: a sketch of a plug, a letter.
//
//	   o 1    o 2
//	o 4          o 3
//
//	PIN   WHAT    OTHER END
//	---   -----   ---------
//	1     SUPPLY  FUSE 4

// BelowRule reports whether most lines right below such a rule, and two at least, have their cells in its columns.
func BelowRule(text string) bool {
	if !strings.Contains(text, "-- ") && !strings.Contains(text, "== ") {
		return false
	}
	_, at, ruled, _ := Heads(text)
	if !ruled {
		return false
	}
	lines, cells := 0, 0
	for _, l := range strings.Split(text, "\n")[at+1:] {
		if strings.TrimSpace(l) == "" && lines > 1 {
			break
		}
		if strings.TrimSpace(l) == "" {
			continue
		}
		if lines++; len(Gapped(l)) > 1 {
			cells++
		}
	}
	return cells > 1 && 2*cells > lines
}
