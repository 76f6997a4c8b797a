package desk

import (
	"contralay/model"
)

// Journal is the unsaved work that is kept outside the file.
type Journal struct {
	kept    *model.Harness // what it has
	Trouble string         // why there is none, as long as it lasts
}

// keep brings the harness to the journal. What fails there is said as long as it
// lasts, and keeps nobody from working.
func (m *Model) keep() { m.keeping()() }

// keeping begins to write the journal and waits for it when it is called: a harness is
// never changed, so the sheet can be worked out beside.
func (m *Model) keeping() (wait func()) {
	if m.Cfg.Keep == nil || m.H == m.Journal.kept {
		return func() {}
	}
	m.Journal.kept = m.H
	done := make(chan error, 1)
	doc, dirty := m.Doc(), m.Dirty()
	go func() { done <- m.Cfg.Keep(doc, dirty) }()
	return func() {
		m.Journal.Trouble = ""
		if err := <-done; err != nil {
			m.Journal.Trouble = err.Error()
		}
	}
}

// TakeUp makes left work the harness. It is taken away from where it lay once it
// is in this bench's own journal.
func (m *Model) TakeUp(l Left) {
	h := l.Doc.Harness
	m.History.Record(m.H)
	m.H = &h
	m.Branch = min(m.Branch, max(0, len(h.Branches)-1))
	m.Rebuild()
	if m.Journal.Trouble == "" {
		_ = l.Discard() // else it stays, and is offered once more
	}
}
