package block

import (
	"regexp"
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Lines with an arrow between the two ends of a wire.
//
//	- Mainboard 5V -> Lidar VCC (red)
//	- Mainboard G  -> Lidar GND (black, 26 AWG)
//	W3: J1:3 --white--> J2:4

// arrowMark is an arrow of any make, with or without a word on it.
var (
	arrowMark  = regexp.MustCompile(`\s*(?:<?[-=–—─]+>|[-=–—─]*[→⇒⟶➔➜►▶]|[←]?[-–—─]*[↔⇄⟷]|<[-=–—─]+)\s*`)
	arrowLabel = regexp.MustCompile(`\s+[-=–—─]+\s*[\[(]?([\pL\pN][^<>→()\[\]]*?)[\])]?\s*[-=–—─]+>\s*`)
)

// joint is one such line, parted.
type joint struct {
	from, to, id, label string
	values
}

// partJoint parts a line at its one arrow. ok is false where it has none, or several, or where a side is no name.
//
//	LABEL: FROM -> TO (VALUES)
func partJoint(text string) (j joint, ok bool) {
	const longest = 240 // of a line that is no sentence (no source)
	if len(text) > longest || !strings.ContainsAny(text, "<>→⇒⟶➔➜►▶↔⇄⟷") {
		return joint{}, false
	}
	var left, right string
	if at := arrowLabel.FindStringSubmatchIndex(text); at != nil {
		left, right, j.label = text[:at[0]], text[at[1]:], text[at[2]:at[3]]
	} else {
		at := arrowMark.FindAllStringIndex(text, -1)
		if len(at) != 1 {
			return joint{}, false
		}
		left, right = text[:at[0][0]], text[at[0][1]:]
	}
	if arrowMark.MatchString(left) || arrowMark.MatchString(right) {
		return joint{}, false
	}
	if front, behind, found := strings.Cut(left, ": "); found {
		j.id, left = front, behind
	}
	j.values = partValues(right)
	if front, behind, found := strings.Cut(j.name, ": "); found {
		j.name = front
		j.rest = append(j.rest, behind)
	}
	j.from, j.to = strings.TrimSpace(left), strings.TrimSpace(j.name)
	j.name = ""
	if j.label != "" {
		was := len(j.rest)
		for _, piece := range pieces(j.label) {
			j.take(piece)
		}
		if more := j.rest[was:]; len(more) > 0 {
			j.name, j.rest = more[0], slices.Delete(j.rest, was, was+1)
		}
	}
	if id := j.id; id != "" {
		j.id = ""
		switch {
		case name.IsDesignator(id) || strings.Trim(id, "0123456789") == "":
			j.id = id
		case isValue(id):
			j.take(id)
		case j.name == "":
			j.name = id
		default:
			j.rest = append(j.rest, id)
		}
	}
	return j, isEndText(j.from) && isEndText(j.to)
}

// jointOf parts a row: a line of text, or cells of which one is an arrow and what stands behind the second end are values.
//
//	J1-1  ---->  X1-4   valve    red   20 AWG
func jointOf(r table.Row) (j joint, ok bool) {
	if len(r.Cells) == 1 {
		return partJoint(r.Cells[0])
	}
	at := slices.IndexFunc(r.Cells, isArrow)
	if at < 1 || at+1 >= len(r.Cells) || slices.ContainsFunc(r.Cells[at+1:], isArrow) {
		return joint{}, false
	}
	if n, _ := (table.Row{Cells: r.Cells[:at]}).Filled(); n != 1 {
		return joint{}, false
	}
	_, j.from = table.Row{Cells: r.Cells[:at]}.Filled()
	j.to = r.Cells[at+1]
	for _, cell := range r.Cells[at+2:] {
		switch {
		case cell == "":
		case isValue(cell):
			j.take(cell)
		case j.name == "":
			j.name = cell
		default:
			j.rest = append(j.rest, cell)
		}
	}
	return j, isEndText(j.from) && isEndText(j.to)
}

// isArrow reports whether a cell is an arrow and nothing else.
func isArrow(cell string) bool {
	return len(cell) > 1 && len(cell) < 40 && strings.ContainsAny(cell, "<>→⇒↔►▶") && strings.Trim(cell, "<>→⇒↔►▶-=–—─ ") == ""
}

// isEndText reports whether a side of an arrow can be the name of an end.
func isEndText(s string) bool {
	return s != "" && len(s) <= mostHead && len(strings.Fields(s)) <= 6 && !strings.HasSuffix(s, ".") && !strings.ContainsAny(s, "?!")
}

// arrows is how many lines from one on are such; 0 where they are none. Steps of a menu have arrows, too: half of the lines
// must have a value of a wire or a cavity at an end.
func (f *finder) arrows(i int) int {
	rows := f.t.Rows
	n, shown := 0, 0
	for i+n < len(rows) {
		r := rows[i+n]
		if len(r.Cells) == 1 && f.t.Marked && !r.Prose || r.Level > 0 || r.Indent != rows[i].Indent {
			break
		}
		j, ok := jointOf(r)
		if !ok || name.IsCavity(j.from) && !name.IsCavity(j.to) {
			break
		}
		if j.some() || lastIsPin(j.from) || lastIsPin(j.to) {
			shown++
		}
		n++
	}
	if n == 0 || 2*shown < n || n == 1 && !f.hasJoints() {
		return 0
	}
	return n
}

// hasJoints reports whether some list of arrows stands above.
func (f *finder) hasJoints() bool {
	return slices.ContainsFunc(f.all, func(b Block) bool { return b.Form == formArrows })
}

const formArrows = "an arrow between two ends"

// lastIsPin reports whether an end says its cavity: behind a sign, or as its last word.
func lastIsPin(end string) bool {
	if _, pin, ok := name.SplitEnd(end); ok && pin != "" {
		return true
	}
	i := strings.LastIndexByte(end, ' ')
	return i < 0 && name.IsCavity(end) || i > 0 && isPad(end[i+1:])
}

// isPad reports whether a word is the name of a cavity, as boards print it: "5V", "TX3", "GND", "+".
func isPad(word string) bool {
	return len(word) <= 6 && word != "" && word == strings.ToUpper(word) || name.IsCavity(word)
}

// joined makes the block of a list of arrows.
func (f *finder) joined(lines []table.Row) {
	b := Block{Table: f.t, Path: slices.Clone(f.path), Titles: f.titles(), Listed: true, Form: formArrows,
		Fields: []name.Field{name.FieldWire, name.FieldFrom, name.FieldFromPin, name.FieldTo, name.FieldToPin, name.FieldSignal,
			name.FieldColour, name.FieldGauge}}
	fronts, wide := f.fronts(), 0
	for _, r := range lines {
		j, _ := jointOf(r)
		from, fromPin := b.partEnd(j.from, fronts, r.Line)
		to, toPin := b.partEnd(j.to, fronts, r.Line)
		r.Cells = append([]string{j.id, from, fromPin, to, toPin, j.name, j.colour, j.size}, j.rest...)
		r.Prose, wide = false, max(wide, len(j.rest))
		b.Rows = append(b.Rows, r)
	}
	for range wide {
		b.Fields = append(b.Fields, name.FieldKeep)
	}
	f.close()
	f.all = append(f.all, b)
}

// fronts counts the ends of all arrows of a table by what stands before their last word: what comes with several last words
// is a device.
func (f *finder) fronts() map[string]int {
	if f.before != nil {
		return f.before
	}
	seen := map[string]bool{}
	fronts := map[string]int{}
	f.before = fronts
	for _, r := range f.t.Rows {
		j, ok := jointOf(r)
		if !ok {
			continue
		}
		for _, end := range []string{j.from, j.to} {
			if i := strings.LastIndexByte(end, ' '); i > 0 && !seen[table.Fold(end)] {
				seen[table.Fold(end)] = true
				fronts[table.Fold(end[:i])]++
			}
		}
	}
	return fronts
}

// partEnd parts an end into its connector and its cavity: at a sign, or at its last blank where what stands behind it is a pad,
// or what stands before it comes with several pads.
func (b *Block) partEnd(end string, fronts map[string]int, line int) (connector, pin string) {
	if connector, pin, ok := name.SplitEnd(end); ok {
		return connector, pin
	}
	i := strings.LastIndexByte(end, ' ')
	if i < 0 {
		return end, ""
	}
	front, last := strings.TrimSpace(end[:i]), end[i+1:]
	if of, ok := strings.CutSuffix(front, " pad"); ok && of != "" {
		return of, last // "Hub pad 7"
	}
	switch {
	case isPad(last) || value.IsNothing(last):
		return front, last
	case fronts[table.Fold(front)] > 1:
		b.Doubts = append(b.Doubts, Doubt{line, end, "taken as " + last + " of " + front})
		return front, last
	}
	return end, ""
}
