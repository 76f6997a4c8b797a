// Package worksteps finds the rows of a list of wires that tell a step of work and no wire.
package worksteps

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Who refits a machine writes the wires that he runs among the steps of the work, in one table.
//
//	Step | What to do          | From | To   | Size | Colour
//	1    | Jack up the trailer | -    | -    | -    | -
//	2    | Brake light         | P3/2 | L1/1 | 2.5  | red
//	3    | Check all lamps     | -    | -    | -    | -

// Part makes texts between the rows of the steps that are no wires: the headings say steps or work, and of all columns from the ends to
// the colours such a row has nothing; the other rows, two or more, have an end. The column of what is done then holds the names of the
// wires, where no other column does.
func Part(h shape.Headings, head table.Row, rows []table.Row) (table.Row, []table.Row) {
	doing := doingColumn(head)
	if doing < 0 && !slices.ContainsFunc(head.Cells, isStep) {
		return head, rows
	}
	cols, _ := h.Columns([]table.Row{head}, 0)
	h.Sides(cols)
	b := shape.Block{Cols: cols}
	if !b.Has(name.FieldFrom, name.FieldFromPin, name.FieldRun) {
		return head, rows
	}
	var out []table.Row
	ends := 0
	for i, r := range rows {
		n, _ := r.Filled()
		switch s := (says{cols, r}); {
		case shape.IsText(r) || n == 0:
		case s.any(name.FieldFrom, name.FieldFromPin, name.FieldRun, name.FieldTo, name.FieldToPin):
			ends++
		case n > 1 && !s.any(name.FieldGauge, name.FieldColour, name.FieldSpec, name.FieldCable, name.FieldLength, name.FieldStripe):
			if out == nil {
				out = slices.Clone(rows)
			}
			out[i].Prose, out[i].Step = true, true
			out[i].Cells = []string{shape.RowText(withoutDashes(r.Cells))}
		}
	}
	if out == nil || ends < 2 {
		return head, rows
	}
	if doing >= 0 && cols[doing].Field == name.FieldKeep && !cols[doing].Given && !b.Has(name.FieldSignal) {
		head.Cells = slices.Clone(head.Cells)
		head.Cells[doing] = nameHead
	}
	return head, out
}

// nameHead is the heading of the names of wires.
const nameHead = "Function"

// says is a row with what its columns are.
type says struct {
	cols []shape.Column
	row  table.Row
}

// any reports whether the row has something in a column of some fields.
func (s says) any(fields ...name.Field) bool {
	for i, c := range s.cols {
		if i < len(s.row.Cells) && slices.Contains(fields, c.Field) && !value.IsNothing(s.row.Cells[i]) {
			return true
		}
	}
	return false
}

// withoutDashes are cells without those that say nothing.
func withoutDashes(cells []string) (out []string) {
	for _, c := range cells {
		if !value.IsNothing(c) {
			out = append(out, c)
		}
	}
	return out
}

// doingColumn is the column whose heading says what is done; −1 where there is none.
func doingColumn(head table.Row) int {
	return slices.IndexFunc(head.Cells, func(c string) bool {
		w := name.Words(table.Fold(c))
		if len(w) == 0 {
			return false
		}
		switch {
		case strings.HasPrefix(strings.Join(w, " "), "what to do"), strings.HasPrefix(strings.Join(w, " "), "work to do"):
			return true
		case len(w) > 2:
			return false
		}
		switch w[0] {
		case "task", "action", "job", "work", "operation", "activity", "arbeit", "arbeitsgang", "tatigkeit", "taetigkeit", "travail",
			"operazione", "lavoro", "attivita", "tarea", "trabajo", "operacion", "handeling", "werk", "werkzaamheid", "czynnosc", "arbete",
			"arbejde", "arbeid", "atgard":
			return true // from memory, no source
		}
		return false
	})
}

// isStep reports whether a heading counts steps.
func isStep(head string) bool {
	w := name.Words(table.Fold(head))
	if len(w) == 0 || len(w) > 2 {
		return false
	}
	switch w[0] {
	case "step", "steps", "schritt", "arbeitsschritt", "etape", "paso", "passo", "fase", "stap", "krok", "steg", "trin", "trinn":
		return true // from memory, no source
	}
	return false
}
