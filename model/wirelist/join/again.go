package join

import (
	"fmt"
	"slices"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/table"
)

// Again takes out the rows of a table that tells the wires of earlier ones once more, as the branches of a cut
// list do: all of them, each by the same id or name in the same cavity, with nothing that contradicts. What
// such a row says besides is kept with the wire.
func Again(im *draft.Importer) {
	first := map[string]*draft.Item{}
	same := map[*draft.Item]*draft.Item{} // the row that told its wire before
	told := map[int]*again{}
	var order []int
	for _, it := range im.Items {
		from := it.From.String()
		if from == "" || it.From.Term == nil {
			continue
		}
		a := told[it.Block]
		if a == nil {
			a = &again{at: it.Place}
			told[it.Block] = a
			order = append(order, it.Block)
		}
		a.n++
		key := from + "\x00" + it.OwnID
		switch other := first[key]; {
		case other == nil:
			first[key] = it
		case other.Block != it.Block && toldAgain(other, it):
			same[it], a.of = other, other.Place
			a.again++
		}
	}
	for _, b := range order {
		if a := told[b]; a.again > 0 && a.again == a.n {
			im.Say(report.Note, "wires told again", a.at, fmt.Sprintf("%s, first in %s", report.Counted(a.n, "wire", "wires"),
				rowOf(a.of, a.at)), "made once")
		}
	}
	im.Items = slices.DeleteFunc(im.Items, func(it *draft.Item) bool {
		other, a := same[it], told[it.Block]
		if other == nil || a.again != a.n {
			return false
		}
		if other.Signal == "" {
			other.Signal, other.Drain, other.Net = it.Signal, it.Drain, it.Net
		}
		if other.To.String() == "" && other.To.Text == "" {
			other.To = it.To
		}
		merge(im, other, it)
		return true
	})
}

// again counts the rows of one table, and those that an earlier one has.
type again struct {
	at, of   table.Place
	n, again int
}

// toldAgain reports whether a row says of the wire in its cavity what an earlier one says, or less.
func toldAgain(a, b *draft.Item) bool {
	if contradicts(a, b) || a.To.String() != "" && b.To.String() != "" && a.To != b.To {
		return false
	}
	return a.OwnID != "" || a.Signal != "" && b.Signal != "" || a.To.String() != "" && a.To == b.To
}

// contradicts reports whether two rows say two things of the name, the size or the colour of a wire.
func contradicts(a, b *draft.Item) bool {
	return a.Signal != "" && b.Signal != "" && table.Fold(a.Signal) != table.Fold(b.Signal) ||
		a.Gauge.Size != "" && b.Gauge.Size != "" && a.Gauge.Size != b.Gauge.Size ||
		len(a.Colour) > 0 && len(b.Colour) > 0 && !a.Colour.Equal(b.Colour)
}
