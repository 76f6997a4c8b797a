package bench

import (
	tea "github.com/charmbracelet/bubbletea"

	"contralay/ui/bench/desk"
)

// Program is a desk as the terminal library runs it.
type Program struct{ *desk.Model }

// Init implements tea.Model.
func (p Program) Init() tea.Cmd { return Init(p.Model) }

// Update implements tea.Model.
func (p Program) Update(msg tea.Msg) (tea.Model, tea.Cmd) { return Update(p.Model, msg) }

// View implements tea.Model.
func (p Program) View() string { return View(p.Model) }
