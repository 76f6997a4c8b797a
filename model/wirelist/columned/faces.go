package columned

import (
	"slices"
	"strconv"
	"strings"
)

// A manual draws how the face of a plug looks. Its lines are no columns of the table below, and the columns are found without them.
//
//	    ____________________
//	   |  1   2   3   4   5 |
//	   |  6   7   8   9  10 |
//	   |_______      _______|
//	           |____|
//
//	Pin   Function   Colour
//	1     Supply     red

// Face is a line of such a drawing.
type Face struct {
	Line int // from 1
	Text string
}

// WithoutFaces empties the lines of such drawings. One stands between empty lines and holds each number from 1 on just once, with walls
// of strokes or a dot for most of them, and nothing else but a word for a side of the plug, "(key)". Headings stand below it.
func WithoutFaces(text string) (string, []Face) {
	if !strings.ContainsAny(text, "_|o°•●○◯□■*") || strings.Count(text, "\n") < 3 {
		return text, nil
	}
	lines := strings.Split(text, "\n")
	var faces []Face
	for i := 0; i < len(lines); i++ {
		var f face
		end := i
		for end < len(lines) && strings.TrimSpace(lines[end]) != "" {
			if f.ok = f.take(lines[end]); !f.ok {
				break
			}
			end++
		}
		if f.ok && f.whole() && headed(lines[end:]) {
			for k := i; k < end; k++ {
				faces = append(faces, Face{k + 1, strings.Join(strings.Fields(lines[k]), " ")})
				lines[k] = ""
			}
		}
		for end < len(lines) && strings.TrimSpace(lines[end]) != "" {
			end++ // what stands together is a drawing or is none
		}
		i = end
	}
	if faces == nil {
		return text, nil
	}
	return strings.Join(lines, "\n"), faces
}

// headed reports whether the first line behind a drawing can be the headings of columns: gaps part it, and it has no number.
func headed(lines []string) bool {
	for _, l := range lines {
		if strings.TrimSpace(l) != "" {
			return len(Gapped(l)) > 1 && !strings.ContainsAny(l, "0123456789")
		}
	}
	return false
}

// face is such a drawing on its way.
type face struct {
	ok      bool
	numbers []int
	dots    int
	walls   int // lines of strokes alone
}

// take takes in a line; false where it has anything that such a drawing has not.
func (f *face) take(line string) bool {
	const longest = 120 // bytes (no source)
	if len(line) > longest || strings.ContainsAny(line, ",;?!&%\"$<>") {
		return false
	}
	bare := strings.Trim(line, wallSigns+" \t\r")
	if bare == "" {
		if strings.ContainsAny(line, "_-=─━‾¯") {
			f.walls++
		}
		return true
	}
	for w := range strings.FieldsSeq(faceParts.Replace(bare)) {
		if k, err := strconv.Atoi(w); err == nil && k > 0 && len(w) < 4 {
			f.numbers = append(f.numbers, k)
			continue
		}
		switch {
		case strings.Contains(" o O ° • ● ○ ◯ * x X □ ■ ", " "+w+" "):
			f.dots++
		case strings.Trim(w, wallSigns) == "", IsFaceWord(strings.ToLower(w)):
		default:
			return false
		}
	}
	return true
}

// whole reports whether the lines draw a plug: its numbers count from 1, each once, and something is drawn round them.
func (f *face) whole() bool {
	n := len(f.numbers)
	if n < 2 || f.walls == 0 && 2*f.dots < n {
		return false
	}
	slices.Sort(f.numbers)
	return f.numbers[0] == 1 && f.numbers[n-1] == n && len(slices.Compact(f.numbers)) == n
}

// wallSigns are what walls are drawn with.
const wallSigns = "|_-=/\\+.:'`^~¯‾─━│┃┌┐└┘├┤┬┴┼╭╮╰╯()[]{}"

// faceParts writes blanks for the walls between cavities.
var faceParts = strings.NewReplacer("(", " ", ")", " ", "[", " ", "]", " ", "|", " ", "│", " ", "┃", " ", "/", " ", "\\", " ", "_", " ")

// IsFaceWord reports whether a folded word says what is at a side of a plug that is drawn.
func IsFaceWord(w string) bool {
	switch w {
	case "key", "keyway", "key way", "latch", "tab", "clip", "notch", "lock", "lever", "top", "bottom", "front", "rear", "up", "down",
		"nose", "nase", "raste", "riegel", "oben", "unten", "detrompeur", "ergot", "haut", "bas", "arriba", "abajo", "chiave", "sopra",
		"sotto":
		return true
	}
	return false
}
