package reading

import (
	"slices"
	"strings"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// whichDevice names the device of a column of cavities by the sheet or the title of the table, where that has the word of the heading
// and says which of several it is. Other sheets have the same headings.
//
//	sheet "Left pump", sheet "Right pump":
//	Pump terminal | Signal | Board terminal
//	U             | Phase  | OUT 2
func (l *look) whichDevice(b *shape.Block) {
	titled := l.Titled()
	if b.IsPinTable() {
		titled = "" // the title names its connector anyway
	}
	for _, text := range append(arrow.DevicesOfTitle(titled), l.Src.Table.Sheet) {
		of := -1
		for i, c := range b.Cols {
			if c.Of == "" || c.Given || !saysWhich(text, c.Of) {
				continue
			}
			if of >= 0 {
				of = -1 // it is of both
				break
			}
			of = i
		}
		if of >= 0 {
			if !b.Cols[of].Headed {
				b.Cols[of].Of = text
			}
			return
		}
	}
}

// saysWhich reports whether a short text ends with the words of a device, or with them and a number, and has words more.
func saysWhich(text, device string) bool {
	const most = 4 // words (no source)
	all, of := name.Words(table.Fold(text)), name.Words(table.Fold(device))
	if len(all) > most || len(of) == 0 || len(all) <= len(of) || name.IsDesignator(device) || words.SaysPaper(text) ||
		slices.ContainsFunc(all, func(w string) bool {
			return name.IsPinTitle(w) || name.IsGeneric(w) && strings.Trim(w, "0123456789") != ""
		}) {
		return false
	}
	if last := all[len(all)-1]; len(last) < 3 && !slices.Contains(of, last) {
		all = all[:len(all)-1] // "Pump 2", "Pump B"
	}
	return len(all) >= len(of) && slices.Equal(all[len(all)-len(of):], of)
}
