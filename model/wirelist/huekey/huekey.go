package huekey

import (
	"strings"

	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// ColourKey is what a list says that its short forms of colours mean, by the folded form.
type ColourKey map[string]string

// ReadColourKey reads a line that is a key to colours: three short forms or more, each with the word behind it,
// "W white  L blue  R red", "BK = black, RD = red, N: nero". It is nil where the line is anything else.
func ReadColourKey(text string) ColourKey {
	if key := keyByCommas(text); key != nil {
		return key
	}
	if key := keyByPieces(text); key != nil {
		return key
	}
	if key := keyOfOne(text); key != nil {
		return key
	}
	if key := keyOfSentences(text); key != nil {
		return key
	}
	if key := keyOfWords(text); len(key) >= leastPieces {
		return key
	}
	return nil
}

// keyOfOne reads a sentence that says what one short form means, "DBU is dark blue". Its letters stand in the words for the colour, in
// their order: "GND is black" says the colour of a net.
func keyOfOne(text string) ColourKey {
	const longest = 40 // bytes (no source)
	if at := strings.IndexByte(text, ' '); at < 2 || at > 3 || len(text) > longest {
		return nil
	}
	w := strings.Fields(strings.TrimRight(text, ". "))
	if len(w) < 3 || len(w) > 5 || !isShortForm(w[0]) || w[0] != strings.ToUpper(w[0]) {
		return nil
	}
	words := w[1:]
	switch table.Fold(words[0]) {
	case "is", "=", "means", "ist", "heisst", "est", "es", "e", "betekent":
		words = words[1:]
	case "stands", "steht":
		words = words[min(2, len(words)):]
	default:
		return nil
	}
	called := strings.Join(words, " ")
	if c, ok := value.ParseColour(called, ""); !ok || len(c) != 1 || len(called) < 3 || strings.Contains(called, "/") {
		return nil
	}
	rest := table.Fold(called)
	for _, r := range table.Fold(w[0]) {
		at := strings.IndexRune(rest, r)
		if at < 0 {
			return nil
		}
		rest = rest[at+len(string(r)):]
	}
	return ColourKey{table.Fold(w[0]): called}
}

// wordOfKey is the word for a colour that some words begin with, of one word or of two, "light green", and how many they are; 0 where
// they begin with none.
func wordOfKey(parts []string) (word string, n int) {
	c, one := value.ParseColour(parts[0], "")
	one = one && len(c) == 1 && len(parts[0]) > 2
	if len(parts) > 1 && (!one || !isShortForm(parts[1])) {
		two := parts[0] + " " + parts[1]
		if c, ok := value.ParseColour(two, ""); ok && len(c) == 1 && len(parts[1]) > 2 {
			return two, 2
		}
	}
	if !one {
		return "", 0
	}
	return parts[0], 1
}

// withoutOtherWords leaves out what a key puts in brackets behind a word for a colour, another word for it: "S slate (grey)".
func withoutOtherWords(text string) string {
	for from := 0; ; {
		open := strings.IndexByte(text[from:], '(')
		if open < 0 {
			return text
		}
		open += from
		end := strings.IndexByte(text[open:], ')')
		if end < 0 {
			return text
		}
		before := strings.Fields(text[:open])
		word := ""
		if len(before) > 0 {
			word = before[len(before)-1]
		}
		if _, ok := value.ParseColour(word, ""); ok && len(word) > 2 {
			text = text[:open] + text[open+end+1:]
			continue
		}
		from = open + end
	}
}

// keyByCommas reads a key whose pieces have a sign of equality each, so that the word may be two: "Lg = light green, P = pink". A
// text may lead to it, with a colon behind, and a sentence may follow.
func keyByCommas(text string) ColourKey {
	if strings.Count(text, "=") < 3 {
		return nil
	}
	if lead, rest, ok := strings.Cut(text, ": "); ok && !strings.Contains(lead, "=") {
		text = rest
	}
	key := ColourKey{}
	pieces := strings.FieldsFunc(text, func(r rune) bool { return r == ',' || r == ';' || r == '|' })
	for i, piece := range pieces {
		short, word, ok := strings.Cut(piece, "=")
		if !ok && len(key) > 2 && i > 0 && strings.Contains(pieces[i-1], ". ") {
			break // the sentence behind has a comma
		}
		word, _, _ = strings.Cut(word, ". ")
		short, word = strings.TrimPrefix(strings.TrimSpace(short), "and "), strings.Trim(word, " .")
		if c, is := value.ParseColour(word, ""); !ok || !is || len(c) != 1 || len(word) < 3 || !isShortForm(short) {
			return nil
		}
		key[table.Fold(short)] = word
	}
	if len(key) < 3 {
		return nil
	}
	return key
}

// partsOfKey are the signs between the words of a key.
const partsOfKey = " =:,;|/()–-"

// isShortForm reports whether a word can stand for a colour: one to three letters.
func isShortForm(w string) bool {
	return len([]rune(w)) <= 3 && strings.Trim(w, "0123456789.") == w && w != ""
}

// isLeadOfKey reports whether a word may stand before a key: "Colour code".
func isLeadOfKey(w string) bool {
	switch table.Fold(w) {
	case "colour", "colours", "color", "colors", "code", "codes", "key", "legend", "legende", "farben", "farbcode", "couleurs", "colores",
		"colori", "kleuren", "farver", "barvy", "kolory", "wire", "wires", "abbreviations":
		return true
	}
	return false
}

// InEnglish puts the word for each short form of a cell; other text stays.
func (k ColourKey) InEnglish(cell string) string {
	if len(k) == 0 {
		return cell
	}
	if meant, ok := k[table.Fold(cell)]; ok {
		return meant
	}
	var b strings.Builder
	for rest := cell; rest != ""; {
		end := strings.IndexAny(rest, " /-+,")
		if end < 0 {
			end = len(rest)
		}
		word := rest[:end]
		if meant, ok := k.apart(word); ok {
			word = meant
		}
		b.WriteString(word)
		if end < len(rest) {
			b.WriteByte(rest[end])
			end++
		}
		rest = rest[end:]
	}
	return b.String()
}
