package pieces

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// pinned is the end at the front of some words that names its cavity beyond doubt, "inj 1 pin 2", "X1:3", "pin 3 of the radio", and the
// words behind it; "" where none stands there.
func pinned(w []string) (end string, rest []string) {
	const most = 4 // words of a device (no source)
	if len(w) == 0 {
		return "", nil
	}
	for i := 1; i < len(w)-1 && i <= most; i++ {
		if name.IsPinWord(table.Fold(w[i])) && isCavity(w[i+1]) {
			return strings.Join(w[:i+2], " "), w[i+2:]
		}
	}
	if isPlainEnd(w[0]) {
		return w[0], w[1:]
	}
	if whole := strings.Join(w, " "); len(w) > 3 && name.IsPinWord(table.Fold(w[0])) {
		if _, pin, ok := name.SplitEnd(whole); ok && isCavity(pin) {
			return whole, nil
		}
	}
	return "", nil
}

// isCavity reports whether a word can be a cavity, or a pole.
func isCavity(w string) bool { return name.IsCavity(w) || w == "+" || w == "-" }

// isLetterOfColour reports whether a letter alone stands before a colour in words, "L black/white 1 mm²": it is a cavity, no short form.
func isLetterOfColour(pin, rest string) bool {
	first, _ := firstWord(rest)
	_, ok := value.ParseColour(first, "")
	return ok && len(first) > 2 && len(pin) == 1 && strings.ToUpper(pin) == pin && !value.IsDigit(pin[0]) &&
		!slices.Contains(strings.Fields(rest), "wire") // "A black wire"
}

// isPole reports whether a word is the mark of a pole as devices have it, "B+", "D-".
func isPole(w string) bool {
	return len(w) == 2 && w[0] >= 'A' && w[0] <= 'Z' && (w[1] == '+' || w[1] == '-')
}

// pinFront is the cavity that a line begins with, with a sign or a word beside it that says so, "1:", "B -", "12)", "pin 3 -", and the
// rest of the line; "" where it begins with none.
func pinFront(text string) (pin, rest string) {
	text = strings.TrimSpace(strings.TrimLeft(strings.TrimSpace(text), "-*•· "))
	front, rest := firstWord(text)
	if name.IsPinWord(table.Fold(front)) {
		front, rest = firstWord(rest)
		if pin = strings.TrimRight(front, ":.),;"); !name.IsCavity(pin) || pinWord(rest) {
			return "", text
		}
		return pin, strings.TrimLeft(rest, "-–—: ")
	}
	if pin = strings.TrimRight(front, ":.)"); !name.IsCavity(pin) && !isPole(pin) {
		return "", text
	}
	gap := strings.TrimSuffix(text, rest)[len(front):]
	signed := pin != front || strings.Contains(gap, "\t") || len(gap) > 1 || isPole(pin) || isLetterOfColour(pin, rest)
	for _, mark := range []string{"- ", "– ", "— ", ": ", "= "} {
		signed = signed || strings.HasPrefix(rest, mark)
	}
	if !signed {
		return "", text
	}
	return pin, strings.TrimLeft(rest, "-–—:= ")
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

// isPlainEnd reports whether a word is a connector and its cavity with a sign between, in capitals and numbers alone: "ECU-A4", "X1/1",
// "K3:12".
func isPlainEnd(w string) bool {
	at := strings.LastIndexAny(w, ":-/")
	if at < 2 || strings.ToUpper(w) != w || strings.Count(w, "/") > 1 {
		return false
	}
	connector, pin := w[:at], w[at+1:]
	return isCavity(pin) && strings.ContainsAny(pin, "0123456789+-") && strings.ContainsAny(connector, "ABCDEFGHIJKLMNOPQRSTUVWXYZ") ||
		name.IsDesignator(connector) && isCavity(pin) || w[at] == '-' && isLetters(connector) && name.IsCavity(pin) && len(pin) == 1
}

// isLetters reports whether a word is two to four capitals, as devices are called for short: "TPS".
func isLetters(w string) bool {
	return len(w) > 1 && len(w) < 5 && strings.Trim(w, "ABCDEFGHIJKLMNOPQRSTUVWXYZ") == ""
}

// idFront is the id that a line begins with and says to be one, "Wire 12: ECU A4 to ...", and the rest; "" where it begins with none.
func idFront(text string) (id, rest string) {
	w := strings.Fields(strings.TrimLeft(text, "-*•· "))
	if len(w) < 3 {
		return "", text
	}
	switch strings.ToLower(w[0]) {
	case "wire", "lead", "no", "no.", "nr", "nr.", "ader", "fil":
		if id = strings.TrimRight(w[1], ":.)"); id != w[1] && strings.ContainsAny(id, "0123456789") {
			return id, strings.Join(w[2:], " ")
		}
	}
	return "", text
}

// freeEnd parts the word for a free place off the end of some words, "PDM output 4 spare"; end is "" where none stands there.
func freeEnd(w []string) (end string, rest []string) {
	for n := 1; n <= 2 && n < len(w); n++ {
		front := w[:len(w)-n]
		if name.StateOf(strings.Join(w[len(w)-n:], " ")) != name.Used && isCavity(front[len(front)-1]) && len(front) > 1 {
			return strings.Join(front, " "), w[len(w)-n:]
		}
	}
	return "", nil
}

// isOrder reports whether some words begin with a verb that a step of a job begins with, "Run a red 1 mm² wire".
func isOrder(w []string) bool {
	if len(w) < 2 {
		return false
	}
	switch strings.ToLower(w[0]) {
	case "run", "take", "use", "pull", "lay", "route", "connect", "fit", "wire":
		return true
	case "the", "a", "an":
		return slices.ContainsFunc(w, func(s string) bool { return s == "wire" || s == "lead" }) // "The brown wire"
	}
	return false
}

// withoutFiller leaves the words of a sentence out that name nothing, "take a white 22 wire".
func withoutFiller(w []string) []string {
	return slices.DeleteFunc(slices.Clone(w), func(s string) bool {
		switch strings.ToLower(s) {
		case "take", "run", "use", "pull", "lay", "route", "connect", "fit", "a", "an", "the", "wire", "lead", "with", "goes", "runs",
			"tracer", "stripe":
			return true
		}
		return false
	})
}

// IsOddEnd reports whether a text that was read as an end is none: a colour, or words with a colour, a sign of equality or a verb among
// them.
func IsOddEnd(text string) bool {
	w := strings.Fields(text)
	if len(w) == 1 && name.IsPinWord(table.Fold(w[0])) {
		return true
	}
	if strings.Contains(text, "=") || len(w) > mostText || strings.HasSuffix(text, "A)") {
		return true
	}
	for part := range strings.SplitSeq(text, ",") {
		if _, ok := value.ParseColour(strings.TrimSpace(part), ""); ok && len(part) > 2 && len(part) < len(text) {
			return true
		}
	}
	for i, s := range w {
		if _, ok := value.ParseColour(s, ""); ok && len(s) > 2 && strings.ToLower(s) == s && (len(w) == 1 || i == len(w)-1) {
			return true
		}
		if i == 0 && len(w) > 1 && strings.TrimRight(s, ".") != s && strings.Trim(s, "0123456789.") == "" {
			return true // "3. ECU-A6"
		}
		switch strings.ToLower(s) {
		case "take", "run", "goes", "wire":
			return true
		}
	}
	return false
}

// IsCurrent reports whether a text that was read as a cavity is a current, "20A", and not likely a cavity, "2A".
func IsCurrent(text string) bool {
	amps, ok := strings.CutSuffix(text, "A")
	return ok && len(amps) > 1 && strings.Trim(amps, "0123456789") == ""
}

// firstWord parts the first word off a text.
func firstWord(text string) (word, rest string) {
	text = strings.TrimSpace(text)
	if at := strings.IndexAny(text, " \t"); at > 0 {
		return text[:at], strings.TrimSpace(text[at:])
	}
	return text, ""
}

// isLamp reports whether some words are a lamp and its colour.
func isLamp(w []string) bool {
	if len(w) != 2 {
		return false
	}
	if _, ok := value.ParseColour(w[1], ""); !ok {
		return false
	}
	switch table.Fold(w[0]) {
	case "lamp", "led", "lampe", "lampje", "voyant", "temoin", "piloto", "testigo", "spia", "kontrolleuchte", "leuchte", "lampka":
		return true
	}
	return false
}
