package desk

import (
	"contralay/calc"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/file"
	"contralay/model/unit"
	"contralay/ui/bench/kit"
	"contralay/ui/draw"
)

// Model is the whole bench. It is changed by Update alone.
type Model struct {
	Cfg    Config
	Tables Tables
	Theme  *kit.Theme

	H       *model.Harness
	Sheet   *sheet.Sheet
	Sys     unit.System
	History History
	behind  behind
	File    File
	Journal Journal

	Branch int      // in hand
	Step   Kind     // of the branch
	Stack  []Screen // opened over the step; the last is on top
	Cursor Cursor
	Entry  *Entry // the open field, or nil
	Bounce Bounce

	Says    string
	Trouble bool // what it says is a refusal
	Quit    bool
	Greet   bool // no key yet on a first start

	Pending map[string]bool // what is being worked out beside the screen, by its key

	states states
	rows   *Kept[[]Row]
	trials *Kept[*Model]
	marks  *Kept[map[string]string] // of what stands on a list, by id

	W, Height int
}

// New is a bench on a harness, at its first step.
func New(cfg Config, tables Tables) *Model {
	h := cfg.Doc.Harness
	m := &Model{Cfg: cfg, Tables: tables, Theme: kit.NewTheme(cfg.Palette, cfg.ASCII), H: &h, File: File{Path: cfg.Path, Saved: &h},
		Journal: Journal{kept: &h},
		Step:    tables.Steps[0].Kind, Cursor: newCursor(),
		Bounce: Bounce{Within: min(max(cfg.Bounce, 0), MostBounce), Enter: min(max(cfg.RunBounce, 0), MostBounce)},
		Says:   cfg.Notice, Greet: cfg.Welcome, Pending: map[string]bool{},
		states: states{}, rows: &Kept[[]Row]{}, trials: &Kept[*Model]{}, marks: &Kept[map[string]string]{}, W: 80, Height: 24}
	if s, err := unit.ParseSystem(h.Head.Units.V); err == nil {
		m.Sys = s
	}
	m.Sheet = calc.Build(m.H, cfg.Cat, cfg.Known)
	m.Branch = max(0, m.MostToLay())
	Brought(m)
	return m
}

// MostToLay is the branch with most to lay; -1 where there is none.
func (m *Model) MostToLay() int {
	best, most := -1, -1
	for i, b := range m.Sheet.Branches {
		if len(b.Components) > most {
			best, most = i, len(b.Components)
		}
	}
	return best
}

// ShownOn draws the bench for another terminal: its colours, and whether it has plain
// characters alone.
func (m *Model) ShownOn(p draw.Palette, ascii bool) {
	m.Cfg.Palette, m.Cfg.ASCII = p, ascii
	m.Theme = kit.NewTheme(p, ascii)
}

// Left reports whether the person chose to leave, rather than being cut off.
func (m *Model) Left() bool { return m.Quit }

// Change makes h the harness, remembers the one before and recalculates; what the
// builder holds fixed it leaves, and says so.
func (m *Model) Change(h *model.Harness, says string) {
	if h == m.H {
		m.Tell(says)
		return
	}
	if h.Same(m.H) { // no step to undo for nothing
		m.Tell("unchanged")
		return
	}
	if m.Cfg.Barred != nil && !model.SameBuilds(h, m.H) {
		if says := m.Cfg.Barred(); says != "" {
			m.Refuse(says)
			return
		}
	}
	if held := breaks(m.Sheet, h); held != "" {
		m.Refuse(held)
		return
	}
	m.replace(h, says)
}

// replace makes h the harness and remembers the one before.
func (m *Model) replace(h *model.Harness, says string) {
	m.History.Record(m.H)
	m.H = h
	m.Rebuild()
	m.Tell(says)
}

// Built is the sheet of a harness, with what this one has worked out already.
func (m *Model) Built(h *model.Harness) *sheet.Sheet { return calc.Build(h, m.Cfg.Cat, m.Sheet) }

// Rebuild works the sheet out again, and writes the journal meanwhile.
func (m *Model) Rebuild() {
	wait := m.keeping()
	m.Branch = inHand(m.Sheet.H, m.Branch, m.H)
	m.Sheet = m.Built(m.H)
	wait()
}

// Doc is the harness as a file would hold it.
func (m *Model) Doc() file.Document {
	d := m.Cfg.Doc
	d.Harness = *m.H
	return d
}

// Tell says what a key did.
func (m *Model) Tell(says string) { m.Says, m.Trouble = m.Sys.Says(says), false }

// Refuse says why a key did nothing.
func (m *Model) Refuse(says string) { m.Says, m.Trouble = m.Sys.Says(says), true }

// BranchHere is the branch in hand; ok is false in a harness without branches.
func (m *Model) BranchHere() (*model.Branch, *sheet.Branch, bool) {
	if m.Branch >= len(m.H.Branches) {
		return nil, nil, false
	}
	return &m.H.Branches[m.Branch], &m.Sheet.Branches[m.Branch], true
}

// TakeBranch takes a branch in hand and closes what is open.
func (m *Model) TakeBranch(i int) {
	m.Branch, m.Stack = i, nil
	if m.Tables.OnBranch != nil {
		m.Tables.OnBranch(m)
	}
}
