// Package quotation parts a letter from the lines of older ones that it quotes.
//
// It parts texts alone; package wirelist says which of the two tells the wires.
package quotation

import "strings"

// Who answers a letter leaves the letter below his answer, a sign before each line, and two signs before what that one quoted itself.
//
//	Thanks, that is all I need.
//
//	On 3 June, Ulla wrote:
//	> Pin  Use   Colour
//	> 1    feed  red
//	>> Which colour is the feed?

// least is how many lines begin with the sign where it is no chance (no source).
const least = 2

// Part gives the answer and the letter that it quotes, each with the lines of the other empty, so that all lines keep their numbers. The
// letter has one sign less before each line. Where less than half of the lines are quoted, the answer keeps them as they stand. ok is
// false where nothing is quoted.
func Part(text string) (answer, letter string, ok bool) {
	if !strings.HasPrefix(text, ">") && !strings.Contains(text, "\n>") {
		return text, "", false // most texts
	}
	lines := strings.Split(text, "\n")
	quoted, other := 0, 0
	for _, l := range lines {
		if _, is := unquoted(l); is {
			quoted++
		} else if strings.TrimSpace(l) != "" {
			other++
		}
	}
	if quoted < least {
		return text, "", false
	}
	of, own := make([]string, len(lines)), make([]string, len(lines))
	for i, l := range lines {
		if inner, is := unquoted(l); is {
			of[i] = inner
		} else {
			own[i] = l
		}
	}
	if quoted < other {
		return text, strings.Join(of, "\n"), true
	}
	return strings.Join(own, "\n"), strings.Join(of, "\n"), true
}

// unquoted takes the first sign off a line: "> red", ">> red", ">" of an empty line.
func unquoted(line string) (inner string, ok bool) {
	inner, ok = strings.CutPrefix(line, ">")
	if !ok {
		return line, false
	}
	if rest, blank := strings.CutPrefix(inner, " "); blank {
		return rest, true
	}
	bare := strings.TrimRight(inner, "\r")
	return inner, bare == "" || bare[0] == '>' || bare[0] == '\t'
}
