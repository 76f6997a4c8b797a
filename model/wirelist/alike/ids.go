package alike

import (
	"regexp"
	"slices"
	"strconv"
	"strings"
)

// idForms are the ways in which a line has the number of its wire before the near end: with a sign behind it, or, where what it is called
// says that it is one, without.
var idForms = []*regexp.Regexp{
	regexp.MustCompile(`^(?:(?i:wire|lead|line|no\.?|nr\.?|cable|ader|leitung|draht|fil|hilo|filo|draad) )?#?([A-Za-z]{0,4}[-_]?\d{1,5}[a-z]?)(?:[.):,]| [-–—])\s+(.+)$`),
	regexp.MustCompile(`^\[([A-Za-z]{0,4}[-_]?\d{1,5}[a-z]?)\]\s+(.+)$`),
	regexp.MustCompile(`^(?:(?i:wire|lead|ader|leitung|fil|hilo|filo|draad) )?#?([A-Za-z]{0,4}[-_]?\d{1,5}[a-z]?)\s+(.+)$`),
}

// withoutIDs takes the numbers of their wires off the front of lines, each another; ids is nil where they have none, or where they only
// count the lines.
func withoutIDs(texts []string) (ids, bare []string) {
	if bare, ok := withoutLetters(texts); ok {
		return withoutIDs(bare)
	}
	for n, form := range idForms {
		ids, bare = nil, nil
		seen, counted, ends := map[string]bool{}, true, 0
		for i, t := range texts {
			m := form.FindStringSubmatch(t)
			if m == nil || seen[m[1]] {
				break
			}
			seen[m[1]] = true
			counted = counted && m[1] == strconv.Itoa(i+1)
			ids, bare = append(ids, m[1]), append(bare, m[2])
			behind := m[2]
			if label, end, ok := strings.Cut(behind, ": "); ok && isShort(label) && beginsWithEnd(end) {
				behind = end // the name of the wire stands before its near end
			}
			if pin, _, _ := strings.Cut(behind, " "); n < len(idForms)-1 || !isBareCavity(pin) && beginsWithEnd(behind) {
				ends++ // "X1 3 -> ..." begins with its end
			}
		}
		if len(ids) < len(texts) || 5*ends < 3*len(texts) {
			continue
		}
		if counted && n == 0 && isDashedBehind(texts, ids) {
			return ids, bare // "1 - brown - hoist - S1:13 -> X1:1" has the number of its core
		}
		if counted && n == 0 {
			return withoutIDs(bare) // "1. W4, horn: ...": the number of the line, and that of the wire
		}
		if counted {
			return nil, bare
		}
		return ids, bare
	}
	return nil, texts
}

// dashes are the signs that part the ends of a wire where nothing else does.
var dashes = []string{" ..... ", " .... ", " ... ", " > ", " -- ", " — ", " – ", " - ", " = "}

// dashed parts lines at the dash between their two ends; ok is false where it does not stand between two ends in most of them.
func dashed(texts []string) (near, far []string, ok bool) {
	for _, dash := range dashes {
		near, far = make([]string, len(texts)), make([]string, len(texts))
		cut, ends := 0, 0
		for i, t := range texts {
			a, b, found := strings.Cut(t, dash)
			if !found {
				near[i] = t
				continue
			}
			cut++
			near[i], far[i] = strings.TrimSpace(a), strings.TrimSpace(b)
			if isEnd(near[i]) && beginsWithEnd(far[i]) {
				ends++
			}
		}
		if cut == len(texts) && cut > 1 && 5*ends >= 3*cut {
			return near, far, true
		}
	}
	return nil, nil, false
}

// isEnd reports whether a text is a device and its cavity as some form of an end has it, and nothing more.
func isEnd(text string) bool {
	return isShort(text) && slices.ContainsFunc(endForms, func(form *regexp.Regexp) bool {
		m := form.FindStringSubmatch(text)
		return m != nil && isPin(m[form.SubexpIndex("pin")])
	}) || saysEnd(text) && isShort(text)
}

// beginsWithEnd reports whether the first words of a text are such an end.
func beginsWithEnd(text string) bool {
	const most = 5 // words of an end (no source)
	w := strings.Fields(text)
	for n := 1; n <= min(most, len(w)); n++ {
		if isEnd(strings.TrimRight(strings.Join(w[:n], " "), ",;:")) {
			return true
		}
	}
	return false
}

// Numbered reports whether some lines, parted in their ends, have a number each before them, of the wire or of the line, with two ends
// behind it that name their cavity in most of them: such a number is no cavity of a plug that stands above.
func Numbered(texts []string, lines []Line) bool {
	_, bare := withoutIDs(texts)
	from, to := 0, 0
	for i, l := range lines {
		if bare[i] == texts[i] {
			return false
		}
		if saysEnd(l.From) {
			from++
		}
		if saysEnd(l.To) {
			to++
		}
	}
	return 5*(from+to) >= 6*len(lines) && 5*from > 2*len(lines) && 5*to > 2*len(lines)
}

// pinThenName is a far end with a word for its cavity, and the name of the wire behind it with nothing between.
var pinThenName = regexp.MustCompile(`^(.+? (?i:pin|cav|cavity|way|terminal|pen|broche|kl\.?) \S{1,4}) (\S.*)$`)

// partNames takes the names off far ends that have them right behind, "M1 cav 30 CAM_H", where most lines do: also behind a splice or a
// stud, where another line has that name.
func partNames(lines []Line) {
	names := map[string]bool{}
	for _, l := range lines {
		if m := pinThenName.FindStringSubmatch(l.To); m != nil && l.Signal == "" {
			names[m[2]] = true
		}
	}
	if 2*len(names) <= len(lines) {
		return
	}
	for i := range lines {
		l := &lines[i]
		if l.Signal != "" {
			continue
		}
		if m := pinThenName.FindStringSubmatch(l.To); m != nil {
			l.To, l.Signal = m[1], m[2]
			continue
		}
		for at := range l.To {
			if l.To[at] == ' ' && names[l.To[at+1:]] {
				l.To, l.Signal = l.To[:at], l.To[at+1:]
				break
			}
		}
	}
}

// isBareCavity reports whether a word is a number or one letter, which no device is called.
func isBareCavity(w string) bool { return len(w) < 2 || strings.Trim(w, "0123456789") == "" }

// isDashedBehind reports whether a dash stands behind the number of each line.
func isDashedBehind(texts, ids []string) bool {
	for i, t := range texts {
		if rest := strings.TrimPrefix(t, ids[i]+" "); rest == t || !strings.ContainsRune("-–—", []rune(rest)[0]) {
			return false
		}
	}
	return true
}
