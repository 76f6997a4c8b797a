// Package outputs tells the numbers of the outputs of a unit from the cavities that these come out at.
package outputs

import (
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// Numbers reports whether a column of cavities by its heading, one for outputs or channels, is a second name of the cavities of another
// column below a plain word for these: short names, "Q1", or numbers that rise. An output may come out at several cavities.
//
//	Output | Pin | Load            Pin | Channel | Load
//	Q1     | A2  | Horn            A2  | 1       | Horn
func Numbers(cols []shape.Column, prof []column.Profile, rows []table.Row, i int) bool {
	if !isOutput(cols[i].Head) || cols[i].Of != "" || cols[i].Given {
		return false
	}
	pin, plug := -1, -1
	for k, c := range cols {
		switch {
		case k == i || prof[k].Filled == 0:
		case c.Field == name.FieldConnector:
			plug = k
		case c.Field == name.FieldPin && isOutput(c.Head): // "Channel | Output | Pin"
		case c.Field == name.FieldPin && pin >= 0:
			return false
		case c.Field == name.FieldPin:
			pin = k
		}
	}
	if pin < 0 || cols[pin].Of != "" {
		return false
	}
	w := name.Words(table.Fold(cols[pin].Head))
	p, q := &prof[i], &prof[pin]
	once := q.Unique() || plug >= 0 && column.PairsOnce(rows, plug, pin)
	return len(w) > 0 && name.IsPinWord(w[0]) && !words.IsOutput(w[0]) && q.Most(q.Cavities) && once && q.Filled >= p.Filled &&
		(p.All(p.Ids) && p.Numbers == 0 || p.All(p.Numbers) && rises(rows, i))
}

// isOutput reports whether a heading is a word for an output, alone or with one for its number.
func isOutput(head string) bool {
	w := name.Words(table.Fold(head))
	if len(w) == 0 || len(w) > 2 || !words.IsOutput(w[0]) {
		return false
	}
	if len(w) == 1 {
		return true
	}
	switch w[1] {
	case "no", "nr", "num", "number", "nummer", "numero", "id", "n":
		return true
	}
	return false
}

// rises reports whether the whole numbers of a column never fall from row to row, from 0 or 1 on.
func rises(rows []table.Row, i int) bool {
	last, n := -1, 0
	for _, r := range rows {
		if i >= len(r.Cells) || r.Cells[i] == "" || shape.IsText(r) {
			continue
		}
		at := number(r.Cells[i])
		if at < 0 || at < last || n == 0 && at > 1 {
			return false
		}
		last, n = at, n+1
	}
	return n > 1
}

// number is a whole number of three figures at the most; −1 where a text is none.
func number(text string) (n int) {
	const longest = 3
	if text == "" || len(text) > longest {
		return -1
	}
	for _, d := range []byte(text) {
		if d < '0' || d > '9' {
			return -1
		}
		n = 10*n + int(d-'0')
	}
	return n
}
