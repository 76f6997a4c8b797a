package desk

import (
	"fmt"
	"path/filepath"
	"strings"

	"contralay/model"
	"contralay/model/file"
	"contralay/ui/bench/kit"
)

// File is where the harness is on disk and what it was when it was saved.
type File struct {
	Path  string // "" until it has a name
	Saved *model.Harness

	same struct { // whether a harness differs from what was saved, for the two it was found for
		of, saved *model.Harness
		is        bool
	}
}

// Dirty reports whether the harness differs from its file. It is asked at every
// frame, so the answer is kept for the harness it was found for.
func (m *Model) Dirty() bool {
	f := &m.File
	if m.H == f.Saved {
		return false
	}
	if f.same.of != m.H || f.same.saved != f.Saved {
		f.same.of, f.same.saved, f.same.is = m.H, f.Saved, !m.H.Same(f.Saved)
	}
	return f.same.is
}

// SavedDoc is the harness as its file has it.
func (m *Model) SavedDoc() file.Document {
	d := m.Cfg.Doc
	d.Harness = *m.File.Saved
	return d
}

// Save saves under the harness's name, or asks for one first.
func (m *Model) Save() { m.SaveThen(nil) }

// SaveThen saves, and goes on with then once that is done.
func (m *Model) SaveThen(then func(m *Model)) {
	if m.File.Path == "" {
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
	if m.Cfg.Changed != nil && m.Cfg.Changed(m.File.Path) {
		if m.Top() == KindFileChanged {
			m.Tell("choose with the arrows, Enter takes the row")
			return
		}
		m.Open(changedScreen(m.File.Path, then))
		return
	}
	if err := m.write(m.File.Path); err != nil {
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
	m.File.Path, m.File.Saved = path, m.H
	m.Tell("saved to " + path)
	if !filepath.IsAbs(path) && m.Cfg.Folder != "" {
		m.Tell("saved to " + path + " in " + m.Cfg.Folder)
	}
	if lost > 0 {
		m.Tell(fmt.Sprintf("saved to %s. %d comment lines of the old file are kept in its .bak only", path, lost))
		m.Cfg.Doc.LostComments = 0
	}
	m.Journal = Journal{}
	m.keep()
	return nil
}

// NameField asks for a file name. A file that is there is not overwritten: a
// second name is asked for.
func (m *Model) NameField() Field {
	value := m.File.Path
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
			return fmt.Errorf("type a file name")
		}
		if filepath.Ext(text) == "" {
			text += ".toml"
		}
		if text != m.File.Path && m.Cfg.Exists != nil && m.Cfg.Exists(text) {
			return fmt.Errorf("%s exists already. Give another name", text)
		}
		if text == m.File.Path && m.Cfg.Changed != nil && m.Cfg.Changed(text) {
			return fmt.Errorf("%s was changed by somebody else. Give another name", text)
		}
		if err := m.write(text); err != nil {
			return kit.End(fmt.Errorf("not saved: %w", err))
		}
		return nil
	}}
}

// changedScreen stands before a save over a file that somebody else has written
// since it was read. The key that saves never writes over it.
func changedScreen(path string, then func(m *Model)) Screen {
	return Screen{Kind: KindFileChanged, Page: func(m *Model, w int) Page {
		return Page{Lines: []string{fmt.Sprintf("Somebody else has changed or removed %s since you opened it.", path)}, Rows: []Row{
			{Key: "work", Text: "keep working", Enter: func(m *Model) { m.Back(); m.Tell("not saved yet") }},
			{Key: "name", Text: "save under another name", Enter: func(m *Model) { m.Back(); m.OpenField(m.NameField(), "") }},
			{Key: "over", Text: "write over it: press + on this row", Detail: "The file that is there now stays beside it as .bak",
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
				}, Enter: func(m *Model) { m.Tell("Enter does not write over it. Press +") }},
		}}
	}}
}
