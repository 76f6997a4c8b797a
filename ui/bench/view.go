package bench

import (
	"cmp"
	"fmt"
	"strings"

	"contralay/calc/sheet"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
	"contralay/ui/draw"
	"contralay/ui/guide"
)

// frame is the screen line by line.
func frame(m *desk.Model) []string {
	l := desk.Arrange(m.W, m.Height, m.Here().Wide)
	if l.Tiny {
		return tinyFrame(m)
	}
	p := m.Page(l.List)
	at := m.At(p)
	var r *desk.Row
	if len(p.Rows) > 0 {
		r = &p.Rows[at]
	}
	out := []string{paint(m, styleHead, head(m)), rail(m)}
	if m.Height >= 20 {
		out = append(out, "")
	}
	list := listLines(m, p, at, l.List, l.Work)
	mark, seen := "", m
	if r != nil {
		mark = r.Id
		if r.Show != nil {
			seen = r.Show(m)
		}
	}
	if l.Big {
		lines := words.Large(large(m, r))
		for k := range words.BigH {
			t := ""
			if k < len(lines) {
				t = lines[k]
			}
			list = append(list, paint(m, styleRail, draw.Fit(plainly(m, t), l.List, m.Cfg.ASCII)))
		}
	}
	if l.Pic > 0 {
		pic := picture(seen, mark, l.Pic, len(list))
		for k := range list {
			out = append(out, list[k]+" | "+pic[k])
		}
	} else {
		out = append(out, list...)
	}
	if m.Height >= 20 && !l.Big {
		out = append(out, "")
	}
	if l.Detail {
		out = append(out, inHand(m, r))
	}
	answer := answerLine(m, l)
	most := 1
	if answer == "" {
		most = 2
	}
	snag := snagLines(seen, most)
	out = append(out, figures(seen, l), snag[0])
	if len(snag) > 1 {
		answer = snag[1]
	}
	out = append(out, answer, keyBar(m, r))
	for k, line := range out {
		if draw.Width(line) > m.W {
			out[k] = draw.Cut(plainly(m, line), m.W, m.Cfg.ASCII)
		}
		if m.Cfg.ASCII && !strings.Contains(out[k], "\x1b") {
			out[k] = draw.Plain(out[k]) // a painted line was spelled out as it was made
		}
	}
	return out
}

func plainly(m *desk.Model, s string) string {
	if m.Cfg.ASCII {
		return draw.Plain(s)
	}
	return s
}

func tinyFrame(m *desk.Model) []string {
	out := make([]string, max(1, m.Height))
	for k, t := range words.Wrap(fmt.Sprintf("The bench needs %d x %d; this is %d x %d. Nothing is lost. Q quits.", desk.TinyW, desk.TinyH,
		m.W, m.Height), max(1, m.W)) {
		if k < len(out) {
			out[k] = draw.Cut(t, max(1, m.W), m.Cfg.ASCII)
		}
	}
	return out
}

// head is number, revision and name, the branch, and whether it is saved.
func head(m *desk.Model) string {
	hd := m.H.Head
	left := strings.TrimSpace(hd.Number.V + " " + hd.Revision.V + "  " + hd.Name.V)
	mid := ""
	if mb, _, ok := m.BranchHere(); ok {
		mid = fmt.Sprintf("%s %s  %s to %s  %s %s", mb.ID, mb.Name.V, mb.From, mb.To, m.Sys.Length(mb.LengthMM), m.Sys.Name())
	}
	state := "saved"
	switch {
	case m.Dirty():
		state = "not saved"
		if m.Journal.Trouble != "" {
			state = "NOT SAVED, no journal"
		}
	case m.File.Path == "":
		state = "demonstration"
		if len(m.H.Branches) == 0 {
			state = "new"
		}
	}
	room := m.W - draw.Width(mid) - draw.Width(state) - 6
	if room < 8 {
		return draw.Fit(mid, m.W-draw.Width(state)-1, m.Cfg.ASCII) + " " + state
	}
	return draw.Fit(left, room, m.Cfg.ASCII) + "   " + mid + "   " + state
}

// rail is the five steps, the one in hand in capitals between signs.
func rail(m *desk.Model) string {
	if here := m.Here(); len(m.Stack) > 0 && here.Wide {
		return paint(m, styleRail, "> "+strings.ToUpper(m.Title())+" <") + "   " + cmp.Or(here.Rail, "Esc goes back")
	}
	var parts []string
	for _, s := range m.Tables.Steps {
		if s.Kind == m.Step {
			parts = append(parts, paint(m, styleRail, "> "+strings.ToUpper(s.Title)+" <"))
			continue
		}
		parts = append(parts, s.Title)
	}
	gap := "   "
	if m.W < 60 {
		gap = " "
	}
	t := strings.Join(parts, gap)
	if len(m.Stack) > 0 {
		t += "   (" + m.Title() + ", Esc goes back)"
	}
	return t
}

// listLines is the page's lines and a window on its rows round the one in hand.
func listLines(m *desk.Model, p desk.Page, at, w, h int) []string {
	var out []string
	put := func(s string) { out = append(out, draw.Fit(plainly(m, s), w, m.Cfg.ASCII)) }
	said := p.Lines
	if m.Greet && !m.Here().Unasked {
		said = append(guide.Welcome(), said...)
	}
	for _, t := range said {
		for _, t := range words.Wrap(t, w) {
			if len(out) < h-4 {
				put(t)
			}
		}
	}
	if len(p.Rows) == 0 {
		for _, t := range words.Wrap(p.Empty, w) {
			put(t)
		}
	} else if p.Cols != "" && len(out) < h-3 {
		put("   " + p.Cols)
	}
	room := h - len(out)
	first, last := window(len(p.Rows), at, room)
	for k := first; k < last; k++ {
		if k == first && first > 0 && k != at {
			put(fmt.Sprintf("   %d more above", first+1))
			continue
		}
		if k == last-1 && last < len(p.Rows) && k != at {
			put(fmt.Sprintf("   %d more below", len(p.Rows)-last+1))
			continue
		}
		r := p.Rows[k]
		sign := " "
		if k == at {
			sign = ">"
		}
		mark := r.Mark
		if mark == "" {
			mark = " "
		}
		t := draw.Fit(plainly(m, sign+mark+" "+r.Line()), w, m.Cfg.ASCII)
		switch {
		case k == at:
			t = paint(m, styleHand, t)
		case r.Mark == "!":
			t = paint(m, styleStop, t)
		case r.Mark == "?":
			t = paint(m, styleWarn, t)
		}
		out = append(out, t)
	}
	for len(out) < h {
		put("")
	}
	return out[:h]
}

// window is the rows first to last−1 that show when room fit and at is in hand;
// it moves only as far as it must, in half pages, so that nothing jumps.
func window(n, at, room int) (first, last int) {
	if n <= room || room <= 0 {
		return 0, min(n, max(room, 0))
	}
	step := max(1, room/2)
	first = max(0, (at/step)*step-step/2)
	first = min(first, n-room)
	for at >= first+room-1 && first < n-room {
		first++
	}
	return first, first + room
}

// inHand repeats the row in hand in words, or shows the open field.
func inHand(m *desk.Model, r *desk.Row) string {
	if e := m.Entry; e != nil {
		was := ""
		if e.Value != "" {
			was = "   was " + e.Value
		}
		u := ""
		if e.Unit != "" {
			u = " " + e.Unit
		}
		return paint(m, styleRail, fmt.Sprintf("%s: [%s]%s%s", e.Label, words.Tail(e.Draft, m.W-draw.Width(e.Label)-5-len(u)), u, was))
	}
	switch {
	case r == nil:
		return ""
	case r.More != nil:
		return "> " + r.More()
	case r.Detail == "":
		return ""
	}
	return "> " + r.Detail
}

// figures is the strip of the numbers worked on.
func figures(m *desk.Model, l desk.Layout) string {
	_, b, ok := m.BranchHere()
	if strip := m.Here().Strip; strip != nil {
		if text, is := strip(m); is {
			return paint(m, styleRail, text)
		}
	}
	if !ok || b.OverMM <= 0 {
		return "OVER -"
	}
	mem := ""
	if b.Standing == "memory" {
		mem = "~"
	}
	t := fmt.Sprintf("OVER %s%s (%s - %s) %s", m.Sys.Diameter(b.OverMM), mem, m.Sys.Diameter(b.OverMinMM), m.Sys.Diameter(b.OverMaxMM),
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
		"mass " + words.Grams(b.Gram, b.GramKnown),
		"bend " + m.Sys.Length(b.Bend.MinMM) + " " + m.Sys.Name(),
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
		more = append(more, "whole loom "+unit.Fixed(float64(m.Sheet.Totals.WireMM)/1000, 1)+" m, "+words.Grams(m.Sheet.Totals.Gram,
			m.Sheet.Totals.GramKnown))
	}
	for _, s := range more {
		if draw.Width(t)+3+draw.Width(s) <= l.W {
			t += "   " + s
		}
	}
	return paint(m, styleRail, t)
}

// snagLine is the worst snag in one line; a sound loom leaves it empty.
func snagLine(m *desk.Model) string { return snagLines(m, 1)[0] }

// snagLines is the worst snag, once, in up to so many lines.
func snagLines(m *desk.Model, most int) []string {
	g, n, any := desk.Worst(m.Sheet)
	if !any {
		return []string{""}
	}
	mark, st := "?", styleWarn
	if g.Level == sheet.Stop {
		mark, st = "!", styleStop
	}
	more := ""
	if g.Count > 1 {
		more = fmt.Sprintf(" (%d times)", g.Count)
	}
	tail := ""
	if n > 1 {
		tail = fmt.Sprintf("  +%d on Build", n-1)
	}
	text := plainly(m, fmt.Sprintf("%s %s %s: %s%s", mark, g.Level, g.Where, g.Says, more))
	if most < 2 || draw.Width(text)+draw.Width(tail) <= m.W {
		return []string{paint(m, st, draw.Cut(text, m.W-draw.Width(tail), m.Cfg.ASCII)+tail)}
	}
	first := words.Wrap(text, m.W)[0]
	rest := "  " + strings.TrimSpace(strings.TrimPrefix(text, first))
	return []string{paint(m, st, first), paint(m, st, draw.Cut(rest, m.W-draw.Width(tail), m.Cfg.ASCII)+tail)}
}

// answerLine is what the last key did; else that the screen is too small for the section.
func answerLine(m *desk.Model, l desk.Layout) string {
	t := m.Says
	if t == "" && m.Journal.Trouble != "" {
		t = "a crash would lose unsaved work, there is no journal: " + m.Journal.Trouble
	}
	if t == "" && l.Pic == 0 && !m.Here().Wide {
		t = fmt.Sprintf("no section: it needs %d x %d", desk.RoomyW, desk.RoomyH)
	}
	if m.Trouble {
		return paint(m, styleWarn, draw.Cut("? "+t, m.W, m.Cfg.ASCII))
	}
	return draw.Cut(t, m.W, m.Cfg.ASCII)
}

// large is the one number that is being worked on: what is typed, else that of the
// row in hand, else over.
func large(m *desk.Model, r *desk.Row) (figure, words string) {
	if e := m.Entry; e != nil {
		if e.Number {
			return e.Draft, strings.TrimSpace(e.Unit + "  " + e.Label)
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
	return m.Sys.Diameter(b.OverMM), m.Sys.Name() + "  over of " + mb.ID
}

// plusMinus is a difference with its sign.
func plusMinus(m *desk.Model, v unit.Millimetre) string {
	if v < 0 {
		return "-" + m.Sys.Fine(-v)
	}
	return "+" + m.Sys.Fine(v)
}
