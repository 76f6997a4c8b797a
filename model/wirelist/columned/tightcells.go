package columned

import "strings"

// Starts counts the cells of a text that begin right where each column does.
func Starts(heads []Field, text string) []int {
	at := map[int]int{}
	for k, h := range heads {
		at[h.From] = k
	}
	n := make([]int, len(heads))
	for line := range strings.SplitSeq(text, "\n") {
		for i, c := range Gapped(line) {
			if k, ok := at[c.From]; ok && i > 0 {
				n[k]++
			}
		}
	}
	return n
}

// Parted parts the cells that fill their columns, so that one blank alone stands before the next one: what follows begins right where that
// column does, as its cells in other lines do, and is one word, or every column has a cell then. A column without a heading has gaps.
//
//	TO                AWG
//	Battery           18
//	Stick coil 1 / 12 20
func Parted(heads []Field, starts []int, cells []Field) []Field {
	const least = 3 // lines whose cells begin there, that of the headings among them (no source)
	if all := partedAt(heads, starts, cells, least-1, true); len(all) == len(heads) {
		return all
	}
	return partedAt(heads, starts, cells, least, false)
}

// partedAt parts them where as many lines as least have a cell that begins there; texts: what follows may be several words.
func partedAt(heads []Field, starts []int, cells []Field, least int, texts bool) (all []Field) {
	for _, c := range cells {
		runes := []rune(c.Text)
		for k := len(heads) - 1; k > 0; k-- {
			at := heads[k].From - c.From
			if heads[k].Text == "" || heads[k].From <= c.From || heads[k].From >= c.To || c.From < heads[k-1].From || starts[k] < least ||
				at < 2 || at >= len(runes) || runes[at-1] != ' ' || !texts && strings.ContainsRune(string(runes[at:]), ' ') {
				continue
			}
			all = append(all, Field{strings.TrimSpace(string(runes[:at])), c.From, heads[k].From - 1})
			c = Field{string(runes[at:]), heads[k].From, c.To}
			break
		}
		all = append(all, c)
	}
	return all
}
