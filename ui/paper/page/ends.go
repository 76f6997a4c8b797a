package page

import (
	"html"
	"html/template"
	"strings"
	"unicode"
)

// Names of cavities in words: case cannot be mistaken where a name with a small letter is underlined.

// SmallLetter reports whether a name has a small letter.
func SmallLetter(name string) bool { return strings.IndexFunc(name, unicode.IsLower) >= 0 }

// EndLines is lines that name ends, "P1:a", "AUX1:3 + b", as HTML with each cavity of a small letter underlined. alone
// is whether a name without its end is a cavity from the first on. A line may end between an end and its cavity.
func EndLines(lines []string, alone bool) template.HTML {
	var out []string
	in := alone // what stands behind an end, with a comma or a plus between, is a cavity of it
	for _, line := range lines {
		var b strings.Builder
		for n, word := range strings.Split(line, " ") {
			if n > 0 {
				b.WriteString(" ")
			}
			end, name := "", word
			if at := strings.Index(word, ":"); at >= 0 {
				end, name, in = word[:at+1], word[at+1:], true
			}
			cavity := strings.TrimRight(name, ",;")
			b.WriteString(html.EscapeString(end))
			switch {
			case word == "+" || cavity == "":
				b.WriteString(html.EscapeString(name))
				continue
			case in && SmallLetter(cavity):
				b.WriteString("<u>" + html.EscapeString(cavity) + "</u>" + html.EscapeString(name[len(cavity):]))
			default:
				b.WriteString(html.EscapeString(name))
			}
			in = alone || in && strings.HasSuffix(name, ",") || in && goesOn(line, n)
		}
		out = append(out, b.String())
	}
	return template.HTML(strings.Join(out, "<br>")) // #nosec: each word is escaped
}

// goesOn reports whether a plus follows a word of a line.
func goesOn(line string, n int) bool {
	words := strings.Split(line, " ")
	return n+1 < len(words) && words[n+1] == "+" || n+1 == len(words)
}
