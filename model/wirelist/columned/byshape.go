package columned

import (
	"strings"
	"unicode"
)

// A table that was pasted with ragged blanks: its cells stand under no heading, and some are one blank apart. The lines with one cell for
// each heading say what the cells of each column look like; the others are parted by that.
//
//	No    From      To          Col       AWG    Service
//	101   TB1-1     K1-30       RED       10     Battery feed
//	102   TB1-2   K1-86     WHT      16    Start coil
//	103   TB1-3       K1-85 BLK   16   Start return
//	112   H1-2    TB1-3       BLK        18

// look is what a cell is made of.
type look byte

const (
	number   look = 1 << iota // "16", "2,5"
	word                      // one word without a figure, "RED", "WHT/BLU"
	mark                      // one word with a figure, "TB1-2"
	quantity                  // a number and a word, "2,5 mm²"
	texts                     // anything else
)

// lookOf says what a cell is made of.
func lookOf(text string) look {
	digits := strings.ContainsFunc(text, unicode.IsDigit)
	front, back, several := strings.Cut(text, " ")
	switch {
	case strings.Trim(text, "0123456789.,") == "":
		return number
	case several && strings.Trim(front, "0123456789.,") == "" && !strings.Contains(back, " "):
		return quantity
	case several:
		return texts
	case digits:
		return mark
	}
	return word
}

// byShape finds out whether a text is such a table; nil where its cells stand under its headings.
func byShape(heads []Field, at int, text string) *Order {
	lines := strings.Split(text, "\n")
	o := &Order{Heads: heads, looks: make([]look, len(heads)), figures: make([]map[string]bool, len(heads))}
	full, under, crooked := 0, 0, false
	edges := make([][2]map[int]int, len(heads)) // where the cells of each column begin and end
	for i := range edges {
		edges[i] = [2]map[int]int{{}, {}}
	}
	for _, l := range lines[min(at, len(lines)):] {
		cells := Gapped(l)
		if len(cells) != len(heads) || isAgain(heads, l) {
			continue
		}
		full++
		byPlace := Under(heads, cells)
		for i, c := range cells {
			o.looks[i] |= lookOf(c.Text)
			if o.figures[i] == nil {
				o.figures[i] = map[string]bool{}
			}
			o.figures[i][c.Text] = true
			edges[i][0][c.From]++
			edges[i][1][c.To]++
			if i > 0 && (c.From == heads[i].From || c.To == heads[i].To) {
				under++
			}
			crooked = crooked || byPlace[i] != c.Text
		}
	}
	if last := len(heads) - 1; o.looks[last]&word != 0 {
		o.looks[last] |= texts // what a wire is for is one word or several
	}
	const fewest, fewestHeads = 3, 4 // no source
	if full < fewest || len(heads) < fewestHeads || !crooked || !anyRagged(edges, full) ||
		2*under >= full*(len(heads)-1) {
		return nil
	}
	rows, read := 0, 0
	for n, l := range lines[min(at, len(lines)):] {
		if len(Gapped(l)) < 3 || isAgain(heads, l) || isTitleAgain(lines, at, n+at) {
			continue
		}
		if rows++; o.byLooks(l) != nil {
			read++
		}
	}
	if 2*full < rows || 5*read < 4*rows {
		return nil
	}
	return o
}

// anyRagged reports whether the cells of some column begin at no place and end at none in more than half of the lines.
func anyRagged(edges [][2]map[int]int, lines int) bool {
	for _, column := range edges[1:] {
		most := 0
		for _, side := range column {
			for _, n := range side {
				most = max(most, n)
			}
		}
		if 2*most <= lines {
			return true
		}
	}
	return false
}

// byLooks gives the words of a line to the columns in their order, each cell to one that has such cells; nil where it can be done in no
// way, or in two that are as good, or most cells are missing. What is more than one blank apart is never one cell, but in the last column.
func (o *Order) byLooks(line string) (cells []string) {
	const mostWords = 24 // no source
	var all []string
	var apart []bool // by the gap before it
	pieces := Gapped(line)
	for _, p := range pieces {
		for i, w := range strings.Fields(p.Text) {
			all, apart = append(all, w), append(apart, i == 0)
		}
	}
	if o.allLook(pieces) || isAgain(o.Heads, line) {
		for _, p := range pieces {
			cells = append(cells, p.Text)
		}
		return cells
	}
	if len(all) > mostWords {
		return nil
	}
	known := map[[2]int]parting{}
	best := o.part(all, apart, 0, 0, known)
	if best.ways != 1 {
		return nil
	}
	at, filled := 0, 0
	for c := range o.Heads {
		n := known[[2]int{c, at}].words
		filled += min(n, 1)
		cells = append(cells, strings.Join(all[at:at+n], " "))
		at += n
	}
	if 3*filled < 2*len(cells) {
		return nil
	}
	return cells
}

// allLook reports whether some pieces are one for each column, such as it has elsewhere.
func (o *Order) allLook(pieces []Field) bool {
	for i, p := range pieces {
		if len(pieces) != len(o.Heads) || lookOf(p.Text)&o.looks[i] == 0 {
			return false
		}
	}
	return true
}

// parting is the best way to give some words to some columns: what it costs, how many ways cost as little, and how many words the first
// column takes.
type parting struct{ cost, ways, words int }

// part finds the best way to give the words from one on to the columns from one on. A cell that is missing costs most, two that one blank
// parts less; a number that the column does not have elsewhere costs little, so that a gauge is taken for no length.
func (o *Order) part(all []string, apart []bool, column, at int, known map[[2]int]parting) parting {
	key := [2]int{column, at}
	if p, ok := known[key]; ok {
		return p
	}
	if column == len(o.Heads) {
		if at == len(all) {
			return parting{ways: 1}
		}
		return parting{}
	}
	var best parting
	try := func(cost, n int) {
		p := o.part(all, apart, column+1, at+n, known)
		if p.ways == 0 {
			return
		}
		switch p.cost += cost; {
		case best.ways == 0 || p.cost < best.cost:
			best = parting{p.cost, p.ways, n}
		case p.cost == best.cost:
			best.ways += p.ways
		}
	}
	const gap, tight, strange = 4, 3, 1 // no source
	try(gap, 0)
	last := column == len(o.Heads)-1
	for n, cost := 1, 0; at+n <= len(all); n++ {
		if n > 1 && apart[at+n-1] {
			if !last {
				break
			}
			cost += gap
		}
		cell := strings.Join(all[at:at+n], " ")
		if is := lookOf(cell); is&o.looks[column] != 0 {
			split := cost
			if at+n < len(all) && !apart[at+n] {
				split += tight
			}
			if is == number && !o.figures[column][cell] {
				split += strange
			}
			try(split, n)
		}
	}
	known[key] = best
	return best
}

// isTitleAgain reports whether a line, counted from nought, is one of those above the headings once more, but for its figures.
func isTitleAgain(lines []string, at, n int) bool {
	bare := withoutFigures(lines[n])
	for _, l := range lines[:max(at-1, 0)] {
		if len(bare) > 3 && withoutFigures(l) == bare {
			return true
		}
	}
	return false
}

// withoutFigures is a line with one blank for each gap and without its figures.
func withoutFigures(line string) string {
	return strings.Map(func(r rune) rune {
		if unicode.IsDigit(r) {
			return -1
		}
		return r
	}, strings.Join(strings.Fields(line), " "))
}
