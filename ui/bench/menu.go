package bench

import (
	"fmt"
	"path/filepath"
	"strings"

	"contralay/model/file"
)

// menuScreen is what is not part of a branch: saving, help, quitting.
func menuScreen() screen {
	return screen{name: "menu", page: func(m *Model, w int) page {
		p := page{lines: []string{"menu"}}
		p.rows = []row{
			{text: "back to the branches", enter: func(m *Model) { m.back() }},
			{text: "save", detail: m.path, enter: func(m *Model) { m.save() }},
			{text: "save under another name", enter: func(m *Model) { m.openField(m.nameField(), "") }},
			m.importRow(),
			{text: "do again what was undone", detail: fmt.Sprintf("%d steps", len(m.redo)), enter: func(m *Model) { m.redoOne() }},
			{text: "lengths in " + m.sys.Name(), detail: "+ - mm or inch", step: func(m *Model, _ int) { m.sys = 1 - m.sys; m.tell("lengths in " + m.sys.Name()) }},
			m.bounceRow(),
			{text: "help: the first minute, keys, cautions", enter: func(m *Model) { m.open(helpScreen("start")) }},
			{text: "quit", enter: func(m *Model) { m.askQuit() }},
		}
		return p
	}}
}

// askQuit quits, or asks where work would be lost. The key that asked never
// answers: discarding takes another one.
func (m *Model) askQuit() {
	if m.top() == "quit" {
		m.tell("choose with the arrows, Enter takes the row")
		return
	}
	if !m.dirty() {
		m.quit = true
		return
	}
	m.open(screen{name: "quit", safe: true, page: func(m *Model, w int) page {
		n := len(file.Differences(m.savedDoc(), m.doc()))
		what := m.path
		if what == "" {
			what = "the harness, which has no file yet"
		}
		p := page{lines: []string{fmt.Sprintf("There is unsaved work on %s.", what)}}
		p.rows = []row{
			{text: "keep working", enter: func(m *Model) { m.back(); m.tell("still here") }},
			{text: "save, then quit", enter: func(m *Model) { m.back(); m.saveThen(func(m *Model) { m.quit = true }) }},
			{text: fmt.Sprintf("discard %s: press + on this row", changes(n)), step: func(m *Model, by int) {
				if by > 0 {
					m.quit = true
				}
			}, enter: func(m *Model) { m.tell("Enter does not discard; + does") }},
		}
		return p
	}})
}

// savedDoc is the harness as its file has it.
func (m *Model) savedDoc() file.Document {
	d := m.cfg.Doc
	d.Harness = *m.saved
	return d
}

func (m *Model) save() { m.saveThen(nil) }

// saveThen saves under the harness's name, or asks for one first.
func (m *Model) saveThen(then func(m *Model)) {
	if m.path == "" {
		f := m.nameField()
		set := f.set
		f.set = func(m *Model, text string) error {
			if err := set(m, text); err != nil {
				return err
			}
			if then != nil && !m.dirty() {
				then(m)
			}
			return nil
		}
		m.openField(f, "")
		return
	}
	if m.cfg.Changed != nil && m.cfg.Changed(m.path) {
		if m.top() == "file changed" {
			m.tell("choose with the arrows, Enter takes the row")
			return
		}
		m.open(changedScreen(m.path, then))
		return
	}
	if err := m.write(m.path); err != nil {
		m.refuse("not saved: " + err.Error())
		return
	}
	if then != nil {
		then(m)
	}
}

func (m *Model) write(path string) error {
	if m.cfg.Save == nil {
		return fmt.Errorf("saving is not possible here")
	}
	lost := m.cfg.Doc.LostComments
	if err := m.cfg.Save(path, m.doc()); err != nil {
		return err
	}
	m.path, m.saved = path, m.h
	m.tell("saved to " + path)
	if !filepath.IsAbs(path) && m.cfg.Folder != "" {
		m.tell("saved to " + path + " in " + m.cfg.Folder)
	}
	if lost > 0 {
		m.tell(fmt.Sprintf("saved to %s; %d comment lines inside the old file are kept in its .bak only", path, lost))
		m.cfg.Doc.LostComments = 0
	}
	m.kept, m.noJournal = nil, ""
	m.keep()
	return nil
}

// nameField asks for a file name. A file that is there is not overwritten: a
// second name is asked for.
func (m *Model) nameField() field {
	value := m.path
	if value == "" {
		value = strings.ToLower(strings.Map(func(r rune) rune {
			if r == '-' || r == '_' || (r >= '0' && r <= '9') || (r >= 'a' && r <= 'z') || (r >= 'A' && r <= 'Z') {
				return r
			}
			return -1
		}, m.h.Head.Number.V))
		if value == "" {
			value = "harness"
		}
		value += ".toml"
	}
	return field{label: "save to file", value: value, set: func(m *Model, text string) error {
		if text == "" {
			return fmt.Errorf("a file name is wanted")
		}
		if filepath.Ext(text) == "" {
			text += ".toml"
		}
		if text != m.path && m.cfg.Exists != nil && m.cfg.Exists(text) {
			return fmt.Errorf("%s is there already: give another name", text)
		}
		if text == m.path && m.cfg.Changed != nil && m.cfg.Changed(text) {
			return fmt.Errorf("%s was written by somebody else: give another name", text)
		}
		if err := m.write(text); err != nil {
			return fmt.Errorf("not saved: %w", err)
		}
		return nil
	}}
}

func changes(n int) string {
	if n == 1 {
		return "1 change"
	}
	return fmt.Sprintf("%d changes", n)
}
