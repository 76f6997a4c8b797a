package sheath

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc"
	"contralay/calc/formula/cover"
	overphase "contralay/calc/phase/over"
	"contralay/calc/query/why"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/kit"
	"contralay/ui/bench/words"
)

// listedTubes is how many tubes are shown side by side.
const listedTubes = 3

// Step is the step of what goes over a branch.
const Step desk.Kind = "sheath"

// SheathPage is three tubes with how they slide and grip, where the sheath lies,
// the boots, and the order of threading on.
func SheathPage(m *desk.Model, w int, _ string) desk.Page {
	mb, b, ok := m.BranchHere()
	if !ok || b.OverMM <= 0 {
		return desk.Page{Empty: "Nothing is laid yet: nothing to cover"}
	}
	p := desk.Page{Why: desk.FiguresOf(mb.ID, "branch.over", "branch.floor", "branch.tape", "sheath.pass")}
	sh := &b.Sheath
	p.Lines = []string{fmt.Sprintf("OD %s %s, by area %s, tape %s, pass %s", m.Sys.Fine(b.OverMM), m.Sys.Name(),
		m.Sys.Fine(overphase.FloorMM(m.Sheet, m.Branch)), m.Sys.Fine(b.TapeMM), m.Sys.Fine(sh.PassMM))}
	if says := ranked(m, sh); says != "" {
		p.Lines = append(p.Lines, says)
		for _, c := range shownTubes(m, sh) {
			p.Why = append(p.Why, desk.FiguresOfPart(mb.ID, c.Tube.ID, "tube.mass", "tube.full", "tube.grip", "tube.slide")...)
		}
	}
	columns := tubeColumns(m, sh, w)
	p.Cols = columns.Head()
	for _, c := range shownTubes(m, sh) {
		// A tube that is only offered and does not fit is no snag of the loom: it is
		// told in a word. Only the one in use carries a mark.
		mark := ""
		if c.Tube.ID == sh.Part {
			mark = levelMark(c.Level)
		}
		id := c.Tube.ID
		r := desk.Row{
			Text: columns.Line(c), Detail: tubeSays(m, c), Mark: mark,
			Enter: func(m *desk.Model) { takeTube(m, id) },
			Show: func(m *desk.Model) *desk.Model {
				if id == sh.Part {
					return m
				}
				return m.Try("tube "+id, func() *model.Harness {
					return m.H.EditBranch(m.Branch, func(b *model.Branch) { desk.SheathOf(b).Part = model.Some(id) })
				})
			},
			Why: desk.FiguresOfPart(mb.ID, id, "tube.slide", "tube.worst", "tube.grip", "tube.over", "tube.room", "tube.full", "tube.wall",
				"tube.mass", "tube.cut"),
		}
		if c.Verdict.Wraps {
			r.Field, r.Step = wallField(m, id), func(m *desk.Model, by int) { stepWall(m, id, by) }
			r.Detail += ". Digits set its wall"
		}
		if at := sh.PassStationMM; at > 0 {
			r.Why = append(r.Why, desk.Reason{Made: func() (why.Why, bool) {
				return why.Stated("where that splice lies", "its place along "+mb.ID, float64(at), why.Length, desk.Given), true
			}})
		}
		p.Rows = append(p.Rows, r.Of(m.Sys.Fine(c.Verdict.SlideMM), m.Sys.Name()+"  for "+c.Tube.ShelfLabel+" to slide"))
	}
	if len(sh.Others) == 0 {
		p.Rows = append(p.Rows, desk.Row{Text: "no sheath on this branch", Detail: "+ - proposes one",
			Step: func(m *desk.Model, by int) { stepKind(m, by) }})
	}
	part := "none"
	if sh.Part != "" {
		part = sh.Part
		if sh.Proposed {
			part += ", proposed"
		}
	}
	kind := overphase.DefaultSheath
	if len(sh.Others) > 0 {
		kind = sh.Others[0].Tube.Kind
	}
	p.Rows = append(p.Rows,
		desk.Row{Text: fmt.Sprintf("sheath   %s", part), Detail: "Enter takes the proposal. Press . to remove the sheath",
			Enter: func(m *desk.Model) {
				if sh.Part != "" {
					takeTube(m, sh.Part)
				} else {
					m.Refuse("nothing to take: choose a tube or another kind")
				}
			}, Drop: func(m *desk.Model) { bare(m) }},
		desk.Row{Text: "kind     " + kind, Detail: "+ - the best tube of another kind",
			Step: func(m *desk.Model, by int) { stepKind(m, by) }},
		desk.Row{Text: fmt.Sprintf("start    %s %s", m.Sys.Length(sh.FromMM), m.Sys.Name()),
			Detail: "from " + mb.From + "; if you set none, it starts under the shortest boot", Field: coverField(m, "start", true),
			Step: stepCover(m, "start", true, sh.FromMM), Why: desk.FiguresOf(mb.ID, "sheath.from")},
		desk.Row{Text: fmt.Sprintf("stop     %s %s   cut %s %s", m.Sys.Length(sh.ToMM), m.Sys.Name(), m.Sys.AtLeast(sh.CutMM),
			m.Sys.Name()),
			Detail: "from " + mb.From + "; without a transition it stops at the sorted zone", Field: coverField(m, "stop", false),
			Step: stepCover(m, "stop", false, sh.ToMM),
			Why:  append(desk.FiguresOf(mb.ID, "sheath.to"), desk.FiguresOfPart(mb.ID, sh.Part, "tube.cut")...)})
	for _, place := range []string{mb.From, mb.To} {
		if t, ok := m.Sheet.Index.Termination[place]; ok {
			p.Rows = append(p.Rows, bootRow(m, t), loopRow(m, t))
		}
	}
	p.Rows = append(p.Rows, coverRows(m)...)
	if r, any := marginRow(m); any {
		p.Rows = append(p.Rows, r)
	}
	p.Rows = append(p.Rows, m.Once("thread", func() []desk.Row { return []desk.Row{threadRow(m)} })...)
	return p
}

// tubeColumns are the columns of the tubes: a narrow list leaves out how they slide at worst.
func tubeColumns(m *desk.Model, sh *sheet.Sheath, w int) kit.Columns[sheet.Choice] {
	columns := []kit.Column[sheet.Choice]{
		{Least: 1, Cell: func(c sheet.Choice) string { return words.Either(c.Tube.ID == sh.Part, "=", "") }},
		{Head: "tube " + m.Sys.Name(), Least: max(7, w-25), Cell: func(c sheet.Choice) string { return c.Tube.ShelfLabel }},
		{Head: "slides", Least: 6, Align: kit.ToRight, Cell: func(c sheet.Choice) string { return m.Sys.Fine(c.Verdict.SlideMM) }},
	}
	if w >= 47 {
		columns[1].Least = w - 32
		columns = append(columns, kit.Column[sheet.Choice]{Head: "worst", Least: 6, Align: kit.ToRight,
			Cell: func(c sheet.Choice) string { return m.Sys.Fine(c.Verdict.WorstSlideMM) }})
	}
	columns = append(columns,
		kit.Column[sheet.Choice]{Head: "grips", Least: 5, Align: kit.ToRight,
			Cell: func(c sheet.Choice) string { return unit.Fixed(c.Verdict.GripRatio, 2) }},
		kit.Column[sheet.Choice]{Head: "OD", Least: 5, Align: kit.ToRight, Cell: func(c sheet.Choice) string {
			switch {
			case c.Verdict.StopSlide:
				return "no"
			case c.Verdict.StopLoose:
				return "loose"
			case c.Verdict.Wraps:
				return m.Sys.Diameter(c.Verdict.OverMM)
			}
			return "-"
		}})
	return kit.GivenColumns(columns, m.Cfg.ASCII)
}

// ranked says in words why the first tube is the first, and what is wrong with each other.
func ranked(m *desk.Model, sh *sheet.Sheath) string {
	all := shownTubes(m, sh)
	if len(all) < 2 || all[0].Verdict.Stops() {
		return ""
	}
	first := all[0].Verdict
	kept := fmt.Sprintf("meets %d of 3", first.Kept())
	if first.KeepsAll() {
		kept = "meets all"
	}
	lightest := "lightest, "
	for _, c := range all[1:] {
		if !c.Verdict.Stops() && c.Gram < all[0].Gram {
			lightest = ""
		}
	}
	out := fmt.Sprintf("1st: %s, %s%s g", kept, lightest, unit.Fixed(all[0].Gram, 1))
	for k, c := range all[1:] {
		out += fmt.Sprintf("; %s: %s", []string{"2nd", "3rd"}[k], fault(m, c, first))
	}
	return out
}

// fault is what is wrong with a tube beside the first, in a word or two.
func fault(m *desk.Model, c sheet.Choice, first cover.Verdict) string {
	v := c.Verdict
	switch {
	case v.StopSlide:
		return "does not pass"
	case v.StopLoose:
		return "loose"
	case v.Sticks && !first.Sticks:
		return m.Sys.Fine(v.SlideMM) + " " + m.Sys.Name() + " to slide, too little"
	case !v.Stretch.Kept && first.Stretch.Kept:
		return fmt.Sprintf("filled to %s %%", unit.Fixed(100*v.StretchRatio, 0))
	case !v.Grips.Kept && first.Grips.Kept:
		return "grip only " + unit.Fixed(v.GripRatio, 2)
	case !v.Slides.Kept && first.Slides.Kept:
		return m.Sys.Fine(v.SlideMM) + " " + m.Sys.Name() + " to slide"
	}
	return unit.Fixed(c.Gram, 1) + " g"
}

// shownTubes is the best three, and the one in use wherever it ranks.
func shownTubes(m *desk.Model, sh *sheet.Sheath) []sheet.Choice {
	out := slices.Clone(sh.Others[:min(listedTubes, len(sh.Others))])
	in := slices.IndexFunc(sh.Others, func(c sheet.Choice) bool { return c.Tube.ID == sh.Part })
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
func tubeSays(m *desk.Model, c sheet.Choice) string {
	v := c.Verdict
	switch {
	case v.StopSlide:
		return fmt.Sprintf("will not slide on: %s %s too small at top tolerance", m.Sys.Fine(-v.WorstSlideMM), m.Sys.Name())
	case v.StopLoose:
		return fmt.Sprintf("stays loose: it recovers to %s %s", m.Sys.Fine(c.Tube.RecoveredMM), m.Sys.Name())
	}
	slide, grip := "slides easily", "grips"
	switch {
	case v.Sticks:
		slide = fmt.Sprintf("nobody slides it on: %s %s is wanted", m.Sys.Fine(v.RoomMM), m.Sys.Name())
	case !v.Slides.Kept && v.Slides.Nearly:
		slide = fmt.Sprintf("slides, %s %s is wanted", m.Sys.Fine(v.RoomMM), m.Sys.Name())
	case !v.Slides.Kept:
		slide = fmt.Sprintf("tight to slide on, %s %s is wanted", m.Sys.Fine(v.RoomMM), m.Sys.Name())
	}
	if v.Grips.Nearly && !v.Grips.Kept {
		grip = "grips a little less than 1.10"
	} else if !v.Grips.Kept {
		grip = "grips little, 1.10 is wanted"
	}
	return fmt.Sprintf("%s, %s; wall %s %s, %s g, cut %s", slide, grip, m.Sys.Fine(v.WallMM), m.Sys.Name(), unit.Fixed(c.Gram, 1),
		m.Sys.AtLeast(c.CutMM))
}

func takeTube(m *desk.Model, id string) {
	m.Change(m.H.EditBranch(m.Branch, func(b *model.Branch) { desk.SheathOf(b).Part = model.Some(id) }), "sheath "+id)
}

func bare(m *desk.Model) {
	if !slices.ContainsFunc(m.H.Branches[m.Branch].Covers, func(c model.Cover) bool { return c.What == model.CoverSheath }) {
		m.Refuse("this sheath is only proposed. To have none, list another cover in the file")
		return
	}
	says := "sheath removed. One is proposed"
	h := m.H.EditBranch(m.Branch, func(b *model.Branch) {
		k := slices.IndexFunc(b.Covers, func(c model.Cover) bool { return c.What == model.CoverSheath })
		b.Covers = slices.Delete(b.Covers, k, k+1) // the first: what lies over it stays
		if len(b.Covers) == 0 {
			b.Covers = nil
		} else {
			says = "sheath removed. The other covers stay"
		}
	})
	m.Change(h, says)
}

// stepKind takes the best tube of another kind.
func stepKind(m *desk.Model, by int) {
	_, b, _ := m.BranchHere()
	cur := overphase.DefaultSheath
	if len(b.Sheath.Others) > 0 {
		cur = b.Sheath.Others[0].Tube.Kind
	}
	kind, moved := words.Around(m.Sheet.Cat.Kinds(), cur, by)
	ts := m.Sheet.Cat.TubesOf(kind)
	if !moved || len(ts) == 0 {
		m.Refuse("the catalogue has no other kind of tube")
		return
	}
	trial := m.H.EditBranch(m.Branch, func(b *model.Branch) { desk.SheathOf(b).Part = model.Some(ts[0].ID) })
	best := calc.Build(trial, m.Cfg.Cat, m.Sheet).Branches[m.Branch].Sheath.Others
	if len(best) == 0 {
		m.Refuse("no tube of " + kind + " can be judged here")
		return
	}
	m.Change(trial.EditBranch(m.Branch, func(b *model.Branch) { desk.SheathOf(b).Part = model.Some(best[0].Tube.ID) }),
		kind+": "+tubeSays(m, best[0]))
}

func coverField(m *desk.Model, label string, start bool) *desk.Field {
	return &desk.Field{Label: label + " of the sheath", Unit: m.Sys.Name(), Number: true, Set: func(m *desk.Model, text string) error {
		v, err := m.Sys.Parse(text)
		if err != nil {
			return err
		}
		return setCover(m, label, start, v)
	}}
}

// setCover moves the start or stop of the sheath.
func setCover(m *desk.Model, label string, start bool, v unit.Millimetre) error {
	mb, b, _ := m.BranchHere()
	if v < 0 || v > mb.LengthMM {
		return fmt.Errorf("%s %s is out of range: 0 to %s %s", m.Sys.Length(v), m.Sys.Name(), m.Sys.Length(mb.LengthMM), m.Sys.Name())
	}
	if (start && v >= b.Sheath.ToMM) || (!start && v <= b.Sheath.FromMM) {
		return fmt.Errorf("the sheath would have no length")
	}
	part := b.Sheath.Part
	m.Change(m.H.EditBranch(m.Branch, func(b *model.Branch) {
		c := desk.SheathOf(b)
		if c.Part.V == "" && part != "" {
			c.Part = model.Some(part)
		}
		if start {
			c.FromMM = model.Some(v)
		} else {
			c.ToMM = model.Some(v)
		}
	}), fmt.Sprintf("%s at %s %s", label, m.Sys.Length(v), m.Sys.Name()))
	return nil
}

// stepCover moves it by 5 mm.
func stepCover(m *desk.Model, label string, start bool, now unit.Millimetre) func(m *desk.Model, by int) {
	return func(m *desk.Model, by int) {
		if err := setCover(m, label, start, unit.Millimetre(unit.RoundHalfUp(float64(now), 5))+5*unit.Millimetre(by)); err != nil {
			m.Refuse(err.Error())
		}
	}
}

func bootRow(m *desk.Model, t int) desk.Row {
	term := &m.H.Terminations[t]
	boot := words.OrDash(term.Boot.V)
	detail := "+ - none, straight, 45 or 90 degrees"
	if e, ok := m.Sheet.Cat.Boot(term.Boot.V); ok {
		least, most := words.MemMark(e.From(e.Read.CableRecovered).Standing == catalogue.Memory),
			words.MemMark(e.From(e.Read.CableSupplied).Standing == catalogue.Memory)
		detail = fmt.Sprintf("%s%s to %s%s %s cable. Enter: sizes. %s",
			m.Sys.Diameter(1.1*e.CableRecoveredMM), least, m.Sys.Diameter(0.8*e.CableSuppliedMM), most, m.Sys.Name(), detail)
	}
	r := desk.Row{Why: desk.FiguresOf(term.ID, "boot.least", "boot.most"), Text: fmt.Sprintf("boot %s  %s", term.ID, boot),
		Detail: detail, Mark: m.MarkFor(term.ID), Step: func(m *desk.Model, by int) { stepBoot(m, t, by) }}
	if id := term.Boot.V; id != "" {
		r.Enter = func(m *desk.Model) { m.Show(BootKind, id) }
	}
	return r
}

func stepBoot(m *desk.Model, t, by int) {
	term := &m.H.Terminations[t]
	ins, ok := m.Sheet.Cat.Insert(term.Insert.V)
	choices := []string{""}
	for _, id := range m.Sheet.Cat.BootIDs() {
		e, _ := m.Sheet.Cat.Boot(id)
		if !ok || ins.Shell == 0 || e.Shell == ins.Shell {
			choices = append(choices, id)
		}
	}
	slices.SortStableFunc(choices, func(a, b string) int { return bootRank(a) - bootRank(b) })
	id, moved := words.Around(choices, term.Boot.V, by)
	if !moved {
		m.Refuse("the catalogue has no boot for this shell")
		return
	}
	says := term.ID + " without boot"
	if id != "" {
		says = term.ID + " has " + id
	}
	m.Change(m.H.EditTermination(t, func(t *model.Termination) {
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
