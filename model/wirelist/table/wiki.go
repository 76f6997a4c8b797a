package table

import "strings"

// Tables as wikis write them, turned into those of Markdown, each line where it stood.

// wikiGap is a line of a wiki's table that holds nothing, and does not part it.
const wikiGap = "\x00"

// withoutWiki gives a text with its tables of a wiki as tables of Markdown; any other text as it is.
//
//	{| class="wikitable"          ^ Pin ^ Signal ^
//	! Pin !! Signal               | 1   | Supply |
//	|-
//	| 1 || Supply
//	|}
func withoutWiki(text string) string {
	media, doku := strings.Contains(text, "\n{|"), strings.Contains(text, "\n^ ")
	if !media && !doku {
		return text
	}
	lines := strings.Split(text, "\n")
	in, at, head := false, -1, false // within a table; the line that the row in hand began in, and whether it is the headings
	for i, line := range lines {
		l := strings.TrimSpace(line)
		switch {
		case doku && strings.HasPrefix(l, "^") && strings.Count(l, "^") > 2:
			lines[i] = strings.ReplaceAll(l, "^", "|")
		case !media:
		case !in && strings.HasPrefix(l, "==") && strings.HasSuffix(l, "=="):
			lines[i] = strings.Repeat("#", min(6, len(l)-len(strings.TrimLeft(l, "=")))) + " " + strings.Trim(l, "= ")
		case strings.HasPrefix(l, "{|"):
			in, at, lines[i] = true, -1, wikiGap
		case in && strings.HasPrefix(l, "|}"):
			in, lines[i] = false, ""
		case in && (strings.HasPrefix(l, "|-") || strings.HasPrefix(l, "|+")):
			lines[i] = wikiGap
			if at >= 0 && head {
				lines[i] = "|--|--|"
			}
			at, head = -1, false
		case in && (strings.HasPrefix(l, "!") || strings.HasPrefix(l, "|")):
			head = head || l[0] == '!'
			row := "| " + strings.NewReplacer("!!", "|", "||", "|").Replace(l[1:])
			if lines[i] = row + " |"; at >= 0 { // each cell on a line of its own
				lines[at], lines[i] = strings.TrimSuffix(lines[at], "|")+row+" |", wikiGap
			} else {
				at = i
			}
		}
	}
	return strings.Join(lines, "\n")
}
