package table

import (
	"bytes"
	"encoding/binary"
	"strings"
	"unicode/utf16"
	"unicode/utf8"

	"contralay/model/wirelist/codepage"
)

// decodeText makes UTF-8 of a text: with a byte-order mark as it says, else UTF-8
// where it is, else in the code page that its letters fit; guess says which, and whether it could be
// another. Line ends become "\n". problem is "" where it is a text.
func decodeText(data []byte) (text, guess, problem string) {
	switch {
	case bytes.HasPrefix(data, []byte{0xef, 0xbb, 0xbf}):
		data = data[3:]
	case bytes.HasPrefix(data, []byte{0xff, 0xfe}):
		data = fromUTF16(data[2:], binary.LittleEndian)
	case bytes.HasPrefix(data, []byte{0xfe, 0xff}):
		data = fromUTF16(data[2:], binary.BigEndian)
	}
	if bytes.IndexByte(data, 0) >= 0 {
		return "", "", "is no text: it has zero bytes"
	}
	text = string(data)
	if !utf8.Valid(data) {
		var sure bool
		if text, guess, sure = codepage.Of(data); !sure {
			guess += ", which is not sure"
		}
	}
	text = strings.ReplaceAll(text, "\r\n", "\n")
	return strings.ReplaceAll(text, "\r", "\n"), guess, ""
}

func fromUTF16(data []byte, order binary.ByteOrder) []byte {
	units := make([]uint16, len(data)/2)
	for i := range units {
		units[i] = order.Uint16(data[2*i:])
	}
	return []byte(string(utf16.Decode(units)))
}

// lettersOf says whether every letter of a text is a plain one, and whether one of them is a capital.
func lettersOf(s string) (ascii, capital bool) {
	for i := range len(s) {
		if s[i] >= utf8.RuneSelf {
			return false, capital
		}
		capital = capital || s[i] >= 'A' && s[i] <= 'Z'
	}
	return true, capital
}

// lower makes lower case of a text of plain letters.
func lower(s string) string {
	var short [64]byte // most texts are
	small := append(short[:0], s...)
	for i, c := range small {
		if c >= 'A' && c <= 'Z' {
			small[i] = c + 'a' - 'A'
		}
	}
	return string(small)
}

// Fold makes lower case of a text and plain letters of those with marks, so that
// "Länge", "LÄNGE" and "Lange" are one word.
func Fold(s string) string {
	switch ascii, capital := lettersOf(s); {
	case ascii && !capital:
		return s
	case ascii:
		return lower(s)
	}
	var b strings.Builder
	b.Grow(len(s))
	for _, r := range strings.ToLower(s) {
		switch r {
		case 'ä', 'à', 'á', 'â', 'ã', 'å', 'ą', 'ă':
			r = 'a'
		case 'ö', 'ò', 'ó', 'ô', 'õ', 'ø', 'ő':
			r = 'o'
		case 'ü', 'ù', 'ú', 'û', 'ů', 'ű':
			r = 'u'
		case 'é', 'è', 'ê', 'ë', 'ę', 'ě':
			r = 'e'
		case 'í', 'ì', 'î', 'ï', 'ı':
			r = 'i'
		case 'ç', 'ć', 'č':
			r = 'c'
		case 'ñ', 'ń', 'ň':
			r = 'n'
		case 'ł':
			r = 'l'
		case 'ś', 'š', 'ş', 'ș':
			r = 's'
		case 'ż', 'ź', 'ž':
			r = 'z'
		case 'ř':
			r = 'r'
		case 'ý':
			r = 'y'
		case 'ď':
			r = 'd'
		case 'ť', 'ț':
			r = 't'
		case 'ğ':
			r = 'g'
		case 'æ':
			b.WriteByte('a')
			r = 'e'
		case 'ß':
			b.WriteByte('s')
			r = 's'
		case '–', '—', '−', '‐', '‑':
			r = '-'
		}
		b.WriteRune(r)
	}
	return b.String()
}
