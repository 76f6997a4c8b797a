package over

import (
	"fmt"

	"contralay/calc/formula/cover"
	"contralay/calc/sheet"
	"contralay/model/unit"
)

// advise says what the three pieces of advice on a tube come to, whether it was chosen or is
// proposed: kept, nearly kept, missed, or missed only at an end of the wire tolerance. rule
// is "sheath" or "cover", name what the sentence begins with, on what the tube lies on and
// pass what it must pass.
func advise(s *sheet.Sheet, i int, rule, name string, v cover.Verdict, kindKeepsAll bool, on, pass string) {
	fine := func(x unit.Millimetre) string { return unit.Fixed(x, 2) }
	say := func(a cover.Advice, rule, missed, nearly, atExtreme string) {
		says := missed
		switch {
		case a.Kept:
			says = atExtreme
		case a.Nearly:
			says = nearly
		}
		switch a.Level(kindKeepsAll) {
		case cover.Warn:
			s.Say(sheet.Warn, rule, s.H.Branches[i].ID, says)
		case cover.Note:
			s.Say(sheet.Note, rule, s.H.Branches[i].ID, says)
		}
	}
	full := unit.Fixed(100*float64(v.StretchRatio), 1)
	say(v.Stretch, rule+".stretch",
		fmt.Sprintf("%s is filled to %s %% of its bore; at most 80 %% is advised", name, full),
		fmt.Sprintf("%s is filled to just over the 80 %% of its bore that is advised, %s %%", name, full),
		name+" is filled past 80 % of its bore if every wire is at its largest")
	grip := unit.Fixed(v.GripRatio, 2)
	say(v.Grips, rule+".grip",
		fmt.Sprintf("%s grips little: the tape diameter of %s is %s times its recovered bore; 1.10 is wanted", name, on, grip),
		fmt.Sprintf("%s grips a little less than is wanted: the tape diameter of %s is %s times its recovered bore, and 1.10 is wanted",
			name, on, grip),
		name+" grips little if every wire is at its smallest")
	if v.Sticks {
		s.Say(sheet.Warn, rule+".room", s.H.Branches[i].ID,
			fmt.Sprintf("%s has %s mm to slide past %s, and %s mm is wanted: nobody slides it on with less than half of that. Take a "+
				"wider tube or another kind, put it on in shorter pieces, or leave it off",
				name, fine(v.SlideMM), pass, fine(v.RoomMM)))
		return
	}
	say(v.Slides, rule+".room",
		fmt.Sprintf("%s has %s mm to slide past %s; %s mm is wanted", name, fine(v.SlideMM), pass, fine(v.RoomMM)),
		fmt.Sprintf("%s has %s mm to slide past %s, a little less than the %s mm that is wanted", name, fine(v.SlideMM), pass,
			fine(v.RoomMM)),
		name+" is tight to slide on if every wire is at its largest")
}
