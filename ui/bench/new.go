package bench

import (
	"contralay/ui/bench/board"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/tree"
)

// New opens a bench.
func New(cfg desk.Config) *desk.Model {
	m := desk.New(cfg, desk.Tables{Steps: steps, Screens: screens, Last: whyRow, OnBranch: wholeSection})
	if len(m.H.Branches) == 0 {
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
