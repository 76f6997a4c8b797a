package value

import (
	"strings"

	"contralay/model/wirelist/commas"
)

// ColourAndMore reads a cell of colours that says more than the colour: the number of the core behind it, "white 3", "sw3", or a remark
// behind a comma or in brackets, "black, heavy (2.5)". ok is false where what is behind could change the colour.
func ColourAndMore(cell, lang string) (c Colour, ok bool) {
	at := commas.At(cell, ",;(")
	front, more := cell, ""
	switch i := strings.LastIndexByte(cell, ' '); {
	case at > 0:
		front, more = cell[:at], cell[at+1:]
	case i > 0 && strings.Trim(cell[i+1:], "0123456789") == "":
		front, more = cell[:i], cell[i+1:]
	default:
		if front, more = cutCoreNumber(cell); more == "" {
			return nil, false
		}
	}
	for _, w := range commas.Parts(more, " ,;()/-") {
		if _, colour := ParseColour(w, lang); colour && strings.Trim(w, "0123456789") != "" || saysOther(strings.ToLower(w)) {
			return nil, false
		}
	}
	c, ok = ParseColour(strings.TrimSpace(front), lang)
	return c, ok && strings.Trim(front, "0123456789 ") != ""
}

// cutCoreNumber takes the number of the core off a colour that it stands behind without a blank, "sw1", "black-2", "bk #3"; number is
// "" where none does.
func cutCoreNumber(cell string) (colour, number string) {
	letters := strings.TrimRight(cell, "0123456789")
	number = cell[len(letters):]
	colour = strings.TrimRight(letters, "-_# ")
	if len(number) == 0 || len(number) > 2 || len(colour) < 2 || strings.ContainsAny(colour, "0123456789") {
		return cell, ""
	}
	return colour, number
}

// saysOther reports whether a word says that the colour before it may not be that of the wire.
func saysOther(w string) bool {
	switch w {
	case "or", "not", "was", "were", "now", "old", "if", "else", "ex", "formerly", "stripe", "tracer", "band", "oder", "nicht", "ou", "pas",
		"o",
		"no", "non", "statt", "instead":
		return true
	}
	return strings.HasPrefix(w, "?")
}

// NamesColour reports whether a text is the name of a colour and nothing else; digits alone name none, and a letter before a whole word is
// the end of another name, "main beam R white/blue".
func NamesColour(text string) bool {
	if len(text) > 4 && text[1] == ' ' && IsLetter(text[0]) && strings.IndexFunc(text[2:], isSmallLetter) == 0 {
		return false
	}
	_, ok := ParseColour(text, "")
	return ok && strings.Trim(text, "0123456789") != ""
}

// PartsColours are the signs that part the colours of several wires in a cell, where something says that there are several.
const PartsColours = "/,;&+"

// ColoursOf parts a cell at some signs, and at "and", in the colours of several wires; nil where any piece is none.
func ColoursOf(cell, lang, signs string) (all []Colour) {
	cell = strings.ReplaceAll(cell, " and ", signs[:1])
	for p := range strings.FieldsFuncSeq(cell, func(r rune) bool { return strings.ContainsRune(signs, r) }) {
		c, ok := ParseColour(p, lang)
		if !ok {
			return nil
		}
		all = append(all, c)
	}
	return all
}

func isSmallLetter(r rune) bool { return r >= 'a' && r <= 'z' }
