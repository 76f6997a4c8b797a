package noted

import (
	"strings"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// In a note nothing but a blank stands between the far end of a wire and what wire it is.
//
//	winch button 1 -> control box 5 green
//	winch relay 87 -> winch motor red 10awg (doubled)

// behind writes a comma before the colours and sizes that stand right behind the far ends, where three of four lines with an arrow have
// some. Where all far ends are one text without them, they may belong to its name: "lamp red", "lamp green".
func (n *notes) behind() {
	drawn, sized := 0, false
	made, ends := map[int]string{}, map[string]bool{}
	n.texts(func(i int, text string) bool {
		front, back, ok := farSide(text)
		if !ok {
			return true
		}
		drawn++
		end, values, aside := valuesLast(back)
		if end = strings.TrimRight(end, " =:–—"); values != "" && end != "" {
			made[i] = front + end + ", " + values + aside
			ends[table.Fold(end)] = true
			sized = sized || strings.ContainsAny(values, "0123456789")
		}
		return true
	})
	if len(made) < 2 || 4*len(made) < 3*drawn || len(ends) < 2 && !sized {
		return
	}
	for i, text := range made {
		n.set(i, text)
	}
}

// farSide parts a text behind the one arrow in it.
func farSide(text string) (front, back string, ok bool) {
	if _, _, ok = arrow.Cut(text); !ok {
		return text, "", false
	}
	_, to := arrow.In(text)
	return text[:to] + " ", strings.TrimSpace(text[to:]), true
}

// valuesLast parts the colour and the size that end a text, in any order, off what stands before them; aside is what stands in brackets
// behind, with a blank before it. values is "" where there are none, or a sign parts them off already.
func valuesLast(text string) (end, values, aside string) {
	text = value.GaugesJoined(text)
	if open := strings.LastIndex(text, " ["); open > 0 && strings.HasSuffix(text, "]") {
		if colour, size := point.WireValues(text[open+2 : len(text)-1]); colour != "" && size != "" {
			return strings.TrimRight(text[:open], " ,;:-|"), text[open+2 : len(text)-1], "" // "Fan 3 [12 AWG red]"
		}
	}
	if at := strings.LastIndex(text, ", "); at > 0 {
		if _, _, ok := point.BareValues(text[at+2:]); ok { // "LOGGER 12, red 24"
			return text[:at], text[at+2:] + " AWG", ""
		}
	}
	if strings.ContainsAny(text, ",;|") || strings.Contains(text, ": ") || strings.Contains(text, " - ") {
		return text, "", ""
	}
	if open := strings.Index(text, " ("); open > 0 && strings.HasSuffix(text, ")") {
		if _, in := point.ValuesBehind(text); in != nil {
			return text, "", ""
		}
		text, aside = text[:open], text[open:]
	}
	w := strings.Fields(text)
	if k := bareGauge(w); k > 0 { // "logger 12 red 24", "ABS 35 white 22 twist these two"
		if k+2 < len(w) {
			aside = " (" + strings.Join(w[k+2:], " ") + ")" + aside
		}
		return strings.Join(w[:k], " "), w[k] + " " + w[k+1] + " AWG", aside
	}
	at, colour, size := len(w), false, false
	for at > 1 {
		switch {
		case at > 2 && !size && isSize(strings.Join(w[at-2:at], " ")):
			at, size = at-2, true
		case !size && isSize(w[at-1]):
			at, size = at-1, true
		case at > 2 && !colour && point.IsColour(strings.Join(w[at-2:at], " ")):
			at, colour = at-2, true
		case !colour && point.IsColour(w[at-1]):
			at, colour = at-1, true
		default:
			if at == len(w) || !colour && !size {
				return text, "", ""
			}
			return strings.Join(w[:at], " "), strings.Join(w[at:], " "), aside
		}
	}
	if at == len(w) {
		return text, "", ""
	}
	return strings.Join(w[:at], " "), strings.Join(w[at:], " "), aside
}

// bareGauge is where a colour and a gauge without unit stand behind the far end in some words, a remark of a few words behind them; 0
// where they do not.
func bareGauge(words []string) int {
	const mostRemark = 5 // words (no source)
	for k := 1; k+1 < len(words); k++ {
		if _, _, ok := point.BareValues(words[k] + " " + words[k+1]); ok && (k+2 == len(words) || len(words[k+2]) > 2) {
			if len(words)-k-2 > mostRemark {
				return 0
			}
			return k
		}
	}
	return 0
}

// isSize reports whether a text is a size of wire with its unit.
func isSize(text string) bool {
	if !strings.ContainsAny(text[:1], "0123456789.#") && !strings.HasPrefix(strings.ToLower(text), "awg") {
		return false
	}
	g, ok := value.ParseGauge(text, value.BareAWG, value.MarkUnknown)
	return ok && g.Size != "" && !g.IsCable() && strings.Trim(text, "0123456789.,") != ""
}
