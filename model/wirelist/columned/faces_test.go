package columned_test

import (
	"strings"
	"testing"

	"contralay/model/wirelist/columned"
)

// A drawing is taken out with all its lines; what has anything else in it stays.
func TestWithoutFaces(t *testing.T) {
	const plug = " _________\n| 1  2  3 |\n|         |\n| 4  5  6 |\n|___   ___|\n    |_|\n"
	for text, want := range map[string]int{
		"Plug A\n\n" + plug + "\nPin  Use\n1  up\n":                                  6,
		"Plug A\n\n1  2  3\no  o  o\n\nPin  Use\n1  up\n":                            2,
		"Plug A\n" + plug + "\nPin  Use\n1  up\n":                                    0, // not by itself
		"Plug A\n\n" + strings.Replace(plug, "6", "7", 1) + "\nPin  Use\n1  up\n":    0, // no count
		"Plug A\n\n" + strings.Replace(plug, "6", "lamp", 1) + "\nPin  Use\n1  up\n": 0,
		"Pin | To\n\n1 | 2\n3 | 4\n\nend\n":                                          0, // nothing is drawn round them
		"Plug A\n\n  (key)\n -----\n|1 2 3|\n -----\n\nPin  Use\n1  up\n":            4,
		"Plug A\n\n" + plug + "\n1 = up   red\n2 = down   blue\n":                    0, // no headings
	} {
		rest, faces := columned.WithoutFaces(text)
		if len(faces) != want || strings.Count(rest, "\n") != strings.Count(text, "\n") {
			t.Errorf("%q: %d lines, want %d: %v", text, len(faces), want, faces)
		}
	}
}
