package shape

import (
	"strings"

	"contralay/model/wirelist/name"
)

// SettleRanges says whether a dash between two numbers parts a range in this block: some
// cavities have none, and no name with a dash falls, as "2-1" does.
func (b *Block) SettleRanges() {
	falls := false
	plain := map[string]bool{}
	for _, r := range b.Rows {
		for i, c := range b.Cols {
			if i >= len(r.Cells) {
				break
			}
			var pins []string
			switch c.Field {
			case name.FieldPin, name.FieldFromPin, name.FieldToPin:
				pins = name.SplitPins(r.Cells[i])
			case name.FieldFrom, name.FieldTo:
				ends, _ := name.SplitEnds(r.Cells[i])
				for _, e := range ends {
					pins = append(pins, e.Pin)
				}
			}
			for _, p := range pins {
				_, _, rises := name.Spread(p, nil)
				falls = falls || !rises && strings.Contains(strings.Trim(p, "-"), "-")
				if name.IsCavity(p) {
					plain[p] = true
				}
				if c.Field == name.FieldPin && len(pins) == 1 && name.IsCavity(p) {
					if b.Named == nil {
						b.Named = map[string]bool{}
					}
					b.Named[p] = true
				}
			}
		}
	}
	b.Ranges = !falls && len(plain) > 1
}
