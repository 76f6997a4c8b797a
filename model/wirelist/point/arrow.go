package point

import "contralay/model/wirelist/arrow"

// CutArrow parts a text at the one arrow in it; far is "" where it has none, or several.
func CutArrow(text string) (front, far string) {
	front, far, _ = arrow.Cut(text)
	return front, far
}
