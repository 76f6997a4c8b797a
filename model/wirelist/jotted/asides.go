package jotted

import "strings"

// withoutAsides parts the brackets that stand before some texts, or instead of one, off them: "(see photo) lamp feed" and "(still to buy!)"
// are remarks on the wire, and name none.
func withoutAsides(texts []string) (bare, asides []string) {
	for _, t := range texts {
		if in, rest, closed := strings.Cut(t, ")"); closed && strings.HasPrefix(in, "(") && !strings.Contains(in[1:], "(") && len(in) > 2 {
			asides = append(asides, in[1:])
			t = strings.TrimSpace(rest)
		}
		if t != "" {
			bare = append(bare, t)
		}
	}
	return bare, asides
}
