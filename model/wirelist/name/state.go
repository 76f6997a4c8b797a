package name

import (
	"slices"
	"strings"

	"contralay/model/wirelist/freeword"
	"contralay/model/wirelist/signs"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/twoscripts"
)

// State is what a row says its cavity is for.
type State int

const (
	Used     State = iota
	Blank          // nothing in it: a seal plug
	Reserved       // kept free for something
	Spare          // a wire for later
)

// StateOf reads a cell as what its cavity is for. The word of a state must be all there
// is, but for what is done with an empty place, "N/C (plug)", for a number behind a spare,
// "spare 2", and for what a place is kept for, "reserved for the pump": "spare injector 3"
// is a signal. Of several words the one that says more counts.
func StateOf(cell string) State {
	if freeword.IsNumbered(cell) {
		return Used // as most ends and cavities are called
	}
	return stateOf(cell, bareWord(cell))
}

// stateOf is StateOf of a cell whose bare word is known.
func stateOf(cell, f string) State {
	if s := stateOfWord(cell, f); s != Used {
		return s
	}
	if isKeptFor(f) || saysReserved(cell) {
		return Reserved
	}
	if strings.IndexByte(f, ' ') >= 0 {
		f = strings.ReplaceAll(strings.ReplaceAll(strings.ReplaceAll(f, " - ", ";"), " / ", ";"), ". ", ";")
	}
	if strings.IndexFunc(f, partsPhrases) < 0 {
		return Used
	}
	most, k := Used, -1
	for piece := range strings.FieldsFuncSeq(f, partsPhrases) { // most texts are known by their first piece
		k++
		switch s := stateWord(piece); {
		case (s == Spare || s == Reserved) && k == 0:
			return s // "spare, coiled behind the panel", "reserved, second pump"
		case s != Used:
			most = max(most, s)
		case k == 0 || !isClosing(strings.TrimSpace(piece)):
			return Used
		}
	}
	return most
}

// Signs round the word of a state, round a mark for what is not known, and such marks.
var roundStates, roundMarks, questions = signs.Of(" .:()[]*"), signs.Of(" ."), signs.Of("?")

// partsPhrases reports whether a sign stands between two phrases.
func partsPhrases(r rune) bool {
	switch r {
	case '(', ')', '[', ']', ';', ',', ':':
		return true
	}
	return false
}

// bareWord is a cell folded, without the signs round it and without the verb of a sentence, "is not used".
func bareWord(cell string) string {
	f := freeword.Unframed(strings.TrimPrefix(table.Fold(cell), "is "))
	return roundStates.Trim(f)
}

// isKeptFor reports whether a text begins with the words of a place that is kept for something,
// and says for what.
func isKeptFor(folded string) bool {
	return freeword.IsKeptFor(folded)
}

// OnlyState reports whether a cell says its state and nothing else.
func OnlyState(cell string) bool {
	return StateOf(cell) != Used && (stateWord(cell) != Used || !isKeptFor(bareWord(cell)))
}

// OnlyFree reports whether the name of a net says no more than that there is none yet.
func OnlyFree(signal string) bool {
	return StateOf(signal) == Used && StateOfSignal(signal) != Used && !freeword.IsSpareFor(bareWord(signal))
}

// StateOfSignal reads the name of a net: a place that nobody has decided on is kept free.
func StateOfSignal(cell string) State {
	f := bareWord(cell)
	switch {
	case isWeakWord(f), isKeyWithoutPin(cell):
		return Blank
	case f != "" && IsUnknown(f), freeword.IsSpareFor(f):
		return Reserved
	}
	return stateOf(cell, f)
}

// IsKey reports whether the name of a net can be that of a cavity that keys its connector, and has no wire.
func IsKey(cell string) bool {
	switch bareWord(cell) {
	case "key", "keyed", "keying":
		return true
	}
	return false
}

// IsWeakState reports whether the name of a net says that its cavity is free only where nothing else stands in its
// row: "open" beside a wire is what the wire does.
func IsWeakState(cell string) bool { return isWeakWord(bareWord(cell)) }

func isWeakWord(bare string) bool {
	switch bare {
	case "open", "tom", "tomt", "keying pin", "key pin", "polarising key":
		return true
	}
	return false
}

// StateOfNote reads a note: what it says first counts, "Spare. 200 mm tail", "SPARE - coil and
// stow".
func StateOfNote(note string) State {
	if s := StateOf(note); s != Used {
		return s
	}
	if i := strings.IndexAny(note, ".,;:-–("); i > 0 && stateWord(note[:i]) == Spare {
		return Spare
	}
	return Used
}

// stateWord is the state that one word or phrase names; used where it names none.
func stateWord(cell string) State { return stateOfWord(cell, bareWord(cell)) }

// stateOfWord is stateWord of a cell whose bare word is known.
func stateOfWord(cell, f string) State {
	switch {
	case freeword.IsBlank(f):
		return Blank
	case freeword.IsReserved(f):
		return Reserved
	}
	// "réserve" is French for a spare; "réservé", which folds to the same, for reserved.
	if strings.EqualFold(strings.TrimSpace(cell), "réservé") {
		return Reserved
	}
	if freeword.IsSpare(withoutNumber(f)) {
		return Spare
	}
	if front, back, ok := twoscripts.Part(cell); ok { // "空き N.C."
		if s := stateWord(front); s == stateWord(back) {
			return s
		}
	}
	return Used
}

// withoutNumber is a text without the number behind it, and without what parts the two.
func withoutNumber(f string) string {
	for end := len(f); end > 0; end-- {
		if c := f[end-1]; (c < '0' || c > '9') && c != ' ' && c != '-' && c != '_' && c != '#' {
			return f[:end]
		}
	}
	return ""
}

// isClosing reports whether a piece says what is done with a place that has no wire, or with
// the end of a spare.
func isClosing(piece string) bool {
	switch piece {
	case "plug", "plugged", "fit plug", "cap", "capped", "seal", "sealed", "fit seal", "leave empty", "leave open", "leave blank",
		"leave the pin out", "leave pin out", "leave out", "leave the cavity empty", "no pin", "no contact", "no terminal",
		"cap and stow", "capped and stowed", "stow", "stowed", "coiled", "coiled back", "insulate", "insulated", "optional", "if needed",
		"verschlossen", "leer lassen", "isoliert", "laisser vide", "isole", "dejar vacio", "lasciare vuoto":
		return true
	}
	if words := strings.Fields(piece); len(words) > 1 && len(words) < 5 {
		return !slices.ContainsFunc(words, func(w string) bool { return !isClosingWord(w) })
	}
	return stateWord(piece) != Used
}

// isClosingWord reports whether a word is one of those that say how a place without a wire is closed: "plug fitted".
func isClosingWord(w string) bool {
	switch w {
	case "it", "off", "up", "plug", "plugs", "plugged", "seal", "sealed", "cap", "capped", "dummy", "filler", "blanking", "sealing", "fit",
		"fitted", "in", "with", "installed", "place", "white", "only", "blindstopfen", "stopfen", "gesetzt", "mit", "bouchon", "pose",
		"tappo", "tapon", "puesto", "montato":
		return true
	}
	return false
}

// IsUnknown reports whether s is a mark that says the list's maker does not know either.
func IsUnknown(s string) bool {
	f := roundMarks.Trim(table.Fold(s))
	return questions.Are(f) || freeword.IsUndecided(f)
}
