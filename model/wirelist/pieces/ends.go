package pieces

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// pinned is the end at the front of some words that names its cavity beyond doubt, "inj 1 pin 2", "X1:3", "pin 3 of the radio", and the
// words behind it; "" where none stands there.
func pinned(w []string) (end string, rest []string) {
	const most = 4 // words of a device (no source)
	for i := 1; i < len(w)-1 && i <= most; i++ {
		if name.IsPinWord(table.Fold(w[i])) && isCavity(w[i+1]) {
			return strings.Join(w[:i+2], " "), w[i+2:]
		}
	}
	if connector, pin, ok := strings.Cut(w[0], ":"); ok && name.IsDesignator(connector) && isCavity(pin) {
		return w[0], w[1:]
	}
	if whole := strings.Join(w, " "); name.IsPinWord(table.Fold(w[0])) {
		if _, pin, ok := name.SplitEnd(whole); ok && isCavity(pin) {
			return whole, nil
		}
	}
	return "", nil
}

// isCavity reports whether a word can be a cavity, or a pole.
func isCavity(w string) bool { return name.IsCavity(w) || w == "+" || w == "-" }

// pinFront is the cavity that a line begins with, with a sign or a word beside it that says so, "1:", "B -", "12)", "pin 3 -", and the
// rest of the line; "" where it begins with none.
func pinFront(text string) (pin, rest string) {
	text = strings.TrimSpace(strings.TrimLeft(strings.TrimSpace(text), "-*•· "))
	front, rest, _ := strings.Cut(text, " ")
	if name.IsPinWord(table.Fold(front)) {
		front, rest, _ = strings.Cut(strings.TrimSpace(rest), " ")
		if pin = strings.TrimRight(front, ":.),;"); !name.IsCavity(pin) || pinWord(rest) {
			return "", text
		}
		return pin, strings.TrimLeft(rest, "-–—: ")
	}
	if pin = strings.TrimRight(front, ":.)"); !name.IsCavity(pin) {
		return "", text
	}
	behind := strings.TrimLeft(rest, " ")
	signed := pin != front || strings.HasPrefix(behind, "- ") || strings.HasPrefix(behind, "– ") || strings.HasPrefix(behind, "— ") ||
		strings.HasPrefix(behind, ": ") || strings.HasPrefix(behind, "= ")
	if !signed {
		return "", text
	}
	return pin, strings.TrimLeft(behind, "-–—:= ")
}

// pinWord reports whether a text begins with a word that joins a cavity to its device, "of the radio".
func pinWord(rest string) bool {
	first, _, _ := strings.Cut(rest, " ")
	return name.JoinsDevice(table.Fold(first))
}

// isPlace reports whether a text is short enough for the name of a place, and no state and no remark.
func isPlace(text string) bool {
	const most = 4 // words (no source)
	return len(strings.Fields(text)) <= most && !isRemark(text) && name.StateOf(text) == name.Used
}
