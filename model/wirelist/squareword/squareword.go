// Package squareword writes mm² for the words that people of many languages have for it: "1,5 kvadrat", "2.5 sq", "4 mm carré", "0,75er".
package squareword

import (
	"strings"
	"unicode/utf8"

	"contralay/model/wirelist/signs"
	"contralay/model/wirelist/table"
)

// Plain writes mm² behind a number for ² alone, which would be read as one more digit, "0,35²", and for the words for it. Words that also
// mean something else count behind decimals, and where nothing but a mark follows: "2 quadri elettrici" are two panels.
func Plain(text string) string {
	before, after, found := strings.Cut(text, "²")
	num := strings.TrimRight(before, " ")
	if found && num != "" && isDigit(num[len(num)-1]) {
		return num + " mm²" + after
	}
	if found || !mayHold(text) {
		return text
	}
	all := strings.Fields(text)
	for i := range all {
		number, unit := parted(all[i])
		if number == "" {
			continue
		}
		end := i + 1
		if unit == "" && end < len(all) {
			unit, end = all[end], end+1
		}
		if n := squares(number, unit, all[end:]); n >= 0 {
			end += n
			last := all[end-1]
			mark := last[len(strings.TrimRight(last, ".,;:)")):]
			front := append(append([]string{}, all[:i]...), number, "mm²"+strings.TrimLeft(mark, "."))
			return strings.Join(append(front, all[end:]...), " ")
		}
	}
	return text
}

// mayHold reports whether a text has a number with a letter behind it that a word for mm² or for a millimetre begins with, which few do.
func mayHold(text string) bool {
	for i := 1; i < len(text); i++ {
		if !isDigit(text[i-1]) || isDigit(text[i]) {
			continue
		}
		for i < len(text) && strings.IndexByte(" .,-", text[i]) >= 0 {
			i++
		}
		if i < len(text) && (begins[text[i]] || text[i] >= utf8.RuneSelf) {
			return true
		}
	}
	return false
}

// Whole is Plain of a cell that says a size and nothing else: "4er" is 4 mm² there.
func Whole(text string) string {
	if number, unit := parted(strings.TrimSpace(text)); number != "" && isEr(unit) {
		return number + " mm²"
	}
	return Plain(text)
}

// squares is how many of the words behind a number and its unit are the rest of the word for mm²; -1 where it is none.
func squares(number, unit string, rest []string) int {
	unit = folded(unit)
	next := func(k int) string {
		if k < len(rest) {
			return folded(rest[k])
		}
		return ""
	}
	last := func(n int) bool { return n >= len(rest) || strings.ContainsAny(rest[n][:1], ",;(/-") }
	switch {
	case plain[unit]:
		return 0
	case isEr(unit) && strings.ContainsAny(number, ".,"):
		return 0
	case mm[unit] && joins[next(0)] && (plain[next(1)] || doubtful[next(1)]):
		return 2
	case mm[unit] && (plain[next(0)] || doubtful[next(0)]):
		return 1
	case doubtful[unit] && mm[next(0)]:
		return 1
	case doubtful[unit] && (last(0) || strings.ContainsAny(number, ".,")):
		return 0
	}
	return -1
}

// parted parts "1,5kvadrat" in its number and the word behind it; number is "" where it begins with none.
func parted(word string) (number, unit string) {
	word = strings.TrimLeft(word, "(")
	unit = figures.TrimLeft(word)
	number = word[:len(word)-len(unit)]
	if number == "" || !isDigit(number[0]) || !isDigit(number[len(number)-1]) {
		return "", ""
	}
	return number, strings.TrimLeft(unit, "-")
}

// Signs round a word, and those of numbers.
var roundWords, figures = signs.Of(".,;:()"), signs.Of("0123456789.,")

func folded(w string) string { return roundWords.Trim(table.Fold(w)) }

func isDigit(c byte) bool { return c >= '0' && c <= '9' }

// isEr is the ending that German has for a size: "1,5er".
func isEr(unit string) bool { return folded(unit) == "er" }
