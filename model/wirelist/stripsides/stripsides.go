package stripsides

import (
	"cmp"
	"slices"
	"strings"

	"contralay/model/wirelist/cableheads"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/titleline"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

const leastRows = 3 // terminals of such a table (no source)

// Rows are the rows of a sheet, those of such tables with a row for each wire; unnamed are the lines of the headings of those that nothing
// but the file names.
func Rows(h shape.Headings, t *table.Table) (rows []table.Row, unnamed []int) {
	if h.HeadLine() > 0 || h.Numbered() {
		return t.Rows, nil // a person has said where its columns are
	}
	rows = t.Rows
	for i := 0; i < len(rows); i++ {
		if i > 0 && !shape.IsText(rows[i-1]) {
			continue // most rows
		}
		s, n, ok := headsAt(h, rows[i:])
		if !ok {
			continue
		}
		end := i + n
		for end < len(rows) && !shape.IsText(rows[end]) && !h.IsHead(rows[end]) {
			end++
		}
		if s.of = titleOf(t, rows[:i], s); s.of == "" || !s.holds(rows[i+n:end]) {
			continue
		}
		if i == 0 && s.of != t.Sheet {
			unnamed = append(unnamed, rows[i].Line)
		}
		made := s.wires(rows[i], rows[i+n:end])
		rows = slices.Concat(rows[:i], made, rows[end:])
		i += len(made) - 1
	}
	return rows, unnamed
}

// titleOf is the name of the strip or the box that the last text above a table names, or the sheet where none stands there; "" where it
// names none.
func titleOf(t *table.Table, above []table.Row, s sides) string {
	if len(above) == 0 {
		switch {
		case !isTerminal(s.heads[s.terminal]):
			return ""
		case name.IsDesignator(t.Sheet):
			return t.Sheet
		case s.mirrored:
			return name.BaseName(t.File) // as the connectors of other tables that nothing names
		}
		return ""
	}
	_, text := above[len(above)-1].Filled()
	if first, _, _ := strings.Cut(text, " "); cableheads.IsWord(strings.TrimRight(first, ":.")) || titleline.SaysHarness(text) {
		return "" // of a cable, or of all
	}
	called := name.ConnectorName(text)
	if !name.IsDesignator(called) {
		called = solely(text, called)
	}
	switch {
	case called == "" || !name.IsDesignator(called) && !words.NamesStrip(text) && !words.NamesBox(text):
	case isTerminal(s.heads[s.terminal]), words.NamesStrip(text), words.NamesBox(text):
		return called
	}
	if s.mirrored && isTerminal(s.heads[s.terminal]) {
		return cmp.Or(called, text)
	}
	return ""
}

// solely is the one designator among the words of a title; what it is called otherwise where there is none, or several.
func solely(title, otherwise string) (called string) {
	for w := range strings.FieldsSeq(title) {
		if w = strings.Trim(w, ".,;:()"); name.IsDesignator(w) && value.HasDigit(w) {
			if called != "" {
				return otherwise
			}
			called = w
		}
	}
	if called == "" {
		return otherwise
	}
	return called
}

// holds reports whether the rows below such headings are those of terminals: nearly each has one of its own, and things stand on both
// sides, none of which is the strip itself.
func (s *sides) holds(rows []table.Row) bool {
	seen := map[string]bool{}
	var n [2]int
	for _, r := range rows {
		t := cell(r.Cells, s.terminal)
		if !name.IsCavity(t) {
			return false
		}
		seen[t] = true
		for k := range s.side {
			place := cell(r.Cells, s.side[k].place)
			if s.side[k].place < 0 {
				place = s.cableOf(k, r.Cells)
			}
			if pin := cell(r.Cells, s.side[k].pin); place == "" && !value.IsNothing(pin) {
				return false // the device stands in a row above: which of both is below it then, nobody would see
			}
			if value.IsNothing(place) {
				continue
			}
			if name.Key(place) == name.Key(s.of) {
				return false
			}
			n[k]++
		}
	}
	return len(rows) >= leastRows && 3*len(seen) >= 2*len(rows) && 2*max(n[0], n[1]) > len(rows) && 3*min(n[0], n[1]) >= len(rows)
}

// cableOf is the cable on one side.
func (s *sides) cableOf(k int, cells []string) string {
	for _, v := range s.side[k].values {
		if v.field == name.FieldCable {
			return cell(cells, v.at)
		}
	}
	return ""
}

// wires are the headings of the wires, and a row for each; a terminal with none has one as well.
func (s *sides) wires(head table.Row, rows []table.Row) []table.Row {
	head.Cells = s.newHeads()
	out := []table.Row{head}
	var above []string
	for _, r := range rows {
		made, from, free := 0, len(out), ""
		r.Cells = s.withoutDittos(r.Cells, above)
		above = r.Cells
		for k := range s.side {
			side := &s.side[k]
			place, pin := cell(r.Cells, side.place), cell(r.Cells, side.pin)
			if name.StateOf(place) != name.Used {
				free, place, pin = place, "", ""
			} else if value.IsNothing(place) {
				place, pin = "", ""
			}
			if place == "" && !s.says(k, r.Cells) {
				continue
			}
			one := r
			one.Cells = s.row(k, r.Cells, place, pin)
			out = append(out, one)
			made++
		}
		if made == 0 {
			r.Cells = s.row(1, r.Cells, "", "")
			out = append(out, r)
		}
		for i := from; free != "" && i < len(out); i++ { // "spare" where the other wire would go
			out[i].Cells, out[0].Cells = append(out[i].Cells, free), s.remarked()
		}
	}
	return out
}

// withoutDittos are the cells of a row, the marks of repetition on both sides replaced by the cells of the row above: the wire of the other
// side will stand between the two.
func (s *sides) withoutDittos(cells, above []string) []string {
	out := slices.Clone(cells)
	for _, side := range s.side {
		of := []int{side.place, side.pin}
		for _, v := range side.values {
			of = append(of, v.at)
		}
		for _, i := range of {
			if c := cell(out, i); c != "" && value.IsDitto(c) {
				out[i] = cell(above, i)
			}
		}
	}
	return out
}

// says reports whether a row has a value of the wire of one side.
func (s *sides) says(k int, cells []string) bool {
	return slices.ContainsFunc(s.side[k].values, func(v valueColumn) bool { return !value.IsNothing(cell(cells, v.at)) })
}

// newHeads are the headings of the wires: those of the list where it has them, so that its language stays.
func (s *sides) newHeads() []string {
	from, to := "From", "To"
	if s.side[0].place >= 0 && s.side[0].field == name.FieldFrom && s.side[1].field == name.FieldTo {
		from, to = s.heads[s.side[0].place], s.heads[s.side[1].place]
	}
	out := []string{from, to}
	if s.parted() {
		out = []string{from, s.heads[s.side[0].pin], to, s.heads[s.side[1].pin]}
	}
	for _, v := range s.kinds {
		out = append(out, s.heads[v.at])
	}
	for _, i := range s.shared {
		if strings.EqualFold(s.heads[i], "wire") {
			out = append(out, "Wire no.") // each stands twice now, as sizes do
			continue
		}
		out = append(out, s.heads[i])
	}
	return out
}

// remarked are these headings with one more for remarks.
func (s *sides) remarked() []string { return append(s.newHeads(), "Remark") }

// row is the row of the wire on one side of a terminal.
func (s *sides) row(k int, cells []string, place, pin string) []string {
	own := [2]string{s.of, cell(cells, s.terminal)}
	ends := [2][2]string{{place, pin}, own}
	if k == 1 {
		ends = [2][2]string{own, {place, pin}}
	}
	var out []string
	for _, e := range ends {
		if s.parted() {
			out = append(out, e[0], e[1])
		} else if e[1] != "" {
			out = append(out, e[0]+":"+e[1])
		} else {
			out = append(out, e[0])
		}
	}
	for _, v := range s.kinds {
		at := slices.IndexFunc(s.side[k].values, func(o valueColumn) bool { return o.field == v.field })
		if at < 0 {
			out = append(out, "")
			continue
		}
		out = append(out, cell(cells, s.side[k].values[at].at))
	}
	for _, i := range s.shared {
		out = append(out, cell(cells, i))
	}
	return out
}

// parted reports whether both sides have the cavities of their devices in a column of their own.
func (s *sides) parted() bool { return s.side[0].pin >= 0 && s.side[1].pin >= 0 }

func cell(cells []string, i int) string {
	if i < 0 || i >= len(cells) {
		return ""
	}
	return strings.TrimSpace(cells[i])
}
