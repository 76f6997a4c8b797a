package over

import (
	"strings"
	"testing"

	"contralay/calc/formula/cover"
	"contralay/calc/sheet"
)

// Each piece of advice on a tube in its four ways, by hand: missed, nearly kept, kept but at an end of the tolerance, and kept. Where no
// tube
// of the kind keeps all three a missed one is a note.
func TestAdviceInWords(t *testing.T) {
	kept := cover.Advice{Kept: true, KeptAtExtreme: true}
	missed, nearly, extreme := cover.Advice{}, cover.Advice{Nearly: true}, cover.Advice{Kept: true, Nearly: true}
	v := cover.Verdict{StretchRatio: 0.8123, GripRatio: 1.061, SlideMM: 0.456, RoomMM: 0.789, Stretch: kept, Grips: kept, Slides: kept}
	with := func(f func(v *cover.Verdict)) cover.Verdict { x := v; f(&x); return x }
	for _, c := range []struct {
		v    cover.Verdict
		all  bool
		want string
	}{
		{v, true, ""},
		{with(func(v *cover.Verdict) { v.Stretch = missed }), true,
			"warn sheath.stretch X is filled to 81.2 % of its bore; at most 80 % is advised"},
		{with(func(v *cover.Verdict) { v.Stretch = missed }), false,
			"note sheath.stretch X is filled to 81.2 % of its bore; at most 80 % is advised"},
		{with(func(v *cover.Verdict) { v.Stretch = nearly }), true,
			"note sheath.stretch X is filled to just over the 80 % of its bore that is advised, 81.2 %"},
		{with(func(v *cover.Verdict) { v.Stretch = extreme }), true,
			"note sheath.stretch X is filled past 80 % of its bore if every wire is at its largest"},
		{with(func(v *cover.Verdict) { v.Grips = missed }), true,
			"warn sheath.grip X grips little: the tape diameter of it is 1.06 times its recovered bore; 1.10 is wanted"},
		{with(func(v *cover.Verdict) { v.Grips = nearly }), true, "note sheath.grip X grips a little less than is wanted: the tape " +
			"diameter of it is 1.06 " +
			"times its recovered bore, and 1.10 is wanted"},
		{with(func(v *cover.Verdict) { v.Grips = extreme }), true, "note sheath.grip X grips little if every wire is at its smallest"},
		{with(func(v *cover.Verdict) { v.Slides = missed }), true,
			"warn sheath.room X has 0.46 mm to slide past a contact; 0.79 mm is wanted"},
		{with(func(v *cover.Verdict) { v.Slides = nearly }), true,
			"note sheath.room X has 0.46 mm to slide past a contact, a little less than the 0.79 mm that is wanted"},
		{with(func(v *cover.Verdict) { v.Slides = extreme }), true,
			"note sheath.room X is tight to slide on if every wire is at its largest"},
		{with(func(v *cover.Verdict) { v.Slides, v.Sticks = missed, true }), false,
			"warn sheath.room X has 0.46 mm to slide past a contact, and 0.79 mm is " +
				"wanted: nobody slides it on with less than half of that. Take a wider tube or another kind, put it on in shorter " +
				"pieces, " +
				"or leave it off"},
	} {
		s := oneBranch(func(*sheet.Sheet) {})
		advise(s, 0, "sheath", "X", c.v, c.all, "it", "a contact")
		var got []string
		for _, g := range s.Snags {
			got = append(got, g.Level.String()+" "+g.Rule+" "+g.Says)
		}
		if strings.Join(got, "; ") != c.want {
			t.Errorf("%q, want %q", got, c.want)
		}
	}
}
