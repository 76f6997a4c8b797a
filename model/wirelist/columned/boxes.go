package columned

import "strings"

// WithoutBoxes takes the lines off that are drawn round the cells of a table, and makes one sign of those between them.
//
//	+-----+----------+      ┌─────┬──────────┐
//	| Pin | Signal   |      │ Pin │ Signal   │
//	+-----+----------+      ├─────┼──────────┤
func WithoutBoxes(text string) string {
	if !strings.Contains(text, "+--") && !strings.Contains(text, "--+") && !hasSide(text) {
		return text
	}
	text = strings.NewReplacer("│", "|", "┃", "|", "║", "|", "┆", "|", "┊", "|", "╎", "|").Replace(text)
	if strings.Count(text, "|") < 4 {
		return text
	}
	lines := strings.Split(text, "\n")
	for i, l := range lines {
		if strings.ContainsAny(l, "-─═=━") && strings.Trim(l, "+-=| \t─═━┼├┤┌┐└┘┬┴╞╡╪╔╗╚╝╠╣╦╩╬┏┓┗┛┣┫┳┻╋╤╧╟╢╫") == "" {
			lines[i] = ""
		}
	}
	return strings.Join(lines, "\n")
}

// hasSide reports whether a text has the side of a box; each of them begins with one byte, which few texts have.
func hasSide(text string) bool {
	return strings.IndexByte(text, "│"[0]) >= 0 && strings.ContainsAny(text, "│┃║┆┊╎")
}
