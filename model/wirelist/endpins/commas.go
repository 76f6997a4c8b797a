package endpins

import (
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
)

// partCommas parts the ends of a side at their comma where three of four of them, and two or more, have one with a cavity behind it and
// nothing else: "Vehicle controller, 14". A comma before a side or a place is a part of the name, "Lamp, left".
//
//	Pin | Signal | Mating part, pin
//	1   | +24 V  | PSU, 1
//	3   | ENABLE | Vehicle controller, 14
func partCommas(im *draft.Importer) {
	type side struct {
		items []*draft.Item
		ends  []*draft.End
		all   int
	}
	sides := map[columnKey]*side{}
	var order []columnKey
	for _, it := range im.Items {
		for _, e := range []*draft.End{&it.From, &it.To} {
			if e.Term != nil || e.Text == "" || e.Pin != "" {
				continue
			}
			key := columnKey{it.Place.File, it.Place.Sheet, e == &it.To}
			s := sides[key]
			if s == nil {
				s = &side{}
				sides[key], order = s, append(order, key)
			}
			s.all++
			if _, pin := cutComma(e.Text); pin != "" {
				s.items, s.ends = append(s.items, it), append(s.ends, e)
			}
		}
	}
	for _, key := range order {
		s := sides[key]
		if len(s.ends) < 2 || 4*len(s.ends) < 3*s.all {
			continue
		}
		first := s.ends[0].Text
		places := map[string]map[string]bool{}
		for _, e := range s.ends {
			e.Text, e.Pin = cutComma(e.Text)
			k := name.Key(e.Text)
			if places[k] == nil {
				places[k] = map[string]bool{}
			}
			places[k][e.Pin] = true
		}
		const rule, did = "a cavity behind its device", "what stands behind the comma is taken for the cavity"
		sure := false // devices are counted from 1, and none is left out
		for of, pins := range places {
			sure = sure || weightOf(of, pins) > 0
		}
		if sure {
			im.Say(report.Note, rule, s.items[0].Place, first, did)
		} else {
			im.SayOf(s.items, rule, first, did+"; leave the comma out if it is the number of a device")
		}
	}
}

// cutComma parts an end at its one comma; pin is "" where no cavity stands behind it.
func cutComma(text string) (of, pin string) {
	of, pin, ok := strings.Cut(text, ", ")
	of, pin = strings.TrimSpace(of), strings.TrimSpace(pin)
	if w := strings.Fields(pin); len(w) == 2 && name.IsPinWord(strings.ToLower(w[0])) {
		pin = w[1] // "PSU, pin 1"
	}
	if !ok || of == "" || strings.ContainsAny(pin, " ,") || !name.IsCavity(pin) || isSide(pin) ||
		!strings.ContainsAny(pin, "0123456789") && len(pin) > 1 {
		return "", ""
	}
	return of, pin
}
