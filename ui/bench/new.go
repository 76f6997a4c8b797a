package bench

import (
	"contralay/ui/bench/board/runs/others"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/ends"
	"contralay/ui/bench/tree"
)

// New opens a bench.
func New(cfg desk.Config) *desk.Model {
	m := desk.New(cfg, desk.Tables{Steps: steps, Screens: screens, Last: whyRow, OnBranch: wholeSection, OnBrought: others.Brought,
		First: firstRows, AddAt: ends.AddAt})
	if len(m.H.Branches) == 0 {
		m.Show(tree.BranchesKind, "")
	}
	offerLeft(m, cfg.Left, cfg.Unread)
	return m
}
