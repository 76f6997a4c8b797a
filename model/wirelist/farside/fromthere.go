package farside

import (
	"slices"
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// FromThere finds the cavity of a far end that a row names in words, where the table of that device tells the same wire from its
// side: both name each other, and so they are one wire.
//
//	Gate board               Beacon module
//	Pin | Goes to            Pin | Gate board
//	B3  | Beacon IN          IN  | B3
func FromThere(im *draft.Importer) {
	mutual(im)
	back := map[draft.End][]*draft.Item{} // the rows of the other tables, by the cavity that they go to
	for _, it := range im.Items {
		if it.From.Term == nil || it.From.Pin == "" || it.To.Text == "" || it.To.Pin == "" {
			continue
		}
		if t := im.ByKey[name.Key(it.To.Text)]; t != nil && t != it.From.Term {
			e := draft.End{Term: t, Pin: it.To.Pin}
			back[e] = append(back[e], it)
		}
	}
	if len(back) == 0 {
		return
	}
	for _, it := range im.Items {
		if it.From.Term == nil || it.To.Term != nil || it.To.Text == "" {
			continue
		}
		if it.To.Pin != "" && im.ByKey[name.Key(it.To.Text)] != nil {
			continue // it says all already
		}
		var met []*draft.Item
		for _, o := range back[draft.End{Term: it.From.Term, Pin: it.From.Pin}] {
			if namesEnd(it.To, o.From) {
				met = append(met, o)
			}
		}
		if len(met) == 1 {
			it.To = draft.End{Term: met[0].From.Term, Pin: met[0].From.Pin}
		}
	}
}

// namesEnd reports whether the words of a far end can be those of a cavity of a titled connector: the cavity last, where one stands
// there, and before it no word that the title has not.
func namesEnd(words, of draft.End) bool {
	text := words.Text
	switch {
	case words.Pin != "":
		if table.Fold(words.Pin) != table.Fold(of.Pin) {
			return false
		}
	default:
		if front, last, ok := cutLast(text); ok && table.Fold(last) == table.Fold(of.Pin) {
			text = front
		}
	}
	title := of.Term.ID
	if of.Term.Name.Set {
		title = of.Term.Name.V
	}
	has := name.Words(table.Fold(title))
	all := name.Words(table.Fold(text))
	n := 0
	for _, w := range all {
		switch {
		case slices.Contains(has, w):
			n++
		case !name.IsDeviceWord(w) && !name.IsUnit(w) && !name.IsPinWord(w):
			return false
		}
	}
	return n > 0
}

// cutLast parts the last word off a text, at a blank or a full stop.
func cutLast(text string) (front, last string, ok bool) {
	i := strings.LastIndexAny(text, " .")
	if i < 1 {
		return text, "", false
	}
	return strings.TrimSpace(text[:i]), text[i+1:], true
}
