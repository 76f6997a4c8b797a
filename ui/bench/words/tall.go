package words

import "strings"

// TallH is how many rows a tall line takes, whatever characters the terminal has.
const TallH = 3

// strokes are capitals as lines of three or four cells in three rows, where only plain characters
// are to be had; figures are those of the seven segments. O, I and S are told from 0, 1 and 5.
var strokes = map[rune][TallH]string{
	'A': {" _ ", "|_|", "| |"}, 'B': {" _ ", "|_)", "|_)"}, 'C': {" _ ", "|  ", "|_ "}, 'D': {" _ ", "| \\", "|_/"},
	'E': {" _ ", "|_ ", "|_ "}, 'F': {" _ ", "|_ ", "|  "}, 'G': {" __", "| _", "|_|"}, 'H': {"   ", "|_|", "| |"},
	'I': {"___", " | ", "_|_"}, 'J': {"   ", "  |", "\\_|"}, 'K': {"   ", "|/ ", "|\\ "}, 'L': {"   ", "|  ", "|_ "},
	'M': {"    ", "|\\/|", "|  |"}, 'N': {"    ", "|\\ |", "| \\|"}, 'O': {" _ ", "/ \\", "\\_/"}, 'P': {" _ ", "|_|", "|  "},
	'Q': {" _ ", "/ \\", "\\_X"}, 'R': {" _ ", "|_|", "| \\"}, 'S': {" _ ", "(_ ", " _)"}, 'T': {"___", " | ", " | "},
	'U': {"   ", "| |", "|_|"}, 'V': {"    ", "\\  /", " \\/ "}, 'W': {"    ", "|  |", "|/\\|"}, 'X': {"   ", "\\ /", "/ \\"},
	'Y': {"   ", "\\ /", " | "}, 'Z': {"__ ", " / ", "/_ "}, ':': {" ", ".", "."}, '+': {"   ", "_|_", " | "},
	'_': {"   ", "   ", "___"}, '(': {" _", "/ ", "\\_"}, ')': {"_ ", " \\", "_/"}, '=': {"   ", "___", "___"},
}

// Tall draws a line of capitals and figures in TallH rows, of half blocks or of plain characters.
// Nil where it does not fit w cells, or holds what cannot be drawn: nothing of it is left out.
func Tall(text string, w int, ascii bool) []string {
	if text == "" {
		return nil
	}
	if !ascii {
		for _, r := range strings.ToUpper(text) {
			if _, ok := letterRows[r]; !ok {
				return nil
			}
		}
		return Letters(text, w, false)
	}
	out := make([]string, TallH)
	for _, r := range strings.ToUpper(text) {
		glyph, ok := strokes[r]
		if !ok {
			glyph, ok = segments(r)
		}
		if !ok {
			return nil
		}
		for k := range out {
			out[k] += glyph[k] + " "
		}
	}
	if len(out[0])-1 > w {
		return nil
	}
	for k := range out {
		out[k] = strings.TrimRight(out[k], " ")
	}
	return out
}
