package row

import (
	"slices"
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// viaRow makes the wires of a row that names both ends and a cavity of each bulkhead between them: one wire on either side
// of a bulkhead, both in the cavity that the list names.
func viaRow(im *draft.Importer, b *shape.Block, cells []string, it draft.Item, owner *draft.Term, column func(int) table.Place) {
	through := passages(im, b, cells, &it, owner, column)
	froms, _ := endsOf(im, b, cells, name.FieldFrom, name.FieldFromPin, &it, column)
	tos, _ := endsOf(im, b, cells, name.FieldTo, name.FieldToPin, &it, column)
	several := len(froms) > 1 || len(tos) > 1
	for _, p := range through {
		for _, pin := range p.pins {
			p.term.Pin(pin, it.State, it.Place)
		}
		several = several || len(p.pins) != 1
	}
	switch {
	case len(through) == 0: // this wire goes through nothing
		betweenEnds(im, it, froms, tos, column(slices.IndexFunc(b.Cols, isPassage)))
		return
	case it.State == name.Blank || it.State == name.Reserved || several:
		if len(through) == 1 && len(through[0].pins) == 1 && it.State != name.Used && it.State != name.Spare {
			im.RestOf(&it, through[0].term.ID+":"+through[0].pins[0])
			return
		}
		im.Say(report.Warn, "cavities do not pair", column(through[0].col), table.Tidy(strings.Join(cells, " ")),
			"kept in the note, no ends made")
		text := "from " + endsText(froms)
		for _, p := range through {
			text += " through " + strings.Join(p.pins, ", ")
		}
		it.Notes = append(it.Notes, text+" to "+endsText(tos))
		betweenEnds(im, it, nil, nil, column(through[0].col))
		return
	case len(through) == 1 && b.Cols[through[0].col].Landed && len(froms) == 0 && len(tos) > 0: // nothing on the other side of a terminal
		betweenEnds(im, it, through[0].end(), tos, column(through[0].col))
		return
	case len(through) == 1 && b.Cols[through[0].col].Landed && len(tos) == 0 && len(froms) > 0:
		betweenEnds(im, it, froms, through[0].end(), column(through[0].col))
		return
	case it.State == name.Spare && len(froms) == 0: // one wire, which ends in it
		last := through[len(through)-1]
		betweenEnds(im, it, last.end(), tos, column(last.col))
		return
	case it.Drain && len(tos) == 0 && len(through) == 1: // it ends in the bulkhead
		betweenEnds(im, it, froms, through[0].end(), column(through[0].col))
		return
	case it.Drain && len(froms) == 0 && len(through) == 1: // it begins there
		betweenEnds(im, it, through[0].end(), tos, column(through[0].col))
		return
	}
	for _, p := range through {
		one := it
		one.Notes = slices.Clone(it.Notes)
		betweenEnds(im, one, froms, p.end(), column(p.col))
		froms = p.end()
	}
	betweenEnds(im, it, froms, tos, column(through[len(through)-1].col))
}

// passage is what one cell says of a bulkhead that a wire goes through.
type passage struct {
	term *draft.Term
	pins []string
	col  int
}

// end is its first cavity.
func (p passage) end() []draft.End { return []draft.End{{Term: p.term, Pin: p.pins[0]}} }

// passages are the bulkheads that a row goes through, in the order of their columns. A cell whose connector no one names is kept in the
// note; owner is the connector of the table.
func passages(im *draft.Importer, b *shape.Block, cells []string, it *draft.Item, owner *draft.Term,
	column func(int) table.Place) (all []passage) {
	several := len(slices.DeleteFunc(slices.Clone(b.Cols), func(c shape.Column) bool { return !isPassage(c) })) > 1
	for i := range min(len(cells), len(b.Cols)) {
		c, cell := &b.Cols[i], cells[i]
		if c.Field != name.FieldVia || value.IsNothing(cell) {
			continue
		}
		if words.IsDirect(table.Fold(cell)) {
			it.Notes = append(it.Notes, c.Head+": "+cell)
			continue
		}
		term, pin := owner, cell
		if connector, p, ok := name.SplitEnd(cell); ok && c.InCell {
			term, pin = im.Named(connector, it.Place, true), p
		} else if c.InCell {
			term = nil
		} else if several && c.Of != "" {
			term = im.Named(c.Of, it.Place, true)
		}
		if term == nil {
			it.Notes = append(it.Notes, "through "+cell)
			im.Say(report.Warn, "cavity of no connector", column(i), cell, "kept in the note")
			continue
		}
		all = append(all, passage{term, name.SplitPins(pin), i})
	}
	return all
}

// isPassage reports whether a column holds the cavities of a bulkhead.
func isPassage(c shape.Column) bool { return c.Field == name.FieldVia }
