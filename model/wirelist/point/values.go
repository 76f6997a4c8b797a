package point

import (
	"strings"

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
	for p := range strings.FieldsFuncSeq(text[open+1:len(text)-1], func(r rune) bool { return r == ',' || r == ';' }) {
		p = strings.TrimSpace(p)
		if g, ok := value.ParseGauge(p, value.BareAWG, value.MarkUnknown); !IsColour(p) && (!ok || g.Size == "") {
			return text, nil
		}
		bare = bare || strings.Trim(p, "0123456789.,") == ""
		pieces = append(pieces, p)
	}
	if bare && len(pieces) != 2 { // "(16, red)" is a size and a colour, "(16)" may be anything
		return text, nil
	}
	if len(pieces) == 0 || len(pieces) > 2 || len(pieces) == 2 && IsColour(pieces[0]) == IsColour(pieces[1]) {
		return text, nil
	}
	return strings.TrimSpace(text[:open]), pieces
}

// valuesInTail is ValuesBehind for values that commas part from the text, "COIL A, red, 22 AWG".
func valuesInTail(text string) (front string, pieces []string) {
	parts := strings.Split(text, ", ")
	n := len(parts)
	for n > 1 && len(parts)-n < 2 {
		p := strings.TrimSpace(parts[n-1])
		g, ok := value.ParseGauge(p, value.BareAWG, value.MarkUnknown)
		if !IsColour(p) && !(ok && g.Size != "" && strings.Trim(p, "0123456789.,") != "") {
			break
		}
		n--
	}
	if n == len(parts) || len(parts)-n == 2 && IsColour(parts[n]) == IsColour(parts[n+1]) {
		return text, nil
	}
	return strings.Join(parts[:n], ", "), parts[n:]
}

// IsColour reports whether a text is the name of a colour and nothing else.
func IsColour(text string) bool { return value.NamesColour(text) }

// WireValues reads a text that is the colour of a wire, with its size or without, and nothing else: "red", "red wire",
// "red (20 AWG)", "20 AWG red".
func WireValues(text string) (colour, size string) {
	if front, values := ValuesBehind(text); len(values) == 1 && !IsColour(values[0]) {
		text, size = front, values[0]
	}
	for _, word := range []string{" wire", " lead", " core", " cable"} {
		text = strings.TrimSuffix(text, word)
	}
	if IsColour(text) {
		return text, size
	}
	all := strings.Fields(text)
	for k := 1; k < len(all) && size == ""; k++ {
		for _, try := range [][2]string{{strings.Join(all[:k], " "), strings.Join(all[k:], " ")},
			{strings.Join(all[k:], " "), strings.Join(all[:k], " ")}} {
			if g, ok := value.ParseGauge(try[0], value.BareAWG, value.MarkUnknown); ok && g.Size != "" && !g.IsCable() &&
				(strings.Trim(try[0], "0123456789.,") != "" || strings.ContainsAny(try[0], ".,")) && IsColour(try[1]) {
				return try[1], try[0]
			}
		}
	}
	return "", ""
}
