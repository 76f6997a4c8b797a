package columned

import "strings"

// Paired reports whether most of some lines stand in two columns below headings, so that the commas in them part no cells.
//
//	Pin   Signal
//	1     Up, red
//	2     Down, blue, 0.5 mm²
func Paired(lines []string) bool {
	const least = 3 // lines, headings too (no source)
	in, filled := 0, 0
	for i := 0; i < len(lines); i++ {
		if strings.TrimSpace(lines[i]) == "" {
			continue
		}
		filled++
		head := Gapped(lines[i])
		if len(head) != 2 || strings.ContainsAny(lines[i], "0123456789,:") {
			continue
		}
		n := 1
		for i+n < len(lines) {
			cells := Gapped(lines[i+n])
			if len(cells) != 2 || cells[0].From != head[0].From || cells[1].From != head[1].From {
				break
			}
			n++
		}
		if n >= least {
			in += n
			filled += n - 1
			i += n - 1
		}
	}
	return 3*in >= 2*filled && in > 0
}
