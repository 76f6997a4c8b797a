// Package cavity writes the names of cavities on paper so that case cannot be mistaken: a name with a small
// letter is underlined, in the cells of tables and in sentences.
package cavity

import (
	"fmt"
	"html"
	"html/template"
	"strconv"
	"strings"

	"contralay/model/unit"
	"contralay/ui/paper/page"
)

// Small reports whether a name is underlined: it has a small letter.
func Small(name string) bool { return page.SmallLetter(name) }

// Underlined is a name as HTML.
func Underlined(name string) template.HTML {
	text := html.EscapeString(name)
	if Small(name) {
		text = "<u>" + text + "</u>"
	}
	return template.HTML(text) // #nosec: escaped
}

// Cell is a cell with the name of a cavity, before it its end ("P1:", or nothing), and behind it what else
// it is called.
func Cell(end, name, also string, bold bool) page.Cell {
	if !Small(name) {
		return page.Cell{Text: end + name + also, Bold: bold}
	}
	l := page.Letter{Point: page.Small.Point, Bold: bold}
	text := template.HTML(html.EscapeString(end)) + Underlined(name) + template.HTML(html.EscapeString(also)) // #nosec: escaped
	return page.Cell{Picture: template.HTML(`<span class="` + l.Class() + `">` + string(text) + `</span>`),   // #nosec: escaped
		Wide: l.Wide(end + name + also), High: l.Line()}
}

// EndCell is a cell with an end, "P1:a"; what is no cavity stands as it is.
func EndCell(text string, bold bool) page.Cell {
	end, name, is := strings.Cut(text, ":")
	if !is {
		return page.Cell{Text: text, Bold: bold}
	}
	return Cell(end+":", name, "", bold)
}

// Word is a part of a sentence: plain, or the name of a cavity, with what stands right behind it.
type Word struct {
	Text   string
	Cavity bool
	After  string // ",", "."
}

// Words are the words of a text.
func Words(text string) (out []Word) {
	for _, w := range strings.Fields(text) {
		out = append(out, Word{Text: w})
	}
	return out
}

// Names are the names of cavities as words, with commas.
func Names(names []string, last string) (out []Word) {
	for _, n := range names {
		out = append(out, Word{Text: n, Cavity: true, After: ","})
	}
	if len(out) > 0 {
		out[len(out)-1].After = last
	}
	return out
}

// Runs are the same, numbers that follow each other as a run: "1 to 4, 7".
func Runs(names []string, last string) (out []Word) {
	for k := 0; k < len(names); {
		end := k
		for end+1 < len(names) && follows(names[end], names[end+1]) {
			end++
		}
		if end < k+2 { // a run of two is no shorter
			end = k
		} else {
			out = append(out, Word{Text: names[k], Cavity: true}, Word{Text: "to"})
		}
		out = append(out, Word{Text: names[end], Cavity: true, After: ","})
		k = end + 1
	}
	if len(out) > 0 {
		out[len(out)-1].After = last
	}
	return out
}

// follows reports whether a number is the next after another.
func follows(a, b string) bool {
	x, err1 := strconv.Atoi(a)
	y, err2 := strconv.Atoi(b)
	return err1 == nil && err2 == nil && y == x+1
}

// Lines is words in lines no wider than a width, as HTML, and how many lines they are.
func Lines(words []Word, l page.Letter, wide unit.Millimetre) (template.HTML, int) {
	space := l.Wide(" ")
	var lines []string
	line, at := "", unit.Millimetre(0)
	for _, w := range words {
		text := html.EscapeString(w.Text)
		if w.Cavity {
			text = string(Underlined(w.Text))
		}
		text += html.EscapeString(w.After)
		needs := l.Wide(w.Text + w.After)
		if line != "" && at+space+needs > wide {
			lines = append(lines, line)
			line, at = "", 0
		}
		if line != "" {
			line, at = line+" ", at+space
		}
		line, at = line+text, at+needs
	}
	lines = append(lines, line)
	return template.HTML(strings.Join(lines, "<br>")), len(lines) // #nosec: escaped
}

// Sentence is words in a width.
func Sentence(words []Word, wide unit.Millimetre) page.Block {
	l := page.Small
	text, lines := Lines(words, l, wide)
	return page.Block{HTML: template.HTML(fmt.Sprintf(`<div class="%s">%s</div>`, l.Class(), text)), // #nosec: escaped
		High: unit.Millimetre(lines) * l.Line(), Gap: 1}
}
