package draft

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/value"
)

// DrainOf is what a signal says its shield is of, "CRANK" of "CRANK shield"; ok is false
// where the signal is of no drain.
func DrainOf(signal string) (of []string, ok bool) {
	all := name.Words(value.Fold(signal))
	for i, w := range all {
		switch {
		case name.DrainWord(w):
			ok = true
		case w == "wire" && i > 0:
		default:
			of = append(of, w)
		}
	}
	return of, ok && (name.DrainWord(all[len(all)-1]) || all[len(all)-1] == "wire" || name.DrainWord(all[0]))
}
