package ways

import (
	"cmp"
	"fmt"
	"strings"

	"contralay/calc/query/whatif"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/kit"
	"contralay/ui/draw"
)

// What ways are compared by, in columns.

// measure is one figure that ways are compared by.
type measure struct {
	head  string
	wide  int // its widest text, without the sign behind it
	inch  int // what it is wider in inches
	text  func(sys unit.System, f whatif.Figures) string
	worse func(f whatif.Figures) float64 // the more, the worse; nil where more or less is neither
}

// number is a figure with so many decimals; "-" where it is not known.
func number[T ~float64](v model.Opt[T], n int) string {
	if !v.Set {
		return "-"
	}
	return unit.Fixed(v.V, n)
}

// measures are all of them, in the order of the columns.
var measures = []measure{
	{"spare", 2, 0, func(_ unit.System, f whatif.Figures) string { return fmt.Sprint(f.Spares) },
		func(f whatif.Figures) float64 { return -float64(f.Spares) }},
	{"fill", 2, 0, func(_ unit.System, f whatif.Figures) string { return fmt.Sprint(f.Fillers) },
		func(f whatif.Figures) float64 { return float64(f.Fillers) }},
	{"OD", 4, 1, func(sys unit.System, f whatif.Figures) string { return Diameter(sys, f.Over) },
		func(f whatif.Figures) float64 { return float64(f.Over) }},
	{"from", 4, 1, func(sys unit.System, f whatif.Figures) string { return Diameter(sys, f.OverMin) }, nil},
	{"to", 4, 1, func(sys unit.System, f whatif.Figures) string { return Diameter(sys, f.OverMax) }, nil},
	{"tube", 4, 0, func(_ unit.System, f whatif.Figures) string { return Label(f) },
		func(f whatif.Figures) float64 { return float64(f.Sheathed.V) }},
	{"in it", 4, 1, func(sys unit.System, f whatif.Figures) string { return Diameter(sys, f.Sheathed.V) },
		func(f whatif.Figures) float64 { return float64(f.Sheathed.V) }},
	{"slide", 4, 1, func(sys unit.System, f whatif.Figures) string {
		if !f.SlideMM.Set {
			return "-"
		}
		return sys.Fine(f.SlideMM.V)
	}, func(f whatif.Figures) float64 { return -float64(f.SlideMM.V) }},
	{"g", 3, 0, func(_ unit.System, f whatif.Figures) string { return number(f.Gram, 0) },
		func(f whatif.Figures) float64 { return float64(f.Gram.V) }},
	{"tube g", 3, 0, func(_ unit.System, f whatif.Figures) string { return number(f.SheathGram, 0) },
		func(f whatif.Figures) float64 { return float64(f.SheathGram.V) }},
	{"bend", 3, 4, func(sys unit.System, f whatif.Figures) string { return sys.AtLeast(f.MinBend) },
		func(f whatif.Figures) float64 { return float64(f.MinBend) }},
	{"split", 1, 0, func(_ unit.System, f whatif.Figures) string { return fmt.Sprint(f.Parted) },
		func(f whatif.Figures) float64 { return float64(f.Parted) }},
	{"buried", 2, 0, func(_ unit.System, f whatif.Figures) string { return fmt.Sprint(f.Buried) },
		func(f whatif.Figures) float64 { return float64(f.Buried) }},
	{"hot", 3, 0, func(_ unit.System, f whatif.Figures) string { return number(f.Hottest, 0) },
		func(f whatif.Figures) float64 { return float64(f.Hottest.V) }},
}

// Decides is the heads of the measures in the order in which they get room.
var Decides = []string{"OD", "tube", "g", "bend", "spare", "slide", "in it", "split", "hot", "fill", "buried", "tube g", "from", "to"}

// DecidesSheath is that order where only the sheath is another.
var DecidesSheath = []string{"in it", "slide", "tube", "tube g", "hot", "OD", "g", "bend", "spare", "split", "fill", "buried",
	"from", "to"}

// Diameter is an OD as the table has it; "-" where there is none.
func Diameter(sys unit.System, v unit.Millimetre) string {
	if v <= 0 {
		return "-"
	}
	return sys.Diameter(v)
}

// Label is the size of a sheath, as short as the shelf has it: "5/8".
func Label(f whatif.Figures) string {
	if f.ShelfLabel == "" {
		return cmp.Or(f.Sheath, "-")
	}
	short, _, _ := strings.Cut(f.ShelfLabel, " (")
	return short
}

// Entry is one line of the table.
type Entry struct {
	Name    string
	Sheath  bool   // it is another sheath of what may be the same size
	Says    string // in place of figures, where there are none
	Figures whatif.Figures
}

// verdict is how a figure of an entry compares with the present one.
func (c *measure) verdict(sys unit.System, now whatif.Figures, e Entry) (sign string, look kit.Look) {
	then := e.Figures
	other := e.Sheath && c.head == "tube" && Diameter(sys, now.Sheathed.V) != Diameter(sys, then.Sheathed.V)
	was, is := c.text(sys, now), c.text(sys, then)
	switch {
	case !other && was == is:
		return " ", kit.Quiet
	case c.worse == nil || was == "-" || is == "-" || c.worse(then) == c.worse(now):
		return " ", kit.Text
	case c.worse(then) < c.worse(now):
		return "+", kit.Better
	}
	return "-", kit.Worse
}

// Columns is the table as wide as a list has room.
type Columns struct {
	kit.Columns[Entry]
	shown []*measure
	now   whatif.Figures
	sys   unit.System
	name  int
	ascii bool
}

// MakeColumns are as many columns beside the first, which is as wide as name, as a list of w cells has room for.
func MakeColumns(m *desk.Model, head string, order []string, name, w int) Columns {
	t := Columns{now: Present(m), sys: m.Sys, name: name, ascii: m.Cfg.ASCII}
	room := w - kit.GutterW - name
	fits := map[string]bool{}
	for _, h := range order {
		for k := range measures {
			if c := &measures[k]; c.head == h && room >= 1+c.least(m.Sys) {
				room -= 1 + c.least(m.Sys)
				fits[h] = true
			}
		}
	}
	columns := []kit.Column[Entry]{{Head: head, Least: name, Cell: func(e Entry) string { return e.Name }}}
	for k := range measures {
		c := &measures[k]
		if !fits[c.head] {
			continue
		}
		t.shown = append(t.shown, c)
		columns = append(columns, kit.Column[Entry]{Head: c.head, Least: c.least(m.Sys), Align: kit.ToRight, Cell: func(e Entry) string {
			sign, _ := c.verdict(t.sys, t.now, e)
			return c.text(t.sys, e.Figures) + sign
		}})
	}
	t.Columns = kit.GivenColumns(columns, m.Cfg.ASCII)
	return t
}

// least is how wide the column of a measure is: its text with the sign, or its head.
func (c *measure) least(sys unit.System) int {
	wide := c.wide
	if sys == unit.Inch {
		wide += c.inch
	}
	return max(wide+1, len(c.head))
}

// Row is the row of an entry: better and worse by sign and look, what is the same quiet.
func (t *Columns) Row(e Entry) desk.Row {
	if e.Says != "" {
		return desk.Row{Text: draw.Fit(e.Name, t.name, t.ascii) + " " + e.Says,
			Tints: []kit.Tint{{From: t.name + 1, Wide: draw.Width(e.Says), Look: kit.Quiet}}}
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
