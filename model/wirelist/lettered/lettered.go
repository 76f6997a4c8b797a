package lettered

import (
	"strconv"
	"strings"

	"contralay/model/wirelist/alike"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// Lines are what the lines from one on say, where the line above them names a thing, each begins with another terminal in capitals or
// figures and a sign, and most say behind it where their wire goes. Numbers before the terminals only count the lines. nil where they are
// no such lines: below a plug the numbers are its cavities.
//
//	Ignition switch              Relay
//	1. BAT - to ammeter, red     30 - to battery, 2.5 mm2 red
//	2. IGN - to coil, white      87 - to fan, 2.5 mm2 blue
func Lines(rows []table.Row, i int) (all []alike.Line) {
	if i == 0 || len(rows[i-1].Cells) != 1 || !isHeading(rows[i-1].Cells[0]) {
		return nil
	}
	var pins, texts []string
	seen := map[string]bool{}
	counted := counts(rows[i])
	for k, r := range rows[i:] {
		if len(r.Cells) != 1 || r.Level > 0 || k > 0 && r.Line > rows[i+k-1].Line+2 || counts(r) != counted {
			break
		}
		pin, behind, ok := cutTerminal(withoutCount(r))
		if !ok {
			break
		}
		if seen[pin] {
			return nil
		}
		seen[pin] = true
		pins, texts = append(pins, pin), append(texts, strconv.Itoa(k+1)+". "+behind)
	}
	all, ok := alike.Cavities(texts)
	if !ok || !counted && name.IsCavity(pins[0]) && strings.ContainsAny(pins[0], "0123456789") {
		return nil // the cavities of a thing: read as those of any other
	}
	far := 0
	for k := range all {
		l := &all[k]
		if point.IsColourOrLetters(pins[k]) && l.Colour == "" {
			return nil // "1. R - to lamp", "2. G - to motor" say colours
		}
		if place, is := words.BehindGoesTo(l.Signal); is && l.To == "" {
			l.Signal, l.To = "", place
		}
		if l.To != "" {
			far++
		}
		l.Pin = pins[k]
	}
	if 2*far <= len(all) {
		return nil
	}
	return all
}

// isHeading reports whether a line is the name of a thing and of no plug.
func isHeading(text string) bool { return words.HasLetters(text) && !name.SaysConnector(text) }

// counts reports whether a line begins with its number.
func counts(r table.Row) bool { return withoutCount(r) != bare(r) }

func bare(r table.Row) string { return strings.TrimSpace(strings.TrimLeft(r.Cells[0], "-–*• ")) }

// withoutCount takes the number and its full stop or bracket off the front of a line.
func withoutCount(r table.Row) string {
	text := bare(r)
	if number, rest, ok := strings.Cut(text, " "); ok && len(number) > 1 && strings.Trim(number[:len(number)-1], "0123456789") == "" &&
		strings.ContainsAny(number[len(number)-1:], ".)") {
		return strings.TrimSpace(rest)
	}
	return text
}

// cutTerminal parts a terminal in capitals or figures, "IGN", "30", "87a", from what stands behind a dash or a colon.
func cutTerminal(text string) (pin, behind string, ok bool) {
	const most = 4 // signs of a terminal (no source)
	for _, mark := range []string{" - ", " – ", " — ", ": ", " = "} {
		if pin, behind, ok = strings.Cut(text, mark); ok && len(pin) <= most && isTerminal(strings.TrimRight(pin, "ab")) {
			return pin, strings.TrimSpace(behind), true
		}
	}
	return "", "", false
}

// isTerminal reports whether a text is capitals alone, or a number with a capital behind it or none: "W1" and "M2" are wires and things.
func isTerminal(text string) bool {
	const capitals, figures = "ABCDEFGHIJKLMNOPQRSTUVWXYZ+", "0123456789"
	return text != "" && (strings.Trim(text, capitals) == "" || len(strings.TrimLeft(text, figures)) < 2 &&
		strings.Trim(text, capitals+figures) == "" && strings.ContainsAny(text[:1], figures))
}
