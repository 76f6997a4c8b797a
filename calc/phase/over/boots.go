package over

import (
	"fmt"

	"contralay/calc/formula/cover"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// boots tests the cable end of the boots at a branch's terminations. Their sizes
// stand in the catalogue from memory, so no more than a warning comes of them
// unless the shop's own catalogue has them. A boot stops where it fails on wires at the edge of their tolerance, as a sheath and
// a transition do; what is only advised is judged at their nominal size.
func boots(s *sheet.Sheet, i int) {
	b, out := &s.H.Branches[i], &s.Branches[i]
	for _, place := range []string{b.From, b.To} {
		k, ok := s.Index.Termination[place]
		if !ok || s.H.Terminations[k].Boot.V == "" {
			continue
		}
		t := &s.H.Terminations[k]
		boot, known := s.Cat.Boot(t.Boot.V)
		if !known {
			s.Say(sheet.Warn, "boot.part", t.ID, fmt.Sprintf("Boot %q is in no catalogue", t.Boot.V))
			continue
		}
		bootShell(s, t, boot)
		if out.Sheath.Tube.Set && out.Sheath.Verdict.Stops() {
			continue // what the boot lies on is not settled, and that is said already
		}
		if out.OverMM <= 0 || !b.Measured() {
			continue
		}
		d, held := UnderBoot(s, i, place, boot)
		least, most := UnderBootAtEdges(s, i, place, boot)
		switch {
		case least < boot.CableRecoveredMM:
			s.Say(sheet.AtMost(boot.From(boot.Read.CableRecovered).Standing, sheet.Stop), "boot.grip", t.ID,
				fmt.Sprintf("%s stays loose: it recovers to %s mm and lies on %s mm with every wire at its smallest. "+
					"Build the bundle up there%s", boot.ID, unit.Fixed(boot.CableRecoveredMM, 2), unit.Fixed(least, 2),
					offThePart(boot.From(boot.Read.CableRecovered), ", and check")))
		case boot.CableSuppliedMM > 0 && most > boot.CableSuppliedMM:
			s.Say(sheet.AtMost(boot.From(boot.Read.CableSupplied).Standing, sheet.Stop), "boot.slide", t.ID,
				fmt.Sprintf("%s will not slide on: it opens to %s mm and the branch is %s mm with every wire at its largest%s", boot.ID,
					unit.Fixed(boot.CableSuppliedMM, 2), unit.Fixed(most, 2),
					offThePart(boot.From(boot.Read.CableSupplied), ". Check")))
		case boot.From(boot.Read.CableRecovered).Standing != catalogue.Memory && held < cover.MinGrip*boot.CableRecoveredMM:
			// of a size from memory it would say nothing
			s.Say(sheet.Note, "boot.gripslittle", t.ID,
				fmt.Sprintf("%s grips little: what it lies on is %s times its recovered bore; 1.10 is wanted", boot.ID,
					unit.Fixed(held/boot.CableRecoveredMM, 2)))
		case boot.From(boot.Read.CableSupplied).Standing != catalogue.Memory && boot.CableSuppliedMM > 0 &&
			d > cover.MaxStretch*boot.CableSuppliedMM:
			s.Say(sheet.Note, "boot.filled", t.ID, fmt.Sprintf("%s is filled to %s %% of its bore; at most 80 %% is advised", boot.ID,
				unit.Fixed(100*(d/boot.CableSuppliedMM), 0)))
		}
	}
}

// offThePart ends what is said where a size of a boot decides.
func offThePart(from catalogue.Origin, check string) string {
	if from.Standing == catalogue.Memory {
		return placeholder("size", from)
	}
	return check + " the part's sheet"
}

// placeholder says that a size from memory is none to build by: the part in hand settles it.
func placeholder(what string, from catalogue.Origin) string {
	if from.Standing == catalogue.Memory {
		return ". The boot's " + what + " is a placeholder: type it off the part"
	}
	return ""
}

// UnderBoot is the diameter that the cable end of a boot lies on: over the last 15 mm of
// the boot, at its shortest and its longest.
func UnderBoot(s *sheet.Sheet, i int, place string, boot catalogue.Boot) (most, held unit.Millimetre) {
	return OverFrom(s, i, place, ShortestPart*boot.LengthMM-cover.OverlapMM, boot.LengthMM)
}

// UnderBootAtEdges is that diameter with every wire at its smallest, and with every wire at its largest.
func UnderBootAtEdges(s *sheet.Sheet, i int, place string, boot catalogue.Boot) (least, most unit.Millimetre) {
	most, least = UnderBoot(s, i, place, boot)
	thinner, thicker := tolerance(&s.Branches[i])
	return least - thinner, most + thicker
}

func bootShell(s *sheet.Sheet, t *model.Termination, boot catalogue.Boot) {
	if ins, ok := s.Cat.Insert(t.Insert.V); ok && ins.Shell > 0 && ins.Shell != boot.Shell {
		s.Say(sheet.Warn, "boot.shell", t.ID, fmt.Sprintf("%s fits shell %d, but the insert has shell %d", boot.ID, boot.Shell, ins.Shell))
	}
}
