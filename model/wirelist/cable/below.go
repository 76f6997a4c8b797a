package cable

import (
	"strings"

	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Heads reports whether the words of a heading are about cables and nothing else, "Twist/Shield", "Twisted pair", "Shield ID", or ask
// with which wire that of the row is made up.
func Heads(all []string) bool {
	if AsksWith(all) {
		return true
	}
	is := false
	for _, w := range all {
		var g value.Gauge
		switch {
		case w == "cable" || w == "group" || w == "no" || w == "nr" || w == "id" || w == "ref" || w == "with" || w == "type" || w == "or" ||
			w == "and" || w == "grp" || w == "number" || w == "set":
		case value.IsLetter(w[0]) && g.Cable(w):
			is = is || g.IsCable()
		default:
			return false
		}
	}
	return is
}

// AsksWith reports whether the words of a heading ask with which wire that of the row is made up: "Twisted w/", "Pair with", "Twisted with
// wire no", "Verdrillt mit Pin". The word before "with" says how.
func AsksWith(w []string) bool {
	for i := 1; i < len(w); i++ {
		if !isWith(w[i]) && !isPartner(w[i]) {
			continue
		}
		for _, before := range w[:i] {
			if !isPairing(before) && !isTogether(before) {
				return false
			}
		}
		for _, behind := range w[i+1:] {
			if !isFiller(behind) && behind != "id" && behind != "number" && behind != "ref" && behind != "which" && behind != "signal" &&
				behind != "net" && behind != "name" && behind != "circuit" && !isThe(behind) {
				return false
			}
		}
		return true
	}
	return false
}

// PartnersBelow are the wires that a cell names below a heading of some words which asks for them, and those behind a yes or a "with",
// "Yes (6)", "w/ 6", below a heading about cables; nil where it names none, or says more.
//
//	Wire | Twisted w/      Pin | Twisted with pin      Wire | Twisted?
//	W14  | W15 & W16       3   | 4                     5    | Yes (6)
func PartnersBelow(head, cell string, w []string) []string {
	if first, _, _ := strings.Cut(table.Fold(cell), " "); len(first) > 1 && isWith(first) || Words(head).Twisted &&
		strings.HasPrefix(first, "w/") || AsksWith(w) {
		if p := ReadWith("twisted " + cell); len(p.Of) > 0 && p.Rest == "" {
			return p.Of // "w/ 2", "mit W2"
		}
	}
	if !AsksWith(w) {
		front, back, _ := strings.Cut(cell, " ")
		bare := strings.Trim(back, "() ")
		if YesOrNo(front) != "yes" || !Words(head).IsCable() || bare == "" || bare == back && !strings.HasPrefix(table.Fold(back), "w") {
			return nil
		}
		if p := ReadWith("twisted " + bare); len(p.Of) > 0 {
			return p.Of
		}
		cell = bare
	} else if p := ReadWith(cell); len(p.Of) > 0 && p.Rest == "" {
		return p.Of
	}
	if parts := strings.FieldsFunc(cell, func(r rune) bool { return r == '/' || r == ';' }); len(parts) > 1 && len(parts) < 5 {
		alike := true
		for k := range parts {
			parts[k] = strings.TrimSpace(parts[k])
			alike = alike && parts[k] != "" && value.HasDigit(parts[k]) && isAlike(parts[0], parts[k])
		}
		if alike {
			cell = strings.Join(parts, ", ")
		}
	}
	p := ReadWith("twisted with " + cell)
	if p.Rest != "" {
		return nil
	}
	if last := w[len(w)-1]; isPinWord(last) { // it asks for cavities, whatever the wires are called
		for k := range p.Of {
			p.Of[k] = last + " " + p.Of[k]
		}
	}
	return p.Of
}

// isPartner reports whether a folded word is for the other wire of a pair. From memory, no source.
func isPartner(w string) bool {
	switch w {
	case "partner", "mate", "partenaire", "companero", "compagno":
		return true
	}
	return false
}

// isThe reports whether a folded word is an article.
func isThe(w string) bool {
	switch w {
	case "the", "der", "den", "dem", "le", "la", "l", "el", "il", "lo", "de", "het":
		return true
	}
	return false
}

// isPinWord reports whether a word behind "with" asks for a cavity.
func isPinWord(w string) bool {
	switch w {
	case "pin", "cavity", "kontakt", "broche", "pino", "stift":
		return true
	}
	return false
}

// MarkHeading reads a heading that is the name of one pair or of one shield, whose cells mark the wires of it: "TP1", "Twist 2",
// "Shield A". Mark is "" where it is none.
//
//	Wire | From | To | TP1 | TP2 | SH1
//	1    | A:1  | B:1 | x   |     |
//	2    | A:2  | B:2 | x   |     |
//	3    | A:3  | B:3 |     | x   | x
func MarkHeading(head string) (mark string, kind value.Gauge) {
	called := strings.TrimSpace(head)
	letters := strings.TrimRight(called, "0123456789")
	if cut := strings.LastIndexByte(called, ' '); letters == called && cut > 0 && cut == len(called)-2 {
		letters = called[:cut] // "Pair A"
	}
	if letters == called || len(called)-len(letters) > 2 {
		return "", value.Gauge{}
	}
	n := 0
	for _, w := range strings.FieldsFunc(table.Fold(letters), func(r rune) bool { return r == ' ' || r == '-' || r == '_' || r == '.' }) {
		if !kind.Cable(w) || w == "wire" || w == "leitung" {
			return "", value.Gauge{}
		}
		n++
	}
	if n == 0 || !kind.IsCable() {
		return "", value.Gauge{}
	}
	if kind.Twisted {
		kind.Conductors = max(kind.Conductors, 2)
	}
	return called, kind
}
