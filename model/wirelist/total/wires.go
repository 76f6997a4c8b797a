package total

import (
	"fmt"
	"slices"
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/prose"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// Below a list, or below a group of its rows, may stand how many wires or cavities there are, in whatever cells there was room: the
// words in one and the number in another, or both in one, with remarks beside it.
//
//	Pin | Signal | Colour | Notes              Pin             | Signal
//	1   | Lamp   | red    |                    1               | Lamp
//	2   | Horn   | blue   |                    2               | Horn
//	    |        | 2 wires | bought 5 m each   Wires this plug | 2

// sayCounted takes a row that says how many wires or cavities the list has; false for any other.
func sayCounted(im *draft.Importer, b *shape.Block, i int) bool {
	r := b.Rows[i]
	n, wires, ok := counted(b.Cols, r)
	if !ok || i == 0 {
		return false
	}
	place := table.Place{File: b.Table.File, Sheet: b.Table.Sheet, Row: r.Line}
	wired := rowsWithWires(im)
	_, all := rowsAndWires(im, b, r)
	if wires && n != wired && n != all && isLast(b, i) {
		im.Say(report.Warn, "total against the rows", place,
			fmt.Sprintf("%s, the list has %s", shape.RowText(r.Cells), report.Counted(all, "wire", "wires")), "the rows hold")
	} else {
		im.Say(report.Note, "total", place, shape.RowText(r.Cells), "left out")
	}
	return true
}

// isLast reports whether no row behind one could be a wire.
func isLast(b *shape.Block, i int) bool {
	return !slices.ContainsFunc(b.Rows[i+1:], func(r table.Row) bool {
		_, _, is := counted(b.Cols, r)
		return !is && !shape.IsText(r)
	})
}

// counted is how many there are by a row that does nothing else: its remarks stand in columns for them.
func counted(cols []shape.Column, r table.Row) (n int, wires, ok bool) {
	others := 0 // cells that are no remark: most rows have more than two
	for i, c := range r.Cells {
		if c != "" && i < len(cols) && !isRemark(cols[i].Field) && !isSentence(c) {
			others++
		}
	}
	if others > 2 {
		return 0, false, false
	}
	var texts []string
	for i, c := range r.Cells {
		if c == "" {
			continue
		}
		if name.StateOf(c) == name.Blank {
			return 0, false, false // "2 | no wire fitted" is a cavity
		}
		if _, _, is := prose.Count(c); !is && strings.Trim(c, "0123456789") != "" {
			if i >= len(cols) || (isRemark(cols[i].Field) || isSentence(c)) && len(texts) > 0 {
				continue
			}
		}
		texts = append(texts, c)
	}
	if filled, _ := r.Filled(); len(texts) == 0 || len(texts) > 2 || filled == 1 && !hasBoth(texts[0]) {
		return 0, false, false
	}
	return prose.Count(strings.Join(texts, " "))
}

// isRemark reports whether a column has remarks, or nothing that makes a wire.
func isRemark(f name.Field) bool {
	return f == name.FieldNote || f == name.FieldKeep || f == name.FieldIgnore
}

// hasBoth reports whether one cell has the number and the words.
func hasBoth(text string) bool {
	return strings.ContainsAny(text, "0123456789") && strings.Contains(text, " ")
}
