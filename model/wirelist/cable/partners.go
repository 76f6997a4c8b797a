package cable

import (
	"slices"
	"strings"

	"contralay/model/wirelist/signs"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// With is the wires that a note names as those its wire is made up with.
type With struct {
	Of   []string // their ids, or their names
	Text string   // the words of the note that say so
	Rest string   // what the note says besides
}

// ReadWith reads "pair with 105", "twisted with 105 and 106", "TP with W02, screened", "verdrillt mit 12": the ids behind the word
// "with", or a name, "twisted with CAN L". A note that says more keeps the rest: "5 V, twisted with 102". Of is empty where a note
// names no wire so.
func ReadWith(note string) (p With) {
	words := strings.Fields(note)
	for i, w := range words {
		if !isWith(table.Fold(w)) || i+1 == len(words) {
			continue
		}
		from, end := pairingBefore(words[:i]), 0
		if p.Of, end = partnersIn(words[i+1:]); len(p.Of) == 0 {
			return With{}
		}
		end += i + 1
		if from < 0 { // "mit W4 verdrillt"
			if end == len(words) || !isPairing(bare(words[end])) || !strings.ContainsAny(p.Of[0], "0123456789") {
				return With{}
			}
			from = i
		}
		for end < len(words) && isOfCable(words[end]) {
			end++
		}
		p.Text = strings.Trim(strings.Join(words[from:end], " "), " ,;.()")
		for _, part := range []string{strings.Join(words[:from], " "), strings.Join(words[end:], " ")} {
			p.Rest = value.JoinNonEmpty("; ", p.Rest, strings.Trim(part, " ,;.-–()"))
		}
		return p
	}
	return With{}
}

// ReadBeside reads a note that names its own wire among those that are made up together, "W1/W2 twisted", "twisted pair 101 + 102".
func ReadBeside(note, own string) (p With) {
	if own == "" || !value.HasDigit(own) || !strings.Contains(note, own) {
		return With{}
	}
	var rest []string
	among, pairs := false, false
	for _, w := range strings.Fields(note) {
		ids := strings.FieldsFunc(bareID(w), func(r rune) bool { return strings.ContainsRune("/+&,", r) })
		alike := len(ids) > 0 && !slices.ContainsFunc(ids, func(id string) bool { return !isAlike(own, id) })
		switch {
		case alike:
			for _, id := range ids {
				if among = among || id == own; id != own {
					p.Of = append(p.Of, id)
				}
			}
		case isPairing(bare(w)):
			pairs = true
		case isFiller(bare(w)) || bareID(w) == "/" || isOfCable(w):
		default:
			rest = append(rest, w)
		}
	}
	if !among || !pairs || len(p.Of) == 0 || len(rest) > 0 {
		return With{}
	}
	p.Text = strings.Trim(note, " .,;()")
	return p
}

// Partners are the wires that a note names so; nil where it names none.
func Partners(note string) []string { return ReadWith(note).Of }

// isWith reports whether a folded word is "with" in one of several languages.
func isWith(w string) bool {
	switch w {
	case "with", "w/", "w", "mit", "m.", "avec", "con", "com", "met", "med", "z", "s", "se":
		return true
	}
	return false
}

// pairingBefore is where the words begin that make a pair of what follows them, "screened, twisted together"; −1 where the last
// of some words is none.
func pairingBefore(words []string) (from int) {
	from = len(words)
	for from > 0 && isTogether(bare(words[from-1])) {
		from--
	}
	if from == 0 || !isPairing(bare(words[from-1])) {
		return -1
	}
	for from--; from > 0 && isOfCable(words[from-1]); {
		from--
	}
	return from
}

// roundWords are signs round a word.
var roundWords = signs.Of(".,;:()")

// bare is a folded word without the signs around it.
func bare(w string) string { return roundWords.Trim(table.Fold(w)) }

func isTogether(w string) bool {
	switch w {
	case "together", "up", "zusammen", "ensemble", "insieme", "juntos", "samen":
		return true
	}
	return false
}

// isPairing reports whether a word says that wires are made up together.
func isPairing(w string) bool {
	switch w {
	case "paired", "pairs", "shielded", "screened", "gepaart", "twistpair", "par":
		return true
	}
	var g value.Gauge
	return g.Cable(w) && (g.Twisted || g.Conductors > 1)
}

// isOfCable reports whether a word says how wires are made up, "screened,".
func isOfCable(w string) bool {
	var g value.Gauge
	return g.Cable(bare(w)) && g.IsCable()
}

// partnersIn reads the ids or the names that some words begin with, and how many of the words they are.
func partnersIn(words []string) (of []string, n int) {
	called := "" // the words of a name
	closed := false
	add := func() {
		if called = strings.Trim(called, " ,;.()"); called != "" {
			of, called = append(of, called), ""
		}
	}
	for n = 0; n < len(words) && !closed; n++ {
		w := words[n]
		last := n+1 == len(words) || isFiller(bare(words[n+1])) || strings.Trim(w, "+") != ""
		if isFiller(bare(w)) && !(bare(w) == "+" && called != "" && last) { // a plus behind a name, before nothing else, is its pole
			add()
			continue
		}
		if isOfCable(w) || called == "" && len(of) > 0 && (!isAlike(of[0], bareID(w)) || n+1 < len(words) && isUnit(words[n+1])) ||
			called != "" && strings.ContainsAny(called, "0123456789") && !isPole(bareID(w)) {
			break
		}
		called += " " + bareID(w)
		if ids := strings.FieldsFunc(w, func(r rune) bool { return r == ',' || r == '&' || r == '+' }); len(ids) > 1 {
			of, called = append(of, ids...), ""
		} else if strings.HasSuffix(w, ",") || strings.HasSuffix(w, "&") {
			add()
		}
		closed = strings.HasSuffix(w, ";") || strings.HasSuffix(w, ")") || strings.HasSuffix(w, ".")
	}
	add()
	return of, n
}

// bareID is a word without the signs that stand behind an id.
func bareID(w string) string { return strings.Trim(w, ",;.:()") }

// isFiller reports whether a folded word stands before or between ids and is none.
func isFiller(w string) bool {
	switch w {
	case "", "pos", "position", "no", "nr", "row", "line", "zeile", "item", "and", "und", "et", "y", "e", "en", "och", "&", "+", "wire",
		"wires", "ader", "leitung", "fil", "cavo", "cable", "pin", "pins", "cavity", "way", "core", "kontakt", "broche", "pino", "polo",
		"stift":
		return true
	}
	return false
}

// isAlike reports whether a word is an id as another is: both have digits, and the same letters before them. Ids of letters alone are
// alike where they are as long.
func isAlike(id, w string) bool {
	lead := func(s string) string { return strings.ToUpper(strings.TrimRight(s, "0123456789")) }
	if strings.ContainsAny(id, "0123456789") {
		return strings.ContainsAny(w, "0123456789") && lead(id) == lead(w)
	}
	return len(w) == len(id)
}

// isPole reports whether a word behind a name with a number in it is still of the name, "CAN1 L".
func isPole(w string) bool {
	switch strings.ToUpper(w) {
	case "H", "L", "HI", "LO", "HIGH", "LOW", "+", "-", "P", "N":
		return true
	}
	return false
}

// isUnit reports whether a word is of what a number before it measures, which is then no id.
func isUnit(w string) bool {
	switch bare(w) {
	case "mm", "cm", "m", "in", "inch", "turns", "twists", "per", "v", "a", "ohm", "awg":
		return true
	}
	return false
}
