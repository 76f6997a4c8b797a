package schema

import (
	"fmt"
	"strings"

	"contralay/model/visible"
)

// place says where a decoder is: the path that the scan of the text knows, and
// the words for a person.
type place struct{ path, where string }

func (p place) key(name string) place {
	shown := name
	if strings.ContainsFunc(name, notBare) {
		shown = visible.Quoted(name) // no control character reaches a terminal
	}
	return place{p.path + "." + name, comma(p.where, "key "+Short(shown))}
}

// notBare is what a TOML key may hold only in quotes.
func notBare(r rune) bool {
	return !(r >= 'a' && r <= 'z' || r >= 'A' && r <= 'Z' || r >= '0' && r <= '9' || r == '_' || r == '-')
}

// comma joins two parts of a place.
func comma(a, b string) string {
	if a == "" || b == "" {
		return a + b
	}
	return a + ", " + b
}

// calls is the word for the i-th (from 0) table of a kind.
func calls(what, id string, i int) string {
	switch {
	case id != "":
		return what + " " + visible.Quoted(Short(id))
	case what == "layer" && i == 0:
		return "centre"
	case what == "layer":
		return fmt.Sprintf("layer %d", i) // the first layer round the centre is layer 1
	}
	return fmt.Sprintf("%s no. %d", what, i+1)
}
