package columned

import (
	"slices"
	"strings"
)

// Which line of a text in columns names them: a rule below it says so, else the cells of the lines below stand under its words.

// Heads gives the columns of such a text and the line of its headings, counted from 1; ruled: a rule stands below them; tight: one
// whose
// pieces are one blank apart, so that it alone says where a column ends. Lines before it are titles, gaps in them or not.
//
//	Barge Nell    24 V refit    paper of the owner
//
//	No   Function   From
//	---  ---------  ------
//	B01  Bilge      Panel 3
func Heads(text string) (heads []Field, line int, ruled, tight bool) {
	const looked = 40 // lines, from the top (no source)
	var lines [][]Field
	var above string
	for l := range strings.SplitSeq(text, "\n") {
		if len(lines) == 4*looked {
			break
		}
		if rule := ruleOf(l); len(lines) > 0 && len(lines) <= looked && len(rule) > 2 {
			if heads := headsAbove(rule, above); heads != nil {
				return heads, len(lines), true, isTight(rule)
			}
		}
		lines, above = append(lines, WithoutArrows(Gapped(l))), l
	}
	best, share := -1, 0.0
	most := 0 // cells below a line that is looked at
	for i, cells := range lines {
		if len(cells) < 3 || best >= 0 && (i > looked || len(lines[i-1]) > 2 && !isTitled(lines, i, best) || holdsNumber(cells)) {
			continue
		}
		fit, all := 0, 0
		for _, below := range lines[i+1:] {
			for _, c := range below {
				if all++; standsUnder(cells, c) {
					fit++
				}
			}
		}
		// The first counts, but where far more of what is below one further down stands under it, or more and that has more cells.
		of := float64(fit) / float64(max(all, 1))
		if best < 0 || 2*all > most && (3*of > 4*share && len(cells) == len(lines[best]) || of > share && len(cells) > len(lines[best])) {
			best, share, most = i, of, max(all, most)
		}
	}
	if best < 0 {
		return nil, 0, false, false
	}
	return lines[best], best + 1, false, false
}

// isTitled reports whether what was taken for headings, the line right before one, can be a title with gaps in it: it begins with a word
// that has a digit, and the line itself has none, as headings have.
//
//	X1   round   lid side
//	Pin  Signal  AWG  Colour
func isTitled(lines [][]Field, i, best int) bool {
	const digits = "0123456789"
	return i == best+1 && strings.ContainsAny(lines[best][0].Text, digits) && !strings.Contains(lines[best][0].Text, " ") &&
		!slices.ContainsFunc(lines[i], func(c Field) bool { return strings.ContainsAny(c.Text, digits) })
}

// holdsNumber reports whether a cell is a number alone, which no heading is.
func holdsNumber(cells []Field) bool {
	return slices.ContainsFunc(cells, func(c Field) bool { return strings.Trim(c.Text, "0123456789.,") == "" })
}

// ruleOf is the pieces of a line of dashes below headings; nil where it is anything else, or one dash long all over.
func ruleOf(line string) (rule []Field) {
	if strings.Trim(line, "-=_ ") != "" {
		return nil
	}
	at := -1
	for i, r := range []rune(line + " ") {
		switch {
		case r != ' ' && at < 0:
			at = i
		case r == ' ' && at >= 0:
			rule = append(rule, Field{From: at, To: i})
			at = -1
		}
	}
	return rule
}

// isTight reports whether two pieces of a rule are one blank apart.
func isTight(rule []Field) bool {
	for i := range rule[1:] {
		if rule[i+1].From-rule[i].To < 2 {
			return true
		}
	}
	return false
}

// headsAbove is the headings over the pieces of a rule, each as wide as its piece; nil where the line above has other ones.
func headsAbove(rule []Field, line string) []Field {
	heads, runes := make([]Field, len(rule)), []rune(line)
	for i, r := range rule {
		from, to := min(r.From, len(runes)), len(runes)
		if i+1 < len(rule) {
			to = min(rule[i+1].From, len(runes))
			if to > 0 && to < len(runes) && runes[to-1] != ' ' {
				return nil // a word of the line goes on over the edge
			}
		}
		heads[i] = Field{strings.TrimSpace(string(runes[from:to])), r.From, r.To}
	}
	if strings.TrimSpace(heads[0].Text) == "" && strings.TrimSpace(heads[1].Text) == "" {
		return nil
	}
	return heads
}

// standsUnder reports whether a cell begins or ends where one of some headings does.
func standsUnder(heads []Field, c Field) bool {
	for _, h := range heads {
		if c.From == h.From || c.To == h.To {
			return true
		}
	}
	return false
}

// CutAt parts a line at the columns of a rule; nil where a word goes on over the edge of one.
func CutAt(heads []Field, line string) []string {
	runes := []rune(line)
	out := make([]string, len(heads))
	for i, h := range heads {
		from, to := h.From, len(runes)
		if i == 0 {
			from = 0
		}
		if i+1 < len(heads) {
			to = heads[i+1].From
		}
		from, to = min(from, len(runes)), min(to, len(runes))
		if from > 0 && from < len(runes) && runes[from-1] != ' ' && runes[from] != ' ' {
			return nil
		}
		out[i] = strings.TrimSpace(string(runes[from:to]))
	}
	return out
}

// Crosses reports whether a cell of a line goes over the edge of a column: one blank alone parts two cells there.
func Crosses(heads, cells []Field) bool {
	for _, c := range cells {
		for _, h := range heads[1:] {
			if c.From < h.From && h.From < c.To {
				return true
			}
		}
	}
	return false
}
