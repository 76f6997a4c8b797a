package desk

import (
	"contralay/ui/bench/kit"
	"contralay/ui/bench/words"
)

// Widget is what stands on a page in place of rows, where it is not chosen from a list: a text
// to read, a folder to look through.
type Widget interface {
	// Draw draws it in exactly h lines of w cells.
	Draw(t *kit.Theme, w, h int) []string
	// Press takes a key, or leaves it to the key table.
	Press(m *Model, k words.Key) (heard bool)
}

// reading is how far the text in front has been read.
type reading struct {
	of     string // the page, by its cursor
	scroll kit.Scroll
}

// Read is a text to read, of lines that are wrapped to the width. Where the reader is in it is
// kept as long as the page is in front.
func (m *Model) Read(lines []string, w int) Widget {
	r := State[reading](m)
	if key := m.cursorKey() + "\x00" + m.Title(); r.of != key {
		*r = reading{of: key}
	}
	r.scroll.SetLines(kit.WrapAll(lines, w))
	return r
}

// Draw implements Widget.
func (r *reading) Draw(t *kit.Theme, w, h int) []string {
	r.scroll.SetSize(w, h)
	return t.Scroll(&r.scroll)
}

// Press implements Widget: arrows, page and end keys move.
func (r *reading) Press(m *Model, k words.Key) bool {
	moves, says := r.scroll.Press(k.Name)
	if moves {
		m.Tell(says)
	}
	return moves
}

// KindFile is the kind of screen on which a file is chosen.
const KindFile Kind = "file"

// choosing is the folder that is looked through, and what is done with what is chosen.
type choosing struct {
	picker *kit.Picker
	typed  Field // takes the path, however it is given
}

// AskFile lets a file be chosen with arrows; a letter or a digit opens a field for a name to
// be typed, as it does where the bench is given no list of files.
func (m *Model) AskFile(title string, ends []string, typed Field) {
	if m.Cfg.List == nil {
		m.OpenField(typed, "")
		return
	}
	of := kit.PickerOf{List: m.Cfg.List, Folder: m.Cfg.Folder, Ends: ends}
	if m.Cfg.Now != nil {
		of.Now = m.Cfg.Now()
	}
	c := &choosing{picker: kit.OpenPicker(of), typed: typed}
	m.Open(Screen{Kind: KindFile, Title: title, Page: func(*Model, int) Page {
		return Page{Lines: []string{"Arrows choose, Enter opens a folder or takes a file. / types a name instead."}, Widget: c}
	}})
}

// Draw implements Widget.
func (c *choosing) Draw(t *kit.Theme, w, h int) []string { return t.Picker(c.picker, w, h) }

// Press implements Widget.
func (c *choosing) Press(m *Model, k words.Key) bool {
	switch k.Name {
	case "up", "down", "pgup", "pgdown", "home", "end", "enter", "right", "left":
	case "/":
		m.Back()
		m.OpenField(c.typed, "")
		return true
	default:
		return false
	}
	answer := c.picker.Press(k.Name)
	m.Tell(answer.Says)
	if answer.Path == "" {
		return true
	}
	m.Back()
	if err := c.typed.Set(m, answer.Path); err != nil {
		m.Refuse(err.Error())
	}
	return true
}
