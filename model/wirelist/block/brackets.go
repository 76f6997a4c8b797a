package block

import (
	"strings"

	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// partBrackets gives what stands in brackets at the end of a point its cells, where every piece of it is a colour or a size
// of wire, in every point that has any.
//
//   - Pin 1: heater + (red, 16 AWG)
//   - Pin 2: heater return (black, 16 AWG)
func partBrackets(rows []table.Row) {
	n, other := 0, 0
	for _, r := range rows {
		front, pieces := valuesBehind(r.Cells[len(r.Cells)-1])
		if pieces == nil {
			if strings.HasSuffix(r.Cells[len(r.Cells)-1], ")") {
				other++
			}
			continue
		}
		if front == "" {
			return
		}
		n++
	}
	if 2*n < len(rows) || n <= 2*other {
		return
	}
	for i, r := range rows {
		last := len(r.Cells) - 1
		front, pieces := valuesBehind(r.Cells[last])
		colour, size := "", ""
		for _, p := range pieces {
			if isColour(p) {
				colour = p
			} else {
				size = p
			}
		}
		if pieces == nil {
			front = r.Cells[last]
		}
		rows[i].Cells = append(append([]string{}, r.Cells[:last]...), front, colour, size)
	}
}

// valuesBehind parts the values of a wire in brackets off the end of a text, a colour, a size or both; nil where there are none.
func valuesBehind(text string) (front string, pieces []string) {
	open := strings.LastIndexByte(text, '(')
	if open < 0 || !strings.HasSuffix(text, ")") {
		return valuesInTail(text)
	}
	bare := false
	for p := range strings.FieldsFuncSeq(text[open+1:len(text)-1], func(r rune) bool { return r == ',' || r == ';' }) {
		p = strings.TrimSpace(p)
		if g, ok := value.ParseGauge(p, value.BareAWG, value.MarkUnknown); !isColour(p) && (!ok || g.Size == "") {
			return text, nil
		}
		bare = bare || strings.Trim(p, "0123456789.,") == ""
		pieces = append(pieces, p)
	}
	if bare && len(pieces) != 2 { // "(16, red)" is a size and a colour, "(16)" may be anything
		return text, nil
	}
	if len(pieces) == 0 || len(pieces) > 2 || len(pieces) == 2 && isColour(pieces[0]) == isColour(pieces[1]) {
		return text, nil
	}
	return strings.TrimSpace(text[:open]), pieces
}

// valuesInTail is valuesBehind for values that commas part from the text, "COIL A, red, 22 AWG".
func valuesInTail(text string) (front string, pieces []string) {
	parts := strings.Split(text, ", ")
	n := len(parts)
	for n > 1 && len(parts)-n < 2 {
		p := strings.TrimSpace(parts[n-1])
		g, ok := value.ParseGauge(p, value.BareAWG, value.MarkUnknown)
		if !isColour(p) && !(ok && g.Size != "" && strings.Trim(p, "0123456789.,") != "") {
			break
		}
		n--
	}
	if n == len(parts) || len(parts)-n == 2 && isColour(parts[n]) == isColour(parts[n+1]) {
		return text, nil
	}
	return strings.Join(parts[:n], ", "), parts[n:]
}

// isColour reports whether a text is the name of a colour and nothing else.
func isColour(text string) bool { return value.NamesColour(text) }
