package desk

import (
	"strings"
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"contralay/model"
	"contralay/model/runlog"
)

// lookEvery is how often what other benches did is looked for.
const lookEvery = 400 * time.Millisecond

// Looked is the message that something may have come from other benches.
type Looked struct{ news bool }

// LookSoon looks for what other benches did, beside the screen and after a while; nil where there is
// nothing to look for.
func LookSoon(m *Model) tea.Cmd {
	look := m.Cfg.Look
	if look == nil {
		return nil
	}
	return tea.Tick(lookEvery, func(time.Time) tea.Msg { return Looked{look()} })
}

// Take takes Looked. Nothing moves by it that somebody has in hand.
func (l Looked) Take(m *Model) tea.Cmd {
	if l.news {
		Brought(m)
	}
	return tea.Batch(LookSoon(m), m.Plan())
}

// Brought takes what other benches did into the harness. It is no change of this bench: no undo
// takes it back.
func Brought(m *Model) {
	if m.Cfg.Brought == nil {
		return
	}
	b := m.Cfg.Brought()
	if b.Saved {
		saved := *m.H
		saved.Builds = b.As
		m.File.Saved = &saved
	}
	if lines := b.Lines; len(lines) > 0 {
		m.History.Bring(func(h *model.Harness) *model.Harness {
			n := *h
			n.Builds = runlog.Fold(h.Builds, lines)
			return &n
		})
	}
	if n := *m.H; b.Builds != nil {
		if n.Builds = b.Builds; !model.SameBuilds(&n, m.H) {
			m.H = &n
			m.Rebuild()
		}
	}
	says := b.Says
	if m.Tables.OnBrought != nil && len(b.Lines) > 0 {
		if text := m.Tables.OnBrought(m, b.Lines); text != "" {
			says = append(says, text)
		}
	}
	if len(says) > 0 {
		m.Tell(strings.Join(says, ". "))
	}
}
