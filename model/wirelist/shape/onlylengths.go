package shape

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// OnlyLengths reports whether the block says runs between places, how long each is, and nothing else: no cavity stands in any.
//
//	Run        | m
//	P1 to dash | 2.4
func (b *Block) OnlyLengths() bool {
	run, length := -1, false
	for i, c := range b.Cols {
		switch {
		case c.Given:
			return false
		case c.Field == name.FieldRun && run < 0:
			run = i
		case c.Field == name.FieldLength || c.Field == name.FieldKeep && value.LengthWord(strings.Trim(table.Fold(c.Head), ".()[] ")) != "":
			length = true
		case c.Field != name.FieldNote:
			return false
		}
	}
	if run < 0 || !length {
		return false
	}
	for _, r := range b.Rows {
		if run < len(r.Cells) && strings.Contains(r.Cells[run], ":") {
			return false
		}
		for piece := range strings.SplitSeq(strings.Join(r.Cells[min(run, len(r.Cells)):min(run+1, len(r.Cells))], ""), " to ") {
			if _, pin, ok := name.SplitEnd(piece); ok && name.IsCavity(pin) && !strings.Contains(piece, " - ") {
				return false
			}
		}
	}
	return true
}
