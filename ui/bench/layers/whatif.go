package layers

import (
	"fmt"

	"contralay/model"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/layers/ways"
	"contralay/ui/bench/words"
	"contralay/ui/draw"
)

// leastName is how wide the first column of that screen is at least.
const leastName = 14

// openWays opens the ways of a kind, on one of them.
func openWays(m *desk.Model, id string, n int) {
	k, ok := ways.Of(m, id)
	if !ok {
		m.Refuse("there is no other way")
		return
	}
	m.Open(desk.Screen{Kind: ways.Screen, Of: id, Title: "what if: " + k.Name})
	if n >= 0 && n < len(k.Ways) {
		m.PutOn(k.Ways[n].Key)
	}
}

// WaysPage is every way of a kind with all that it decides.
func WaysPage(m *desk.Model, w int, of string) desk.Page {
	mb, _, ok := m.BranchHere()
	k, any := ways.Of(m, of)
	if !ok || !any {
		return desk.Page{Empty: "There is no other way of this kind now. Esc goes back"}
	}
	name, order := max(leastName, draw.Width(k.Name)), ways.Decides
	for n, one := range k.Ways {
		name = max(name, 2+draw.Width(wayName(m, k, n, one)))
	}
	if of == "sheath" {
		order = ways.DecidesSheath
	}
	t := ways.MakeColumns(m, k.Name, order, min(name, longestName), w)
	p := desk.Page{Cols: t.Head()}
	if m.ListHeight() >= 12 {
		p.Lines = []string{fmt.Sprintf("%s: + is better than now, - is worse. In it: OD in the sheath. Slide: its room to slide on. "+
			"Split: layers that split at breakouts.", mb.ID)}
	}
	if k.Now < 0 {
		r := t.Row(ways.Entry{Name: "= as it is", Figures: ways.Present(m)})
		r.Key, r.Tints, r.Detail = "now", nil, "The branch as it is now"
		r.WhyOf = func() []desk.Reason { return reasons(m, m.Sheet) }
		p.Rows = append(p.Rows, r)
	}
	var found []desk.Row // behind the search, so that no row moves when one comes
	for n, one := range k.Ways {
		if row := wayRow(m, k, n, one, t); one.Found {
			found = append(found, row)
		} else {
			p.Rows = append(p.Rows, row)
		}
	}
	if of == ways.LayupID {
		p.Rows = append(append(p.Rows, searchRows(m)...), found...)
	}
	return p
}

// longestName is where names of variants are cut: the line below the list has them whole.
const longestName = 20

// wayName is what a way is called on the page of its kind.
func wayName(m *desk.Model, k ways.Kind, n int, one ways.Way) string {
	switch k.ID {
	case ways.LayupID:
		return fmt.Sprintf("%c  %s", one.Letter, one.Text(m))
	case ways.VariantsID:
		return variantName(m, n)
	}
	return one.Text(m)
}

// wayRow is one way on the page of its kind.
func wayRow(m *desk.Model, k ways.Kind, n int, one ways.Way, t ways.Columns) desk.Row {
	says := wayName(m, k, n, one)
	if n == k.Now {
		r := t.Row(ways.Entry{Name: "= " + says, Figures: ways.Present(m)})
		r.Key, r.Tints = one.Key, nil
		r.Detail = "It is this way now"
		r.WhyOf = func() []desk.Reason { return reasons(m, m.Sheet) }
		r.Enter = func(m *desk.Model) { m.Tell("it is this way now") }
		return r
	}
	r := outcomeRow(m, t, "  "+says, one)
	r.Key = one.Key
	o, known := ways.Came(m, one)
	r.Does = "take"
	r.Enter = func(m *desk.Model) { takeWay(m, k, n) }
	if !known || o.Err != nil {
		return r
	}
	r.More = func() string {
		return ways.DiffersText(m, words.Capital(k.Name)+" "+says, o, "Enter takes it, + keeps it")
	}
	if k.ID == ways.VariantsID {
		r.Step, r.Drop = nil, dropVariant(n)
		return r
	}
	r.Step = func(m *desk.Model, by int) { keepWay(m, k, n) }
	return r
}

// takeWay lays the branch in a way, and goes back to the table.
func takeWay(m *desk.Model, k ways.Kind, n int) {
	o, known := ways.Came(m, k.Ways[n])
	switch {
	case !known:
		m.Refuse("it is still being worked out: a moment")
		return
	case o.Err != nil:
		m.Refuse(o.Err.Error())
		return
	}
	was := ""
	if k.Now >= 0 {
		was = k.Ways[k.Now].Key
	}
	says := words.Capital(k.Name) + " " + k.Ways[n].Text(m) + " taken"
	if len(o.Gone) > 0 {
		says += fmt.Sprintf("; %s no longer run here and are left out", words.Few(o.Gone))
	}
	m.Change(withVariants(m, o.Sheet.H), says)
	if m.Trouble {
		return
	}
	if was != "" && k.ID != ways.LayupID { // the table shows what was in use beside what is now
		ways.Show(m, k.ID, was)
	}
	if m.Top() == ways.Screen {
		m.Back()
	}
}

// withVariants is a harness that was worked out before, with the variants that are kept now.
func withVariants(m *desk.Model, h *model.Harness) *model.Harness {
	all := m.H.Branches[m.Branch].Asides
	return h.EditBranch(m.Branch, func(b *model.Branch) { b.Asides = all })
}
