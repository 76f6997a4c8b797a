package bench

import (
	"sync/atomic"
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"contralay/calc"
	"contralay/calc/plan"
)

// searching is a long search that runs beside the bench.
type searching struct {
	key   string
	share atomic.Int64 // of shareWhole
	stop  atomic.Bool
	start tea.Cmd // handed to the program once
}

const shareWhole = 1_000_000

// found brings what a long search came to; tick redraws its progress.
type (
	found struct {
		*searching
		p calc.Proposal
	}
	tick struct{}
)

func (m *Model) startSearch() {
	s := &searching{key: m.sheet.PlanKey(m.branch)}
	sheet, branch := m.sheet, m.branch
	s.start = func() tea.Msg {
		p := sheet.Search(branch, plan.LongEffort, func(share float64) bool {
			s.share.Store(int64(share * shareWhole))
			return !s.stop.Load()
		})
		return found{s, p}
	}
	m.search = s
	m.tell("searching on; Enter on the row stops it")
}

func (m *Model) stopSearch() {
	m.search.stop.Store(true)
	m.tell("stopping: the best so far joins the options")
}

// runSearch starts a search that was asked for, and the redrawing of its progress.
func (m *Model) runSearch() tea.Cmd {
	if m.search == nil || m.search.start == nil {
		return nil
	}
	run := m.search.start
	m.search.start = nil
	return tea.Batch(run, nextTick())
}

func nextTick() tea.Cmd {
	return tea.Tick(200*time.Millisecond, func(time.Time) tea.Msg { return tick{} })
}

// join takes up what a search found: better options, never worse ones.
func (m *Model) join(f found) {
	if m.search == f.searching {
		m.search = nil
	}
	m.sheet.Adopt(f.key, f.p)
	m.rebuild()
	m.tell("the search is done")
}
