package bench

import (
	"strings"

	"contralay/model/unit"
)

// bigH is how many lines a large figure takes.
const bigH = 3

// segments is a figure as seven segments draw it, three lines of three cells: the
// same in every character set, and read from across a bench.
func segments(r rune) ([bigH]string, bool) {
	switch r {
	case '0':
		return [bigH]string{" _ ", "| |", "|_|"}, true
	case '1':
		return [bigH]string{"   ", "  |", "  |"}, true
	case '2':
		return [bigH]string{" _ ", " _|", "|_ "}, true
	case '3':
		return [bigH]string{" _ ", " _|", " _|"}, true
	case '4':
		return [bigH]string{"   ", "|_|", "  |"}, true
	case '5':
		return [bigH]string{" _ ", "|_ ", " _|"}, true
	case '6':
		return [bigH]string{" _ ", "|_ ", "|_|"}, true
	case '7':
		return [bigH]string{" _ ", "  |", "  |"}, true
	case '8':
		return [bigH]string{" _ ", "|_|", "|_|"}, true
	case '9':
		return [bigH]string{" _ ", "|_|", " _|"}, true
	case '.', ',':
		return [bigH]string{" ", " ", "."}, true
	case '-':
		return [bigH]string{"  ", "__", "  "}, true
	case '/':
		return [bigH]string{"  /", " / ", "/  "}, true
	case ' ':
		return [bigH]string{"  ", "  ", "  "}, true
	}
	return [bigH]string{}, false
}

// large draws a figure in large digits with words beside its foot; nil where it
// holds anything but a number.
func large(figure, words string) []string {
	out := make([]string, bigH)
	for _, r := range figure {
		seg, ok := segments(r)
		if !ok {
			return nil
		}
		for k := range out {
			out[k] += seg[k] + " "
		}
	}
	if figure == "" {
		out = []string{" ", " ", "_ "}
	}
	out[bigH-1] += " " + words
	for k := range out {
		out[k] = " " + out[k]
	}
	return out
}

// big is the one number that is being worked on: what is typed, else that of the
// row in hand, else over.
func (m *Model) big(r *row) (figure, words string) {
	if e := m.entry; e != nil {
		if e.number {
			return e.draft, strings.TrimSpace(e.unit + "  " + e.label)
		}
		return "", ""
	}
	if r != nil && r.big != "" {
		return r.big, r.bigSays
	}
	seen := m
	if r != nil && r.show != nil {
		seen = r.show(m)
	}
	mb, b, ok := seen.b()
	if !ok || b.OverMM <= 0 {
		return "", ""
	}
	return m.sys.Diameter(b.OverMM), m.sys.Name() + "  over of " + mb.ID
}

// of fills in a row's large figure.
func (r row) of(figure, words string) row {
	r.big, r.bigSays = figure, words
	return r
}

// diameterOf is a row with a diameter as its large figure.
func (m *Model) diameterOf(r row, v unit.Millimetre, words string) row {
	return r.of(m.sys.Diameter(v), m.sys.Name()+"  "+words)
}
