package pinlines

import (
	"regexp"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// cavity is one cavity at the front of a line.
const cavity = `(?:[A-Z]{0,2}[0-9]{1,3}[a-ux-zB-UX-Z]?|PE|[A-Za-z])`

// fronts is what a line begins with behind a word for a cavity: a connector before the cavity or none, the cavity, further ones, and a
// sign or a blank behind them.
var fronts = regexp.MustCompile(`^#?(?:([A-Z]{1,4}[0-9]{1,4})[-:./])?(` + cavity + `)` +
	`((?:(?:[ \t]*(?:\.\.\.?|…)[ \t]*| ?(?:-|–|&|,|/) ?| (?:to|thru|through|and|und|et|bis|à|y|e) )` + cavity + `)*)` +
	`(?:[ \t]*(?:[:=|]|[.)](?:[^.\S]|$)|[-–—]+ )|[ \t]*\.{2,}|[ \t]|$)`)

// framed is a cavity in brackets, and spoken a connector, a word for a cavity and a blank before it: "Cab plug pin 1".
var (
	framed = regexp.MustCompile(`^[(\[<](` + cavity + `)[)\]>](?:[ \t]+|$)`)
	spoken = regexp.MustCompile(`^(\pL[\pL\d]*(?: [\pL\d]+){0,2}) (\pL+) `)
)

// parts are the signs between the cavities of a range or a series.
var parts = regexp.MustCompile(`[ \t]*(?:\.\.\.?|…)[ \t]*| ?(?:-|–|&|,|/) ?| (?:to|thru|through|and|und|et|bis|à|y|e) `)

// front is the beginning of a line.
type front struct {
	plug string   // the connector before the cavity, "" for none
	pins []string // one, or several that are said at once
	rest string   // what stands behind, with its blanks
	one  string   // what stands behind the first cavity alone
	at   int      // the place of the cavity in the line
	more bool     // other cavities, or what looks like some, stand behind the first
	sign bool     // a word or a sign beside it says what it is
}

// frontOf reads the beginning of a line; ok is false where it begins with no cavity.
func frontOf(raw string) (f front, ok bool) {
	text := strings.TrimLeft(raw, " \t")
	if text == "" || strings.HasPrefix(text, "- ") || strings.HasPrefix(text, "* ") {
		return f, false
	}
	first, behind, worded := strings.Cut(text, " ")
	if worded = worded && name.IsPinWord(table.Fold(strings.TrimRight(first, "."))); worded {
		text = strings.TrimLeft(behind, " \t")
	}
	if m := framed.FindStringSubmatch(text); m != nil {
		text = m[1] + ": " + text[len(m[0]):] // "(1) white"
	}
	plug := ""
	if m := spoken.FindStringSubmatchIndex(text); m != nil && !worded && name.IsPinWord(table.Fold(text[m[4]:m[5]])) {
		plug, text = text[m[2]:m[3]], text[m[1]:]
	}
	m := fronts.FindStringSubmatchIndex(text)
	if m == nil {
		return f, false
	}
	of := func(k int) string {
		if m[2*k] < 0 {
			return ""
		}
		return text[m[2*k]:m[2*k+1]]
	}
	f.plug, f.pins, f.at = of(1), []string{of(2)}, len(raw)-len(strings.TrimLeft(raw, " \t"))
	if plug != "" {
		f.plug, worded = plug, true
	}
	f.one, f.rest = text[m[5]:], text[m[1]:]
	f.sign = worded || strings.ContainsAny(text[m[7]:m[1]], ":=|.)-–—")
	if more := of(3); more != "" {
		f.more = true
		f.pins = spread(of(2) + more)
	}
	gap := len(f.rest) > len(strings.TrimLeft(f.rest, " \t"))
	if p := f.pins[0]; len(p) == 1 && (!name.IsCavity(p) || p > "9" && !f.sign && !gap) {
		return f, false
	}
	return f, true
}

// spread gives the cavities of a range or a series, "8-11", "13 thru 20", "7 and 8"; the first alone where it is none.
func spread(text string) []string {
	signs := parts.FindAllString(text, -1)
	all := parts.Split(text, -1)
	if len(signs) == 1 {
		switch strings.TrimSpace(signs[0]) {
		case "&", ",", "/", "and", "und", "et", "y", "e":
		default:
			if pins, _, ok := name.Spread(all[0]+".."+all[1], nil); ok {
				return pins
			}
			return all[:1]
		}
	}
	for i, p := range all[1:] {
		if name.CompareCavities(all[i], p) >= 0 {
			return all[:1]
		}
	}
	return all
}

// isLettered reports whether the cavity has letters and a number behind them, "A3".
func (f front) isLettered() bool {
	p := f.pins[0]
	return len(p) > 1 && p[0] > '9' && strings.ContainsAny(p, "0123456789")
}
