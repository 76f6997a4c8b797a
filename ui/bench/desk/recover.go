package desk

import (
	"fmt"

	"contralay/model/file"
)

// Left is unsaved work that an earlier bench left behind.
type Left struct {
	Doc     file.Document
	When    string   // as a person says it
	Changed bool     // the harness's file was written since by somebody else
	Says    []string // what it has other than the file
	Discard func() error
}

// keep brings the harness to the journal. What fails there is said as long as it
// lasts, and keeps nobody from working.
func (m *Model) keep() { m.keeping()() }

// keeping begins to write the journal and waits for it when it is called: a harness is
// never changed, so the sheet can be worked out beside.
func (m *Model) keeping() (wait func()) {
	if m.Cfg.Keep == nil || m.H == m.Kept {
		return func() {}
	}
	m.Kept = m.H
	done := make(chan error, 1)
	doc, dirty := m.Doc(), m.Dirty()
	go func() { done <- m.Cfg.Keep(doc, dirty) }()
	return func() {
		m.NoJournal = ""
		if err := <-done; err != nil {
			m.NoJournal = err.Error()
		}
	}
}

// changedScreen stands before a save over a file that somebody else has written
// since it was read. The key that saves never writes over it.
func changedScreen(path string, then func(m *Model)) Screen {
	return Screen{Kind: KindFileChanged, Page: func(m *Model, w int) Page {
		return Page{Lines: []string{fmt.Sprintf("%s was written or taken away by somebody else since it was opened.", path)}, Rows: []Row{
			{Key: "work", Text: "keep working", Enter: func(m *Model) { m.Back(); m.Tell("not saved yet") }},
			{Key: "name", Text: "save under another name", Enter: func(m *Model) { m.Back(); m.OpenField(m.NameField(), "") }},
			{Key: "over", Text: "write over it: press + on this row", Detail: "what stands there now stays beside it as .bak",
				Step: func(m *Model, by int) {
					if by < 0 {
						m.Tell("+ writes over it")
						return
					}
					m.Back()
					if err := m.write(path); err != nil {
						m.Refuse("not saved: " + err.Error())
						return
					}
					if then != nil {
						then(m)
					}
				}, Enter: func(m *Model) { m.Tell("Enter does not write over it; + does") }},
		}}
	}}
}
