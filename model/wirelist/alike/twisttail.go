package alike

import (
	"strings"

	"contralay/model/wirelist/cable"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// A few lines of a plug end with what their wire is twisted with: "CAN high, yellow 26awg twisted with 4". It is a remark on the wire,
// and would hide that colour and size stand last in each line.

// withoutTwists takes such ends off texts; tails are what it took.
func withoutTwists(texts []string) (bare, tails []string) {
	bare = texts
	for i, t := range texts {
		front, tail := twistBehind(t)
		if tail == "" {
			continue
		}
		if tails == nil {
			bare, tails = append([]string(nil), texts...), make([]string, len(texts))
		}
		bare[i], tails[i] = front, tail
	}
	return bare, tails
}

// twistBehind parts such an end off a text: a word for twisting, one that joins it to another wire, and that wire in a word or two.
func twistBehind(text string) (front, tail string) {
	const most = 4 // words behind the word for twisting (no source)
	if !strings.Contains(text, " ") {
		return text, ""
	}
	w := strings.Fields(text)
	for i := max(1, len(w)-1-most); i+2 < len(w); i++ {
		if !joinsWire(table.Fold(w[i+1])) || !cable.Words(strings.Trim(w[i], ",;(")).Twisted ||
			!name.IsCavity(strings.TrimRight(w[len(w)-1], ".)")) {
			continue
		}
		front = strings.TrimRight(strings.Join(w[:i], " "), ",;- ")
		if strings.Count(front, "(") > strings.Count(front, ")") {
			front += ")" // "CAN high (yellow, twisted with pin 4)"
		}
		return front, strings.Trim(strings.Join(w[i:], " "), "(),;")
	}
	return text, ""
}

// joinsWire reports whether a folded word stands between a word for twisting and the other wire.
func joinsWire(w string) bool {
	switch w {
	case "with", "to", "and", "&", "mit", "avec", "con", "com", "met", "med", "z", "ze", "s", "se", "pin", "pair":
		return true
	}
	return false
}

// addTails puts them behind the remarks of their lines.
func addTails(lines []Line, tails []string) {
	for i, tail := range tails {
		switch l := &lines[i]; {
		case tail == "":
		case l.Remark == "":
			l.Remark = tail
		default:
			l.Remark += "; " + tail
		}
	}
}
