package noted

import (
	"strings"

	"contralay/model/wirelist/arrow"
)

// Thumbs write the head of an arrow alone.
//
//	panel 4 > pump 1, red
//	panel 5 >> horn, blue

// heads draws the shaft of the arrows that are a head alone between blanks, where two lines or more have one such each and most of them
// a number at one side of it.
func (n *notes) heads() {
	var at []int
	numbers := 0
	n.texts(func(i int, text string) bool {
		front, back, ok := headIn(text)
		if !ok {
			return true
		}
		at = append(at, i)
		if strings.ContainsAny(front+back, "0123456789") {
			numbers++
		}
		return true
	})
	if len(at) < 2 || 2*numbers < len(at) {
		return
	}
	for _, i := range at {
		front, back, _ := headIn(n.rows[i].Cells[0])
		n.set(i, front+" -> "+back)
	}
}

// headIn parts a text at the one head of an arrow in it. What stands behind is a name: "current > 5 A" compares two figures.
func headIn(text string) (front, back string, ok bool) {
	if !strings.ContainsAny(text, ">›»") {
		return text, "", false
	}
	if _, to := arrow.In(text); to > 0 {
		return text, "", false
	}
	for _, sign := range []string{" > ", " >> ", " › ", " » "} {
		if strings.Count(text, sign) != 1 {
			continue
		}
		front, back, _ = strings.Cut(text, sign)
		front, back = strings.TrimSpace(front), strings.TrimSpace(back)
		if front == "" || back == "" || strings.ContainsAny(back[:1], "0123456789.,=") || strings.ContainsAny(front+back, "<>") {
			return text, "", false
		}
		return front, back, true
	}
	return text, "", false
}
