package atplaces

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/strokes"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// leastRows is how many rows stand below the headings where that is no chance (no source).
const leastRows = 3

// Found is one table that was read so, and no word of its headings says that pins stand below: its line, the places, its rows.
type Found struct {
	Line   int
	Places string
	Rows   []table.Row
}

// Rows are the rows of a sheet, those of such tables in columns for both ends.
func Rows(h shape.Headings, t *table.Table) (rows []table.Row, unsaid []Found) {
	rows = t.Rows
	if h.HeadLine() > 0 || h.Numbered() || h.Recipe != nil {
		return rows, nil
	}
	for i := 0; i+leastRows < len(rows); i++ {
		head, ok := pairOf(rows[i])
		if !ok || i > 0 && !startsApart(rows[i-1], rows[i]) {
			continue
		}
		near, far := placeOf(h, head[0]), placeOf(h, head[1])
		if !near.is || !far.is || near.name != "" && strings.EqualFold(near.name, far.name) {
			continue
		}
		pairs := pairsBelow(t, rows, i)
		ends, things, ok := endsOf(pairs, near, far)
		if !ok {
			continue
		}
		made := spread(rows[i:i+1+len(pairs)], ends, near.name, far.name, t.Marked)
		if things {
			made = spreadThings(rows[i:i+1+len(pairs)], ends, near.name, t.Marked)
		} else if !near.ofPins && !far.ofPins {
			unsaid = append(unsaid, Found{Line: rows[i].Line, Places: near.name + ", " + far.name, Rows: made[1:]})
		}
		rows = slices.Concat(rows[:i], made, rows[i+1+len(pairs):])
		i += len(made) - 1
	}
	return rows, unsaid
}

// startsApart reports whether a row can be the first of a table: no row of two cells stands right above it.
func startsApart(above, r table.Row) bool {
	_, pair := pairOf(above)
	return !pair || r.First || above.Line+1 < r.Line
}

// pairOf are the two cells of a row, or the two parts of a line that a gap parts.
func pairOf(r table.Row) (pair [2]string, ok bool) {
	switch {
	case r.Level > 0 || r.Point && (r.Gap == nil || !value.IsNothing(r.Gap[0])):
		return pair, false
	case r.Gap != nil:
		return *r.Gap, true
	case len(r.Cells) == 1 && !r.Prose && strings.Count(r.Cells[0], ",") == 1: // a comma that was taken for one of a sentence
		before, behind, _ := strings.Cut(r.Cells[0], ",")
		pair = [2]string{strings.TrimSpace(before), strings.TrimSpace(behind)}
		return pair, pair[0] != ""
	case r.Prose || len(r.Cells) < 2 || r.Cells[0] == "" || r.Cells[1] == "" || strings.Join(r.Cells[2:], "") != "":
		return pair, false
	}
	return [2]string{r.Cells[0], r.Cells[1]}, true
}

// pairsBelow are the rows right below the headings in row i, up to the first that is none of two cells.
func pairsBelow(t *table.Table, rows []table.Row, i int) (pairs [][2]string) {
	step := 1
	if t.Marked {
		step = 2 // a rule may stand between
	}
	for k := i + 1; k < len(rows) && rows[k].Line <= rows[k-1].Line+step && !rows[k].First; k++ {
		pair, ok := pairOf(rows[k])
		if !ok {
			break
		}
		pairs = append(pairs, pair)
	}
	return pairs
}

// ends are the two ends of a row.
type ends struct{ near, far end }

// endsOf reads all rows of a table; ok is false where one of them is none, or nothing says that bare cells are pins: neither an arrow
// before each nor a word in both headings. things: the far cells are ends of their own and no pins of one place.
func endsOf(pairs [][2]string, near, far place) (all []ends, things, ok bool) {
	if len(pairs) < leastRows {
		return nil, false, false
	}
	told, filled, led := [2]int{}, [2]int{}, 0
	var pins [2][]string
	for _, p := range pairs {
		of := ends{endOf(p[0]), endOf(p[1])}
		for k, e := range []end{of.near, of.far} {
			if e.free {
				continue
			}
			if filled[k]++; e.told {
				told[k]++
			}
			pins[k] = append(pins[k], e.pin)
		}
		if of.near.led || of.far.led || of.near.free || of.far.free {
			led++
		}
		all = append(all, of)
	}
	for k := range told {
		if told[k] > 0 && told[k] < filled[k] || filled[k] < leastRows-1 {
			return nil, false, false // all of a column are told, or none
		}
	}
	bare := [2]bool{told[0] == 0, told[1] == 0}
	switch {
	case bare[0] && bare[1], near.name == "" && !far.leads, far.name == "" && !far.leads:
		return nil, false, false
	case !bare[0] && (far.leads || (led == len(all) || areFull(pins[1])) && !areOf(far, pins[1])) && bare[1]:
		return all, true, areEnds(all)
	case led < len(all) && !(near.ofPins && far.ofPins) && (bare[0] || bare[1]):
		return nil, false, false
	case far.leads, bare[0] && !areOf(near, pins[0]), bare[1] && !areOf(far, pins[1]):
		return nil, false, false
	}
	return all, false, true
}

// areFull reports whether each of some cells names a connector and a cavity of it.
func areFull(cells []string) bool {
	return !slices.ContainsFunc(cells, func(c string) bool { _, _, full := name.SplitEnd(c); return !full })
}

// areEnds reports whether the far cells are short enough for ends, and a colour stands in most of the near ones: these are pins.
func areEnds(all []ends) bool {
	const longest = 40 // bytes (no source)
	colours := 0
	for _, of := range all {
		if len(of.far.pin) > longest {
			return false
		}
		if of.near.colour != "" {
			colours++
		}
	}
	return 2*colours > len(all)
}

// heads are the headings of such a table.
var heads = []string{"From", "From pin", "To", "To pin", "Signal", "Colour", "Note"}

// spread is the headings and the rows in columns for both ends.
func spread(rows []table.Row, all []ends, near, far string, ruled bool) (made []table.Row) {
	for k, r := range rows {
		r.First, r.Prose, r.Point, r.Gap, r.Drawn = k == 0, false, false, nil, nil
		if k == 0 {
			r.Cells, r.Made, r.Ruled = slices.Clone(heads), true, ruled
			made = append(made, r)
			continue
		}
		of := all[k-1]
		signal, more, note := strokes.Said([]string{of.near.called, of.far.called}, nil)
		colour := of.near.colour
		switch {
		case colour == "":
			colour = of.far.colour
		case of.far.colour != "" && !strings.EqualFold(colour, of.far.colour):
			more = strings.TrimPrefix(more+", "+of.far.colour, ", ")
		}
		if more != "" {
			note = strings.TrimPrefix(note+", "+more, ", ")
		}
		r.Cells = []string{near, of.near.pin, far, of.far.pin, signal, colour, note}
		switch {
		case of.near.free || of.far.free:
			r.Cells = free(near, far, of, note)
		case of.near.pin == "":
			r.Cells[0] = ""
		case of.far.pin == "":
			r.Cells[2] = ""
		}
		made = append(made, r)
	}
	return made
}

// spreadThings is the same where the far cells are ends of their own.
func spreadThings(rows []table.Row, all []ends, near string, ruled bool) []table.Row {
	made := spread(rows, all, near, "", ruled)
	first := 0
	made[0].Cells = []string{"From", "From pin", "To", "Signal", "Colour", "Note"}
	if near == "" { // what the plug is called the titles may say
		first, made[0].Cells = 1, []string{"Pin", "To", "Signal", "Colour", "Note"}
	}
	for k := range made[1:] {
		r := &made[k+1]
		if !all[k].far.free {
			r.Cells[2], r.Cells[4], r.Cells[6] = all[k].far.pin, all[k].near.called, ""
		}
		r.Cells = slices.Delete(r.Cells, 3, 4)[first:]
	}
	return made
}

// free is a row of which one end says that nothing goes there: the other is an empty cavity, whose name and colour stay with it.
func free(near, far string, of ends, note string) []string {
	e, part, says := of.near, near, of.far.says
	if of.near.free {
		e, part, says = of.far, far, of.near.says
	}
	if e.called != "" {
		says += ", " + e.called
	}
	return []string{part, e.pin, "", "", "", e.colour, strings.Trim(says+", "+note, ", ")}
}
