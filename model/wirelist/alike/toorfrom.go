package alike

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// toOrFrom parts each text at the one word in it for where the wire goes or comes from, in the middle of the text: some wires of a plug
// are fed there and some come from there. ok is false where less than four of five that are in use have one, and begin with a colour.
//
//	pin 1 red 12v feed from FUSE pin 3
//	pin 2 blk ground to stud
func toOrFrom(texts []string) (near, far []string, ok bool) {
	near, far = make([]string, len(texts)), make([]string, len(texts))
	used, cut, coloured := 0, 0, 0
	for i, t := range texts {
		near[i] = t
		if t == "" || name.StateOf(t) != name.Used {
			continue
		}
		used++
		if _, v := valueBefore(t); v.isValue() {
			coloured++
		}
		w := strings.Fields(t)
		if len(w) < 3 {
			continue
		}
		leads := func(w string) bool { f := table.Fold(w); return words.GoesTo(f) && len(f) > 1 || words.ComesFrom(f) }
		at := slices.IndexFunc(w[1:], leads) + 1
		if at == 0 || at+1 >= len(w) || slices.ContainsFunc(w[at+1:], leads) || !isShort(strings.Join(w[at+1:], " ")) {
			continue
		}
		front := w[:at]
		if k := at - 1; k > 0 && (front[k] == "-" || front[k] == "–") { // "red - to the lamp"
			front = front[:k]
		}
		near[i], far[i] = trimMark(strings.Join(front, " ")), words.WithoutArticle(strings.Join(w[at+1:], " "))
		cut++
	}
	return near, far, cut > 1 && 5*cut >= 4*used && 5*coloured >= 4*used
}
