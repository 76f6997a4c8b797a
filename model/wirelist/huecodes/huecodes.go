package huecodes

import (
	"slices"
	"strings"

	"contralay/model/wirelist/huekey"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

const (
	most       = 400 // cells of different texts that are looked at: a column of colours has fewer (no source)
	longest    = 16  // bytes of a cell of short forms (no source)
	leastOwn   = 3   // short forms that nobody reads otherwise, where the headings say no language (no source)
	between    = "/-+, "
	unreadable = 5 // one word of so many may be something else where the headings say the language (no source)
)

// Of is the key to the short forms of a column of colours, and the language they are of; nil where every cell is read without one, and
// where no set reads them. langs are the languages that the headings say, the surest first; sure is false where the cells alone say one.
//
//	Draad | Kleur
//	1     | zw
//	2     | bl/wt
func Of(cells []string, langs ...string) (key huekey.ColourKey, of string, sure bool) {
	met := distinct(cells)
	if !slices.ContainsFunc(met, func(c string) bool { return len(c) <= longest && isStrange(c, langs) }) {
		return nil, "", false
	}
	for _, lang := range langs {
		if key := ofLanguage(met, lang); key != nil {
			return key, lang, true
		}
	}
	for _, s := range sets() {
		k, unread := s.read(met)
		if k == nil || unread > 0 || strangeIn(k) < leastOwn || s.foreignIn(met) >= leastOwn {
			continue
		}
		if key != nil && disagree(key, k) {
			return nil, "", false
		}
		if key == nil {
			key, of = k, s.lang
		}
	}
	return key, of, false
}

// ofLanguage is the key to some cells by the sets of one language; nil where none reads nearly all of them, or two read them otherwise.
func ofLanguage(cells []string, lang string) (key huekey.ColourKey) {
	least := len(cells) + 1
	for _, s := range sets() {
		if s.lang != lang {
			continue
		}
		k, unread := s.read(cells)
		switch {
		case k == nil || unread > max(1, len(cells)/unreadable) || len(k) < 2*unread || unread > least:
		case key != nil && unread == least && disagree(key, k):
			return nil
		case key == nil || unread < least:
			key, least = k, unread
		}
	}
	return key
}

// distinct are the cells that could be a colour, each once.
func distinct(cells []string) (met []string) {
	seen := map[string]bool{}
	for _, c := range cells {
		if c == "" || seen[c] {
			continue
		}
		seen[c] = true
		if value.IsNothing(c) || value.IsDitto(c) || c == "?" || value.HasDigit(c) || len(seen) > most {
			continue
		}
		met = append(met, c)
	}
	return met
}

// isStrange reports whether a cell is no colour that is read without a key.
func isStrange(cell string, langs []string) bool {
	for _, lang := range langs {
		if _, ok := value.ParseColour(cell, lang); ok {
			return false
		}
	}
	return true
}

// strangeIn is how many short forms of a key nobody reads without it.
func strangeIn(key huekey.ColourKey) (n int) {
	for short := range key {
		if isStrange(short, []string{""}) && !strings.ContainsAny(short, between) {
			n++
		}
	}
	return n
}

// foreignIn is how many short forms of some cells are read without a key and are none of the set: "LG/WH" beside "BK/OG" and "PK" is not of
// a language that has an L and a G.
func (s set) foreignIn(cells []string) (n int) {
	met := map[string]bool{}
	for _, c := range cells {
		for _, w := range parts(table.Fold(c)) {
			if met[w] || len(w) < 2 || len(w) > 3 || s.hues[w] != "" {
				continue
			}
			met[w] = true
			if _, ok := value.ParseColour(w, ""); ok {
				n++
			}
		}
	}
	return n
}

// disagree reports whether two keys differ in a short form that both have.
func disagree(a, b huekey.ColourKey) bool {
	for short, means := range a {
		if other, ok := b[short]; ok && other != means {
			return true
		}
	}
	return false
}

// read makes the key to some cells; unread is how many of them it has no colour for, those among them whose short form keeps two
// meanings. nil where no short form is met.
func (s set) read(cells []string) (key huekey.ColourKey, unread int) {
	words := map[string]bool{}
	var whole []string
	for _, c := range cells {
		f := table.Fold(c)
		of := parts(f)
		switch {
		case slices.ContainsFunc(of, func(w string) bool { return !s.knows(w) }):
			if name.StateOf(c) == name.Used {
				unread++
			}
			continue
		case s.hues[f] != "" && len(of) > 1:
			whole = append(whole, f)
			continue
		}
		if len(of) == 2 && s.isEarth(of[0], of[1]) {
			whole = append(whole, f)
			continue
		}
		for _, w := range of {
			words[w] = true
		}
	}
	key = huekey.ColourKey{}
	said := s.settled(words)
	for w := range words {
		means, open := s.meaning(w, said)
		if open {
			unread++
			key[w] = w + "?" // no colour is called so
		} else if means != "" && !s.isCutShort(w, means) {
			key[w] = means
		}
	}
	for _, f := range whole {
		if key[f] = s.hues[f]; key[f] == "" {
			key[f] = s.earth(parts(f))
		}
	}
	if len(key) == 0 {
		return nil, 0
	}
	return key, unread
}

// parts are the words of a folded cell, without the points behind them.
func parts(folded string) []string {
	return strings.FieldsFunc(folded, func(r rune) bool { return strings.ContainsRune(between, r) })
}

// isEarth reports whether two words are yellow and what may be green: no other wire has these two.
func (s set) isEarth(a, b string) bool {
	a, b = s.hues[strings.TrimRight(a, ".")], s.hues[strings.TrimRight(b, ".")]
	return a == "yellow" && strings.Contains(b, "green|") || b == "yellow" && strings.Contains(a, "green|")
}

// earth is the colour of such a pair.
func (s set) earth(of []string) string {
	if s.hues[strings.TrimRight(of[0], ".")] == "yellow" {
		return "yellow/green"
	}
	return "green/yellow"
}

// knows reports whether a word has a meaning in a set, or is a word that is read without one.
func (s set) knows(w string) bool {
	if s.short(w) != "" {
		return true
	}
	if _, ok := value.ParseColour(w, s.lang); ok {
		return true
	}
	_, ok := value.FirstLetters(w, s.lang)
	return ok
}

// short is what a word of the set says: one short form, or two that stand together.
func (s set) short(w string) string {
	w = strings.TrimRight(w, ".")
	if means := s.hues[w]; means != "" {
		return means
	}
	if _, ok := value.ParseColour(w, s.lang); ok {
		return ""
	}
	at := 0
	switch {
	case s.alone && len(w) == 2 && !isFormOf(w, s.lang):
		at = 1
	case len(w) == 4:
		at = 2
	default:
		return ""
	}
	a, b := s.hues[w[:at]], s.hues[w[at:]]
	if a == "" || b == "" || a == b || strings.Contains(a+b, "|") {
		return ""
	}
	return a + "/" + b
}

// isCutShort reports whether a word is the first letters of one for the same colour, which is read without a key. "Sin" is a word for
// "without".
func (s set) isCutShort(w, means string) bool {
	c, ok := value.FirstLetters(w, s.lang)
	return ok && len(w) > 2 && w != "sin" && c.String() == means
}

// isFormOf reports whether a word is one short form of some set of a language.
func isFormOf(w, lang string) bool {
	return slices.ContainsFunc(sets(), func(s set) bool { return s.lang == lang && s.hues[w] != "" })
}

// settled are the colours that the words of a column say for sure.
func (s set) settled(words map[string]bool) map[string]bool {
	said := map[string]bool{}
	for w := range words {
		if means := s.short(w); means != "" && !strings.Contains(means, "|") {
			said[means] = true
		} else if c, ok := value.ParseColour(w, s.lang); ok && means == "" {
			said[c.String()] = true
		}
	}
	return said
}

// meaning is what a word means beside what the column says for sure; "" where it is read without a set. open is true where two meanings
// are left.
func (s set) meaning(w string, said map[string]bool) (means string, open bool) {
	means = s.short(w)
	if !strings.Contains(means, "|") {
		return means, false
	}
	left := slices.DeleteFunc(strings.Split(means, "|"), func(m string) bool { return said[m] })
	if len(left) != 1 {
		return "", true
	}
	return left[0], false
}

// Readable is how many of some cells are colours in the words and short forms of a language.
func Readable(cells []string, lang string) (n int) {
	key := ofLanguage(distinct(cells), lang)
	for _, c := range cells {
		if _, ok := value.ParseColour(key.InEnglish(c), lang); ok {
			n++
		} else if _, ok := value.FirstLetters(c, lang); ok {
			n++
		}
	}
	return n
}
