package endpins

import "strings"

// cutMark parts the last word off an end where it is the mark of a terminal that is no cavity by itself: letters in capitals or a voltage.
// "" where it is none.
func cutMark(text string) (of, mark string) {
	const most = 5 // bytes of such a mark (no source)
	at := strings.LastIndexByte(text, ' ')
	if at < 1 || strings.ContainsAny(text, ":;,/()=") {
		return "", ""
	}
	of, mark = strings.TrimSpace(text[:at]), text[at+1:]
	const signs = "+-0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ"
	if len(mark) > most || mark == "L" || mark == "R" || strings.Trim(mark, signs) != "" {
		return "", ""
	}
	switch mark {
	case "LH", "RH", "FR", "FL", "RR", "RL", "NO", "ON", "OFF":
		return "", "" // a side, and words
	}
	return of, mark
}

// partMarks parts the marks of terminals off the ends of devices of which two other places are parted in the same column.
//
//	From
//	X drive U
//	X drive V
//	X drive PE
func (c *endColumn) partMarks(parted ...[]spacedEnd) (all []spacedEnd) {
	if len(c.marks) == 0 {
		return nil
	}
	places := map[string]map[string]bool{}
	for _, ends := range parted {
		for _, e := range ends {
			if places[e.of] == nil {
				places[e.of] = map[string]bool{}
			}
			places[e.of][e.pin] = true
		}
	}
	for _, e := range c.marks {
		if len(places[e.of]) < 2 || e.end.Pin != "" {
			continue
		}
		at := strings.LastIndexByte(e.end.Text, ' ')
		e.end.Text, e.end.Pin = strings.TrimSpace(e.end.Text[:at]), e.pin
		all = append(all, e)
	}
	return all
}
