package block

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/runline"
	"contralay/model/wirelist/table"
)

// points is how many rows from one on are a list of cavities, a point each; 0 where they are none.
//
//	## Pins
//	* 1 Rudder motor +
//	* 3 - Rudder sense
//	* 4 -
//
// Points are prose more often: the cavities must count up from the first without a gap and half of the names be of
// nets, or a heading must say that pins follow. Each name is short and no sentence.
func (f *finder) points(i int) int {
	rows := f.t.Rows
	if !f.isPoint(rows, i) || i > 0 && f.isPoint(rows, i-1) && rows[i-1].Deep == rows[i].Deep && rows[i-1].Point == rows[i].Point {
		return 0
	}
	n := 1
	for i+n < len(rows) && f.isPoint(rows, i+n) && rows[i+n].Deep == rows[i].Deep && rows[i+n].Point == rows[i].Point &&
		rows[i+n].Line == rows[i+n-1].Line+1 {
		n++
	}
	if n < 2 || runline.TellBothEnds(rows[i:i+n]) {
		return 0
	}
	seen := map[string]bool{}
	rises, last, nets := true, 0, 0
	for _, r := range rows[i : i+n] {
		pin, text, ok := point.Cut(r.Cells[0])
		if !ok || seen[pin] || name.StateOf(text) == name.Used && !point.IsShortName(f.parts.Of(text).Signal) {
			return 0
		}
		if point.IsNetLike(text) {
			nets++
		}
		seen[pin] = true
		at := name.Ordinal(pin)
		from, to, ranged := point.RangeOf(pin)
		if ranged {
			at = name.Ordinal(from)
		}
		rises = rises && (point.Follows(pin, last, at) || last == 0 && at == 0)
		if last = at; ranged {
			last = name.Ordinal(to)
		}
	}
	if i > 0 && len(rows[i-1].Cells) == 1 && point.BelowPlug(rows[i-1].Cells[0], rows[i:i+n]) {
		return n
	}
	if f.pinsWithGaps(rows[i:i+n]) || f.belowDesignator(i) && (n > 2 && !point.CountThings(rows[i:i+n]) || point.OnlyColours(rows)) {
		return n
	}
	if rises && (point.SaysPin(rows[i].Cells[0]) || i > 0 && rows[i-1].Point && rows[i-1].Deep < rows[i].Deep &&
		name.SaysConnector(rows[i-1].Cells[0])) {
		return n
	}
	if rises && n > 2 && (rows[i].Point || !f.t.Marked || isDashed(rows[i].Cells[0])) && 2*nets >= n ||
		f.saysPins(i) && !point.CountThings(rows[i:i+n]) || sayPin(rows[i:i+n]) {
		return n
	}
	return 0
}

// belowDesignator reports whether the text right above a row begins with the designator of a connector, "J1 - Gateway".
func (f *finder) belowDesignator(i int) bool {
	if i == 0 || len(f.t.Rows[i-1].Cells) != 1 {
		return false
	}
	first, _, _ := strings.Cut(f.t.Rows[i-1].Cells[0], " ")
	return name.IsDesignator(strings.TrimRight(first, ":,")) && strings.ContainsAny(first, "0123456789")
}

// isPoint reports whether a row is a point of a list, or a line of text alone that begins with a
// number and a full stop or a bracket.
func (f *finder) isPoint(rows []table.Row, i int) bool {
	r := rows[i]
	if _, both := f.ends[r.Line]; both {
		return false
	}
	if _, parted := f.cavities[r.Line]; parted || f.ends[r.Line].Whole || len(r.Cells) != 1 || f.t.Marked && !r.Prose || r.Level > 0 {
		return false
	}
	_, text, ok := point.Cut(r.Cells[0])
	first, _, _ := strings.Cut(table.Fold(text), " ")
	return ok && !name.IsConnectorWord(first) && // "P1 connector (8 pin)"
		(r.Point || !f.t.Marked || isNumbered(r.Cells[0]) || isDashed(r.Cells[0]) || point.SaysPin(r.Cells[0]))
}

// isNumbered reports whether a full stop or a bracket stands right behind the cavity that a line begins with, "3. Horn", "pin 3) Horn":
// "6 pin plug, to the door." is a sentence.
func isNumbered(text string) bool {
	at := strings.IndexAny(text, ".)")
	return at > 0 && (strings.IndexByte(text[:at], ' ') < 0 || point.SaysPin(text))
}

// isDashed reports whether a sign parts the cavity that a line begins with from the rest, "1 - red - battery", "4 = horn",
// "4: horn".
func isDashed(text string) bool {
	pin, rest, ok := strings.Cut(text, " ")
	if bare, colon := strings.CutSuffix(pin, ":"); ok && colon && name.IsCavity(bare) {
		return true
	}
	return ok && name.IsCavity(pin) && (strings.HasPrefix(rest, "- ") || strings.HasPrefix(rest, "– ") || strings.HasPrefix(rest, "= ") ||
		strings.HasPrefix(rest, ": "))
}

// saysPins reports whether the heading or the line above a row says that pins follow.
func (f *finder) saysPins(i int) bool {
	above := slices.Clone(f.path)
	if rows := f.t.Rows; i > 0 && !(rows[i-1].Point && rows[i].Point && rows[i-1].Deep == rows[i].Deep) { // no point before it
		above = append(above, rows[i-1])
	}
	if len(above) == 0 {
		return false
	}
	for _, r := range above[max(0, len(above)-2):] {
		_, text := r.Filled()
		for _, w := range name.Words(table.Fold(text)) {
			switch w {
			case "pin", "pins", "pinout", "pinouts", "cavities", "connector", "plug", "stecker", "pinbelegung", "belegung", "broches",
				"pines", "header", "socket", "receptacle", "jack", "buchse", "prise", "conector", "connettore", "kontaktdon", "wtyczka",
				"zlacze":
				return true
			}
		}
	}
	return false
}

// list makes the block of a list of points; what follows belongs to another.
func (f *finder) list(points []table.Row) {
	b := Block{Table: f.t, Path: slices.Clone(f.path), Titles: parentPoint(f.titles(), points), Listed: true}
	pins, texts := make([]string, len(points)), make([]string, len(points))
	for i, r := range points {
		pins[i], texts[i], _ = point.Cut(r.Cells[0])
	}
	if own := slices.Clone(points); f.parts.PartPoints(own, pins, texts) {
		b.Rows, b.Fixed = own, true
		f.close()
		f.all = append(f.all, b)
		return
	}
	wide := 0
	for _, r := range points {
		pin, text, _ := point.Cut(r.Cells[0])
		parts := strings.Split(strings.ReplaceAll(text, " – ", " - "), " - ")
		if wide == 0 {
			wide = len(parts)
		}
		if len(parts) != wide {
			wide = 1
		}
		r.Cells, r.Prose = append([]string{pin}, parts...), false
		b.Rows = append(b.Rows, r)
	}
	if wide == 1 { // no dash of its own parts all of them: each is one name
		for i, r := range points {
			pin, text, _ := point.Cut(r.Cells[0])
			b.Rows[i].Cells = []string{pin, text}
		}
	}
	partBrackets(b.Rows)
	f.close()
	f.all = append(f.all, b)
}
