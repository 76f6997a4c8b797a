package desk

import (
	"slices"

	"contralay/model/runlog"
	"contralay/ui/bench/kit"
)

// Kind names a step, or a kind of screen, apart from the words of its title.
type Kind string

// The kinds of screen that more than one family opens; the others stand beside their pages.
const (
	KindMap         Kind = "branches"
	KindDrawing     Kind = "drawing"
	KindEnd         Kind = "end"
	KindWire        Kind = "wire"
	KindFeed        Kind = "feed"
	KindChoice      Kind = "choice"
	KindFileChanged Kind = "file changed"
	KindSeveral     Kind = "several wires" // of a connector, or of the branch in hand
	KindFrom        Kind = "wires from here"
)

// Place is what the bench knows of a step or of a kind of screen, whatever its page shows:
// one entry of the table of steps or of the table of screens.
type Place struct {
	Kind  Kind
	Title string // in the frame; "" is the kind's own name
	Pane  string // of a step: the title of its list
	Help  string // the page of the guide about it

	// Page makes what it shows; of is the thing that the screen is about. It is nil where
	// whoever opens the screen brings the page along.
	Page func(m *Model, w int, of string) Page

	// Picture is what is drawn where a step has its section, in exactly h lines of w cells: nil
	// is the section.
	Picture func(m *Model, w, h int) (title string, lines []string)

	Wide     bool // takes the whole width, with no section beside it
	Safe     bool // a question: it always opens on its first row, which harms nothing
	ReadOnly bool // only read or chosen from: Backspace goes back, there is nothing to undo
	Ticks    bool // Enter ticks work off: a second bare one that comes too soon counts as none
	Lasting  bool // stays open though an undo has left it without rows
	Unasked  bool // no word of welcome stands over its page on a first start

	Backspace func(m *Model)                        // in place of undo
	Leads     string                                // what the bar calls Backspace where that is not undo
	Escape    func(m *Model)                        // in place of going back
	Onward    func(m *Model)                        // what the right arrow does
	Leaves    string                                // beside the title, in place of "Esc goes back"
	Strip     func(m *Model) (text string, ok bool) // the strip of figures, in place of the branch's
	Head      func(m *Model, h *kit.Head)           // what the head of the frame says there; nil: the branch, and whether it is saved
	NoPoints  bool                                  // the worst open point does not stand under it, unless it is a stop

	Print  func(m *Model)              // what P does there
	Beside func(m *Model) (Work, bool) // what it wants worked out beside the screen, if anything
}

// Undoes is what the bar calls Backspace.
func (p *Place) Undoes() string {
	switch {
	case p.Leads != "":
		return p.Leads
	case p.ReadOnly:
		return "back"
	}
	return "undo"
}

// Tables are the steps of a branch, left to right, and every kind of screen that can be
// opened over them.
type Tables struct {
	Steps, Screens []Place
	Last           Row                                        // stands at the end of every step that has rows
	OnBrought      func(m *Model, lines []runlog.Line) string // says what other benches did
	OnBranch       func(m *Model)                             // hears that another branch is taken in hand

	// What the map leads to, of other families.
	First func(m *Model) []Row         // the ways to begin on an empty board
	AddAt func(m *Model, place string) // opens what can be added at a termination or a breakout
}

// find is the entry of a kind.
func find(all []Place, k Kind) (*Place, bool) {
	n := slices.IndexFunc(all, func(p Place) bool { return p.Kind == k })
	if n < 0 {
		return nil, false
	}
	return &all[n], true
}

// Here is what is in front: the screen that was opened last, else the step.
func (m *Model) Here() *Place {
	if n := len(m.Stack); n > 0 {
		return m.Stack[n-1].place
	}
	return m.StepHere()
}

// StepHere is the step in hand, whatever is open over it.
func (m *Model) StepHere() *Place {
	if p, ok := find(m.Tables.Steps, m.Step); ok {
		return p
	}
	return &m.Tables.Steps[0]
}

// Title is the name of what is in front, as the rail has it.
func (m *Model) Title() string {
	title := m.Here().Title
	if n := len(m.Stack); n > 0 && m.Stack[n-1].Title != "" {
		title = m.Stack[n-1].Title
	}
	if title == "" {
		return string(m.Here().Kind)
	}
	return title
}

// Top is the kind of what is in front.
func (m *Model) Top() Kind { return m.Here().Kind }

// Page makes the page in front, for rows of w cells.
func (m *Model) Page(w int) Page {
	if n := len(m.Stack); n > 0 {
		s := &m.Stack[n-1]
		if s.Page != nil {
			return s.Page(m, w)
		}
		return s.place.Page(m, w, s.Of)
	}
	p := m.StepHere().Page(m, w, "")
	if len(p.Rows) > 0 {
		p.Rows = append(p.Rows, m.Tables.Last)
	}
	return p
}

// Screen is something opened over a step.
type Screen struct {
	Kind  Kind
	Title string                     // "" is that of its kind
	Of    string                     // the thing it is about
	Turn  int                        // which of its pages is open, where it has several
	Page  func(m *Model, w int) Page // nil is that of its kind
	place *Place
}

// Open puts a screen in front.
func (m *Model) Open(s Screen) {
	p, ok := find(m.Tables.Screens, s.Kind)
	if !ok {
		m.Refuse("the table of screens has no " + string(s.Kind))
		return
	}
	s.place = p
	m.Stack = append(m.Stack, s)
	if p.Safe {
		m.Unput()
	}
}

// Show opens the screen of a kind on a thing; of is "" where it is about none.
func (m *Model) Show(k Kind, of string) { m.Open(Screen{Kind: k, Of: of}) }

// Front is the screen in front; nil on a step.
func (m *Model) Front() *Screen {
	if n := len(m.Stack); n > 0 {
		return &m.Stack[n-1]
	}
	return nil
}

// Subject is the thing that the screen in front is about; "" where it is about none.
func (m *Model) Subject() string {
	if s := m.Front(); s != nil {
		return s.Of
	}
	return ""
}

// Back closes what is in front.
func (m *Model) Back() {
	if n := len(m.Stack); n > 0 {
		m.Stack = m.Stack[:n-1]
	}
}
