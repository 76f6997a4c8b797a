package ends

import (
	"contralay/calc/query/add"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
)

// coverRow writes the proposed sheaths and straight boots into the harness.
func coverRow(m *desk.Model) desk.Row {
	const detail = "Enter takes them into the harness. Each branch's step Sheath changes them"
	take := func(m *desk.Model) {
		o := add.Proposed(m.Sheet)
		says, bare := o.Text(), bareText(o)
		switch {
		case says == "" && bare != "":
			m.Refuse(bare)
			return
		case says == "":
			m.Tell("every branch that holds wires has its covers, and every connector its boot")
			return
		case bare != "":
			bare = ". " + bare
		}
		toMap(m)
		m.Change(o.H, says+" taken, as proposed"+bare)
	}
	row := desk.Row{Key: "covers", Detail: detail, Enter: take}
	switch {
	case desk.Waiting(m.Sheet): // what they are is known when each branch is laid: Enter sees to that first
		row.Text = "sheaths and boots as proposed"
	case !anyLaid(m):
		row.Text, row.Detail = "sheaths and boots: nothing to cover yet", "Devices and wires come first"
		row.Enter = func(m *desk.Model) { m.Tell("no branch holds a wire yet: add devices or wires first") }
	default:
		o := m.Once("covers", func() []desk.Row {
			o := add.Proposed(m.Sheet)
			switch says, bare := o.Text(), bareText(o); {
			case says != "":
				return []desk.Row{{Text: "sheaths and boots as proposed: " + says, Detail: detail}}
			case bare != "":
				return []desk.Row{{Text: "sheaths and boots: none to take", Detail: bare}}
			}
			return []desk.Row{{Text: "sheaths and boots: all are chosen", Detail: "Each branch's step Sheath changes them"}}
		})
		row.Text, row.Detail = o[0].Text, o[0].Detail
	}
	return row
}

// bareText names the branches that no tube fits, "" for none.
func bareText(o add.Covered) string {
	if len(o.Bare) == 0 {
		return ""
	}
	return "no tube of the usual kind fits " + words.Few(o.Bare) + ": take another kind, or leave it bare"
}

// anyLaid reports whether any branch holds something to cover.
func anyLaid(m *desk.Model) bool {
	for i := range m.Sheet.Branches {
		if len(m.Sheet.Branches[i].Layers) > 0 {
			return true
		}
	}
	return false
}
