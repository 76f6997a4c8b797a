package tree

import (
	"fmt"
	"strings"

	"contralay/calc/query/missing"
	"contralay/model/edit"
	"contralay/ui/bench/desk"
)

// WayPage asks from where a branch leads to a place that none leads to.
func WayPage(m *desk.Model, _ int, place string) desk.Page {
	p := desk.Page{Lines: []string{"No branch leads to " + place + ". Where does it begin? Its length is typed next."},
		Empty: place + " is gone. Esc goes back"}
	_, termination := m.Sheet.Index.Termination[place]
	if _, breakout := m.Sheet.Index.Breakout[place]; !breakout && !termination {
		return p
	}
	add := func(key, text, from, to string) {
		p.Rows = append(p.Rows, desk.Row{Key: key, Text: text, Detail: "Enter puts the branch there", Enter: func(m *desk.Model) {
			h, b, err := edit.AddBranch(m.H, from, to, 0)
			if err != nil {
				m.Refuse(err.Error())
				return
			}
			m.Back()
			m.Change(h, fmt.Sprintf("branch %s runs from %s to %s. Type its length", b, from, h.Branches[len(h.Branches)-1].To))
			for len(m.Stack) > 0 && m.Top() != BranchesKind {
				m.Back()
			}
			m.PutOn("branch " + b)
		}})
	}
	for _, from := range missing.Starts(m.Sheet, place) {
		add("from "+from, strings.TrimSpace("from "+from+"  "+placeName(m, from)), from, place)
	}
	if len(m.Sheet.Index.Meeting(place)) == 0 {
		add("new", "to a new breakout, from which others can go on", place, "")
	}
	for i := range m.H.Branches {
		id := m.H.Branches[i].ID
		p.Rows = append(p.Rows, desk.Row{Key: "split " + id, Text: "from a new breakout in " + id,
			Detail: "Enter asks where " + id + " is split",
			Enter:  func(m *desk.Model) { m.Show(SplitKind, id) }})
	}
	return p
}
