package desk

import (
	"sync/atomic"
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"contralay/calc/formula/plan"
	"contralay/calc/phase/bundle"
	"contralay/calc/phase/planning"
)

// Search is a long search for lay-ups that runs beside the bench, if one does.
type Search struct{ now *searching }

// searching is one search.
type searching struct {
	key   string       // of the plan it is for
	share atomic.Int64 // done, of shareWhole
	stop  atomic.Bool
	start tea.Cmd // handed to the program once
}

const shareWhole = 1_000_000

// Tick redraws the progress of a search.
type Tick struct{}

// Busy reports whether a search runs.
func (s *Search) Busy() bool { return s.now != nil }

// Percent is how much of the search for a plan is done; false where none runs for it.
func (s *Search) Percent(key string) (int, bool) {
	if s.now == nil || s.now.key != key {
		return 0, false
	}
	return int(100 * s.now.share.Load() / shareWhole), true
}

// Start begins a search for the branch in hand; it runs once Run hands it over.
func (s *Search) Start(m *Model) {
	one := &searching{key: bundle.PlanKey(m.Sheet, m.Branch)}
	sheet, branch := m.Sheet, m.Branch
	one.start = func() tea.Msg {
		p := planning.Search(sheet, branch, plan.LongEffort, func(share float64) bool {
			one.share.Store(int64(share * shareWhole))
			return !one.stop.Load()
		})
		return Outcome{take: func(m *Model) { // better options, never worse ones
			if m.Search.now == one {
				m.Search.now = nil
			}
			planning.Adopt(m.Sheet, one.key, p)
			m.Rebuild()
			m.Tell("the search is done")
		}}
	}
	s.now = one
	m.Tell("searching. Enter on the row stops it")
}

// Stop ends the search at the best it has so far.
func (s *Search) Stop(m *Model) {
	s.now.stop.Store(true)
	m.Tell("stopping. The options get the best so far")
}

// Run hands over a search that was asked for, and the redrawing of its progress.
func (s *Search) Run() tea.Cmd {
	if s.now == nil || s.now.start == nil {
		return nil
	}
	run := s.now.start
	s.now.start = nil
	return tea.Batch(run, s.Redraw())
}

// Redraw asks for the next drawing of its progress.
func (s *Search) Redraw() tea.Cmd {
	if s.now == nil {
		return nil
	}
	return tea.Tick(200*time.Millisecond, func(time.Time) tea.Msg { return Tick{} })
}

// Share is how far the search under way has come, 0 to 1.
func (s *Search) Share() (float64, bool) {
	if s.now == nil {
		return 0, false
	}
	return float64(s.now.share.Load()) / shareWhole, true
}
