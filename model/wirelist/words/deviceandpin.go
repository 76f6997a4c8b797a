package words

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// SayDeviceAndPin reports whether two headings are of a device and its cavities in so many words, in either order: "Dash connector" and
// "Dash pin", "Sensor name" and "Sensor pin".
func SayDeviceAndPin(a, b string) bool {
	of, last := withoutLastWord(a)
	other, word := withoutLastWord(b)
	return of != "" && of == other && name.IsPinWord(last) != name.IsPinWord(word)
}

// withoutLastWord is a heading without its last word, and that word, folded; both "" where it has one word.
func withoutLastWord(head string) (of, last string) {
	w := name.Words(name.WithoutBrackets(table.Fold(head)))
	if len(w) < 2 {
		return "", ""
	}
	return strings.Join(w[:len(w)-1], " "), w[len(w)-1]
}
