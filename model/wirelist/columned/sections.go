package columned

import "strings"

// Section is the columns of a paragraph that stand elsewhere than those at the head of the text.
type Section struct {
	Heads  []Field
	Starts []int
	IsHead bool // the line is its headings
	Title  bool // the line stands above them
}

// Sections finds the paragraphs of a text in columns that have columns of their own, by their headings or because as many cells stand
// elsewhere: what it says of each of their lines, counted from 1.
//
//	Pin  Signal      Colour
//	1    horn        red
//
//	Fuse  Rating  Feeds
//	F1    5 A     horn
func Sections(heads []Field, at int, text string) map[int]Section {
	lines := strings.Split(text, "\n")
	found := map[int]Section{}
	for from := 0; from < len(lines); {
		if strings.TrimSpace(lines[from]) == "" {
			from++
			continue
		}
		to := from
		for to < len(lines) && strings.TrimSpace(lines[to]) != "" {
			to++
		}
		if from >= at { // below the headings and what is theirs
			section(heads, lines, from, to, found)
		}
		from = to
	}
	return found
}

// section looks at one paragraph.
func section(heads []Field, lines []string, from, to int, found map[int]Section) {
	if own, head := ownHeads(heads, lines, from, to); head >= 0 {
		s := Section{Heads: own, Starts: Starts(own, strings.Join(lines[head:to], "\n"))}
		for n := from; n < to; n++ {
			s.IsHead, s.Title = n == head, n < head
			found[n+1] = s
		}
		return
	}
	if own := moved(heads, lines[from:to]); own != nil {
		s := Section{Heads: own, Starts: Starts(own, strings.Join(lines[from:to], "\n"))}
		for n := from; n < to; n++ {
			if len(Gapped(lines[n])) > 1 {
				found[n+1] = s
			}
		}
	}
}

// ownHeads are the headings that a paragraph has of its own, and their line; −1 where it has none: its first line of several cells,
// or the second below a title, with a rule below it, or without a digit and with what is below it under its words.
func ownHeads(heads []Field, lines []string, from, to int) (own []Field, at int) {
	const titles = 3 // lines above the headings (no source)
	for n := from; n < min(to-1, from+titles); n++ {
		cells := WithoutArrows(Gapped(lines[n]))
		if len(cells) < 2 || isAgain(heads, lines[n]) {
			continue
		}
		if rule := ruleOf(lines[n+1]); len(rule) > 1 {
			if own := headsAbove(rule, lines[n]); own != nil && !sameColumns(heads, own) {
				return own, n
			}
			return nil, -1
		}
		if strings.ContainsAny(lines[n], "0123456789") || len(cells) < 3 {
			continue
		}
		fit, all, old := 0, 0, 0
		for _, l := range lines[n+1 : to] {
			for _, c := range Gapped(l) {
				all++
				if standsUnder(cells, c) {
					fit++
				}
				if standsUnder(heads, c) {
					old++
				}
			}
		}
		if all > 1 && 5*fit >= 4*all && 5*old < 4*all && !sameColumns(heads, cells) {
			return cells, n
		}
		return nil, -1
	}
	return nil, -1
}

// sameColumns reports whether some headings stand where others do.
func sameColumns(heads, own []Field) bool {
	at := map[int]bool{}
	for _, h := range heads {
		at[h.From] = true
	}
	for _, h := range own {
		if !at[h.From] {
			return false
		}
	}
	return true
}

// moved are the columns of a paragraph without headings that has some line with a cell for each of the headings, where most of its cells
// begin elsewhere than those do; nil for any other.
func moved(heads []Field, lines []string) (own []Field) {
	at := map[int]bool{}
	for _, h := range heads {
		at[h.From] = true
	}
	all, there := 0, 0
	for _, l := range lines {
		cells := WithoutArrows(Gapped(l))
		if len(cells) < 2 {
			continue
		}
		for _, c := range cells[1:] {
			if all++; at[c.From] {
				there++
			}
		}
		if len(cells) != len(heads) {
			continue
		}
		if own == nil {
			own = make([]Field, len(heads))
			for k := range heads {
				own[k] = Field{heads[k].Text, cells[k].From, cells[k].To}
			}
			continue
		}
		for k, c := range cells {
			own[k].From, own[k].To = min(own[k].From, c.From), max(own[k].To, c.To)
		}
	}
	if all == 0 || 2*there >= all {
		return nil
	}
	return own
}
