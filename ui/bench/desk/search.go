package desk

import (
	"sync/atomic"
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"contralay/calc/formula/plan"
	"contralay/calc/phase/bundle"
	"contralay/calc/phase/planning"
	calcsheet "contralay/calc/sheet"
)

// searching is a long search that runs beside the bench.
type searching struct {
	Key   string
	Share atomic.Int64 // of shareWhole
	stop  atomic.Bool
	start tea.Cmd // handed to the program once
}

const ShareWhole = 1_000_000

// Found brings what a long search came to; tick redraws its progress.
type (
	Found struct {
		*searching
		p calcsheet.Proposal
	}
	Tick struct{}
)

func (m *Model) StartSearch() {
	s := &searching{Key: bundle.PlanKey(m.Sheet, m.Branch)}
	sheet, branch := m.Sheet, m.Branch
	s.start = func() tea.Msg {
		p := planning.Search(sheet, branch, plan.LongEffort, func(share float64) bool {
			s.Share.Store(int64(share * ShareWhole))
			return !s.stop.Load()
		})
		return Found{s, p}
	}
	m.Search = s
	m.Tell("searching on; Enter on the row stops it")
}

func (m *Model) StopSearch() {
	m.Search.stop.Store(true)
	m.Tell("stopping: the best so far joins the options")
}

// RunSearch starts a search that was asked for, and the redrawing of its progress.
func (m *Model) RunSearch() tea.Cmd {
	if m.Search == nil || m.Search.start == nil {
		return nil
	}
	run := m.Search.start
	m.Search.start = nil
	return tea.Batch(run, NextTick())
}

func NextTick() tea.Cmd {
	return tea.Tick(200*time.Millisecond, func(time.Time) tea.Msg { return Tick{} })
}

// Join takes up what a search found: better options, never worse ones.
func (m *Model) Join(f Found) {
	if m.Search == f.searching {
		m.Search = nil
	}
	planning.Adopt(m.Sheet, f.Key, f.p)
	m.Rebuild()
	m.Tell("the search is done")
}
