package columned

import "strings"

// EvenTabs reports whether most lines of a text have as many tabs, two or more: whatever else its cells say, the tabs part them.
func EvenTabs(text string) bool {
	const least = 4 // lines (no source)
	on, filled := map[int]int{}, 0
	for line := range strings.SplitSeq(text, "\n") {
		if strings.TrimSpace(line) == "" {
			continue
		}
		filled++
		if n := strings.Count(line, "\t"); n > 1 && !strings.Contains(line, "\t\t\t") {
			on[n]++
		}
	}
	for _, n := range on {
		if n >= least && 5*n >= 4*filled {
			return true
		}
	}
	return false
}
