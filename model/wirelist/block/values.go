package block

import (
	"strings"

	"contralay/model/wirelist/value"
)

// values is what a line of text says of a wire behind its name or its end.
type values struct {
	name, colour, size string
	rest               []string // what stands among the values and is none
}

func (v *values) some() bool { return v.colour != "" || v.size != "" }

// partValues parts the values off the end of a text: those in brackets, or behind commas.
//
//	pump + (red, 16 AWG)
//	pump -, black, 16 AWG
//	tank probe (0.5 mm² green, twisted)
//
// A bracket and a comma without a value behind them belong to the name.
func partValues(text string) values {
	whole := values{name: text}
	if front, in, after, ok := bracketed(text); ok {
		v := values{name: front}
		for _, piece := range pieces(in) {
			v.take(piece)
		}
		if after != "" {
			v.rest = append(v.rest, after)
		}
		if v.some() && front != "" {
			return v
		}
	}
	all := pieces(text)
	first := len(all)
	for first > 1 && isValue(all[first-1]) {
		first--
	}
	if first == len(all) {
		return whole
	}
	v := values{name: strings.TrimSpace(text[:strings.LastIndex(text, all[first-1])+len(all[first-1])])}
	for _, piece := range all[first:] {
		v.take(piece)
	}
	return v
}

// bracketed parts a text at the last brackets in it.
func bracketed(text string) (front, in, after string, ok bool) {
	end := strings.LastIndexAny(text, ")]")
	if end < 0 {
		return "", "", "", false
	}
	open := strings.LastIndexByte(text[:end], map[byte]byte{')': '(', ']': '['}[text[end]])
	if open < 0 {
		return "", "", "", false
	}
	return strings.TrimSpace(text[:open]), text[open+1 : end], strings.Trim(text[end+1:], " ,;.-"), true
}

// pieces parts a text at its commas and semicolons; that of a number, "1,5 mm²", parts nothing.
func pieces(text string) (all []string) {
	from := 0
	for i := range len(text) {
		within := i > 0 && i+1 < len(text) && value.IsDigit(text[i-1]) && value.IsDigit(text[i+1])
		if text[i] != ';' && (text[i] != ',' || within) {
			continue
		}
		all = append(all, strings.TrimSpace(text[from:i]))
		from = i + 1
	}
	return append(all, strings.TrimSpace(text[from:]))
}

// isValue reports whether a piece is a colour, a size, or both.
func isValue(piece string) bool {
	var v values
	v.take(piece)
	return v.some()
}

// take puts a piece where it belongs: the first colour, the first size, or among the rest.
func (v *values) take(piece string) {
	if piece == "" {
		return
	}
	_, colour := value.ParseColour(piece, "")
	g, size := value.ParseGauge(piece, value.BareAWG, value.MarkUnknown)
	size = size && g.Size != "" && strings.Trim(piece, "0123456789.,") != ""
	_, both := value.SizeAndColour(piece, value.BareAWG, "", value.MarkUnknown)
	switch {
	case colour && strings.Trim(piece, "0123456789/") != "" && v.colour == "":
		v.colour = piece
	case (size || both) && v.size == "":
		v.size = piece
	default:
		v.rest = append(v.rest, piece)
	}
}
