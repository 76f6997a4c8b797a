package several

import (
	"fmt"
	"strings"

	"contralay/calc/query/bulk"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
)

// uniting is a unit on its way: nothing of it is in the harness until it is taken.
type uniting struct {
	shield   bool
	from, to string // where its drain ends
}

// drains are where a drain can end, in the order in which + goes through them.
var drains = []string{bulk.DrainCavity, bulk.DrainShell, bulk.DrainCut, ""}

func drainText(where string) string {
	switch where {
	case bulk.DrainCavity:
		return "the next free cavity"
	case bulk.DrainShell:
		return "the shell"
	case bulk.DrainCut:
		return "cut"
	}
	return "not said"
}

// UnitPage is the unit that the marked wires would make.
func UnitPage(m *desk.Model, _ int, of string) desk.Page {
	ids := marked(m, of)
	if len(ids) == 0 {
		return desk.Page{Empty: "No wire is marked. Esc goes back"}
	}
	u := desk.State[uniting](m)
	ask := func() bulk.UnitAsk {
		return bulk.UnitAsk{Wires: marked(m, of), Shield: u.shield, DrainFrom: u.from, DrainTo: u.to}
	}
	got, err := bulk.UnitOf(m.Sheet, ask())
	p := desk.Page{Lines: []string{"Wires that are twisted first and laid as one piece."}}
	take := desk.Row{Key: "take", Text: "make it", Does: "make", Detail: got.Says, Enter: func(m *desk.Model) {
		got, err := bulk.UnitOf(m.Sheet, ask())
		if done(m, got, err) {
			m.Back()
		}
	}}
	if err != nil {
		p.Lines = []string{words.Capital(err.Error()) + "."}
		take.Mark, take.Text, take.Detail = "!", "no unit can be made", "Esc goes back to the marks"
	}
	p.Rows = append(p.Rows, take, desk.Row{Key: "shield", Text: label("shield") + words.Either(u.shield, "yes", "no"),
		Detail: "+ - shielded or not", Step: func(m *desk.Model, _ int) {
			if u.shield = !u.shield; u.shield && u.from == "" && u.to == "" {
				u.from, u.to = bulk.DrainCavity, bulk.DrainCut
			}
			m.Tell(words.Either(u.shield, "shielded", "not shielded"))
		}})
	if !u.shield {
		return p
	}
	first := &m.H.Wires[m.Sheet.Index.Wire[ids[0]]]
	drain := func(key, end string, at *string) desk.Row {
		place, _, _ := strings.Cut(words.OrDash(end), ":")
		return desk.Row{Key: key, Text: fmt.Sprintf("drain at %-6s %s", place, drainText(*at)),
			Detail: "+ - the next free cavity, the shell, cut, not said",
			Step: func(m *desk.Model, by int) {
				*at, _ = words.Around(drains, *at, by)
				m.Tell("drain: " + drainText(*at))
			}}
	}
	p.Rows = append(p.Rows, drain("from", first.From.V, &u.from), drain("to", first.To.V, &u.to))
	return p
}

// splicing is a splice on its way.
type splicing struct{ common, place string }

// SplicePage is the splice that the marked wires would make.
func SplicePage(m *desk.Model, _ int, of string) desk.Page {
	ids := marked(m, of)
	if len(ids) == 0 {
		return desk.Page{Empty: "No wire is marked. Esc goes back"}
	}
	f := desk.State[splicing](m)
	commons, _ := bulk.SpliceChoices(m.Sheet, ids, "")
	if len(commons) == 0 {
		f.common = ""
	} else if _, same := words.Around(commons, f.common, 0); same { // what was chosen is none of these
		f.common = commons[0]
	}
	_, places := bulk.SpliceChoices(m.Sheet, ids, f.common)
	if len(places) == 0 {
		f.place = ""
	} else if _, same := words.Around(places, f.place, 0); same {
		f.place = places[len(places)-1]
	}
	p := desk.Page{Lines: []string{"The ends of " + bulk.Named(ids) + " go onto a splice, with one wire on from it.",
		"That wire carries the sum of their currents. Its size is worked out when you take it."}}
	p.Rows = append(p.Rows, desk.Row{Key: "take", Text: "make it", Does: "make",
		Detail: fmt.Sprintf("Enter joins %s at %s, with one wire on to %s",
			bulk.Named(ids), words.OrDash(f.place), words.OrDash(f.common)), Enter: func(m *desk.Model) {
			got, err := bulk.SpliceOf(m.Sheet, bulk.SpliceAsk{Wires: marked(m, of), Common: f.common, At: f.place})
			if done(m, got, err) {
				m.Back()
			}
		}})
	if f.common == "" {
		p.Lines = []string{bulk.Named(ids) + " share no connector: mark wires that end at one."}
		p.Rows[0].Mark, p.Rows[0].Text, p.Rows[0].Detail = "!", "no splice can be made", "Esc goes back to the marks"
		return p
	}
	pick := func(key, text, detail, only string, all []string, at *string) desk.Row {
		return desk.Row{Key: key, Text: label(text) + words.OrDash(*at), Detail: detail, Step: func(m *desk.Model, by int) {
			v, moved := words.Around(all, *at, by)
			if !moved {
				m.Tell(only)
				return
			}
			*at = v
			m.Tell(text + " " + v)
		}}
	}
	p.Rows = append(p.Rows,
		pick("on to", "one wire to", "+ - another connector that all of them end at", "they share no other connector", commons, &f.common),
		pick("at", "sits at", "+ - another breakout that all of them pass", "they pass no other breakout together", places, &f.place))
	return p
}
