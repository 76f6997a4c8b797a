package endpins

import (
	"slices"
	"strconv"
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/endtext"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/table"
)

// Ends that stand in one cell with a blank between the device and its cavity, "ECU A1", "Coil pack 2". "Injector 2" is built alike and
// is a device: a column decides as a whole.
//
//	From   | To           | Signal          From   | To         | Signal
//	ECU A1 | Coil pack 1  | Coil one        ECU A1 | Injector 1 | Injector 1
//	ECU A9 | Coil pack 4  | Coil feed       ECU A9 | Injector 2 | Injector 2

// endColumn is the ends of one side in the tables of one sheet.
type endColumn struct {
	ends   []spacedEnd
	marks  []spacedEnd // whole ends that may be a parted device and a mark of a terminal: "X drive PE", "Supply +24V"
	whole  int         // ends that are no such text
	pinned int         // ends that have a cavity already
	parted bool
	sure   bool
}

// spacedEnd is an end that can be parted.
type spacedEnd struct {
	it       *draft.Item
	end      *draft.End
	of, pin  string
	weight   int  // how much its device speaks for a cavity
	asSignal bool // it is what the row calls its net: a device
}

// partSpaced parts the ends of the columns where it is plain, or likely, that the last word of each is its cavity.
func partSpaced(im *draft.Importer) {
	cols, order := spacedColumns(im)
	places := map[string]map[string]bool{} // of the devices, all columns together
	for _, c := range cols {
		for _, e := range c.ends {
			if places[e.of] == nil {
				places[e.of] = map[string]bool{}
			}
			places[e.of][e.pin] = true
		}
	}
	weights := make([]int, len(order))
	for k, key := range order {
		c := cols[key]
		c.withoutDevices()
		all := len(c.ends) + c.whole
		if len(c.ends) < 2 || 5*c.pinned > all {
			continue
		}
		if 5*len(c.ends) < 3*all { // what names places else tells nothing of "ECU B11" beside "ECU B12"
			c.ends = slices.DeleteFunc(c.ends, func(e spacedEnd) bool { return !isUnitWithRows(e.of, places[e.of]) })
		}
		of := map[string]int{}
		for i := range c.ends {
			e := &c.ends[i]
			w, seen := of[e.of]
			if !seen {
				w = weightOf(e.of, places[e.of])
				of[e.of] = w
				weights[k] += w
				c.sure = c.sure || w > 1
			}
			e.weight = w
		}
		c.parted = weights[k] > 1
	}
	for k, key := range order {
		side := cols[otherSide(key)]
		cols[key].parted = cols[key].parted || weights[k] > 0 && side != nil && side.parted && side.sure
	}
	for _, key := range order {
		cols[key].part(im)
	}
}

// columnKey is a side of the tables of a sheet.
type columnKey struct {
	file, sheet string
	to          bool
}

func otherSide(k columnKey) columnKey { k.to = !k.to; return k }

// spacedColumns are the ends by the columns they stand in.
func spacedColumns(im *draft.Importer) (cols map[columnKey]*endColumn, order []columnKey) {
	cols = map[columnKey]*endColumn{}
	bare, mains := bareEnds(im), mainsOf(im)
	for _, it := range im.Items {
		for _, e := range []*draft.End{&it.From, &it.To} {
			if e.Term != nil || e.Text == "" {
				continue
			}
			key := columnKey{it.Place.File, it.Place.Sheet, e == &it.To}
			c := cols[key]
			if c == nil {
				c = &endColumn{}
				cols[key] = c
				order = append(order, key)
			}
			of, pin := cutSpaced(e.Text)
			for _, pole := range []string{"L", "PE"} {
				if line, is := strings.CutSuffix(e.Text, " "+pole); is && mains[name.Key(line)] {
					of, pin = line, pole
				}
			}
			switch {
			case e.Pin != "":
				c.pinned++
			case name.StateOf(e.Text) != name.Used || name.IsUnknown(e.Text) || endtext.IsStud(e.Text) ||
				name.IsSpliceName(e.Text) || endtext.SaysOpen(e.Text):
			case pin == "" || titled(im, e.Text) || bare[name.Key(of)]:
				c.whole++
				if of, mark := cutMark(e.Text); of != "" && pin == "" && !titled(im, e.Text) {
					c.marks = append(c.marks, spacedEnd{it: it, end: e, of: name.Key(of), pin: mark})
				}
			default:
				c.ends = append(c.ends, spacedEnd{it: it, end: e, of: name.Key(of), pin: pin,
					asSignal: it.Signal != "" && table.Fold(it.Signal) == table.Fold(e.Text)})
			}
		}
	}
	return cols, order
}

// bareEnds are the ends that name no cavity, by their whole text: "Fuse box" beside "Fuse box 1" is another place of the list.
func bareEnds(im *draft.Importer) map[string]bool {
	bare := map[string]bool{}
	for _, it := range im.Items {
		for _, e := range []draft.End{it.From, it.To} {
			if e.Term == nil && e.Pin == "" && e.Text != "" {
				bare[name.Key(e.Text)] = true
			}
		}
	}
	return bare
}

// titled reports whether a table of its own is of the device that a text names.
func titled(im *draft.Importer, text string) bool {
	t := im.ByKey[name.Key(text)]
	return t != nil && t.Titled
}

// cutSpaced parts the last word off an end where it can be a cavity: a number, a letter or a pole, letters and a number. "Lamp L" and
// "Lamp R" are the left one and the right one.
func cutSpaced(text string) (of, pin string) {
	at := strings.LastIndexByte(text, ' ')
	if at < 1 || strings.ContainsAny(text, ":;,/()=") || strings.Contains(text, " - ") || strings.Contains(text, " – ") {
		return "", ""
	}
	of, pin = strings.TrimSpace(text[:at]), text[at+1:]
	switch {
	case pin == "L" || pin == "R" || len(strings.Fields(of)) > 5, len(name.Words(of)) == 0:
		return "", ""
	case pin == "+" || pin == "-", len(pin) == 2 && strings.ContainsAny(pin[1:], "+-") && pin[0] >= 'A' && pin[0] <= 'Z': // "V+"
	case !name.IsCavity(pin) || strings.ToUpper(pin) != pin && !hasTerminal(name.Words(table.Fold(of)), pin):
		return "", ""
	}
	words := name.Words(table.Fold(of))
	if isRelayWord(words[len(words)-1:]) && !isContact(pin) {
		return "", "" // the second of several
	}
	switch words[len(words)-1] {
	case "ch", "fuse", "fuses", "breaker", "sicherung", "fusible", "fusibile", "zekering", "sulake", "bezpiecznik", "sakring", "sikring",
		"pojistka", "cylinder", "zylinder", "cyl", "bank", "channel", "phase", "wheel", "gear",
		"no", "nr", "n", "num", "number", "type", "model", "size", "rev", "version", "v":
		return "", ""
	}
	return of, pin
}

// withoutDevices leaves those whole that are devices: most of their ends are what the row calls its net, or come again, a row for each
// of the cavities that the list does not name.
func (c *endColumn) withoutDevices() {
	n, same, places := map[string]int{}, map[string]int{}, map[string]map[string]bool{}
	for _, e := range c.ends {
		n[e.of]++
		if e.asSignal {
			same[e.of]++
		}
		if places[e.of] == nil {
			places[e.of] = map[string]bool{}
		}
		places[e.of][e.pin] = true
	}
	c.ends = slices.DeleteFunc(c.ends, func(e spacedEnd) bool {
		if hasTerminal(name.Words(e.of), e.pin) {
			return false // two wires in one terminal of a relay
		}
		device := 2*same[e.of] > n[e.of] || 2*n[e.of] >= 3*len(places[e.of]) && n[e.of] > 1
		if device {
			c.whole++
		}
		return device
	})
}

// weightOf is how much the last words behind one device speak for cavities: 2 where they are no numbers of devices, 1 where it is
// likelier that they are none, 0 where nothing says it: devices are counted from 1 and none is left out. No source.
func weightOf(device string, places map[string]bool) int {
	words := name.Words(device)
	last := words[len(words)-1]
	lettered, contact, numbers, most := 0, false, 0, 0
	for p := range places {
		n, err := strconv.Atoi(p)
		switch digits := strings.ContainsAny(p, "0123456789"); {
		case isContact(p) && isRelayWord(words):
			contact = true
			fallthrough
		case err == nil:
			numbers++
			most = max(most, n)
		case digits && !strings.EqualFold(p[:1], last[:1]):
			lettered++
		}
	}
	switch {
	case contact, lettered > 1, places["+"] && places["-"], places["V+"] && places["V-"], places["B+"] && places["B-"], places["L"] &&
		places["N"], numbers > 2 && most > 2*numbers:
		return 2
	case len(words) == 1 && name.IsDesignator(last) && len(places) > 1:
		return 2 // "TB1 1", "TB1 2": the device has its number
	case isUnitWord(last) && len(places) > 1 && (most > numbers || lettered > 0):
		return 2
	case numbers > 0 && most > numbers, numbers == 1 && len(places) == 1, places["+"] || places["-"], isUnitWord(last):
		return 1
	}
	return 0
}

// isUnitWithRows reports whether a control unit has several cavities of a letter and a number behind it, and no others.
func isUnitWithRows(device string, places map[string]bool) bool {
	words := name.Words(device)
	if len(places) < 2 || !isUnitWord(words[len(words)-1]) {
		return false
	}
	for p := range places {
		if len(p) < 2 || p[0] < 'A' || p[0] > 'Z' || strings.Trim(p[1:], "0123456789") != "" {
			return false
		}
	}
	return true
}

// isUnitWord reports whether a word is of a box that has many cavities and is alone of its kind.
func isUnitWord(w string) bool {
	switch w {
	case "relay", "pump", "controller", "charger", "inverter", "display":
		return false // there are several of them
	}
	return name.IsUnit(w)
}

// part parts the ends of a column that is such, in any other the marks of terminals alone, and says so; where it is a
// guess a person should look. One plain word that is counted from 1 stays whole: "Injector 1".
func (c *endColumn) part(im *draft.Importer) {
	var sure, guessed []spacedEnd
	for _, e := range c.ends {
		terminal := hasTerminal(name.Words(e.of), e.pin)
		if !c.parted && !terminal {
			continue
		}
		at := strings.LastIndexByte(e.end.Text, ' ')
		of := strings.TrimSpace(e.end.Text[:at])
		if e.weight == 0 && !terminal && !strings.Contains(of, " ") && strings.ToUpper(of) != of {
			continue
		}
		e.end.Text, e.end.Pin = of, e.pin
		if terminal || !c.parted || e.weight > 1 || e.weight > 0 && c.sure {
			sure = append(sure, e)
		} else {
			guessed = append(guessed, e)
		}
	}
	sure = append(sure, c.partMarks(sure, guessed)...)
	const rule, did = "a cavity behind its device", "the last word of an end is taken for its cavity"
	if len(sure) > 0 {
		im.Say(report.Note, rule, sure[0].it.Place, sure[0].end.Text+" "+sure[0].pin, did)
	}
	if len(guessed) > 0 {
		var items []*draft.Item
		for _, e := range guessed {
			items = append(items, e.it)
		}
		im.SayOf(items, rule, guessed[0].end.Text+" "+guessed[0].pin,
			did+"; write a colon between the two if it is, and one word if it is not")
	}
}
