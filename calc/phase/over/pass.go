package over

import (
	"fmt"
	"strings"

	"contralay/calc/formula/cover"
	"contralay/calc/formula/lay"
	endsphase "contralay/calc/phase/ends"
	"contralay/calc/sheet"
	"contralay/model/unit"
)

// What a tube gets over on the way to its place.

// bulge is what stands out of a bundle: a splice, the fold of a capped spare.
type bulge struct {
	from, to, Mm unit.Millimetre
	station      unit.Millimetre // the middle of a splice
	name         string
	wire, where  string // of a folded end: its wire, and where it lies
}

// pass is the largest thing a tube that lies between two stations must get over. It comes
// on from a termination, before that is fitted; between two breakouts it comes over the
// sorted zone of one of them, where the bundle stands thicker. From there it passes what
// lies on the branch up to the far end of its place: covers, splices, folded ends.
func pass(s *sheet.Sheet, i int, from, to unit.Millimetre) sheet.Passing {
	b := &s.H.Branches[i]
	_, a := s.Index.Termination[b.From]
	_, z := s.Index.Termination[b.To]
	bulges := Bulges(s, i)
	var best sheet.Passing
	for end, open := range [2]bool{a || !z, z || !a} {
		if !open {
			continue
		}
		p := passFrom(s, i, end, from, to, !a && !z, bulges)
		switch {
		case best.NominalMM == 0 || p.NominalMM < best.NominalMM:
			ends := [2]bool{}
			ends[end] = true
			best, best.Ends = p, ends
		case p.NominalMM == best.NominalMM:
			best.Ends[end] = true
			if p.Lumped {
				best.Over = p.Over
			}
		}
	}
	return best
}

func passFrom(s *sheet.Sheet, i, end int, from, to unit.Millimetre, lumped bool, bulges []bulge) sheet.Passing {
	b, out := &s.H.Branches[i], &s.Branches[i]
	first, last, place := unit.Millimetre(0), to, b.From
	if end == 1 {
		first, last, place = from, b.LengthMM, b.To
	}
	over, most := out.OverMM, max(out.OverMM, out.OverMaxMM)
	add, _ := beneath(s, i, first, last)
	p := sheet.Passing{Pass: cover.Pass{NominalMM: over + add, MaxMM: most + add}, AddMM: add,
		Over: fmt.Sprintf("the bundle, from %s to %s mm of %s", unit.Fixed(from, 0), unit.Fixed(to, 0), b.ID)}
	if add > 0 {
		p.Over = "what lies beneath it on " + b.ID
	}
	if lumped {
		zone := stretch{from: first, to: min(last, first+zoneReach)}
		if end == 1 {
			zone = stretch{from: max(first, last-zoneReach), to: last}
		}
		add, _ := beneath(s, i, zone.from, zone.to)
		if lump := unit.Millimetre(s.Limits.ZoneLump); (over+add)*lump > p.NominalMM {
			p = sheet.Passing{Pass: cover.Pass{NominalMM: (over + add) * lump, MaxMM: (most + add) * lump}, AddMM: add, Lumped: true,
				Over: "the sorted zone at " + place}
		}
	}
	for k, g := range bulges {
		f, t := max(g.from, first), min(g.to, last)
		if f >= t {
			continue
		}
		// What lies beside it where it begins stands out with it.
		mm, beside := g.Mm, []bulge{g}
		for n, o := range bulges {
			if n != k && o.from <= f && o.to > f {
				mm, beside = mm+o.Mm, append(beside, o)
			}
		}
		add, _ := beneath(s, i, f, t)
		if over+add+mm > p.NominalMM {
			p = sheet.Passing{Pass: cover.Pass{NominalMM: over + add + mm, MaxMM: most + add + mm}, AddMM: add, BulgeMM: mm,
				StationMM: g.station, Over: together(beside)}
		}
	}
	return p
}

// together names what stands out at one place: folded ends that lie along the same stretch are named once.
func together(all []bulge) string {
	var out []string
	for n := 0; n < len(all); n++ {
		wires := []string{all[n].wire}
		for n+1 < len(all) && all[n].wire != "" && all[n+1].wire != "" && all[n+1].from == all[n].from && all[n+1].to == all[n].to {
			n++
			wires = append(wires, all[n].wire)
		}
		if len(wires) > 1 {
			last := len(wires) - 1
			out = append(out, "the folded ends of "+strings.Join(wires[:last], ", ")+" and "+wires[last]+all[n].where)
			continue
		}
		out = append(out, all[n].name)
	}
	return strings.Join(out, " beside ")
}

// zoneReach is how far into a branch its covers are looked at for what lies in the sorted
// zone, which is over where the sheath begins.
const zoneReach unit.Millimetre = 1

// Bulges is what stands out of the bundle of branch i.
func Bulges(s *sheet.Sheet, i int) []bulge {
	b := &s.H.Branches[i]
	var out []bulge
	for k := range s.H.Splices {
		sp := &s.H.Splices[k]
		part, ok := s.Cat.Splice(s.Splices[k].Part)
		if sp.Toward.V != b.ID || !ok {
			continue
		}
		middle := sp.OffsetMM.V
		if b.To == sp.At {
			middle = b.LengthMM - middle
		}
		if mm := part.OverMM - spliceWire(s, sp.ID); mm > 0 {
			out = append(out, bulge{middle - part.LengthMM/2, middle + part.LengthMM/2, mm, middle,
				fmt.Sprintf("splice %s, at %s mm of %s", sp.ID, unit.Fixed(middle, 0), b.ID), "", ""})
		}
	}
	for _, c := range endsphase.Caps(s) { // a folded end lies along the bundle beside the rest
		if c.Branch != i || c.FoldMM <= 0 {
			continue
		}
		from, to := unit.Millimetre(0), c.AtMM
		if b.To == c.Place {
			from, to = c.AtMM, b.LengthMM
		}
		if mm := StandsOut(s, i, s.Wires[c.Wire].Dia.Nominal); mm > 0 {
			where := fmt.Sprintf(", from %s to %s mm of %s", unit.Fixed(from, 0), unit.Fixed(to, 0), b.ID)
			id := s.H.Wires[c.Wire].ID
			out = append(out, bulge{from, to, mm, from, "the folded end of " + id + where, id, where})
		}
	}
	return out
}

// StandsOut is what one more wire beside a bundle adds to its diameter: its own at most;
// less beside a few that are twisted, between which it finds a place.
func StandsOut(s *sheet.Sheet, i int, d unit.Millimetre) unit.Millimetre {
	out := &s.Branches[i]
	if len(out.Layers) != 1 || len(out.Layers[0].Members) >= mostPacked {
		return d
	}
	all := []unit.Millimetre{d}
	for _, m := range out.Layers[0].Members {
		all = append(all, m.D)
	}
	return max(0, min(d, lay.Pack(all).Over-out.OverMM))
}

// few is as many as lay.Pack packs closely with one more.
const mostPacked = 6

// spliceWire is the thickest wire on a splice: what the splice stands in place of.
func spliceWire(s *sheet.Sheet, id string) unit.Millimetre {
	d := unit.Millimetre(0)
	for k := range s.H.Wires {
		if s.H.Wires[k].From.V == id || s.H.Wires[k].To.V == id {
			d = max(d, s.Wires[k].Dia.Nominal)
		}
	}
	return d
}
