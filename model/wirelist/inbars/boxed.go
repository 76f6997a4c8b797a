package inbars

import (
	"regexp"
	"slices"
	"strings"

	"contralay/model/wirelist/columned"
)

// A text may draw a plug as a box with its cavities as they stand in it, and list beside each row of the box what they carry. The numbers
// are those in the box; one with nothing behind it is free.
//
//	+-------+
//	|  1  2 |   1: BEAT    2:
//	+  3  4 |   3: RUN     4: GND
//	|  5  6 |   5:         6: GND
//	+-------+

// beside is the number of a cavity and what it carries.
var beside = regexp.MustCompile(`^(\d{1,3})(?::| =| [-–])(?: +(\S.*))?$`)

// boxed are the lines of such a drawing at the front of some, made a table; nil where none stands there.
func boxed(lines []string) (made []string) {
	if !isEdge(lines[0]) {
		return nil
	}
	wide := 0
	for n := 1; n < len(lines); n++ {
		if isEdge(lines[n]) {
			break
		}
		cells := besideBox(lines[n])
		if cells == nil || n > 1 && len(cells) != wide {
			return nil
		}
		wide = len(cells)
		made = append(made, barred(cells...))
	}
	n := len(made) + 1
	if len(made) < leastRows || n >= len(lines) {
		return nil
	}
	top := make([]string, wide)
	for k := range top {
		top[k] = []string{"Pin", "Signal"}[k%2]
	}
	return slices.Concat([]string{barred(top...)}, made, []string{""})
}

// isEdge reports whether a line is the upper or lower edge of a box.
func isEdge(line string) bool {
	line = strings.TrimSpace(line)
	return len(line) > 4 && strings.HasPrefix(line, "+-") && strings.HasSuffix(line, "-+") && strings.Trim(line, "+-") == ""
}

// besideBox are the cavities that a line has beside a box and what they carry; nil where they are not those that stand in the box.
func besideBox(line string) (cells []string) {
	at := strings.LastIndexByte(line, '|')
	if at < 0 {
		return nil
	}
	in := strings.FieldsFunc(line[:at], func(r rune) bool { return r < '0' || r > '9' })
	for _, c := range columned.Gapped(line[at+1:]) {
		m := beside.FindStringSubmatch(c.Text)
		if m == nil || len(cells)/2 >= len(in) || in[len(cells)/2] != m[1] {
			return nil
		}
		cells = append(cells, m[1], m[2])
	}
	if len(cells) != 2*len(in) {
		return nil
	}
	return cells
}
