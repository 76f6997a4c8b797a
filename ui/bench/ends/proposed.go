package ends

import (
	"contralay/calc/query/add"
	"contralay/ui/bench/desk"
)

// coverRow writes the proposed sheaths and straight boots into the harness.
func coverRow(m *desk.Model) desk.Row {
	_, sheaths, boots := add.Proposed(m.Sheet)
	says := add.ProposedText(sheaths, boots)
	if says == "" && !anyLaid(m) {
		return desk.Row{Key: "covers", Text: "sheaths and boots: nothing to cover yet", Detail: "Devices and wires come first",
			Enter: func(m *desk.Model) { m.Tell("no branch holds a wire yet: add devices or wires first") }}
	}
	if says == "" {
		return desk.Row{Key: "covers", Text: "sheaths and boots: all are chosen", Detail: "Each branch's step Sheath changes them",
			Enter: func(m *desk.Model) {
				m.Tell("every branch that holds wires has its covers, and every connector its boot")
			}}
	}
	return desk.Row{Key: "covers", Text: "sheaths and boots as proposed: " + says,
		Detail: "Enter takes them into the harness. Each branch's step Sheath changes them", Enter: func(m *desk.Model) {
			h, sheaths, boots := add.Proposed(m.Sheet)
			toMap(m)
			m.Change(h, add.ProposedText(sheaths, boots)+" taken, as proposed")
		}}
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
