package manywires

import (
	"strconv"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/plugword"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/toldcells"
)

// ofPlugs reads lines that begin with a plug and tell all wires of it, by their cavities or by their colours.
//
//	brake left, 2 way: black gnd / white cut
//	J3 (coils) 1 brown left coil, 2 red right coil, 3 key
func ofPlugs(texts []string, unit string) (told toldcells.Told, ok bool) {
	for _, sign := range signs {
		if told, ok = pinsOfPlugs(texts, sign, unit); ok {
			return told, true
		}
		if told, ok = tailsOfPlugs(texts, sign, unit); ok {
			return told, true
		}
	}
	return told, false
}

// pinsOfPlugs reads lines whose wires begin with their cavity each.
func pinsOfPlugs(texts []string, sign, unit string) (told toldcells.Told, ok bool) {
	var lines []toldcells.Line
	heads, named := 0, 0
	for i, text := range texts {
		if strings.Contains(text, ": ") && sign != " / " && sign != " | " {
			continue // other readers know it
		}
		plug, parts := pinParts(text, sign)
		if len(parts) < 2 {
			continue
		}
		called, aside := withoutAside(plug)
		heads++
		if isPlug(plug) {
			named++
		}
		for _, p := range parts {
			pin, rest, _ := strings.Cut(p, " ")
			lines = append(lines, toldcells.Line{Row: i, Of: called, Note: aside, Cells: []string{strings.TrimRight(pin, ":=."),
				strings.TrimSpace(rest)}})
			aside = ""
		}
	}
	if len(lines) < least || 2*named < heads {
		return told, false
	}
	told = toldcells.Tell(lines, unit, true)
	good, coloured, _ := told.Good()
	return told, 2*good >= len(told.Wires) && 2*coloured >= len(told.Wires)
}

// pinParts parts a line in its plug and its cavities; parts is nil where a part begins with none. The first stands behind a colon, or is
// the first number that 1 or A begins.
func pinParts(text, sign string) (plug string, parts []string) {
	plug, behind, ok := strings.Cut(text, ": ")
	if !ok {
		w := strings.Fields(text)
		for i := 1; i < len(w)-1 && i < 7 && !ok; i++ {
			if w[i] == "1" || w[i] == "A" || strings.HasPrefix(w[i], "1-") {
				plug, behind, ok = strings.Join(w[:i], " "), strings.Join(w[i:], " "), true
			}
		}
	}
	if !ok || plug == "" {
		return "", nil
	}
	last := 0
	for p := range strings.SplitSeq(strings.TrimRight(behind, ". "), sign) {
		pin, rest, _ := strings.Cut(strings.TrimSpace(p), " ")
		pin = strings.TrimRight(pin, ":=.")
		from, _, _ := strings.Cut(pin, "-")
		n, err := strconv.Atoi(from)
		if !name.IsCavity(from) || rest == "" || err == nil && n <= last {
			return "", nil
		}
		last = n
		parts = append(parts, strings.TrimSpace(p))
	}
	return plug, parts
}

// tailsOfPlugs reads lines whose wires begin with their colour each: of a plug whose cavities nobody knows.
func tailsOfPlugs(texts []string, sign, unit string) (told toldcells.Told, ok bool) {
	var lines []toldcells.Line
	heads, named, several := 0, 0, 0
	for i, text := range texts {
		plug, behind, ok := strings.Cut(text, ": ")
		if !ok || len(strings.Fields(plug)) > 7 || plug == "" {
			continue
		}
		heads++
		called, count := withoutCount(plug)
		if count != "" || isPlug(plug) {
			named++
		}
		parts := strings.Split(strings.TrimRight(behind, ". "), sign)
		if len(parts) > 1 {
			several++
		}
		for _, p := range parts {
			if first, _, _ := strings.Cut(strings.TrimSpace(p), " "); name.IsCavity(strings.TrimRight(first, ":=.")) {
				return told, false // other readers know it
			}
			lines = append(lines, toldcells.Line{Row: i, Of: called, Note: count, Cells: []string{strings.TrimSpace(p)}})
			count = ""
		}
	}
	if len(lines) < least || 2*named < heads || several < 2 {
		return told, false
	}
	told = toldcells.Tell(lines, unit, true)
	if _, n, _ := told.Good(); n == 0 {
		return told, false
	}
	coloured := 0
	for i := range told.Wires {
		w := &told.Wires[i]
		if w.Pin != "" || w.From != "" {
			return told, false
		}
		w.From, w.Of = w.Of, ""
		if w.Colour != "" {
			coloured++
		}
	}
	return told, 10*coloured >= 9*len(told.Wires) && 2*told.Named() >= len(told.Wires)
}

// withoutCount takes off a plug how many ways it has, "brake left, 2 way", or what kind it is, "motor, bullets".
func withoutCount(plug string) (called, count string) {
	at := strings.LastIndex(plug, ", ")
	if at < 0 {
		return plug, ""
	}
	return plug[:at], plug[at+2:]
}

// withoutAside takes off a plug what stands in brackets behind it.
func withoutAside(plug string) (called, aside string) {
	if at := strings.IndexByte(plug, '('); at > 0 && strings.HasSuffix(plug, ")") {
		return strings.TrimSpace(plug[:at]), strings.Trim(plug[at:], "()")
	}
	return plug, ""
}

// isPlug reports whether a text names a plug: with a designator, a word for one, or how many ways it has.
func isPlug(text string) bool {
	for i, s := range strings.Fields(text) {
		s = strings.Trim(s, ",.;:()")
		if name.IsDesignator(s) && strings.ToUpper(s) == s && i == 0 || plugword.Is(table.Fold(s)) ||
			i > 0 && (name.CountWord(table.Fold(s)) == "cavities" || name.IsPinWord(table.Fold(s))) {
			return true
		}
	}
	return false
}
