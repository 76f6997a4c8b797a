package built

import (
	"fmt"
	"slices"
	"strings"

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

// corrections are those that the shop has learned since, of what this sheet goes by.
func (c *comparison) corrections() {
	if c.b.GoesBy == nil {
		return
	}
	is := GoesBy(c.s)
	if more, less := apart(is, c.b.GoesBy); len(more) == 0 && len(less) == 0 {
		return
	}
	c.out = append(c.out, Difference{At: AboutCorrections,
		Says:  fmt.Sprintf("the shop now corrects by %s, then by %s", list(is), list(c.b.GoesBy)),
		Built: "what was built by " + list(c.b.GoesBy), then: func(b *model.Build) { b.GoesBy = is }})
}

// list is texts in one line.
func list(all []string) string {
	if len(all) == 0 {
		return "nothing"
	}
	return strings.Join(all, " and ")
}

// GoesBy are the corrections of the shop that a sheet goes by, each in words; empty and not
// nil where there are none.
func GoesBy(s *sheet.Sheet) []string {
	out := []string{}
	put := func(of string, bias unit.Ratio) {
		sign := "+"
		if bias < 0 {
			sign = "-"
		}
		says := fmt.Sprintf("%s: %s%s %%", of, sign, unit.Fixed(100*max(bias, -bias), 1))
		if !slices.Contains(out, says) {
			out = append(out, says)
		}
	}
	for i := range s.Branches {
		b := &s.Branches[i]
		if l := b.Learned; l.Of != "" {
			put(l.Of, l.Bias)
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
