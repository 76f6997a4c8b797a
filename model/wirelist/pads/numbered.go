package pads

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// NumberedPin parts a cell that says the number and the name of a cavity: "1 GND", "3: CLK", "hub-gnd (6)"; more is what stands in
// further brackets. pin is "" where it is none.
func NumberedPin(cell string) (pin, called, more string) {
	isNumber := func(s string) bool { return s != "" && len(s) <= 3 && strings.Trim(s, "0123456789") == "" }
	if first, rest, ok := strings.Cut(cell, " "); ok {
		if n := strings.TrimRight(first, ".:)-"); isNumber(n) {
			rest = strings.TrimSpace(strings.TrimLeft(rest, "-–:= "))
			if rest != "" && !isNumber(rest) && isNameOfPin(rest) {
				return n, strings.Trim(rest, "()"), ""
			}
		}
	}
	for rest := cell; ; {
		open := strings.LastIndexByte(rest, '(')
		if open < 1 || !strings.HasSuffix(rest, ")") {
			return "", "", ""
		}
		in := strings.TrimSpace(rest[open+1 : len(rest)-1])
		front := strings.TrimSpace(rest[:open])
		if n := strings.TrimSpace(strings.TrimPrefix(strings.ToLower(in), "pin")); isNumber(n) && front != "" && !name.IsDesignator(front) {
			return n, front, more
		}
		if more == "" {
			more = in
		} else {
			more = in + "; " + more
		}
		rest = front
	}
}

// isNameOfPin reports whether a text is one word, or more that are no range, unit or further cavity.
func isNameOfPin(text string) bool {
	first := strings.TrimLeft(text, "(")
	if first == "" {
		return false
	}
	switch w, _, _ := strings.Cut(strings.ToLower(first), " "); w {
	case "to", "and", "or", "x", "mm", "a", "v", "awg", "bis", "&", "of":
		return false
	}
	return len(strings.Fields(text)) < 4 && !strings.ContainsAny(text[:1], "0123456789,/&+-")
}

// IsAny reports whether a cell says that any cavity of a kind will do: "any", "Any ground".
func IsAny(cell string) bool {
	f := strings.Trim(table.Fold(cell), " .:()[]*")
	for _, w := range []string{"any", "either", "whichever", "beliebig", "n'importe", "cualquiera", "cualquier", "qualsiasi"} {
		if f == w || strings.HasPrefix(f, w+" ") {
			return true
		}
	}
	return false
}
