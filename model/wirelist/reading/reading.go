package reading

import (
	"cmp"
	"slices"

	"contralay/model/wirelist/block"
	"contralay/model/wirelist/bothends"
	"contralay/model/wirelist/doubt"
	"contralay/model/wirelist/plugindex"
	"contralay/model/wirelist/settle"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/toget"
)

// Reading is one way to read a block.
type Reading struct {
	Kind    string // what the block is taken for: "cavities of one connector", "a list of parts"
	Wires   bool   // its rows are wires
	Score   float64
	Because []string      // the evidence, a few words each
	Doubts  []doubt.Doubt // what speaks against it
	Block   *shape.Block  // with its columns; of a reading without wires those of its headings alone
}

// Same reports whether two readings of a block take every column for the same.
func (r Reading) Same(o Reading) bool {
	return slices.EqualFunc(r.Block.Cols, o.Block.Cols, func(a, b shape.Column) bool {
		return (a.Field == b.Field && a.Of == b.Of || bothends.OneUse(a, b)) && a.Group == b.Group
	})
}

// look is a block with its columns settled.
type look struct{ *settle.Look }

// Of tries every reading of a block and gives those that hold, the best first. There is always one: of a
// block that holds nothing of a wire, that it is a text.
func Of(h shape.Headings, b block.Block) []Reading {
	l := &look{settle.At(h, b)}
	var all []Reading
	things := toget.Is(l.Cols, l.Prof) || plugindex.Is(l.Cols, l.Prof, l.Src.Rows)
	for _, kind := range kinds() {
		if cols := kind.columns(l); cols != nil && !things {
			if r, ok := l.finish(kind.name, cols); ok {
				if kind.sure {
					r.Score += nearest
				}
				all = append(all, r)
			}
		}
	}
	if !things {
		all = l.orTogether(all)
	}
	all = append(all, l.others()...)
	slices.SortStableFunc(all, func(a, b Reading) int { return cmp.Compare(b.Score, a.Score) })
	return all
}

// kind is one way to give the columns of a block their meanings; columns gives nil where the block is
// plainly nothing of it.
type kind struct {
	sure    bool   // what it looks for is so particular that it is taken before a reading of the headings alone
	name    string // "" for the name that the columns ask for
	columns func(l *look) []shape.Column
}

// nearest is how much more such a reading counts (no source).
const nearest = 0.05

// kinds are the ways to read wires. Of two with one score the first is taken.
func kinds() []kind {
	return []kind{
		{true, "cavities of a bulkhead between two ends", chain},
		{true, "both ends in a row", grouped},
		{false, "", asHeaded},
		{false, "cavities of a bulkhead between two ends", through},
		{false, "cavities of one device", deviceColumn},
		{false, "both ends in a row", endsByCells},
		{true, "both ends in a row", endTexts},
		{false, "cavities of several devices in a row", wide},
		{true, "cavities of several devices in a row", wideBeside},
		{true, "cavities of a bulkhead between two ends", toldPassage},
		{false, "cavities and names without headings", bare},
		{false, "points of a list", points},
		{false, "both ends in the points of a list", leads},
		{false, "cavities of one device and where they go", places},
		{false, "cavities in the first column", firstPins},
		{true, "pads of two devices", twoDevices},
		{true, "cavities of one connector", farUnit},
		{true, "cavities of a bulkhead between two ends", between},
		{true, "cavities of a bulkhead between two ends", passed},
		{true, "cavities of a bulkhead between two ends", walls},
		{true, "both ends in a row", cableDevices},
		{true, "both ends in a row", partedFirst},
		{true, "cavities of a bulkhead between two ends", bothSides},
		{true, "wires of one connector, by their colours", byColours},
		{true, "wires by their colours, and the pads that they go to", coloursTo},
	}
}

// asHeaded reads the columns as their headings and cells say.
//
//	Wire | From | To    | AWG
//	101  | P1:A | INJ:1 | 22
func asHeaded(l *look) []shape.Column {
	if len(l.Src.Head) == 0 && !l.Heads.Numbered() {
		return nil
	}
	return l.withoutRoutes(slices.Clone(l.Cols))
}
