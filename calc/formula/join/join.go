package join

import (
	"slices"

	"contralay/model/unit"
)

// Part is a splice that can be had.
type Part struct {
	ID          string
	Parallel    bool
	Least, Most unit.CircularMil // of each barrel
}

// Slack lets a conductor through that differs from the table's circular mils by its
// stranding alone: two 20 AWG make 2432 and go into a barrel for 16 AWG, 2426. Common
// practice, no source.
const Slack = 1.01

// Side is what comes from one side: the circular mils of its conductors.
type Side []unit.CircularMil

// Sum is what it brings into a barrel.
func (s Side) Sum() unit.CircularMil {
	t := unit.CircularMil(0)
	for _, v := range s {
		t += v
	}
	return t
}

// holds reports whether a barrel takes so much.
func (p Part) holds(v unit.CircularMil) bool { return v*Slack >= p.Least && v <= p.Most*Slack }

// Fits reports whether a part takes what comes from two sides: each into its own
// barrel of a butt splice, both together into that of a parallel one.
func (p Part) Fits(a, b Side) bool {
	if p.Parallel {
		return p.holds(a.Sum() + b.Sum())
	}
	return len(a) > 0 && len(b) > 0 && p.holds(a.Sum()) && p.holds(b.Sum())
}

// Cure is a way out where no butt splice fits.
type Cure struct {
	Feed  unit.CircularMil // another feed, 0: the one there is
	Parts []string         // one part, or one for each half
	Split int              // how many of the branch side go to the first of two splices
}

// Cures are the ways out, in the order of least change: a parallel splice; two butt
// splices that part the branch side as evenly as it goes, the feed doubled to both;
// the thinnest other feed that shares a butt splice with the branch side. feeds are
// the circular mils the feed's specification has, rising.
func Cures(feed, branch Side, feeds []unit.CircularMil, parts []Part) []Cure {
	var out []Cure
	for _, p := range parts {
		if p.Parallel && p.Fits(feed, branch) {
			out = append(out, Cure{Parts: []string{p.ID}})
			break
		}
	}
	if c, ok := halves(feed, branch, parts); ok {
		out = append(out, c)
	}
	if len(feed) == 1 {
		for _, f := range feeds {
			if f <= feed[0] {
				continue
			}
			if k := slices.IndexFunc(parts, func(p Part) bool { return !p.Parallel && p.Fits(Side{f}, branch) }); k >= 0 {
				out = append(out, Cure{Feed: f, Parts: []string{parts[k].ID}})
				break
			}
		}
	}
	return out
}

// halves parts the branch side between two butt splices that both take the feed, the thin ones to the first, as evenly by circular
// mils as it goes. Where any other parting by size fits this one does: a barrel that takes the feed and one of its halves takes all
// in between, and the even halves lie between the uneven ones.
func halves(feed, branch Side, parts []Part) (Cure, bool) {
	if len(branch) == 0 {
		return Cure{}, false
	}
	all := slices.Clone(branch)
	slices.Sort(all)
	thicker := func(n int) unit.CircularMil { return max(all[:n].Sum(), all[n:].Sum()) }
	half := 1
	for n := range all {
		if thicker(n) < thicker(half) {
			half = n
		}
	}
	var of []string
	for _, h := range []Side{all[:half], all[half:]} {
		if k := slices.IndexFunc(parts, func(p Part) bool { return !p.Parallel && p.Fits(feed, h) }); k >= 0 {
			of = append(of, parts[k].ID)
		}
	}
	return Cure{Parts: of, Split: half}, len(of) == 2
}
