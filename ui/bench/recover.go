package bench

import (
	"fmt"
	"strings"

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

// leftScreen offers unsaved work: to take up, to leave for later, or to throw
// away. Taking it up is a change like any other and can be undone.
func leftScreen(left []Left) screen {
	return screen{name: "unsaved work", safe: true, page: func(m *Model, w int) page {
		l := left[0]
		what := m.path
		if what == "" {
			what = "a harness without a file"
		}
		p := page{lines: []string{fmt.Sprintf("Unsaved work on %s is left from %s.", what, l.When)}}
		if l.Changed {
			p.lines = append(p.lines, "The file was written since: what was done there is not in this work.")
		}
		if n := len(left) - 1; n > 0 {
			p.lines = append(p.lines, fmt.Sprintf("%s more after this.", plural(n, "piece", "pieces")))
		}
		next := func(m *Model, says string) {
			m.back()
			switch {
			case len(left) > 1:
				m.open(leftScreen(left[1:]))
			case m.cfg.Run:
				m.Run(m.cfg.Serial)
			}
			m.tell(says)
		}
		p.rows = []row{
			{key: "take", text: "take it up: " + leftText(l), detail: "Enter goes on where it stopped; Backspace goes back to the file", enter: func(m *Model) {
				m.takeLeft(l)
				says := "the unsaved work is taken up; S saves it, Backspace goes back to the file"
				if n := len(left) - 1; n > 0 { // a second would take the place of the first
					says += fmt.Sprintf("; %s more, offered at the next start", plural(n, "piece stays", "pieces stay"))
				}
				m.back()
				if m.cfg.Run {
					m.Run(m.cfg.Serial)
				}
				m.tell(says)
			}},
			{key: "later", text: "leave it: open the file as it was saved", detail: "it stays where it is and is offered at the next start", enter: func(m *Model) {
				next(m, "the unsaved work stays and is offered again at the next start")
			}},
			{key: "away", text: "throw it away: press + on this row", detail: "the one thing here that cannot be undone; Enter does not do it", step: func(m *Model, by int) {
				if by < 0 {
					m.tell("+ throws it away")
					return
				}
				if err := l.Discard(); err != nil {
					m.refuse("it could not be thrown away: " + err.Error())
					return
				}
				next(m, "the unsaved work is gone")
			}, enter: func(m *Model) { m.tell("Enter does not throw it away; + does") }},
		}
		if len(l.Says) == 0 {
			p.rows = append(p.rows, row{text: "it is the same as the file"})
		}
		for _, built := range []bool{true, false} { // what was built stands first
			for _, t := range l.Says {
				if strings.HasPrefix(t, "build") == built {
					p.rows = append(p.rows, row{text: t, detail: t})
				}
			}
		}
		return p
	}}
}

// leftText is what unsaved work holds, in few words: what was built before what was changed.
func leftText(l Left) string {
	text := ""
	for _, b := range l.Doc.Harness.Builds {
		n := 0
		for _, r := range b.Readings {
			n += len(r.OverMM)
		}
		text += fmt.Sprintf("serial %s at %s and %s; ", b.Serial, plural(len(b.Done), "tick", "ticks"), plural(n, "reading", "readings"))
	}
	return text + changes(len(l.Says))
}

// takeLeft makes left work the harness. It is taken away from where it lay once it
// is in this bench's own journal.
func (m *Model) takeLeft(l Left) {
	h := l.Doc.Harness
	m.undo, m.redo = append(m.undo, m.h), nil
	m.h = &h
	m.branch = min(m.branch, max(0, len(h.Branches)-1))
	m.rebuild()
	if m.noJournal == "" {
		_ = l.Discard() // else it stays, and is offered once more
	}
}

// keep brings the harness to the journal. What fails there is said as long as it
// lasts, and keeps nobody from working.
func (m *Model) keep() { m.keeping()() }

// keeping begins to write the journal and waits for it when it is called: a harness is
// never changed, so the sheet can be worked out beside.
func (m *Model) keeping() (wait func()) {
	if m.cfg.Keep == nil || m.h == m.kept {
		return func() {}
	}
	m.kept = m.h
	done := make(chan error, 1)
	doc, dirty := m.doc(), m.dirty()
	go func() { done <- m.cfg.Keep(doc, dirty) }()
	return func() {
		m.noJournal = ""
		if err := <-done; err != nil {
			m.noJournal = err.Error()
		}
	}
}

// changedScreen stands before a save over a file that somebody else has written
// since it was read. The key that saves never writes over it.
func changedScreen(path string, then func(m *Model)) screen {
	return screen{name: "file changed", safe: true, page: func(m *Model, w int) page {
		return page{lines: []string{fmt.Sprintf("%s was written or taken away by somebody else since it was opened.", path)}, rows: []row{
			{key: "work", text: "keep working", enter: func(m *Model) { m.back(); m.tell("not saved yet") }},
			{key: "name", text: "save under another name", enter: func(m *Model) { m.back(); m.openField(m.nameField(), "") }},
			{key: "over", text: "write over it: press + on this row", detail: "what stands there now stays beside it as .bak", step: func(m *Model, by int) {
				if by < 0 {
					m.tell("+ writes over it")
					return
				}
				m.back()
				if err := m.write(path); err != nil {
					m.refuse("not saved: " + err.Error())
					return
				}
				if then != nil {
					then(m)
				}
			}, enter: func(m *Model) { m.tell("Enter does not write over it; + does") }},
		}}
	}}
}
