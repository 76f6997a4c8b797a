package block

import (
	"slices"
	"strings"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/table"
)

// The cavities of a header or a driver board are often told by their marks, a point each, and the colour of the wire behind a colon.
//
//	### X driver
//	- 2B: black
//	- 2A: green, to motor A
//	- EN: not used

// padColour is what one such point says; pad is "" where it is none.
type padColour struct{ pad, signal, colour, size, to, note string }

// padColours is how many rows from one on are the marked cavities of a device, a point each; 0 where they are none. Half of the marks
// must be known as such, all that are in use have a colour, and a heading must name the device and say nothing of lamps.
func (f *finder) padColours(i int) int {
	rows := f.t.Rows
	if i > 0 && f.padColourAt(i-1).pad != "" && rows[i].Line <= rows[i-1].Line+1 && rows[i].Deep == rows[i-1].Deep {
		return 0
	}
	n, known, used, numbers, told := 0, 0, 0, 0, false
	seen, colours := map[string]bool{}, map[string]bool{}
	for i+n < len(rows) && (n == 0 || rows[i+n].Line <= rows[i+n-1].Line+1 && rows[i+n].Deep == rows[i].Deep) {
		p := f.padColourAt(i + n)
		if p.pad == "" || seen[p.pad] {
			break
		}
		seen[p.pad] = true
		if isMark(p.pad) {
			known++
		}
		if p.colour != "" {
			used++
			colours[table.Fold(p.colour)] = true
		}
		told = told || p.to != "" || p.size != ""
		if strings.Trim(p.pad, "0123456789") == "" {
			numbers++
		}
		n++
	}
	if n < 2 || used < 2 || 2*known < n || 2*numbers >= n || !told && 4*len(colours) < 3*used {
		return 0 // lamps have one colour often
	}
	_, device := f.headed(nil, rows[i].Line)
	if above, plug := f.plugAbove(i); device == "" && above >= 0 {
		device = plug
	}
	if of := lookedUp(device); device == "" || of != "" && !told {
		return 0
	}
	return n
}

// padColourAt parts a row; free cavities have no colour.
func (f *finder) padColourAt(i int) (p padColour) {
	r := f.t.Rows[i]
	if len(r.Cells) != 1 || r.Level > 0 || f.t.Marked && !r.Prose || !r.Point && f.t.Marked || len(r.Cells[0]) > 2*mostHead {
		return p
	}
	return partPadColour(strings.TrimSpace(strings.TrimLeft(r.Cells[0], "*•·")))
}

// partPadColour parts "2A: green 22 AWG, to motor A" and "EN: not used".
func partPadColour(text string) (p padColour) {
	for _, mark := range []string{": ", " : ", " = ", " - ", " – "} {
		front, back, ok := strings.Cut(text, mark)
		front, back = name.WithoutPinWord(strings.TrimSpace(front)), strings.TrimSpace(back)
		if !ok || front == "" || back == "" || strings.Contains(front, " ") || len(front) > 8 || point.IsColour(front) && len(front) > 2 {
			continue
		}
		if name.StateOf(back) != name.Used {
			return padColour{pad: front, signal: back}
		}
		of := point.PartsOf(back)
		if colour, size := point.WireValues(of.Signal); of.Colour == "" && colour != "" {
			of.Colour, of.Size, of.Signal = colour, size, ""
		}
		if of.Colour == "" || of.Signal != "" {
			return p
		}
		if of.To != "" {
			far, values := point.ValuesBehind(of.To)
			if len(values) == 1 && !point.IsColour(values[0]) && of.Size == "" { // "red, to PSU V+, 18 AWG"
				of.To, of.Size = far, values[0]
			}
		}
		return padColour{front, "", of.Colour, of.Size, of.To, of.Note}
	}
	return p
}

// isMark reports whether a word is a cavity, a pad or a pole.
func isMark(w string) bool {
	return name.IsCavity(w) || arrow.IsPad(w) || strings.HasSuffix(w, "+") || strings.HasSuffix(w, "-") ||
		slices.Contains([]string{"plus", "minus", "pos", "neg", "positive", "negative"}, table.Fold(w))
}

// listPads makes the block of such points.
func (f *finder) listPads(at, n int) {
	b := Block{Table: f.t, Path: slices.Clone(f.path), Titles: f.titles(), Listed: true, Fixed: true}
	far := f.farMarks()
	for i := at; i < at+n; i++ {
		r, p := f.t.Rows[i], f.padColourAt(i)
		r.Cells, r.Prose, r.Point = []string{p.pad, p.signal, p.colour, p.size, far.part(p.to), p.note}, false, false
		b.Rows = append(b.Rows, r)
	}
	f.close()
	f.all = append(f.all, b)
}

// farMarks are the far ends of the points of a sheet: of each text before the last word, how many of these there are, and the last words
// that are the marks of such a device.
type farMarks struct {
	devices map[string]int
	marks   map[string]bool
}

// farMarks looks at the points of the whole sheet.
func (f *finder) farMarks() (m farMarks) {
	m.devices, m.marks = map[string]int{}, map[string]bool{}
	var all [][2]string
	seen := map[string]bool{}
	for i := range f.t.Rows {
		to := f.padColourAt(i).to
		if at := strings.LastIndexByte(to, ' '); at > 0 && !seen[to] {
			seen[to] = true
			device, mark := to[:at], to[at+1:]
			m.devices[device]++
			all = append(all, [2]string{device, mark})
		}
	}
	for _, e := range all {
		if m.devices[e[0]] > 1 && looksMarked(e[1]) {
			m.marks[e[1]] = true
		}
	}
	return m
}

// part writes a colon before the mark of a device that has several, or that another device has too: "PSU V+", "X switch NC".
func (m farMarks) part(to string) string {
	at := strings.LastIndexByte(to, ' ')
	if at < 0 || strings.Contains(to, ":") || !looksMarked(to[at+1:]) || m.devices[to[:at]] < 2 && !m.marks[to[at+1:]] {
		return to
	}
	return to[:at] + ":" + to[at+1:]
}

// looksMarked reports whether a word can be the mark of a cavity: short, and in capitals, or with a number or a sign.
func looksMarked(w string) bool {
	return len(w) <= 6 && (isMark(w) || strings.ToUpper(w) == w)
}
