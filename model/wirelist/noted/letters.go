package noted

import (
	"strings"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/table"
)

// A mail says once which plug each letter stands for, and writes cavities as the letter and a number.
//
//	W = winch plug, B = control box, L = deck lamp.
//
//	W1 to B4, up, red, 1.5 mm2
//	L2 to the hull stud, black

// letters writes a colon between such a letter and its number, in the lines that begin with one, where a text above says what two letters
// or more stand for. What follows that an end stays free, or goes somewhere, is read by others.
func (n *notes) letters() {
	var of map[string]bool
	n.texts(func(i int, text string) bool {
		if !strings.ContainsAny(text, "=:") && !strings.Contains(text, " is ") {
			return true
		}
		if of = lettersIn(text); len(of) < 2 {
			of = nil
			return true
		}
		return false
	})
	if of == nil {
		return
	}
	n.texts(func(i int, text string) bool {
		at := afterthought(text)
		w := strings.Fields(text[at:])
		if len(w) < 2 || parted(w[0], of) == w[0] {
			return true
		}
		for k := range w {
			w[k] = parted(w[k], of)
		}
		if says := strings.TrimLeft(strings.Join(w[1:], " "), "-–—=:, "); name.StateOf(says) == name.Blank {
			w = []string{strings.TrimRight(w[0], ":,;"), "->", says}
		}
		if at > 0 {
			w = append(w, ", "+strings.TrimRight(text[:at], ": "))
		}
		n.set(i, strings.ReplaceAll(strings.Join(w, " "), " , ", ", "))
		return true
	})
}

// lettersIn are the letters of which a text says what plug each is, "P = plug at the tank, T: tail lamp"; nil where it is of anything else,
// the short forms of colours among that.
func lettersIn(text string) map[string]bool {
	of := map[string]bool{}
	for p := range strings.FieldsFuncSeq(strings.TrimRight(text, ". "), func(r rune) bool { return r == ',' || r == ';' }) {
		letter, thing := "", ""
		for _, sign := range []string{"=", ":", " is ", " ist ", " est "} {
			if front, behind, ok := strings.Cut(p, sign); ok {
				letter, thing = strings.TrimSpace(front), strings.TrimSpace(behind)
				break
			}
		}
		if letter == "" && len(of) > 0 {
			continue // "W = winch plug, 4 way"
		}
		if at := strings.LastIndexByte(letter, ' '); at >= 0 && len(of) == 0 {
			letter = letter[at+1:] // "so here: P"
		}
		if len(letter) != 1 || letter[0] < 'A' || letter[0] > 'Z' || len(thing) < 3 || of[letter] || point.IsColour(thing) ||
			strings.Contains(thing, "=") {
			return nil
		}
		of[letter] = true
	}
	return of
}

// parted is a word with a colon between its letter and its number, where it is one of these letters and a number.
func parted(word string, of map[string]bool) string {
	if len(word) < 2 || !of[word[:1]] {
		return word
	}
	number := strings.TrimRight(word[1:], ".,;:)")
	if number == "" || len(number) > 3 || strings.Trim(number, "0123456789") != "" {
		return word
	}
	return word[:1] + ":" + word[1:]
}

// afterthought is where the wire begins in a line that somebody added below his list, "PS forgot one: T4 to the frame bolt"; 0 where it is
// none.
func afterthought(text string) int {
	at := strings.Index(text, ": ")
	const most = 6 // words before the wire (no source)
	if at < 0 || len(strings.Fields(text[:at])) > most {
		return 0
	}
	first, _, _ := strings.Cut(table.Fold(strings.Trim(text[:at], ".!")), " ")
	switch strings.Trim(first, ".,") {
	case "ps", "p.s", "nb", "n.b", "edit", "also", "forgot", "oh", "sorry", "update", "later", "added", "addendum", "nachtrag", "vergessen",
		"noch", "oublie", "olvide", "dimenticato", "vergeten", "glomde", "glemte":
		if _, to := arrow.In(text[at:]); to > 0 || strings.Contains(text[at:], " to ") || strings.Contains(text[at:], " > ") {
			return at + 2
		}
	}
	return 0
}
