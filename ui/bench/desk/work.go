package desk

import (
	tea "github.com/charmbracelet/bubbletea"

	"contralay/calc/phase/bundle"
	"contralay/calc/phase/planning"
	"contralay/model"
)

// Work is worked out beside the screen: it takes longer than a key may.
type Work struct {
	Key string                       // what it is about: the same is not begun twice
	Do  func() (take func(m *Model)) // runs beside the bench and touches nothing of it; take brings in what came of it
}

// Outcome is the message that brings back what came of a work.
type Outcome struct {
	key  string
	take func(m *Model)
}

// begin starts a work.
func (m *Model) begin(w Work) tea.Cmd {
	m.Pending[w.Key] = true
	return func() tea.Msg { return Outcome{w.Key, w.Do()} }
}

// Finish takes up what came of a work, and begins the next.
func (m *Model) Finish(o Outcome) tea.Cmd {
	delete(m.Pending, o.key)
	o.take(m)
	return m.Plan()
}

// Plan begins what is to be worked out next, one thing at a time: what the screen in front
// wants, then the lay-up of the branch in hand and of every branch that waits for one, then
// what the step wants.
func (m *Model) Plan() tea.Cmd {
	if len(m.Pending) > 0 {
		return nil
	}
	if wants := m.Here().Beside; wants != nil && len(m.Stack) > 0 {
		if w, ok := wants(m); ok {
			return m.begin(w)
		}
	}
	order := []int{m.Branch}
	for i := range m.Sheet.Branches {
		if m.Sheet.Branches[i].Waiting {
			order = append(order, i)
		}
	}
	for _, i := range order {
		if w, ok := m.layUp(i); ok {
			return m.begin(w)
		}
	}
	if wants := m.StepHere().Beside; wants != nil {
		if w, ok := wants(m); ok {
			return m.begin(w)
		}
	}
	return nil
}

// Begun is the search that the lay-up of the branch in hand came of last: whoever searches on goes on from there.
type Begun struct {
	Key    string // of its question
	Search *planning.Search
}

// layUp is the proposal for a branch that has none and wants one.
func (m *Model) layUp(i int) (Work, bool) {
	if i >= len(m.Sheet.Branches) {
		return Work{}, false
	}
	b := &m.Sheet.Branches[i]
	if !b.Waiting && (b.Make != model.MakeLaid || len(b.Layers) == 0) {
		return Work{}, false
	}
	key := bundle.PlanKey(m.Sheet, i)
	if _, known := m.Sheet.Proposals[key]; known {
		return Work{}, false
	}
	s := m.Sheet
	return Work{Key: key, Do: func() func(m *Model) {
		q := planning.Begin(s, i)
		p := q.Proposal()
		return func(m *Model) {
			planning.Adopt(m.Sheet, key, p)
			if i == m.Branch {
				*State[Begun](m) = Begun{key, q}
			}
			m.Rebuild()
		}
	}}, true
}
