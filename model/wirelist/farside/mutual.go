package farside

import (
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// mutual finds the far ends of two rows of two tables that tell one wire, each from its side: the one names the other's device by some
// of its words and the cavity, the other names the one's device, both have one name, and no other row does so.
//
//	Box plug A (20)               Panel (8)
//	Pin | Name  | To              Pin | Name  | To
//	A7  | CAN H | Panel           3   | CAN H | Box A7
func mutual(im *draft.Importer) {
	open := func(it *draft.Item) bool {
		return it.From.Term != nil && it.From.Pin != "" && it.To.Term == nil && it.To.Text != "" && it.Signal != ""
	}
	by := map[string][]*draft.Item{} // the rows by their cavity and their name
	key := func(pin, signal string) string { return table.Fold(pin) + "\x00" + table.Fold(signal) }
	for _, it := range im.Items {
		if open(it) {
			k := key(it.From.Pin, it.Signal)
			by[k] = append(by[k], it)
		}
	}
	for _, it := range im.Items {
		if !open(it) || im.ByKey[name.Key(it.To.Text)] != nil {
			continue
		}
		pin := it.To.Pin
		if pin == "" {
			_, pin, _ = cutLast(it.To.Text)
		}
		var met []*draft.Item
		for _, o := range by[key(pin, it.Signal)] {
			if o.From.Term != it.From.Term && o.To.Pin == "" && namesEnd(it.To, o.From) && namesEnd(o.To, it.From) &&
				!strings.EqualFold(it.To.Text, o.From.Pin) {
				met = append(met, o)
			}
		}
		if len(met) == 1 {
			it.To = draft.End{Term: met[0].From.Term, Pin: met[0].From.Pin}
			met[0].To = draft.End{Term: it.From.Term, Pin: it.From.Pin}
		}
	}
}
