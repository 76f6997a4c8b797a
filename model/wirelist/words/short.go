package words

import (
	"slices"
	"strings"
	"sync"

	"contralay/model/wirelist/name"
)

// heading is one word of the vocabulary and what it means.
type heading struct {
	word    string
	meaning name.Meaning
}

// sorted are the headings of one word, in their order. Nothing writes it.
var sorted = sync.OnceValue(func() (all []heading) {
	for w, m := range Vocabulary() {
		if !m.Weak && !strings.Contains(w, " ") {
			all = append(all, heading{w, m})
		}
	}
	slices.SortFunc(all, func(a, b heading) int { return strings.Compare(a.word, b.word) })
	return all
})

// Short reads a heading that is a word cut short, with a full stop behind it, "Querschn.", "Ledn.": every word that begins so means one
// thing. It is folded.
func Short(head string) (m name.Meaning, ok bool) {
	const least = 3 // letters (no source)
	letters, stopped := strings.CutSuffix(head, ".")
	if !stopped || len(letters) < least || strings.ContainsAny(letters, " .0123456789/()-") {
		return m, false
	}
	all := sorted()
	at, _ := slices.BinarySearchFunc(all, letters, func(h heading, l string) int { return strings.Compare(h.word, l) })
	for _, h := range all[at:] {
		if !strings.HasPrefix(h.word, letters) {
			break
		}
		switch {
		case !ok:
			m, ok = h.meaning, true
		case h.meaning.Field != m.Field:
			return name.Meaning{}, false
		case h.meaning.Lang != m.Lang:
			m.Lang = ""
		}
	}
	return m, ok
}
