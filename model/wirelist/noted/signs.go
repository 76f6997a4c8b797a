package noted

import (
	"slices"
	"strings"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// Who types the cavities of a plug into a post puts another sign behind each of them.
//
//	B1  supply, red, 16ga, from fuse 3
//	B2 - ground, black, to hull stud
//	B3: float, blue, to float switch 1
//	B4 = not used

// signs writes a colon behind the cavities of such lines, where three or more stand right below each other, count up, and have two signs
// or more. A remark in brackets behind the last of what a line says is a piece of its own, whatever commas stand in it.
func (n *notes) signs() {
	for i := 0; i < len(n.rows); {
		end, last := i, 0
		kinds := map[string]bool{}
		prefix := ""
		var texts []string
		for end < len(n.rows) && (end == i || n.rows[end].Line == n.rows[end-1].Line+1) {
			pin, sign, rest, ok := cavityOf(n.rows[end])
			letters := strings.TrimRight(pin, "0123456789")
			at := name.Ordinal(strings.TrimPrefix(pin, letters))
			if !ok || at <= last || end > i && letters != prefix {
				break
			}
			prefix, last, kinds[sign] = letters, at, true
			texts, end = append(texts, pin+": "+rest), end+1
		}
		if len(texts) > 2 && !bothEnds(texts, prefix) {
			for k, text := range texts {
				bare := remarkLast(text)
				if len(kinds) < 2 && bare == text {
					continue
				}
				if len(kinds) < 2 { // its own sign does
					_, was, _ := strings.Cut(text, ": ")
					_, is, _ := strings.Cut(bare, ": ")
					bare = strings.TrimSuffix(n.rows[i+k].Cells[0], was) + is
				}
				n.set(i+k, bare)
			}
		}
		i = max(end, i+1)
	}
}

// bothEnds reports whether most of some lines go on with another end, as those do that tell both ends of a wire each.
func bothEnds(texts []string, prefix string) bool {
	ends := 0
	for _, text := range texts {
		_, rest, _ := strings.Cut(text, ": ")
		first, _, _ := strings.Cut(rest, " ")
		first = strings.TrimRight(first, ",;:")
		_, _, is := name.SplitEnd(first)
		other := prefix != "" && name.IsDesignator(first) && strings.ContainsAny(first, "0123456789")
		if is || other || slices.Contains(words.FromWords(), table.Fold(first)) {
			ends++
		}
	}
	return 2*ends >= len(texts)
}

// remarkLast takes the brackets off a remark that ends a line of several pieces, and the commas out of it.
func remarkLast(text string) string {
	open := strings.Index(text, " (")
	if open < 0 || !strings.HasSuffix(text, ")") || strings.Count(text, "(") > 1 || strings.Count(text[:open], ", ") < 2 {
		return text
	}
	in := text[open+2 : len(text)-1]
	if _, values := point.ValuesBehind("x (" + in + ")"); values != nil || len(strings.Fields(in)) < 3 {
		return text
	}
	for p := range strings.SplitSeq(in, ", ") {
		if colour, size := point.WireValues(p); colour != "" || size != "" || isSize(p) {
			return text
		}
	}
	return text[:open] + ", " + strings.ReplaceAll(in, ", ", "; ")
}

// signsBehind stand behind a cavity.
var signsBehind = [...]string{"- ", "– ", "— ", "= ", ": ", ") ", ". ", ", "}

// cavityOf parts the number that a line begins with, a letter or two before it or none, off the sign behind it and the rest.
func cavityOf(r table.Row) (pin, sign, rest string, ok bool) {
	if len(r.Cells) != 1 || r.Level > 0 || r.Struck {
		return "", "", "", false
	}
	text := r.Cells[0]
	at := 0
	for at < len(text) && at < 2 && text[at] >= 'A' && text[at] <= 'Z' {
		at++
	}
	digits := at
	for at < len(text) && text[at] >= '0' && text[at] <= '9' {
		at++
	}
	if at == digits || at-digits > 3 || at == len(text) {
		return "", "", "", false
	}
	pin, rest = text[:at], text[at:]
	trimmed := strings.TrimLeft(rest, " \t")
	switch {
	case trimmed == "":
		return "", "", "", false
	case slices.ContainsFunc(signsBehind[:], func(s string) bool { return strings.HasPrefix(trimmed, s) }):
		sign, rest, _ = strings.Cut(trimmed, " ")
	case rest[0] != ' ':
		return "", "", "", false
	default:
		sign, rest = " ", trimmed
	}
	if rest = strings.TrimSpace(rest); rest == "" {
		return "", "", "", false
	}
	if from, to := arrow.In(rest); to > 0 && from == 0 {
		return "", "", "", false // both ends
	}
	first, _, _ := strings.Cut(rest, " ")
	if sign == " " && digits == 0 && (isSize(first) || strings.Trim(first, "0123456789.,") == "") {
		return "", "", "", false // a count, "3 12 mm bolts"
	}
	return pin, sign, rest, true
}
