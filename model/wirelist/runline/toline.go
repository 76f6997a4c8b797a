package runline

import (
	"strings"

	"contralay/model/wirelist/freesaid"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// cutToLine parts a point that says in words where a wire runs, "X3/1 to Master switch F, red" and "from Pump + to Relay 87 (red)".
// The near end is a cavity by its look, or a colour or a size of wire stands behind the far one: "add a fuse to the list" is prose.
func cutToLine(text string) (from, to string) {
	const most = 5 // words of an end (no source)
	at, word := -1, ""
	for _, w := range []string{" to ", " nach ", " vers ", " verso ", " hasta ", " naar ", " till ", " til "} {
		if i := strings.Index(text, w); i > 0 {
			if at >= 0 || strings.Contains(text[i+len(w):], w) {
				return "", ""
			}
			at, word = i, w
		}
	}
	if at < 0 {
		at, word = betweenFarWords(text)
	}
	if at < 0 {
		return "", ""
	}
	from, to = strings.TrimSpace(text[:at]), strings.TrimSpace(text[at+len(word):])
	if lead, rest, ok := strings.Cut(from, " "); ok && farWords(table.Fold(lead)) != nil {
		from = rest
	}
	far, values := point.ValuesBehind(to)
	if values == nil {
		pieces := strings.Split(to, ", ")
		far = pieces[0]
		for _, p := range pieces[1:] {
			g, sized := value.ParseGauge(p, value.BareAWG, value.MarkUnknown)
			both, _ := point.WireValues(p) // "red 12 AWG"
			if both != "" || sized && g.Size != "" && strings.Trim(p, "0123456789.,") != "" {
				values = append(values, p)
			}
		}
	}
	bare := from[strings.LastIndex(from, ": ")+1:] // without what the wire is called
	if len(strings.Fields(bare)) > most || len(strings.Fields(far)) > most || strings.ContainsAny(from, ",;") || len(values) == 0 &&
		!(IsPlainEnd(from) || name.IsEnd(from)) {
		return "", ""
	}
	if len(values) == 0 && freesaid.IsNamed(text) {
		return "", "" // "helm box pins 8 to 12 nothing in them"
	}
	return from, to
}

// betweenFarWords is where the word for where a wire goes stands in a line that begins with the one for where it comes from, in languages
// in which that word alone means too much: "da ECU 5 a sensore 1, bianco", "signal: de C1 à C2, rouge"; at is
// −1 where there is none, or two.
func betweenFarWords(text string) (at int, word string) {
	at = -1
	begins := strings.Index(text, ": ") + 2 // behind what the wire is called
	if begins < 2 {
		begins = 0
	}
	lead, _, _ := strings.Cut(text[begins:], " ")
	head, _, _ := strings.Cut(text, ", ")
	for _, w := range farWords(table.Fold(lead)) {
		for i := begins + len(lead); i < len(head); i++ {
			end := i + 1
			for end < len(head) && head[end] != ' ' {
				end++
			}
			if head[i] != ' ' || end >= len(head) || table.Fold(head[i+1:end]) != w {
				continue
			}
			if at >= 0 {
				return -1, ""
			}
			at, word = i, head[i:end+1]
		}
	}
	return at, word
}
