package name

import (
	"cmp"
	"strconv"
	"strings"

	"contralay/model/wirelist/pinword"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// SplitPins parts a cell that names several cavities of one net: "L,M", "L & M", "L/M",
// "1+2", "L and M", "A14 A15", and two lines of a cell. One cavity gives itself, "+" and
// "B+" too. A range is one name here: spread parts it.
func SplitPins(cell string) []string {
	if IsCavity(cell) || pinword.IsOne(cell) || pinword.IsVolts(cell) {
		return []string{cell}
	}
	for _, word := range joiningWords() {
		cell = strings.ReplaceAll(cell, word, ",")
	}
	var pins []string
	for _, p := range strings.FieldsFunc(cell, func(r rune) bool { return r == ',' || r == ';' || r == '&' }) {
		from := 0
		for i := 1; i+1 < len(p); i++ {
			// + and / are names of cavities too: they part only what stands on both sides.
			if (p[i] == '+' || p[i] == '/') && strings.Trim(p[from:i], " +-/") != "" && strings.Trim(p[i+1:], " +-/") != "" {
				pins = append(pins, strings.TrimSpace(p[from:i]))
				from = i + 1
			}
		}
		p = WithoutPinWord(strings.TrimSpace(p[from:]))
		switch fields := strings.Fields(p); {
		case p == "":
		case alikeCavities(fields):
			pins = append(pins, fields...)
		default:
			pins = append(pins, p)
		}
	}
	return pins
}

func joiningWords() []string { return []string{" and ", " und ", " et ", " e ", " y "} }

// WithoutPinWord takes the word for a cavity off its name: "pin 3", "cav. A", "#7".
func WithoutPinWord(p string) string {
	if words := strings.Fields(p); len(words) == 2 && IsPinWord(table.Fold(words[0])) {
		return words[1]
	}
	f := table.Fold(p)
	for _, lead := range []string{"pin", "cavity", "cav", "way", "terminal", "kammer", "broche", "#"} {
		rest, ok := strings.CutPrefix(f, lead)
		if name := strings.TrimLeft(rest, " .:#"); ok && len(f) == len(p) && name != "" && (name != rest || lead == "#") {
			return p[len(p)-len(name):]
		}
	}
	return p
}

// IsCavity reports whether s is a name as the cavities of connectors have them: up to two
// letters, up to three digits, one letter more: "7", "A12", "b", "12a".
func IsCavity(s string) bool {
	lead, digits, tail := cavityParts(s)
	return len(s) > 0 && len(lead) <= 2 && len(digits) <= 3 &&
		(len(tail) == 0 || len(tail) == 1 && value.IsLetter(tail[0]) && digits != "") && (digits != "" || len(lead) == 1)
}

// cavityParts is the letters, the digits behind them, and what is left.
func cavityParts(s string) (lead, digits, tail string) {
	i := 0
	for i < len(s) && value.IsLetter(s[i]) && s[i] < 0x80 {
		i++
	}
	j := i
	for j < len(s) && value.IsDigit(s[j]) {
		j++
	}
	return s[:i], s[i:j], s[j:]
}

// alikeCavities reports whether two names or more are built alike, as those of one connector are.
// "A 1" is one cavity, written apart.
func alikeCavities(all []string) bool {
	if len(all) < 2 || !IsCavity(all[0]) {
		return false
	}
	lead, digits, tail := cavityParts(all[0])
	for _, s := range all[1:] {
		l, d, t := cavityParts(s)
		if !IsCavity(s) || len(l) != len(lead) || (d == "") != (digits == "") || len(t) != len(tail) {
			return false
		}
	}
	return true
}

// CompareCavities sorts 2 before 10 and A before a.
func CompareCavities(a, b string) int {
	number := func(s string) (int, bool) {
		n := 0
		for _, c := range []byte(s) {
			if !value.IsDigit(c) || n > 1e8 {
				return 0, false
			}
			n = 10*n + int(c-'0')
		}
		return n, s != ""
	}
	m, ok1 := number(a)
	n, ok2 := number(b)
	if ok1 && ok2 {
		return cmp.Or(cmp.Compare(m, n), cmp.Compare(a, b))
	}
	return cmp.Compare(a, b)
}

// Ordinal is the place of a cavity in its row, 1 for "1" and "A"; 0 for any other.
func Ordinal(pin string) int {
	if n, err := strconv.Atoi(pin); err == nil {
		return n
	}
	if len(pin) == 1 && value.IsLetter(pin[0]) {
		return int(pin[0]|0x20-'a') + 1
	}
	return 0
}
