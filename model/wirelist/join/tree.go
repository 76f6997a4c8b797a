package join

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"contralay/model"
	"contralay/model/unit"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
)

// Tree makes the branches. No list says where the bundle parts, so: between two
// terminations one branch; between more, or with splices, a star. The legs take the
// lengths that the list gives from the termination with most partners, less the
// stand-in of its own leg, so that each way is as long as the list says. What is not
// known is the stand-in and its name says so.
func Tree(im *draft.Importer) {
	n := len(im.Terms)
	if n < 2 && len(im.H.Splices) == 0 {
		lengthsInNotes(im)
		return
	}
	lengths := lengthsBetween(im)
	if n == 2 && len(im.H.Splices) == 0 {
		mm := lengths[[2]int{0, 1}]
		im.H.Branches = []model.Branch{branch(im, "T1", im.Terms[0].ID, im.Terms[1].ID, mm)}
		lengthsInNotes(im)
		return
	}
	hub := hubOf(im, lengths)
	j := "J1"
	if slices.ContainsFunc(im.Terms, func(t *draft.Term) bool { return t.ID[0] == 'J' && name.IsDesignator(t.ID) }) {
		j = "BO1" // a J among connectors called J would be taken for one of them
	}
	for k := 2; im.Taken(j); k++ {
		j = fmt.Sprintf("BO%d", k)
	}
	im.H.Breakouts = []model.Breakout{{ID: j, Build: model.Some(model.ClosureTaped)}}
	for i := range im.H.Splices {
		im.H.Splices[i].At = j
	}
	leg := 0
	im.H.Branches = make([]model.Branch, 0, len(im.Terms))
	for i, t := range im.Terms {
		if i == hub {
			im.H.Branches = append(im.H.Branches, branch(im, "T1", t.ID, j, 0))
			continue
		}
		mm := lengths[[2]int{min(i, hub), max(i, hub)}]
		leg++
		im.H.Branches = append(im.H.Branches, branch(im, fmt.Sprintf("L%d", leg), j, t.ID, mm-standIn))
	}
	slices.SortStableFunc(im.H.Branches, func(a, b model.Branch) int { // the trunk first
		return cmp.Compare(b.ID[:1], a.ID[:1])
	})
	lengthsInNotes(im)
}

// standIn is the length of a branch whose length the list does not give: the file
// needs one, and nobody takes this for real.
const standIn unit.Millimetre = 1

// notGiven is the name of a branch whose length stands for one that the list does not give.
const notGiven = "length not in the list"

// branch is one branch; a length of no use is the stand-in.
func branch(im *draft.Importer, id, from, to string, mm unit.Millimetre) model.Branch {
	mm = unit.Millimetre(math.Round(float64(mm)*10) / 10)
	if mm > 0 {
		return model.Branch{ID: id, From: from, To: to, LengthMM: mm}
	}
	im.Unknown++
	return model.Branch{ID: id, Name: model.Some(notGiven), From: from, To: to, LengthMM: standIn}
}

// hubOf is the termination with wires to most others, of two the one with more lengths,
// then the first.
func hubOf(im *draft.Importer, lengths map[[2]int]unit.Millimetre) int {
	partners := make([]map[int]bool, len(im.Terms))
	for i := range partners {
		partners[i] = map[int]bool{}
	}
	given := make([]int, len(im.Terms))
	for _, it := range im.Items {
		if it.From.Term != nil && it.To.Term != nil {
			a, b := it.From.Term.Index, it.To.Term.Index
			partners[a][b], partners[b][a] = true, true
		}
	}
	for k := range lengths {
		given[k[0]]++
		given[k[1]]++
	}
	best := 0
	for i := range im.Terms {
		if len(partners[i]) > len(partners[best]) || len(partners[i]) == len(partners[best]) && given[i] > given[best] {
			best = i
		}
	}
	return best
}
