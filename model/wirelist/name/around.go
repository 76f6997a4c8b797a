package name

import "strings"

// splitAround parts "3@P1", of which the cavity stands first, and a designator with a range of its cavities behind a sign that is
// none of the range, "P1 1-4", "P1/1-4", "P1-1..4".
func splitAround(cell string) (connector, pin string, ok bool) {
	cell = strings.TrimSpace(cell)
	if front, back, cut := strings.Cut(cell, "@"); cut {
		front, back = strings.TrimSpace(front), strings.TrimSpace(back)
		return back, front, IsCavity(front) && back != "" && !strings.Contains(back, "@")
	}
	i := strings.IndexAny(cell, " -/.:")
	if i < 1 || !IsDesignator(cell[:i]) || !LooksLikeRange(cell[i+1:]) || cell[i] == '-' && strings.Contains(cell[i+1:], "-") {
		return "", "", false
	}
	return cell[:i], cell[i+1:], true
}
