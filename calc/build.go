package calc

import (
	"slices"

	"contralay/calc/phase/built"
	"contralay/calc/phase/bundle"
	"contralay/calc/phase/current"
	"contralay/calc/phase/ends"
	"contralay/calc/phase/length"
	"contralay/calc/phase/over"
	"contralay/calc/phase/planning"
	"contralay/calc/phase/threading"
	"contralay/calc/phase/wires"
	"contralay/calc/sheet"
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
func Build(h *model.Harness, cat *catalogue.Catalogue, prior *sheet.Sheet) *sheet.Sheet {
	s := &sheet.Sheet{H: h, Cat: wires.OnShelf(h, cat, prior), Base: cat, Limits: h.Rules.Resolve()}
	if prior != nil {
		s.Proposals = prior.Proposals
	}
	s.LaidBy = s.Proposals
	compareWires(s, prior)
	s.Index = index(s)
	wires.SizeWires(s)
	wires.Duties(s)
	wires.SizeUnits(s)
	wires.FindPaths(s)
	compareBranches(s)
	ends.FillCavities(s)
	ends.JoinWires(s)
	bundle.LayBranches(s, prior)
	length.CutWires(s)
	over.CoverBranches(s)
	over.RunThrough(s)
	over.Clocked(s)
	over.Twins(s)
	ends.Listed(s)
	over.Shields(s)
	ends.Capped(s)
	wires.SayParts(s)
	wires.SayNotes(s)
	over.Loops(s)
	current.Pairs(s)
	current.FeedWires(s)
	current.Currents(s, prior)
	current.Drops(s)
	current.SayFeeds(s)
	threading.SayThreading(s)
	threading.SayAdhesive(s)
	threading.SayMargins(s)
	length.Weigh(s)
	over.Standing(s)
	bundle.BuiltOver(s)
	built.Say(s)
	s.Reuse.Prior = nil // or every sheet would hold all before it
	return s
}

// Complete is Build with every branch laid: what waits for a proposal is planned.
func Complete(h *model.Harness, cat *catalogue.Catalogue, prior *sheet.Sheet) *sheet.Sheet {
	s := Build(h, cat, prior)
	var keys []string
	var branches []int
	for i := range s.Branches {
		if s.Branches[i].Waiting {
			if key := bundle.PlanKey(s, i); !slices.Contains(keys, key) {
				keys, branches = append(keys, key), append(branches, i)
			}
		}
	}
	if len(keys) == 0 {
		return s
	}
	found := make([]sheet.Proposal, len(keys)) // planned side by side: a sheet is only read
	sheet.Beside(len(keys), func(n int) { found[n] = planning.Propose(s, branches[n]) })
	for n, key := range keys {
		planning.Adopt(s, key, found[n])
	}
	return Build(h, cat, s)
}
