package paper

import (
	"bytes"
	"html"

	"contralay/model/visible"
)

// safe is the last gate of a page: whatever would command a terminal that shows the file, or turn
// the text round it in a browser, stands there as a sign.
func safe(page []byte) []byte {
	if bytes.IndexFunc(page, commands) < 0 {
		return page
	}
	var b bytes.Buffer
	for _, r := range string(page) {
		if commands(r) {
			b.WriteString(html.EscapeString(visible.Sign(r)))
			continue
		}
		b.WriteRune(r)
	}
	return b.Bytes()
}

func commands(r rune) bool { return r != '\n' && visible.Command(r) }
