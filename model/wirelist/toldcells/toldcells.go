package toldcells

import (
	"slices"
	"strconv"
	"strings"

	"contralay/model/wirelist/huecodes"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/pieces"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Line is one line, or a part of one, in cells.
type Line struct {
	Row   int    // of its table
	Of    string // the connector that the line says itself; "" where a text above it does
	ID    string // the number of the wire, and both its ends, where the line says them before its cells
	From  string
	To    string
	Note  string // what else the line says of it
	Cells []string
}

// Wire is what a line tells; "" where it does not say it.
type Wire struct {
	Row                        int
	ID, Of, Pin, From, To      string
	Colour, Size, Signal, Note string
	Free                       bool // no wire is in its cavity, or none that goes anywhere yet
	toAt                       int  // in which cell the word for the far end stands, from 1
	left                       []text
}

// text is a cell, or the rest of one, that is no cavity, colour or size.
type text struct {
	at   int
	says string
}

// reader is what all lines together say.
type reader struct {
	lang  string          // whose words and short forms the colours are in
	unit  string          // of the sizes without one: "mm2", "AWG" or ""
	pins  int             // which cell is the cavity, from 1; 0 where none is, or where a word says which
	ends  int             // which cell is the near end, from 1
	front bool            // the colour stands before the name in one cell
	bare  bool            // the numbers behind the colours are gauges without their unit
	hues  map[string]bool // texts that were asked, and whether they are colours
}

// Told are the wires of some lines, and whose colours they have.
type Told struct {
	Wires  []Wire
	Lang   string
	Unit   string
	Counts int // how many have a text that counts things, "12 pieces", "30 m": they are of a list of goods
}

// Tell reads some lines; unit is the one that the list says once for its sizes, front says that a colour may stand before a name in one
// cell.
func Tell(lines []Line, unit string, front bool) Told {
	best := Told{Unit: unit}
	most := -1
	for _, lang := range append([]string{""}, huecodes.Languages()...) {
		r := reader{lang: lang, unit: unit, hues: map[string]bool{}}
		r.findPins(lines)
		wires := r.wires(lines)
		if n := coloured(wires); front && (4*n < 3*(len(wires)-free(wires)) || n == 0) {
			f := r
			f.front = true
			if of := f.wires(lines); coloured(of) > n {
				r, wires = f, of
			}
		}
		if b := r; r.unit == "" {
			b.bare = true
			if of := b.wires(lines); 4*sized(of) >= 3*coloured(of) && sized(of) > sized(wires) {
				wires = of
			}
		}
		if n := coloured(wires); n > most {
			best, most = Told{Wires: wires, Lang: lang, Unit: r.unit}, n
		}
		if most+free(wires) == len(wires) {
			break
		}
	}
	best.settle()
	return best
}

func coloured(all []Wire) (n int) {
	for _, w := range all {
		if w.Colour != "" {
			n++
		}
	}
	return n
}

func sized(all []Wire) (n int) {
	for _, w := range all {
		if w.Size != "" {
			n++
		}
	}
	return n
}

func free(all []Wire) (n int) {
	for _, w := range all {
		if w.Free && w.Colour == "" {
			n++
		}
	}
	return n
}

// findPins finds the column of cavities: names of cavities in nearly every line, each its own, numbers rising.
func (r *reader) findPins(lines []Line) {
	for at := range 3 {
		n, last, seen := 0, map[string]int{}, map[string]bool{}
		row := -1
		for _, l := range lines {
			if l.Of == "" && l.Row > row+1 {
				last, seen = map[string]int{}, map[string]bool{} // a text stands between: another plug begins
			}
			row = l.Row
			if at >= len(l.Cells) {
				continue
			}
			c := strings.TrimRight(l.Cells[at], ".:)")
			if _, _, ok := pinRange(c); !ok && !name.IsCavity(c) || seen[l.Of+":"+c] {
				continue
			}
			number, err := strconv.Atoi(c)
			if err == nil && number <= last[l.Of] {
				continue
			}
			last[l.Of], seen[l.Of+":"+c] = number, true
			n++
		}
		if n > 1 && 5*n >= 4*len(lines) {
			r.pins = at + 1
			return
		}
	}
	for at := range 2 {
		n, bare := 0, 0
		for _, l := range lines {
			if at < len(l.Cells) && IsEnd(l.Cells[at]) {
				n++
			} else if at < len(l.Cells) && isNamed(l.Cells[at]) {
				bare++ // a splice among them
			}
		}
		if 5*(n+bare) >= 4*len(lines) && n > bare {
			r.ends = at + 1
			return
		}
	}
}

// pinRange parts "3-5", two cavities of one wire or of several that are alike.
func pinRange(c string) (from, to int, ok bool) {
	a, b, cut := strings.Cut(c, "-")
	if !cut {
		return 0, 0, false
	}
	from, err := strconv.Atoi(a)
	to, bad := strconv.Atoi(b)
	return from, to, err == nil && bad == nil && from > 0 && from < to && to < from+20
}

// IsEnd reports whether a cell names a connector and its cavity, with a word or a sign between: "M3 pin 1", "X1.4", "LP1-A".
func IsEnd(c string) bool {
	w := strings.Fields(c)
	if n := len(w); n > 2 && n < 7 && name.IsPinWord(table.Fold(w[n-2])) && isCavity(w[n-1]) {
		return true
	}
	if n := len(w); n == 1 {
		at := strings.LastIndexAny(c, ":-/.")
		return at > 0 && isCavity(c[at+1:]) && (name.IsDesignator(c[:at]) || isCapitals(c[:at]) && value.IsDigit(c[at+1]) && c[at] != '.')
	}
	return false
}

// isCapitals reports whether a text is up to four capitals, as plugs are called for short.
func isCapitals(s string) bool {
	return len(s) < 5 && strings.Trim(s, "ABCDEFGHIJKLMNOPQRSTUVWXYZ") == ""
}

// isNamed reports whether a cell is a designator alone, as splices and studs are called.
func isNamed(c string) bool { return name.IsDesignator(c) && strings.ToUpper(c) == c }

func isCavity(w string) bool { return name.IsCavity(w) || w == "+" || w == "-" }

// wires reads every line.
func (r reader) wires(lines []Line) (all []Wire) {
	for _, l := range lines {
		all = append(all, r.line(l)...)
	}
	return all
}

// line reads one line; cavities that are told as a range are wires of their own.
func (r reader) line(l Line) []Wire {
	w := Wire{Row: l.Row, ID: l.ID, Of: l.Of, From: l.From, To: l.To, Note: l.Note}
	for i, c := range l.Cells {
		r.cell(&w, i+1, strings.Trim(c, " \t,;"))
	}
	if w.Pin == "" && w.From == "" && len(w.left) > 0 {
		if words := strings.Fields(w.left[0].says); len(words) == 2 && name.IsPinWord(table.Fold(words[0])) && isCavity(words[1]) {
			w.Pin, w.left = words[1], w.left[1:]
		}
	}
	if from, to, ok := pinRange(w.Pin); ok {
		var all []Wire
		for n := from; n <= to; n++ {
			one := w
			one.Pin, one.left = strconv.Itoa(n), slices.Clone(w.left)
			all = append(all, one)
		}
		return all
	}
	return []Wire{w}
}

// cell reads one cell.
func (r reader) cell(w *Wire, at int, c string) {
	words := strings.Fields(c)
	switch {
	case c == "":
	case w.toAt > 0 && at == w.toAt+1 && isCavity(c) && !EndsInCavity(w.To):
		w.To += ":" + c // "to Fuel pump", "+"
	case at == r.pins && w.Pin == "" && (name.IsCavity(strings.TrimRight(c, ".:)")) || strings.Contains(c, "-")):
		w.Pin = strings.TrimRight(c, ".:)")
	case at == r.ends && w.From == "" && (IsEnd(c) || isNamed(c)):
		w.From = c
	case w.Pin == "" && r.pins == 0 && len(words) == 2 && name.IsPinWord(table.Fold(words[0])) && name.IsCavity(words[1]):
		w.Pin = words[1]
	case name.StateOf(c) != name.Used:
		w.Free = true
		w.left = append(w.left, text{at, c})
	case w.Colour == "" && r.isColour(c):
		w.Colour = c
	case w.Size == "" && r.isSize(c):
		w.Size = c
	case r.values(w, at, words):
	case r.leads(w, c):
		w.toAt = at
	default:
		if r.front && w.Colour == "" {
			c = r.colourFront(w, at, words)
		}
		w.Free = w.Free || name.StateOf(c) != name.Used
		if c != "" {
			w.left = append(w.left, text{at, c})
		}
	}
}

// values takes a cell that is a colour and a size, in any order, "20ga yellow/black".
func (r reader) values(w *Wire, at int, words []string) bool {
	for k := 1; k < len(words); k++ {
		a, b := strings.Join(words[:k], " "), strings.Join(words[k:], " ")
		if r.isColour(b) && r.isSize(a) {
			a, b = b, a
		}
		if w.Colour == "" && w.Size == "" && r.isColour(a) && r.isSize(b) {
			w.Colour, w.Size = a, b
			return true
		}
	}
	return false
}

// leads takes a cell that says with a word where the wire goes, or comes from.
func (r reader) leads(w *Wire, c string) bool {
	if w.To != "" {
		return false
	}
	if to, ok := BehindLead(c); ok {
		if of, pin, ok := strings.Cut(strings.TrimSuffix(to, ")"), " ("); ok && strings.HasSuffix(to, ")") && isCavity(pin) {
			to = of + ":" + pin // "to Fuel pump (+)"
		}
		w.To = to
		return true
	}
	return false
}

// colourFront takes the colour off the front of a cell, and what is left of it.
func (r reader) colourFront(w *Wire, at int, words []string) string {
	const most = 3 // words of a colour (no source)
	for k := min(most, len(words)-1); k > 0; k-- {
		if c := strings.Join(words[:k], " "); r.isColour(c) {
			w.Colour = c
			if w.Size == "" && r.isSize(words[k]) {
				w.Size = words[k]
				k++
			}
			return strings.Join(words[k:], " ")
		}
	}
	return strings.Join(words, " ")
}

// isColour reports whether a text is a colour in the words and short forms of the language.
func (r reader) isColour(c string) bool {
	if c == "" || len(c) > 40 || strings.ContainsAny(c, "0123456789+") {
		return false
	}
	is, asked := r.hues[c]
	if !asked {
		_, is = value.ParseColour(c, r.lang)
		is = len(c) > 1 && (is || r.lang != "" && huecodes.Readable([]string{c}, r.lang) == 1)
		r.hues[c] = is
	}
	return is
}

// isSize reports whether a text is a size of wire: with its unit, or as wire is made in where the list says the unit, or with decimals.
func (r reader) isSize(c string) bool {
	if c == "" || c[0] < '0' || c[0] > '9' || len(c) > 12 {
		return false
	}
	low := strings.ToLower(c)
	if strings.Trim(c, "0123456789.,") == "" {
		switch {
		case value.IsSection(c):
			return r.unit != "AWG"
		case r.unit == "AWG":
			n, err := strconv.Atoi(c)
			return err == nil && n <= 30
		case r.unit == "mm2":
			return IsWhole(c) || len(c) > 2 && strings.ContainsAny(c, ".,")
		}
		return r.bare && pieces.IsBareSize(c)
	}
	for _, unit := range []string{"mm2", "mm²", "qmm", "mmq", "sqmm", "mm", "awg", "ga", "ga."} {
		if n, ok := strings.CutSuffix(low, unit); ok {
			n = strings.TrimSpace(n)
			if n == "" || strings.Trim(n, "0123456789.,") != "" {
				return false
			}
			return unit != "mm" || value.IsSection(n) || IsWhole(n)
		}
	}
	return false
}

// IsWhole reports whether a number without decimals is a section in mm² that wire is made in. Common practice, no source.
func IsWhole(c string) bool {
	switch c {
	case "1", "2", "3", "4", "6", "10", "16", "25", "35", "50", "70", "95", "120":
		return true
	}
	return false
}
