package columned

import (
	"strings"
	"unicode"
)

// Some lists tell each wire by a block of lines, of which each begins with the word for what it says:
//
//	wire 1
//	  from    load cell, pin A
//	  size    0.14 mm2

// Told parts a text whose lines tell wires in one of the ways of this package that need no line of headings; heads are headings for its
// cells, nil where its lines begin with their own.
func Told(text string) (parted string, heads []string, ok bool) {
	if parted, ok := records(text); ok {
		return parted, nil, true
	}
	if parted, ok := Printed(text); ok {
		return parted, nil, true
	}
	if parted, ok := jotted(text); ok {
		return parted, nil, true
	}
	return netLines(text)
}

// records gives such a text with a tab behind each of these words; ok is false where it has no three blocks that begin alike.
func records(text string) (parted string, ok bool) {
	lines := strings.Split(text, "\n")
	at := valuesAt(lines)
	var blocks []string // the keys of each
	var keys string
	close := func() {
		if strings.Count(keys, "\n") > 1 {
			blocks = append(blocks, keys)
		}
		keys = ""
	}
	told, filled := 0, 0
	for i, line := range lines {
		if strings.ContainsAny(line, ";\t|") {
			return text, false
		}
		key, value := keyed(line, at)
		if strings.TrimSpace(line) != "" {
			filled++
		}
		if key == "" {
			close()
			continue
		}
		told++
		if strings.Contains("\n"+keys, "\n"+key+"\n") {
			close()
		}
		keys += key + "\n"
		lines[i] = key + "\t" + value
	}
	close()
	alike := 0
	for _, b := range blocks {
		if len(blocks) > 0 && strings.SplitN(b, "\n", 3)[0] == strings.SplitN(blocks[0], "\n", 3)[0] &&
			strings.SplitN(b, "\n", 3)[1] == strings.SplitN(blocks[0], "\n", 3)[1] {
			alike++
		}
	}
	if alike < 3 || 2*told < filled {
		return text, false
	}
	return strings.Join(lines, "\n"), true
}

// valuesAt is where the values of most lines begin, whose words have a gap behind them; 0 for none.
func valuesAt(lines []string) int {
	count, best := map[int]int{}, 0
	for _, l := range lines {
		if c := Gapped(l); len(c) == 2 && isKey(c[0].Text) {
			if count[c[1].From]++; count[c[1].From] > count[best] {
				best = c[1].From
			}
		}
	}
	return best
}

// keyed parts a line in the word that it begins with and what that says: a colon or an equals sign stands between, or a gap, or one blank
// before the column of the values. key is "" where it has none.
func keyed(line string, at int) (key, value string) {
	for _, sign := range []string{": ", " = "} {
		if k, v, ok := strings.Cut(line, sign); ok && isKey(strings.TrimSpace(k)) && strings.TrimSpace(v) != "" {
			return strings.TrimSpace(k), strings.TrimSpace(v)
		}
	}
	if c := Gapped(line); len(c) == 2 && isKey(c[0].Text) {
		return c[0].Text, c[1].Text
	}
	runes := []rune(line)
	if at < 2 || len(runes) <= at || runes[at-1] != ' ' || runes[at] == ' ' {
		return "", ""
	}
	if k := strings.TrimSpace(string(runes[:at])); isKey(k) && !strings.Contains(k, " ") {
		return k, strings.TrimSpace(string(runes[at:]))
	}
	return "", ""
}

// isKey reports whether a text may be the word that a line of a record begins with: one to three words of letters.
func isKey(text string) bool {
	const most = 24 // characters (no source)
	return text != "" && len(text) <= most && len(strings.Fields(text)) < 4 && strings.IndexFunc(text, func(r rune) bool {
		return !unicode.IsLetter(r) && !strings.ContainsRune(" ./()²^-", r)
	}) < 0 && strings.IndexFunc(text, unicode.IsLetter) == 0
}
