package block

import "contralay/model/wirelist/table"

// endsBefore reports whether a row begins a table of its own, without headings that are known: its language says that it begins one, and it
// has other columns than the block.
//
//	<table><tr><td>Pin  <td>Signal<td>Colour … </table>
//	<table><tr><td>Place<td>Shelf … </table>
func (b *Block) endsBefore(r table.Row) bool {
	return r.Apart && len(b.Head) > 0 && len(r.Cells) != len(b.Head[len(b.Head)-1].Cells)
}
