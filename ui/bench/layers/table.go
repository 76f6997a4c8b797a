package layers

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"contralay/calc/sheet"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/layers/ways"
	"contralay/ui/bench/words"
	"contralay/ui/draw"
)

// The table of what could be otherwise: a line each, its figures beside those of the branch as it is.

// tableName is how wide the first column of the table on the step is: the name of a kind with its value.
const tableName = 24

// shortNames are the kinds whose names are too long for the table.
var shortNames = map[string]string{"spec": "spec", "sheath": "tube"}

// named is a kind by its number in the table, with one of its values, in as much room as the table has.
func named(m *desk.Model, k ways.Kind, says string) string {
	name := fmt.Sprintf("%d %s", numberOf(m, k), cmp.Or(shortNames[k.ID], k.Name))
	if says == "" {
		return name
	}
	if strings.HasPrefix(k.ID, "size ") {
		return name + " to " + says
	}
	if room := tableName - draw.Width(says) - 1; room > draw.Width(name) {
		return draw.Pad(name, min(room, 13)) + " " + says
	}
	return name + " " + says
}

// workingItOut stands where figures are not ready yet.
const workingItOut = "working it out"

// tableRows is the table under the lay-up: the branch as it is, the lay-ups worth having, a row a kind of change, and
// the variants that are kept.
func tableRows(m *desk.Model, w int) []desk.Row {
	t := ways.MakeColumns(m, "what if   + is better", ways.Decides, tableName, w)
	rows := []desk.Row{{Text: t.Head(), Heads: true}}
	k, any := ways.Of(m, ways.LayupID)
	if _, b, _ := m.BranchHere(); !b.Proposed || k.Now < 0 || !any { // a proposal is one of the lay-ups
		rows = append(rows, nowRow(m, t))
	}
	if any {
		rows = append(rows, layupRows(m, k, t)...)
	} else {
		rows = append(rows, searchRows(m)...)
	}
	for _, k := range numbered(m) {
		rows = append(rows, kindRow(m, k, t))
	}
	return append(rows, variantRows(m, t)...)
}

// outcomeRow is the row of a way: its figures, or why there are none.
func outcomeRow(m *desk.Model, t ways.Columns, name string, w ways.Way) desk.Row {
	o, known := ways.Came(m, w)
	switch {
	case !known:
		r := t.Row(ways.Entry{Name: name, Says: workingItOut})
		r.Detail = "Its figures appear here when they are ready"
		return r
	case o.Err != nil:
		r := t.Row(ways.Entry{Name: name, Says: o.Err.Error()})
		r.Detail = words.Capital(o.Err.Error())
		return r
	}
	other := o.Sheet.Branches[m.Branch].Sheath.Part != m.Sheet.Branches[m.Branch].Sheath.Part
	r := t.Row(ways.Entry{Name: name, Figures: o.Figures, Sheath: other})
	if o.Figures.Stops > ways.Present(m).Stops {
		r.Mark = "!"
	}
	r.Show = func(m *desk.Model) *desk.Model { return desk.Instead(m, o.Sheet) }
	r.WhyOf = func() []desk.Reason { return desk.InTrial(r.Show, reasons(m, o.Sheet)) }
	return r
}

// reasons is how the figures of the table are made, for the branch in hand as a sheet has it.
func reasons(m *desk.Model, s *sheet.Sheet) []desk.Reason {
	id, tube := s.H.Branches[m.Branch].ID, s.Branches[m.Branch].Sheath.Part
	out := desk.FiguresOf(id, "branch.over", "branch.least", "branch.most", "branch.mass", "branch.bend", "branch.hottest")
	if tube != "" {
		out = append(out, desk.FiguresOfPart(id, tube, "tube.slide", "tube.over", "tube.mass")...)
	}
	return out
}

// nowRow is the branch as it is.
func nowRow(m *desk.Model, t ways.Columns) desk.Row {
	_, b, _ := m.BranchHere()
	r := t.Row(ways.Entry{Name: words.Either(b.Proposed, "  as proposed", "  as it is"), Figures: ways.Present(m)})
	r.Key, r.Tints = "now", nil
	r.WhyOf = func() []desk.Reason { return reasons(m, m.Sheet) }
	r.Detail = "The branch as it is. + keeps it as a variant, Enter with a name of yours"
	r.Enter, r.Does = func(m *desk.Model) { m.OpenField(*variantField(m), "") }, "name"
	r.Step = func(m *desk.Model, by int) { keepNow(m) }
	return r
}

// numbered is the kinds that have a row, and so a number.
func numbered(m *desk.Model) []ways.Kind {
	return slices.DeleteFunc(slices.Clone(ways.Here(m)), func(k ways.Kind) bool { return k.ID == ways.LayupID })
}

// numberOf is the number of a kind's row.
func numberOf(m *desk.Model, k ways.Kind) int {
	return 1 + slices.IndexFunc(numbered(m), func(o ways.Kind) bool { return o.ID == k.ID })
}

// withNumbers lets digits and Enter open a kind from whichever row is in hand, as in a list to choose from.
func withNumbers(m *desk.Model, rows []desk.Row) []desk.Row {
	all := numbered(m)
	if len(all) == 0 {
		return rows
	}
	for n := range rows {
		if r := &rows[n]; r.Field == nil && r.Enter != nil {
			r.Field = &desk.Field{Label: "open the row of number", Number: true, Set: func(m *desk.Model, text string) error {
				n, err := strconv.Atoi(text)
				if err != nil || n < 1 || n > len(all) {
					return fmt.Errorf("there is no row %s: 1 to %d", text, len(all))
				}
				m.PutOn("kind " + all[n-1].ID)
				at, _ := ways.Shown(m, all[n-1])
				openWays(m, all[n-1].ID, at)
				return nil
			}}
		}
	}
	return rows
}

// kindRow is a kind of change, stepped to one of its values.
func kindRow(m *desk.Model, k ways.Kind, t ways.Columns) desk.Row {
	n, settled := ways.Shown(m, k)
	r := t.Row(ways.Entry{Name: named(m, k, ""), Says: workingItOut})
	r.Detail = "Its figures appear here when they are ready"
	if settled {
		w := k.Ways[n]
		r = outcomeRow(m, t, named(m, k, w.Text(m)), w)
		if o, known := ways.Came(m, w); known && o.Err == nil {
			r.More = func() string { return ways.DiffersText(m, words.Capital(k.Name)+" "+w.Text(m), o, "Enter: all") }
			r = large(m, k, o, r)
		}
	}
	r.Key = "kind " + k.ID
	r.Enter = func(m *desk.Model) { openWays(m, k.ID, n) }
	r.Step = func(m *desk.Model, by int) {
		next, is := k.Beside(n, by)
		if !is {
			m.Tell(words.Either(by > 0, "that is the last", "that is the first") + ". Enter shows all side by side")
			return
		}
		ways.Show(m, k.ID, k.Ways[next].Key)
	}
	return r
}

// large gives a row the one number that it decides, where that is not the OD.
func large(m *desk.Model, k ways.Kind, o ways.Outcome, r desk.Row) desk.Row {
	switch {
	case k.ID == "spares":
		return r.Of(fmt.Sprint(o.Figures.Spares), "spare wires, OD "+ways.Diameter(m.Sys, o.Figures.Over)+" "+m.Sys.Name())
	case k.ID == "sheath" && o.Figures.SlideMM.Set:
		says := fmt.Sprintf("%s to slide, OD in it %s", m.Sys.Name(), ways.Diameter(m.Sys, o.Figures.Sheathed.V))
		return r.Of(m.Sys.Fine(o.Figures.SlideMM.V), says)
	}
	return r
}
