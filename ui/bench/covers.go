package bench

import (
	"fmt"
	"slices"

	"contralay/calc"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/draw"
)

// Covers beside the sheath: what lies under it and what goes over a station.

// coverRows is one row a cover beside the sheath, inside out, and one that adds another.
func (m *Model) coverRows() []row {
	mb, b, _ := m.b()
	var out []row
	for _, c := range b.Covers {
		at := c.At
		text := fmt.Sprintf("%-8s %s  %s to %s %s, over %s", c.What, draw.Fit(orDash(c.Part), 18, m.cfg.ASCII), m.sys.Length(c.FromMM), m.sys.Length(c.ToMM), m.sys.Name(), m.sys.Diameter(c.OverMM)+memMark(c.ThickGuess))
		detail := "Enter opens it, . takes it off"
		if c.Known {
			detail = m.coverSays(c) + "; " + detail
		}
		out = append(out, row{key: fmt.Sprint("cover ", at), text: text, detail: detail, enter: func(m *Model) { m.open(coverScreen(mb, at)) }, drop: func(m *Model) { m.dropCover(at) },
			why: figs(mb.ID, at, "", "cover.over", "cover.slide", "cover.cut", "cover.least", "cover.grip")})
	}
	return append(out, row{key: "add cover", text: "add      a tape, a braid, a sleeve, a second sheath", detail: "Enter lists what can lie under the sheath or over it", enter: func(m *Model) { m.open(addCoverScreen(mb.ID)) }})
}

func (m *Model) coverSays(c calc.Covered) string {
	v := c.Verdict
	switch {
	case v.StopSlide:
		return "it will not pass"
	case v.StopLoose:
		return "it stays loose"
	}
	return fmt.Sprintf("%s %s to slide, cut %s", m.sys.Fine(v.SlideMM), m.sys.Name(), m.sys.Length(c.CutMM))
}

// addable is what can be added to a branch: under its sheath, or outermost.
var addable = []struct {
	says, what string
	under      bool
}{
	{"a separator tape, under the sheath", "tape", true},
	{"a braid, under the sheath", "braid", true},
	{"a sleeve over it, where it rubs or passes heat", "sleeve", false},
	{"a second sheath over it", "sheath", false},
}

// addCoverScreen asks what is added to a branch.
func addCoverScreen(branch string) screen {
	return screen{name: "add cover", of: branch, safe: true, pick: true, page: func(m *Model, w int) page {
		p := page{lines: []string{"Covers lie on one another from the inside out; each has a start and a stop."}, empty: "branch " + branch + " is gone; Esc goes back"}
		i, ok := m.sheet.X.Branch[branch]
		if !ok {
			return p
		}
		sheathed := m.sheet.Branches[i].Sheath.Part != ""
		for _, a := range addable {
			if a.what == "sheath" && !sheathed {
				continue // a second needs a first
			}
			p.rows = append(p.rows, row{key: a.what, text: a.says, detail: "Enter adds it; start and stop are set on its page", enter: func(m *Model) {
				m.back()
				m.addCover(i, a.what, a.under)
			}})
		}
		return p
	}}
}

// addCover puts a cover on a branch: beneath its sheath, or outermost. The sheath that is
// only proposed is written down, or the branch would want none.
func (m *Model) addCover(i int, what string, under bool) {
	sh := m.sheet.Branches[i].Sheath.Part
	at := 0
	h := m.h.EditBranch(i, func(b *model.Branch) {
		if !slices.ContainsFunc(b.Covers, func(c model.Cover) bool { return c.What == "sheath" }) && sh != "" {
			b.Covers = append(b.Covers, model.Cover{What: "sheath", Part: model.Some(sh)})
		}
		at = len(b.Covers)
		if under {
			if k := slices.IndexFunc(b.Covers, func(c model.Cover) bool { return c.What == "sheath" }); k >= 0 {
				at = k
			}
		}
		n := model.Cover{What: what}
		if !under && sh != "" { // the same tube does not go over itself: one size up is a start
			n.Part = model.Some(m.sizeUp(sh))
		}
		b.Covers = slices.Insert(b.Covers, at, n)
	})
	m.change(h, "added: "+what)
	m.open(coverScreen(&m.h.Branches[i], at))
}

// sizeUp is the next wider tube of a tube's kind; itself where there is none.
func (m *Model) sizeUp(id string) string {
	t, ok := m.sheet.Cat.Tube(id)
	if !ok {
		return id
	}
	all := m.sheet.Cat.TubesOf(t.Kind)
	for k := range all {
		if all[k].ID == id && k+1 < len(all) {
			return all[k+1].ID
		}
	}
	return id
}

func (m *Model) dropCover(at int) {
	m.change(m.h.EditBranch(m.branch, func(b *model.Branch) {
		if at < len(b.Covers) {
			b.Covers = slices.Delete(b.Covers, at, at+1)
		}
		if len(b.Covers) == 0 {
			b.Covers = nil
		}
	}), "taken off")
}

// coverScreen is one cover of a branch: its part, its start and stop, what it adds. A cover
// has no name: once the branch has more or fewer, this page cannot tell which was meant.
func coverScreen(b *model.Branch, at int) screen {
	branch, n, what := b.ID, len(b.Covers), b.Covers[at].What
	return screen{name: "cover", of: fmt.Sprint(branch, "\x00", at, "\x00", n, what), page: func(m *Model, w int) page {
		i, ok := m.sheet.X.Branch[branch]
		gone := page{empty: "this cover is gone; Esc goes back"}
		if !ok {
			return gone
		}
		k := slices.IndexFunc(m.sheet.Branches[i].Covers, func(c calc.Covered) bool { return c.At == at })
		if all := m.h.Branches[i].Covers; k < 0 || len(all) != n || all[at].What != what {
			return gone
		}
		return m.coverPage(i, at, m.sheet.Branches[i].Covers[k])
	}}
}

func (m *Model) coverPage(i, at int, c calc.Covered) page {
	mb := &m.h.Branches[i]
	p := page{lines: []string{fmt.Sprintf("%s of %s, on %s %s", c.What, mb.ID, m.sys.Fine(c.UnderMM), m.sys.Name())}, why: figs(mb.ID, at, "", "cover.over", "cover.slide", "cover.cut", "cover.least", "cover.grip")}
	edit := func(says string, f func(c *model.Cover)) func(m *Model) {
		return func(m *Model) {
			m.change(m.h.EditBranch(i, func(b *model.Branch) { f(&b.Covers[at]) }), says)
		}
	}
	there := func(m *Model) bool { return i < len(m.h.Branches) && at < len(m.h.Branches[i].Covers) }
	if c.What == "sleeve" || c.What == "sheath" {
		p.rows = append(p.rows, row{key: "part", text: "part     " + orDash(c.Part), detail: "Enter lists the tubes", enter: func(m *Model) {
			m.open(chooseScreen("tube", there, func(m *Model) []choice { return m.tubeChoices(c.UnderMM) }, func(m *Model) string { return m.h.Branches[i].Covers[at].Part.V },
				func(m *Model, v string) { edit("part "+v, func(c *model.Cover) { c.Part = model.Some(v) })(m) }, nil))
		}})
	}
	station := func(label string, now, least, most unit.Millimetre, isSet bool, set func(c *model.Cover, v unit.Millimetre)) {
		says := "as it is set"
		if !isSet {
			says = "nothing is set: what is wound runs through, a tube lies as the sheath does"
		}
		put := func(m *Model, v unit.Millimetre) error {
			if v < least || v > most {
				return fmt.Errorf("%s %s is out of range: %s to %s %s, for the start lies before the stop", m.sys.Length(v), m.sys.Name(), m.sys.Length(least), m.sys.Length(most), m.sys.Name())
			}
			edit(label+" "+m.sys.Length(v), func(c *model.Cover) { set(c, v) })(m)
			return nil
		}
		p.rows = append(p.rows, row{key: label, text: fmt.Sprintf("%-8s %s %s", label, m.sys.Length(now), m.sys.Name()), detail: "+ - or digits; from " + mb.From,
			why: []reason{{made: func() (calc.Why, bool) {
				return calc.Stated(label, says, float64(now), calc.Length, given), true
			}}},
			step: func(m *Model, by int) {
				v := min(max(now+unit.Millimetre(5*by), least), most)
				if v == now {
					m.refuse(fmt.Sprintf("%s lies between %s and %s %s", label, m.sys.Length(least), m.sys.Length(most), m.sys.Name()))
				} else if err := put(m, v); err != nil {
					m.refuse(err.Error())
				}
			},
			field: &field{label: label + " of the " + c.What, unit: m.sys.Name(), value: m.sys.Length(now), number: true, set: func(m *Model, text string) error {
				v, err := m.sys.Parse(text)
				if err != nil {
					return err
				}
				return put(m, v)
			}}})
	}
	mc := mb.Covers[at]
	station("start", c.FromMM, 0, max(0, c.ToMM-1), mc.FromMM.Set, func(c *model.Cover, v unit.Millimetre) { c.FromMM = model.Some(v) })
	station("stop", c.ToMM, min(c.FromMM+1, mb.LengthMM), mb.LengthMM, mc.ToMM.Set, func(c *model.Cover, v unit.Millimetre) { c.ToMM = model.Some(v) })
	if !c.Known {
		p.rows = append(p.rows, row{key: "thick", text: fmt.Sprintf("adds     %s%s %s on each side", m.sys.Fine(c.ThickMM), memMark(c.ThickGuess), m.sys.Name()), detail: "digits or + -: what it adds to the radius, measured",
			why: figs(mb.ID, at, "", "cover.over"),
			step: func(m *Model, by int) {
				v := unit.Millimetre(min(10, max(0, unit.RoundHalfUp(float64(c.ThickMM)+0.05*float64(by), 0.01))))
				edit("adds "+m.sys.Fine(v), func(c *model.Cover) { c.ThickMM = model.Some(v) })(m)
			},
			field: &field{label: "thickness of the " + c.What, unit: m.sys.Name(), value: m.sys.Fine(c.ThickMM), number: true, set: func(m *Model, text string) error {
				v, err := m.sys.Parse(text)
				if err != nil {
					return err
				}
				if v < 0 || v > 10 {
					return fmt.Errorf("%s %s is out of range: %s to %s", text, m.sys.Name(), m.sys.Fine(0), m.sys.Fine(10))
				}
				edit("adds "+m.sys.Fine(v), func(c *model.Cover) { c.ThickMM = model.Some(v) })(m)
				return nil
			}}})
	}
	says := m.coverSays(c)
	if !c.Known {
		says = "over it " + m.sys.Fine(c.OverMM) + " " + m.sys.Name()
	}
	p.rows = append(p.rows, row{key: "verdict", text: "verdict  " + says, detail: "what lies beneath it counts: it slides over that and grips that", why: figs(mb.ID, at, "", "cover.slide", "cover.cut", "cover.over")},
		row{key: "off", text: "take it off", detail: "Enter or . takes it off", enter: func(m *Model) { m.back(); m.dropOf(i, at) }, drop: func(m *Model) { m.back(); m.dropOf(i, at) }})
	return p
}

func (m *Model) dropOf(i, at int) {
	m.branch = i
	m.dropCover(at)
}

// tubeChoices are the tubes that go over a diameter and grip it, the lightest kinds as the
// catalogue has them.
func (m *Model) tubeChoices(on unit.Millimetre) []choice {
	var out []choice
	for _, kind := range m.sheet.Cat.Kinds() {
		for _, t := range m.sheet.Cat.TubesOf(kind) {
			if t.SuppliedMM > on && t.RecoveredMM < on {
				out = append(out, choice{value: t.ID, says: t.ID + "   " + t.Material})
			}
		}
	}
	return out
}
