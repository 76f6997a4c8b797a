// Package boxtitles finds the rows of a table of cavities that name the boxes whose cavities stand below each, where one row of headings
// stands above them all.
//
//	Pin | Function    | Colour | Goes to
//	Head unit ISO A
//	A4  | Constant    | yellow | fuse box 11
//	A5  | Remote      | blue   | Amp REM
//	Head unit ISO B
//	B3  | RF +        | grey   | RF speaker +
//	Amp
//	B+  | Power       | red    | battery
//
// The rows of one connector that are parted by what its cavities are for, "Power", "Sensors", stay one connector: one title must be a
// device that wires below the others go to, or most of them must be things that are told apart by their ends, and the cavities below
// each must be called in another way. Cavities that are counted from the start again say by themselves that they are of another
// connector, and need no such look.
package boxtitles

import (
	"slices"
	"strings"
	"unicode"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/plugword"
	"contralay/model/wirelist/prose"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/signoff"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/titleline"
	"contralay/model/wirelist/words"
)

// Lines are the lines of the titles; none where the rows below the headings are not all below such titles. Where the first one says that it
// is a connector, or cavities are counted from the start again, most are known by that: the lines are then of the first, of devices, and of
// what is written as the others are.
func Lines(b *shape.Block) map[int]bool {
	pin := slices.IndexFunc(b.Cols, func(c shape.Column) bool { return c.Field == name.FieldPin })
	if pin < 0 || b.Has(name.FieldConnector) || len(b.Rows) < 2 || !isTitle(b.Rows[0]) {
		return nil
	}
	far := goesTo(b)
	titles, anew := titlesOf(b, pin, far)
	several := stems(titles)
	things, sure := 0, false
	for k, t := range titles {
		end := len(b.Rows)
		if k+1 < len(titles) {
			end = titles[k+1].at
		}
		if far.within(t.text, t.at, end) {
			return nil // "Pump" above wires that go to the pump
		}
		if w := name.Words(table.Fold(t.text)); len(w) == 0 || isPart(w[0]) && len(w) == 1 {
			return nil
		}
		sure = sure || isNamed(t.text, far) && !isUnit(t.text)
		if isNamed(t.text, far) || isOneOfSeveral(t.text, several) || t.anew || name.SaysConnector(t.text) {
			things++
		}
	}
	most := 2*things > len(titles)
	told := anew || len(titles) > 0 && name.SaysConnector(titles[0].text)
	if one := len(titles) == 1 && titles[0].at == 0; len(titles) < 2 && !one || len(titles) > 1 && !told && !sure && !most {
		return nil
	}
	lines := map[int]bool{}
	for k, t := range titles {
		if r := b.Rows[t.at]; !told || isNamed(t.text, far) || anew && (k == 0 || !shape.IsText(r)) ||
			isBox(t.text) && isBox(titles[0].text) ||
			most && isLike(t.text, titles[0].text) {
			lines[r.Line] = true
		}
	}
	return lines
}

// titlesOf are the rows that could be titles; none where two stand below each other, or cavities go on to be counted below one. anew says
// that below one they are counted from the start again.
func titlesOf(b *shape.Block, pin int, far devices) (titles []title, anew bool) {
	counted, seen, again := map[string]int{}, map[string]bool{}, false
	_, first := b.Rows[0].Filled()
	boxes := isBox(first) || comesAgain(b.Rows, pin)
	for i, r := range b.Rows {
		_, text := r.Filled()
		if isTitle(r) && (shape.IsText(r) || isBox(first) && isBox(text) || isNamed(text, far) || column.IsShortHeading(b, i)) {
			if n := len(titles); n > 0 && titles[n-1].at == i-1 || i+1 == len(b.Rows) {
				return nil, false
			}
			titles = append(titles, title{text: text, at: i})
			again = false
			continue
		}
		if pin >= len(r.Cells) || r.Cells[pin] == "" {
			continue
		}
		by := countedBy(r.Cells[pin])
		if again = again || seen[r.Cells[pin]]; again && len(titles) > 0 {
			anew, titles[len(titles)-1].anew = true, true
		}
		if of, known := counted[by]; known && of != len(titles) && !again && !boxes {
			return nil, false
		}
		counted[by], seen[r.Cells[pin]] = len(titles), true
	}
	return titles, anew
}

// comesAgain reports whether a cavity stands twice below the headings, with a row of one text between: they are of two connectors.
func comesAgain(rows []table.Row, pin int) bool {
	of, at := map[string]int{}, 0
	for _, r := range rows {
		if n, _ := r.Filled(); n == 1 {
			at++
			continue
		}
		if pin >= len(r.Cells) || r.Cells[pin] == "" {
			continue
		}
		if was, known := of[r.Cells[pin]]; known && was != at {
			return true
		}
		of[r.Cells[pin]] = at
	}
	return false
}

// title is what a row says, and which row it is.
type title struct {
	text string
	at   int
	anew bool // cavities are counted from the start again below it
}

// isLike reports whether a title can name a thing as another one does: it begins with a capital where that does, and is not of parts or of
// several things, "Injectors", "Dash side".
func isLike(text, other string) bool {
	w := strings.Fields(table.Fold(text))
	last := w[len(w)-1]
	return !isPart(last) && (!strings.HasSuffix(last, "s") || strings.HasSuffix(last, "ss")) && isCapital(text) == isCapital(other)
}

// isCapital reports whether a text begins with a capital or a number.
func isCapital(text string) bool { return !unicode.IsLower([]rune(text)[0]) }

// isTitle reports whether a row is one short text in its first cell that can be a name.
func isTitle(r table.Row) bool {
	const most = 5 // words (no source)
	n, text := r.Filled()
	if n != 1 || r.Cells[0] == "" || r.Prose || signoff.Is(r) || titleline.IsSentence(text) || len(strings.Fields(text)) > most {
		return false
	}
	_, counts := name.ReadCount(text)
	letters := strings.IndexFunc(text, func(r rune) bool { return r >= 'a' && r <= 'z' || r >= 'A' && r <= 'Z' || r > 127 }) >= 0
	return letters && !counts && !name.IsGeneric(text) && name.StateOf(text) == name.Used
}

// devices are the rows whose wires go to a device, by its folded name: the front of a cell up to a blank or to a sign between a device and
// its cavity, or the whole of it.
type devices map[string][]int

// goesTo are the devices that the wires of a table go to.
func goesTo(b *shape.Block) devices {
	all := devices{}
	for i, c := range b.Cols {
		switch c.Field {
		case name.FieldTo, name.FieldFrom, name.FieldRun:
			for k, r := range b.Rows {
				if i < len(r.Cells) && r.Cells[i] != "" {
					all.add(table.Fold(r.Cells[i]), k)
				}
			}
		}
	}
	return all
}

// add enters the fronts of a folded cell.
func (d devices) add(cell string, row int) {
	const most = 60 // letters of a cell that is the end of a wire (no source)
	if len(cell) > most {
		return
	}
	for at := range len(cell) {
		if at > 0 && strings.IndexByte(" :-./", cell[at]) >= 0 {
			d[cell[:at]] = append(d[cell[:at]], row)
		}
	}
	d[cell] = append(d[cell], row)
}

// within reports whether wires of the rows from one up to another go to a device.
func (d devices) within(text string, from, end int) bool {
	return slices.ContainsFunc(d[table.Fold(text)], func(row int) bool { return row >= from && row < end })
}

// isNamed reports whether a title is a device that wires go to, or one of the units that every list has.
func isNamed(text string, far devices) bool { return isUnit(text) || len(far[table.Fold(text)]) > 0 }

// isUnit reports whether a title is the word for a unit that every list has, "ECU".
func isUnit(text string) bool {
	w := name.Words(table.Fold(text))
	return len(w) == 1 && name.IsUnit(w[0])
}

// stems are how many titles there are that are one text but for the letter or the number at their end, by that text, folded.
func stems(titles []title) map[string]int {
	all := map[string]int{}
	for _, t := range titles {
		if front, last := cutLast(t.text); prose.IsOrdinal(last) {
			all[table.Fold(front)]++
		}
	}
	return all
}

// isOneOfSeveral reports whether a title has a letter or a number at its end that tells it from another title, behind what is no part of a
// connector: "Head unit ISO A" beside "Head unit ISO B", and not "Row A" beside "Row B".
func isOneOfSeveral(text string, all map[string]int) bool {
	front, last := cutLast(text)
	front = table.Fold(front)
	w := strings.Fields(front)
	return len(w) > 0 && prose.IsOrdinal(last) && all[front] > 1 && (!isPart(w[len(w)-1]) || plugword.Is(w[len(w)-1]))
}

// cutLast parts the last word off a text.
func cutLast(text string) (front, last string) {
	at := strings.LastIndex(text, " ")
	if at < 0 {
		return "", text
	}
	return strings.TrimSpace(text[:at]), text[at+1:]
}

// isPart reports whether a folded word is one for a part of a connector, or for a group of wires. Common words, from memory, no source.
func isPart(w string) bool {
	switch w {
	case "row", "rows", "bank", "side", "half", "block", "section", "part", "group", "circuit", "circuits", "page", "sheet",
		"bay", "layer", "size", "reihe", "seite", "gruppe", "teil", "bereich", "rangee", "rang", "cote", "groupe", "partie",
		"fila", "lado", "grupo", "parte", "riga", "lato", "gruppo", "rij", "kant", "groep", "deel", "rad", "sida", "rzad",
		"strona", "grupa", "step", "stage", "zone", "phase", "power", "ground", "grounds", "sensors", "inputs", "outputs",
		"signals", "supply", "lights":
		return true
	}
	return false
}

// countedBy is what the cavities of a row are counted by: "A" of "A12", "" of "12", the whole of a cavity without a number.
func countedBy(cavity string) string { return strings.TrimRight(table.Fold(cavity), "0123456789") }

// isBox reports whether a title is the designator of a plug, or a unit, a box or a loom by its last word.
func isBox(text string) bool {
	w := name.Words(table.Fold(text))
	if len(w) == 0 {
		return false
	}
	switch last := w[len(w)-1]; last {
	case "loom", "harness", "box", "board", "panel", "module", "controller", "plug", "connector", "bulkhead":
		return true
	}
	bare := strings.TrimLeft(text, "0123456789") // "10X1"
	return name.IsDesignator(bare) && strings.ContainsAny(bare, "0123456789") && strings.ToUpper(text) == text ||
		len(w) < 3 && words.HeadsUnit(w)
}
