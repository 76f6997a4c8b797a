package runline

import (
	"cmp"
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/nameaside"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Lines that say what a wire is and then, in words, from where to where it goes, numbered or not.
//
//  1. red, 2.5 mm2, from the regulator (plus) to the capacitor (plus)
//  2. black, 2.5 mm2, from the regulator (minus) to pin 4 of the box
//  3. blue, 1 mm2, from the light switch to the headlamp, high beam

// FromTo is what one such line says. An end is a device and the cavity that the line says with it; what stands behind a comma may be the
// cavity as well.
type FromTo struct {
	Near, NearPad, NearAside   string
	Far, FarPad, FarAside      string
	Colour, Size, Note, Signal string
	ID                         string // "K1" of "K1: from …"
}

// FromToRows reads the rows from one on that are such lines; nil where there are not two of them, one below the other. What stands behind
// a comma is the cavity where the same device has another one behind a comma in another row, else it goes into the note.
func FromToRows(t *table.Table, i int) (all []FromTo) {
	for k, r := range t.Rows[i:] {
		if len(r.Cells) != 1 || t.Marked && !r.Prose || r.Level > 0 || k > 0 && r.Line > t.Rows[i+k-1].Line+2 {
			break
		}
		l, ok := FromToOf(r.Cells[0])
		if !ok {
			break
		}
		all = append(all, l)
	}
	sized := slices.ContainsFunc(all, func(l FromTo) bool { return l.Size != "" })
	if len(all) < 2 || !sized && slices.ContainsFunc(all, func(l FromTo) bool { return l.Signal != "" }) {
		return nil // "red paint from the tank to …"
	}
	asides := map[string]map[string]bool{}
	for _, l := range all {
		for _, e := range [][2]string{{l.Near, l.NearAside}, {l.Far, l.FarAside}} {
			if asides[e[0]] == nil {
				asides[e[0]] = map[string]bool{}
			}
			if e[1] != "" {
				asides[e[0]][e[1]] = true
			}
		}
	}
	for k := range all {
		l := &all[k]
		for _, e := range [][3]*string{{&l.Near, &l.NearPad, &l.NearAside}, {&l.Far, &l.FarPad, &l.FarAside}} {
			switch {
			case *e[2] == "":
			case *e[1] == "" && len(asides[*e[0]]) > 1:
				*e[1] = *e[2]
			default:
				l.Note = value.JoinNonEmpty("; ", l.Note, *e[2])
			}
		}
	}
	return all
}

// FromToOf parts one such line: a colour or a size stands before the word for where it begins, or behind the far end of a line that has a
// number, and each end is a few words. Lines whose ends are plain are read as others are.
func FromToOf(text string) (l FromTo, ok bool) {
	const mostWords = 40 // no source
	id, text := labelOfFrom(strings.TrimRight(strings.TrimSpace(text), ". "))
	text, numbered := withoutNumber(text)
	numbered = numbered || id != ""
	text, remark := nameaside.Cut(text)
	if from, _, _ := plain(text); from != "" {
		return l, false
	}
	if from, _, _ := valuesBefore(text); from != "" {
		return l, false
	}
	w := strings.Fields(text)
	at := slices.IndexFunc(w, func(s string) bool { return farWords(table.Fold(s)) != nil })
	if at < 0 || at == 0 && !numbered || len(w) > mostWords {
		return l, false
	}
	to := -1
	for k := at + 2; k < len(w); k++ {
		if slices.Contains(farWords(table.Fold(w[at])), table.Fold(w[k])) {
			if to >= 0 {
				return l, false // "from A to B and to C"
			}
			to = k
		}
	}
	if to < 0 || to+1 == len(w) {
		return l, false
	}
	front := strings.Join(withoutWire(w[:at]), " ")
	t := tailOf(strings.TrimRight(front, " ,;:-–"))
	if at > 0 && t.colour == "" && t.size == "" || len(strings.Fields(t.signal)) > 3 || strings.HasSuffix(front, ".") ||
		slices.ContainsFunc(strings.Fields(t.signal), isArticle) { // "move the red wire from …"
		return l, false
	}
	l = FromTo{Colour: t.colour, Size: t.size, Note: value.JoinNonEmpty("; ", t.note, remark), Signal: t.signal, ID: id}
	near, nearBehind := cutAtComma(strings.Join(w[at+1:to], " "))
	far, behind := cutAtComma(strings.Join(w[to+1:], " "))
	l.Near, l.NearPad = placeInWords(near)
	l.Far, l.FarPad = placeInWords(far)
	l.NearAside = nearBehind
	l.FarAside = l.takeBehind(behind)
	return l, isFewWords(l.Near) && isFewWords(l.Far) && (l.Colour != "" || l.Size != "")
}

// takeBehind takes in what stands behind the far end: values that the line did not say yet, one short text that may be a cavity, and all
// else as a note.
func (l *FromTo) takeBehind(text string) (aside string) {
	for p := range strings.SplitSeq(text, ", ") {
		t := tailOf(p)
		switch {
		case p == "":
		case t.signal == "" && (t.colour != "" || t.size != "") && (t.colour == "" || l.Colour == "") && (t.size == "" || l.Size == ""):
			l.Colour, l.Size = cmp.Or(l.Colour, t.colour), cmp.Or(l.Size, t.size)
			l.Note = value.JoinNonEmpty("; ", l.Note, t.note)
		case aside == "" && len(strings.Fields(p)) < 4:
			aside = p
		default:
			l.Note = value.JoinNonEmpty("; ", l.Note, p)
		}
	}
	return aside
}

// withoutNumber takes the number of a line off its front, "1)", "12.", "3:", "4 -".
func withoutNumber(text string) (rest string, numbered bool) {
	first, rest, ok := strings.Cut(text, " ")
	bare := strings.TrimRight(first, ".):")
	if sign, behind, _ := strings.Cut(rest, " "); bare == first && (sign == "-" || sign == "–") {
		bare, rest = first, behind
		first += "-"
	}
	if ok && bare != first && bare != "" && strings.Trim(bare, "(0123456789") == "" {
		return strings.TrimSpace(rest), true
	}
	return text, false
}

// withoutWire takes the words off that say of the values before an end that they are those of a wire, "a red wire runs".
func withoutWire(w []string) []string {
	if len(w) > 1 && slices.Contains([]string{"a", "an", "one", "ein", "eine", "un", "une", "uno", "una"}, table.Fold(w[0])) {
		w = w[1:]
	}
	for len(w) > 1 && slices.Contains([]string{"wire", "lead", "runs", "goes", "leads", "running", "going", "fil", "va", "cavo", "leitung",
		"ader", "geht", "lauft", "fuhrt"}, table.Fold(strings.TrimRight(w[len(w)-1], ","))) {
		w = w[:len(w)-1]
	}
	return w
}

// labelOfFrom parts the label of a wire and its colon off a line that goes on with a word for where it begins, "K1: from the pump to X1".
func labelOfFrom(text string) (id, rest string) {
	id, rest, ok := strings.Cut(text, ": ")
	first, _, _ := strings.Cut(strings.TrimSpace(rest), " ")
	if !ok || !name.IsDesignator(id) || farWords(table.Fold(first)) == nil {
		return "", text
	}
	return id, strings.TrimSpace(rest)
}

// farWords are the words for where a wire ends that go with a folded word for where it begins; nil where that is no such word.
func farWords(from string) []string {
	switch from {
	case "from":
		return []string{"to"}
	case "von", "vom":
		return []string{"nach", "zu", "zum", "zur"}
	case "de", "du", "depuis":
		return []string{"vers", "a", "au", "aux"}
	case "desde", "del":
		return []string{"a", "al", "hasta", "hacia"}
	case "da", "dal", "dalla":
		return []string{"a", "al", "alla", "verso"}
	case "van":
		return []string{"naar"}
	case "fran":
		return []string{"till"}
	case "fra":
		return []string{"til"}
	case "z", "ze", "od":
		return []string{"do"}
	}
	return nil
}

// cutAtComma parts what stands behind the first comma of an end.
func cutAtComma(text string) (end, behind string) {
	end, behind, _ = strings.Cut(strings.Trim(text, " ,;"), ", ")
	return end, strings.Trim(behind, " ,;")
}

// placeInWords parts an end in its device and the cavity that stands in brackets behind it, behind a word for a cavity, or before "of":
// "the regulator (plus)", "the key switch terminal 1", "pin 4 of the box".
func placeInWords(text string) (device, pad string) {
	w := withoutArticle(strings.Fields(text))
	if open := strings.LastIndexByte(text, '('); open > 0 && strings.HasSuffix(text, ")") {
		if in := strings.TrimSpace(text[open+1 : len(text)-1]); name.IsCavity(in) || isPoleWord(in) {
			return strings.Join(withoutArticle(strings.Fields(text[:open])), " "), in
		}
	}
	isPin := func(s string) bool { s = table.Fold(s); return name.IsPinWord(s) || isTerminalWord(s) }
	isPad := func(s string) bool { return name.IsCavity(s) || isPoleWord(s) }
	switch n := len(w); {
	case n > 2 && isPin(w[n-2]) && isPad(w[n-1]):
		return strings.Join(w[:n-2], " "), w[n-1]
	case n > 3 && isPin(w[0]) && isPad(w[1]) && name.JoinsDevice(table.Fold(w[2])):
		return strings.Join(withoutArticle(w[3:]), " "), w[1]
	case n > 1 && isPoleWord(w[n-1]):
		return strings.Join(w[:n-1], " "), w[n-1]
	}
	return strings.Join(w, " "), ""
}

// withoutArticle takes an article off the front of some words.
func withoutArticle(w []string) []string {
	for len(w) > 1 && (isArticle(w[0]) || table.Fold(w[0]) == "de") { // "van de regelaar"
		w = w[1:]
	}
	return w
}

func isArticle(w string) bool {
	return slices.Contains([]string{"the", "a", "an", "der", "die", "das", "dem", "den", "le", "la", "les", "el", "los", "las",
		"il", "lo", "het", "det"}, table.Fold(w))
}

// isTerminalWord reports whether a word is for a place on a device where a wire is taken to.
func isTerminalWord(w string) bool {
	switch w {
	case "terminal", "klemme", "borne", "borna", "morsetto", "klem", "plint", "tag", "post", "stud", "zacisk":
		return true
	}
	return false
}

// isPoleWord reports whether a word is for a pole of a device.
func isPoleWord(w string) bool {
	switch table.Fold(w) {
	case "plus", "minus", "positive", "negative", "+", "-", "pos", "neg", "moins", "mas", "menos", "piu", "meno":
		return true
	}
	return false
}

// isFewWords reports whether a text is the name of a device: few words, and no sign of a sentence.
func isFewWords(text string) bool {
	n := len(strings.Fields(text))
	return n > 0 && n < 6 && !strings.ContainsAny(text, ";?!") && !strings.Contains(text, ". ")
}
