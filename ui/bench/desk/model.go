package desk

import (
	"slices"
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"contralay/calc"
	"contralay/calc/phase/bundle"
	"contralay/calc/phase/planning"
	"contralay/calc/phase/wires"
	"contralay/calc/query/offer"
	"contralay/calc/query/run"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/file"
	"contralay/model/unit"
	"contralay/ui/draw"
)

// Config is what a bench is opened with and how it touches the world.
type Config struct {
	Doc     file.Document
	Path    string // "" until the harness has a name on disk
	Cat     *catalogue.Catalogue
	Palette draw.Palette
	ASCII   bool
	Welcome bool   // a first start: the first screen says how to go on, until the first key
	Notice  string // said until the first key
	Run     bool   // it opens on a bench run
	Serial  string // of what is built; "" is the one that is not through
	Folder  string // what a file name without folder is in

	// Bounce is how long the same key is ignored after it was taken; 0 takes every
	// key. Now is the clock it goes by.
	Bounce time.Duration
	Now    func() time.Time

	Save      func(path string, d file.Document) error
	Exists    func(path string) bool
	Changed   func(path string) bool                                          // somebody else wrote the file since it was read or saved
	Keep      func(d file.Document, dirty bool) error                         // told of every change, for the journal
	ListBytes func(path string) ([]byte, error)                               // reads a wire list
	WriteNew  func(path string, text []byte) error                            // writes a file that is not there yet
	Learn     func(c catalogue.Correction) (*catalogue.Catalogue, error)      // writes what the shop goes by; the catalogue with it
	Print     func(path string, s *sheet.Sheet, unsaved bool) (string, error) // writes the build sheet beside a file; "" is no file yet
	Left      []Left                                                          // unsaved work of benches that are gone, newest first
}

// Model is the whole bench. It is changed by Update alone.
type Model struct {
	Cfg    Config
	Tables Tables
	H      *model.Harness
	Saved  *model.Harness
	Kept   *model.Harness // what the journal has
	Sheet  *sheet.Sheet
	Path   string
	Sys    unit.System

	Undo, Redo []*model.Harness

	Branch int
	Step   Kind
	Stack  []Screen // screens opened over the step; the last is on top
	Cursor map[string]int
	On     map[string]string // key of the row the cursor was put on
	Entry  *entry
	Run    Running
	Taking *Importing // the wire list that is open
	Told   struct {   // the reading explained last
		Of  *sheet.Sheet
		Key string
		E   run.Explained
		Ok  bool
	}
	Says    string
	Trouble bool // says is a refusal
	Zoom    bool
	By      Colouring
	Quit    bool
	Greet   bool // no key yet on a first start

	Bounce time.Duration
	same   struct { // whether h differs from saved
		h, saved *model.Harness
		is       bool
	}
	lastKey  string // for the bounce filter
	lastTime time.Time

	NoJournal string // why there is no journal, as long as it lasts

	Pending   map[string]bool // plan keys being worked out
	Offers    []Offer         // of the fill step, for a sheet and a branch
	OffersFor *sheet.Sheet
	OffersOf  int
	trials    trials
	Advice    Advice       // the size that does for the wire in hand
	onceFor   *sheet.Sheet // of the rows that are made once
	onceOf    int
	onceRows  map[string][]Row
	Search    *searching                      // a long search under way, or nil
	Units     map[string][]planning.UnitOffer // by plan key: what could be made up, worked out beside the Fill step

	W, Height int
}

// FirstBranch is the one with most to lay.
func (m *Model) FirstBranch() int {
	best, most := -1, -1
	for i, b := range m.Sheet.Branches {
		if len(b.Components) > most {
			best, most = i, len(b.Components)
		}
	}
	return best
}

// Left reports whether the person chose to leave, rather than being cut off.
func (m *Model) Left() bool { return m.Quit }

// Proposed brings a proposal that was worked out beside the screen.
type Proposed struct {
	Key string
	P   sheet.Proposal
}

// Offered brings the units that could be made up.
type Offered struct {
	Key    string
	Offers []planning.UnitOffer
}

// Advice is the smallest size that does for a wire, by a sheet.
type Advice struct {
	Sheet *sheet.Sheet
	Id    string
	Size  string
	Ok    bool
	Doubt string // why the size it has does not do
}

// AdviceOf marks a pending question about a wire's size.
const AdviceOf = "advice\x00"

// UnitsOf marks a pending question about units.
const UnitsOf = "units\x00"

// Plan asks for the lay-ups of the branch in hand and of every branch that waits
// for one, one at a time.
func (m *Model) Plan() tea.Cmd {
	if len(m.Pending) > 0 {
		return nil
	}
	if cmd := m.beside(); cmd != nil {
		return cmd
	}
	order := []int{m.Branch}
	for i := range m.Sheet.Branches {
		if m.Sheet.Branches[i].Waiting {
			order = append(order, i)
		}
	}
	for _, i := range order {
		if i >= len(m.Sheet.Branches) {
			continue
		}
		b := &m.Sheet.Branches[i]
		if !b.Waiting && (b.Make != model.MakeLaid || len(b.Layers) == 0) {
			continue
		}
		key := bundle.PlanKey(m.Sheet, i)
		if _, known := m.Sheet.Proposals[key]; known {
			continue
		}
		m.Pending[key] = true
		s := m.Sheet
		return func() tea.Msg { return Proposed{key, planning.Propose(s, i)} }
	}
	if begin := m.StepHere().Beside; begin != nil {
		return begin(m)
	}
	return nil
}

// beside begins what the screen in front wants worked out.
func (m *Model) beside() tea.Cmd {
	if begin := m.Here().Beside; begin != nil && len(m.Stack) > 0 {
		return begin(m)
	}
	return nil
}

// Advise asks for the size that does for the wire whose page is in front: it takes a
// build for each size it tries, which is more than a key may.
func Advise(m *Model) tea.Cmd {
	id := m.Stack[len(m.Stack)-1].Of
	k, ok := m.Sheet.X.Wire[id]
	if !ok || !wires.Carries(m.Sheet, k) || m.Advice.Sheet == m.Sheet && m.Advice.Id == id {
		return nil
	}
	m.Pending[AdviceOf+id] = true
	s := m.Sheet
	return func() tea.Msg {
		size, ok := offer.SmallestThatDoes(s, k)
		return Advice{s, id, size, ok, offer.Doubt(s, k, s.H.Wires[k].Size)}
	}
}

// PlanUnits asks, at the Fill step, which loose wires could be made up.
func PlanUnits(m *Model) tea.Cmd {
	_, b, ok := m.B()
	if !ok || b.Make != model.MakeLaid || len(b.Layers) == 0 {
		return nil
	}
	key := bundle.PlanKey(m.Sheet, m.Branch)
	if _, known := m.Units[key]; known {
		return nil
	}
	m.Pending[UnitsOf+key] = true
	s, i := m.Sheet, m.Branch
	return func() tea.Msg { return Offered{key, planning.UnitOffers(s, i)} }
}

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
	if held := m.breaks(h); held != "" {
		m.Refuse(held)
		return
	}
	m.Undo = append(m.Undo, m.H)
	m.Redo = nil
	m.H = h
	m.Rebuild()
	m.Tell(says)
}

// Built is the sheet of a harness, with what this one has worked out already.
func (m *Model) Built(h *model.Harness) *sheet.Sheet { return calc.Build(h, m.Cfg.Cat, m.Sheet) }

func (m *Model) Rebuild() {
	wait := m.keeping()
	m.Sheet = m.Built(m.H)
	wait()
}

func (m *Model) Doc() file.Document {
	d := m.Cfg.Doc
	d.Harness = *m.H
	return d
}

// Dirty reports whether the harness differs from its file. It is asked at every
// frame, so the answer is kept for the harness it was found for.
func (m *Model) Dirty() bool {
	if m.H == m.Saved {
		return false
	}
	if m.same.h != m.H || m.same.saved != m.Saved {
		m.same.h, m.same.saved, m.same.is = m.H, m.Saved, !m.H.Same(m.Saved)
	}
	return m.same.is
}

func (m *Model) Tell(says string) { m.Says, m.Trouble = says, false }

func (m *Model) Refuse(says string) { m.Says, m.Trouble = says, true }

// CursorKey keeps a cursor for each screen of each branch.
func (m *Model) CursorKey() string {
	top := string(m.Top())
	if n := len(m.Stack); n > 0 && m.Stack[n-1].Of != "" {
		return top + "\x00\x00" + m.Stack[n-1].Of
	}
	if m.Branch < len(m.H.Branches) {
		return top + "\x00" + m.H.Branches[m.Branch].ID
	}
	return top
}

// At is the row in hand, kept within the page. Where rows came or went above it,
// it is where the row is now.
func (m *Model) At(p Page) int {
	cursor, been := m.Cursor[m.CursorKey()]
	if !been {
		cursor = p.Start
	}
	at := max(0, min(cursor, len(p.Rows)-1))
	if on := m.On[m.CursorKey()]; on != "" && at < len(p.Rows) && p.Rows[at].Key != on {
		if i := slices.IndexFunc(p.Rows, func(r Row) bool { return r.Key == on }); i >= 0 {
			return i
		}
	}
	return at
}

// B is the branch in hand; ok is false in a harness without branches.
func (m *Model) B() (*model.Branch, *sheet.Branch, bool) {
	if m.Branch >= len(m.H.Branches) {
		return nil, nil, false
	}
	return &m.H.Branches[m.Branch], &m.Sheet.Branches[m.Branch], true
}
