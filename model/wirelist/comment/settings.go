package comment

import (
	"strings"

	"contralay/model/wirelist/columned"
)

// Files of settings have a word for what is set at the front of each line, and no signs of a program. A list often stands in their
// comments.
//
//	# | lamp | PLUG.1 |
//	adapter gpio lamp 0 -chip 0
//	reset_config lamp_and_bell

// areSettings reports whether the lines of a text that no comment holds are such lines, some with an option or a name in parts: lines that
// tell wires have gaps, arrows or capitals at the front.
func areSettings(lines []string, program []bool) bool {
	n, plainly := 0, 0
	for i, l := range lines {
		if !program[i] {
			continue
		}
		l = strings.TrimSpace(l)
		word, rest, _ := strings.Cut(l, " ")
		if strings.HasPrefix(l, "#") { // one that is taken out
			continue
		}
		if word = strings.Trim(word, "_"); strings.Trim(word, "abcdefghijklmnopqrstuvwxyz_") != "" || len(word) < 2 ||
			len(columned.Gapped(l)) > 1 || strings.Contains(l, "->") || strings.ContainsAny(rest, ",;|") {
			return false
		}
		if n++; strings.Contains(l, "_") || strings.Contains(rest, " -") {
			plainly++
		}
	}
	return n > 1 && 2*plainly >= n
}
