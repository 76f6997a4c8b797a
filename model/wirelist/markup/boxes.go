package markup

import "strings"

// upright are the signs that tables are drawn with up and down, level those from side to side, and the others where these meet.
const (
	uprights = "│┃║┆┊╎"
	levels   = "─━═┄┈╌"
	crosses  = "┼├┤┌┐└┘┬┴╞╡╪╔╗╚╝╠╣╦╩╬┏┓┗┛┣┫┳┻╋╤╧╟╢╫╒╕╘╛╓╖╙╜╭╮╯╰╥╨"
)

// withoutBoxes writes the drawn lines of a text with the signs of every keyboard.
func withoutBoxes(text string) string {
	const first, second = "\xe2\x94", "\xe2\x95" // every such sign begins with one of these
	if !strings.Contains(text, first) && !strings.Contains(text, second) || !strings.ContainsAny(text, uprights) {
		return text
	}
	lines := strings.Split(text, "\n")
	for i, l := range lines {
		if t := strings.TrimSpace(l); t != "" && strings.ContainsAny(l, uprights+crosses) &&
			(strings.ContainsAny(firstOf(t), uprights+crosses) || strings.Trim(t, levels+crosses+uprights+" ") == "") {
			lines[i] = strings.Map(keyed, l)
		}
	}
	return strings.Join(lines, "\n")
}

func firstOf(s string) string {
	for _, r := range s {
		return string(r)
	}
	return ""
}

// keyed is the sign of a keyboard for one that draws.
func keyed(r rune) rune {
	switch {
	case r < 0x2500 || r > 0x257f:
		return r
	case r == '═':
		return '='
	case strings.ContainsRune(uprights, r):
		return '|'
	case strings.ContainsRune(levels, r):
		return '-'
	case strings.ContainsRune(crosses, r):
		return '+'
	}
	return r
}
