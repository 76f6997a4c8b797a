package calc

import (
	"slices"

	"contralay/model"
	"contralay/model/catalogue"
)

// Build derives the sheet. Its order is the order of the sheet: what the wires
// are, where they run, how each branch lies, how long each wire is, what goes
// over it, how warm it gets, what it weighs, and what is wrong with it.
//
// prior may be nil. Of a prior sheet every bundle whose inputs are the same is
// taken over, and so are its proposals; the result is the same as without.
// Build never plans: a branch that the file does not lay and for which no
// proposal is known is Waiting (see Complete).
func Build(h *model.Harness, cat *catalogue.Catalogue, prior *Sheet) *Sheet {
	s := &Sheet{H: h, Cat: onShelf(h, cat, prior), base: cat, Limits: h.Rules.Resolve()}
	if prior != nil {
		s.Proposals = prior.Proposals
	}
	s.laidBy = s.Proposals
	s.compare(prior)
	s.X = s.index()
	s.sizeWires()
	s.duties()
	s.sizeUnits()
	s.findPaths()
	s.compareBranches()
	s.fillCavities()
	s.joinWires()
	s.layBranches(prior)
	s.cutWires()
	s.coverBranches()
	s.runThrough()
	s.clocked()
	s.twins()
	s.listed()
	s.shields()
	s.capped()
	s.sayParts()
	s.loops()
	s.pairs()
	s.feedWires()
	s.currents(prior)
	s.sayFeeds()
	s.sayThreading()
	s.sayAdhesive()
	s.weigh()
	s.standing()
	s.builtOver()
	s.same.prior = nil // or every sheet would hold all before it
	return s
}

// Complete is Build with every branch laid: what waits for a proposal is planned.
func Complete(h *model.Harness, cat *catalogue.Catalogue, prior *Sheet) *Sheet {
	s := Build(h, cat, prior)
	var keys []string
	var of []int
	for i := range s.Branches {
		if s.Branches[i].Waiting {
			if key := s.PlanKey(i); !slices.Contains(keys, key) {
				keys, of = append(keys, key), append(of, i)
			}
		}
	}
	if len(keys) == 0 {
		return s
	}
	found := make([]Proposal, len(keys)) // planned side by side: a sheet is only read
	beside(len(keys), func(n int) { found[n] = s.Propose(of[n]) })
	for n, key := range keys {
		s.Adopt(key, found[n])
	}
	return Build(h, cat, s)
}

func (s *Sheet) say(l Level, rule, where, says string) {
	s.Snags = append(s.Snags, Snag{Level: l, Rule: rule, Where: where, Says: says})
}

// sayLike is say for what has its cause in common with others that say it otherwise.
func (s *Sheet) sayLike(l Level, rule, where, like, says string) {
	s.Snags = append(s.Snags, Snag{l, rule, where, says, like})
}
