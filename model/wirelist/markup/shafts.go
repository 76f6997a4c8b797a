package markup

import (
	"slices"
	"strings"
	"unicode"

	"contralay/model/wirelist/commas"
	"contralay/model/wirelist/hueword"
)

// Wires that are drawn, a line each, with what they are within the shaft of the arrow. They become a table with headings that the text does
// not have.
//
//	BOX 5V  ---- red 20awg ----> LAMP +    long one
//	BOX D2  <--- white --------- KEY 1
//	BOX GND --blk-- KEY 2

// leastShafts is how many such lines stand together where that is no chance (no source).
const leastShafts = 2

func shafts(t *reader, i int) (rows []Row, n int) {
	var lines [][]string
	last, at := -1, []int(nil)
	for k := i; k < len(t.lines) && k <= i+last+2; k++ {
		if strings.TrimSpace(t.lines[k]) == "" {
			continue
		}
		parts := shaft(t.lines[k])
		if parts == nil {
			break
		}
		lines, at, last = append(lines, parts), append(at, k+1), k-i
	}
	if len(lines) < leastShafts {
		return nil, 0
	}
	rows = append(rows, Row{Line: at[0], Cells: []string{"From", "Wire", "Size", "To", "Notes"}, First: true, Head: true, Made: true})
	for k, l := range lines {
		rows = append(rows, Row{Line: at[k], Cells: l})
	}
	for c := 4; c >= 0; c-- { // what no line says is no column
		if !slices.ContainsFunc(rows[1:], func(r Row) bool { return r.Cells[c] != "" }) {
			for k := range rows {
				rows[k].Cells = slices.Delete(rows[k].Cells, c, c+1)
			}
		}
	}
	return rows, last + 1
}

// shaft parts a line at its arrow: the end that it comes from, what stands in its shaft without its size, the size, the end it goes to,
// and what stands behind a gap; nil where it draws none with a text in its shaft.
func shaft(line string) []string {
	given := strings.TrimSpace(line)
	near, rest, back := cutShaft(strings.TrimLeft(line, " \t-*•"))
	label, far, _ := cutShaft(rest)
	label = strings.Trim(label, " ()[]|")
	if near = strings.TrimSpace(near); near == "" || label == "" || far == "" || len(label) > mostLabel ||
		strings.IndexFunc(label, unicode.IsLetter) < 0 || strings.Contains(near, "  ") || strings.ContainsAny(near, "|`") {
		return nil
	}
	if _, more, _ := cutShaft(far); more != "" || len(strings.Fields(near)) > mostWords || !draws(given) {
		return nil // a chain of them, or a sentence
	}
	cells := strings.FieldsFunc(strings.ReplaceAll(strings.TrimSpace(far), "  ", "\t"), func(r rune) bool { return r == '\t' })
	if len(cells) == 0 {
		return nil
	}
	if isWire(cells[0]) {
		return nil // strokes that lead the eye: "PIN 3 -- PUMP FEED ------ 14 GRY"
	}
	word, size := cutSize(label)
	from, to := near, strings.TrimSpace(cells[0])
	if back {
		from, to = to, from
	}
	return []string{from, word, size, to, strings.Join(strings.Fields(strings.Join(cells[1:], " ")), " ")}
}

// isWire reports whether a text is the number of a size and the letters of a colour behind it, and so no end.
func isWire(text string) bool {
	size, hue, ok := strings.Cut(text, " ")
	return ok && len(size) == 2 && strings.Trim(size, "0123456789") == "" && len(hue) > 1 &&
		strings.IndexFunc(hue, func(r rune) bool { return r != '/' && !unicode.IsLetter(r) }) < 0
}

// mostLabel is how long a text in a shaft is at the most, in bytes; mostWords how many words the end before it has (no source).
const (
	mostLabel = 32
	mostWords = 4
)

// draws reports whether a line draws an arrow or a long stroke: two dashes round some words are those of a sentence.
func draws(line string) bool {
	return strings.ContainsAny(line, "<>▶►→←◀◄") || strings.Contains(line, "---") || strings.Contains(line, "===") ||
		strings.Contains(line, "──")
}

// cutSize cuts a size with its unit off a text, "red 20awg", "1,5 mm² blue", and a number with decimals beside a colour, "red 0,75".
func cutSize(label string) (rest, size string) {
	words := commas.Parts(label, " ,;")
	for k, w := range words {
		n := 1
		number := strings.TrimLeft(strings.ToLower(w), "#awg0123456789.,")
		switch {
		case !strings.ContainsAny(w, "0123456789"):
			continue
		case number == "" && (strings.ContainsAny(w, "#gG")):
		case isSquare(number):
		case number == "" && k+1 < len(words) && (isSquare(strings.ToLower(words[k+1])) || strings.EqualFold(words[k+1], "awg") ||
			strings.EqualFold(words[k+1], "ga")):
			n = 2
		case number == "" && len(words) == 2 && strings.ContainsAny(w, ".,") && areHues(words[1-k]):
		default:
			continue
		}
		return strings.Join(append(slices.Clone(words[:k]), words[k+n:]...), " "), strings.Join(words[k:k+n], " ")
	}
	return label, ""
}

// areHues reports whether a word is the name of a colour, or two with a stroke between.
func areHues(word string) bool {
	base, stripe, two := strings.Cut(strings.ToLower(word), "/")
	_, ok := hueword.Of(base)
	_, second := hueword.Of(stripe)
	return ok && (second || !two)
}

// isSquare reports whether a text is a unit of sections.
func isSquare(unit string) bool {
	switch unit {
	case "mm²", "mm2", "mm^2", "sqmm", "qmm", "mmq":
		return true
	}
	return false
}

// cutShaft cuts a text at the first piece of a shaft: two or more of its signs, or one and a head. back: its head is at its front.
func cutShaft(s string) (before, behind string, back bool) {
	const signs = "-=─━—–~"
	const heads = "<>▶►→←◀◄"
	for k, r := range s {
		if !strings.ContainsRune(signs, r) && !strings.ContainsRune(heads, r) {
			continue
		}
		end, n, head := k, 0, false
		for j, q := range s[k:] {
			if end = k + j; !strings.ContainsRune(signs, q) && !strings.ContainsRune(heads, q) {
				break
			}
			n++
			head = head || strings.ContainsRune(heads, q)
			end = len(s)
		}
		if n > 1 || n == 1 && (r == '→' || r == '←') {
			return s[:k], s[end:], head && strings.ContainsRune("<←◀◄", r)
		}
	}
	return s, "", false
}
