package bench

import (
	"fmt"
	"slices"
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"contralay/calc"
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
	Changed   func(path string) bool                                         // somebody else wrote the file since it was read or saved
	Keep      func(d file.Document, dirty bool) error                        // told of every change, for the journal
	ListBytes func(path string) ([]byte, error)                              // reads a wire list
	WriteNew  func(path string, text []byte) error                           // writes a file that is not there yet
	Learn     func(c catalogue.Correction) (*catalogue.Catalogue, error)     // writes what the shop goes by; the catalogue with it
	Print     func(path string, s *calc.Sheet, unsaved bool) (string, error) // writes the build sheet beside a file; "" is no file yet
	Left      []Left                                                         // unsaved work of benches that are gone, newest first
}

// Step is one of the five steps of a branch.
type Step int

// The steps, left to right.
const (
	Wires Step = iota
	Layers
	Fill
	Sheath
	Build
	steps
)

var stepNames = [steps]string{"Wires", "Layers", "Fill", "Sheath", "Build"}

// Model is the whole bench. It is changed by Update alone.
type Model struct {
	cfg   Config
	h     *model.Harness
	saved *model.Harness
	kept  *model.Harness // what the journal has
	sheet *calc.Sheet
	path  string
	sys   unit.System

	undo, redo []*model.Harness

	branch int
	step   Step
	stack  []screen // screens opened over the step; the last is on top
	cursor map[string]int
	on     map[string]string // key of the row the cursor was put on
	entry  *entry
	run    running
	taking *importing // the wire list that is open
	told   struct {   // the reading explained last
		of  *calc.Sheet
		key string
		e   calc.Explained
		ok  bool
	}
	says    string
	trouble bool // says is a refusal
	zoom    bool
	by      colouring
	quit    bool
	greet   bool // no key yet on a first start

	bounce time.Duration
	same   struct { // whether h differs from saved
		h, saved *model.Harness
		is       bool
	}
	lastKey  string // for the bounce filter
	lastTime time.Time

	noJournal string // why there is no journal, as long as it lasts

	pending   map[string]bool // plan keys being worked out
	offers    []offer         // of the fill step, for a sheet and a branch
	offersFor *calc.Sheet
	offersOf  int
	trials    trials
	advice    advice      // the size that does for the wire in hand
	onceFor   *calc.Sheet // of the rows that are made once
	onceOf    int
	onceRows  map[string][]row
	search    *searching                  // a long search under way, or nil
	units     map[string][]calc.UnitOffer // by plan key: what could be made up, worked out beside the Fill step

	w, height int
}

// screen is something opened over a step.
type screen struct {
	name string // for the cursor and the key table
	page func(m *Model, w int) page
	safe bool   // a question: it always opens on its first row, which harms nothing
	of   string // the thing it is about
	pick bool   // only chosen from or read: Backspace goes back
}

// New opens a bench.
func New(cfg Config) *Model {
	m := &Model{cfg: cfg, path: cfg.Path, cursor: map[string]int{}, on: map[string]string{}, units: map[string][]calc.UnitOffer{}, pending: map[string]bool{}, w: 80, height: 24, says: cfg.Notice, greet: cfg.Welcome}
	m.bounce = min(max(cfg.Bounce, 0), MostBounce)
	h := cfg.Doc.Harness
	m.h, m.saved, m.kept = &h, &h, &h
	if s, err := unit.ParseSystem(h.Head.Units.V); err == nil {
		m.sys = s
	}
	m.sheet = calc.Build(m.h, cfg.Cat, nil)
	m.branch = m.firstBranch()
	if m.branch < 0 {
		m.branch = 0
		m.stack = []screen{branchesScreen()}
	}
	switch {
	case len(cfg.Left) > 0:
		m.open(leftScreen(cfg.Left)) // and then the run, where one is asked for
	case cfg.Run:
		m.Run(cfg.Serial)
	}
	return m
}

// firstBranch is the one with most to lay.
func (m *Model) firstBranch() int {
	best, most := -1, -1
	for i, b := range m.sheet.Branches {
		if len(b.Components) > most {
			best, most = i, len(b.Components)
		}
	}
	return best
}

// Left reports whether the person chose to leave, rather than being cut off.
func (m *Model) Left() bool { return m.quit }

// Init starts the first planning.
func (m *Model) Init() tea.Cmd { return m.plan() }

// proposed brings a proposal that was worked out beside the screen.
type proposed struct {
	key string
	p   calc.Proposal
}

// offered brings the units that could be made up.
type offered struct {
	key    string
	offers []calc.UnitOffer
}

// advice is the smallest size that does for a wire, by a sheet.
type advice struct {
	sheet *calc.Sheet
	id    string
	size  string
	ok    bool
	doubt string // why the size it has does not do
}

// adviceOf marks a pending question about a wire's size.
const adviceOf = "advice\x00"

// unitsOf marks a pending question about units.
const unitsOf = "units\x00"

// Update takes one message.
func (m *Model) Update(msg tea.Msg) (tea.Model, tea.Cmd) {
	switch msg := msg.(type) {
	case tea.WindowSizeMsg:
		m.w, m.height = msg.Width, msg.Height
	case proposed:
		delete(m.pending, msg.key)
		m.sheet.Adopt(msg.key, msg.p)
		m.rebuild()
		return m, m.plan()
	case offered:
		delete(m.pending, unitsOf+msg.key)
		m.units[msg.key] = msg.offers
		m.offersFor = nil
		return m, m.plan()
	case advice:
		delete(m.pending, adviceOf+msg.id)
		m.advice = msg
		return m, m.plan()
	case found:
		m.join(msg)
		return m, m.plan()
	case tick:
		if m.search != nil {
			return m, nextTick()
		}
	case tea.KeyMsg:
		keys := split(msg)
		if len(keys) == 1 && m.bounced(keys[0]) {
			m.tell(fmt.Sprintf("%s came twice within %d ms and counts once; the menu sets that", shown(keys[0].name), m.bounce.Milliseconds()))
			return m, nil
		}
		for _, k := range keys {
			m.key(k)
		}
		if m.quit {
			return m, tea.Quit
		}
		return m, tea.Batch(m.plan(), m.runSearch())
	}
	return m, nil
}

// plan asks for the lay-ups of the branch in hand and of every branch that waits
// for one, one at a time.
func (m *Model) plan() tea.Cmd {
	if len(m.pending) > 0 {
		return nil
	}
	if cmd := m.advise(); cmd != nil {
		return cmd
	}
	order := []int{m.branch}
	for i := range m.sheet.Branches {
		if m.sheet.Branches[i].Waiting {
			order = append(order, i)
		}
	}
	for _, i := range order {
		if i >= len(m.sheet.Branches) {
			continue
		}
		b := &m.sheet.Branches[i]
		if !b.Waiting && (b.Make != "laid" || len(b.Layers) == 0) {
			continue
		}
		key := m.sheet.PlanKey(i)
		if _, known := m.sheet.Proposals[key]; known {
			continue
		}
		m.pending[key] = true
		s := m.sheet
		return func() tea.Msg { return proposed{key, s.Propose(i)} }
	}
	return m.planUnits()
}

// advise asks for the size that does for the wire whose page is in front: it takes a
// build for each size it tries, which is more than a key may.
func (m *Model) advise() tea.Cmd {
	if m.top() != "wire" {
		return nil
	}
	id := m.stack[len(m.stack)-1].of
	k, ok := m.sheet.X.Wire[id]
	if !ok || !m.sheet.Carries(k) || m.advice.sheet == m.sheet && m.advice.id == id {
		return nil
	}
	m.pending[adviceOf+id] = true
	s := m.sheet
	return func() tea.Msg {
		size, ok := s.SmallestThatDoes(k)
		return advice{s, id, size, ok, s.Doubt(k, s.H.Wires[k].Size)}
	}
}

// planUnits asks, at the Fill step, which loose wires could be made up.
func (m *Model) planUnits() tea.Cmd {
	_, b, ok := m.b()
	if m.step != Fill || !ok || b.Make != "laid" || len(b.Layers) == 0 {
		return nil
	}
	key := m.sheet.PlanKey(m.branch)
	if _, known := m.units[key]; known {
		return nil
	}
	m.pending[unitsOf+key] = true
	s, i := m.sheet, m.branch
	return func() tea.Msg { return offered{key, s.UnitOffers(i)} }
}

// change makes h the harness, remembers the one before and recalculates; what the
// builder holds fixed it leaves, and says so.
func (m *Model) change(h *model.Harness, says string) {
	if h == m.h {
		m.tell(says)
		return
	}
	if h.Same(m.h) { // no step to undo for nothing
		m.tell("unchanged")
		return
	}
	if held := m.breaks(h); held != "" {
		m.refuse(held)
		return
	}
	m.undo = append(m.undo, m.h)
	m.redo = nil
	m.h = h
	m.rebuild()
	m.tell(says)
}

// built is the sheet of a harness, with what this one has worked out already.
func (m *Model) built(h *model.Harness) *calc.Sheet { return calc.Build(h, m.cfg.Cat, m.sheet) }

func (m *Model) rebuild() {
	wait := m.keeping()
	m.sheet = m.built(m.h)
	wait()
}

func (m *Model) doc() file.Document {
	d := m.cfg.Doc
	d.Harness = *m.h
	return d
}

// dirty reports whether the harness differs from its file. It is asked at every
// frame, so the answer is kept for the harness it was found for.
func (m *Model) dirty() bool {
	if m.h == m.saved {
		return false
	}
	if m.same.h != m.h || m.same.saved != m.saved {
		m.same.h, m.same.saved, m.same.is = m.h, m.saved, !m.h.Same(m.saved)
	}
	return m.same.is
}

func (m *Model) tell(says string)   { m.says, m.trouble = says, false }
func (m *Model) refuse(says string) { m.says, m.trouble = says, true }

// top is the name of what is in front.
func (m *Model) top() string {
	if n := len(m.stack); n > 0 {
		return m.stack[n-1].name
	}
	return stepNames[m.step]
}

func (m *Model) page(w int) page {
	if n := len(m.stack); n > 0 {
		return m.stack[n-1].page(m, w)
	}
	p := m.stepPage(w)
	if len(p.rows) > 0 {
		p.rows = append(p.rows, whyRow(func(m *Model) []row { return m.stepPage(m.listWidth()).rows }))
	}
	return p
}

func (m *Model) stepPage(w int) page {
	switch m.step {
	case Wires:
		return m.wiresPage(w)
	case Layers:
		return m.layersPage(w)
	case Fill:
		return m.fillPage(w)
	case Sheath:
		return m.sheathPage(w)
	}
	return m.buildPage(w)
}

// cursorKey keeps a cursor for each screen of each branch.
func (m *Model) cursorKey() string {
	if n := len(m.stack); n > 0 && m.stack[n-1].of != "" {
		return m.top() + "\x00\x00" + m.stack[n-1].of
	}
	if m.branch < len(m.h.Branches) {
		return m.top() + "\x00" + m.h.Branches[m.branch].ID
	}
	return m.top()
}

// at is the row in hand, kept within the page. Where rows came or went above it,
// it is where the row is now.
func (m *Model) at(p page) int {
	cursor, been := m.cursor[m.cursorKey()]
	if !been {
		cursor = p.start
	}
	at := max(0, min(cursor, len(p.rows)-1))
	if on := m.on[m.cursorKey()]; on != "" && at < len(p.rows) && p.rows[at].key != on {
		if i := slices.IndexFunc(p.rows, func(r row) bool { return r.key == on }); i >= 0 {
			return i
		}
	}
	return at
}

func (m *Model) open(s screen) {
	m.stack = append(m.stack, s)
	if s.safe {
		delete(m.cursor, m.cursorKey())
		delete(m.on, m.cursorKey())
	}
}

func (m *Model) back() {
	if n := len(m.stack); n > 0 {
		m.stack = m.stack[:n-1]
	}
}

// b is the branch in hand; ok is false in a harness without branches.
func (m *Model) b() (*model.Branch, *calc.Branch, bool) {
	if m.branch >= len(m.h.Branches) {
		return nil, nil, false
	}
	return &m.h.Branches[m.branch], &m.sheet.Branches[m.branch], true
}
