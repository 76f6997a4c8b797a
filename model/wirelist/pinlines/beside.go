package pinlines

import (
	"slices"
	"strings"

	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// Two plugs side by side, or the cavities of one in two columns: in every line a second cavity stands at the same place.
//
//	C101                       C102
//	1  FUEL PUMP   16 ORG      1  LH LOW    16 TAN
//	2  PUMP GND    16 BLK      2  LH HIGH   16 YEL

// beside makes the tables of a run whose lines say two cavities each; above is how many rows above it are in them, as titles or rules.
// nil where it is no such run.
func beside(h shape.Headings, rows []table.Row, i, n int) (made []table.Row, above int) {
	at := secondAt(rows[i : i+n])
	if at == 0 {
		return nil, 0
	}
	var left, right []table.Row
	for _, r := range rows[i : i+n] {
		a, b := cutAt(r.Raw, at)
		r.Raw = a
		left = append(left, r)
		if r.Raw = b; b != "" {
			right = append(right, r)
		}
	}
	var titles [2]table.Row
	k := i - 1
	for k >= 0 && rows[k].Raw != "" && strings.Trim(rows[k].Raw, "-=_ \t") == "" {
		k--
	}
	titled := false
	if k >= 0 && rows[k].Raw != "" && rows[k].Line+4 > rows[i].Line {
		if len(wide.Split(strings.TrimSpace(rows[k].Raw), -1)) > 2 {
			return nil, 0 // headings
		}
		a, b := titlesOf(rows[k].Raw, at)
		if titled = a != "" && b != ""; titled {
			titles = [2]table.Row{rows[k], rows[k]}
			titles[0].Cells, titles[1].Cells = []string{withoutBlanks(a)}, []string{withoutBlanks(b)}
			titles[0].Gap, titles[1].Gap = nil, nil
		}
	}
	if titled {
		one, other := tableOf(h, left, 0, len(left)), tableOf(h, right, 0, len(right))
		if one == nil || other == nil {
			return nil, 0
		}
		return slices.Concat([]table.Row{titles[0]}, one, []table.Row{titles[1]}, other), i - k
	}
	if all := tableOf(h, append(left, right...), 0, len(left)+len(right)); all != nil {
		return all, 0
	}
	var turns []table.Row // the second cavity of a line is the next one
	for k, l := range left {
		turns = append(turns, l)
		if j := slices.IndexFunc(right, func(r table.Row) bool { return r.Line == left[k].Line }); j >= 0 {
			turns = append(turns, right[j])
		}
	}
	return tableOf(h, turns, 0, len(turns)), 0
}

// titlesOf parts the line of two titles, of which the second stands nearly where the cavities below it do; "" where it does not.
func titlesOf(raw string, at int) (one, other string) {
	const most = 3 // characters beside them (no source)
	for by := 0; by <= most; by++ {
		for _, k := range []int{at - by, at + by} {
			if k > 2 && gapBefore(raw, k) {
				return cutAt(raw, k)
			}
		}
	}
	return "", ""
}

// cutAt parts a line at a place, in characters.
func cutAt(raw string, at int) (front, behind string) {
	runes := []rune(raw)
	if len(runes) <= at {
		return strings.TrimRight(raw, " \t"), ""
	}
	return strings.TrimRight(string(runes[:at]), " \t"), strings.TrimRight(string(runes[at:]), " \t")
}

// gapBefore reports whether two blanks stand before a place in a line, or the line ends before it.
func gapBefore(raw string, at int) bool {
	runes := []rune(raw)
	return len(runes) <= at || runes[at] != ' ' && runes[at-1] == ' ' && runes[at-2] == ' '
}

// secondAt is where the second cavity of each line stands, in characters; 0 where there is none.
func secondAt(rows []table.Row) int {
	first := []rune(rows[0].Raw)
	for at := 4; at < len(first); at++ {
		if !gapBefore(rows[0].Raw, at) {
			continue
		}
		n := 0
		for _, r := range rows {
			_, behind := cutAt(r.Raw, at)
			if behind == "" {
				continue
			}
			if f, ok := frontOf(behind); !ok || f.plug != "" || !gapBefore(r.Raw, at) || strings.TrimSpace(f.rest) == "" {
				n = -1
				break
			}
			n++
		}
		if n > 1 && n+1 >= len(rows)/2 {
			return at
		}
	}
	return 0
}
