package ends

import (
	"contralay/calc/query/add"
	"contralay/ui/bench/desk"
)

// coverRow writes the proposed sheaths and straight boots into the harness.
func coverRow(m *desk.Model) desk.Row {
	_, sheaths, boots := add.Proposed(m.Sheet)
	says := add.ProposedText(sheaths, boots)
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
