package noted

import "strings"

// A list of things to do has a box before each of them, and a tick in those that are done. The box says nothing of the wire.
//
//	- [x] Bilge pump: panel 4 -> pump 1 (14 AWG red)
//	- [ ] Horn: panel 5 -> horn 1 (18 AWG blue)

// boxes takes the boxes off, where two lines or more begin with one; a text that commas parted behind a box is put together again.
func (n *notes) boxes() {
	var at []int
	for i, r := range n.rows {
		if _, first := r.Filled(); r.Level == 0 && withoutBox(first) != first {
			at = append(at, i)
		}
	}
	if len(at) < 2 {
		return
	}
	for _, i := range at {
		text := ""
		for _, c := range n.rows[i].Cells {
			if text != "" && c != "" {
				text += ", "
			}
			text += c
		}
		n.set(i, withoutBox(text))
		n.rows[i].Point = true
	}
}

// withoutBox is a text without the box that it begins with.
func withoutBox(text string) string {
	for _, box := range []string{"☐", "☑", "☒", "✓", "✔", "✗", "✘", "✅", "❌", "⬜", "□", "■"} {
		if rest, ok := strings.CutPrefix(text, box); ok && strings.HasPrefix(rest, " ") {
			return strings.TrimSpace(rest)
		}
	}
	if text == "" || text[0] != '[' && text[0] != '(' {
		return text
	}
	shut := map[byte]string{'[': "]", '(': ")"}[text[0]]
	in, rest, ok := strings.Cut(text[1:], shut)
	switch strings.TrimSpace(in) {
	case "", "x", "X", "✓", "✔", "✗", "✘", "v", "-", "*", "/", "~":
		if ok && strings.HasPrefix(rest, " ") && (text[0] == '[' || in != "-" && in != "/") {
			return strings.TrimSpace(rest)
		}
	}
	return text
}
