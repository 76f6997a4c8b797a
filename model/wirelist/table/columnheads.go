package table

import (
	"slices"
	"strings"
)

// Which line of a text in columns names them: a rule below it says so, else the cells of the lines below stand under its words.

// headsOf gives the columns of such a text and the line of its headings, counted from 1; tight: a rule stands below them whose
// pieces are one blank apart, so that it alone says where a column ends. Lines before it are titles, gaps in them or not.
//
//	Barge Nell    24 V refit    paper of the owner
//
//	No   Function   From
//	---  ---------  ------
//	B01  Bilge      Panel 3
func headsOf(text string) (heads []field, line int, tight bool) {
	const looked = 40 // lines, from the top (no source)
	var lines [][]field
	var above string
	for l := range strings.SplitSeq(text, "\n") {
		if len(lines) == 4*looked {
			break
		}
		if rule := ruleOf(l); len(lines) > 0 && len(lines) <= looked && len(rule) > 2 {
			if heads := headsAbove(rule, above); heads != nil {
				return heads, len(lines), isTight(rule)
			}
		}
		lines, above = append(lines, withoutArrows(gapped(l))), l
	}
	best, most := -1, 0
	for i, cells := range lines {
		if len(cells) < 3 || best >= 0 && (i > looked || len(lines[i-1]) > 2 || holdsNumber(cells)) {
			continue
		}
		fit := 0
		for _, below := range lines[i+1:] {
			for _, c := range below {
				if standsUnder(cells, c) {
					fit++
				}
			}
		}
		// The first counts, but where one further down has by far more below it.
		if best < 0 || fit > 2*most && len(cells) >= len(lines[best]) {
			best, most = i, fit
		}
	}
	if best < 0 {
		return nil, 0, false
	}
	return lines[best], best + 1, false
}

// holdsNumber reports whether a cell is a number alone, which no heading is.
func holdsNumber(cells []field) bool {
	return slices.ContainsFunc(cells, func(c field) bool { return strings.Trim(c.text, "0123456789.,") == "" })
}

// ruleOf is the pieces of a line of dashes below headings; nil where it is anything else, or one dash long all over.
func ruleOf(line string) (rule []field) {
	if strings.Trim(line, "-=_ ") != "" {
		return nil
	}
	at := -1
	for i, r := range []rune(line + " ") {
		switch {
		case r != ' ' && at < 0:
			at = i
		case r == ' ' && at >= 0:
			rule = append(rule, field{from: at, to: i})
			at = -1
		}
	}
	return rule
}

// isTight reports whether two pieces of a rule are one blank apart.
func isTight(rule []field) bool {
	for i := range rule[1:] {
		if rule[i+1].from-rule[i].to < 2 {
			return true
		}
	}
	return false
}

// headsAbove is the headings over the pieces of a rule, each as wide as its piece; nil where the line above has other ones.
func headsAbove(rule []field, line string) []field {
	heads, runes := make([]field, len(rule)), []rune(line)
	for i, r := range rule {
		from, to := min(r.from, len(runes)), min(r.to, len(runes))
		if i+1 < len(rule) {
			to = min(rule[i+1].from, len(runes))
			if to > 0 && to < len(runes) && runes[to-1] != ' ' {
				return nil // a word of the line goes on over the edge
			}
		} else {
			to = len(runes)
		}
		heads[i] = field{strings.TrimSpace(string(runes[from:to])), r.from, r.to}
	}
	if strings.TrimSpace(heads[0].text) == "" && strings.TrimSpace(heads[1].text) == "" {
		return nil
	}
	return heads
}

// standsUnder reports whether a cell begins or ends where one of some headings does.
func standsUnder(heads []field, c field) bool {
	for _, h := range heads {
		if c.from == h.from || c.to == h.to {
			return true
		}
	}
	return false
}

// cutAt parts a line at the columns of a rule; nil where a word goes on over the edge of one.
func cutAt(heads []field, line string) []string {
	runes := []rune(line)
	out := make([]string, len(heads))
	for i, h := range heads {
		from, to := h.from, len(runes)
		if i == 0 {
			from = 0
		}
		if i+1 < len(heads) {
			to = heads[i+1].from
		}
		from, to = min(from, len(runes)), min(to, len(runes))
		if from > 0 && from < len(runes) && runes[from-1] != ' ' && runes[from] != ' ' {
			return nil
		}
		out[i] = marked(strings.TrimSpace(string(runes[from:to])))
	}
	return out
}
