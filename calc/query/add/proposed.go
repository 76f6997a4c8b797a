package add

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
)

// Proposed writes into the harness what the sheet proposes for its outside: the sheath of every
// branch that has no cover yet or whose sheath does not fit any more, and a straight boot on every connector whose shell has one. What
// the file gives already stays. It returns how many of each it wrote.
func Proposed(s *sheet.Sheet) (h *model.Harness, sheaths, boots int) {
	h = s.H
	for i := range s.Branches {
		sh := &s.Branches[i].Sheath
		part := sh.Part
		switch {
		case !sh.Proposed && part != "" && sh.Verdict.Stops() && len(sh.Others) > 0 && !sh.Others[0].Verdict.Stops():
			part = sh.Others[0].Tube.ID // the one that is named goes on no more, or holds no more
			at := slices.IndexFunc(s.H.Branches[i].Covers, func(c model.Cover) bool { return c.What == model.CoverSheath })
			h = h.EditBranch(i, func(b *model.Branch) { b.Covers[at].Part = model.Some(part) })
			sheaths++
			continue
		case !sh.Proposed || part == "" || len(s.H.Branches[i].Covers) > 0:
			continue
		}
		h = h.EditBranch(i, func(b *model.Branch) {
			b.Covers = []model.Cover{{What: model.CoverSheath, Part: model.Some(part)}}
		})
		sheaths++
	}
	for t := range s.H.Terminations {
		boot := StraightBoot(s.Cat, s.H.Terminations[t].Insert.V)
		if boot == "" || s.H.Terminations[t].Boot.Set {
			continue
		}
		h = h.EditTermination(t, func(t *model.Termination) { t.Boot = model.Some(boot) })
		boots++
	}
	return h, sheaths, boots
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

// ProposedText says how many sheaths and boots there are, "" for none.
func ProposedText(sheaths, boots int) string {
	var out []string
	count := func(n int, one string) {
		switch {
		case n == 1:
			out = append(out, "1 "+one)
		case n > 1:
			out = append(out, fmt.Sprintf("%d %ss", n, one))
		}
	}
	count(sheaths, "sheath")
	count(boots, "boot")
	return strings.Join(out, " and ")
}
