package evenlines

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/toldcells"
)

const (
	least     = 3    // lines of one build where that is no chance (no source)
	mostLines = 2000 // a longer list is made by a program, which does not write lines of this kind (no source)
	longest   = 240  // bytes of a line (no source)
)

// Rows makes rows of a table of such lines; they are as they were where the lines are of no build, or of several.
func Rows(h shape.Headings, t *table.Table) []table.Row {
	if h.HeadLine() > 0 || h.Numbered() || len(t.Rows) < least || len(t.Rows) > mostLines || toldcells.HasHeads(h, t.Rows) {
		return t.Rows // a person has said where its columns are, or the list has
	}
	texts := make([]string, len(t.Rows))
	for i, r := range t.Rows {
		if r.Drawn != nil || r.Sketch || r.Struck {
			return t.Rows // others read it
		}
		if r.Level == 0 {
			texts[i] = toldcells.Text(r.Cells)
		}
		if len(texts[i]) > longest {
			return t.Rows
		}
	}
	lines := evenly(t.Rows, texts)
	if lines == nil {
		return t.Rows
	}
	told := toldcells.Tell(lines, toldcells.Unit(t.Rows), false)
	if !alike(told.Wires) {
		return t.Rows
	}
	rows, _ := told.Spread(t, nil)
	return rows
}

// alike reports whether all wires say the same things, and none that its cavity is free: what one of them leaves out is told by
// the readers that take each line by itself.
func alike(wires []toldcells.Wire) bool {
	says := func(w toldcells.Wire) [4]bool {
		return [4]bool{w.Colour != "", w.Size != "", w.Signal != "", w.Note != ""}
	}
	names := 0
	for _, w := range wires {
		if w.Free || says(w) != says(wires[0]) {
			return false
		}
		if w.Signal != "" && !name.IsCavity(w.Signal) {
			names++
		}
	}
	return len(wires) > 0 && (names > 0 || wires[0].Signal == "") // "to Motor 1, U1": a cavity behind a comma
}

// evenly parts the lines that have an arrow, all of them by one build; nil where there is none that parts them all. Of several the one
// with the most pieces is taken.
func evenly(rows []table.Row, texts []string) (best []toldcells.Line) {
	most := 0
	for _, arrow := range arrows {
		n := 0
		for _, text := range texts {
			if strings.Contains(text, arrow) {
				n++
			}
		}
		if n < least {
			continue
		}
		for _, b := range builds(arrow) {
			if lines, pieces := b.all(rows, texts); pieces > most {
				best, most = lines, pieces
			}
		}
		if best != nil {
			return best
		}
	}
	return nil
}

// builds are those with one arrow.
func builds(arrow string) (all []build) {
	for far := range styles {
		for _, apart := range aparts {
			for _, sign := range heads {
				if arrow != " - " && arrow != " – " && arrow != " to " && sign != arrow && sign != " - " && sign != " – " {
					all = append(all, build{arrow: arrow, far: far, sign: sign, under: true, apart: apart})
				}
			}
			for near := range whole {
				for _, sign := range signs {
					if far == whole || sign == arrow || sign == apart && sign != ", " || arrow == " - " && (near == dash || far == dash) {
						continue
					}
					all = append(all, build{arrow: arrow, near: near, far: far, sign: sign, apart: apart})
				}
			}
		}
	}
	return all
}

// all parts the lines of a text, and counts their pieces; nil where one with the arrow, or a point of a list, is of another build, or one
// without the arrow is more than a heading.
func (b build) all(rows []table.Row, texts []string) (lines []toldcells.Line, pieces int) {
	titled := false
	for i, text := range texts {
		switch {
		case rows[i].Level > 0:
			titled = true
			continue
		case text == "":
			continue
		case !rows[i].Point && !strings.Contains(text, b.arrow):
			if !isHeading(text) {
				return nil, 0
			}
			titled = true
			continue
		}
		l, ok := b.of(text)
		if !ok || b.under && !titled {
			return nil, 0
		}
		l.Row = i
		lines = append(lines, l)
		pieces += len(l.Cells)
	}
	if len(lines) < least || pieces < len(lines) {
		return nil, 0
	}
	return lines, pieces
}

// isHeading reports whether a line could be the heading of those below it: a few words, none of them parted by a sign.
func isHeading(text string) bool {
	const most = 6 // words (no source)
	return len(strings.Fields(text)) <= most && !strings.ContainsAny(strings.TrimRight(text, ":"), ",;:|=>()")
}
