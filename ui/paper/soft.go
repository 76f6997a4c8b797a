package paper

import (
	"bytes"
	"html"
	"html/template"
	"strings"
	"unicode"

	"contralay/model/visible"
)

// shortWord is how many characters in one go a cell always has room for: part numbers
// in the usual forms stay whole (no source).
const shortWord = 14

// mostID is how many characters of a first cell stay on one line (no source).
const mostID = 24

// soft is text for a cell of the page with places where a long word may break: after
// a stroke, a dot, a comma, a colon or an underscore, and else after every shortWord
// characters. Without them one long part number pushes a table over the edge of the paper.
// Spaces and hyphens break by themselves.
func soft(s string) template.HTML {
	words := strings.FieldsFunc(s, breaks)
	worst := 0
	for _, w := range words {
		worst = max(worst, len(w))
	}
	if worst <= shortWord {
		return template.HTML(html.EscapeString(s))
	}
	var b strings.Builder
	runes := []rune(s)
	for i := 0; i < len(runes); {
		end := i
		for end < len(runes) && !breaks(runes[end]) {
			end++
		}
		word, run := runes[i:end], 0
		for k, r := range word {
			b.WriteString(html.EscapeString(string(r)))
			run++
			if len(word) > shortWord && k < len(word)-1 && (run == shortWord || strings.ContainsRune("/.,:_", r)) {
				b.WriteString("<wbr>")
				run = 0
			}
		}
		if end < len(runes) {
			b.WriteString(html.EscapeString(string(runes[end])))
			end++
		}
		i = end
	}
	return template.HTML(b.String())
}

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

func breaks(r rune) bool { return r == '-' || unicode.IsSpace(r) }
