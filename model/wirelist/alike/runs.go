package alike

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/runline"
	"contralay/model/wirelist/table"
)

// Runs parts lines that tell both ends of a wire each, with an arrow or one and the same word between them. ok is false where most of
// them do not.
//
//	J1 pin A -> Crank sensor pin 1 | 1.0mm², brown        * ECU 4 to Radio 2: CAN H, red
func Runs(texts []string) (lines []Line, ok bool) { return runs(texts, false) }

// runs parts them; labelled: each is known to tell a wire.
func runs(texts []string, labelled bool) (lines []Line, ok bool) {
	if slices.ContainsFunc(texts, runline.IsValueRange) {
		return nil, false
	}
	ids, bare := withoutIDs(withoutStops(texts))
	near, far, arrow, ok := halves(bare)
	if !ok || !arrow {
		if n, f, dash := dashed(bare); dash {
			near, far, arrow, ok = n, f, true, true
		}
	}
	if !ok {
		return nil, false
	}
	lines = make([]Line, len(texts))
	l := newLot(bracketsFirst(near), far)
	l.ends = true
	l.fill(lines)
	partNames(lines)
	pinned := 0
	for i := range lines {
		line := &lines[i]
		if ids != nil {
			line.ID = ids[i]
		}
		if in, ok := strings.CutPrefix(line.Signal, "("); ok && strings.HasSuffix(in, ")") && !strings.Contains(in, "(") {
			line.Signal = strings.TrimSuffix(in, ")")
		}
		if line.From == "" || line.To == "" || !isShort(line.From) || !isShort(line.To) {
			return nil, false
		}
		if saysEnd(line.From) || saysEnd(line.To) {
			pinned++
		}
	}
	if !arrow && !labelled && 5*pinned < 4*len(lines) { // "give the spare key to Anna"
		return nil, false
	}
	var nears, fars []*string
	for i := range lines {
		nears, fars = append(nears, &lines[i].From), append(fars, &lines[i].To)
	}
	sameEnds(nears)
	sameEnds(fars)
	return lines, true
}

// withoutStops takes the full stops off lines that are sentences, each of them.
func withoutStops(texts []string) []string {
	bare := make([]string, len(texts))
	for i, t := range texts {
		front, ok := strings.CutSuffix(t, ".")
		if !ok {
			return texts
		}
		bare[i] = front
	}
	return bare
}

// IsSentence reports whether a text with a full stop tells both ends of a wire, one at least with a word for its cavity:
// "J1 pin D to J3 pin 3, brown."
func IsSentence(text string) bool {
	front, ok := strings.CutSuffix(text, ".")
	if !ok {
		return false
	}
	for _, word := range toWords {
		if a, b, cut := strings.Cut(front, word); cut {
			end, _, _ := strings.Cut(b, ",")
			return (saysPinOf(a) || saysPinOf(end)) && isShort(a) && isShort(end)
		}
	}
	return false
}

// saysPinOf reports whether a short text has a word for a cavity.
func saysPinOf(text string) bool {
	w := strings.Fields(text)
	const most = 6 // words of an end (no source)
	return len(w) <= most && slices.ContainsFunc(w, func(s string) bool { return name.IsPinWord(table.Fold(s)) })
}
