package column

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/signs"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// How a whole number without unit is read as a size: "4" is a gauge of AWG or a cross section of 4 mm², and only what stands
// around it tells which.
//
//	Pin | Cable     | Circuit
//	1   | 4 red     | Valve
//	2   | 1.5 black | Ignition

// bareSizes is what the cells of a column say of its numbers without unit.
type bareSizes struct {
	whole    bool // one is a whole number
	decimals bool // one has decimals, or the unit mm²: cross sections
	gauges   bool // one is a size that only AWG has
	awg      bool // one has the unit AWG
	filled   int  // cells with something in them
	parted   int  // of these the ones that hold a size beside a colour
}

// bareSizesOf looks at the cells of one column. withColour: only those count that hold a colour beside the size.
func bareSizesOf(rows []table.Row, i int, lang string, withColour bool) (s bareSizes) {
	for _, r := range rows {
		if i >= len(r.Cells) || r.Cells[i] == "" || shape.IsText(r) {
			continue
		}
		size, parted := numberOfSize(r.Cells[i], lang)
		if s.filled++; parted {
			s.parted++
		}
		if withColour && !parted {
			continue
		}
		switch more := !figures.Are(size); {
		case size == "":
		case more:
			g, ok := value.ParseGauge(size, value.BareAWG, value.MarkUnknown)
			metric := strings.HasSuffix(g.Size, "mm2")
			s.decimals, s.awg = s.decimals || ok && metric, s.awg || ok && g.Size != "" && !metric
		case shape.IsOnlyAWG(size):
			s.gauges = true
		case strings.ContainsAny(size, ".,"):
			s.decimals = true
		default:
			s.whole = true
		}
	}
	return s
}

// figures are the signs of numbers.
var figures = signs.Of("0123456789.,")

// numberOfSize is the size of a cell that holds a size alone or, parted, beside a colour: "4" of "4 red", "red 4", "4/red".
func numberOfSize(cell, lang string) (size string, parted bool) {
	cell = strings.TrimSpace(cell)
	if figures.Are(cell) {
		return cell, false
	}
	for i := 1; i < len(cell); i++ {
		if !strings.ContainsRune(" -/,(", rune(cell[i])) {
			continue
		}
		front, back := strings.TrimSpace(cell[:i]), strings.Trim(cell[i+1:], " ()")
		for _, try := range [][2]string{{front, back}, {back, front}} {
			if !value.HasDigit(try[0]) || value.HasDigit(try[1]) {
				continue
			}
			if _, ok := value.ParseColour(try[1], lang); ok {
				return try[0], true
			}
		}
	}
	return cell, false
}

// SettleBareSizes decides how whole numbers without unit are read where the heading of their column does not say: as mm² where
// others of the column have decimals and none is a size that only AWG has. Where the column says nothing, the rest of the sheet
// does: squares, the columns that say it are all of mm².
func SettleBareSizes(b *shape.Block, squares bool) {
	for i := range b.Cols {
		c := &b.Cols[i]
		if c.Field != name.FieldGauge && c.Field != name.FieldColour || c.Said {
			continue
		}
		s := bareSizesOf(b.Rows, i, b.Lang, c.Field == name.FieldColour)
		c.Whole = s.whole
		c.Counts = c.Field == name.FieldColour && 2*s.parted < s.filled
		switch {
		case c.Section && s.gauges:
			c.Bare = value.BareAWG // no wire has 22 mm²
		case s.decimals && !s.gauges:
			c.Bare = value.BareMM2
		case s.whole && !s.gauges && !s.awg && !c.Section && squares:
			c.Bare, c.Elsewhere = value.BareMM2, true
		}
	}
}

// Squares reports whether the sizes of the tables of a sheet are cross sections: some column says so, by its heading or by
// decimals, and none says AWG.
func Squares(all []*shape.Block) bool {
	metric := false
	for _, b := range all {
		for i := range b.Cols {
			c := &b.Cols[i]
			if c.Field != name.FieldGauge && c.Field != name.FieldColour {
				continue
			}
			s := bareSizesOf(b.Rows, i, b.Lang, c.Field == name.FieldColour)
			if s.gauges || s.awg || c.Said && c.Bare == value.BareAWG {
				return false
			}
			metric = metric || s.decimals || c.Said || c.Section
		}
	}
	return metric
}

// EndsInNumber reports whether a whole number stands behind a text, "white 3".
func EndsInNumber(cell string) bool {
	i := strings.LastIndexByte(cell, ' ')
	return i > 0 && i+1 < len(cell) && strings.Trim(cell[i+1:], "0123456789") == ""
}
