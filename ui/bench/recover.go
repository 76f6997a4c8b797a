package bench

import (
	"cmp"
	"fmt"
	"strings"

	"contralay/ui/bench/board/runs"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/kit"
	"contralay/ui/bench/words"
)

// offerLeft shows what earlier benches left behind, one screen after another: first what cannot
// be read, then what can, and then the bench run where one is asked for.
func offerLeft(m *desk.Model, left []desk.Left, unread []desk.Unread) {
	switch {
	case len(unread) > 0:
		m.Open(unreadScreen(left, unread))
	case len(left) > 0:
		m.Open(leftScreen(left))
	case m.Cfg.Run:
		runs.Run(m, m.Cfg.Serial)
	}
}

// fileOf is the harness as a sentence names it.
func fileOf(m *desk.Model) string { return cmp.Or(m.File.Path, "a harness without a file") }

// lowScreen is the height below which lines over a list are left out, and rowMargin is what stands
// beside the text of a row.
const (
	lowScreen = 18
	rowMargin = 4
)

// unreadScreen names unsaved work that cannot be read. It stays where it is unless the person
// deletes it: somebody may still get something out of it.
func unreadScreen(left []desk.Left, unread []desk.Unread) desk.Screen {
	return desk.Screen{Kind: leftKind, Page: func(m *desk.Model, w int) desk.Page {
		u := unread[0]
		p := desk.Page{Lines: []string{"Unsaved work cannot be read."}}
		more := []string{"It is work on " + fileOf(m) + ".", "It " + u.Says + ".", "It is kept in " + u.Path}
		roomy := m.Height >= lowScreen
		if roomy {
			p.Lines = append(p.Lines, more...)
		}
		if len(left) > 0 {
			p.Lines = append(p.Lines, "Other unsaved work can be read, and is offered next.")
		}
		next := func(m *desk.Model, says string) {
			m.Back()
			offerLeft(m, left, unread[1:])
			m.Tell(says)
		}
		p.Rows = []desk.Row{
			{Key: "keep", Text: "keep it and go on", Detail: "The next start names it again", Enter: func(m *desk.Model) {
				next(m, "what cannot be read stays in "+u.Path)
			}},
			{Key: "away", Text: "delete it: press + on this row", Detail: "You cannot undo this. Enter does not do it",
				Step: func(m *desk.Model, by int) {
					if by < 0 {
						m.Tell("+ deletes it")
						return
					}
					if err := u.Discard(); err != nil {
						m.Refuse("it could not be deleted: " + err.Error())
						return
					}
					next(m, "it is deleted")
				}, Enter: func(m *desk.Model) { m.Tell("Enter does not delete it. Press +") }},
		}
		if !roomy { // as rows, which the arrows reach
			for _, l := range kit.WrapAll(more, w-rowMargin) {
				p.Rows = append(p.Rows, desk.Row{Text: l, Detail: u.Path})
			}
		}
		return p
	}}
}

// leftScreen offers unsaved work: to take up, to leave for later, or to throw
// away. Taking it up is a change like any other and can be undone.
func leftScreen(left []desk.Left) desk.Screen {
	return desk.Screen{Kind: leftKind, Page: func(m *desk.Model, w int) desk.Page {
		l := left[0]
		p := desk.Page{Lines: []string{fmt.Sprintf("Unsaved work on %s is left from %s.", fileOf(m), l.When)}}
		if l.Changed {
			p.Lines = append(p.Lines, "The file was changed after that. This work does not have that change.")
		}
		if n := len(left) - 1; n > 0 {
			p.Lines = append(p.Lines, fmt.Sprintf("%s after this one.", words.Plural(n, "more copy", "more copies")))
		}
		next := func(m *desk.Model, says string) {
			m.Back()
			offerLeft(m, left[1:], nil)
			m.Tell(says)
		}
		p.Rows = []desk.Row{
			{Key: "take", Text: "take it: " + leftText(l), Detail: "Enter goes on where it stopped. Backspace goes back to the file",
				Enter: func(m *desk.Model) {
					m.TakeUp(l)
					says := "the unsaved work is here. S saves it, Backspace goes back to the file"
					if n := len(left) - 1; n > 0 { // a second would take the place of the first
						says += fmt.Sprintf("; %s and will be offered next time", words.Plural(n, "piece stays", "pieces stay"))
					}
					m.Back()
					if m.Cfg.Run {
						runs.Run(m, m.Cfg.Serial)
					}
					m.Tell(says)
				}},
			{Key: "later", Text: "leave it: open the file as it was saved", Detail: "It stays where it is. The next start offers it again",
				Enter: func(m *desk.Model) {
					next(m, "the unsaved work stays. The next start offers it again")
				}},
			{Key: "away", Text: "throw it away: press + on this row",
				Detail: "You cannot undo this. Enter does not do it", Step: func(m *desk.Model, by int) {
					if by < 0 {
						m.Tell("+ throws it away")
						return
					}
					if err := l.Discard(); err != nil {
						m.Refuse("it could not be thrown away: " + err.Error())
						return
					}
					next(m, "the unsaved work is gone")
				}, Enter: func(m *desk.Model) { m.Tell("Enter does not throw it away. Press +") }},
		}
		if len(l.Says) == 0 {
			p.Rows = append(p.Rows, desk.Row{Text: "it is the same as the file"})
		}
		for _, built := range []bool{true, false} { // what was built stands first
			for _, t := range l.Says {
				if strings.HasPrefix(t, "build") == built {
					p.Rows = append(p.Rows, desk.Row{Text: t, Detail: t})
				}
			}
		}
		return p
	}}
}

// leftText is what unsaved work holds, in few words: what was built before what was changed.
func leftText(l desk.Left) string {
	text := ""
	for _, b := range l.Doc.Harness.Builds {
		n := 0
		for _, r := range b.Readings {
			n += len(r.OverMM)
		}
		text += fmt.Sprintf("serial %s with %s and %s; ", b.Serial, words.Plural(len(b.Keys()), "tick", "ticks"),
			words.Plural(n, "reading", "readings"))
	}
	return text + words.Changes(len(l.Says))
}
