package toldpairs

import (
	"slices"
	"strings"

	"contralay/model/wirelist/cable"
	"contralay/model/wirelist/table"
)

// wiresOf are the wires that a sentence twists together, as they are called, in its order; nil where it does not say so of two wires for
// sure. From the first wire, or the word for twisting before it, to the last there are only wires and the words of such a sentence: "W4
// and W5 are not twisted" and "W4 to W7 are twisted" are none.
//
//	W4 and W5 are one twisted pair.
//	Twist CAN H with CAN L, 40 turns per metre.
//	W7, W8 + W9: verdrilltes Dreierbündel
func wiresOf(sentence string, isWire func(called string) bool) (all []string) {
	words := tokens(sentence)
	first, last, twists := -1, -1, false
	for i := 0; i < len(words); {
		n := 1
		if called, of := calledAt(words[i:], isWire); of > 0 {
			if n = of; isNumber(called) && len(all) == 0 && !followsWire(words[:i]) {
				return nil // "9 turns": a number alone counts something
			}
			if slices.Contains(all, called) {
				return nil
			}
			all = append(all, called)
		} else if isTwist(words[i]) {
			twists = true
		} else if isNumber(words[i]) && len(all) > 0 && i > 0 && words[i-1] == "/" { // "W4/5"
			called := strings.TrimRight(all[len(all)-1], "0123456789") + words[i]
			if !isWire(called) {
				return nil
			}
			all = append(all, called)
		} else {
			i++
			continue
		}
		if first < 0 {
			first = i
		}
		i += n
		last = i
	}
	if !twists || len(all) < 2 || len(all) > 4 || len(all) > 2 && !slices.ContainsFunc(words, isOfSeveral) {
		return nil
	}
	rest := slices.Clone(words[first:last])
	for i := 0; i < len(rest); {
		_, n := calledAt(rest[i:], isWire)
		if n == 0 && !isTwist(rest[i]) && !isNumber(rest[i]) && !links(rest[i]) && !followsWire(rest[i:i+1]) {
			return nil
		}
		i += max(n, 1)
	}
	return all
}

// tokens are the words of a sentence, and the signs between wires each by itself.
func tokens(sentence string) (all []string) {
	for _, w := range strings.Fields(sentence) {
		w = strings.Trim(w, ".;()\"'`*")
		for w != "" {
			at := strings.IndexAny(w, ",/&:")
			if at < 0 {
				all = append(all, w)
				break
			}
			if at > 0 {
				all = append(all, w[:at])
			}
			all, w = append(all, w[at:at+1]), w[at+1:]
		}
	}
	return all
}

// calledAt is the wire that some words begin with, by the longest name that is one, and of how many words it is; 0 where none is.
func calledAt(words []string, isWire func(string) bool) (called string, n int) {
	for n = min(len(words), 3); n > 0; n-- {
		if called = strings.Join(words[:n], " "); isWire(called) {
			return called, n
		}
	}
	return "", 0
}

func isNumber(w string) bool { return w != "" && strings.Trim(w, "0123456789") == "" }

// followsWire reports whether the last of some words says that numbers of wires follow.
func followsWire(words []string) bool {
	if len(words) == 0 {
		return false
	}
	switch table.Fold(words[len(words)-1]) {
	case "wire", "wires", "no", "nos", "nr", "ader", "adern", "leitung", "leitungen", "fil", "fils", "cavo", "cavi", "cable", "cables",
		"hilo", "hilos", "kabel", "ledning", "ledningar", "draad", "draden", "circuit", "circuits",
		"repere", "reperes", "numero", "numeros", "nummer", "nummern", "nrs", "id", "ids":
		return true
	}
	return false
}

// isTwist reports whether a word says that wires are made up together.
func isTwist(w string) bool {
	g := cable.Words(w)
	return g.Twisted || g.Conductors > 1 || table.Fold(w) == "pairs"
}

// isOfSeveral reports whether a word says that more than two wires are one, "triple", "together".
func isOfSeveral(w string) bool {
	switch table.Fold(w) {
	case "triple", "triad", "trio", "quad", "together", "all", "zusammen", "miteinander", "dreierbundel", "ensemble", "insieme", "juntos",
		"samen", "ihop", "sammen":
		return true
	}
	return false
}

// links reports whether a word may stand between wires, and between them and the word for twisting, in a sentence that says so. What
// denies or doubts it is not among them.
func links(w string) bool {
	switch table.Fold(w) {
	case ",", "/", "&", "+", ":", "=", "-", "–", "and", "und", "et", "y", "e", "och", "og", "en", "i", "with", "mit", "avec", "con",
		"med", "met", "com", "is", "are", "be", "must", "a", "an", "the", "one", "as", "form", "make", "share", "in", "run", "both", "of",
		"wire", "wires", "together", "all", "up", "screened", "shielded", "sind", "ist", "bilden", "ein", "eine",
		"einem", "einer", "das", "als",
		"em", "um", "uma", "os", "fio", "fios", "sao", "formam", "vao", "como", "im", "le", "los", "las", "gli", "hilos", "fili",
		"miteinander", "zusammen", "geschirmt", "sont", "forment", "une", "un", "ensemble", "son", "forman", "una", "uno", "juntos", "sono",
		"formano", "insieme", "estan", "vanno", "vont", "sa", "jsou", "worden", "werden", "wird", "elkaar", "razem", "oraz",
		"ar", "er", "ett", "et par", "zijn", "een", "samen", "ihop", "sammen", "adern", "ader", "fils", "fil":
		return true
	}
	return false
}
