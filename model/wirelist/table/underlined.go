package table

import "strings"

// underlined is the level of a heading of Markdown that is written as a line of text with a line of one sign below it; 0 where a
// line is none. A sentence above a line across the page is no heading.
//
//	Winch box
//	=========
//
//	Lid connector
//	-------------
func underlined(lines []string, i int) int {
	text := strings.TrimSpace(lines[i])
	if text == "" || i+1 >= len(lines) || i > 0 && strings.TrimSpace(lines[i-1]) != "" || isPoint(text) ||
		strings.Contains(text, "|") || strings.ContainsAny(text[len(text)-1:], ".!?;,") || len(strings.Fields(text)) > mostWords {
		return 0
	}
	switch rule := strings.TrimRight(lines[i+1], " \t\r"); {
	case len(rule) < 3:
		return 0
	case strings.Trim(rule, "=") == "":
		return 1
	case strings.Trim(rule, "-") == "":
		return 2
	}
	return 0
}

// mostWords is how many words a heading has at the most (no source).
const mostWords = 12
