package connectto

import (
	"regexp"
	"strings"

	"contralay/model/wirelist/table"
)

// The sentences that name both, and the words round the names. Common words, from memory, no source.
var (
	forThing = regexp.MustCompile(`(?i)^(?:for|on) (?:the |a |an )?(.+?),? (?:you |we |simply |please )*(?:can )?(?:connect|wire|solder|hook)\b`)
	theThing = regexp.MustCompile(`(?i)(?:^|, |; )(?:you |we |please )?(?:connect|wire|solder) (?:the |a |an )?(?:wires of (?:the |a |an )?)?(.+?)(?:'s? wires)? to `)
	aThing   = regexp.MustCompile(`(?i)^(?:der|die|das|den|für den|für die|für das) (.+?) (?:wird|werden|ist|sind|so|wie folgt)\b`)
	toPlace  = regexp.MustCompile(`(?i)\b(?:connect|wire|wires|wired|solder|hook).* (?:to|on|onto) (?:the |an? )?([^,;()]+?)(?: like this| as follows| this way| so| as shown)?:+$`)
	amPlace  = regexp.MustCompile(`(?i) (?:mit dem|mit der|an den|an die|an das|am) ([^,;()]+?)(?: so| wie folgt)? ` +
		`(?:verbinden|verbunden|anschließen|angeschlossen):+$`)
)

// both are the thing and the place that a sentence above some lines names; ok is false where it does not name both.
func both(text string) (thing, place string, ok bool) {
	if at := strings.LastIndex(text, ". "); at >= 0 {
		text = text[at+2:]
	}
	for _, re := range []*regexp.Regexp{toPlace, amPlace} {
		if m := re.FindStringSubmatch(text); m != nil {
			place = m[1]
		}
	}
	for _, re := range []*regexp.Regexp{theThing, forThing, aThing} {
		if m := re.FindStringSubmatch(text); m != nil {
			thing, _, _ = strings.Cut(m[1], " with ")
		}
	}
	return thing, place, isName(thing) && isName(place)
}

// isName reports whether a text can be what a thing is called: a few words, none of which points elsewhere.
func isName(text string) bool {
	const most = 5 // words (no source)
	w := strings.Fields(text)
	if len(w) == 0 || len(w) > most || strings.ContainsAny(text, ".:,;!?()") {
		return false
	}
	for _, s := range w {
		switch table.Fold(s) {
		case "it", "its", "them", "this", "these", "pin", "pins", "each", "your", "that", "and", "or", "same", "other", "following",
			"table", "wires", "wire", "ground", "es", "sie":
			return false
		}
	}
	return true
}

// sentence is the text of the lines right above row i, an empty line between or none, back to the empty line before them.
func sentence(rows []table.Row, i int) string {
	var all []string
	for k := i - 1; k >= 0 && k > i-5 && isText(rows[k]); k-- {
		if line := rows[k+1].Line; line > rows[k].Line+2 || k < i-1 && line > rows[k].Line+1 {
			break
		}
		all = append([]string{rows[k].Cells[0]}, all...)
	}
	return strings.Join(all, " ")
}

// isText reports whether a row is a line of text, and no heading and no point.
func isText(r table.Row) bool { return len(r.Cells) == 1 && r.Level == 0 && !r.Point }
