package alike

import "strings"

// Names that end in a pole keep it: of "crank + wht 22" and "crank - blk/wht 22" the dash parts nothing.

// pole stands for the dash of a pole while a line is parted: no mark is like it.
const pole = " \u2212"

// poled writes the poles of those names that come with both of them such that no mark is seen in them.
func poled(texts []string) []string {
	plus := map[string]bool{}
	for _, t := range texts {
		if front, _, ok := strings.Cut(t+" ", " + "); ok {
			plus[front] = true
		}
	}
	out := texts
	for i, t := range texts {
		front, rest, ok := strings.Cut(t+" ", " - ")
		if !ok || !plus[front] {
			continue
		}
		if &out[0] == &texts[0] {
			out = append([]string(nil), texts...)
		}
		out[i] = strings.TrimSpace(front + pole + " " + rest)
	}
	return out
}

// unpoled gives the names their dashes back.
func unpoled(lines []Line) {
	for i := range lines {
		if front, ok := strings.CutSuffix(lines[i].Signal, pole); ok {
			lines[i].Signal = front + " -"
		}
	}
}
