package desk

import (
	"fmt"
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"contralay/model"
	"contralay/model/file"
)

// History is what undo and redo go through, from the harness of now to either side.
type History struct {
	past, undone trail
	brought      []func(h *model.Harness) *model.Harness // what other benches did, which no undo takes back
}

// nearest is how many steps a trail keeps as they were; those further off it keeps by what they
// had other than the next one, and thousands of them weigh less than these few.
const nearest = 16

// trail is harnesses one behind the other; the last is the next to go back to.
type trail struct {
	far  []model.Earlier // each against the one after it, the last against the first that is near
	near []*model.Harness
	has  []int // how much of what others did each of them has
}

func (t *trail) steps() int { return len(t.far) + len(t.near) }

func (t *trail) push(h *model.Harness, has int) {
	t.has = append(t.has, has)
	if len(t.near) == nearest {
		t.far = append(t.far, model.EarlierOf(t.near[0], t.near[1]))
		copy(t.near, t.near[1:])
		t.near = t.near[:nearest-1]
	}
	t.near = append(t.near, h)
}

// pop is the harness at the end and how much of what others did it has, or nil.
func (t *trail) pop() (*model.Harness, int) {
	if len(t.near) == 0 {
		return nil, 0
	}
	has := t.has[len(t.has)-1]
	t.has = t.has[:len(t.has)-1]
	last := len(t.near) - 1
	h := t.near[last]
	t.near[last], t.near = nil, t.near[:last]
	if n := len(t.far); last == 0 && n > 0 {
		t.near = append(t.near, t.far[n-1].Of(h))
		t.far[n-1], t.far = model.Earlier{}, t.far[:n-1]
	}
	return h, has
}

// Steps is how many steps can be undone.
func (h *History) Steps() int { return h.past.steps() }

// Undone is how many steps can be done again.
func (h *History) Undone() int { return h.undone.steps() }

// Record remembers the harness that a change replaces; what was undone before is forgotten.
func (h *History) Record(was *model.Harness) {
	h.past.push(was, len(h.brought))
	h.undone = trail{}
}

// Bring remembers what another bench did: it is done to every harness that undo or redo goes to.
func (h *History) Bring(f func(h *model.Harness) *model.Harness) { h.brought = append(h.brought, f) }

// back is the harness before now, or nil.
func (h *History) back(now *model.Harness) *model.Harness { return h.step(&h.past, &h.undone, now) }

// forth is the harness that was undone last, or nil.
func (h *History) forth(now *model.Harness) *model.Harness { return h.step(&h.undone, &h.past, now) }

func (h *History) step(from, to *trail, now *model.Harness) *model.Harness {
	next, has := from.pop()
	if next == nil {
		return nil
	}
	to.push(now, len(h.brought))
	for _, f := range h.brought[has:] {
		next = f(next)
	}
	return next
}

// behind is undone steps that the sheet does not show yet: when undo comes in a burst, the sheet
// is worked out for what is looked at, and not for each of them.
type behind struct {
	was    *model.Harness // before the last of them; nil where the sheet is of the harness
	caught time.Time      // when an undo was last worked out
	took   time.Duration  // how long that took
	coming bool           // a CatchUp is under way
}

// together is how close undos come that are worked out together: closer than two frames, or than
// twice what working them out takes, so that it never falls behind the keys.
func (b *behind) together() time.Duration {
	return min(max(8*time.Millisecond, 2*b.took), 250*time.Millisecond)
}

// Undo takes the last change back, and names it: what came back may stand on another page.
func (m *Model) Undo() {
	takeBack(m)
	m.CatchUp()
}

// UndoSoon is Undo where none was before it a moment ago; else the sheet is left Behind.
func UndoSoon(m *Model) {
	takeBack(m)
	if m.Cfg.Now == nil || m.Cfg.Now().Sub(m.behind.caught) > m.behind.together() {
		m.CatchUp()
	}
}

func takeBack(m *Model) {
	before := m.History.back(m.H)
	if before == nil {
		m.CatchUp()
		m.Tell("nothing left to undo")
		return
	}
	m.behind.was, m.H = m.H, before
}

// Behind reports whether the sheet is not yet that of the harness.
func Behind(m *Model) bool { return m.behind.was != nil }

// CatchUp works the sheet out for what was undone.
func (m *Model) CatchUp() {
	if !Behind(m) {
		return
	}
	if now := m.Cfg.Now; now != nil {
		from := now()
		defer func() { m.behind.caught, m.behind.took = now(), now().Sub(from) }()
	}
	was := m.Doc()
	was.Harness = *m.behind.was
	m.behind.was = nil
	m.Rebuild()
	says := ""
	if d := file.Differences(was, m.Doc()); len(d) > 0 {
		says = ": " + d[0]
		if len(d) > 1 {
			says += " ..."
		}
	}
	m.Tell(fmt.Sprintf("undone; %d more%s", m.History.Steps(), says))
	m.leaveGone()
}

// CaughtUp is the message that works the sheet out where nobody looks at it meanwhile.
type CaughtUp struct{}

// CatchUpSoon asks for CaughtUp, once.
func CatchUpSoon(m *Model) tea.Cmd {
	if m.behind.coming {
		return nil
	}
	m.behind.coming = true
	return tea.Tick(m.behind.together(), func(time.Time) tea.Msg { return CaughtUp{} })
}

// Take takes CaughtUp.
func (c CaughtUp) Take(m *Model) tea.Cmd {
	m.behind.coming = false
	m.CatchUp()
	return m.Plan()
}

// Redo does again what was undone last.
func (m *Model) Redo() {
	next := m.History.forth(m.H)
	if next == nil {
		m.Tell("nothing to redo")
		return
	}
	m.H = next
	m.Rebuild()
	m.Tell("redone")
	m.leaveGone()
}

// LeaveGone closes the screens of what a change took away.
func LeaveGone(m *Model) {
	says, trouble := m.Says, m.Trouble
	m.leaveGone()
	m.Says, m.Trouble = says, trouble
}

// leaveGone closes screens of a thing that an undo took away.
func (m *Model) leaveGone() {
	if m.Branch >= len(m.H.Branches) {
		m.Branch = 0
	}
	for len(m.Stack) > 0 && !m.Here().Lasting && m.nothingInFront() {
		m.Back()
	}
}
