package main

import (
	"os"
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"contralay/ui/screen"
)

// onScreen shows a program on a screen of ours, in place of the library's own: see
// contralay/ui/screen.
type onScreen struct {
	tea.Model
	screen *screen.Screen
	tidy   *tidier
	pace   *pace
}

// pace keeps a burst of keys from composing a frame for each of them, which nobody sees: the
// screen takes so many a second, and where a frame takes long the keys come first.
type pace struct {
	last   time.Time     // when a frame was composed
	took   time.Duration // how long that took
	skip   bool          // the frame of this message is left out
	coming bool          // a message that composes one is under way
}

// longestWait is how long a frame may be left out: nobody takes it for a bench that hangs.
const longestWait = 250 * time.Millisecond

// lateFrame composes the frame that was left out.
type lateFrame struct{}

// after says whether the message that was just taken is shown at once; else what shows it.
func (p *pace) after(msg tea.Msg) tea.Cmd {
	if _, late := msg.(lateFrame); late {
		p.coming = false
	}
	wait := min(max(screen.Apart, 2*p.took), longestWait) - time.Since(p.last)
	_, key := msg.(tea.KeyMsg)
	if p.skip = key && wait > 0; !p.skip || p.coming {
		return nil
	}
	p.coming = true
	return tea.Tick(wait, func(time.Time) tea.Msg { return lateFrame{} })
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
	return o, tea.Batch(cmd, o.pace.after(msg))
}

// View implements tea.Model. The library calls it after every message.
func (o onScreen) View() string {
	defer o.giveBack()
	if o.pace.skip {
		return ""
	}
	from := time.Now()
	if frame := o.Model.View(); frame != "" { // a program that has ended shows nothing
		o.screen.Show(frame)
	}
	o.pace.last, o.pace.took = time.Now(), time.Since(from)
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
