package keyed

import (
	"slices"
	"strings"

	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/toldcells"
)

// card is a run of lines that begin with a key each.
type card struct {
	rows  []int
	facts []pair
}

// Cards makes rows of a table of cards, a blank line between each two; they are as they were where there are less than three, or not each
// line of them begins with a key that others begin with as well. lines are those of each card, by the first.
func Cards(h shape.Headings, t *table.Table) (rows []table.Row, lines map[int][]int) {
	if h.HeadLine() > 0 || h.Numbered() || len(t.Rows) < 3*least || len(t.Rows) > mostLines || toldcells.HasHeads(h, t.Rows) {
		return t.Rows, nil
	}
	var all []card
	uses := map[string]int{}
	for i := 0; i < len(t.Rows); {
		n := 1
		for i+n < len(t.Rows) && t.Rows[i+n].Line == t.Rows[i+n-1].Line+1 {
			n++
		}
		var c card
		for k := i; k < i+n && n > 2; k++ {
			key, says, ok := strings.Cut(strings.TrimSpace(toldcells.Text(t.Rows[k].Cells)), " ")
			if key = strings.ToLower(strings.TrimRight(key, ":.=")); !ok || t.Rows[k].Level > 0 || t.Rows[k].Drawn != nil ||
				slices.ContainsFunc(c.facts, func(p pair) bool { return p.key == key }) {
				c.facts = nil
				break
			}
			c.rows, c.facts = append(c.rows, k), append(c.facts, pair{key, strings.TrimSpace(says)})
		}
		if c.facts != nil {
			all = append(all, c)
			for _, p := range c.facts {
				uses[p.key]++
			}
		}
		i += n
	}
	if len(all) < least {
		return t.Rows, nil
	}
	known := knownIn(h)
	var keys []string
	for _, c := range all {
		for _, p := range c.facts {
			if !slices.Contains(keys, p.key) {
				keys = append(keys, p.key)
			}
			if uses[p.key] < 2 && known(p.key) == "" {
				return t.Rows, nil
			}
		}
	}
	heads := headings(known, keys, nil)
	of := map[int][]pair{}
	for i, c := range all {
		of[i] = c.facts
	}
	if heads == nil || uses[keys[0]] < len(all) || !haveCavities(known, heads, keys, of) {
		return t.Rows, nil
	}
	return spreadCards(t, all, keys, heads)
}

// spreadCards puts a row in the place of each card.
func spreadCards(t *table.Table, all []card, keys, heads []string) (rows []table.Row, lines map[int][]int) {
	lines = map[int][]int{}
	at := 0
	headed := false
	for i := 0; i < len(t.Rows); i++ {
		if at == len(all) || i != all[at].rows[0] {
			r := t.Rows[i]
			r.Cells = []string{toldcells.Text(r.Cells)}
			rows, headed = append(rows, r), false
			continue
		}
		c, r := all[at], table.Row{Line: t.Rows[i].Line, Cells: make([]string, len(keys))}
		for _, p := range c.facts {
			r.Cells[slices.Index(keys, p.key)] = p.says
		}
		for _, k := range c.rows[1:] {
			lines[r.Line] = append(lines[r.Line], t.Rows[k].Line)
		}
		if !headed {
			rows, headed = append(rows, table.Row{Line: r.Line, Cells: heads, First: true, Ruled: t.Marked}), true
		}
		rows = append(rows, r)
		i += len(c.rows) - 1
		at++
	}
	return rows, lines
}
