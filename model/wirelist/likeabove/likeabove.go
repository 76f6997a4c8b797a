// Package likeabove writes out what lines that tell a wire each leave short: what is the same as in the line above, sizes whose unit the
// list says once, and a cavity that is free.
//
//	(sizes in mm²)
//	fuse box 3 -> rear lamp, 1.5 yellow
//	fuse box 4 -> front lamp, ditto
//	fuse box 5 -> heater, red, same size
//	fuse box 6 free
//
// It is asked before anyone looks for tables, of lines alone; ditto marks in cells are for package runon.
package likeabove

import (
	"strings"

	"contralay/model/wirelist/runline"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Told is what a line left short, as the report says it.
type Told struct {
	Line       int
	What       string // as the line has it
	Unit, Free bool   // a unit that is said once, a cavity that is free; else what is the same as above
}

// Rows writes the lines of a table out, and says what it wrote. Lines that leave nothing short stay as they are.
func Rows(h shape.Headings, t *table.Table) (rows []table.Row, told []Told) {
	if h.HeadLine() > 0 || h.Numbered() || !anyShort(t.Rows) {
		return t.Rows, nil
	}
	rows = make([]table.Row, len(t.Rows))
	copy(rows, t.Rows)
	told = withUnits(rows)
	var above run
	for i := range rows {
		r := &rows[i]
		if len(r.Cells) != 1 || r.Level > 0 {
			above = run{}
			continue
		}
		of := runOf(r.Cells[0])
		if of.ends {
			if text, what := above.into(r.Cells[0]); what != "" && r.Line <= above.line+2 {
				r.Cells = []string{text}
				told = append(told, Told{Line: r.Line, What: what})
				of = runOf(text)
			}
		}
		of.line = r.Line
		above = of
	}
	return rows, append(told, withFree(rows)...)
}

// anyShort reports whether some line may leave something short, by a look at each that costs little.
func anyShort(rows []table.Row) bool {
	const longest = 200 // bytes of a line that tells a wire (no source)
	several := 0
	for _, r := range rows {
		if len(r.Cells) == 1 && len(r.Cells[0]) <= longest && strings.Contains(r.Cells[0], ", ") {
			several++
		}
	}
	if several < 2 || several*4 < len(rows) {
		return false
	}
	for _, r := range rows {
		if len(r.Cells) != 1 || len(r.Cells[0]) > longest {
			continue
		}
		if strings.Contains(r.Cells[0], ", ") {
			if what, _ := same(r.Cells[0]); what != "" || hasBare(r.Cells[0]) {
				return true
			}
		} else if device, _ := freeOf(r.Cells[0]); device != "" {
			return true
		}
	}
	return false
}

// run is what a line tells of its wire.
type run struct {
	ends         bool // it tells both
	line         int
	colour, size string
}

// runOf reads a line.
func runOf(text string) (of run) {
	if from, to, rest := runline.Part(text); from != "" && to != "" && len(rest) > 1 {
		of = run{ends: true, colour: rest[0], size: rest[1]}
	}
	if of.colour == "" && of.size == "" {
		if l, ok := runline.FromToOf(text); ok {
			of = run{ends: true, colour: l.Colour, size: l.Size}
		}
	}
	if comma := strings.Index(text, ", "); of.ends && comma > 0 && (of.colour == "" || of.size == "") {
		colour, size := runline.Values(text[comma:])
		if of.colour == "" {
			of.colour = colour
		}
		if of.size == "" {
			of.size = size
		}
	}
	return of
}

// into writes the values of the line above into the place of the words of a line that say it is the same; what is "" where it has none, or
// the line above does not say the value.
func (above run) into(text string) (out, what string) {
	what, of := same(text)
	at := strings.LastIndex(text, what)
	if what == "" || at < 0 {
		return text, ""
	}
	values := ""
	switch of {
	case sameSize:
		values = above.size
	case sameColour:
		values = above.colour
	case sameAll:
		if values = value.JoinNonEmpty(", ", above.colour, above.size); above.colour == "" || above.size == "" {
			values = ""
		}
	}
	if values == "" {
		return text, ""
	}
	return text[:at] + values + text[at+len(what):], what
}
