// Package quiet keeps the bench from asking the terminal for its background
// colour before the first frame.
//
// bubbletea v1 asks in a package init and waits up to five seconds on a terminal
// that never answers. The answer is settled here first: Go initialises ready
// packages in order of import path, "contralay/…" sorts before the library, and
// this package needs nothing but lipgloss. It is the one init of the program; a
// test with a mute terminal holds it.
package quiet

import "github.com/charmbracelet/lipgloss"

func init() { lipgloss.SetHasDarkBackground(true) }
