package noted

import (
	"strings"

	"contralay/model/wirelist/arrow"
)

// What is crossed out is gone. Behind it often stands why.
//
//	- ~~Stern lamp: panel 9 -> lamp 1 (18 AWG red)~~ sold with the old mast

// struck marks the lines that are struck out but for a remark behind, one before, or a sign round them.
func (n *notes) struck() {
	n.texts(func(i int, text string) bool {
		if !strings.Contains(text, "~~") {
			return true
		}
		front, rest, open := strings.Cut(text, "~~")
		in, behind, closed := strings.Cut(rest, "~~")
		front, behind = strings.TrimSpace(front), strings.TrimSpace(behind)
		if !open || !closed || strings.Contains(behind, "~~") || !isAside(front) || !isAside(behind) || len(in) < len(behind) {
			return true
		}
		n.set(i, strings.Join(strings.Fields(front+" "+in+" "+behind), " "))
		n.rows[i].Struck = true
		return true
	})
}

// isAside reports whether a text tells no wire: nothing in it points anywhere.
func isAside(text string) bool {
	const most = 12 // words (no source)
	_, to := arrow.In(text)
	return to == 0 && !strings.Contains(text, " > ") && len(strings.Fields(text)) <= most && !strings.HasSuffix(text, ":")
}
