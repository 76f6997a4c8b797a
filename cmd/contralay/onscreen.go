package main

import (
	"os"

	tea "github.com/charmbracelet/bubbletea"

	"contralay/ui/screen"
)

// onScreen shows a program on a screen of ours, in place of the library's own: see
// contralay/ui/screen.
type onScreen struct {
	tea.Model
	screen *screen.Screen
	tidy   *tidier
}

// Update implements tea.Model.
func (o onScreen) Update(msg tea.Msg) (tea.Model, tea.Cmd) {
	defer o.giveBack()
	if size, is := msg.(tea.WindowSizeMsg); is {
		o.screen.Resize(size.Width)
	}
	var cmd tea.Cmd
	o.Model, cmd = o.Model.Update(msg)
	if _, is := msg.(tea.KeyMsg); is {
		o.tidy.key()
	}
	return o, cmd
}

// View implements tea.Model. The library calls it after every message.
func (o onScreen) View() string {
	defer o.giveBack()
	if frame := o.Model.View(); frame != "" { // a program that has ended shows nothing
		o.screen.Show(frame)
	}
	return ""
}

// mute is a terminal that the library sets up, measures and gives back, and on which
// it draws nothing.
type mute struct{ *os.File }

// Write implements io.Writer.
func (m mute) Write(p []byte) (int, error) { return len(p), nil }

// WriteString implements io.StringWriter.
func (m mute) WriteString(s string) (int, error) { return len(s), nil }

// giveBack lets a fault go on to where it is told, on a terminal that can show it.
func (o onScreen) giveBack() {
	if fault := recover(); fault != nil {
		o.screen.Leave()
		panic(fault)
	}
}
