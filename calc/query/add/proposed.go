package add

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
)

// Covered is a harness with its proposed covers written in, and what that was.
type Covered struct {
	H        *model.Harness
	Sheaths  int      // branches that had no cover
	Replaced []string // branches whose sheath could not be put on or would not hold any more
	Boots    int
	Bare     []string // branches that no tube of the usual kind fits
}

// Proposed writes into the harness what the sheet proposes for its outside: a sheath on every branch that has
// no cover, or in place of one that stops and that another tube of its kind does not; and the straight boot of
// its shell on every connector that has none. What else the file gives stays. Branches that wait for their
// lay-up are laid first.
func Proposed(s *sheet.Sheet) Covered {
	s = calc.Complete(s.H, s.Base, s)
	out := Covered{H: s.H}
	for i := range s.Branches {
		sh, covers, id := &s.Branches[i].Sheath, s.H.Branches[i].Covers, s.H.Branches[i].ID
		at := slices.IndexFunc(covers, func(c model.Cover) bool { return c.What == model.CoverSheath })
		switch {
		case at >= 0 && sh.Verdict.Stops() && len(sh.Others) > 0 && !sh.Others[0].Verdict.Stops():
			out.H = out.H.EditBranch(i, func(b *model.Branch) { b.Covers[at].Part = model.Some(sh.Others[0].Tube.ID) })
			out.Replaced = append(out.Replaced, id)
		case len(covers) > 0 || len(s.Branches[i].Layers) == 0:
		case sh.Part == "":
			out.Bare = append(out.Bare, id)
		default:
			out.H = out.H.EditBranch(i, func(b *model.Branch) {
				b.Covers = []model.Cover{{What: model.CoverSheath, Part: model.Some(sh.Part)}}
			})
			out.Sheaths++
		}
	}
	for t := range s.H.Terminations {
		boot := StraightBoot(s.Cat, s.H.Terminations[t].Insert.V)
		if boot == "" || s.H.Terminations[t].Boot.Set {
			continue
		}
		out.H = out.H.EditTermination(t, func(t *model.Termination) { t.Boot = model.Some(boot) })
		out.Boots++
	}
	return out
}

// Text says what was written, "" for nothing.
func (o Covered) Text() string {
	var out []string
	count := func(n int, one string) {
		switch {
		case n == 1:
			out = append(out, "1 "+one)
		case n > 1:
			out = append(out, fmt.Sprintf("%d %ss", n, one))
		}
	}
	count(o.Sheaths, "sheath")
	count(o.Boots, "boot")
	if len(o.Replaced) > 0 {
		out = append(out, "other sheaths on "+strings.Join(o.Replaced, ", ")+", where those named do not fit")
	}
	return strings.Join(out, ", ")
}

// StraightBoot is the straight boot for the shell of an arrangement; "" where the catalogue has
// none.
func StraightBoot(c *catalogue.Catalogue, insert string) string {
	for _, id := range BootsFor(c, insert) {
		if b, _ := c.Boot(id); b.Shape == "straight" {
			return id
		}
	}
	return ""
}

// BootsFor are the boots for the shell of an arrangement, by id: straight, 45 and 90 degrees.
func BootsFor(c *catalogue.Catalogue, insert string) []string {
	in, known := c.Insert(insert)
	if !known || in.Shell == 0 {
		return nil
	}
	var straight, bent []string
	for _, id := range c.BootIDs() {
		switch b, _ := c.Boot(id); {
		case b.Shell != in.Shell:
		case b.Shape == "straight":
			straight = append(straight, id)
		default:
			bent = append(bent, id)
		}
	}
	return append(straight, bent...)
}
