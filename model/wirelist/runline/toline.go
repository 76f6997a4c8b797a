package runline

import (
	"strings"

	"contralay/model/wirelist/freesaid"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/point"
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
		return "", ""
	}
	from, to = strings.TrimSpace(text[:at]), strings.TrimSpace(text[at+len(word):])
	if lead, rest, ok := strings.Cut(from, " "); ok && (strings.EqualFold(lead, "from") || strings.EqualFold(lead, "von") ||
		strings.EqualFold(lead, "de") || strings.EqualFold(lead, "da") || strings.EqualFold(lead, "van")) {
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
	if len(strings.Fields(from)) > most || len(strings.Fields(far)) > most || strings.ContainsAny(from, ",;") || len(values) == 0 &&
		!(IsPlainEnd(from) || name.IsEnd(from)) {
		return "", ""
	}
	if len(values) == 0 && freesaid.IsNamed(text) {
		return "", "" // "helm box pins 8 to 12 nothing in them"
	}
	return from, to
}
