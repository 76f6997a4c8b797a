package layers

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"contralay/calc/query/whatif"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/kit"
	"contralay/ui/bench/words"
	"contralay/ui/draw"
)

// The table of what could be otherwise: a line each, its figures beside those of the branch as it is.

// measure is one figure that ways are compared by.
type measure struct {
	head  string
	wide  int // its widest text, without the sign behind it
	text  func(sys unit.System, f whatif.Figures) string
	worse func(f whatif.Figures) float64 // the more, the worse; nil where more or less is neither
}

func number[T ~float64](v model.Opt[T], n int) string {
	if !v.Set {
		return "-"
	}
	return unit.Fixed(v.V, n)
}

// measures are all of them, in the order of the columns.
var measures = []measure{
	{"spare", 2, func(_ unit.System, f whatif.Figures) string { return fmt.Sprint(f.Spares) },
		func(f whatif.Figures) float64 { return -float64(f.Spares) }},
	{"fill", 2, func(_ unit.System, f whatif.Figures) string { return fmt.Sprint(f.Fillers) },
		func(f whatif.Figures) float64 { return float64(f.Fillers) }},
	{"OD", 4, func(sys unit.System, f whatif.Figures) string { return diameter(sys, f.Over) },
		func(f whatif.Figures) float64 { return float64(f.Over) }},
	{"from", 4, func(sys unit.System, f whatif.Figures) string { return diameter(sys, f.OverMin) }, nil},
	{"to", 4, func(sys unit.System, f whatif.Figures) string { return diameter(sys, f.OverMax) }, nil},
	{"tube", 4, func(_ unit.System, f whatif.Figures) string { return label(f) },
		func(f whatif.Figures) float64 { return float64(f.Sheathed.V) }},
	{"in it", 4, func(sys unit.System, f whatif.Figures) string { return diameter(sys, f.Sheathed.V) },
		func(f whatif.Figures) float64 { return float64(f.Sheathed.V) }},
	{"slide", 4, func(sys unit.System, f whatif.Figures) string {
		if !f.SlideMM.Set {
			return "-"
		}
		return sys.Fine(f.SlideMM.V)
	}, func(f whatif.Figures) float64 { return -float64(f.SlideMM.V) }},
	{"g", 3, func(_ unit.System, f whatif.Figures) string { return number(f.Gram, 0) },
		func(f whatif.Figures) float64 { return float64(f.Gram.V) }},
	{"tube g", 3, func(_ unit.System, f whatif.Figures) string { return number(f.SheathGram, 0) },
		func(f whatif.Figures) float64 { return float64(f.SheathGram.V) }},
	{"bend", 3, func(sys unit.System, f whatif.Figures) string { return sys.AtLeast(f.MinBend) },
		func(f whatif.Figures) float64 { return float64(f.MinBend) }},
	{"split", 1, func(_ unit.System, f whatif.Figures) string { return fmt.Sprint(f.Parted) },
		func(f whatif.Figures) float64 { return float64(f.Parted) }},
	{"buried", 2, func(_ unit.System, f whatif.Figures) string { return fmt.Sprint(f.Buried) },
		func(f whatif.Figures) float64 { return float64(f.Buried) }},
	{"hot", 3, func(_ unit.System, f whatif.Figures) string { return number(f.Hottest, 0) },
		func(f whatif.Figures) float64 { return float64(f.Hottest.V) }},
}

// decides is the heads of the measures in the order in which they get room.
var decides = []string{"OD", "tube", "g", "bend", "spare", "slide", "in it", "split", "hot", "fill", "buried", "tube g", "from", "to"}

// decidesSheath is that order where only the sheath is another.
var decidesSheath = []string{"in it", "slide", "tube", "tube g", "hot", "OD", "g", "bend", "spare", "split", "fill", "buried", "from", "to"}

func diameter(sys unit.System, v unit.Millimetre) string {
	if v <= 0 {
		return "-"
	}
	return sys.Diameter(v)
}

// label is the size of a sheath, as short as the shelf has it: "5/8".
func label(f whatif.Figures) string {
	if f.ShelfLabel == "" {
		return cmp.Or(f.Sheath, "-")
	}
	short, _, _ := strings.Cut(f.ShelfLabel, " (")
	return short
}

// entry is one line of the table.
type entry struct {
	name    string
	sheath  bool   // it is another sheath of what may be the same size
	says    string // in place of figures, where there are none
	figures whatif.Figures
}

// verdict is how a figure of an entry compares with the present one.
func (c *measure) verdict(sys unit.System, now whatif.Figures, e entry) (sign string, look kit.Look) {
	then := e.figures
	other := e.sheath && c.head == "tube" && diameter(sys, now.Sheathed.V) != diameter(sys, then.Sheathed.V)
	switch d := 0.0; {
	case !other && c.text(sys, now) == c.text(sys, then):
		return " ", kit.Quiet
	case c.worse == nil:
		return " ", kit.Text
	default:
		if d = c.worse(then) - c.worse(now); d < 0 {
			return "+", kit.Better
		}
		return "-", kit.Worse
	}
}

// columnsOf is the table as wide as a list has room.
type columnsOf struct {
	kit.Columns[entry]
	shown []*measure
	now   whatif.Figures
	sys   unit.System
	name  int
	ascii bool
}

// tableColumns are as many columns beside the first, which is as wide as name, as a list of w cells has room for.
func tableColumns(m *desk.Model, head string, order []string, name, w int) columnsOf {
	t := columnsOf{now: present(m), sys: m.Sys, name: name, ascii: m.Cfg.ASCII}
	room := w - kit.GutterW - name
	fits := map[string]bool{}
	for _, h := range order {
		for k := range measures {
			if c := &measures[k]; c.head == h && room >= 1+c.least() {
				room -= 1 + c.least()
				fits[h] = true
			}
		}
	}
	columns := []kit.Column[entry]{{Head: head, Least: name, Cell: func(e entry) string { return e.name }}}
	for k := range measures {
		c := &measures[k]
		if !fits[c.head] {
			continue
		}
		t.shown = append(t.shown, c)
		columns = append(columns, kit.Column[entry]{Head: c.head, Least: c.least(), Align: kit.ToRight, Cell: func(e entry) string {
			sign, _ := c.verdict(t.sys, t.now, e)
			return c.text(t.sys, e.figures) + sign
		}})
	}
	t.Columns = kit.GivenColumns(columns, m.Cfg.ASCII)
	return t
}

// least is how wide the column of a measure is: its text with the sign, or its head.
func (c *measure) least() int { return max(c.wide+1, len(c.head)) }

// row is the row of an entry: better and worse by sign and look, what is the same quiet.
func (t *columnsOf) row(e entry) desk.Row {
	if e.says != "" {
		return desk.Row{Text: draw.Fit(e.name, t.name, t.ascii) + " " + e.says}
	}
	text, tints := t.Tinted(e, func(column int) kit.Look {
		if column == 0 {
			return kit.Text
		}
		_, look := t.shown[column-1].verdict(t.sys, t.now, e)
		return look
	})
	return desk.Row{Text: text, Tints: tints}
}

// tableName is how wide the first column of the table on the step is: the name of a kind with its value.
const tableName = 24

// shortNames are the kinds whose names are too long for the table.
var shortNames = map[string]string{"spec": "spec", "sheath": "tube"}

// named is a kind by its number in the table, with one of its values, in as much room as the table has.
func named(m *desk.Model, k kind, says string) string {
	name := fmt.Sprintf("%d %s", numberOf(m, k), cmp.Or(shortNames[k.id], k.name))
	if says == "" {
		return name
	}
	if strings.HasPrefix(k.id, "size ") {
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
	t := tableColumns(m, "what if   + is better", decides, tableName, w)
	rows := []desk.Row{{Text: t.Head(), Heads: true}}
	k, any := kindOf(m, layupKind)
	if _, b, _ := m.BranchHere(); !b.Proposed || k.now < 0 || !any { // a proposal is one of the lay-ups
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
func outcomeRow(m *desk.Model, t columnsOf, name string, w way) desk.Row {
	o, known := cameOf(m, w)
	switch {
	case !known:
		r := t.row(entry{name: name, says: workingItOut})
		r.Detail = "Its figures appear here when they are ready"
		return r
	case o.err != nil:
		r := t.row(entry{name: name, says: o.err.Error()})
		r.Mark, r.Detail = "?", words.Capital(o.err.Error())
		return r
	}
	other := o.sheet.Branches[m.Branch].Sheath.Part != m.Sheet.Branches[m.Branch].Sheath.Part
	r := t.row(entry{name: name, figures: o.figures, sheath: other})
	r.Show = func(m *desk.Model) *desk.Model { return desk.Instead(m, o.sheet) }
	r.WhyOf = func() []desk.Reason { return desk.InTrial(r.Show, reasons(m, o.sheet)) }
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
func nowRow(m *desk.Model, t columnsOf) desk.Row {
	_, b, _ := m.BranchHere()
	r := t.row(entry{name: words.Either(b.Proposed, "  as proposed", "  as it is"), figures: present(m)})
	r.Key, r.Tints = "now", nil
	r.WhyOf = func() []desk.Reason { return reasons(m, m.Sheet) }
	r.Detail = "The branch as it is. + keeps it as a variant, Enter with a name of yours"
	r.Enter, r.Does = func(m *desk.Model) { m.OpenField(*variantField(m), "") }, "name"
	r.Step = func(m *desk.Model, by int) { keepNow(m) }
	return r
}

// numbered is the kinds that have a row, and so a number.
func numbered(m *desk.Model) []kind {
	return slices.DeleteFunc(slices.Clone(kindsHere(m)), func(k kind) bool { return k.id == layupKind })
}

// numberOf is the number of a kind's row.
func numberOf(m *desk.Model, k kind) int {
	return 1 + slices.IndexFunc(numbered(m), func(o kind) bool { return o.id == k.id })
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
				m.PutOn("kind " + all[n-1].id)
				at, _ := shownOf(m, all[n-1])
				openWays(m, all[n-1].id, at)
				return nil
			}}
		}
	}
	return rows
}

// kindRow is a kind of change, stepped to one of its values.
func kindRow(m *desk.Model, k kind, t columnsOf) desk.Row {
	n, settled := shownOf(m, k)
	r := t.row(entry{name: named(m, k, ""), says: workingItOut})
	r.Detail = "Its figures appear here when they are ready"
	if settled {
		w := k.ways[n]
		r = outcomeRow(m, t, named(m, k, w.text(m)), w)
		if o, known := cameOf(m, w); known && o.err == nil {
			r.More = func() string { return differsText(m, words.Capital(k.name)+" "+w.text(m), o, "Enter: all") }
			r = large(m, k, o, r)
		}
	}
	r.Key = "kind " + k.id
	r.Enter = func(m *desk.Model) { openWays(m, k.id, n) }
	r.Step = func(m *desk.Model, by int) {
		next, is := k.beside(n, by)
		if !is {
			m.Tell(words.Either(by > 0, "that is the last", "that is the first") + ". Enter shows all side by side")
			return
		}
		show(m, k.id, k.ways[next].key)
	}
	return r
}

// large gives a row the one number that it decides, where that is not the OD.
func large(m *desk.Model, k kind, o outcome, r desk.Row) desk.Row {
	switch {
	case k.id == "spares":
		return r.Of(fmt.Sprint(o.figures.Spares), "spare wires, OD "+diameter(m.Sys, o.figures.Over)+" "+m.Sys.Name())
	case k.id == "sheath" && o.figures.SlideMM.Set:
		return r.Of(m.Sys.Fine(o.figures.SlideMM.V), m.Sys.Name()+" to slide, "+label(o.figures)+" in "+diameter(m.Sys, o.figures.Sheathed.V))
	}
	return r
}

// differsText is what a way changes, in as many words as the line has room for; the columns have the rest.
func differsText(m *desk.Model, name string, o outcome, enter string) string {
	then := desk.Instead(m, o.sheet)
	all := strings.Split(then.Tally().Differs(m.Tally(), m.Sys), ", ")
	if built := builtText(then); built != "" {
		all = slices.Insert(slices.DeleteFunc(all, func(part string) bool { return part == "tape round the centre" }), 0, built)
	}
	now := present(m)
	if is := o.figures; is.Over == now.Over && is.Sheath != now.Sheath && is.Sheathed.Set && now.Sheathed.Set {
		if all = sheathText(m, now, is); len(all) == 0 {
			all = []string{"the same figures"}
		}
	}
	text := name + ": " + all[0]
	for k, part := range all[1:] {
		rest := words.Either(k == len(all)-2, "", ", and more")
		if draw.Width(text+", "+part+rest) > m.W-2 {
			return text + ", and more"
		}
		text += ", " + part
	}
	if draw.Width(text+". "+enter) > m.W-2 {
		return text
	}
	return text + ". " + enter
}

// sheathText is how two sheaths of the same bundle differ.
func sheathText(m *desk.Model, now, is whatif.Figures) []string {
	var out []string
	if d := is.Sheathed.V - now.Sheathed.V; m.Sys.Diameter(is.Sheathed.V) != m.Sys.Diameter(now.Sheathed.V) {
		out = append(out, fmt.Sprintf("%s %s %s in it", m.Sys.Diameter(max(d, -d)), m.Sys.Name(), words.Either(d < 0, "thinner", "thicker")))
	}
	if d := is.SheathGram.V - now.SheathGram.V; is.SheathGram.Set && now.SheathGram.Set && unit.Fixed(max(d, -d), 0) != "0" {
		out = append(out, unit.Fixed(max(d, -d), 0)+" g "+words.Either(d < 0, "lighter", "heavier"))
	}
	return out
}
