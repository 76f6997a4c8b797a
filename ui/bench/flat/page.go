package flat

import (
	"fmt"
	"math"
	"strings"

	"contralay/calc/query/drawing"
	"contralay/calc/query/why"
	"contralay/model"
	"contralay/model/file/schema"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
	"contralay/ui/draw"
)

// kept is the drawing of a sheet, which holds for the frames that follow.
type kept struct{ desk.Kept[drawing.Drawing] }

func of(m *desk.Model) drawing.Drawing {
	return desk.State[kept](m).Get(m.Sheet, 0, "", func() drawing.Drawing { return drawing.Of(m.Sheet) })
}

// most is the largest turn that a branch may leave by, as the file has it.
const most unit.Degree = 170

// Page is a row for each branch, with the turn that it leaves by.
func Page(m *desk.Model, _ int, _ string) desk.Page {
	d := of(m)
	p := desk.Page{Empty: "There is no branch yet. Add one on the map of branches. Esc goes back"}
	if len(m.H.Branches) == 0 {
		return p
	}
	const shown = 2
	for k, n := range d.Notes {
		if k == shown && len(d.Notes) > shown+1 {
			p.Lines = append(p.Lines, fmt.Sprintf("%d more notes stand on the printed drawing.", len(d.Notes)-k))
			break
		}
		p.Lines = append(p.Lines, m.Sys.Says(n.Says)+".")
	}
	if len(p.Lines) == 0 {
		p.Lines = []string{"The harness on its board, from " + d.Datum + ". contralay drawing prints it at full size."}
	}
	for i := range d.Branches {
		p.Rows = append(p.Rows, branchRow(m, &d, i))
	}
	board := desk.Row{Key: "board", Text: "the board: " + boardText(m), Detail: "Enter opens its size, its pegs and its datum",
		Enter: func(m *desk.Model) { m.Show(desk.KindRecord, desk.RecordOf(schema.At{{Table: "board"}}, "")) }}
	p.Rows = append(p.Rows, board)
	return p
}

func boardText(m *desk.Model) string {
	b := &m.H.Board
	if !b.WidthMM.Set || !b.HeightMM.Set {
		return "no size given"
	}
	return m.Sys.Length(b.WidthMM.V) + " x " + m.Sys.Length(b.HeightMM.V) + " " + m.Sys.Name()
}

// branchRow is a branch and the turn that it leaves by.
func branchRow(m *desk.Model, d *drawing.Drawing, i int) desk.Row {
	b, id := &d.Branches[i], d.Branches[i].ID
	parts := []string{fmt.Sprintf("%-5s", id), fmt.Sprintf("%5s %s", m.Sys.Length(b.LengthMM), m.Sys.Name()), fmt.Sprintf("%9s",
		turnText(b.Turn)),
		words.Either(b.Told, "given", "by rule")}
	if !b.Measured {
		parts[1] = "no length"
	}
	if n := len(b.Bends); n > 0 {
		parts = append(parts, words.Either(n == 1, "1 bend", fmt.Sprintf("%d bends", n)))
	}
	now := b.Turn
	r := desk.Row{Key: id, Text: strings.Join(parts, "  "), Mark: mark(d, id),
		Detail: fmt.Sprintf("%s leaves %s %s. + turns it left, - right; Enter opens its bends", id, b.Near, turnText(b.Turn)),
		Step:   func(m *desk.Model, by int) { turn(m, i, math.Round(float64(now)/5)*5+float64(5*by)) },
		Enter: func(m *desk.Model) {
			m.Show(desk.KindRecord, desk.RecordOf(schema.At{{Table: "branch", Index: i}}, id))
		},
		Field: &desk.Field{Label: id + " leaves at, + left, - right", Unit: "degrees", Number: true, Set: func(m *desk.Model,
			text string) error {
			v, err := unit.ParseNumber(text)
			if err != nil {
				return err
			}
			if v < -float64(most) || v > float64(most) {
				return fmt.Errorf("%s is too far round. Allowed: -%.0f to %.0f degrees", text, float64(most), float64(most))
			}
			turn(m, i, v)
			return nil
		}},
		Why: []desk.Reason{{Made: func() (why.Why, bool) {
			return why.Stated("leaves at", "this is how the drawing turns into the branch", float64(now), why.Times, desk.Given), true
		}}}}
	if b.Told {
		r.Drop = func(m *desk.Model) {
			m.Change(m.H.EditBranch(i, func(b *model.Branch) { b.LeavesDeg = model.Opt[unit.Degree]{} }), id+" lies by rule again")
		}
	}
	return r
}

// mark is the mark of a branch that a note is about.
func mark(d *drawing.Drawing, id string) string {
	for _, n := range d.Notes {
		if n.Where == id {
			return "?"
		}
	}
	return ""
}

// turnText is a turn in words.
func turnText(v unit.Degree) string {
	switch n := math.Round(float64(v)); {
	case n == 0:
		return "straight"
	case n > 0:
		return fmt.Sprintf("%.0f left", n)
	default:
		return fmt.Sprintf("%.0f right", -n)
	}
}

// turn lets a branch leave by a turn.
func turn(m *desk.Model, i int, to float64) {
	id := m.H.Branches[i].ID
	if to < -float64(most) || to > float64(most) {
		m.Tell(fmt.Sprintf("%s turns no further than %.0f degrees", id, float64(most)))
		return
	}
	if to == 0 {
		to = 0 // not -0
	}
	m.Change(m.H.EditBranch(i, func(b *model.Branch) { b.LeavesDeg = model.Some(unit.Degree(to)) }),
		id+" leaves "+turnText(unit.Degree(to)))
}

// Picture draws the harness in exactly h lines of w cells, the branch of the row in hand heavier.
func Picture(m *desk.Model, w, h int) (title string, lines []string) {
	d := of(m)
	_, r := m.Hand()
	var p draw.Plan
	for i := range d.Branches {
		b := &d.Branches[i]
		way := draw.PlanWay{Heavy: r != nil && r.Key == b.ID}
		for _, at := range b.Line.Points(2) {
			way.Points = append(way.Points, [2]float64{float64(at.X), float64(at.Y)})
		}
		p.Ways = append(p.Ways, way)
		if way.Heavy {
			at, _ := b.Line.At(b.Line.Length() / 2)
			p.Names = append(p.Names, draw.PlanName{Text: b.ID, X: float64(at.X), Y: float64(at.Y)})
		}
	}
	for _, e := range d.Ends {
		p.Names = append(p.Names, draw.PlanName{Text: e.ID, X: float64(e.At.X), Y: float64(e.At.Y)})
	}
	for _, j := range d.Joints {
		p.Names = append(p.Names, draw.PlanName{Text: j.ID, X: float64(j.At.X), Y: float64(j.At.Y)})
	}
	return "seen from above the board", p.Draw(w, h, m.Cfg.Palette, m.Cfg.ASCII).Styled(m.Cfg.Palette)
}
