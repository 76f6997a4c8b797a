package columned

import "strings"

// Counted finds the lines of the paragraphs of a text in columns that count parts below a title, in columns of their own without
// headings: each has fewer cells than there are columns, one of which is how many there are, and most stand elsewhere.
//
//	PARTS
//	  BOX         38 way, 2 keys        1 off
//	  POD PLUG    4 way                 2 off
func Counted(heads []Field, at int, text string) map[int]bool {
	found := map[int]bool{}
	lines := strings.Split(text, "\n")
	for from := at; from < len(lines); from++ {
		if from > at && strings.TrimSpace(lines[from-1]) != "" || len(Gapped(lines[from])) != 1 {
			continue // no title behind an empty line
		}
		to := from + 1
		for to < len(lines) && isCounted(heads, lines[to]) {
			to++
		}
		if to > from+1 && (to == len(lines) || strings.TrimSpace(lines[to]) == "") && standElsewhere(heads, lines[from+1:to]) {
			for n := from + 1; n < to; n++ {
				found[n+1] = true
			}
		}
	}
	return found
}

// isCounted reports whether a line has a few cells, of which the first or the last is how many there are.
func isCounted(heads []Field, line string) bool {
	cells := Gapped(line)
	return len(cells) > 1 && len(cells) < len(heads) && (isAmount(cells[0].Text) || isAmount(cells[len(cells)-1].Text))
}

// standElsewhere reports whether most cells of some lines, but the first of each, begin where no heading does.
func standElsewhere(heads []Field, lines []string) bool {
	all, there := 0, 0
	for _, l := range lines {
		for _, c := range Gapped(l)[1:] {
			all++
			for _, h := range heads {
				if c.From == h.From {
					there++
				}
			}
		}
	}
	return 2*there < all
}

// isAmount reports whether a cell is how many there are of a part: "1 off", "12 pcs", "4x".
func isAmount(text string) bool {
	unit := strings.ToLower(strings.TrimLeft(text, "0123456789"))
	if unit == strings.ToLower(text) {
		return false
	}
	switch strings.Trim(unit, " .") {
	case "off", "x", "pc", "pcs", "pce", "pieces", "ea", "each", "stk", "stck", "stuck", "stück", "st", "pz", "pezzi", "szt",
		"pieces per set", "pièces", "piezas", "uds", "unds", "stuks":
		return true
	}
	return false
}
