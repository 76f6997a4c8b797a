package point

import (
	"slices"
	"strings"

	"contralay/model/wirelist/commas"
	"contralay/model/wirelist/huekey"
	"contralay/model/wirelist/value"
)

// ValuesBehind parts the values of a wire in brackets off the end of a text, a colour, a size or both; nil where there are none.
func ValuesBehind(text string) (front string, pieces []string) {
	open := strings.LastIndexByte(text, '(')
	if open < 0 || !strings.HasSuffix(text, ")") {
		return valuesInTail(text)
	}
	if colour, size := WireValues(text[open+1 : len(text)-1]); colour != "" && size != "" && !strings.ContainsAny(text[open:], ",;") {
		return strings.TrimSpace(text[:open]), []string{colour, size} // "(red 20 AWG)"
	}
	bare := false
	for _, p := range commas.Parts(text[open+1:len(text)-1], ",;") {
		p = strings.TrimSpace(p)
		if g, ok := value.ParseGauge(p, value.BareAWG, value.MarkUnknown); !IsColourOrLetters(p) && (!ok || g.Size == "") {
			return text, nil
		}
		bare = bare || strings.Trim(p, "0123456789.,") == ""
		pieces = append(pieces, p)
	}
	if bare && len(pieces) != 2 { // "(16, red)" is a size and a colour, "(16)" may be anything
		return text, nil
	}
	if len(pieces) == 0 || len(pieces) > 2 || len(pieces) == 2 && IsColourOrLetters(pieces[0]) == IsColourOrLetters(pieces[1]) ||
		len(pieces) == 1 && !IsColour(pieces[0]) && IsColourOrLetters(pieces[0]) {
		return text, nil
	}
	return strings.TrimSpace(text[:open]), pieces
}

// valuesInTail is ValuesBehind for values that commas part from the text, "COIL A, red, 22 AWG".
func valuesInTail(text string) (front string, pieces []string) {
	parts := strings.Split(text, ", ")
	n := len(parts)
	if colour, size, ok := BareBoth(parts[n-1]); ok && n > 1 { // "battery feed, 18 red"
		return strings.Join(parts[:n-1], ", "), []string{colour, size}
	}
	for n > 1 && len(parts)-n < 2 {
		p := strings.TrimSpace(parts[n-1])
		sized := value.HasDigit(p) && strings.Trim(p, "0123456789.,") != ""
		if sized {
			g, ok := value.ParseGauge(p, value.BareAWG, value.MarkUnknown)
			sized = ok && g.Size != ""
		}
		if !IsColour(p) && !sized && !(n < len(parts) && IsColourOrLetters(p)) {
			break
		}
		n--
	}
	if n == len(parts) || len(parts)-n == 2 && IsColourOrLetters(parts[n]) == IsColourOrLetters(parts[n+1]) {
		return text, nil
	}
	return strings.Join(parts[:n], ", "), parts[n:]
}

// BareValues reads a colour and a gauge without unit right behind it, "red 24", and nothing else.
func BareValues(text string) (colour, size string, ok bool) {
	at := strings.LastIndexByte(text, ' ')
	if at < 1 || !IsBareGauge(text[at+1:]) || !IsColour(text[:at]) {
		return "", "", false
	}
	return text[:at], text[at+1:], true
}

// BareBoth is BareValues of a text that may have the gauge before the colour too, "18 red".
func BareBoth(text string) (colour, size string, ok bool) {
	if size, colour, ok = strings.Cut(text, " "); ok && IsBareGauge(size) && IsColour(colour) {
		return colour, size, true
	}
	return BareValues(text)
}

// IsBareGauge reports whether a word is an even number of two digits that wire is made in, as stands beside a colour without its unit:
// 10 to 30 (no source).
func IsBareGauge(w string) bool { return len(w) == 2 && w >= "10" && w <= "30" && (w[1]-'0')%2 == 0 }

// AreLetters reports whether a text is the letters of a colour as on old British vehicles, and no colour otherwise.
func AreLetters(text string) bool { return !IsColour(text) && IsColourOrLetters(text) }

// IsSized reports whether one of some pieces is a size of wire with its unit.
func IsSized(pieces []string) bool {
	return slices.ContainsFunc(pieces, func(p string) bool {
		g, ok := value.ParseGauge(p, value.BareAWG, value.MarkUnknown)
		return ok && g.Size != "" && strings.Trim(strings.TrimSpace(p), "0123456789.,") != ""
	})
}

// IsColourOrLetters reports whether a text, as ValuesBehind gives it, is a colour, or the letters of one as on old British vehicles,
// which are one beside a size with its unit alone.
func IsColourOrLetters(text string) bool {
	return IsColour(text) || text != "" && text == strings.ToUpper(text) && huekey.LetterKey().Written(text)
}

// IsColour reports whether a text is the name of a colour and nothing else.
func IsColour(text string) bool { return value.NamesColour(text) }

// WireValues reads a text that is the colour of a wire, with its size or without, and nothing else: "red", "red wire",
// "red (20 AWG)", "20 AWG red". The letters of old British vehicles are a colour beside a size with its unit, "U/W 1.0 mm²".
func WireValues(text string) (colour, size string) { return ValuesByKey(text, huekey.LetterKey()) }

// ValuesByKey is WireValues where a size stands beside a colour in the short forms of a key.
func ValuesByKey(text string, key huekey.ColourKey) (colour, size string) {
	if front, values := ValuesBehind(text); len(values) == 1 && !IsColour(values[0]) {
		text, size = front, values[0]
	}
	for _, word := range []string{" wire", " lead", " core", " cable"} {
		text = strings.TrimSuffix(text, word)
	}
	if IsColour(text) {
		return text, size
	}
	if !strings.ContainsAny(text, "0123456789") {
		return "", "" // no size beside it
	}
	all := strings.Fields(text)
	for k := 1; k < len(all) && size == ""; k++ {
		for _, try := range [][2]string{{strings.Join(all[:k], " "), strings.Join(all[k:], " ")},
			{strings.Join(all[k:], " "), strings.Join(all[:k], " ")}} {
			if !value.HasDigit(try[0]) || value.HasDigit(try[1]) {
				continue // a size has figures, and a colour beside it has none
			}
			united := strings.Trim(try[0], "0123456789.,") != ""
			if !IsColour(try[1]) && !(united && try[1] == strings.ToUpper(try[1]) && key.Written(try[1])) ||
				!united && !strings.ContainsAny(try[0], ".,") {
				continue
			}
			if g, ok := value.ParseGauge(try[0], value.BareAWG, value.MarkUnknown); ok && g.Size != "" && !g.IsCable() {
				return try[1], try[0]
			}
		}
	}
	return "", ""
}
