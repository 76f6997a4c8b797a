package tree

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/phase/wires"
	"contralay/calc/query/why"
	"contralay/model"
	"contralay/model/edit"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
)

// ChangeKind is the page of what can be changed of a branch as a part of the tree.
const ChangeKind desk.Kind = "change"

// label is a row of a page: what it is, and its value.
func label(what, value string) string { return fmt.Sprintf("%-13s%s", what, value) }

// given explains a length that the file holds or the shop does.
func given(what string, v unit.Millimetre) []desk.Reason {
	return []desk.Reason{{Made: func() (why.Why, bool) { return why.Stated(what, "as given", float64(v), why.Length, desk.Given), true }}}
}

// changed makes a change, and reports whether it was made.
func changed(m *desk.Model, h *model.Harness, says string) bool {
	was := m.H
	m.Change(h, says)
	return m.H != was
}

// toMap closes what is open over the map, and puts the cursor there on a row. Where the map is
// not open under it, only the page in front is closed.
func toMap(m *desk.Model, row string) {
	at := slices.IndexFunc(m.Stack, func(s desk.Screen) bool { return s.Kind == BranchesKind })
	if at < 0 {
		m.Back()
		return
	}
	for len(m.Stack) > at+1 {
		m.Back()
	}
	m.PutOn(row)
}

// ChangePage is what can be changed of a branch.
func ChangePage(m *desk.Model, _ int, id string) desk.Page {
	i, ok := m.Sheet.Index.Branch[id]
	if !ok {
		return desk.Page{Empty: "branch " + id + " is gone. Esc goes back"}
	}
	b := &m.H.Branches[i]
	length := lengthField(m, id)
	p := desk.Page{Lines: []string{strings.TrimSpace(fmt.Sprintf("Branch %s  %s", id, b.Name.V))}}
	p.Rows = []desk.Row{
		{Key: "length", Text: label("length", m.Sys.Length(b.LengthMM)+" "+m.Sys.Name()), Why: desk.FiguresOf(id, "branch.length"),
			Detail: "Digits set it, + - make it a little longer or shorter", Field: &length, Step: func(m *desk.Model, by int) {
				v := min(desk.LongestBranch, max(1, unit.Written(b.LengthMM+unit.Millimetre(5*by))))
				setLength(m, id, v, m.Sys.Length(v))
			}},
		endRow(m, id, "from", b.From),
		endRow(m, id, "to", b.To),
		nameRow(m, edit.Branch, id),
		{Key: "split", Text: label("split", "it at a new breakout"), Detail: "Enter asks where",
			Enter: func(m *desk.Model) { m.Show(SplitKind, id) }},
		legRow(m, id),
	}
	for _, place := range []string{b.From, b.To} {
		if _, is := m.Sheet.Index.Breakout[place]; is && len(m.Sheet.Index.Meeting(place)) == 2 {
			p.Rows = append(p.Rows, joinRow(m, i, place))
		}
	}
	root := reachedFrom(m, i)
	remove := func(m *desk.Model) { removeBranch(m, id, root) }
	return desk.Page{Lines: p.Lines, Rows: append(p.Rows,
		desk.Row{Key: "turn", Text: label("turn round", fmt.Sprintf("from %s to %s", b.To, b.From)), Does: "turn",
			Detail: "Enter exchanges its ends. Covers stay where they lie", Enter: func(m *desk.Model) {
				h, err := edit.TurnRound(m.H, id)
				if err != nil {
					m.Refuse(err.Error())
					return
				}
				m.Change(h, fmt.Sprintf("%s runs from %s to %s now", id, b.To, b.From))
			}},
		RenameRow(m, edit.Branch, id), desk.AllValuesRow("branch", id),
		desk.Row{Key: "remove", Text: label("remove", id+" and what hangs on it"), Does: "remove",
			Detail: "Enter or . removes it. Backspace brings it back whole", Enter: remove, Drop: remove})}
}

// reachedFrom is the end of a branch that the map reaches it by: what hangs on it is beyond the
// other one.
func reachedFrom(m *desk.Model, i int) string {
	for _, k := range wires.Walked(m.Sheet) {
		if k.Branch == i {
			return k.From
		}
	}
	return m.H.Branches[i].From
}

// endRow hangs one end of a branch elsewhere.
func endRow(m *desk.Model, id, which, place string) desk.Row {
	there := func(m *desk.Model) bool {
		i, is := m.Sheet.Index.Branch[id]
		return is && (m.H.Branches[i].From == place || m.H.Branches[i].To == place)
	}
	list := func(m *desk.Model) []desk.Choice {
		var out []desk.Choice
		for _, p := range edit.MayHang(m.H, id, place) {
			out = append(out, desk.Choice{Value: p, Says: strings.TrimSpace(fmt.Sprintf("%s  %s  %s", p, nounOf(m, p), placeName(m, p)))})
		}
		return out
	}
	return desk.Row{Key: which, Text: label(which, strings.TrimSpace(place+"  "+placeName(m, place))),
		Detail: "Enter lists where this end could hang", Enter: func(m *desk.Model) {
			m.Open(desk.ChooseScreen("where "+id+" hangs, now on "+place, there, list, func(*desk.Model) string { return place },
				func(m *desk.Model, to string) {
					h, says, err := edit.Rehang(m.H, id, place, to)
					if err != nil {
						m.Refuse(err.Error())
						return
					}
					m.Change(h, strings.Join(append([]string{fmt.Sprintf("%s hangs on %s now", id, to)}, says...), "; "))
				}, nil))
		}}
}

// legRow hangs a leg on a station of a branch.
func legRow(m *desk.Model, id string) desk.Row {
	b := &m.H.Branches[m.Sheet.Index.Branch[id]]
	from := b.From
	return desk.Row{Key: "leg", Text: label("hang a leg", "on it, so far from "+from),
		Detail: "type how far from " + from + ". It is split there",
		Does:   "type", Field: &desk.Field{Label: "leg hangs, from " + from, Unit: m.Sys.Name(), Number: true,
			Set: func(m *desk.Model, text string) error {
				v, err := m.Sys.Parse(text)
				if err != nil {
					return err
				}
				h, leg, err := edit.AddLegAt(m.H, id, v, 0, 2)
				if err != nil {
					return fmt.Errorf("%s", m.Sys.Says(err.Error()))
				}
				says := fmt.Sprintf("leg %s to %s hangs on the new breakout %s. Its length is not known yet: type it", leg.Branch,
					leg.Termination,
					leg.Breakout)
				if changed(m, h, says+uncovered(m.H, h, id, leg.Breakout)) {
					toMap(m, "branch "+leg.Branch)
				}
				return nil
			}}}
}

// uncovered names a part of a branch that was split at a breakout on which none of its covers
// lies: the file has no way to say that it wants none, so one is proposed.
func uncovered(was, is *model.Harness, id, breakout string) string {
	k := slices.Index(edit.IDs(was, edit.Branch), id)
	if k < 0 || len(was.Branches[k].Covers) == 0 {
		return ""
	}
	for i := range is.Branches {
		b := &is.Branches[i]
		part := b.ID == id || b.From == breakout && b.To == was.Branches[k].To
		if part && len(b.Covers) == 0 {
			return ". No cover lies on " + b.ID + ": a sheath is proposed there"
		}
	}
	return ""
}

// joinRow makes one branch of two that meet alone.
func joinRow(m *desk.Model, i int, place string) desk.Row {
	meet := m.Sheet.Index.Meeting(place)
	other := meet[0]
	if other == i {
		other = meet[1]
	}
	id, with := m.H.Branches[i].ID, m.H.Branches[other].ID
	return desk.Row{Key: "join " + place, Text: label("join", fmt.Sprintf("%s and %s at %s", id, with, place)), Does: "join",
		Detail: "Enter makes one branch of the two and takes " + place + " away", Enter: func(m *desk.Model) {
			first := m.H.Branches[min(m.Sheet.Index.Branch[id], m.Sheet.Index.Branch[with])].ID
			h, says, err := edit.Join(m.H, place)
			if err != nil {
				m.Refuse(err.Error())
				return
			}
			if changed(m, h, strings.Join(append([]string{fmt.Sprintf("%s and %s are one branch now, %s", id, with, first)}, says...),
				"; ")) {
				toMap(m, "branch "+first)
			}
		}}
}

// removeBranch takes a branch out with what hangs on it; stays is the end whose side is kept.
func removeBranch(m *desk.Model, id, stays string) {
	h, says, err := edit.RemoveBranch(m.H, id, stays)
	removed(m, h, says, err, id)
}

// removeThing takes anything else out that has an id.
func removeThing(m *desk.Model, noun edit.Noun, id string) {
	h, says, err := edit.Remove(m.H, noun, id)
	removed(m, h, says, err, id)
}

// removed takes over a removal, says what it left open, and closes the pages of what is gone.
func removed(m *desk.Model, h *model.Harness, says []string, err error, id string) {
	if err != nil {
		m.Refuse(err.Error())
		return
	}
	if !changed(m, h, strings.Join(append([]string{id + " removed"}, says...), "; ")) {
		return
	}
	desk.LeaveGone(m)
}
