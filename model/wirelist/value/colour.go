package value

import (
	"slices"
	"strings"

	"contralay/model/wirelist/hueword"
	"contralay/model/wirelist/table"
)

// Colour is the colour of a wire: the base, then its stripes. The zero value is none.
type Colour []Hue

// Hue is one colour, with its shade where a list gives one.
type Hue struct {
	Of    int    // index of the hue: 0 to 9 as the digit code counts them
	Shade string // "light", "dark", or ""
}

// hue is one row of the table of colours.
type hue struct {
	digit string // of the ten-colour code; "" where it has none
	iec   string // of IEC 60757
	name  string
}

// hues is the table of colours, which nothing writes. Digits: the code of MIL-STD-681, from memory, not
// verified; letters: IEC 60757, from memory, not verified. Neither has a code for a
// light or a dark shade.
var hues = [hueword.Coded]hue{
	{"0", "BK", "black"}, {"1", "BN", "brown"}, {"2", "RD", "red"}, {"3", "OG", "orange"}, {"4", "YE", "yellow"},
	{"5", "GN", "green"}, {"6", "BU", "blue"}, {"7", "VT", "violet"}, {"8", "GY", "grey"}, {"9", "WH", "white"},
	{"", "PK", "pink"}, {"", "TQ", "turquoise"}, {"", "GD", "gold"}, {"", "SR", "silver"}, {"", "", "clear"},
}

// hueOf is a hue by its index; those behind the table have a name and no code.
func hueOf(i int) hue {
	if i < len(hues) {
		return hues[i]
	}
	return hue{name: hueword.Uncoded[i-len(hues)]}
}

// Letters is the IEC 60757 code, "WHRD"; ok is false where a hue has none. A shade is
// not part of it.
func (c Colour) Letters() (code string, ok bool) {
	for _, h := range c {
		if hueOf(h.Of).iec == "" {
			return "", false
		}
		code += hueOf(h.Of).iec
	}
	return code, len(c) > 0
}

// Digits is the digit code, "92"; ok is false where a hue has none.
func (c Colour) Digits() (code string, ok bool) {
	for _, h := range c {
		if hueOf(h.Of).digit == "" {
			return "", false
		}
		code += hueOf(h.Of).digit
	}
	return code, len(c) > 0
}

// Words are the names of the hues without their shades: "tan/white".
func (c Colour) Words() string {
	plain := slices.Clone(c)
	for i := range plain {
		plain[i].Shade = ""
	}
	return plain.String()
}

// String prints words that ParseColour reads as the same: "white/light blue".
func (c Colour) String() string {
	var parts []string
	for _, h := range c {
		name := hueOf(h.Of).name
		if h.Shade != "" {
			name = h.Shade + " " + name
		}
		parts = append(parts, name)
	}
	return strings.Join(parts, "/")
}

// Shaded reports whether a shade goes lost in a code.
func (c Colour) Shaded() bool {
	return slices.ContainsFunc(c, func(h Hue) bool { return h.Shade != "" })
}

// Equal compares two colours, shades included.
func (c Colour) Equal(o Colour) bool { return slices.Equal(c, o) }

// MostHues is how many hues one wire can have: a base and three stripes (MIL-STD-681 has up to
// three, from memory).
const MostHues = 4

// ParseColour reads a colour cell: words of several languages, two-letter codes, a
// digit code, base and stripes with anything between. lang, "de" or another code,
// says whose short forms count where two languages differ ("gr" is grau and gris, but
// no English colour); "" is none. ok is false where anything is not understood or
// could be read in two ways.
func ParseColour(text, lang string) (Colour, bool) {
	if HasDigit(text) && hasLetter(text) {
		return nil, false // neither a code of digits nor words
	}
	if c, is, ok := signed(text, lang); is {
		return c, ok
	}
	if c, ok := twoLanguages(text, lang); ok {
		return c, true
	}
	if c, ok := withItsCode(text, lang); ok {
		return c, true
	}
	s := table.Fold(withoutMark(strings.TrimSpace(text)))
	s = stripeOn(s)
	if s = hueword.Once(withoutColourOf(s)); s == "navy" {
		s = "navy blue"
	}
	if c, ok := digitColour(s); ok {
		return c, true
	}
	var c Colour
	shade := ""
	between, with, last := false, false, ""
	var sign byte // the last one between two words
	var in room
	for _, t := range scan(in[:0], s) {
		switch {
		case t.Kind == '/' || t.Kind == '-' || t.Kind == '+' || t.Kind == ',' || t.Kind == '.' || t.Kind == '&' || t.Kind == '\\' ||
			t.Kind == '|' || t.Kind == ';':
			if t.Kind == '.' && shade != "" {
				continue // "Lt. Blue"
			}
			if between || len(c) == 0 || shade != "" {
				return nil, false // a sign with nothing before it, or two
			}
			between, sign = true, t.Kind
			continue
		case t.Kind == '(' || t.Kind == ')':
			continue
		case t.Kind != 'a':
			return nil, false
		}
		if t.Text == "or" && len(c) > 0 && !between {
			return nil, false // "red or blue" is a question, not three colours
		}
		if s, behind := isShade(t.Text); s != "" {
			switch {
			case shade != "":
				return nil, false
			case behind && len(c) > 0 && (!between || sign == '-') && c[len(c)-1].Shade == "":
				c[len(c)-1].Shade, between = s, false // "bleu clair", "verde-oscuro"
			default:
				shade = s
			}
			continue
		}
		if s, rest := compoundShade(t.Text); s != "" && rest == "blue" && !between && len(c) > 0 && c[len(c)-1] == (Hue{Of: 6}) {
			c[len(c)-1].Shade = s // "azul celeste"
			continue
		} else if s != "" && shade == "" {
			shade, t.Text = s, rest
		}
		switch t.Text {
		case "stripe", "striped", "stripes", "streifen", "tracer", "trace", "band", "raya", "riga":
			if between && sign == '-' && t.Text == "striped" && len(c) > 1 {
				between = false // "red white-striped"
				continue
			}
			if len(c) == 0 || with || between {
				return nil, false
			}
			continue
		case "with", "mit", "avec", "con", "w":
			if t.Text == "w" && (between || len(c) == 0) {
				break // white: "R/W", "w"
			}
			if len(c) == 0 || with || between {
				return nil, false
			}
			with = true
			continue
		case "a", "an", "one", "einem", "une":
			if with { // "white with a black stripe"
				continue
			}
		}
		hues, ok := wordColour(t.Text, lang)
		if !ok || len(c)+len(hues) > MostHues || len(hues) > 1 && shade != "" {
			return nil, false
		}
		for _, h := range hues {
			if len(c) > 0 && c[len(c)-1] == (Hue{h, shade}) {
				if len(c) == 1 && between && len(hues) == 1 && last != t.Text && len(last) > 2 && len(t.Text) > 2 {
					continue // "rot/red" is one colour in two languages
				}
				return nil, false // a stripe that nobody would see
			}
			c = append(c, Hue{h, shade})
		}
		shade, between, with, last = "", false, false, t.Text
	}
	if len(c) == 0 || between || shade != "" || with {
		return nil, false
	}
	return c, true
}

// stripeOn puts the main colour first where a text names the stripe first, "white stripe on red".
func stripeOn(s string) string {
	front, main, ok := strings.Cut(s, " on ")
	if !ok {
		return s
	}
	for _, word := range []string{" stripe", " tracer", " trace"} {
		if stripe, is := strings.CutSuffix(strings.TrimSuffix(front, "s"), word); is {
			return main + "/" + stripe
		}
	}
	return s
}

// withoutColourOf takes the words "colour of" off a Portuguese colour that is called after a thing, "cor-de-rosa".
func withoutColourOf(s string) string {
	if !strings.Contains(s, "cor") {
		return s
	}
	return strings.NewReplacer("cor-de-", "", "cor de ", "").Replace(s)
}

// hasLetter reports whether a text has a plain letter.
func hasLetter(s string) bool {
	for i := range len(s) {
		if IsLetter(s[i]) && s[i] < 0x80 {
			return true
		}
	}
	return false
}

// digitColour reads "6", "92", "9/2", "901".
func digitColour(s string) (Colour, bool) {
	var c Colour
	for i, d := range []byte(s) {
		switch {
		case IsDigit(d) && len(c) < MostHues && (len(c) == 0 || c[len(c)-1].Of != int(d-'0')):
			c = append(c, Hue{Of: int(d - '0')})
		case (d == '/' || d == '-') && i > 0 && i+1 < len(s) && IsDigit(s[i-1]) && IsDigit(s[i+1]):
		default:
			return nil, false
		}
	}
	return c, len(c) > 0
}

// wordColour reads one word or code; a code may hold several hues.
func wordColour(word, lang string) ([]int, bool) {
	if i, ok := colourWord(word, lang); ok {
		return []int{i}, true
	}
	if two := compoundColour(word, lang); two != nil {
		return two, true
	}
	if len(word)%2 != 0 || len(word) > 2*MostHues {
		return nil, false
	}
	if all := inTwos(word, colourCode); all != nil {
		return all, true
	}
	if lang != "de" {
		return nil, false
	}
	// "gnws": the short forms of DIN 47100, two of them without a sign between. From memory, no source.
	all := inTwos(word, func(two string) (int, bool) { return colourWord(two, lang) })
	return all, all != nil
}

// inTwos reads a word that is short forms of colours of two letters each, and nothing else.
func inTwos(word string, read func(two string) (int, bool)) (all []int) {
	for k := 0; k < len(word); k += 2 {
		i, ok := read(word[k : k+2])
		if !ok {
			return nil
		}
		all = append(all, i)
	}
	return all
}

// compoundColour is the hues of two words of colours written as one, "grüngelb"; nil where it is none.
func compoundColour(word, lang string) []int {
	const least = 3 // letters of each
	for i := least; i+least <= len(word); i++ {
		a, first := colourWord(word[:i], lang)
		b, second := colourWord(word[i:], lang)
		if first && second && a != b {
			return []int{a, b}
		}
	}
	return nil
}

func colourCode(two string) (int, bool) {
	for i, h := range hues {
		if h.iec != "" && strings.EqualFold(h.iec, two) {
			return i, true
		}
	}
	return 0, false
}

// withoutMark takes the mark of a note below the table off a text.
func withoutMark(text string) string {
	if text == "" || text[len(text)-1] != '*' && text[len(text)-1] < 0x80 {
		return text // most texts
	}
	return strings.TrimRight(text, "*†‡")
}
