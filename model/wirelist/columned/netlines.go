package columned

import (
	"regexp"
	"slices"
	"strings"
)

// netLine is a line that names a net and, behind a colon, the two ends of one wire of it, of which each is one word:
//
//	RESET : K1.S34  - X2.5   0.75 GY
var netLine = regexp.MustCompile(`^\s*([^\s:]+(?: [^\s:]+){0,2})\s*:\s+([^\s,;]+)\s+(?:-|–|—|--|->|-->|<->|→)\s+([^\s,;]+)(?:\s+(\S.*))?$`)

// netLines gives such a text with tabs between its cells: net, near end, far end, and what stands behind them in columns; the signs of
// comments are taken off. heads are headings for them, which the text does not have in a row of its own. ok is false where these lines
// are not most of those that are no comments.
func netLines(text string) (parted string, heads []string, ok bool) {
	lines := strings.Split(text, "\n")
	var all [][]string
	filled, told := 0, []string(nil)
	for i, line := range lines {
		if strings.TrimSpace(line) == "" {
			continue
		}
		if lines[i] = strings.TrimSpace(strings.ReplaceAll(line, "\t", " ")); isComment(line) {
			lines[i] = strings.Join(strings.Fields(strings.TrimLeft(lines[i], ";#/ ")), " ")
			if m := netHeads.FindStringSubmatch(lines[i]); m != nil && told == nil {
				told = strings.Fields(m[1])
			}
			continue
		}
		filled++
		m := netLine.FindStringSubmatch(line)
		if m == nil || !saysCavity(m[2]) || !saysCavity(m[3]) || strings.ContainsAny(line, "|;\"") {
			lines[i] = strings.Join(strings.Fields(lines[i]), " ")
			continue
		}
		cells := []string{m[1], ofPole(m[2]), ofPole(m[3])}
		behind := Gapped(m[4])
		if words := strings.Fields(m[4]); len(behind) == 1 && len(words) == 2 {
			cells = append(cells, words...)
		} else {
			for _, c := range behind {
				cells = append(cells, c.Text)
			}
		}
		all, lines[i] = append(all, cells), strings.Join(cells, "\t")
	}
	if len(all) < 3 || 4*len(all) < 3*filled {
		return text, nil, false
	}
	return strings.Join(lines, "\n"), headsOfNets(all, told), true
}

// netHeads is a comment that says what these lines hold, "net : from - to   mm2 colour".
var netHeads = regexp.MustCompile(`\S+ ?: \S+ (?:-|–|->|→) \S+ (\S.*)$`)

// headsOfNets is the headings of the cells of such lines. What stands behind the ends is as told, where that names as many cells; else
// sizes show by what they are, and what shows by nothing has no heading.
func headsOfNets(all [][]string, told []string) []string {
	heads := []string{"Signal", "From", "To"}
	if areNumbered(all) {
		heads[0] = "Wire" // "W1: PDM-1 → Fan-3"
	}
	wide := 0
	for _, cells := range all {
		wide = max(wide, len(cells))
	}
	for k := len(heads); k < wide; k++ {
		head, bare := "", len(told) != wide-3
		sections, numbers, letters, filled := 0, 0, 0, 0
		for _, cells := range all {
			if k < len(cells) && bare {
				filled++
				if strings.Trim(cells[k], "0123456789.,") == "" {
					numbers++
				}
				if shortForms.MatchString(cells[k]) {
					letters++
				}
				if slices.Contains(sectionsMade, strings.ReplaceAll(cells[k], ",", ".")) {
					sections++
				}
			}
		}
		switch {
		case !bare:
			head = told[k-3]
		case numbers == filled && 2*sections >= filled:
			head = "mm²"
		case letters == filled:
			head = "Colour"
		}
		heads = append(heads, head)
	}
	return heads
}

// wireNumber is a letter or two and a number, as wires are counted.
var wireNumber = regexp.MustCompile(`^([A-Z]{1,2})-?[0-9]{1,4}$`)

// areNumbered reports whether every line begins with such an id, all of them of the same letters and none twice.
func areNumbered(all [][]string) bool {
	seen, letters := map[string]bool{}, ""
	for _, cells := range all {
		m := wireNumber.FindStringSubmatch(cells[0])
		if m == nil || seen[cells[0]] || letters != "" && m[1] != letters {
			return false
		}
		seen[cells[0]], letters = true, m[1]
	}
	return len(seen) > 1
}

// shortForms is a cell of short forms of colours: "rt", "BK/WH".
var shortForms = regexp.MustCompile(`^\pL{2,3}(?:[/-]\pL{2,3})?$`)

// sectionsMade are sections of wire in mm² that are no plain count. Common practice, no source.
var sectionsMade = []string{"0.14", "0.22", "0.25", "0.34", "0.35", "0.5", "0.50", "0.75", "1.0", "1.5", "2.5", "4.0", "6.0"}

// ofPole writes the pole of an end behind a colon: "G1.-" is the minus of G1.
func ofPole(end string) string {
	for _, pole := range []string{".-", "/-", ".+", "/+"} {
		if of, ok := strings.CutSuffix(end, pole); ok && of != "" {
			return of + ":" + pole[1:]
		}
	}
	return end
}

// isComment reports whether a line is a comment of a list of nets.
func isComment(line string) bool {
	line = strings.TrimSpace(line)
	return strings.HasPrefix(line, ";") || strings.HasPrefix(line, "#") || strings.HasPrefix(line, "//")
}

// saysCavity reports whether a word has a sign between two pieces, "K1.Y3" and "G1.-".
func saysCavity(word string) bool {
	at := strings.IndexAny(word, ".:/-")
	return at > 0 && at < len(word)-1
}
