package bench

import (
	"fmt"
	"strings"
	"unicode"

	tea "github.com/charmbracelet/bubbletea"

	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
)

// Program is a bench as the terminal library runs it.
type Program struct{ *desk.Model }

// Init starts the first planning.
func (p Program) Init() tea.Cmd { return tea.Batch(p.Plan(), desk.LookSoon(p.Model)) }

// Update takes one message.
func (p Program) Update(msg tea.Msg) (tea.Model, tea.Cmd) {
	m := p.Model
	if _, key := msg.(tea.KeyMsg); !key {
		m.CatchUp()
	}
	switch msg := msg.(type) {
	case desk.CaughtUp:
		return p, msg.Take(m)
	case tea.WindowSizeMsg:
		m.W, m.Height = msg.Width, msg.Height
	case desk.Looked:
		return p, msg.Take(m)
	case desk.Outcome:
		return p, m.Finish(msg)
	case tea.KeyMsg:
		return p, pressed(m, words.Split(msg))
	}
	return p, nil
}

// pressed gives the bench the keys of one message.
func pressed(m *desk.Model, keys []words.Key) tea.Cmd {
	if len(keys) == 1 && m.Bounce.Again(keys[0], m.Cfg.Now) {
		m.Tell(fmt.Sprintf("%s came twice within %d ms and counts once. The menu sets that", keys[0].Cap(),
			m.Bounce.Within.Milliseconds()))
		return nil
	}
	for n, k := range keys {
		if k.Name != "enter" {
			if !scanned(m, keys[n:]) {
				dispatch(m, k)
			}
			continue
		}
		if m.Bounce.Bounced(m.Entry == nil && desk.Ticking(m), m.Cfg.Now) {
			if !m.Trouble { // a refusal stays to be read
				m.Tell(fmt.Sprintf("Enter came twice within %d ms and counts once", m.Bounce.Enter.Milliseconds()))
			}
			continue
		}
		dispatch(m, k)
		m.Bounce.Entered(m.Cfg.Now)
	}
	if m.Quit {
		return tea.Quit
	}
	if desk.Behind(m) {
		return desk.CatchUpSoon(m)
	}
	return m.Plan()
}

// scanned opens the field of the row in hand with the letter that a burst begins with, where the field
// takes what a scanner reads: a letter alone is a shortcut.
func scanned(m *desk.Model, keys []words.Key) bool {
	if len(keys) < 2 || m.Entry != nil || keys[0].Paste || !unicode.IsLetter([]rune(keys[0].Text + " ")[0]) {
		return false
	}
	m.CatchUp()
	_, r := m.Hand()
	if r == nil || r.Field == nil || !r.Field.Scan {
		return false
	}
	m.OpenField(*r.Field, keys[0].Text)
	return true
}

// View draws the screen: exactly height lines of at most w cells.
func (p Program) View() string {
	if p.Quit {
		return ""
	}
	p.CatchUp()
	return strings.Join(frame(p.Model), "\n")
}
