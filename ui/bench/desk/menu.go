package desk

import (
	"fmt"
	"path/filepath"
	"strings"

	"contralay/model/file"
)

// SavedDoc is the harness as its file has it.
func (m *Model) SavedDoc() file.Document {
	d := m.Cfg.Doc
	d.Harness = *m.Saved
	return d
}

func (m *Model) Save() { m.SaveThen(nil) }

// SaveThen saves under the harness's name, or asks for one first.
func (m *Model) SaveThen(then func(m *Model)) {
	if m.Path == "" {
		f := m.NameField()
		set := f.Set
		f.Set = func(m *Model, text string) error {
			if err := set(m, text); err != nil {
				return err
			}
			if then != nil && !m.Dirty() {
				then(m)
			}
			return nil
		}
		m.OpenField(f, "")
		return
	}
	if m.Cfg.Changed != nil && m.Cfg.Changed(m.Path) {
		if m.Top() == KindFileChanged {
			m.Tell("choose with the arrows, Enter takes the row")
			return
		}
		m.Open(changedScreen(m.Path, then))
		return
	}
	if err := m.write(m.Path); err != nil {
		m.Refuse("not saved: " + err.Error())
		return
	}
	if then != nil {
		then(m)
	}
}

func (m *Model) write(path string) error {
	if m.Cfg.Save == nil {
		return fmt.Errorf("saving is not possible here")
	}
	lost := m.Cfg.Doc.LostComments
	if err := m.Cfg.Save(path, m.Doc()); err != nil {
		return err
	}
	m.Path, m.Saved = path, m.H
	m.Tell("saved to " + path)
	if !filepath.IsAbs(path) && m.Cfg.Folder != "" {
		m.Tell("saved to " + path + " in " + m.Cfg.Folder)
	}
	if lost > 0 {
		m.Tell(fmt.Sprintf("saved to %s; %d comment lines inside the old file are kept in its .bak only", path, lost))
		m.Cfg.Doc.LostComments = 0
	}
	m.Kept, m.NoJournal = nil, ""
	m.keep()
	return nil
}

// NameField asks for a file name. A file that is there is not overwritten: a
// second name is asked for.
func (m *Model) NameField() Field {
	value := m.Path
	if value == "" {
		value = strings.ToLower(strings.Map(func(r rune) rune {
			if r == '-' || r == '_' || (r >= '0' && r <= '9') || (r >= 'a' && r <= 'z') || (r >= 'A' && r <= 'Z') {
				return r
			}
			return -1
		}, m.H.Head.Number.V))
		if value == "" {
			value = "harness"
		}
		value += ".toml"
	}
	return Field{Label: "save to file", Value: value, Set: func(m *Model, text string) error {
		if text == "" {
			return fmt.Errorf("a file name is wanted")
		}
		if filepath.Ext(text) == "" {
			text += ".toml"
		}
		if text != m.Path && m.Cfg.Exists != nil && m.Cfg.Exists(text) {
			return fmt.Errorf("%s is there already: give another name", text)
		}
		if text == m.Path && m.Cfg.Changed != nil && m.Cfg.Changed(text) {
			return fmt.Errorf("%s was written by somebody else: give another name", text)
		}
		if err := m.write(text); err != nil {
			return fmt.Errorf("not saved: %w", err)
		}
		return nil
	}}
}
