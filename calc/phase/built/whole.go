package built

import (
	"fmt"
	"slices"

	"contralay/calc/phase/bundle"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// revision is a revision that was raised since. Steps on record by key alone hang on it: what
// they made is not known.
func (c *comparison) revision() {
	is, was := c.s.H.Head.Revision, c.b.Revision
	if is.V == was.V {
		return
	}
	d := Difference{At: AboutRevision, Says: fmt.Sprintf("the sheet is revision %s, was %s", is.Or("-"), was.Or("-")),
		Built: "what was built at revision " + was.Or("-")}
	if n := len(c.old); n > 0 {
		d.Says += "; " + unknown(n) + ", so only the revision is compared"
		d.Again = c.over(c.old)
	}
	d.then = func(b *model.Build) { b.Revision = is }
	c.out = append(c.out, d)
}

// unknown says of how many steps a build has the key alone.
func unknown(n int) string {
	if n == 1 {
		return "of 1 step that is done the file does not hold what was done"
	}
	return fmt.Sprintf("of %d steps that are done the file does not hold what was done", n)
}

// GoesBy are the corrections of the shop that a sheet goes by, each in words; empty and not
// nil where there are none.
func GoesBy(s *sheet.Sheet) []string {
	out := []string{}
	put := func(of string, bias unit.Ratio) {
		if says := bundle.InWords(of, bias); !slices.Contains(out, says) {
			out = append(out, says)
		}
	}
	for i := range s.Branches {
		b := &s.Branches[i]
		for _, c := range bundle.Corrections(s, i) {
			put(c.Of, c.Bias)
		}
		if b.Sheath.Tube.Set {
			if k, ok := s.Base.Correction("wall, " + b.Sheath.Tube.V.Kind); ok {
				put(k.Of, k.Bias)
			}
		}
	}
	slices.Sort(out)
	return out
}
