package sheath

import (
	"fmt"
	"slices"

	"contralay/calc/query/why"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/file/schema"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
	"contralay/ui/draw"
)

// Covers beside the sheath: what lies under it and what goes over a station.

// coverRows is one row a cover beside the sheath, inside out, and one that adds another.
func coverRows(m *desk.Model) []desk.Row {
	mb, b, _ := m.BranchHere()
	var out []desk.Row
	for _, c := range b.Covers {
		at := c.Index
		text := fmt.Sprintf("%-8s %s  %s to %s %s, OD %s", c.What, draw.Fit(words.OrDash(c.Part), 18, m.Cfg.ASCII),
			m.Sys.Length(c.FromMM), m.Sys.Length(c.ToMM), m.Sys.Name(), m.Sys.Diameter(c.OverMM)+words.MemMark(c.ThickGuess))
		detail := "Enter opens it, . removes it"
		if c.Tube.Set {
			detail = coverSays(m, c) + "; " + detail
		}
		out = append(out, desk.Row{Key: fmt.Sprint("cover ", at), Text: text, Detail: detail,
			Enter: func(m *desk.Model) { openCover(m, mb, at) }, Drop: func(m *desk.Model) { dropCover(m, at) },
			Why: desk.FiguresAt(mb.ID, at, "cover.over", "cover.slide", "cover.cut", "cover.least", "cover.grip")})
	}
	return append(out, desk.Row{Key: "add cover", Text: "add      a tape, a braid, a sleeve, a second sheath",
		Detail: "Enter lists what can lie under the sheath or over it", Enter: func(m *desk.Model) { m.Show(AddCoverKind, mb.ID) }})
}

func coverSays(m *desk.Model, c sheet.Covered) string {
	v := c.Verdict
	switch {
	case v.StopSlide:
		return "it will not slide on"
	case v.StopLoose:
		return "it stays loose"
	}
	return fmt.Sprintf("%s %s room to slide, cut %s", m.Sys.Fine(v.SlideMM), m.Sys.Name(), m.Sys.AtLeast(c.CutMM))
}

// The screens of covers.
const (
	CoverKind    desk.Kind = "cover"
	AddCoverKind desk.Kind = "add cover"
)

// AddCoverPage asks what is added to a branch.
func AddCoverPage(m *desk.Model, _ int, branch string) desk.Page {
	p := desk.Page{Lines: []string{"Covers lie on one another, from the inside out. Each has a start and a stop."},
		Empty: "branch " + branch + " is gone. Esc goes back"}
	i, ok := m.Sheet.Index.Branch[branch]
	if !ok {
		return p
	}
	sheathed := m.Sheet.Branches[i].Sheath.Part != ""
	for _, kind := range model.CoverTraits {
		if kind.Again && !sheathed {
			continue // a second needs a first
		}
		p.Rows = append(p.Rows, desk.Row{Key: string(kind.Kind), Text: kind.Offer,
			Detail: "Enter adds it. Set its start and stop on its page",
			Enter: func(m *desk.Model) {
				m.Back()
				addCover(m, i, kind.Kind)
			}})
	}
	return p
}

// addCover puts a cover on a branch: beneath its sheath, or outermost. The sheath that is
// only proposed is written down, or the branch would want none.
func addCover(m *desk.Model, i int, what model.CoverKind) {
	under := what.Trait().Under
	sh := m.Sheet.Branches[i].Sheath.Part
	at := 0
	h := m.H.EditBranch(i, func(b *model.Branch) {
		if !slices.ContainsFunc(b.Covers, func(c model.Cover) bool { return c.What == model.CoverSheath }) && sh != "" {
			b.Covers = append(b.Covers, model.Cover{What: model.CoverSheath, Part: model.Some(sh)})
		}
		at = len(b.Covers)
		if under {
			if k := slices.IndexFunc(b.Covers, func(c model.Cover) bool { return c.What == model.CoverSheath }); k >= 0 {
				at = k
			}
		}
		n := model.Cover{What: what}
		if !under && sh != "" { // the same tube does not go over itself: one size up is a start
			n.Part = model.Some(sizeUp(m, sh))
		}
		b.Covers = slices.Insert(b.Covers, at, n)
	})
	m.Change(h, "added: "+string(what))
	openCover(m, &m.H.Branches[i], at)
}

// sizeUp is the next wider tube of a tube's kind; itself where there is none.
func sizeUp(m *desk.Model, id string) string {
	t, ok := m.Sheet.Cat.Tube(id)
	if !ok {
		return id
	}
	all := m.Sheet.Cat.TubesOf(t.Kind)
	for k := range all {
		if all[k].ID == id && k+1 < len(all) {
			return all[k+1].ID
		}
	}
	return id
}

func dropCover(m *desk.Model, at int) {
	m.Change(m.H.EditBranch(m.Branch, func(b *model.Branch) {
		if at < len(b.Covers) {
			b.Covers = slices.Delete(b.Covers, at, at+1)
		}
		if len(b.Covers) == 0 {
			b.Covers = nil
		}
	}), "removed")
}

// openCover opens one cover of a branch: its part, its start and stop, what it adds. A cover
// has no name: once the branch has more or fewer, this page cannot tell which was meant.
func openCover(m *desk.Model, b *model.Branch, at int) {
	branch, n, what := b.ID, len(b.Covers), b.Covers[at].What
	m.Open(desk.Screen{Kind: CoverKind, Of: fmt.Sprint(branch, "\x00", at, "\x00", n, what), Page: func(m *desk.Model, _ int) desk.Page {
		i, ok := m.Sheet.Index.Branch[branch]
		gone := desk.Page{Empty: "This cover is gone. Esc goes back"}
		if !ok {
			return gone
		}
		k := slices.IndexFunc(m.Sheet.Branches[i].Covers, func(c sheet.Covered) bool { return c.Index == at })
		if all := m.H.Branches[i].Covers; k < 0 || len(all) != n || all[at].What != what {
			return gone
		}
		return coverPage(m, i, at, m.Sheet.Branches[i].Covers[k])
	}})
}

func coverPage(m *desk.Model, i, at int, c sheet.Covered) desk.Page {
	mb := &m.H.Branches[i]
	p := desk.Page{Lines: []string{fmt.Sprintf("%s of %s, on %s %s", c.What, mb.ID, m.Sys.Fine(c.UnderMM), m.Sys.Name())},
		Why: desk.FiguresAt(mb.ID, at, "cover.over", "cover.slide", "cover.cut", "cover.least", "cover.grip")}
	edit := func(says string, f func(c *model.Cover)) func(m *desk.Model) {
		return func(m *desk.Model) {
			m.Change(m.H.EditBranch(i, func(b *model.Branch) { f(&b.Covers[at]) }), says)
		}
	}
	there := func(m *desk.Model) bool { return i < len(m.H.Branches) && at < len(m.H.Branches[i].Covers) }
	if c.What.Trait().Tube {
		p.Rows = append(p.Rows, desk.Row{Key: "part", Text: "part     " + words.OrDash(c.Part), Detail: "Enter lists the tubes",
			Enter: func(m *desk.Model) {
				m.Open(desk.ChooseScreen("tube", there, func(m *desk.Model) []desk.Choice { return tubeChoices(m, c.UnderMM) },
					func(m *desk.Model) string { return m.H.Branches[i].Covers[at].Part.V },
					func(m *desk.Model, v string) { edit("part "+v, func(c *model.Cover) { c.Part = model.Some(v) })(m) }, nil))
			}})
	}
	station := func(label string, now, least, most unit.Millimetre, isSet bool, set func(c *model.Cover, v unit.Millimetre)) {
		says := "as you set it"
		if !isSet {
			says = "you set nothing: a wound cover runs through, a tube lies as the sheath does"
		}
		put := func(m *desk.Model, v unit.Millimetre) error {
			if v < least || v > most {
				return fmt.Errorf("%s %s is out of range: %s to %s %s. The start must come before the stop", m.Sys.Length(v), m.Sys.Name(),
					m.Sys.Length(least), m.Sys.Length(most), m.Sys.Name())
			}
			edit(label+" "+m.Sys.Length(v), func(c *model.Cover) { set(c, v) })(m)
			return nil
		}
		p.Rows = append(p.Rows, desk.Row{Key: label, Text: fmt.Sprintf("%-8s %s %s", label, m.Sys.Length(now), m.Sys.Name()),
			Detail: "+ - or digits, measured from " + mb.From,
			Why: []desk.Reason{{Made: func() (why.Why, bool) {
				return why.Stated(label, says, float64(now), why.Length, desk.Given), true
			}}},
			Step: func(m *desk.Model, by int) {
				v := min(max(unit.Written(now+unit.Millimetre(5*by)), least), most)
				if v == now {
					m.Refuse(fmt.Sprintf("%s must be %s to %s %s", label, m.Sys.Length(least), m.Sys.Length(most), m.Sys.Name()))
				} else if err := put(m, v); err != nil {
					m.Refuse(err.Error())
				}
			},
			Field: &desk.Field{Label: label + " of the " + string(c.What), Unit: m.Sys.Name(), Value: m.Sys.Length(now), Number: true,
				Set: func(m *desk.Model, text string) error {
					v, err := m.Sys.Parse(text)
					if err != nil {
						return err
					}
					return put(m, v)
				}}})
	}
	mc := mb.Covers[at]
	station("start", c.FromMM, 0, max(0, c.ToMM-1), mc.FromMM.Set, func(c *model.Cover, v unit.Millimetre) { c.FromMM = model.Some(v) })
	station("stop", c.ToMM, min(c.FromMM+1, mb.LengthMM), mb.LengthMM, mc.ToMM.Set,
		func(c *model.Cover, v unit.Millimetre) { c.ToMM = model.Some(v) })
	if !c.Tube.Set {
		p.Rows = append(p.Rows, desk.Row{Key: "thick", Text: fmt.Sprintf("adds     %s%s %s on each side", m.Sys.Fine(c.ThickMM),
			words.MemMark(c.ThickGuess), m.Sys.Name()), Detail: "Digits or + -: what it adds on each side, measured",
			Why: desk.FiguresAt(mb.ID, at, "cover.over"),
			Step: func(m *desk.Model, by int) {
				v := unit.Millimetre(min(10, max(0, unit.RoundHalfUp(float64(c.ThickMM)+0.05*float64(by), 0.01))))
				edit("adds "+m.Sys.Fine(v), func(c *model.Cover) { c.ThickMM = model.Some(v) })(m)
			},
			Field: &desk.Field{Label: string("thickness of the " + string(c.What)), Unit: m.Sys.Name(), Value: m.Sys.Fine(c.ThickMM),
				Number: true,
				Set: func(m *desk.Model, text string) error {
					v, err := m.Sys.Parse(text)
					if err != nil {
						return err
					}
					if v < 0 || v > 10 {
						return fmt.Errorf("%s %s is out of range: %s to %s", text, m.Sys.Name(), m.Sys.Fine(0), m.Sys.Fine(10))
					}
					edit("adds "+m.Sys.Fine(v), func(c *model.Cover) { c.ThickMM = model.Some(v) })(m)
					return nil
				}}})
	}
	says := coverSays(m, c)
	if !c.Tube.Set {
		says = "OD " + m.Sys.Fine(c.OverMM) + " " + m.Sys.Name()
	}
	p.Rows = append(p.Rows, desk.Row{Key: "verdict", Text: "verdict  " + says,
		Detail: "It slides over what lies beneath it, and grips that",
		Why:    desk.FiguresAt(mb.ID, at, "cover.slide", "cover.cut", "cover.over")},
		desk.AllValuesOf(schema.At{{Table: "branch", Index: i}, {Table: "cover", Index: at}}, mb.ID),
		desk.Row{Key: "off", Text: "remove it", Detail: "Enter or . removes it",
			Enter: func(m *desk.Model) { m.Back(); dropOf(m, i, at) }, Drop: func(m *desk.Model) { m.Back(); dropOf(m, i, at) }})
	return p
}

func dropOf(m *desk.Model, i, at int) {
	m.Branch = i
	dropCover(m, at)
}

// tubeChoices are the tubes that go over a diameter and grip it, the lightest kinds as the
// catalogue has them.
func tubeChoices(m *desk.Model, on unit.Millimetre) []desk.Choice {
	var out []desk.Choice
	for _, kind := range m.Sheet.Cat.Kinds() {
		for _, t := range m.Sheet.Cat.TubesOf(kind) {
			if t.SuppliedMM > on && t.RecoveredMM < on {
				out = append(out, desk.Choice{Value: t.ID, Says: t.ID + "   " + t.Material})
			}
		}
	}
	return out
}
