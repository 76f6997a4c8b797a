package endpins

import (
	"slices"
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/endtext"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/table"
)

// Ends with a dash and blanks between the device and its terminal, "Control box – A", "Dip switch – M". Terminals have words for names too,
// "Headlamp LH – main", and so have places, "Cabin – left": a list decides as a whole.

// dashedSheet is the ends of one sheet.
type dashedSheet struct {
	ends     []dashedEnd
	cavities int                        // different places that have a cavity, behind a dash or in their own way
	words    int                        // different places with a word behind the dash
	places   map[string]map[string]bool // of each device; true where it is a cavity
	devices  map[string]int             // that have a place of a name
}

// dashedEnd is an end that can be parted at its dash.
type dashedEnd struct {
	it      *draft.Item
	end     *draft.End
	of, pin string
}

// partDashed parts the ends at the dash where most ends of their sheet have a cavity behind it.
func partDashed(im *draft.Importer) {
	if !slices.ContainsFunc(im.Items, func(it *draft.Item) bool { return hasDash(it.From) || hasDash(it.To) }) {
		return
	}
	sheets, order := dashedSheets(im)
	for _, key := range order {
		s := sheets[key]
		if s.cavities < 3 || s.cavities < s.words {
			continue
		}
		var sure, guessed []dashedEnd
		for _, e := range s.ends {
			e.end.Text, e.end.Pin = e.of, e.pin
			if isTerminal(e.pin) || s.isWired(e.of) {
				sure = append(sure, e)
			} else {
				guessed = append(guessed, e)
			}
		}
		const rule = "a cavity behind a dash"
		if len(sure) > 0 {
			im.Say(report.Note, rule, sure[0].it.Place, sure[0].of+" – "+sure[0].pin, "what stands behind the dash is taken for the cavity")
		}
		if len(guessed) > 0 {
			var items []*draft.Item
			for _, e := range guessed {
				items = append(items, e.it)
			}
			im.SayOf(items, rule, guessed[0].of+" – "+guessed[0].pin,
				"taken for a terminal, as behind the other dashes; write it before its device if it is the device itself")
		}
	}
}

// isWired reports whether a device has terminals for sure: one of its places is a cavity, or is called as one of another device is,
// "main" of either lamp.
func (s *dashedSheet) isWired(device string) bool {
	for place, cavity := range s.places[name.Key(device)] {
		if cavity || !isSide(place) && s.devices[place] > 1 {
			return true
		}
	}
	return false
}

// dashedSheets are the ends that can be parted, by their sheet.
func dashedSheets(im *draft.Importer) (sheets map[columnKey]*dashedSheet, order []columnKey) {
	sheets = map[columnKey]*dashedSheet{}
	for _, it := range im.Items {
		for _, e := range []*draft.End{&it.From, &it.To} {
			key := columnKey{it.Place.File, it.Place.Sheet, false}
			s := sheets[key]
			if s == nil {
				s = &dashedSheet{places: map[string]map[string]bool{}, devices: map[string]int{}}
				sheets[key] = s
				order = append(order, key)
			}
			switch of, pin := cutDashed(e.Text); {
			case e.Term != nil:
			case e.Pin != "":
				s.add(e.Text, e.Pin, true)
			case pin != "":
				s.add(of, pin, isTerminal(pin))
				s.ends = append(s.ends, dashedEnd{it, e, of, pin})
			}
		}
	}
	return sheets, order
}

// add counts a place of a device once.
func (s *dashedSheet) add(of, pin string, cavity bool) {
	k := name.Key(of)
	if s.places[k] == nil {
		s.places[k] = map[string]bool{}
	}
	if _, has := s.places[k][pin]; has {
		return
	}
	s.places[k][pin] = cavity
	s.devices[pin]++
	if cavity {
		s.cavities++
	} else {
		s.words++
	}
}

// cutDashed parts an end at its last dash between blanks. What stands behind it is a cavity, or up to three words that are no device.
func cutDashed(text string) (of, pin string) {
	at, size := lastDash(text)
	if at < 1 || name.StateOf(text) != name.Used || name.IsUnknown(text) || name.IsSpliceName(text) || endtext.SaysOpen(text) {
		return "", ""
	}
	of, pin = strings.TrimSpace(text[:at]), strings.TrimSpace(text[at+size:])
	words := name.Words(table.Fold(pin))
	if len(name.Words(of)) == 0 || pin == "" || len(strings.Fields(pin)) > 3 || strings.ContainsAny(pin, ":;,=()") {
		return "", ""
	}
	if !isTerminal(pin) && (len(words) == 0 || name.IsDeviceWord(words[len(words)-1]) || name.IsConnectorWord(words[len(words)-1]) ||
		name.IsUnit(words[len(words)-1])) {
		return "", "" // "Dash – fuel gauge": a device in its place
	}
	return of, pin
}

// lastDash is where the last dash between blanks begins, and how long it is; -1 where there is none.
func lastDash(text string) (at, size int) {
	at = -1
	for _, dash := range []string{" - ", " – ", " — "} {
		if i := strings.LastIndex(text, dash); i > at {
			at, size = i, len(dash)
		}
	}
	return at, size
}

// hasDash reports whether an end without cavity has such a dash.
func hasDash(e draft.End) bool {
	at, _ := lastDash(e.Text)
	return at > 0 && e.Pin == "" && e.Term == nil
}

// isTerminal reports whether a text is a cavity or a pole, and no side.
func isTerminal(pin string) bool {
	return (name.IsCavity(pin) || strings.Trim(pin, "+-") == "" && len(pin) == 1 ||
		len(pin) <= 4 && strings.ToUpper(pin) == pin && !strings.Contains(pin, " ")) && !isSide(pin)
}

// isSide reports whether a text says where a device is, of several alike.
func isSide(pin string) bool {
	switch table.Fold(pin) {
	case "l", "r", "lh", "rh", "lhs", "rhs", "left", "right", "front", "rear", "nearside", "offside", "ns", "os", "n/s", "o/s", "port",
		"starboard", "stbd", "upper", "lower", "inner", "outer", "fwd", "aft", "links", "rechts", "vorn", "hinten", "gauche", "droite",
		"avant", "arriere", "izquierda", "derecha", "delantero", "trasero", "sinistra", "destra", "anteriore", "posteriore":
		return true
	}
	return false
}
