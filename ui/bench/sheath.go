package bench

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc"
	"contralay/calc/cover"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/draw"
)

// listedTubes is how many tubes are shown side by side.
const listedTubes = 3

// sheathPage is three tubes with how they slide and grip, where the sheath lies,
// the boots, and the order of threading on.
func (m *Model) sheathPage(w int) page {
	mb, b, ok := m.b()
	if !ok || b.OverMM <= 0 {
		return page{empty: "nothing laid yet, so nothing to cover"}
	}
	p := page{why: figs(mb.ID, 0, "", "branch.over", "branch.floor", "branch.tape", "sheath.pass")}
	sh := &b.Sheath
	p.lines = []string{fmt.Sprintf("over %s (area alone %s), tape %s, pass %s", m.sys.Fine(b.OverMM), m.sys.Fine(m.sheet.FloorMM(m.branch)), m.sys.Fine(b.TapeMM), m.sys.Fine(sh.PassMM))}
	if says := m.ranked(sh); says != "" {
		p.lines = append(p.lines, says)
		for _, c := range m.shownTubes(sh) {
			p.why = append(p.why, figs(mb.ID, 0, c.Tube.ID, "tube.mass", "tube.full", "tube.grip", "tube.slide")...)
		}
	}
	wide, worst := max(16, w-31), w >= 47 // the worst case gives way on a narrow screen
	if !worst {
		wide = max(8, w-24)
	}
	p.cols = fmt.Sprintf("  %-*s%6s %s%5s %5s", wide, "tube "+m.sys.Name(), "slides", where(worst, " worst "), "grips", "over")
	for _, c := range m.shownTubes(sh) {
		// A tube that is only offered and does not fit is no snag of the loom: it is
		// told in a word. Only the one in use carries a mark.
		in, mark := " ", ""
		if c.Tube.ID == sh.Part {
			in, mark = "=", levelMark(c.Level)
		}
		over := "-"
		switch {
		case c.Verdict.StopSlide:
			over = "no"
		case c.Verdict.StopLoose:
			over = "loose"
		case c.Verdict.Wraps:
			over = m.sys.Diameter(c.Verdict.OverMM)
		}
		id := c.Tube.ID
		r := row{
			text: fmt.Sprintf("%s %s%6s %s%5s %5s", in, draw.Fit(c.Tube.ShelfLabel, wide-1, m.cfg.ASCII)+" ", m.sys.Fine(c.Verdict.SlideMM), where(worst, fmt.Sprintf("%6s ", m.sys.Fine(c.Verdict.WorstSlideMM))),
				unit.Fixed(float64(c.Verdict.GripRatio), 2), over),
			detail: m.tubeSays(c), mark: mark,
			enter: func(m *Model) { m.takeTube(id) },
			show: func(m *Model) *Model {
				if id == sh.Part {
					return m
				}
				return m.try("tube "+id, func() *model.Harness {
					return m.h.EditBranch(m.branch, func(b *model.Branch) { sheathOf(b).Part = model.Some(id) })
				})
			},
			why: figs(mb.ID, 0, id, "tube.slide", "tube.worst", "tube.grip", "tube.over", "tube.room", "tube.full", "tube.wall", "tube.mass", "tube.cut"),
		}
		if c.Verdict.Wraps {
			r.field, r.step = m.wallField(id), func(m *Model, by int) { m.stepWall(id, by) }
			r.detail += "; digits: its wall, off the reel"
		}
		if at := sh.PassStationMM; at > 0 {
			r.why = append(r.why, reason{made: func() (calc.Why, bool) {
				return calc.Stated("where that splice lies", "its station along "+mb.ID, float64(at), calc.Length, given), true
			}})
		}
		p.rows = append(p.rows, r.of(m.sys.Fine(c.Verdict.SlideMM), m.sys.Name()+"  for "+c.Tube.ShelfLabel+" to slide"))
	}
	if len(sh.Others) == 0 {
		p.rows = append(p.rows, row{text: "no sheath on this branch", detail: "+ - proposes one", step: func(m *Model, by int) { m.stepKind(by) }})
	}
	part := "none"
	if sh.Part != "" {
		part = sh.Part
		if sh.Proposed {
			part += ", proposed"
		}
	}
	kind := calc.DefaultSheath
	if len(sh.Others) > 0 {
		kind = sh.Others[0].Tube.Kind
	}
	p.rows = append(p.rows,
		row{text: fmt.Sprintf("sheath   %s", part), detail: "Enter takes the proposal, . leaves the branch bare", enter: func(m *Model) {
			if sh.Part != "" {
				m.takeTube(sh.Part)
			} else {
				m.refuse("nothing to take: choose a tube or another kind")
			}
		}, drop: func(m *Model) { m.bare() }},
		row{text: "kind     " + kind, detail: "+ - another kind of tube, judged in this place", step: func(m *Model, by int) { m.stepKind(by) }},
		row{text: fmt.Sprintf("start    %s %s", m.sys.Length(sh.FromMM), m.sys.Name()), detail: "from " + mb.From + "; left to itself it starts under the shortest boot", field: m.coverField("start", true), step: m.stepCover("start", true, sh.FromMM), why: figs(mb.ID, 0, "", "sheath.from")},
		row{text: fmt.Sprintf("stop     %s %s   cut %s %s", m.sys.Length(sh.ToMM), m.sys.Name(), m.sys.Length(sh.CutMM), m.sys.Name()), detail: "from " + mb.From + "; without a transition it stops at the sorted zone", field: m.coverField("stop", false), step: m.stepCover("stop", false, sh.ToMM),
			why: append(figs(mb.ID, 0, "", "sheath.to"), figs(mb.ID, 0, sh.Part, "tube.cut")...)})
	for _, place := range []string{mb.From, mb.To} {
		if t, ok := m.sheet.X.Termination[place]; ok {
			p.rows = append(p.rows, m.bootRow(t), m.loopRow(t))
		}
	}
	p.rows = append(p.rows, m.coverRows()...)
	if r, any := m.marginRow(); any {
		p.rows = append(p.rows, r)
	}
	p.rows = append(p.rows, m.once("thread", func() []row { return []row{m.threadRow()} })...)
	return p
}

// where is text where there is room for it.
func where(room bool, text string) string {
	if room {
		return text
	}
	return ""
}

// ranked says in words why the first tube is the first, and what is wrong with each other.
func (m *Model) ranked(sh *calc.Sheath) string {
	all := m.shownTubes(sh)
	if len(all) < 2 || all[0].Verdict.Stops() {
		return ""
	}
	first := all[0].Verdict
	kept := fmt.Sprintf("keeps %d of 3", first.Kept())
	if first.KeepsAll() {
		kept = "keeps all"
	}
	out := fmt.Sprintf("1st %s, lightest, %s g", kept, unit.Fixed(float64(all[0].Gram), 1))
	for k, c := range all[1:] {
		out += fmt.Sprintf("; %s %s", []string{"2nd", "3rd"}[k], m.fault(c, first))
	}
	return out
}

// fault is what is wrong with a tube beside the first, in a word or two.
func (m *Model) fault(c calc.Choice, first cover.Verdict) string {
	v := c.Verdict
	switch {
	case v.StopSlide:
		return "does not pass"
	case v.StopLoose:
		return "loose"
	case !v.Stretch.Kept && first.Stretch.Kept:
		return fmt.Sprintf("filled to %s %%", unit.Fixed(100*float64(v.StretchRatio), 0))
	case !v.Grips.Kept && first.Grips.Kept:
		return "grips by " + unit.Fixed(float64(v.GripRatio), 2)
	case !v.Slides.Kept && first.Slides.Kept:
		return m.sys.Fine(v.SlideMM) + " " + m.sys.Name() + " to slide"
	}
	return unit.Fixed(float64(c.Gram), 1) + " g"
}

// shownTubes is the best three, and the one in use wherever it ranks.
func (m *Model) shownTubes(sh *calc.Sheath) []calc.Choice {
	out := slices.Clone(sh.Others[:min(listedTubes, len(sh.Others))])
	in := slices.IndexFunc(sh.Others, func(c calc.Choice) bool { return c.Tube.ID == sh.Part })
	if in >= listedTubes {
		out[listedTubes-1] = sh.Others[in]
	}
	return out
}

func levelMark(l cover.Level) string {
	switch l {
	case cover.Stop:
		return "!"
	case cover.Warn:
		return "?"
	}
	return ""
}

// tubeSays is a tube's verdict in words.
func (m *Model) tubeSays(c calc.Choice) string {
	v := c.Verdict
	switch {
	case v.StopSlide:
		return fmt.Sprintf("will not pass: %s %s too small at the largest", m.sys.Fine(-v.WorstSlideMM), m.sys.Name())
	case v.StopLoose:
		return fmt.Sprintf("loose: recovers to %s %s", m.sys.Fine(c.Tube.RecoveredMM), m.sys.Name())
	}
	slide, grip := "slides easily", "grips"
	if !v.Slides.Kept {
		slide = fmt.Sprintf("slides tight, %s %s is wanted", m.sys.Fine(v.RoomMM), m.sys.Name())
	}
	if !v.Grips.Kept {
		grip = "grips little, 1.10 is wanted"
	}
	return fmt.Sprintf("%s, %s; wall %s %s, %s g, cut %s", slide, grip, m.sys.Fine(v.WallMM), m.sys.Name(), unit.Fixed(float64(c.Gram), 1), m.sys.Length(c.CutMM))
}

func (m *Model) takeTube(id string) {
	m.change(m.h.EditBranch(m.branch, func(b *model.Branch) { sheathOf(b).Part = model.Some(id) }), "sheath "+id)
}

// sheathOf is the sheath of a branch, made where it has none.
func sheathOf(b *model.Branch) *model.Cover {
	for i := range b.Covers {
		if b.Covers[i].What == "sheath" {
			return &b.Covers[i]
		}
	}
	b.Covers = append(b.Covers, model.Cover{What: "sheath"})
	return &b.Covers[len(b.Covers)-1]
}

func (m *Model) bare() {
	if !slices.ContainsFunc(m.h.Branches[m.branch].Covers, func(c model.Cover) bool { return c.What == "sheath" }) {
		m.refuse("the sheath is only proposed; a file that lists another cover and no sheath wants none")
		return
	}
	says := "sheath taken off; one is proposed"
	h := m.h.EditBranch(m.branch, func(b *model.Branch) {
		k := slices.IndexFunc(b.Covers, func(c model.Cover) bool { return c.What == "sheath" })
		b.Covers = slices.Delete(b.Covers, k, k+1) // the first: what lies over it stays
		if len(b.Covers) == 0 {
			b.Covers = nil
		} else {
			says = "sheath taken off; the other covers stay"
		}
	})
	m.change(h, says)
}

// stepKind takes the best tube of another kind.
func (m *Model) stepKind(by int) {
	_, b, _ := m.b()
	cur := calc.DefaultSheath
	if len(b.Sheath.Others) > 0 {
		cur = b.Sheath.Others[0].Tube.Kind
	}
	kind, moved := around(m.sheet.Cat.Kinds(), cur, by)
	ts := m.sheet.Cat.TubesOf(kind)
	if !moved || len(ts) == 0 {
		m.refuse("the catalogue has no other kind of tube")
		return
	}
	trial := m.h.EditBranch(m.branch, func(b *model.Branch) { sheathOf(b).Part = model.Some(ts[0].ID) })
	best := calc.Build(trial, m.cfg.Cat, m.sheet).Branches[m.branch].Sheath.Others
	if len(best) == 0 {
		m.refuse("no tube of " + kind + " can be judged here")
		return
	}
	m.change(trial.EditBranch(m.branch, func(b *model.Branch) { sheathOf(b).Part = model.Some(best[0].Tube.ID) }), kind+": "+m.tubeSays(best[0]))
}

func (m *Model) coverField(label string, start bool) *field {
	return &field{label: label + " of the sheath", unit: m.sys.Name(), number: true, set: func(m *Model, text string) error {
		v, err := m.sys.Parse(text)
		if err != nil {
			return err
		}
		return m.setCover(label, start, v)
	}}
}

// setCover moves the start or stop of the sheath.
func (m *Model) setCover(label string, start bool, v unit.Millimetre) error {
	mb, b, _ := m.b()
	if v < 0 || v > mb.LengthMM {
		return fmt.Errorf("%s %s is out of range: 0 to %s %s", m.sys.Length(v), m.sys.Name(), m.sys.Length(mb.LengthMM), m.sys.Name())
	}
	if (start && v >= b.Sheath.ToMM) || (!start && v <= b.Sheath.FromMM) {
		return fmt.Errorf("the sheath would have no length")
	}
	part := b.Sheath.Part
	m.change(m.h.EditBranch(m.branch, func(b *model.Branch) {
		c := sheathOf(b)
		if c.Part.V == "" && part != "" {
			c.Part = model.Some(part)
		}
		if start {
			c.FromMM = model.Some(v)
		} else {
			c.ToMM = model.Some(v)
		}
	}), fmt.Sprintf("%s at %s %s", label, m.sys.Length(v), m.sys.Name()))
	return nil
}

// stepCover moves it by 5 mm.
func (m *Model) stepCover(label string, start bool, now unit.Millimetre) func(m *Model, by int) {
	return func(m *Model, by int) {
		if err := m.setCover(label, start, unit.Millimetre(unit.RoundHalfUp(float64(now), 5))+5*unit.Millimetre(by)); err != nil {
			m.refuse(err.Error())
		}
	}
}

func (m *Model) bootRow(t int) row {
	term := &m.h.Terminations[t]
	boot := orDash(term.Boot.V)
	detail := "+ - none, straight, 45 or 90 degrees for its shell"
	if e, ok := m.sheet.Cat.Boot(term.Boot.V); ok {
		least, most := memMark(e.From(e.Read.CableRecovered).Standing == catalogue.Memory), memMark(e.From(e.Read.CableSupplied).Standing == catalogue.Memory)
		detail = fmt.Sprintf("Enter types its sizes off the part; takes a cable of %s%s to %s%s %s; %s", m.sys.Diameter(1.1*e.CableRecoveredMM), least, m.sys.Diameter(0.8*e.CableSuppliedMM), most, m.sys.Name(), detail)
	}
	r := row{why: figs(term.ID, 0, "", "boot.least", "boot.most"), text: fmt.Sprintf("boot %s  %s", term.ID, boot), detail: detail, mark: m.markFor(term.ID), step: func(m *Model, by int) { m.stepBoot(t, by) }}
	if id := term.Boot.V; id != "" {
		r.enter = func(m *Model) { m.open(bootScreen(id)) }
	}
	return r
}

func (m *Model) stepBoot(t, by int) {
	term := &m.h.Terminations[t]
	ins, ok := m.sheet.Cat.Insert(term.Insert.V)
	choices := []string{""}
	for _, id := range m.sheet.Cat.BootIDs() {
		e, _ := m.sheet.Cat.Boot(id)
		if !ok || ins.Shell == 0 || e.Shell == ins.Shell {
			choices = append(choices, id)
		}
	}
	slices.SortStableFunc(choices, func(a, b string) int { return bootRank(a) - bootRank(b) })
	id, moved := around(choices, term.Boot.V, by)
	if !moved {
		m.refuse("the catalogue has no boot for this shell")
		return
	}
	says := term.ID + " without boot"
	if id != "" {
		says = term.ID + " takes " + id
	}
	m.change(m.h.EditTermination(t, func(t *model.Termination) {
		t.Boot = model.Opt[string]{}
		if id != "" {
			t.Boot = model.Some(id)
		}
	}), says)
}

func bootRank(id string) int {
	for k, part := range []string{"straight", "-45-", "-90-"} {
		if strings.Contains(id, part) {
			return k + 1
		}
	}
	return 0
}
