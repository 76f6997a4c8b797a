package page

import (
	"fmt"
	"html"
	"html/template"
	"strings"
	"unicode"

	"contralay/model/unit"
	"contralay/ui/paper/font"
)

// Letter is a size of type, with its weight.
type Letter struct {
	Point float64
	Bold  bool
}

// The sizes in use. What is read at arm's length is Large or Huge.
var (
	Small   = Letter{Point: 9}
	Strong  = Letter{Point: 9, Bold: true}
	Body    = Letter{Point: 10}
	Sub     = Letter{Point: 11, Bold: true}
	Heading = Letter{Point: 14, Bold: true}
	Large   = Letter{Point: 14}
	Title   = Letter{Point: 20, Bold: true}
	Huge    = Letter{Point: 28, Bold: true}
)

// letters are those that the style of a page has a class for.
func letters() []Letter {
	return []Letter{Small, Strong, Body, {Point: 10, Bold: true}, {Point: 11}, Sub, {Point: 12}, {Point: 12, Bold: true}, Large, Heading,
		{Point: 17}, {Point: 17, Bold: true}, {Point: 20}, Title, {Point: 28}, Huge}
}

// MillimetrePerPoint is exact: 25.4 / 72.
const MillimetrePerPoint = 25.4 / 72

// leading is the distance of two lines, in sizes of the letter.
const leading = 1.14

// Size is the size of the face in mm.
func (l Letter) Size() unit.Millimetre { return unit.Millimetre(l.Point * MillimetrePerPoint) }

// Line is the distance of two lines of it, mm.
func (l Letter) Line() unit.Millimetre { return l.Size() * leading }

// Class is the class of the style that sets it.
func (l Letter) Class() string {
	if l.Bold {
		return fmt.Sprintf("p%gb", l.Point)
	}
	return fmt.Sprintf("p%g", l.Point)
}

// style is the rule of the style sheet for its class.
func (l Letter) style() string {
	weight := "normal"
	if l.Bold {
		weight = "bold"
	}
	return fmt.Sprintf(".%s{font-size:%gpt;line-height:%.3fmm;font-weight:%s}", l.Class(), l.Point, float64(l.Line()), weight)
}

// slack is how much wider a text is taken than it is: browsers round widths of letters.
const slack = 1.01

// wideSign is how wide a sign is taken that the face lacks, in sizes: that of Chinese and Japanese signs.
const wideSign = 1.0

// Wide is how wide a text is in it, mm.
func (l Letter) Wide(text string) unit.Millimetre {
	face := font.Of(l.Bold)
	w := face.Width(text, l.Size())
	for range face.Lacks(text) {
		w += l.Size() * (wideSign - 0.6)
	}
	return w * slack
}

// round is what rounding may take of a width that a text was measured for, mm.
const round unit.Millimetre = 1e-6

// Lines is a text in lines no wider than a width: broken at spaces, after hyphens, strokes and the
// like, and within a word that is wider than a line. A line end in the text stays one. There is
// always one line.
func (l Letter) Lines(text string, wide unit.Millimetre) []string {
	var out []string
	for _, part := range strings.Split(text, "\n") {
		out = append(out, l.lines(part, wide)...)
	}
	return out
}

func (l Letter) lines(text string, wide unit.Millimetre) []string {
	if l.Wide(text) <= wide+round {
		return []string{strings.TrimRightFunc(text, unicode.IsSpace)}
	}
	var out []string
	line, at := "", unit.Millimetre(0)
	end := func() {
		out = append(out, strings.TrimRightFunc(line, unicode.IsSpace))
		line, at = "", 0
	}
	for _, piece := range pieces(text) {
		w := l.Wide(strings.TrimRightFunc(piece, unicode.IsSpace))
		if line != "" && at+w > wide+round {
			end()
		}
		if w <= wide+round {
			line, at = line+piece, at+l.Wide(piece)
			continue
		}
		for _, r := range piece {
			w := l.Wide(string(r))
			if line != "" && at+w > wide+round {
				end()
			}
			line, at = line+string(r), at+w
		}
	}
	if line != "" || len(out) == 0 {
		end()
	}
	return out
}

// pieces is a text in what stays together on a line, each with the spaces behind it.
func pieces(text string) []string {
	var out []string
	start, runes := 0, []rune(text)
	for k, r := range runes {
		last := k == len(runes)-1
		switch {
		case last:
		case r == '\u00a0': // it parts no words
			continue
		case unicode.IsSpace(r) && !unicode.IsSpace(runes[k+1]):
		case k > start && strings.ContainsRune("-/,;:_·", r) && !unicode.IsSpace(runes[k+1]) && !unicode.IsDigit(runes[k+1]):
		default:
			continue
		}
		out = append(out, string(runes[start:k+1]))
		start = k + 1
	}
	return out
}

// longest is the widest piece of a text: a column narrower than that breaks words.
func (l Letter) longest(text string) unit.Millimetre {
	var most unit.Millimetre
	for _, piece := range pieces(text) {
		most = max(most, l.Wide(strings.TrimSpace(piece)))
	}
	return most
}

// widest is the widest line of a text that is broken at its line ends alone.
func (l Letter) widest(text string) unit.Millimetre {
	var most unit.Millimetre
	for _, line := range strings.Split(text, "\n") {
		most = max(most, l.Wide(line))
	}
	return most
}

// Short is a text cut to a width, with a sign that it was cut.
func (l Letter) Short(text string, wide unit.Millimetre) string {
	if l.Wide(text) <= wide {
		return text
	}
	runes := []rune(text)
	for len(runes) > 0 && l.Wide(string(runes)+"…") > wide {
		runes = runes[:len(runes)-1]
	}
	return strings.TrimRightFunc(string(runes), unicode.IsSpace) + "…"
}

// joined is lines as HTML.
func joined(lines []string) template.HTML {
	escaped := make([]string, len(lines))
	for k, line := range lines {
		escaped[k] = html.EscapeString(line)
	}
	return template.HTML(strings.Join(escaped, "<br>")) // #nosec: each line is escaped
}
