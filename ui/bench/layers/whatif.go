package layers

import (
	"fmt"

	"contralay/model"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
	"contralay/ui/draw"
)

// WaysKind is the screen of every value of one kind of change, side by side.
const WaysKind desk.Kind = "ways"

// leastName is how wide the first column of that screen is at least.
const leastName = 14

// openWays opens the ways of a kind, on one of them.
func openWays(m *desk.Model, id string, n int) {
	k, ok := kindOf(m, id)
	if !ok {
		m.Refuse("there is no other way")
		return
	}
	m.Open(desk.Screen{Kind: WaysKind, Of: id, Title: "what if: " + k.name})
	if n >= 0 && n < len(k.ways) {
		m.PutOn(k.ways[n].key)
	}
}

// WaysPage is every way of a kind with all that it decides.
func WaysPage(m *desk.Model, w int, of string) desk.Page {
	mb, _, ok := m.BranchHere()
	k, any := kindOf(m, of)
	if !ok || !any {
		return desk.Page{Empty: "There is no other way of this kind now. Esc goes back"}
	}
	name, order := max(leastName, draw.Width(k.name)), decides
	for n, one := range k.ways {
		name = max(name, 2+draw.Width(wayName(m, k, n, one)))
	}
	if of == "sheath" {
		order = decidesSheath
	}
	t := tableColumns(m, k.name, order, min(name, longestName), w)
	p := desk.Page{Cols: t.Head()}
	if m.ListHeight() >= 12 {
		p.Lines = []string{fmt.Sprintf("%s: + is better than now, - is worse. In it: OD in the sheath. Slide: its room to slide on. "+
			"Split: layers that split at breakouts.", mb.ID)}
	}
	if k.now < 0 {
		r := t.row(entry{name: "= as it is", figures: present(m)})
		r.Key, r.Tints, r.Detail = "now", nil, "The branch as it is now"
		r.WhyOf = func() []desk.Reason { return reasons(m, m.Sheet) }
		p.Rows = append(p.Rows, r)
	}
	for n, one := range k.ways {
		p.Rows = append(p.Rows, wayRow(m, k, n, one, t))
	}
	if of == layupKind {
		p.Rows = append(p.Rows, searchRows(m)...)
	}
	return p
}

// longestName is where names of variants are cut: the line below the list has them whole.
const longestName = 28

// wayName is what a way is called on the page of its kind.
func wayName(m *desk.Model, k kind, n int, one way) string {
	switch k.id {
	case layupKind:
		return fmt.Sprintf("%c  %s", 'A'+n, one.text(m))
	case variantsKind:
		return variantName(m, n)
	}
	return one.text(m)
}

// wayRow is one way on the page of its kind.
func wayRow(m *desk.Model, k kind, n int, one way, t columnsOf) desk.Row {
	says := wayName(m, k, n, one)
	if n == k.now {
		r := t.row(entry{name: "= " + says, figures: present(m)})
		r.Key, r.Tints = one.key, nil
		r.Detail = "It is this way now"
		r.WhyOf = func() []desk.Reason { return reasons(m, m.Sheet) }
		r.Enter = func(m *desk.Model) { m.Tell("it is this way now") }
		return r
	}
	r := outcomeRow(m, t, "  "+says, one)
	r.Key = one.key
	o, known := cameOf(m, one)
	r.Does = "take"
	r.Enter = func(m *desk.Model) { takeWay(m, k, n) }
	if !known || o.err != nil {
		return r
	}
	r.More = func() string { return differsText(m, words.Capital(k.name)+" "+says, o, "Enter takes it, + keeps it") }
	if k.id == variantsKind {
		r.Step, r.Drop = nil, dropVariant(n)
		return r
	}
	r.Step = func(m *desk.Model, by int) { keepWay(m, k, n) }
	return r
}

// takeWay lays the branch in a way, and goes back to the table.
func takeWay(m *desk.Model, k kind, n int) {
	o, known := cameOf(m, k.ways[n])
	switch {
	case !known:
		m.Refuse("it is still being worked out: a moment")
		return
	case o.err != nil:
		m.Refuse(o.err.Error())
		return
	}
	was := ""
	if k.now >= 0 {
		was = k.ways[k.now].key
	}
	says := words.Capital(k.name) + " " + k.ways[n].text(m) + " taken"
	if len(o.gone) > 0 {
		says += fmt.Sprintf("; %s no longer run here and are left out", words.Few(o.gone))
	}
	m.Change(withVariants(m, o.sheet.H), says)
	if m.Trouble {
		return
	}
	if was != "" && k.id != layupKind { // the table shows what was in use beside what is now
		show(m, k.id, was)
	}
	if m.Top() == WaysKind {
		m.Back()
	}
}

// withVariants is a harness that was worked out before, with the variants that are kept now.
func withVariants(m *desk.Model, h *model.Harness) *model.Harness {
	all := m.H.Branches[m.Branch].Asides
	return h.EditBranch(m.Branch, func(b *model.Branch) { b.Asides = all })
}
