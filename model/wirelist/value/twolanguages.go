package value

import (
	"strings"

	"contralay/model/wirelist/twoscripts"
)

// twoLanguages reads a colour with stripes that is said in two languages, "schwarz-weiß / black-white": both halves are that colour, in
// other words; and one in two scripts, "緑/白 Green/White". ok is false for any other cell, one colour in two languages among them.
func twoLanguages(text, lang string) (c Colour, ok bool) {
	if front, back, parted := twoscripts.Part(text); parted {
		c, ok = ParseColour(front, lang)
		other, also := ParseColour(back, lang)
		return c, ok && also && c.Equal(other)
	}
	at := strings.IndexByte(text, '/')
	if at < 0 || strings.Count(text, "/")%2 == 0 {
		return nil, false
	}
	for range strings.Count(text, "/") / 2 {
		at += 1 + strings.IndexByte(text[at+1:], '/')
	}
	front, back := strings.TrimSpace(text[:at]), strings.TrimSpace(text[at+1:])
	if strings.EqualFold(front, back) || !strings.ContainsAny(front, "/-+ ") || !strings.ContainsAny(back, "/-+ ") {
		return nil, false
	}
	c, ok = ParseColour(front, lang)
	if !ok || len(c) < 2 {
		return nil, false
	}
	other, ok := ParseColour(back, lang)
	return c, ok && c.Equal(other)
}

// withItsCode reads a colour with its short form in brackets behind it, or the other way round: "white/grey (WHGY)", "BN (brown)". ok is
// false where the two differ.
func withItsCode(text, lang string) (c Colour, ok bool) {
	front, in, ok := strings.Cut(text, " (")
	in, closed := strings.CutSuffix(strings.TrimSpace(in), ")")
	if !ok || !closed || strings.ContainsAny(in, "()") {
		return nil, false
	}
	c, ok = ParseColour(front, lang)
	other, also := ParseColour(in, lang)
	return c, ok && also && c.Equal(other)
}
