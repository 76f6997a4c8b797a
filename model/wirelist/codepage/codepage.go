package codepage

import (
	"slices"
	"strings"
	"unicode"

	"golang.org/x/text/encoding/charmap"
)

// A text that is no UTF-8 has one byte a letter, and does not say in which code page. The letters of a
// language give it away: read in the right page every letter with a mark is one of the language.

// page is a language and the code page that lists of it come in.
type page struct {
	name    string // of the code page
	chars   *charmap.Charmap
	letters string // of the language beyond a to z, small
}

// pages are the languages that are tried; of two that fit alike the first is taken. The letters of each
// language are its alphabet, from memory, no source; the tables of the code pages are those of
// golang.org/x/text.
func pages() []page {
	const polish, czech, hungarian, romanian, turkish = "ąćęłńóśźż", "áčďéěíňóřšťúůýž", "áéíóöőúüű", "ăâîşţ", "çğıöşüâî"
	const german, french, spanish, italian, portuguese = "äöüß", "àâçéèêëîïôûùüœæÿ", "áéíñóúü", "àèéìîòù", "áâãàçéêíóôõú"
	const nordic, russian = "åäöæøé", "абвгдеёжзийклмнопрстуфхцчшщъыьэюяіїєґ"
	var all []page
	for _, of := range []struct {
		name  string
		chars *charmap.Charmap
		langs []string
	}{
		{"Windows-1252", charmap.Windows1252, []string{german, french, spanish, italian, nordic, portuguese}},
		{"Windows-1250", charmap.Windows1250, []string{polish, czech, hungarian, romanian}},
		{"ISO 8859-2", charmap.ISO8859_2, []string{polish, czech}},
		{"Windows-1254", charmap.Windows1254, []string{turkish}},
		{"Windows-1251", charmap.Windows1251, []string{russian}},
		{"DOS 850", charmap.CodePage850, []string{german, french, spanish, nordic}},
		{"DOS 852", charmap.CodePage852, []string{polish, czech}},
		{"DOS 866", charmap.CodePage866, []string{russian}},
		{"Macintosh", charmap.Macintosh, []string{german, french}},
	} {
		for _, letters := range of.langs {
			all = append(all, page{of.name, of.chars, letters})
		}
	}
	return all
}

// mostSeen is how many letters beyond ASCII are looked at; more say nothing new (no source).
const mostSeen = 4000

// Of reads a text in the code page that its letters fit best and says its name. sure is false where
// letters are left that fit no language, or another page fits as well and reads other letters.
func Of(data []byte) (text, name string, sure bool) {
	type try struct {
		page
		misses int
	}
	var all []try
	for _, p := range pages() {
		all = append(all, try{p, misses(data, p)})
	}
	best := slices.MinFunc(all, func(a, b try) int { return a.misses - b.misses })
	text = decoded(data, best.chars)
	sure = best.misses == 0
	for _, o := range all {
		if o.misses == best.misses && o.name != best.name && decoded(data, o.chars) != text {
			sure = false
		}
	}
	return text, best.name, sure
}

// misses counts the bytes beyond ASCII that the language of a page would not have: strange letters, and signs within a
// word.
func misses(data []byte, p page) (n int) {
	seen := 0
	isLetter := func(i int) bool {
		return i >= 0 && i < len(data) && (data[i] >= 0x80 || data[i]|0x20 >= 'a' && data[i]|0x20 <= 'z')
	}
	for i, c := range data {
		if c < 0x80 {
			continue
		}
		if seen++; seen > mostSeen {
			break
		}
		r := p.chars.DecodeByte(c)
		switch {
		case unicode.IsLetter(r):
			if low := unicode.ToLower(r); !strings.ContainsRune(p.letters, low) && r != 'µ' && r != 'Ω' {
				n++
			} else if unicode.IsUpper(r) && i > 0 && data[i-1] >= 'a' && data[i-1] <= 'z' {
				n++ // a capital within a word
			}
		case strings.ContainsRune("°²³±–—’‘“”„…·×½¼¾\u00a0§€£«»", r):
			if isLetter(i-1) && isLetter(i+1) && !strings.ContainsRune("²³°", r) || strings.ContainsRune("²³", r) && isLetter(i+1) {
				n++
			}
		default:
			n++
		}
	}
	return n
}

// decoded reads one byte a letter.
func decoded(data []byte, chars *charmap.Charmap) string {
	var b strings.Builder
	b.Grow(len(data) + len(data)/8)
	for _, c := range data {
		b.WriteRune(chars.DecodeByte(c))
	}
	return b.String()
}
