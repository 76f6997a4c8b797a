package toldpairs

import (
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/table"
)

// The two wires of a pair are often told by what their names share.
//
//	1 | Crank +
//	2 | Crank -
//	Crank pair twisted and screened, screen to the case only.

// poles are the ends of the names of the two wires of a pair.
var poles = [][2]string{{"+", "-"}, {"h", "l"}, {"hi", "lo"}, {"high", "low"}, {"pos", "neg"}, {"p", "n"}}

// byStem are the two wires whose names are the words before "pair" in a sentence that twists them, and a pole each; nil where it does not
// begin so, or where there are not just two.
func byStem(sentence string, items []*draft.Item) (all []*draft.Item) {
	const most = 3 // words of a stem (no source)
	words := tokens(sentence)
	for n := 1; n <= most && n < len(words); n++ {
		if table.Fold(words[n]) != "pair" && table.Fold(words[n]) != "paar" && table.Fold(words[n]) != "paire" {
			continue
		}
		twists := false
		for _, w := range words[n:] {
			switch f := table.Fold(w); f {
			case "not", "no", "nicht", "kein", "pas", "or", "oder", "ou", "if":
				return nil
			default:
				twists = twists || f != table.Fold(words[n]) && isTwist(w)
			}
		}
		if twists {
			return withPoles(table.Fold(strings.Join(words[:n], " ")), items)
		}
	}
	return nil
}

// withPoles are the two wires whose names are a stem and the poles of a pair.
func withPoles(stem string, items []*draft.Item) []*draft.Item {
	for _, of := range poles {
		var found [2]*draft.Item
		n := 0
		for _, it := range items {
			pole, ok := strings.CutPrefix(table.Fold(it.Signal), stem)
			pole = strings.TrimLeft(pole, " _-")
			if strings.HasSuffix(it.Signal, "-") && pole == "" {
				pole = "-"
			}
			for k := range of {
				if ok && pole == of[k] {
					found[k] = it
					n++
				}
			}
		}
		if n == 2 && found[0] != nil && found[1] != nil {
			return found[:]
		}
	}
	return nil
}

// calledSo is how the wires of an import are called so that each is found by it.
func calledSo(all []*draft.Item) (called []string) {
	for _, it := range all {
		if it.OwnID != "" {
			called = append(called, it.OwnID)
		} else {
			called = append(called, it.Signal)
		}
	}
	return called
}

// Poles reports whether two names are a stem and the two poles of a pair: "KNOCK +" and "KNOCK -".
func Poles(a, b string) bool {
	a, b = table.Fold(a), table.Fold(b)
	for _, of := range poles {
		for k := range of {
			stem, ok := strings.CutSuffix(a, of[k])
			other, also := strings.CutSuffix(b, of[1-k])
			apart := of[0] == "+" || stem != strings.TrimRight(stem, " _-") // a letter stands by itself
			if ok && also && stem == other && apart && strings.Trim(stem, " _-") != "" {
				return true
			}
		}
	}
	return false
}
