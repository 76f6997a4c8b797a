package noted

import (
	"slices"
	"strconv"
	"strings"

	"contralay/model/wirelist/columned"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/signs"
	"contralay/model/wirelist/table"
)

// Above the list of a plug stands how its face looks: a dot and a number for each cavity, and where its key is. No wire comes of it.
//
//	   o 1    o 2
//	o 4          o 3
//	      (key)
//
//	PIN   WHAT    OTHER END
//	1     SUPPLY  FUSE 4

// sketches takes the lines of such drawings out: two or more, each right below the other, with each number from 1 on just once and a dot
// beside most of them, or above headings; above headings one line with a dot for each number does.
func (n *notes) sketches(h shape.Headings) (left []table.Row) {
	for i := 0; i < len(n.rows); i++ {
		end := i
		var numbers []int
		dots := 0
		for end < len(n.rows) && (end == i || n.rows[end].Line <= n.rows[end-1].Line+2) {
			more, dotted, ok := drawnIn(n.rows[end])
			if !ok {
				break
			}
			numbers, dots, end = append(numbers, more...), dots+dotted, end+1
		}
		if end == i || len(numbers) < 2 || end-i < 2 && (dots < len(numbers) || !n.headedBelow(h, end)) {
			i = max(i, end-1)
			continue
		}
		whole := slices.Clone(numbers)
		slices.Sort(whole)
		if whole[0] != 1 || whole[len(whole)-1] != len(slices.Compact(whole)) || len(whole) != len(numbers) ||
			2*dots < len(numbers) && !n.headedBelow(h, end) {
			i = end - 1
			continue
		}
		for i > 0 && n.rows[i-1].Line+2 >= n.rows[i].Line && isPartOfFace(n.rows[i-1]) {
			i--
		}
		for end < len(n.rows) && isPartOfFace(n.rows[end]) {
			end++
		}
		left = append(left, n.rows[i:end]...)
		n.rows, n.own = slices.Delete(slices.Clone(n.rows), i, end), true
		i--
	}
	return left
}

// headedBelow reports whether the next row that is no text names columns.
func (n *notes) headedBelow(h shape.Headings, at int) bool {
	for ; at < len(n.rows); at++ {
		if len(n.rows[at].Cells) > 1 {
			return h.IsHead(n.rows[at])
		}
	}
	return false
}

// inNoDrawing are signs that no cell of such a drawing has: all letters but o and x, and some others.
var inNoDrawing = signs.Of("abcdefghijklmnpqrstuvwyzABCDEFGHIJKLMNPQRSTUVWYZ,;:=")

// drawnIn are the numbers of a line of such a drawing, and how many dots stand beside them; ok is false where there is anything else.
func drawnIn(r table.Row) (numbers []int, dots int, ok bool) {
	const most = 40 // bytes of a cell (no source)
	if r.Level > 0 {
		return nil, 0, false
	}
	for _, c := range r.Cells {
		if len(c) > most || strings.Contains(c, "  ") || inNoDrawing.In(c) {
			return nil, 0, false // most rows
		}
	}
	for _, c := range r.Cells {
		if strings.ContainsAny(c, "()[]|") {
			c = apart.Replace(c)
		}
		for w := range strings.FieldsSeq(c) {
			if k, err := strconv.Atoi(w); err == nil && k > 0 && len(w) < 4 {
				numbers = append(numbers, k)
				continue
			}
			switch w {
			case "o", "O", "°", "•", "●", "○", "◯", "*", "x", "X", "(", "[", "□", "■":
				dots++
			case ")", "]", "|", "/", "\\", "-", "--", "---", "_", "__", "___", "+", ".", "'":
			default:
				return nil, 0, false
			}
		}
	}
	return numbers, dots, len(numbers) > 0
}

// apart writes blanks round the signs of such a drawing.
var apart = strings.NewReplacer("(", " ( ", ")", " ) ", "[", " [ ", "]", " ] ", "|", " | ")

// isPartOfFace reports whether a line beside such a drawing says what is at that side of the plug: "(key)", "latch".
func isPartOfFace(r table.Row) bool {
	if len(r.Cells) != 1 {
		return false
	}
	text := r.Cells[0]
	if strings.Trim(text, "-_=/\\|+.' ") == "" {
		return true
	}
	return columned.IsFaceWord(strings.Trim(table.Fold(text), "()[]<>^-_=|*. "))
}
