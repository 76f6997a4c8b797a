package threading

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"contralay/calc/formula/cover"
	"contralay/calc/formula/label"
	"contralay/calc/formula/lay"
	overphase "contralay/calc/phase/over"
	"contralay/calc/phase/wires"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// Threaded is one part that is put on over the wires: over the tails before their contacts
// are on, or wound on where it lies.
type Threaded struct {
	What             sheet.PartKind
	GoesOn           model.GoesOn // "" for contacts
	Of               string       // branch, breakout or termination it belongs to
	Part             string
	Over             string          // the largest thing it must get over
	From             string          // the ends it comes on from: a termination, or "the ends beyond J2"; "" where it is wound on
	Outside          bool            // of a cover: it lies over the sheath
	FromMM, ToMM     unit.Millimetre // of a cover: where it lies, from the branch's from end
	CutMM            unit.Millimetre // of a cover: how long it is cut; 0 where it comes in its length
	BoreMM           unit.Millimetre // as supplied; 0: not known, or nothing to pass
	PassMM           unit.Millimetre // Over's diameter
	catalogue.Origin                 // of BoreMM
}

// Fits reports whether it gets over what it must.
func (t Threaded) Fits() bool { return t.BoreMM <= 0 || t.PassMM <= t.BoreMM }

// Keys name what is threaded on, each once: kind, place and part, and a number where those are alike.
func Keys(all []Threaded) []string {
	count := map[string]int{}
	var out []string
	for _, t := range all {
		key := strings.Join([]string{string(t.What), t.Of, t.Part}, " ")
		if count[key]++; count[key] > 1 {
			key += fmt.Sprint(" ", count[key])
		}
		out = append(out, key)
	}
	return out
}

// Threading is everything that is threaded on, first thing first: from the end with the
// most wires outward, the sheath of the trunk; at each breakout the sheaths of the
// branches that go on from it, then its transition, whose outlets come over the tails
// beyond, and only then what lies further out; last label, boot and contacts of each
// end. Legs that do not meet are free to go in any order among themselves.
func Threading(s *sheet.Sheet) []Threaded {
	var out []Threaded
	walk := wires.Walked(s)
	beyond := map[string][]wires.Walk{} // branches that go on from a place
	for _, k := range walk {
		beyond[k.From] = append(beyond[k.From], k)
	}
	met := map[string]bool{} // a loop of branches, which no file that loads has, is walked once
	var walkFrom func(place string)
	walkFrom = func(place string) {
		if met[place] {
			return
		}
		met[place] = true
		next := beyond[place]
		var after []Threaded
		for _, k := range next {
			first, later := threadCovers(s, k)
			out, after = append(out, first...), append(after, later...)
		}
		if t, ok := threadTransition(s, place, next); ok {
			out = append(out, t)
		}
		out = append(out, after...)
		for _, k := range next {
			walkFrom(k.To)
		}
	}
	for _, k := range walk {
		if k.Deep == 0 {
			walkFrom(k.From)
		}
	}
	for _, k := range walk {
		for _, place := range []string{k.From, k.To} {
			if place == k.To || k.Deep == 0 {
				out = append(out, threadEnd(s, place, k.Branch)...)
			}
		}
	}
	return out
}

// threadCovers is every tube over a branch, inside out: the inner one is shrunk before the
// outer one slides over it, and both are on the tails before their contacts. What lies
// clear of the transition it is walked from goes on after that, which need not pass it.
func threadCovers(s *sheet.Sheet, k wires.Walk) (first, after []Threaded) {
	put := false
	sheath, has := threadSheath(s, k)
	for _, c := range s.Branches[k.Branch].Covers {
		if has && !put && !c.Under {
			first, put = append(first, sheath), true
		}
		t := Threaded{What: sheet.PartKind(c.What), GoesOn: c.GoesOn(), Of: s.H.Branches[k.Branch].ID, Part: cmp.Or(c.Part, "as stocked"),
			Outside: !c.Under, FromMM: c.FromMM, ToMM: c.ToMM, CutMM: c.CutMM}
		if t.GoesOn != model.WoundOn {
			t.From = comesFrom(s, k, c.Ends)
		}
		if c.Tube.Set {
			t.BoreMM, t.PassMM, t.Over, t.Origin = c.Tube.V.SuppliedMM, c.PassMM, c.PassAt, c.Tube.V.Origin
		}
		if c.Tube.Set && !c.Under && !overphase.Reaches(s, k, c) {
			after = append(after, t)
		} else {
			first = append(first, t)
		}
	}
	if has && !put {
		first = append(first, sheath)
	}
	return first, after
}

// comesFrom is the end a cover of a branch comes on from: of those that are equally easy,
// the one further out.
func comesFrom(s *sheet.Sheet, k wires.Walk, ends [2]bool) string {
	b := &s.H.Branches[k.Branch]
	order := [2]string{k.To, k.From}
	if ends != [2]bool{} && !ends[0] {
		order = [2]string{b.To, b.To}
	} else if ends != [2]bool{} && !ends[1] {
		order = [2]string{b.From, b.From}
	}
	for _, end := range order {
		if _, ok := s.Index.Termination[end]; ok {
			return end
		}
	}
	return "the ends beyond " + order[0]
}

// threadSheath is the sheath of a branch: from a termination at either end, else over
// the sorted zone of the breakout beyond, whose tails are still bare.
func threadSheath(s *sheet.Sheet, k wires.Walk) (Threaded, bool) {
	sh := &s.Branches[k.Branch].Sheath
	if sh.Part == "" {
		return Threaded{}, false
	}
	t := Threaded{What: sheet.PartSheath, GoesOn: model.ShrunkOn, Of: s.H.Branches[k.Branch].ID, Part: sh.Part, FromMM: sh.FromMM,
		ToMM: sh.ToMM, CutMM: sh.CutMM}
	if sh.Tube.Set {
		t.BoreMM, t.PassMM, t.Over, t.Origin = sh.Tube.V.SuppliedMM, sh.PassMM, sh.PassAt, sh.Tube.V.Origin
	}
	t.From = comesFrom(s, k, sh.Pass.Ends)
	return t, true
}

// threadTransition is the moulded part that closes a breakout: each outlet comes over
// the tails of its branch, bare and gathered at the breakout beyond, and over the
// branch's own sheath, which is on by then.
func threadTransition(s *sheet.Sheet, place string, next []wires.Walk) (Threaded, bool) {
	j, ok := s.Index.Breakout[place]
	if !ok || s.H.Breakouts[j].Transition.V == "" {
		return Threaded{}, false
	}
	t := Threaded{What: sheet.PartTransition, GoesOn: model.ShrunkOn, Of: place, Part: s.H.Breakouts[j].Transition.V,
		From: "the ends beyond " + place}
	part, _ := s.Cat.Transition(t.Part) // one that the catalogue lacks has no outlets
	t.Origin = part.Origin
	for _, k := range next {
		outlet, ok := overphase.OutletAt(s, k.Branch, place)
		if !ok {
			continue
		}
		pass, over := overphase.Tails(s, k)
		if t.Over == "" || pass-outlet.ExpandedMM > t.PassMM-t.BoreMM {
			t.BoreMM, t.PassMM, t.Over = outlet.ExpandedMM, pass, over
		}
	}
	return t, true
}

// Gathered is how thick branches get side by side in all that covers them: what a part
// that came too late would have to pass.
func Gathered(s *sheet.Sheet, branches []int) unit.Millimetre {
	var d []unit.Millimetre
	for _, b := range branches {
		d = append(d, overphase.Outermost(&s.Branches[b]))
	}
	return lay.Pack(d).Over
}

// threadEnd is what goes over the tails of a termination last.
func threadEnd(s *sheet.Sheet, place string, branch int) []Threaded {
	t, ok := s.Index.Termination[place]
	if !ok {
		return nil
	}
	boot := s.H.Terminations[t].Boot.V
	part, _ := s.Cat.Boot(boot)
	var out []Threaded
	marked, _ := overphase.OverFrom(s, branch, place, part.LengthMM+label.OffLeast, part.LengthMM+label.OffMost)
	if sleeve, ok := label.For(marked); ok {
		out = append(out, Threaded{What: sheet.PartLabel, GoesOn: model.ShrunkOn, Of: place,
			Part: fmt.Sprintf("marker sleeve %s", unit.Fixed(sleeve.SuppliedMM, 1)), From: place, BoreMM: sleeve.SuppliedMM,
			PassMM: marked, Over: "the sheathed end",
			Origin: catalogue.Origin{Source: "a marker-tube specification", Standing: catalogue.Published}})
	}
	if boot != "" {
		over, _ := overphase.UnderBoot(s, branch, place, part)
		out = append(out, Threaded{What: sheet.PartBoot, GoesOn: model.ShrunkOn, Of: place, Part: boot, From: place, PassMM: over,
			Over: "the sheathed end", BoreMM: part.CableSuppliedMM, Origin: part.From(part.Read.CableSupplied)})
	}
	return append(out, Threaded{What: sheet.PartContacts, Of: place, From: place})
}

// TailOf is what comes over the tails of one termination, in order: everything threaded
// on from it, or from the ends beyond a breakout it lies behind.
func TailOf(s *sheet.Sheet, termination string) []Threaded {
	way := wayFrom(s, termination)
	var out []Threaded
	for _, t := range Threading(s) {
		switch {
		case t.From == termination:
			out = append(out, t)
		case t.What.IsCover() || t.What == sheet.PartTransition:
			if slices.Contains(way, t.From) {
				out = append(out, t)
			}
		}
	}
	return out
}

// wayFrom is "the ends beyond J" of every breakout between a termination and the end the
// tree is walked from.
func wayFrom(s *sheet.Sheet, termination string) []string {
	up := map[string]string{}
	for _, k := range wires.Walked(s) {
		up[k.To] = k.From
	}
	var out []string
	for place := up[termination]; place != ""; place = up[place] {
		if _, ok := s.Index.Breakout[place]; ok {
			out = append(out, "the ends beyond "+place)
		}
	}
	return out
}

// SayThreading tells what cannot be threaded on, and what does about it.
func SayThreading(s *sheet.Sheet) {
	for _, t := range Threading(s) {
		if t.What != sheet.PartTransition {
			continue // sheaths, boots and labels are judged where they lie
		}
		part, known := s.Cat.Transition(t.Part)
		if !known {
			s.Say(sheet.Warn, "transition.part", t.Of, fmt.Sprintf("Transition %q is in no catalogue", t.Part))
			continue
		}
		if len(part.Outlets) != len(s.Index.Meeting(t.Of)) {
			s.Say(sheet.Stop, "transition.outlets", t.Of,
				fmt.Sprintf("%s has %d outlets, but %d branches meet there", t.Part, len(part.Outlets), len(s.Index.Meeting(t.Of))))
			continue
		}
		sayOutlets(s, t.Of, part)
	}
}

// sayOutlets tests the outlets of a transition against what they get over and end up on, the
// trunk's too.
func sayOutlets(s *sheet.Sheet, place string, part catalogue.Transition) {
	beyond := map[int]wires.Walk{}
	for _, k := range wires.Walked(s) {
		if k.From == place {
			beyond[k.Branch] = k
		}
	}
	for _, i := range s.Index.Meeting(place) {
		o, ok := overphase.OutletAt(s, i, place)
		if !ok || s.Branches[i].OverMM <= 0 {
			continue
		}
		fit := overphase.FitOutlet(s, i, place, o)
		name := s.H.Branches[i].ID
		pass, thing := fit.MostMM, name
		if k, ok := beyond[i]; ok {
			pass, thing = overphase.Tails(s, k)
		}
		switch {
		case pass > o.ExpandedMM:
			s.Say(sheet.AtMost(part.Standing, sheet.Stop), "transition.slide", place,
				fmt.Sprintf("%s does not pass %s, %s mm, with an outlet of %s mm: take a wider one, a split one, or tape the breakout",
					part.ID, thing, unit.Fixed(pass, 2), unit.Fixed(o.ExpandedMM, 2)))
		case fit.LeastMM < o.RecoveredMM:
			s.Say(sheet.AtMost(part.Standing, sheet.Stop), "transition.grip", place,
				fmt.Sprintf("Its outlet for %s recovers to %s mm and lies on %s mm with every wire at its smallest: it stays loose", name,
					unit.Fixed(o.RecoveredMM, 2), unit.Fixed(fit.LeastMM, 2)))
		case fit.MostMM > cover.MaxStretch*o.ExpandedMM:
			s.Say(sheet.Note, "transition.stretch", place,
				fmt.Sprintf("Its outlet for %s is filled to %s %% of its bore; at most 80 %% is advised", name,
					unit.Fixed(100*(fit.MostMM/o.ExpandedMM), 0)))
		}
	}
}
