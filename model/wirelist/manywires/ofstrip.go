package manywires

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/toldcells"
	"contralay/model/wirelist/words"
)

// ofStrip reads lines that begin with a terminal and tell the wires on both sides of it, the same words for the sides in every line.
//
//	X1.4  outside brown 2.5 from mains L1  |  inside black 2.5 to Q1.1
//	X1.5  empty
func ofStrip(texts []string, unit string) (told toldcells.Told, ok bool) {
	short := shortWords(texts)
	for _, sign := range []string{" | ", " / ", "; "} {
		var lines []toldcells.Line
		both, side := 0, map[string]int{}
		for i, text := range texts {
			end, rest, _ := strings.Cut(text, " ")
			if !toldcells.IsEnd(end) {
				continue
			}
			if rest = strings.TrimSpace(rest); name.StateOf(rest) != name.Used {
				lines = append(lines, toldcells.Line{Row: i, Cells: []string{end, rest}})
				continue
			}
			parts := strings.Split(rest, sign)
			if len(parts) != 2 {
				continue
			}
			both++
			from := len(lines)
			free := ""
			for k, p := range parts {
				first, of, _ := strings.Cut(strings.TrimSpace(p), " ")
				side[string(rune('0'+k))+first]++
				if of = strings.TrimSpace(of); name.StateOf(of) != name.Used {
					free = strings.TrimSpace(p)
					continue
				}
				lines = append(lines, toldcells.Line{Row: i, Note: first, Cells: append([]string{end}, inCells(of, short)...)})
			}
			if free != "" && len(lines) > from {
				lines[from].Note += "; " + free // "inside nothing"
			}
		}
		if both < least || len(side) != 2 {
			continue
		}
		told = toldcells.Tell(lines, unit, true)
		good, coloured, free := told.Good()
		if 5*good >= 4*len(told.Wires) && 2*coloured >= good && coloured+free == len(told.Wires) {
			return told, true
		}
	}
	return told, false
}

// shortWords are the short forms that the list says it has for the words before ends, "v. = von".
func shortWords(texts []string) map[string]string {
	of := map[string]string{}
	for _, text := range texts {
		for part := range strings.SplitSeq(text, ", ") {
			short, long, ok := strings.Cut(part, "=")
			short, long = strings.TrimSpace(short), table.Fold(strings.TrimSpace(long))
			if !ok || strings.Contains(short, " ") || short == "" {
				continue
			}
			if _, leads := toldcells.BehindLead(long + " X1"); leads || words.ComesFrom(long) {
				of[short] = long
			}
		}
	}
	return of
}

// inCells parts "brown 2.5 from mains L1 (up)" before the word that leads to the end, and before its brackets.
func inCells(text string, short map[string]string) (cells []string) {
	w := strings.Fields(text)
	for i := range w {
		if long := short[w[i]]; long != "" {
			w[i] = long
		}
	}
	text = strings.Join(w, " ")
	for i := 1; i < len(w); i++ {
		if _, leads := toldcells.BehindLead(strings.Join(w[i:], " ")); leads {
			cells, text = []string{strings.Join(w[:i], " ")}, strings.Join(w[i:], " ")
			break
		}
	}
	if open := strings.LastIndexByte(text, '('); open > 0 && strings.HasSuffix(text, ")") {
		return append(cells, strings.TrimSpace(text[:open]), text[open:])
	}
	return append(cells, text)
}
