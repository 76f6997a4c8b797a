package bench

import (
	"cmp"
	"fmt"
	"strings"

	"contralay/calc/sheet"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/kit"
	"contralay/ui/bench/words"
	"contralay/ui/draw"
	"contralay/ui/guide"
)

// frame is the screen line by line.
func frame(m *desk.Model) []string {
	l := withRoomForLoss(m, m.Arranged())
	if l.Tiny {
		return tinyFrame(m)
	}
	p, r := m.Hand()
	seen := m
	if r != nil && r.Show != nil {
		seen = r.Show(m)
	}
	list := listLines(m, p, l.List)
	if l.Big {
		lines := largeLines(m, r, l.List.W)
		for k := range words.BigH {
			t := ""
			if k < len(lines) {
				t = lines[k]
			}
			list = append(list, m.Theme.Paint(kit.Strong, t))
		}
	}
	f := kit.Frame{Head: head(m), Steps: stepsLine(m), Left: kit.Pane{{Title: paneTitle(m), Lines: list}}}
	switch draws := m.Here().Picture; {
	case l.Right.W > 0 && draws != nil:
		title, lines := draws(m, l.Right.W, l.Right.H)
		f.Right = kit.Pane{{Title: title, Lines: lines}}
	case l.Right.W > 0:
		f.Right = kit.Pane{{Title: sectionTitle(seen), Lines: picture(seen, sectionHand(r), l.Right.W, l.Right.H)}}
	}
	f.Foot = footLines(m, seen, l, r)
	return m.Theme.Draw(l.Layout, f)
}

// footLines are the lines under the panes: the row in hand, the figures, the worst open point,
// what the last key did, the keys. On a low screen the answer takes the place of the words about
// the row in hand, and of the open point only while a field is open.
func footLines(m, seen *desk.Model, l desk.Layout, r *desk.Row) []string {
	answer := answerLine(m, l)
	room := 1
	if answer == "" && l.Foot > 4 {
		room = 2
	}
	points := snagLines(seen, l, room)
	if lost := lostFoot(m, r, l, points[0]); lost != nil {
		return append(lost, keyBar(m, r, l))
	}
	out := []string{inHand(m, r, l), figures(seen, l)}
	if l.Foot <= 4 && answer != "" {
		if points[0] != "" && m.Entry == nil {
			out = out[1:] // no answer hides what is wrong: the row itself stands in the list
		} else {
			points = nil
		}
	}
	out = append(out, points...)
	if answer != "" || len(out) < l.Foot-1 {
		out = append(out, answer)
	}
	return append(out, keyBar(m, r, l))
}

// lostFoot is the lines above the keys where something was not written: the open field, the
// open point, and the message in all the room there is; nil where nothing of the kind is said.
func lostFoot(m *desk.Model, r *desk.Row, l desk.Layout, point string) []string {
	var out []string
	switch {
	case m.Entry != nil:
		out = append(out, inHand(m, r, l))
	case point != "":
		out = append(out, point)
	}
	said := lostLines(m, l.W-2*len(l.Margin), l.Foot-1-len(out))
	if said == nil {
		return nil
	}
	for len(out)+len(said) < l.Foot-1 {
		out = append([]string{""}, out...)
	}
	return append(out, said...)
}

func tinyFrame(m *desk.Model) []string {
	out := make([]string, max(1, m.Height))
	for k, t := range kit.Wrap(fmt.Sprintf("The bench needs %d x %d; this is %d x %d. Nothing is lost. Q quits.", desk.TinyW, desk.TinyH,
		m.W, m.Height), max(1, m.W)) {
		if k < len(out) {
			out[k] = draw.Cut(t, max(1, m.W), m.Cfg.ASCII)
		}
	}
	return out
}

// head is number, revision and name, the branch, and whether it is saved.
func head(m *desk.Model) kit.Head {
	hd := m.H.Head
	h := kit.Head{Number: strings.TrimSpace(hd.Number.V + " " + hd.Revision.V), Name: hd.Name.V, State: "saved"}
	if hd.Number.V == "" && hd.Revision.V != "" {
		h.Number = "rev " + hd.Revision.V // a letter alone says nothing
	}
	if mb, _, ok := m.BranchHere(); ok {
		h.Branch, h.Ends = strings.TrimSpace(mb.ID+" "+mb.Name.V), mb.From+" to "+mb.To
		h.Length = desk.Long(m, mb)
	}
	switch {
	case m.Dirty():
		h.State, h.Change = "not saved", true
		if m.Journal.Trouble != "" {
			h.State = "NOT SAVED, no journal"
		}
	case m.File.Path == "":
		h.State = "demonstration"
		if len(m.H.Branches) == 0 {
			h.State = "new"
		}
	}
	if says := m.Here().Head; says != nil {
		says(m, &h)
	}
	return h
}

// stepsLine is the steps of the branch with the one in hand in capitals, and what it holds; or
// the name of a screen that takes the whole width.
func stepsLine(m *desk.Model) kit.Steps {
	var s kit.Steps
	for k, step := range m.Tables.Steps {
		s.Names = append(s.Names, step.Title)
		if step.Kind == m.Step {
			s.Now = k
		}
	}
	if len(m.Stack) == 0 {
		s.Counts = counts(m)
		return s
	}
	s.Says = cmp.Or(m.Here().Leaves, "Esc goes back")
	if m.Here().Wide {
		s.Place = m.Title()
	}
	return s
}

// counts is what the branch in hand holds: pieces, spares, how many more would go in.
func counts(m *desk.Model) []string {
	_, b, ok := m.BranchHere()
	if !ok || len(b.Layers) == 0 {
		return nil
	}
	pieces, spares, room := 0, 0, 0
	for k, l := range b.Layers {
		pieces, spares = pieces+len(l.Members)-l.Fillers, spares+l.Spares
		if k > 0 {
			room += l.Room
		}
	}
	out := []string{words.Plural(pieces, "piece", "pieces")}
	if spares > 0 {
		out = append(out, words.Plural(spares, "spare", "spares"))
	}
	if room > 0 {
		out = append(out, fmt.Sprintf("room for %d", room))
	}
	return out
}

// paneTitle names the list.
func paneTitle(m *desk.Model) string {
	switch {
	case len(m.Stack) == 0:
		return m.Here().Pane
	case m.Here().Wide:
		return ""
	}
	return words.Capital(m.Title())
}

// listLines is the page's lines and a window on its rows round the one in hand, or the page's
// widget: exactly size.H lines.
func listLines(m *desk.Model, p desk.Page, size kit.Size) []string {
	t := m.Theme
	var out []string
	put := func(s string) { out = append(out, " "+t.Fit(t.Text(s), size.W-1)) }
	said := p.Lines
	if m.Greet && !m.Here().Unasked {
		said = append(guide.Welcome(), said...)
	}
	for _, text := range said {
		for _, line := range kit.Wrap(text, size.W-1) {
			if len(out) < size.H-4 {
				put(line)
			}
		}
	}
	for _, line := range p.Drawn {
		if len(out) < size.H-1 {
			out = append(out, " "+t.Fit(line, size.W-1))
		}
	}
	room := max(size.H-len(out), 0)
	switch {
	case p.Widget != nil:
		for _, line := range p.Widget.Draw(t, size.W-1, room) {
			out = append(out, " "+line)
		}
	case len(p.Rows) == 0:
		for _, line := range kit.Wrap(p.Empty, size.W-1) {
			put(line)
		}
	default:
		if p.Cols != "" && room > 3 {
			out = append(out, t.Heads(p.Cols, size.W))
			room--
		}
		out = append(out, rowLines(m, p, size.W, room)...)
	}
	for len(out) < size.H {
		out = append(out, "")
	}
	return out[:size.H]
}

// rowLines is a window on the rows round the one in hand.
func rowLines(m *desk.Model, p desk.Page, w, room int) []string {
	t := m.Theme
	at := m.At(p)
	var out []string
	first, last := kit.Window(len(p.Rows), at, room)
	for k := first; k < last; k++ {
		switch r := &p.Rows[k]; {
		case k == first && first > 0 && k != at:
			out = append(out, t.Paint(kit.Quiet, fmt.Sprintf("   %s %d more above", t.Signs.Above, first+1)))
		case k == last-1 && last < len(p.Rows) && k != at:
			out = append(out, t.Paint(kit.Quiet, fmt.Sprintf("   %s %d more below", t.Signs.Below, len(p.Rows)-last+1)))
		case r.Heads:
			out = append(out, t.Heads(t.Text(r.Line()), w))
		default:
			out = append(out, t.Row(kit.Row{Text: t.Text(r.Line()), Mark: r.Mark, Hand: k == at, Tints: r.Tints}, w))
		}
	}
	return out
}

// inHand repeats the row in hand in words, or shows the open field.
func inHand(m *desk.Model, r *desk.Row, l desk.Layout) string {
	if m.Entry != nil {
		return m.Theme.Field(m.Entry.Input, l.W-2*len(l.Margin))
	}
	switch {
	case r == nil:
		return ""
	case r.More != nil:
		return m.Theme.Text(r.More())
	}
	return m.Theme.Text(r.Detail)
}

// figures is the strip of the numbers worked on.
func figures(m *desk.Model, l desk.Layout) string {
	_, b, ok := m.BranchHere()
	if strip := m.Here().Strip; strip != nil {
		if text, is := strip(m); is {
			return m.Theme.Paint(kit.Strong, text)
		}
	}
	if !ok || b.OverMM <= 0 {
		return "OD -"
	}
	mem := ""
	if b.Standing == "memory" {
		mem = "~"
	}
	t := fmt.Sprintf("OD %s%s (%s to %s) %s", m.Sys.Diameter(b.OverMM), mem, m.Sys.Diameter(b.OverMinMM), m.Sys.Diameter(b.OverMaxMM),
		m.Sys.Name())
	if c := &b.Learned; c.Of != "" {
		t += fmt.Sprintf(", predicted %s %s, spread %s", m.Sys.Diameter(c.PredictedMM), plusMinus(m, b.OverMM-c.PredictedMM),
			m.Sys.Fine(b.OverMM*unit.Millimetre(c.Spread)))
	}
	wire := unit.Millimetre(0)
	for _, i := range m.WiresHere() {
		wire += m.Sheet.Wires[i].Cut
	}
	more := []string{
		"mass " + words.Grams(b.Gram.V, b.Gram.Set),
		"bend " + m.Sys.AtLeast(b.Bend.MinMM) + " " + m.Sys.Name(),
	}
	if b.Sheath.Verdict.Wraps {
		more = append([]string{"in sheath " + m.Sys.Diameter(b.Sheath.Verdict.OverMM)}, more...)
	}
	if b.Warm.Known {
		more = append(more, "hottest "+unit.Fixed(b.Warm.HottestC, 0)+" C")
	}
	if mem != "" {
		more = append(more, "~ from memory")
	}
	if !desk.Waiting(m.Sheet) { // a sum that lacks a branch would mislead
		more = append(more, "harness "+unit.Fixed(float64(m.Sheet.Totals.WireMM)/1000, 1)+" m, "+words.Grams(m.Sheet.Totals.Gram.V,
			m.Sheet.Totals.Gram.Set))
	}
	for _, s := range more {
		if draw.Width(t)+3+draw.Width(s) <= l.W-2*len(l.Margin) {
			t += "   " + s
		}
	}
	return m.Theme.Paint(kit.Strong, t)
}

// snagLines is the worst open point, once, in up to so many lines; a sound loom leaves it empty.
func snagLines(m *desk.Model, l desk.Layout, most int) []string {
	g, n, any := desk.Worst(m.Sheet)
	if !any || m.Here().NoPoints && g.Level < sheet.Stop {
		return []string{""}
	}
	w := l.W - 2*len(l.Margin)
	mark, look := "?", kit.Warn
	if g.Level == sheet.Stop {
		mark, look = "!", kit.Stop
	}
	more := ""
	if g.Count > 1 {
		more = fmt.Sprintf(" (and %d more)", g.Count-1)
	}
	tail := ""
	if n > 1 {
		tail = fmt.Sprintf("  +%d on Build", n-1)
	}
	text := m.Theme.Text(fmt.Sprintf("%s %s %s: %s%s", mark, g.Level, g.Where, m.Sys.Says(g.Says), more))
	if most < 2 || draw.Width(text)+draw.Width(tail) <= w {
		return []string{m.Theme.Paint(look, draw.Cut(text, w-draw.Width(tail), m.Cfg.ASCII)+tail)}
	}
	first := kit.Wrap(text, w)[0]
	rest := "  " + strings.TrimSpace(strings.TrimPrefix(text, first))
	return []string{m.Theme.Paint(look, first), m.Theme.Paint(look, draw.Cut(rest, w-draw.Width(tail), m.Cfg.ASCII)+tail)}
}

// answerLine is what the last key did; else that the screen is too small for the section.
func answerLine(m *desk.Model, l desk.Layout) string {
	w := l.W - 2*len(l.Margin)
	t := draw.Clean(m.Says)
	if t == "" && m.Journal.Trouble != "" {
		t = "a crash would lose unsaved work, there is no journal: " + draw.Clean(m.Journal.Trouble)
	}
	if t == "" && l.Right.W == 0 && !m.Here().Wide && l.Foot > 4 {
		t = fmt.Sprintf("no section: it needs %d x %d", kit.RoomyW, kit.RoomyH)
	}
	if m.Trouble {
		return m.Theme.Paint(kit.Warn, draw.Cut("? "+t, w, m.Cfg.ASCII))
	}
	return m.Theme.Plain(draw.Cut(t, w, m.Cfg.ASCII))
}

// largeLines are the large figure; where that is the OD of the branch, the OD in its sheath stands beside it.
func largeLines(m *desk.Model, r *desk.Row, w int) []string {
	lines := words.Large(large(m, r))
	if m.Entry != nil || r != nil && r.Big != "" {
		return lines
	}
	seen := m
	if r != nil && r.Show != nil {
		seen = r.Show(m)
	}
	_, b, ok := seen.BranchHere()
	if !ok || b.OverMM <= 0 || !b.Sheath.Verdict.Wraps {
		return lines
	}
	both := words.Large(m.Sys.Diameter(b.OverMM), m.Sys.Name()+"  OD")
	sheath := words.Large(m.Sys.Diameter(b.Sheath.Verdict.OverMM), "in sheath")
	wide := draw.Width(both[len(both)-1]) + 2
	for k := range both {
		both[k] = draw.Pad(both[k], wide) + sheath[k]
		if draw.Width(both[k]) > w {
			return lines
		}
	}
	return both
}

// large is the one number that is being worked on: what is typed, else that of the
// row in hand, else over.
func large(m *desk.Model, r *desk.Row) (figure, words string) {
	if e := m.Entry; e != nil {
		if e.Number {
			return e.Draft(), strings.TrimSpace(e.Unit + "  " + e.Label)
		}
		return "", ""
	}
	if r != nil && r.Big != "" {
		return r.Big, r.BigSays
	}
	seen := m
	if r != nil && r.Show != nil {
		seen = r.Show(m)
	}
	mb, b, ok := seen.BranchHere()
	if !ok || b.OverMM <= 0 {
		return "", ""
	}
	return m.Sys.Diameter(b.OverMM), m.Sys.Name() + "  OD of " + mb.ID
}

// plusMinus is a difference with its sign.
func plusMinus(m *desk.Model, v unit.Millimetre) string {
	if v < 0 {
		return "-" + m.Sys.Fine(-v)
	}
	return "+" + m.Sys.Fine(v)
}
