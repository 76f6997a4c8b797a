package shape

import (
	"strconv"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// SettleRanges says whether a dash between two numbers parts a range in this block: some
// cavities have none, or the numbers go on from row to row, and no name with a dash falls, as "2-1" does.
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
				if _, pin, ok := name.SplitEnd(r.Cells[i]); ok && len(ends) == 0 {
					pins = append(pins, pin)
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
	b.Ranges = !falls && !b.sharesStart() && (len(plain) > 1 || b.tiled() || b.rangesPair())
}

// sharesStart reports whether two cavities of one device begin alike and end in different numbers, "J1-4" and "J1-5": as ranges they
// would have cavities in common, so that the dash parts the plug of the device from its cavity.
func (b *Block) sharesStart() bool {
	from := map[string]string{}
	shared := func(device, pin string) bool {
		if !strings.ContainsAny(pin, "-–") {
			return false
		}
		all, sure, rises := name.Spread(pin, nil)
		if !rises || sure {
			return false
		}
		key := table.Fold(device) + "\x00" + all[0]
		first, met := from[key]
		from[key] = pin
		return met && first != pin
	}
	for _, r := range b.Rows {
		if IsText(r) {
			continue
		}
		for _, side := range []struct{ of, pin name.Field }{{name.FieldConnector, name.FieldPin}, {name.FieldFrom, name.FieldFromPin},
			{name.FieldTo, name.FieldToPin}} {
			if shared(b.Cell(r.Cells, side.of), b.Cell(r.Cells, side.pin)) {
				return true
			}
			of := b.Cell(r.Cells, side.of)
			if !strings.ContainsAny(of, "-–") {
				continue
			}
			if ends, _ := name.SplitEnds(of); len(ends) == 1 && shared(ends[0].Connector, ends[0].Pin) {
				return true
			}
		}
	}
	return false
}

// rangesPair reports whether some row runs from a range to another of as many cavities, "X1 1-4" to "X2 5-8".
func (b *Block) rangesPair() bool {
	of := func(cell string) int {
		_, pin, _ := name.SplitEnd(cell)
		all, _, _ := name.Spread(pin, nil)
		return len(all)
	}
	for _, r := range b.Rows {
		if n := of(b.Cell(r.Cells, name.FieldFrom)); n > 2 && n == of(b.Cell(r.Cells, name.FieldTo)) && !IsText(r) {
			return true
		}
	}
	return false
}

// tiled reports whether the cavities of a table, row by row, go on from one range to the next and leave none out: "1-2", "3-8",
// "9-10". Names with a dash do not.
func (b *Block) tiled() bool {
	last, ranges := 0, 0
	for _, r := range b.Rows {
		cell := b.Cell(r.Cells, name.FieldPin)
		if cell == "" || IsText(r) {
			continue
		}
		all, _, rises := name.Spread(cell, nil)
		if !rises {
			all = []string{cell}
		} else {
			ranges++
		}
		first, err1 := strconv.Atoi(all[0])
		end, err2 := strconv.Atoi(all[len(all)-1])
		if err1 != nil || err2 != nil || last > 0 && first != last+1 {
			return false
		}
		last = end
	}
	return ranges > 1
}
