package bench

import (
	"fmt"

	tea "github.com/charmbracelet/bubbletea"

	"contralay/calc"
	"contralay/calc/phase/planning"
	"contralay/model/unit"
	"contralay/ui/bench/board"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/tree"
	"contralay/ui/bench/words"
)

// New opens a bench.
func New(cfg desk.Config) *desk.Model {
	m := &desk.Model{Cfg: cfg, Path: cfg.Path, Cursor: map[string]int{}, On: map[string]string{}, Units: map[string][]planning.UnitOffer{},
		Pending: map[string]bool{}, W: 80, Height: 24, Says: cfg.Notice, Greet: cfg.Welcome,
		Tables: desk.Tables{Steps: steps, Screens: screens, Last: whyRow}, Step: steps[0].Kind}
	m.Bounce = min(max(cfg.Bounce, 0), desk.MostBounce)
	h := cfg.Doc.Harness
	m.H, m.Saved, m.Kept = &h, &h, &h
	if s, err := unit.ParseSystem(h.Head.Units.V); err == nil {
		m.Sys = s
	}
	m.Sheet = calc.Build(m.H, cfg.Cat, nil)
	m.Branch = m.FirstBranch()
	if m.Branch < 0 {
		m.Branch = 0
		m.Show(tree.BranchesKind, "")
	}
	switch {
	case len(cfg.Left) > 0:
		m.Open(leftScreen(cfg.Left)) // and then the run, where one is asked for
	case cfg.Run:
		board.Run(m, cfg.Serial)
	}
	return m
}

// Init starts the first planning.
func Init(m *desk.Model) tea.Cmd { return m.Plan() }

// Update takes one message.
func Update(m *desk.Model, msg tea.Msg) (tea.Model, tea.Cmd) {
	switch msg := msg.(type) {
	case tea.WindowSizeMsg:
		m.W, m.Height = msg.Width, msg.Height
	case desk.Proposed:
		delete(m.Pending, msg.Key)
		planning.Adopt(m.Sheet, msg.Key, msg.P)
		m.Rebuild()
		return Program{m}, m.Plan()
	case desk.Offered:
		delete(m.Pending, desk.UnitsOf+msg.Key)
		m.Units[msg.Key] = msg.Offers
		m.OffersFor = nil
		return Program{m}, m.Plan()
	case desk.Advice:
		delete(m.Pending, desk.AdviceOf+msg.Id)
		m.Advice = msg
		return Program{m}, m.Plan()
	case desk.Found:
		m.Join(msg)
		return Program{m}, m.Plan()
	case desk.Tick:
		if m.Search != nil {
			return Program{m}, desk.NextTick()
		}
	case tea.KeyMsg:
		keys := words.Split(msg)
		if len(keys) == 1 && m.Bounced(keys[0]) {
			m.Tell(fmt.Sprintf("%s came twice within %d ms and counts once; the menu sets that", desk.Shown(keys[0].Name),
				m.Bounce.Milliseconds()))
			return Program{m}, nil
		}
		for _, k := range keys {
			Key(m, k)
		}
		if m.Quit {
			return Program{m}, tea.Quit
		}
		return Program{m}, tea.Batch(m.Plan(), m.RunSearch())
	}
	return Program{m}, nil
}
