package sidehead

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/plugword"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// OfWall says of each heading of a list of what is on both sides of a wall whether it is of the near side, 0, of the far one, 1, or of
// neither, −1. The sides are called as walls have them, "Inside" and "Outside", or after what is there.
//
//	Pin | Cab side | Box side
//	Pin | Hull side conn | Hull pin | Mast side conn | Mast pin
func OfWall(heads []string) []int {
	sides, names := make([]int, len(heads)), []string(nil)
	for i, h := range heads {
		sides[i] = words.SideOfWall(h)
		if of, side := after(h); side && of != "" && !slices.Contains(names, of) {
			names = append(names, of)
		}
	}
	if slices.Contains(sides, 0) && slices.Contains(sides, 1) || len(names) != 2 || shareWord(names[0], names[1]) {
		return sides
	}
	for i, h := range heads {
		of, _ := after(h)
		sides[i] = slices.Index(names, of)
	}
	return sides
}

// after is what a heading of one side names it after, and whether it says that it is of a side: "cab" and true of "Cab side conn", "motor"
// and true of "Lado motor" and "Motorseite", "cab" alone of "Cab pin".
func after(head string) (of string, side bool) {
	var left []string
	for _, w := range name.Words(table.Fold(name.WithoutBrackets(head))) {
		if !plugword.Is(w) && !name.IsPinWord(w) && !words.IsShortPlug(w) {
			left = append(left, w)
		}
	}
	n := len(left)
	switch {
	case n == 0:
		return "", false
	case IsEndWord(left[0]):
		left, side = left[1:], true
	case IsEndWord(left[n-1]):
		left, side = left[:n-1], true
	case n == 1:
		if of, side = words.BeforeSide(left[0]); side {
			return of, true
		}
	}
	return strings.Join(left, " "), side
}

// shareWord reports whether a word stands in both texts: "seal cab" and "seal box" are of the seals.
func shareWord(a, b string) bool {
	of := strings.Fields(b)
	return slices.ContainsFunc(strings.Fields(a), func(w string) bool { return slices.Contains(of, w) })
}
