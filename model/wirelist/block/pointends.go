package block

import (
	"slices"
	"strings"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/table"
)

// endPoints is how many rows from one on are the cavities of connectors, a point each that begins with both of them; 0 where they
// are none.
//
//   - P1-19 (MOSI)
//   - P1-21 (MISO)
func (f *finder) endPoints(i int) int {
	if f.runs(i) > 0 {
		return 0 // each says both of its ends
	}
	rows := f.t.Rows
	if _, _, ok := f.endPoint(i); !ok {
		return 0
	}
	n := 0
	seen := map[string]bool{}
	for i+n < len(rows) && rows[i+n].Deep == rows[i].Deep && (n == 0 || rows[i+n].Line == rows[i+n-1].Line+1) {
		end, _, ok := f.endPoint(i + n)
		if !ok || seen[end] {
			break
		}
		seen[end] = true
		n++
	}
	if n < 2 {
		return 0
	}
	return n
}

// endPoint parts a point in its end and the name behind it.
func (f *finder) endPoint(i int) (end, signal string, ok bool) {
	r := f.t.Rows[i]
	if len(r.Cells) != 1 || !r.Point || r.Level > 0 {
		return "", "", false
	}
	if _, to := arrow.In(r.Cells[0]); to > 0 {
		return "", "", false
	}
	first, rest, _ := strings.Cut(r.Cells[0], " ")
	first = strings.TrimRight(first, ":")
	connector, pin, split := name.SplitEnd(first)
	if !split || !name.IsDesignator(connector) || !name.IsCavity(pin) || !strings.ContainsAny(pin, "0123456789") {
		return "", "", false
	}
	rest = strings.TrimSpace(strings.TrimLeft(rest, " -–=:"))
	if in, opened := strings.CutPrefix(rest, "("); opened && strings.HasSuffix(in, ")") && !strings.ContainsAny(in[:len(in)-1], "()") {
		rest = in[:len(in)-1]
	}
	word, _, _ := strings.Cut(table.Fold(rest), " ")
	if rest == "" || !point.IsShortName(rest) || strings.Contains(rest, ", ") || isToWord(word) {
		return "", "", false
	}
	return connector + ":" + pin, rest, true
}

// listEnds makes the block of such a list.
func (f *finder) listEnds(at, n int) {
	b := Block{Table: f.t, Path: slices.Clone(f.path), Titles: f.titles(), Listed: true}
	for i := at; i < at+n; i++ {
		r := f.t.Rows[i]
		end, signal, _ := f.endPoint(i)
		r.Cells, r.Prose = []string{end, signal}, false
		b.Rows = append(b.Rows, r)
	}
	f.close()
	f.all = append(f.all, b)
}

// sayPin reports whether each of some points begins with a word for a cavity, and the cavities rise.
func sayPin(points []table.Row) bool {
	last := 0
	for _, r := range points {
		pin, _, ok := point.Cut(r.Cells[0])
		at := name.Ordinal(pin)
		if !ok || !point.SaysPin(r.Cells[0]) || at <= last {
			return false
		}
		last = at
	}
	return len(points) > 2
}

// isToWord reports whether a word says that where the wire goes follows.
func isToWord(w string) bool {
	return slices.Contains([]string{"to", "goes", "from", "and", "nach", "zu", "an", "von", "vers", "a", "hacia",
		"naar", "till", "til", "do"}, w)
}
