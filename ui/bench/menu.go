package bench

import (
	"fmt"

	"contralay/model/file"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/lists"
	"contralay/ui/bench/words"
)

// menuPage is what is not part of a branch: saving, help, quitting.
func menuPage(m *desk.Model, _ int, _ string) desk.Page {
	var p desk.Page
	p.Rows = []desk.Row{
		{Text: "back to the branches", Enter: func(m *desk.Model) { m.Back() }},
		{Text: "save", Detail: m.File.Path, Enter: func(m *desk.Model) { m.Save() }},
		{Text: "save under another name", Enter: func(m *desk.Model) { m.OpenField(m.NameField(), "") }},
		lists.ImportRow(m),
		{Text: "redo what was undone", Detail: fmt.Sprintf("%d steps", m.History.Undone()), Enter: func(m *desk.Model) { m.Redo() }},
		{Text: "lengths in " + m.Sys.Name(), Detail: "+ - mm or inch",
			Step: func(m *desk.Model, _ int) { m.Sys = 1 - m.Sys; m.Tell("lengths in " + m.Sys.Name()) }},
		bounceRow(m),
		{Text: "help: the first minute, keys, cautions", Enter: func(m *desk.Model) { openHelp(m, "start") }},
		{Text: "quit", Enter: func(m *desk.Model) { askQuit(m) }},
	}
	return p
}

// askQuit quits, or asks where work would be lost. The key that asked never
// answers: discarding takes another one.
func askQuit(m *desk.Model) {
	if m.Top() == quitKind {
		m.Tell("choose with the arrows, Enter takes the row")
		return
	}
	if !m.Dirty() {
		m.Quit = true
		return
	}
	m.Show(quitKind, "")
}

// quitPage asks what becomes of unsaved work.
func quitPage(m *desk.Model, _ int, _ string) desk.Page {
	what := m.File.Path
	if what == "" {
		what = "the harness, which has no file yet"
	}
	p := desk.Page{Lines: []string{fmt.Sprintf("There is unsaved work on %s.", what)}}
	p.Rows = m.Once("quit", func() []desk.Row { return quitRows(len(file.Differences(m.SavedDoc(), m.Doc()))) })
	return p
}

// quitRows are the ways out of the question, with so many changes that are not saved.
func quitRows(n int) []desk.Row {
	return []desk.Row{
		{Text: "keep working", Enter: func(m *desk.Model) { m.Back(); m.Tell("still here") }},
		{Text: "save, then quit", Enter: func(m *desk.Model) { m.Back(); m.SaveThen(func(m *desk.Model) { m.Quit = true }) }},
		{Text: fmt.Sprintf("discard %s: press + on this row", words.Changes(n)), Step: func(m *desk.Model, by int) {
			if by > 0 {
				m.Quit = true
			}
		}, Enter: func(m *desk.Model) { m.Tell("Enter does not discard. Press +") }},
	}
}
